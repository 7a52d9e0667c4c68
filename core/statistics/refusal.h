#pragma once

#include "core/units/result.h"

#include <string>
#include <utility>

namespace pipwright {

/// What a computation says when its input cannot give an honest number; `where` names the part of
/// it that cannot.
inline Problem unusable(std::string what, std::string remedy, std::string where = {}) {
    return Problem{ProblemCode::badInput, std::move(what), std::move(remedy), std::move(where)};
}

/// What a computation says when it was given sound input and still found no number to stand by.
inline Problem undecided(std::string what, std::string remedy) {
    return Problem{ProblemCode::internal, std::move(what), std::move(remedy), {}};
}

} // namespace pipwright
