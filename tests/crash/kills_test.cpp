#include "core/store/book_check.h"
#include "core/store/book_place.h"
#include "core/store/connection.h"
#include "core/store/migrator.h"
#include "core/store/orchard_book.h"
#include "core/store/safekeeping.h"
#include "core/store/update_copy.h"
#include "tests/crash/killed_child.h"
#include "tests/support/temporary_folder.h"

#include <cstdio>
#include <gtest/gtest.h>
#include <random>
#include <vector>

namespace pipwright::test {
namespace {

using std::chrono::microseconds;

/// One kind of work, killed again and again at growing, random moments.
class Kills : public ::testing::Test {
  protected:
    [[nodiscard]] std::filesystem::path file() const { return m_folder.path() / "a.orchard"; }

    /// `prepare` lays a book, `work` is what the child does, `verify` looks at what is left.
    void killAgainAndAgain(microseconds longest, const std::function<void()>& prepare,
                           const std::function<bool(const Report&)>& work,
                           const std::function<void(const Ended&)>& verify) {
        const int wanted = (killsWanted() + 3) / 4;
        int kills = 0;
        int tries = 0;
        while (kills < wanted && !HasFatalFailure()) {
            ASSERT_LT(++tries, 4 * wanted + 10) << "the work is done before it can be killed";
            clear();
            prepare();
            const double grown = static_cast<double>(kills + 1) / static_cast<double>(wanted);
            std::uniform_real_distribution<double> share(0.2 * grown, grown);
            const auto delay = microseconds(
                static_cast<std::int64_t>(share(m_random) * static_cast<double>(longest.count())));
            SCOPED_TRACE("seed 11, kill " + std::to_string(kills) + " after " +
                         std::to_string(delay.count()) + " us");
            const Ended ended = runAndKill(delay, work);
            verify(ended);
            kills += ended.wasKilled ? 1 : 0;
        }
        RecordProperty("kills", kills);
        std::printf("%d kills in %d runs\n", kills, tries);
    }

    void clear() const {
        for (const auto& entry : std::filesystem::directory_iterator(m_folder.path())) {
            std::filesystem::remove_all(entry.path());
        }
    }

    static void expectSound(const std::filesystem::path& book) {
        const auto report = checkBook(book);
        ASSERT_TRUE(report.ok()) << report.problem().sentence();
        ASSERT_TRUE(report->sound())
            << report->findings.front().step << ": " << report->findings.front().sentence;
    }

    TemporaryFolder m_folder;
    std::mt19937_64 m_random{11};
};

/// A change set of several records that belong together: genotype, its two aliases, and the number
/// of sets so far in the book's own record.
ChangeSet setOf(std::int64_t number, UuidMaker& ids, const BookFacts& facts) {
    Genotype genotype;
    genotype.id = GenotypeId(ids.make());
    genotype.code = "S-" + std::to_string(number);
    ChangeSet set;
    set.sentence = "Add " + genotype.code;
    set.create(genotype);
    for (const char* text : {"one", "two"}) {
        Alias alias;
        alias.id = AliasId(ids.make());
        alias.genotype = genotype.id;
        alias.text = text;
        set.create(alias);
    }
    BookFacts after = facts;
    after.notes = std::to_string(number);
    set.edit(facts, after);
    return set;
}

void layBook(const std::filesystem::path& file) {
    auto book = createBook(file);
    ASSERT_TRUE(book.ok()) << book.problem().sentence();
    BookFacts facts;
    facts.id = BookFactsId(Uuid::named("facts"));
    facts.notes = "0";
    ChangeSet set;
    set.create(facts);
    ASSERT_TRUE((*book)->apply(set, {}).ok());
}

/// Applies sets as fast as it can, telling each that is done; every fifth is undone again.
bool writeForEver(const std::filesystem::path& file, const Report& report, bool copying) {
    auto book = openBook(file);
    UuidMaker ids;
    for (std::int64_t done = 0; book.ok();) {
        const auto facts = (*book)->all<BookFacts>();
        const auto number = std::stoll(facts->front().notes);
        const ChangeSet set = setOf(number + 1, ids, facts->front());
        if (!(*book)->apply(set, {}).ok()) {
            return false;
        }
        report(++done);
        if (number % 5 == 4) {
            if (!(*book)->undo({}).ok() || !(*book)->redo({}).ok()) {
                return false;
            }
        }
        if (copying) {
            // The folder may hold a copy of this minute: then it is replaced as a whole.
            const auto copy = keepDatedCopy(file);
            if (!copy.ok()) {
                return false;
            }
        }
    }
    return false;
}

/// Every set is there as a whole; `atLeast` of them were told to be safe.
void expectWholeSets(const std::filesystem::path& file, std::int64_t atLeast) {
    const auto book = openBook(file);
    ASSERT_TRUE(book.ok()) << book.problem().sentence();
    const auto facts = (*book)->all<BookFacts>();
    ASSERT_TRUE(facts.ok());
    ASSERT_EQ(facts->size(), 1U);
    const auto sets = std::stoll(facts->front().notes);
    EXPECT_EQ(*(*book)->count(Kind::genotype), sets);
    EXPECT_EQ(*(*book)->count(Kind::alias), 2 * sets);
    // At most the one set under way may be missing its report, or stand undone for a moment.
    EXPECT_GE(sets + 1, atLeast);
    EXPECT_LE(sets, atLeast + 1);
    EXPECT_GE((*book)->position(), atLeast + 1);
}

TEST_F(Kills, WhileWriting) {
    killAgainAndAgain(
        microseconds(90'000), [this] { layBook(file()); },
        [this](const Report& report) { return writeForEver(file(), report, false); },
        [this](const Ended& ended) {
            expectSound(file());
            expectWholeSets(file(), ended.reported);
        });
}

TEST_F(Kills, WhileCopying) {
    std::int64_t copies = 0;
    killAgainAndAgain(
        microseconds(250'000), [this] { layBook(file()); },
        [this](const Report& report) { return writeForEver(file(), report, true); },
        [&, this](const Ended& ended) {
            expectSound(file());
            expectWholeSets(file(), ended.reported);
            for (const DatedCopy& copy : datedCopies(file())) {
                expectSound(copy.file);
                ++copies;
            }
        });
    EXPECT_GT(copies, 0);
}

TEST_F(Kills, WhileImporting) {
    constexpr std::int64_t kRecords = 4000;
    constexpr std::int64_t kEntries = 200;
    const std::string countIndexes =
        "SELECT count(*) FROM sqlite_schema WHERE type = 'index' AND sql IS NOT NULL";
    std::int64_t indexes = 0;
    killAgainAndAgain(
        microseconds(180'000),
        [&, this] {
            ASSERT_TRUE(createBook(file()).ok());
            indexes = *(*Connection::open(file(), Access::read))->number(countIndexes);
        },
        [this](const Report& report) {
            auto book = openBook(file());
            report(0);
            UuidMaker ids;
            auto load = (*book)->beginLoad();
            if (!load.ok()) {
                return false;
            }
            for (std::int64_t i = 0; i < kRecords; ++i) {
                Genotype genotype;
                genotype.id = GenotypeId(ids.make());
                genotype.code = "I-" + std::to_string(i);
                if (!(*load)->add(toRecord(genotype)).ok()) {
                    return false;
                }
            }
            for (std::int64_t i = 1; i <= kEntries; ++i) {
                JournalEntry entry;
                entry.position = i;
                entry.copy = Uuid::named("elsewhere");
                if (!(*load)->add(entry).ok()) {
                    return false;
                }
            }
            return (*load)->finish().ok();
        },
        [&, this](const Ended& ended) {
            const auto book = openBook(file());
            ASSERT_TRUE(book.ok()) << book.problem().sentence();
            const auto records = *(*book)->count(Kind::genotype);
            EXPECT_EQ((*book)->position(), records == 0 ? 0 : kEntries);
            EXPECT_EQ(records, ended.wasKilled && records == 0 ? 0 : kRecords);
            EXPECT_EQ((*book)->findWords("I-7", 10'000)->empty(), records == 0);
            auto connection = Connection::open(file(), Access::read);
            EXPECT_TRUE(checkIntegrity(**connection).ok());
            EXPECT_EQ(*(*connection)->number(countIndexes), indexes);
        });
}

TEST_F(Kills, WhileMigrating) {
    std::vector<Migration> list(releasedMigrations().begin(), releasedMigrations().end());
    const int released = static_cast<int>(list.size());
    list.push_back({released + 1, "code_length",
                    "ALTER TABLE genotype ADD COLUMN code_length INTEGER NOT NULL DEFAULT 0;\n"
                    "UPDATE genotype SET code_length = length(code);"});
    list.push_back({released + 2, "codes",
                    "CREATE TABLE code (id INTEGER PRIMARY KEY, code TEXT NOT NULL) STRICT;\n"
                    "INSERT INTO code SELECT id, code FROM genotype;\n"
                    "CREATE INDEX code_by_code ON code (code);"});
    const auto first = m_folder.path().parent_path() / (m_folder.path().filename().string() + "-1");
    {
        auto book = createBook(first);
        auto load = (*book)->beginLoad();
        UuidMaker ids;
        for (int i = 0; i < 5000; ++i) {
            Genotype genotype;
            genotype.id = GenotypeId(ids.make());
            genotype.code = "M-" + std::to_string(i);
            ASSERT_TRUE((*load)->add(toRecord(genotype)).ok());
        }
        ASSERT_TRUE((*load)->finish().ok());
    }
    std::vector<int> left(static_cast<std::size_t>(released) + 3, 0);
    killAgainAndAgain(
        microseconds(200'000), [&, this] { std::filesystem::copy_file(first, file()); },
        [&, this](const Report& report) {
            report(0);
            return openForWriting(file(), list).ok();
        },
        [&, this](const Ended&) {
            std::int64_t version = 0;
            {
                auto connection = Connection::open(file(), Access::read);
                ASSERT_TRUE(connection.ok()) << connection.problem().sentence();
                ASSERT_TRUE(checkIntegrity(**connection).ok());
                version = *(*connection)->number("PRAGMA user_version");
                const auto has = [&](const char* sql) { return *(*connection)->number(sql); };
                EXPECT_EQ(has("SELECT count(*) FROM pragma_table_info('genotype') WHERE name = "
                              "'code_length'"),
                          version > released ? 1 : 0);
                EXPECT_EQ(has("SELECT count(*) FROM sqlite_schema WHERE name LIKE 'code%'"),
                          version > released + 1 ? 2 : 0);
            }
            ++left[static_cast<std::size_t>(version)];
            auto again = openForWriting(file(), list); // and the rest is done the next time
            ASSERT_TRUE(again.ok()) << again.problem().sentence();
            EXPECT_EQ(*(*again)->count(Kind::genotype), 5000);
        });
    const auto base = static_cast<std::size_t>(released);
    std::printf("left at version %d: %d, one on: %d, two on: %d\n", released, left[base],
                left[base + 1], left[base + 2]);
    std::filesystem::remove(first);
}

} // namespace
} // namespace pipwright::test
