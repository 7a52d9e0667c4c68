#include "ui/merit/waterfall_view.h"

#include "ui/book/merit_words.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/theme.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QPainter>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

/// One bar of the picture, or the dot with its interval at either end.
class WaterfallBar : public QWidget {
  public:
    double low = 0;
    double high = 1;
    double from = 0;
    double to = 0;
    double error = 0;
    bool isEnd = false;
    bool isOff = false;

    using QWidget::QWidget;
    [[nodiscard]] QSize sizeHint() const override { return {220, fontMetrics().height() + 6}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {80, fontMetrics().height()}; }

  protected:
    void paintEvent(QPaintEvent*) override {
        const Theme& theme = themeOf(this);
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const double left = 8;
        const double across = width() - 2 * left;
        const auto at = [&](double value) {
            return left + (value - low) / std::max(1e-9, high - low) * across;
        };
        const double y = height() / 2.0;
        painter.setPen(QPen(theme.line, 1));
        for (double tick = std::ceil(low); tick <= high + 1e-9; tick += 1) {
            const double x = std::round(at(tick)) + 0.5;
            painter.drawLine(QPointF(x, 0), QPointF(x, height()));
        }
        if (isEnd) {
            painter.setPen(QPen(theme.ink, 3, Qt::SolidLine, Qt::FlatCap));
            painter.drawLine(QPointF(at(from - error), y), QPointF(at(from + error), y));
            painter.setPen(Qt::NoPen);
            painter.setBrush(theme.ink);
            painter.drawEllipse(QPointF(at(from), y), 4, 4);
            return;
        }
        const QColor hue = to >= from ? theme.leaf : theme.russet;
        const double x = std::min(at(from), at(to));
        const QRectF bar(x, 4, std::max(1.5, std::abs(at(to) - at(from))), height() - 8);
        painter.setPen(isOff ? QPen(theme.secondInk, 1, Qt::DashLine) : QPen(hue, 1));
        painter.setBrush(isOff ? Qt::NoBrush : QBrush(hue));
        painter.drawRect(bar);
    }
};

QLabel* figure(const QString& text, Qt::Alignment side) {
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setAlignment(side | Qt::AlignVCenter);
    return label;
}

} // namespace

WaterfallView::WaterfallView(QWidget* parent)
    : QWidget(parent), m_grid(new QGridLayout), m_summary(new FlowText),
      m_note(new FlowText({}, FlowText::Weight::small)) {
    const Theme& theme = lightTheme();
    setAccessibleName(tr("From the mean as eaten to the merit"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(theme.space, theme.gap, theme.space, theme.gap);
    column->setSpacing(theme.gap);
    m_grid->setHorizontalSpacing(theme.space);
    m_grid->setVerticalSpacing(0);
    m_grid->setColumnStretch(1, 1);
    column->addWidget(m_summary);
    column->addLayout(m_grid);
    column->addWidget(m_note);
    column->addStretch(1);
}

void WaterfallView::clear() {
    while (QLayoutItem* item = m_grid->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
    m_lines.clear();
}

void WaterfallView::switchAllOn() {
    m_options = {};
}

void WaterfallView::showNothing(const QString& why) {
    clear();
    m_summary->setText(why);
    m_note->clear();
}

QString WaterfallView::summary() const {
    return m_summary->text();
}

QCheckBox* WaterfallView::switchOf(const QString& word) const {
    const auto found = std::find_if(m_lines.begin(), m_lines.end(),
                                    [&word](const Line& line) { return line.word == word; });
    return found == m_lines.end() ? nullptr : qobject_cast<QCheckBox*>(found->name);
}

QStringList WaterfallView::lines() const {
    QStringList all;
    for (const Line& line : m_lines) {
        all << QStringLiteral("%1 | %2 | %3")
                   .arg(line.word, line.points->text(), line.records->text());
    }
    return all;
}

void WaterfallView::toggle(const MeritStep& step, bool on) {
    switch (step.kind) {
    case MeritStep::Kind::condition:
        if (on) {
            m_options.off.erase(step.correction);
        } else {
            m_options.off.insert(step.correction);
        }
        break;
    case MeritStep::Kind::taster:
        m_options.tasterLevels = on;
        break;
    case MeritStep::Kind::sitting:
        m_options.sittings = on;
        break;
    case MeritStep::Kind::cropYear:
        m_options.cropYears = on;
        break;
    case MeritStep::Kind::shrinkage:
        m_options.pedigree = on;
        break;
    }
    Q_EMIT switched();
}

void WaterfallView::addEnd(const QString& word, double value, double error, const QString& words,
                           double low, double high) {
    const int row = static_cast<int>(m_lines.size());
    Line line{word, figure(word, Qt::AlignLeft), figure(words, Qt::AlignRight), new QLabel};
    line.name->setFont(themeOf(this).strongFont());
    line.points->setFont(themeOf(this).strongFont());
    auto* bar = new WaterfallBar;
    bar->low = low;
    bar->high = high;
    bar->from = value;
    bar->to = value;
    bar->error = error;
    bar->isEnd = true;
    m_grid->addWidget(line.name, row, 0);
    m_grid->addWidget(bar, row, 1);
    m_grid->addWidget(line.points, row, 2);
    m_grid->addWidget(line.records, row, 3);
    m_lines.push_back(line);
}

void WaterfallView::addStep(const MeritStep& step, double from, double low, double high) {
    const int row = static_cast<int>(m_lines.size());
    const bool isRest = step.kind == MeritStep::Kind::shrinkage;
    auto* box = new QCheckBox(stepWord(step));
    box->setChecked(isRest ? m_options.pedigree : !step.off);
    box->setAccessibleName(isRest ? tr("Borrow from parents and siblings")
                                  : tr("Correct for: %1").arg(stepWord(step)));
    box->setToolTip(isRest ? tr("Off: it borrows nothing from parents and siblings.")
                           : tr("Off: the scores count as they stand in this."));
    connect(box, &QCheckBox::toggled, this, [this, step](bool on) { toggle(step, on); });
    auto* bar = new WaterfallBar;
    bar->low = low;
    bar->high = high;
    bar->from = from;
    bar->to = from + step.change;
    bar->isOff = step.off;
    Line line{stepWord(step), box,
              figure(step.off ? tr("off") : signedText(step.change, 2), Qt::AlignRight),
              figure(tr("%n score(s)", nullptr, step.records), Qt::AlignRight)};
    line.records->setForegroundRole(QPalette::PlaceholderText);
    m_grid->addWidget(box, row, 0);
    m_grid->addWidget(bar, row, 1);
    m_grid->addWidget(line.points, row, 2);
    m_grid->addWidget(line.records, row, 3);
    m_lines.push_back(line);
}

void WaterfallView::show(const std::shared_ptr<const MeritDetail>& detail) {
    if (!detail->waterfall) {
        showNothing(detail->lack ? QString::fromStdString(detail->lack->what) : QString());
        return;
    }
    QString focused; // the switch that was moved keeps the keys
    for (const Line& line : m_lines) {
        focused = line.name->hasFocus() ? line.word : focused;
    }
    clear();
    m_options = detail->options;
    const MeritWaterfall& waterfall = *detail->waterfall;
    const UncertainValue merit = waterfall.merit;
    double low = std::min(waterfall.rawMean, merit.value - merit.standardError);
    double high = std::max(waterfall.rawMean, merit.value + merit.standardError);
    double sum = waterfall.rawMean;
    for (const MeritStep& step : waterfall.steps) {
        sum += step.change;
        low = std::min(low, sum);
        high = std::max(high, sum);
    }
    low = std::floor(low * 2) / 2;
    high = std::ceil(high * 2) / 2;
    addEnd(tr("mean as eaten"), waterfall.rawMean, 0, numberText(waterfall.rawMean, 2), low, high);
    sum = waterfall.rawMean;
    for (const MeritStep& step : waterfall.steps) {
        addStep(step, sum, low, high);
        sum += step.change;
    }
    addEnd(tr("merit"), merit.value, merit.standardError,
           doubtText(merit.value, merit.standardError, 2), low, high);
    const OrchardView& view = *detail->report->view;
    const QString name = QString::fromStdString(view.genotypes()[detail->genotype].called());
    QString words = tr("%1: %2 as eaten, %3 had it been fair fruit at its best, an average taster "
                       "and an average year.")
                        .arg(name, numberText(waterfall.rawMean, 1),
                             doubtText(merit.value, merit.standardError, 1));
    if (detail->above) {
        words += QLatin1Char(' ') +
                 tr("Better than %1: %2.")
                     .arg(QString::fromStdString(view.genotypes()[*detail->reference].called()),
                          chanceText(*detail->above));
    }
    m_summary->setText(words);
    m_note->setText(tr("Points of liking, 1 to 9; each figure is the mean over its scores. The "
                       "switches count for this picture only: table and suggestions keep all "
                       "corrections."));
    if (!focused.isEmpty()) {
        if (QCheckBox* box = switchOf(focused)) {
            box->setFocus(Qt::OtherFocusReason);
        }
    }
}

} // namespace pipwright::ui
