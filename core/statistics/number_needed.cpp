#include "core/statistics/number_needed.h"

#include "core/statistics/distributions.h"
#include "core/statistics/refusal.h"

#include <cmath>

namespace pipwright {

namespace {

/// Probabilities this close are taken as equal, so that one half twice reaches three quarters
/// whatever the last digit of the incomplete beta function says.
constexpr double kAssuranceRounding = 1e-12;

} // namespace

Result<double> chanceOfAtLeast(std::int64_t wanted, std::int64_t tries, double chance) {
    if (wanted < 0 || tries < 0) {
        return unusable("A number of tries or successes cannot be negative.", "Give 0 or more.");
    }
    if (!(chance >= 0 && chance <= 1)) {
        return unusable("A chance must lie between 0 and 1.", "Give one that does.");
    }
    if (wanted == 0) {
        return 1.0;
    }
    return probabilityAbove(BinomialDistribution{static_cast<double>(tries), chance},
                            static_cast<double>(wanted) - 1);
}

Result<std::int64_t> numberNeeded(std::int64_t wanted, double chance, double assurance) {
    if (wanted < 0) {
        return unusable("The number wanted cannot be negative.", "Give 0 or more.");
    }
    if (!(chance > 0 && chance <= 1)) {
        return unusable("With this chance no number of tries is enough.",
                        "Give a chance above 0 and at most 1.");
    }
    if (!(assurance > 0 && assurance < 1)) {
        return unusable("Certainty cannot be had, and an assurance of 0 asks for nothing.",
                        "Give an assurance between 0 and 1, such as 0.95.");
    }
    if (wanted == 0 || chance == 1) {
        return wanted;
    }
    // Tries = wanted successes + the failures among them.
    const auto failures =
        quantile(NegativeBinomialDistribution{static_cast<double>(wanted), chance},
                 assurance * (1 - kAssuranceRounding));
    if (!failures) {
        return unusable("More tries would be needed than anybody can make.",
                        "Ask for fewer, or raise the chance of each.");
    }
    return wanted + static_cast<std::int64_t>(std::llround(*failures));
}

} // namespace pipwright
