#include "core/pedigree/inverse_relationship.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <optional>

namespace pipwright {

namespace {

std::size_t place(std::int64_t number) {
    return static_cast<std::size_t>(number);
}

/// Writes the lower triangle column by column. A column holds its diagonal, the other parents
/// with whom its genotype has children, and its kin of the next generation. Only the mates need
/// gathering beforehand; the rest is put where it belongs in one pass over the children.
class InverseWriter {
  public:
    InverseWriter(const Pedigree& pedigree, const std::vector<double>& inbreedings)
        : m_seed(pedigree.seedParents()), m_pollen(pedigree.pollenParents()), m_pedigree(pedigree),
          m_inbreedings(inbreedings), m_size(pedigree.size()) {}

    /// The first genotype without any variance of its own, if there is one; then nothing else
    /// may be asked.
    std::optional<int> run() {
        gatherMates();
        countColumns();
        if (const auto fixed = fill()) {
            return fixed;
        }
        for (std::int32_t column = 0; column < m_size; ++column) {
            putInOrder(column);
        }
        addBackcrosses();
        return std::nullopt;
    }

    Result<SparseSymmetric> matrix() {
        return SparseSymmetric::fromColumns(std::move(m_starts), std::move(m_rows),
                                            std::move(m_values));
    }
    [[nodiscard]] double logDeterminant() const { return m_logDeterminant; }

  private:
    struct Mate {
        std::int32_t row;
        double value;
    };

    [[nodiscard]] double samplingOf(std::int32_t child) const {
        const std::int32_t seed = m_seed[place(child)];
        const std::int32_t pollen = m_pollen[place(child)];
        if (seed == kUnknownParent && pollen == kUnknownParent) {
            return m_pedigree.founderVariance(child);
        }
        const double ofSeed = seed == kUnknownParent ? -1 : m_inbreedings[place(seed)];
        const double ofPollen = pollen == kUnknownParent ? -1 : m_inbreedings[place(pollen)];
        return 0.5 - (ofSeed + ofPollen) / 4;
    }

    [[nodiscard]] bool isChildOf(std::int32_t child, std::int32_t parent) const {
        return m_seed[place(child)] == parent || m_pollen[place(child)] == parent;
    }

    /// Calls visit(column, row, first, count) for each run of full sibs whose parents are two.
    template <typename Visit>
    void eachLitter(Visit visit) const {
        for (std::int32_t child = 0; child < m_size;) {
            const std::int32_t seed = m_seed[place(child)];
            const std::int32_t pollen = m_pollen[place(child)];
            const std::int32_t first = child++;
            while (child < m_size && m_seed[place(child)] == seed &&
                   m_pollen[place(child)] == pollen) {
                ++child;
            }
            if (seed != kUnknownParent && pollen != kUnknownParent && seed != pollen) {
                visit(std::min(seed, pollen), std::max(seed, pollen), first, child - first);
            }
        }
    }

    /// Gathers the mates column by column, each once.
    void gatherMates() {
        m_mateStarts.assign(place(m_size) + 1, 0);
        eachLitter([&](std::int32_t column, std::int32_t, std::int32_t, std::int32_t) {
            ++m_mateStarts[place(column) + 1];
        });
        for (std::int32_t column = 0; column < m_size; ++column) {
            m_mateStarts[place(column) + 1] += m_mateStarts[place(column)];
        }
        m_mates.resize(place(m_mateStarts.back()));
        eachLitter([&](std::int32_t column, std::int32_t row, std::int32_t first,
                       std::int32_t sibs) {
            m_mates[place(m_mateStarts[place(column)]++)] = {row, sibs / (4 * samplingOf(first))};
        });
        // Now m_mateStarts says where each column ends; joining moves the starts back.
        std::int32_t first = 0;
        std::int32_t kept = 0;
        for (std::int32_t column = 0; column < m_size; ++column) {
            const std::int32_t end = m_mateStarts[place(column)];
            m_mateStarts[place(column)] = kept;
            if (first < end) {
                kept = joinMates(column, first, end, kept);
            }
            first = end;
        }
        m_mateStarts[place(m_size)] = kept;
    }

    /// Sorts the mates of a column, adds up the equal ones and sets aside those that are also
    /// parent and child. Returns where the kept ones end.
    std::int32_t joinMates(std::int32_t column, std::int32_t first, std::int32_t end,
                           std::int32_t kept) {
        std::sort(m_mates.begin() + first, m_mates.begin() + end,
                  [](const Mate& one, const Mate& other) { return one.row < other.row; });
        while (first < end) {
            Mate mate = m_mates[place(first++)];
            while (first < end && m_mates[place(first)].row == mate.row) {
                mate.value += m_mates[place(first++)].value;
            }
            if (isChildOf(mate.row, column) || isChildOf(column, mate.row)) {
                m_backcrosses.push_back({mate.row, column, mate.value});
            } else {
                m_mates[place(kept++)] = mate;
            }
        }
        return kept;
    }

    /// Calls visit(parent, times) for each known parent of a child; twice for both at once.
    template <typename Visit>
    void eachParent(std::int32_t child, Visit visit) const {
        const std::int32_t seed = m_seed[place(child)];
        const std::int32_t pollen = m_pollen[place(child)];
        if (seed != kUnknownParent) {
            visit(seed, seed == pollen ? 2 : 1);
        }
        if (pollen != kUnknownParent && pollen != seed) {
            visit(pollen, 1);
        }
    }

    void countColumns() {
        m_starts.assign(place(m_size) + 1, 0);
        for (std::int32_t child = 0; child < m_size; ++child) {
            m_starts[place(child) + 1] +=
                1 + m_mateStarts[place(child) + 1] - m_mateStarts[place(child)];
            eachParent(child, [&](std::int32_t parent, int) {
                ++m_starts[place(std::min(parent, child)) + 1];
            });
        }
        for (std::int32_t column = 0; column < m_size; ++column) {
            m_starts[place(column) + 1] += m_starts[place(column)];
        }
        m_rows.resize(place(m_starts.back()));
        m_values.resize(m_rows.size(), 0.0);
    }

    /// The first genotype without any variance of its own, if there is one.
    std::optional<int> fill() {
        // Behind the diagonal and the room for the mates.
        std::vector<std::int64_t> next(m_starts.begin(), m_starts.end() - 1);
        for (std::int32_t column = 0; column < m_size; ++column) {
            m_rows[place(m_starts[place(column)])] = column;
            next[place(column)] +=
                1 + m_mateStarts[place(column) + 1] - m_mateStarts[place(column)];
        }
        double lastSampling = 1;
        double lastLog = 0;
        for (std::int32_t child = 0; child < m_size; ++child) {
            const double sampling = samplingOf(child);
            if (!(sampling > 0)) {
                return child;
            }
            const double alpha = 1 / sampling;
            if (sampling != lastSampling) { // sibs share it
                lastSampling = sampling;
                lastLog = std::log(sampling);
            }
            m_logDeterminant -= lastLog;
            diagonal(child) += alpha;
            eachParent(child, [&](std::int32_t parent, int times) {
                diagonal(parent) += alpha * times * times / 4;
                const std::int64_t at = next[place(std::min(parent, child))]++;
                m_rows[place(at)] = std::max(parent, child);
                m_values[place(at)] = -alpha * times / 2;
            });
        }
        return std::nullopt;
    }

    double& diagonal(std::int32_t genotype) { return m_values[place(m_starts[place(genotype)])]; }

    /// Merges a column's mates into its kin, so that rows rise.
    void putInOrder(std::int32_t column) {
        std::int32_t mate = m_mateStarts[place(column)];
        const std::int32_t endOfMates = m_mateStarts[place(column) + 1];
        std::int64_t to = m_starts[place(column)] + 1;
        std::int64_t kin = to + endOfMates - mate;
        const std::int64_t end = m_starts[place(column) + 1];
        sortKin(kin, end);
        while (mate < endOfMates) {
            if (kin < end && m_rows[place(kin)] < m_mates[place(mate)].row) {
                m_rows[place(to)] = m_rows[place(kin)];
                m_values[place(to++)] = m_values[place(kin++)];
            } else {
                m_rows[place(to)] = m_mates[place(mate)].row;
                m_values[place(to++)] = m_mates[place(mate++)].value;
            }
        }
    }

    /// Of use where a child stands before its parents; else they are in order already.
    void sortKin(std::int64_t first, std::int64_t end) {
        if (std::is_sorted(m_rows.begin() + first, m_rows.begin() + end)) {
            return;
        }
        m_kin.clear();
        for (std::int64_t at = first; at < end; ++at) {
            m_kin.push_back({m_rows[place(at)], m_values[place(at)]});
        }
        std::sort(m_kin.begin(), m_kin.end(),
                  [](const Mate& one, const Mate& other) { return one.row < other.row; });
        for (const Mate& one : m_kin) {
            m_rows[place(first)] = one.row;
            m_values[place(first++)] = one.value;
        }
    }

    void addBackcrosses() {
        for (const SymmetricEntry& one : m_backcrosses) {
            const auto first = m_rows.begin() + m_starts[place(one.column)];
            const auto end = m_rows.begin() + m_starts[place(one.column) + 1];
            const auto found = std::lower_bound(first, end, one.row);
            m_values[place(found - m_rows.begin())] += one.value;
        }
    }

    const ParentColumn& m_seed;
    const ParentColumn& m_pollen;
    const Pedigree& m_pedigree;
    const std::vector<double>& m_inbreedings;
    std::int32_t m_size;
    std::vector<std::int32_t> m_mateStarts;
    std::vector<Mate> m_mates;
    std::vector<SymmetricEntry> m_backcrosses; ///< between two that are also parent and child
    std::vector<Mate> m_kin;
    std::vector<std::int64_t> m_starts;
    std::vector<std::int32_t> m_rows;
    std::vector<double> m_values;
    double m_logDeterminant = 0;
};

} // namespace

Result<LevelPrecision> inverseRelationship(const Pedigree& pedigree,
                                           const std::vector<double>& inbreedings,
                                           const GenotypeName& nameOf) {
    InverseWriter writer{pedigree, inbreedings};
    if (const auto fixed = writer.run()) {
        return Problem{ProblemCode::badInput,
                       nameOf(*fixed) + " cannot differ from its parents' mean, as both are wholly "
                                        "inbred; so the relationships have no inverse.",
                       "Leave one of its parents unknown.", ""};
    }
    auto matrix = writer.matrix();
    if (!matrix) {
        return matrix.problem();
    }
    std::vector<double> diagonal(inbreedings);
    for (double& own : diagonal) {
        own += 1;
    }
    return LevelPrecision{std::move(*matrix), writer.logDeterminant(), std::move(diagonal)};
}

} // namespace pipwright
