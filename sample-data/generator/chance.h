#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

namespace pipwright::sample {

/// Repeatable chance (SplitMix64, Steele, Lea and Flood 2014). A chance drawn for a key ("AT17-014
/// crop 2024") does not depend on what was drawn before it, so one story can change alone.
class Chance {
  public:
    explicit Chance(std::uint64_t seed) : m_state(seed) {}
    explicit Chance(std::string_view key) : m_state(0xcbf29ce484222325ULL) {
        for (const char letter : key) {
            m_state = (m_state ^ static_cast<std::uint8_t>(letter)) * 0x100000001b3ULL;
        }
    }

    std::uint64_t next() {
        m_state += 0x9e3779b97f4a7c15ULL;
        std::uint64_t z = m_state;
        z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9ULL;
        z = (z ^ (z >> 27U)) * 0x94d049bb133111ebULL;
        return z ^ (z >> 31U);
    }
    /// Evenly in [0, 1).
    double unit() { return static_cast<double>(next() >> 11U) * 0x1.0p-53; }
    double between(double low, double high) { return low + (high - low) * unit(); }
    /// Nearly normal with mean 0 and SD 1: the sum of twelve evens less six. It uses no function of
    /// the C library, so every machine draws the same.
    double normal() {
        double sum = -6.0;
        for (int i = 0; i < 12; ++i) {
            sum += unit();
        }
        return sum;
    }
    bool happens(double probability) { return unit() < probability; }
    std::size_t below(std::size_t count) { return static_cast<std::size_t>(next() % count); }
    template <typename List>
    auto oneOf(const List& list) {
        return list[below(list.size())];
    }

  private:
    std::uint64_t m_state;
};

} // namespace pipwright::sample
