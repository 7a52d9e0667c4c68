#pragma once

#include "core/units/result.h"

#include <compare>

namespace pipwright {

/// The generic chart of Blanpied & Silsby (1992), Cornell information bulletin 221: 1 all of the
/// cut face stained, 8 free of starch.
struct StarchEight {
    static constexpr double kHighest = 8;
};

/// The chart of ten steps used with the Streif index: 1 all stained, 10 free of starch; a step is
/// about a tenth of the cut face cleared (step 3 is 30 %), after KOB Bavendorf.
struct StarchTen {
    static constexpr double kHighest = 10;
};

/// How far the starch of the fruit has turned to sugar, by a chart, after iodine was put on the
/// cut face. Charts are different types: there is no way from one to the other, as their steps
/// were drawn for different patterns. A mean of several fruits lies between steps.
/// Iodine is poisonous: what it touched is neither eaten, fed nor composted.
template <typename Chart>
class StarchIndex {
  public:
    static Result<StarchIndex> of(double step) {
        if (step >= 1 && step <= Chart::kHighest) { // false for NaN
            return StarchIndex{step};
        }
        return Problem{ProblemCode::badInput, "The starch chart has no such step.",
                       "Look which chart was used: one ends at 8, the other at 10.", ""};
    }

    [[nodiscard]] constexpr double step() const { return m_step; }
    constexpr auto operator<=>(const StarchIndex&) const = default;

  private:
    constexpr explicit StarchIndex(double step) : m_step(step) {}

    double m_step;
};

/// About what share of the cut face is free of starch.
constexpr double clearedShare(StarchIndex<StarchTen> index) {
    return index.step() / StarchTen::kHighest;
}

} // namespace pipwright
