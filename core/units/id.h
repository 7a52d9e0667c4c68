#pragma once

#include "core/units/uuid.h"

#include <compare>
#include <functional>

namespace pipwright {

/// The id of one kind of thing. It is not a number, and no other kind's id fits in its place;
/// "no such thing" is std::optional<Id<Thing>>, never a special value.
template <typename Thing>
struct Id {
    Uuid uuid;

    Id() = default;
    explicit Id(const Uuid& name) : uuid(name) {}

    auto operator<=>(const Id&) const = default;
};

} // namespace pipwright

template <typename Thing>
struct std::hash<pipwright::Id<Thing>> {
    std::size_t operator()(const pipwright::Id<Thing>& id) const noexcept {
        return std::hash<pipwright::Uuid>{}(id.uuid);
    }
};
