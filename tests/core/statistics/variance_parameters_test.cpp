#include "core/statistics/variance_parameters.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace pipwright {
namespace {

MixedModel modelOfThree() {
    MixedModel model;
    model.random.resize(3);
    model.random[1].covariates.resize(1); // intercept and slope
    model.random[2].variance = VarianceChoice::held(5);
    return model;
}

TEST(VarianceParameters, ThereAndBack) {
    const VarianceParameters parameters(modelOfThree(), 2);
    EXPECT_EQ(parameters.count(), 5U);
    const VarianceValues values{1.5, 2, -.7, 3, 5, 4.4};
    const VarianceValues back = parameters.values(parameters.startFrom(values));
    ASSERT_EQ(back.size(), values.size());
    for (std::size_t i = 0; i < values.size(); ++i) {
        EXPECT_NEAR(back[i], values[i], 1e-12) << i;
    }
    EXPECT_EQ(parameters.singleParameters(), (std::vector<std::size_t>{0}));
    EXPECT_EQ(parameters.estimated(), (std::vector<bool>{true, true, true, true, false, true}));
}

TEST(VarianceParameters, AStartIsLiftedFromZero) {
    const VarianceParameters parameters(modelOfThree(), 2);
    const VarianceValues back = parameters.values(parameters.startFrom({0, 0, 0, 0, 5, 4}));
    EXPECT_GT(back[0], 0);
    EXPECT_GT(back[1], 0);
    EXPECT_GT(back[3], 0);
}

TEST(VarianceParameters, Penalties) {
    MixedModel model = modelOfThree();
    model.random[0].variance = VarianceChoice::halfT(3, 4);
    // An inverse Wishart prior around {2, .5; .5, 1}.
    model.random[1].variance = {VarianceKnowledge::inverseChiSquare, {2, .5, .5, 1}, 6};
    model.residual.variance = {VarianceChoice::inverseChiSquare(2, 8)};
    const VarianceParameters parameters(model, 1);
    // S = {4, 1; 1, 2}: determinant 7, S^-1 = {2, -1; -1, 4} / 7, trace (4 - .5 - .5 + 4) / 7.
    const double known =
        5 * std::log(1 + 1.5 / 12) + 6 * (std::log(7.) + 1) + 8 * (std::log(3.) + 2. / 3);
    EXPECT_NEAR(parameters.penalty({1.5, 4, 1, 2, 5, 3}), known, 1e-12);
}

} // namespace
} // namespace pipwright
