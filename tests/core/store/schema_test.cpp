#include "core/history/record.h"
#include "core/store/connection.h"
#include "core/store/migrator.h"
#include "core/store/statement.h"
#include "core/units/sha256.h"
#include "tests/support/temporary_folder.h"

#include <gtest/gtest.h>
#include <map>

namespace pipwright::test {
namespace {

class Schema : public ::testing::Test {
  protected:
    void SetUp() override {
        auto connection = Connection::open(m_folder.path() / "a.orchard", Access::create);
        ASSERT_TRUE(connection.ok()) << connection.problem().sentence();
        m_connection = std::move(*connection);
        const auto outcome = migrate(*m_connection, releasedMigrations());
        ASSERT_TRUE(outcome.ok()) << outcome.problem().sentence();
    }

    /// The rows of a query, a text a column.
    std::vector<std::vector<std::string>> rows(const std::string& sql, int columns) {
        auto statement = Statement::prepare(*m_connection, sql);
        EXPECT_TRUE(statement.ok()) << statement.problem().sentence();
        std::vector<std::vector<std::string>> all;
        if (statement && statement->execute()) {
            while (statement->next()) {
                std::vector<std::string> row(static_cast<std::size_t>(columns));
                for (int i = 0; i < columns; ++i) {
                    row[static_cast<std::size_t>(i)] = statement->text(i);
                }
                all.push_back(std::move(row));
            }
        }
        return all;
    }

    TemporaryFolder m_folder;
    std::unique_ptr<Connection> m_connection;
};

std::string sqlTypeOf(FieldType type) {
    switch (type) {
    case FieldType::text:
    case FieldType::word:
    case FieldType::date:
        return "TEXT";
    case FieldType::number:
        return "REAL";
    case FieldType::integer:
    case FieldType::flag:
    case FieldType::reference:
        return "INTEGER";
    }
    return {};
}

TEST_F(Schema, HasATableForEveryKindWithItsFieldsInOrder) {
    for (const Kind kind : kAllKinds) {
        const std::string table(nameOf(kind));
        const auto columns =
            rows("SELECT name, type, \"notnull\" FROM pragma_table_info('" + table + "')", 3);
        const auto& fields = fieldsOf(kind);
        ASSERT_EQ(columns.size(), fields.size() + 2) << table;
        EXPECT_EQ(columns[0][0], "id");
        EXPECT_EQ(columns[1], (std::vector<std::string>{"uuid", "BLOB", "1"}));
        for (std::size_t i = 0; i < fields.size(); ++i) {
            const auto& column = columns[i + 2];
            EXPECT_EQ(column[0], fields[i].name) << table;
            EXPECT_EQ(column[1], sqlTypeOf(fields[i].type)) << table << "." << column[0];
            EXPECT_EQ(column[2], fields[i].required ? "1" : "0") << table << "." << column[0];
        }
        const auto strict =
            rows("SELECT strict FROM pragma_table_list WHERE name = '" + table + "'", 1);
        ASSERT_EQ(strict.size(), 1U);
        EXPECT_EQ(strict[0][0], "1") << table;
    }
}

TEST_F(Schema, ReferencesLeadToTheKindTheFieldsSayAndAreIndexed) {
    for (const Kind kind : kAllKinds) {
        const std::string table(nameOf(kind));
        std::map<std::string, std::string> targets;
        for (const auto& row :
             rows("SELECT \"from\", \"table\" FROM pragma_foreign_key_list('" + table + "')", 2)) {
            targets[row[0]] = row[1];
        }
        std::size_t references = 0;
        for (const FieldInfo& field : fieldsOf(kind)) {
            if (field.type != FieldType::reference) {
                continue;
            }
            ++references;
            const std::string name(field.name);
            EXPECT_EQ(targets[name], nameOf(field.refersTo)) << table << "." << name;
            std::string query = "EXPLAIN QUERY PLAN SELECT 1 FROM \"";
            query.append(table).append("\" WHERE \"").append(name).append("\" = 7");
            const auto plan = rows(query, 4);
            ASSERT_FALSE(plan.empty());
            EXPECT_NE(plan[0][3].find("SEARCH"), std::string::npos) << plan[0][3];
        }
        EXPECT_EQ(targets.size(), references) << table;
    }
}

TEST_F(Schema, WordsAreThoseOfTheVocabularies) {
    for (const Kind kind : kAllKinds) {
        const auto sql =
            rows("SELECT sql FROM sqlite_schema WHERE name = '" + std::string(nameOf(kind)) + "'",
                 1)[0][0];
        for (const FieldInfo& field : fieldsOf(kind)) {
            if (field.type != FieldType::word) {
                continue;
            }
            const std::string start = "CHECK (" + std::string(field.name) + " IN (";
            const auto from = sql.find(start);
            ASSERT_NE(from, std::string::npos) << nameOf(kind) << "." << field.name;
            const auto end = sql.find("))", from);
            std::vector<std::string> words;
            std::string word;
            bool inside = false;
            for (const char c : sql.substr(from + start.size(), end - from - start.size())) {
                if (c == '\'' && inside) {
                    words.push_back(std::move(word));
                    word.clear();
                } else if (inside) {
                    word += c;
                }
                inside = c == '\'' ? !inside : inside;
            }
            EXPECT_EQ(words, std::vector<std::string>(field.words.begin(), field.words.end()))
                << nameOf(kind) << "." << field.name;
        }
    }
}

TEST_F(Schema, RefusesWrongTypesWordsAndSubjects) {
    const auto refused = [this](const char* sql) {
        const auto outcome = m_connection->run(sql);
        return !outcome.ok() && outcome.problem().code == ProblemCode::conflict;
    };
    EXPECT_TRUE(refused("INSERT INTO site (uuid, latitude, hemisphere) VALUES "
                        "(randomblob(16), 'far', 'north')"));
    EXPECT_TRUE(refused("INSERT INTO site (uuid, hemisphere) VALUES (randomblob(16), 'west')"));
    EXPECT_TRUE(refused("INSERT INTO site (uuid, hemisphere) VALUES (randomblob(15), 'north')"));
    EXPECT_TRUE(refused("INSERT INTO alias (uuid, genotype, kind) VALUES "
                        "(randomblob(16), 77, 'unknown')"));
    EXPECT_TRUE(m_connection
                    ->run("INSERT INTO trait (uuid, scale, direction) VALUES "
                          "(randomblob(16), 'text', 'unknown')")
                    .ok());
    EXPECT_TRUE(refused("INSERT INTO observation (uuid, trait, qualifier) VALUES "
                        "(randomblob(16), 1, 'exact')"));
}

TEST_F(Schema, EveryKindHasANumberInTheFinder) {
    EXPECT_EQ(rows("SELECT kind FROM finder_kind", 1).size(), kKindCount);
    for (const Kind kind : kAllKinds) {
        EXPECT_EQ(
            rows("SELECT number FROM finder_kind WHERE kind = '" + std::string(nameOf(kind)) + "'",
                 1)
                .size(),
            1U)
            << nameOf(kind);
    }
}

// A released migration is in breeders' files: it never changes again. A new one is added below.
TEST(ReleasedMigrations, AreWhatTheyWere) {
    const std::vector<std::string> kHashes = {
        "1dd26a316ba36380b8ae93c637c1717beef188e763c67fd8e74686c96d8a6191",
        "613f94aa0695f621cdd297f533da862bbb0e8859ef62b0629ea8baf4426d16b9",
    };
    const auto released = releasedMigrations();
    ASSERT_EQ(released.size(), kHashes.size());
    for (std::size_t i = 0; i < released.size(); ++i) {
        EXPECT_EQ(released[i].version, static_cast<int>(i) + 1);
        EXPECT_EQ(hexOf(sha256(released[i].sql)), kHashes[i]) << released[i].name;
    }
}

} // namespace
} // namespace pipwright::test
