#include "core/fruit/fruit_size.h"

#include "core/fruit/wrong_amount.h"

#include <algorithm>
#include <cmath>

namespace pipwright {

namespace {

constexpr int kSmallestLimit = 55;
constexpr int kStep = 5;
constexpr double kMostMillimetres = 300;
constexpr double kCartonGrams = 42 * 453.59237;

int lowerLimit(int number) {
    return kSmallestLimit + kStep * (number - 1);
}

} // namespace

Result<SizeClass> SizeClass::of(Millimetres diameter) {
    if (!(diameter.number() >= 0 && diameter.number() <= kMostMillimetres)) { // NaN too
        return wrongAmount("That is no diameter of a fruit.", "Type millimetres, as 68.");
    }
    const double steps = std::floor((diameter.number() - kSmallestLimit) / kStep) + 1;
    return SizeClass{std::clamp(static_cast<int>(steps), 0, kCount - 1)};
}

std::optional<SizeClass> SizeClass::at(int number) {
    return number >= 0 && number < kCount ? std::optional(SizeClass{number}) : std::nullopt;
}

std::optional<Millimetres> SizeClass::from() const {
    return m_number == 0 ? std::nullopt
                         : std::optional(Millimetres{static_cast<double>(lowerLimit(m_number))});
}

std::optional<Millimetres> SizeClass::below() const {
    return m_number == kCount - 1
               ? std::nullopt
               : std::optional(Millimetres{static_cast<double>(lowerLimit(m_number + 1))});
}

std::optional<Millimetres> SizeClass::middle() const {
    if (!from() || !below()) {
        return std::nullopt;
    }
    return (*from() + *below()) / 2;
}

std::string SizeClass::label() const {
    if (!from()) {
        return "under " + std::to_string(kSmallestLimit) + " mm";
    }
    const std::string limit = std::to_string(lowerLimit(m_number));
    return below() ? limit + " to " + std::to_string(lowerLimit(m_number + 1)) + " mm"
                   : limit + " mm and over";
}

Result<MeanSize> meanSize(std::span<const SizedFruit> fruit) {
    MeanSize mean;
    double weighted = 0;
    for (const SizedFruit& one : fruit) {
        if (!std::isfinite(one.mass.number()) || one.mass.number() < 0) {
            return wrongAmount("A class has a mass below nothing.", "Type kilograms, as 12.5.");
        }
        const auto middle = one.size.middle();
        (middle ? mean.counted : mean.leftOut) += one.mass;
        weighted += middle ? middle->number() * one.mass.number() : 0;
    }
    if (mean.counted.number() <= 0) {
        return wrongAmount("No fruit lies in a class that has a middle.",
                           "Weigh the fruit between 55 and 90 mm, or measure each.");
    }
    mean.diameter = Millimetres{weighted / mean.counted.number()};
    return mean;
}

Result<Grams> meanMassInCarton(int count) {
    if (count < 1) {
        return wrongAmount("A carton holds at least one fruit.", "Type the count, as 100.");
    }
    return Grams{kCartonGrams / count};
}

} // namespace pipwright
