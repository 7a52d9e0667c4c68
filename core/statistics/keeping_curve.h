#pragma once

#include "core/units/result.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace pipwright {

/// A lot's last day: its end, or the last look at which it was still good.
struct KeepingDayRecord {
    double day = 0;
    bool ended = false;
    std::size_t group = 0;
};

/// The share still good after a day on which lots ended.
struct KeepingStep {
    double day = 0;
    double share = 1;
    double standardError = 0; ///< Greenwood (1926)
};

struct KeepingCurve {
    std::vector<KeepingStep> steps{};
    /// Where the share falls to one half; midway to the next step where it stays there. Nothing
    /// when more than half outlast the looking.
    std::optional<double> median{};
};

/// Kaplan & Meier (1958), J. Am. Stat. Assoc. 53:457-481; assumes no law of keeping.
/// Problem: no records, days that are negative or not finite.
Result<KeepingCurve> keepingCurve(std::span<const KeepingDayRecord> records);

struct LogRankTest {
    double statistic = 0; ///< referred to chi-square
    int degreesOfFreedom = 1;
    double pValue = 1;
};

/// Do groups 0 and 1 keep alike? Mantel (1966) with the hypergeometric variance.
/// Problem: as above, groups other than 0 and 1, one of them empty, no lot ended while both were
/// under watch.
Result<LogRankTest> logRankTest(std::span<const KeepingDayRecord> records);

} // namespace pipwright
