#pragma once

#include "core/evaluation/merit/merit_model.h"
#include "core/statistics/mixed_model.h"

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

namespace pipwright {

/// Variances found before, to be held in another fit of the same records.
struct FoundVariances {
    std::vector<double> terms; ///< by MeritTerm
    double residual = 1;
    std::vector<double> tasterResiduals; ///< by person; of the typical taster where he has no own
};

/// Whose noise is to be learned from his own scores.
struct TasterNoise {
    double typical = 1;    ///< residual variance of all tasters together
    std::vector<bool> own; ///< by person
};

/// What an earlier fit of the same records lends to this one; at most one of them.
struct KnownBefore {
    const FoundVariances* variances = nullptr;
    const TasterNoise* noise = nullptr;
};

/// A condition's part in the equations.
struct ConditionTerm {
    std::int32_t term = -1;  ///< in MixedModel::random; -1 when it has none
    std::int32_t level = -1; ///< within it
    double sd = 0;           ///< the effect is so many of these
};

/// The merit model of some records as a mixed model, and where to find in it what the trade asks.
struct MeritDesign {
    MixedModel model;
    MeritPriors priors;
    std::vector<Index> genotypes; ///< of each level, rising
    std::unordered_map<Index, std::int32_t> levelOf;
    std::vector<std::int32_t> termAt;             ///< by MeritTerm; -1 when absent
    std::vector<TermReport> reports;              ///< by MeritTerm, variances not yet filled
    std::vector<std::vector<std::int32_t>> codes; ///< by MeritTerm: the level of each record
    std::vector<ConditionTerm> conditions;        ///< by conditionClasses()
    std::optional<std::int32_t> levelTerm;        ///< of the general level, if it is random
    std::vector<double> offsets;                  ///< of each record: what is believed beforehand
    std::vector<std::int32_t> residualGroupOf;    ///< by person; 0 the typical taster
};

/// Problem badInput: no records.
Result<MeritDesign> meritDesign(const MeritFamilies& families, const TraitRecords& records,
                                const MeritOptions& options, const KnownBefore& known);

/// The general level as a contrast of the model; empty when it is known.
Contrast levelContrast(const MeritDesign& design);

} // namespace pipwright
