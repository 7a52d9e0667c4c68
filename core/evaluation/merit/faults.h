#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/history/store.h"

#include <array>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

/// Taste is a contest, traits are gates: a fault bad enough for a purpose rules a seedling out
/// however good it tastes.
namespace pipwright {

enum class FaultKind { scab, mildew, fireBlight, drop, split, mealiness, shortKeeping };
inline constexpr std::array kFaultKinds = {
    FaultKind::scab,  FaultKind::mildew,    FaultKind::fireBlight,   FaultKind::drop,
    FaultKind::split, FaultKind::mealiness, FaultKind::shortKeeping,
};
/// A stable key: "scab", "mildew", "fire_blight", "drop", "split", "mealiness", "short_keeping".
std::string_view keyOf(FaultKind kind);

/// What the fruit is bred for; it decides which faults matter.
enum class Purpose { dessert, cooking, cider, keeper };
std::string_view keyOf(Purpose purpose);
std::optional<Purpose> purposeFromKey(std::string_view key);

/// From which figure on a fault rules out. How the figure comes about, see Fault.
struct FaultLimit {
    FaultKind kind = FaultKind::scab;
    double limit = 0;
    int readings = 1; ///< fewer do not rule out
};

/// Proposals, to be changed by the breeder: scab and mildew from "heavy" on, struck by fire blight
/// 3 or worse, drop "many" every year, half of the lots split, strongly mealy within three days of
/// picking; for a keeper also fewer than 60 days good. Of fruit for cooking only very heavy disease
/// and drop, of cider fruit only very heavy disease counts.
std::vector<FaultLimit> proposedLimits(Purpose purpose);

/// What was seen of a fault: scab and mildew by the worst crop year, drop as the mean of the worst
/// reading of each crop year, in ranks of their states; fire blight by the worst reading, 10 none
/// to 1 dead; split as the share of lots; mealiness as the mean rank of bites of fruit up to three
/// days off the tree; keeping as the median of days still good, in fridge, cellar or unknown store.
struct Fault {
    FaultKind kind = FaultKind::scab;
    double figure = 0;
    int readings = 0;
    std::optional<int> cropYear; ///< of the worst year
    double limit = 0;
};

/// Figures of all faults and genotypes, read from the book in one go.
class FaultLedger {
  public:
    /// What had been seen up to a day, if one is given.
    static Result<FaultLedger> read(const OrchardView& view, const Store& store,
                                    std::optional<Date> asOf = std::nullopt);
    /// Whether these changes can move any figure, so that it must be read again.
    static bool concerns(std::span<const Change> changes);

    /// What is known, without limits; nothing of faults never looked for.
    [[nodiscard]] std::vector<Fault> seen(Index genotype) const;
    /// Those that rule it out.
    [[nodiscard]] std::vector<Fault> beyond(Index genotype,
                                            std::span<const FaultLimit> limits) const;

  private:
    std::vector<std::vector<Fault>> m_ofGenotype;
};

} // namespace pipwright
