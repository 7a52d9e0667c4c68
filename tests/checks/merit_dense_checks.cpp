// The merit model against a dense solver, which writes down the covariance of all scores and
// inverts it (dense_mixed_model.h), at the variances the model found.
#include "core/evaluation/merit/merit_design.h"
#include "tests/checks/dense_mixed_model.h"
#include "tests/support/simulated_orchard.h"

#include <cmath>
#include <gtest/gtest.h>

namespace pipwright {
namespace {

void expectAsDense(const test::SimulatedOrchard& orchard, const MeritOptions& options) {
    const auto model = MeritModel::fit(orchard.families, orchard.records, options);
    ASSERT_TRUE(model.ok()) << model.problem().sentence();
    const auto design = meritDesign(orchard.families, orchard.records, options, {});
    ASSERT_TRUE(design.ok());
    VarianceValues found;
    for (const VarianceComponent& one : model->mixedFit().varianceComponents()) {
        found.push_back(one.value);
    }
    const dense::Answer answer = dense::solve(design->model, found, LikelihoodKind::restricted);
    const auto placeOf = [&design](std::int32_t term) {
        std::size_t at = 0;
        for (std::int32_t i = 0; i < term; ++i) {
            at += static_cast<std::size_t>(
                design->model.random[static_cast<std::size_t>(i)].levels.count);
        }
        return at;
    };
    const std::size_t level = placeOf(design->levelTerm.value());
    const std::size_t first =
        placeOf(design->termAt[static_cast<std::size_t>(MeritTerm::genotype)]);
    const std::size_t fixed = answer.fixed.size();
    for (std::size_t at = 0; at < model->merits().size(); ++at) {
        const GenotypeMerit& merit = model->merits()[at];
        EXPECT_NEAR(merit.merit.value,
                    design->priors.level->mean + answer.random[level] + answer.random[first + at],
                    1e-6);
        const auto covariance = [&](std::size_t one, std::size_t other) {
            return answer.errorCovariance.at(fixed + one, fixed + other);
        };
        const double variance = covariance(level, level) + covariance(first + at, first + at) +
                                2 * covariance(level, first + at);
        const auto contrast = model->mixedFit().contrast(*model->contrastOf(merit.genotype));
        ASSERT_TRUE(contrast.ok());
        EXPECT_NEAR(contrast->standardError, std::sqrt(variance), 1e-6);
        // Doubt about the variances only adds to it.
        EXPECT_GE(merit.merit.standardError, std::sqrt(variance) - 1e-6);

        const auto difference = model->mixedFit().contrast(
            {{EffectRef::ofRandom(design->termAt[0], static_cast<std::int32_t>(at)), 1},
             {EffectRef::ofRandom(design->termAt[0], 0), -1}});
        ASSERT_TRUE(difference.ok());
        if (at > 0) {
            EXPECT_NEAR(difference->standardError,
                        std::sqrt(covariance(first + at, first + at) + covariance(first, first) -
                                  2 * covariance(first + at, first)),
                        1e-6);
        }
    }
}

TEST(MeritDenseChecks, EstimatesAndErrorsAreThoseOfADenseSolver) {
    test::SimulationPlan plan;
    plan.seedlings = 20;
    plan.benchmarks = 4;
    plan.families = 3;
    plan.cropYears = 2;
    plan.mostTastings = 3;
    for (const std::uint64_t seed : {1U, 2U}) {
        const auto orchard = simulateOrchard(plan, seed);
        for (const bool pedigree : {true, false}) {
            MeritOptions options;
            options.pedigree = pedigree;
            options.tasterNoise = false;
            SCOPED_TRACE("seed " + std::to_string(seed) + (pedigree ? " with" : " without") +
                         " pedigree");
            expectAsDense(orchard, options);
        }
    }
}

} // namespace
} // namespace pipwright
