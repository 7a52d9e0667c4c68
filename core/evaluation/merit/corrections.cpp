#include "core/evaluation/merit/corrections.h"

#include <algorithm>
#include <array>

namespace pipwright {

namespace {

using enum Correction;

// Directions are those of the literature named; sizes on the 9-point scale are common practice
// unless the source gives one, and wide enough for thirty scores to overrule them.
// Noise: reliability of one fruit at its prime is 0.33 and off its prime about half of that (Saito
// et al., Japanese pear sugars), which asks for a residual about 0.4 to 1 parts larger.
constexpr std::string_view kPractice = "common practice, no source";
constexpr std::string_view kDropped =
    "Greene et al., Acta Hort. 1042:231: dropped fruit is riper; size common practice";
constexpr std::string_view kOverRipe = "worked example of the trade: 1.2 points, give or take 0.6";
constexpr std::string_view kBagged = "bagged fruit has less sugar and acid; size common practice";
constexpr std::string_view kStored =
    "Iwanami et al., JASHS 133:92: softening near linear in days; size common practice";
constexpr std::string_view kShaded =
    "inner fruit is smaller and less sweet; size common practice, no source";
constexpr std::string_view kDrift =
    "MacFie et al. 1989, J. Sens. Stud. 4:129; size common practice";

constexpr std::array kClasses = {
    ConditionClass{origin, "picked early", -0.8, 0.5, 0.4, kPractice},
    ConditionClass{origin, "dropped today", -0.2, 0.4, 0.3, kDropped},
    ConditionClass{origin, "on the ground longer", -0.8, 0.5, 0.6, kDropped},
    ConditionClass{origin, "shaken", 0.0, 0.2, 0.1, kPractice},
    ConditionClass{origin, "origin unknown", -0.1, 0.3, 0.2, kPractice},
    ConditionClass{soundness, "insect", -0.3, 0.4, 0.3, kPractice},
    ConditionClass{soundness, "bird", -0.2, 0.3, 0.2, kPractice},
    ConditionClass{soundness, "split", -0.3, 0.4, 0.3, kPractice},
    ConditionClass{soundness, "rot", -1.0, 0.6, 0.6, kPractice},
    ConditionClass{bag, "paper bag", -0.3, 0.3, 0.1, kBagged},
    ConditionClass{bag, "cloth bag", 0.0, 0.2, 0.0, kPractice},
    ConditionClass{bag, "clear bag", 0.0, 0.2, 0.0, kPractice},
    ConditionClass{ripeness, "green", -2.2, 0.8, 0.8, kPractice},
    ConditionClass{ripeness, "getting there", -1.0, 0.5, 0.5, kPractice},
    ConditionClass{ripeness, "early prime", -0.2, 0.2, 0.0, kPractice},
    ConditionClass{ripeness, "late prime", -0.2, 0.2, 0.0, kPractice},
    ConditionClass{ripeness, "on its way out", -1.2, 0.6, 0.5, kOverRipe},
    ConditionClass{ripeness, "gone", -2.5, 0.8, 0.8, kPractice},
    ConditionClass{ripeness, "ripeness unknown", -0.4, 0.4, 0.4, kPractice},
    ConditionClass{storage, "day on the counter", -0.06, 0.04, 0.02, kStored},
    ConditionClass{storage, "day in the refrigerator", -0.012, 0.010, 0.005, kStored},
    ConditionClass{storage, "day in the cellar", -0.020, 0.015, 0.008, kStored},
    ConditionClass{storage, "storage unknown", -0.1, 0.3, 0.2, kPractice},
    ConditionClass{canopyPlace, "sunny side", 0.0, 0.15, 0.0, kShaded},
    ConditionClass{canopyPlace, "inside", -0.3, 0.25, 0.0, kShaded},
    ConditionClass{canopyPlace, "low", -0.2, 0.2, 0.0, kShaded},
    ConditionClass{cropLoad, "lone fruit", -0.2, 0.3, 0.2, kPractice},
    ConditionClass{cropLoad, "light crop", 0.0, 0.15, 0.0, kPractice},
    ConditionClass{cropLoad, "heavy crop", -0.4, 0.3, 0.0, kPractice},
    ConditionClass{cropNumber, "first crop", -0.3, 0.3, 0.2, kPractice},
    ConditionClass{cropNumber, "second crop", -0.1, 0.15, 0.0, kPractice},
    ConditionClass{servingOrder, "place in the order", -0.03, 0.03, 0.0, kDrift},
    ConditionClass{hope, "own seedling, sighted", 0.25, 0.25, 0.0, kPractice},
};

/// The place of a class in the table.
consteval std::uint8_t classAt(std::string_view key) {
    for (std::size_t i = 0; i < kClasses.size(); ++i) {
        if (kClasses[i].key == key) {
            return static_cast<std::uint8_t>(i);
        }
    }
    throw "there is no such class";
}

class Collector {
  public:
    void is(std::uint8_t condition) { m_amounts.push_back({condition, 1.0F}); }
    void counts(std::uint8_t condition, std::int64_t amount) {
        if (amount > 0) {
            m_amounts.push_back({condition, static_cast<float>(amount)});
        }
    }
    std::vector<ConditionAmount> take() { return std::move(m_amounts); }

  private:
    std::vector<ConditionAmount> m_amounts;
};

void fruitState(const Lot& lot, Collector& states) {
    switch (lot.origin) {
    case Origin::unknown:
        states.is(classAt("origin unknown"));
        break;
    case Origin::pickedRipe:
        break;
    case Origin::pickedEarly:
        states.is(classAt("picked early"));
        break;
    case Origin::droppedToday:
        states.is(classAt("dropped today"));
        break;
    case Origin::onGroundLonger:
        states.is(classAt("on the ground longer"));
        break;
    case Origin::shaken:
        states.is(classAt("shaken"));
        break;
    }
    switch (lot.soundness) {
    case Soundness::unknown:
    case Soundness::sound:
        break;
    case Soundness::insect:
        states.is(classAt("insect"));
        break;
    case Soundness::bird:
        states.is(classAt("bird"));
        break;
    case Soundness::split:
        states.is(classAt("split"));
        break;
    case Soundness::rot:
        states.is(classAt("rot"));
        break;
    }
    switch (lot.bag) {
    case Bag::unknown:
    case Bag::none:
        break;
    case Bag::paper:
        states.is(classAt("paper bag"));
        break;
    case Bag::organza:
        states.is(classAt("cloth bag"));
        break;
    case Bag::clear:
        states.is(classAt("clear bag"));
        break;
    }
}

void ripenessState(const Lot& lot, Collector& states) {
    switch (lot.ripeness) {
    case Ripeness::unknown:
        states.is(classAt("ripeness unknown"));
        break;
    case Ripeness::green:
        states.is(classAt("green"));
        break;
    case Ripeness::gettingThere:
        states.is(classAt("getting there"));
        break;
    case Ripeness::earlyPrime:
        states.is(classAt("early prime"));
        break;
    case Ripeness::prime:
        break;
    case Ripeness::latePrime:
        states.is(classAt("late prime"));
        break;
    case Ripeness::onItsWayOut:
        states.is(classAt("on its way out"));
        break;
    case Ripeness::gone:
        states.is(classAt("gone"));
        break;
    }
}

void storageState(const Lot& lot, Collector& states) {
    const bool known = lot.daysOnCounter || lot.daysInFridge || lot.daysInCellar;
    if (known) {
        states.counts(classAt("day on the counter"), lot.daysOnCounter.value_or(0));
        states.counts(classAt("day in the refrigerator"), lot.daysInFridge.value_or(0));
        states.counts(classAt("day in the cellar"), lot.daysInCellar.value_or(0));
    } else if (lot.storage != StoragePath::none) {
        states.is(classAt("storage unknown"));
    }
}

void treeState(const Lot& lot, Collector& states) {
    switch (lot.canopyPlace) {
    case CanopyPlace::unknown:
    case CanopyPlace::top:
        break;
    case CanopyPlace::sunSide:
        states.is(classAt("sunny side"));
        break;
    case CanopyPlace::inside:
        states.is(classAt("inside"));
        break;
    case CanopyPlace::low:
        states.is(classAt("low"));
        break;
    }
    switch (lot.cropLoad) {
    case CropLoad::unknown:
    case CropLoad::medium:
        break;
    case CropLoad::lone:
        states.is(classAt("lone fruit"));
        break;
    case CropLoad::light:
        states.is(classAt("light crop"));
        break;
    case CropLoad::heavy:
        states.is(classAt("heavy crop"));
        break;
    }
    if (lot.cropNumber == 1) {
        states.is(classAt("first crop"));
    } else if (lot.cropNumber == 2) {
        states.is(classAt("second crop"));
    }
}

} // namespace

std::span<const ConditionClass> conditionClasses() {
    return kClasses;
}

std::vector<ConditionAmount> conditionsOf(const Lot& lot, Sight sight, bool ownSeedling,
                                          std::optional<std::int64_t> place) {
    Collector states;
    fruitState(lot, states);
    ripenessState(lot, states);
    storageState(lot, states);
    treeState(lot, states);
    states.counts(classAt("place in the order"), place.value_or(1) - 1);
    if (ownSeedling && sight == Sight::sighted) {
        states.is(classAt("own seedling, sighted"));
    }
    return states.take();
}

} // namespace pipwright
