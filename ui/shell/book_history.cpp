#include "ui/shell/book_history.h"

#include "ui/book/book_words.h"
#include "ui/book/open_book.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/theme.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

constexpr std::size_t kAtOnce = 200;
constexpr int kPositionRole = Qt::UserRole + 1;

QString valueWords(const Value& value) {
    const QString words = withLocalDates(QString::fromStdString(textOf(value)));
    return words.isEmpty() ? QStringLiteral("–") : words;
}

} // namespace

QString fieldWords(const Change& change, const FieldChange& field) {
    const QString name = journalWord(fieldsOf(change.kind)[field.field].name);
    switch (change.what) {
    case ChangeWhat::created:
        return QStringLiteral("%1: %2").arg(name, valueWords(field.after));
    case ChangeWhat::erased:
        return QStringLiteral("%1: %2").arg(name, valueWords(field.before));
    case ChangeWhat::edited:
        break;
    }
    return QStringLiteral("%1: %2 → %3")
        .arg(name, valueWords(field.before), valueWords(field.after));
}

BookHistory::BookHistory(OpenBook& book, QWidget* parent) : QDialog(parent), m_book(book) {
    setWindowTitle(tr("History of the book"));
    resize(980, 620);
    m_list = new QTreeWidget;
    m_list->setAccessibleName(tr("Entries of the journal"));
    m_list->setHeaderLabels({tr("when"), tr("what"), tr("who")});
    m_list->header()->setStretchLastSection(false);
    m_list->header()->setSectionResizeMode(1, QHeaderView::Stretch);
    m_list->setUniformRowHeights(true);
    m_older = new QPushButton(tr("Older entries"));
    auto* words = new QLabel(tr("Open an entry to see every field before and after. Nothing here "
                                "can be erased; undone steps stay listed."));
    words->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    auto* column = new QVBoxLayout(this);
    column->addWidget(words);
    column->addWidget(m_list, 1);
    column->addWidget(m_older);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    connect(m_older, &QPushButton::clicked, this, &BookHistory::addOlder);
    connect(&m_book, &OpenBook::undoChanged, this, &BookHistory::refresh);
    connect(m_list, &QTreeWidget::itemExpanded, this, [this](QTreeWidgetItem* item) {
        if (item->parent() == nullptr) {
            expand(m_list->indexOfTopLevelItem(item));
        }
    });
    refresh();
}

void BookHistory::refresh() {
    m_list->clear();
    m_oldest = m_book.store().position() + 1;
    addOlder();
}

void BookHistory::addOlder() {
    JournalRequest request;
    request.before = m_oldest;
    request.limit = kAtOnce;
    request.withChanges = false;
    const auto entries = m_book.store().journal(request);
    if (!entries) {
        Q_EMIT m_book.problemMet(entries.problem());
        return;
    }
    const auto view = m_book.view();
    for (const JournalEntry& entry : *entries) {
        m_oldest = entry.position;
        QString sentence = QString::fromStdString(entry.sentence);
        if (entry.kind == EntryKind::undo) {
            sentence = tr("Undone: %1").arg(sentence);
        } else if (entry.kind == EntryKind::redo) {
            sentence = tr("Done again: %1").arg(sentence);
        } else if (entry.kind == EntryKind::baseline) {
            sentence = tr("Baseline: the content came without its history");
        }
        const Person* person = entry.person ? view->person(*entry.person) : nullptr;
        sentence = withLocalDates(sentence);
        auto* item = new QTreeWidgetItem(
            {momentText(entry.moment), sentence,
             person != nullptr ? QString::fromStdString(person->name) : QString()});
        item->setToolTip(1, sentence); // what has no room on the line can be read all the same
        item->setData(0, kPositionRole, static_cast<qlonglong>(entry.position));
        item->setChildIndicatorPolicy(QTreeWidgetItem::ShowIndicator);
        m_list->addTopLevelItem(item);
    }
    m_list->resizeColumnToContents(0);
    m_list->resizeColumnToContents(2);
    m_older->setEnabled(entries->size() == kAtOnce);
}

void BookHistory::expand(int row) {
    constexpr int kMostChanges = 300;
    QTreeWidgetItem* item = m_list->topLevelItem(row);
    if (item->childCount() > 0) {
        return;
    }
    JournalRequest request;
    request.after = item->data(0, kPositionRole).toLongLong() - 1;
    request.before = request.after + 2;
    const auto entries = m_book.store().journal(request);
    if (!entries || entries->empty()) {
        return;
    }
    int shown = 0;
    const auto& changes = entries->front().changes;
    for (const Change& change : changes) {
        if (++shown > kMostChanges) {
            item->addChild(new QTreeWidgetItem(
                {QString(),
                 tr("... and %n more", nullptr, static_cast<int>(changes.size()) - kMostChanges)}));
            break;
        }
        const QString verb = change.what == ChangeWhat::created  ? tr("new %1")
                             : change.what == ChangeWhat::erased ? tr("taken back: %1")
                                                                 : tr("changed: %1");
        auto* child = new QTreeWidgetItem({QString(), verb.arg(journalWord(nameOf(change.kind)))});
        for (const FieldChange& field : change.fields) {
            const bool blank = change.what == ChangeWhat::created && textOf(field.after).empty();
            if (!blank) {
                const QString words = fieldWords(change, field);
                auto* line = new QTreeWidgetItem({QString(), words});
                line->setToolTip(1, words);
                child->addChild(line);
            }
        }
        item->addChild(child);
        child->setExpanded(changes.size() <= 3);
    }
}

} // namespace pipwright::ui
