#pragma once

#include "core/history/change.h"

#include <array>
#include <cstdint>
#include <string>

namespace pipwright {

/// A digest of a book's content that does not depend on the order of its records: the sum, modulo
/// 2^256, of the SHA-256 of each record's kind, id and JSON. Records can be added and taken away,
/// so it can be rolled back through the journal without holding the older content.
class Digest {
  public:
    void add(const Record& record);
    void remove(const Record& record);

    /// 64 hexadecimal digits; all zero for an empty book.
    [[nodiscard]] std::string text() const;
    bool operator==(const Digest&) const = default;

  private:
    std::array<std::uint32_t, 8> m_sum{}; // least significant word first
};

} // namespace pipwright
