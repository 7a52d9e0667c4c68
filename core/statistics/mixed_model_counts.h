#pragma once

#include "core/statistics/mixed_model_records.h"
#include "core/statistics/sparse_structure.h"

#include <cstdint>
#include <span>
#include <vector>

namespace pipwright {

/// The relationship of a random term as it enters the equations: places of the pattern and the
/// numbers of the precision matrix that go there, k times for k effects a level.
struct PrecisionPlaces {
    std::vector<std::int64_t> places;
    std::vector<double> values;
    double logDeterminant = 0; ///< ln |A^-1|
};

/// A count of one residual group at one place of the pattern.
struct GroupCount {
    std::int64_t place = 0;
    std::int32_t group = 0;
    double value = 0;
};

/// W'W of the design W = [Z X], counted from the codes without ever building W, and the pattern of
/// the mixed model equations it is a part of.
struct EquationCounts {
    SymmetricPattern pattern;
    std::vector<std::int32_t> firstUnknown; ///< of each level (and fixed column), one more
    std::vector<double> values;             ///< W'W with unit residual variance
    std::vector<GroupCount> byGroup;        ///< the same by residual group, when there are several
    std::vector<PrecisionPlaces> precision; ///< by random term; empty where there is none
    std::vector<double> side;               ///< W'y
    double squares = 0;                     ///< y'y
    std::vector<double> groupRecords;       ///< records of each residual group
};

/// Counts the equations. `precisions` has a pointer for each random term, null without one.
EquationCounts countEquations(const ModelRecords& records,
                              const std::vector<const LevelPrecision*>& precisions);

/// W' R^-1 t for numbers t, one a record, with a factor for each residual group (empty: 1).
std::vector<double> designProduct(const ModelRecords& records, std::span<const double> numbers,
                                  std::span<const double> groupFactor);

/// y - W b for effects b.
std::vector<double> residuals(const ModelRecords& records, std::span<const double> effects);

/// y'y, weighted; of one group or (-1) of all.
double weightedSquares(const ModelRecords& records, std::span<const double> numbers,
                       std::int32_t group);

} // namespace pipwright
