#include "core/exchange/book_table.h"

#include <gtest/gtest.h>

using namespace pipwright;

TEST(BookTable, GuardsTextsAndLeavesNumbersAlone) {
    const BookTable table{{"code", "=sum", "days"},
                          {{std::string("@x"), std::string("-3.5"), -3.5},
                           {std::string("a,b"), std::monostate{}, 2.0}}};
    EXPECT_EQ(tableText(table, TableForm::commas),
              "code,'=sum,days\r\n'@x,-3.5,-3.5\r\n\"a,b\",,2\r\n");
    EXPECT_EQ(tableText(table, TableForm::tabs),
              "code\t'=sum\tdays\r\n'@x\t-3.5\t-3.5\r\na,b\t\t2\r\n");
}
