#pragma once

#include "core/season/date.h"

#include <string>
#include <string_view>

namespace pipwright {

/// The typed text with every day named by its distance from today put as a date, so that it keeps
/// its meaning when it is read again years later. `folded` is text as foldedForSearch makes it;
/// what is not such a day stays as it is. Understood, in English, German and French:
/// - "today", "yesterday", "day before yesterday";
/// - "3 days ago", "a week ago", "2 weeks ago";
/// - a weekday in full or by its first three letters: the newest one up to today; with "last"
///   before it the newest one before today. A weekday with a date behind it is left alone;
/// - "last week": the ISO week before this one.
std::string withRelativeDays(std::string_view folded, Date today);

} // namespace pipwright
