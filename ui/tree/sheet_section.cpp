#include "ui/tree/sheet_section.h"

#include "ui/widgets/icons.h"
#include "ui/widgets/theme.h"

#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

/// The heading with its arrow over a hairline, across the whole sheet.
class SectionHeader : public QToolButton {
  public:
    using QToolButton::QToolButton;

    void setCount(const QString& count) {
        m_count = count;
        update();
    }
    [[nodiscard]] QSize sizeHint() const override {
        return {120, QFontMetrics(themeOf(this).strongFont()).height() + 12};
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const Theme& theme = themeOf(this);
        painter.fillRect(0, 0, width(), 1, theme.line);
        if (underMouse()) {
            painter.fillRect(rect().adjusted(0, 1, 0, 0), theme.wash);
        }
        const double middle = height() / 2.0 + 0.5;
        const QPointF at(13, middle);
        painter.setPen(QPen(theme.secondInk, 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        if (isChecked()) {
            painter.drawPolyline(
                QPolygonF({at + QPointF(-4, -2), at + QPointF(0, 2), at + QPointF(4, -2)}));
        } else {
            painter.drawPolyline(
                QPolygonF({at + QPointF(-2, -4), at + QPointF(2, 0), at + QPointF(-2, 4)}));
        }
        painter.setFont(theme.strongFont());
        painter.setPen(theme.ink);
        const QRect room = rect().adjusted(24, 1, -8, 0);
        painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, text());
        const int used = painter.fontMetrics().horizontalAdvance(text()) + theme.space;
        painter.setFont(theme.smallFont());
        painter.setPen(theme.secondInk);
        const QRect rest = room.adjusted(used, 0, 0, 0);
        painter.drawText(rest, Qt::AlignRight | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(m_count, Qt::ElideRight, rest.width()));
        if (hasFocus()) {
            painter.setPen(QPen(theme.sky, 2));
            painter.drawRoundedRect(QRectF(rect()).adjusted(1, 2, -1, -1), theme.radius,
                                    theme.radius);
        }
    }

  private:
    QString m_count;
};

} // namespace

SheetSection::SheetSection(const QString& title, QWidget* content, QWidget* parent)
    : QWidget(parent), m_title(title), m_header(new SectionHeader(this)), m_content(content) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(m_header);
    layout->addWidget(content);
    m_header->setText(title);
    m_header->setCheckable(true);
    m_header->setChecked(true);
    m_header->setFocusPolicy(Qt::StrongFocus);
    m_header->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(m_header, &QToolButton::toggled, this, [this](bool open) {
        m_content->setVisible(open);
        dress();
        Q_EMIT foldedChanged(!open);
    });
    dress();
}

void SheetSection::setCount(const QString& words) {
    m_count = words;
    static_cast<SectionHeader*>(m_header)->setCount(words);
    dress();
}

void SheetSection::setFolded(bool folded) {
    m_header->setChecked(!folded);
}

bool SheetSection::isFolded() const {
    return !m_header->isChecked();
}

void SheetSection::dress() {
    m_header->setAccessibleName(m_count.isEmpty() ? m_title
                                                  : m_title + QStringLiteral(", ") + m_count);
    m_header->setAccessibleDescription(isFolded() ? tr("folded") : tr("unfolded"));
    m_header->setToolTip(isFolded() ? tr("Unfold") : tr("Fold"));
}

} // namespace pipwright::ui
