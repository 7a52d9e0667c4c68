#pragma once

#include "core/units/result.h"

#include <string>
#include <utility>

namespace pipwright {

/// What a reading of fruit says when an amount it was given cannot be.
inline Problem wrongAmount(std::string what, std::string remedy) {
    return {ProblemCode::badInput, std::move(what), std::move(remedy), ""};
}

} // namespace pipwright
