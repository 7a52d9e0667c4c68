#include "core/exchange/print/walking_sheet.h"
#include "tests/core/exchange/mark_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;

WalkingTree tree(const std::string& site, int row, double along) {
    const std::string code = std::to_string(row) + "/" + std::to_string(static_cast<int>(along));
    return {site, std::to_string(row), row, along, code, code + " m", "", ""};
}

std::vector<std::string> codesOf(const std::vector<WalkingTree>& trees) {
    std::vector<std::string> codes;
    for (const WalkingTree& one : trees) {
        codes.push_back(one.site + " " + one.code);
    }
    return codes;
}

std::size_t framesOf(const Page& page) {
    std::size_t frames = 0;
    for (const Mark& mark : page.marks) {
        frames += std::holds_alternative<FrameMark>(mark) ? 1 : 0;
    }
    return frames;
}

WalkingSheet sheetOf(std::vector<WalkingTree> trees) {
    WalkingSheet sheet;
    sheet.trees = std::move(trees);
    sheet.date = *Date::of(2026, 8, 22);
    return sheet;
}

TEST(WalkingOrder, GoesDownOneRowAndBackUpTheNext) {
    const auto walked = inWalkingOrder({tree("U", 3, 1), tree("U", 1, 2), tree("U", 2, 1),
                                        tree("U", 2, 9), tree("U", 1, 1), tree("U", 3, 5)});
    EXPECT_THAT(codesOf(walked), ElementsAre("U 1/1", "U 1/2", "U 2/9", "U 2/1", "U 3/1", "U 3/5"));
}

TEST(WalkingOrder, StartsAnewOnEachSite) {
    const auto walked = inWalkingOrder({tree("U", 1, 2), tree("G", 7, 2), tree("U", 1, 1),
                                        tree("G", 7, 1), tree("G", 8, 1), tree("G", 8, 2)});
    EXPECT_THAT(codesOf(walked), ElementsAre("U 1/1", "U 1/2", "G 7/1", "G 7/2", "G 8/2", "G 8/1"));
}

TEST(WalkingSheet, HasABoxToTickAndFiveForMarksForEachTree) {
    const auto matter =
        layOutWalkingSheets(sheetOf({tree("Upper", 1, 1), tree("Upper", 1, 2)}), kMeasure);
    ASSERT_THAT(matter.pages, SizeIs(1));
    EXPECT_EQ(matter.pages[0].size, kA5);
    EXPECT_EQ(framesOf(matter.pages[0]), 12U);
    const auto marks = marksAsText(matter.pages[0]);
    EXPECT_THAT(marks, Contains("frame 8000 30900 5000 5000 200"));   // the tick
    EXPECT_THAT(marks, Contains("frame 92500 30900 5000 5000 200"));  // not yet
    EXPECT_THAT(marks, Contains("frame 132500 30900 5000 5000 200")); // gone
}

TEST(WalkingSheet, NamesSiteDayPageAndCautionOnEveryPage) {
    std::vector<WalkingTree> trees;
    for (int i = 0; i < 40; ++i) {
        trees.push_back(tree(i < 30 ? "Upper" : "Garth", 1, i));
    }
    const auto matter = layOutWalkingSheets(sheetOf(trees), kMeasure);
    ASSERT_GE(matter.pages.size(), 3U);
    std::size_t frames = 0;
    for (std::size_t i = 0; i < matter.pages.size(); ++i) {
        const auto texts = textsOf(matter.pages[i]);
        const bool isLast = i + 1 == matter.pages.size();
        EXPECT_THAT(texts, Contains(isLast ? "Garth" : "Upper"));
        EXPECT_THAT(texts, Contains("2026-08-22"));
        EXPECT_THAT(texts, Contains("page " + std::to_string(i + 1) + " of " +
                                    std::to_string(matter.pages.size())));
        EXPECT_THAT(texts, Contains("Row 1, from the zero stake"));
        EXPECT_THAT(texts, Contains(HasSubstr("Fallen fruit can carry germs")));
        frames += framesOf(matter.pages[i]);
    }
    EXPECT_EQ(frames, 240U);
}

TEST(WalkingSheet, SaysWhichWayTheRowIsWalked) {
    const auto matter =
        layOutWalkingSheets(sheetOf({tree("Upper", 1, 1), tree("Upper", 2, 1)}), kMeasure);
    const auto texts = textsOf(matter.pages[0]);
    EXPECT_THAT(texts, Contains("Row 1, from the zero stake"));
    EXPECT_THAT(texts, Contains("Row 2, back to the zero stake"));
}

TEST(WalkingSheet, KeepsEveryMarkOnThePage) {
    std::vector<WalkingTree> trees;
    for (int i = 0; i < 60; ++i) {
        trees.push_back(tree("Upper", 1 + i / 20, i));
        trees.back().lastNote = std::string(static_cast<std::size_t>(i * 5), 'n');
        trees.back().expected = i % 2 == 0 ? "ripe" : "";
    }
    for (const PaperSize paper : {kA5, kA4, kLetter}) {
        WalkingSheet sheet = sheetOf(trees);
        sheet.paper = paper;
        for (const Page& page : layOutWalkingSheets(sheet, kMeasure).pages) {
            for (const Mark& mark : page.marks) {
                if (const auto* text = std::get_if<TextMark>(&mark)) {
                    EXPECT_LE(text->box.right(), paper.width);
                    EXPECT_LE(text->box.bottom(), paper.height - 5_mm) << text->text;
                }
            }
        }
    }
}

TEST(WalkingSheet, ALongNoteEndsInWordsThatSaySoAndIsReported) {
    auto wordy = tree("Upper", 1, 1);
    for (int i = 0; i < 100; ++i) {
        wordy.lastNote += "word ";
    }
    const auto matter = layOutWalkingSheets(sheetOf({wordy}), kMeasure);
    EXPECT_THAT(textsOf(matter.pages[0]), Contains("… more in the book"));
    ASSERT_THAT(matter.misfits, SizeIs(1));
    EXPECT_EQ(matter.misfits[0].field, PrintedField::note);
    EXPECT_EQ(matter.misfits[0].linesOfRoom, 6);
    EXPECT_GT(matter.misfits[0].linesNeeded, 6);
}

TEST(WalkingSheet, ALongCodeGoesOnInTheNextLineWhole) {
    auto named = tree("Upper", 1, 1);
    named.code = std::string(120, 'K');
    const auto matter = layOutWalkingSheets(sheetOf({named}), kMeasure);
    std::string found;
    for (const std::string& text : textsOf(matter.pages[0])) {
        found += text.find('K') != std::string::npos ? text : "";
    }
    EXPECT_EQ(found, named.code);
    EXPECT_THAT(matter.misfits, IsEmpty());
}

TEST(WalkingSheet, NoTreesMakeNoPages) {
    EXPECT_THAT(layOutWalkingSheets(sheetOf({}), kMeasure).pages, IsEmpty());
}

} // namespace
} // namespace pipwright
