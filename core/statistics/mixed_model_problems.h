#pragma once

#include "core/units/result.h"

namespace pipwright {

/// What may go wrong while a mixed model is fitted.
inline Problem fitStopped() {
    return {ProblemCode::cancelled, "The fit was stopped.", "Start it again.", ""};
}
inline Problem equationsBroken() {
    return {ProblemCode::badInput, "The equations of the model cannot be solved.",
            "Look for weights, covariates or variances of extreme size.", "mixed model"};
}
inline Problem responseExplained() {
    return {ProblemCode::badInput,
            "The terms explain the response entirely: the residual variance vanishes.",
            "Leave out a term, or hold the residual variance.", "mixed model"};
}

} // namespace pipwright
