#include "core/evaluation/observed_window.h"
#include "core/orchard/dictionary.h"

#include <gtest/gtest.h>
#include <vector>

namespace pipwright {
namespace {

Observation walked(WalkMark mark, const char* day) {
    Observation one;
    one.trait = shippedTraitId(trait_key::kRipeningState);
    one.state = stateOf(mark);
    one.date = Date::fromIso(day);
    return one;
}

TEST(ObservedWindow, LiesBetweenTheWalks) {
    const std::vector<Observation> walks = {
        walked(WalkMark::notYet, "2026-08-01"), walked(WalkMark::ripening, "2026-08-08"),
        walked(WalkMark::ripe, "2026-08-15"),   walked(WalkMark::ripe, "2026-08-22"),
        walked(WalkMark::over, "2026-08-29"),   walked(WalkMark::gone, "2026-09-05")};
    const ObservedWindow window = observedWindow(walks);
    EXPECT_EQ(window.stillGreen, Date::of(2026, 8, 8));
    EXPECT_EQ(window.firstRipe, Date::of(2026, 8, 15));
    EXPECT_EQ(window.lastRipe, Date::of(2026, 8, 22));
    EXPECT_EQ(window.over, Date::of(2026, 8, 29));
}

TEST(ObservedWindow, ANotYetAfterRipeSaysNothingOfTheBeginning) {
    const std::vector<Observation> walks = {walked(WalkMark::ripe, "2026-08-15"),
                                            walked(WalkMark::notYet, "2026-08-20")};
    EXPECT_EQ(observedWindow(walks).stillGreen, std::nullopt);
}

TEST(ObservedWindow, VoidMarksDoNotCount) {
    std::vector<Observation> walks = {walked(WalkMark::ripe, "2026-08-15")};
    walks.front().voidReason = "wrong tree";
    EXPECT_TRUE(observedWindow(walks).empty());
}

TEST(ObservedWindow, DaysToldCountAsMarks) {
    Observation first;
    first.trait = shippedTraitId(trait_key::kFirstRipe);
    first.valueDate = Date::of(2026, 12, 30);
    Observation last;
    last.trait = shippedTraitId(trait_key::kLastGood);
    last.valueDate = Date::of(2027, 1, 9);
    const ObservedWindow window = observedWindow(std::vector<Observation>{last, first});
    EXPECT_EQ(window.firstRipe, Date::of(2026, 12, 30));
    EXPECT_EQ(window.lastRipe, Date::of(2027, 1, 9));
    EXPECT_EQ(window.over, std::nullopt);
}

} // namespace
} // namespace pipwright
