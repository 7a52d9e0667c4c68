#include "ui/tree/ancestry_view.h"

#include "ui/tree/tree_facts.h"
#include "ui/widgets/theme.h"

#include <QAbstractButton>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kGap = 18;
constexpr int kBoxHeight = 22;
constexpr int kPitch = 27;

class AncestorButton : public QAbstractButton {
  public:
    AncestorButton(const QString& name, const QString& role, QWidget* parent)
        : QAbstractButton(parent) {
        setText(name);
        setAccessibleName(role + QStringLiteral(": ") + name);
        setToolTip(role + QStringLiteral(": ") + name);
        setFocusPolicy(Qt::StrongFocus);
        setCursor(Qt::PointingHandCursor);
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const Theme& theme = themeOf(this);
        const QRectF box = QRectF(rect()).adjusted(1, 1, -1, -1);
        painter.setBrush(underMouse() || isDown() ? theme.wash : theme.surface);
        painter.setPen(hasFocus() ? QPen(theme.sky, 2)
                                  : QPen(withContrast(theme.line, theme.surface, 3.0), 1));
        painter.drawRoundedRect(box, theme.radius, theme.radius);
        painter.setPen(theme.sky);
        painter.setFont(theme.bodyFont());
        const QRect room = rect().adjusted(6, 0, -6, 0);
        painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(text(), Qt::ElideRight, room.width()));
    }
};

QString roleOf(int generation, int number) {
    const bool seedSide = number < (1 << (generation - 1));
    if (generation == 1) {
        return seedSide ? AncestryView::tr("seed parent") : AncestryView::tr("pollen parent");
    }
    const QString kin =
        generation == 2 ? AncestryView::tr("grandparent") : AncestryView::tr("great-grandparent");
    return seedSide ? AncestryView::tr("%1 on the seed side").arg(kin)
                    : AncestryView::tr("%1 on the pollen side").arg(kin);
}

} // namespace

AncestryView::AncestryView(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Ancestry, three generations"));
}

void AncestryView::show(const TreeFacts& facts) {
    for (QAbstractButton* button : m_buttons) {
        button->hide();
        button->deleteLater();
    }
    m_buttons.clear();
    m_places.clear();
    m_depth = 1;
    for (int generation = 1; facts.ancestry && generation <= facts.ancestry->depth();
         ++generation) {
        const auto& row = facts.ancestry->generation(generation);
        const auto& children = facts.ancestry->generation(generation - 1);
        for (std::size_t i = 0; i < row.size(); ++i) {
            Place place{generation, static_cast<int>(i), nullptr, {}};
            if (row[i]) {
                const auto genotype = static_cast<Index>(*row[i]);
                const QString name =
                    QString::fromStdString(facts.view->genotypes()[genotype].called());
                place.button = new AncestorButton(name, roleOf(generation, place.number), this);
                place.button->setVisible(true);
                m_buttons.push_back(place.button);
                connect(place.button, &QAbstractButton::clicked, this,
                        [this, genotype] { Q_EMIT genotypeWanted(genotype); });
                m_depth = std::max(m_depth, generation);
            } else if (const auto& child = children[i / 2]; child) {
                const auto& siblings = row[i ^ 1U];
                const bool open =
                    i % 2 == 1 && facts.view->parentsOf(static_cast<Index>(*child)).pollination ==
                                      Pollination::open;
                place.unknown = open ? tr("open pollinated") : tr("not known");
                // Two unknown parents of an ancestor say nothing; of the tree itself they do.
                if (!siblings && generation > 1) {
                    continue;
                }
            } else {
                continue;
            }
            m_places.push_back(place);
        }
    }
    updateGeometry();
    arrange();
    update();
}

QSize AncestryView::sizeHint() const {
    return {320, (1 << m_depth) * kPitch};
}

QRect AncestryView::rectOf(const Place& place) const {
    const int columns = m_depth;
    const int wide = (width() - 14 - (columns - 1) * kGap) / columns;
    const int slot = height() / (1 << place.generation);
    const int left = 14 + (place.generation - 1) * (wide + kGap);
    return {left, place.number * slot + (slot - kBoxHeight) / 2, wide, kBoxHeight};
}

void AncestryView::arrange() {
    for (const Place& place : m_places) {
        if (place.button != nullptr) {
            place.button->setGeometry(rectOf(place));
        }
    }
}

void AncestryView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void AncestryView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& theme = themeOf(this);
    const QColor branch = withContrast(theme.line, theme.surface, 3.0);
    for (const Place& place : m_places) {
        if (place.generation > m_depth) {
            continue;
        }
        const QRect box = rectOf(place);
        const int slot = height() / (1 << (place.generation - 1));
        const int child = place.number / 2;
        const double childMiddle = child * slot + slot / 2.0;
        const double childRight = place.generation == 1 ? 2 : box.left() - kGap;
        const QPointF from(childRight, childMiddle);
        const QPointF to(box.left(), box.center().y() + 0.5);
        const QPointF bend(to.x() - 6, from.y());
        QPainterPath path(from);
        path.cubicTo(bend, QPointF(from.x() + 2, to.y()), to);
        const bool seedSide = place.number % 2 == 0;
        painter.setPen(QPen(branch, 1.5, seedSide ? Qt::SolidLine : Qt::DashLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(path);
        if (place.button == nullptr) {
            painter.setFont(theme.smallFont());
            painter.setPen(theme.secondInk);
            painter.drawText(
                box.adjusted(6, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                painter.fontMetrics().elidedText(place.unknown, Qt::ElideRight, box.width() - 6));
        }
    }
}

} // namespace pipwright::ui
