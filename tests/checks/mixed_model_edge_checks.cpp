#include "core/statistics/mixed_model_fit.h"
#include "tests/checks/dense_mixed_model.h"
#include "tests/checks/published_data.h"
#include "tests/checks/reference_fits.h"

#include <cmath>
#include <functional>
#include <gtest/gtest.h>
#include <limits>
#include <stop_token>
#include <string>
#include <utility>
#include <vector>

// Where mixed models end: variances at 0, designs that fall apart, columns that say the same
// twice, what is known beforehand, and input that no honest number can come of.

namespace pipwright {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinity = std::numeric_limits<double>::infinity();

MixedModel dyestuffModel() {
    return published::referenceFits()[0].model;
}

MixedModel sleepModel() {
    return published::referenceFits()[5].model; // correlated slopes
}

using Change = std::function<void(MixedModel&)>;

MixedModel changed(MixedModel model, const Change& change) {
    change(model);
    return model;
}

void expectRefused(const std::string& what, const Result<MixedFit>& fit) {
    SCOPED_TRACE(what);
    ASSERT_FALSE(fit.ok());
    EXPECT_EQ(fit.problem().code, ProblemCode::badInput) << fit.problem().sentence();
    EXPECT_FALSE(fit.problem().what.empty());
    EXPECT_FALSE(fit.problem().remedy.empty());
}

LevelPrecision precisionOf(std::vector<SymmetricEntry> entries, std::int32_t size) {
    return {SparseSymmetric::fromEntries(size, entries).value(), {}, {}};
}

TEST(MixedModelEdge, WhatCannotBeComputedIsRefusedInWords) {
    const std::vector<std::pair<std::string, Change>> faults{
        {"nothing at all", [](MixedModel& m) { m = MixedModel{}; }},
        {"one record",
         [](MixedModel& m) {
             m.response = {1545};
             m.random[0].levels.ofRecord = {0};
         }},
        {"constant response", [](MixedModel& m) { m.response.assign(30, 7); }},
        {"all missing", [](MixedModel& m) { m.response.assign(30, kNaN); }},
        {"infinite response", [](MixedModel& m) { m.response[3] = kInfinity; }},
        {"response minus infinity", [](MixedModel& m) { m.response[3] = -kInfinity; }},
        {"negative weight",
         [](MixedModel& m) {
             m.weights.assign(30, 1);
             m.weights[29] = -1;
         }},
        {"infinite weight",
         [](MixedModel& m) {
             m.weights.assign(30, 1);
             m.weights[0] = kInfinity;
         }},
        {"no weight above 0", [](MixedModel& m) { m.weights.assign(30, 0); }},
        {"too few weights", [](MixedModel& m) { m.weights.assign(29, 1); }},
        {"too few codes", [](MixedModel& m) { m.random[0].levels.ofRecord.pop_back(); }},
        {"a code beyond the count", [](MixedModel& m) { m.random[0].levels.ofRecord[0] = 6; }},
        {"a code below -1", [](MixedModel& m) { m.random[0].levels.ofRecord[0] = -2; }},
        {"a factor without levels", [](MixedModel& m) { m.random[0].levels.count = 0; }},
        {"too short a covariate",
         [](MixedModel& m) {
             m.fixed = {FixedTerm::number("x", {1, 2, 3})};
         }},
        {"infinite covariate",
         [](MixedModel& m) {
             m.fixed = {FixedTerm::number("x", std::vector<double>(30, kInfinity))};
         }},
        {"infinite slope",
         [](MixedModel& m) { m.random[0].covariates = {std::vector<double>(30, kInfinity)}; }},
        {"too short a slope",
         [](MixedModel& m) {
             m.random[0].covariates = {{1, 2}};
         }},
        {"a term without effects", [](MixedModel& m) { m.random[0].intercept = false; }},
        {"negative variance",
         [](MixedModel& m) { m.random[0].variance = VarianceChoice::held(-1); }},
        {"variance that is no number",
         [](MixedModel& m) { m.random[0].variance = VarianceChoice::held(kNaN); }},
        {"negative residual variance",
         [](MixedModel& m) { m.residual.variance = {VarianceChoice::held(-1)}; }},
        {"prior without degrees of freedom",
         [](MixedModel& m) { m.random[0].variance = VarianceChoice::inverseChiSquare(1000, 0); }},
        {"prior around a negative variance",
         [](MixedModel& m) { m.random[0].variance = VarianceChoice::halfT(-2, 4); }},
        {"precision of another size",
         [](MixedModel& m) {
             m.random[0].precision = precisionOf({{0, 0, 1}, {1, 1, 1}}, 2);
         }},
        {"precision that is not positive definite",
         [](MixedModel& m) {
             std::vector<SymmetricEntry> entries{{0, 1, 2}};
             for (std::int32_t level = 0; level < 6; ++level) {
                 entries.push_back({level, level, 1});
             }
             m.random[0].precision = precisionOf(entries, 6);
         }},
        {"residual group beyond the count",
         [](MixedModel& m) {
             m.residual.groups = {std::vector<std::int32_t>(30, 2), 2};
         }},
        {"one record a level",
         [](MixedModel& m) {
             m.random[0].levels.count = 30;
             for (std::int32_t record = 0; record < 30; ++record) {
                 m.random[0].levels.ofRecord[static_cast<std::size_t>(record)] = record;
             }
         }},
        {"as many fixed effects as records",
         [](MixedModel& m) {
             LevelCodes own{{}, 30};
             for (std::int32_t record = 0; record < 30; ++record) {
                 own.ofRecord.push_back(record);
             }
             m.fixed = {FixedTerm::factor("record", own)};
         }},
    };
    for (const auto& [what, change] : faults) {
        expectRefused(what, fitMixedModel(changed(dyestuffModel(), change)));
    }
    expectRefused("covariance that is none", fitMixedModel(changed(sleepModel(), [](MixedModel& m) {
                      m.random[0].variance = VarianceChoice::held({1, 2, 2, 1});
                  })));
    expectRefused("prior of one variance for two",
                  fitMixedModel(changed(sleepModel(), [](MixedModel& m) {
                      m.random[0].variance = VarianceChoice::halfT(100, 4);
                  })));
}

TEST(MixedModelEdge, VariancesResponsesAndContrastsThatDoNotFit) {
    const auto equations = MixedModelEquations::of(dyestuffModel()).value();
    expectRefused("negative variance", equations.withVariances({-1, 2451}));
    expectRefused("no residual variance", equations.withVariances({1764, 0}));
    expectRefused("variance that is no number", equations.withVariances({kNaN, 2451}));
    expectRefused("infinite variance", equations.withVariances({kInfinity, 2451}));
    expectRefused("too few variances", equations.withVariances({2451}));
    EXPECT_FALSE(equations.withResponse(std::vector<double>(29, 1.0)).ok());
    std::vector<double> response = published::dyestuffYield();
    response[4] = kInfinity;
    EXPECT_FALSE(equations.withResponse(response).ok());
    EXPECT_FALSE(equations.withVarianceChoice(1, VarianceChoice::held(1)).ok());
    EXPECT_FALSE(equations.withVarianceChoice(0, VarianceChoice::held(-1)).ok());
    EXPECT_FALSE(equations.withResidualChoice(1, VarianceChoice::held(1)).ok());
    const auto fit = equations.fit().value();
    for (const EffectRef& absent :
         {EffectRef::ofFixed(0), EffectRef::ofRandom(0, 6), EffectRef::ofRandom(0, -1),
          EffectRef::ofRandom(1, 0), EffectRef::ofRandom(0, 0, 1)}) {
        const auto value = fit.contrast({{absent, 1}});
        ASSERT_FALSE(value.ok());
        EXPECT_EQ(value.problem().code, ProblemCode::badInput);
    }
    EXPECT_EQ(fit.contrast({}).value().value, 0);
    EXPECT_EQ(fit.contrast({}).value().standardError, 0);
}

TEST(MixedModelEdge, RecordsWithoutANumberAreLeftOutAndCounted) {
    MixedModel holes = sleepModel();
    MixedModel less = sleepModel();
    for (const std::size_t record : {170U, 100U, 5U}) {
        holes.response[record] = kNaN;
        less.response.erase(less.response.begin() + record);
        less.fixed[0].covariate.erase(less.fixed[0].covariate.begin() + record);
        auto& term = less.random[0];
        term.covariates[0].erase(term.covariates[0].begin() + record);
        term.levels.ofRecord.erase(term.levels.ofRecord.begin() + record);
    }
    const auto one = fitMixedModel(holes);
    const auto two = fitMixedModel(less);
    ASSERT_TRUE(one.ok() && two.ok());
    EXPECT_EQ(one->recordsUsed(), 177);
    EXPECT_EQ(one->recordsLeftOut(), 3);
    EXPECT_NEAR(one->criterion(), two->criterion(), 1e-9);
    holes.weights.assign(180, 1);
    holes.weights[20] = 0;
    EXPECT_EQ(fitMixedModel(holes)->recordsLeftOut(), 4);
}

TEST(MixedModelEdge, AVarianceOfZeroIsReportedAsSuch) {
    const auto fit = fitMixedModel(published::referenceFits()[1].model);
    ASSERT_TRUE(fit.ok());
    const VarianceComponent& batch = fit->varianceComponents()[0];
    EXPECT_EQ(batch.value, 0);
    EXPECT_TRUE(batch.atBoundary);
    EXPECT_FALSE(batch.standardError.has_value());
    for (std::int32_t level = 0; level < 6; ++level) {
        EXPECT_EQ(fit->randomEffects()[0].prediction(level), 0);
        EXPECT_EQ(fit->randomEffects()[0].reliability(level), 0);
        EXPECT_EQ(fit->randomEffects()[0].standardError(level), 0);
    }
    EXPECT_EQ(fit->varianceComponentCovariance()[0], 0);
    // The total mean square, as in the analysis of variance without batches.
    EXPECT_NEAR(fit->residualVariance(), 13.80630963, 1e-6);
}

TEST(MixedModelEdge, ACovarianceMatrixThatComesOutSingular) {
    MixedModel model = sleepModel();
    // Slopes that are a fixed multiple of the intercepts, and no other noise than alternation.
    for (std::size_t record = 0; record < 180; ++record) {
        const std::size_t person = record / 10;
        const auto subject = static_cast<double>(person);
        const auto day = static_cast<double>(record % 10);
        const double noise = record % 2 == 0 ? .5 : -.5;
        model.response[record] = (subject - 8.5) * (1 + .2 * day) + noise * (1 + day / 20);
    }
    const auto fit = fitMixedModel(model);
    ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
    const auto& all = fit->varianceComponents();
    EXPECT_TRUE(all[0].atBoundary || all[1].atBoundary || all[2].atBoundary);
    EXPECT_NEAR(all[1].value * all[1].value, all[0].value * all[2].value,
                1e-4 * all[0].value * all[2].value);
    for (const double prediction : fit->randomEffects()[0].predictions) {
        EXPECT_TRUE(std::isfinite(prediction));
    }
    // No matrix nearby with a smaller correlation does better.
    const VarianceValues values{all[0].value, all[1].value, all[2].value, all[3].value};
    for (const double factor : {.999, .99, .9}) {
        const VarianceValues less{values[0], factor * values[1], values[2], values[3]};
        EXPECT_GT(dense::solve(model, less, LikelihoodKind::restricted).criterion,
                  fit->criterion() - 1e-6);
    }
}

TEST(MixedModelEdge, PartsThatNoRecordJoinsAreNamed) {
    MixedModel model;
    RandomTerm taster;
    taster.name = "taster";
    taster.levels.count = 5;
    RandomTerm fruit;
    fruit.name = "fruit";
    fruit.levels.count = 7;
    const auto taste = [&](std::int32_t who, std::int32_t what, double liking) {
        taster.levels.ofRecord.push_back(who);
        fruit.levels.ofRecord.push_back(what);
        model.response.push_back(liking);
    };
    // Tasters 0 and 3 with fruits 0, 2 and 5; tasters 1 and 2 with 1 and 4; taster 4 and fruit 6
    // never.
    for (int round = 0; round < 2; ++round) {
        taste(0, 0, 5 + round);
        taste(0, 2, 7);
        taste(3, 2, 6 - round);
        taste(3, 5, 4);
        taste(1, 1, 3 + round);
        taste(2, 1, 8);
        taste(2, 4, 5 - round);
    }
    model.random = {taster, fruit};
    const auto fit = fitMixedModel(model);
    ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
    ASSERT_EQ(fit->disconnectedParts().size(), 1U);
    const DisconnectedParts& parts = fit->disconnectedParts()[0];
    EXPECT_EQ(parts.firstTerm, "taster");
    EXPECT_EQ(parts.secondTerm, "fruit");
    EXPECT_EQ(parts.parts, 2);
    EXPECT_EQ(parts.partOfFirst, (std::vector<std::int32_t>{0, 1, 1, 0, -1}));
    EXPECT_EQ(parts.partOfSecond, (std::vector<std::int32_t>{0, 1, 0, -1, 1, 0, -1}));
    // One taste joins them.
    for (auto& term : model.random) {
        term.levels.ofRecord.push_back(term.name == "taster" ? 0 : 4);
    }
    model.response.push_back(6);
    EXPECT_TRUE(fitMixedModel(model)->disconnectedParts().empty());
}

TEST(MixedModelEdge, ColumnsThatSayTheSameAreDropped) {
    MixedModel model = sleepModel();
    const auto plain = fitMixedModel(model);
    std::vector<double> hours = published::sleepDays();
    for (double& value : hours) {
        value = 24 * value + 8;
    }
    model.fixed.push_back(FixedTerm::number("hours", hours));
    model.fixed.push_back(FixedTerm::number("nothing", std::vector<double>(180, 0)));
    const auto fit = fitMixedModel(model);
    ASSERT_TRUE(plain.ok() && fit.ok());
    const auto& effects = fit->fixedEffects();
    ASSERT_EQ(effects.size(), 4U);
    EXPECT_FALSE(effects[0].dropped || effects[1].dropped);
    EXPECT_TRUE(effects[2].dropped && effects[3].dropped);
    EXPECT_EQ(fit->fixedRank(), 2);
    EXPECT_NEAR(fit->criterion(), plain->criterion(), 1e-7);
    EXPECT_NEAR(effects[1].estimate, plain->fixedEffects()[1].estimate, 1e-6);
}

TEST(MixedModelEdge, HeldVariancesStay) {
    MixedModel model = dyestuffModel();
    model.random[0].variance = VarianceChoice::held(1764.05);
    const auto fit = fitMixedModel(model);
    ASSERT_TRUE(fit.ok());
    EXPECT_EQ(fit->variance(0), 1764.05);
    EXPECT_TRUE(fit->varianceComponents()[0].held);
    EXPECT_FALSE(fit->varianceComponents()[0].standardError.has_value());
    EXPECT_NEAR(fit->residualVariance(), 2451.25, 1e-4 * 2451.25);
    EXPECT_EQ(fit->estimatedVarianceCount(), 1);
    model.random[0].variance = VarianceChoice::held(0);
    const auto none = fitMixedModel(model);
    ASSERT_TRUE(none.ok()) << none.problem().sentence();
    EXPECT_EQ(none->randomEffects()[0].prediction(2), 0);
    // The variance of all yields.
    EXPECT_NEAR(none->residualVariance(), 115187.5 / 29, 1e-5 * 4000);
}

/// Criterion and penalty at a variance of batches and of the residual, the slow way.
double posterior(const MixedModel& model, double batch, double residual,
                 const std::function<double(double)>& penalty) {
    return dense::solve(model, {batch, residual}, LikelihoodKind::restricted).criterion +
           penalty(batch);
}

TEST(MixedModelEdge, PriorsGiveThePosteriorMode) {
    using Penalty = std::function<double(double)>;
    const std::vector<std::pair<VarianceChoice, Penalty>> priors{
        {VarianceChoice::inverseChiSquare(500, 6),
         [](double v) { return 6 * (std::log(v) + 500 / v); }},
        {VarianceChoice::halfT(400, 3), [](double v) { return 4 * std::log1p(v / (3 * 400.)); }},
    };
    for (const auto& [choice, penalty] : priors) {
        MixedModel model = dyestuffModel();
        model.random[0].variance = choice;
        const auto fit = fitMixedModel(model);
        ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
        const double batch = fit->variance(0);
        const double residual = fit->residualVariance();
        EXPECT_LT(batch, 1500); // drawn from 1764 towards the prior
        EXPECT_GT(batch, 400);
        EXPECT_NEAR(fit->penalty(), penalty(batch), 1e-8);
        const double lowest = posterior(model, batch, residual, penalty);
        EXPECT_NEAR(fit->criterion() + fit->penalty(), lowest, 1e-7);
        for (const double factor : {.99, 1.01}) {
            EXPECT_GT(posterior(model, factor * batch, residual, penalty), lowest);
            EXPECT_GT(posterior(model, batch, factor * residual, penalty), lowest);
        }
    }
}

TEST(MixedModelEdge, APriorCanForbidZeroOrAllowIt) {
    MixedModel model = published::referenceFits()[1].model;
    model.random[0].variance = VarianceChoice::inverseChiSquare(1, 2);
    const auto above = fitMixedModel(model);
    ASSERT_TRUE(above.ok());
    EXPECT_GT(above->variance(0), .2);
    EXPECT_FALSE(above->varianceComponents()[0].atBoundary);
    model.random[0].variance = VarianceChoice::halfT(1, 2);
    const auto zero = fitMixedModel(model);
    ASSERT_TRUE(zero.ok());
    EXPECT_EQ(zero->variance(0), 0);
    // As good as certain beforehand: the data have no say.
    model.random[0].variance = VarianceChoice::inverseChiSquare(2, 1e7);
    EXPECT_NEAR(fitMixedModel(model)->variance(0), 2, 1e-3);
}

// For balanced data average, expected and observed information agree at the estimates: the errors
// are those of mean squares, 2 MS^2 / df.
TEST(MixedModelEdge, StandardErrorsOfVariancesOfBalancedData) {
    const auto fit = fitMixedModel(dyestuffModel());
    ASSERT_TRUE(fit.ok());
    const double within = 2451.25 * std::sqrt(2. / 24);
    const double between = std::sqrt(2 * 11271.5 * 11271.5 / 5 + within * within) / 5;
    EXPECT_NEAR(fit->varianceComponents()[0].standardError.value_or(0), between, 1e-4 * between);
    EXPECT_NEAR(fit->varianceComponents()[1].standardError.value_or(0), within, 1e-4 * within);
    EXPECT_NEAR(fit->varianceComponentCovariance()[1], -within * within / 5,
                1e-3 * within * within);
}

TEST(MixedModelEdge, AFitTellsHowItGoesAndCanBeStopped) {
    FitControl control;
    int calls = 0;
    control.progress = [&](const FitProgress& progress) {
        EXPECT_EQ(progress.iteration, ++calls);
        EXPECT_TRUE(std::isfinite(progress.criterion));
    };
    const auto fit = fitMixedModel(sleepModel(), control);
    ASSERT_TRUE(fit.ok());
    EXPECT_EQ(calls, fit->iterations());
    EXPECT_GT(calls, 1);
    std::stop_source source;
    control.stop = source.get_token();
    control.progress = [&](const FitProgress&) { source.request_stop(); };
    const auto stopped = fitMixedModel(sleepModel(), control);
    ASSERT_FALSE(stopped.ok());
    EXPECT_EQ(stopped.problem().code, ProblemCode::cancelled);
}

TEST(MixedModelEdge, ManyMoreLevelsThanRecords) {
    MixedModel model = dyestuffModel();
    model.random[0].levels.count = 20'000;
    const auto fit = fitMixedModel(model);
    ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
    EXPECT_NEAR(fit->variance(0), 1764.05, .2);
    const RandomEffects& effects = fit->randomEffects()[0];
    EXPECT_EQ(effects.prediction(19'999), 0);
    EXPECT_EQ(effects.reliability(19'999), 0);
    EXPECT_NEAR(effects.errorVariance(19'999), fit->variance(0), 1e-9 * fit->variance(0));
}

} // namespace
} // namespace pipwright
