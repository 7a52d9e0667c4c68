#include "core/statistics/beta_binomial.h"

#include "core/statistics/refusal.h"
#include "core/statistics/sound_parameters.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace pipwright {

namespace {

std::optional<Problem> faultOf(const BetaDistribution& chance, std::int64_t successes,
                               std::int64_t tries) {
    if (!isSound(chance)) {
        return unusable("A beta distribution needs two numbers above 0.", "Give both.");
    }
    if (successes < 0 || tries < successes || tries > 1'000'000) {
        return unusable("So many successes cannot come out of so many tries.",
                        "Give 0 to all of at most a million tries.");
    }
    return std::nullopt;
}

Problem noChance() {
    return unusable("A chance must lie between 0 and 1.", "Give one that does.");
}

Problem noCopies() {
    return unusable("There must be at least one copy and no negative time.", "Check both.");
}

double logBeta(double a, double b) {
    return std::lgamma(a) + std::lgamma(b) - std::lgamma(a + b);
}

double probability(const BetaDistribution& chance, double successes, double tries) {
    return std::exp(logBinomialCoefficient(tries, successes) +
                    logBeta(chance.a + successes, chance.b + tries - successes) -
                    logBeta(chance.a, chance.b));
}

} // namespace

Result<BetaDistribution> updatedChance(const BetaDistribution& prior, std::int64_t successes,
                                       std::int64_t tries) {
    if (auto fault = faultOf(prior, successes, tries)) {
        return *fault;
    }
    return BetaDistribution{prior.a + static_cast<double>(successes),
                            prior.b + static_cast<double>(tries - successes)};
}

double meanChance(const BetaDistribution& chance) {
    return chance.a / (chance.a + chance.b);
}

Result<BetaDistribution> correlatedChance(double mean, double correlation) {
    if (!(mean > 0 && mean < 1 && correlation > 0 && correlation < 1)) {
        return unusable("Mean and correlation must lie between 0 and 1, ends left out.",
                        "Without a correlation use the independent form.");
    }
    const double size = (1 - correlation) / correlation;
    return BetaDistribution{mean * size, (1 - mean) * size};
}

Result<double> betaBinomialProbability(const BetaDistribution& chance, std::int64_t successes,
                                       std::int64_t tries) {
    if (auto fault = faultOf(chance, successes, tries)) {
        return *fault;
    }
    return probability(chance, static_cast<double>(successes), static_cast<double>(tries));
}

Result<double> betaBinomialAtLeast(const BetaDistribution& chance, std::int64_t successes,
                                   std::int64_t tries) {
    if (auto fault = faultOf(chance, successes, tries)) {
        return *fault;
    }
    double sum = 0;
    for (std::int64_t k = successes; k <= tries; ++k) {
        sum += probability(chance, static_cast<double>(k), static_cast<double>(tries));
    }
    return std::min(sum, 1.0);
}

Result<double> chanceAllLost(double yearlyLoss, int copies, int years) {
    if (!isChance(yearlyLoss)) {
        return noChance();
    }
    if (copies < 1 || years < 0) {
        return noCopies();
    }
    const double oneLost =
        yearlyLoss == 1 ? (years > 0 ? 1 : 0) : -std::expm1(years * std::log1p(-yearlyLoss));
    return std::pow(oneLost, copies);
}

Result<double> chanceAllLostTogether(double ownLoss, double commonLoss, int copies) {
    if (!isChance(ownLoss) || !isChance(commonLoss)) {
        return noChance();
    }
    if (copies < 1) {
        return noCopies();
    }
    return commonLoss + (1 - commonLoss) * std::pow(ownLoss, copies);
}

Result<double> chanceAllLost(const BetaDistribution& loss, int copies) {
    if (!isSound(loss)) {
        return unusable("A beta distribution needs two numbers above 0.", "Give both.");
    }
    if (copies < 1) {
        return noCopies();
    }
    double chance = 1;
    for (int copy = 0; copy < copies && chance > 0; ++copy) {
        chance *= (loss.a + copy) / (loss.a + loss.b + copy);
    }
    return chance;
}

} // namespace pipwright
