#include "core/plan/serving_order.h"

#include <gtest/gtest.h>

namespace pipwright {
namespace {

using Rows = std::vector<std::vector<int>>;

Rows fromOne(Rows rows) {
    for (auto& row : rows) {
        for (int& lot : row) {
            ++lot;
        }
    }
    return rows;
}

// Williams (1949, Aust. J. Sci. Res. A 2:149-168): for an even number n the first row is 1, 2, n,
// 3, n-1, 4 ... and each further row adds 1 to every figure, n being followed by 1; written out for
// n = 4 and for the first row of n = 6 also by Bradley (1958, J. Am. Stat. Assoc. 53:525-528).
TEST(WilliamsSquares, FourTreatmentsAsPublished) {
    EXPECT_EQ(fromOne(williamsSquares(4)),
              (Rows{{1, 2, 4, 3}, {2, 3, 1, 4}, {3, 4, 2, 1}, {4, 1, 3, 2}}));
    EXPECT_EQ(fromOne(williamsSquares(6)).front(), (std::vector<int>{1, 2, 6, 3, 5, 4}));
}

// The property he proves: each treatment once in each place and once directly after each other one;
// for an odd number twice each, in a pair of squares of 2n rows. Counted here, square by square.
TEST(WilliamsSquares, EachTreatmentFollowsEachOtherEquallyOften) {
    for (int lots = 2; lots <= 12; ++lots) {
        const Rows rows = williamsSquares(lots);
        const int times = lots % 2 == 0 ? 1 : 2;
        ASSERT_EQ(rows.size(), static_cast<std::size_t>(lots * times));
        for (int lot = 0; lot < lots; ++lot) {
            for (int other = 0; other < lots; ++other) {
                int place = 0;
                int after = 0;
                for (const auto& row : rows) {
                    place += row[static_cast<std::size_t>(other)] == lot ? 1 : 0;
                    for (std::size_t i = 1; i < row.size(); ++i) {
                        after += row[i - 1] == other && row[i] == lot ? 1 : 0;
                    }
                }
                EXPECT_EQ(place, times) << lots;
                EXPECT_EQ(after, lot == other ? 0 : times) << lots;
            }
        }
    }
}

// The orders we hand out keep it whenever there are tasters for whole squares: MacFie, Bratchell,
// Greenhoff and Vallis (1989, J. Sensory Studies 4:129-148) call such a panel balanced for order
// and first-order carry-over.
TEST(ServingOrders, WholeSquaresArePerfect) {
    for (int lots = 2; lots <= 12; ++lots) {
        const int square = lots % 2 == 0 ? lots : 2 * lots;
        for (int tasters = square; tasters <= 12; tasters += square) {
            const auto orders = servingOrders(lots, tasters);
            ASSERT_TRUE(orders.ok());
            EXPECT_TRUE(orders->isPerfect()) << lots << " lots, " << tasters << " tasters";
            EXPECT_EQ(orders->places.fewest, tasters / lots);
            EXPECT_EQ(orders->followings.most, tasters / lots);
            EXPECT_EQ(orders->imbalance(), 0);
        }
    }
}

// A Latin square in plain rotation, the usual mistake: places are even, but one lot always follows
// the same other. Four tasters: 4 pairs x 3 times each + the wrap-around never; the sum of squared
// counts is 4 * 9 = 36 where 12 would do, so 24.
TEST(ServingOrders, RotationAloneIsFoundOut) {
    const ServingOrders plain =
        counted(4, {{0, 1, 2, 3}, {1, 2, 3, 0}, {2, 3, 0, 1}, {3, 0, 1, 2}});
    EXPECT_EQ(plain.places.imbalance, 0);
    EXPECT_EQ(plain.followings.imbalance, 24);
    EXPECT_EQ(plain.followings.most, 3);
    EXPECT_EQ(plain.followings.fewest, 0);
    EXPECT_FALSE(plain.isPerfect());
}

} // namespace
} // namespace pipwright
