#pragma once

#include "core/history/edits.h"
#include "core/plan/serving_order.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace pipwright {

/// Why some fruit is on the table.
enum class LotRole {
    chosen,    ///< the planner wants to know of it
    benchmark, ///< hidden among the others, under two codes
    repeat     ///< of an earlier sitting, for each taster's own noise
};

/// Fruit that shall be served, with what it is called where nobody must not know.
struct LotToServe {
    std::optional<PlantId> plant;
    std::optional<GenotypeId> claimedGenotype; ///< of bought or given fruit
    std::string source;
    std::string name;
    Hemisphere hemisphere = Hemisphere::unknown; ///< of the tree's site
    LotCondition condition;
    LotRole role = LotRole::chosen;
};

/// What the planner wants.
struct SittingWish {
    Date date;
    Sight sight = Sight::blind;
    std::vector<LotToServe> lots;
    std::optional<LotToServe> benchmark; ///< served twice
    std::optional<int> benchmarkDays;    ///< it ripens so many days later than the middle lot
    std::optional<LotToServe> repeat;    ///< of an earlier sitting
    std::optional<int> repeatDays;       ///< which was so many days ago
    std::vector<Person> tasters;
    std::vector<std::string> usedCodes; ///< of earlier sittings, newest first
    std::uint64_t draw = 1;             ///< the same draw makes the same codes and orders
};

/// What there is to say about a plan.
enum class PlanRemarkKind {
    // What was done, and why.
    evenOrders,
    unevenOrders,
    codesDrawn,
    benchmarkTwice,
    repeatServed,
    pauseAfter,
    // What to look at.
    rotten,
    lookOnly,
    fallen,
    wormy,
    pecked,
    unequalDays,
    unequalPaths,
    daysUnknown,
    ripenessUnknown,
    oneFruit,
    manyLots,
    servedTwice,
    noBenchmark,
    sighted,
    oneTaster,
    healthNote
};

struct PlanRemark {
    PlanRemarkKind kind = PlanRemarkKind::evenOrders;
    std::string name;  ///< of the fruit or the person, where one is meant
    std::string words; ///< a person's own health note, codes, names
    int number = 0;
    int other = 0;
    ServingEvenness places;
    ServingEvenness followings;

    /// It asks for care, rather than telling what was done.
    [[nodiscard]] bool isWarning() const { return kind >= PlanRemarkKind::rotten; }
};

/// English, for the terminal. The window says the same in its own language.
std::string sentenceOf(const PlanRemark& remark);

/// A lot as it will be served; without a code it is looked at only.
struct PlannedServing {
    LotToServe lot;
    std::string code;

    [[nodiscard]] bool isServed() const { return !code.empty(); }
};

/// A sitting before it is held.
struct SittingPlan {
    Date date;
    Sight sight = Sight::blind;
    std::uint64_t draw = 0;
    std::vector<PlannedServing> lots; ///< those served in the order of their codes, then the others
    std::vector<Person> tasters;
    ServingOrders orders; ///< of the lots served, a row a taster
    int pauseAfter = 0;   ///< lots before the pause; 0: no pause
    std::vector<PlanRemark> remarks;

    /// Lots that have a code.
    [[nodiscard]] int served() const { return orders.lots; }
};

/// Whether such fruit tells nothing of the tree on its plate: green, hardly ripening, on its way
/// out or gone, or rotten in part. It is looked at, and not scored.
bool isLookOnly(const LotCondition& condition);

/// Lots before the pause in the middle; 0 when there are too few for one.
constexpr int lotsBeforePause(int lots) {
    return lots >= 4 ? (lots + 1) / 2 : 0;
}

/// Draws codes and orders and says what is to be said. Problem: fewer than two lots to serve, more
/// than 12 with the benchmark counted twice, no taster or more than 12, a taster named twice.
Result<SittingPlan> planSitting(const SittingWish& wish);

} // namespace pipwright
