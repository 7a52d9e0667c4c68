#pragma once

#include "core/pedigree/descent.h"
#include "core/units/result.h"

#include <string>
#include <string_view>

namespace pipwright {

/// A descent on one line in the notation of Purdy and others (1968, Crop Science 8:405): the seed
/// parent left of the slash; `/` the first cross, `//` the second, `/3/`, `/4/` ... the later ones,
/// so that the highest number is the latest cross; `A*3/B` and `B/3*A` for A used three times.
/// An unknown parent is `?`, open pollination `A/OP`, selfing `A/self`. A name that could be read
/// otherwise stands between double quotes, a quote inside doubled.
std::string writePurdy(const Descent& descent);

/// Reads what writePurdy wrote, and the other ways in use: `/2/` for `//`, `///` for `/3/`, the
/// recurrent parent as `B/A*3` or `B/*3 A`, `A/A` and the sign of a crossed circle for selfing,
/// "O.P.". The Problem names the character (from 1) where it went wrong.
Result<Descent> readPurdy(std::string_view line);

} // namespace pipwright
