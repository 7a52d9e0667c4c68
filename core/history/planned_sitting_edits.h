#pragma once

#include "core/history/edits.h"
#include "core/orchard/typed_score.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace pipwright {

/// A lot of a planned sitting as it goes into the book.
struct PlannedLot {
    std::optional<PlantId> plant;
    std::optional<GenotypeId> claimedGenotype; ///< of bought or given fruit
    std::string source;
    Hemisphere hemisphere = Hemisphere::unknown; ///< of the tree's site; unknown: the context's
    LotCondition condition;
    std::string code;  ///< empty: looked at only, nobody scores it
    std::string notes; ///< why it is there
};

/// A sitting with its codes and orders, before it is held.
struct PlannedSitting {
    Date date;
    std::string title;
    Sight sight = Sight::blind;
    std::int64_t draw = 0; ///< number codes and orders were drawn from
    std::vector<Person> newPersons;
    std::vector<PersonId> tasters;
    std::vector<PlannedLot> lots;
    /// A row a taster: places of the lots above, first served first.
    std::vector<std::vector<int>> orders;
};

/// One change set: sitting, lots, sealed key, and each taster's place for each lot as a score
/// without a word yet. "Sitting of 2026-08-22 planned, 9 lots, 3 tasters".
ChangeSet sittingPlanned(const PlannedSitting& sitting, const EditContext& context);

/// What was typed of one line of a sheet replaces what stood there. `what` names the line without
/// giving the fruit away: "Score of Mara Thorne for 417".
ChangeSet sheetLineWritten(const Score& score, const TypedScore& typed, const std::string& what,
                           const EditContext& context);

/// The taster's best ones, best first; all other lines of the sheet lose their rank.
ChangeSet bestOnesWritten(const std::vector<Score>& sheet, const std::vector<ScoreId>& best,
                          const std::string& taster, const EditContext& context);

/// "Key of 2026-08-22 opened". Lines of sheets on which nothing was written are taken away: nobody
/// tasted there. The reason must be given when there are such lines, else be empty.
ChangeSet keyOpened(const SealedKey& key, Date sitting, const std::vector<Score>& unwritten,
                    const std::string& reason, const EditContext& context);

} // namespace pipwright
