#pragma once

#include "core/orchard/genotypes.h"
#include "core/orchard/traits.h"

#include <string_view>
#include <vector>

/// The traits and species that ship with every new book. Their ids follow from their keys, so two
/// books agree on them. A user's own traits have no key.
namespace pipwright {

/// Keys of shipped traits that the program itself asks for.
namespace trait_key {
inline constexpr std::string_view kNote = "note";
inline constexpr std::string_view kRipeningState = "ripening_state";
inline constexpr std::string_view kDrop = "drop";
inline constexpr std::string_view kCropLoad = "crop_load";
inline constexpr std::string_view kBloomStage = "bloom_stage";
inline constexpr std::string_view kFullBloom = "full_bloom";
inline constexpr std::string_view kFirstRipe = "first_ripe";
inline constexpr std::string_view kLastGood = "last_good_on_tree";
inline constexpr std::string_view kScab = "scab";
inline constexpr std::string_view kMildew = "mildew";
inline constexpr std::string_view kFireBlight = "fire_blight";
inline constexpr std::string_view kVigour = "vigour";
inline constexpr std::string_view kDaysGood = "days_still_good";
} // namespace trait_key

/// The id of a shipped trait, state (by the trait's key and its own) or species.
TraitId shippedTraitId(std::string_view key);
TraitStateId shippedStateId(std::string_view traitKey, std::string_view stateKey);
SpeciesId shippedSpeciesId(std::string_view key);

std::vector<Trait> shippedTraits();
std::vector<TraitState> shippedTraitStates();
std::vector<Species> shippedSpecies();

/// The state that stands for a walk mark on the trait "ripening_state".
TraitStateId stateOf(WalkMark mark);

} // namespace pipwright
