#pragma once

#include "core/units/text.h"
#include "core/units/uuid.h"

#include <algorithm>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace pipwright {

/// Finds things by what people call them: exactly, then without case, accents and blanks, then by
/// their aliases.
class NameIndex {
  public:
    void add(std::string_view name, const Uuid& thing) {
        put(m_exact, std::string(name), thing);
        put(m_loose, loose(name), thing);
    }
    void addAlias(std::string_view name, const Uuid& thing) { put(m_aliases, loose(name), thing); }

    /// All that are called so, by the first of the three ways that finds any.
    [[nodiscard]] const std::vector<Uuid>& find(std::string_view name) const {
        static const std::vector<Uuid> none;
        for (const auto& [map, key] :
             {std::pair(&m_exact, std::string(name)), std::pair(&m_loose, loose(name)),
              std::pair(&m_aliases, loose(name))}) {
            if (const auto found = map->find(key); found != map->end()) {
                return found->second;
            }
        }
        return none;
    }

  private:
    using Map = std::unordered_map<std::string, std::vector<Uuid>>;

    static std::string loose(std::string_view name) {
        std::string key = foldedForSearch(name);
        std::erase(key, ' ');
        return key;
    }
    static void put(Map& map, std::string key, const Uuid& thing) {
        auto& things = map[std::move(key)];
        if (!things.empty() && std::find(things.begin(), things.end(), thing) != things.end()) {
            return;
        }
        things.push_back(thing);
    }

    Map m_exact;
    Map m_loose;
    Map m_aliases;
};

} // namespace pipwright
