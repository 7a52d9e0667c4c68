#pragma once

#include "core/history/edits.h"
#include "core/orchard/storage_path.h"
#include "core/orchard/typed_score.h"

#include <optional>
#include <string>
#include <vector>

namespace pipwright {

/// A lot of a sitting with the tasters' words on it.
struct ServedLot {
    std::optional<PlantId> plant;
    std::optional<GenotypeId> claimedGenotype; ///< of bought or given fruit
    std::string source;
    Hemisphere hemisphere = Hemisphere::unknown; ///< of the tree's site; unknown: the context's
    LotCondition condition;
    std::vector<BiteScore> scores; ///< empty ones are left out
};

/// A sitting written down after the event.
struct HeldSitting {
    Date date;
    std::string title;
    Sight sight = Sight::unknown;
    TastingPlace place = TastingPlace::table;
    std::string notes;
    std::vector<Person> newPersons; ///< tasters the book does not know yet, with their ids
    std::vector<ServedLot> lots;    ///< in the order they were served
};

/// One change set for the whole sitting: "Sitting of 2026-08-22, 9 lots". The crop year of each
/// lot is that of the day it left the tree, as far as the storage path tells it.
ChangeSet sittingHeld(const HeldSitting& sitting, const EditContext& context);

/// The way of a lot, and how it was typed, put into its condition.
void putPath(const StoredPath& path, LotCondition& condition);

/// "Score of Mara Thorne for AT17-014 corrected": what was typed replaces what stood there.
ChangeSet scoreCorrected(const Score& score, const TypedScore& typed, const std::string& what,
                         const EditContext& context);

/// "Condition of AT17-014 on 2026-08-22 corrected": this condition replaces the one of the lot.
/// The crop year follows when the day the fruit left the tree is another one now. `tasted` is the
/// day of its sitting.
ChangeSet conditionCorrected(const Lot& lot, const LotCondition& condition, Date tasted,
                             const std::string& what, const EditContext& context);

/// A score the sheet had and the book had not.
ChangeSet scoreAdded(LotId lot, PersonId taster, const TypedScore& typed, const std::string& what,
                     const EditContext& context);

} // namespace pipwright
