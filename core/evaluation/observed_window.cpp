#include "core/evaluation/observed_window.h"

#include "core/orchard/dictionary.h"

namespace pipwright {

namespace {

void keepFirst(std::optional<Date>& day, Date candidate) {
    if (!day || candidate < *day) {
        day = candidate;
    }
}

void keepLast(std::optional<Date>& day, Date candidate) {
    if (!day || candidate > *day) {
        day = candidate;
    }
}

} // namespace

ObservedWindow observedWindow(std::span<const Observation> observations) {
    const TraitId walk = shippedTraitId(trait_key::kRipeningState);
    const TraitId firstRipe = shippedTraitId(trait_key::kFirstRipe);
    const TraitId lastGood = shippedTraitId(trait_key::kLastGood);
    ObservedWindow window;
    std::optional<Date> green;
    for (const Observation& one : observations) {
        if (!one.voidReason.empty()) {
            continue;
        }
        if (one.trait == firstRipe && one.valueDate) {
            keepFirst(window.firstRipe, *one.valueDate);
            keepLast(window.lastRipe, *one.valueDate);
        } else if (one.trait == lastGood && one.valueDate) {
            keepLast(window.lastRipe, *one.valueDate);
        } else if (one.trait == walk && one.state && one.date) {
            if (*one.state == stateOf(WalkMark::ripe)) {
                keepFirst(window.firstRipe, *one.date);
                keepLast(window.lastRipe, *one.date);
            } else if (*one.state == stateOf(WalkMark::over) ||
                       *one.state == stateOf(WalkMark::gone)) {
                keepFirst(window.over, *one.date);
            } else {
                keepLast(green, *one.date);
            }
        }
    }
    // A mark "not yet" after the first "ripe" says nothing of when it began.
    if (green && (!window.firstRipe || *green <= *window.firstRipe)) {
        window.stillGreen = green;
    }
    return window;
}

} // namespace pipwright
