#pragma once

#include "core/units/result.h"

#include <cstdint>

/// What selection moves, and by how much (Falconer & Mackay 1996, ch. 11; Lynch & Walsh 1998).
/// Units: a response is in the unit of the trait, variances in its square.
namespace pipwright {

/// Keeping the best part of an infinite normal population.
struct TruncationSelection {
    double threshold = 0;         ///< x, standard deviations from the mean
    double intensity = 0;         ///< i = f(x)/p: mean of the kept, in standard deviations
    double varianceReduction = 0; ///< k = i (i - x): share of the variance lost among the kept
};

/// Problem: a share kept not above 0 or above 1.
Result<TruncationSelection> truncationSelection(double shareKept);

/// Intensity when the best `kept` of `candidates` are taken: exact expected order statistics.
Result<double> finiteIntensity(std::int64_t kept, std::int64_t candidates);

/// Burrows' (1972, Biometrics 28:1091-1100) short form of it,
/// i - (n - s)/(2 s (n + 1) i) with the intensity i of an infinite population.
Result<double> burrowsIntensity(std::int64_t kept, std::int64_t candidates);

/// Breeder's equation R = i h^2 sigma_P (Lush 1937). Heritability 0 to 1.
Result<double> responseOfPhenotypes(double intensity, double heritability,
                                    double phenotypicDeviation);

/// The same through the accuracy of selection: R = i r sigma_A. Accuracy 0 to 1.
Result<double> responseOfAccuracy(double intensity, double accuracy, double geneticDeviation);

/// Reliability of the mean of `records` own records, n h^2/(1 + (n - 1) t), with repeatability t
/// at least h^2 (Falconer & Mackay 1996, ch. 8). The accuracy is its square root.
Result<double> reliabilityOfOwnRecords(double heritability, double repeatability, int records);

/// Reliability from the mean of `progeny` half-sib offspring, (n h^2/4)/(1 + (n - 1) h^2/4).
Result<double> reliabilityOfHalfSibs(double heritability, int progeny);

/// Variances behind the mean of a clone over years and records within years.
struct CloneVariances {
    double genetic = 0;
    double geneticByYear = 0;
    double residual = 0;
};

/// Heritability of a clone's mean over `years` with `recordsPerYear`.
/// Problem: negative variances, all of them 0, no year or record.
Result<double> cloneMeanHeritability(const CloneVariances& variances, int years,
                                     int recordsPerYear);

/// Additive variance within a full-sib family, half of sigma_A^2 (1 - (F_mother + F_father)/2)
/// (Bulmer 1985). Inbreeding coefficients 0 to 1.
Result<double> varianceWithinFamily(double additiveVariance, double motherInbreeding,
                                    double fatherInbreeding);

/// A cross as its seedlings will be, before any is grown.
struct SeedlingOutlook {
    double mean = 0;             ///< mid-parent or better knowledge, unit of the trait
    double geneticDeviation = 0; ///< standard deviation of the true values of its seedlings
};

/// Usefulness U = mean + i h sigma_g, the mean of the kept part (Schnell & Utz 1975); `accuracy` is
/// the h in it.
Result<double> usefulness(const SeedlingOutlook& cross, double intensity, double accuracy);

/// True value to expect of the seedling that looks best among `seedlings`:
/// mean + E[max] r sigma_g.
Result<double> expectedBest(const SeedlingOutlook& cross, std::int64_t seedlings, double accuracy);

/// Chance that at least one of `seedlings` truly exceeds `threshold`: 1 - F((T-m)/s)^n.
Result<double> chanceOneExceeds(const SeedlingOutlook& cross, double threshold,
                                std::int64_t seedlings);

} // namespace pipwright
