// The merit model against worked examples.
#include "core/evaluation/merit/merit_model.h"
#include "core/statistics/distributions.h"

#include <gtest/gtest.h>
#include <limits>

namespace pipwright {
namespace {

constexpr double kKnown = std::numeric_limits<double>::infinity();

/// Unrelated genotypes.
MeritFamilies strangers(int count) {
    const std::vector<Parents> parents(static_cast<std::size_t>(count));
    std::vector<std::string> names;
    for (int i = 0; i < count; ++i) {
        names.push_back("G" + std::to_string(i));
    }
    auto pedigree =
        Pedigree::of(parents, [&](int one) { return names.at(static_cast<std::size_t>(one)); });
    return {std::make_shared<const Pedigree>(std::move(*pedigree)),
            std::make_shared<const std::vector<std::string>>(std::move(names))};
}

/// Level and variances known; every other term absent, conditions worth nothing.
MeritPriors knownPriors(double mean, double genotypeVariance, double residualVariance) {
    MeritPriors priors = likingPriors();
    priors.level = MeritPriors::Level{mean, 0};
    for (VariancePrior& prior : priors.terms) {
        prior = {0, kKnown};
    }
    priors.of(MeritTerm::genotype) = {genotypeVariance, kKnown};
    priors.residual = {residualVariance, kKnown};
    for (ConditionClass& one : priors.conditions) {
        one.mean = 0;
        one.sd = 0;
        one.noise = 0;
    }
    return priors;
}

std::uint8_t conditionCalled(std::string_view key) {
    const auto classes = conditionClasses();
    for (std::size_t i = 0; i < classes.size(); ++i) {
        if (classes[i].key == key) {
            return static_cast<std::uint8_t>(i);
        }
    }
    ADD_FAILURE() << "no condition " << key;
    return 0;
}

void score(TraitRecords& all, Index genotype, double value, std::int32_t person = 0,
           std::vector<ConditionAmount> conditions = {}) {
    TraitRecord record;
    record.value = value;
    record.genotype = genotype;
    record.person = person;
    record.cropYear = 2026;
    record.conditions = std::move(conditions);
    while (all.persons.size() <= static_cast<std::size_t>(person)) {
        all.persons.emplace_back();
    }
    all.records.push_back(std::move(record));
}

// Worked example of the trade (common practice, no published source; recomputed exactly): family
// prior 6.0 +- 1, standard deviation of a tasting 1.2, over-ripe loss 1.2 +- 0.6. A selection is
// tasted once prime (8.5) and twice over-ripe (7.0, 6.5); its benchmark eight times, mean 7.4.
TEST(MeritChecks, ThreeTastingsTwoOfThemOverRipeAgainstABenchmark) {
    MeritOptions options;
    options.pedigree = false;
    options.priors = knownPriors(6.0, 1.0, 1.44);
    const std::uint8_t overRipe = conditionCalled("on its way out");
    options.priors->conditions[overRipe].mean = -1.2;
    options.priors->conditions[overRipe].sd = 0.6;
    TraitRecords records;
    score(records, 0, 8.5);
    score(records, 0, 7.0, 0, {{overRipe, 1}});
    score(records, 0, 6.5, 0, {{overRipe, 1}});
    for (const double liking : {6.4, 8.4, 7.4, 7.0, 7.8, 7.4, 6.9, 7.9}) { // mean 7.4
        score(records, 1, liking);
    }
    const auto model = MeritModel::fit(strangers(2), records, options);
    ASSERT_TRUE(model) << model.problem().sentence();
    const UncertainValue selection = model->meritOf(0)->merit;
    const UncertainValue benchmark = model->meritOf(1)->merit;
    EXPECT_NEAR(selection.value, 7.35, 0.005);
    EXPECT_NEAR(selection.standardError, 0.62, 0.005);
    EXPECT_NEAR(benchmark.value, 7.19, 0.005);
    EXPECT_NEAR(benchmark.standardError, 0.39, 0.005);
    const auto difference = model->difference(0, 1);
    ASSERT_TRUE(difference);
    EXPECT_NEAR(standardNormalBelow(difference->value / difference->standardError), 0.59, 0.005);
    EXPECT_NEAR(standardNormalBelow((difference->value - 0.5) / difference->standardError), 0.32,
                0.005);
    // Raw means would have said: no better.
    EXPECT_LT(model->meritOf(0)->rawMean, model->meritOf(1)->rawMean);
}

TEST(MeritChecks, ThePrimeTastingAlone) {
    MeritOptions options;
    options.pedigree = false;
    options.priors = knownPriors(6.0, 1.0, 1.44);
    TraitRecords records;
    score(records, 0, 8.5);
    const auto model = MeritModel::fit(strangers(1), records, options);
    ASSERT_TRUE(model) << model.problem().sentence();
    EXPECT_NEAR(model->meritOf(0)->merit.value, 7.02, 0.005);
    EXPECT_NEAR(model->meritOf(0)->merit.standardError, 0.77, 0.005);
}

// Shrinkage of n scores with mean 7 to a level of 5.5, genotype variance 0.6, residual 1.8:
// w = 0.6 / (0.6 + 1.8 / n); recomputed with R.
TEST(MeritChecks, FewScoresShrinkToTheLevel) {
    MeritOptions options;
    options.pedigree = false;
    options.priors = knownPriors(5.5, 0.6, 1.8);
    const double expected[] = {5.875, 6.1, 6.25, 6.357143};
    const double errors[] = {0.670820, 0.6, 0.547723, 0.507093};
    for (int n = 1; n <= 4; ++n) {
        TraitRecords records;
        for (int i = 0; i < n; ++i) {
            score(records, 0, 7 + (n == 1 ? 0.0 : (i - (n - 1) / 2.0))); // mean 7
        }
        const auto model = MeritModel::fit(strangers(1), records, options);
        ASSERT_TRUE(model) << model.problem().sentence();
        EXPECT_NEAR(model->meritOf(0)->merit.value, expected[n - 1], 1e-6);
        EXPECT_NEAR(model->meritOf(0)->merit.standardError, errors[n - 1], 1e-6);
    }
}

// Three tasters in an incomplete design (additive least squares, recomputed with R): B scores 1.2
// too high, C 1.2 too low; fruits come to 6.6, 6.4, 5.0, 6.0 where raw means say 6, 7, 5, 6. With
// genotypes and tasters of very large variance the model must come to the same.
TEST(MeritChecks, ATasterWhoLikesEverythingIsTakenOut) {
    MeritOptions options;
    options.pedigree = false;
    options.priors = knownPriors(6.15, 1e6, 1.0);
    options.priors->of(MeritTerm::taster) = {1e6, kKnown};
    options.priors->level.reset();
    const double scores[3][4] = {{7, 6, 5, 0}, {0, 8, 6, 7}, {5, 0, 4, 5}};
    TraitRecords records;
    for (int taster = 0; taster < 3; ++taster) {
        for (Index fruit = 0; fruit < 4; ++fruit) {
            if (scores[taster][fruit] > 0) {
                score(records, fruit, scores[taster][fruit], taster);
            }
        }
    }
    const auto model = MeritModel::fit(strangers(4), records, options);
    ASSERT_TRUE(model) << model.problem().sentence();
    const double expected[] = {6.6, 6.4, 5.0, 6.0};
    for (Index fruit = 1; fruit < 4; ++fruit) {
        EXPECT_NEAR(model->meritOf(fruit)->merit.value - model->meritOf(0)->merit.value,
                    expected[fruit] - expected[0], 1e-4);
    }
    const auto tasters = model->tasters();
    EXPECT_NEAR(tasters[1].level.value - tasters[0].level.value, 1.2, 1e-4);
    EXPECT_NEAR(tasters[2].level.value - tasters[0].level.value, -1.2, 1e-4);
    EXPECT_GT(model->meritOf(1)->rawMean, model->meritOf(0)->rawMean);
    EXPECT_LT(model->meritOf(1)->merit.value, model->meritOf(0)->merit.value);
}

} // namespace
} // namespace pipwright
