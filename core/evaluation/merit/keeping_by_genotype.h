#pragma once

#include "core/evaluation/merit/merit_model.h"
#include "core/history/store.h"

#include <array>
#include <optional>
#include <span>
#include <stop_token>
#include <vector>

/// How the fruit of each genotype keeps: one slope a genotype and storage path, drawn to the
/// general slope of that path as far as its own fruit does not say otherwise.
namespace pipwright {

/// The paths that have slopes.
inline constexpr std::array kKeepingPaths = {StoragePath::counter, StoragePath::fridge,
                                             StoragePath::cellar};

struct KeepingChoices {
    double goodFrom = 5; ///< liking (or the trait's unit) that still counts as good
    double share = 0.8;  ///< of the lots that shall still be good
    int mostDays = 400;  ///< nobody looks further

    bool operator==(const KeepingChoices&) const = default;
};

/// A kept lot's score with all but keeping taken out: the data behind a curve.
struct KeptScore {
    Index genotype = 0;
    std::array<double, kKeepingPaths.size()> days{}; ///< on each path, one behind the other
    double value = 0; ///< without taster, sitting and the states of the fruit
    Uuid source;
};

/// One genotype on one path. Value at a day = fresh + slope x day.
struct GenotypeKeeping {
    Index genotype = 0;
    StoragePath path = StoragePath::fridge;
    UncertainValue fresh; ///< on the day of picking
    UncertainValue slope; ///< a day
    double together = 0;  ///< covariance of the two
    int scores = 0;       ///< of fruit kept on this path; 0: the general slope, with its spread
    int lots = 0;
    double longest = 0; ///< days

    /// Days until fewer than the wanted share of lots is still good; nothing: still good when
    /// looking ends.
    std::optional<double> daysGood;
    std::optional<double> halfGood; ///< the same for half of the lots

    [[nodiscard]] UncertainValue at(double day) const;
};

/// All genotypes with fruit that was kept. Of liking or of a numeric trait such as firmness.
struct KeepingByGenotype {
    std::vector<GenotypeKeeping> curves; ///< by genotype and path
    std::array<std::optional<UncertainValue>, kKeepingPaths.size()> general; ///< slopes of paths
    std::array<double, kKeepingPaths.size()> spread{}; ///< sd of genotypes' slopes around them
    double lotVariance = 0;
    std::vector<KeptScore> scores;
    KeepingChoices choices;

    [[nodiscard]] const GenotypeKeeping* of(Index genotype, StoragePath path) const;
    /// The curve of any genotype of the merit model; on its own merit and the general slope when
    /// no fruit of it was kept. Nothing when the path was never used.
    [[nodiscard]] std::optional<GenotypeKeeping> curveOf(const MeritModel& model, Index genotype,
                                                         StoragePath path) const;
};

/// A mixed model over the scores of all genotypes that have kept fruit: level, genotype, genotype x
/// crop year, lot, taster and sitting at the merit model's variances, states of the fruit as the
/// merit model found them (ripeness only of fresh fruit: in kept fruit it is part of keeping), the
/// general slope of each path with the prior of conditionClasses(), and the genotypes' slopes,
/// whose variance has a prior of half the general slope (Iwanami et al. 2008, J. Am. Soc. Hortic.
/// Sci. 133:92-97: loss by 9 to 58 % in twenty days) and is estimated.
/// The doubt about that variance is not in the errors: in simulated books of forty genotypes the
/// 95 % intervals of slopes cover nine in ten.
/// Problem badInput, as a sentence: no fruit was kept. Problem cancelled.
Result<KeepingByGenotype> keepingByGenotype(const MeritModel& model,
                                            const KeepingChoices& choices = {},
                                            std::stop_token stop = {});

/// What is known of the day a lot was no longer good.
struct LastGoodDay {
    Index genotype = 0;
    StoragePath path = StoragePath::fridge;
    double low = 0;             ///< still good on this day; 0 when not even that is known
    std::optional<double> high; ///< no longer good by this day; nothing when nobody looked on
};

/// Observations of "days still good" that name a path. "<" and ">" and ranges bound the day, "~"
/// leaves it a seventh either way.
Result<std::vector<LastGoodDay>> readLastGoodDays(const OrchardView& view, const Store& store,
                                                  std::optional<Date> asOf = std::nullopt);

struct LastGoodKeeping {
    Index genotype = 0;
    StoragePath path = StoragePath::fridge;
    int lots = 0;
    double daysGood = 0; ///< until fewer than the wanted share is still good
    double halfGood = 0;
    UncertainValue logDay; ///< of the middle lot, natural logarithm of days
};

/// By path a log-normal keeping life with a term for the genotype, from days that are known
/// exactly, between two looks or from one side only (censored_mixed_model.h). Genotype and residual
/// variances have priors (0.16 and 0.25 on the log scale, as if 4 squares had been seen). Paths
/// on which no lot's end was ever seen are passed over.
/// Problem badInput: no such days.
Result<std::vector<LastGoodKeeping>> lastGoodByGenotype(std::span<const LastGoodDay> days,
                                                        const KeepingChoices& choices = {});

} // namespace pipwright
