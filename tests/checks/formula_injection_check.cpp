// Open Web Application Security Project, "CSV Injection": cells that begin with = + - @, a tab, a
// carriage return or a line feed are run as formulas by spreadsheets; a single quote in front
// keeps them text. Numbers are not touched.
#include "core/exchange/csv_writer.h"

#include <gtest/gtest.h>

using namespace pipwright;

TEST(FormulaInjection, GuardsEachCharacterOfTheRule) {
    EXPECT_EQ(guardedCell("=1+1"), "'=1+1");
    EXPECT_EQ(guardedCell("+SUM(A1)"), "'+SUM(A1)");
    EXPECT_EQ(guardedCell("-3.5"), "-3.5");
    EXPECT_EQ(guardedCell("@x"), "'@x");
    EXPECT_EQ(guardedCell("\tx"), "'\tx");
    EXPECT_EQ(guardedCell("\rx"), "'\rx");
    EXPECT_EQ(guardedCell("\nx"), "'\nx");
    EXPECT_EQ(guardedCell("O'Neil"), "O'Neil");
}
