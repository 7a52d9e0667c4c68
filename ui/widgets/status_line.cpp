#include "ui/widgets/status_line.h"

#include "ui/widgets/flow_text.h"
#include "ui/widgets/icons.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QProgressBar>
#include <QTimer>
#include <QToolButton>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

constexpr int kProgressWidth = 96;
constexpr int kHintMilliseconds = 8000; // to read it twice
constexpr int kShortestUndo = 200;      // pixels the sentence has at least before it is elided
constexpr int kShareOfUndo = 3;         // of the line: one third

QToolButton* flatButton(QWidget* parent, IconName name, const QString& words) {
    auto* button = new QToolButton(parent);
    button->setAutoRaise(true);
    button->setIcon(icon(name));
    button->setIconSize(QSize(16, 16));
    button->setAccessibleName(words);
    button->setToolTip(words);
    return button;
}

} // namespace

StatusLine::StatusLine(QWidget* parent)
    : QWidget(parent), m_hint(new QTimer(this)), m_selection(new ElidedText(this)),
      m_filter(new ElidedText(this)),
      m_clearFilter(flatButton(this, IconName::close, tr("Show all again"))),
      m_work(new ElidedText(this)), m_progress(new QProgressBar(this)),
      m_cancel(flatButton(this, IconName::close, tr("Stop this work"))),
      m_undo(flatButton(this, IconName::undo, tr("Undo"))),
      m_today(flatButton(this, IconName::calendar, tr("The day taken as today"))) {
    const Theme& theme = themeOf(this);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(theme.space, 3, theme.space, 2);
    layout->setSpacing(theme.gap);
    m_filter->setSecond(true);
    m_work->setSecond(true);
    m_progress->setTextVisible(false);
    m_progress->setFixedSize(kProgressWidth, 8);
    m_progress->setAccessibleName(tr("Work in the background"));
    for (QToolButton* button : {m_undo, m_today}) {
        button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    }
    layout->addWidget(m_selection);
    layout->addSpacing(theme.space);
    layout->addWidget(m_filter);
    layout->addWidget(m_clearFilter);
    layout->addStretch(1);
    layout->addWidget(m_work);
    layout->addWidget(m_progress);
    layout->addWidget(m_cancel);
    layout->addWidget(m_undo);
    layout->addWidget(m_today);
    setAccessibleName(tr("State of the book"));
    setFilter({});
    setUndo({});
    setToday({}, false);
    endWork();
    m_hint->setSingleShot(true);
    m_hint->setInterval(kHintMilliseconds);
    connect(m_hint, &QTimer::timeout, this, [this] { m_selection->setText(m_selectionWords); });
    connect(m_clearFilter, &QToolButton::clicked, this, &StatusLine::filterCleared);
    connect(m_cancel, &QToolButton::clicked, this, &StatusLine::workCancelled);
    connect(m_undo, &QToolButton::clicked, this, &StatusLine::undoWanted);
    connect(m_today, &QToolButton::clicked, this, &StatusLine::todayWanted);
}

void StatusLine::setSelection(const QString& text) {
    m_selectionWords = text;
    m_hint->stop();
    m_selection->setText(text);
}

void StatusLine::hint(const QString& text) {
    m_selection->setText(text);
    m_hint->start();
}

void StatusLine::setFilter(const QString& text) {
    m_filter->setText(text);
    m_filter->setVisible(!text.isEmpty());
    m_clearFilter->setVisible(!text.isEmpty());
}

void StatusLine::setUndo(const QString& sentence) {
    m_undo->setVisible(!sentence.isEmpty());
    const QString words = tr("Undo: %1").arg(sentence);
    m_undoWords = words;
    fitUndo();
    m_undo->setAccessibleName(words);
    m_undo->setToolTip(words);
}

void StatusLine::fitUndo() {
    const int room = std::max(kShortestUndo, width() / kShareOfUndo);
    m_undo->setText(m_undo->fontMetrics().elidedText(m_undoWords, Qt::ElideRight, room));
}

void StatusLine::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitUndo();
}

void StatusLine::setToday(const QString& day, bool chosen) {
    m_today->setVisible(!day.isEmpty());
    m_today->setText(chosen ? tr("today taken as %1").arg(day) : day);
    m_today->setAccessibleName(tr("The day taken as today: %1").arg(day));
    m_today->setToolTip(chosen ? tr("This day was set by hand or by the book. Click to change it.")
                               : tr("The day of the calendar. Click to take another day."));
}

void StatusLine::setWork(const QString& text, std::optional<double> share, bool canCancel) {
    m_work->setText(text);
    m_work->show();
    m_progress->setRange(0, share ? 1000 : 0);
    if (share) {
        m_progress->setValue(static_cast<int>(std::lround(1000 * std::clamp(*share, 0.0, 1.0))));
    }
    m_progress->setAccessibleDescription(text);
    m_progress->show();
    m_cancel->setVisible(canCancel);
}

void StatusLine::endWork() {
    m_work->hide();
    m_progress->hide();
    m_cancel->hide();
}

bool StatusLine::isWorking() const {
    return !m_progress->isHidden();
}

void StatusLine::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Theme& theme = themeOf(this);
    painter.fillRect(rect(), theme.raised);
    painter.fillRect(0, 0, width(), 1, theme.line);
}

} // namespace pipwright::ui
