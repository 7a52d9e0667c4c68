#pragma once

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace pipwright {

/// Numbers that look drawn but are the same on every machine and with every library: SplitMix64
/// (Steele, Lea and Flood 2014, OOPSLA, p. 453).
class PlanChance {
  public:
    explicit PlanChance(std::uint64_t draw) : m_state(draw) {}

    std::uint64_t next() {
        m_state += 0x9E3779B97F4A7C15U;
        std::uint64_t mixed = m_state;
        mixed = (mixed ^ (mixed >> 30U)) * 0xBF58476D1CE4E5B9U;
        mixed = (mixed ^ (mixed >> 27U)) * 0x94D049BB133111EBU;
        return mixed ^ (mixed >> 31U);
    }
    /// 0 to `end` - 1; `end` above 0. For the small ends used here the last values are not rarer
    /// than the first by anything that could be seen.
    int below(int end) { return static_cast<int>(next() % static_cast<std::uint64_t>(end)); }

    /// Fisher and Yates (1938).
    template <typename Thing>
    void shuffle(std::vector<Thing>& things) {
        for (std::size_t left = things.size(); left > 1; --left) {
            std::swap(things[left - 1],
                      things[static_cast<std::size_t>(below(static_cast<int>(left)))]);
        }
    }

  private:
    std::uint64_t m_state;
};

} // namespace pipwright
