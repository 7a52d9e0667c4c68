#include "core/exchange/archive.h"
#include "core/history/digest.h"
#include "tests/sample/sample_book.h"
#include "tests/support/temporary_folder.h"

#include <filesystem>
#include <fstream>

using namespace pipwright;
namespace fs = std::filesystem;

namespace {

constexpr std::int64_t kLargest = 6'500'000; // bytes: the sample stays small enough to ship

std::map<std::string, std::string> filesIn(const fs::path& folder) {
    std::map<std::string, std::string> files;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.is_regular_file()) {
            std::ifstream stream(entry.path(), std::ios::binary);
            files[fs::relative(entry.path(), folder).generic_string()] = {
                std::istreambuf_iterator<char>(stream), {}};
        }
    }
    return files;
}

std::string digestOf(const Store& store) {
    Digest digest;
    for (const Kind kind : kAllKinds) {
        EXPECT_TRUE(store.scan(kind, {}, [&digest](const Record& record) {
            digest.add(record);
            return true;
        }));
    }
    return digest.text();
}

} // namespace

TEST(SampleArchive, IsWhatTheGeneratorMakesNow) {
    const test::TemporaryFolder folder;
    const auto report = writeArchive(sampleBook(), folder.path() / "orchard");
    ASSERT_TRUE(report) << report.problem().sentence();
    EXPECT_LT(report->bytes, kLargest);
    const auto made = filesIn(folder.path() / "orchard");
    const auto kept = filesIn(fs::path(PIPWRIGHT_SOURCE_DIR) / "sample-data" / "orchard");
    ASSERT_FALSE(kept.empty());
    EXPECT_EQ(made.size(), kept.size());
    for (const auto& [name, bytes] : made) {
        const auto found = kept.find(name);
        ASSERT_NE(found, kept.end()) << name;
        EXPECT_TRUE(found->second == bytes)
            << name << " differs: run make_sample orchard sample-data/orchard";
    }
}

TEST(SampleArchive, IsMadeTheSameTwice) {
    MemoryStore again(sample::sampleCopy());
    ASSERT_TRUE(sample::makeOrchard(again));
    EXPECT_EQ(again.position(), sampleBook().position());
    EXPECT_EQ(digestOf(again), digestOf(sampleBook()));
}

TEST(SampleArchive, BecomesABookAgain) {
    MemoryStore book;
    const auto report =
        readArchive(fs::path(PIPWRIGHT_SOURCE_DIR) / "sample-data" / "orchard", book);
    ASSERT_TRUE(report) << report.problem().sentence();
    EXPECT_EQ(report->faultCount, 0)
        << (report->faults.empty() ? "" : report->faults.front().sentence());
    EXPECT_FALSE(report->baselineLaid);
    EXPECT_EQ(digestOf(book), digestOf(sampleBook()));
    EXPECT_EQ(book.workedOn(), Date::of(2026, 8, 22));
}
