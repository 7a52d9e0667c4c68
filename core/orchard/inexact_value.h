#pragma once

#include "core/orchard/traits.h"
#include "core/units/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace pipwright {

/// A number as exact as it was written down, in the unit it was written in.
struct InexactValue {
    std::string typed;
    std::string unitTyped; ///< empty when no unit stood behind the number
    double low = 0;        ///< the number, or the lower end of a range
    std::optional<double> high;
    Qualifier qualifier = Qualifier::exact;

    bool operator==(const InexactValue&) const = default;
};

/// Reads what people write: "13", "13.2" or "13,2", "~13" or "about 13", "<12", ">12" ("under 12",
/// "over 12"), "13-14", "13 to 14", "13..14", each with a unit behind it if one was written
/// ("180 g"). The Problem says what to type instead.
Result<InexactValue> readInexactValue(std::string_view typed);

/// Reads a value of a numeric trait. The unit may be left out; a unit that is not the trait's and
/// a number outside its scale are refused, with the remedy. A value in another unit of the same
/// kind (oz for g, in for mm, ft for m) is converted; `typed` and `unitTyped` stay as written.
Result<InexactValue> readValueOf(const Trait& trait, std::string_view typed);

/// "about 13", "under 12", "13 to 14": the number in few words, without its unit.
std::string inWords(const InexactValue& value);

/// The value of an observation as one; nothing when it has no number.
std::optional<InexactValue> valueOf(const Observation& observation);

} // namespace pipwright
