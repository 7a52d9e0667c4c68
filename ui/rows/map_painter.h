#pragma once

#include "ui/rows/cell_colouring.h"
#include "ui/rows/cell_stamps.h"
#include "ui/rows/map_layout.h"
#include "ui/rows/map_selection.h"
#include "ui/rows/overview_image.h"

#include <QHash>
#include <QStaticText>

#include <functional>
#include <optional>

class QPainter;

namespace pipwright::ui {

/// How much of a cell is drawn.
enum class MapDetail {
    overview, ///< a colour
    cells,    ///< colour, stage, marks, letter
    codes,    ///< the code as well
};

/// The part of the map that is seen, in logical pixels.
struct MapFrame {
    MapScale scale;
    QPointF scroll; ///< of the content's corner
    QSize size;     ///< of the viewport
    double ratio = 1;
    double rowNames = 0; ///< width of the row names at the left
    double ruler = 0;    ///< height of the ruler at the top

    [[nodiscard]] QPointF toContent(QPointF point) const {
        return point + scroll - QPointF(rowNames, ruler);
    }
    [[nodiscard]] QRectF toViewport(const QRectF& rect) const {
        return rect.translated(QPointF(rowNames, ruler) - scroll);
    }
    [[nodiscard]] MapDetail detail() const;
};

struct MapPixels;

/// Paints the map from plain values; knows no widget and asks nobody anything.
class MapPainter {
  public:
    MapPainter();

    void setLayout(const MapLayout& layout);
    void setColouring(CellColouring colouring);
    /// Cells that are not shown are dimmed; an empty set shows all.
    void setShown(CellSet shown);
    void setSelection(MapSelection selection);
    void setTheme(const Theme& theme, double devicePixelRatio);

    [[nodiscard]] const MapLayout& layout() const { return m_layout; }
    [[nodiscard]] const CellColouring& colouring() const { return m_colouring; }
    [[nodiscard]] const CellSet& shown() const { return m_shown; }
    [[nodiscard]] const MapSelection& selection() const { return m_selection; }
    [[nodiscard]] bool isShown(CellIndex cell) const { return m_shown.empty() || m_shown[cell]; }
    [[nodiscard]] const Theme& theme() const { return m_stamps.theme(); }
    [[nodiscard]] double devicePixelRatio() const { return m_ratio; }
    /// Logical pixels that the row names and the ruler ask for.
    [[nodiscard]] double rowNamesWidth() const { return m_rowNamesWidth; }
    [[nodiscard]] double rulerHeight() const { return m_rulerHeight; }

    /// Paints what lies in `clip` (logical pixels of the viewport) and marks the current row.
    void paint(QPainter& painter, const MapFrame& frame, const QRect& clip,
               std::optional<CellIndex> cursor);

  private:
    /// What of a cell does not change with the scale.
    struct Tint {
        QRgb fill = 0;
        QRgb text = 0;
        bool filled = false;
        bool dimmed = false;
        std::uint8_t fullness = 8;
    };

    void measureMargins();
    void tint();
    [[nodiscard]] QRgb overviewColour(CellIndex cell) const;
    [[nodiscard]] CellLook lookOf(CellIndex cell, int width, int height, bool withText) const;
    void paintOverview(QPainter& painter, const MapPixels& pixels, const MapFrame& frame);
    void paintCells(QPainter& painter, const MapPixels& pixels, const MapFrame& frame,
                    MapDetail detail);
    void paintRow(QPainter& painter, const MapPixels& pixels, const MapFrame& frame,
                  std::uint32_t row, bool withText);
    void paintCode(QPainter& painter, CellIndex cell, const CellLook& look);
    void paintPlace(QPainter& painter, CellIndex cell, const CellLook& look);
    void paintWords(QPainter& painter, const QStaticText& words, const QRect& box,
                    const CellLook& look, double ascent);
    void paintHeadings(QPainter& painter, const MapPixels& pixels, const MapFrame& frame);
    void paintRowNames(QPainter& painter, const MapPixels& pixels, const MapFrame& frame,
                       std::optional<std::uint32_t> current);
    void paintRuler(QPainter& painter, const MapPixels& pixels, const MapFrame& frame,
                    std::optional<CellIndex> cursor);
    const QStaticText& prepared(std::uint64_t key, const QFont& font, int width,
                                const std::function<QString()>& text);

    MapLayout m_layout;
    CellColouring m_colouring;
    CellSet m_shown;
    MapSelection m_selection;
    CellStamps m_stamps;
    double m_ratio = 1;
    double m_rowNamesWidth = 0;
    double m_rulerHeight = 0;
    std::vector<Tint> m_tints;
    std::vector<bool> m_selected;
    OverviewImage m_overview;
    bool m_overviewIsStale = true;
    QHash<std::uint64_t, QStaticText> m_texts;
};

} // namespace pipwright::ui
