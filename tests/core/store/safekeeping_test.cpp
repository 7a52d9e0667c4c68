#include "core/store/book_check.h"
#include "core/store/book_place.h"
#include "core/store/connection.h"
#include "core/store/orchard_book.h"
#include "core/store/safekeeping.h"
#include "tests/support/temporary_folder.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <thread>

namespace pipwright::test {
namespace {

class Safekeeping : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = createBook(m_file);
        ASSERT_TRUE(book.ok()) << book.problem().sentence();
        m_book = std::move(*book);
    }

    Genotype add(const std::string& code) {
        Genotype genotype;
        genotype.id = GenotypeId(m_ids.make());
        genotype.code = code;
        ChangeSet set;
        set.sentence = "Add " + code;
        set.create(genotype);
        EXPECT_TRUE(m_book->apply(set, {}).ok());
        return genotype;
    }
    [[nodiscard]] std::vector<std::string> steps() const {
        const auto report = checkBook(m_file);
        EXPECT_TRUE(report.ok());
        std::vector<std::string> found;
        for (const auto& finding : report->findings) {
            found.push_back(finding.step);
        }
        return found;
    }
    /// Writes to the file behind the store's back.
    void tamper(const std::string& sql) {
        m_book.reset();
        auto connection = Connection::open(m_file, Access::write);
        ASSERT_TRUE(connection.ok());
        const auto outcome = (*connection)->run(sql);
        ASSERT_TRUE(outcome.ok()) << outcome.problem().sentence();
    }

    TemporaryFolder m_folder;
    std::filesystem::path m_file = m_folder.path() / "My orchard.orchard";
    UuidMaker m_ids;
    std::unique_ptr<OrchardBook> m_book;
};

TEST_F(Safekeeping, CopiesOnlyWhenTheJournalMoved) {
    add("A-1");
    std::optional<DatedCopy> first;
    std::thread worker([&] { // while the book is open for writing
        auto made = keepDatedCopy(m_file);
        ASSERT_TRUE(made.ok()) << made.problem().sentence();
        first = *made;
    });
    worker.join();
    ASSERT_TRUE(first.has_value());
    EXPECT_EQ(first->position, 1);
    EXPECT_EQ(first->file.parent_path(), m_folder.path() / "My orchard.copies");
    EXPECT_TRUE(first->file.filename().string().starts_with("My orchard-20"));
    const auto second = keepDatedCopy(m_file);
    ASSERT_TRUE(second.ok());
    EXPECT_FALSE(second->has_value());
    add("A-2");
    const auto third = keepDatedCopy(m_file);
    ASSERT_TRUE(third.ok() && third->has_value());
    EXPECT_EQ((*third)->position, 2);
    EXPECT_TRUE(checkBook((*third)->file)->sound());
}

TEST_F(Safekeeping, KeepsTheNewestTen) {
    const auto folder = copiesFolder(m_file);
    std::filesystem::create_directories(folder);
    for (int day = 10; day < 25; ++day) {
        ASSERT_TRUE(
            writeWhole(folder / ("My orchard-2020-01-" + std::to_string(day) + "-0900.orchard"),
                       "old")
                .ok());
    }
    ASSERT_TRUE(writeWhole(folder / "My orchard-2019-01-01-0900-version-1.orchard", "kept").ok());
    ASSERT_TRUE(writeWhole(folder / "Yours-2019-01-01-0900.orchard", "another's").ok());
    add("A-1");
    ASSERT_TRUE(keepDatedCopy(m_file).ok());
    const auto copies = datedCopies(m_file);
    ASSERT_EQ(copies.size(), kCopiesKept);
    EXPECT_EQ(copies.front().position, 1);
    EXPECT_EQ(copies[1].madeAt, "2020-01-24 09:00");
    EXPECT_EQ(copies[1].position, -1);
    EXPECT_EQ(copies.back().madeAt, "2020-01-16 09:00");
    EXPECT_TRUE(std::filesystem::exists(folder / "My orchard-2019-01-01-0900-version-1.orchard"));
    EXPECT_TRUE(std::filesystem::exists(folder / "Yours-2019-01-01-0900.orchard"));
}

TEST_F(Safekeeping, RestoresACopyAndKeepsWhatStoodThereAside) {
    add("A-1");
    const auto copy = keepDatedCopy(m_file);
    ASSERT_TRUE(copy.ok() && copy->has_value());
    add("A-2");
    const Uuid before = m_book->copy();
    EXPECT_EQ(restoreCopy(m_file, (*copy)->file).problem().code, ProblemCode::busy);
    m_book.reset();
    const auto aside = restoreCopy(m_file, (*copy)->file);
    ASSERT_TRUE(aside.ok()) << aside.problem().sentence();
    m_book = openBook(m_file).value();
    EXPECT_EQ(*m_book->count(Kind::genotype), 1);
    EXPECT_NE(m_book->copy(), before);
    EXPECT_EQ(m_book->undoSentence(), "Add A-1");
    EXPECT_EQ(*(*openBook(*aside, OpenMode::read))->count(Kind::genotype), 2);
    EXPECT_TRUE(steps().empty());
}

TEST_F(Safekeeping, RestoresOverADamagedBookButNotFromOne) {
    add("A-1");
    const auto copy = keepDatedCopy(m_file);
    m_book.reset();
    ASSERT_TRUE(writeWhole(m_file, std::string(9000, 'x')).ok());
    EXPECT_FALSE(restoreCopy(copy->value().file, m_file).ok());
    const auto aside = restoreCopy(m_file, copy->value().file);
    ASSERT_TRUE(aside.ok()) << aside.problem().sentence();
    EXPECT_EQ(std::filesystem::file_size(*aside), 9000U);
    EXPECT_EQ(*(*openBook(m_file))->count(Kind::genotype), 1);
}

TEST_F(Safekeeping, ASoundBookHasNoFindings) {
    const auto genotype = add("A-1");
    auto noted = genotype;
    noted.notes = "sweet";
    ChangeSet note;
    note.edit(genotype, noted);
    ASSERT_TRUE(m_book->apply(note, {}).ok());
    ASSERT_TRUE(m_book->undo({}).ok());
    ASSERT_TRUE(m_book->redo({}).ok());
    const auto picture = m_book->addPhoto("<svg/>");
    Photo photo;
    photo.id = PhotoId(m_ids.make());
    photo.sha256 = picture->sha256;
    photo.mediaType = picture->mediaType;
    ChangeSet add;
    add.create(photo);
    ASSERT_TRUE(m_book->apply(add, {}).ok());
    const auto report = checkBook(m_file);
    ASSERT_TRUE(report.ok());
    EXPECT_TRUE(report->sound()) << report->findings.front().sentence;
    EXPECT_EQ(report->records, 2);
    EXPECT_EQ(report->entries, 5);
    EXPECT_EQ(report->entriesReplayed, 5);
    EXPECT_EQ(report->photos, 1);
    ASSERT_TRUE(writeWhole(photosFolder(m_file) / (photo.sha256 + ".svg"), "<svg>other").ok());
    EXPECT_EQ(steps(), std::vector<std::string>{"photos"});
    std::filesystem::remove(photosFolder(m_file) / (photo.sha256 + ".svg"));
    EXPECT_EQ(steps(), std::vector<std::string>{"photos"});
}

TEST_F(Safekeeping, CheckFindsAValueNoEntryWrote) {
    add("A-1");
    tamper("UPDATE genotype SET origin = 'elsewhere'");
    const auto found = steps();
    ASSERT_FALSE(found.empty());
    EXPECT_NE(std::find(found.begin(), found.end(), "journal"), found.end());
}

TEST_F(Safekeeping, CheckFindsARecordNoEntryMade) {
    tamper("INSERT INTO person (uuid, tastes, grows) VALUES (randomblob(16), 0, 0)");
    EXPECT_EQ(steps(), std::vector<std::string>{"journal"});
}

TEST_F(Safekeeping, CheckFindsAMissingEntryAndABrokenReference) {
    add("A-1");
    add("A-2");
    add("A-3");
    tamper("PRAGMA foreign_keys = OFF; DELETE FROM journal_change WHERE entry = 2; "
           "DELETE FROM journal_entry WHERE position = 2; "
           "INSERT INTO alias (uuid, genotype, kind) VALUES (randomblob(16), 99, 'unknown')");
    const auto found = steps();
    EXPECT_NE(std::find(found.begin(), found.end(), "journal"), found.end());
    EXPECT_NE(std::find(found.begin(), found.end(), "references"), found.end());
}

TEST_F(Safekeeping, CheckFindsAFinderThatForgot) {
    add("A-1");
    tamper("DELETE FROM finder");
    EXPECT_EQ(steps(), std::vector<std::string>{"finder"});
}

TEST_F(Safekeeping, CheckCanBeStopped) {
    add("A-1");
    const auto report = checkBook(m_file, [](const std::string&, double) { return false; });
    ASSERT_FALSE(report.ok());
    EXPECT_EQ(report.problem().code, ProblemCode::cancelled);
}

} // namespace
} // namespace pipwright::test
