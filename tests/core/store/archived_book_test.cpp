#include "core/exchange/archive.h"
#include "core/history/memory_store.h"
#include "core/history/new_book.h"
#include "core/orchard/orchard.h"
#include "core/store/orchard_book.h"
#include "tests/support/temporary_folder.h"

#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <map>

using namespace pipwright;
namespace fs = std::filesystem;

namespace {

std::map<std::string, std::string> filesIn(const fs::path& folder) {
    std::map<std::string, std::string> files;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.is_regular_file()) {
            std::ifstream stream(entry.path(), std::ios::binary);
            files[entry.path().lexically_relative(folder).generic_string()] =
                std::string(std::istreambuf_iterator<char>(stream), {});
        }
    }
    return files;
}

/// A book with a picture, an undone step and a day it was worked on.
void fill(Store& book) {
    std::int64_t moment = 1'787'392'800'000;
    UuidMaker ids(3, [&moment] { return ++moment; });
    ASSERT_TRUE(book.apply(newBook("Trials", "A. Breeder", ids), {std::nullopt, moment}).ok());
    const auto kept = book.addPhoto("<svg xmlns='http://www.w3.org/2000/svg'/>");
    ASSERT_TRUE(kept.ok());
    Photo photo;
    photo.id = PhotoId(ids.make());
    photo.sha256 = kept->sha256;
    photo.mediaType = kept->mediaType;
    Person person;
    person.id = PersonId(ids.make());
    person.name = "Wilma";
    ChangeSet set;
    set.sentence = "A picture";
    set.create(photo);
    ASSERT_TRUE(book.apply(set, {std::nullopt, ++moment}).ok());
    ChangeSet other;
    other.sentence = "A person";
    other.create(person);
    ASSERT_TRUE(book.apply(other, {std::nullopt, ++moment}).ok());
    ASSERT_TRUE(book.undo({std::nullopt, ++moment}).ok());
    ASSERT_TRUE(book.setWorkedOn(*Date::of(2026, 8, 22)).ok());
}

} // namespace

TEST(ArchivedBook, ABookFileRebuiltFromItsArchiveArchivesToTheSameBytes) {
    const test::TemporaryFolder folder;
    const fs::path first = folder.path() / "first";
    const fs::path second = folder.path() / "second";
    {
        auto book = createBook(folder.path() / "one.orchard");
        ASSERT_TRUE(book.ok());
        fill(**book);
        ASSERT_TRUE(writeArchive(**book, first).ok());
    }
    auto rebuilt = createBook(folder.path() / "two.orchard");
    ASSERT_TRUE(rebuilt.ok());
    const auto report = readArchive(first, **rebuilt);
    ASSERT_TRUE(report.ok()) << report.problem().sentence();
    EXPECT_TRUE(report->written);
    EXPECT_EQ(report->photos, 1);
    EXPECT_EQ((*rebuilt)->redoSentence(), "A person");
    ASSERT_TRUE(writeArchive(**rebuilt, second).ok());
    EXPECT_EQ(filesIn(first), filesIn(second));
    ASSERT_TRUE((*rebuilt)->redo({}).ok());
}

TEST(ArchivedBook, AFaultyArchiveLeavesTheBookFileEmpty) {
    const test::TemporaryFolder folder;
    MemoryStore memory;
    fill(memory);
    const fs::path archive = folder.path() / "archive";
    ASSERT_TRUE(writeArchive(memory, archive).ok());
    std::ofstream(archive / "recipe.csv", std::ios::app) << "no-id,,,,\r\n";
    auto book = createBook(folder.path() / "book.orchard");
    ASSERT_TRUE(book.ok());
    const auto report = readArchive(archive, **book);
    ASSERT_TRUE(report.ok()) << report.problem().sentence();
    EXPECT_FALSE(report->written);
    EXPECT_EQ((*book)->position(), 0);
    EXPECT_EQ(*(*book)->count(Kind::trait), 0);
    ImportOptions options;
    options.skipFaulty = true;
    const auto skipped = readArchive(archive, **book, options);
    ASSERT_TRUE(skipped.ok()) << skipped.problem().sentence();
    EXPECT_TRUE(skipped->written);
    EXPECT_EQ((*book)->position(), memory.position() + 1);
}
