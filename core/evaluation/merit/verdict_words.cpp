#include "core/evaluation/merit/verdict_words.h"

#include <array>
#include <cmath>
#include <cstdio>

namespace pipwright {

namespace {

template <std::size_t Count, typename Enum>
std::string_view keyAt(const std::array<std::string_view, Count>& keys, Enum value) {
    return keys[static_cast<std::size_t>(value)];
}

std::string oneDecimal(double value) {
    std::array<char, 32> text{};
    const int length = std::snprintf(text.data(), text.size(), "%.1f", value);
    return {text.data(), static_cast<std::size_t>(length)};
}

std::string countedAs(int number, const char* one, const char* many) {
    return std::to_string(number) + " " + (number == 1 ? one : many);
}

std::string lackSentence(LadderLack lack) {
    switch (lack) {
    case LadderLack::noLadders:
        return "There is no benchmark of its species to beat.";
    case LadderLack::unknownSeason:
        return "Nobody knows when it ripens, so not what it has to beat: mark it ripe on a walk.";
    case LadderLack::outsideSlots:
        return "It ripens outside all slots of the season: cut one for it.";
    case LadderLack::benchmarkUnseen:
    case LadderLack::none:
        break;
    }
    return "No benchmark of its slot or the slots beside it was ever tasted: taste one.";
}

/// "Odo", or "Odo (of a neighbouring slot)".
std::string rungName(const OrchardView& view, const RungOdds& odds) {
    return view.genotypes()[odds.reference].called() +
           (odds.borrowed ? " (of a neighbouring slot)" : "");
}

} // namespace

std::string percentText(double chance) {
    const double percent = 100 * chance;
    if (percent > 99) {
        return "over 99 %";
    }
    if (percent < 1) {
        return "under 1 %";
    }
    return std::to_string(std::lround(percent)) + " %";
}

std::string_view keyOf(Suggestion suggestion) {
    static constexpr std::array<std::string_view, 8> kKeys = {
        "not_enough_yet", "cull",      "again",       "watch",
        "back_up_now",    "name_talk", "parent_only", "none"};
    return keyAt(kKeys, suggestion);
}

std::string_view keyOf(SuggestionReason reason) {
    static constexpr std::array<std::string_view, 12> kKeys = {
        "never_tasted",    "nothing_to_beat", "no_fair_lot",
        "below_floor",     "faulty",          "good_but_faulty",
        "undecided",       "above_floor",     "above_best_one_tree",
        "above_best_once", "above_best",      "settled_already"};
    return keyAt(kKeys, reason);
}

std::string_view keyOf(LadderLack lack) {
    static constexpr std::array<std::string_view, 5> kKeys = {
        "none", "no_ladders", "unknown_season", "outside_slots", "benchmark_unseen"};
    return keyAt(kKeys, lack);
}

std::string_view keyOf(RungGround ground) {
    static constexpr std::array<std::string_view, 7> kKeys = {
        "elected",        "carried_over", "highest_merit", "lowest_merit",
        "lower_quartile", "known_before", "most_tasted"};
    return keyAt(kKeys, ground);
}

std::string_view keyOf(RipeningBasis basis) {
    static constexpr std::array<std::string_view, 5> kKeys = {"seen_ripe", "eaten_prime",
                                                              "siblings", "parents", "unknown"};
    return keyAt(kKeys, basis);
}

std::string_view keyOf(MeritBasis basis) {
    static constexpr std::array<std::string_view, 3> kKeys = {"tasted", "relatives", "none"};
    return keyAt(kKeys, basis);
}

std::string_view keyOf(Gate gate) {
    static constexpr std::array<std::string_view, 6> kKeys = {
        "none",  "before_fruit", "first_fruit", "watch_to_selection", "selection_to_advanced",
        "naming"};
    return keyAt(kKeys, gate);
}

std::string_view questionOf(Gate gate) {
    switch (gate) {
    case Gate::beforeFruit:
        return "Is it healthy and strong enough to keep its place until it fruits?";
    case Gate::firstFruit:
        return "Does its fruit earn another tasting?";
    case Gate::watchToSelection:
        return "Is it ahead of the best of its days, in more than one crop and at its prime, and "
               "are its faults bearable?";
    case Gate::selectionToAdvanced:
        return "Does it do the same on other stocks and sites, does it crop and keep, and do "
               "others like it?";
    case Gate::naming:
        return "Can it be told from what there is, is its wood clean, and is a name free for it?";
    case Gate::none:
        break;
    }
    return "";
}

std::string_view sentenceOf(RungGround ground) {
    switch (ground) {
    case RungGround::elected:
        return "elected for this crop year";
    case RungGround::carriedOver:
        return "elected for an earlier crop year, and not re-elected since";
    case RungGround::highestMerit:
        return "proposed: the highest expected merit of the slot";
    case RungGround::lowestMerit:
        return "proposed: the lowest expected merit of the slot still kept";
    case RungGround::lowerQuartile:
        return "proposed: three in four benchmarks of the slot have a higher expected merit";
    case RungGround::knownBefore:
        return "proposed: most often the famous name before";
    case RungGround::mostTasted:
        break;
    }
    return "proposed: the benchmark of the slot with most scores";
}

std::string evidenceLine(const GenotypeMerit& evidence) {
    if (!evidence.seen()) {
        return "never tasted";
    }
    return countedAs(evidence.fairLots, "fair lot", "fair lots") + " of " +
           std::to_string(evidence.lots) + ", " + countedAs(evidence.tasters, "taster", "tasters") +
           ", " + countedAs(evidence.sittings, "sitting", "sittings") + ", " +
           countedAs(evidence.cropYears, "crop year", "crop years");
}

std::string sentenceOf(const Fault& fault) {
    std::string name(keyOf(fault.kind));
    for (char& c : name) {
        c = c == '_' ? ' ' : c;
    }
    const bool share = fault.kind == FaultKind::split;
    const auto figure = [share](double value) {
        return share ? percentText(value) : oneDecimal(value);
    };
    return name + " " + figure(fault.figure) +
           (fault.cropYear ? " in " + std::to_string(*fault.cropYear) : "") + ", " +
           figure(fault.limit) + " rules it out (" +
           countedAs(fault.readings, "reading", "readings") + ")";
}

std::string reasonSentence(const OrchardView& view, const SeedlingVerdict& verdict,
                           const VerdictChoices& choices) {
    const VerdictThresholds& limits = choices.thresholds;
    const RungOdds* floor = verdict.floor ? &*verdict.floor : nullptr;
    const RungOdds* best = verdict.best ? &*verdict.best : nullptr;
    floor = floor == nullptr ? best : floor;
    best = best == nullptr ? floor : best;
    const auto above = [&](const RungOdds* odds) {
        return "better than " + rungName(view, *odds) + " with " + percentText(odds->above);
    };
    switch (verdict.reason) {
    case SuggestionReason::neverTasted:
        return "It has fruited, but nobody has scored it yet.";
    case SuggestionReason::nothingToBeat:
        return lackSentence(verdict.lack);
    case SuggestionReason::noFairLot:
        return "Only " + countedAs(verdict.evidence.fairLots, "fair lot", "fair lots") + " of " +
               std::to_string(verdict.evidence.lots) + ", where " +
               std::to_string(limits.fairLots) + " is asked for: taste it at its prime.";
    case SuggestionReason::belowFloor:
        return "Worse than " + rungName(view, *floor) + " with " + percentText(floor->below()) +
               ", where " + percentText(limits.cullBelowFloor) + " is enough to cull.";
    case SuggestionReason::faulty:
        return "Ruled out by " + sentenceOf(verdict.faults.front()) + ", and only " + above(floor) +
               ".";
    case SuggestionReason::goodButFaulty:
        return "Ruled out by " + sentenceOf(verdict.faults.front()) + ", though " + above(floor) +
               ": of use as a parent.";
    case SuggestionReason::undecided:
        return "Undecided: " + above(floor) + ", too little to watch it and too much to cull it.";
    case SuggestionReason::aboveFloor:
        return "It is " + above(floor) + ", where " + percentText(limits.watchAboveFloor) +
               " is enough to watch it.";
    case SuggestionReason::aboveBestOneTree:
        return "It is " + above(best) + ", and one accident would end it.";
    case SuggestionReason::aboveBestTooFewYears:
        return "It is " + above(best) + ", but was tasted in " +
               countedAs(verdict.evidence.cropYears, "crop year", "crop years") + ", where " +
               std::to_string(limits.nameCropYears) + " are asked for.";
    case SuggestionReason::aboveBest:
        return "It is " + above(best) + ", where " + percentText(limits.nameAboveBest) +
               " is enough to talk of a name.";
    case SuggestionReason::settledAlready:
        break;
    }
    return "Decided already: " + std::string(keyOf(verdict.stage)) + ".";
}

} // namespace pipwright
