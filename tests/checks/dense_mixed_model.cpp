#include "tests/checks/dense_mixed_model.h"

#include <cmath>

namespace pipwright::dense {

namespace {

constexpr double kLogTwoPi = 1.8378770664093454836;

std::size_t place(std::int32_t index) {
    return static_cast<std::size_t>(index);
}

/// All columns that the fixed terms ask for.
Matrix fixedColumns(const MixedModel& model) {
    const std::size_t records = model.response.size();
    std::vector<std::vector<double>> columns;
    if (model.intercept) {
        columns.emplace_back(records, 1.0);
    }
    for (const FixedTerm& term : model.fixed) {
        const bool factor = !term.levels.ofRecord.empty();
        const std::int32_t first = factor && term.coding == FixedCoding::treatment ? 1 : 0;
        for (std::int32_t level = first; level < (factor ? term.levels.count : 1); ++level) {
            std::vector<double> column(records);
            for (std::size_t record = 0; record < records; ++record) {
                const bool here = !factor || term.levels.ofRecord[record] == level;
                column[record] = !here ? 0 : term.covariate.empty() ? 1 : term.covariate[record];
            }
            columns.push_back(std::move(column));
        }
    }
    Matrix matrix(records, columns.size());
    for (std::size_t column = 0; column < columns.size(); ++column) {
        for (std::size_t record = 0; record < records; ++record) {
            matrix.at(record, column) = columns[column][record];
        }
    }
    return matrix;
}

/// Which columns are combinations of earlier ones, by Gram and Schmidt's procedure done twice.
std::vector<bool> dependentColumns(const Matrix& matrix) {
    std::vector<std::vector<double>> basis;
    std::vector<bool> dependent;
    for (std::size_t column = 0; column < matrix.columns; ++column) {
        std::vector<double> rest(matrix.rows);
        double before = 0;
        for (std::size_t row = 0; row < matrix.rows; ++row) {
            rest[row] = matrix.at(row, column);
            before += rest[row] * rest[row];
        }
        for (int pass = 0; pass < 2; ++pass) {
            for (const auto& direction : basis) {
                double along = 0;
                for (std::size_t row = 0; row < matrix.rows; ++row) {
                    along += rest[row] * direction[row];
                }
                for (std::size_t row = 0; row < matrix.rows; ++row) {
                    rest[row] -= along * direction[row];
                }
            }
        }
        double after = 0;
        for (const double value : rest) {
            after += value * value;
        }
        dependent.push_back(after <= 1e-18 * before);
        if (!dependent.back()) {
            for (double& value : rest) {
                value /= std::sqrt(after);
            }
            basis.push_back(std::move(rest));
        }
    }
    return dependent;
}

Matrix keptColumns(const Matrix& matrix, const std::vector<bool>& dropped) {
    std::vector<std::size_t> kept;
    for (std::size_t column = 0; column < dropped.size(); ++column) {
        if (!dropped[column]) {
            kept.push_back(column);
        }
    }
    Matrix rest(matrix.rows, kept.size());
    for (std::size_t row = 0; row < matrix.rows; ++row) {
        for (std::size_t column = 0; column < kept.size(); ++column) {
            rest.at(row, column) = matrix.at(row, kept[column]);
        }
    }
    return rest;
}

Matrix relationshipOf(const RandomTerm& term) {
    const std::size_t levels = place(term.levels.count);
    Matrix matrix(levels, levels);
    for (std::size_t row = 0; row < levels; ++row) {
        for (std::size_t column = 0; column < levels; ++column) {
            matrix.at(row, column) =
                term.precision ? term.precision->matrix.at(static_cast<std::int32_t>(row),
                                                           static_cast<std::int32_t>(column))
                               : (row == column ? 1 : 0);
        }
    }
    return term.precision ? inverseOf(matrix) : matrix;
}

/// The effects of all random terms: which record has how much of each, and their covariance.
struct RandomPart {
    Matrix design;
    Matrix covariance;
    std::size_t variancesRead = 0;
};

RandomPart randomPart(const MixedModel& model, const VarianceValues& variances) {
    std::size_t effects = 0;
    for (const RandomTerm& term : model.random) {
        effects += place(term.levels.count) * place(term.effectsPerLevel());
    }
    RandomPart part{Matrix(model.response.size(), effects), Matrix(effects, effects), 0};
    std::size_t begin = 0;
    for (const RandomTerm& term : model.random) {
        const std::size_t each = place(term.effectsPerLevel());
        Matrix within(each, each);
        for (std::size_t row = 0; row < each; ++row) {
            for (std::size_t column = 0; column <= row; ++column) {
                within.at(row, column) = variances[part.variancesRead++];
                within.at(column, row) = within.at(row, column);
            }
        }
        const Matrix among = relationshipOf(term);
        for (std::size_t a = 0; a < among.rows * each; ++a) {
            for (std::size_t b = 0; b < among.rows * each; ++b) {
                part.covariance.at(begin + a, begin + b) =
                    among.at(a / each, b / each) * within.at(a % each, b % each);
            }
        }
        for (std::size_t record = 0; record < model.response.size(); ++record) {
            if (term.levels.ofRecord[record] < 0) {
                continue;
            }
            std::size_t effect = begin + place(term.levels.ofRecord[record]) * each;
            if (term.intercept) {
                part.design.at(record, effect++) = 1;
            }
            for (const auto& covariate : term.covariates) {
                part.design.at(record, effect++) = covariate[record];
            }
        }
        begin += among.rows * each;
    }
    return part;
}

Matrix plus(Matrix left, const Matrix& right, double factor = 1) {
    for (std::size_t cell = 0; cell < left.cells.size(); ++cell) {
        left.cells[cell] += factor * right.cells[cell];
    }
    return left;
}

void addResidual(Matrix& covariance, const MixedModel& model, const VarianceValues& variances,
                 std::size_t first) {
    for (std::size_t record = 0; record < covariance.rows; ++record) {
        const auto& groups = model.residual.groups.ofRecord;
        const std::size_t group = groups.empty() ? 0 : place(groups[record]);
        const double weight = model.weights.empty() ? 1 : model.weights[record];
        covariance.at(record, record) += variances[first + group] / weight;
    }
}

/// The error covariance with rows and columns of dropped effects put back as 0.
Matrix withDropped(const Matrix& fixedPart, const Matrix& crossPart, const Matrix& randomErrors,
                   const std::vector<bool>& dropped) {
    const std::size_t all = dropped.size() + randomErrors.rows;
    Matrix whole(all, all);
    std::vector<std::size_t> kept;
    for (std::size_t column = 0; column < dropped.size(); ++column) {
        if (!dropped[column]) {
            kept.push_back(column);
        }
    }
    for (std::size_t i = 0; i < kept.size(); ++i) {
        for (std::size_t j = 0; j < kept.size(); ++j) {
            whole.at(kept[i], kept[j]) = fixedPart.at(i, j);
        }
        for (std::size_t j = 0; j < randomErrors.rows; ++j) {
            whole.at(kept[i], dropped.size() + j) = crossPart.at(i, j);
            whole.at(dropped.size() + j, kept[i]) = crossPart.at(i, j);
        }
    }
    for (std::size_t i = 0; i < randomErrors.rows; ++i) {
        for (std::size_t j = 0; j < randomErrors.rows; ++j) {
            whole.at(dropped.size() + i, dropped.size() + j) = randomErrors.at(i, j);
        }
    }
    return whole;
}

} // namespace

Matrix transposed(const Matrix& matrix) {
    Matrix result(matrix.columns, matrix.rows);
    for (std::size_t row = 0; row < matrix.rows; ++row) {
        for (std::size_t column = 0; column < matrix.columns; ++column) {
            result.at(column, row) = matrix.at(row, column);
        }
    }
    return result;
}

Matrix product(const Matrix& left, const Matrix& right) {
    Matrix result(left.rows, right.columns);
    for (std::size_t row = 0; row < left.rows; ++row) {
        for (std::size_t inner = 0; inner < left.columns; ++inner) {
            const double factor = left.at(row, inner);
            if (factor == 0) {
                continue;
            }
            for (std::size_t column = 0; column < right.columns; ++column) {
                result.at(row, column) += factor * right.at(inner, column);
            }
        }
    }
    return result;
}

Matrix inverseOf(const Matrix& matrix, double* logDeterminant) {
    // Gauss and Jordan, in place, without pivots: the matrix is positive definite.
    Matrix work = matrix;
    double sum = 0;
    for (std::size_t pivot = 0; pivot < work.rows; ++pivot) {
        const double value = work.at(pivot, pivot);
        sum += std::log(value);
        work.at(pivot, pivot) = 1;
        for (std::size_t column = 0; column < work.columns; ++column) {
            work.at(pivot, column) /= value;
        }
        for (std::size_t row = 0; row < work.rows; ++row) {
            const double factor = work.at(row, pivot);
            if (row == pivot || factor == 0) {
                continue;
            }
            work.at(row, pivot) = 0;
            for (std::size_t column = 0; column < work.columns; ++column) {
                work.at(row, column) -= factor * work.at(pivot, column);
            }
        }
    }
    if (logDeterminant != nullptr) {
        *logDeterminant = sum;
    }
    return work;
}

Answer solve(const MixedModel& model, const VarianceValues& variances, LikelihoodKind likelihood) {
    Answer answer;
    const Matrix asked = fixedColumns(model);
    answer.dropped = dependentColumns(asked);
    const Matrix x = keptColumns(asked, answer.dropped);
    const RandomPart part = randomPart(model, variances);
    Matrix y(model.response.size(), 1);
    y.cells = model.response;

    const Matrix gz = product(part.covariance, transposed(part.design)); // G Z'
    Matrix covariance = product(part.design, gz);
    addResidual(covariance, model, variances, part.variancesRead);
    double logCovariance = 0;
    const Matrix inverse = inverseOf(covariance, &logCovariance);
    const Matrix xInverse = product(transposed(x), inverse); // X' V^-1
    double logInformation = 0;
    const Matrix fixedErrors = inverseOf(product(xInverse, x), &logInformation);
    const Matrix fixed = product(fixedErrors, product(xInverse, y));
    const Matrix rest = plus(y, product(x, fixed), -1);
    const Matrix weighed = product(inverse, rest);
    answer.random = product(gz, weighed).cells;

    const double square = product(transposed(rest), weighed).at(0, 0);
    const auto records = static_cast<double>(y.rows);
    const auto rank = static_cast<double>(x.columns);
    answer.criterion = likelihood == LikelihoodKind::restricted
                           ? (records - rank) * kLogTwoPi + logCovariance + logInformation + square
                           : records * kLogTwoPi + logCovariance + square;

    const Matrix hat = product(xInverse, transposed(gz));              // X' V^-1 Z G
    const Matrix seen = product(gz, product(inverse, transposed(gz))); // G Z' V^-1 Z G
    const Matrix regained = product(transposed(hat), product(fixedErrors, hat));
    const Matrix randomErrors = plus(plus(part.covariance, seen, -1), regained);
    Matrix cross = product(fixedErrors, hat);
    for (double& cell : cross.cells) {
        cell = -cell;
    }
    answer.errorCovariance = withDropped(fixedErrors, cross, randomErrors, answer.dropped);
    std::size_t next = 0;
    for (const bool gone : answer.dropped) {
        answer.fixed.push_back(gone ? 0 : fixed.at(next++, 0));
    }
    return answer;
}

} // namespace pipwright::dense
