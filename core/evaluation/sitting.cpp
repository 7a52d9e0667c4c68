#include "core/evaluation/sitting.h"

#include "core/units/text.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace pipwright {

namespace {

Outcome addTasting(const Store& store, TastingId id, Sitting& sitting) {
    auto tasting = store.get(id);
    if (!tasting) {
        return tasting.problem();
    }
    if (!tasting->has_value()) {
        return {};
    }
    sitting.tastings.push_back(**tasting);
    auto lots = store.where<Lot>("tasting", id.uuid);
    if (!lots) {
        return lots.problem();
    }
    std::stable_sort(lots->begin(), lots->end(), [](const Lot& a, const Lot& b) {
        return a.servingOrder.value_or(0) < b.servingOrder.value_or(0);
    });
    for (Lot& lot : *lots) {
        TastedLot tasted;
        tasted.tasting = **tasting;
        tasted.fairness = fairnessOf(lot);
        auto scores = store.where<Score>("lot", lot.id.uuid);
        if (!scores) {
            return scores.problem();
        }
        for (Score& score : *scores) {
            (score.voidReason.empty() ? tasted.scores : sitting.voidedScores)
                .push_back(std::move(score));
        }
        tasted.lot = std::move(lot);
        sitting.lots.push_back(std::move(tasted));
    }
    return {};
}

std::string nameOf(const OrchardView& view, PersonId id) {
    const Person* person = view.person(id);
    return person == nullptr ? std::string{} : person->name;
}

} // namespace

Result<Sitting> readSitting(const OrchardView& view, const Store& store,
                            std::span<const TastingId> tastings) {
    Sitting sitting;
    for (const TastingId id : tastings) {
        const Outcome outcome = addTasting(store, id, sitting);
        if (!outcome) {
            return outcome.problem();
        }
    }
    for (const TastedLot& lot : sitting.lots) {
        for (const Score& score : lot.scores) {
            if (std::find(sitting.tasters.begin(), sitting.tasters.end(), score.taster) ==
                sitting.tasters.end()) {
                sitting.tasters.push_back(score.taster);
            }
        }
    }
    std::stable_sort(sitting.tasters.begin(), sitting.tasters.end(),
                     [&view](PersonId a, PersonId b) {
                         return naturalOrder(nameOf(view, a), nameOf(view, b)) < 0;
                     });
    return sitting;
}

std::optional<Index> genotypeOf(const OrchardView& view, const Lot& lot) {
    if (lot.plant) {
        const auto plant = view.plant(*lot.plant);
        return plant ? view.plants()[*plant].genotype : std::nullopt;
    }
    return lot.claimedGenotype ? view.genotype(*lot.claimedGenotype) : std::nullopt;
}

std::string fruitName(const OrchardView& view, const Lot& lot) {
    if (lot.plant) {
        if (const auto plant = view.plant(*lot.plant)) {
            return view.plantCode(*plant);
        }
    }
    const auto genotype = genotypeOf(view, lot);
    std::string name = genotype ? view.genotypes()[*genotype].called() : "unknown fruit";
    if (!lot.source.empty()) {
        name += " (" + lot.source + ")";
    }
    return name;
}

std::optional<LotLiking> likingOf(const TastedLot& lot) {
    LotLiking liking;
    double sum = 0;
    for (const Score& score : lot.scores) {
        if (!score.liking) {
            continue;
        }
        liking.low = liking.n == 0 ? *score.liking : std::min(liking.low, *score.liking);
        liking.high = liking.n == 0 ? *score.liking : std::max(liking.high, *score.liking);
        sum += *score.liking;
        ++liking.n;
    }
    if (liking.n == 0) {
        return std::nullopt;
    }
    liking.mean = sum / liking.n;
    return liking;
}

std::optional<TasterSpread> tasterSpread(const Sitting& sitting) {
    TasterSpread spread;
    double squares = 0;
    int freedom = 0;
    std::map<Uuid, std::pair<int, double>> offsets;
    for (const TastedLot& lot : sitting.lots) {
        const auto liking = likingOf(lot);
        if (!liking || liking->n < 2) {
            continue;
        }
        ++spread.lots;
        freedom += liking->n - 1;
        for (const Score& score : lot.scores) {
            if (score.liking) {
                const double off = *score.liking - liking->mean;
                squares += off * off;
                auto& [count, sum] = offsets[score.taster.uuid];
                ++count;
                sum += off;
            }
        }
    }
    if (freedom == 0) {
        return std::nullopt;
    }
    spread.standardDeviation = std::sqrt(squares / freedom);
    for (const PersonId taster : sitting.tasters) {
        const auto found = offsets.find(taster.uuid);
        if (found != offsets.end()) {
            const auto& [count, sum] = found->second;
            spread.levels.push_back({taster, count, sum / count});
        }
    }
    return spread;
}

std::vector<RepeatServing> repeatServings(const OrchardView& view, const Sitting& sitting) {
    std::map<std::pair<Uuid, Index>, std::vector<const TastedLot*>> servings;
    for (const TastedLot& lot : sitting.lots) {
        if (const auto genotype = genotypeOf(view, lot.lot)) {
            servings[{lot.tasting.id.uuid, *genotype}].push_back(&lot);
        }
    }
    std::vector<RepeatServing> repeats;
    for (const auto& [key, lots] : servings) {
        if (lots.size() < 2) {
            continue;
        }
        RepeatServing repeat;
        repeat.name = view.genotypes()[key.second].called();
        repeat.servings = static_cast<int>(lots.size());
        double sum = 0;
        for (std::size_t a = 0; a < lots.size(); ++a) {
            for (std::size_t b = a + 1; b < lots.size(); ++b) {
                for (const Score& one : lots[a]->scores) {
                    for (const Score& other : lots[b]->scores) {
                        if (one.taster == other.taster && one.liking && other.liking) {
                            const double gap = std::abs(*one.liking - *other.liking);
                            sum += gap;
                            ++repeat.pairs;
                            repeat.largestGap = std::max(repeat.largestGap, gap);
                        }
                    }
                }
            }
        }
        repeat.meanGap = repeat.pairs == 0 ? 0 : sum / repeat.pairs;
        repeats.push_back(std::move(repeat));
    }
    return repeats;
}

} // namespace pipwright
