#include "core/plan/raising.h"

#include "core/statistics/distributions.h"

#include <algorithm>

namespace pipwright {

namespace {

using Expression = SegregatingGene::Expression;

bool hasNegative(const WantedGenes& genes) {
    return genes.oneParentOnce < 0 || genes.bothOnce < 0 || genes.bothOnceTwoCopies < 0;
}

/// The seeds when germination and survival are so.
std::optional<std::int64_t> seedsWith(std::int64_t plants, double wanted, double germination,
                                      double survival, double assurance) {
    const auto seeds = seedsToSow(plants, {wanted, germination, survival}, assurance);
    return seeds ? std::optional{*seeds} : std::nullopt;
}

} // namespace

std::optional<CountedPart> countedPart(std::int64_t counted, std::int64_t of) {
    if (of <= 0 || counted < 0 || counted > of) {
        return std::nullopt;
    }
    const auto n = static_cast<double>(of);
    const auto k = static_cast<double>(counted);
    const BetaDistribution spread{k + 0.5, n - k + 0.5};
    constexpr double kTail = 0.025;
    const auto low = quantile(spread, kTail);
    const auto high = quantile(spread, 1 - kTail);
    CountedPart part{counted, of, 0, k / n, 1};
    part.low = low && counted > 0 ? *low : 0;
    part.high = high && counted < of ? *high : 1;
    return part;
}

RaisingRecord raisingRecordOf(const OrchardView& view, const std::optional<SpeciesId>& species) {
    RaisingRecord record;
    std::int64_t sown = 0;
    std::int64_t germinated = 0;
    std::int64_t grown = 0;
    std::int64_t planted = 0;
    for (const Cross& cross : view.crosses()) {
        if (cross.species != species) {
            continue;
        }
        const bool tellsGermination =
            cross.seedsSown && cross.germinated && *cross.germinated <= *cross.seedsSown;
        const bool tellsSurvival =
            cross.germinated && cross.planted && *cross.planted <= *cross.germinated;
        sown += tellsGermination ? *cross.seedsSown : 0;
        germinated += tellsGermination ? *cross.germinated : 0;
        grown += tellsSurvival ? *cross.germinated : 0;
        planted += tellsSurvival ? *cross.planted : 0;
        record.crosses += tellsGermination || tellsSurvival ? 1 : 0;
    }
    record.germination = countedPart(germinated, sown);
    record.survival = countedPart(planted, grown);
    return record;
}

Result<std::vector<SegregationClass>> wantedClasses(const WantedGenes& genes) {
    if (hasNegative(genes)) {
        return Problem{ProblemCode::badInput, "A number of genes cannot be negative.",
                       "Type 0 or more.", ""};
    }
    std::vector<SegregatingGene> all;
    all.insert(all.end(), static_cast<std::size_t>(genes.oneParentOnce),
               {1, 0, Expression::dominant});
    all.insert(all.end(), static_cast<std::size_t>(genes.bothOnce), {1, 1, Expression::dominant});
    all.insert(all.end(), static_cast<std::size_t>(genes.bothOnceTwoCopies),
               {1, 1, Expression::recessive});
    if (all.empty()) {
        return std::vector<SegregationClass>{{{1}, 1.0}};
    }
    return segregationOf(all, Grouping::everyGene);
}

Result<RaisingAdvice> raisingAdvice(std::int64_t plants, const WantedGenes& genes,
                                    const RaisingRecord& record, double assurance) {
    const auto classes = wantedClasses(genes);
    if (!classes) {
        return classes.problem();
    }
    RaisingAdvice advice;
    advice.wantedShare = classes->front().share;
    const auto seedlings = seedsToSow(plants, {advice.wantedShare, 1, 1}, assurance);
    if (!seedlings) {
        return seedlings.problem();
    }
    advice.seedlings = *seedlings;
    advice.survivalIsKnown = record.survival.has_value();
    if (!record.germination) {
        return advice;
    }
    const CountedPart& germination = *record.germination;
    const CountedPart survival = record.survival.value_or(CountedPart{0, 0, 1, 1, 1});
    advice.seeds =
        seedsWith(plants, advice.wantedShare, germination.part, survival.part, assurance);
    advice.seedsAtBest =
        seedsWith(plants, advice.wantedShare, germination.high, survival.high, assurance);
    advice.seedsAtWorst =
        seedsWith(plants, advice.wantedShare, germination.low, survival.low, assurance);
    return advice;
}

} // namespace pipwright
