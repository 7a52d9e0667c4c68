#include "core/statistics/variance_parameters.h"

#include <algorithm>
#include <cmath>

namespace pipwright {

namespace {

/// A start for a variance that an ordinary fit finds to be 0, over that of the residual.
constexpr double kLiftedVariance = .09;

/// Place of (row, column), column <= row, in a lower triangle written row by row.
std::size_t triangle(std::size_t row, std::size_t column) {
    return row * (row + 1) / 2 + column;
}

/// The Cholesky factor of a covariance, both as lower triangles; small pivots are lifted.
std::vector<double> factorOf(const double* covariance, std::size_t side) {
    std::vector<double> factor(side * (side + 1) / 2);
    for (std::size_t row = 0; row < side; ++row) {
        for (std::size_t column = 0; column <= row; ++column) {
            double rest = covariance[triangle(row, column)];
            for (std::size_t inner = 0; inner < column; ++inner) {
                rest -= factor[triangle(row, inner)] * factor[triangle(column, inner)];
            }
            factor[triangle(row, column)] = row == column
                                                ? std::sqrt(std::max(rest, kLiftedVariance))
                                                : rest / factor[triangle(column, column)];
        }
    }
    return factor;
}

double inverseWishartPenalty(const VarianceChoice& choice, const double* values, std::size_t side) {
    // nu (ln |S| + tr(S^-1 S0)) with S = L L': tr = sum of squares of the rows of L^-1 times S0.
    std::vector<double> factor(side * (side + 1) / 2);
    double logDeterminant = 0;
    for (std::size_t row = 0; row < side; ++row) {
        for (std::size_t column = 0; column <= row; ++column) {
            double rest = values[triangle(row, column)];
            for (std::size_t inner = 0; inner < column; ++inner) {
                rest -= factor[triangle(row, inner)] * factor[triangle(column, inner)];
            }
            factor[triangle(row, column)] =
                row == column ? std::sqrt(rest) : rest / factor[triangle(column, column)];
        }
        logDeterminant += 2 * std::log(factor[triangle(row, row)]);
    }
    double trace = 0;
    for (std::size_t column = 0; column < side; ++column) {
        // The solution of L L' x = (column of S0); its own entry adds to the trace.
        std::vector<double> x(side);
        for (std::size_t row = 0; row < side; ++row) {
            x[row] = choice.value[row * side + column];
            for (std::size_t inner = 0; inner < row; ++inner) {
                x[row] -= factor[triangle(row, inner)] * x[inner];
            }
            x[row] /= factor[triangle(row, row)];
        }
        for (std::size_t row = side; row-- > 0;) {
            for (std::size_t inner = row + 1; inner < side; ++inner) {
                x[row] -= factor[triangle(inner, row)] * x[inner];
            }
            x[row] /= factor[triangle(row, row)];
        }
        trace += x[column];
    }
    return choice.degreesOfFreedom * (logDeterminant + trace);
}

} // namespace

VarianceParameters::VarianceParameters(const MixedModel& model, double scale) : m_scale(scale) {
    for (const RandomTerm& term : model.random) {
        add(term.variance, static_cast<std::size_t>(term.effectsPerLevel()), false);
    }
    add(model.residual.variance.empty() ? VarianceChoice{} : model.residual.variance[0], 1, true);
}

void VarianceParameters::add(const VarianceChoice& choice, std::size_t side, bool residual) {
    m_blocks.push_back({choice, side, residual, m_count, m_values});
    m_values += m_blocks.back().size();
    m_count += m_blocks.back().held() ? 0 : m_blocks.back().size();
}

std::vector<double> VarianceParameters::startFrom(const VarianceValues& values) const {
    std::vector<double> parameters(m_count);
    const double square = m_scale * m_scale;
    for (const Block& block : m_blocks) {
        if (block.held()) {
            continue;
        }
        std::vector<double> scaled;
        for (std::size_t i = 0; i < block.size(); ++i) {
            scaled.push_back(values[block.firstValue + i] / square);
        }
        if (block.residual) {
            parameters[block.firstParameter] = std::log(scaled[0]) / 2;
        } else {
            const std::vector<double> factor = factorOf(scaled.data(), block.side);
            std::copy(factor.begin(), factor.end(),
                      parameters.begin() + static_cast<std::ptrdiff_t>(block.firstParameter));
        }
    }
    return parameters;
}

VarianceValues VarianceParameters::values(const std::vector<double>& parameters) const {
    VarianceValues values(m_values);
    const double square = m_scale * m_scale;
    for (const Block& block : m_blocks) {
        const double* own = parameters.data() + block.firstParameter;
        for (std::size_t row = 0; row < block.side; ++row) {
            for (std::size_t column = 0; column <= row; ++column) {
                double& value = values[block.firstValue + triangle(row, column)];
                if (block.held()) {
                    value = block.choice.value[row * block.side + column];
                } else if (block.residual) {
                    value = square * std::exp(2 * own[0]);
                } else {
                    for (std::size_t inner = 0; inner <= column; ++inner) {
                        value += square * own[triangle(row, inner)] * own[triangle(column, inner)];
                    }
                }
            }
        }
    }
    return values;
}

double VarianceParameters::penalty(const VarianceValues& values) const {
    double sum = 0;
    for (const Block& block : m_blocks) {
        const double* own = values.data() + block.firstValue;
        const double nu = block.choice.degreesOfFreedom;
        if (block.choice.knowledge == VarianceKnowledge::halfT) {
            sum += (nu + 1) * std::log1p(own[0] / (nu * block.choice.value[0]));
        } else if (block.choice.knowledge == VarianceKnowledge::inverseChiSquare) {
            sum += inverseWishartPenalty(block.choice, own, block.side);
        }
    }
    return sum;
}

std::vector<std::size_t> VarianceParameters::singleParameters() const {
    std::vector<std::size_t> parameters;
    for (const Block& block : m_blocks) {
        if (!block.held() && !block.residual && block.side == 1) {
            parameters.push_back(block.firstParameter);
        }
    }
    return parameters;
}

std::vector<bool> VarianceParameters::estimated() const {
    std::vector<bool> free;
    for (const Block& block : m_blocks) {
        free.insert(free.end(), block.size(), !block.held());
    }
    return free;
}

} // namespace pipwright
