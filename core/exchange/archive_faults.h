#pragma once

#include "core/units/result.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace pipwright {

/// The faults of an archive or a table: the first ones whole, the others counted.
class FaultList {
  public:
    explicit FaultList(std::size_t most) : m_most(most) {}

    void add(Problem problem) {
        ++m_count;
        if (m_kept.size() < m_most) {
            m_kept.push_back(std::move(problem));
        }
    }
    [[nodiscard]] std::int64_t count() const { return m_count; }
    [[nodiscard]] const std::vector<Problem>& kept() const { return m_kept; }

  private:
    std::size_t m_most;
    std::int64_t m_count = 0;
    std::vector<Problem> m_kept;
};

/// "plant.csv, line 12, column position"
inline std::string placeInTable(std::string_view file, std::int64_t line,
                                std::string_view column = {}) {
    std::string place = std::string(file) + ", line " + std::to_string(line);
    return column.empty() ? place : place + ", column " + std::string(column);
}

} // namespace pipwright
