#include "core/statistics/mixed_model_counts.h"

#include "core/statistics/subscript.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace pipwright {

namespace {

double weightOf(const ModelRecords& records, std::size_t record) {
    return records.weights.empty() ? 1.0 : records.weights[record];
}

/// Records in the order of their level in a family (stable), those without one left out. Starting
/// from `order`, or from the order given when that is empty.
std::vector<std::int32_t> sortByLevel(const DesignFamily& family,
                                      const std::vector<std::int32_t>& order, std::size_t count,
                                      std::vector<std::int64_t>* starts) {
    std::vector<std::int64_t> next(at(family.levels) + 1, 0);
    const std::size_t length = order.empty() ? count : order.size();
    const auto record = [&](std::size_t place) { return order.empty() ? place : at(order[place]); };
    for (std::size_t place = 0; place < length; ++place) {
        const std::int32_t level = family.level(record(place));
        if (level >= 0) {
            ++next[at(level) + 1];
        }
    }
    std::partial_sum(next.begin(), next.end(), next.begin());
    if (starts != nullptr) {
        *starts = next;
    }
    std::vector<std::int32_t> sorted(static_cast<std::size_t>(next.back()));
    for (std::size_t place = 0; place < length; ++place) {
        const std::size_t number = record(place);
        const std::int32_t level = family.level(number);
        if (level >= 0) {
            sorted[static_cast<std::size_t>(next[at(level)]++)] = static_cast<std::int32_t>(number);
        }
    }
    return sorted;
}

/// The counts of two families against each other: for each level of the first, the levels of the
/// second met with it, rising, and the sums of products of their numbers.
struct PairCounts {
    std::vector<std::int64_t> starts; ///< of each level of the first
    std::vector<std::int32_t> levels;
    std::vector<double> sums;            ///< width x width of each, the second's effects together
    std::vector<std::int64_t> runStarts; ///< of each pair, into runs; only with several groups
    std::vector<std::int32_t> runGroups;
    std::vector<double> runSums;
};

/// The numbers of a record in a family.
const double* numbersOf(const DesignFamily& family, std::size_t record) {
    static constexpr double kOne = 1;
    return family.values.empty() ? &kOne : family.values.data() + record * at(family.width);
}

void addProducts(const DesignFamily& first, const DesignFamily& second, std::size_t record,
                 double weight, double* sums) {
    const double* one = numbersOf(first, record);
    const double* other = numbersOf(second, record);
    for (std::size_t a = 0; a < at(first.width); ++a) {
        const double factor = weight * one[a];
        for (std::size_t b = 0; b < at(second.width); ++b) {
            sums[a * at(second.width) + b] += factor * other[b];
        }
    }
}

PairCounts countPair(const ModelRecords& records, const DesignFamily& first,
                     const DesignFamily& second, const std::vector<std::int32_t>& bySecond) {
    PairCounts counts;
    std::vector<std::int64_t> runs;
    const std::vector<std::int32_t> sorted = sortByLevel(first, bySecond, records.count(), &runs);
    const std::size_t size = at(first.width) * at(second.width);
    const bool grouped = records.groupCount > 1;
    const bool plain = first.values.empty() && second.values.empty() && records.weights.empty();
    const std::size_t most =
        std::min(sorted.size(), at(first.levels) * at(second.levels)); // room untouched is free
    counts.levels.reserve(most);
    counts.sums.reserve(most * size);
    counts.starts.reserve(at(first.levels) + 1);
    counts.starts.push_back(0);
    for (std::size_t level = 0; level < at(first.levels); ++level) {
        std::int32_t current = -1;
        std::int32_t group = -1;
        for (auto place = static_cast<std::size_t>(runs[level]);
             place < static_cast<std::size_t>(runs[level + 1]); ++place) {
            const std::size_t record = at(sorted[place]);
            const std::int32_t other = second.level(record);
            if (other < 0) {
                continue;
            }
            if (other != current) {
                current = other;
                group = -1;
                counts.levels.push_back(other);
                counts.sums.resize(counts.sums.size() + size, 0.0);
                if (grouped) {
                    counts.runStarts.push_back(static_cast<std::int64_t>(counts.runGroups.size()));
                }
            }
            if (plain) {
                counts.sums.back() += 1;
            } else {
                addProducts(first, second, record, weightOf(records, record),
                            counts.sums.data() + counts.sums.size() - size);
            }
            if (grouped) {
                if (records.groups[record] != group) {
                    group = records.groups[record];
                    counts.runGroups.push_back(group);
                    counts.runSums.resize(counts.runSums.size() + size, 0.0);
                }
                addProducts(first, second, record, weightOf(records, record),
                            counts.runSums.data() + counts.runSums.size() - size);
            }
        }
        counts.starts.push_back(static_cast<std::int64_t>(counts.levels.size()));
    }
    if (grouped) {
        counts.runStarts.push_back(static_cast<std::int64_t>(counts.runGroups.size()));
    }
    return counts;
}

/// Writes the columns of one family: its own levels, the precision matrix, the later families.
class ColumnWriter {
  public:
    ColumnWriter(EquationCounts& equations, const ModelRecords& records)
        : m_equations(equations), m_grouped(records.groupCount > 1) {}

    /// `pairs`: this family with itself, then with each later one in `others`.
    void write(const DesignFamily& family, const LevelPrecision* precision,
               PrecisionPlaces* precisionPlaces, const std::vector<PairCounts>& pairs,
               const std::vector<const DesignFamily*>& others) {
        const std::int32_t width = family.width;
        reserve(family, precision, pairs);
        for (std::int32_t level = 0; level < family.levels; ++level) {
            m_equations.firstUnknown.push_back(family.firstUnknown + level * width);
            for (std::int32_t a = 0; a < width; ++a) {
                writeOwn(family, pairs.front(), level, a);
                if (precision != nullptr) {
                    writePrecision(family, *precision, *precisionPlaces, level, a);
                }
                for (std::size_t other = 0; other < others.size(); ++other) {
                    writeOther(*others[other], pairs[other + 1], level, a);
                }
                m_equations.pattern.starts.push_back(
                    static_cast<std::int64_t>(m_equations.pattern.rows.size()));
            }
        }
    }

  private:
    void reserve(const DesignFamily& family, const LevelPrecision* precision,
                 const std::vector<PairCounts>& pairs) {
        std::size_t more =
            m_equations.pattern.rows.size() + at(family.unknowns()) * at(family.width);
        for (const PairCounts& pair : pairs) {
            more += pair.sums.size();
        }
        if (precision != nullptr) {
            more += precision->matrix.rows().size() * at(family.width) * at(family.width);
        }
        m_equations.pattern.rows.reserve(more);
        m_equations.values.reserve(more);
    }
    void put(std::int32_t row, double value) {
        m_equations.pattern.rows.push_back(row);
        m_equations.values.push_back(value);
    }
    [[nodiscard]] std::int64_t here() const {
        return static_cast<std::int64_t>(m_equations.pattern.rows.size());
    }
    void putRuns(const PairCounts& pair, std::size_t entry, std::size_t size, std::size_t offset) {
        if (!m_grouped) {
            return;
        }
        for (auto run = static_cast<std::size_t>(pair.runStarts[entry]);
             run < static_cast<std::size_t>(pair.runStarts[entry + 1]); ++run) {
            m_equations.byGroup.push_back(
                {here(), pair.runGroups[run], pair.runSums[run * size + offset]});
        }
    }
    void writeOwn(const DesignFamily& family, const PairCounts& own, std::int32_t level,
                  std::int32_t a) {
        const auto entry = static_cast<std::size_t>(own.starts[at(level)]);
        const bool met = own.starts[at(level) + 1] > own.starts[at(level)];
        const std::size_t size = at(family.width) * at(family.width);
        for (std::int32_t b = a; b < family.width; ++b) {
            const std::size_t offset = at(a) * at(family.width) + at(b);
            if (met) {
                putRuns(own, entry, size, offset);
            }
            put(family.firstUnknown + level * family.width + b,
                met ? own.sums[entry * size + offset] : 0.0);
        }
    }
    void writePrecision(const DesignFamily& family, const LevelPrecision& precision,
                        PrecisionPlaces& places, std::int32_t level, std::int32_t a) {
        const SparseSymmetric& matrix = precision.matrix;
        auto entry = static_cast<std::size_t>(matrix.columnStarts()[at(level)]);
        const auto end = static_cast<std::size_t>(matrix.columnStarts()[at(level) + 1]);
        // The diagonal number sits at the place just written for (a, a).
        places.places.push_back(here() - (family.width - a));
        places.values.push_back(matrix.values()[entry]);
        for (++entry; entry < end; ++entry) {
            for (std::int32_t b = 0; b < family.width; ++b) {
                if (b == a) {
                    places.places.push_back(here());
                    places.values.push_back(matrix.values()[entry]);
                }
                put(family.firstUnknown + matrix.rows()[entry] * family.width + b, 0.0);
            }
        }
    }
    void writeOther(const DesignFamily& other, const PairCounts& pair, std::int32_t level,
                    std::int32_t a) {
        const std::size_t width = at(other.width);
        const std::size_t size = pair.levels.empty() ? 0 : pair.sums.size() / pair.levels.size();
        for (auto entry = static_cast<std::size_t>(pair.starts[at(level)]);
             entry < static_cast<std::size_t>(pair.starts[at(level) + 1]); ++entry) {
            for (std::size_t b = 0; b < width; ++b) {
                const std::size_t offset = at(a) * width + b;
                putRuns(pair, entry, size, offset);
                put(other.firstUnknown + pair.levels[entry] * other.width +
                        static_cast<std::int32_t>(b),
                    pair.sums[entry * size + offset]);
            }
        }
    }

    EquationCounts& m_equations;
    bool m_grouped;
};

/// The records by residual group, so that runs of a group stay together; empty for one group.
std::vector<std::int32_t> sortByGroup(const ModelRecords& records) {
    if (records.groupCount == 1) {
        return {};
    }
    DesignFamily groups;
    groups.codes = records.groups;
    groups.levels = records.groupCount;
    return sortByLevel(groups, {}, records.count(), nullptr);
}

} // namespace

EquationCounts countEquations(const ModelRecords& records,
                              const std::vector<const LevelPrecision*>& precisions) {
    EquationCounts equations;
    const std::vector<std::int32_t> byGroup = sortByGroup(records);
    const std::size_t families = records.families.size();
    std::vector<std::vector<std::int32_t>> byLevel(families);
    for (std::size_t family = 0; family < families; ++family) {
        byLevel[family] =
            records.families[family].codes.empty()
                ? byGroup
                : sortByLevel(records.families[family], byGroup, records.count(), nullptr);
    }
    equations.precision.resize(precisions.size());
    ColumnWriter writer(equations, records);
    for (std::size_t family = 0; family < families; ++family) {
        std::vector<PairCounts> pairs;
        std::vector<const DesignFamily*> others;
        for (std::size_t other = family; other < families; ++other) {
            pairs.push_back(countPair(records, records.families[family], records.families[other],
                                      byLevel[other]));
            if (other > family) {
                others.push_back(&records.families[other]);
            }
        }
        byLevel[family] = {};
        const LevelPrecision* precision = family < precisions.size() ? precisions[family] : nullptr;
        writer.write(records.families[family], precision,
                     family < precisions.size() ? &equations.precision[family] : nullptr, pairs,
                     others);
    }
    equations.firstUnknown.push_back(records.unknowns());
    equations.side = designProduct(records, records.response, {});
    equations.squares = weightedSquares(records, records.response, -1);
    equations.groupRecords.assign(at(records.groupCount), 0);
    if (records.groups.empty()) {
        equations.groupRecords[0] = static_cast<double>(records.count());
    }
    for (const std::int32_t group : records.groups) {
        equations.groupRecords[at(group)] += 1;
    }
    return equations;
}

std::vector<double> designProduct(const ModelRecords& records, std::span<const double> numbers,
                                  std::span<const double> groupFactor) {
    std::vector<double> product(at(records.unknowns()), 0.0);
    std::vector<double> scaled;
    if (!records.weights.empty() || !groupFactor.empty()) {
        scaled.assign(numbers.begin(), numbers.end());
        for (std::size_t record = 0; record < scaled.size(); ++record) {
            scaled[record] *= weightOf(records, record);
            if (!groupFactor.empty()) {
                scaled[record] *=
                    groupFactor[records.groups.empty() ? 0 : at(records.groups[record])];
            }
        }
        numbers = scaled;
    }
    for (const DesignFamily& family : records.families) {
        double* target = product.data() + family.firstUnknown;
        for (std::size_t record = 0; record < numbers.size(); ++record) {
            const std::int32_t level = family.level(record);
            if (level < 0) {
                continue;
            }
            const double* own = numbersOf(family, record);
            for (std::size_t a = 0; a < at(family.width); ++a) {
                target[at(level) * at(family.width) + a] += own[a] * numbers[record];
            }
        }
    }
    return product;
}

std::vector<double> residuals(const ModelRecords& records, std::span<const double> effects) {
    std::vector<double> rest = records.response;
    for (const DesignFamily& family : records.families) {
        const double* source = effects.data() + family.firstUnknown;
        for (std::size_t record = 0; record < rest.size(); ++record) {
            const std::int32_t level = family.level(record);
            if (level < 0) {
                continue;
            }
            const double* own = numbersOf(family, record);
            for (std::size_t a = 0; a < at(family.width); ++a) {
                rest[record] -= own[a] * source[at(level) * at(family.width) + a];
            }
        }
    }
    return rest;
}

double weightedSquares(const ModelRecords& records, std::span<const double> numbers,
                       std::int32_t group) {
    double sum = 0;
    for (std::size_t record = 0; record < numbers.size(); ++record) {
        if (group < 0 || records.groups.empty() || records.groups[record] == group) {
            sum += weightOf(records, record) * numbers[record] * numbers[record];
        }
    }
    return sum;
}

} // namespace pipwright
