#pragma once

#include "core/evaluation/merit/merit_model.h"

#include <cstddef>
#include <vector>

namespace pipwright {

/// A record as it stands, and as it would have been had the fruit been fair, prime and fresh, the
/// taster, sitting and crop year the average ones. All in units of the trait.
struct CorrectedRecord {
    std::size_t record = 0; ///< place in MeritModel::records
    double raw = 0;
    double conditions = 0; ///< added for the state of the fruit and the moment
    double taster = 0;     ///< added for how high the taster scores
    double moment = 0;     ///< added for sitting and crop year

    [[nodiscard]] double corrected() const { return raw + conditions + taster + moment; }
};

/// Of one genotype, oldest first. What is switched off in the model corrects nothing; the means of
/// the corrections over the records are the steps of the waterfall.
std::vector<CorrectedRecord> correctedRecords(const MeritModel& model, Index genotype);

} // namespace pipwright
