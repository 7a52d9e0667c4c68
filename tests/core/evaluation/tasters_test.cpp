#include "core/evaluation/merit/hope.h"
#include "core/evaluation/merit/tasters.h"
#include "tests/support/simulated_orchard.h"

#include <cmath>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

/// Strangers, scored one by one.
class PanelBook {
  public:
    explicit PanelBook(int genotypes) : m_genotypes(genotypes) {}

    TraitRecord& score(Index genotype, std::int32_t person, std::int32_t lot, double value,
                       std::int32_t sitting = 0) {
        TraitRecord record;
        record.value = value;
        record.genotype = genotype;
        record.person = person;
        record.lot = lot;
        record.sitting = sitting;
        record.cropYear = 2025;
        record.fair = true;
        const auto atLeast = [](auto& list, std::int32_t number) {
            while (list.size() <= static_cast<std::size_t>(number)) {
                list.emplace_back();
                list.back().uuid.bytes[0] = static_cast<std::uint8_t>(list.size());
            }
        };
        atLeast(m_records.persons, person);
        atLeast(m_records.lots, lot);
        m_records.sittings = std::max(m_records.sittings, sitting + 1);
        m_records.records.push_back(record);
        return m_records.records.back();
    }

    [[nodiscard]] MeritModel fit() const {
        std::vector<std::string> names(static_cast<std::size_t>(m_genotypes), "G");
        auto pedigree = Pedigree::of(std::vector<Parents>(names.size()),
                                     [](int one) { return std::to_string(one); });
        auto model = MeritModel::fit(
            MeritFamilies{std::make_shared<const Pedigree>(std::move(*pedigree)),
                          std::make_shared<const std::vector<std::string>>(std::move(names))},
            m_records);
        if (!model) {
            throw std::runtime_error(model.problem().sentence());
        }
        return *model;
    }

  private:
    int m_genotypes;
    TraitRecords m_records;
};

TEST(TastersTest, TellsTheKindOneFromTheStrictOne) {
    PanelBook book(6);
    const double likings[] = {4, 5, 6, 6.5, 7, 5.5};
    for (std::int32_t lot = 0; lot < 6; ++lot) {
        const double liking = likings[lot];
        book.score(static_cast<Index>(lot), 0, lot, liking + 1);
        book.score(static_cast<Index>(lot), 1, lot, liking - 1);
        book.score(static_cast<Index>(lot), 1, lot + 6, liking - 1 + (lot % 2 == 0 ? 0.5 : -0.5));
    }
    const auto reports = tasterReports(book.fit());
    ASSERT_TRUE(reports.ok());
    ASSERT_EQ(reports->tasters.size(), 2U);
    const TasterAccount& strict = reports->tasters[0]; // most scores first
    const TasterAccount& kind = reports->tasters[1];
    EXPECT_EQ(strict.scores, 12);
    EXPECT_LT(strict.level.value, -0.5);
    EXPECT_GT(kind.level.value, 0.5);
    EXPECT_FALSE(kind.repeat.has_value());
    EXPECT_FALSE(kind.linkedToNobody);
    // Six pairs half a point apart: sqrt(6 x 0.25 / 12).
    ASSERT_TRUE(strict.repeat.has_value());
    EXPECT_NEAR(strict.repeat->deviation, std::sqrt(0.125), 1e-12);
    EXPECT_EQ(strict.repeat->degreesOfFreedom, 6);
    EXPECT_LT(strict.repeat->low, strict.repeat->deviation);
    ASSERT_TRUE(strict.discrimination.has_value());
    EXPECT_LT(strict.discrimination->pValue, 0.01);
    EXPECT_GT(strict.discrimination->share, 0.7);
    ASSERT_TRUE(reports->agreement.has_value());
    EXPECT_EQ(reports->agreement->lots, 6);
    EXPECT_NEAR(reports->agreement->order.concordance, 1, 1e-12);
    EXPECT_NE(sentenceOf(kind, "Ada").find("above the average taster"), std::string::npos);
    EXPECT_NE(sentenceOf(*reports->agreement).find("Of 6 lots that all 2"), std::string::npos);
}

TEST(TastersTest, AnotherStateOfTheFruitIsNoRepeat) {
    PanelBook book(3);
    for (std::int32_t lot = 0; lot < 3; ++lot) {
        book.score(static_cast<Index>(lot), 0, lot, 5 + lot);
        book.score(static_cast<Index>(lot), 0, lot + 3, 4).conditions = {{1, 1}};
    }
    const auto reports = tasterReports(book.fit());
    ASSERT_TRUE(reports.ok());
    EXPECT_FALSE(reports->tasters.front().repeat.has_value());
    EXPECT_FALSE(reports->agreement.has_value()); // one taster agrees with nobody
}

TEST(TastersTest, SaysWhoIsLinkedToNobody) {
    PanelBook book(6);
    for (std::int32_t lot = 0; lot < 3; ++lot) {
        book.score(static_cast<Index>(lot), 0, lot, 5 + lot);
        book.score(static_cast<Index>(lot), 1, lot, 5.5 + lot);
        book.score(static_cast<Index>(lot + 3), 2, lot + 3, 8 - lot);
    }
    const auto reports = tasterReports(book.fit());
    ASSERT_TRUE(reports.ok());
    for (const TasterAccount& sheet : reports->tasters) {
        EXPECT_EQ(sheet.linkedToNobody, sheet.taster.uuid.bytes[0] == 3);
        EXPECT_EQ(sentenceOf(sheet, "Ada").find("nothing that anybody else") != std::string::npos,
                  sheet.linkedToNobody);
    }
    // The full table is that of the two who tasted the same lots.
    ASSERT_TRUE(reports->agreement.has_value());
    EXPECT_EQ(reports->agreement->tasters.size(), 2U);
    EXPECT_EQ(reports->agreement->lots, 3);
}

TEST(TastersTest, WithoutNamesThereIsNothingToSay) {
    PanelBook book(2);
    book.score(0, 0, 0, 5).person = -1;
    book.score(1, 0, 1, 6).person = -1;
    const auto reports = tasterReports(book.fit());
    ASSERT_FALSE(reports.ok());
    EXPECT_EQ(reports.problem().sentence().find("No score says who tasted."), 0U);
}

/// Own seedlings 0 to 7, benchmarks 8 to 11; each twice blind and twice sighted.
PanelBook hopefulBook(double hope, double benchmarkHope) {
    PanelBook book(12);
    std::int32_t lot = 0;
    for (Index genotype = 0; genotype < 12; ++genotype) {
        for (int serving = 0; serving < 4; ++serving) {
            const bool sighted = serving % 2 == 0;
            const double gain = sighted ? (genotype < 8 ? hope : benchmarkHope) : 0;
            const double luck = ((static_cast<int>(genotype) * 7 + serving * 3) % 5 - 2) * 0.2;
            TraitRecord& record =
                book.score(genotype, serving / 2, lot++, 5 + 0.25 * (genotype % 5) + gain + luck,
                           static_cast<std::int32_t>(genotype) % 4);
            record.sight = sighted ? Sight::sighted : Sight::blind;
        }
    }
    return book;
}

HopeSides hopeSides(int own, int all) {
    HopeSides sides;
    for (int i = 0; i < all; ++i) {
        sides.own.push_back(i < own);
        sides.benchmark.push_back(i >= own);
    }
    return sides;
}

TEST(HopeTest, FindsWhatOwnSeedlingsGainByTheirName) {
    const auto none = hopeGap(hopeSides(8, 12), hopefulBook(0, 0).fit());
    const auto gap = hopeGap(hopeSides(8, 12), hopefulBook(1, 0).fit());
    const auto both = hopeGap(hopeSides(8, 12), hopefulBook(1, 1).fit());
    ASSERT_TRUE(none.ok()) << none.problem().sentence();
    ASSERT_TRUE(gap.ok() && both.ok());
    // One point more on the own seedlings is one point more of the gap; one for all is none.
    EXPECT_NEAR(gap->gap.value - none->gap.value, 1, 0.05);
    EXPECT_NEAR(both->gap.value, none->gap.value, 0.05);
    EXPECT_TRUE(gap->beyondDoubt());
    EXPECT_FALSE(none->beyondDoubt());
    EXPECT_EQ(gap->ownSighted, 16);
    EXPECT_EQ(gap->ownBlind, 16);
    EXPECT_EQ(gap->benchmarkBlind, 8);
    EXPECT_NE(sentenceOf(*gap).find("16 sighted and 16 blind"), std::string::npos);
    EXPECT_NE(sentenceOf(*none).find("may be nothing"), std::string::npos);
}

TEST(HopeTest, SaysWhatIsLacking) {
    // Nobody but the breeder's own children.
    const auto noBenchmark = hopeGap(hopeSides(12, 12), hopefulBook(1, 0).fit());
    ASSERT_FALSE(noBenchmark.ok());
    EXPECT_NE(noBenchmark.problem().sentence().find("blind"), std::string::npos);

    PanelBook sighted(2);
    for (std::int32_t lot = 0; lot < 8; ++lot) {
        sighted.score(static_cast<Index>(lot % 2), 0, lot, 5 + lot % 3).sight = Sight::sighted;
    }
    const auto neverBlind = hopeGap(hopeSides(1, 2), sighted.fit());
    ASSERT_FALSE(neverBlind.ok());
    EXPECT_NE(neverBlind.problem().sentence().find("too little was tasted blind"),
              std::string::npos);
}

} // namespace
} // namespace pipwright
