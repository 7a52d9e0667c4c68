#pragma once

#include <cmath>
#include <string>

namespace pipwright::sample {

/// "6.5"
inline std::string inHalves(double value) {
    const auto halves = static_cast<int>(std::lround(value * 2));
    return std::to_string(halves / 2) + (halves % 2 == 0 ? ".0" : ".5");
}

/// The value to so many tenths, hundredths ... of its unit, as a number a hand would write.
inline double roundedTo(double value, double step) {
    return std::round(value / step) / std::round(1 / step);
}

/// "7" as "007"
inline std::string threeDigits(int number) {
    std::string text = std::to_string(number);
    return std::string(text.size() < 3 ? 3 - text.size() : 0, '0') + text;
}

} // namespace pipwright::sample
