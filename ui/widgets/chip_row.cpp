#include "ui/widgets/chip_row.h"

#include "ui/widgets/flow_layout.h"
#include "ui/widgets/theme.h"

#include <QButtonGroup>
#include <QKeyEvent>
#include <QPainter>
#include <QToolButton>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kInset = 9;

/// The word with its letter before it; filled and heavier when chosen.
class ChipButton : public QToolButton {
  public:
    ChipButton(const Chip& chip, QWidget* parent) : QToolButton(parent), m_letter(chip.letter) {
        setText(chip.word);
        setCheckable(true);
        setAccessibleName(chip.word);
        setAccessibleDescription(chip.letter);
        setToolTip(chip.explanation);
        setFocusPolicy(Qt::StrongFocus);
    }

    [[nodiscard]] QSize sizeHint() const override {
        const Theme& theme = themeOf(this);
        // One more pixel: the advance is rounded, but words are elided by its exact value.
        return {QFontMetrics(theme.strongFont()).horizontalAdvance(text()) + 1 + letterWidth() +
                    2 * kInset,
                QFontMetrics(theme.bodyFont()).height() + theme.space};
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return {40, sizeHint().height()}; }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const Theme& theme = themeOf(this);
        const bool on = isChecked();
        const QColor edge = withContrast(theme.line, theme.surface, 3.0);
        const QRectF box = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
        painter.setPen(QPen(on ? theme.leaf : edge, 1));
        painter.setBrush(on ? theme.leaf : underMouse() ? theme.wash : theme.surface);
        painter.drawRoundedRect(box, box.height() / 2, box.height() / 2);
        QRect room = rect().adjusted(kInset, 0, -kInset, 0);
        if (!m_letter.isEmpty()) {
            painter.setFont(theme.smallFont());
            painter.setPen(on ? theme.onLeaf : theme.secondInk);
            painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, m_letter);
            room.setLeft(room.left() + letterWidth());
        }
        painter.setFont(on ? theme.strongFont() : theme.bodyFont());
        painter.setPen(on ? theme.onLeaf : isEnabled() ? theme.ink : theme.secondInk);
        painter.drawText(room, Qt::AlignCenter,
                         painter.fontMetrics().elidedText(text(), Qt::ElideRight, room.width()));
        if (hasFocus()) {
            painter.setPen(QPen(theme.sky, 2));
            painter.setBrush(Qt::NoBrush);
            const QRectF ring = QRectF(rect()).adjusted(1, 1, -1, -1);
            painter.drawRoundedRect(ring, ring.height() / 2, ring.height() / 2);
        }
    }

  private:
    [[nodiscard]] int letterWidth() const {
        return m_letter.isEmpty()
                   ? 0
                   : QFontMetrics(themeOf(this).smallFont()).horizontalAdvance(m_letter) + 6;
    }

    QString m_letter;
};

} // namespace

ChipRow::ChipRow(const QString& name, QWidget* parent)
    : QWidget(parent), m_group(new QButtonGroup(this)) {
    setLayout(new FlowLayout);
    setAccessibleName(name);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(m_group, &QButtonGroup::idClicked, this,
            [this](int index) { Q_EMIT choiceMade(m_chips[static_cast<std::size_t>(index)].key); });
}

void ChipRow::setChips(const std::vector<Chip>& chips) {
    const auto buttons = m_group->buttons();
    for (QAbstractButton* button : buttons) {
        m_group->removeButton(button);
        delete button;
    }
    m_chips = chips;
    for (std::size_t i = 0; i < m_chips.size(); ++i) {
        auto* button = new ChipButton(m_chips[i], this);
        m_group->addButton(button, static_cast<int>(i));
        layout()->addWidget(button);
        button->show();
    }
    setFocusProxy(m_chips.empty() ? nullptr : m_group->button(0));
    updateGeometry();
}

void ChipRow::setChosen(const std::optional<QString>& key) {
    if (QToolButton* wanted = key ? chip(*key) : nullptr) {
        wanted->setChecked(true);
        setFocusProxy(wanted);
        return;
    }
    // An exclusive group does not let go of its button.
    m_group->setExclusive(false);
    for (QAbstractButton* button : m_group->buttons()) {
        button->setChecked(false);
    }
    m_group->setExclusive(true);
}

std::optional<QString> ChipRow::chosen() const {
    const int index = m_group->checkedId();
    return index < 0 ? std::nullopt
                     : std::optional<QString>(m_chips[static_cast<std::size_t>(index)].key);
}

QToolButton* ChipRow::chip(const QString& key) const {
    for (std::size_t i = 0; i < m_chips.size(); ++i) {
        if (m_chips[i].key == key) {
            return qobject_cast<QToolButton*>(m_group->button(static_cast<int>(i)));
        }
    }
    return nullptr;
}

bool ChipRow::takeLetter(const QString& letter) {
    // As typed first, so that "b" and "B" may differ; then in any case.
    for (const auto sensitivity : {Qt::CaseSensitive, Qt::CaseInsensitive}) {
        for (std::size_t i = 0; i < m_chips.size(); ++i) {
            if (!letter.isEmpty() && m_chips[i].letter.compare(letter, sensitivity) == 0) {
                choose(static_cast<int>(i));
                return true;
            }
        }
    }
    return false;
}

void ChipRow::keyPressEvent(QKeyEvent* event) {
    int step = 0;
    if (event->key() == Qt::Key_Right || event->key() == Qt::Key_Down) {
        step = 1;
    } else if (event->key() == Qt::Key_Left || event->key() == Qt::Key_Up) {
        step = -1;
    }
    if (step != 0 && !m_chips.empty()) {
        const int last = static_cast<int>(m_chips.size()) - 1;
        choose(std::clamp(m_group->checkedId() + step, 0, last));
        return;
    }
    const bool plain = (event->modifiers() & ~Qt::ShiftModifier) == Qt::NoModifier;
    if (!plain || !takeLetter(event->text())) {
        QWidget::keyPressEvent(event);
    }
}

void ChipRow::choose(int index) {
    QAbstractButton* button = m_group->button(index);
    button->setChecked(true);
    button->setFocus(Qt::OtherFocusReason);
    setFocusProxy(button);
    Q_EMIT choiceMade(m_chips[static_cast<std::size_t>(index)].key);
}

} // namespace pipwright::ui
