#include "ui/shell/today_popup.h"

#include "ui/widgets/inexact_date_edit.h"
#include "ui/widgets/theme.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace pipwright::ui {

TodayPopup::TodayPopup(Date today, QWidget* parent) : QFrame(parent, Qt::Popup) {
    setAttribute(Qt::WA_DeleteOnClose);
    setFrameShape(QFrame::StyledPanel);
    m_edit = new InexactDateEdit(today);
    m_edit->line()->setText(QString::fromStdString(today.iso()));
    m_edit->line()->setAccessibleName(tr("Day taken as today"));
    auto* label = new QLabel(tr("Day taken as today"));
    label->setBuddy(m_edit->line());
    auto* take = new QPushButton(tr("Take this day"));
    auto* calendar = new QPushButton(tr("Follow the calendar"));
    auto* column = new QVBoxLayout(this);
    column->setSpacing(lightTheme().space);
    column->addWidget(label);
    column->addWidget(m_edit);
    column->addWidget(take);
    column->addWidget(calendar);
    setMinimumWidth(280);
    connect(m_edit, &InexactDateEdit::accepted, this, &TodayPopup::take);
    connect(take, &QPushButton::clicked, this, &TodayPopup::take);
    connect(calendar, &QPushButton::clicked, this, [this] {
        Q_EMIT chosen(std::nullopt);
        close();
    });
}

void TodayPopup::take() {
    const auto date = m_edit->date();
    if (date && date->from == date->to) {
        Q_EMIT chosen(date->from);
        close();
    }
}

void TodayPopup::showNear(QWidget* widget) {
    adjustSize();
    const QPoint corner = widget->mapToGlobal(QPoint(widget->width(), 0));
    move(corner - QPoint(width(), height()));
    show();
    m_edit->line()->setFocus();
    m_edit->line()->selectAll();
}

} // namespace pipwright::ui
