#include "core/statistics/quasi_newton.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace pipwright {
namespace {

using Numbers = std::vector<double>;

// Rosenbrock (1960), Comput. J. 3:175-184: a bent valley with its lowest point at (1, 1).
Result<double> bentValley(const Numbers& at) {
    const double across = at[1] - at[0] * at[0];
    const double along = 1 - at[0];
    return 100 * across * across + along * along;
}

TEST(QuasiNewton, FindsTheEndOfABentValley) {
    int last = 0;
    SearchControl control;
    control.tolerance = 1e-12;
    control.progress = [&](int iteration, double) { EXPECT_EQ(iteration, ++last); };
    const auto lowest = lowestPoint(bentValley, {-1.2, 1}, control);
    ASSERT_TRUE(lowest.ok());
    EXPECT_TRUE(lowest->converged);
    EXPECT_NEAR(lowest->parameters[0], 1, 1e-4);
    EXPECT_NEAR(lowest->parameters[1], 1, 1e-4);
    EXPECT_LT(lowest->iterations, 60);
    EXPECT_EQ(last, lowest->iterations);
}

TEST(QuasiNewton, CurvatureAtTheLowestPoint) {
    const auto second = secondDerivatives(bentValley, {1, 1}, 1e-4);
    ASSERT_TRUE(second.ok());
    EXPECT_NEAR((*second)[0], 802, 1e-2);
    EXPECT_NEAR((*second)[1], -400, 1e-2);
    EXPECT_NEAR((*second)[3], 200, 1e-2);
    const auto inverse = inverseOfPositive(*second);
    ASSERT_TRUE(inverse.has_value());
    EXPECT_NEAR((*inverse)[0], .5, 1e-3);
    EXPECT_NEAR((*inverse)[1], 1, 1e-3);
    EXPECT_NEAR((*inverse)[3], 2.005, 1e-3);
}

TEST(QuasiNewton, AMatrixThatIsNotPositiveDefiniteHasNoInverse) {
    EXPECT_FALSE(inverseOfPositive({1, 2, 2, 1}).has_value());
    EXPECT_FALSE(inverseOfPositive({0}).has_value());
    EXPECT_TRUE(inverseOfPositive(std::vector<double>{}).has_value());
}

TEST(QuasiNewton, AProblemEndsTheSearch) {
    int calls = 0;
    const SearchedFunction failing = [&](const Numbers& at) -> Result<double> {
        if (++calls > 5) {
            return Problem{ProblemCode::cancelled, "Stopped.", "Start again.", {}};
        }
        return at[0] * at[0];
    };
    const auto lowest = lowestPoint(failing, {3});
    ASSERT_FALSE(lowest.ok());
    EXPECT_EQ(lowest.problem().code, ProblemCode::cancelled);
}

TEST(QuasiNewton, NothingToSearchIsFoundAtOnce) {
    const auto lowest = lowestPoint([](const Numbers&) -> Result<double> { return 7.; }, {});
    ASSERT_TRUE(lowest.ok());
    EXPECT_EQ(lowest->value, 7);
}

} // namespace
} // namespace pipwright
