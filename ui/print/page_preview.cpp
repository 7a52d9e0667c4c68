#include "ui/print/page_preview.h"

#include "ui/print/page_painter.h"
#include "ui/widgets/theme.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScreen>
#include <QScrollBar>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kAir = 12; // logical pixels around the page
constexpr double kSmallestScale = 0.5;
constexpr double kLargestScale = 60.0;
constexpr double kZoomStep = 1.25;

} // namespace

PagePreview::PagePreview(QWidget* parent) : QAbstractScrollArea(parent) {
    setFocusPolicy(Qt::StrongFocus);
    viewport()->setAutoFillBackground(false);
    setMinimumSize(180, 160);
    tell();
}

QSize PagePreview::sizeHint() const {
    return {480, 560};
}

void PagePreview::setPages(std::vector<Page> pages) {
    m_pages = std::move(pages);
    m_current = std::clamp(m_current, 0, std::max(pageCount() - 1, 0));
    follow();
    updateScrollBars();
    tell();
}

void PagePreview::turnTo(int page) {
    const int wanted = std::clamp(page, 0, std::max(pageCount() - 1, 0));
    if (wanted == m_current) {
        return;
    }
    m_current = wanted;
    follow();
    updateScrollBars();
    tell();
}

double PagePreview::trueScale() const {
    const double physical = screen() != nullptr ? screen()->physicalDotsPerInch() : 0.0;
    // Some screens do not know their size and report nonsense.
    const double dots = physical >= 50.0 && physical <= 250.0 ? physical : logicalDpiX();
    return dots / 25.4;
}

double PagePreview::wholePageScale() const {
    if (m_pages.empty()) {
        return m_scale;
    }
    const PaperSize size = m_pages[static_cast<std::size_t>(m_current)].size;
    // Measured without scroll bars: the whole page needs none.
    const QSize room = maximumViewportSize() - QSize(2 * kAir, 2 * kAir);
    const double scale = std::min(room.width() / inMillimetres(size.width),
                                  room.height() / inMillimetres(size.height));
    return std::clamp(scale, kSmallestScale, 2.0 * trueScale());
}

void PagePreview::showTrueSize() {
    setScale(trueScale(), Follows::nothing);
}

void PagePreview::showWholePage() {
    setScale(wholePageScale(), Follows::wholePage);
}

void PagePreview::showPageWidth() {
    setScale(pageWidthScale(), Follows::pageWidth);
}

double PagePreview::pageWidthScale() const {
    if (m_pages.empty()) {
        return m_scale;
    }
    const PaperSize size = m_pages[static_cast<std::size_t>(m_current)].size;
    const int room =
        maximumViewportSize().width() - 2 * kAir - verticalScrollBar()->sizeHint().width();
    return std::clamp(room / inMillimetres(size.width), kSmallestScale, 2.0 * trueScale());
}

void PagePreview::follow() {
    if (m_follows == Follows::wholePage) {
        m_scale = wholePageScale();
    } else if (m_follows == Follows::pageWidth) {
        m_scale = pageWidthScale();
    }
}

void PagePreview::zoomBy(double factor) {
    setScale(m_scale * factor, Follows::nothing);
}

double PagePreview::zoomPercent() const {
    return 100.0 * m_scale / trueScale();
}

void PagePreview::setScale(double pixelsPerMillimetre, Follows follows) {
    const QSizeF before = pagePixels();
    const QPointF centre(viewport()->width() / 2.0, viewport()->height() / 2.0);
    const QPointF inPage = centre - pageCorner();
    m_scale = std::clamp(pixelsPerMillimetre, kSmallestScale, kLargestScale);
    m_follows = follows;
    updateScrollBars();
    if (!before.isEmpty()) {
        const double growth = pagePixels().width() / before.width();
        horizontalScrollBar()->setValue(qRound(inPage.x() * growth + kAir - centre.x()));
        verticalScrollBar()->setValue(qRound(inPage.y() * growth + kAir - centre.y()));
    }
    tell();
}

QSizeF PagePreview::pagePixels() const {
    if (m_pages.empty()) {
        return {};
    }
    const PaperSize size = m_pages[static_cast<std::size_t>(m_current)].size;
    return {inMillimetres(size.width) * m_scale, inMillimetres(size.height) * m_scale};
}

QPointF PagePreview::pageCorner() const {
    const QSizeF page = pagePixels();
    const auto along = [](double pageLength, int room, int scrolled) {
        const double spare = room - pageLength;
        return spare >= 2.0 * kAir ? spare / 2.0 : static_cast<double>(kAir - scrolled);
    };
    return {along(page.width(), viewport()->width(), horizontalScrollBar()->value()),
            along(page.height(), viewport()->height(), verticalScrollBar()->value())};
}

void PagePreview::updateScrollBars() {
    const QSize room = maximumViewportSize();
    const QSizeF needed = pagePixels() + QSizeF(2 * kAir, 2 * kAir);
    const auto set = [](QScrollBar* bar, double length, int window) {
        bar->setRange(0, std::max(qRound(length) - window, 0));
        bar->setPageStep(window);
        bar->setSingleStep(24);
    };
    const bool fits = needed.width() <= room.width() + 1 && needed.height() <= room.height() + 1;
    set(horizontalScrollBar(), fits ? 0.0 : needed.width(), viewport()->width());
    set(verticalScrollBar(), fits ? 0.0 : needed.height(), viewport()->height());
    viewport()->update();
}

/// What is seen, in words: a screen reader reads the lines of the page.
void PagePreview::tell() {
    if (m_pages.empty()) {
        setAccessibleName(tr("Preview: nothing to print"));
        setAccessibleDescription(QString());
    } else {
        setAccessibleName(tr("Preview, page %1 of %2").arg(m_current + 1).arg(pageCount()));
        QStringList lines;
        for (const Mark& mark : m_pages[static_cast<std::size_t>(m_current)].marks) {
            if (const auto* text = std::get_if<TextMark>(&mark)) {
                lines << QString::fromStdString(text->text);
            }
        }
        setAccessibleDescription(lines.join(QLatin1Char('\n')));
    }
    viewport()->update();
    Q_EMIT changed();
}

void PagePreview::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(viewport());
    const Theme& theme = themeOf(this);
    painter.fillRect(viewport()->rect(), theme.raised);
    if (m_pages.empty()) {
        painter.setPen(theme.secondInk);
        painter.drawText(viewport()->rect().adjusted(kAir, kAir, -kAir, -kAir),
                         Qt::AlignCenter | Qt::TextWordWrap,
                         tr("Nothing to print yet. Choose trees on the row map."));
        return;
    }
    const QPointF corner = pageCorner();
    const QRectF paper(corner, pagePixels());
    painter.fillRect(paper, Qt::white);
    painter.save();
    painter.setClipRect(paper);
    paintPage(painter, m_pages[static_cast<std::size_t>(m_current)], {corner, m_scale});
    painter.restore();
    painter.setPen(QPen(theme.secondInk, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(paper.toAlignedRect().adjusted(-1, -1, 0, 0));
}

void PagePreview::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    follow();
    updateScrollBars();
    Q_EMIT changed(); // the zoom may have changed with the window
}

bool PagePreview::turnByKey(int key) {
    switch (key) {
    case Qt::Key_PageDown:
        turnTo(m_current + 1);
        return true;
    case Qt::Key_PageUp:
        turnTo(m_current - 1);
        return true;
    case Qt::Key_Home:
        turnTo(0);
        return true;
    case Qt::Key_End:
        turnTo(pageCount() - 1);
        return true;
    default:
        return false;
    }
}

bool PagePreview::zoomByKey(int key) {
    switch (key) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoomBy(kZoomStep);
        return true;
    case Qt::Key_Minus:
        zoomBy(1.0 / kZoomStep);
        return true;
    case Qt::Key_0:
        showWholePage();
        return true;
    case Qt::Key_1:
        showTrueSize();
        return true;
    case Qt::Key_2:
        showPageWidth();
        return true;
    default:
        return false;
    }
}

void PagePreview::keyPressEvent(QKeyEvent* event) {
    if (turnByKey(event->key()) || zoomByKey(event->key())) {
        event->accept();
        return;
    }
    QAbstractScrollArea::keyPressEvent(event);
}

void PagePreview::wheelEvent(QWheelEvent* event) {
    if (event->modifiers().testFlag(Qt::ControlModifier)) {
        zoomBy(event->angleDelta().y() > 0 ? kZoomStep : 1.0 / kZoomStep);
        event->accept();
        return;
    }
    QAbstractScrollArea::wheelEvent(event);
}

void PagePreview::mousePressEvent(QMouseEvent* event) {
    if (m_pages.empty() || event->button() != Qt::LeftButton) {
        return;
    }
    const QPointF place = (event->position() - pageCorner()) / m_scale;
    Q_EMIT clickedAt(m_current, {millimetres(place.x()), millimetres(place.y())});
}

} // namespace pipwright::ui
