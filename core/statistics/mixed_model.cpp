#include "core/statistics/mixed_model.h"

#include <utility>

namespace pipwright {

FixedTerm FixedTerm::factor(std::string name, LevelCodes levels, FixedCoding coding) {
    return {std::move(name), std::move(levels), coding, {}};
}

FixedTerm FixedTerm::number(std::string name, std::vector<double> covariate) {
    return {std::move(name), {}, FixedCoding::treatment, std::move(covariate)};
}

std::int32_t FixedTerm::columnCount() const {
    if (levels.ofRecord.empty()) {
        return 1;
    }
    return coding == FixedCoding::treatment ? levels.count - 1 : levels.count;
}

VarianceChoice VarianceChoice::held(double variance) {
    return {VarianceKnowledge::held, {variance}, 0};
}

VarianceChoice VarianceChoice::held(std::vector<double> covariance) {
    return {VarianceKnowledge::held, std::move(covariance), 0};
}

VarianceChoice VarianceChoice::inverseChiSquare(double meanSquare, double degreesOfFreedom) {
    return {VarianceKnowledge::inverseChiSquare, {meanSquare}, degreesOfFreedom};
}

VarianceChoice VarianceChoice::halfT(double scaleSquared, double degreesOfFreedom) {
    return {VarianceKnowledge::halfT, {scaleSquared}, degreesOfFreedom};
}

} // namespace pipwright
