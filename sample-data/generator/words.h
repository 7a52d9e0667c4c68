#pragma once

#include <string>

#include "sample-data/generator/truth.h"

namespace pipwright::sample {

/// What the breeder writes of a lot: fits what the fruit is and the number she gave it.
std::string breederWords(const Truth& truth, const Lot& lot, double score, Chance& chance);
std::string bodoWords(double score, Chance& chance);
std::string corraWords(const Truth& truth, double score, Chance& chance);

/// "red over yellow", "gold", "russet all over" ...
std::string colourWords(Hue hue);
/// "hazelnut", "quince" ...
std::string flavourWords(const Truth& truth);

} // namespace pipwright::sample
