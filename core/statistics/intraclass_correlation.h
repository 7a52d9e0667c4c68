#pragma once

#include "core/statistics/dense_matrix.h"
#include "core/units/result.h"

namespace pipwright {

/// A correlation with its confidence interval.
struct CorrelationInterval {
    double value = 0; ///< can be below 0: tasters agree less than chance would have it
    double low = 0;
    double high = 0;
};

/// How well tasters agree: the share of the variance that lies between fruits. The six forms of
/// Shrout & Fleiss (1979), Psychological Bulletin 86:420-428; intervals by McGraw & Wong (1996),
/// Psychological Methods 1:30-46, table 7.
struct IntraclassCorrelations {
    CorrelationInterval oneWaySingle;      ///< (1,1) each fruit has tasters of its own
    CorrelationInterval twoWaySingle;      ///< (2,1) tasters drawn at random: agreement
    CorrelationInterval consistencySingle; ///< (3,1) these tasters only: consistency
    CorrelationInterval oneWayMean;        ///< (1,k) of the mean of all k tasters
    CorrelationInterval twoWayMean;        ///< (2,k)
    CorrelationInterval consistencyMean;   ///< (3,k)
};

/// From a full table: a row a fruit, a column a taster.
/// Problem: fewer than two fruits or tasters, a missing or infinite score, scores that do not
/// differ, tasters without any disagreement (the ratio is then without bound), a confidence not
/// between 0 and 1.
Result<IntraclassCorrelations> intraclassCorrelations(const DenseMatrix& scores,
                                                      double confidence = .95);

} // namespace pipwright
