#include "core/orchard/inexact_value.h"

#include "core/fruit/firmness.h"
#include "core/units/quantity.h"
#include "core/units/text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <locale>
#include <sstream>

namespace pipwright {

namespace {

struct Prefix {
    std::string_view words;
    Qualifier qualifier;
};

constexpr std::array kPrefixes = {
    Prefix{"~", Qualifier::about},
    Prefix{"about", Qualifier::about},
    Prefix{"ca.", Qualifier::about},
    Prefix{"circa", Qualifier::about},
    Prefix{"<", Qualifier::lessThan},
    Prefix{"under", Qualifier::lessThan},
    Prefix{"less than", Qualifier::lessThan},
    Prefix{">", Qualifier::greaterThan},
    Prefix{"over", Qualifier::greaterThan},
    Prefix{"more than", Qualifier::greaterThan},
};

constexpr std::array<std::string_view, 4> kBetween = {"to", "..", "\xE2\x80\x93", "-"};

Problem unreadableValue(std::string_view typed) {
    return {ProblemCode::badInput, "\"" + std::string(typed) + "\" is not a value.",
            "Type a number, as 13, ~13, <12 or 13-14, with its unit if you like.", ""};
}

/// Takes a number without sign off the front. A comma is a point where no point stands.
std::optional<double> takeNumber(std::string_view& rest) {
    std::size_t length = 0;
    bool pointSeen = false;
    std::string number;
    while (length < rest.size()) {
        const char c = rest[length];
        const bool digit = c >= '0' && c <= '9';
        const bool digitNext =
            length + 1 < rest.size() && rest[length + 1] >= '0' && rest[length + 1] <= '9';
        const bool point = (c == '.' || c == ',') && !pointSeen && digitNext;
        if (!digit && !point) {
            break;
        }
        pointSeen = pointSeen || point;
        number += point ? '.' : c;
        ++length;
    }
    double value = 0;
    const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), value);
    if (length == 0 || error != std::errc{} || end != number.data() + number.size()) {
        return std::nullopt;
    }
    rest = rest.substr(length);
    return value;
}

Qualifier takePrefix(std::string_view& rest) {
    for (const Prefix& prefix : kPrefixes) {
        if (rest.starts_with(prefix.words)) {
            rest = trimmed(rest.substr(prefix.words.size()));
            return prefix.qualifier;
        }
    }
    return Qualifier::exact;
}

/// Takes the mark of a range when a number follows it.
bool takeBetween(std::string_view& rest) {
    const std::string_view after = trimmed(rest);
    for (const std::string_view mark : kBetween) {
        const std::string_view number =
            after.starts_with(mark) ? trimmed(after.substr(mark.size())) : std::string_view{};
        if (!number.empty() && number.front() >= '0' && number.front() <= '9') {
            rest = number;
            return true;
        }
    }
    return false;
}

/// How many of the trait's unit one of the typed unit is; nothing when they are of other kinds.
std::optional<double> unitsIn(std::string_view typed, std::string_view wanted) {
    struct Conversion {
        std::string_view from;
        std::string_view to;
        double factor;
    };
    static constexpr double kKilogramsForceOfAPound =
        toKilogramsForce(toNewtons(PoundsForce{1})).number();
    static const std::array conversions = {
        Conversion{"oz", "g", toGrams(Ounces{1}).number()},
        Conversion{"kg", "g", 1000},
        Conversion{"in", "mm", toMillimetres(Inches{1}).number()},
        Conversion{"cm", "mm", 10},
        Conversion{"ft", "m", toMetres(Feet{1}).number()},
        Conversion{"cm", "m", 0.01},
        // The trade writes kg and lb for the force on a probe, and percent for acid.
        Conversion{"kg", "kgf", 1},
        Conversion{"lbf", "kgf", kKilogramsForceOfAPound},
        Conversion{"lb", "kgf", kKilogramsForceOfAPound},
        Conversion{"lbs", "kgf", kKilogramsForceOfAPound},
        Conversion{"n", "kgf", toKilogramsForce(Newtons{1}).number()},
        Conversion{"%", "g/l", 10},
        Conversion{"days", "d", 1},
        Conversion{"day", "d", 1},
        Conversion{"brix",
                   "\xC2\xB0"
                   "brix",
                   1},
        Conversion{"%",
                   "\xC2\xB0"
                   "brix",
                   1},
    };
    const std::string one = foldedForSearch(typed);
    const std::string other = foldedForSearch(wanted);
    if (one == other) {
        return 1.0;
    }
    const auto found =
        std::find_if(conversions.begin(), conversions.end(), [&](const Conversion& conversion) {
            return conversion.from == one && conversion.to == other;
        });
    return found == conversions.end() ? std::nullopt : std::optional(found->factor);
}

std::string shortNumber(double value) {
    std::ostringstream text;
    text.imbue(std::locale::classic());
    text << value;
    return text.str();
}

std::string scaleWords(const Trait& trait) {
    const std::string unit = trait.unit.empty() ? "" : " " + trait.unit;
    if (trait.lowest && trait.highest) {
        return shortNumber(*trait.lowest) + " to " + shortNumber(*trait.highest) + unit;
    }
    return trait.lowest ? "from " + shortNumber(*trait.lowest) + unit
                        : "up to " + shortNumber(trait.highest.value_or(0)) + unit;
}

bool isOutside(const Trait& trait, double value) {
    return (trait.lowest && value < *trait.lowest) || (trait.highest && value > *trait.highest);
}

} // namespace

Result<InexactValue> readInexactValue(std::string_view typed) {
    InexactValue value;
    value.typed = std::string(trimmed(typed));
    const std::string folded = foldedForSearch(value.typed);
    std::string_view rest = folded;
    value.qualifier = takePrefix(rest);
    const auto low = takeNumber(rest);
    if (!low) {
        return unreadableValue(value.typed);
    }
    value.low = *low;
    if (takeBetween(rest)) {
        value.high = takeNumber(rest);
        if (!value.high || value.qualifier == Qualifier::lessThan ||
            value.qualifier == Qualifier::greaterThan) {
            return unreadableValue(value.typed);
        }
        if (*value.high < value.low) {
            return Problem{ProblemCode::badInput,
                           "\"" + value.typed + "\" begins with its higher end.",
                           "Type the lower end first.", ""};
        }
        value.qualifier = Qualifier::range;
    }
    const std::size_t unitLength = trimmed(rest).size();
    if (!trimmed(rest).empty() && trimmed(rest).front() >= '0' && trimmed(rest).front() <= '9') {
        return unreadableValue(value.typed);
    }
    // The unit as it was typed, not as it was folded; folding keeps no length, so from the digits.
    const auto lastDigit = value.typed.find_last_of("0123456789");
    if (unitLength > 0 && lastDigit != std::string::npos) {
        value.unitTyped = std::string(trimmed(std::string_view(value.typed).substr(lastDigit + 1)));
        if (value.unitTyped.empty() || value.unitTyped.front() == ',' ||
            value.unitTyped.front() == '.' || value.unitTyped.front() == '-') {
            return unreadableValue(value.typed);
        }
    }
    return value;
}

Result<InexactValue> readValueOf(const Trait& trait, std::string_view typed) {
    auto value = readInexactValue(typed);
    if (!value) {
        return value;
    }
    if (!value->unitTyped.empty()) {
        const auto factor = unitsIn(value->unitTyped, trait.unit);
        if (!factor) {
            return Problem{ProblemCode::badInput,
                           trait.name + " is not measured in \"" + value->unitTyped + "\".",
                           trait.unit.empty() ? "Type the number alone."
                                              : "Type it in " + trait.unit + ".",
                           ""};
        }
        value->low *= *factor;
        if (value->high) {
            *value->high *= *factor;
        }
    }
    if (isOutside(trait, value->low) || isOutside(trait, value->high.value_or(value->low))) {
        return Problem{ProblemCode::badInput,
                       "\"" + value->typed + "\" is outside the scale of " + trait.name + ".",
                       "The scale goes " +
                           (trait.lowest && trait.highest ? "from " : std::string{}) +
                           scaleWords(trait) + "; is a digit or a point amiss?",
                       ""};
    }
    return value;
}

std::string inWords(const InexactValue& value) {
    std::string low = shortNumber(value.low);
    switch (value.qualifier) {
    case Qualifier::about:
        return "about " + low;
    case Qualifier::lessThan:
        return "under " + low;
    case Qualifier::greaterThan:
        return "over " + low;
    case Qualifier::range:
        return low + " to " + shortNumber(value.high.value_or(value.low));
    case Qualifier::exact:
    case Qualifier::unknown:
        break;
    }
    return low;
}

std::optional<InexactValue> valueOf(const Observation& observation) {
    if (!observation.value) {
        return std::nullopt;
    }
    return InexactValue{observation.typed, observation.unitTyped, *observation.value,
                        observation.valueTo, observation.qualifier};
}

} // namespace pipwright
