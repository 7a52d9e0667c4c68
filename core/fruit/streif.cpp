#include "core/fruit/streif.h"

#include <cmath>

namespace pipwright {

namespace {

Result<double> over(double force, const StreifParts& parts) {
    const double solids = parts.solids.number();
    if (!std::isfinite(solids) || solids <= 0) {
        return Problem{ProblemCode::badInput, "The index needs soluble solids above nothing.",
                       "Look at the reading of the refractometer.", ""};
    }
    return force / (solids * parts.starch.step());
}

} // namespace

Result<StreifKilograms> streifInKilograms(const StreifParts& parts) {
    const auto index = over(toKilogramsForce(parts.firmness.force()).number(), parts);
    return index ? Result<StreifKilograms>(StreifKilograms{*index}) : index.problem();
}

Result<StreifNewtons> streifInNewtons(const StreifParts& parts) {
    const auto index = over(parts.firmness.force().number(), parts);
    return index ? Result<StreifNewtons>(StreifNewtons{*index}) : index.problem();
}

} // namespace pipwright
