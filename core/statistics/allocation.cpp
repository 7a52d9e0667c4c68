#include "core/statistics/allocation.h"

#include "core/statistics/refusal.h"

#include <queue>

#include <algorithm>
#include <cmath>
#include <utility>

namespace pipwright {

namespace {

/// What the next graft of a wish would add.
struct Gain {
    double gain = 0;
    std::size_t wish = 0;

    bool operator<(const Gain& other) const {
        return gain != other.gain ? gain < other.gain : wish > other.wish;
    }
};

} // namespace

Result<SharedGrafts> shareOutGrafts(std::span<const WantedTree> wishes, int grafts,
                                    std::optional<int> mostOfEach) {
    if (grafts < 0 || grafts > 1'000'000 || (mostOfEach && *mostOfEach < 0)) {
        return unusable("A number of grafts cannot be negative or beyond a million.",
                        "Give the number you can make.");
    }
    std::priority_queue<Gain> gains;
    SharedGrafts plan;
    plan.grafts.assign(wishes.size(), 0);
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        const WantedTree& wish = wishes[i];
        if (!std::isfinite(wish.worth) || wish.worth < 0 ||
            !(wish.chance >= 0 && wish.chance <= 1)) {
            return unusable("A worth is negative or a chance outside 0 to 1.",
                            "Give each tree a worth and a chance that a graft takes.");
        }
        gains.push({wish.worth * wish.chance, i});
    }
    for (int made = 0; made < grafts && !gains.empty();) {
        const Gain best = gains.top();
        gains.pop();
        if (best.gain <= 0) {
            break;
        }
        if (mostOfEach && plan.grafts[best.wish] >= *mostOfEach) {
            continue;
        }
        ++made;
        ++plan.grafts[best.wish];
        plan.expectedWorth += best.gain;
        gains.push({best.gain * (1 - wishes[best.wish].chance), best.wish});
    }
    return plan;
}

Result<ChosenSet> bestWithinBudget(std::span<const Choice> choices, int budget) {
    const bool negative = std::any_of(choices.begin(), choices.end(), [](const Choice& choice) {
        return !std::isfinite(choice.worth) || choice.worth < 0 || choice.cost < 0;
    });
    if (budget < 0 || negative) {
        return unusable("A worth, a cost or the budget is negative.", "Give 0 or more.");
    }
    const std::size_t width = static_cast<std::size_t>(budget) + 1;
    if (static_cast<double>(width) * static_cast<double>(choices.size()) > 1e8) {
        return unusable("There is too much to choose from.", "Count costs in larger units.");
    }
    std::vector<double> worth(width, 0);
    std::vector<bool> taken(width * choices.size(), false);
    for (std::size_t i = 0; i < choices.size(); ++i) {
        const auto cost = static_cast<std::size_t>(choices[i].cost);
        for (std::size_t left = width; left-- > cost;) {
            const double with = worth[left - cost] + choices[i].worth;
            if (with > worth[left]) {
                worth[left] = with;
                taken[i * width + left] = true;
            }
        }
    }
    ChosenSet set;
    set.worth = worth.back();
    std::size_t left = width - 1;
    for (std::size_t i = choices.size(); i-- > 0;) {
        if (taken[i * width + left]) {
            set.chosen.push_back(i);
            left -= static_cast<std::size_t>(choices[i].cost);
        }
    }
    std::reverse(set.chosen.begin(), set.chosen.end());
    return set;
}

} // namespace pipwright
