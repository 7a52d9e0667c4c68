#include "core/evaluation/fairness.h"

#include <algorithm>

namespace pipwright {

namespace {

bool isUnknown(Unfairness reason) {
    return reason == Unfairness::originUnknown || reason == Unfairness::ripenessUnknown;
}

} // namespace

std::optional<int> daysOffTree(const Lot& lot) {
    if (lot.storage == StoragePath::none) {
        return 0;
    }
    const bool known = lot.daysOnCounter || lot.daysInFridge || lot.daysInCellar;
    if (!known) {
        return std::nullopt;
    }
    return static_cast<int>(lot.daysOnCounter.value_or(0) + lot.daysInFridge.value_or(0) +
                            lot.daysInCellar.value_or(0));
}

Fairness fairnessOf(const Lot& lot) {
    Fairness fairness;
    auto& reasons = fairness.reasons;
    switch (lot.origin) {
    case Origin::pickedEarly:
        reasons.push_back(Unfairness::pickedEarly);
        break;
    case Origin::droppedToday:
    case Origin::onGroundLonger:
        reasons.push_back(Unfairness::fallen);
        break;
    case Origin::unknown:
        reasons.push_back(Unfairness::originUnknown);
        break;
    case Origin::pickedRipe:
    case Origin::shaken:
        break;
    }
    if (lot.soundness != Soundness::sound && lot.soundness != Soundness::unknown) {
        reasons.push_back(Unfairness::hurt);
    }
    if (lot.ripeness == Ripeness::unknown) {
        reasons.push_back(Unfairness::ripenessUnknown);
    } else if (lot.ripeness < Ripeness::earlyPrime) {
        reasons.push_back(Unfairness::underRipe);
    } else if (lot.ripeness > Ripeness::latePrime) {
        reasons.push_back(Unfairness::overRipe);
    }
    if (daysOffTree(lot).value_or(0) > kFairDays) {
        reasons.push_back(Unfairness::keptTooLong);
    }
    if (lot.bag == Bag::paper) {
        reasons.push_back(Unfairness::bagged);
    }
    if (lot.cropNumber == 1) {
        reasons.push_back(Unfairness::firstCrop);
    }
    fairness.unclear = !reasons.empty() && std::all_of(reasons.begin(), reasons.end(), isUnknown);
    return fairness;
}

} // namespace pipwright
