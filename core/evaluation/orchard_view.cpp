#include "core/evaluation/orchard_view.h"

#include "core/units/text.h"

#include <algorithm>
#include <array>
#include <cstdio>

namespace pipwright {

namespace {

template <typename Thing>
const Thing* foundIn(const std::vector<Thing>& list, const std::unordered_map<Uuid, Index>& at,
                     const Uuid& id) {
    const auto found = at.find(id);
    return found == at.end() ? nullptr : &list[found->second];
}

const std::vector<Index>& listAt(const Chunked<std::vector<Index>>& lists, Index at) {
    static const std::vector<Index> none;
    return at < lists.size() ? lists[at] : none;
}

/// The better of two assertions about the same parent: surer first, then newer.
bool isBetter(const Parentage& one, const Parentage& other) {
    const auto sureness = [](Confidence confidence) {
        return confidence == Confidence::sure ? 2 : confidence == Confidence::unknown ? 0 : 1;
    };
    if (sureness(one.confidence) != sureness(other.confidence)) {
        return sureness(one.confidence) > sureness(other.confidence);
    }
    return one.asserted > other.asserted;
}

} // namespace

void OrchardView::IdIndex::add(const Uuid& id, Index at) {
    m_fresh[id] = at;
}

std::optional<Index> OrchardView::IdIndex::find(const Uuid& id) const {
    if (const auto fresh = m_fresh.find(id); fresh != m_fresh.end()) {
        return fresh->second;
    }
    if (m_bulk) {
        if (const auto bulk = m_bulk->find(id); bulk != m_bulk->end()) {
            return bulk->second;
        }
    }
    return std::nullopt;
}

const std::vector<Index>& OrchardView::plantsAt(Index position) const {
    return listAt(m_plantsAtPosition, position);
}

const std::vector<Index>& OrchardView::plantsOf(Index genotype) const {
    return listAt(m_plantsOfGenotype, genotype);
}

std::optional<Index> OrchardView::plant(PlantId id) const {
    return m_plantAt.find(id.uuid);
}

std::optional<Index> OrchardView::genotype(GenotypeId id) const {
    return m_genotypeAt.find(id.uuid);
}

const Cross* OrchardView::cross(CrossId id) const {
    return foundIn(m_words->crosses, m_words->at, id.uuid);
}
const Species* OrchardView::species(SpeciesId id) const {
    return foundIn(m_words->species, m_words->at, id.uuid);
}
const Person* OrchardView::person(PersonId id) const {
    return foundIn(m_words->persons, m_words->at, id.uuid);
}
const Trait* OrchardView::trait(TraitId id) const {
    return foundIn(m_words->traits, m_words->at, id.uuid);
}
const TraitState* OrchardView::traitState(TraitStateId id) const {
    return foundIn(m_words->states, m_words->at, id.uuid);
}

const Trait* OrchardView::traitByKey(std::string_view key) const {
    const auto found = std::find_if(m_words->traits.begin(), m_words->traits.end(),
                                    [key](const Trait& trait) { return trait.key == key; });
    return found == m_words->traits.end() ? nullptr : &*found;
}

std::vector<const TraitState*> OrchardView::statesOf(TraitId id) const {
    std::vector<const TraitState*> states;
    for (const TraitState& state : m_words->states) {
        if (state.trait == id) {
            states.push_back(&state);
        }
    }
    std::sort(states.begin(), states.end(),
              [](const TraitState* a, const TraitState* b) { return a->rank < b->rank; });
    return states;
}

std::optional<Index> OrchardView::genotypeCalled(std::string_view text) const {
    const std::string wanted = foldedForSearch(text);
    if (wanted.empty()) {
        return std::nullopt;
    }
    for (Index i = 0; i < m_genotypes.size(); ++i) {
        const GenotypeEntry& entry = m_genotypes[i];
        if (!entry.erased && (foldedForSearch(entry.code) == wanted ||
                              (!entry.name.empty() && foldedForSearch(entry.name) == wanted))) {
            return i;
        }
    }
    for (const Alias& alias : m_words->aliases) {
        if (foldedForSearch(alias.text) == wanted) {
            return genotype(alias.genotype);
        }
    }
    return std::nullopt;
}

std::optional<Place> OrchardView::placeOf(Index plant) const {
    const auto position = m_plants[plant].position;
    if (!position) {
        return std::nullopt;
    }
    const auto row = m_places->rowAt.find(m_places->positions[*position].row.uuid);
    if (row == m_places->rowAt.end()) {
        return std::nullopt;
    }
    const auto site = m_places->siteAt.find(m_places->rows[row->second].site.uuid);
    if (site == m_places->siteAt.end()) {
        return std::nullopt;
    }
    return Place{site->second, row->second, *position};
}

std::string OrchardView::rowName(Index row) const {
    const TrialRow& one = m_places->rows[row];
    return one.name.empty() ? std::to_string(one.number) : one.name;
}

std::string OrchardView::placeText(Index plant, bool withDistance) const {
    const auto place = placeOf(plant);
    if (!place) {
        const auto frame = m_plants[plant].frame;
        const auto carrier = frame ? this->plant(*frame) : std::nullopt;
        return carrier && *carrier != plant ? placeText(*carrier, withDistance) : std::string{};
    }
    const Position& position = m_places->positions[place->position];
    std::string text = rowName(place->row) + "/" + std::to_string(position.ordinal);
    if (withDistance && position.distance) {
        std::array<char, 32> metres{};
        const int length =
            std::snprintf(metres.data(), metres.size(), " · %.2f m", *position.distance);
        text.append(metres.data(), static_cast<std::size_t>(length));
    }
    return text;
}

std::string OrchardView::plantCode(Index plant) const {
    const PlantEntry& entry = m_plants[plant];
    if (entry.genotype) {
        const GenotypeEntry& genotype = m_genotypes[*entry.genotype];
        return genotype.code.empty() ? genotype.name : genotype.code;
    }
    return entry.tag.empty() ? "unknown" : entry.tag;
}

ParentsOf OrchardView::parentsOf(Index genotype) const {
    const GenotypeEntry& entry = m_genotypes[genotype];
    ParentsOf parents;
    if (const Cross* made = entry.cross ? cross(*entry.cross) : nullptr) {
        parents.seed = made->seedParent ? this->genotype(*made->seedParent) : std::nullopt;
        parents.pollen = made->pollenParent ? this->genotype(*made->pollenParent) : std::nullopt;
        parents.pollination = made->pollination;
    }
    const auto asserted = m_words->parentagesOf.find(entry.id.uuid);
    if (asserted == m_words->parentagesOf.end()) {
        return parents;
    }
    const Parentage* seed = nullptr;
    const Parentage* pollen = nullptr;
    for (const Index at : asserted->second) {
        const Parentage& one = m_words->parentages[at];
        const Parentage*& best = one.role == ParentRole::seed ? seed : pollen;
        if (one.voidReason.empty() && one.role != ParentRole::unknown &&
            (best == nullptr || isBetter(one, *best))) {
            best = &one;
        }
    }
    if (seed != nullptr) {
        parents.seed = seed->parent ? this->genotype(*seed->parent) : std::nullopt;
        parents.asserted = true;
    }
    if (pollen != nullptr) {
        parents.pollen = pollen->parent ? this->genotype(*pollen->parent) : std::nullopt;
        parents.pollination = pollen->pollination;
        parents.asserted = true;
    }
    return parents;
}

std::string OrchardView::crossText(Index genotype) const {
    const ParentsOf parents = parentsOf(genotype);
    if (!parents.seed && !parents.pollen && parents.pollination == Pollination::unknown) {
        return {};
    }
    const auto nameOf = [this](std::optional<Index> parent) {
        return parent ? m_genotypes[*parent].called() : std::string("?");
    };
    std::string father = nameOf(parents.pollen);
    if (!parents.pollen && parents.pollination == Pollination::open) {
        father = "open";
    } else if (!parents.pollen && parents.pollination == Pollination::self) {
        father = "self";
    }
    return nameOf(parents.seed) + " x " + father;
}

std::optional<Index> OrchardView::plantFor(Index genotype) const {
    std::optional<Index> best;
    const auto worth = [this](Index plant) {
        const PlantEntry& entry = m_plants[plant];
        return (entry.state == PlantState::growing ? 4 : 0) + (entry.position ? 2 : 0) +
               (entry.kind == PlantKind::ownRoots ? 1 : 0);
    };
    for (const Index plant : plantsOf(genotype)) {
        if (!best || worth(plant) > worth(*best)) {
            best = plant;
        }
    }
    return best;
}

Hemisphere OrchardView::hemisphereOf(Index plant) const {
    const auto place = placeOf(plant);
    return place ? m_places->sites[place->site].hemisphere : Hemisphere::unknown;
}

const GenotypeFacts& OrchardView::factsOfPlant(Index plant) const {
    static const GenotypeFacts none;
    const auto genotype = m_plants[plant].genotype;
    return genotype ? m_genotypeFacts[*genotype] : none;
}

Result<std::vector<std::optional<double>>> traitColumn(const OrchardView& view, const Store& store,
                                                       TraitId trait) {
    struct Latest {
        Date date;
        double value = 0;
    };
    std::vector<std::optional<Latest>> latest(view.plants().size());
    const auto keep = [&latest](Index plant, Date date, double value) {
        if (!latest[plant] || latest[plant]->date <= date) {
            latest[plant] = Latest{date, value};
        }
    };
    const auto observations = store.where<Observation>("trait", trait.uuid);
    if (!observations) {
        return observations.problem();
    }
    for (const Observation& one : *observations) {
        std::optional<double> value = one.value;
        if (one.state) {
            const TraitState* state = view.traitState(*one.state);
            value = state != nullptr ? std::optional(static_cast<double>(state->rank)) : value;
        } else if (value && one.valueTo && one.qualifier == Qualifier::range) {
            value = (*value + *one.valueTo) / 2;
        }
        if (!value || !one.voidReason.empty()) {
            continue;
        }
        const Date date = one.date.value_or(Date{});
        if (const auto plant = one.plant ? view.plant(*one.plant) : std::nullopt) {
            keep(*plant, date, *value);
        } else if (const auto genotype =
                       one.genotype ? view.genotype(*one.genotype) : std::nullopt) {
            for (const Index each : view.plantsOf(*genotype)) {
                keep(each, date, *value);
            }
        }
    }
    std::vector<std::optional<double>> column(latest.size());
    std::transform(latest.begin(), latest.end(), column.begin(),
                   [](const auto& one) { return one ? std::optional(one->value) : std::nullopt; });
    return column;
}

} // namespace pipwright
