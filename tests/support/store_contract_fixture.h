#pragma once

#include "core/history/digest.h"
#include "core/history/store.h"
#include "core/orchard/orchard.h"

#include <gtest/gtest.h>
#include <memory>
#include <random>
#include <set>
#include <string>

namespace pipwright::test {

/// What every store must keep. A test program says how its store is made:
///
///     struct Memory { std::unique_ptr<Store> make(); std::unique_ptr<Store> reopened(store); };
///     INSTANTIATE_TYPED_TEST_SUITE_P(InMemory, StoreContract, Memory);
///
/// `reopened` closes the store and opens the same content again, as a restart does; a store that
/// has no restart gives back what it got.
template <typename Maker>
class StoreContract : public ::testing::Test {
  protected:
    StoreContract() : m_ids(7, [this] { return m_clock += 1000; }), m_store(m_maker.make()) {}

    Store& store() { return *m_store; }
    void restart() { m_store = m_maker.reopened(std::move(m_store)); }
    std::unique_ptr<Store> another() { return m_maker.make(); }

    template <typename Thing>
    Thing fresh() {
        Thing thing;
        thing.id = Id<Thing>(m_ids.make());
        return thing;
    }
    Genotype genotype(const std::string& code) {
        auto thing = fresh<Genotype>();
        thing.code = code;
        return thing;
    }

    template <typename Thing>
    void create(const Thing& thing, const std::string& sentence = "Add") {
        ChangeSet set;
        set.sentence = sentence;
        set.create(thing);
        apply(set);
    }
    template <typename Thing>
    void edit(const Thing& before, const Thing& after, const std::string& sentence = "Edit") {
        ChangeSet set;
        set.sentence = sentence;
        set.edit(before, after);
        apply(set);
    }
    JournalEntry apply(const ChangeSet& set) {
        auto entry = store().apply(set, {std::nullopt, 42});
        EXPECT_TRUE(entry.ok()) << entry.problem().sentence();
        return entry ? *entry : JournalEntry{};
    }
    void undo() {
        auto entry = store().undo({});
        ASSERT_TRUE(entry.ok()) << entry.problem().sentence();
    }
    void redo() {
        auto entry = store().redo({});
        ASSERT_TRUE(entry.ok()) << entry.problem().sentence();
    }

    static std::vector<Record> recordsOf(const Store& store, Kind kind, ScanRequest request = {}) {
        std::vector<Record> records;
        auto outcome = store.scan(kind, request, [&records](const Record& record) {
            records.push_back(record);
            return true;
        });
        EXPECT_TRUE(outcome.ok()) << outcome.problem().sentence();
        return records;
    }
    /// All records, a line each: what "the same content" means.
    static std::string dumpOf(const Store& store) {
        std::string dump;
        for (const Kind kind : kAllKinds) {
            for (const Record& record : recordsOf(store, kind)) {
                dump += std::string(nameOf(kind)) + " " + record.id.text() + " " + asJson(record) +
                        "\n";
            }
        }
        return dump;
    }
    static std::string digestOf(const Store& store) {
        Digest digest;
        for (const Kind kind : kAllKinds) {
            for (const Record& record : recordsOf(store, kind)) {
                digest.add(record);
            }
        }
        return digest.text();
    }

    std::int64_t m_clock = 1'700'000'000'000;
    UuidMaker m_ids;
    Maker m_maker;
    std::unique_ptr<Store> m_store;
};

} // namespace pipwright::test
