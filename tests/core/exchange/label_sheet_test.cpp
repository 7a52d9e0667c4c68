#include "core/exchange/print/label_sheet.h"
#include "core/units/uuid.h"
#include "tests/core/exchange/mark_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

std::string plantCode(const std::string& words) {
    return Uuid::named(words).labelCode();
}

LabelText label(const std::string& code) {
    return {code, "Ash Tarn x Russet Moor", "2017", "Upper, 3/14", plantCode(code), {}};
}

std::vector<LabelText> labels(int count) {
    std::vector<LabelText> all;
    for (int i = 1; i <= count; ++i) {
        all.push_back(label("A-" + std::to_string(i)));
    }
    return all;
}

PrintedMatter placed(const std::vector<LabelText>& texts, std::string_view stock,
                     const LabelRun& run = {}) {
    auto matter = placeLabels(texts, *labelStock(stock), run, kMeasure);
    EXPECT_TRUE(matter.ok());
    return std::move(matter).value();
}

std::vector<PaperPoint> codeCorners(const Page& page) {
    std::vector<PaperPoint> corners;
    for (const Mark& mark : page.marks) {
        if (const auto* code = std::get_if<CodeMark>(&mark)) {
            corners.push_back(code->corner);
        }
    }
    return corners;
}

TEST(LabelSheet, HangTagMarkByMark) {
    const auto matter = placed({label("A-1")}, "hang_tag");
    ASSERT_THAT(matter.pages, SizeIs(1));
    EXPECT_EQ(matter.pages[0].size, (PaperSize{90_mm, 25_mm}));
    EXPECT_THAT(marksAsText(matter.pages[0]),
                ElementsAre("text 10000 1500 61000 8000 180 bold A-1",
                            "text 10000 9500 61000 3600 80 plain Ash Tarn x Russet Moor",
                            "text 10000 13100 61000 3600 80 plain 2017 · Upper, 3/14",
                            "code 72000 4250 500 " + plantCode("A-1"),
                            "frame 10000 17800 61000 5700 100", "circle 5000 12500 4000 100"));
    EXPECT_THAT(matter.misfits, IsEmpty());
}

TEST(LabelSheet, FillsTheSheetRowByRowAndThenTheNext) {
    const auto matter = placed(labels(23), "sheet_63x38_a4");
    ASSERT_THAT(matter.pages, SizeIs(2));
    const auto first = codeCorners(matter.pages[0]);
    ASSERT_THAT(first, SizeIs(21));
    // 3 x 63.5 + 2 x 2.5 = 195.5 of 210 mm: 7.25 mm at the left; 7 x 38.1 = 266.7 of 297: 15.15.
    EXPECT_EQ(first[0], (PaperPoint{7.25_mm + 45.25_mm, 15.15_mm + 20_mm}));
    EXPECT_EQ(first[1].x - first[0].x, 66_mm);
    EXPECT_EQ(first[3].y - first[0].y, 38.1_mm);
    EXPECT_EQ(codeCorners(matter.pages[1]), (std::vector<PaperPoint>{first[0], first[1]}));
}

TEST(LabelSheet, StartsAtTheFirstFreeLabelOfAHalfUsedSheet) {
    const auto whole = placed(labels(21), "sheet_63x38_a4");
    const auto matter = placed(labels(3), "sheet_63x38_a4", {.startCell = 19});
    ASSERT_THAT(matter.pages, SizeIs(2));
    const auto cells = codeCorners(whole.pages[0]);
    EXPECT_THAT(codeCorners(matter.pages[0]), ElementsAre(cells[19], cells[20]));
    EXPECT_THAT(codeCorners(matter.pages[1]), ElementsAre(cells[0]));
}

TEST(LabelSheet, RefusesAStartCellThatIsNotOnTheSheet) {
    for (const int cell : {-1, 21}) {
        const auto matter =
            placeLabels(labels(1), *labelStock("sheet_63x38_a4"), {.startCell = cell}, kMeasure);
        ASSERT_FALSE(matter.ok());
        EXPECT_EQ(matter.problem().code, ProblemCode::badInput);
        EXPECT_THAT(matter.problem().remedy, HasSubstr("1 to 21"));
    }
}

TEST(LabelSheet, ReportsTextThatIsTooWideWithBothWidthsAndDoesNotPrintTheLabel) {
    auto texts = labels(3);
    texts[1].cross = std::string(70, 'x');
    const auto matter = placed(texts, "hang_tag");
    EXPECT_THAT(matter.pages, SizeIs(2));
    ASSERT_THAT(matter.misfits, SizeIs(1));
    const Misfit& misfit = matter.misfits[0];
    EXPECT_EQ(misfit.index, 1U);
    EXPECT_EQ(misfit.field, PrintedField::cross);
    EXPECT_EQ(misfit.reason, MisfitReason::tooWide);
    EXPECT_EQ(misfit.needed, fromPoints(70 * 8 * 0.6));
    EXPECT_EQ(misfit.room, 61_mm);
    EXPECT_THAT(sentenceOf(misfit), HasSubstr("A-2: the cross"));
    EXPECT_THAT(sentenceOf(misfit), HasSubstr("118.5 mm wide; there is room for 61.0 mm"));
}

TEST(LabelSheet, PrintsWithoutTheFieldThatDoesNotFitWhenAskedTo) {
    auto texts = labels(1);
    texts[0].cross = std::string(70, 'x');
    const auto matter = placed(texts, "hang_tag", {.overflow = Overflow::leaveOutField});
    ASSERT_THAT(matter.pages, SizeIs(1));
    EXPECT_THAT(matter.misfits, SizeIs(1));
    EXPECT_THAT(textsOf(matter.pages[0]), ElementsAre("A-1", "2017 · Upper, 3/14"));
}

TEST(LabelSheet, NeverPrintsALabelWithoutItsCodes) {
    auto texts = labels(4);
    texts[0].code.clear();
    texts[1].code = std::string(200, 'C');
    texts[2].labelCode = "not a code";
    texts[3].labelCode.clear();
    const auto matter = placed(texts, "hang_tag", {.overflow = Overflow::leaveOutField});
    EXPECT_THAT(matter.pages, IsEmpty());
    ASSERT_THAT(matter.misfits, SizeIs(4));
    EXPECT_EQ(matter.misfits[0].reason, MisfitReason::missing);
    EXPECT_EQ(matter.misfits[1].reason, MisfitReason::tooWide);
    EXPECT_EQ(matter.misfits[2].reason, MisfitReason::notACode);
    EXPECT_EQ(matter.misfits[3].field, PrintedField::plantCode);
    EXPECT_EQ(matter.misfits[3].reason, MisfitReason::missing);
}

TEST(LabelSheet, WrapsTheCrossWhereTheDesignHasTwoLinesForIt) {
    auto texts = labels(1);
    texts[0].cross = "Ash Tarn Early x Russet Moor Sweet"; // 34 characters of 1.9 mm, room 57.5
    const auto matter = placed(texts, "label_63x38");
    ASSERT_THAT(matter.pages, SizeIs(1));
    EXPECT_THAT(
        marksAsText(matter.pages[0]),
        testing::IsSupersetOf({"text 3000 11400 57500 4000 90 plain Ash Tarn Early x Russet Moor",
                               "text 3000 15400 57500 4000 90 plain Sweet",
                               "text 3000 19600 42000 4000 90 plain 2017 · Upper, 3/14"}));
}

TEST(LabelSheet, LinesThatStayEmptyLetTheNextFieldsMoveUp) {
    const auto matter = placed({label("A-1")}, "label_63x38");
    EXPECT_THAT(marksAsText(matter.pages[0]),
                Contains("text 3000 15600 42000 4000 90 plain 2017 · Upper, 3/14"));
}

TEST(LabelSheet, ReportsMoreLinesThanThereAre) {
    auto texts = labels(1);
    texts[0].extraLines = {"one", "two", "three"};
    const auto matter = placed(texts, "label_63x38");
    ASSERT_THAT(matter.misfits, SizeIs(1));
    EXPECT_EQ(matter.misfits[0].reason, MisfitReason::tooManyLines);
    EXPECT_EQ(matter.misfits[0].linesNeeded, 3);
    EXPECT_EQ(matter.misfits[0].linesOfRoom, 2);
    EXPECT_THAT(sentenceOf(matter.misfits[0]), HasSubstr("needs 3 lines; there is room for 2"));
}

TEST(LabelSheet, ReportsFurtherLinesOnAStockWithoutRoomForThem) {
    auto texts = labels(1);
    texts[0].extraLines = {"grafted 2024-03-30"};
    const auto matter = placed(texts, "branch_tag");
    ASSERT_THAT(matter.misfits, SizeIs(1));
    EXPECT_EQ(matter.misfits[0].reason, MisfitReason::noField);
}

TEST(LabelSheet, CutMarksStandWhereTheTagsMeet) {
    const auto with = placed(labels(1), "hang_tags_a4");
    const auto without = placed(labels(1), "hang_tags_a4", {.cutMarks = false});
    // 2 x 11 tags have 3 x 12 corners, two strokes each.
    EXPECT_EQ(with.pages[0].marks.size() - without.pages[0].marks.size(), 72U);
    EXPECT_THAT(marksAsText(with.pages[0]), Contains("line 13500 11000 16500 11000 100"));
}

TEST(LabelSheet, NoLabelsMakeNoPages) {
    const auto matter = placed({}, "hang_tags_a4");
    EXPECT_THAT(matter.pages, IsEmpty());
    EXPECT_THAT(matter.misfits, IsEmpty());
}

} // namespace
} // namespace pipwright
