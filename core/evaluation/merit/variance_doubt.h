#pragma once

#include "core/evaluation/merit/merit_design.h"

#include <functional>
#include <vector>

namespace pipwright {

/// How the merits would move if the variances were not quite what was found: for each direction in
/// which they are in doubt, the change of every merit for one standard deviation of it.
///
/// What is told as a merit's error has twice the squares of these moves added: prediction errors
/// at estimated variances are too small by about that much (Kackar & Harville 1984, J. Am. Stat.
/// Assoc. 79:853-862; Prasad & Rao 1990, J. Am. Stat. Assoc. 85:163-171, eq. 5.15).
using MeritMoves = std::vector<std::vector<double>>;

/// The merits of a fit, one a level of the design.
std::vector<double> meritValues(const MeritDesign& design, const MixedFit& fit);

/// Directions with less than a twentieth of a variance in doubt are passed over. Variances that
/// were estimated are in doubt as their likelihood (with the prior) says, assumed ones as the
/// prior says. Problem cancelled.
Result<MeritMoves> varianceDoubt(const MeritDesign& design, const MixedModelEquations& equations,
                                 const MixedFit& fit, const std::stop_token& stop);

} // namespace pipwright
