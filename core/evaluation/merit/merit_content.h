#pragma once

#include "core/evaluation/merit/merit_design.h"
#include "core/evaluation/merit/merit_model.h"
#include "core/evaluation/merit/variance_doubt.h"

#include <memory>
#include <vector>

namespace pipwright {

/// All of a fitted merit model.
struct MeritModel::Content {
    MeritFamilies families;
    std::shared_ptr<const TraitRecords> records;
    MeritOptions options;
    MeritDesign design;
    FoundVariances found;
    std::vector<bool> ownNoise; ///< by person
    MixedFit fit;
    std::vector<GenotypeMerit> merits;
    double spread = 0;
    MeritMoves moves; ///< see varianceDoubt

    /// What doubt about the variances adds to the covariance of two merits, by level.
    [[nodiscard]] double doubt(std::size_t one, std::size_t other) const {
        double sum = 0;
        for (const std::vector<double>& move : moves) {
            sum += 2 * move[one] * move[other];
        }
        return sum;
    }
};

/// What is answered when a genotype is not in the model.
Problem meritUnknown();

} // namespace pipwright
