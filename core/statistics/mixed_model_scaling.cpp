#include "core/statistics/mixed_model_scaling.h"

#include "core/statistics/subscript.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pipwright {

namespace {

constexpr std::size_t kMostEffects = 16;

/// x' M for a row of k numbers, in place; `stride` from one number to the next.
void rowTimes(double* numbers, std::size_t stride, const double* matrix, std::size_t width) {
    double before[kMostEffects];
    for (std::size_t b = 0; b < width; ++b) {
        before[b] = numbers[b * stride];
    }
    for (std::size_t a = 0; a < width; ++a) {
        double sum = 0;
        for (std::size_t b = 0; b < width; ++b) {
            sum += before[b] * matrix[b * width + a];
        }
        numbers[a * stride] = sum;
    }
}

} // namespace

double VarianceState::covariance(std::size_t term, std::int32_t width, std::int32_t row,
                                 std::int32_t column) const {
    double sum = 0;
    for (std::size_t k = 0; k < at(width); ++k) {
        sum += factors[term][at(row) * at(width) + k] * factors[term][at(column) * at(width) + k];
    }
    return sum;
}

void VarianceState::multiply(double scale) {
    const double root = std::sqrt(scale);
    for (std::vector<double>& factor : factors) {
        for (double& number : factor) {
            number *= root;
        }
    }
    for (double& variance : residual) {
        variance *= scale;
    }
}

ScaledEquations::ScaledEquations(const ModelRecords& records, const EquationCounts& counts,
                                 std::vector<bool> dropped)
    : m_records(records), m_counts(counts), m_dropped(std::move(dropped)),
      m_termOf(at(records.unknowns()), -1) {
    std::int32_t term = 0;
    for (const DesignFamily& family : records.families) {
        if (family.random) {
            std::fill_n(m_termOf.begin() + family.firstUnknown, family.unknowns(), term++);
            m_single = m_single && family.width == 1;
        }
    }
}

void ScaledEquations::assemble(const VarianceState& state, std::vector<double>& values) const {
    const SymmetricPattern& pattern = m_counts.pattern;
    const bool grouped = m_records.groupCount > 1;
    values.resize(pattern.rows.size());
    std::vector<double> scale(at(pattern.size()), 1.0);
    std::vector<const double*> matrices;
    for (std::size_t term = 0; term < state.factors.size(); ++term) {
        const DesignFamily& family = m_records.families[term];
        matrices.push_back(family.width == 1 ? nullptr : state.factors[term].data());
        if (family.width == 1) {
            std::fill_n(scale.begin() + family.firstUnknown, family.levels, state.factors[term][0]);
        }
    }
    for (std::size_t unknown = 0; unknown < scale.size(); ++unknown) {
        if (m_dropped[unknown]) {
            scale[unknown] = 0;
        }
    }
    std::vector<double> inverseResidual;
    for (const double variance : state.residual) {
        inverseResidual.push_back(1 / variance);
    }
    const double* source = m_counts.values.data();
    if (grouped) {
        std::fill(values.begin(), values.end(), 0.0);
        for (const GroupCount& count : m_counts.byGroup) {
            values[static_cast<std::size_t>(count.place)] +=
                count.value * inverseResidual[at(count.group)];
        }
        source = values.data();
    }
    for (std::size_t column = 0; column < scale.size(); ++column) {
        const double own = scale[column] * (grouped ? 1.0 : inverseResidual[0]);
        for (auto place = static_cast<std::size_t>(pattern.starts[column]);
             place < static_cast<std::size_t>(pattern.starts[column + 1]); ++place) {
            values[place] = source[place] * own * scale[at(pattern.rows[place])];
        }
    }
    if (!m_single) {
        transform(matrices, values);
    }
    for (std::size_t unknown = 0; unknown < scale.size(); ++unknown) {
        const std::int32_t term = m_termOf[unknown];
        if (m_dropped[unknown] || (term >= 0 && m_counts.precision[at(term)].places.empty())) {
            values[static_cast<std::size_t>(pattern.starts[unknown])] += 1;
        }
    }
    for (const PrecisionPlaces& precision : m_counts.precision) {
        for (std::size_t entry = 0; entry < precision.places.size(); ++entry) {
            values[static_cast<std::size_t>(precision.places[entry])] += precision.values[entry];
        }
    }
}

void ScaledEquations::transformColumns(const DesignFamily& family, const double* matrix,
                                       std::span<double> values) const {
    const SymmetricPattern& pattern = m_counts.pattern;
    const std::size_t width = at(family.width);
    double full[kMostEffects * kMostEffects];
    double* parts[kMostEffects];
    for (std::int32_t level = 0; level < family.levels; ++level) {
        const std::size_t first = at(family.firstUnknown + level * family.width);
        std::size_t rest = 0;
        for (std::size_t a = 0; a < width; ++a) {
            double* own = values.data() + pattern.starts[first + a];
            for (std::size_t b = a; b < width; ++b) {
                full[a * width + b] = own[b - a];
                full[b * width + a] = own[b - a];
            }
            parts[a] = own + (width - a);
            rest = static_cast<std::size_t>(pattern.starts[first + a + 1] -
                                            pattern.starts[first + a]) -
                   (width - a);
        }
        for (std::size_t a = 0; a < width; ++a) {
            rowTimes(full + a * width, 1, matrix, width);
        }
        for (std::size_t a = 0; a < width; ++a) {
            rowTimes(full + a, width, matrix, width);
        }
        for (std::size_t a = 0; a < width; ++a) {
            double* own = values.data() + pattern.starts[first + a];
            for (std::size_t b = a; b < width; ++b) {
                own[b - a] = full[a * width + b];
            }
        }
        double row[kMostEffects];
        for (std::size_t entry = 0; entry < rest; ++entry) {
            for (std::size_t a = 0; a < width; ++a) {
                row[a] = parts[a][entry];
            }
            rowTimes(row, 1, matrix, width);
            for (std::size_t a = 0; a < width; ++a) {
                parts[a][entry] = row[a];
            }
        }
    }
}

void ScaledEquations::transform(const std::vector<const double*>& matrices,
                                std::span<double> values) const {
    const SymmetricPattern& pattern = m_counts.pattern;
    for (std::size_t term = 0; term < matrices.size(); ++term) {
        if (matrices[term] != nullptr) {
            transformColumns(m_records.families[term], matrices[term], values);
        }
    }
    for (std::size_t column = 0; column < at(pattern.size()); ++column) {
        auto place = static_cast<std::size_t>(pattern.starts[column]);
        const auto end = static_cast<std::size_t>(pattern.starts[column + 1]);
        const std::int32_t ownTerm = m_termOf[column];
        if (ownTerm >= 0 && matrices[at(ownTerm)] != nullptr) {
            // The level's own block is done.
            const DesignFamily& family = m_records.families[at(ownTerm)];
            const std::int32_t effect =
                (static_cast<std::int32_t>(column) - family.firstUnknown) % family.width;
            place += at(family.width - effect);
        }
        while (place < end) {
            const std::int32_t term = m_termOf[at(pattern.rows[place])];
            if (term < 0) {
                break; // fixed ones come last
            }
            const std::size_t width = at(m_records.families[at(term)].width);
            if (matrices[at(term)] != nullptr) {
                rowTimes(values.data() + place, 1, matrices[at(term)], width);
                place += width;
            } else {
                ++place;
            }
        }
    }
}

void ScaledEquations::scaleSide(const VarianceState& state, std::span<double> side) const {
    for (std::size_t term = 0; term < state.factors.size(); ++term) {
        const DesignFamily& family = m_records.families[term];
        for (std::int32_t level = 0; level < family.levels; ++level) {
            rowTimes(side.data() + family.firstUnknown + level * family.width, 1,
                     state.factors[term].data(), at(family.width));
        }
    }
    for (std::size_t unknown = 0; unknown < m_dropped.size(); ++unknown) {
        if (m_dropped[unknown]) {
            side[unknown] = 0;
        }
    }
}

void ScaledEquations::toEffects(const VarianceState& state, std::span<double> effects) const {
    for (std::size_t term = 0; term < state.factors.size(); ++term) {
        const DesignFamily& family = m_records.families[term];
        const std::size_t width = at(family.width);
        double turned[kMostEffects * kMostEffects];
        for (std::size_t a = 0; a < width; ++a) {
            for (std::size_t b = 0; b < width; ++b) {
                turned[b * width + a] = state.factors[term][a * width + b];
            }
        }
        for (std::int32_t level = 0; level < family.levels; ++level) {
            rowTimes(effects.data() + family.firstUnknown + level * family.width, 1, turned, width);
        }
    }
}

void ScaledEquations::inverseToEffects(const VarianceState& state,
                                       std::span<double> inverse) const {
    const SymmetricPattern& pattern = m_counts.pattern;
    std::vector<std::vector<double>> turned(state.factors.size());
    std::vector<const double*> matrices(state.factors.size(), nullptr);
    std::vector<double> scale(at(pattern.size()), 1.0);
    for (std::size_t term = 0; term < state.factors.size(); ++term) {
        const DesignFamily& family = m_records.families[term];
        const std::size_t width = at(family.width);
        if (width == 1) {
            std::fill_n(scale.begin() + family.firstUnknown, family.levels, state.factors[term][0]);
            continue;
        }
        turned[term].resize(width * width);
        for (std::size_t a = 0; a < width; ++a) {
            for (std::size_t b = 0; b < width; ++b) {
                turned[term][b * width + a] = state.factors[term][a * width + b];
            }
        }
        matrices[term] = turned[term].data();
    }
    for (std::size_t unknown = 0; unknown < scale.size(); ++unknown) {
        if (m_dropped[unknown]) {
            scale[unknown] = 0;
        }
    }
    for (std::size_t column = 0; column < scale.size(); ++column) {
        for (auto place = static_cast<std::size_t>(pattern.starts[column]);
             place < static_cast<std::size_t>(pattern.starts[column + 1]); ++place) {
            inverse[place] *= scale[column] * scale[at(pattern.rows[place])];
        }
    }
    transform(matrices, inverse);
}

void ScaledEquations::precisionTimes(std::span<const double> vectors, std::int32_t count,
                                     std::span<double> products) const {
    const SymmetricPattern& pattern = m_counts.pattern;
    const std::size_t width = at(count);
    std::fill(products.begin(), products.end(), 0.0);
    for (std::size_t term = 0; term < m_counts.precision.size(); ++term) {
        const DesignFamily& family = m_records.families[term];
        const PrecisionPlaces& precision = m_counts.precision[term];
        const std::size_t first = at(family.firstUnknown) * width;
        if (precision.places.empty()) {
            std::copy_n(vectors.data() + first, at(family.unknowns()) * width,
                        products.data() + first);
            continue;
        }
        std::size_t column = at(family.firstUnknown);
        for (std::size_t entry = 0; entry < precision.places.size(); ++entry) {
            const std::int64_t place = precision.places[entry];
            while (pattern.starts[column + 1] <= place) {
                ++column;
            }
            const std::size_t row = at(pattern.rows[static_cast<std::size_t>(place)]);
            const double value = precision.values[entry];
            for (std::size_t k = 0; k < width; ++k) {
                products[row * width + k] += value * vectors[column * width + k];
                if (row != column) {
                    products[column * width + k] += value * vectors[row * width + k];
                }
            }
        }
    }
}

void ScaledEquations::equationsTimes(std::span<const double> values,
                                     std::span<const double> vectors, std::int32_t count,
                                     std::span<double> products) const {
    const SymmetricPattern& pattern = m_counts.pattern;
    const std::size_t width = at(count);
    std::fill(products.begin(), products.end(), 0.0);
    for (std::size_t column = 0; column < at(pattern.size()); ++column) {
        const double* own = vectors.data() + column * width;
        double* target = products.data() + column * width;
        auto place = static_cast<std::size_t>(pattern.starts[column]);
        for (std::size_t k = 0; k < width; ++k) {
            target[k] += values[place] * own[k];
        }
        for (++place; place < static_cast<std::size_t>(pattern.starts[column + 1]); ++place) {
            const std::size_t row = at(pattern.rows[place]) * width;
            const double value = values[place];
            for (std::size_t k = 0; k < width; ++k) {
                products[row + k] += value * own[k];
                target[k] += value * vectors[row + k];
            }
        }
    }
}

} // namespace pipwright
