#pragma once

#include "core/exchange/print/page.h"

#include <QAbstractScrollArea>

#include <vector>

namespace pipwright::ui {

/// Pages as they will lie on the paper, one at a time. Page Up and Page Down (Home, End) turn
/// pages, + and - zoom, 1 is true size, 2 the page's width, 0 the whole page; the arrows move it.
class PagePreview : public QAbstractScrollArea {
    Q_OBJECT

  public:
    explicit PagePreview(QWidget* parent = nullptr);

    /// Stays on the page shown when there still is one with that number.
    void setPages(std::vector<Page> pages);
    [[nodiscard]] int pageCount() const { return static_cast<int>(m_pages.size()); }
    /// Counted from 0; 0 without pages.
    [[nodiscard]] int currentPage() const { return m_current; }
    void turnTo(int page);

    /// One millimetre of paper is one millimetre on this screen, as far as the screen knows.
    void showTrueSize();
    void showWholePage();
    /// As wide as there is room; the page then scrolls up and down.
    void showPageWidth();
    void zoomBy(double factor);
    /// In per cent of true size.
    [[nodiscard]] double zoomPercent() const;

    [[nodiscard]] QSize sizeHint() const override;

  Q_SIGNALS:
    /// After turning, zooming and setPages.
    void changed();
    /// The user clicked on the page: where, from its top left corner.
    void clickedAt(int page, pipwright::PaperPoint place);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

  private:
    [[nodiscard]] double trueScale() const;
    [[nodiscard]] double wholePageScale() const;
    [[nodiscard]] QSizeF pagePixels() const;
    [[nodiscard]] QPointF pageCorner() const;
    bool turnByKey(int key);
    bool zoomByKey(int key);
    enum class Follows { nothing, wholePage, pageWidth };

    [[nodiscard]] double pageWidthScale() const;
    void follow();
    void setScale(double pixelsPerMillimetre, Follows follows);
    void updateScrollBars();
    void tell();

    std::vector<Page> m_pages;
    int m_current = 0;
    double m_scale = 3.0; ///< logical pixels per millimetre
    Follows m_follows = Follows::wholePage;
};

} // namespace pipwright::ui
