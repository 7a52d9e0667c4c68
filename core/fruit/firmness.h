#pragma once

#include "core/units/quantity.h"
#include "core/units/result.h"

#include <compare>

namespace pipwright {

using Newtons = Quantity<struct NewtonUnit>;
/// The weight of a kilogram at standard gravity; the trade says "kg".
using KilogramsForce = Quantity<struct KilogramForceUnit>;
/// The weight of a pound of 0.45359237 kg at standard gravity; the trade says "lb".
using PoundsForce = Quantity<struct PoundForceUnit>;

// Standard gravity is 9.80665 m/s2 (third General Conference on Weights and Measures, 1901).
constexpr Newtons toNewtons(KilogramsForce force) {
    return Newtons{force.number() * 9.80665};
}
constexpr KilogramsForce toKilogramsForce(Newtons force) {
    return KilogramsForce{force.number() / 9.80665};
}
constexpr Newtons toNewtons(PoundsForce force) {
    return Newtons{force.number() * (0.45359237 * 9.80665)};
}
constexpr PoundsForce toPoundsForce(Newtons force) {
    return PoundsForce{force.number() / (0.45359237 * 9.80665)};
}

/// The probe for apples: 11.1 mm (7/16 inch), about a square centimetre.
struct AppleProbe {
    static constexpr Millimetres kDiameter{11.1};
};

/// The probe for pears and other soft fruit: 8 mm (5/16 inch), about half of that.
struct PearProbe {
    static constexpr Millimetres kDiameter{8};
};

/// The area a probe presses on.
template <typename Probe>
constexpr double squareMillimetresOf() {
    constexpr double kPi = 3.14159265358979323846;
    return kPi * Probe::kDiameter.number() * Probe::kDiameter.number() / 4;
}

/// The force that pushes a probe 8 mm deep into the peeled fruit. Readings of different probes
/// are different types, neither compared nor converted: the force does not go by the area alone.
template <typename Probe>
class Firmness {
  public:
    /// A Problem for negative forces, and for more than 300 N, which no fruit withstands.
    static Result<Firmness> of(Newtons force) {
        if (force.number() >= 0 && force.number() <= 300) { // false for NaN
            return Firmness{force};
        }
        return Problem{ProblemCode::badInput, "That is no firmness of a fruit.",
                       "Type a force, as 7.5 kgf, 16 lbf or 70 N.", ""};
    }

    [[nodiscard]] constexpr Newtons force() const { return m_force; }
    constexpr auto operator<=>(const Firmness&) const = default;

  private:
    constexpr explicit Firmness(Newtons force) : m_force(force) {}

    Newtons m_force;
};

} // namespace pipwright
