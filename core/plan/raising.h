#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/pedigree/segregation.h"
#include "core/units/result.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace pipwright {

/// A part of something counted, with the bounds between which it lies with 95 % (Jeffreys: the
/// beta distribution of k + 1/2 and n - k + 1/2; Brown, Cai and DasGupta 2001, Statistical
/// Science 16:101).
struct CountedPart {
    std::int64_t counted = 0;
    std::int64_t of = 0;
    double low = 0;
    double part = 0;
    double high = 1;
};

/// Nothing when there is nothing to count, or more were counted than there were.
std::optional<CountedPart> countedPart(std::int64_t counted, std::int64_t of);

/// What became of the seeds of earlier crosses of a species, over those where both were counted.
struct RaisingRecord {
    std::optional<CountedPart> germination; ///< germinated of sown
    std::optional<CountedPart> survival;    ///< planted out of germinated
    int crosses = 0;                        ///< that tell of either
};

RaisingRecord raisingRecordOf(const OrchardView& view, const std::optional<SpeciesId>& species);

/// What a cross is raised for, as genes of simple inheritance.
struct WantedGenes {
    int oneParentOnce = 0; ///< genes that one parent carries once, one copy being enough: 1 in 2
    int bothOnce = 0;      ///< that both carry once, one copy being enough: 3 in 4
    int bothOnceTwoCopies = 0; ///< that both carry once, two copies being needed: 1 in 4
};

/// Two classes, with all that is wanted and without; one when nothing or everything is wanted.
/// Problem: as segregationOf(), negative numbers.
Result<std::vector<SegregationClass>> wantedClasses(const WantedGenes& genes);

/// How many to raise. The bounds come from how well germination and survival are known.
struct RaisingAdvice {
    double wantedShare = 1;
    std::int64_t seedlings = 0;        ///< that live to be judged
    std::optional<std::int64_t> seeds; ///< to sow; nothing where germination was never counted
    std::optional<std::int64_t> seedsAtBest;
    std::optional<std::int64_t> seedsAtWorst;
    bool survivalIsKnown = false; ///< else all that germinate are taken to live
};

/// For so many wanted plants with that assurance (0.95, say). Problem: as seedsToSow().
Result<RaisingAdvice> raisingAdvice(std::int64_t plants, const WantedGenes& genes,
                                    const RaisingRecord& record, double assurance);

} // namespace pipwright
