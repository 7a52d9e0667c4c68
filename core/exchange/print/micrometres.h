#pragma once

#include <cstdint>

namespace pipwright {

/// A length on paper in whole micrometres. Nothing printed is placed in any other unit, so what
/// is compared in a test is exactly what is drawn.
struct Micrometres {
    std::int32_t count = 0;

    bool operator==(const Micrometres&) const = default;
    friend constexpr bool operator<(Micrometres a, Micrometres b) { return a.count < b.count; }
    friend constexpr bool operator>(Micrometres a, Micrometres b) { return b < a; }
    friend constexpr bool operator<=(Micrometres a, Micrometres b) { return !(b < a); }
    friend constexpr bool operator>=(Micrometres a, Micrometres b) { return !(a < b); }
    constexpr Micrometres& operator+=(Micrometres other) {
        count += other.count;
        return *this;
    }
    friend constexpr Micrometres operator+(Micrometres a, Micrometres b) {
        return {a.count + b.count};
    }
    friend constexpr Micrometres operator-(Micrometres a, Micrometres b) {
        return {a.count - b.count};
    }
    friend constexpr Micrometres operator*(Micrometres a, std::int32_t times) {
        return {a.count * times};
    }
    friend constexpr Micrometres operator/(Micrometres a, std::int32_t parts) {
        return {a.count / parts};
    }
};

/// The nearest whole number of micrometres.
constexpr Micrometres millimetres(double mm) {
    return {static_cast<std::int32_t>(mm * 1000.0 + (mm < 0.0 ? -0.5 : 0.5))};
}

constexpr double inMillimetres(Micrometres length) {
    return length.count / 1000.0;
}

/// One typographic point is 1/72 of an inch of 25.4 mm.
constexpr Micrometres fromPoints(double points) {
    return millimetres(points * 25.4 / 72.0);
}

constexpr Micrometres operator""_mm(unsigned long long mm) {
    return millimetres(static_cast<double>(mm));
}
constexpr Micrometres operator""_mm(long double mm) {
    return millimetres(static_cast<double>(mm));
}

} // namespace pipwright
