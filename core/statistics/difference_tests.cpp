#include "core/statistics/difference_tests.h"

#include "core/statistics/distributions.h"
#include "core/statistics/refusal.h"

#include <algorithm>

namespace pipwright {

namespace {

/// Keeps a tail that equals the level on the near side of rounding.
constexpr double kLevelRounding = 1e-12;

std::optional<Problem> faultOf(int answers, double level) {
    if (answers < 1 || answers > 10'000'000) {
        return unusable("A test needs at least one answer, and at most 10 million.",
                        "Give the number of answers.");
    }
    if (!(level > 0 && level < 1)) {
        return unusable("A level must lie between 0 and 1.", "Give one that does, such as 0.05.");
    }
    return std::nullopt;
}

BinomialDistribution counts(int answers, double chance) {
    return {static_cast<double>(answers), chance};
}

} // namespace

double guessingChance(ForcedChoice design) {
    return design == ForcedChoice::triangle ? 1. / 3 : .5;
}

Result<std::optional<int>> leastForDifference(ForcedChoice design, int answers, double level,
                                              Sides sides) {
    if (auto fault = faultOf(answers, level)) {
        return *fault;
    }
    if (sides == Sides::two && design == ForcedChoice::triangle) {
        return unusable("A triangle test has one side: more right answers than guessing gives.",
                        "Ask for one side.");
    }
    const double tail = (sides == Sides::two ? level / 2 : level) * (1 + kLevelRounding);
    const auto guesses = counts(answers, guessingChance(design));
    // The smallest k with P(X > k) <= tail, plus one.
    int low = -1;
    int high = answers;
    while (high - low > 1) {
        const int middle = low + (high - low) / 2;
        const auto above = probabilityAbove(guesses, middle);
        if (!above) {
            return above.problem();
        }
        (*above <= tail ? high : low) = middle;
    }
    return high + 1 <= answers ? std::optional(high + 1) : std::optional<int>();
}

Result<std::optional<int>> mostForSimilarity(ForcedChoice design, int answers,
                                             double distinguishers, double level) {
    if (auto fault = faultOf(answers, level)) {
        return *fault;
    }
    if (!(distinguishers > 0 && distinguishers < 1)) {
        return unusable("The share of tasters who can tell must lie between 0 and 1.",
                        "Give the largest share you could live with, such as 0.3.");
    }
    const double guess = guessingChance(design);
    const auto able = counts(answers, distinguishers + (1 - distinguishers) * guess);
    int low = -1;
    int high = answers;
    while (high - low > 1) {
        const int middle = low + (high - low) / 2;
        const auto below = probabilityAtMost(able, middle);
        if (!below) {
            return below.problem();
        }
        (*below <= level * (1 + kLevelRounding) ? low : high) = middle;
    }
    return low >= 0 ? std::optional(low) : std::optional<int>();
}

Result<DifferenceResult> differenceTest(ForcedChoice design, int right, int answers, Sides sides) {
    if (auto fault = faultOf(answers, .05)) {
        return *fault;
    }
    if (right < 0 || right > answers) {
        return unusable("There cannot be more right answers than answers, or fewer than none.",
                        "Check the counts.");
    }
    if (sides == Sides::two && design == ForcedChoice::triangle) {
        return unusable("A triangle test has one side: more right answers than guessing gives.",
                        "Ask for one side.");
    }
    const double guess = guessingChance(design);
    const auto guesses = counts(answers, guess);
    const auto above = probabilityAbove(guesses, right - 1);
    const auto below = probabilityAtMost(guesses, right);
    const double a = right;
    const double b = answers - right;
    const auto low = right == 0 ? Result<double>(0.0) : quantile(BetaDistribution{a, b + 1}, .025);
    const auto high =
        right == answers ? Result<double>(1.0) : quantile(BetaDistribution{a + 1, b}, .975);
    for (const auto* found : {&above, &below, &low, &high}) {
        if (!*found) {
            return found->problem();
        }
    }
    const auto able = [guess](double p) { return std::max(0.0, (p - guess) / (1 - guess)); };
    DifferenceResult result;
    result.pValue = sides == Sides::one ? *above : std::min(1.0, 2 * std::min(*above, *below));
    result.distinguishers = able(a / answers);
    result.low = able(*low);
    result.high = able(*high);
    return result;
}

} // namespace pipwright
