#pragma once

#include "core/history/store.h"

#include <random>
#include <string>
#include <vector>

namespace pipwright::test {

/// Makes change sets that a book accepts: new records of any kind with references to what is there,
/// edits of any fields, and the taking away of records that nothing refers to. The same seed makes
/// the same ones from the same content.
class RandomChanges {
  public:
    explicit RandomChanges(std::uint64_t seed)
        : m_random(seed), m_ids(seed, [this] { return m_clock += 10; }) {}

    ChangeSet next(const Store& store) {
        ChangeSet set;
        set.sentence = "Change " + std::to_string(++m_count);
        m_targets.assign(kKindCount, {});
        for (const Kind kind : kAllKinds) {
            static_cast<void>(store.scan(kind, {}, [this](const Record& record) {
                m_targets[static_cast<std::size_t>(record.kind)].push_back(record);
                return true;
            }));
        }
        for (int i = upTo(6); i-- > 0;) {
            addCreation(set);
        }
        for (int i = upTo(6); i-- > 0;) {
            addEdit(set);
        }
        if (set.changes.empty()) {
            addCreation(set);
        }
        if (upTo(3) == 0) {
            addErasure(set);
        }
        return set;
    }

  private:
    int upTo(int end) { return std::uniform_int_distribution<int>(0, end)(m_random); }

    std::vector<Record>& of(Kind kind) { return m_targets[static_cast<std::size_t>(kind)]; }

    Value valueFor(const FieldInfo& field) {
        if (!field.required && upTo(2) == 0) {
            return {};
        }
        switch (field.type) {
        case FieldType::text:
            return upTo(2) == 0 ? "" : "w" + std::to_string(upTo(20)) + " \xC3\x89tage \"q\"\n";
        case FieldType::integer:
            return std::int64_t{upTo(4000)} - 2000;
        case FieldType::flag:
            return std::int64_t{upTo(1)};
        case FieldType::number:
            return std::uniform_real_distribution<double>(-1e6, 1e6)(m_random) / 3.0;
        case FieldType::date:
            return Date::fromDays(upTo(30'000)).iso();
        case FieldType::word:
            return std::string(field.words[static_cast<std::size_t>(
                upTo(static_cast<int>(field.words.size()) - 1))]);
        case FieldType::reference: {
            const auto& targets = of(field.refersTo);
            return targets.empty() ? Value{}
                                   : Value{targets[static_cast<std::size_t>(
                                                       upTo(static_cast<int>(targets.size()) - 1))]
                                               .id};
        }
        }
        return {};
    }

    /// Leaves one subject to an observation, or gives it one.
    bool mend(Record& record) {
        if (record.kind == Kind::observation) {
            bool has = false;
            for (const auto* name : {"plant", "genotype", "lot", "cross", "position", "site"}) {
                Value& subject = record.values[*fieldIndex(record.kind, name)];
                subject = has ? Value{} : subject;
                has = has || std::holds_alternative<Uuid>(subject);
            }
        }
        return checkRecord(record).ok();
    }

    void addCreation(ChangeSet& set) {
        const Kind kind = kAllKinds[static_cast<std::size_t>(upTo(kKindCount - 1))];
        Record record{kind, m_ids.make(), {}};
        for (const FieldInfo& field : fieldsOf(kind)) {
            record.values.push_back(valueFor(field));
        }
        if (mend(record)) { // not while there is nothing to refer to
            set.add(ChangeSet::creationOf(record));
            of(kind).push_back(record);
        }
    }

    void addEdit(ChangeSet& set) {
        auto& records = of(kAllKinds[static_cast<std::size_t>(upTo(kKindCount - 1))]);
        if (records.empty()) {
            return;
        }
        Record& record =
            records[static_cast<std::size_t>(upTo(static_cast<int>(records.size()) - 1))];
        Record after = record;
        for (std::size_t i = 0; i < after.values.size(); ++i) {
            if (upTo(3) == 0) {
                after.values[i] = valueFor(fieldsOf(record.kind)[i]);
            }
        }
        if (mend(after)) {
            set.addEdit(record, after);
            record = after;
        }
    }

    void addErasure(ChangeSet& set) {
        // A remark about a genotype is referred to by nobody.
        auto& aliases = of(Kind::alias);
        if (!aliases.empty()) {
            set.add(ChangeSet::erasureOf(aliases.back()));
            aliases.pop_back();
        }
    }

    std::mt19937_64 m_random;
    std::int64_t m_clock = 1'700'000'000'000;
    UuidMaker m_ids;
    int m_count = 0;
    std::vector<std::vector<Record>> m_targets;
};

} // namespace pipwright::test
