#include "sample-data/generator/words.h"

#include <array>

namespace pipwright::sample {

namespace {

constexpr std::array kFlavours = {"pear drops",  "roses",      "hazelnut",   "green walnut",
                                  "quince",      "strawberry", "honey",      "raspberry",
                                  "elderflower", "aniseed",    "melon rind", "orange peel"};

std::string sharpWords(double sharpness, bool liked, Chance& chance) {
    if (sharpness < 1.8) {
        return liked ? "sweet all through"
                     : chance.oneOf(std::array{"no acid at all", "sweet and nothing behind it",
                                               "sugar water, nicely meant"});
    }
    if (sharpness < 2.7) {
        return liked ? chance.oneOf(std::array{"mild", "gentle acid"})
                     : chance.oneOf(std::array{"mild", "soft acid", "a little flat"});
    }
    if (sharpness < 3.6) {
        return chance.oneOf(
            std::array{"sweet and sharp in balance", "good acid", "acid enough to stay awake"});
    }
    if (sharpness < 4.3) {
        return chance.oneOf(std::array{"bright acid", "lemon edge", "brisk", "sharp first"});
    }
    return liked ? chance.oneOf(std::array{"very sharp, and can carry it", "sharp as a bell"})
                 : chance.oneOf(std::array{"sharp enough to shut one eye", "sour as a gooseberry",
                                           "for the pot, not the hand"});
}

std::string biteWords(double crispness, bool liked, Chance& chance) {
    if (crispness < 2.3) {
        return liked ? chance.oneOf(std::array{"melting", "soft, and meant to be"})
                     : chance.oneOf(std::array{"soft bite", "woolly", "gives too easily"});
    }
    if (crispness < 3.4) {
        return chance.oneOf(std::array{"tender", "fine grain", "breaks cleanly"});
    }
    return chance.oneOf(std::array{"cracks when bitten", "crisp and juicy", "hard snap",
                                   "juice runs down the chin"});
}

std::string stateWords(const Lot& lot, Chance& chance) {
    if (lot.soundness == Soundness::rot) {
        return "brown at the core; looked at, not eaten";
    }
    if (lot.soundness == Soundness::insect) {
        return chance.oneOf(std::array{"cut round the grub hole", "grub had been first"});
    }
    if (lot.soundness == Soundness::bird) {
        return "pecked side cut away";
    }
    if (lot.soundness == Soundness::split) {
        return "split at the stalk, eaten from the other side";
    }
    if (lot.ripeness == Ripeness::green || lot.ripeness == Ripeness::gettingThere) {
        return chance.oneOf(
            std::array{"starch on the tongue", "days too early", "pips still white"});
    }
    if (lot.ripeness == Ripeness::onItsWayOut || lot.ripeness == Ripeness::gone) {
        return chance.oneOf(std::array{"mealy by now", "past it", "greasy skin, dull inside"});
    }
    if (lot.daysInFridge.value_or(0) > 3) {
        return chance.oneOf(std::array{"fridge has dulled it", "came through the fridge well"});
    }
    return {};
}

std::string lastWord(double score, Chance& chance) {
    if (score >= 8) {
        return chance.oneOf(std::array{"Ate it to the stalk.", "Went back for another.",
                                       "Did not want to share it."});
    }
    if (score >= 7) {
        return chance.oneOf(
            std::array{"Would pick a basket.", "Good, and I would say so to a stranger."});
    }
    if (score >= 5.5) {
        return chance.oneOf(std::array{"Fine, no more.", "Pleasant, forgotten by the gate.", ""});
    }
    if (score >= 4) {
        return chance.oneOf(std::array{"Nothing wrong and nothing right.", "One bite was enough."});
    }
    return chance.oneOf(std::array{"Spat out.", "For the blackbirds."});
}

std::string capital(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    }
    return text;
}

} // namespace

std::string flavourWords(const Truth& truth) {
    return kFlavours[truth.flavour % kFlavours.size()];
}

std::string colourWords(Hue hue) {
    switch (hue) {
    case Hue::red:
        return "red";
    case Hue::striped:
        return "red stripes on yellow";
    case Hue::gold:
        return "gold";
    case Hue::green:
        return "plain green";
    case Hue::russet:
        return "russet";
    case Hue::blue:
        return "blue with bloom";
    }
    return {};
}

std::string breederWords(const Truth& truth, const Lot& lot, double score, Chance& chance) {
    const std::string state = stateWords(lot, chance);
    if (lot.soundness == Soundness::rot) {
        return capital(state) + ".";
    }
    const bool stored = state.find("fridge") != std::string::npos;
    std::string text =
        stored || state.empty() ? biteWords(truth.crispness, score >= 6, chance) : state;
    text += ", " + (stored ? state : sharpWords(truth.sharpness, score >= 6, chance));
    const bool unripe = lot.ripeness == Ripeness::green || lot.ripeness == Ripeness::gettingThere;
    if (truth.aroma > 3.2 && score >= 5 && !unripe) {
        text += ", " + flavourWords(truth);
    } else if (truth.aroma < 2.2) {
        text += ", no scent";
    }
    text = capital(text) + ".";
    const bool spoilt = !state.empty() && !stored;
    const std::string last =
        spoilt && score >= 5.5 ? (score >= 6.5 ? "Good even so." : "") : lastWord(score, chance);
    return last.empty() ? text : text + " " + last;
}

std::string bodoWords(double score, Chance& chance) {
    if (score >= 7.5) {
        return chance.oneOf(std::array{"Wonderful. Is there more?", "I would plant a row of it.",
                                       "Best so far.", "Lovely, lovely."});
    }
    if (score >= 6) {
        return chance.oneOf(std::array{"Very nice.", "I like it.", "Good for the children."});
    }
    return chance.oneOf(
        std::array{"Well, it is an apple.", "Not its day, perhaps.", "Hm. Nice skin."});
}

std::string corraWords(const Truth& truth, double score, Chance& chance) {
    if (truth.sharpness >= 3.6) {
        return score >= 6 ? chance.oneOf(std::array{"At last some acid.", "Awake at once. Yes.",
                                                    "This one answers back."})
                          : chance.oneOf(
                                std::array{"Sharp, but nothing behind it.", "Acid without fruit."});
    }
    if (truth.sharpness < 2.6) {
        return chance.oneOf(std::array{"A turnip with sugar.", "Needs a lemon.", "Asleep."});
    }
    return score >= 6 ? chance.oneOf(std::array{"Nearly sharp enough.", "Good, a shade sweet."})
                      : chance.oneOf(std::array{"Too sweet for me.", "Dull.", "No bite to it."});
}

} // namespace pipwright::sample
