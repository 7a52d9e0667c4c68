#pragma once

#include <cstddef>
#include <gtest/gtest.h>
#include <vector>

namespace pipwright {

/// For numbers that a closed form gives.
inline constexpr double kClosedForm = 1e-9;
/// For numbers printed with six decimals.
inline constexpr double kPrinted = 5e-7;

inline void expectNear(const std::vector<double>& found, const std::vector<double>& known,
                       double tolerance) {
    ASSERT_EQ(found.size(), known.size());
    for (std::size_t i = 0; i < known.size(); ++i) {
        EXPECT_NEAR(found[i], known[i], tolerance) << "number " << i + 1;
    }
}

} // namespace pipwright
