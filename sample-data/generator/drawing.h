#pragma once

#include <string>

#include "sample-data/generator/truth.h"

namespace pipwright::sample {

/// A drawing (SVG) of the fruit, whole and cut lengthwise, on a 10 mm grid in true proportion.
/// The key varies the outline a little from year to year.
std::string drawnFruit(const Truth& truth, bool pear, const std::string& key);

} // namespace pipwright::sample
