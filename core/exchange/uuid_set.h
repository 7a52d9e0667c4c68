#pragma once

#include "core/units/uuid.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <vector>

namespace pipwright {

/// A set of names in 22 to 43 bytes each, for a million of them. The nil name is never in it.
class UuidSet {
  public:
    /// False when the name was there already, or is nil.
    bool insert(const Uuid& uuid) {
        if (isNil(uuid)) {
            return false;
        }
        if ((m_size + 1) * 4 > m_slots.size() * 3) {
            grow();
        }
        Uuid& slot = m_slots[slotOf(uuid)];
        if (slot == uuid) {
            return false;
        }
        slot = uuid;
        ++m_size;
        return true;
    }

    [[nodiscard]] bool contains(const Uuid& uuid) const {
        return m_size > 0 && !isNil(uuid) && m_slots[slotOf(uuid)] == uuid;
    }
    [[nodiscard]] std::size_t size() const { return m_size; }

  private:
    /// In two words, since it is asked at every step.
    static bool isNil(const Uuid& uuid) {
        std::array<std::uint64_t, 2> words{};
        std::memcpy(words.data(), uuid.bytes.data(), sizeof words);
        return (words[0] | words[1]) == 0;
    }

    [[nodiscard]] std::size_t slotOf(const Uuid& uuid) const {
        // The hash of a name may be poor in its low bits: mixed once more (Fibonacci hashing).
        const std::size_t mask = m_slots.size() - 1;
        std::size_t at = std::hash<Uuid>{}(uuid)*0x9E3779B97F4A7C15U >> 20U & mask;
        while (!isNil(m_slots[at]) && m_slots[at] != uuid) {
            at = (at + 1) & mask;
        }
        return at;
    }

    void grow() {
        std::vector<Uuid> old(m_slots.empty() ? 64 : m_slots.size() * 2);
        old.swap(m_slots);
        for (const Uuid& uuid : old) {
            if (!isNil(uuid)) {
                m_slots[slotOf(uuid)] = uuid;
            }
        }
    }

    std::vector<Uuid> m_slots; // nil: free
    std::size_t m_size = 0;
};

} // namespace pipwright
