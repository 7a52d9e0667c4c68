#include "core/statistics/mixed_model_start.h"

#include "core/statistics/subscript.h"

#include <algorithm>
#include <cmath>

namespace pipwright {

namespace {

/// X'X with the fixed columns in the order of the model.
std::vector<double> fixedProducts(const ModelRecords& records, const EquationCounts& counts) {
    const std::size_t size = at(records.fixedUnknowns);
    std::vector<std::size_t> rankOf(size); // place in the model's order of each fixed unknown
    for (std::size_t column = 0; column < size; ++column) {
        rankOf[at(records.fixedColumns[column].unknown - records.randomUnknowns)] = column;
    }
    std::vector<double> products(size * size, 0.0);
    for (std::size_t unknown = 0; unknown < size; ++unknown) {
        const std::size_t column = unknown + at(records.randomUnknowns);
        for (auto place = static_cast<std::size_t>(counts.pattern.starts[column]);
             place < static_cast<std::size_t>(counts.pattern.starts[column + 1]); ++place) {
            const std::size_t other =
                rankOf[at(counts.pattern.rows[place] - records.randomUnknowns)];
            products[rankOf[unknown] * size + other] = counts.values[place];
            products[other * size + rankOf[unknown]] = counts.values[place];
        }
    }
    return products;
}

/// One-way sums of an effect over the levels of a term.
struct OneWay {
    double between = 0; ///< sum of squares between levels
    double levels = 0;  ///< with records
    double records = 0; ///< sum of z'z
    double squaredRecords = 0;
};

OneWay oneWay(const ModelRecords& records, const EquationCounts& counts, const FixedSpace& fixed,
              const DesignFamily& family, std::int32_t effect) {
    OneWay sums;
    const SymmetricPattern& pattern = counts.pattern;
    for (std::int32_t level = 0; level < family.levels; ++level) {
        const std::size_t unknown = at(family.firstUnknown + level * family.width + effect);
        const double own = counts.values[static_cast<std::size_t>(pattern.starts[unknown])];
        if (!(own > 0)) {
            continue;
        }
        double rest = counts.side[unknown];
        for (auto place = static_cast<std::size_t>(pattern.starts[unknown + 1]);
             place > static_cast<std::size_t>(pattern.starts[unknown]); --place) {
            const std::int32_t row = pattern.rows[place - 1];
            if (row < records.randomUnknowns) {
                break;
            }
            rest -= counts.values[place - 1] * fixed.leastSquares[at(row - records.randomUnknowns)];
        }
        sums.between += rest * rest / own;
        sums.levels += 1;
        sums.records += own;
        sums.squaredRecords += own * own;
    }
    return sums;
}

} // namespace

FixedSpace examineFixed(const ModelRecords& records, const EquationCounts& counts) {
    constexpr double kDependent = 1e-10;
    const std::size_t size = at(records.fixedUnknowns);
    FixedSpace fixed;
    fixed.dropped.assign(at(records.unknowns()), false);
    fixed.leastSquares.assign(size, 0.0);
    std::vector<double> factor = fixedProducts(records, counts);
    std::vector<bool> dropped(size, false);
    std::vector<double> diagonal(size);
    for (std::size_t column = 0; column < size; ++column) {
        diagonal[column] = factor[column * size + column];
    }
    // Row by row, lower triangle; a dropped column leaves a row of zeros.
    for (std::size_t row = 0; row < size; ++row) {
        double* own = factor.data() + row * size;
        for (std::size_t column = 0; column <= row; ++column) {
            const double* other = factor.data() + column * size;
            double sum = own[column];
            for (std::size_t k = 0; k < column; ++k) {
                sum -= own[k] * other[k];
            }
            if (column < row) {
                own[column] = dropped[column] ? 0.0 : sum / other[column];
            } else {
                dropped[row] = !(sum > kDependent * diagonal[row]);
                own[row] = dropped[row] ? 1.0 : std::sqrt(sum);
            }
        }
        if (dropped[row]) {
            std::fill_n(own, row, 0.0);
        }
    }
    std::vector<double> solution(size);
    fixed.restSquares = counts.squares;
    for (std::size_t row = 0; row < size; ++row) {
        double sum = counts.side[at(records.fixedColumns[row].unknown)];
        for (std::size_t k = 0; k < row; ++k) {
            sum -= factor[row * size + k] * solution[k];
        }
        solution[row] = dropped[row] ? 0.0 : sum / factor[row * size + row];
        fixed.restSquares -= solution[row] * solution[row];
    }
    for (std::size_t row = size; row-- > 0;) {
        double sum = solution[row];
        for (std::size_t k = row + 1; k < size; ++k) {
            sum -= factor[k * size + row] * solution[k];
        }
        solution[row] = dropped[row] ? 0.0 : sum / factor[row * size + row];
        const std::int32_t unknown = records.fixedColumns[row].unknown;
        fixed.leastSquares[at(unknown - records.randomUnknowns)] = solution[row];
        fixed.dropped[at(unknown)] = dropped[row];
        fixed.rank += dropped[row] ? 0 : 1;
    }
    return fixed;
}

std::vector<double> covarianceRoot(const std::vector<double>& covariance, std::int32_t width) {
    const std::size_t size = at(width);
    std::vector<double> root(size * size, 0.0);
    for (std::size_t row = 0; row < size; ++row) {
        for (std::size_t column = 0; column <= row; ++column) {
            double sum = covariance[row * size + column];
            for (std::size_t k = 0; k < column; ++k) {
                sum -= root[row * size + k] * root[column * size + k];
            }
            if (column < row) {
                const double pivot = root[column * size + column];
                root[row * size + column] = pivot > 0 ? sum / pivot : 0.0;
            } else {
                const double limit = 1e-13 * covariance[row * size + row];
                root[row * size + row] = sum > limit ? std::sqrt(sum) : 0.0;
            }
        }
    }
    return root;
}

VarianceState startingState(const ModelRecords& records, const EquationCounts& counts,
                            const FixedSpace& fixed, const std::vector<VarianceChoice>& termChoices,
                            const std::vector<VarianceChoice>& groupChoices,
                            const std::vector<double>& meanRelationship) {
    constexpr double kLeastShare = 0.02; // a start at 0 would see no way up
    const double unit = 1 / (records.scale * records.scale);
    const auto count = static_cast<double>(records.count());
    const double freedom = std::max(count - fixed.rank, 1.0);
    const double total = std::max(fixed.restSquares, 1e-12 * counts.squares) / freedom;
    const double overall = total > 0 ? total : 1.0;
    double residual = overall;
    VarianceState state;
    std::vector<std::vector<double>> covariances;
    double claimed = 0; // of the total, by all terms together
    for (std::size_t term = 0; term < termChoices.size(); ++term) {
        const DesignFamily& family = records.families[term];
        const std::size_t width = at(family.width);
        std::vector<double> covariance(width * width, 0.0);
        for (std::int32_t effect = 0; effect < family.width; ++effect) {
            const OneWay sums = oneWay(records, counts, fixed, family, effect);
            const double mean = sums.levels > 0 ? sums.records / sums.levels : 1;
            double variance = kLeastShare * overall / (mean > 0 ? std::min(mean, 1.0) : 1.0);
            if (sums.levels > 1 && count > sums.levels) {
                const double between = sums.between / (sums.levels - 1);
                const double within =
                    std::max(fixed.restSquares - sums.between, 0.0) / (count - sums.levels);
                const double size =
                    (sums.records - sums.squaredRecords / sums.records) / (sums.levels - 1);
                if (size > 0) {
                    variance = std::max((between - within) / size, kLeastShare * overall / size);
                }
                residual = std::min(residual, std::max(within, 0.05 * overall));
            }
            covariance[at(effect) * width + at(effect)] = variance / meanRelationship[term];
            claimed += variance * sums.records / count;
        }
        covariances.push_back(std::move(covariance));
    }
    // Terms that share levels, or are nested, claim the same differences.
    const double shrink = std::min(1.0, overall / std::max(claimed, 1e-300));
    for (std::size_t term = 0; term < termChoices.size(); ++term) {
        const DesignFamily& family = records.families[term];
        std::vector<double> covariance = std::move(covariances[term]);
        for (double& value : covariance) {
            value *= shrink;
        }
        const VarianceChoice& choice = termChoices[term];
        if (choice.knowledge == VarianceKnowledge::held ||
            choice.knowledge == VarianceKnowledge::inverseChiSquare) {
            covariance = choice.value;
            for (double& value : covariance) {
                value *= unit;
            }
        }
        state.factors.push_back(covarianceRoot(covariance, family.width));
    }
    for (std::int32_t group = 0; group < records.groupCount; ++group) {
        const VarianceChoice& choice = groupChoices[at(group)];
        const bool known = choice.knowledge == VarianceKnowledge::held ||
                           choice.knowledge == VarianceKnowledge::inverseChiSquare;
        state.residual.push_back(known ? choice.value[0] * unit : residual);
    }
    return state;
}

} // namespace pipwright
