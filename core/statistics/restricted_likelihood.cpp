#include "core/statistics/restricted_likelihood.h"

#include "core/statistics/sparse_ordering.h"
#include "core/statistics/subscript.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <utility>

namespace pipwright {

namespace {

/// The places whose numbers of the inverse are needed: the own block of each level, where the
/// precision matrices stand, and with several residual groups all of them.
std::vector<std::int64_t> wantedPlaces(const ModelRecords& records, const EquationCounts& counts) {
    const std::size_t places = counts.pattern.rows.size();
    std::vector<bool> wanted(places, records.groupCount > 1);
    for (const DesignFamily& family : records.families) {
        for (std::int32_t unknown = 0; unknown < family.unknowns(); ++unknown) {
            const auto place =
                static_cast<std::size_t>(counts.pattern.starts[at(family.firstUnknown + unknown)]);
            const std::int32_t more = family.width - unknown % family.width;
            std::fill_n(wanted.begin() + static_cast<std::int64_t>(place), more, true);
        }
    }
    for (std::size_t term = 0; term < counts.precision.size(); ++term) {
        const std::int32_t width = records.families[term].width;
        std::size_t column = at(records.families[term].firstUnknown);
        for (const std::int64_t place : counts.precision[term].places) {
            while (counts.pattern.starts[column + 1] <= place) {
                ++column;
            }
            const std::int32_t effect =
                (static_cast<std::int32_t>(column) - records.families[term].firstUnknown) % width;
            if (place != counts.pattern.starts[column]) {
                std::fill_n(wanted.begin() + (place - effect), width, true);
            }
        }
    }
    std::vector<std::int64_t> list;
    for (std::size_t place = 0; place < places; ++place) {
        if (wanted[place]) {
            list.push_back(static_cast<std::int64_t>(place));
        }
    }
    return list;
}

std::int32_t fixedNodes(const ModelRecords& records) {
    std::int32_t count = 0;
    for (const DesignFamily& family : records.families) {
        count += family.random ? 0 : family.levels;
    }
    return count;
}

FactorPlan planFactor(const ModelRecords& records, const EquationCounts& counts,
                      const std::vector<std::int64_t>& wanted) {
    return {counts.pattern,
            chooseStructure(nodeGraph(counts.pattern, counts.firstUnknown), fixedNodes(records)),
            wanted};
}

} // namespace

EquationPlan::EquationPlan(const ModelRecords& records, const EquationCounts& counts)
    : factor(planFactor(records, counts, wantedPlaces(records, counts))) {
    const std::vector<std::int64_t> wanted = wantedPlaces(records, counts);
    ownSlots.reserve(at(records.unknowns()));
    std::size_t slot = 0;
    const auto slotOf = [&](std::int64_t place) {
        while (wanted[slot] != place) {
            ++slot;
        }
        return static_cast<std::int64_t>(slot);
    };
    for (std::int32_t unknown = 0; unknown < records.unknowns(); ++unknown) {
        ownSlots.push_back(slotOf(counts.pattern.starts[at(unknown)]));
    }
    for (const PrecisionPlaces& precision : counts.precision) {
        std::vector<std::int64_t>& slots = precisionSlots.emplace_back();
        slot = 0;
        for (const std::int64_t place : precision.places) {
            slots.push_back(slotOf(place));
        }
    }
}

RestrictedLikelihood::RestrictedLikelihood(const ModelRecords& records,
                                           const EquationCounts& counts, const EquationPlan& plan,
                                           const ScaledEquations& equations, std::int32_t fixedRank,
                                           LikelihoodKind kind)
    : m_records(records), m_counts(counts), m_plan(plan), m_equations(equations),
      m_fixedRank(fixedRank), m_kind(kind), m_factor(plan.factor) {}

bool RestrictedLikelihood::moveTo(VarianceState state, bool profile) {
    m_moved = std::move(state);
    m_inverted = false;
    m_equations.assemble(m_moved, m_values);
    if (!m_factor.factorise(m_values)) {
        return false;
    }
    double squares = 0; // y'R^-1 y
    std::vector<double> side;
    if (m_records.groupCount == 1) {
        side = m_counts.side;
        const double inverse = 1 / m_moved.residual[0];
        for (double& number : side) {
            number *= inverse;
        }
        squares = m_counts.squares * inverse;
    } else {
        std::vector<double> inverse;
        for (const double variance : m_moved.residual) {
            inverse.push_back(1 / variance);
        }
        side = designProduct(m_records, m_records.response, inverse);
        for (std::int32_t group = 0; group < m_records.groupCount; ++group) {
            squares += inverse[at(group)] * weightedSquares(m_records, m_records.response, group);
        }
    }
    m_equations.scaleSide(m_moved, side);
    m_solution = side;
    m_factor.solve(m_solution, 1);
    m_shrinkage.resize(m_solution.size());
    m_equations.precisionTimes(m_solution, 1, m_shrinkage);
    const double explained = std::inner_product(side.begin(), side.end(), m_solution.begin(), 0.0);
    const double penalty =
        std::inner_product(m_solution.begin(), m_solution.end(), m_shrinkage.begin(), 0.0);
    m_quadratic = squares - explained;
    constexpr double kCancelled = 1e-5;
    if (m_records.groupCount > 1 || m_quadratic < kCancelled * squares) {
        // From the residuals themselves: slower, but free of cancellation.
        std::vector<double> effects = m_solution;
        m_equations.toEffects(m_moved, effects);
        m_rest = residuals(m_records, effects);
        m_groupSquares.clear();
        for (std::int32_t group = 0; group < m_records.groupCount; ++group) {
            m_groupSquares.push_back(weightedSquares(m_records, m_rest, group) /
                                     m_moved.residual[at(group)]);
        }
        m_quadratic = std::accumulate(m_groupSquares.begin(), m_groupSquares.end(), 0.0) + penalty;
    } else {
        m_groupSquares = {std::max(m_quadratic - penalty, 0.0)};
    }
    finishMove(profile);
    return std::isfinite(m_criterion);
}

void RestrictedLikelihood::finishMove(bool profile) {
    const auto records = static_cast<double>(m_records.count());
    const bool restricted = m_kind == LikelihoodKind::restricted;
    const double degrees = records - (restricted ? m_fixedRank : 0);
    double sum = degrees * std::log(2 * std::numbers::pi) - m_records.logWeights;
    for (std::int32_t group = 0; group < m_records.groupCount; ++group) {
        sum += m_counts.groupRecords[at(group)] * std::log(m_moved.residual[at(group)]);
    }
    for (std::size_t term = 0; term < m_counts.precision.size(); ++term) {
        sum -= m_records.families[term].width * m_counts.precision[term].logDeterminant;
    }
    sum += m_factor.logDeterminant(restricted ? 0 : m_records.fixedUnknowns);
    m_profile = 1;
    m_state = m_moved;
    double quadratic = m_quadratic;
    if (profile && m_quadratic > 0) {
        m_profile = m_quadratic / degrees;
        m_state.multiply(m_profile);
        sum += degrees * std::log(m_profile);
        quadratic = degrees;
    }
    m_fixedScale = std::sqrt(m_profile);
    m_criterion = sum + quadratic;
}

void RestrictedLikelihood::invert() {
    const bool restricted = m_kind == LikelihoodKind::restricted;
    m_inverse.resize(static_cast<std::size_t>(m_plan.factor.wantedCount()));
    m_factor.inverse(m_inverse, restricted ? 0 : m_records.fixedUnknowns);
    m_inverted = restricted;
}

void RestrictedLikelihood::invertForErrors() {
    if (!m_inverted) {
        m_inverse.resize(static_cast<std::size_t>(m_plan.factor.wantedCount()));
        m_factor.inverse(m_inverse, 0);
        m_inverted = true;
    }
}

std::vector<double> RestrictedLikelihood::inverseSums(std::size_t term) const {
    const DesignFamily& family = m_records.families[term];
    const std::size_t width = at(family.width);
    std::vector<double> sums(width * width, 0.0);
    const PrecisionPlaces& precision = m_counts.precision[term];
    if (precision.places.empty()) {
        for (std::int32_t level = 0; level < family.levels; ++level) {
            for (std::size_t a = 0; a < width; ++a) {
                const double* numbers =
                    m_inverse.data() +
                    m_plan.ownSlots[at(family.firstUnknown + level * family.width) + a];
                for (std::size_t b = a; b < width; ++b) {
                    sums[a * width + b] += numbers[b - a];
                }
            }
        }
        for (std::size_t a = 0; a < width; ++a) {
            for (std::size_t b = a + 1; b < width; ++b) {
                sums[b * width + a] = sums[a * width + b];
            }
        }
        return sums;
    }
    std::size_t column = at(family.firstUnknown);
    for (std::size_t entry = 0; entry < precision.places.size(); ++entry) {
        const std::int64_t place = precision.places[entry];
        while (m_counts.pattern.starts[column + 1] <= place) {
            ++column;
        }
        const bool own = m_counts.pattern.starts[column] == place;
        const std::size_t a = (column - at(family.firstUnknown)) % width;
        const double* numbers = m_inverse.data() + m_plan.precisionSlots[term][entry];
        for (std::size_t b = own ? a : 0; b < width; ++b) {
            const double value =
                precision.values[entry] *
                numbers[static_cast<std::ptrdiff_t>(b) - static_cast<std::ptrdiff_t>(a)];
            sums[a * width + b] += value;
            if (!own || a != b) {
                sums[b * width + a] += value;
            }
        }
    }
    return sums;
}

std::vector<double> RestrictedLikelihood::solutionSums(std::size_t term) const {
    const DesignFamily& family = m_records.families[term];
    const std::size_t width = at(family.width);
    std::vector<double> sums(width * width, 0.0);
    for (std::int32_t level = 0; level < family.levels; ++level) {
        const std::size_t first = at(family.firstUnknown + level * family.width);
        for (std::size_t a = 0; a < width; ++a) {
            for (std::size_t b = 0; b < width; ++b) {
                sums[a * width + b] += m_solution[first + a] * m_shrinkage[first + b];
            }
        }
    }
    for (double& sum : sums) {
        sum /= m_profile;
    }
    return sums;
}

std::vector<double> RestrictedLikelihood::groupTraces() const {
    // tr(P R_g) = n_g - tr(C^-1 W_g'R^-1 W_g).
    std::vector<double> traces = m_counts.groupRecords;
    if (m_records.groupCount == 1) {
        // C^-1 W'R^-1 W = I - C^-1 G0^-1.
        if (m_kind == LikelihoodKind::restricted) {
            traces[0] -= m_fixedRank;
        }
        for (std::size_t term = 0; term < m_counts.precision.size(); ++term) {
            const std::vector<double> sums = inverseSums(term);
            const auto width = at(m_records.families[term].width);
            for (std::size_t a = 0; a < width; ++a) {
                traces[0] -= m_records.families[term].levels - sums[a * width + a];
            }
        }
        return traces;
    }
    std::vector<double> inverse = m_inverse; // all places are wanted
    m_equations.inverseToEffects(m_moved, inverse);
    std::size_t column = 0;
    for (const GroupCount& count : m_counts.byGroup) {
        while (m_counts.pattern.starts[column + 1] <= count.place) {
            ++column;
        }
        const double both = m_counts.pattern.starts[column] == count.place ? 1 : 2;
        traces[at(count.group)] -= both * count.value *
                                   inverse[static_cast<std::size_t>(count.place)] /
                                   m_moved.residual[at(count.group)];
    }
    return traces;
}

std::vector<double>
RestrictedLikelihood::gradient(std::span<const SearchParameter> parameters) const {
    std::vector<double> slopes;
    slopes.reserve(parameters.size());
    std::vector<double> traces;
    std::vector<double> inverse;
    std::vector<double> solution;
    std::int32_t term = -1;
    for (const SearchParameter& parameter : parameters) {
        if (parameter.term < 0) {
            if (traces.empty()) {
                traces = groupTraces();
            }
            slopes.push_back(traces[at(parameter.group)] -
                             m_groupSquares[at(parameter.group)] / m_profile);
            continue;
        }
        if (parameter.term != term) {
            term = parameter.term;
            inverse = inverseSums(at(term));
            solution = solutionSums(at(term));
        }
        const DesignFamily& family = m_records.families[at(term)];
        const std::size_t place = at(parameter.row) * at(family.width) + at(parameter.column);
        const double other = inverse[place] + solution[place];
        slopes.push_back(parameter.row == parameter.column ? family.levels - other : -2 * other);
    }
    return slopes;
}

void RestrictedLikelihood::groupVariates(std::span<const SearchParameter> parameters,
                                         std::span<double> sides, std::span<double> squares) const {
    const std::size_t count = parameters.size();
    for (std::size_t k = 0; k < count; ++k) {
        if (parameters[k].term >= 0) {
            continue;
        }
        squares[k] = m_groupSquares[at(parameters[k].group)];
        if (m_records.groupCount == 1) {
            // W'R^-1 e = G0^-1 v, by the equations themselves.
            for (std::size_t unknown = 0; unknown < m_shrinkage.size(); ++unknown) {
                sides[unknown * count + k] = m_shrinkage[unknown];
            }
            continue;
        }
        std::vector<double> only(at(m_records.groupCount), 0.0);
        only[at(parameters[k].group)] = 1 / m_moved.residual[at(parameters[k].group)];
        std::vector<double> side = designProduct(m_records, m_rest, only);
        m_equations.scaleSide(m_moved, side);
        for (std::size_t unknown = 0; unknown < side.size(); ++unknown) {
            sides[unknown * count + k] = side[unknown];
        }
    }
}

std::vector<double>
RestrictedLikelihood::averageInformation(std::span<const SearchParameter> parameters) const {
    // A working variate of a random term is f = W d with d the solution of its levels, effects
    // moved as D says; then W'R^-1 f = (C - G0^-1) d and f'R^-1 g = d'W'R^-1 g.
    const std::size_t count = parameters.size();
    const std::size_t unknowns = m_solution.size();
    std::vector<double> vectors(unknowns * count, 0.0);
    for (std::size_t k = 0; k < count; ++k) {
        const SearchParameter& parameter = parameters[k];
        if (parameter.term < 0) {
            continue;
        }
        const DesignFamily& family = m_records.families[at(parameter.term)];
        for (std::int32_t level = 0; level < family.levels; ++level) {
            const std::size_t first = at(family.firstUnknown + level * family.width);
            vectors[(first + at(parameter.row)) * count + k] =
                m_solution[first + at(parameter.column)];
            vectors[(first + at(parameter.column)) * count + k] =
                m_solution[first + at(parameter.row)];
        }
    }
    std::vector<double> sides(unknowns * count);
    std::vector<double> shrunk(unknowns * count);
    const auto sideCount = static_cast<std::int32_t>(count);
    m_equations.equationsTimes(m_values, vectors, sideCount, sides);
    m_equations.precisionTimes(vectors, sideCount, shrunk);
    for (std::size_t place = 0; place < sides.size(); ++place) {
        sides[place] -= shrunk[place];
    }
    std::vector<double> squares(count, 0.0);
    groupVariates(parameters, sides, squares);
    std::vector<double> information(count * count, 0.0);
    for (std::size_t unknown = 0; unknown < unknowns; ++unknown) {
        for (std::size_t row = 0; row < count; ++row) {
            const double own = vectors[unknown * count + row];
            for (std::size_t column = 0; column < count && own != 0; ++column) {
                information[row * count + column] += own * sides[unknown * count + column];
            }
        }
    }
    for (std::size_t row = 0; row < count; ++row) {
        if (parameters[row].term < 0) {
            information[row * count + row] = squares[row];
            for (std::size_t column = 0; column < count; ++column) {
                if (parameters[column].term >= 0) {
                    information[row * count + column] = information[column * count + row];
                }
            }
        }
    }
    m_factor.subtractProducts(sides, sideCount, information);
    for (double& number : information) {
        number /= m_profile;
    }
    return information;
}

std::vector<double> RestrictedLikelihood::effects() const {
    std::vector<double> effects = m_solution;
    m_equations.toEffects(m_moved, effects);
    return effects;
}

} // namespace pipwright
