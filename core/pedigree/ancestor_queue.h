#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace pipwright {

/// Numbers below a bound, each held once, taken out from the highest. Made for climbing from
/// children to parents when the higher number is never an ancestor of the lower: what is put in
/// while it empties is lower than what was just taken.
class AncestorQueue {
  public:
    explicit AncestorQueue(int bound)
        : m_words((static_cast<std::size_t>(bound) >> kShift) + 1),
          m_groups((m_words.size() >> kShift) + 1) {}

    void insert(int number) {
        const auto at = static_cast<std::size_t>(number);
        const std::size_t word = at >> kShift;
        m_words[word] |= std::uint64_t{1} << (at & kMask);
        m_groups[word >> kShift] |= std::uint64_t{1} << (word & kMask);
        if (m_top < (word >> kShift)) {
            m_top = word >> kShift;
        }
    }

    /// The highest number, taken out; -1 when there is none.
    int takeHighest() {
        while (m_groups[m_top] == 0) {
            if (m_top == 0) {
                return -1;
            }
            --m_top;
        }
        const std::size_t word = (m_top << kShift) + highestBit(m_groups[m_top]);
        const std::size_t bit = highestBit(m_words[word]);
        m_words[word] ^= std::uint64_t{1} << bit;
        if (m_words[word] == 0) {
            m_groups[m_top] ^= std::uint64_t{1} << (word & kMask);
        }
        return static_cast<int>((word << kShift) + bit);
    }

  private:
    static constexpr std::size_t kShift = 6; // 64 numbers a word, 64 words a group
    static constexpr std::size_t kMask = 63;

    /// Of a word that is not 0; the mask keeps the number within it whatever comes.
    static std::size_t highestBit(std::uint64_t word) {
        return (kMask - static_cast<std::size_t>(std::countl_zero(word))) & kMask;
    }

    std::vector<std::uint64_t> m_words;
    std::vector<std::uint64_t> m_groups; ///< which words hold something
    std::size_t m_top = 0;               ///< no group above this one holds anything
};

} // namespace pipwright
