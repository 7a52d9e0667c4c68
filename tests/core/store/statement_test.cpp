#include "core/store/statement.h"
#include "core/store/transaction.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <thread>

namespace pipwright::test {
namespace {

class Statements : public ::testing::Test {
  protected:
    void SetUp() override {
        auto connection = Connection::open(m_folder.path() / "a.db", Access::create);
        ASSERT_TRUE(connection.ok()) << connection.problem().sentence();
        m_connection = std::move(*connection);
        ASSERT_TRUE(m_connection->run("CREATE TABLE t (a INTEGER, b TEXT) STRICT").ok());
    }

    Statement prepared(const char* sql) {
        auto statement = Statement::prepare(*m_connection, sql);
        EXPECT_TRUE(statement.ok()) << statement.problem().sentence();
        return std::move(*statement);
    }

    TemporaryFolder m_folder;
    std::unique_ptr<Connection> m_connection;
};

TEST_F(Statements, RefusesNamesThatDoNotExist) {
    auto statement = prepared("INSERT INTO t (a) VALUES (:a)");
    const auto outcome = statement.bind("a", std::int64_t{1}).bind("b", "x").execute();
    ASSERT_FALSE(outcome.ok());
    EXPECT_EQ(outcome.problem().where, "b");
    EXPECT_EQ(*m_connection->number("SELECT count(*) FROM t"), 0);
}

TEST_F(Statements, RefusesNamesThatWereNotBound) {
    auto statement = prepared("INSERT INTO t (a, b) VALUES (:a, :b)");
    EXPECT_FALSE(statement.bind("a", std::int64_t{1}).execute().ok());
    EXPECT_TRUE(statement.bind("a", std::int64_t{1}).bind("b", "x").execute().ok());
    // What was bound for one run does not leak into the next.
    EXPECT_FALSE(statement.bind("a", std::int64_t{2}).execute().ok());
    EXPECT_EQ(*m_connection->number("SELECT count(*) FROM t"), 1);
}

TEST_F(Statements, BindsANameThatStandsTwiceAndLeavesTextsAlone) {
    auto statement = prepared("INSERT INTO t (a, b) VALUES (:n, ':n' || :n || :text)");
    ASSERT_TRUE(statement.bind("n", std::int64_t{5}).bind("text", "").execute().ok());
    EXPECT_EQ(*m_connection->text("SELECT b FROM t"), ":n5");
}

TEST_F(Statements, TellsEmptyTextFromNone) {
    auto statement = prepared("INSERT INTO t (a, b) VALUES (1, :b)");
    ASSERT_TRUE(statement.bind("b", "").execute().ok());
    ASSERT_TRUE(statement.bind("b", std::optional<std::string_view>{}).execute().ok());
    EXPECT_EQ(*m_connection->number("SELECT count(*) FROM t WHERE b = ''"), 1);
    EXPECT_EQ(*m_connection->number("SELECT count(*) FROM t WHERE b IS NULL"), 1);
}

TEST_F(Statements, TransactionIsTakenBackUnlessCommitted) {
    {
        auto transaction = Transaction::begin(*m_connection);
        ASSERT_TRUE(transaction.ok());
        ASSERT_TRUE(m_connection->run("INSERT INTO t (a) VALUES (1)").ok());
    }
    EXPECT_EQ(*m_connection->number("SELECT count(*) FROM t"), 0);
    auto transaction = Transaction::begin(*m_connection);
    ASSERT_TRUE(transaction.ok());
    ASSERT_TRUE(m_connection->run("INSERT INTO t (a) VALUES (1)").ok());
    ASSERT_TRUE((*transaction)->commit().ok());
    EXPECT_EQ(*m_connection->number("SELECT count(*) FROM t"), 1);
}

TEST_F(Statements, SQLitesOwnParserCutsAScript) {
    ASSERT_TRUE(m_connection
                    ->run("-- a remark; with a semicolon\n"
                          "INSERT INTO t VALUES (1, 'a;b'); /* ; */\n"
                          "CREATE TRIGGER doubled AFTER INSERT ON t WHEN new.a < 10 BEGIN\n"
                          "  INSERT INTO t VALUES (new.a + 10, new.b); SELECT 1;\n"
                          "END;\n"
                          "INSERT INTO t VALUES (2, 'x')")
                    .ok());
    EXPECT_EQ(*m_connection->number("SELECT count(*) FROM t"), 3);
    const auto failed = m_connection->run("INSERT INTO t VALUES (3, 'y'); INSERT INTO nowhere");
    EXPECT_FALSE(failed.ok());
}

TEST_F(Statements, AnotherThreadEndsTheProgram) {
    ::testing::FLAGS_gtest_death_test_style = "threadsafe";
    EXPECT_DEATH(
        {
            std::thread other([this] { static_cast<void>(m_connection->number("SELECT 1")); });
            other.join();
        },
        "used by a thread that did not open it");
}

} // namespace
} // namespace pipwright::test
