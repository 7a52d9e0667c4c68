#include "core/statistics/selection.h"

#include "core/statistics/distributions.h"
#include "core/statistics/order_statistics.h"
#include "core/statistics/refusal.h"

#include <cmath>
#include <string>

namespace pipwright {

namespace {

bool isShare(double value) {
    return value >= 0 && value <= 1;
}

bool isSpread(double value) {
    return std::isfinite(value) && value >= 0;
}

Problem noShare(const char* of) {
    return unusable(std::string(of) + " must lie between 0 and 1.", "Give one that does.");
}

Problem noSpread(const char* of) {
    return unusable(std::string(of) + " must be a number of 0 or more.", "Give one that is.");
}

Problem noNumber(const char* of) {
    return unusable(std::string(of) + " must be a finite number.", "Give one.");
}

bool isSound(const SeedlingOutlook& cross) {
    return std::isfinite(cross.mean) && isSpread(cross.geneticDeviation);
}

Problem unsoundCross() {
    return unusable("A cross needs a finite mean and a spread of 0 or more.", "Give both.");
}

} // namespace

Result<TruncationSelection> truncationSelection(double shareKept) {
    if (!(shareKept > 0 && shareKept <= 1)) {
        return unusable("The share kept must be above 0 and at most 1.", "Give one that is.");
    }
    if (shareKept == 1) {
        return TruncationSelection{-HUGE_VAL, 0, 0};
    }
    TruncationSelection selection;
    selection.threshold = standardNormalUpperQuantile(shareKept);
    selection.intensity = standardNormalDensity(selection.threshold) / shareKept;
    selection.varianceReduction = selection.intensity * (selection.intensity - selection.threshold);
    return selection;
}

Result<double> finiteIntensity(std::int64_t kept, std::int64_t candidates) {
    return expectedMeanOfBest(kept, candidates);
}

Result<double> burrowsIntensity(std::int64_t kept, std::int64_t candidates) {
    if (kept < 1 || kept > candidates) {
        return unusable("So many cannot be kept of so few.", "Keep 1 to all of the candidates.");
    }
    const auto s = static_cast<double>(kept);
    const auto n = static_cast<double>(candidates);
    const auto infinite = truncationSelection(s / n);
    if (!infinite) {
        return infinite.problem();
    }
    const double i = infinite->intensity;
    return kept == candidates ? 0 : i - (n - s) / (2 * s * (n + 1) * i);
}

Result<double> responseOfPhenotypes(double intensity, double heritability,
                                    double phenotypicDeviation) {
    if (!isShare(heritability)) {
        return noShare("A heritability");
    }
    return responseOfAccuracy(intensity, heritability, phenotypicDeviation);
}

Result<double> responseOfAccuracy(double intensity, double accuracy, double geneticDeviation) {
    if (!std::isfinite(intensity)) {
        return noNumber("A selection intensity");
    }
    if (!isShare(accuracy)) {
        return noShare("An accuracy");
    }
    if (!isSpread(geneticDeviation)) {
        return noSpread("A standard deviation");
    }
    return intensity * accuracy * geneticDeviation;
}

Result<double> reliabilityOfOwnRecords(double heritability, double repeatability, int records) {
    if (!isShare(heritability) || !isShare(repeatability)) {
        return noShare("Heritability and repeatability");
    }
    if (repeatability < heritability) {
        return unusable("A repeatability cannot be below the heritability.",
                        "Repeated records share the genes and more; give a larger one.");
    }
    if (records < 0) {
        return unusable("The number of records cannot be negative.", "Give 0 or more.");
    }
    return records * heritability / (1 + (records - 1) * repeatability);
}

Result<double> reliabilityOfHalfSibs(double heritability, int progeny) {
    if (!isShare(heritability)) {
        return noShare("A heritability");
    }
    if (progeny < 0) {
        return unusable("The number of progeny cannot be negative.", "Give 0 or more.");
    }
    const double quarter = heritability / 4;
    return progeny * quarter / (1 + (progeny - 1) * quarter);
}

Result<double> cloneMeanHeritability(const CloneVariances& variances, int years,
                                     int recordsPerYear) {
    if (!isSpread(variances.genetic) || !isSpread(variances.geneticByYear) ||
        !isSpread(variances.residual)) {
        return noSpread("Each variance");
    }
    if (years < 1 || recordsPerYear < 1) {
        return unusable("A mean needs at least one record in one year.", "Give 1 or more of each.");
    }
    const double noise = variances.geneticByYear / years +
                         variances.residual / (static_cast<double>(years) * recordsPerYear);
    const double whole = variances.genetic + noise;
    if (whole <= 0) {
        return unusable("Nothing varies, so no share of it can be genetic.",
                        "Give at least one variance above 0.");
    }
    return variances.genetic / whole;
}

Result<double> varianceWithinFamily(double additiveVariance, double motherInbreeding,
                                    double fatherInbreeding) {
    if (!isSpread(additiveVariance)) {
        return noSpread("A variance");
    }
    if (!isShare(motherInbreeding) || !isShare(fatherInbreeding)) {
        return noShare("An inbreeding coefficient");
    }
    return additiveVariance / 2 * (1 - (motherInbreeding + fatherInbreeding) / 2);
}

Result<double> usefulness(const SeedlingOutlook& cross, double intensity, double accuracy) {
    if (!isSound(cross)) {
        return unsoundCross();
    }
    const auto gain = responseOfAccuracy(intensity, accuracy, cross.geneticDeviation);
    return gain ? Result<double>(cross.mean + *gain) : gain.problem();
}

Result<double> expectedBest(const SeedlingOutlook& cross, std::int64_t seedlings, double accuracy) {
    const auto intensity = expectedMaximum(seedlings);
    return intensity ? usefulness(cross, *intensity, accuracy) : intensity.problem();
}

Result<double> chanceOneExceeds(const SeedlingOutlook& cross, double threshold,
                                std::int64_t seedlings) {
    if (!isSound(cross)) {
        return unsoundCross();
    }
    if (std::isnan(threshold)) {
        return noNumber("A threshold");
    }
    if (seedlings < 0) {
        return unusable("The number of seedlings cannot be negative.", "Give 0 or more.");
    }
    if (seedlings == 0) {
        return 0.0;
    }
    if (cross.geneticDeviation == 0) {
        return cross.mean > threshold ? 1.0 : 0.0;
    }
    const double oneExceeds =
        standardNormalAbove((threshold - cross.mean) / cross.geneticDeviation);
    if (oneExceeds >= 1) {
        return 1.0;
    }
    // 1 - (1 - q)^n without losing a tiny q.
    return -std::expm1(static_cast<double>(seedlings) * std::log1p(-oneExceeds));
}

} // namespace pipwright
