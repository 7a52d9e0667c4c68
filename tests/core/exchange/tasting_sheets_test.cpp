#include "core/exchange/print/tasting_sheets.h"
#include "tests/core/exchange/mark_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

using testing::Contains;
using testing::ElementsAreArray;
using testing::HasSubstr;
using testing::Not;

const RuleMeasure kMeasure;

TastingSheets sheetsFor(int lots, PaperSize paper) {
    TastingSheets sheets;
    sheets.date = *Date::of(2026, 8, 22);
    sheets.title = "Saturday before the fair";
    sheets.paper = paper;
    sheets.pauseAfter = (lots + 1) / 2;
    SheetTaster mara{"Mara Thorne", {}};
    for (int i = 0; i < lots; ++i) {
        mara.codes.push_back(std::to_string(231 + 23 * i));
    }
    SheetTaster jory{"Jory Pell", {mara.codes.rbegin(), mara.codes.rend()}};
    sheets.tasters = {mara, jory};
    return sheets;
}

/// The big codes from the top of the page to its foot.
std::vector<std::string> codesDown(const Page& page) {
    std::vector<std::pair<int, std::string>> codes;
    for (const Mark& mark : page.marks) {
        if (const auto* text = std::get_if<TextMark>(&mark); text && text->points > 16.5) {
            codes.emplace_back(text->box.y.count, text->text);
        }
    }
    std::sort(codes.begin(), codes.end());
    std::vector<std::string> down;
    for (auto& [y, code] : codes) {
        down.push_back(std::move(code));
    }
    return down;
}

PaperBox boxOf(const Mark& mark) {
    if (const auto* text = std::get_if<TextMark>(&mark)) {
        return text->box;
    }
    if (const auto* frame = std::get_if<FrameMark>(&mark)) {
        return frame->box;
    }
    if (const auto* fill = std::get_if<FillMark>(&mark)) {
        return fill->box;
    }
    const auto& line = std::get<LineMark>(mark);
    return {line.from.x, line.from.y, line.to.x - line.from.x, line.to.y - line.from.y};
}

TEST(TastingSheetPages, AreOneATasterInHisOwnOrder) {
    const TastingSheets sheets = sheetsFor(9, kA4);
    const PrintedMatter matter = layOutTastingSheets(sheets, kMeasure);
    ASSERT_EQ(matter.pages.size(), 2U);
    EXPECT_TRUE(matter.misfits.empty());
    EXPECT_THAT(codesDown(matter.pages[0]), ElementsAreArray(sheets.tasters[0].codes));
    EXPECT_THAT(codesDown(matter.pages[1]), ElementsAreArray(sheets.tasters[1].codes));
    EXPECT_THAT(textsOf(matter.pages[1]), Contains("Tasting sheet of Jory Pell"));
    EXPECT_THAT(textsOf(matter.pages[0]), Not(Contains(HasSubstr("Jory"))));
    EXPECT_THAT(textsOf(matter.pages[0]), Contains(HasSubstr("Pause")));
    EXPECT_THAT(textsOf(matter.pages[0]), Contains(HasSubstr("patulin")));
    EXPECT_THAT(textsOf(matter.pages[0]), Contains("first"));
}

TEST(TastingSheetPages, ThePauseStandsInTheMiddle) {
    const PrintedMatter matter = layOutTastingSheets(sheetsFor(9, kA4), kMeasure);
    int above = 0;
    int pause = 0;
    for (const Mark& mark : matter.pages[0].marks) {
        const auto* text = std::get_if<TextMark>(&mark);
        if (text != nullptr && text->text.find("Pause") == 0) {
            pause = text->box.y.count;
        }
    }
    for (const Mark& mark : matter.pages[0].marks) {
        const auto* text = std::get_if<TextMark>(&mark);
        above += text != nullptr && text->points > 16.5 && text->box.y.count < pause ? 1 : 0;
    }
    EXPECT_EQ(above, 5);
}

TEST(TastingSheetPages, EverythingLiesOnThePaperAndTextLinesStandApart) {
    for (const PaperSize paper : {kA4, kLetter}) {
        for (const int lots : {2, 6, 9, 12}) {
            TastingSheets sheets = sheetsFor(lots, paper);
            sheets.lookOnly = {"AT17-090 (farm shop on the hill)", "AT17-091"};
            const PrintedMatter matter = layOutTastingSheets(sheets, kMeasure);
            ASSERT_EQ(matter.pages.size(), 2U) << lots;
            const auto& marks = matter.pages[0].marks;
            for (std::size_t i = 0; i < marks.size(); ++i) {
                const PaperBox box = boxOf(marks[i]);
                EXPECT_GE(box.x, 0_mm);
                EXPECT_LE(box.right(), paper.width);
                EXPECT_GE(box.y, 10_mm);
                EXPECT_LE(box.bottom(), paper.height - 10_mm) << lots << " lots, mark " << i;
                const auto* text = std::get_if<TextMark>(&marks[i]);
                for (std::size_t j = i + 1; text != nullptr && j < marks.size(); ++j) {
                    const auto* other = std::get_if<TextMark>(&marks[j]);
                    const bool apart = other == nullptr || box.right() <= other->box.x ||
                                       other->box.right() <= box.x ||
                                       box.bottom() <= other->box.y || other->box.bottom() <= box.y;
                    EXPECT_TRUE(apart) << lots << ": " << text->text << " | " << other->text;
                }
            }
        }
    }
}

TEST(TastingSheetPages, AreTheSameEveryTime) {
    const auto once = layOutTastingSheets(sheetsFor(9, kA4), kMeasure);
    EXPECT_EQ(once.pages, layOutTastingSheets(sheetsFor(9, kA4), kMeasure).pages);
}

TEST(SittingKeyPage, TellsWhatStandsBehindTheCodesAndWhoGetsWhat) {
    SittingKeyPaper key;
    key.date = *Date::of(2026, 8, 22);
    key.lines = {{"254", "AT17-014", "Upper, row 3, 14", "picked ripe, prime", ""},
                 {"417", "Russet Moor", "farm shop", "", "benchmark, twice"},
                 {"–", "AT17-091", "", "gone", ""}};
    key.tasters = {{"Mara Thorne", {"417", "254"}}};
    key.draw = "17";
    const auto matter = layOutSittingKey(key, kMeasure);
    ASSERT_EQ(matter.pages.size(), 1U);
    const auto texts = textsOf(matter.pages[0]);
    EXPECT_THAT(texts, Contains("254"));
    EXPECT_THAT(texts, Contains("AT17-014"));
    EXPECT_THAT(texts, Contains(HasSubstr("Mara Thorne: 417 · 254")));
    EXPECT_THAT(texts, Contains(HasSubstr("Drawn with number 17")));
}

} // namespace
} // namespace pipwright
