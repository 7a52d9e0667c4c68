#include "core/statistics/mixed_model_fit.h"
#include "tests/checks/dense_mixed_model.h"
#include "tests/checks/random_mixed_models.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <iterator>
#include <numeric>
#include <string>
#include <vector>

// Random mixed models against a dense solver of our own, and what must not matter: the order of
// records, the codes of levels, the unit and the zero of the response. Seeds are printed.

namespace pipwright {
namespace {

constexpr std::uint64_t kFirstSeed = 20260;

void expectEffects(const MixedFit& fit, const dense::Answer& answer) {
    const std::size_t fixedCount = answer.fixed.size();
    ASSERT_EQ(fit.fixedEffects().size(), fixedCount);
    for (std::size_t i = 0; i < fixedCount; ++i) {
        const FixedEffect& effect = fit.fixedEffects()[i];
        EXPECT_EQ(effect.dropped, answer.dropped[i]) << "fixed " << i;
        EXPECT_NEAR(effect.estimate, answer.fixed[i], 1e-7) << "fixed " << i;
        EXPECT_NEAR(effect.standardError, std::sqrt(answer.errorCovariance.at(i, i)), 1e-7)
            << "fixed " << i;
    }
    std::size_t next = 0;
    for (const RandomEffects& effects : fit.randomEffects()) {
        const auto each = static_cast<std::size_t>(effects.effectsPerLevel);
        for (std::size_t i = 0; i < effects.predictions.size(); ++i, ++next) {
            EXPECT_NEAR(effects.predictions[i], answer.random[next], 1e-7) << "effect " << i;
            const std::size_t level = i / each;
            for (std::size_t other = 0; other < each; ++other) {
                EXPECT_NEAR(effects.errorCovariance[i * each + other],
                            answer.errorCovariance.at(fixedCount + next,
                                                      fixedCount + next - i % each + other),
                            1e-7)
                    << "level " << level;
            }
        }
    }
}

TEST(MixedModelProperty, EverythingAtGivenVariancesIsWhatTheDenseSolverFinds) {
    int compared = 0;
    for (std::uint64_t seed = kFirstSeed; seed < kFirstSeed + 120; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Dice dice(seed);
        const MixedModel model = randomModel(dice);
        const VarianceValues variances = randomVariances(dice, model);
        const auto equations = MixedModelEquations::of(model);
        ASSERT_TRUE(equations.ok()) << equations.problem().sentence();
        for (const LikelihoodKind kind : {LikelihoodKind::restricted, LikelihoodKind::full}) {
            const auto fit = equations->withVariances(variances, kind);
            ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
            const dense::Answer answer = dense::solve(model, variances, kind);
            EXPECT_NEAR(fit->criterion(), answer.criterion, 1e-7 * std::abs(answer.criterion));
            expectEffects(*fit, answer);
            ++compared;
        }
        if (HasFailure()) {
            return; // one seed is enough to look into
        }
    }
    EXPECT_EQ(compared, 240);
}

/// All random effects of a fit, as a contrast can name them.
std::vector<EffectRef> allEffects(const MixedFit& fit) {
    std::vector<EffectRef> refs;
    for (const FixedEffect& effect : fit.fixedEffects()) {
        refs.push_back(effect.effect);
    }
    for (std::size_t term = 0; term < fit.randomEffects().size(); ++term) {
        const RandomEffects& effects = fit.randomEffects()[term];
        for (std::int32_t level = 0; level < effects.levelCount(); ++level) {
            for (std::int32_t effect = 0; effect < effects.effectsPerLevel; ++effect) {
                refs.push_back(EffectRef::ofRandom(static_cast<std::int32_t>(term), level, effect));
            }
        }
    }
    return refs;
}

TEST(MixedModelProperty, ContrastsOfAnyEffects) {
    for (std::uint64_t seed = kFirstSeed + 500; seed < kFirstSeed + 530; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Dice dice(seed);
        const MixedModel model = randomModel(dice);
        const VarianceValues variances = randomVariances(dice, model);
        const auto fit = MixedModelEquations::of(model).value().withVariances(variances);
        ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
        const dense::Answer answer = dense::solve(model, variances, LikelihoodKind::restricted);
        std::vector<double> all = answer.fixed;
        all.insert(all.end(), answer.random.begin(), answer.random.end());
        const std::vector<EffectRef> refs = allEffects(*fit);
        ASSERT_EQ(refs.size(), all.size());
        std::vector<Contrast> contrasts(2);
        dense::Matrix weights(2, all.size());
        for (std::size_t row = 0; row < 2; ++row) {
            for (int part = 0; part < 4; ++part) {
                const auto which =
                    static_cast<std::size_t>(dice.upTo(static_cast<int>(all.size())));
                const double coefficient = dice.between(-2, 2);
                contrasts[row].push_back({refs[which], coefficient});
                weights.at(row, which) += coefficient;
            }
        }
        const dense::Matrix known = dense::product(dense::product(weights, answer.errorCovariance),
                                                   dense::transposed(weights));
        const auto found = fit->contrastCovariances(contrasts);
        ASSERT_TRUE(found.ok());
        for (std::size_t cell = 0; cell < 4; ++cell) {
            EXPECT_NEAR((*found)[cell], known.cells[cell], 1e-7);
        }
        const auto first = fit->contrast(contrasts[0]);
        ASSERT_TRUE(first.ok());
        double value = 0;
        for (std::size_t i = 0; i < all.size(); ++i) {
            value += weights.at(0, i) * all[i];
        }
        EXPECT_NEAR(first->value, value, 1e-7);
        EXPECT_NEAR(first->standardError, std::sqrt(known.at(0, 0)), 1e-7);
    }
}

VarianceValues valuesOf(const MixedFit& fit) {
    VarianceValues values;
    for (const VarianceComponent& component : fit.varianceComponents()) {
        values.push_back(component.value);
    }
    return values;
}

/// Neighbours of the variances that are allowed: single ones to either side; a covariance S of an
/// intercept and a slope as M S M' with M near the identity, and with a little of any axis added.
std::vector<VarianceValues> neighboursOf(const MixedModel& model, const VarianceValues& values) {
    constexpr double kNear = 3e-3;
    std::vector<VarianceValues> neighbours;
    const double small = 1e-3 * values.back();
    std::size_t first = 0;
    const auto moved = [&](std::array<double, 3> block) {
        neighbours.push_back(values);
        std::copy(block.begin(), block.end(),
                  neighbours.back().begin() + static_cast<std::ptrdiff_t>(first));
    };
    for (std::size_t term = 0; first < values.size(); ++term) {
        if (term >= model.random.size() || model.random[term].effectsPerLevel() == 1) {
            for (const double change :
                 {-kNear * values[first], kNear * values[first], values[first] == 0 ? small : 0}) {
                neighbours.push_back(values);
                neighbours.back()[first] += change;
            }
            ++first;
            continue;
        }
        const double a = values[first];
        const double b = values[first + 1];
        const double c = values[first + 2];
        for (const double e : {-kNear, kNear}) {
            moved({a * (1 + e) * (1 + e), b * (1 + e), c});
            moved({a, b * (1 + e), c * (1 + e) * (1 + e)});
            moved({a + 2 * e * b + e * e * c, b + e * c, c});
            moved({a, b + e * a, c + 2 * e * b + e * e * a});
        }
        moved({a + small, b, c});
        moved({a, b, c + small});
        moved({a + small, b + small, c + small});
        moved({a + small, b - small, c + small});
        first += 3;
    }
    return neighbours;
}

/// The dense criterion must not fall to any side of the fit.
void expectLowest(const MixedModel& model, const MixedFit& fit, LikelihoodKind kind) {
    const VarianceValues values = valuesOf(fit);
    const double lowest = dense::solve(model, values, kind).criterion;
    EXPECT_NEAR(fit.criterion(), lowest, 1e-6);
    for (const VarianceValues& neighbour : neighboursOf(model, values)) {
        const double rise = dense::solve(model, neighbour, kind).criterion - lowest;
        EXPECT_GT(rise, -1e-7) << "from " << testing::PrintToString(values) << " to "
                               << testing::PrintToString(neighbour);
    }
}

TEST(MixedModelProperty, AnimalModelsOnRandomPedigreesWithSelfing) {
    for (std::uint64_t seed = kFirstSeed + 1000; seed < kFirstSeed + 1012; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Dice dice(seed);
        const MixedModel model = randomAnimalModel(dice, 20 + dice.upTo(8));
        const LikelihoodKind kind =
            seed % 2 == 0 ? LikelihoodKind::restricted : LikelihoodKind::full;
        const auto fit = fitMixedModel(model, {.likelihood = kind});
        ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
        EXPECT_TRUE(fit->converged());
        expectLowest(model, *fit, kind);
        expectEffects(*fit, dense::solve(model, valuesOf(*fit), kind));
    }
}

TEST(MixedModelProperty, FitsAreLowestPoints) {
    int boundary = 0;
    for (std::uint64_t seed = kFirstSeed + 2000; seed < kFirstSeed + 2040; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Dice dice(seed);
        MixedModel model = randomModel(dice);
        const auto fit = fitMixedModel(model);
        if (!fit.ok()) {
            // A random design may leave a variance undetermined; it must say so in words.
            EXPECT_EQ(fit.problem().code, ProblemCode::badInput) << fit.problem().sentence();
            continue;
        }
        EXPECT_TRUE(fit->converged());
        for (const VarianceComponent& component : fit->varianceComponents()) {
            boundary += component.atBoundary ? 1 : 0;
        }
        expectLowest(model, *fit, LikelihoodKind::restricted);
    }
    EXPECT_GT(boundary, 5); // the responses are noise, so many variances are 0
}

// Noise alone leaves covariances singular and whole groups without residual; by steps of average
// information these found no end.
TEST(MixedModelProperty, SearchesAmongNoiseEnd) {
    std::vector<std::uint64_t> seeds{30306, 30309, 30345, 30559, 30818, 30825, 30873, 30915};
    for (std::uint64_t seed = 30000; seed < 30060; ++seed) {
        seeds.push_back(seed);
    }
    for (const std::uint64_t seed : seeds) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        for (const LikelihoodKind kind : {LikelihoodKind::restricted, LikelihoodKind::full}) {
            Dice dice(seed);
            const auto fit = fitMixedModel(randomModel(dice), {.likelihood = kind});
            ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
            EXPECT_TRUE(fit->converged());
        }
    }
}

/// The same model with its records in another order.
template <typename T>
void reorder(std::vector<T>& numbers, const std::vector<std::size_t>& order) {
    if (numbers.empty()) {
        return;
    }
    std::vector<T> moved;
    moved.reserve(order.size());
    for (const std::size_t from : order) {
        moved.push_back(numbers[from]);
    }
    numbers = std::move(moved);
}

MixedModel shuffled(MixedModel model, Dice& dice) {
    std::vector<std::size_t> order(model.response.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::shuffle(order.begin(), order.end(), dice.engine());
    reorder(model.response, order);
    reorder(model.weights, order);
    reorder(model.residual.groups.ofRecord, order);
    for (FixedTerm& term : model.fixed) {
        reorder(term.levels.ofRecord, order);
        reorder(term.covariate, order);
    }
    for (RandomTerm& term : model.random) {
        reorder(term.levels.ofRecord, order);
        for (auto& covariate : term.covariates) {
            reorder(covariate, order);
        }
    }
    return model;
}

std::vector<std::int32_t> recode(RandomTerm& term, Dice& dice) {
    std::vector<std::int32_t> newCode(static_cast<std::size_t>(term.levels.count));
    std::iota(newCode.begin(), newCode.end(), 0);
    std::shuffle(newCode.begin(), newCode.end(), dice.engine());
    for (std::int32_t& code : term.levels.ofRecord) {
        code = newCode[static_cast<std::size_t>(code)];
    }
    if (term.precision) {
        std::vector<SymmetricEntry> entries;
        for (std::int32_t row = 0; row < term.levels.count; ++row) {
            for (std::int32_t column = 0; column <= row; ++column) {
                const double value = term.precision->matrix.at(row, column);
                if (value != 0) {
                    entries.push_back({newCode[static_cast<std::size_t>(row)],
                                       newCode[static_cast<std::size_t>(column)], value});
                }
            }
        }
        // Without the determinant and the diagonal: they must be found by factorisation.
        term.precision = LevelPrecision{
            SparseSymmetric::fromEntries(term.levels.count, entries).value(), {}, {}};
    }
    return newCode;
}

TEST(MixedModelProperty, OrderOfRecordsAndCodesOfLevelsDoNotMatter) {
    for (std::uint64_t seed = kFirstSeed + 3000; seed < kFirstSeed + 3010; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Dice dice(seed);
        const MixedModel model = randomAnimalModel(dice, 25);
        MixedModel other = shuffled(model, dice);
        std::vector<std::vector<std::int32_t>> codes;
        for (RandomTerm& term : other.random) {
            codes.push_back(recode(term, dice));
        }
        const auto one = fitMixedModel(model);
        const auto two = fitMixedModel(other);
        ASSERT_TRUE(one.ok() && two.ok());
        EXPECT_NEAR(one->criterion(), two->criterion(), 1e-7);
        for (std::size_t term = 0; term < codes.size(); ++term) {
            const RandomEffects& here = one->randomEffects()[term];
            const RandomEffects& there = two->randomEffects()[term];
            for (std::int32_t level = 0; level < here.levelCount(); ++level) {
                const std::int32_t moved = codes[term][static_cast<std::size_t>(level)];
                EXPECT_NEAR(here.prediction(level), there.prediction(moved), 1e-5);
                EXPECT_NEAR(here.standardError(level), there.standardError(moved), 1e-5);
                EXPECT_NEAR(here.reliability(level), there.reliability(moved), 1e-5);
            }
        }
    }
}

TEST(MixedModelProperty, TheSameModelTwiceGivesTheSameBits) {
    Dice dice(kFirstSeed);
    const MixedModel model = randomAnimalModel(dice, 30);
    const auto one = fitMixedModel(model);
    const auto two = fitMixedModel(model);
    ASSERT_TRUE(one.ok() && two.ok());
    EXPECT_EQ(one->criterion(), two->criterion());
    EXPECT_EQ(valuesOf(*one), valuesOf(*two));
    EXPECT_EQ(one->randomEffects()[0].predictions, two->randomEffects()[0].predictions);
    EXPECT_EQ(one->randomEffects()[0].errorCovariance, two->randomEffects()[0].errorCovariance);
}

TEST(MixedModelProperty, UnitAndZeroOfTheResponse) {
    for (std::uint64_t seed = kFirstSeed + 4000; seed < kFirstSeed + 4008; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Dice dice(seed);
        const MixedModel model = randomAnimalModel(dice, 20);
        const double unit = std::pow(10.0, dice.upTo(13) - 6);
        const double zero = 1000 * unit * dice.between(-1, 1);
        MixedModel other = model;
        for (double& value : other.response) {
            value = zero + unit * value;
        }
        const auto one = fitMixedModel(model);
        const auto two = fitMixedModel(other);
        ASSERT_TRUE(one.ok() && two.ok()) << two.problem().sentence();
        for (std::size_t i = 0; i < valuesOf(*one).size(); ++i) {
            const double known = valuesOf(*one)[i];
            EXPECT_NEAR(valuesOf(*two)[i] / (unit * unit), known, 1e-4 * known + 1e-6);
        }
        for (std::int32_t level = 0; level < 20; ++level) {
            EXPECT_NEAR(two->randomEffects()[0].prediction(level) / unit,
                        one->randomEffects()[0].prediction(level), 1e-4);
            EXPECT_NEAR(two->randomEffects()[0].reliability(level),
                        one->randomEffects()[0].reliability(level), 1e-4);
        }
        EXPECT_NEAR(two->fixedEffects()[0].estimate, zero + unit * one->fixedEffects()[0].estimate,
                    1e-4 * unit);
        const auto free = static_cast<double>(one->residualDegreesOfFreedom());
        EXPECT_NEAR(two->criterion(), one->criterion() + 2 * free * std::log(unit), 1e-5);
    }
}

TEST(MixedModelProperty, AWeightCountsAsSoManyRecords) {
    Dice dice(kFirstSeed + 5000);
    MixedModel weighted = randomAnimalModel(dice, 20);
    MixedModel repeated = weighted;
    // Two records of half the weight with the same response are one of weight 1, in what the
    // effects are concerned.
    const std::size_t records = weighted.response.size();
    repeated.weights.assign(2 * records, .5);
    for (std::size_t record = 0; record < records; ++record) {
        repeated.response.push_back(repeated.response[record]);
    }
    const auto twice = [records](std::vector<std::int32_t>& codes) {
        codes.reserve(2 * records);
        std::copy_n(codes.begin(), records, std::back_inserter(codes));
    };
    twice(repeated.fixed[0].levels.ofRecord);
    twice(repeated.random[0].levels.ofRecord);
    twice(repeated.random[1].levels.ofRecord);
    const VarianceValues values{1, .5, 2};
    const auto one = MixedModelEquations::of(weighted).value().withVariances(values);
    const auto two = MixedModelEquations::of(repeated).value().withVariances(values);
    ASSERT_TRUE(one.ok() && two.ok());
    for (std::int32_t level = 0; level < 20; ++level) {
        EXPECT_NEAR(one->randomEffects()[0].prediction(level),
                    two->randomEffects()[0].prediction(level), 1e-9);
        EXPECT_NEAR(one->randomEffects()[0].errorVariance(level),
                    two->randomEffects()[0].errorVariance(level), 1e-9);
    }
}

} // namespace
} // namespace pipwright
