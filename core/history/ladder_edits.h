#pragma once

#include "core/history/edits.h"
#include "core/orchard/decisions.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// The winter's meeting: the season cut into slots, and who stands on their rungs.
namespace pipwright {

/// A benchmark put on a rung.
struct RungChoice {
    Rung rung = Rung::unknown;
    GenotypeId genotype;
    std::string reason;
};

/// Some days of a season, and the rungs decided with them.
struct CutSlot {
    Date first;
    Date last;
    std::string name;
    std::vector<RungChoice> rungs;
};

/// One election more; the earlier one of that rung stays in the book and is outvoted.
/// "Best of end of August: Odo".
ChangeSet electRung(const Slot& slot, const RungChoice& choice, const std::string& code,
                    const EditContext& context);

/// What the book holds of a crop year's season already, to be cut anew.
struct SeasonAsCut {
    std::vector<Slot> slots;
    std::vector<Election> elections; ///< of those slots
};

/// The season of a crop year in these slots. Slots it has already are moved to the new one they
/// share most days with and keep their elections; those that share none are taken away with
/// theirs. "Season of 2026 cut into 8 slots". The label is the crop year as the book names it.
ChangeSet cutSlots(CropYear cropYear, const std::string& label, std::optional<SpeciesId> species,
                   std::span<const CutSlot> slots, const SeasonAsCut& before,
                   const EditContext& context);

} // namespace pipwright
