#include "ui/widgets/notice_bar.h"

#include "ui/widgets/flow_text.h"
#include "ui/widgets/icons.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QPushButton>
#include <QToolButton>

namespace pipwright::ui {

namespace {

constexpr int kNoticeBar = 4;
constexpr int kNoticeIcon = 20;

} // namespace

NoticeBar::NoticeBar(QWidget* parent)
    : QWidget(parent), m_what(new FlowText({}, FlowText::Weight::strong, this)),
      m_remedy(new FlowText({}, FlowText::Weight::body, this)), m_offer(new QPushButton(this)),
      m_close(new QToolButton(this)) {
    const Theme& theme = themeOf(this);
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget(m_what);
    words->addWidget(m_remedy);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(kNoticeBar + kNoticeIcon + 2 * theme.space, theme.space, theme.space,
                               theme.space);
    layout->setSpacing(theme.space);
    layout->addLayout(words, 1);
    layout->addWidget(m_offer, 0, Qt::AlignVCenter);
    layout->addWidget(m_close, 0, Qt::AlignTop);
    m_close->setAutoRaise(true);
    m_close->setIcon(icon(IconName::close));
    m_close->setAccessibleName(tr("Close this notice"));
    m_close->setToolTip(tr("Close (Esc)"));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    connect(m_offer, &QPushButton::clicked, this, &NoticeBar::offerTaken);
    connect(m_close, &QToolButton::clicked, this, &NoticeBar::close);
    hide();
}

void NoticeBar::tell(const Problem& problem) {
    const QString what = QString::fromStdString(problem.what);
    const QString where = QString::fromStdString(problem.where);
    say(problem.code == ProblemCode::cancelled ? Kind::word : Kind::fault,
        where.isEmpty() ? what : where + QStringLiteral(": ") + what,
        QString::fromStdString(problem.remedy));
}

void NoticeBar::say(Kind kind, const QString& what, const QString& remedy) {
    m_kind = kind;
    m_what->setText(what);
    m_remedy->setText(remedy);
    m_remedy->setVisible(!remedy.isEmpty());
    m_offer->hide();
    setAccessibleName(text());
    show();
    update();
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

void NoticeBar::offer(const QString& action) {
    m_offer->setText(action);
    m_offer->setAccessibleName(action);
    m_offer->show();
}

void NoticeBar::close() {
    if (!isHidden()) {
        hide();
        Q_EMIT closed();
    }
}

QString NoticeBar::text() const {
    return m_remedy->text().isEmpty() ? m_what->text()
                                      : m_what->text() + QLatin1Char(' ') + m_remedy->text();
}

void NoticeBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Theme& theme = themeOf(this);
    const QColor colour = m_kind == Kind::fault       ? theme.blood
                          : m_kind == Kind::attention ? theme.russet
                                                      : theme.leaf;
    painter.fillRect(rect(), theme.surface);
    painter.fillRect(0, 0, kNoticeBar, height(), colour);
    painter.fillRect(0, height() - 1, width(), 1, theme.line);
    const QIcon mark = icon(m_kind == Kind::word ? IconName::check : IconName::warning);
    mark.paint(&painter, QRect(kNoticeBar + theme.space, theme.space, kNoticeIcon, kNoticeIcon));
}

void NoticeBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        close();
        return;
    }
    QWidget::keyPressEvent(event);
}

} // namespace pipwright::ui
