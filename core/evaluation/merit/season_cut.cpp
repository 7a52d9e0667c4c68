#include "core/evaluation/merit/slots.h"

#include <algorithm>
#include <limits>

namespace pipwright {

namespace {

constexpr int kShortestSlot = 10;
constexpr int kLongestSlot = 14;
constexpr int kWantedSlot = 12;

/// What it costs to end a slot before a day: one for each window that reaches across.
double costOfCut(std::span<const BenchmarkWindow> windows, int day) {
    return static_cast<double>(
        std::count_if(windows.begin(), windows.end(), [day](const BenchmarkWindow& window) {
            return window.first < day && day <= window.last;
        }));
}

/// Less than a window cut in two, but enough to tell equal cuts apart.
double costOfLength(int length) {
    constexpr double kOfADay = 0.02;
    return kOfADay * (length - kWantedSlot) * (length - kWantedSlot);
}

} // namespace

std::vector<SlotSpan> cutSeason(std::span<const BenchmarkWindow> windows) {
    if (windows.empty()) {
        return {};
    }
    int first = std::numeric_limits<int>::max();
    int last = std::numeric_limits<int>::min(); // the last one that begins
    for (const BenchmarkWindow& window : windows) {
        first = std::min(first, window.first);
        last = std::max(last, window.first);
    }
    // Shortest path over days: cost[d] of the best cut whose last slot ends before first + d.
    const int days = last - first + 1;
    const auto size = static_cast<std::size_t>(days + kLongestSlot + 1);
    std::vector<double> cost(size, std::numeric_limits<double>::infinity());
    std::vector<int> before(size, 0);
    cost[0] = 0;
    for (int end = kShortestSlot; end < static_cast<int>(size); ++end) {
        const auto at = static_cast<std::size_t>(end);
        for (int length = kShortestSlot; length <= std::min(kLongestSlot, end); ++length) {
            const int start = end - length;
            if (start >= days) {
                continue; // the season is over already
            }
            const double all = cost[static_cast<std::size_t>(start)] + costOfLength(length) +
                               (start > 0 ? costOfCut(windows, first + start) : 0);
            if (all < cost[at]) {
                cost[at] = all;
                before[at] = start;
            }
        }
    }
    int end = days;
    for (int candidate = days; candidate < static_cast<int>(size); ++candidate) {
        if (cost[static_cast<std::size_t>(candidate)] < cost[static_cast<std::size_t>(end)]) {
            end = candidate;
        }
    }
    std::vector<SlotSpan> slots;
    while (end > 0) {
        const int start = before[static_cast<std::size_t>(end)];
        slots.push_back({first + start, first + end - 1});
        end = start;
    }
    std::reverse(slots.begin(), slots.end());
    return slots;
}

} // namespace pipwright
