#pragma once

#include "core/evaluation/merit/faults.h"
#include "core/evaluation/merit/merit_model.h"
#include "core/evaluation/merit/ripening_days.h"
#include "core/evaluation/merit/slots.h"

#include <cstddef>
#include <optional>
#include <vector>

/// What a seedling is worth against the ladder of its own slot, how sure that is, and what the
/// breeder's own thresholds make of it. It suggests; it never moves a stage.
namespace pipwright {

/// The gate a seedling stands before.
enum class Gate {
    none,                ///< it is through all of them, or out
    beforeFruit,         ///< healthy and strong enough to keep the place?
    firstFruit,          ///< worth a second bite?
    watchToSelection,    ///< better than the best of its days, and more than once?
    selectionToAdvanced, ///< the same on other stocks and sites, in store, to other people?
    naming,              ///< can it be told from what there is, and is it wanted?
};
Gate gateOf(Stage stage);

/// From where on the figures suggest something. The defaults are proposals, to be set by the
/// breeder.
struct VerdictThresholds {
    double margin = 0.5;          ///< points: what "clearly better" means
    double watchAboveFloor = 0.3; ///< P(above the floor) to be watched
    double backUpAboveBest = 0.5; ///< P(above the best) to be grafted elsewhere at once
    double nameAboveBest = 0.8;   ///< P(above the best) to talk of a name
    int nameCropYears = 2;        ///< tasted in so many
    double cullBelowFloor = 0.9;  ///< P(below the floor) to be culled
    int fairLots = 1;             ///< before it is culled or watched on its taste

    bool operator==(const VerdictThresholds&) const = default;
};
/// Problem badInput, as a sentence: a probability outside 0 to 1, a negative margin or count, or
/// thresholds that suggest watching and culling at once.
Outcome checkThresholds(const VerdictThresholds& thresholds);

struct VerdictChoices {
    VerdictThresholds thresholds;
    std::vector<FaultLimit> limits = proposedLimits(Purpose::dessert);
};

/// All that verdicts are made from; it must outlive the call only. Of the pointers only those to
/// stages may be null.
struct VerdictGround {
    const OrchardView* view = nullptr;
    const MeritModel* model = nullptr; ///< of liking
    const std::vector<SeasonLadders>* ladders = nullptr;
    const std::vector<RipeningDay>* days = nullptr; ///< one a genotype
    const FaultLedger* faults = nullptr;
    const std::vector<Stage>* stages = nullptr; ///< one a genotype; null: those of the view
    std::optional<CropYear> lastCropYear = std::nullopt; ///< later ones have not come yet
};

/// Against one rung of the ladder.
struct RungOdds {
    Index reference = 0;
    bool borrowed = false;    ///< from a neighbouring slot
    UncertainValue ahead;     ///< merit less that of the reference, points
    double above = 0;         ///< P(better)
    double aboveByMargin = 0; ///< P(better by VerdictThresholds::margin)

    [[nodiscard]] double below() const { return 1 - above; }
};

/// Where a merit comes from.
enum class MeritBasis {
    tasted,
    relatives, ///< never tasted: from its parents, give or take what segregates
    none,
};

struct MeritInterval {
    double low = 0;
    double high = 0;
};

/// Why no rung can be reckoned with.
enum class LadderLack {
    none,
    noLadders,       ///< the species has neither benchmarks nor slots
    unknownSeason,   ///< nobody knows when it ripens
    outsideSlots,    ///< it ripens more than a week before or after all slots
    benchmarkUnseen, ///< nobody on the ladder was ever tasted
};

enum class Suggestion {
    notEnoughYet,
    cull,
    again,
    watch,
    backUpNow,
    nameTalk,
    parentOnly,
    none, ///< it is culled, named or kept as parent already
};

enum class SuggestionReason {
    neverTasted,
    nothingToBeat,        ///< see LadderLack
    noFairLot,            ///< fewer fair lots than the thresholds ask for
    belowFloor,           ///< P(below the floor) reached the threshold
    faulty,               ///< a fault rules it out, and the fruit is not worth watching
    goodButFaulty,        ///< a fault rules it out, but the fruit may be better than the floor
    undecided,            ///< neither the floor's threshold for watching nor that for culling
    aboveFloor,           ///< P(above the floor) reached the threshold
    aboveBestOneTree,     ///< P(above the best) reached the threshold, and one accident ends it
    aboveBestTooFewYears, ///< good enough for a name, but seen in too few crop years
    aboveBest,            ///< good enough for a name
    settledAlready,
};

struct SeedlingVerdict {
    Index genotype = 0;
    Stage stage = Stage::unknown;
    Gate gate = Gate::none;

    RipeningDay season;
    LadderLack lack = LadderLack::none;
    std::optional<std::size_t> ladders; ///< place in VerdictGround::ladders
    std::optional<std::size_t> slot;    ///< place in SeasonLadders::slots

    MeritBasis basis = MeritBasis::none;
    UncertainValue merit; ///< points; the error is a standard deviation
    MeritInterval eighty; ///< 80 % interval
    MeritInterval ninetyFive;
    double reliability = 0;
    GenotypeMerit evidence; ///< its counts; without records all 0

    std::optional<RungOdds> floor;
    std::optional<RungOdds> best;
    std::optional<RungOdds> famous;
    std::optional<double> aboveAll; ///< P(better than every benchmark of the slot)
    int benchmarks = 0;             ///< so many of them
    bool benchmarksBorrowed = false;

    std::vector<Fault> faults; ///< those that rule it out
    Suggestion suggestion = Suggestion::notEnoughYet;
    SuggestionReason reason = SuggestionReason::neverTasted;
    /// Points one must expect to lose by keeping or culling it today rather than knowing its
    /// merit (value of perfect information against the floor, Raiffa & Schlaifer 1961).
    double deficit = 0;

    [[nodiscard]] bool fairlyTested() const { return evidence.fairLots > 0; }
};

/// One for every seedling and selection that has fruited, in the order of the view. Of `only` one
/// when it is given.
/// Problem badInput: thresholds that contradict each other, a model of something else than liking.
Result<std::vector<SeedlingVerdict>> verdicts(const VerdictGround& ground,
                                              const VerdictChoices& choices,
                                              std::optional<Index> only = std::nullopt);

/// Seedlings that still stand in the running, the greatest deficit first.
struct EvidenceLedger {
    std::vector<std::size_t> neverFair; ///< places among the verdicts: no fair test ever
    std::vector<std::size_t> tested;
};
EvidenceLedger evidenceLedger(const std::vector<SeedlingVerdict>& verdicts);

} // namespace pipwright
