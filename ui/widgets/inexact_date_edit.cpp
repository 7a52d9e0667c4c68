#include "ui/widgets/inexact_date_edit.h"

#include "ui/widgets/flow_text.h"
#include "ui/widgets/number_text.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QVBoxLayout>

namespace pipwright::ui {

InexactDateEdit::InexactDateEdit(Date today, QWidget* parent)
    : QWidget(parent), m_today(today), m_line(new QLineEdit(this)),
      m_meaning(new FlowText({}, FlowText::Weight::small, this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addWidget(m_line);
    layout->addWidget(m_meaning);
    setFocusProxy(m_line);
    m_line->setAccessibleName(tr("Date"));
    m_line->setPlaceholderText(tr("22 Aug, last Tuesday, late August …"));
    m_line->installEventFilter(this);
    connect(m_line, &QLineEdit::textChanged, this, &InexactDateEdit::read);
    connect(m_line, &QLineEdit::returnPressed, this, [this] {
        if (m_date) {
            Q_EMIT accepted();
        }
    });
    read();
}

void InexactDateEdit::setToday(Date today) {
    m_today = today;
    read();
}

void InexactDateEdit::setDate(const InexactDate& date) {
    const bool iso = date.typed.empty() || date.typed == date.from.iso();
    m_line->setText(iso ? dayWords(date.from) : QString::fromStdString(date.typed));
}

void InexactDateEdit::clear() {
    m_line->clear();
}
std::optional<InexactDate> InexactDateEdit::date() const {
    return m_date;
}
bool InexactDateEdit::isEmpty() const {
    return m_line->text().trimmed().isEmpty();
}
QString InexactDateEdit::meaning() const {
    return m_meaning->text();
}

bool InexactDateEdit::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_line && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down) {
            stepDays(key == Qt::Key_Up ? 1 : -1);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void InexactDateEdit::read() {
    const std::optional<InexactDate> before = m_date;
    m_date.reset();
    QString words;
    bool fault = false;
    if (isEmpty()) {
        words = tr("No date. Up for today.");
    } else {
        const auto read = readInexactDate(m_line->text().toStdString(), m_today);
        fault = !read;
        if (read) {
            m_date = *read;
            words = dateSpanText(read->from, read->to);
        } else {
            words = QString::fromStdString(read.problem().sentence());
        }
    }
    m_meaning->setWeight(fault ? FlowText::Weight::fault : FlowText::Weight::small);
    m_meaning->setText(words);
    m_line->setAccessibleDescription(words);
    if (m_date != before) {
        Q_EMIT dateChanged();
    }
}

QString InexactDateEdit::dayWords(Date day) const {
    const QString local = dateText(day);
    const auto read = readInexactDate(local.toStdString(), m_today);
    return read && read->isOneDay() && read->from == day ? local
                                                         : QString::fromStdString(day.iso());
}

void InexactDateEdit::stepDays(int days) {
    const Date day = m_date ? m_date->from.plusDays(days) : m_today;
    m_line->setText(dayWords(day));
}

} // namespace pipwright::ui
