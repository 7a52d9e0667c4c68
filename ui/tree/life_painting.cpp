#include "ui/tree/life_painting.h"

#include "ui/widgets/flow_layout.h"
#include "ui/widgets/theme.h"

#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace pipwright::ui {

namespace {

constexpr int kSide = 16;     ///< of the mark in the legend
constexpr int kWindowBar = 6; ///< height of the bar that stands for "seen ripe"

constexpr std::array kShapes = {
    LifeMark::Shape::fair,     LifeMark::Shape::unfair, LifeMark::Shape::unclear,
    LifeMark::Shape::decision, LifeMark::Shape::graft,  LifeMark::Shape::note,
    LifeMark::Shape::bloom,    LifeMark::Shape::drop,   LifeMark::Shape::disease};

/// A mark with its word; without a mark the bar of the days it was seen ripe.
class LegendItem : public QWidget {
  public:
    LegendItem(std::optional<LifeMark::Shape> shape, const QString& word, QWidget* parent)
        : QWidget(parent), m_shape(shape), m_word(word) {
        setAccessibleName(word);
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    }
    [[nodiscard]] QSize sizeHint() const override {
        const QFontMetrics metrics(themeOf(this).smallFont());
        return {kSide + 4 + metrics.horizontalAdvance(m_word) + 8,
                std::max(kSide, metrics.height())};
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return {kSide, sizeHint().height()}; }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const Theme& theme = themeOf(this);
        const QPointF middle(kSide / 2.0, height() / 2.0);
        if (m_shape) {
            paintLifeMark(painter, *m_shape, middle, theme);
        } else {
            painter.setPen(Qt::NoPen);
            painter.setBrush(withContrast(theme.leaf, theme.surface, 3.0));
            painter.drawRoundedRect(QRectF(1, middle.y() - kWindowBar / 2.0, kSide - 2, kWindowBar),
                                    2, 2);
        }
        painter.setFont(theme.smallFont());
        painter.setPen(theme.secondInk);
        painter.drawText(rect().adjusted(kSide + 4, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                         m_word);
    }

  private:
    std::optional<LifeMark::Shape> m_shape;
    QString m_word;
};

} // namespace

QColor lifeMarkInk(LifeMark::Shape shape, const Theme& theme) {
    switch (shape) {
    case LifeMark::Shape::fair:
    case LifeMark::Shape::graft:
        return withContrast(theme.leaf, theme.surface, 3.0);
    case LifeMark::Shape::unfair:
    case LifeMark::Shape::unclear:
    case LifeMark::Shape::drop:
        return withContrast(theme.russet, theme.surface, 3.0);
    case LifeMark::Shape::disease:
        return withContrast(theme.blood, theme.surface, 3.0);
    case LifeMark::Shape::bloom:
        return withContrast(theme.secondInk, theme.surface, 3.0);
    case LifeMark::Shape::decision:
    case LifeMark::Shape::note:
        break;
    }
    return theme.ink;
}

QString lifeMarkWord(LifeMark::Shape shape) {
    switch (shape) {
    case LifeMark::Shape::fair:
        return LifeLegend::tr("fair tasting");
    case LifeMark::Shape::unfair:
        return LifeLegend::tr("not a fair one");
    case LifeMark::Shape::unclear:
        return LifeLegend::tr("fair or not is unclear");
    case LifeMark::Shape::decision:
        return LifeLegend::tr("decision");
    case LifeMark::Shape::graft:
        return LifeLegend::tr("graft");
    case LifeMark::Shape::note:
        return LifeLegend::tr("note");
    case LifeMark::Shape::bloom:
        return LifeLegend::tr("bloom");
    case LifeMark::Shape::drop:
        return LifeLegend::tr("drops");
    case LifeMark::Shape::disease:
        break;
    }
    return LifeLegend::tr("disease");
}

void paintLifeMark(QPainter& painter, LifeMark::Shape shape, QPointF at, const Theme& theme) {
    const QColor leaf = withContrast(theme.leaf, theme.surface, 3.0);
    const QColor russet = withContrast(theme.russet, theme.surface, 3.0);
    const QColor ink = lifeMarkInk(shape, theme);
    switch (shape) {
    case LifeMark::Shape::fair:
    case LifeMark::Shape::unfair:
    case LifeMark::Shape::unclear: {
        const bool fair = shape == LifeMark::Shape::fair;
        painter.setPen(QPen(fair ? leaf : russet, 1.5));
        painter.setBrush(fair ? leaf : theme.surface);
        if (shape == LifeMark::Shape::unfair) {
            painter.drawPolygon(QPolygonF({at + QPointF(0, -5), at + QPointF(5, 0),
                                           at + QPointF(0, 5), at + QPointF(-5, 0)}));
        } else {
            painter.drawEllipse(at, 4, 4);
        }
        break;
    }
    case LifeMark::Shape::decision:
        painter.setPen(QPen(theme.ink, 1.2));
        painter.setBrush(theme.ink);
        painter.drawLine(at + QPointF(0, -5), at + QPointF(0, 6));
        painter.drawPolygon(
            QPolygonF({at + QPointF(0, -5), at + QPointF(6, -2.5), at + QPointF(0, 0)}));
        break;
    case LifeMark::Shape::graft:
        painter.setPen(QPen(leaf, 1.8));
        painter.drawPolyline(
            QPolygonF({at + QPointF(-4, -4), at + QPointF(0, 2), at + QPointF(4, -4)}));
        painter.drawLine(at + QPointF(0, 2), at + QPointF(0, 6));
        break;
    case LifeMark::Shape::note: // a slip of paper with a folded corner
        painter.setPen(QPen(ink, 1.2));
        painter.setBrush(theme.surface);
        painter.drawPolygon(
            QPolygonF({at + QPointF(-4, -5), at + QPointF(1, -5), at + QPointF(4, -2),
                       at + QPointF(4, 5), at + QPointF(-4, 5)}));
        painter.drawLine(at + QPointF(-2, 0), at + QPointF(2, 0));
        painter.drawLine(at + QPointF(-2, 2.5), at + QPointF(2, 2.5));
        break;
    case LifeMark::Shape::bloom:
        painter.setPen(QPen(withContrast(theme.secondInk, theme.surface, 3.0), 1.2));
        painter.setBrush(theme.surface);
        for (int petal = 0; petal < 5; ++petal) {
            const double angle = petal * 2 * 3.14159265358979 / 5 - 1.5707963;
            painter.drawEllipse(at + QPointF(std::cos(angle) * 3, std::sin(angle) * 3), 2, 2);
        }
        break;
    case LifeMark::Shape::drop:
        painter.setPen(Qt::NoPen);
        painter.setBrush(russet);
        painter.drawPolygon(
            QPolygonF({at + QPointF(-4, -3), at + QPointF(4, -3), at + QPointF(0, 4)}));
        break;
    case LifeMark::Shape::disease:
        painter.setPen(QPen(withContrast(theme.blood, theme.surface, 3.0), 1.5));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(at.x() - 3, at.y() - 3, 6, 6));
        break;
    }
}

LifeLegend::LifeLegend(QWidget* parent) : QWidget(parent) {
    new FlowLayout(this, 4);
    setAccessibleName(tr("What the marks mean"));
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void LifeLegend::setLanes(const std::vector<LifeLane>& lanes) {
    while (QLayoutItem* item = layout()->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    m_words.clear();
    const auto put = [this](std::optional<LifeMark::Shape> shape, const QString& word) {
        auto* item = new LegendItem(shape, word, this);
        layout()->addWidget(item);
        item->show();
        m_words << word;
    };
    const auto occurs = [&lanes](LifeMark::Shape shape) {
        return std::any_of(lanes.begin(), lanes.end(), [shape](const LifeLane& lane) {
            return std::any_of(lane.marks.begin(), lane.marks.end(),
                               [shape](const LifeMark& mark) { return mark.shape == shape; });
        });
    };
    for (const LifeMark::Shape shape : kShapes) {
        if (occurs(shape)) {
            put(shape, lifeMarkWord(shape));
        }
    }
    if (std::any_of(lanes.begin(), lanes.end(),
                    [](const LifeLane& lane) { return lane.window.firstRipe.has_value(); })) {
        put(std::nullopt, tr("seen ripe; dotted where an end was not seen"));
    }
    setAccessibleDescription(m_words.join(QStringLiteral(", ")));
    updateGeometry();
}

} // namespace pipwright::ui
