#include "core/statistics/censored_mixed_model.h"
#include "core/units/no_number.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <stop_token>
#include <string>
#include <vector>

// Without a random term against survreg of R's survival 3.5-3; with one against the same Laplace
// approximation written down densely in R 4.2.2. Days of keeping are invented.

namespace pipwright {
namespace {

const FitControl kFull{.likelihood = LikelihoodKind::full};

using Responses = std::vector<ResponseInterval>;

/// Twelve trees looked at every week or so.
Responses keeping() {
    return {{7, 10},  {10, 14}, {14, 21}, {14, 21},        {21, 28},        {21, 28},
            {28, 35}, {28, 35}, {35, 42}, {21, kInfinity}, {42, kInfinity}, {42, kInfinity}};
}

/// Two groups of eight fruits each, exact days or still sound on the last one.
Responses twoGroups() {
    const std::array<double, 16> days{12, 15, 18, 21, 21, 25, 30, 30,
                                      20, 26, 31, 35, 40, 42, 42, 42};
    Responses responses;
    for (std::size_t fruit = 0; fruit < days.size(); ++fruit) {
        const bool sound = fruit == 7 || fruit >= 13;
        responses.push_back({days[fruit], sound ? kInfinity : days[fruit]});
    }
    return responses;
}

Responses logarithms(Responses responses) {
    for (ResponseInterval& response : responses) {
        response = {std::log(response.low), std::log(response.high)};
    }
    return responses;
}

FixedTerm group(std::vector<std::int32_t> codes) {
    return FixedTerm::factor("group", {std::move(codes), 2});
}

/// Eight trees of five fruits, two treatments; some fruits were watched, most looked at weekly.
struct Orchard {
    MixedModel model{};
    Responses responses{};
};

Orchard eightTrees() {
    constexpr std::array<double, 40> kLow{
        14, 21, 23.1, 14,   7,  28, 21, 28, 21, 24.4, 14,   14, 14, 21, 21, 28, 26.5, 21, 28, 28,
        28, 28, 28,   42.8, 35, 28, 21, 28, 7,  7,    10.4, 21, 21, 14, 14, 28, 14,   26, 7,  14};
    constexpr std::array<double, 40> kHigh{21,   28, 23.1, 21,   14,        35, 28,   35, 28, 24.4,
                                           21,   21, 21,   28,   28,        35, 26.5, 28, 35, 35,
                                           35,   35, 35,   42.8, kInfinity, 35, 28,   35, 14, 14,
                                           10.4, 28, 28,   21,   21,        35, 21,   26, 14, 21};
    Orchard orchard;
    RandomTerm tree;
    tree.name = "tree";
    tree.levels.count = 8;
    std::vector<std::int32_t> treated;
    for (std::size_t fruit = 0; fruit < 40; ++fruit) {
        tree.levels.ofRecord.push_back(static_cast<std::int32_t>(fruit / 5));
        treated.push_back(static_cast<std::int32_t>(fruit % 2));
        orchard.responses.push_back({kLow[fruit], kHigh[fruit]});
    }
    orchard.model.fixed = {group(treated)};
    orchard.model.random = {tree};
    return orchard;
}

// survreg, lognormal: mean 3.250075, scale .587615, log-likelihood -21.789747.
TEST(CensoredMixedModel, WithoutRandomTermsItIsSurvivalRegression) {
    const auto fit = fitCensoredMixedModel(MixedModel{}, logarithms(keeping()), kFull);
    ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
    EXPECT_TRUE(fit->converged());
    EXPECT_EQ(fit->likelihood(), LikelihoodKind::full);
    EXPECT_EQ(fit->recordsUsed(), 12);
    EXPECT_NEAR(fit->criterion(), 2 * 21.789747, 2e-6);
    EXPECT_NEAR(fit->fixedEffects()[0].estimate, 3.25007498291, 1e-5);
    EXPECT_NEAR(std::sqrt(fit->residualVariance()), .587615, 1e-5);
}

TEST(CensoredMixedModel, TwoGroups) {
    MixedModel model;
    model.fixed = {group({0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1})};
    const auto days = fitCensoredMixedModel(model, twoGroups(), kFull);
    ASSERT_TRUE(days.ok()) << days.problem().sentence();
    EXPECT_NEAR(days->criterion(), 94.2085874, 1e-5);
    EXPECT_NEAR(days->fixedEffects()[0].estimate, 22.1134195, 1e-3);
    EXPECT_NEAR(days->fixedEffects()[1].estimate, 14.7150394, 1e-3);
    EXPECT_NEAR(days->residualVariance(), 79.8135956, 1e-4 * 80);
    const auto logs = fitCensoredMixedModel(model, logarithms(twoGroups()), kFull);
    ASSERT_TRUE(logs.ok());
    EXPECT_NEAR(logs->criterion(), 16.1479141, 1e-5);
    EXPECT_NEAR(logs->fixedEffects()[0].estimate, 3.04719204, 1e-4);
    EXPECT_NEAR(logs->fixedEffects()[1].estimate, .560115497, 1e-4);
    EXPECT_NEAR(logs->residualVariance(), .123362758, 1e-4 * .12);
}

TEST(CensoredMixedModel, TreesByFullLikelihood) {
    const Orchard orchard = eightTrees();
    const auto fit = fitCensoredMixedModel(orchard.model, orchard.responses, kFull);
    ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
    EXPECT_TRUE(fit->converged());
    EXPECT_NEAR(fit->criterion(), 133.591643, 1e-5);
    EXPECT_NEAR(fit->variance(0), 24.4508417, 1e-3 * 24);
    EXPECT_NEAR(fit->residualVariance(), 30.4254929, 1e-3 * 30);
    EXPECT_NEAR(fit->fixedEffects()[0].estimate, 21.7846, 2e-3);
    EXPECT_NEAR(fit->fixedEffects()[1].estimate, 4.39977858, 2e-3);
    EXPECT_NEAR(fit->fixedEffects()[0].standardError, 2.18871654, 2e-3);
    const std::array<double, 8> effects{-3.72694074, 2.134315,    -2.52637603, 3.66337906,
                                        9.32555893,  -2.15341163, -3.79871324, -2.91781135};
    const std::array<double, 8> errors{2.77681897, 2.77873136, 2.79225681, 2.77482715,
                                       2.79027353, 2.78212975, 2.77726553, 2.77364797};
    for (std::int32_t tree = 0; tree < 8; ++tree) {
        const auto at = static_cast<std::size_t>(tree);
        EXPECT_NEAR(fit->randomEffects()[0].prediction(tree), effects[at], 3e-3);
        EXPECT_NEAR(fit->randomEffects()[0].standardError(tree), errors[at], 3e-3);
    }
    // What is known of the variances: about half as much as of so many exact days.
    const auto& tree = fit->varianceComponents()[0];
    EXPECT_GT(tree.standardError.value_or(0), 8);
    EXPECT_LT(tree.standardError.value_or(0), 30);
    EXPECT_FALSE(tree.held || tree.atBoundary);
    EXPECT_EQ(fit->estimatedVarianceCount(), 2);
}

TEST(CensoredMixedModel, TreesByRestrictedLikelihood) {
    const Orchard orchard = eightTrees();
    const auto fit = fitCensoredMixedModel(orchard.model, orchard.responses);
    ASSERT_TRUE(fit.ok()) << fit.problem().sentence();
    EXPECT_EQ(fit->likelihood(), LikelihoodKind::restricted);
    EXPECT_NEAR(fit->criterion(), 127.213669, 1e-5);
    EXPECT_NEAR(fit->variance(0), 28.7865492, 1e-3 * 28);
    EXPECT_NEAR(fit->residualVariance(), 31.554689, 1e-3 * 31);
    EXPECT_NEAR(fit->randomEffects()[0].prediction(4), 9.58673997, 3e-3);
}

TEST(CensoredMixedModel, ExactResponsesAreAnOrdinaryFit) {
    Orchard orchard = eightTrees();
    for (std::size_t fruit = 0; fruit < 40; ++fruit) {
        const double day = orchard.responses[fruit].low + .1 * static_cast<double>(fruit % 7);
        orchard.responses[fruit] = {day, day};
        orchard.model.response.push_back(day);
    }
    const auto plain = fitMixedModel(orchard.model);
    const auto fit = fitCensoredMixedModel(orchard.model, orchard.responses);
    ASSERT_TRUE(plain.ok() && fit.ok());
    EXPECT_EQ(fit->criterion(), plain->criterion());
    // Narrow intervals come close to it; their probability is a density times a width.
    for (ResponseInterval& response : orchard.responses) {
        response = {response.low - 5e-4, response.high + 5e-4};
    }
    const auto narrow = fitCensoredMixedModel(orchard.model, orchard.responses);
    ASSERT_TRUE(narrow.ok()) << narrow.problem().sentence();
    EXPECT_NEAR(narrow->criterion(), plain->criterion() - 2 * 40 * std::log(1e-3), 1e-4);
    EXPECT_NEAR(narrow->variance(0), plain->variance(0), 1e-3 * plain->variance(0));
}

TEST(CensoredMixedModel, UnitAndZeroDoNotMatter) {
    Orchard orchard = eightTrees();
    const auto days = fitCensoredMixedModel(orchard.model, orchard.responses).value();
    for (ResponseInterval& response : orchard.responses) {
        response = {1000 + 24 * response.low, 1000 + 24 * response.high};
    }
    const auto hours = fitCensoredMixedModel(orchard.model, orchard.responses).value();
    EXPECT_NEAR(hours.variance(0) / (24 * 24), days.variance(0), 1e-3 * days.variance(0));
    EXPECT_NEAR((hours.fixedEffects()[0].estimate - 1000) / 24, days.fixedEffects()[0].estimate,
                1e-2);
}

TEST(CensoredMixedModel, HeldVariancesPriorsAndZero) {
    Orchard orchard = eightTrees();
    orchard.model.random[0].variance = VarianceChoice::held(20);
    orchard.model.residual.variance = {VarianceChoice::held(30)};
    const auto held = fitCensoredMixedModel(orchard.model, orchard.responses).value();
    EXPECT_EQ(held.variance(0), 20);
    EXPECT_EQ(held.residualVariance(), 30);
    EXPECT_TRUE(held.varianceComponents()[0].held);
    EXPECT_EQ(held.estimatedVarianceCount(), 0);
    EXPECT_GT(held.criterion(), 127.213669);
    orchard.model.residual.variance.clear();
    orchard.model.random[0].variance = VarianceChoice::inverseChiSquare(5, 1000);
    const auto sure = fitCensoredMixedModel(orchard.model, orchard.responses).value();
    EXPECT_NEAR(sure.variance(0), 5, .1);
    EXPECT_NEAR(sure.penalty(), 1000 * (std::log(sure.variance(0)) + 5 / sure.variance(0)), 1e-6);
    // Trees of which each has the same mixture do not differ.
    orchard.model.random[0].variance = {};
    for (std::size_t fruit = 0; fruit < 40; ++fruit) {
        const double begin = 7 * static_cast<double>(1 + fruit % 5);
        orchard.responses[fruit] = {begin, fruit % 5 == 4 ? kInfinity : begin + 7};
    }
    orchard.model.fixed.clear();
    const auto same = fitCensoredMixedModel(orchard.model, orchard.responses).value();
    EXPECT_EQ(same.variance(0), 0);
    EXPECT_TRUE(same.varianceComponents()[0].atBoundary);
    EXPECT_EQ(same.randomEffects()[0].prediction(3), 0);
}

TEST(CensoredMixedModel, MissingResponsesAreLeftOut) {
    Orchard orchard = eightTrees();
    orchard.responses[3].low = kNaN;
    orchard.responses[8] = {kNaN, kNaN};
    const auto fit = fitCensoredMixedModel(orchard.model, orchard.responses).value();
    EXPECT_EQ(fit.recordsUsed(), 38);
    EXPECT_EQ(fit.recordsLeftOut(), 2);
    // An interval without ends is used and says nothing.
    orchard.responses[3] = {-kInfinity, kInfinity};
    const auto nothing = fitCensoredMixedModel(orchard.model, orchard.responses).value();
    EXPECT_NEAR(nothing.criterion(), fit.criterion(), 1e-5);
    EXPECT_NEAR(nothing.variance(0), fit.variance(0), 1e-3 * fit.variance(0));
}

TEST(CensoredMixedModel, RefusesWhatHasNoAnswer) {
    const auto expectRefused = [](const std::string& what, const MixedModel& model,
                                  const Responses& responses) {
        SCOPED_TRACE(what);
        const auto fit = fitCensoredMixedModel(model, responses, kFull);
        ASSERT_FALSE(fit.ok());
        EXPECT_EQ(fit.problem().code, ProblemCode::badInput) << fit.problem().sentence();
        EXPECT_FALSE(fit.problem().remedy.empty());
    };
    const MixedModel plain;
    expectRefused("nothing", plain, {});
    expectRefused("all missing", plain, {{kNaN, 3}, {2, kNaN}});
    expectRefused("ends exchanged", plain, {{1, 2}, {3, 2}, {4, 5}});
    expectRefused("infinite day", plain, {{1, 2}, {kInfinity, kInfinity}, {4, 5}});
    expectRefused("nothing gone yet", plain, Responses(5, {14, kInfinity}));
    expectRefused("all gone at once", plain, Responses(5, {-kInfinity, 7}));
    expectRefused("no ends", plain, Responses(5));
    expectRefused("one interval", plain, {{7, 14}});
    expectRefused("one and the same interval", plain, Responses(5, {7, 14}));
    expectRefused("too wide to tell", plain, {{0, 20}, {1, 21}, {2, 22}, {3, 23}});
    MixedModel split;
    split.fixed = {group({0, 0, 0, 1, 1, 1})};
    expectRefused("a group still sound", split,
                  {{7, 14}, {14, 21}, {7, 21}, {21, kInfinity}, {14, kInfinity}, {21, kInfinity}});
    MixedModel groups;
    groups.residual.groups = {{0, 1, 0, 1}, 2};
    expectRefused("two residuals", groups, {{7, 14}, {14, 21}, {7, 21}, {21, kInfinity}});
    MixedModel shorter;
    shorter.fixed = {group({0, 1})};
    expectRefused("too few codes", shorter, {{7, 14}, {14, 21}, {7, 21}, {21, kInfinity}});
}

TEST(CensoredMixedModel, TellsHowItGoesAndCanBeStopped) {
    const Orchard orchard = eightTrees();
    FitControl control;
    int calls = 0;
    control.progress = [&](const FitProgress& progress) { EXPECT_EQ(progress.iteration, ++calls); };
    const auto fit = fitCensoredMixedModel(orchard.model, orchard.responses, control);
    ASSERT_TRUE(fit.ok());
    EXPECT_EQ(fit->iterations(), calls);
    std::stop_source source;
    control.stop = source.get_token();
    control.progress = [&](const FitProgress&) { source.request_stop(); };
    const auto stopped = fitCensoredMixedModel(orchard.model, orchard.responses, control);
    ASSERT_FALSE(stopped.ok());
    EXPECT_EQ(stopped.problem().code, ProblemCode::cancelled);
}

} // namespace
} // namespace pipwright
