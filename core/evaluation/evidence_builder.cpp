#include "core/evaluation/evidence_builder.h"

#include "core/evaluation/fairness.h"
#include "core/evaluation/usual_ripening.h"
#include "core/orchard/dictionary.h"

#include <algorithm>

namespace pipwright {

namespace {

template <typename T>
void lower(std::optional<T>& least, const T& value) {
    if (!least || value < *least) {
        least = value;
    }
}

template <typename T>
void raise(std::optional<T>& most, const T& value) {
    if (!most || value > *most) {
        most = value;
    }
}

int cropYearOf(const std::optional<CropYear>& cropYear, Date date) {
    return cropYear ? cropYear->year : date.year();
}

const TraitId& ripeningTrait() {
    static const TraitId id = shippedTraitId(trait_key::kRipeningState);
    return id;
}

/// The day it was found ripe, by a walk mark or told as the first ripe day; as observedWindow reads
/// it.
std::optional<Date> ripeDayOf(const Observation& observation) {
    static const TraitId firstRipe = shippedTraitId(trait_key::kFirstRipe);
    static const TraitStateId ripe = stateOf(WalkMark::ripe);
    if (observation.trait == firstRipe) {
        return observation.valueDate;
    }
    const bool ripeNow =
        observation.trait == ripeningTrait() && observation.state && *observation.state == ripe;
    return ripeNow ? observation.date : std::nullopt;
}

} // namespace

void EvidenceBuilder::take(const Tasting& tasting) {
    m_tastings[tasting.id.uuid] = tasting.date;
}

void EvidenceBuilder::take(const SealedKey& key) {
    if (!key.opened) {
        m_sealed.insert(key.tasting.uuid);
    }
}

void EvidenceBuilder::take(const Lot& lot) {
    const auto tasting = m_tastings.find(lot.tasting.uuid);
    if (tasting == m_tastings.end() || m_sealed.contains(lot.tasting.uuid)) {
        return;
    }
    std::optional<Index> genotype;
    if (lot.plant) {
        const auto plant = m_view.plant(*lot.plant);
        if (plant) {
            genotype = m_view.plants()[*plant].genotype;
            auto& facts = m_seen[*plant].facts;
            raise(facts.lastVisited, lot.taken.value_or(tasting->second));
            lower(facts.firstFruitYear, cropYearOf(lot.cropYear, tasting->second));
        }
    } else if (lot.claimedGenotype) {
        genotype = m_view.genotype(*lot.claimedGenotype);
    }
    if (!genotype) {
        return;
    }
    const auto at = static_cast<Index>(m_lots.size());
    m_lotAt[lot.id.uuid] = at;
    m_lots.push_back({*genotype, tasting->second, cropYearOf(lot.cropYear, tasting->second),
                      fairnessOf(lot).fair()});
    m_tasted[*genotype].lots.push_back(at);
}

void EvidenceBuilder::take(const Score& score) {
    const auto found = m_lotAt.find(score.lot.uuid);
    if (found == m_lotAt.end() || !score.voidReason.empty()) {
        return;
    }
    TastedLot& lot = m_lots[found->second];
    if (score.liking) {
        lot.scores += 1;
        lot.sum += *score.liking;
    }
    m_tasted[lot.genotype].tasters.insert(std::hash<Uuid>{}(score.taster.uuid));
}

void EvidenceBuilder::ripe(std::unordered_map<int, Date>& firstRipe, int cropYear, Date day) {
    const auto [at, fresh] = firstRipe.try_emplace(cropYear, day);
    if (!fresh && day < at->second) {
        at->second = day;
    }
}

void EvidenceBuilder::sight(Index plant, const Observation& observation) {
    Seen& seen = m_seen[plant];
    if (observation.date) {
        raise(seen.facts.lastVisited, observation.dateTo.value_or(*observation.date));
    }
    static const TraitId noteTrait = shippedTraitId(trait_key::kNote);
    static const TraitId scabTrait = shippedTraitId(trait_key::kScab);
    static const TraitId loadTrait = shippedTraitId(trait_key::kCropLoad);
    if (observation.trait == noteTrait) {
        seen.facts.notes += 1;
    } else if (observation.trait == scabTrait && observation.state) {
        if (const auto* state = m_view.traitState(*observation.state)) {
            raise(seen.facts.worstScab, static_cast<int>(state->rank));
        }
    }
    const auto ripeDay = ripeDayOf(observation);
    const auto day = ripeDay ? ripeDay : observation.date;
    if (!day) {
        return;
    }
    const int year = cropYearOf(observation.cropYear, *day);
    const bool fruit = ripeDay ||
                       (observation.trait == ripeningTrait() && observation.state &&
                        *observation.state == stateOf(WalkMark::ripening)) ||
                       (observation.trait == loadTrait && observation.state &&
                        *observation.state != shippedStateId(trait_key::kCropLoad, "none"));
    if (fruit) {
        lower(seen.facts.firstFruitYear, year);
    }
    if (ripeDay) {
        ripe(seen.firstRipe, year, *ripeDay);
        if (const auto genotype = m_view.plants()[plant].genotype) {
            ripe(m_tasted[*genotype].firstRipe, year, *ripeDay);
        }
    }
}

void EvidenceBuilder::take(const Observation& observation) {
    if (!observation.voidReason.empty()) {
        return;
    }
    if (observation.plant) {
        if (const auto plant = m_view.plant(*observation.plant)) {
            sight(*plant, observation);
        }
    } else if (observation.genotype) {
        const auto genotype = m_view.genotype(*observation.genotype);
        const auto ripeDay = ripeDayOf(observation);
        if (genotype && ripeDay) {
            ripe(m_tasted[*genotype].firstRipe, cropYearOf(observation.cropYear, *ripeDay),
                 *ripeDay);
        }
    }
}

void EvidenceBuilder::take(const Photo& photo) {
    if (!photo.plant || !photo.voidReason.empty()) {
        return;
    }
    if (const auto plant = m_view.plant(*photo.plant)) {
        m_seen[*plant].facts.photos += 1;
    }
}

void EvidenceBuilder::take(const GraftWish& wish) {
    if (wish.state != WishState::open && wish.state != WishState::ordered) {
        return;
    }
    if (const auto genotype = m_view.genotype(wish.genotype)) {
        m_tasted[*genotype].facts.openWishes += static_cast<int>(wish.number);
    }
}

std::optional<int> EvidenceBuilder::usualRipeDay(const std::unordered_map<int, Date>& firstRipe) {
    std::vector<int> days;
    for (const auto& [year, day] : firstRipe) {
        if (const auto one = dayOfCropYear(year, day)) {
            days.push_back(*one);
        }
    }
    return medianDay(std::move(days));
}

std::unordered_map<Index, PlantFacts> EvidenceBuilder::plantFacts() const {
    std::unordered_map<Index, PlantFacts> facts;
    for (const auto& [plant, seen] : m_seen) {
        facts[plant] = seen.facts;
        facts[plant].usualRipeDay = usualRipeDay(seen.firstRipe);
    }
    return facts;
}

std::unordered_map<Index, GenotypeFacts> EvidenceBuilder::genotypeFacts() const {
    std::unordered_map<Index, GenotypeFacts> facts;
    for (const auto& [genotype, tasted] : m_tasted) {
        GenotypeFacts& one = facts[genotype];
        one = tasted.facts;
        one.tasters = static_cast<int>(tasted.tasters.size());
        one.usualRipeDay = usualRipeDay(tasted.firstRipe);
        std::set<int> years;
        double sum = 0;
        for (const Index at : tasted.lots) {
            const TastedLot& lot = m_lots[at];
            one.lots += 1;
            one.fairLots += lot.fair ? 1 : 0;
            years.insert(lot.cropYear);
            if (lot.scores == 0) {
                continue;
            }
            if (!one.lastTasted || lot.date > *one.lastTasted) {
                one.lastTasted = lot.date;
                one.latestScores = 0;
                sum = 0;
            }
            if (lot.date == *one.lastTasted) {
                one.latestScores += lot.scores;
                sum += lot.sum;
            }
        }
        if (one.latestScores > 0) {
            one.latestLiking = sum / one.latestScores;
        }
        one.cropYears = static_cast<int>(years.size());
    }
    for (const auto& [plant, seen] : m_seen) {
        const auto genotype = m_view.plants()[plant].genotype;
        if (genotype && seen.facts.firstFruitYear) {
            lower(facts[*genotype].firstFruitYear, *seen.facts.firstFruitYear);
        }
    }
    return facts;
}

} // namespace pipwright
