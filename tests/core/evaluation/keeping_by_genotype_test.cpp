#include "core/evaluation/merit/harvest_quality.h"
#include "core/evaluation/merit/keeping_by_genotype.h"
#include "core/statistics/distributions.h"
#include "tests/support/ladder_orchard.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <random>

namespace pipwright {
namespace {

using test::LadderOrchard;
using ::testing::HasSubstr;

std::uint8_t fridgeDay() {
    for (std::size_t i = 0; i < conditionClasses().size(); ++i) {
        if (conditionClasses()[i].key == "day in the refrigerator") {
            return static_cast<std::uint8_t>(i);
        }
    }
    return 0;
}

/// Fruit of many genotypes, each bitten fresh and after some weeks in the fridge.
struct KeptOrchard {
    KeptOrchard(std::uint64_t seed, int count) {
        std::mt19937_64 engine(seed);
        const auto normal = [&engine](double sd) {
            const double uniform = (static_cast<double>(engine() >> 11U) + 0.5) * 0x1p-53;
            return sd * standardNormalQuantile(uniform);
        };
        for (int genotype = 0; genotype < count; ++genotype) {
            slopes.push_back(-0.02 + normal(0.012));
            const double fresh = 7 + normal(0.8);
            for (const int days : {0, 0, 20, 40, 60, 80}) {
                TraitRecord record;
                const double truth = fresh + slopes.back() * days + normal(std::sqrt(0.3));
                record.value = truth + normal(1);
                record.genotype = static_cast<Index>(genotype);
                record.plant = genotype;
                record.person = 0;
                record.lot = static_cast<std::int32_t>(records.lots.size());
                record.sitting = record.lot;
                record.cropYear = 2024;
                record.fair = days == 0;
                if (days > 0) {
                    record.conditions.push_back({fridgeDay(), static_cast<float>(days)});
                }
                records.records.push_back(record);
                records.lots.emplace_back();
            }
        }
        records.persons.resize(1);
        records.sittings = static_cast<std::int32_t>(records.lots.size());
        names = std::make_shared<std::vector<std::string>>(count, "one");
        auto made = Pedigree::of(std::vector<Parents>(static_cast<std::size_t>(count)),
                                 [](int one) { return std::to_string(one); });
        pedigree = std::make_shared<const Pedigree>(std::move(*made));
    }

    [[nodiscard]] MeritModel fit() const {
        return LadderOrchard::taken(MeritModel::fit(MeritFamilies{pedigree, names}, records));
    }

    TraitRecords records;
    std::vector<double> slopes;
    std::shared_ptr<const std::vector<std::string>> names;
    std::shared_ptr<const Pedigree> pedigree;
};

TEST(Keeping, FindsASlopeForEachGenotype) {
    int covered = 0;
    int all = 0;
    double squares = 0;
    double squaresOfGeneral = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const KeptOrchard orchard(seed, 40);
        const MeritModel model = orchard.fit();
        const auto keeping = LadderOrchard::taken(keepingByGenotype(model));
        ASSERT_EQ(keeping.curves.size(), 40U);
        ASSERT_TRUE(keeping.general[1].has_value());
        EXPECT_FALSE(keeping.general[0].has_value()); // nothing lay on the counter
        EXPECT_NEAR(keeping.general[1]->value, -0.02, 4 * keeping.general[1]->standardError);
        for (const GenotypeKeeping& curve : keeping.curves) {
            const double miss = curve.slope.value - orchard.slopes[curve.genotype];
            const double miss0 = keeping.general[1]->value - orchard.slopes[curve.genotype];
            covered += std::abs(miss) < 1.96 * curve.slope.standardError ? 1 : 0;
            squares += miss * miss;
            squaresOfGeneral += miss0 * miss0;
            ++all;
            EXPECT_EQ(curve.scores, 4);
            EXPECT_EQ(curve.longest, 80);
        }
    }
    // A little short of 95 %: the doubt about how much slopes vary is not in their errors.
    EXPECT_GT(covered, 0.87 * all);
    EXPECT_LT(covered, 0.98 * all);
    EXPECT_LT(squares, 0.75 * squaresOfGeneral); // clearly better than one slope for all
}

TEST(Keeping, CountsTheDaysThatFourInFiveLotsStayGood) {
    const KeptOrchard orchard(9, 30);
    const MeritModel model = orchard.fit();
    const auto keeping = LadderOrchard::taken(keepingByGenotype(model));
    for (const GenotypeKeeping& curve : keeping.curves) {
        if (!curve.daysGood || !curve.halfGood || *curve.daysGood <= 0) {
            continue;
        }
        EXPECT_LT(*curve.daysGood, *curve.halfGood);
        const UncertainValue then = curve.at(*curve.daysGood);
        const double spread =
            std::sqrt(then.standardError * then.standardError + keeping.lotVariance);
        EXPECT_NEAR(standardNormalBelow((then.value - 5) / spread), 0.8, 0.01);
        EXPECT_NEAR(curve.at(*curve.halfGood).value, 5, 0.05);
    }
    const GenotypeKeeping& one = keeping.curves.front();
    EXPECT_EQ(keeping.of(one.genotype, StoragePath::fridge), &one);
    EXPECT_EQ(keeping.of(one.genotype, StoragePath::cellar), nullptr);
    EXPECT_FALSE(keeping.curveOf(model, one.genotype, StoragePath::cellar).has_value());
    EXPECT_FALSE(keepingByGenotype(model, {5, 1.2, 400}).ok());
}

TEST(Keeping, SaysThatNothingWasKept) {
    KeptOrchard orchard(9, 5);
    for (TraitRecord& record : orchard.records.records) {
        record.conditions.clear();
    }
    const auto keeping = keepingByGenotype(orchard.fit());
    ASSERT_FALSE(keeping.ok());
    EXPECT_THAT(keeping.problem().sentence(), HasSubstr("No fruit was tasted after it was kept"));
}

// science sheet: twelve trees on a counter, days between looks; R survreg log-normal: median
// 25.79, scale 0.5876.
TEST(LastGoodDays, ComeNearTheSurvivalRegressionWithoutGenotypes) {
    std::vector<LastGoodDay> days;
    const std::pair<double, double> looks[] = {{7, 10},  {10, 14}, {14, 21}, {14, 21},
                                               {21, 28}, {21, 28}, {28, 35}, {28, 35},
                                               {35, 42}, {21, 0},  {42, 0},  {42, 0}};
    for (const auto& [low, high] : looks) {
        LastGoodDay day{3, StoragePath::counter, low, std::nullopt};
        if (high > 0) {
            day.high = high;
        }
        days.push_back(day);
    }
    const auto lives = LadderOrchard::taken(lastGoodByGenotype(days));
    ASSERT_EQ(lives.size(), 1U);
    EXPECT_NEAR(lives[0].halfGood, 25.79, 1.5);
    EXPECT_EQ(lives[0].lots, 12);
    EXPECT_LT(lives[0].daysGood, 25.79 * std::exp(-0.8416 * 0.45));
    EXPECT_FALSE(lastGoodByGenotype({}).ok());
}

TEST(LastGoodDays, TellKeepersFromTheRest) {
    LadderOrchard orchard;
    const auto row = orchard.row(1);
    std::vector<EditedTree> trees;
    for (int i = 1; i <= 6; ++i) {
        trees.push_back(orchard.seedling(row, i, "AT17-00" + std::to_string(i)));
    }
    const auto lasted = [&](const EditedTree& tree, double days, Qualifier how) {
        Observation what;
        what.trait = shippedTraitId(trait_key::kDaysGood);
        what.value = days;
        what.qualifier = how;
        what.instrument = "cellar";
        const std::array which = {tree};
        orchard.apply(observationOn(which, what, "days", orchard.on(*Date::of(2024, 12, 1))));
    };
    for (std::size_t i = 0; i < 4; ++i) {
        lasted(trees[i], 40 + 5 * static_cast<double>(i), Qualifier::exact);
        lasted(trees[i], 45, Qualifier::about);
    }
    lasted(trees[4], 120, Qualifier::greaterThan);
    lasted(trees[4], 130, Qualifier::greaterThan);
    lasted(trees[5], 15, Qualifier::lessThan);
    const auto view = orchard.view();
    const auto days = LadderOrchard::taken(readLastGoodDays(*view, orchard.store()));
    ASSERT_EQ(days.size(), 11U);
    const auto lives = LadderOrchard::taken(lastGoodByGenotype(days));
    ASSERT_EQ(lives.size(), 6U);
    const auto lifeOf = [&](std::size_t i) {
        const Index at = *view->genotype(*trees[i].genotype);
        return *std::find_if(lives.begin(), lives.end(),
                             [&](const auto& life) { return life.genotype == at; });
    };
    EXPECT_GT(lifeOf(4).halfGood, lifeOf(0).halfGood + 20);
    EXPECT_LT(lifeOf(5).halfGood, lifeOf(0).halfGood);
    EXPECT_GT(lifeOf(5).halfGood, 8); // one look only: drawn to the others
    EXPECT_TRUE(
        LadderOrchard::taken(readLastGoodDays(*view, orchard.store(), *Date::of(2024, 11, 1)))
            .empty());
}

TEST(HarvestQuality, FallsWithKeepingAndLeavesTheBarToTheNextOne) {
    const KeptOrchard orchard(9, 30);
    const MeritModel model = orchard.fit();
    const auto keeping = LadderOrchard::taken(keepingByGenotype(model));
    const CropYear year{2024};
    const BenchmarkWindow early{0, 230, 244, 2};
    const BenchmarkWindow late{1, 251, 265, 2};
    const auto first = qualityByWeek(model, &keeping, early, StoragePath::fridge, year);
    const auto second = qualityByWeek(model, &keeping, late, StoragePath::fridge, year);
    ASSERT_TRUE(first && second);
    ASSERT_GT(first->weeks.size(), 3U);
    const double merit = model.meritOf(0)->merit.value;
    for (std::size_t i = 0; i < first->weeks.size(); ++i) {
        const WeekQuality& week = first->weeks[i];
        EXPECT_GE(week.quality.value, 5);
        if (week.daysKept == 0) {
            EXPECT_EQ(week.quality.value, merit);
        } else {
            EXPECT_LT(week.quality.value, first->weeks[i - 1].quality.value);
            EXPECT_GT(week.quality.standardError, first->weeks[i - 1].quality.standardError);
        }
    }
    // Without a keeping curve it ends with its window.
    const auto fresh = qualityByWeek(model, nullptr, early, StoragePath::fridge, year);
    EXPECT_LE(fresh->weeks.back().monday + 3, early.last);

    const std::vector<QualityCurve> both = {*first, *second};
    const auto bar = barByWeek(both);
    for (const BarWeek& week : bar) {
        for (const QualityCurve& curve : both) {
            for (const WeekQuality& one : curve.weeks) {
                if (one.monday == week.monday) {
                    EXPECT_LE(one.quality.value, week.quality.value);
                }
            }
        }
    }
    // Against the bar of the first alone, the second fills the weeks after it.
    const auto beaten = beatenWeeks(*second, barByWeek(std::span(&*first, 1)));
    for (const BeatenWeek& week : beaten) {
        EXPECT_TRUE(week.gap || week.chance > 0.5);
    }
    BenchmarkWindow unknown = early;
    unknown.genotype = 999;
    EXPECT_FALSE(qualityByWeek(model, &keeping, unknown, StoragePath::fridge, year).has_value());
}

} // namespace
} // namespace pipwright
