// RFC 4180 (Shafranovich, 2005), section 2: the seven rules with the examples printed there.
#include "core/exchange/csv_reader.h"
#include "core/exchange/csv_writer.h"

#include <gtest/gtest.h>
#include <sstream>

using namespace pipwright;

namespace {

using Table = std::vector<std::vector<std::string>>;

Table tableOf(const std::string& text) {
    std::istringstream stream(text);
    CsvReader reader(stream, "rfc4180");
    Table table;
    for (auto more = reader.next(); more && *more; more = reader.next()) {
        table.emplace_back(reader.cells().begin(), reader.cells().end());
    }
    return table;
}

} // namespace

TEST(Rfc4180, Rules) {
    const Table two = {{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}};
    EXPECT_EQ(tableOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), two);         // rule 1
    EXPECT_EQ(tableOf("aaa,bbb,ccc\r\nzzz,yyy,xxx"), two);             // rule 2
    EXPECT_EQ(tableOf("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"), two); // rule 5
    EXPECT_EQ(tableOf("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"),
              (Table{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));                // rule 6
    EXPECT_EQ(tableOf("\"aaa\",\"b\"\"bb\",\"ccc\""), (Table{{"aaa", "b\"bb", "ccc"}})); // rule 7
    EXPECT_EQ(tableOf("a, b ,c"), (Table{{"a", " b ", "c"}})); // rule 4: blanks belong to the cell
}

TEST(Rfc4180, WritingByTheRules) {
    std::string text;
    CsvWriter writer(text);
    writer.record({"He said \"hi\", ok", "aaa"});
    EXPECT_EQ(text, "\"He said \"\"hi\"\", ok\",aaa\r\n");
}
