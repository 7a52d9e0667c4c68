#include "core/evaluation/merit/trait_records.h"

#include "core/evaluation/fairness.h"

#include <algorithm>
#include <map>
#include <unordered_map>
#include <utility>

namespace pipwright {

namespace {

Problem withoutOrder(const std::string& name) {
    return {ProblemCode::badInput, "\"" + name + "\" has no order that could be averaged.",
            "Choose a trait with numbers or with states from low to high.", "trait"};
}

/// The number an observation comes to.
std::optional<double> numberOf(const OrchardView& view, const Trait& trait,
                               const Observation& observation) {
    if (trait.scale == ScaleKind::ordinal) {
        const TraitState* state = observation.state ? view.traitState(*observation.state) : nullptr;
        return state ? std::optional(static_cast<double>(state->rank)) : std::nullopt;
    }
    const bool oneSided = observation.qualifier == Qualifier::lessThan ||
                          observation.qualifier == Qualifier::greaterThan;
    if (!observation.value || oneSided) {
        return std::nullopt;
    }
    return observation.valueTo ? (*observation.value + *observation.valueTo) / 2
                               : *observation.value;
}

/// Lots that were measured, with what they are of.
Result<std::unordered_map<Uuid, Lot>> measuredLots(const Store& store,
                                                   const std::vector<Observation>& observations) {
    std::unordered_map<Uuid, Lot> lots;
    for (const Observation& one : observations) {
        if (!one.lot || lots.contains(one.lot->uuid)) {
            continue;
        }
        auto lot = store.get(*one.lot);
        if (!lot) {
            return lot.problem();
        }
        if (*lot) {
            lots.emplace(one.lot->uuid, std::move(**lot));
        }
    }
    return lots;
}

class ObservedList {
  public:
    ObservedList(const OrchardView& view, const Trait& trait) : m_view(view), m_trait(trait) {
        m_all.trait = trait.id;
    }

    void add(const Observation& observation, const std::unordered_map<Uuid, Lot>& lots,
             std::optional<Date> asOf) {
        const auto value = numberOf(m_view, m_trait, observation);
        const bool late = asOf && observation.date && *asOf < *observation.date;
        if (!value || !observation.voidReason.empty() || late) {
            return;
        }
        TraitRecord record;
        record.value = *value;
        record.fair = true;
        if (!place(observation, lots, record)) {
            ++m_all.leftOut;
            return;
        }
        if (observation.date) {
            record.date = *observation.date;
        }
        record.cropYear = observation.cropYear ? observation.cropYear->year : record.date.year();
        if (observation.person) {
            const auto [at, fresh] = m_persons.try_emplace(
                observation.person->uuid, static_cast<std::int32_t>(m_persons.size()));
            record.person = at->second;
            if (fresh) {
                m_all.persons.push_back(*observation.person);
            }
        }
        record.sitting = m_days
                             .try_emplace({record.date.days(), record.person},
                                          static_cast<std::int32_t>(m_days.size()))
                             .first->second;
        record.source = observation.id.uuid;
        m_all.records.push_back(std::move(record));
    }

    TraitRecords take() {
        m_all.sittings = static_cast<std::int32_t>(m_days.size());
        return std::move(m_all);
    }

  private:
    /// What it was observed on. False when that leads to no genotype.
    bool place(const Observation& observation, const std::unordered_map<Uuid, Lot>& lots,
               TraitRecord& record) {
        std::optional<Index> plant;
        std::optional<Index> genotype;
        if (observation.lot) {
            const auto lot = lots.find(observation.lot->uuid);
            if (lot == lots.end()) {
                return false;
            }
            const auto [at, fresh] =
                m_lots.try_emplace(observation.lot->uuid, static_cast<std::int32_t>(m_lots.size()));
            record.lot = at->second;
            if (fresh) {
                m_all.lots.push_back(*observation.lot);
            }
            const Fairness fairness = fairnessOf(lot->second);
            record.fair = fairness.fair();
            record.unclear = fairness.unclear;
            record.conditions = conditionsOf(lot->second, Sight::unknown, false, std::nullopt);
            if (lot->second.plant) {
                plant = m_view.plant(*lot->second.plant);
            } else if (lot->second.claimedGenotype) {
                genotype = m_view.genotype(*lot->second.claimedGenotype);
            }
        } else if (observation.plant) {
            plant = m_view.plant(*observation.plant);
        } else if (observation.genotype) {
            genotype = m_view.genotype(*observation.genotype);
        }
        if (plant) {
            record.plant = static_cast<std::int32_t>(*plant);
            genotype = m_view.plants()[*plant].genotype;
        }
        if (!genotype) {
            return false;
        }
        record.genotype = *genotype;
        return true;
    }

    const OrchardView& m_view;
    const Trait& m_trait;
    TraitRecords m_all;
    std::unordered_map<Uuid, std::int32_t> m_persons;
    std::unordered_map<Uuid, std::int32_t> m_lots;
    std::map<std::pair<std::int32_t, std::int32_t>, std::int32_t> m_days;
};

} // namespace

bool isOwnSeedling(const GenotypeEntry& genotype) {
    return !genotype.benchmark &&
           (genotype.kind == GenotypeKind::seedling || genotype.kind == GenotypeKind::selection);
}

Result<TraitRecords> observedRecords(const OrchardView& view, const Store& store, TraitId trait,
                                     std::optional<Date> asOf) {
    const Trait* observed = view.trait(trait);
    if (observed == nullptr) {
        return Problem{ProblemCode::notFound, "The book has no such trait.",
                       "Choose one of its traits.", "trait"};
    }
    if (observed->scale != ScaleKind::numeric && observed->scale != ScaleKind::ordinal) {
        return withoutOrder(observed->name);
    }
    auto observations = store.where<Observation>("trait", trait.uuid);
    if (!observations) {
        return observations.problem();
    }
    std::sort(observations->begin(), observations->end(),
              [](const Observation& a, const Observation& b) { return a.id.uuid < b.id.uuid; });
    auto lots = measuredLots(store, *observations);
    if (!lots) {
        return lots.problem();
    }
    ObservedList list(view, *observed);
    for (const Observation& one : *observations) {
        list.add(one, *lots, asOf);
    }
    return list.take();
}

} // namespace pipwright
