#pragma once

#include "core/fruit/mass.h"
#include "core/units/quantity.h"
#include "core/units/result.h"

#include <optional>
#include <span>
#include <string>

namespace pipwright {

/// A class of 5 mm by which apples are sorted: below 55, 55 to 60, ... 85 to 90, and 90 and above.
/// A fruit on the limit belongs to the upper class.
class SizeClass {
  public:
    static constexpr int kCount = 9;

    /// A Problem for diameters below nothing and beyond 300 mm.
    static Result<SizeClass> of(Millimetres diameter);
    /// The classes from the smallest, 0, to the largest, 8; nothing for other numbers.
    static std::optional<SizeClass> at(int number);

    [[nodiscard]] int number() const { return m_number; }
    /// Nothing for the smallest class.
    [[nodiscard]] std::optional<Millimetres> from() const;
    /// Nothing for the largest class.
    [[nodiscard]] std::optional<Millimetres> below() const;
    /// The middle; nothing for the smallest and the largest class, which have none.
    [[nodiscard]] std::optional<Millimetres> middle() const;
    /// "under 55 mm", "55 to 60 mm", "90 mm and over".
    [[nodiscard]] std::string label() const;

    auto operator<=>(const SizeClass&) const = default;

  private:
    explicit SizeClass(int number) : m_number(number) {}

    int m_number;
};

struct SizedFruit {
    SizeClass size;
    Kilograms mass;
};

/// The mean diameter, the classes' middles weighted by mass.
struct MeanSize {
    Millimetres diameter;
    Kilograms counted;
    /// Of the smallest and the largest class, which have no middle and stay out of the mean.
    Kilograms leftOut;
};

/// A Problem for negative masses, NaN, and when no fruit is in a class with a middle.
Result<MeanSize> meanSize(std::span<const SizedFruit> fruit);

/// The mean mass of a fruit when so many fill a carton of 42 pounds (19.05 kg), the trade's size in
/// the United States ("100 count"). A Problem below one fruit.
Result<Grams> meanMassInCarton(int count);

} // namespace pipwright
