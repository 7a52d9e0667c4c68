#include "ui/tree/tree_journal.h"

#include "ui/book/open_book.h"
#include "ui/book/orchard_words.h"
#include "ui/tree/change_words.h"
#include "ui/tree/record_list.h"
#include "ui/tree/tree_facts.h"
#include "ui/widgets/number_text.h"

#include <QComboBox>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <map>
#include <set>

namespace pipwright::ui {

namespace {

using Named = std::pair<Kind, Uuid>;

template <typename Thing>
void addWhere(std::set<Named>& named, const Store& store, std::string_view field, const Uuid& id) {
    if (const auto things = store.where<Thing>(field, id)) {
        for (const Thing& thing : *things) {
            named.emplace(KindOf<Thing>::value, thing.id.uuid);
        }
    }
}

void addLots(std::set<Named>& named, const Store& store, std::string_view field, const Uuid& id) {
    if (const auto lots = store.where<Lot>(field, id)) {
        for (const Lot& lot : *lots) {
            named.emplace(Kind::lot, lot.id.uuid);
            addWhere<Score>(named, store, "lot", lot.id.uuid);
        }
    }
}

/// The tree's own records, void ones among them, for their history is history too.
std::set<Named> recordsOf(const TreeFacts& facts, const Store& store) {
    std::set<Named> named;
    if (facts.life.plant) {
        const Uuid id = facts.life.plant->id.uuid;
        named.emplace(Kind::plant, id);
        addWhere<Identity>(named, store, "plant", id);
        addWhere<Observation>(named, store, "plant", id);
        addWhere<Photo>(named, store, "plant", id);
        addLots(named, store, "plant", id);
    }
    if (facts.life.genotype) {
        const Uuid id = facts.life.genotype->id.uuid;
        named.emplace(Kind::genotype, id);
        addWhere<Alias>(named, store, "genotype", id);
        addWhere<Parentage>(named, store, "genotype", id);
        addWhere<Observation>(named, store, "genotype", id);
        addWhere<Decision>(named, store, "genotype", id);
        addWhere<GraftWish>(named, store, "genotype", id);
        addWhere<GraftOrder>(named, store, "genotype", id);
        addWhere<Photo>(named, store, "genotype", id);
    }
    return named;
}

QString whenAndWho(const OrchardView& view, const JournalEntry& entry) {
    return momentText(entry.moment) + QStringLiteral(" · ") + personWords(view, entry.person);
}

QString sentenceOf(const JournalEntry& entry) {
    const QString sentence = withLocalDates(QString::fromStdString(entry.sentence));
    switch (entry.kind) {
    case pipwright::EntryKind::undo:
        return TreeJournal::tr("Undone: %1").arg(sentence);
    case pipwright::EntryKind::redo:
        return TreeJournal::tr("Done again: %1").arg(sentence);
    case pipwright::EntryKind::baseline:
        return TreeJournal::tr("Came with the book: %1").arg(sentence);
    case pipwright::EntryKind::edit:
        break;
    }
    return sentence;
}

} // namespace

TreeJournal::TreeJournal(const OpenBook& book, QWidget* parent)
    : QWidget(parent), m_book(book), m_fields(new QComboBox(this)),
      m_list(new RecordList(tr("Nothing has been written of this tree yet."), this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* row = new QVBoxLayout;
    row->setContentsMargins(24, 0, 12, 0);
    row->addWidget(m_fields);
    layout->addLayout(row);
    layout->addWidget(m_list);
    m_fields->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_fields->setMinimumContentsLength(10);
    m_fields->setAccessibleName(tr("Whose history: everything, or one field"));
    connect(m_fields, &QComboBox::currentIndexChanged, this, &TreeJournal::fillList);
}

void TreeJournal::show(const TreeFacts& facts) {
    std::map<std::int64_t, JournalEntry, std::greater<>> merged;
    for (const Named& named : recordsOf(facts, m_book.store())) {
        JournalRequest request;
        request.record = named;
        auto entries = m_book.store().journal(request);
        if (!entries) {
            Q_EMIT problemMet(entries.problem());
            return;
        }
        for (JournalEntry& entry : *entries) {
            auto& changes = entry.changes;
            std::erase_if(changes, [&named](const Change& change) {
                return change.kind != named.first || change.record != named.second;
            });
            const auto [at, fresh] = merged.try_emplace(entry.position, entry);
            if (!fresh) {
                auto& all = at->second.changes;
                all.insert(all.end(), changes.begin(), changes.end());
            }
        }
    }
    m_entries.clear();
    for (auto& [position, entry] : merged) {
        m_entries.push_back(std::move(entry));
    }
    fillFields();
    fillList();
}

void TreeJournal::fillFields() {
    std::set<std::pair<int, int>> seen;
    for (const JournalEntry& entry : m_entries) {
        for (const Change& change : entry.changes) {
            for (const FieldChange& field : change.fields) {
                if (change.what == ChangeWhat::edited) {
                    seen.emplace(static_cast<int>(change.kind), static_cast<int>(field.field));
                }
            }
        }
    }
    const QVariant chosen = m_fields->currentData();
    const QSignalBlocker quiet(m_fields);
    m_fields->clear();
    m_fields->addItem(tr("The whole history"));
    for (const auto& [kind, field] : seen) {
        const auto of = static_cast<Kind>(kind);
        const std::string_view name = nameOf(of);
        QString words = QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
        words.replace(QLatin1Char('_'), QLatin1Char(' '));
        m_fields->addItem(
            tr("Only %1, %2").arg(words, fieldWords(of, static_cast<std::size_t>(field))),
            QPoint(kind, field));
    }
    m_fields->setVisible(m_fields->count() > 1);
    m_fields->setCurrentIndex(std::max(0, chosen.isValid() ? m_fields->findData(chosen) : 0));
}

void TreeJournal::fillList() {
    const OrchardView& view = *m_book.view();
    const QVariant chosen = m_fields->currentData();
    std::vector<RecordWords> words;
    for (const JournalEntry& entry : m_entries) {
        RecordWords one;
        one.heading = whenAndWho(view, entry);
        one.lines << sentenceOf(entry);
        bool says = !chosen.isValid();
        for (const Change& change : entry.changes) {
            if (!chosen.isValid()) {
                one.lines << changeWords(view, change);
                continue;
            }
            const QPoint wanted = chosen.toPoint();
            Change only = change;
            std::erase_if(only.fields, [&](const FieldChange& field) {
                return static_cast<int>(change.kind) != wanted.x() ||
                       static_cast<int>(field.field) != wanted.y();
            });
            if (!only.fields.empty()) {
                says = true;
                one.lines << changeWords(view, only);
            }
        }
        if (says) {
            words.push_back(std::move(one));
        }
    }
    m_list->setRecords(std::move(words));
}

} // namespace pipwright::ui
