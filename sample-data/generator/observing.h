#pragma once

#include "core/orchard/dictionary.h"

#include <string>
#include <string_view>

#include "sample-data/generator/world.h"

namespace pipwright::sample {

/// Each adds one observation of today by the breeder to the change set begun.
void observeMark(World& world, const Tree& tree, WalkMark mark, const std::string& words = {});
void observeState(World& world, const Tree& tree, std::string_view trait, std::string_view state,
                  const std::string& words = {});
void observeNote(World& world, const Tree& tree, const std::string& words);
/// A day, such as that of full bloom.
void observeDay(World& world, const Tree& tree, std::string_view trait, Date day);
/// A number as she typed it: "13-14", "~40", "<5".
void observeNumber(World& world, const Tree& tree, std::string_view trait, const std::string& typed,
                   const std::string& instrument = {});
/// An observation of today with nothing but its subject's crop year, trait and observer.
Observation observationOf(World& world, std::string_view trait);

/// A note as a change set of its own.
void note(World& world, const std::string& code, const std::string& words);

} // namespace pipwright::sample
