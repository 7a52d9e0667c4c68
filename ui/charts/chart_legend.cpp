#include "ui/charts/chart_legend.h"

#include "ui/charts/chart_marks.h"
#include "ui/charts/chart_style.h"
#include "ui/widgets/flow_layout.h"

#include <QEvent>
#include <QPainter>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kSwatchWidth = 18;

} // namespace

/// Swatch and name; struck through while the series is hidden.
class LegendButton : public QToolButton {
  public:
    LegendButton(const ChartSeries& series, std::size_t shape, QWidget* parent)
        : QToolButton(parent), m_shape(shape) {
        // The marks are not needed to draw a swatch.
        m_series.name = series.name;
        m_series.kind = series.kind;
        m_series.colour = series.colour;
        m_series.dashed = series.dashed;
        setText(QString::fromStdString(series.name));
        setCheckable(true);
        setChecked(true);
        setFocusPolicy(Qt::TabFocus);
        setAccessibleName(text());
    }

    [[nodiscard]] QSize sizeHint() const override {
        const Theme& theme = themeOf(this);
        const QFontMetrics metrics(theme.smallFont());
        return {kSwatchWidth + 3 * theme.gap + metrics.horizontalAdvance(text()) + theme.gap,
                metrics.height() + theme.space};
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return {60, sizeHint().height()}; }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        const Theme& theme = themeOf(this);
        if (underMouse()) {
            painter.fillRect(rect(), theme.wash);
        }
        if (isChecked()) {
            drawSwatch(painter, QRectF(theme.gap, 0, kSwatchWidth, height()).adjusted(0, 4, 0, -4),
                       m_series, m_shape, theme);
        }
        QFont font = theme.smallFont();
        font.setStrikeOut(!isChecked());
        painter.setFont(font);
        painter.setPen(isChecked() ? theme.ink : theme.secondInk);
        const QRect room = rect().adjusted(kSwatchWidth + 2 * theme.gap, 0, -theme.gap, 0);
        painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(text(), Qt::ElideRight, room.width()));
        if (hasFocus()) {
            painter.setPen(QPen(theme.sky, 2));
            painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
        }
    }

  private:
    ChartSeries m_series;
    std::size_t m_shape;
};

ChartLegend::ChartLegend(QWidget* parent) : QWidget(parent) {
    setLayout(new FlowLayout);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(tr("Legend"));
}

void ChartLegend::setSpec(const ChartSpec& spec) {
    for (LegendButton* old : m_buttons) {
        delete old;
    }
    m_buttons.clear();
    const std::vector<std::size_t> shapes = pointShapes(spec);
    for (std::size_t i = 0; i < spec.series.size(); ++i) {
        auto* button = new LegendButton(spec.series[i], shapes[i], this);
        button->setToolTip(tr("Hide or show"));
        button->installEventFilter(this);
        connect(button, &QToolButton::toggled, this, &ChartLegend::shownChanged);
        layout()->addWidget(button);
        button->show();
        m_buttons.push_back(button);
    }
    updateGeometry();
}

std::vector<bool> ChartLegend::shown() const {
    std::vector<bool> shown;
    for (const LegendButton* button : m_buttons) {
        shown.push_back(button->isChecked());
    }
    return shown;
}

QToolButton* ChartLegend::button(std::size_t series) const {
    return series < m_buttons.size() ? m_buttons[series] : nullptr;
}

bool ChartLegend::eventFilter(QObject* watched, QEvent* event) {
    const auto found = std::find(m_buttons.begin(), m_buttons.end(), watched);
    if (found != m_buttons.end()) {
        if (event->type() == QEvent::Enter || event->type() == QEvent::FocusIn) {
            Q_EMIT highlightWanted(static_cast<std::size_t>(found - m_buttons.begin()));
        } else if (event->type() == QEvent::Leave || event->type() == QEvent::FocusOut) {
            Q_EMIT highlightWanted(std::nullopt);
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace pipwright::ui
