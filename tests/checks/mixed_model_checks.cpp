#include "core/pedigree/inbreeding.h"
#include "core/pedigree/inverse_relationship.h"
#include "core/statistics/mixed_model_fit.h"
#include "tests/checks/plain_term.h"
#include "tests/checks/published_data.h"
#include "tests/checks/reference_fits.h"
#include "tests/core/pedigree/families.h"

#include <cmath>
#include <gtest/gtest.h>
#include <string>
#include <vector>

// Mixed models against published examples and against R 4.2.2 with lme4 1.1-31 and nlme 3.1-162,
// their optimisers tightened until further digits no longer moved.

namespace pipwright {
namespace {

using published::ReferenceFit;

FixedTerm everyLevel(const char* name, std::vector<std::int32_t> codes, std::int32_t count) {
    return FixedTerm::factor(name, {std::move(codes), count}, FixedCoding::everyLevel);
}

RandomTerm animals(const Pedigree& pedigree, std::vector<std::int32_t> codes) {
    RandomTerm term = plainTerm("animal", {std::move(codes), pedigree.size()});
    term.precision = inverseRelationship(pedigree, inbreeding(pedigree), letterOf).value();
    return term;
}

void expectVariances(const MixedFit& fit, const std::vector<double>& known) {
    ASSERT_EQ(fit.varianceComponents().size(), known.size());
    for (std::size_t i = 0; i < known.size(); ++i) {
        const double tolerance = known[i] == 0 ? 1e-6 * known.back() : 1e-4 * std::abs(known[i]);
        EXPECT_NEAR(fit.varianceComponents()[i].value, known[i], tolerance) << "variance " << i;
        EXPECT_EQ(fit.varianceComponents()[i].atBoundary, known[i] == 0) << "variance " << i;
    }
}

void expectFixed(const MixedFit& fit, const std::vector<UncertainValue>& known) {
    ASSERT_EQ(fit.fixedEffects().size(), known.size());
    for (std::size_t i = 0; i < known.size(); ++i) {
        const FixedEffect& effect = fit.fixedEffects()[i];
        EXPECT_NEAR(effect.estimate, known[i].value, 1e-4 * known[i].standardError) << i;
        EXPECT_NEAR(effect.standardError, known[i].standardError, 1e-4 * known[i].standardError)
            << i;
        EXPECT_FALSE(effect.dropped);
    }
}

TEST(MixedModelCheck, EveryReferenceFit) {
    for (const ReferenceFit& reference : published::referenceFits()) {
        SCOPED_TRACE(reference.name);
        const auto fit = fitMixedModel(reference.model);
        ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
        EXPECT_TRUE(fit->converged());
        EXPECT_NEAR(fit->criterion(), reference.criterion, 1e-4);
        expectVariances(*fit, reference.variances);
        expectFixed(*fit, reference.fixed);
        const double tolerance = 1e-3 * std::sqrt(fit->residualVariance());
        ASSERT_EQ(fit->randomEffects().size(), reference.predictions.size());
        for (std::size_t term = 0; term < reference.predictions.size(); ++term) {
            const auto& known = reference.predictions[term];
            const auto& found = fit->randomEffects()[term].predictions;
            ASSERT_EQ(found.size(), known.size()) << "term " << term;
            for (std::size_t i = 0; i < known.size(); ++i) {
                EXPECT_NEAR(found[i], known[i], tolerance) << "term " << term << " effect " << i;
            }
        }
    }
}

// Balanced data of one factor: the restricted estimates are those of the analysis of variance.
// Yield of Dyestuff: mean squares 11271.50 between, 2451.25 within batches.
TEST(MixedModelCheck, BalancedDataGiveTheAnalysisOfVariance) {
    const MixedModel model = published::referenceFits()[0].model;
    const auto restricted = fitMixedModel(model);
    ASSERT_TRUE(restricted.ok());
    EXPECT_NEAR(restricted->variance(0), (11271.50 - 2451.25) / 5, 1e-5 * 1764.05);
    EXPECT_NEAR(restricted->residualVariance(), 2451.25, 1e-5 * 2451.25);
    const auto full = fitMixedModel(model, {.likelihood = LikelihoodKind::full});
    ASSERT_TRUE(full.ok());
    EXPECT_NEAR(full->variance(0), (11271.50 * 5 / 6 - 2451.25) / 5, 1e-5 * 1388.33);
    EXPECT_NEAR(full->residualVariance(), 2451.25, 1e-5 * 2451.25);
    EXPECT_NEAR(full->criterion(), 327.3270599, 1e-6);
    EXPECT_NEAR(full->fixedEffects()[0].standardError, 17.69455374, 1e-4);
}

TEST(MixedModelCheck, TheCriterionHasAllItsConstants) {
    const auto equations = MixedModelEquations::of(published::referenceFits()[0].model).value();
    const auto fit = equations.withVariances({1764.05, 2451.25});
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit->criterion(), 319.6542768, 5e-8);
}

// Henderson's prediction error variance counts the uncertainty of the mean; the conditional
// variance that lme4's ranef prints does not. R: 613.7031 (reliability .652106), 383.6337.
TEST(MixedModelCheck, PredictionErrorIsNotTheConditionalVariance) {
    MixedModel model = published::referenceFits()[0].model;
    const VarianceValues variances{1764.05, 2451.25};
    const auto fit = MixedModelEquations::of(model).value().withVariances(variances);
    ASSERT_TRUE(fit.ok());
    EXPECT_NEAR(fit->randomEffects()[0].errorVariance(2), 613.7031, 5e-5);
    EXPECT_NEAR(fit->randomEffects()[0].reliability(2), .652106, 5e-7);
    for (double& yield : model.response) {
        yield -= 1527.5;
    }
    model.intercept = false;
    const auto known = MixedModelEquations::of(model).value().withVariances(variances);
    ASSERT_TRUE(known.ok());
    EXPECT_NEAR(known->randomEffects()[0].errorVariance(2), 383.6337, 5e-5);
    EXPECT_NEAR(known->randomEffects()[0].reliability(2), .782527, 5e-7);
}

// The restricted criterion depends on the coding of X: cake with a mean for each of 18 cells
// instead of polynomials (lme4: 1633.246181); the variances do not.
TEST(MixedModelCheck, AnotherCodingOfTheSameMeansMovesOnlyTheCriterion) {
    LevelCodes cells{published::cakeRecipe().ofRecord, 18};
    LevelCodes blocks{published::cakeRecipe().ofRecord, 45};
    for (std::size_t i = 0; i < cells.ofRecord.size(); ++i) {
        cells.ofRecord[i] = cells.ofRecord[i] * 6 + published::cakeTemperature().ofRecord[i];
        blocks.ofRecord[i] = blocks.ofRecord[i] * 15 + published::cakeReplicate().ofRecord[i];
    }
    MixedModel model;
    model.response = published::cakeAngle();
    model.fixed = {FixedTerm::factor("cell", cells)};
    model.random = {plainTerm("recipe:replicate", blocks)};
    const auto fit = fitMixedModel(model);
    ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
    EXPECT_NEAR(fit->criterion(), 1633.246181, 1e-4);
    expectVariances(*fit, {41.83703705, 20.47089947});
}

// lme4 with REML = FALSE.
TEST(MixedModelCheck, FullLikelihood) {
    const auto references = published::referenceFits();
    const FitControl full{.likelihood = LikelihoodKind::full};
    const auto penicillin = fitMixedModel(references[2].model, full);
    ASSERT_TRUE(penicillin.ok());
    expectVariances(*penicillin, {.7149923486, 3.135188842, .3024254162});
    EXPECT_NEAR(penicillin->criterion(), 332.1883487, 1e-4);
    EXPECT_NEAR(penicillin->akaikeCriterion(), 340.1883487, 1e-4);
    // 144 records, 4 numbers: 340.1883487 + 2 * 4 * 5 / 139 (Hurvich & Tsai 1989).
    ASSERT_TRUE(penicillin->correctedAkaikeCriterion().has_value());
    EXPECT_NEAR(*penicillin->correctedAkaikeCriterion(), 340.4761185, 1e-4);
    EXPECT_NEAR(penicillin->bayesCriterion(), 352.0676019, 1e-4);
    const auto sleep = fitMixedModel(references[5].model, full);
    ASSERT_TRUE(sleep.ok());
    expectVariances(*sleep, {565.515271, 11.05541446, 32.68219761, 654.9410376});
    expectFixed(*sleep, {{251.4051048, 6.632276421}, {10.46728596, 1.502236793}});
    EXPECT_NEAR(sleep->criterion(), 1751.939344, 1e-4);
    EXPECT_NEAR(sleep->bayesCriterion(), 1783.097086, 1e-4);
}

// lme4: sleepstudy, weights 1 + (row mod 3) counted from row 1.
TEST(MixedModelCheck, Weights) {
    MixedModel model = published::referenceFits()[4].model;
    for (int row = 1; row <= 180; ++row) {
        model.weights.push_back(1 + row % 3);
    }
    const auto fit = fitMixedModel(model);
    ASSERT_TRUE(fit.ok());
    expectVariances(*fit, {1326.624952, 1757.430751});
    expectFixed(*fit, {{251.1316479, 9.517836538}, {10.40464304, .7697310094}});
    EXPECT_NEAR(fit->criterion(), 1788.687748, 1e-4);
    EXPECT_NEAR(fit->randomEffects()[0].prediction(1), -77.05686949, .04);
}

// nlme's lme with varIdent: sleepstudy, the residual of days 0 to 4 apart from that of 5 to 9.
TEST(MixedModelCheck, ResidualVarianceByGroup) {
    MixedModel model = published::referenceFits()[4].model;
    model.residual.groups.count = 2;
    for (int row = 0; row < 180; ++row) {
        model.residual.groups.ofRecord.push_back(row % 10 >= 5 ? 1 : 0);
    }
    const auto fit = fitMixedModel(model);
    ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
    expectVariances(*fit, {1010.5806, 455.1704977, 1663.297338});
    expectFixed(*fit, {{252.0365312, 8.133288898}, {10.13028438, .7991658935}});
    EXPECT_NEAR(fit->criterion(), 1768.755826, 1e-4);
    EXPECT_NEAR(fit->randomEffects()[0].prediction(1), -66.94893467, .02);
}

// Mrode (2014), Linear Models for the Prediction of Animal Breeding Values, 3rd ed., example 3.1:
// eight calves, sex fixed, variances 20 and 40. Digits beyond the book's: Masuda's tutorial.
TEST(MixedModelCheck, MrodeAnimalModel) {
    const Pedigree pedigree =
        pedigreeOf({{0, 0}, {0, 0}, {0, 0}, {1, 0}, {3, 2}, {1, 2}, {4, 5}, {3, 6}});
    MixedModel model;
    model.response = {4.5, 2.9, 3.9, 3.5, 5.0};
    model.intercept = false;
    model.fixed = {everyLevel("sex", {0, 1, 1, 0, 0}, 2)};
    model.random = {animals(pedigree, {3, 4, 5, 6, 7})};
    model.random[0].variance = VarianceChoice::held(20);
    model.residual.variance = {VarianceChoice::held(40)};
    const auto fit = fitMixedModel(model);
    ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
    EXPECT_TRUE(fit->converged());
    EXPECT_EQ(fit->estimatedVarianceCount(), 0);
    const auto& sexes = fit->fixedEffects();
    EXPECT_NEAR(sexes[0].estimate, 4.35850233, 5e-9);
    EXPECT_NEAR(sexes[1].estimate, 3.40443001, 5e-9);
    EXPECT_NEAR(sexes[0].standardError, 4.880824, 5e-7);
    EXPECT_NEAR(sexes[1].standardError, 5.665540, 5e-7);
    const std::vector<double> solutions{.09844458,  -.01877010, -.04108420, -.00866312,
                                        -.18573210, .17687209,  -.24945855, .18261469};
    const std::vector<double> errors{4.340941, 4.436646, 4.272979, 4.136086,
                                     4.138148, 4.206104, 4.204075, 4.110300};
    const std::vector<double> reliabilities{.057812, .015809, .087082, .144640,
                                            .143787, .115434, .116288, .155272};
    const RandomEffects& effects = fit->randomEffects()[0];
    for (std::int32_t i = 0; i < 8; ++i) {
        const auto at = static_cast<std::size_t>(i);
        EXPECT_NEAR(effects.prediction(i), solutions[at], 5.1e-9) << i;
        EXPECT_NEAR(effects.standardError(i), errors[at], 5.1e-7) << i;
        EXPECT_NEAR(effects.reliability(i), reliabilities[at], 5.1e-7) << i;
    }
}

// Mrode (2014), example 4.1: repeated records, variances 20, 12 and 28. The book's solutions set
// the effects of herd-year-seasons 1 and 3 to 0; coded last, they are the ones that are dropped.
TEST(MixedModelCheck, MrodeRepeatabilityModel) {
    const Pedigree pedigree =
        pedigreeOf({{0, 0}, {0, 0}, {0, 0}, {1, 2}, {3, 2}, {1, 5}, {3, 4}, {1, 7}});
    const std::vector<std::int32_t> cows{3, 3, 4, 4, 5, 5, 6, 6, 7, 7};
    std::vector<std::int32_t> permanent = cows;
    for (std::int32_t& cow : permanent) {
        cow -= 3;
    }
    MixedModel model;
    model.response = {201, 280, 150, 200, 160, 190, 180, 250, 285, 300};
    model.intercept = false;
    model.fixed = {everyLevel("parity", {0, 1, 0, 1, 0, 1, 0, 1, 0, 1}, 2),
                   everyLevel("season", {2, 3, 2, 1, 0, 3, 2, 3, 0, 1}, 4)};
    model.random = {animals(pedigree, cows), plainTerm("permanent", {permanent, 5})};
    const auto fit = MixedModelEquations::of(model).value().withVariances({20, 12, 28});
    ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
    const std::vector<double> fixed{175.472, 241.893, 44.065, .013, 0, 0};
    for (std::size_t i = 0; i < fixed.size(); ++i) {
        EXPECT_NEAR(fit->fixedEffects()[i].estimate, fixed[i], 5.1e-4) << i;
        EXPECT_EQ(fit->fixedEffects()[i].dropped, i >= 4) << i;
    }
    const std::vector<double> genetic{10.148,  -3.084,  -7.063, 13.581,
                                      -18.207, -18.387, 9.328,  24.194};
    for (std::int32_t i = 0; i < 8; ++i) {
        EXPECT_NEAR(fit->randomEffects()[0].prediction(i), genetic[static_cast<std::size_t>(i)],
                    5.1e-4);
    }
    // The book prints -17.229 for the third; the exact value is -17.228497.
    const std::vector<double> lasting{8.417, -7.146, -17.228497, -1.390, 17.347};
    for (std::int32_t i = 0; i < 5; ++i) {
        EXPECT_NEAR(fit->randomEffects()[1].prediction(i), lasting[static_cast<std::size_t>(i)],
                    5.1e-4);
    }
    EXPECT_NEAR(fit->randomEffects()[0].errorVariance(0) / 28, .639216793600802, 1e-9);
    // The last cow is inbred, F = 0.125: her reliability is of a variance of 1.125 x 20.
    EXPECT_NEAR(fit->randomEffects()[0].reliability(7), 1 - .659441367969116 * 28 / (1.125 * 20),
                1e-9);
}

// Federer (1956), Hawaii Planters' Record 55:191-208, as worked in Aravind et al. (2023): 12
// treatments of which four checks stand in each of three blocks. Both factors fixed; the errors
// of differences are the exact ones of least squares (R, emmeans 1.8.4), not the textbook's.
TEST(MixedModelCheck, AugmentedBlocksByLeastSquares) {
    MixedModel model;
    model.response = {92, 79, 87, 81, 96, 89, 82, 79, 81, 81,
                      91, 79, 78, 83, 77, 78, 78, 70, 75, 74};
    model.fixed = {
        FixedTerm::factor("block",
                          {{0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 2}, 3}),
        FixedTerm::factor("entry",
                          {{0, 1, 2, 3, 6, 10, 11, 0, 1, 2, 3, 4, 8, 0, 1, 2, 3, 7, 5, 9}, 12})};
    const auto fit = fitMixedModel(model);
    ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
    EXPECT_NEAR(fit->residualVariance(), 26.97222, 5e-6);
    EXPECT_EQ(fit->residualDegreesOfFreedom(), 6);
    const auto difference = [&](int one, int other) {
        Contrast contrast;
        if (one > 1) {
            contrast.push_back({EffectRef::ofFixed(1, one - 1), 1});
        }
        if (other > 1) {
            contrast.push_back({EffectRef::ofFixed(1, other - 1), -1});
        }
        return fit->contrast(contrast).value();
    };
    EXPECT_NEAR(difference(7, 5).value, 93.50 - 78.25, 1e-9);
    EXPECT_NEAR(difference(8, 12).value, 73.25 - 79.50, 1e-9);
    EXPECT_NEAR(difference(2, 1).standardError, 4.240458, 5e-7);  // two checks
    EXPECT_NEAR(difference(7, 11).standardError, 7.344688, 5e-7); // of one block
    EXPECT_NEAR(difference(7, 5).standardError, 8.211611, 5e-7);  // of two blocks
    EXPECT_NEAR(difference(7, 1).standardError, 6.360687, 5e-7);  // with a check
}

} // namespace
} // namespace pipwright
