#include "core/fruit/instrument.h"

#include "core/units/digits.h"
#include "core/units/text.h"

#include <charconv>
#include <string>
#include <vector>

namespace pipwright {

namespace {

/// A number in words, and what follows it directly.
struct NamedNumber {
    double value;
    std::string_view behind;
};

std::vector<NamedNumber> numbersIn(std::string_view text) {
    std::vector<NamedNumber> numbers;
    std::size_t at = 0;
    while (at < text.size()) {
        if (!isDigit(text[at])) {
            ++at;
            continue;
        }
        std::string number;
        for (; at < text.size(); ++at) {
            const bool point = (text[at] == '.' || text[at] == ',') && at + 1 < text.size() &&
                               isDigit(text[at + 1]);
            if (!isDigit(text[at]) && !point) {
                break;
            }
            number += point ? '.' : text[at];
        }
        double value = 0;
        std::from_chars(number.data(), number.data() + number.size(), value);
        numbers.push_back({value, trimmed(text.substr(at))});
    }
    return numbers;
}

/// Whether a number is one of millimetres by what stands behind it; the unit may be left out.
bool isOfMillimetres(std::string_view behind) {
    return behind.empty() || behind.starts_with("mm") || behind.starts_with("or ") ||
           behind.starts_with(",") || behind.starts_with(";") || behind.starts_with(")");
}

bool isWordEnd(std::string_view text) {
    return text.empty() || !((text.front() >= 'a' && text.front() <= 'z') || isDigit(text.front()));
}

/// Whether the text begins with a unit, with or without its degree sign.
bool beginsWithDegrees(std::string_view text, char unit) {
    constexpr std::string_view kDegreeSign = "\xC2\xB0";
    if (text.starts_with(kDegreeSign)) {
        text = trimmed(text.substr(kDegreeSign.size()));
    }
    return !text.empty() && text.front() == unit && isWordEnd(text.substr(1));
}

} // namespace

std::optional<NamedProbe> probeNamed(std::string_view instrument) {
    const std::string text = foldedForSearch(instrument);
    bool apple = false;
    bool pear = false;
    if (text.find("7/16") != std::string::npos || text.find("5/16") != std::string::npos) {
        apple = text.find("7/16") != std::string::npos;
        pear = text.find("5/16") != std::string::npos;
    } else {
        for (const NamedNumber& number : numbersIn(text)) {
            const bool millimetres = isOfMillimetres(number.behind);
            apple = apple || (millimetres && number.value >= 11 && number.value < 11.2);
            pear = pear || (millimetres && number.value >= 7.9 && number.value < 8.1);
        }
    }
    if (apple == pear) {
        return std::nullopt;
    }
    return apple ? NamedProbe::apple : NamedProbe::pear;
}

std::optional<Celsius> juiceTemperatureNamed(std::string_view instrument) {
    const std::string text = foldedForSearch(instrument);
    const std::size_t atc = text.find("atc");
    const bool ownWord = atc != std::string::npos &&
                         (atc == 0 || isWordEnd(text.substr(atc - 1))) &&
                         isWordEnd(std::string_view(text).substr(atc + 3));
    if (ownWord) {
        return std::nullopt;
    }
    for (const NamedNumber& number : numbersIn(text)) {
        if (beginsWithDegrees(number.behind, 'c')) {
            return Celsius{number.value};
        }
        if (beginsWithDegrees(number.behind, 'f')) {
            return toCelsius(Fahrenheit{number.value});
        }
    }
    return std::nullopt;
}

} // namespace pipwright
