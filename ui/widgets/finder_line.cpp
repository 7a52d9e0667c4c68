#include "ui/widgets/finder_line.h"

#include <QAbstractListModel>
#include <QAction>
#include <QFrame>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

class FoundThingsModel : public QAbstractListModel {
  public:
    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<FoundThing> things) {
        beginResetModel();
        m_things = std::move(things);
        endResetModel();
    }
    [[nodiscard]] const FoundThing& at(int row) const {
        return m_things.at(static_cast<std::size_t>(row));
    }
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_things.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override {
        if (!index.isValid()) {
            return {};
        }
        const FoundThing& thing = at(index.row());
        if (role == Qt::DisplayRole) {
            return thing.title;
        }
        if (role == Qt::AccessibleTextRole) {
            return QStringList{thing.title, thing.detail, thing.kind}.join(QStringLiteral(", "));
        }
        return {};
    }

  private:
    std::vector<FoundThing> m_things;
};

namespace {

constexpr int kMostRows = 10;
constexpr int kIconSide = 16;

/// Title in ink, detail in second ink, kind at the right end.
class FoundThingPainter : public QStyledItemDelegate {
  public:
    FoundThingPainter(const FoundThingsModel* model, QObject* parent)
        : QStyledItemDelegate(parent), m_model(model) {}

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex&) const override {
        return {0, option.fontMetrics.height() + 10};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const Theme& theme = themeOf(option.widget);
        const FoundThing& thing = m_model->at(index.row());
        const bool current = option.state.testFlag(QStyle::State_Selected);
        painter->fillRect(option.rect, current ? theme.sky : theme.surface);
        const QColor ink = current ? theme.onSky : theme.ink;
        const QColor second = current ? theme.onSky : theme.secondInk;
        QRect room = option.rect.adjusted(theme.space, 0, -theme.space, 0);
        if (thing.icon) {
            const QRect square(room.x(), room.center().y() - kIconSide / 2 + 1, kIconSide,
                               kIconSide);
            // On the sky of the current row the other theme's ink is the one that shows.
            icon(*thing.icon, current == theme.dark ? lightTheme() : darkTheme())
                .paint(painter, square);
        }
        room.setLeft(room.left() + kIconSide + theme.space);
        room.setRight(room.right() - drawPart(*painter, room, thing.kind, second, theme.smallFont(),
                                              Qt::AlignRight));
        room.setLeft(room.left() +
                     drawPart(*painter, room, thing.title, ink, theme.strongFont(), Qt::AlignLeft));
        drawPart(*painter, room, thing.detail, second, theme.bodyFont(), Qt::AlignLeft);
    }

  private:
    /// Returns the width used with the space behind it.
    static int drawPart(QPainter& painter, const QRect& room, const QString& text,
                        const QColor& colour, const QFont& font, Qt::Alignment side) {
        if (text.isEmpty() || room.width() < 20) {
            return 0;
        }
        painter.setFont(font);
        painter.setPen(colour);
        const QFontMetrics metrics(font);
        const QString shown = metrics.elidedText(text, Qt::ElideRight, room.width());
        painter.drawText(room, static_cast<int>(side | Qt::AlignVCenter), shown);
        return metrics.horizontalAdvance(shown) + 10;
    }

    const FoundThingsModel* m_model;
};

} // namespace

FinderLine::FinderLine(QWidget* parent)
    : QWidget(parent), m_line(new QLineEdit(this)), m_list(new QListView(this)),
      m_model(new FoundThingsModel(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_line);
    setFocusProxy(m_line);
    m_line->addAction(icon(IconName::find), QLineEdit::LeadingPosition);
    m_line->setClearButtonEnabled(true);
    m_line->setAccessibleName(tr("Find"));
    m_line->installEventFilter(this);
    m_list->setModel(m_model);
    m_list->setItemDelegate(new FoundThingPainter(m_model, m_list));
    m_list->setFocusPolicy(Qt::NoFocus);
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setAccessibleName(tr("Found"));
    m_list->hide();
    connect(m_line, &QLineEdit::textEdited, this, &FinderLine::look);
    connect(m_line, &QLineEdit::textChanged, this, [this](const QString& text) {
        if (text.isEmpty()) {
            hideResults();
        }
    });
    connect(m_list, &QListView::clicked, this,
            [this](const QModelIndex& index) { chooseRow(index.row()); });
}

FinderLine::~FinderLine() {
    // While it hangs below the line the list belongs to the window.
    if (m_list->parent() != this) {
        delete m_list;
    }
}

void FinderLine::setProvider(Provider provider) {
    m_provider = std::move(provider);
}

void FinderLine::setPlaceholder(const QString& text) {
    m_line->setPlaceholderText(text);
    m_line->setAccessibleDescription(text);
}

void FinderLine::begin(const QString& text) {
    m_line->setFocus(Qt::ShortcutFocusReason);
    if (text.isEmpty()) {
        m_line->selectAll();
        return;
    }
    m_line->setText(text);
    look();
}

QString FinderLine::text() const {
    return m_line->text();
}
bool FinderLine::isShowingResults() const {
    return !m_list->isHidden();
}
int FinderLine::resultCount() const {
    return m_model->rowCount({});
}

bool FinderLine::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_line) {
        if (event->type() == QEvent::KeyPress) {
            return takeKey(static_cast<QKeyEvent*>(event)->key());
        }
        if (event->type() == QEvent::FocusOut) {
            hideResults();
        }
    } else if (event->type() == QEvent::Resize && isShowingResults()) {
        placeResults();
    }
    return QWidget::eventFilter(watched, event);
}

void FinderLine::look() {
    const QString text = m_line->text().trimmed();
    m_model->show(text.isEmpty() || !m_provider ? std::vector<FoundThing>() : m_provider(text));
    if (text.isEmpty()) {
        hideResults();
        return;
    }
    if (resultCount() == 0) {
        m_line->setAccessibleDescription(tr("Nothing found"));
        hideResults();
        return;
    }
    m_line->setAccessibleDescription(tr("%n thing(s) found", nullptr, resultCount()));
    placeResults();
    moveTo(0);
}

void FinderLine::placeResults() {
    QWidget* top = window();
    if (m_list->parentWidget() != top) {
        m_list->setParent(top);
        top->installEventFilter(this);
    }
    const QPoint corner = mapTo(top, QPoint(0, height() + 2));
    const int rowHeight = m_list->sizeHintForRow(0);
    const int rows = std::min(resultCount(), kMostRows);
    const int room = std::max(rowHeight, top->height() - corner.y() - themeOf(this).space);
    m_list->setGeometry(corner.x(), corner.y(), width(),
                        std::min(room, rows * rowHeight + 2 * m_list->frameWidth()));
    m_list->show();
    m_list->raise();
}

void FinderLine::hideResults() {
    m_list->hide();
}

bool FinderLine::takeKey(int key) {
    const int row = m_list->currentIndex().row();
    switch (key) {
    case Qt::Key_Down:
    case Qt::Key_PageDown:
        if (!isShowingResults() && resultCount() > 0) {
            placeResults();
        } else {
            moveTo(row + (key == Qt::Key_Down ? 1 : kMostRows));
        }
        return true;
    case Qt::Key_Up:
    case Qt::Key_PageUp:
        moveTo(row - (key == Qt::Key_Up ? 1 : kMostRows));
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (isShowingResults()) {
            chooseRow(row);
        } else {
            look();
        }
        return true;
    case Qt::Key_Escape:
        if (isShowingResults()) {
            hideResults();
        } else {
            Q_EMIT dismissed();
        }
        return true;
    default:
        return false;
    }
}

void FinderLine::chooseRow(int row) {
    if (row < 0 || row >= resultCount()) {
        return;
    }
    const QString id = m_model->at(row).id;
    m_line->clear(); // it was found: the next search begins afresh
    hideResults();
    Q_EMIT chosen(id);
}

void FinderLine::moveTo(int row) {
    if (resultCount() == 0) {
        return;
    }
    const QModelIndex index = m_model->index(std::clamp(row, 0, resultCount() - 1));
    m_list->setCurrentIndex(index);
    m_list->scrollTo(index);
}

} // namespace pipwright::ui
