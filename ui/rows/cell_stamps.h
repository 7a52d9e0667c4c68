#pragma once

#include "ui/rows/map_scene.h"
#include "ui/widgets/theme.h"

#include <QFont>
#include <QHash>
#include <QImage>
#include <QRect>

#include <functional>
#include <optional>
#include <vector>

class QPainter;

namespace pipwright::ui {

/// Everything that decides how one cell is drawn, apart from the text of its code. Measures are
/// device pixels.
struct CellLook {
    int width = 0;
    int height = 0;
    std::optional<QRgb> fill;
    QRgb text = 0;    ///< what is written on the fill
    int fullness = 8; ///< eighths of the cell that are filled
    Stage stage = Stage::unknown;
    PlantState state = PlantState::growing;
    bool gap = false;
    bool unsure = false; ///< the identity
    bool selected = false;
    bool dimmed = false;
    bool byStage = true;   ///< the fill already tells the stage
    bool withText = false; ///< room is kept for the code
    std::uint8_t marks = 0;
    std::uint16_t letter = kNoLetter; ///< index into the letters of the colouring

    static constexpr std::uint16_t kNoLetter = 0xffff;
};

/// Where the parts of a cell go, in device pixels from its corner; empty when there is no room.
struct CellBoxes {
    QRect shape;
    QRect letter;
    QRect code;
    QRect place;
    QRect marks; ///< where there is a code, the marks stand beside the shape
};

/// Draws cells once and keeps the pictures: equal looks share one.
class CellStamps {
  public:
    CellStamps();

    /// Forgets all pictures when anything differs from before.
    void prepare(const Theme& theme, double devicePixelRatio, std::vector<QString> letters);

    /// Bytes of pictures that may be kept; at least some screens full.
    void setRoom(qsizetype bytes) { m_room = bytes; }

    using Writer = std::function<void(QPainter&)>;

    /// The picture of a look: opaque, exactly width x height device pixels. What `write` adds is
    /// kept with it under the number of the cell.
    const QImage& stamp(const CellLook& look, std::optional<CellIndex> cell = {},
                        const Writer& write = {});
    [[nodiscard]] CellBoxes boxes(const CellLook& look) const;
    /// Body and small type in device pixels.
    [[nodiscard]] const QFont& codeFont() const { return m_codeFont; }
    [[nodiscard]] const QFont& smallFont() const { return m_smallFont; }
    [[nodiscard]] double codeAscent() const { return m_codeAscent; }
    [[nodiscard]] double smallAscent() const { return m_smallAscent; }
    /// Colour of the code in a cell of this look.
    [[nodiscard]] QColor codeColour(const CellLook& look) const;
    [[nodiscard]] const Theme& theme() const { return m_theme; }
    /// Device pixels of one thin line.
    [[nodiscard]] int hair() const { return m_hair; }

  private:
    struct Key {
        quint64 one = 0;
        quint64 two = 0;
        quint64 cell = 0; ///< counted from one; 0 for the picture all equal looks share
        bool operator==(const Key&) const = default;
        friend size_t qHash(const Key& key, size_t seed) noexcept {
            return qHashMulti(seed, key.one, key.two, key.cell);
        }
    };
    static Key keyOf(const CellLook& look);

    [[nodiscard]] QImage draw(const CellLook& look) const;
    void drawGround(QPainter& painter, const CellLook& look) const;
    void drawStage(QPainter& painter, const CellLook& look, const QRect& box) const;
    void drawState(QPainter& painter, const CellLook& look, const QRect& box) const;
    void drawMarks(QPainter& painter, const CellLook& look, const CellBoxes& boxes) const;
    [[nodiscard]] std::optional<CellBoxes> boxesWithCode(const CellLook& look) const;
    [[nodiscard]] QString lettersOf(const CellLook& look) const;
    [[nodiscard]] int pixels(double logical) const;
    void drawLetters(QPainter& painter, const CellLook& look, const CellBoxes& boxes) const;
    void drawSelected(QPainter& painter, const CellLook& look) const;
    void frame(QPainter& painter, const QRect& box, const QColor& colour, int thick) const;
    void dottedFrame(QPainter& painter, const QRect& box, const QColor& colour) const;
    [[nodiscard]] QColor shaded(const QColor& colour, const CellLook& look) const;
    [[nodiscard]] QColor markColourOn(const CellLook& look) const;

    Theme m_theme;
    double m_ratio = 0;
    int m_hair = 1;
    QFont m_codeFont;
    QFont m_smallFont;
    double m_codeAscent = 0;
    double m_smallAscent = 0;
    int m_codeHeight = 0; ///< of capitals and figures
    int m_smallHeight = 0;
    std::vector<QString> m_letters;
    QHash<Key, QImage> m_stamps;
    qsizetype m_bytes = 0;
    qsizetype m_room = 24 * 1024 * 1024;
};

} // namespace pipwright::ui
