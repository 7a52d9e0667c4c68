#pragma once

#include "core/plan/sitting_plan.h"

namespace pipwright {

/// What there is to say about a plan whose lots, codes and orders are drawn: first what was done
/// and why, then what asks for care.
std::vector<PlanRemark> planRemarks(const SittingWish& wish, const SittingPlan& plan);

} // namespace pipwright
