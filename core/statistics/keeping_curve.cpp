#include "core/statistics/keeping_curve.h"

#include "core/statistics/distributions.h"
#include "core/statistics/refusal.h"

#include <array>
#include <cmath>
#include <map>

namespace pipwright {

namespace {

std::optional<Problem> faultOf(std::span<const KeepingDayRecord> records) {
    if (records.empty()) {
        return unusable("There are no keeping records.", "Look at stored fruit first.");
    }
    for (const KeepingDayRecord& record : records) {
        if (!std::isfinite(record.day) || record.day < 0) {
            return unusable("A day is negative or not a number.", "Count days from harvest.");
        }
    }
    return std::nullopt;
}

struct DayCounts {
    double ended = 0;
    double left = 0; ///< ended or no longer watched
};

std::map<double, DayCounts> countsByDay(std::span<const KeepingDayRecord> records) {
    std::map<double, DayCounts> days;
    for (const KeepingDayRecord& record : records) {
        days[record.day].ended += record.ended ? 1 : 0;
        days[record.day].left += 1;
    }
    return days;
}

std::optional<double> medianOf(const std::vector<KeepingStep>& steps) {
    constexpr double kRounding = 1e-12;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        if (std::abs(steps[i].share - .5) < kRounding && i + 1 < steps.size()) {
            return (steps[i].day + steps[i + 1].day) / 2;
        }
        if (steps[i].share < .5 + kRounding) {
            return steps[i].day;
        }
    }
    return std::nullopt;
}

} // namespace

Result<KeepingCurve> keepingCurve(std::span<const KeepingDayRecord> records) {
    if (auto fault = faultOf(records)) {
        return *fault;
    }
    KeepingCurve curve;
    auto watched = static_cast<double>(records.size());
    double share = 1;
    double greenwood = 0;
    for (const auto& [day, counts] : countsByDay(records)) {
        if (counts.ended > 0) {
            share *= 1 - counts.ended / watched;
            // The last lot leaves a share of 0 without error.
            greenwood +=
                watched > counts.ended ? counts.ended / (watched * (watched - counts.ended)) : 0;
            curve.steps.push_back({day, share, share * std::sqrt(greenwood)});
        }
        watched -= counts.left;
    }
    curve.median = medianOf(curve.steps);
    return curve;
}

Result<LogRankTest> logRankTest(std::span<const KeepingDayRecord> records) {
    if (auto fault = faultOf(records)) {
        return *fault;
    }
    std::array<std::vector<KeepingDayRecord>, 2> groups;
    for (const KeepingDayRecord& record : records) {
        if (record.group > 1) {
            return unusable("The test compares two groups, 0 and 1.", "Compare pairs of groups.");
        }
        groups[record.group].push_back(record);
    }
    if (groups[0].empty() || groups[1].empty()) {
        return unusable("One of the groups has no record.", "Compare two groups with records.");
    }
    auto first = countsByDay(groups[0]);
    std::array<double, 2> watched{static_cast<double>(groups[0].size()),
                                  static_cast<double>(groups[1].size())};
    double surplus = 0;
    double variance = 0;
    for (const auto& [day, all] : countsByDay(records)) {
        const DayCounts own = first[day];
        const double n = watched[0] + watched[1];
        surplus += own.ended - all.ended * watched[0] / n;
        variance +=
            n > 1 ? all.ended * (n - all.ended) / (n - 1) * watched[0] * watched[1] / (n * n) : 0;
        watched[0] -= own.left;
        watched[1] -= all.left - own.left;
    }
    if (!(variance > 0)) {
        return unusable("No lot ended while both groups were being watched.", "Keep looking.");
    }
    LogRankTest test;
    test.statistic = surplus * surplus / variance;
    const auto above = probabilityAbove(ChiSquareDistribution{1}, test.statistic);
    if (!above) {
        return above.problem();
    }
    test.pValue = *above;
    return test;
}

} // namespace pipwright
