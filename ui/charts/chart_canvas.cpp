#include "ui/charts/chart_canvas.h"

#include <QEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

constexpr double kRing = 4;

QString text(const std::string& words) {
    return QString::fromStdString(words);
}

} // namespace

ChartCanvas::ChartCanvas(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAttribute(Qt::WA_OpaquePaintEvent);
}

ChartCanvas::~ChartCanvas() = default;

void ChartCanvas::setSpec(const ChartSpec& spec) {
    m_spec = spec;
    m_shown.assign(spec.series.size(), true);
    m_highlighted.reset();
    setAccessibleName(text(spec.summary.empty() ? spec.title : spec.title + ". " + spec.summary));
    forget();
}

void ChartCanvas::setShown(const std::vector<bool>& shown) {
    m_shown = shown;
    m_shown.resize(m_spec.series.size(), true);
    forget();
}

void ChartCanvas::setHighlighted(std::optional<std::size_t> series) {
    if (series != m_highlighted) {
        m_highlighted = series;
        m_picture = QPixmap();
        update();
    }
}

const ChartMark* ChartCanvas::currentMark() const {
    if (!m_current || !m_drawing) {
        return nullptr;
    }
    const PlacedMark& placed = m_drawing->marks()[*m_current];
    return &m_spec.series[placed.series].marks[placed.mark];
}

QString ChartCanvas::currentWords() const {
    const ChartMark* mark = currentMark();
    if (mark == nullptr) {
        return {};
    }
    const ChartSeries& series = m_spec.series[m_drawing->marks()[*m_current].series];
    QString words = mark->label.empty() ? text(series.name) : text(mark->label);
    if (!mark->tooltip.empty()) {
        return words + QStringLiteral(": ") + text(mark->tooltip);
    }
    if (series.kind == SeriesKind::spans && mark->xInterval) {
        return QStringLiteral("%1: %2 – %3")
            .arg(words, text(axisValueText(m_spec.xAxis, mark->xInterval->low)),
                 text(axisValueText(m_spec.xAxis, mark->xInterval->high)));
    }
    return QStringLiteral("%1: %2, %3 %4")
        .arg(words, text(axisValueText(m_spec.xAxis, mark->x)),
             text(axisValueText(m_spec.yAxis, mark->y)), text(m_spec.yAxis.unit))
        .trimmed();
}

const ChartDrawing& ChartCanvas::drawing() {
    if (!m_drawing) {
        m_drawing = std::make_unique<ChartDrawing>(m_spec, m_shown, QSizeF(size()), themeOf(this));
    }
    return *m_drawing;
}

QSize ChartCanvas::sizeHint() const {
    return {560, 340};
}
QSize ChartCanvas::minimumSizeHint() const {
    return {240, 180};
}

bool ChartCanvas::event(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange ||
        event->type() == QEvent::LocaleChange) {
        forget();
    }
    return QWidget::event(event);
}

void ChartCanvas::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.drawPixmap(0, 0, picture());
    const Theme& theme = themeOf(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_current) {
        const QRectF ring =
            drawing().marks()[*m_current].area.adjusted(-kRing, -kRing, kRing, kRing);
        painter.setPen(QPen(hasFocus() ? theme.sky : theme.secondInk, 2));
        painter.drawRoundedRect(ring, kRing, kRing);
    }
    if (hasFocus()) {
        painter.setPen(QPen(theme.sky, 2));
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

void ChartCanvas::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    forget();
}

void ChartCanvas::mouseMoveEvent(QMouseEvent* event) {
    setCurrent(drawing().markAt(event->position()));
    const ChartMark* mark = currentMark();
    setCursor(mark != nullptr && !mark->id.empty() ? Qt::PointingHandCursor : Qt::ArrowCursor);
    setToolTip(currentWords());
}

void ChartCanvas::mousePressEvent(QMouseEvent* event) {
    setCurrent(drawing().markAt(event->position()));
    if (event->button() == Qt::LeftButton) {
        activate();
    }
}

void ChartCanvas::leaveEvent(QEvent*) {
    if (!hasFocus()) {
        setCurrent(std::nullopt);
    }
}

void ChartCanvas::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Right:
        step(1);
        return;
    case Qt::Key_Left:
        step(-1);
        return;
    case Qt::Key_Up:
        stepSeries(-1);
        return;
    case Qt::Key_Down:
        stepSeries(1);
        return;
    case Qt::Key_Home:
        step(-static_cast<int>(drawing().marks().size()));
        return;
    case Qt::Key_End:
        step(static_cast<int>(drawing().marks().size()));
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        activate();
        return;
    case Qt::Key_Escape:
        if (m_current) {
            setCurrent(std::nullopt);
            return;
        }
        break;
    default:
        break;
    }
    QWidget::keyPressEvent(event);
}

void ChartCanvas::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    // A screen reader finds something to read as soon as it comes here by Tab.
    if (!m_current && event->reason() != Qt::MouseFocusReason) {
        step(1);
    }
}

void ChartCanvas::forget() {
    m_drawing.reset();
    m_picture = QPixmap();
    const bool had = m_current.has_value();
    m_current.reset();
    if (had) {
        setAccessibleDescription({});
        Q_EMIT currentChanged();
    }
    update();
}

void ChartCanvas::setCurrent(std::optional<std::size_t> placed) {
    if (placed == m_current) {
        return;
    }
    m_current = placed;
    setAccessibleDescription(currentWords());
    Q_EMIT currentChanged();
    update();
}

void ChartCanvas::step(int by) {
    const auto count = static_cast<int>(drawing().marks().size());
    if (count == 0) {
        return;
    }
    const int from = m_current ? static_cast<int>(*m_current) : (by > 0 ? -1 : count);
    setCurrent(static_cast<std::size_t>(std::clamp(from + by, 0, count - 1)));
}

void ChartCanvas::stepSeries(int by) {
    const auto& marks = drawing().marks();
    if (!m_current) {
        step(by);
        return;
    }
    const PlacedMark& from = marks[*m_current];
    std::optional<std::size_t> best;
    const auto apart = [&](std::size_t index) {
        // The next series first, then what lies nearest below or above.
        const int series =
            (static_cast<int>(marks[index].series) - static_cast<int>(from.series)) * by;
        return series * 1e6 + std::abs(marks[index].point.x() - from.point.x());
    };
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const bool further = by > 0 ? marks[i].series > from.series : marks[i].series < from.series;
        if (further && (!best || apart(i) < apart(*best))) {
            best = i;
        }
    }
    if (best) {
        setCurrent(best);
    }
}

void ChartCanvas::activate() {
    const ChartMark* mark = currentMark();
    if (mark != nullptr && !mark->id.empty()) {
        Q_EMIT markActivated(text(mark->id));
    }
}

const QPixmap& ChartCanvas::picture() {
    const qreal scale = devicePixelRatioF();
    if (m_picture.isNull() || m_picture.devicePixelRatio() != scale) {
        m_picture = QPixmap(size() * scale);
        m_picture.setDevicePixelRatio(scale);
        QPainter painter(&m_picture);
        drawing().paint(painter, m_highlighted);
        ++m_picturesMade;
    }
    return m_picture;
}

} // namespace pipwright::ui
