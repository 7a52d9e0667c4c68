#pragma once

#include "core/units/result.h"

#include <cstdint>

namespace pipwright {

/// P(X >= wanted) for X successes among `tries` independent tries, each succeeding with `chance`.
/// Problem: negative numbers, a chance outside 0 to 1.
Result<double> chanceOfAtLeast(std::int64_t wanted, std::int64_t tries, double chance);

/// The smallest number of tries n with P(X >= wanted) >= `assurance`, X binomial (n, chance): the
/// seedlings to grow, the grafts to make. Exact, by inverting the negative binomial distribution
/// (the question of Sedcole 1977, Crop Science 17:667-668, whose approximation errs by a fifth
/// where the chance is small). Where several things must all come right, `chance` is the product:
/// the wanted genotype x germination x survival.
/// Problem: wanted below 0, chance or assurance not strictly between 0 and 1 (a chance of 1 is
/// allowed), or more than 10^15 tries needed.
Result<std::int64_t> numberNeeded(std::int64_t wanted, double chance, double assurance);

} // namespace pipwright
