#include "ui/widgets/flow_text.h"

#include "ui/widgets/theme.h"

#include <QEvent>
#include <QPainter>

#include <algorithm>

namespace pipwright::ui {

FlowText::FlowText(const QString& text, Weight weight, QWidget* parent)
    : QLabel(text, parent), m_weight(weight) {
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    setFocusPolicy(Qt::ClickFocus);
    dress();
}

void FlowText::setWeight(Weight weight) {
    m_weight = weight;
    dress();
}

void FlowText::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && !m_dressing) {
        dress();
    }
}

void FlowText::dress() {
    m_dressing = true;
    const Theme& theme = themeOf(this);
    switch (m_weight) {
    case Weight::body:
    case Weight::second:
        setFont(theme.bodyFont());
        break;
    case Weight::strong:
        setFont(theme.strongFont());
        break;
    case Weight::heading:
        setFont(theme.headingFont());
        break;
    case Weight::small:
    case Weight::fault:
        setFont(theme.smallFont());
        break;
    }
    const bool second = m_weight == Weight::second || m_weight == Weight::small;
    // Roles, not colours: they follow the theme by themselves.
    setForegroundRole(m_weight == Weight::fault ? QPalette::BrightText
                      : second                  ? QPalette::PlaceholderText
                                                : QPalette::WindowText);
    m_dressing = false;
}

ElidedText::ElidedText(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void ElidedText::setText(const QString& text) {
    if (text == m_text) {
        return;
    }
    m_text = text;
    setAccessibleName(text);
    refreshToolTip();
    updateGeometry();
    update();
}

void ElidedText::setSecond(bool second) {
    m_second = second;
    update();
}

bool ElidedText::isElided() const {
    return fontMetrics().horizontalAdvance(m_text) > width();
}

QSize ElidedText::sizeHint() const {
    return {fontMetrics().horizontalAdvance(m_text) + 1, fontMetrics().height()};
}

QSize ElidedText::minimumSizeHint() const {
    const int some = fontMetrics().averageCharWidth() * 6;
    return {std::min(sizeHint().width(), some), fontMetrics().height()};
}

void ElidedText::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Theme& theme = themeOf(this);
    painter.setPen(m_second ? theme.secondInk : theme.ink);
    painter.drawText(rect(), Qt::AlignLeft | Qt::AlignVCenter,
                     fontMetrics().elidedText(m_text, Qt::ElideRight, width()));
}

void ElidedText::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    refreshToolTip();
}

void ElidedText::refreshToolTip() {
    setToolTip(isElided() ? m_text : QString());
}

} // namespace pipwright::ui
