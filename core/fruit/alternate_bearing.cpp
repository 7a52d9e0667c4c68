#include "core/fruit/alternate_bearing.h"

#include <algorithm>
#include <cmath>

namespace pipwright {

namespace {

std::optional<double> spreadOfMean(double sum, double sumOfSquares, int count) {
    if (count < 2) {
        return std::nullopt;
    }
    const double squares = std::max(0.0, sumOfSquares - sum * sum / count);
    return std::sqrt(squares / (count - 1) / count);
}

} // namespace

Result<AlternateBearing> alternateBearing(std::span<const std::optional<Kilograms>> crops) {
    for (const auto& crop : crops) {
        if (crop && !(std::isfinite(crop->number()) && crop->number() >= 0)) {
            return Problem{ProblemCode::badInput, "A crop is below nothing.",
                           "Type kilograms, 0 for a year without fruit.", ""};
        }
    }
    AlternateBearing bearing;
    double sum = 0;
    double sumOfSquares = 0;
    for (std::size_t year = 1; year < crops.size(); ++year) {
        const auto& earlier = crops[year - 1];
        const auto& later = crops[year];
        if (!earlier || !later) {
            ++bearing.pairsMissing;
            continue;
        }
        // Halved before adding, so that not even the largest numbers overflow.
        const double both = earlier->number() / 2 + later->number() / 2;
        if (both == 0) {
            ++bearing.pairsEmpty;
            continue;
        }
        const double change = std::abs(later->number() / 2 - earlier->number() / 2) / both;
        ++bearing.pairs;
        sum += change;
        sumOfSquares += change * change;
    }
    if (bearing.pairs == 0) {
        return Problem{ProblemCode::badInput,
                       "No two successive years with a weighed crop, one of them with fruit.",
                       "Weigh the crop of at least two years running.", ""};
    }
    bearing.index = sum / bearing.pairs;
    bearing.standardError = spreadOfMean(sum, sumOfSquares, bearing.pairs);
    return bearing;
}

} // namespace pipwright
