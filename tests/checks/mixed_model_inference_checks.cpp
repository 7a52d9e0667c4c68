#include "core/statistics/fitted_means.h"
#include "core/statistics/mixed_model_inference.h"
#include "tests/checks/plain_term.h"
#include "tests/checks/published_data.h"

#include <cmath>
#include <gtest/gtest.h>
#include <stop_token>
#include <vector>

// Published data; the known values were computed with R 4.2.2: profiles from the criterion of
// balanced data in closed form and uniroot, or by lme4 1.1-31 (REML = FALSE).

namespace pipwright {
namespace {

MixedModel dyestuff(std::vector<double> yield) {
    MixedModel model;
    model.response = std::move(yield);
    model.random = {plainTerm("batch", published::dyestuffBatch())};
    return model;
}

MixedModel sleep(bool slopes, bool days) {
    MixedModel model;
    model.response = published::sleepReaction();
    if (days) {
        model.fixed = {FixedTerm::number("days", published::sleepDays())};
    }
    model.random = {plainTerm("subject", published::sleepSubject())};
    if (slopes) {
        model.random[0].covariates = {published::sleepDays()};
    }
    return model;
}

VarianceInterval intervalOf(const MixedModel& model, std::int32_t component,
                            LikelihoodKind likelihood = LikelihoodKind::restricted) {
    const auto equations = MixedModelEquations::of(model).value();
    const FitControl control{.likelihood = likelihood};
    const auto fit = equations.fit(control).value();
    const auto interval = profileInterval(equations, fit, component, .95, control);
    EXPECT_TRUE(interval.ok()) << (interval.ok() ? "" : interval.problem().sentence());
    return interval.ok() ? *interval : VarianceInterval{};
}

TEST(ProfileInterval, OfBalancedData) {
    const MixedModel model = dyestuff(published::dyestuffYield());
    const VarianceInterval batch = intervalOf(model, 0);
    EXPECT_NEAR(batch.low, 245.1478252, 1e-3);
    EXPECT_NEAR(batch.high.value_or(0), 10214.36141, 1e-2);
    const VarianceInterval residual = intervalOf(model, 1);
    EXPECT_NEAR(residual.low, 1461.542328, 1e-3);
    EXPECT_NEAR(residual.high.value_or(0), 4577.560687, 1e-2);
}

TEST(ProfileInterval, FromZero) {
    const MixedModel model = dyestuff(published::dyestuff2Yield());
    const VarianceInterval batch = intervalOf(model, 0);
    EXPECT_EQ(batch.low, 0);
    EXPECT_NEAR(batch.high.value_or(0), 6.32031365, 1e-4);
    const VarianceInterval residual = intervalOf(model, 1);
    EXPECT_NEAR(residual.low, 8.593718597, 1e-4);
    EXPECT_NEAR(residual.high.value_or(0), 24.241037, 1e-4);
}

// lme4's confint, which interpolates by splines.
TEST(ProfileInterval, ByFullLikelihoodOfCrossedFactors) {
    MixedModel model;
    model.response = published::penicillinDiameter();
    model.random = {plainTerm("plate", published::penicillinPlate()),
                    plainTerm("sample", published::penicillinSample())};
    const double low[]{.633565788, 1.095789264, .485845400};
    const double high[]{1.182103984, 3.556291915, .629453479};
    for (std::int32_t component = 0; component < 3; ++component) {
        const VarianceInterval interval = intervalOf(model, component, LikelihoodKind::full);
        EXPECT_NEAR(std::sqrt(interval.low), low[component], 2e-4 * low[component]);
        EXPECT_NEAR(std::sqrt(interval.high.value_or(0)), high[component], 2e-4 * high[component]);
    }
}

TEST(ProfileInterval, WidensWithConfidenceAndHeedsPriors) {
    MixedModel model = dyestuff(published::dyestuffYield());
    const auto equations = MixedModelEquations::of(model).value();
    const auto fit = equations.fit().value();
    double low = fit.variance(0);
    double high = low;
    for (const double confidence : {.5, .8, .9}) {
        const auto interval = profileInterval(equations, fit, 0, confidence);
        ASSERT_TRUE(interval.ok());
        EXPECT_LT(interval->low, low);
        EXPECT_GT(interval->high.value_or(1e300), high);
        low = interval->low;
        high = interval->high.value_or(1e300);
    }
    model.random[0].variance = VarianceChoice::inverseChiSquare(1000, 50);
    const VarianceInterval narrow = intervalOf(model, 0);
    EXPECT_GT(narrow.low, 600);
    EXPECT_LT(narrow.high.value_or(1e300), 1700);
}

TEST(ProfileInterval, RefusesWhatHasNone) {
    const auto equations = MixedModelEquations::of(sleep(true, true)).value();
    const auto fit = equations.fit().value();
    for (const std::int32_t component : {-1, 0, 1, 2, 4}) {
        const auto interval = profileInterval(equations, fit, component, .95);
        ASSERT_FALSE(interval.ok()) << component;
        EXPECT_EQ(interval.problem().code, ProblemCode::badInput);
        EXPECT_FALSE(interval.problem().remedy.empty());
    }
    for (const double confidence : {0., 1., -1., 2., std::nan("")}) {
        EXPECT_FALSE(profileInterval(equations, fit, 3, confidence).ok());
    }
    EXPECT_TRUE(profileInterval(equations, fit, 3, .95).ok());
    MixedModel held = dyestuff(published::dyestuffYield());
    held.random[0].variance = VarianceChoice::held(1000);
    const auto heldEquations = MixedModelEquations::of(held).value();
    EXPECT_FALSE(profileInterval(heldEquations, heldEquations.fit().value(), 0, .95).ok());
    std::stop_source source;
    source.request_stop();
    FitControl stopped;
    stopped.stop = source.get_token();
    const auto interval = profileInterval(equations, fit, 3, .95, stopped);
    ASSERT_FALSE(interval.ok());
    EXPECT_EQ(interval.problem().code, ProblemCode::cancelled);
}

TEST(LikelihoodRatio, OfCorrelatedSlopes) {
    const FitControl full{.likelihood = LikelihoodKind::full};
    const auto ratio = compareLikelihoods(fitMixedModel(sleep(false, true), full).value(),
                                          fitMixedModel(sleep(true, true), full).value());
    ASSERT_TRUE(ratio.ok()) << ratio.problem().sentence();
    EXPECT_NEAR(ratio->statistic, 42.13929854, 1e-4);
    EXPECT_EQ(ratio->degreesOfFreedom, 2);
    EXPECT_NEAR(ratio->pValue, 7.072412547e-10, 1e-13);
    // One variance and one covariance more: half of one, half of two degrees of freedom.
    EXPECT_NEAR(ratio->boundaryPValue.value_or(0), 3.961195308e-10, 1e-13);
}

TEST(LikelihoodRatio, OfOneVariance) {
    const auto with = fitMixedModel(dyestuff(published::dyestuffYield())).value();
    MixedModel without = dyestuff(published::dyestuffYield());
    without.random.clear();
    const auto ratio = compareLikelihoods(fitMixedModel(without).value(), with);
    ASSERT_TRUE(ratio.ok()) << ratio.problem().sentence();
    EXPECT_EQ(ratio->degreesOfFreedom, 1);
    // From the profile at 0: 2.527496 over the quantile 3.841459.
    EXPECT_NEAR(ratio->statistic, 2.527496 + 3.841459, 1e-5);
    EXPECT_NEAR(ratio->boundaryPValue.value_or(0), ratio->pValue / 2, 1e-12);
}

TEST(LikelihoodRatio, OfAFixedEffectOnlyByFullLikelihood) {
    const FitControl full{.likelihood = LikelihoodKind::full};
    const auto ratio = compareLikelihoods(fitMixedModel(sleep(false, false), full).value(),
                                          fitMixedModel(sleep(false, true), full).value());
    ASSERT_TRUE(ratio.ok());
    EXPECT_NEAR(ratio->statistic, 116.4624151, 1e-4);
    EXPECT_FALSE(ratio->boundaryPValue.has_value());
    EXPECT_FALSE(compareLikelihoods(fitMixedModel(sleep(false, false)).value(),
                                    fitMixedModel(sleep(false, true)).value())
                     .ok());
}

TEST(LikelihoodRatio, RefusesModelsThatAreNotNested) {
    const auto small = fitMixedModel(sleep(false, true)).value();
    const auto large = fitMixedModel(sleep(true, true)).value();
    EXPECT_TRUE(compareLikelihoods(small, large).ok());
    EXPECT_FALSE(compareLikelihoods(large, small).ok());
    EXPECT_FALSE(compareLikelihoods(small, small).ok());
    const auto full =
        fitMixedModel(sleep(true, true), {.likelihood = LikelihoodKind::full}).value();
    EXPECT_FALSE(compareLikelihoods(small, full).ok());
    EXPECT_FALSE(
        compareLikelihoods(fitMixedModel(dyestuff(published::dyestuffYield())).value(), large)
            .ok());
    MixedModel prior = sleep(false, true);
    prior.random[0].variance = VarianceChoice::halfT(1000, 4);
    EXPECT_FALSE(compareLikelihoods(fitMixedModel(prior).value(), large).ok());
}

TEST(FittedMeans, AddUpWhatTheModelSays) {
    MixedModel model = sleep(true, true);
    FixedTerm late = FixedTerm::factor("late", {std::vector<std::int32_t>(180, 0), 2});
    for (std::size_t record = 0; record < 180; ++record) {
        late.levels.ofRecord[record] = record % 10 > 6 ? 1 : 0;
    }
    late.levels.ofRecord[5] = -1;
    model.random[0].levels.ofRecord[17] = -1;
    model.fixed.push_back(late);
    const auto fit = fitMixedModel(model).value();
    const auto means = fittedMeans(model, fit);
    ASSERT_EQ(means.size(), 180U);
    EXPECT_TRUE(std::isnan(means[5]));
    const auto& fixed = fit.fixedEffects();
    const RandomEffects& subjects = fit.randomEffects()[0];
    EXPECT_NEAR(means[17], fixed[0].estimate + 7 * fixed[1].estimate + fixed[2].estimate, 1e-9);
    EXPECT_NEAR(means[33],
                fixed[0].estimate + 3 * fixed[1].estimate + subjects.prediction(3, 0) +
                    3 * subjects.prediction(3, 1),
                1e-9);
}

} // namespace
} // namespace pipwright
