#include "core/history/edits.h"
#include "core/store/orchard_book.h"
#include "core/store/sqlite_store.h"
#include "tests/support/temporary_folder.h"

#include <atomic>
#include <chrono>
#include <gtest/gtest.h>
#include <thread>

namespace pipwright::test {
namespace {

/// A book with some genotypes, and readers beside it.
class ReadersTest : public ::testing::Test {
  protected:
    void SetUp() override {
        auto made = createBook(m_folder.path() / "a.orchard");
        ASSERT_TRUE(made.ok());
        m_book = std::move(*made);
        ASSERT_TRUE(add(kFirst));
    }

    Outcome add(int genotypes) {
        ChangeSet set;
        set.sentence = "Add genotypes";
        for (int i = 0; i < genotypes; ++i) {
            Genotype genotype;
            genotype.id = GenotypeId(m_ids.make());
            genotype.code = "A-" + std::to_string(++m_count);
            set.create(genotype);
        }
        const auto entry = m_book->apply(set, {});
        return entry ? Outcome{} : Outcome{entry.problem()};
    }

    /// As on a folder where a write-ahead log is not safe.
    void takeTheLogAway() {
        const auto& connection = dynamic_cast<SqliteStore&>(*m_book).connection();
        const auto mode = connection.text("PRAGMA journal_mode = DELETE");
        ASSERT_TRUE(mode.ok());
        ASSERT_EQ(*mode, "delete");
    }

    static constexpr int kFirst = 400;
    TemporaryFolder m_folder;
    UuidMaker m_ids;
    int m_count = 0;
    std::unique_ptr<OrchardBook> m_book;
};

TEST_F(ReadersTest, SeveralQuestionsSeeOneStateOfTheBook) {
    const auto reader = m_book->readers()();
    ASSERT_TRUE(reader.ok());
    EXPECT_EQ(*(*reader)->count(Kind::genotype), kFirst);
    ASSERT_TRUE(add(1));
    EXPECT_EQ(*(*reader)->count(Kind::genotype), kFirst);
    EXPECT_EQ((*reader)->all<Genotype>()->size(), std::size_t{kFirst});
    const auto fresh = m_book->readers()();
    ASSERT_TRUE(fresh.ok());
    EXPECT_EQ(*(*fresh)->count(Kind::genotype), kFirst + 1);
}

TEST_F(ReadersTest, AReaderOutlivesTheBookItCameFrom) {
    const auto readers = m_book->readers();
    m_book.reset();
    const auto reader = readers();
    ASSERT_TRUE(reader.ok());
    EXPECT_EQ(*(*reader)->count(Kind::genotype), kFirst);
}

TEST_F(ReadersTest, WithoutALogALongReadingMakesWayForAnEdit) {
    takeTheLogAway();
    std::atomic<bool> isReading = false;
    std::atomic<int> endedBusy = 0;
    std::atomic<bool> enough = false;
    std::thread aside([&, readers = m_book->readers()] {
        const auto reader = readers();
        while (reader && !enough && endedBusy == 0) { // one reading after the other, without a gap
            const auto outcome = (*reader)->scan(Kind::genotype, {}, [&](const Record&) {
                isReading = true;
                std::this_thread::sleep_for(std::chrono::milliseconds(5));
                return true;
            });
            if (!outcome && outcome.problem().code == ProblemCode::busy) {
                ++endedBusy;
            }
        }
    });
    while (!isReading) {
        std::this_thread::yield();
    }
    // The scan takes two seconds, as long as a writer waits before it gives up.
    const auto begin = std::chrono::steady_clock::now();
    const Outcome written = add(1);
    const auto took = std::chrono::steady_clock::now() - begin;
    enough = true;
    aside.join();
    EXPECT_TRUE(written.ok()) << written.problem().sentence();
    EXPECT_EQ(endedBusy, 1);
    EXPECT_LT(took, std::chrono::seconds(1));
    // Afterwards it may be read again, whole.
    const auto again = m_book->readers()();
    ASSERT_TRUE(again.ok());
    EXPECT_EQ((*again)->all<Genotype>()->size(), std::size_t{kFirst + 1});
}

} // namespace
} // namespace pipwright::test
