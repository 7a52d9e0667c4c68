#include "ui/widgets/navigation_rail.h"

#include <QButtonGroup>
#include <QKeyEvent>
#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kRailIcon = 24;
constexpr int kRailBar = 3;

/// Icon above word; a bar and weight mark the chosen one, so that colour is not alone.
class RailButton : public QToolButton {
  public:
    using QToolButton::QToolButton;

    [[nodiscard]] QSize sizeHint() const override {
        const Theme& theme = themeOf(this);
        const QFontMetrics metrics(theme.strongFont());
        return {std::max(72, metrics.horizontalAdvance(text()) + 2 * theme.space + 2 * kRailBar),
                kRailIcon + metrics.height() + 2 * theme.space + 2};
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        const Theme& theme = themeOf(this);
        if (isChecked() || underMouse()) {
            painter.fillRect(rect(), theme.wash);
        }
        if (isChecked()) {
            painter.fillRect(0, 0, kRailBar, height(), theme.leaf);
        }
        const QRect iconRect((width() - kRailIcon) / 2, theme.space, kRailIcon, kRailIcon);
        icon().paint(&painter, iconRect);
        painter.setFont(isChecked() ? theme.strongFont() : theme.bodyFont());
        painter.setPen(theme.ink);
        const int top = iconRect.bottom() + 2;
        painter.drawText(QRect(0, top, width(), height() - top - theme.gap), Qt::AlignCenter,
                         text());
        if (hasFocus()) {
            painter.setPen(QPen(theme.sky, 2));
            painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
        }
    }
};

} // namespace

NavigationRail::NavigationRail(QWidget* parent)
    : QWidget(parent), m_layout(new QVBoxLayout(this)), m_group(new QButtonGroup(this)) {
    m_layout->setContentsMargins(0, 0, 1, 0);
    m_layout->setSpacing(0);
    m_layout->addStretch(1);
    m_group->setExclusive(true);
    setAccessibleName(tr("Places"));
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
    connect(m_group, &QButtonGroup::idClicked, this,
            [this](int index) { Q_EMIT placeChosen(m_keys.at(index)); });
}

void NavigationRail::addPlace(const QString& key, IconName name, const QString& title) {
    const int index = static_cast<int>(m_keys.size());
    auto* button = new RailButton(this);
    button->setText(title);
    button->setIcon(icon(name));
    button->setCheckable(true);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    button->setAccessibleName(title);
    m_group->addButton(button, index);
    m_layout->insertWidget(index, button);
    m_keys.append(key);
    if (index < 9) {
        const QKeySequence keys(Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + index));
        const QString text = keys.toString(QKeySequence::NativeText);
        button->setToolTip(QStringLiteral("%1 (%2)").arg(title, text));
        button->setAccessibleDescription(text);
    }
}

void NavigationRail::setCurrent(const QString& key) {
    if (QToolButton* wanted = button(key)) {
        wanted->setChecked(true);
    }
}

QString NavigationRail::current() const {
    return m_keys.value(m_group->checkedId());
}

QStringList NavigationRail::places() const {
    return m_keys;
}

QToolButton* NavigationRail::button(const QString& key) const {
    return qobject_cast<QToolButton*>(m_group->button(static_cast<int>(m_keys.indexOf(key))));
}

void NavigationRail::keyPressEvent(QKeyEvent* event) {
    // With a window around it the menu has these keys; without one the rail answers itself.
    const int digit = event->key() - Qt::Key_1;
    if (event->modifiers() == Qt::AltModifier && digit >= 0 && digit < m_keys.size()) {
        choose(digit);
        return;
    }
    const int step = event->key() == Qt::Key_Down ? 1 : event->key() == Qt::Key_Up ? -1 : 0;
    if (step == 0 || m_keys.isEmpty()) {
        QWidget::keyPressEvent(event);
        return;
    }
    const int last = static_cast<int>(m_keys.size()) - 1;
    choose(std::clamp(m_group->checkedId() + step, 0, last));
}

void NavigationRail::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Theme& theme = themeOf(this);
    painter.fillRect(rect(), theme.raised);
    painter.fillRect(width() - 1, 0, 1, height(), theme.line);
}

void NavigationRail::choose(int index) {
    m_group->button(index)->setChecked(true);
    m_group->button(index)->setFocus(Qt::OtherFocusReason);
    Q_EMIT placeChosen(m_keys.at(index));
}

} // namespace pipwright::ui
