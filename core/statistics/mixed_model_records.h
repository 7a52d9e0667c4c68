#pragma once

#include "core/statistics/mixed_model.h"
#include "core/units/result.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace pipwright {

/// Columns of the design that share a way of finding their place: for each record one level, and
/// for that level `width` numbers. A random term is one family; so is each fixed factor; intercept
/// and covariates together are one of a single level.
struct DesignFamily {
    std::string name;
    std::vector<std::int32_t> codes; ///< level of each record used, -1 for none; empty: all 0
    std::int32_t levels = 1;
    std::int32_t width = 1;     ///< numbers a level: k
    std::vector<double> values; ///< width a record; empty when all are 1 (and width is 1)
    std::int32_t firstUnknown = 0;
    bool random = false;

    [[nodiscard]] std::int32_t level(std::size_t record) const {
        return codes.empty() ? 0 : codes[record];
    }
    [[nodiscard]] std::int32_t unknowns() const { return levels * width; }
};

/// A fixed column and the unknown that stands for it.
struct FixedColumn {
    EffectRef effect;
    std::int32_t unknown = 0;
    double centre = 0; ///< subtracted from the covariate beforehand
};

/// The records a model uses, checked, in the form the equations are counted from. Unknowns are
/// numbered by random terms, levels, effects; then the fixed columns.
struct ModelRecords {
    std::vector<double> response;     ///< less `shift`, divided by `scale`
    std::vector<double> weights;      ///< empty when all are 1
    std::vector<std::int32_t> groups; ///< of the residual; empty when there is one
    std::int32_t groupCount = 1;
    std::vector<DesignFamily> families; ///< random terms first
    std::int32_t randomUnknowns = 0;
    std::int32_t fixedUnknowns = 0;
    std::vector<FixedColumn> fixedColumns; ///< in the order of the model
    std::vector<std::int32_t> kept;        ///< numbers of the records used, when some are left out
    std::int64_t given = 0;                ///< records of the model
    double shift = 0;                      ///< the mean of the response when there is an intercept
    double scale = 1;                      ///< a power of 2 near the spread of the response
    double logWeights = 0;                 ///< sum of ln w

    [[nodiscard]] std::size_t count() const { return response.size(); }
    [[nodiscard]] std::int32_t unknowns() const { return randomUnknowns + fixedUnknowns; }
};

/// Checks a model and brings its records into that form. Takes the model's vectors.
Result<ModelRecords> readRecords(MixedModel& model);

/// Puts a response (one number a record used) in place of the one there.
Outcome setResponse(ModelRecords& records, std::vector<double> response, bool hasIntercept);

/// Checks what is said about variances: `effects` numbers a side, `where` for the message.
Outcome checkVarianceChoice(const VarianceChoice& choice, std::int32_t effects,
                            const std::string& where);

} // namespace pipwright
