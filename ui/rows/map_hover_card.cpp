#include "ui/rows/map_hover_card.h"

#include "ui/widgets/theme.h"

#include <QGuiApplication>
#include <QLabel>
#include <QScreen>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kWidest = 340;

} // namespace

MapHoverCard::MapHoverCard(QWidget* parent)
    : QFrame(parent, Qt::ToolTip), m_title(new QLabel(this)), m_lines(new QLabel(this)) {
    setAttribute(Qt::WA_ShowWithoutActivating);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFrameShape(QFrame::Box);
    setFrameShadow(QFrame::Plain);
    setAccessibleName(tr("About this tree"));
    for (QLabel* label : {m_title, m_lines}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(10, 8, 10, 8);
    column->setSpacing(3);
    column->addWidget(m_title);
    column->addWidget(m_lines);
    dress();
}

void MapHoverCard::dress() {
    const Theme& theme = themeOf(parentWidget());
    QPalette colours = palette();
    colours.setColor(QPalette::Window, theme.surface);
    colours.setColor(QPalette::WindowText, theme.line);
    setPalette(colours);
    setAutoFillBackground(true);
    QPalette words = colours;
    words.setColor(QPalette::WindowText, theme.ink);
    m_title->setPalette(words);
    m_title->setFont(theme.strongFont());
    words.setColor(QPalette::WindowText, theme.secondInk);
    m_lines->setPalette(words);
    m_lines->setFont(theme.bodyFont());
}

void MapHoverCard::showFor(const HoverWords& words, const QRect& cell) {
    dress();
    m_title->setText(words.title);
    m_lines->setText(words.lines.join(QLatin1Char('\n')));
    m_lines->setVisible(!words.lines.isEmpty());
    const auto widest = [](const QLabel* label) {
        int wide = 0;
        const auto lines = label->text().split(QLatin1Char('\n'));
        for (const QString& line : lines) {
            wide = std::max(wide, label->fontMetrics().horizontalAdvance(line));
        }
        return wide + 2;
    };
    const int wide = std::clamp(std::max(widest(m_title), widest(m_lines)), 80, kWidest);
    m_title->setFixedWidth(wide);
    m_lines->setFixedWidth(wide);
    adjustSize();
    QRect room(0, 0, 1 << 20, 1 << 20);
    if (const QScreen* screen = QGuiApplication::screenAt(cell.center())) {
        room = screen->availableGeometry();
    }
    QPoint corner(cell.left(), cell.bottom() + 8);
    if (corner.y() + height() > room.bottom()) {
        corner.setY(cell.top() - 8 - height());
    }
    corner.setX(std::clamp(corner.x(), room.left(), std::max(room.left(), room.right() - width())));
    corner.setY(std::max(corner.y(), room.top()));
    move(corner);
    show();
    raise();
}

QString MapHoverCard::text() const {
    return m_lines->text().isEmpty() ? m_title->text()
                                     : m_title->text() + QLatin1Char('\n') + m_lines->text();
}

} // namespace pipwright::ui
