#include "core/plan/sitting_remarks.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <set>

namespace pipwright {

namespace {

/// More than so many lots are served only when they must be.
constexpr int kManyLots = 9;

PlanRemark remark(PlanRemarkKind kind, std::string name = {}, int number = 0, int other = 0) {
    PlanRemark one;
    one.kind = kind;
    one.name = std::move(name);
    one.number = number;
    one.other = other;
    return one;
}

std::optional<int> daysKept(const LotCondition& fruit, Date eaten) {
    if (fruit.daysOnCounter || fruit.daysInFridge || fruit.daysInCellar) {
        return static_cast<int>(fruit.daysOnCounter.value_or(0) + fruit.daysInFridge.value_or(0) +
                                fruit.daysInCellar.value_or(0));
    }
    if (fruit.storage == StoragePath::none) {
        return 0;
    }
    return fruit.taken ? std::optional(eaten.days() - fruit.taken->days()) : std::nullopt;
}

/// Of one plant, or of one source of bought fruit.
bool isSameFruit(const LotToServe& one, const LotToServe& other) {
    return one.plant == other.plant && one.claimedGenotype == other.claimedGenotype &&
           one.source == other.source;
}

class RemarkWriter {
  public:
    RemarkWriter(const SittingWish& wish, const SittingPlan& plan) : m_wish(wish), m_plan(plan) {}

    std::vector<PlanRemark> all() && {
        sayOrders();
        sayHidden();
        for (const PlannedServing& serving : m_plan.lots) {
            sayFruit(serving);
        }
        sayStorage();
        sayTwice();
        sayTasters();
        return std::move(m_remarks);
    }

  private:
    void add(PlanRemark one) { m_remarks.push_back(std::move(one)); }

    void sayOrders() {
        PlanRemark orders = remark(m_plan.orders.imbalance() > 0 ? PlanRemarkKind::unevenOrders
                                                                 : PlanRemarkKind::evenOrders,
                                   {}, m_plan.served(), static_cast<int>(m_plan.tasters.size()));
        orders.places = m_plan.orders.places;
        orders.followings = m_plan.orders.followings;
        add(orders);
        PlanRemark codes = remark(PlanRemarkKind::codesDrawn, {}, m_plan.served());
        codes.other = static_cast<int>(m_plan.draw);
        add(codes);
        if (m_plan.pauseAfter > 0) {
            add(remark(PlanRemarkKind::pauseAfter, {}, m_plan.pauseAfter));
        }
    }

    void sayHidden() {
        if (m_wish.benchmark) {
            PlanRemark one = remark(PlanRemarkKind::benchmarkTwice, m_wish.benchmark->name,
                                    m_wish.benchmarkDays.value_or(0), m_wish.benchmarkDays ? 1 : 0);
            add(one);
        }
        if (m_wish.repeat) {
            add(remark(PlanRemarkKind::repeatServed, m_wish.repeat->name,
                       m_wish.repeatDays.value_or(0), m_wish.repeatDays ? 1 : 0));
        }
        if (!m_wish.benchmark) {
            add(remark(PlanRemarkKind::noBenchmark));
        }
    }

    void sayFruit(const PlannedServing& serving) {
        const LotCondition& fruit = serving.lot.condition;
        const std::string& name = serving.lot.name;
        if (!m_told.insert(name).second) {
            return; // the benchmark's second serving
        }
        if (fruit.soundness == Soundness::rot) {
            add(remark(PlanRemarkKind::rotten, name));
        } else if (isLookOnly(fruit)) {
            add(remark(PlanRemarkKind::lookOnly, name));
        }
        if (fruit.origin == Origin::droppedToday || fruit.origin == Origin::onGroundLonger) {
            add(remark(PlanRemarkKind::fallen, name));
        }
        if (fruit.soundness == Soundness::insect) {
            add(remark(PlanRemarkKind::wormy, name));
        } else if (fruit.soundness == Soundness::bird) {
            add(remark(PlanRemarkKind::pecked, name));
        }
        if (serving.isServed() && fruit.ripeness == Ripeness::unknown) {
            add(remark(PlanRemarkKind::ripenessUnknown, name));
        }
        if (serving.isServed() && fruit.fruits == 1) {
            add(remark(PlanRemarkKind::oneFruit, name));
        }
    }

    void sayStorage() {
        std::optional<int> fewest;
        std::optional<int> most;
        std::set<StoragePath> paths;
        std::set<std::string> unknown;
        for (const PlannedServing& serving : m_plan.lots) {
            if (!serving.isServed()) {
                continue;
            }
            const auto days = daysKept(serving.lot.condition, m_plan.date);
            if (!days) {
                unknown.insert(serving.lot.name);
                continue;
            }
            fewest = std::min(fewest.value_or(*days), *days);
            most = std::max(most.value_or(*days), *days);
            if (serving.lot.condition.storage != StoragePath::unknown) {
                paths.insert(serving.lot.condition.storage);
            }
        }
        if (fewest && *most > *fewest) {
            add(remark(PlanRemarkKind::unequalDays, {}, *fewest, *most));
        } else if (paths.size() > 1) {
            add(remark(PlanRemarkKind::unequalPaths));
        }
        if (!unknown.empty()) {
            PlanRemark one = remark(PlanRemarkKind::daysUnknown);
            for (const std::string& name : unknown) {
                one.words += (one.words.empty() ? "" : ", ") + name;
            }
            add(one);
        }
        if (m_plan.served() > kManyLots) {
            add(remark(PlanRemarkKind::manyLots, {}, m_plan.served()));
        }
    }

    /// Chosen twice by a slip, or the benchmark among the chosen besides.
    void sayTwice() {
        std::set<std::string> told;
        for (std::size_t i = 0; i < m_wish.lots.size(); ++i) {
            const LotToServe& lot = m_wish.lots[i];
            bool again = (m_wish.benchmark && isSameFruit(*m_wish.benchmark, lot)) ||
                         (m_wish.repeat && isSameFruit(*m_wish.repeat, lot));
            for (std::size_t j = 0; j < i; ++j) {
                again = again || isSameFruit(m_wish.lots[j], lot);
            }
            if (again && told.insert(lot.name).second) {
                add(remark(PlanRemarkKind::servedTwice, lot.name));
            }
        }
    }

    void sayTasters() {
        if (m_plan.sight != Sight::blind) {
            add(remark(PlanRemarkKind::sighted));
        }
        if (m_plan.tasters.size() == 1) {
            add(remark(PlanRemarkKind::oneTaster, m_plan.tasters.front().name));
        }
        for (const Person& taster : m_plan.tasters) {
            if (!taster.healthNotes.empty()) {
                PlanRemark one = remark(PlanRemarkKind::healthNote, taster.name);
                one.words = taster.healthNotes;
                add(one);
            }
        }
    }

    const SittingWish& m_wish;
    const SittingPlan& m_plan;
    std::vector<PlanRemark> m_remarks;
    std::set<std::string> m_told;
};

std::string days(int number) {
    return std::to_string(number) + (number == 1 ? " day" : " days");
}

/// "2 times", "1 to 2 times", "once"
std::string times(const ServingEvenness& even) {
    const auto number = [](int n) {
        return n == 0 ? std::string("never") : n == 1 ? "once" : std::to_string(n) + " times";
    };
    return even.fewest == even.most ? number(even.fewest)
                                    : number(even.fewest) + " to " + number(even.most);
}

std::string ordersSentence(const PlanRemark& one) {
    std::string text = std::to_string(one.number) + " lots for " + std::to_string(one.other) +
                       (one.other == 1 ? " taster" : " tasters") +
                       ": a lot stands in the same place " + times(one.places) +
                       " and directly after the same other lot " + times(one.followings) + ". ";
    if (one.kind == PlanRemarkKind::evenOrders) {
        return text + "Imbalance 0: no orders of these numbers are more even.";
    }
    std::array<char, 32> number{};
    std::snprintf(number.data(), number.size(), "%g",
                  one.places.imbalance + one.followings.imbalance);
    return text + "Imbalance " + number.data() +
           " (sum of squares above the least possible): one lot or taster more or less may even "
           "it out.";
}

std::string deedSentence(const PlanRemark& one) {
    switch (one.kind) {
    case PlanRemarkKind::codesDrawn:
        return "Codes differ in two digits or more, none reads as a number upside down, none was "
               "used lately. Drawn with number " +
               std::to_string(one.other) + ".";
    case PlanRemarkKind::benchmarkTwice:
        if (one.other == 0) {
            return one.name + " is the benchmark, hidden twice under two codes: how far "
                              "a taster's two scores lie apart shows what a score is worth.";
        }
        return one.name + " is the benchmark, hidden twice under two codes; it usually ripens " +
               (one.number == 0
                    ? std::string("on the same day as")
                    : days(std::abs(one.number)) + (one.number > 0 ? " after" : " before")) +
               " the middle lot.";
    case PlanRemarkKind::repeatServed:
        return one.name + " was served " +
               (one.other == 0 ? std::string("before") : days(one.number) + " ago") +
               " and comes again, for each taster's own noise; it has kept longer since.";
    case PlanRemarkKind::pauseAfter:
        return "Pause, water and a plain cracker after " + std::to_string(one.number) + " lots.";
    default:
        return ordersSentence(one);
    }
}

} // namespace

std::vector<PlanRemark> planRemarks(const SittingWish& wish, const SittingPlan& plan) {
    return RemarkWriter(wish, plan).all();
}

std::string sentenceOf(const PlanRemark& one) {
    switch (one.kind) {
    case PlanRemarkKind::rotten:
        return one.name + " is rotten in part: look at it, do not eat of it (patulin), also not "
                          "around the rotten place.";
    case PlanRemarkKind::lookOnly:
        return one.name + " is not in its prime: look only, no score; a score would say nothing of "
                          "the tree.";
    case PlanRemarkKind::fallen:
        return one.name + " lay on the ground: wash it; nothing for children, old people, anyone "
                          "pregnant or ill. Fallen fruit is riper than its tree.";
    case PlanRemarkKind::wormy:
        return one.name + " has insects in it: cut the places out; it ripened early and tastes "
                          "of it.";
    case PlanRemarkKind::pecked:
        return one.name + " is pecked by birds: cut widely around it and wash, or leave it out.";
    case PlanRemarkKind::unequalDays:
        return "The lots were kept unequally long, " + std::to_string(one.number) + " to " +
               days(one.other) + ": what kept longer is softer and less sour for that alone.";
    case PlanRemarkKind::unequalPaths:
        return "The lots were not kept in the same place: compare what lay together.";
    case PlanRemarkKind::daysUnknown:
        return "Nobody wrote how long these were kept: " + one.words + ".";
    case PlanRemarkKind::ripenessUnknown:
        return one.name + " has no ripeness yet: without it the score speaks for little.";
    case PlanRemarkKind::oneFruit:
        return one.name + " is a single fruit: cut two to five and mix the slices, if there are.";
    case PlanRemarkKind::manyLots:
        return std::to_string(one.number) +
               " lots are many: six to nine are tasted well in half an hour.";
    case PlanRemarkKind::servedTwice:
        return one.name + " is on the list more than once.";
    case PlanRemarkKind::noBenchmark:
        return "No benchmark is hidden among the lots: nothing will tell what a score is worth.";
    case PlanRemarkKind::sighted:
        return "The tasters know what they eat: hope scores too.";
    case PlanRemarkKind::oneTaster:
        return one.name + " tastes alone: nothing will be known of agreement.";
    case PlanRemarkKind::healthNote:
        return one.name + ": " + one.words;
    default:
        return deedSentence(one);
    }
}

} // namespace pipwright
