#include "ui/tree/record_list.h"

#include "ui/widgets/flow_text.h"
#include "ui/widgets/theme.h"

#include <QContextMenuEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr std::size_t kFew = 8;
constexpr int kMarkHeight = 18;

/// The liking on its scale, beside the words.
class DotMark : public QWidget {
  public:
    DotMark(const IntervalDot& dot, QWidget* parent) : QWidget(parent), m_dot(dot) {
        setFixedSize(96, kMarkHeight);
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        const Theme& theme = themeOf(this);
        IntervalDot dot = m_dot;
        dot.colour = dot.uncertain ? theme.russet : theme.leaf;
        drawIntervalDot(painter, QRectF(rect()), dot, theme);
    }

  private:
    IntervalDot m_dot;
};

class RecordRow : public QWidget {
  public:
    RecordRow(const RecordWords& words, RecordList* list)
        : QWidget(list), m_list(list), m_voidings(words.voidings), m_lot(words.lot) {
        setFocusPolicy(Qt::StrongFocus);
        setAccessibleName(words.heading + QStringLiteral(". ") +
                          (words.quiet + words.lines).join(QStringLiteral(". ")));
        auto* layout = new QVBoxLayout(this);
        layout->setContentsMargins(8, 4, 4, 5);
        layout->setSpacing(1);
        auto* top = new QHBoxLayout;
        top->setSpacing(8);
        const bool alone = words.lines.isEmpty() && words.quiet.isEmpty();
        auto* heading = new FlowText(
            words.heading, alone ? FlowText::Weight::body : FlowText::Weight::strong, this);
        heading->setFocusPolicy(Qt::NoFocus);
        top->addWidget(heading, 1);
        if (words.dot) {
            top->addWidget(new DotMark(*words.dot, this), 0, Qt::AlignTop);
        }
        if (hasMenu()) {
            top->addWidget(makeButton(), 0, Qt::AlignTop);
        }
        layout->addLayout(top);
        addLines(words.quiet, FlowText::Weight::second);
        addLines(words.lines, FlowText::Weight::body);
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        const Theme& theme = themeOf(this);
        painter.fillRect(8, height() - 1, width() - 16, 1, theme.line);
        if (hasFocus()) {
            painter.setRenderHint(QPainter::Antialiasing);
            painter.setPen(QPen(theme.sky, 2));
            painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -2), theme.radius,
                                    theme.radius);
        }
    }
    void keyPressEvent(QKeyEvent* event) override {
        if (event->key() == Qt::Key_Delete && !m_voidings.empty()) {
            m_voidings.size() == 1 ? void(Q_EMIT m_list->voidWanted(m_voidings.front()))
                                   : openMenu(mapToGlobal(rect().bottomLeft()));
            return;
        }
        if (event->key() == Qt::Key_F2 && m_lot) {
            Q_EMIT m_list->conditionWanted(*m_lot);
            return;
        }
        QWidget::keyPressEvent(event);
    }
    void contextMenuEvent(QContextMenuEvent* event) override {
        if (hasMenu()) {
            openMenu(event->globalPos());
        }
    }

  private:
    [[nodiscard]] bool hasMenu() const { return m_lot.has_value() || !m_voidings.empty(); }
    void addLines(const QStringList& lines, FlowText::Weight weight) {
        for (const QString& line : lines) {
            auto* text = new FlowText(line, weight, this);
            text->setFocusPolicy(Qt::NoFocus);
            layout()->addWidget(text);
        }
    }
    QToolButton* makeButton() {
        auto* more = new QToolButton(this);
        more->setText(QStringLiteral("⋯"));
        more->setAutoRaise(true);
        more->setFocusPolicy(Qt::NoFocus); // Delete and the menu key do the same from the row
        more->setAccessibleName(RecordList::tr("What can be done with this record"));
        more->setToolTip(m_lot ? RecordList::tr("Put the condition right (F2), void (Delete)")
                               : RecordList::tr("Void this record (Delete)"));
        QObject::connect(more, &QToolButton::clicked, this,
                         [this, more] { openMenu(more->mapToGlobal(more->rect().bottomLeft())); });
        return more;
    }
    void openMenu(const QPoint& at) {
        auto* menu = new QMenu(this);
        menu->setAttribute(Qt::WA_DeleteOnClose);
        if (m_lot) {
            menu->addAction(RecordList::tr("Put the condition of the fruit right …"), m_list,
                            [list = m_list, lot = *m_lot] { Q_EMIT list->conditionWanted(lot); });
        }
        for (const Voiding& voiding : m_voidings) {
            menu->addAction(RecordList::tr("Void %1 …").arg(voiding.what), m_list,
                            [list = m_list, voiding] { Q_EMIT list->voidWanted(voiding); });
        }
        menu->popup(at);
    }

    RecordList* m_list;
    std::vector<Voiding> m_voidings;
    std::optional<KeptLot> m_lot;
};

} // namespace

RecordList::RecordList(const QString& nothingYet, QWidget* parent)
    : QWidget(parent), m_nothingYet(nothingYet), m_layout(new QVBoxLayout(this)) {
    m_layout->setContentsMargins(16, 0, 4, 4);
    m_layout->setSpacing(0);
}

void RecordList::setRecords(std::vector<RecordWords> records) {
    m_records = std::move(records);
    fill(kFew);
}

QWidget* RecordList::row(std::size_t index) const {
    return index < m_rows.size() ? m_rows[index] : nullptr;
}

void RecordList::fill(std::size_t most) {
    m_rows.clear();
    while (QLayoutItem* item = m_layout->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
    if (m_records.empty()) {
        auto* nothing = new FlowText(m_nothingYet, FlowText::Weight::second, this);
        nothing->setContentsMargins(8, 0, 8, 0);
        m_layout->addWidget(nothing);
        return;
    }
    const std::size_t shown = std::min(most, m_records.size());
    for (std::size_t i = 0; i < shown; ++i) {
        m_rows.push_back(new RecordRow(m_records[i], this));
        m_layout->addWidget(m_rows.back());
    }
    if (shown < m_records.size()) {
        auto* rest = new QPushButton(tr("Show all %1").arg(m_records.size()), this);
        rest->setFlat(true);
        m_layout->addWidget(rest, 0, Qt::AlignLeft);
        connect(rest, &QPushButton::clicked, this, [this, shown] {
            fill(m_records.size());
            m_rows[shown]->setFocus(Qt::OtherFocusReason);
        });
    }
}

} // namespace pipwright::ui
