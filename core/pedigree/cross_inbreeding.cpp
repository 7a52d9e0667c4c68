#include "core/pedigree/cross_inbreeding.h"

#include "core/pedigree/ancestor_queue.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>

namespace pipwright {

namespace {

constexpr std::size_t kLanes = 16; // columns walked together

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

bool holdsAnything(const Lanes& lanes) {
    std::uint64_t bits = 0; // none of them is negative
    for (const double lane : lanes) {
        bits |= std::bit_cast<std::uint64_t>(lane);
    }
    return bits != 0;
}

class CrossColumns {
  public:
    CrossColumns(const Pedigree& pedigree, const BreedingStock& stock)
        : m_pedigree(pedigree), m_stock(stock), m_result(stock.mates.size(), 0.0),
          m_values(1, Lanes{}), m_queue(static_cast<int>(stock.members.size())) {
        m_parents.reserve(stock.members.size() + 1);
        m_parents.push_back({});
        for (std::size_t parent = 0; parent < stock.members.size(); ++parent) {
            m_parents.push_back({stock.seed[parent], stock.pollen[parent]});
        }
    }

    std::vector<double> run() {
        noteWhatIsNeeded();
        const auto parents = static_cast<std::int32_t>(m_stock.members.size());
        for (std::int32_t keeper = 0; keeper < parents; ++keeper) {
            if (!keepsCrosses(keeper)) {
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

    /// What the walks ask of a parent, side by side in memory.
    struct Parent {
        std::int32_t seed = kUnknownParent;
        std::int32_t pollen = kUnknownParent;
        std::int32_t slot = 0;     ///< where its values stand during a walk; 0 when it has none
        double variance = kNotYet; ///< D
    };

    [[nodiscard]] std::int32_t firstCross(std::int32_t keeper) const {
        return m_stock.crossStarts[static_cast<std::size_t>(keeper)];
    }
    [[nodiscard]] std::int32_t endOfCrosses(std::int32_t keeper) const {
        return m_stock.crossStarts[static_cast<std::size_t>(keeper) + 1];
    }
    [[nodiscard]] bool keepsCrosses(std::int32_t parent) const {
        return firstCross(parent) < endOfCrosses(parent);
    }

    /// A parent's column needs F of its ancestors: the last keeper of any of their crosses.
    void noteWhatIsNeeded() {
        std::vector<std::int32_t> keeperOf;
        keeperOf.reserve(m_stock.mates.size());
        for (std::int32_t keeper = 0;
             keeper + 1 < static_cast<std::int32_t>(m_stock.crossStarts.size()); ++keeper) {
            keeperOf.resize(static_cast<std::size_t>(endOfCrosses(keeper)), keeper);
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
                              cross < 0 ? -1 : keeperOf[static_cast<std::size_t>(cross)]});
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
                const auto at = static_cast<std::size_t>(cross);
                m_result[at] = valueOf(parentAt(m_stock.mates[at]))[lane] / 2;
            }
        }
        for (const std::int32_t number : m_up) {
            parentAt(number).slot = 0;
        }
        for (const std::int32_t number : m_down) {
            parentAt(number).slot = 0;
        }
        m_batch.clear();
        m_up.clear();
        m_down.clear();
        m_values.resize(1);
    }

    /// Leaves D T' e at every ancestor of the batch, and the batch itself.
    void walkUp() {
        for (std::size_t lane = 0; lane < m_batch.size(); ++lane) {
            m_queue.insert(m_batch[lane]);
            open(parentAt(m_batch[lane]))[lane] = 1;
        }
        for (int number = m_queue.takeHighest(); number >= 0; number = m_queue.takeHighest()) {
            m_up.push_back(number);
            Parent& parent = parentAt(number);
            Lanes& share = valueOf(parent);
            const Lanes half = scaled(share, 0.5);
            share = scaled(share, varianceOf(number, parent));
            if (holdsAnything(half)) { // it may have become too small for a number
                giveTo(parent.seed, half);
                giveTo(parent.pollen, half);
            }
        }
    }

    void giveTo(std::int32_t number, const Lanes& half) {
        if (number != kUnknownParent) {
            m_queue.insert(number);
            Lanes& share = open(parentAt(number));
            share = sum(share, half);
        }
    }

    /// Turns D T' e into T D T' e at the mates and their ancestors.
    void walkDown() {
        // Older than every ancestor of the batch: a relative of none of them.
        const std::int32_t oldest = m_up.back();
        const auto take = [&](std::int32_t number) {
            if (number >= oldest) {
                m_queue.insert(number);
            }
        };
        for (const std::int32_t keeper : m_batch) {
            for (std::int32_t cross = firstCross(keeper); cross < endOfCrosses(keeper); ++cross) {
                take(m_stock.mates[static_cast<std::size_t>(cross)]);
            }
        }
        for (int number = m_queue.takeHighest(); number >= 0; number = m_queue.takeHighest()) {
            m_down.push_back(number);
            take(parentAt(number).seed);
            take(parentAt(number).pollen);
        }
        for (auto number = m_down.rbegin(); number != m_down.rend(); ++number) {
            Parent& parent = parentAt(*number);
            const std::int32_t seed = parentAt(parent.seed).slot;
            const std::int32_t pollen = parentAt(parent.pollen).slot;
            if ((seed | pollen) == 0) {
                continue; // related to the batch only as one of its ancestors, or not at all
            }
            Lanes& value = open(parent);
            value = sum(value, scaled(sum(m_values[static_cast<std::size_t>(seed)],
                                          m_values[static_cast<std::size_t>(pollen)]),
                                      0.5));
        }
    }

    /// D of a parent, whose own parents' F are known by now.
    double varianceOf(std::int32_t number, Parent& parent) const {
        if (parent.variance == kNotYet) {
            parent.variance =
                parent.seed == kUnknownParent && parent.pollen == kUnknownParent
                    ? m_pedigree.founderVariance(m_stock.members[static_cast<std::size_t>(number)])
                    : 0.5 - (inbreedingOf(parent.seed) + inbreedingOf(parent.pollen)) / 4;
        }
        return parent.variance;
    }

    [[nodiscard]] double inbreedingOf(std::int32_t number) const {
        if (number == kUnknownParent) {
            return -1;
        }
        const auto at = static_cast<std::size_t>(number);
        const std::int32_t cross = m_stock.ownCross[at];
        return cross >= 0 ? m_result[static_cast<std::size_t>(cross)]
                          : m_pedigree.founderVariance(m_stock.members[at]) - 1;
    }

    // The unknown parent stands first, and slot 0 stays zero: it is that of the unknown parent
    // and of who is related to nobody in the batch.
    Parent& parentAt(std::int32_t number) {
        return m_parents[static_cast<std::size_t>(number + 1)];
    }
    Lanes& valueOf(const Parent& parent) { return m_values[static_cast<std::size_t>(parent.slot)]; }
    Lanes& open(Parent& parent) {
        if (parent.slot == 0) {
            parent.slot = static_cast<std::int32_t>(m_values.size());
            m_values.push_back(Lanes{});
        }
        return valueOf(parent);
    }

    const Pedigree& m_pedigree;
    const BreedingStock& m_stock;
    std::vector<double> m_result;
    std::vector<std::int32_t> m_needed;
    std::vector<Parent> m_parents; ///< by number + 1
    std::vector<Lanes> m_values;
    AncestorQueue m_queue;
    std::vector<std::int32_t> m_batch;
    std::vector<std::int32_t> m_up;   ///< ancestors of the batch, the youngest first
    std::vector<std::int32_t> m_down; ///< those of its mates
};

} // namespace

std::vector<double> inbreedingOfCrosses(const Pedigree& pedigree, const BreedingStock& stock) {
    return CrossColumns{pedigree, stock}.run();
}

} // namespace pipwright
