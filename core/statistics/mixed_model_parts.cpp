#include "core/statistics/mixed_model_content.h"
#include "core/statistics/subscript.h"

#include <numeric>
#include <utility>

namespace pipwright {

namespace {

/// Sets that grow together (Tarjan 1975, J. ACM 22:215-225), with halved paths.
class Joined {
  public:
    explicit Joined(std::size_t count) : m_parent(count) {
        std::iota(m_parent.begin(), m_parent.end(), 0);
    }
    std::int32_t root(std::int32_t member) {
        while (m_parent[at(member)] != member) {
            m_parent[at(member)] = m_parent[at(m_parent[at(member)])];
            member = m_parent[at(member)];
        }
        return member;
    }
    void join(std::int32_t one, std::int32_t other) {
        const std::int32_t first = root(one);
        const std::int32_t second = root(other);
        m_parent[at(std::max(first, second))] = std::min(first, second);
    }

  private:
    std::vector<std::int32_t> m_parent;
};

/// A factor with the levels of the model: the level a treatment coding leaves out included.
struct Factor {
    const DesignFamily* family = nullptr;
    std::int32_t shift = 0;
    std::int32_t levels = 0;

    [[nodiscard]] std::int32_t level(std::size_t record) const {
        return family->level(record) + shift;
    }
};

/// Whether no level of `inner` meets two levels of `outer`.
bool isNested(const Factor& inner, const Factor& outer, std::size_t records) {
    std::vector<std::int32_t> within(at(inner.levels), -1);
    for (std::size_t record = 0; record < records; ++record) {
        const std::int32_t low = inner.level(record);
        const std::int32_t high = outer.level(record);
        if (low < 0 || high < 0) {
            continue;
        }
        if (within[at(low)] >= 0 && within[at(low)] != high) {
            return false;
        }
        within[at(low)] = high;
    }
    return true;
}

DisconnectedParts partsOf(const Factor& first, const Factor& second, std::size_t records) {
    DisconnectedParts parts;
    parts.firstTerm = first.family->name;
    parts.secondTerm = second.family->name;
    Joined joined(at(first.levels) + at(second.levels));
    std::vector<bool> met(at(first.levels) + at(second.levels), false);
    for (std::size_t record = 0; record < records; ++record) {
        const std::int32_t one = first.level(record);
        const std::int32_t other = second.level(record);
        if (one >= 0 && other >= 0) {
            joined.join(one, first.levels + other);
            met[at(one)] = true;
            met[at(first.levels + other)] = true;
        }
    }
    std::vector<std::int32_t> number(met.size(), -1);
    for (std::int32_t node = 0; at(node) < met.size(); ++node) {
        std::int32_t part = -1;
        if (met[at(node)]) {
            std::int32_t& known = number[at(joined.root(node))];
            if (known < 0) {
                known = parts.parts++;
            }
            part = known;
        }
        (node < first.levels ? parts.partOfFirst : parts.partOfSecond).push_back(part);
    }
    return parts;
}

} // namespace

std::vector<DisconnectedParts> findDisconnected(const ModelRecords& records) {
    std::vector<Factor> factors;
    for (const DesignFamily& family : records.families) {
        if (family.codes.empty()) {
            continue;
        }
        Factor factor{&family, 0, family.levels};
        for (const FixedColumn& column : records.fixedColumns) {
            if (!family.random && column.unknown == family.firstUnknown &&
                column.effect.level == 1) {
                factor.shift = 1;
                factor.levels += 1;
            }
        }
        factors.push_back(factor);
    }
    std::vector<DisconnectedParts> list;
    for (std::size_t one = 0; one < factors.size(); ++one) {
        for (std::size_t other = one + 1; other < factors.size(); ++other) {
            if (isNested(factors[one], factors[other], records.count()) ||
                isNested(factors[other], factors[one], records.count())) {
                continue;
            }
            DisconnectedParts parts = partsOf(factors[one], factors[other], records.count());
            if (parts.parts > 1) {
                list.push_back(std::move(parts));
            }
        }
    }
    return list;
}

} // namespace pipwright
