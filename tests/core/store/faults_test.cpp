#include "core/history/digest.h"
#include "core/store/book_check.h"
#include "core/store/book_place.h"
#include "core/store/orchard_book.h"
#include "core/store/sqlite_store.h"
#include "core/store/transaction.h"
#include "tests/support/temporary_folder.h"

#include <fstream>
#include <gtest/gtest.h>
#include <sys/mount.h>
#include <sys/stat.h>
#include <thread>
#include <unistd.h>

namespace pipwright::test {
namespace {

class Faults : public ::testing::Test {
  protected:
    [[nodiscard]] std::filesystem::path file(const char* name = "a.orchard") const {
        return m_folder.path() / name;
    }
    std::unique_ptr<OrchardBook> created(const std::filesystem::path& path) {
        auto book = createBook(path);
        EXPECT_TRUE(book.ok()) << book.problem().sentence();
        return book ? std::move(*book) : nullptr;
    }
    void write(const std::filesystem::path& path, const std::string& bytes) {
        std::ofstream(path, std::ios::binary) << bytes;
    }
    Outcome add(Store& store, const std::string& notes = "") {
        Genotype genotype;
        genotype.id = GenotypeId(m_ids.make());
        genotype.code = "A-" + std::to_string(++m_count);
        genotype.notes = notes;
        ChangeSet set;
        set.sentence = "Add " + genotype.code;
        set.create(genotype);
        const auto entry = store.apply(set, {});
        return entry ? Outcome{} : Outcome{entry.problem()};
    }
    /// The Problem of opening, which must say what to do.
    static Problem openProblem(const std::filesystem::path& path, OpenMode mode = OpenMode::write) {
        const auto book = openBook(path, mode);
        EXPECT_FALSE(book.ok());
        Problem problem = book ? Problem{} : book.problem();
        EXPECT_FALSE(problem.what.empty());
        EXPECT_FALSE(problem.remedy.empty());
        return problem;
    }

    TemporaryFolder m_folder;
    UuidMaker m_ids;
    int m_count = 0;
};

/// Gives up the right to write everywhere that the superuser has.
class AsSomebodyElse {
  public:
    AsSomebodyElse() : m_was(::geteuid()) {
        if (m_was == 0) {
            EXPECT_EQ(::seteuid(65534), 0);
        }
    }
    ~AsSomebodyElse() { static_cast<void>(::seteuid(m_was) == 0); }

  private:
    uid_t m_was;
};

TEST_F(Faults, NotADatabase) {
    write(file(), std::string(5000, 'x'));
    EXPECT_EQ(openProblem(file()).code, ProblemCode::unreadable);
    EXPECT_EQ(openProblem(file(), OpenMode::read).code, ProblemCode::unreadable);
    write(file(), "short");
    EXPECT_EQ(openProblem(file()).code, ProblemCode::unreadable);
}

TEST_F(Faults, EmptyFileMissingFileAndFolder) {
    write(file(), "");
    EXPECT_EQ(openProblem(file()).code, ProblemCode::unreadable);
    EXPECT_EQ(std::filesystem::file_size(file()), 0U);
    EXPECT_EQ(openProblem(file("none.orchard")).code, ProblemCode::notFound);
    EXPECT_FALSE(std::filesystem::exists(file("none.orchard")));
    EXPECT_EQ(openProblem(m_folder.path()).code, ProblemCode::unreadable);
}

TEST_F(Faults, DatabaseOfAnotherProgram) {
    {
        auto connection = Connection::open(file(), Access::create);
        ASSERT_TRUE(connection.ok());
        ASSERT_TRUE((*connection)->run("CREATE TABLE t (a); PRAGMA application_id = 5").ok());
    }
    const auto bytes = *readWhole(file());
    const Problem problem = openProblem(file());
    EXPECT_EQ(problem.code, ProblemCode::unreadable);
    EXPECT_NE(problem.what.find("another program"), std::string::npos);
    EXPECT_EQ(*readWhole(file()), bytes); // it was not touched
}

TEST_F(Faults, NewerBookIsRefusedUntouched) {
    created(file());
    {
        auto connection = Connection::open(file(), Access::write);
        ASSERT_TRUE((*connection)->run("PRAGMA user_version = 99").ok());
        ASSERT_TRUE((*connection)->run("PRAGMA journal_mode = DELETE").ok());
    }
    const auto bytes = *readWhole(file());
    const Problem problem = openProblem(file());
    EXPECT_EQ(problem.code, ProblemCode::newer);
    EXPECT_NE(problem.what.find("99"), std::string::npos);
    EXPECT_EQ(openProblem(file(), OpenMode::read).code, ProblemCode::newer);
    EXPECT_EQ(*readWhole(file()), bytes);
}

TEST_F(Faults, ExistingFileIsNotOverwritten) {
    write(file(), "mine");
    const auto book = createBook(file());
    ASSERT_FALSE(book.ok());
    EXPECT_EQ(book.problem().code, ProblemCode::conflict);
    EXPECT_EQ(*readWhole(file()), "mine");
}

TEST_F(Faults, ReadOnlyFolderCanBeReadButNotWritten) {
    {
        auto book = created(file());
        ASSERT_TRUE(add(*book).ok());
    }
    ::chmod(file().c_str(), 0444);
    ::chmod(m_folder.path().c_str(), 0555);
    {
        const AsSomebodyElse somebody;
        EXPECT_EQ(openProblem(file()).code, ProblemCode::unwritable);
        const auto made = createBook(file("new.orchard"));
        ASSERT_FALSE(made.ok());
        EXPECT_EQ(made.problem().code, ProblemCode::unwritable);
        const auto book = openBook(file(), OpenMode::read);
        ASSERT_TRUE(book.ok()) << book.problem().sentence();
        EXPECT_EQ(*(*book)->count(Kind::genotype), 1);
        const auto refused = add(**book);
        ASSERT_FALSE(refused.ok());
        EXPECT_EQ(refused.problem().code, ProblemCode::unwritable);
    }
    ::chmod(m_folder.path().c_str(), 0755);
}

TEST_F(Faults, FullDiskTakesBackTheWholeEdit) {
    created(file());
    auto connection = Connection::open(file(), Access::write);
    ASSERT_TRUE(prepareForWriting(**connection).ok());
    const auto pages = *(*connection)->number("PRAGMA page_count");
    ASSERT_TRUE((*connection)->run("PRAGMA max_page_count = " + std::to_string(pages + 12)).ok());
    auto lock = WriterLock::take(file());
    auto store = SqliteStore::over(std::move(*connection), std::move(*lock));
    ASSERT_TRUE(store.ok());
    Outcome outcome;
    std::int64_t written = 0;
    while ((outcome = add(**store, std::string(3000, 'n'))).ok()) {
        ++written;
        ASSERT_LT(written, 100);
    }
    EXPECT_EQ(outcome.problem().code, ProblemCode::unwritable);
    EXPECT_NE(outcome.problem().what.find("full"), std::string::npos);
    EXPECT_EQ(*(*store)->count(Kind::genotype), written);
    EXPECT_EQ((*store)->position(), written);
    ASSERT_TRUE((*store)->connection().run("PRAGMA max_page_count = 100000").ok());
    EXPECT_TRUE(add(**store).ok()); // and goes on when there is room again
    (*store).reset();
    EXPECT_TRUE(checkBook(file())->sound());
}

TEST_F(Faults, FullSmallFileSystem) {
    const auto disk = m_folder.path() / "disk";
    std::filesystem::create_directory(disk);
    if (::mount("none", disk.c_str(), "tmpfs", 0, "size=1m") != 0) {
        GTEST_SKIP() << "mounting is not allowed here";
    }
    {
        auto book = created(disk / "a.orchard");
        ASSERT_NE(book, nullptr);
        Outcome outcome;
        std::int64_t written = 0;
        while ((outcome = add(*book, std::string(20'000, 'n'))).ok()) {
            ASSERT_LT(++written, 1000);
        }
        EXPECT_EQ(outcome.problem().code, ProblemCode::unwritable) << outcome.problem().sentence();
        EXPECT_EQ(*book->count(Kind::genotype), written);
    }
    EXPECT_TRUE(checkBook(disk / "a.orchard")->sound());
    EXPECT_EQ(::umount(disk.c_str()), 0);
}

TEST_F(Faults, FileThatVanishedTakesNoMoreEdits) {
    auto book = created(file());
    ASSERT_TRUE(add(*book).ok());
    std::filesystem::rename(file(), file("moved.orchard"));
    const auto refused = add(*book);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.problem().code, ProblemCode::unwritable);
    EXPECT_NE(refused.problem().remedy.find("back"), std::string::npos);
    std::filesystem::rename(file("moved.orchard"), file());
    EXPECT_TRUE(add(*book).ok());
}

TEST_F(Faults, SecondWriterIsToldWhoWrites) {
    auto book = created(file());
    const Problem problem = openProblem(file());
    EXPECT_EQ(problem.code, ProblemCode::busy);
    EXPECT_NE(problem.what.find("process " + std::to_string(::getpid())), std::string::npos);
    book.reset();
    EXPECT_TRUE(openBook(file()).ok());
    EXPECT_FALSE(std::filesystem::exists(file("a.orchard-lock")));
}

TEST_F(Faults, LockLeftByACrashDoesNotBlock) {
    created(file());
    write(file("a.orchard-lock"), "process 1 on nowhere");
    EXPECT_TRUE(openBook(file()).ok());
}

TEST_F(Faults, OtherThreadReadsWhileOneWrites) {
    auto book = created(file());
    ASSERT_TRUE(add(*book).ok());
    std::int64_t before = 0;
    std::int64_t after = 0;
    std::thread reader([&] {
        auto mine = openBook(file(), OpenMode::read);
        ASSERT_TRUE(mine.ok()) << mine.problem().sentence();
        before = *(*mine)->count(Kind::genotype);
        std::thread([] {}).join();
        after = (*mine)->position();
        EXPECT_TRUE((*mine)->isReadOnly());
    });
    reader.join();
    EXPECT_EQ(before, 1);
    EXPECT_EQ(after, 1);
    // A reader that stays sees what is written later.
    auto reading = openBook(file(), OpenMode::read);
    ASSERT_TRUE(reading.ok());
    EXPECT_EQ((*reading)->undoSentence(), "Add A-1");
    ASSERT_TRUE(add(*book).ok());
    EXPECT_EQ(*(*reading)->count(Kind::genotype), 2);
    EXPECT_EQ((*reading)->undoSentence(), "Add A-2");
}

TEST_F(Faults, AnotherProgramThatHoldsTheFileIsNamedAsBusy) {
    auto book = created(file());
    auto other = Connection::open(file(), Access::write);
    ASSERT_TRUE(other.ok());
    auto transaction = Transaction::begin(**other);
    ASSERT_TRUE(transaction.ok());
    const auto refused = add(*book);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.problem().code, ProblemCode::busy);
    (*transaction).reset();
    EXPECT_TRUE(add(*book).ok());
}

TEST_F(Faults, CopyMadeByHandGetsACopyNameOfItsOwn) {
    Uuid first;
    {
        auto book = created(file());
        first = book->copy();
        ASSERT_TRUE(add(*book).ok());
    }
    EXPECT_EQ((*openBook(file()))->copy(), first);
    std::filesystem::copy_file(file(), file("b.orchard"));
    const auto copied = openBook(file("b.orchard"));
    ASSERT_TRUE(copied.ok());
    EXPECT_NE((*copied)->copy(), first);
    EXPECT_EQ((*openBook(file()))->copy(), first);
    ASSERT_TRUE(add(**copied).ok());
    const auto entries = (*copied)->journal({});
    EXPECT_EQ(entries->back().copy, first);
    EXPECT_EQ(entries->front().copy, (*copied)->copy());
    std::filesystem::rename(file(), file("renamed.orchard"));
    EXPECT_EQ((*openBook(file("renamed.orchard")))->copy(), first);
}

TEST_F(Faults, NetworkSharesAreToldFromDisks) {
    EXPECT_TRUE(unsafeFileSystem(0x6969).has_value());      // NFS
    EXPECT_TRUE(unsafeFileSystem(0xFF534D42).has_value());  // CIFS
    EXPECT_TRUE(unsafeFileSystem(0x65735546).has_value());  // FUSE
    EXPECT_FALSE(unsafeFileSystem(0xEF53).has_value());     // ext4
    EXPECT_FALSE(unsafeFileSystem(0x01021994).has_value()); // tmpfs
    auto book = created(file());
    EXPECT_NE(book->journalModeWords().find("write-ahead log"), std::string::npos);
    const auto& store = dynamic_cast<const SqliteStore&>(*book);
    EXPECT_EQ(*store.connection().number("PRAGMA synchronous"), 2); // FULL
    EXPECT_EQ(*store.connection().number("PRAGMA foreign_keys"), 1);
}

TEST_F(Faults, PictureFolderThatCannotBeWritten) {
    auto book = created(file());
    write(photosFolder(file()), "a file where the folder should be");
    const auto photo = book->addPhoto("<svg/>");
    ASSERT_FALSE(photo.ok());
    EXPECT_EQ(photo.problem().code, ProblemCode::unwritable);
}

} // namespace
} // namespace pipwright::test
