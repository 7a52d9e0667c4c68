#include "core/plan/sitting_plan.h"

#include "core/plan/plan_chance.h"
#include "core/plan/serving_codes.h"
#include "core/plan/sitting_remarks.h"

#include <algorithm>
#include <set>

namespace pipwright {

namespace {

/// Everything that goes on the table, and where the two servings of the benchmark stand.
struct ServedTable {
    std::vector<LotToServe> served;
    std::vector<LotToServe> lookedAt;
    int firstTwin = -1;
    int secondTwin = -1;
};

ServedTable setTable(const SittingWish& wish) {
    ServedTable table;
    for (const LotToServe& lot : wish.lots) {
        (isLookOnly(lot.condition) ? table.lookedAt : table.served).push_back(lot);
    }
    const auto add = [&table](LotToServe lot, LotRole role) {
        lot.role = role;
        table.served.push_back(std::move(lot));
        return static_cast<int>(table.served.size()) - 1;
    };
    if (wish.repeat) {
        add(*wish.repeat, LotRole::repeat);
    }
    if (wish.benchmark) {
        table.firstTwin = add(*wish.benchmark, LotRole::benchmark);
        table.secondTwin = add(*wish.benchmark, LotRole::benchmark);
    }
    return table;
}

Outcome checkTasters(const std::vector<Person>& tasters) {
    std::set<PersonId> seen;
    for (const Person& one : tasters) {
        if (!seen.insert(one.id).second) {
            return Problem{ProblemCode::badInput, one.name + " is named twice.",
                           "Name each taster once.", "tasters"};
        }
    }
    return {};
}

/// The served lots under their codes. Lots are changed about first, so that a rising code tells
/// nothing of where the lot stood in the planner's list; `places` says where each went.
std::vector<PlannedServing> underCodes(const ServedTable& table,
                                       const std::vector<std::string>& codes, PlanChance& chance,
                                       std::vector<int>& places) {
    std::vector<int> order(table.served.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        order[i] = static_cast<int>(i);
    }
    chance.shuffle(order);
    places.assign(order.size(), 0);
    std::vector<PlannedServing> servings;
    for (std::size_t i = 0; i < order.size(); ++i) {
        places[static_cast<std::size_t>(order[i])] = static_cast<int>(i);
        servings.push_back({table.served[static_cast<std::size_t>(order[i])], codes[i]});
    }
    for (const LotToServe& lot : table.lookedAt) {
        servings.push_back({lot, {}});
    }
    return servings;
}

} // namespace

bool isLookOnly(const LotCondition& condition) {
    switch (condition.ripeness) {
    case Ripeness::green:
    case Ripeness::gettingThere:
    case Ripeness::onItsWayOut:
    case Ripeness::gone:
        return true;
    default:
        return condition.soundness == Soundness::rot;
    }
}

Result<SittingPlan> planSitting(const SittingWish& wish) {
    if (const Outcome outcome = checkTasters(wish.tasters); !outcome) {
        return outcome.problem();
    }
    const ServedTable table = setTable(wish);
    const int lots = static_cast<int>(table.served.size());
    auto orders = servingOrders(lots, static_cast<int>(wish.tasters.size()));
    if (!orders) {
        return orders.problem();
    }
    const auto codes = servingCodes(lots, wish.usedCodes, wish.draw);
    if (!codes) {
        return codes.problem();
    }
    SittingPlan plan;
    plan.date = wish.date;
    plan.sight = wish.sight;
    plan.draw = wish.draw;
    plan.tasters = wish.tasters;
    PlanChance chance(wish.draw ^ 0xC0DE5ULL);
    std::vector<int> places;
    plan.lots = underCodes(table, *codes, chance, places);
    const auto placeOf = [&places](int lot) {
        return lot < 0 ? -1 : places[static_cast<std::size_t>(lot)];
    };
    plan.orders =
        shuffled(*orders, chance.next(), placeOf(table.firstTwin), placeOf(table.secondTwin));
    plan.pauseAfter = lotsBeforePause(lots);
    plan.remarks = planRemarks(wish, plan);
    return plan;
}

} // namespace pipwright
