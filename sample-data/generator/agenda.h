#pragma once

#include "core/season/date.h"

#include <functional>
#include <map>
#include <tuple>

namespace pipwright::sample {

/// What happens when, told in any order and lived in the order of time.
class Agenda {
  public:
    using Deed = std::function<void()>;

    void add(Date day, int minute, Deed deed) {
        m_deeds.emplace(std::tuple(day, minute, m_deeds.size()), Entry{minute, std::move(deed)});
    }
    /// Lives all days up to the last one, that one included if it is before `end`.
    void live(Date end, const std::function<void(Date, int)>& wake) {
        for (const auto& [when, entry] : m_deeds) {
            if (std::get<0>(when) >= end) {
                break;
            }
            wake(std::get<0>(when), entry.minute);
            entry.deed();
        }
    }

  private:
    struct Entry {
        int minute = 0;
        Deed deed;
    };
    std::map<std::tuple<Date, int, std::size_t>, Entry> m_deeds;
};

} // namespace pipwright::sample
