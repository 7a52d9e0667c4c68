#include "core/plan/serving_order.h"

#include "core/plan/plan_chance.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numeric>

namespace pipwright {

namespace {

using Rows = std::vector<std::vector<int>>;

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

/// Counts of lots in places and of lots after lots, kept in step with single exchanges.
class ServingCounts {
  public:
    ServingCounts(int lots, const Rows& rows)
        : m_lots(lots), m_places(at(lots * lots)), m_followings(at(lots * lots)) {
        for (const auto& row : rows) {
            add(row, 1);
        }
    }

    void add(const std::vector<int>& row, int times) {
        for (int place = 0; place < m_lots; ++place) {
            bump(m_places[at(row[at(place)] * m_lots + place)], m_squaresOfPlaces, times);
            if (place > 0) {
                bump(m_followings[at(row[at(place - 1)] * m_lots + row[at(place)])],
                     m_squaresOfFollowings, times);
            }
        }
    }
    /// Sum of squared counts; sums are fixed, so less is more even.
    [[nodiscard]] std::int64_t squares() const { return m_squaresOfPlaces + m_squaresOfFollowings; }

    [[nodiscard]] ServingEvenness places(int tasters) const {
        return evenness(m_places, m_squaresOfPlaces, m_lots * m_lots, tasters * m_lots, false);
    }
    [[nodiscard]] ServingEvenness followings(int tasters) const {
        return evenness(m_followings, m_squaresOfFollowings, m_lots * (m_lots - 1),
                        tasters * (m_lots - 1), true);
    }

  private:
    static void bump(int& count, std::int64_t& squares, int times) {
        squares -= std::int64_t{count} * count;
        count += times;
        squares += std::int64_t{count} * count;
    }

    [[nodiscard]] ServingEvenness evenness(const std::vector<int>& counts, std::int64_t squares,
                                           int cells, int total, bool withoutDiagonal) const {
        ServingEvenness even;
        even.fewest = total;
        for (int cell = 0; cell < m_lots * m_lots; ++cell) {
            if (withoutDiagonal && cell % (m_lots + 1) == 0) {
                continue; // no lot follows itself
            }
            even.fewest = std::min(even.fewest, counts[at(cell)]);
            even.most = std::max(even.most, counts[at(cell)]);
        }
        // Whole numbers are most even when `rest` cells hold one more than the others.
        const std::int64_t share = total / cells;
        const std::int64_t rest = total % cells;
        const std::int64_t least =
            rest * (share + 1) * (share + 1) + (cells - rest) * share * share;
        even.imbalance = static_cast<double>(squares - least);
        return even;
    }

    int m_lots;
    std::vector<int> m_places;
    std::vector<int> m_followings;
    std::int64_t m_squaresOfPlaces = 0;
    std::int64_t m_squaresOfFollowings = 0;
};

/// 0, 1, n-1, 2, n-2 ...: neighbours differ by every step once (Williams 1949).
std::vector<int> zigzag(int lots) {
    std::vector<int> row;
    row.reserve(at(lots));
    for (int place = 0; place < lots; ++place) {
        row.push_back(place % 2 == 1 ? (place + 1) / 2 : (lots - place / 2) % lots);
    }
    return row;
}

/// Rows of the squares one after the other, each time the one that leaves things most even.
Rows chosenRows(int lots, int tasters) {
    const Rows square = williamsSquares(lots);
    std::vector<int> used(square.size(), 0);
    ServingCounts counts(lots, {});
    Rows rows;
    for (int taster = 0; taster < tasters; ++taster) {
        std::size_t best = 0;
        std::int64_t least = -1;
        for (std::size_t row = 0; row < square.size(); ++row) {
            counts.add(square[row], 1);
            // A row that was given already comes last among equals.
            const std::int64_t cost = counts.squares() * 64 + used[row];
            counts.add(square[row], -1);
            if (least < 0 || cost < least) {
                least = cost;
                best = row;
            }
        }
        ++used[best];
        counts.add(square[best], 1);
        rows.push_back(square[best]);
    }
    return rows;
}

/// Exchanges two lots in a taster's row as long as that helps, at first also where it hurts a
/// little (simulated annealing with a fixed draw).
Rows searched(int lots, Rows rows) {
    constexpr int kTries = 20'000;
    constexpr double kFirstWarmth = 2.0;
    PlanChance chance(0x5EED0F5ABB47DULL + at(lots) * 1000 + rows.size());
    ServingCounts counts(lots, rows);
    Rows best = rows;
    const ServingOrders start = counted(lots, rows);
    std::int64_t least = counts.squares();
    const auto floor = least - static_cast<std::int64_t>(start.imbalance());
    for (int attempt = 0; attempt < kTries && least > floor; ++attempt) {
        auto& row = rows[at(chance.below(static_cast<int>(rows.size())))];
        const int one = chance.below(lots);
        const int other = (one + 1 + chance.below(lots - 1)) % lots;
        const std::int64_t before = counts.squares();
        counts.add(row, -1);
        std::swap(row[at(one)], row[at(other)]);
        counts.add(row, 1);
        const auto worse = static_cast<double>(counts.squares() - before);
        const double warmth = kFirstWarmth * (1 - static_cast<double>(attempt) / kTries) + 1e-3;
        const double dice = static_cast<double>(chance.next() >> 11U) * 0x1p-53;
        if (worse > 0 && dice >= std::exp(-worse / warmth)) {
            counts.add(row, -1);
            std::swap(row[at(one)], row[at(other)]);
            counts.add(row, 1);
        } else if (counts.squares() < least) {
            least = counts.squares();
            best = rows;
        }
    }
    return best;
}

/// How many places lie between two lots, over all tasters: the smaller the gaps the larger this is.
int closeness(const Rows& rows, int first, int second) {
    int sum = 0;
    for (const auto& row : rows) {
        const auto gap = std::abs(std::find(row.begin(), row.end(), first) -
                                  std::find(row.begin(), row.end(), second));
        sum += gap == 1 ? 100 : gap == 2 ? 10 : gap == 3 ? 1 : 0;
    }
    return sum;
}

} // namespace

std::vector<std::vector<int>> williamsSquares(int lots) {
    const std::vector<int> first = zigzag(lots);
    Rows rows;
    for (int step = 0; step < lots; ++step) {
        std::vector<int> row = first;
        for (int& lot : row) {
            lot = (lot + step) % lots;
        }
        rows.push_back(std::move(row));
    }
    if (lots % 2 == 1) { // what each lot misses on one way it meets on the way back
        for (int step = 0; step < lots; ++step) {
            rows.emplace_back(rows[at(step)].rbegin(), rows[at(step)].rend());
        }
    }
    return rows;
}

ServingOrders counted(int lots, std::vector<std::vector<int>> rows) {
    const ServingCounts counts(lots, rows);
    const int tasters = static_cast<int>(rows.size());
    ServingOrders orders;
    orders.lots = lots;
    orders.rows = std::move(rows);
    orders.places = counts.places(tasters);
    orders.followings = counts.followings(tasters);
    return orders;
}

Result<ServingOrders> servingOrders(int lots, int tasters) {
    if (lots < 2 || lots > kMostLotsServed) {
        return Problem{ProblemCode::badInput,
                       lots < 2 ? "there is nothing to compare yet."
                                : "more than twelve lots tire any palate.",
                       "Serve 2 to 12 lots, the hidden benchmark counted twice; 6 to 9 are best.",
                       "lots"};
    }
    if (tasters < 1 || tasters > kMostTasters) {
        return Problem{ProblemCode::badInput, "an order is made for 1 to 12 tasters.",
                       tasters < 1 ? "Name who tastes." : "Hold a second sitting.", "tasters"};
    }
    const ServingOrders orders = counted(lots, chosenRows(lots, tasters));
    if (orders.imbalance() <= 0) {
        return orders;
    }
    return counted(lots, searched(lots, orders.rows));
}

ServingOrders shuffled(const ServingOrders& orders, std::uint64_t draw, int first, int second) {
    constexpr int kTries = 100;
    PlanChance chance(draw);
    std::vector<int> names(at(orders.lots));
    std::iota(names.begin(), names.end(), 0);
    const bool apart = first >= 0 && second >= 0 && first != second;
    Rows best;
    int closest = -1;
    for (int attempt = 0; attempt < (apart ? kTries : 1); ++attempt) {
        chance.shuffle(names);
        Rows rows = orders.rows;
        for (auto& row : rows) {
            for (int& lot : row) {
                lot = names[at(lot)];
            }
        }
        chance.shuffle(rows);
        const int close = apart ? closeness(rows, first, second) : 0;
        if (closest < 0 || close < closest) {
            closest = close;
            best = std::move(rows);
        }
    }
    return counted(orders.lots, std::move(best));
}

} // namespace pipwright
