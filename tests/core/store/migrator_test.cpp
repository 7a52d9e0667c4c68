#include "core/store/book_place.h"
#include "core/store/migrator.h"
#include "core/store/sqlite_store.h"
#include "core/store/update_copy.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

namespace pipwright::test {
namespace {

constexpr const char* kSecond = "ALTER TABLE site ADD COLUMN soil TEXT NOT NULL DEFAULT '';\n"
                                "UPDATE site SET soil = 'loam; deep' WHERE name = 'Halde';";
constexpr const char* kThird =
    "CREATE TABLE soil_kind (id INTEGER PRIMARY KEY, name TEXT) STRICT;\n"
    "INSERT INTO soil_kind (name) SELECT DISTINCT soil FROM site;";

std::vector<Migration> released() {
    return {releasedMigrations().begin(), releasedMigrations().end()};
}

/// The version of today.
const int kNow = static_cast<int>(releasedMigrations().size());

/// Two more steps after those that were released.
std::vector<Migration> withTwoMore(const char* last = kThird) {
    auto all = released();
    all.push_back({kNow + 1, "next_soil", kSecond});
    all.push_back({kNow + 2, "last_soil_kinds", last});
    return all;
}

/// Books of today's version, made by its own SQL and its store.
class Migrating : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = createBook(m_file);
        ASSERT_TRUE(book.ok()) << book.problem().sentence();
        Site site;
        site.id = SiteId(UuidMaker().make());
        site.name = "Halde";
        ChangeSet set;
        set.sentence = "Add Halde";
        set.create(site);
        ASSERT_TRUE((*book)->apply(set, {}).ok());
        m_site = site;
    }

    [[nodiscard]] std::vector<std::filesystem::path> copies() const {
        std::vector<std::filesystem::path> files;
        std::error_code error;
        for (const auto& entry : std::filesystem::directory_iterator(copiesFolder(m_file), error)) {
            files.push_back(entry.path());
        }
        return files;
    }
    [[nodiscard]] std::int64_t versionOf(const std::filesystem::path& file) const {
        auto connection = Connection::open(file, Access::read);
        return connection ? *(*connection)->number("PRAGMA user_version") : -1;
    }

    TemporaryFolder m_folder;
    std::filesystem::path m_file = m_folder.path() / "a.orchard";
    Site m_site;
};

TEST_F(Migrating, BringsAnOlderBookUpToDateAndKeepsACopy) {
    const auto list = withTwoMore();
    auto book = openForWriting(m_file, list);
    ASSERT_TRUE(book.ok()) << book.problem().sentence();
    const auto kept = (*book)->copyBeforeUpdate();
    ASSERT_EQ(copies(), std::vector{kept});
    EXPECT_NE(kept.filename().string().find("-version-" + std::to_string(kNow) + ".orchard"),
              std::string::npos);
    EXPECT_EQ(versionOf(kept), kNow);
    EXPECT_EQ(versionOf(m_file), kNow + 2);
    const auto site = (*book)->get(m_site.id);
    ASSERT_TRUE(site.ok() && site->has_value());
    EXPECT_EQ((*site)->name, "Halde");
    const auto& store = dynamic_cast<const SqliteStore&>(**book);
    EXPECT_EQ(*store.connection().text("SELECT name FROM soil_kind"), "loam; deep");
    (*book).reset();
    auto again = openForWriting(m_file, list); // nothing to do the second time
    ASSERT_TRUE(again.ok());
    EXPECT_TRUE((*again)->copyBeforeUpdate().empty());
    EXPECT_EQ(copies().size(), 1U);
    (*again).reset();
    EXPECT_EQ(openForWriting(m_file, released()).problem().code, ProblemCode::newer);
}

TEST_F(Migrating, EveryVersionEndsWithTheSameSchema) {
    const auto list = withTwoMore();
    const auto schemaOf = [](const Connection& connection) {
        return *connection.text("SELECT group_concat(sql, '|') FROM (SELECT sql FROM "
                                "sqlite_schema ORDER BY name)");
    };
    auto fresh = Connection::open(m_folder.path() / "fresh.orchard", Access::create);
    ASSERT_TRUE(migrate(**fresh, list).ok());
    for (std::size_t from = 1; from <= list.size(); ++from) {
        auto older = Connection::open(
            m_folder.path() / ("from" + std::to_string(from) + ".orchard"), Access::create);
        ASSERT_TRUE(migrate(**older, std::span(list).first(from)).ok());
        EXPECT_EQ(*(*older)->number("PRAGMA user_version"), static_cast<std::int64_t>(from));
        ASSERT_TRUE(migrate(**older, list).ok());
        EXPECT_EQ(schemaOf(**older), schemaOf(**fresh));
    }
}

TEST_F(Migrating, ABookOfTheFirstVersionGetsKeysForItsSittings) {
    const auto old = m_folder.path() / "old.orchard";
    {
        auto first = Connection::open(old, Access::create);
        ASSERT_TRUE(migrate(**first, releasedMigrations().first(1)).ok());
        ASSERT_TRUE((*first)
                        ->run("INSERT INTO tasting (uuid, date, title, sight, place) VALUES "
                              "(x'0192F0000000700080000000000000AA', '2024-09-07', 'Saturday', "
                              "'blind', 'table')")
                        .ok());
        EXPECT_FALSE((*first)->number("SELECT count(*) FROM sealed_key").ok());
    }
    auto book = openForWriting(old, releasedMigrations());
    ASSERT_TRUE(book.ok()) << book.problem().sentence();
    EXPECT_EQ(versionOf(old), kNow);
    const auto tastings = (*book)->all<Tasting>();
    ASSERT_TRUE(tastings.ok());
    ASSERT_EQ(tastings->size(), 1U);
    EXPECT_EQ(tastings->front().title, "Saturday");
    SealedKey key;
    key.id = SealedKeyId(UuidMaker().make());
    key.tasting = tastings->front().id;
    key.draw = 7;
    ChangeSet set;
    set.sentence = "Seal";
    set.create(key);
    ASSERT_TRUE((*book)->apply(set, {}).ok());
    const auto kept = (*book)->where<SealedKey>("tasting", key.tasting.uuid);
    ASSERT_TRUE(kept.ok());
    ASSERT_EQ(kept->size(), 1U);
    EXPECT_EQ(kept->front().draw, 7);
    EXPECT_FALSE(kept->front().opened);
}

TEST_F(Migrating, AFailedStepLeavesTheVersionBefore) {
    const auto list = withTwoMore("CREATE TABLE soil_kind (id INTEGER PRIMARY KEY) STRICT;\n"
                                  "INSERT INTO nowhere VALUES (1);");
    const auto failed = openForWriting(m_file, list);
    ASSERT_FALSE(failed.ok());
    EXPECT_NE(failed.problem().where.find("last_soil_kinds"), std::string::npos);
    EXPECT_EQ(versionOf(m_file), kNow + 1); // the second step stands, the third left nothing
    auto connection = Connection::open(m_file, Access::read);
    EXPECT_EQ(*(*connection)->number("SELECT count(*) FROM sqlite_schema WHERE name = 'soil_kind'"),
              0);
    EXPECT_EQ(copies().size(), 1U);
    (*connection).reset();
    EXPECT_TRUE(openForWriting(m_file, withTwoMore()).ok()); // the repaired program goes on
}

TEST_F(Migrating, AStepThatBreaksReferencesIsTakenBack) {
    const auto list = withTwoMore("PRAGMA defer_foreign_keys = ON;\n"
                                  "INSERT INTO trial_row (uuid, site, number) VALUES "
                                  "(randomblob(16), 999, 1);");
    const auto failed = openForWriting(m_file, list);
    ASSERT_FALSE(failed.ok());
    EXPECT_EQ(failed.problem().code, ProblemCode::damaged);
    EXPECT_EQ(versionOf(m_file), kNow + 1);
}

TEST_F(Migrating, AnOlderBookIsNotReadAsItIs) {
    const auto book = openForReading(m_file, withTwoMore());
    ASSERT_FALSE(book.ok());
    EXPECT_NE(book.problem().remedy.find("writing"), std::string::npos);
    EXPECT_EQ(versionOf(m_file), kNow);
}

TEST_F(Migrating, WithoutRoomForTheCopyNothingIsDone) {
    std::filesystem::create_directories(copiesFolder(m_file));
    std::filesystem::remove(copiesFolder(m_file));
    const auto blocked = copiesFolder(m_file);
    ASSERT_TRUE(writeWhole(blocked, "a file where the folder should be").ok());
    const auto failed = openForWriting(m_file, withTwoMore());
    ASSERT_FALSE(failed.ok());
    EXPECT_EQ(versionOf(m_file), kNow);
}

} // namespace
} // namespace pipwright::test
