#include "core/exchange/print/ruler_page.h"
#include "core/exchange/print/table_page.h"
#include "tests/core/exchange/mark_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::SizeIs;

PrintedTable tableOf(int rows) {
    PrintedTable table;
    table.title = "Side by side";
    table.subtitle = "printed 2026-08-22";
    table.columns = {{"", 1.0, Align::left}, {"AT17-014", 1.0, Align::right}};
    for (int i = 0; i < rows; ++i) {
        table.rows.push_back({{"row " + std::to_string(i), std::to_string(i * i)}});
    }
    table.notes = {"± is one standard error."};
    return table;
}

TEST(TablePage, PlacesColumnsByTheirShares) {
    const auto matter = layOutTable(tableOf(1), kMeasure);
    ASSERT_THAT(matter.pages, SizeIs(1));
    // 210 - 2 x 15 - 2 x 1 - 3 mm between the two columns leaves 87.5 mm each.
    const auto marks = marksAsText(matter.pages[0]);
    EXPECT_THAT(marks, Contains(testing::StartsWith("text 16000 ")).Times(1));
    EXPECT_THAT(marks, Contains(testing::MatchesRegex("text 106500 .* 87500 .* plain 0")));
}

TEST(TablePage, RepeatsTheHeadingsAndLosesNoRow) {
    const auto matter = layOutTable(tableOf(150), kMeasure);
    ASSERT_GE(matter.pages.size(), 3U);
    std::vector<std::string> all;
    for (const Page& page : matter.pages) {
        const auto texts = textsOf(page);
        EXPECT_THAT(texts, Contains("AT17-014"));
        all.insert(all.end(), texts.begin(), texts.end());
    }
    for (int i = 0; i < 150; ++i) {
        EXPECT_THAT(all, Contains("row " + std::to_string(i)).Times(1));
    }
    EXPECT_THAT(all, Contains("± is one standard error.").Times(1));
    EXPECT_THAT(all, Contains("page 3 of " + std::to_string(matter.pages.size())));
}

TEST(TablePage, ARowHigherThanThePageGoesOnOnTheNext) {
    PrintedTable table = tableOf(1);
    std::string words;
    for (int i = 0; i < 2000; ++i) {
        words += "w" + std::to_string(i) + " ";
    }
    table.rows[0].cells[1] = words;
    const auto matter = layOutTable(table, kMeasure);
    EXPECT_GE(matter.pages.size(), 3U);
    std::string all;
    for (const Page& page : matter.pages) {
        for (const Mark& mark : page.marks) {
            if (const auto* text = std::get_if<TextMark>(&mark);
                text != nullptr && text->text[0] == 'w') {
                all += text->text + " ";
                EXPECT_LE(text->box.bottom(), kA4.height - 15_mm);
            }
        }
    }
    EXPECT_EQ(all, words);
}

TEST(TablePage, AnEmptyTableStillHasItsTitle) {
    PrintedTable table;
    table.title = "Nothing yet";
    const auto matter = layOutTable(table, kMeasure);
    ASSERT_THAT(matter.pages, SizeIs(1));
    EXPECT_THAT(textsOf(matter.pages[0]), Contains("Nothing yet"));
}

TEST(RulerPage, HasTicksAtEveryMillimetreOfAHundred) {
    const auto marks = marksAsText(rulerPage(kA4, {}, kMeasure));
    EXPECT_THAT(marks, Contains("line 15000 15000 115000 15000 100"));
    for (int mm = 0; mm <= 100; ++mm) {
        const std::string x = std::to_string(15000 + mm * 1000);
        EXPECT_THAT(marks, Contains(testing::StartsWith("line " + x + " 15000 " + x)));
    }
    EXPECT_THAT(textsOf(rulerPage(kA4, {}, kMeasure)), Contains(HasSubstr("100")));
}

TEST(RulerPage, IsShorterOnASmallLabel) {
    const PaperSize tag{60_mm, 20_mm};
    for (const Mark& mark : rulerPage(tag, {}, kMeasure).marks) {
        if (const auto* line = std::get_if<LineMark>(&mark)) {
            EXPECT_LE(line->to.x, tag.width);
            EXPECT_LE(line->to.y, tag.height);
        }
    }
}

} // namespace
} // namespace pipwright
