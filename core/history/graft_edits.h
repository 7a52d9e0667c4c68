#pragma once

#include "core/history/edits.h"
#include "core/orchard/grafts.h"
#include "core/units/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace pipwright {

/// The wish as it stood and as it shall stand: "Graft wish of AT17-014 changed".
ChangeSet graftWishChanged(const GraftWish& before, const GraftWish& after, const std::string& code,
                           const EditContext& context);

/// How a wish is to be carried out.
struct GraftPlan {
    GraftMethod method = GraftMethod::unknown;
    std::int64_t number = 1;
    std::optional<PlantId> ontoPlant;
    std::string ontoWords;
    std::optional<Date> date;
    std::string season; ///< the date as typed, when it is no single day
    std::string notes;
};

/// An order that answers the wish; the wish, if it was open, is ordered now.
ChangeSet graftsOrdered(const GraftWish& wish, const GraftPlan& plan, const std::string& code,
                        const EditContext& context);

/// What somebody found when he looked: the number alive, and words on the others.
struct GraftCount {
    std::int64_t alive = 0;
    std::string cause;
};

/// Reads "4", "4 of 5" or "4 frost": the number alive out of `ordered`, then words. The Problem
/// says when more live than were grafted.
Result<GraftCount> readGraftCount(std::string_view typed, std::int64_t ordered);

/// A look at the grafts of an order; corrects the check of that name when there is one.
ChangeSet graftsChecked(const GraftOrder& order, const std::optional<GraftCheck>& before,
                        GraftCheckpoint checkpoint, const GraftCount& count,
                        const std::string& code, const EditContext& context);

} // namespace pipwright
