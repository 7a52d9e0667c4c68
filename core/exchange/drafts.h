#pragma once

#include "core/history/change.h"

#include <deque>
#include <optional>
#include <unordered_map>
#include <utility>

namespace pipwright {

/// Things of one kind as they stand in the book and as they are to be. They may be changed again
/// and again; what comes of it is one creation or one edit each.
template <typename Thing>
class Drafts {
  public:
    /// Takes up what is in the book.
    void know(Thing thing) { add(std::move(thing), false); }
    /// Adds what is to be created. Its place in memory stays.
    Thing& create(Thing thing) { return add(std::move(thing), true).now; }

    /// Only for an id that is here.
    [[nodiscard]] const Thing& at(const Uuid& id) const { return m_items[m_places.at(id)].now; }
    /// The same, to be changed.
    Thing& edit(const Uuid& id) {
        Item& item = m_items[m_places.at(id)];
        if (!item.isNew && !item.before) {
            item.before = item.now;
        }
        return item.now;
    }
    [[nodiscard]] bool contains(const Uuid& id) const { return m_places.contains(id); }
    [[nodiscard]] std::size_t size() const { return m_items.size(); }

    template <typename Visitor>
    void forEach(Visitor visit) const {
        for (const Item& item : m_items) {
            visit(item.now);
        }
    }
    void addTo(ChangeSet& set) const {
        for (const Item& item : m_items) {
            if (item.isNew) {
                set.create(item.now);
            } else if (item.before) {
                set.edit(*item.before, item.now);
            }
        }
    }

  private:
    struct Item {
        Thing now;
        std::optional<Thing> before; // once it is changed
        bool isNew = false;
    };

    Item& add(Thing thing, bool isNew) {
        m_places.emplace(thing.id.uuid, m_items.size());
        m_items.push_back({std::move(thing), std::nullopt, isNew});
        return m_items.back();
    }

    std::deque<Item> m_items;
    std::unordered_map<Uuid, std::size_t> m_places;
};

} // namespace pipwright
