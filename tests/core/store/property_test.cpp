#include "core/history/digest.h"
#include "core/history/memory_store.h"
#include "core/store/book_check.h"
#include "core/store/orchard_book.h"
#include "tests/support/random_changes.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>

namespace pipwright::test {
namespace {

/// What a store shows: its records, what the finder finds, and what undo and redo would do.
std::string viewOf(const Store& store) {
    std::string view;
    for (const Kind kind : kAllKinds) {
        auto outcome = store.scan(kind, {}, [&view](const Record& record) {
            view += std::string(nameOf(record.kind)) + " " + record.id.text() + " " +
                    asJson(record) + "\n";
            return true;
        });
        EXPECT_TRUE(outcome.ok());
    }
    return view;
}

std::string digestOf(const Store& store) {
    Digest digest;
    for (const Kind kind : kAllKinds) {
        auto outcome = store.scan(kind, {}, [&digest](const Record& record) {
            digest.add(record);
            return true;
        });
        EXPECT_TRUE(outcome.ok());
    }
    return digest.text();
}

std::size_t hitsOf(const Store& store, std::string_view words) {
    const auto found = store.findWords(words, 10'000);
    EXPECT_TRUE(found.ok());
    return found ? found->size() : 0;
}

class RandomChangeSets : public ::testing::TestWithParam<int> {};

// Apply, undo all, redo all, in the file and in memory at once: the same views at every step.
TEST_P(RandomChangeSets, UndoneAndRedoneGiveTheSameContent) {
    const auto seed = static_cast<std::uint64_t>(GetParam());
    SCOPED_TRACE("seed " + std::to_string(seed));
    const TemporaryFolder folder;
    const auto file = folder.path() / "a.orchard";
    std::unique_ptr<OrchardBook> book = createBook(file).value();
    MemoryStore memory;
    RandomChanges random(seed);
    std::vector<std::string> views{viewOf(*book)};
    std::vector<std::string> digests{digestOf(*book)};
    std::vector<std::size_t> hits{hitsOf(*book, "w1")};
    constexpr int kSets = 40;
    for (int i = 0; i < kSets; ++i) {
        const ChangeSet set = random.next(memory);
        const auto inMemory = memory.apply(set, {});
        const auto inFile = book->apply(set, {});
        ASSERT_TRUE(inMemory.ok()) << inMemory.problem().sentence();
        ASSERT_TRUE(inFile.ok()) << inFile.problem().sentence();
        views.push_back(viewOf(*book));
        digests.push_back(digestOf(*book));
        hits.push_back(hitsOf(*book, "w1"));
        ASSERT_EQ(views.back(), viewOf(memory));
    }
    for (int i = kSets; i-- > 0;) {
        ASSERT_TRUE(book->undo({}).ok());
        const auto at = static_cast<std::size_t>(i);
        ASSERT_EQ(viewOf(*book), views[at]) << "after undoing set " << i;
        ASSERT_EQ(digestOf(*book), digests[at]);
        ASSERT_EQ(hitsOf(*book, "w1"), hits[at]);
    }
    EXPECT_FALSE(book->undoSentence());
    book.reset();
    book = openBook(file).value();
    for (int i = 0; i < kSets; ++i) {
        ASSERT_TRUE(book->redo({}).ok());
        ASSERT_EQ(digestOf(*book), digests[static_cast<std::size_t>(i) + 1]);
    }
    EXPECT_EQ(viewOf(*book), views.back());
    EXPECT_EQ(hitsOf(*book, "w1"), hits.back());
    EXPECT_EQ(book->position(), 3 * kSets);
    const auto report = checkBook(file);
    ASSERT_TRUE(report.ok());
    for (const CheckFinding& finding : report->findings) {
        EXPECT_EQ(finding.step, "photos") << finding.sentence; // the hashes here are made up
    }
    EXPECT_EQ(report->digest, digests.back());
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomChangeSets, ::testing::Range(1, 9));

} // namespace
} // namespace pipwright::test
