#pragma once

#include "core/orchard/tastings.h"

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

namespace pipwright {

/// What a score is corrected for, besides taster, sitting and year: the state of the fruit and of
/// the moment. Each can be switched off.
enum class Correction : std::uint8_t {
    origin,
    soundness,
    bag,
    ripeness,
    storage,
    canopyPlace,
    cropLoad,
    cropNumber,
    servingOrder,
    hope, ///< an own seedling, tasted by somebody who knew what it was
};
inline constexpr int kCorrectionCount = 10;

/// One state a lot can be in, and what is believed of it before this book has a say. The belief
/// is a normal one about the points it adds to a liking on the 9-point scale: what a fair, prime,
/// fresh lot is not.
struct ConditionClass {
    Correction correction = Correction::origin;
    std::string_view key;
    double mean = 0;  ///< points (a day, or a place in the serving order, where it is counted)
    double sd = 0;    ///< points: how sure that is
    double noise = 0; ///< by how much it adds to the residual variance, in parts of it
    std::string_view source;
};

/// All of them; a ConditionAmount names one by its place here.
std::span<const ConditionClass> conditionClasses();

/// A state of a lot: 1 for what it merely is, the days or places where they are counted.
struct ConditionAmount {
    std::uint8_t condition = 0;
    float amount = 1;

    bool operator==(const ConditionAmount&) const = default;
};

/// The states that set a lot apart from a fair, prime, fresh one. `ownSeedling` is what hope
/// clings to; `place` is this taster's place for the lot in the serving order, 1 the first.
std::vector<ConditionAmount> conditionsOf(const Lot& lot, Sight sight, bool ownSeedling,
                                          std::optional<std::int64_t> place);

} // namespace pipwright
