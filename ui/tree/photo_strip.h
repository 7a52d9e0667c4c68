#pragma once

#include "core/orchard/decisions.h"

#include <QImage>
#include <QWidget>

#include <memory>
#include <optional>
#include <vector>

class QAbstractButton;
class QLayout;

namespace pipwright::ui {

class FlowText;
class OpenBook;
struct TreeFacts;

/// The photos of a tree, small; Enter or a click shows one as wide as the sheet, and again puts it
/// away. Files are read and decoded off the window's thread.
class PhotoStrip : public QWidget {
    Q_OBJECT

  public:
    explicit PhotoStrip(const OpenBook& book, QWidget* parent = nullptr);

    void show(const TreeFacts& facts);
    using QWidget::show;
    [[nodiscard]] const std::vector<QAbstractButton*>& thumbnails() const { return m_buttons; }
    /// The one shown large; nothing when none is.
    [[nodiscard]] std::optional<std::size_t> shownLarge() const { return m_large; }
    /// Whether that photo's picture has been read.
    [[nodiscard]] bool hasPicture(std::size_t photo) const;

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void load();
    void take(int generation, std::size_t photo, const QImage& image);
    void showLarge(std::optional<std::size_t> photo);

    const OpenBook& m_book;
    std::vector<Photo> m_photos;
    std::vector<QImage> m_images;
    std::vector<QAbstractButton*> m_buttons;
    std::optional<std::size_t> m_large;
    int m_generation = 0; ///< answers for an earlier tree are passed over
    QWidget* m_row;
    QWidget* m_picture;
    FlowText* m_caption;
};

} // namespace pipwright::ui
