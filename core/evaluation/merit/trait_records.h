#pragma once

#include "core/evaluation/merit/corrections.h"
#include "core/evaluation/orchard_view.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace pipwright {

/// One score of a taster, or one observation of a trait, that speaks for a genotype. Numbers of
/// persons, lots and sittings are places in the lists of TraitRecords; -1 where there is none.
struct TraitRecord {
    double value = 0; ///< liking 1 to 9, the trait's number, or the rank of its worded state
    Index genotype = 0;
    std::int32_t plant = -1; ///< Index of the plant
    std::int32_t person = -1;
    std::int32_t lot = -1;
    std::int32_t sitting = -1;
    std::int32_t cropYear = 0;
    Date date;
    bool fair = false;    ///< see fairnessOf
    bool unclear = false; ///< not fair, for unknowns only
    Sight sight = Sight::unknown;
    std::vector<ConditionAmount> conditions;
    Uuid source; ///< of the Score or Observation
};

/// Everything the book knows of one trait, as records that a model can be made of.
struct TraitRecords {
    std::optional<TraitId> trait; ///< nothing: liking
    std::vector<TraitRecord> records;
    std::vector<PersonId> persons;
    std::vector<LotId> lots;
    std::int32_t sittings = 0;
    int leftOut = 0; ///< scores of fruit that is linked to no genotype

    [[nodiscard]] bool isLiking() const { return !trait.has_value(); }
};

/// A seedling or selection that is no benchmark: what hope clings to.
bool isOwnSeedling(const GenotypeEntry& genotype);

/// Observations of a numeric or ordinal trait, not void, of plants, genotypes and lots, up to a
/// day. The middle of a range counts; a value known only from one side is left out. Each person's
/// day is a sitting.
/// Problem badInput: a trait without order, or one the book does not have.
Result<TraitRecords> observedRecords(const OrchardView& view, const Store& store, TraitId trait,
                                     std::optional<Date> asOf = std::nullopt);

} // namespace pipwright
