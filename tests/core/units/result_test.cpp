#include "core/units/result.h"

#include <gtest/gtest.h>
#include <memory>
#include <string>

namespace pipwright {
namespace {

Problem lateFrost() {
    return {ProblemCode::badInput, "Position 0 does not exist.", "Count from 1.",
            "plant.csv, line 12, column position"};
}

TEST(Result, HoldsAValue) {
    Result<std::string> result{std::string{"row 3"}};
    ASSERT_TRUE(result.ok());
    EXPECT_TRUE(static_cast<bool>(result));
    EXPECT_EQ(*result, "row 3");
    EXPECT_EQ(result->size(), 5U);
    result.value() += "/4";
    EXPECT_EQ(result.value(), "row 3/4");
}

TEST(Result, HoldsAProblem) {
    const Result<int> result{lateFrost()};
    EXPECT_FALSE(result.ok());
    EXPECT_FALSE(static_cast<bool>(result));
    EXPECT_EQ(result.problem().code, ProblemCode::badInput);
}

TEST(Result, GivesItsValueAway) {
    Result<std::unique_ptr<int>> result{std::make_unique<int>(9)};
    const std::unique_ptr<int> taken = std::move(result).value();
    EXPECT_EQ(*taken, 9);
}

TEST(Result, OutcomeIsSuccessUnlessTold) {
    EXPECT_TRUE(Outcome{}.ok());
    const Outcome failed{lateFrost()};
    EXPECT_FALSE(failed.ok());
    EXPECT_EQ(failed.problem().remedy, "Count from 1.");
}

TEST(Problem, MakesOneSentenceOfItsParts) {
    Problem problem = lateFrost();
    EXPECT_EQ(problem.sentence(),
              "plant.csv, line 12, column position: Position 0 does not exist. Count from 1.");
    problem.where.clear();
    problem.remedy.clear();
    EXPECT_EQ(problem.sentence(), "Position 0 does not exist.");
}

} // namespace
} // namespace pipwright
