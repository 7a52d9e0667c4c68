#pragma once

#include "core/evaluation/merit/tasting_ledger.h"
#include "core/evaluation/merit/verdict.h"

#include <optional>
#include <stop_token>
#include <vector>

namespace pipwright {

/// Stages as the decisions up to a day left them, one a genotype.
Result<std::vector<Stage>> stagesAsOf(const OrchardView& view, const Store& store, Date asOf);

struct EvaluationRequest {
    Date day;               ///< its crop year is the one whose ladders count
    bool asItStood = false; ///< leave out all that was tasted, seen, decided or elected after it
    MeritOptions options;
    VerdictChoices choices;
};

/// Merits, ladders and verdicts of the whole book at once.
struct BookEvaluation {
    CropYear cropYear;
    std::optional<Date> asOf; ///< set back to this day
    MeritModel model;
    std::vector<SeasonLadders> ladders;
    std::vector<RipeningDay> days; ///< one a genotype
    std::vector<Stage> stages;     ///< one a genotype
    FaultLedger faults;
    std::vector<SeedlingVerdict> verdicts;

    [[nodiscard]] VerdictGround ground(const OrchardView& view) const;
    [[nodiscard]] const SeedlingVerdict* verdictOn(Index genotype) const;
};

/// Set back to a day, the book is read as it stood: tastings, walk marks, faults, decisions and
/// elections up to it. What is known of pedigree, of the trees' identity and of living copies is
/// today's, and so is who counts as a benchmark.
/// Problem: as MeritModel::fit and verdicts.
Result<BookEvaluation> evaluateBook(const OrchardView& view, const Store& store,
                                    const TastingLedger& ledger, const EvaluationRequest& request,
                                    std::stop_token stop = {});

} // namespace pipwright
