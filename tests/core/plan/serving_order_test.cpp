#include "core/plan/serving_order.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <numeric>

namespace pipwright::test {
namespace {

/// Each is made once.
const ServingOrders& made(int lots, int tasters) {
    static std::map<std::pair<int, int>, ServingOrders> all;
    const auto found = all.find({lots, tasters});
    return found != all.end()
               ? found->second
               : all.emplace(std::pair(lots, tasters), *servingOrders(lots, tasters)).first->second;
}

TEST(ServingOrder, EveryTasterGetsEveryLotOnceForAllNumbers) {
    for (int lots = 2; lots <= kMostLotsServed; ++lots) {
        for (int tasters = 1; tasters <= kMostTasters; ++tasters) {
            const ServingOrders& orders = made(lots, tasters);
            ASSERT_EQ(orders.rows.size(), static_cast<std::size_t>(tasters));
            for (auto row : orders.rows) {
                std::sort(row.begin(), row.end());
                for (int lot = 0; lot < lots; ++lot) {
                    ASSERT_EQ(row.at(static_cast<std::size_t>(lot)), lot);
                }
            }
        }
    }
}

/// Counted here once more, the plain way.
double unevenness(const ServingOrders& orders) {
    std::map<std::pair<int, int>, int> places;
    std::map<std::pair<int, int>, int> followings;
    const int n = orders.lots;
    for (const auto& row : orders.rows) {
        for (int place = 0; place < n; ++place) {
            ++places[{row[static_cast<std::size_t>(place)], place}];
            if (place > 0) {
                ++followings[{row[static_cast<std::size_t>(place) - 1],
                              row[static_cast<std::size_t>(place)]}];
            }
        }
    }
    const auto tasters = static_cast<double>(orders.rows.size());
    const double share = tasters / n;
    double sum = 0;
    for (int one = 0; one < n; ++one) {
        for (int other = 0; other < n; ++other) {
            const auto in = static_cast<double>(places[{one, other}]);
            sum += (in - share) * (in - share);
            if (one != other) {
                const auto after = static_cast<double>(followings[{one, other}]);
                sum += (after - share) * (after - share);
            }
        }
    }
    const double rest = share - static_cast<int>(share);
    const double least = (n * n + n * (n - 1)) * rest * (1 - rest);
    return sum - least;
}

TEST(ServingOrder, TellsTheImbalanceThatCountingFinds) {
    for (int lots = 2; lots <= kMostLotsServed; ++lots) {
        for (int tasters = 1; tasters <= kMostTasters; ++tasters) {
            const ServingOrders& orders = made(lots, tasters);
            EXPECT_NEAR(orders.imbalance(), unevenness(orders), 1e-9)
                << lots << " lots, " << tasters << " tasters";
        }
    }
}

TEST(ServingOrder, IsAsEvenAsCanBeForEveryEvenNumberOfLots) {
    for (int lots = 2; lots <= kMostLotsServed; lots += 2) {
        for (int tasters = 1; tasters <= kMostTasters; ++tasters) {
            EXPECT_EQ(made(lots, tasters).imbalance(), 0)
                << lots << " lots, " << tasters << " tasters";
        }
    }
}

TEST(ServingOrder, OddNumbersAreNearlyAsEven) {
    for (int lots = 5; lots <= kMostLotsServed; lots += 2) {
        for (int tasters = 1; tasters <= 3; ++tasters) {
            const auto orders = servingOrders(lots, tasters);
            EXPECT_EQ(orders->imbalance(), 0) << lots << " lots, " << tasters << " tasters";
            EXPECT_LE(orders->places.most, 1);
            EXPECT_LE(orders->followings.most, 1);
        }
    }
    EXPECT_EQ(servingOrders(3, 6)->imbalance(), 0);
    EXPECT_TRUE(servingOrders(3, 6)->isPerfect());
    EXPECT_TRUE(servingOrders(5, 10)->isPerfect());
    EXPECT_FALSE(servingOrders(5, 3)->isPerfect());
    // Three lots, two tasters: whoever keeps the places apart repeats a following.
    EXPECT_GT(servingOrders(3, 2)->imbalance(), 0);
}

TEST(ServingOrder, IsTheSameEveryTime) {
    EXPECT_EQ(servingOrders(9, 7)->rows, servingOrders(9, 7)->rows);
    const auto orders = servingOrders(9, 3);
    EXPECT_EQ(shuffled(*orders, 5).rows, shuffled(*orders, 5).rows);
    EXPECT_NE(shuffled(*orders, 5).rows, shuffled(*orders, 6).rows);
    // Pinned, so that a plan that was drawn once can be drawn again by a later version.
    EXPECT_EQ(shuffled(*servingOrders(4, 2), 1).rows,
              (std::vector<std::vector<int>>{{2, 0, 1, 3}, {0, 3, 2, 1}}));
}

TEST(ServingOrder, ShufflingKeepsTheBalanceAndPartsTheTwins) {
    for (std::uint64_t draw = 1; draw <= 40; ++draw) {
        const auto orders = shuffled(*servingOrders(9, 3), draw, 2, 7);
        EXPECT_EQ(orders.imbalance(), servingOrders(9, 3)->imbalance());
        for (const auto& row : orders.rows) {
            const auto gap = std::abs(std::find(row.begin(), row.end(), 2) -
                                      std::find(row.begin(), row.end(), 7));
            EXPECT_GT(gap, 1) << draw;
        }
    }
}

TEST(ServingOrder, RefusesWhatNobodyCanTaste) {
    EXPECT_FALSE(servingOrders(1, 3).ok());
    EXPECT_FALSE(servingOrders(13, 3).ok());
    EXPECT_FALSE(servingOrders(6, 0).ok());
    EXPECT_FALSE(servingOrders(6, 13).ok());
    EXPECT_NE(servingOrders(13, 3).problem().remedy.find("12"), std::string::npos);
}

} // namespace
} // namespace pipwright::test
