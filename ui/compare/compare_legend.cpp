#include "ui/compare/compare_legend.h"

#include "ui/compare/compare_marks.h"
#include "ui/compare/compare_words.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/score_mark.h"

#include <QFontMetrics>
#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>

#include <functional>

namespace pipwright::ui {

namespace {

using DrawMark = std::function<void(QPainter&, const QRectF&, const Theme&)>;

constexpr int kItemGap = 14;

/// One mark and its words.
class LegendItem : public QWidget {
  public:
    LegendItem(QString words, int markWidth, DrawMark draw)
        : m_words(std::move(words)), m_markWidth(markWidth), m_draw(std::move(draw)) {
        setAccessibleName(m_words);
    }

    [[nodiscard]] QSize sizeHint() const override {
        const QFontMetrics metrics(themeOf(this).smallFont());
        return {m_markWidth + themeOf(this).gap + metrics.horizontalAdvance(m_words) + kItemGap,
                std::max(metrics.height() + 2, 14)};
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* /*event*/) override {
        const Theme& theme = themeOf(this);
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        m_draw(painter, QRectF(0, 0, m_markWidth, height()), theme);
        painter.setPen(theme.secondInk);
        painter.setFont(theme.smallFont());
        painter.drawText(rect().adjusted(m_markWidth + theme.gap, 0, 0, 0),
                         Qt::AlignVCenter | Qt::AlignLeft, m_words);
    }

  private:
    QString m_words;
    int m_markWidth;
    DrawMark m_draw;
};

DrawMark score(Sight sight, bool fair) {
    return [sight, fair](QPainter& painter, const QRectF& area, const Theme& theme) {
        drawScore(painter, area.center(), sight, fair, theme);
    };
}

DrawMark year(bool endSeen) {
    return [endSeen](QPainter& painter, const QRectF& area, const Theme& theme) {
        drawYear(painter, area.left() + 3, area.right() - 2, area.center().y(), endSeen, theme);
    };
}

void drawUsualMark(QPainter& painter, const QRectF& area, const Theme& theme) {
    drawUsual(painter, QRectF(area.left() + 2, area.center().y() - 4, area.width() - 4, 8), theme);
}

void drawMeanMark(QPainter& painter, const QRectF& area, const Theme& theme) {
    drawMean(painter, area.left() + 2, area.center().x(), area.right() - 2, area.center().y(),
             theme);
}

void drawTraitMark(QPainter& painter, const QRectF& area, const Theme& theme) {
    IntervalDot dot;
    dot.value = 5;
    dot.low = 3;
    dot.high = 7;
    drawIntervalDot(painter, area, dot, theme);
}

} // namespace

CompareLegend::CompareLegend(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("What the marks mean"));
    auto* marks = new QWidget;
    auto* flow = new FlowLayout(marks, 2);
    flow->setContentsMargins(0, 0, 0, 0);
    const auto add = [flow](const QString& words, int width, DrawMark draw) {
        flow->addWidget(new LegendItem(words, width, std::move(draw)));
    };
    add(tr("ripe in one crop year, the oldest on top"), 28, year(true));
    add(tr("its end not seen"), 28, year(false));
    add(tr("usual window"), 28, drawUsualMark);
    add(tr("fair score, tasted blind"), 12, score(Sight::blind, true));
    add(tr("sighted"), 12, score(Sight::sighted, true));
    add(tr("not known which"), 12, score(Sight::unknown, true));
    add(tr("open: not fair, or unclear"), 12, score(Sight::blind, false));
    add(tr("mean of the fair scores ± standard error"), 28, drawMeanMark);
    add(tr("mean of a trait, from its lowest to its highest value"), 48, drawTraitMark);
    m_body = new QWidget;
    auto* body = new QVBoxLayout(m_body);
    body->setContentsMargins(0, 0, 0, 0);
    body->setSpacing(themeOf(this).gap);
    body->addWidget(marks);
    body->addWidget(new FlowText(legendWords(), FlowText::Weight::small));
    m_fold = new QToolButton;
    m_fold->setText(tr("What the marks mean"));
    m_fold->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    m_fold->setAutoRaise(true);
    m_fold->setFocusPolicy(Qt::StrongFocus);
    m_fold->setCheckable(true);
    connect(m_fold, &QToolButton::toggled, this, &CompareLegend::unfold);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(themeOf(this).gap);
    column->addWidget(m_fold, 0, Qt::AlignLeft);
    column->addWidget(m_body);
    unfold(false); // the room belongs to the table until somebody asks
}

bool CompareLegend::isUnfolded() const {
    return !m_body->isHidden();
}

void CompareLegend::unfold(bool open) {
    m_body->setVisible(open);
    m_fold->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
    m_fold->setAccessibleDescription(open ? tr("shown; press to fold away")
                                          : tr("folded away; press to show"));
}

} // namespace pipwright::ui
