#pragma once

#include "core/evaluation/merit/merit_model.h"
#include "core/history/store.h"
#include "core/orchard/decisions.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// The season cut into slots of ten to fourteen days, and the ladder of each: what its fruit has
/// to beat. Days are days of the crop year (usual_ripening.h), so a southern season runs on past
/// New Year.
namespace pipwright {

/// When a benchmark is usually ripe.
struct BenchmarkWindow {
    Index genotype = 0;
    int first = 0; ///< usual first ripe day
    int last = 0;  ///< usual last day it was good; first when no end was ever seen
    int cropYears = 0;
};

struct SlotSpan {
    int first = 0;
    int last = 0;

    bool operator==(const SlotSpan&) const = default;
};

/// Cuts the season of these windows into slots of ten to fourteen days: as few windows as can be
/// reach across a cut, and slots are near twelve days long. Nothing without windows.
std::vector<SlotSpan> cutSeason(std::span<const BenchmarkWindow> windows);

/// What the book holds of ladders, read once: slots, elections that count, and the windows of all
/// benchmarks.
struct LadderRecords {
    std::vector<Slot> slots;
    std::vector<Election> elections; ///< not void
    std::vector<BenchmarkWindow> windows;
};
/// As it stood on a day, if one is given.
Result<LadderRecords> readLadders(const OrchardView& view, const Store& store,
                                  std::optional<Date> asOf = std::nullopt);

/// Why a benchmark stands on a rung.
enum class RungGround {
    elected,       ///< in that crop year's winter
    carriedOver,   ///< elected for an earlier crop year, not re-elected since
    highestMerit,  ///< proposed: the highest expected merit in the slot
    lowestMerit,   ///< proposed: the lowest one still kept, of up to three
    lowerQuartile, ///< proposed: three in four of the slot's benchmarks are better
    knownBefore,   ///< proposed: most often elected as the famous name
    mostTasted,    ///< proposed: the one with most scores
};

struct LadderRung {
    Index genotype = 0;
    RungGround ground = RungGround::elected;
    std::optional<ElectionId> election;
    std::string reason;     ///< the breeder's, of an election
    bool borrowed = false;  ///< from a neighbouring slot, since this one has nobody
    std::size_t from = 0;   ///< which slot it was borrowed from
    bool overtaken = false; ///< best only: another of the slot has the higher expected merit now

    [[nodiscard]] bool proposed() const {
        return ground != RungGround::elected && ground != RungGround::carriedOver;
    }
};

struct SlotLadder {
    std::optional<SlotId> slot; ///< nothing: cut from the windows, not yet in the book
    SlotSpan days;
    std::string name;
    /// Benchmarks that ripen in it or were elected to it, by their day; without any, those of the
    /// neighbouring slots.
    std::vector<Index> benchmarks;
    bool benchmarksBorrowed = false;
    std::optional<LadderRung> floor;
    std::optional<LadderRung> best;
    std::optional<LadderRung> famous;

    [[nodiscard]] const std::optional<LadderRung>& of(Rung rung) const {
        return rung == Rung::floor ? floor : (rung == Rung::best ? best : famous);
    }
};

/// The ladders of one species in one crop year.
struct SeasonLadders {
    std::optional<SpeciesId> species;
    CropYear cropYear;
    /// The crop year whose cut and elections these are; nothing when no winter has met yet and all
    /// is proposed.
    std::optional<CropYear> metFor;
    std::vector<SlotLadder> slots; ///< by day

    /// The slot of a day; a day up to a week outside goes with the nearest one.
    [[nodiscard]] std::optional<std::size_t> slotOf(int day) const;
};

/// For every species that has benchmarks or slots. The cut and the elections are those of that
/// crop year, else of the newest earlier one that has any; of two elections to a rung the newer
/// counts, and it stands until the next one, whatever the tastings say since. Rungs nobody was
/// elected to are filled by proposal when there is a model:
///  - best: the highest expected merit in the slot;
///  - floor: of four or more benchmarks that were tasted the one at the lower quartile of
///    expected merit, of fewer the lowest, culled ones left aside;
///  - famous name: the one most often elected famous in any year, else the one with most scores.
/// A slot without any benchmark borrows from the nearest slot that has one (the higher merit of
/// two equally near), and says so.
std::vector<SeasonLadders> seasonLadders(const OrchardView& view, const LadderRecords& records,
                                         const MeritModel* model, CropYear cropYear);

/// The ladders a genotype belongs to: of its species; of the only ones there are when it has none.
const SeasonLadders* laddersFor(const std::vector<SeasonLadders>& all,
                                const GenotypeEntry& genotype);

} // namespace pipwright
