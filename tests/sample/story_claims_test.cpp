#include "tests/sample/sample_book.h"

#include <algorithm>
#include <numeric>

/// What the hand-written reasons claim of the scores must be what the sheets say.
using namespace pipwright;

namespace {

/// The mean liking of each lot of the sitting of that day, by code of the genotype.
std::map<std::string, std::vector<double>> sheetOf(Date day) {
    const auto genotypes = byId<Genotype>();
    const auto tastings = byId<Tasting>();
    std::map<PlantId, std::string> carried;
    for (const Identity& identity : allOf<Identity>()) {
        if (identity.genotype) {
            carried[identity.plant] = genotypes.at(*identity.genotype).code;
        }
    }
    std::map<LotId, std::vector<double>> likings;
    for (const Score& score : allOf<Score>()) {
        if (score.liking) {
            likings[score.lot].push_back(*score.liking);
        }
    }
    std::map<std::string, std::vector<double>> sheet;
    for (const Lot& lot : allOf<Lot>()) {
        const Tasting& tasting = tastings.at(lot.tasting);
        if (tasting.date == day && tasting.sight == Sight::blind && lot.plant) {
            const auto& list = likings[lot.id];
            sheet[carried.at(*lot.plant)].push_back(std::accumulate(list.begin(), list.end(), 0.0) /
                                                    static_cast<double>(list.size()));
        }
    }
    return sheet;
}

double best(const std::vector<double>& means) {
    return *std::max_element(means.begin(), means.end());
}

} // namespace

TEST(StoryClaims, TheThrillOfTuesdayCameFourthAndThePlainTreeWasHalfAPointFromTheBest) {
    const auto sheet = sheetOf(Date::of(2025, 8, 23).value());
    std::vector<std::pair<double, std::string>> ranked;
    for (const auto& [code, means] : sheet) {
        ranked.emplace_back(-best(means), code);
    }
    std::sort(ranked.begin(), ranked.end());
    ASSERT_GE(ranked.size(), 5U);
    EXPECT_EQ(ranked[0].second, "AT15-012");
    EXPECT_EQ(ranked[1].second, "AT16-014");
    EXPECT_EQ(ranked[2].second, "FEN");
    EXPECT_EQ(ranked[3].second, "AT15-031");
    EXPECT_NEAR(ranked[1].first - ranked[0].first, 0.5, 1e-9);
}

TEST(StoryClaims, WrensSupperWasAheadOfLadyVennickUnderBothCodes) {
    for (const Date day : {Date::of(2024, 9, 21).value(), Date::of(2025, 9, 20).value()}) {
        const auto sheet = sheetOf(day);
        ASSERT_TRUE(sheet.contains("AT13-004")) << day.iso();
        ASSERT_EQ(sheet.at("LAD").size(), 2U) << day.iso();
        EXPECT_GT(sheet.at("AT13-004").front(), best(sheet.at("LAD"))) << day.iso();
    }
}

TEST(StoryClaims, ThePlainTreeOfThisYearHasNeverBeenOnTheTable) {
    const auto genotypes = byId<Genotype>();
    const auto tastings = byId<Tasting>();
    std::map<PlantId, std::string> carried;
    for (const Identity& identity : allOf<Identity>()) {
        if (identity.genotype) {
            carried[identity.plant] = genotypes.at(*identity.genotype).code;
        }
    }
    for (const Lot& lot : allOf<Lot>()) {
        if (lot.plant && carried[*lot.plant] == "AT17-014") {
            EXPECT_EQ(tastings.at(lot.tasting).place, TastingPlace::row);
        }
    }
}
