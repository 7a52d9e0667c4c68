#include "core/exchange/print/label_design.h"
#include "core/exchange/print/text_measure.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

namespace pipwright {
namespace {

class EveryStock : public testing::TestWithParam<std::string> {
  protected:
    const LabelStock m_stock = *labelStock(GetParam());
    const LabelDesign& m_design = m_stock.design;

    [[nodiscard]] bool isOnLabel(const PaperBox& box) const {
        return box.x >= 0_mm && box.y >= 0_mm && box.right() <= m_design.width &&
               box.bottom() <= m_design.height;
    }
    [[nodiscard]] PaperBox qrBox() const {
        const Micrometres side = labelCodeSide(m_design.qrModule);
        return {m_design.qrCorner.x, m_design.qrCorner.y, side, side};
    }
    static bool meet(const PaperBox& a, const PaperBox& b) {
        return a.x < b.right() && b.x < a.right() && a.y < b.bottom() && b.y < a.bottom();
    }
};

TEST_P(EveryStock, ShowsTheCodeFirstAndBiggest) {
    ASSERT_FALSE(m_design.fields.empty());
    EXPECT_EQ(m_design.fields[0].field, PrintedField::code);
    EXPECT_TRUE(m_design.fields[0].bold);
    EXPECT_GE(m_design.fields[0].points, m_design.key == "row_post" ? 24.0 : 14.0);
    for (std::size_t i = 1; i < m_design.fields.size(); ++i) {
        EXPECT_LT(m_design.fields[i].points, m_design.fields[0].points);
    }
}

TEST_P(EveryStock, HasRoomInEachLineForTheHeightOfItsLetters) {
    for (const LabelFieldBox& field : m_design.fields) {
        EXPECT_GE((field.box.height / field.lines).count, fromPoints(field.points * 1.2).count)
            << static_cast<int>(field.field);
    }
}

TEST_P(EveryStock, KeepsEverythingOnTheLabelAndApart) {
    std::vector<PaperBox> boxes{qrBox(), m_design.pencil};
    for (const LabelFieldBox& field : m_design.fields) {
        boxes.push_back(field.box);
    }
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        EXPECT_TRUE(isOnLabel(boxes[i])) << i;
        for (std::size_t j = i + 1; j < boxes.size(); ++j) {
            EXPECT_FALSE(meet(boxes[i], boxes[j])) << i << " and " << j;
        }
    }
}

TEST_P(EveryStock, HasACodeOfAtLeastSixteenAndAHalfMillimetres) {
    EXPECT_GE(m_design.qrModule, 0.5_mm);
    EXPECT_GE(qrBox().width, 16.5_mm);
    EXPECT_GE(m_design.pencil.height, 4_mm);
}

TEST_P(EveryStock, LiesWhollyOnItsPaper) {
    const PaperPoint last = m_stock.cornerOf(m_stock.cells() - 1);
    EXPECT_GE(m_stock.first.x, 0_mm);
    EXPECT_GE(m_stock.first.y, 0_mm);
    EXPECT_LE(last.x + m_design.width, m_stock.page.width);
    EXPECT_LE(last.y + m_design.height, m_stock.page.height);
    EXPECT_GE(m_stock.step.x, m_design.width);
    EXPECT_GE(m_stock.step.y, m_design.height);
}

std::vector<std::string> keys() {
    std::vector<std::string> all;
    for (const LabelStock& stock : labelStocks()) {
        all.push_back(stock.key);
    }
    return all;
}

INSTANTIATE_TEST_SUITE_P(Stocks, EveryStock, testing::ValuesIn(keys()),
                         [](const auto& tested) { return tested.param; });

TEST(LabelStocks, HaveKeysOfTheirOwn) {
    const auto all = keys();
    EXPECT_EQ(std::set<std::string>(all.begin(), all.end()).size(), all.size());
    EXPECT_FALSE(labelStock("no such stock").has_value());
}

} // namespace
} // namespace pipwright
