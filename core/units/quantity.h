#pragma once

#include <compare>
#include <cstdint>

namespace pipwright {

/// A number of a unit that the type knows. It is made and taken apart by name only, so a number
/// without a unit never slips in, and metres are never added to feet.
template <typename Unit, typename Number = double>
class Quantity {
  public:
    constexpr Quantity() = default; ///< none of it
    constexpr explicit Quantity(Number number) : m_number(number) {}

    /// How many of the unit.
    [[nodiscard]] constexpr Number number() const { return m_number; }

    constexpr auto operator<=>(const Quantity&) const = default;

    constexpr Quantity operator-() const { return Quantity{-m_number}; }
    constexpr Quantity& operator+=(Quantity other) {
        m_number += other.m_number;
        return *this;
    }
    constexpr Quantity& operator-=(Quantity other) {
        m_number -= other.m_number;
        return *this;
    }
    friend constexpr Quantity operator+(Quantity left, Quantity right) { return left += right; }
    friend constexpr Quantity operator-(Quantity left, Quantity right) { return left -= right; }
    friend constexpr Quantity operator*(Quantity left, Number times) {
        return Quantity{left.m_number * times};
    }
    friend constexpr Quantity operator*(Number times, Quantity right) { return right * times; }
    friend constexpr Quantity operator/(Quantity left, Number parts) {
        return Quantity{left.m_number / parts};
    }
    /// How many times the one holds the other.
    friend constexpr Number operator/(Quantity left, Quantity right) {
        return left.m_number / right.m_number;
    }

  private:
    Number m_number{};
};

using Metres = Quantity<struct MetreUnit>;
using Millimetres = Quantity<struct MillimetreUnit>;
using Grams = Quantity<struct GramUnit>;
using Feet = Quantity<struct FootUnit>;
using Inches = Quantity<struct InchUnit>;
/// Avoirdupois ounces.
using Ounces = Quantity<struct OunceUnit>;

/// A temperature on the Celsius scale. Temperatures have an order; they are not added.
class Celsius {
  public:
    constexpr explicit Celsius(double degrees) : m_degrees(degrees) {}
    [[nodiscard]] constexpr double degrees() const { return m_degrees; }
    constexpr auto operator<=>(const Celsius&) const = default;

  private:
    double m_degrees;
};

/// A temperature on the Fahrenheit scale.
class Fahrenheit {
  public:
    constexpr explicit Fahrenheit(double degrees) : m_degrees(degrees) {}
    [[nodiscard]] constexpr double degrees() const { return m_degrees; }
    constexpr auto operator<=>(const Fahrenheit&) const = default;

  private:
    double m_degrees;
};

constexpr Millimetres toMillimetres(Metres length) {
    return Millimetres{length.number() * 1000};
}
constexpr Metres toMetres(Millimetres length) {
    return Metres{length.number() / 1000};
}

// The international yard and pound agreement of 1959: an inch is 25.4 mm and a pound of
// 16 ounces is 453.59237 g, both exactly.
constexpr Inches toInches(Millimetres length) {
    return Inches{length.number() / 25.4};
}
constexpr Millimetres toMillimetres(Inches length) {
    return Millimetres{length.number() * 25.4};
}
constexpr Feet toFeet(Metres length) {
    return Feet{length.number() / 0.3048};
}
constexpr Metres toMetres(Feet length) {
    return Metres{length.number() * 0.3048};
}
constexpr Ounces toOunces(Grams mass) {
    return Ounces{mass.number() * 16 / 453.59237};
}
constexpr Grams toGrams(Ounces mass) {
    return Grams{mass.number() * 453.59237 / 16};
}

constexpr Fahrenheit toFahrenheit(Celsius temperature) {
    return Fahrenheit{temperature.degrees() * 9 / 5 + 32};
}
constexpr Celsius toCelsius(Fahrenheit temperature) {
    return Celsius{(temperature.degrees() - 32) * 5 / 9};
}

} // namespace pipwright
