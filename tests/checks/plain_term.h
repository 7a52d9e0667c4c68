#pragma once

#include "core/statistics/mixed_model.h"

#include <string>
#include <utility>

namespace pipwright {

/// A random term with an intercept only and independent levels.
inline RandomTerm plainTerm(std::string name, LevelCodes levels) {
    RandomTerm term;
    term.name = std::move(name);
    term.levels = std::move(levels);
    return term;
}

} // namespace pipwright
