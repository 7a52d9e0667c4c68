#include "core/exchange/csv_reader.h"
#include "core/exchange/csv_writer.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <random>
#include <sstream>
#include <sys/resource.h>

using namespace pipwright;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

using Table = std::vector<std::vector<std::string>>;

/// All records, or the sentence of the first problem as a single cell.
Table read(const std::string& text, CsvFormat format = {}) {
    std::istringstream stream(text);
    CsvReader reader(stream, "t.csv", format);
    Table table;
    for (;;) {
        const auto more = reader.next();
        if (!more) {
            return {{more.problem().sentence()}};
        }
        if (!*more) {
            return table;
        }
        table.emplace_back(reader.cells().begin(), reader.cells().end());
    }
}

std::string problemOf(const std::string& text, CsvFormat format = {}) {
    const auto table = read(text, format);
    return table.size() == 1 && table[0].size() == 1 ? table[0][0] : "no problem";
}

std::string written(const Table& table, char delimiter = ',') {
    std::string text;
    CsvWriter writer(text, delimiter);
    for (const auto& record : table) {
        for (const auto& cell : record) {
            writer.cell(cell);
        }
        writer.endRecord();
    }
    return text;
}

/// A stream of the same bytes over and over, that keeps none of them.
class EndlessBytes : public std::streambuf {
  public:
    EndlessBytes(const std::string& piece, std::int64_t total) : m_left(total) {
        while (m_piece.size() < (std::size_t{1} << 20U)) {
            m_piece += piece;
        }
    }

  protected:
    std::streamsize xsgetn(char* to, std::streamsize wanted) override {
        const auto size = std::min(
            {static_cast<std::int64_t>(wanted), m_left, static_cast<std::int64_t>(m_piece.size())});
        std::copy_n(m_piece.begin(), size, to);
        m_left -= size;
        return size;
    }
    int_type underflow() override { return traits_type::eof(); }

  private:
    std::string m_piece;
    std::int64_t m_left;
};

std::int64_t mostMemoryKilobytes() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return usage.ru_maxrss;
}

} // namespace

TEST(CsvReader, TakesBothLineEndsAndAMissingLastOne) {
    const Table wanted = {{"a", "b"}, {"c", ""}};
    EXPECT_EQ(read("a,b\r\nc,\r\n"), wanted);
    EXPECT_EQ(read("a,b\nc,\n"), wanted);
    EXPECT_EQ(read("a,b\r\nc,"), wanted);
    EXPECT_TRUE(read("").empty());
}

TEST(CsvReader, PassesOverAByteOrderMarkOnlyAtTheStart) {
    EXPECT_EQ(read("\xEF\xBB\xBF"
                   "a,b\n"),
              (Table{{"a", "b"}}));
    EXPECT_EQ(read("\xEF\xBB\xBF"), Table{});
    EXPECT_EQ(read("a\n\xEF\xBB\xBF"
                   "b\n"),
              (Table{{"a"},
                     {"\xEF\xBB\xBF"
                      "b"}}));
}

TEST(CsvReader, CountsLinesInsideQuotedCells) {
    std::istringstream stream("a,\"one\ntwo\r\nthree\"\nb,c\n");
    CsvReader reader(stream, "t.csv");
    ASSERT_TRUE(*reader.next());
    EXPECT_EQ(reader.line(), 1);
    EXPECT_EQ(reader.cells()[1], "one\ntwo\r\nthree");
    ASSERT_TRUE(*reader.next());
    EXPECT_EQ(reader.line(), 4);
    EXPECT_FALSE(*reader.next());
}

TEST(CsvReader, NamesLineAndCharacterOfABadByte) {
    EXPECT_THAT(problemOf("code,note\nAP1,gr\xC3\xBC"
                          "n \xE9\n"),
                AllOf(HasSubstr("t.csv, line 2, character 10"), HasSubstr("0xE9")));
    EXPECT_THAT(problemOf("a,\"x\ny\xFF\"\n"), HasSubstr("line 2, character 2"));
}

TEST(CsvReader, NamesWhatIsWrongWithQuotes) {
    EXPECT_THAT(problemOf("a,5\" pot\n"), HasSubstr("line 1, character 4"));
    EXPECT_THAT(problemOf("a,\"b\"c\n"), HasSubstr("line 1, character 6"));
    EXPECT_THAT(problemOf("a\nb,\"c\nd\n"),
                AllOf(HasSubstr("line 2, character 3"), HasSubstr("never closed")));
    CsvFormat loose;
    loose.quotesInside = true;
    EXPECT_EQ(read("a,5\" pot\n", loose), (Table{{"a", "5\" pot"}}));
}

TEST(CsvReader, RefusesALoneCarriageReturnAndAZeroByte) {
    EXPECT_THAT(problemOf("a\rb\n"), HasSubstr("character 2"));
    EXPECT_THAT(problemOf(std::string("a,b\0c\n", 6)), HasSubstr("character 4"));
}

TEST(CsvReader, GoesOnBehindAFaultyLine) {
    std::istringstream stream("a\nb\"\nc\n\xFF\nd\n");
    CsvReader reader(stream, "t.csv");
    std::vector<std::string> seen;
    while (!reader.finished()) {
        const auto more = reader.next();
        if (!more) {
            seen.push_back(more.problem().where);
        } else if (*more) {
            seen.push_back(std::string(reader.cells()[0]) + std::to_string(reader.line()));
        }
    }
    EXPECT_THAT(seen, ElementsAre("a1", "t.csv, line 2, character 2", "c3",
                                  "t.csv, line 4, character 1", "d5"));
}

TEST(CsvReader, ReadsCellsThatLieAcrossItsPieces) {
    Table table;
    for (std::size_t size : {std::size_t{262'100}, std::size_t{70'000}, std::size_t{300'000}}) {
        table.push_back({std::string(size, 'x'), "\"" + std::string(size, '"') + "\n", "end"});
    }
    EXPECT_EQ(read(written(table)), table);
}

TEST(CsvReader, HoldsNoMoreThanItsLimitOfAGigabyteOfJunk) {
    for (const std::string piece : {"junk ", "\"junk", "a,b"}) {
        const auto before = mostMemoryKilobytes();
        EndlessBytes bytes(piece, std::int64_t{1} << 30U);
        std::istream stream(&bytes);
        CsvFormat format;
        format.cellLimit = 1'000'000;
        format.recordLimit = 2'000'000;
        CsvReader reader(stream, "junk.csv", format);
        const auto first = reader.next();
        ASSERT_FALSE(first.ok()) << piece;
        EXPECT_THAT(first.problem().sentence(), testing::ContainsRegex("longer than|quote"));
        while (!reader.finished()) {
            const auto more = reader.next();
            EXPECT_FALSE(more.ok() && *more);
        }
#ifdef __SANITIZE_ADDRESS__
        constexpr long kMost = 256'000; // freed memory is kept aside there
#else
        constexpr long kMost = 32'000;
#endif
        EXPECT_LT(mostMemoryKilobytes() - before, kMost) << piece;
    }
}

TEST(CsvWriter, QuotesOnlyWhatNeedsIt) {
    EXPECT_EQ(written({{"a b", "x,y", "say \"hi\"", "1\r\n2", "", "é"}}),
              "a b,\"x,y\",\"say \"\"hi\"\"\",\"1\r\n2\",,é\r\n");
    EXPECT_EQ(written({{"a,b", "c\td"}}, '\t'), "a,b\t\"c\td\"\r\n");
}

TEST(CsvWriter, WhatItWritesReadsBack) {
    std::mt19937 random(7);
    const std::vector<std::string> pieces = {"",
                                             "a",
                                             ",",
                                             "\"",
                                             "\n",
                                             "\r",
                                             "\r\n",
                                             "ü",
                                             "\t",
                                             ";",
                                             "\xEF\xBB\xBF",
                                             " ",
                                             std::string(1, '\0')};
    for (int trial = 0; trial < 2000; ++trial) {
        Table table(1 + random() % 4);
        for (auto& record : table) {
            record.resize(1 + random() % 4);
            for (auto& cell : record) {
                for (auto left = random() % 4; left > 0; --left) {
                    cell += pieces[random() % pieces.size()];
                }
            }
        }
        const char delimiter = ",;\t"[random() % 3];
        CsvFormat format;
        format.delimiter = delimiter;
        ASSERT_EQ(read(written(table, delimiter), format), table) << trial;
    }
}

TEST(CsvWriter, GuardsFormulasAndTakesTheGuardOffAgain) {
    EXPECT_EQ(guardedCell("=1+1"), "'=1+1");
    EXPECT_EQ(guardedCell("\n=1"), "'\n=1");
    EXPECT_EQ(guardedCell("-3.5"), "-3.5");
    EXPECT_EQ(guardedCell("-"), "'-");
    EXPECT_EQ(guardedCell("+-5"), "'+-5");
    EXPECT_EQ(withoutGuard("'=1+1"), "=1+1");
    EXPECT_EQ(withoutGuard("'tis"), "'tis");
}
