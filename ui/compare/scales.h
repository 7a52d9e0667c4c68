#pragma once

namespace pipwright::ui {

/// The ends of the scale of liking.
inline constexpr double kLowestLiking = 1;
inline constexpr double kHighestLiking = 9;
inline constexpr int kDaysOfAWeek = 7;

} // namespace pipwright::ui
