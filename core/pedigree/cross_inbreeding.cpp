#include "core/pedigree/cross_inbreeding.h"

#include "core/pedigree/ancestor_queue.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>

namespace pipwright {

namespace {

constexpr std::size_t kLanes = 8; // columns walked together

using Lanes = std::array<double, kLanes>;

Lanes sum(const Lanes& one, const Lanes& other) {
    Lanes result{};
    for (std::size_t lane = 0; lane < kLanes; ++lane) {
        result[lane] = one[lane] + other[lane];
    }
    return result;
}

Lanes scaled(const Lanes& lanes, double by) {
    Lanes result{};
    for (std::size_t lane = 0; lane < kLanes; ++lane) {
        result[lane] = lanes[lane] * by;
    }
    return result;
}

/// Shares below this change no F: a million of them are far below the last digit of a number.
constexpr double kNegligible = 0x1p-100;

/// Whether some lane is above what is negligible. None is negative, so that their bits rise with
/// them; all bits together are no less than those of the largest.
bool isWorthCarrying(const Lanes& lanes) {
    std::uint64_t bits = 0;
    for (const double lane : lanes) {
        bits |= std::bit_cast<std::uint64_t>(lane);
    }
    return bits > std::bit_cast<std::uint64_t>(kNegligible);
}

class CrossColumns {
  public:
    CrossColumns(const Pedigree& pedigree, const BreedingStock& stock)
        : m_pedigree(pedigree), m_stock(stock), m_result(stock.mates.size(), 0.0),
          m_variance(stock.members.size(), kNotYet), m_values(1, Lanes{}),
          m_queue(static_cast<int>(stock.members.size())) {
        m_parents.reserve(stock.members.size() + 1);
        m_parents.push_back({});
        for (std::size_t parent = 0; parent < stock.members.size(); ++parent) {
            m_parents.push_back({stock.seed[parent], stock.pollen[parent]});
            const bool isFounder =
                stock.seed[parent] == kUnknownParent && stock.pollen[parent] == kUnknownParent;
            m_founders += isFounder ? 1 : 0;
        }
    }

    std::vector<double> run() {
        noteWhatIsNeeded();
        const auto parents = static_cast<std::int32_t>(m_stock.members.size());
        for (std::int32_t keeper = 0; keeper < parents; ++keeper) {
            settleSelfing(keeper);
            if (!keepsOtherCrosses(keeper)) {
                continue;
            }
            // Together with the others only if it waits for none of them.
            const bool waits =
                !m_batch.empty() && m_needed[static_cast<std::size_t>(keeper)] >= m_batch.front();
            if (m_batch.size() == kLanes || waits) {
                walkBatch();
            }
            m_batch.push_back(keeper);
        }
        walkBatch();
        return std::move(m_result);
    }

  private:
    static constexpr double kNotYet = -1;

    /// What the walks ask of a parent, in one line of the cache.
    struct alignas(16) Parent {
        std::int32_t seed = kUnknownParent;
        std::int32_t pollen = kUnknownParent;
        std::int32_t slot = 0; ///< where its values stand during a walk; 0 when it has none
    };

    [[nodiscard]] std::int32_t firstCross(std::int32_t keeper) const {
        return m_stock.crossStarts[static_cast<std::size_t>(keeper)];
    }
    [[nodiscard]] std::int32_t endOfCrosses(std::int32_t keeper) const {
        return m_stock.crossStarts[static_cast<std::size_t>(keeper) + 1];
    }
    [[nodiscard]] bool isSelfing(std::int32_t keeper, std::int32_t cross) const {
        return m_stock.mates[static_cast<std::size_t>(cross)] == keeper;
    }
    /// A parent keeps one cross with each mate, so at most one selfing.
    [[nodiscard]] bool keepsOtherCrosses(std::int32_t parent) const {
        const std::int32_t count = endOfCrosses(parent) - firstCross(parent);
        return count > 1 || (count == 1 && !isSelfing(parent, firstCross(parent)));
    }

    /// The seedlings of a selfing have (1 + F) / 2, F that of their parent: no walk is needed, or
    /// a line selfed for thousands of generations would be climbed from each of them.
    void settleSelfing(std::int32_t keeper) {
        for (std::int32_t cross = firstCross(keeper); cross < endOfCrosses(keeper); ++cross) {
            if (!isSelfing(keeper, cross)) {
                continue;
            }
            const std::int32_t own = m_stock.ownCross[static_cast<std::size_t>(keeper)];
            const bool waits = !m_batch.empty() && own >= 0 &&
                               m_keeperOf[static_cast<std::size_t>(own)] >= m_batch.front();
            if (waits) {
                walkBatch();
            }
            m_result[static_cast<std::size_t>(cross)] = (1 + inbreedingOf(keeper)) / 2;
        }
    }

    /// A parent's column needs F of its ancestors: the last keeper of any of their crosses.
    void noteWhatIsNeeded() {
        m_keeperOf.reserve(m_stock.mates.size());
        for (std::int32_t keeper = 0;
             keeper + 1 < static_cast<std::int32_t>(m_stock.crossStarts.size()); ++keeper) {
            m_keeperOf.resize(static_cast<std::size_t>(endOfCrosses(keeper)), keeper);
        }
        m_needed.assign(m_stock.members.size(), -1);
        for (std::size_t parent = 0; parent < m_needed.size(); ++parent) {
            for (const std::int32_t older : {m_stock.seed[parent], m_stock.pollen[parent]}) {
                if (older == kUnknownParent) {
                    continue;
                }
                const auto at = static_cast<std::size_t>(older);
                const std::int32_t cross = m_stock.ownCross[at];
                m_needed[parent] =
                    std::max({m_needed[parent], m_needed[at],
                              cross < 0 ? -1 : m_keeperOf[static_cast<std::size_t>(cross)]});
            }
        }
    }

    void walkBatch() {
        if (m_batch.empty()) {
            return;
        }
        walkUp();
        walkDown();
        for (std::size_t lane = 0; lane < m_batch.size(); ++lane) {
            for (std::int32_t cross = firstCross(m_batch[lane]);
                 cross < endOfCrosses(m_batch[lane]); ++cross) {
                if (isSelfing(m_batch[lane], cross)) {
                    continue;
                }
                const auto at = static_cast<std::size_t>(cross);
                m_result[at] = valueOf(parentAt(m_stock.mates[at]))[lane] / 2;
            }
        }
        for (const std::int32_t number : m_opened) {
            parentAt(number).slot = 0;
        }
        m_batch.clear();
        m_opened.clear();
        m_down.clear();
        m_values.resize(1);
    }

    /// Leaves D T' e at every ancestor of the batch, and the batch itself.
    void walkUp() {
        m_oldest = static_cast<std::int32_t>(m_stock.members.size());
        for (std::size_t lane = 0; lane < m_batch.size(); ++lane) {
            Lanes own{};
            own[lane] = 1;
            giveTo(m_batch[lane], own);
        }
        for (int number = m_queue.takeHighest(); number >= 0; number = m_queue.takeHighest()) {
            m_oldest = std::min(m_oldest, number);
            const Parent& parent = parentAt(number);
            Lanes& share = valueOf(parent);
            const Lanes half = scaled(share, 0.5);
            share = scaled(share, varianceOf(number));
            if (isWorthCarrying(half)) {
                giveTo(parent.seed, half);
                giveTo(parent.pollen, half);
            }
        }
    }

    /// A founder has nobody to pass its share on to, and so need not wait for the rest of it.
    void giveTo(std::int32_t number, const Lanes& more) {
        if (number == kUnknownParent) {
            return;
        }
        Lanes& share = open(number);
        if (number >= m_founders) {
            m_queue.insert(number);
            share = sum(share, more);
        } else {
            m_oldest = m_founders;
            share = sum(share, scaled(more, founderVariance(number)));
        }
    }

    /// Turns D T' e into T D T' e at the mates and their ancestors; at a founder it is the same.
    void walkDown() {
        const auto take = [&](std::int32_t number) {
            if (number >= m_oldest) { // else older than all of whom it could be a descendant
                fetch(number);
                m_queue.insert(number);
            }
        };
        m_oldest = std::max(m_oldest, m_founders);
        for (const std::int32_t keeper : m_batch) {
            for (std::int32_t cross = firstCross(keeper); cross < endOfCrosses(keeper); ++cross) {
                if (!isSelfing(keeper, cross)) {
                    take(m_stock.mates[static_cast<std::size_t>(cross)]);
                }
            }
        }
        for (int number = m_queue.takeHighest(); number >= 0; number = m_queue.takeHighest()) {
            m_down.push_back(number);
            take(parentAt(number).seed);
            take(parentAt(number).pollen);
        }
        for (auto number = m_down.rbegin(); number != m_down.rend(); ++number) {
            const Parent& parent = parentAt(*number);
            const std::int32_t seed = parentAt(parent.seed).slot;
            const std::int32_t pollen = parentAt(parent.pollen).slot;
            if ((seed | pollen) == 0) {
                continue; // related to the batch only as one of its ancestors, or not at all
            }
            Lanes& value = open(*number);
            value = sum(value, scaled(sum(m_values[static_cast<std::size_t>(seed)],
                                          m_values[static_cast<std::size_t>(pollen)]),
                                      0.5));
        }
    }

    /// D of a parent that is no founder, and whose own parents' F are known by now.
    double varianceOf(std::int32_t number) {
        double& variance = m_variance[static_cast<std::size_t>(number)];
        if (variance == kNotYet) {
            const Parent& parent = parentAt(number);
            variance = 0.5 - (inbreedingOf(parent.seed) + inbreedingOf(parent.pollen)) / 4;
        }
        return variance;
    }

    [[nodiscard]] double founderVariance(std::int32_t number) const {
        return m_pedigree.founderVariance(m_stock.members[static_cast<std::size_t>(number)]);
    }

    [[nodiscard]] double inbreedingOf(std::int32_t number) const {
        if (number == kUnknownParent) {
            return -1;
        }
        const std::int32_t cross = m_stock.ownCross[static_cast<std::size_t>(number)];
        return cross >= 0            ? m_result[static_cast<std::size_t>(cross)]
               : number < m_founders ? founderVariance(number) - 1
                                     : 0;
    }

    // The unknown parent stands first, and slot 0 stays zero: it is that of the unknown parent
    // and of who is related to nobody in the batch.
    Parent& parentAt(std::int32_t number) {
        return m_parents[static_cast<std::size_t>(number) + 1];
    }
    /// Has the memory of a parent brought near, who will be asked for soon.
    void fetch(std::int32_t number) const {
        __builtin_prefetch(&m_parents[static_cast<std::size_t>(number) + 1]);
    }
    Lanes& valueOf(const Parent& parent) { return m_values[static_cast<std::size_t>(parent.slot)]; }
    Lanes& open(std::int32_t number) {
        Parent& parent = parentAt(number);
        if (parent.slot == 0) {
            parent.slot = static_cast<std::int32_t>(m_values.size());
            m_values.push_back(Lanes{});
            m_opened.push_back(number);
            fetch(parent.seed);
            fetch(parent.pollen);
        }
        return valueOf(parent);
    }

    const Pedigree& m_pedigree;
    const BreedingStock& m_stock;
    std::vector<double> m_result;
    std::vector<std::int32_t> m_keeperOf; ///< of each cross
    std::vector<std::int32_t> m_needed;
    std::vector<Parent> m_parents;  ///< by number + 1
    std::vector<double> m_variance; ///< D, once it was asked for
    std::vector<Lanes> m_values;
    AncestorQueue m_queue;
    std::vector<std::int32_t> m_batch;
    std::int32_t m_founders = 0;        ///< parents without known parents; they come first
    std::int32_t m_oldest = 0;          ///< who may descend from an ancestor of the batch
    std::vector<std::int32_t> m_opened; ///< who has a slot
    std::vector<std::int32_t> m_down;   ///< mates and their ancestors, the youngest first
};

} // namespace

std::vector<double> inbreedingOfCrosses(const Pedigree& pedigree, const BreedingStock& stock) {
    return CrossColumns{pedigree, stock}.run();
}

} // namespace pipwright
