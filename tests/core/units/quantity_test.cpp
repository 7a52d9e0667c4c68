#include "core/units/quantity.h"

#include <functional>
#include <gtest/gtest.h>
#include <type_traits>

namespace pipwright {
namespace {

static_assert(!std::is_convertible_v<double, Metres>, "a number is no length");
static_assert(!std::is_convertible_v<Metres, double>, "a length is no number");
static_assert(!std::is_constructible_v<Feet, Metres>, "feet are not made of metres in silence");
static_assert(!std::is_invocable_v<std::plus<>, Metres, Feet>, "units do not mix");
static_assert(!std::is_invocable_v<std::plus<>, Celsius, Celsius>, "temperatures do not add up");

TEST(Quantity, CalculatesWithinOneUnit) {
    EXPECT_EQ(Metres{3.5} + Metres{0.5}, Metres{4});
    EXPECT_EQ(Metres{3.5} - Metres{4}, Metres{-0.5});
    EXPECT_EQ(2 * Grams{150}, Grams{300});
    EXPECT_EQ(Grams{150} / 2, Grams{75});
    EXPECT_EQ(Grams{150} / Grams{50}, 3.0);
    EXPECT_LT(Millimetres{62}, Millimetres{63.5});
    EXPECT_EQ(Metres{}, Metres{0});
}

TEST(Quantity, ConvertsMetricLengths) {
    EXPECT_EQ(toMillimetres(Metres{3.4}), Millimetres{3400});
    EXPECT_EQ(toMetres(Millimetres{3400}), Metres{3.4});
}

TEST(Quantity, ConvertsToAndFromUsUnits) {
    EXPECT_DOUBLE_EQ(toMetres(Feet{10}).number(), 3.048);
    EXPECT_DOUBLE_EQ(toFeet(Metres{3.048}).number(), 10);
    EXPECT_DOUBLE_EQ(toMillimetres(Inches{2}).number(), 50.8);
    EXPECT_DOUBLE_EQ(toInches(Millimetres{63.5}).number(), 2.5);
    EXPECT_DOUBLE_EQ(toGrams(Ounces{16}).number(), 453.59237);
    EXPECT_DOUBLE_EQ(toOunces(Grams{453.59237}).number(), 16);
    EXPECT_DOUBLE_EQ(toFahrenheit(Celsius{100}).degrees(), 212);
    EXPECT_DOUBLE_EQ(toFahrenheit(Celsius{-40}).degrees(), -40);
    EXPECT_DOUBLE_EQ(toCelsius(Fahrenheit{32}).degrees(), 0);
    EXPECT_LT(Celsius{-2.2}, Celsius{0});
}

} // namespace
} // namespace pipwright
