#pragma once

#include "core/season/date.h"

#include <algorithm>
#include <optional>

namespace pipwright {

/// The days from first to last, both counted; first is never after last.
struct DaySpan {
    Date first;
    Date last;

    /// Nothing when first is after last.
    static std::optional<DaySpan> of(Date first, Date last) {
        return first <= last ? std::optional{DaySpan{first, last}} : std::nullopt;
    }

    [[nodiscard]] int dayCount() const { return daysBetween(first, last) + 1; }
    [[nodiscard]] bool contains(Date date) const { return first <= date && date <= last; }
    /// The days both have; nothing when they have none.
    [[nodiscard]] std::optional<DaySpan> sharedWith(DaySpan other) const {
        return of(std::max(first, other.first), std::min(last, other.last));
    }

    bool operator==(const DaySpan&) const = default;
};

} // namespace pipwright
