#include "ui/widgets/flow_layout.h"

#include <QWidget>

#include <algorithm>

namespace pipwright::ui {

FlowLayout::FlowLayout(QWidget* parent, int gap) : QLayout(parent), m_gap(gap) {
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() {
    qDeleteAll(m_items);
}

void FlowLayout::addItem(QLayoutItem* item) {
    m_items.append(item);
}
int FlowLayout::count() const {
    return static_cast<int>(m_items.size());
}
QLayoutItem* FlowLayout::itemAt(int index) const {
    return m_items.value(index);
}

QLayoutItem* FlowLayout::takeAt(int index) {
    return index >= 0 && index < m_items.size() ? m_items.takeAt(index) : nullptr;
}

Qt::Orientations FlowLayout::expandingDirections() const {
    return {};
}
bool FlowLayout::hasHeightForWidth() const {
    return true;
}

int FlowLayout::heightForWidth(int width) const {
    return arrange(QRect(0, 0, width, 0), false);
}

QSize FlowLayout::sizeHint() const {
    int width = 0;
    int height = 0;
    for (const QLayoutItem* item : m_items) {
        if (!item->isEmpty()) {
            width += item->sizeHint().width() + (width > 0 ? m_gap : 0);
            height = std::max(height, item->sizeHint().height());
        }
    }
    const QMargins margins = contentsMargins();
    return {width + margins.left() + margins.right(), height + margins.top() + margins.bottom()};
}

QSize FlowLayout::minimumSize() const {
    QSize size;
    for (const QLayoutItem* item : m_items) {
        size = size.expandedTo(item->minimumSize());
    }
    const QMargins margins = contentsMargins();
    return size + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

void FlowLayout::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    arrange(rect, true);
}

int FlowLayout::arrange(const QRect& rect, bool moves) const {
    const QRect inside = rect.marginsRemoved(contentsMargins());
    int x = inside.x();
    int y = inside.y();
    int lineHeight = 0;
    for (QLayoutItem* item : m_items) {
        if (item->isEmpty()) {
            continue;
        }
        QSize size = item->sizeHint();
        size.setWidth(
            std::min(size.width(), std::max(inside.width(), item->minimumSize().width())));
        if (x > inside.x() && x + size.width() > inside.x() + inside.width()) {
            x = inside.x();
            y += lineHeight + m_gap;
            lineHeight = 0;
        }
        if (moves) {
            item->setGeometry(QRect(QPoint(x, y), size));
        }
        x += size.width() + m_gap;
        lineHeight = std::max(lineHeight, size.height());
    }
    return y + lineHeight - rect.y() + contentsMargins().bottom();
}

} // namespace pipwright::ui
