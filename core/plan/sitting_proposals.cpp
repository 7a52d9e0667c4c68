#include "core/plan/sitting_proposals.h"

#include "core/evaluation/comparison.h"
#include "core/evaluation/sitting.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <map>

namespace pipwright {

namespace {

constexpr int kFortnight = 14;

LotToServe lotAgain(const OrchardView& view, const Lot& lot, int daysAgo) {
    LotToServe again;
    again.plant = lot.plant;
    again.claimedGenotype = lot.claimedGenotype;
    again.source = lot.source;
    again.name = fruitName(view, lot);
    if (lot.plant) {
        if (const auto plant = view.plant(*lot.plant)) {
            again.hemisphere = view.hemisphereOf(*plant);
        }
    }
    again.condition = conditionOf(lot);
    LotCondition& fruit = again.condition;
    // What was left is taken to lie where it lay last; from the tree it went into the fridge.
    auto& days = fruit.storage == StoragePath::counter  ? fruit.daysOnCounter
                 : fruit.storage == StoragePath::cellar ? fruit.daysInCellar
                                                        : fruit.daysInFridge;
    if (fruit.storage == StoragePath::none || fruit.storage == StoragePath::unknown) {
        fruit.storage = StoragePath::fridge;
    }
    days = days.value_or(0) + daysAgo;
    fruit.storageTyped.clear();
    fruit.fruits.reset();
    return again;
}

} // namespace

std::optional<ProposedBenchmark> proposedBenchmark(const OrchardView& view,
                                                   std::span<const Index> genotypes) {
    struct Nearness {
        int days = 0;
        std::vector<int> later;
    };
    std::map<Index, Nearness> all;
    int withSeason = 0;
    for (const Index genotype : genotypes) {
        const auto near = benchmarksNear(view, genotype);
        const bool known = std::any_of(near.begin(), near.end(),
                                       [](const auto& one) { return one.daysLater.has_value(); });
        withSeason += known ? 1 : 0;
        for (const NearBenchmark& one : near) {
            if (one.isWithinFortnight()) {
                all[one.genotype].days += std::abs(*one.daysLater) - kFortnight;
                all[one.genotype].later.push_back(*one.daysLater);
            }
        }
    }
    std::optional<ProposedBenchmark> best;
    int least = 0;
    for (auto& [genotype, near] : all) {
        if (std::find(genotypes.begin(), genotypes.end(), genotype) != genotypes.end()) {
            continue; // it is on the table already
        }
        if (!best || near.days < least) {
            least = near.days;
            std::sort(near.later.begin(), near.later.end());
            best = ProposedBenchmark{genotype, near.later[near.later.size() / 2]};
        }
    }
    return withSeason == 0 ? std::nullopt : best;
}

Result<std::optional<ProposedRepeat>> proposedRepeat(const OrchardView& view, const Store& store,
                                                     Date date, std::span<const Tasting> sittings,
                                                     std::span<const Index> chosen) {
    for (const Tasting& tasting : sittings) {
        const int daysAgo = date.days() - tasting.date.days();
        if (tasting.place != TastingPlace::table || daysAgo < 1 || daysAgo > kRepeatDays) {
            continue;
        }
        const std::array ids = {tasting.id};
        const auto sitting = readSitting(view, store, ids);
        if (!sitting) {
            return sitting.problem();
        }
        std::vector<std::pair<double, const TastedLot*>> fit;
        int most = 1;
        for (const TastedLot& lot : sitting->lots) {
            const auto liking = likingOf(lot);
            const auto genotype = genotypeOf(view, lot.lot);
            if (!liking || !genotype || isLookOnly(conditionOf(lot.lot)) || liking->n < most ||
                std::find(chosen.begin(), chosen.end(), *genotype) != chosen.end()) {
                continue;
            }
            if (liking->n > most) {
                most = liking->n;
                fit.clear();
            }
            fit.emplace_back(liking->mean, &lot);
        }
        if (fit.empty()) {
            continue;
        }
        std::stable_sort(fit.begin(), fit.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        const Lot& middle = fit[fit.size() / 2].second->lot;
        return std::optional(ProposedRepeat{lotAgain(view, middle, daysAgo), daysAgo});
    }
    return std::optional<ProposedRepeat>{};
}

LotToServe fruitOf(const OrchardView& view, Index genotype) {
    LotToServe lot;
    lot.name = view.genotypes()[genotype].called();
    if (const auto plant = view.plantFor(genotype)) {
        lot.plant = view.plants()[*plant].id;
        lot.hemisphere = view.hemisphereOf(*plant);
    } else {
        lot.claimedGenotype = view.genotypes()[genotype].id;
    }
    return lot;
}

std::string calledBenchmark(const OrchardView& view, const LotToServe& lot) {
    Lot fruit;
    fruit.plant = lot.plant;
    fruit.claimedGenotype = lot.claimedGenotype;
    const auto genotype = genotypeOf(view, fruit);
    return genotype ? view.genotypes()[*genotype].called() : lot.name;
}

PlannedSitting plannedSitting(const SittingPlan& plan, const std::string& title,
                              std::vector<Person> newPersons) {
    PlannedSitting sitting;
    sitting.date = plan.date;
    sitting.title = title;
    sitting.sight = plan.sight;
    sitting.draw = static_cast<std::int64_t>(plan.draw);
    sitting.newPersons = std::move(newPersons);
    for (const Person& taster : plan.tasters) {
        sitting.tasters.push_back(taster.id);
    }
    for (const PlannedServing& serving : plan.lots) {
        sitting.lots.push_back({serving.lot.plant, serving.lot.claimedGenotype, serving.lot.source,
                                serving.lot.hemisphere, serving.lot.condition, serving.code,
                                serving.lot.role == LotRole::repeat ? "served again" : ""});
    }
    sitting.orders = plan.orders.rows;
    return sitting;
}

} // namespace pipwright
