#include "core/fruit/juice.h"

#include "core/fruit/wrong_amount.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace pipwright {

namespace {

constexpr int kFirstDegree = 10;
constexpr int kLastDegree = 30;
constexpr int kLastPrintedDegree = 21;
constexpr double kBrixStep = 5;
constexpr double kMostBrix = 30;

/// Hundredths of a degree Brix to add; rows from 10 to 30 degrees Celsius, columns 0 to 30 Brix.
constexpr std::array<std::array<int, 7>, kLastDegree - kFirstDegree + 1> kHundredths = {{
    {-50, -54, -58, -61, -64, -66, -68},
    {-46, -49, -53, -55, -58, -60, -62},
    {-42, -45, -48, -50, -52, -54, -56},
    {-37, -40, -42, -44, -46, -48, -49},
    {-33, -35, -37, -39, -40, -41, -42},
    {-27, -29, -31, -33, -34, -34, -35},
    {-22, -24, -25, -26, -27, -28, -28},
    {-17, -18, -19, -20, -21, -21, -21},
    {-12, -13, -13, -14, -14, -14, -14},
    {-6, -6, -6, -7, -7, -7, -7},
    {0, 0, 0, 0, 0, 0, 0},
    {6, 7, 7, 7, 7, 8, 8},
    {13, 13, 14, 14, 15, 15, 15},
    {19, 20, 21, 22, 22, 23, 23},
    {26, 27, 28, 29, 30, 30, 31},
    {33, 35, 36, 37, 38, 38, 39},
    {40, 42, 43, 44, 45, 46, 47},
    {48, 50, 52, 53, 54, 55, 55},
    {56, 57, 60, 61, 62, 63, 63},
    {64, 66, 68, 69, 71, 72, 72},
    {72, 74, 77, 78, 79, 80, 80},
}};

/// Where a number stands between the entries of an axis.
struct Place {
    std::size_t below;
    double part; // of the way to the next

    Place(double steps, std::size_t entries)
        : below(std::min(static_cast<std::size_t>(steps), entries - 2)),
          part(steps - static_cast<double>(below)) {}
};

double correctionAt(double brix, double degrees) {
    const Place row(degrees - kFirstDegree, kHundredths.size());
    const Place column(brix / kBrixStep, kHundredths.front().size());
    const auto inRow = [&column](const std::array<int, 7>& entries) {
        return std::lerp(static_cast<double>(entries[column.below]),
                         static_cast<double>(entries[column.below + 1]), column.part);
    };
    return std::lerp(inRow(kHundredths[row.below]), inRow(kHundredths[row.below + 1]), row.part) /
           100;
}

bool isAmount(double number) {
    return std::isfinite(number) && number >= 0;
}

/// Grams of acid the alkali has neutralised; nothing when an amount makes no sense.
std::optional<double> neutralised(const Titration& titration, Acid acid,
                                  AcidEquivalent equivalent) {
    if (!isAmount(titration.alkali.number()) || !isAmount(titration.strength.number())) {
        return std::nullopt;
    }
    return titration.alkali.number() / 1000 * titration.strength.number() *
           gramsPerMoleOfAlkali(acid, equivalent);
}

Problem noTitration() {
    return wrongAmount("The titration lacks an amount that is above nothing.",
                       "Type the millilitres and the strength of the alkali, and the sample.");
}

} // namespace

Result<BrixAt20> brixAt20(Brix reading, Celsius juice, Refractometer refractometer) {
    if (!(reading.number() >= 0 && reading.number() <= 100)) { // NaN too
        return wrongAmount("That is no reading of a refractometer.", "Type degrees Brix, as 12.5.");
    }
    if (refractometer == Refractometer::compensated) {
        return BrixAt20{reading, Brix{0}, true};
    }
    const double degrees = juice.degrees();
    if (!(degrees >= kFirstDegree && degrees <= kLastDegree) || reading.number() > kMostBrix) {
        return wrongAmount(
            "The correction is tabled from 10 to 30 degrees Celsius and up to 30 Brix.",
            "Bring the juice to about 20 degrees and read again.");
    }
    const Brix correction{correctionAt(reading.number(), degrees)};
    return BrixAt20{reading + correction, correction, degrees <= kLastPrintedDegree};
}

double gramsPerMoleOfAlkali(Acid acid, AcidEquivalent equivalent) {
    const bool exact = equivalent == AcidEquivalent::exact;
    switch (acid) {
    case Acid::malic:
        return exact ? 134.0874 / 2 : 67;
    case Acid::citric:
        return exact ? 192.1235 / 3 : 64;
    case Acid::tartaric:
        break;
    }
    return exact ? 150.0868 / 2 : 75;
}

Result<GramsPerLitre> acidOf(const Titration& titration, Millilitres sample, Acid acid,
                             AcidEquivalent equivalent) {
    const auto grams = neutralised(titration, acid, equivalent);
    if (!grams || !isAmount(sample.number()) || sample.number() == 0) {
        return noTitration();
    }
    return GramsPerLitre{*grams / sample.number() * 1000};
}

Result<GramsPer100Grams> acidOf(const Titration& titration, Grams sample, Acid acid,
                                AcidEquivalent equivalent) {
    const auto grams = neutralised(titration, acid, equivalent);
    if (!grams || !isAmount(sample.number()) || sample.number() == 0) {
        return noTitration();
    }
    return GramsPer100Grams{*grams / sample.number() * 100};
}

GramsPerLitre inTermsOf(Acid wanted, GramsPerLitre acidity, Acid given, AcidEquivalent equivalent) {
    return acidity *
           (gramsPerMoleOfAlkali(wanted, equivalent) / gramsPerMoleOfAlkali(given, equivalent));
}

Result<double> sugarAcidRatio(Brix solids, GramsPerLitre acidity) {
    if (!isAmount(solids.number()) || !isAmount(acidity.number()) || acidity.number() == 0) {
        return wrongAmount("The ratio needs soluble solids and an acidity above nothing.",
                           "Look at both values.");
    }
    return solids.number() / (acidity.number() / 10);
}

Result<Brix> sugarLessAcid(Brix solids, GramsPerLitre acidity, double multiple) {
    if (!isAmount(solids.number()) || !isAmount(acidity.number()) || !isAmount(multiple)) {
        return wrongAmount(
            "Soluble solids, acidity and the multiple must be numbers above nothing.",
            "Look at the three values.");
    }
    return solids - Brix{multiple * acidity.number() / 10};
}

} // namespace pipwright
