#include "core/evaluation/evidence_builder.h"
#include "core/evaluation/view_loader.h"

#include <set>

namespace pipwright {

/// Carries a view over a change set. What the changes touch is read again from the store, which
/// holds them already, so that doing, undoing and redoing cannot differ.
class ViewUpdater {
  public:
    ViewUpdater(OrchardView& view, const Store& store) : m_view(view), m_store(store) {}

    Outcome take(const std::vector<Change>& changes) {
        bool places = false;
        bool words = false;
        for (const Change& change : changes) {
            places = places || isPlace(change.kind);
            words = words || isWord(change.kind);
        }
        ViewLoader loader(m_store);
        if (places) {
            if (auto outcome = loader.loadPlaces(m_view); !outcome) {
                return outcome;
            }
        }
        if (words) {
            if (auto outcome = loader.loadWords(m_view); !outcome) {
                return outcome;
            }
        }
        for (const Change& change : changes) {
            if (auto outcome = note(change); !outcome) {
                return outcome;
            }
        }
        if (places) {
            relinkPlaces();
        }
        return refresh();
    }

  private:
    static bool isPlace(Kind kind) {
        return kind == Kind::site || kind == Kind::trialRow || kind == Kind::position;
    }
    static bool isWord(Kind kind) {
        switch (kind) {
        case Kind::bookFacts:
        case Kind::person:
        case Kind::species:
        case Kind::cross:
        case Kind::alias:
        case Kind::parentage:
        case Kind::trait:
        case Kind::traitState:
            return true;
        default:
            return false;
        }
    }

    /// The references a change holds, before and after: what it touched and what it touches now.
    std::vector<Uuid> references(const Change& change, std::string_view field) const {
        std::vector<Uuid> ids;
        const auto index = fieldIndex(change.kind, field);
        bool listed = false;
        for (const FieldChange& one : change.fields) {
            if (one.field != *index) {
                continue;
            }
            listed = true;
            for (const Value* value : {&one.before, &one.after}) {
                if (const auto* id = std::get_if<Uuid>(value)) {
                    ids.push_back(*id);
                }
            }
        }
        if (!listed) { // unchanged: ask the record
            const auto record = m_store.find(change.kind, change.record);
            if (record && *record) {
                if (const auto* id = std::get_if<Uuid>(&(*record)->values[*index])) {
                    ids.push_back(*id);
                }
            }
        }
        return ids;
    }

    void touchPlants(const Change& change, std::string_view field) {
        for (const Uuid& id : references(change, field)) {
            if (const auto plant = m_view.plant(PlantId(id))) {
                m_evidence.insert(*plant);
                if (const auto genotype = m_view.plants()[*plant].genotype) {
                    m_tasted.insert(*genotype);
                }
            }
        }
    }

    void touchGenotypes(const Change& change, std::string_view field) {
        for (const Uuid& id : references(change, field)) {
            if (const auto genotype = m_view.genotype(GenotypeId(id))) {
                m_tasted.insert(*genotype);
            }
        }
    }

    void touchLot(const Uuid& id) {
        const auto lot = m_store.get(LotId(id));
        if (!lot || !*lot) {
            return;
        }
        if ((*lot)->plant) {
            if (const auto plant = m_view.plant(*(*lot)->plant)) {
                m_evidence.insert(*plant);
                if (const auto genotype = m_view.plants()[*plant].genotype) {
                    m_tasted.insert(*genotype);
                }
            }
        }
        if ((*lot)->claimedGenotype) {
            if (const auto genotype = m_view.genotype(*(*lot)->claimedGenotype)) {
                m_tasted.insert(*genotype);
            }
        }
    }

    Outcome note(const Change& change) {
        switch (change.kind) {
        case Kind::genotype:
            return reread(GenotypeId(change.record));
        case Kind::plant:
            return reread(PlantId(change.record));
        case Kind::identity:
            for (const Uuid& id : references(change, "plant")) {
                m_identities.insert(id);
            }
            return {};
        case Kind::decision:
            for (const Uuid& id : references(change, "genotype")) {
                m_stages.insert(id);
            }
            return {};
        case Kind::observation:
        case Kind::photo:
            touchPlants(change, "plant");
            touchGenotypes(change, "genotype");
            return {};
        case Kind::lot:
            touchPlants(change, "plant");
            touchGenotypes(change, "claimed_genotype");
            return {};
        case Kind::score:
            for (const Uuid& id : references(change, "lot")) {
                touchLot(id);
            }
            return {};
        case Kind::tasting:
            return touchTasting(change.record);
        case Kind::sealedKey:
            for (const Uuid& id : references(change, "tasting")) {
                if (auto outcome = touchTasting(id); !outcome) {
                    return outcome;
                }
            }
            return {};
        case Kind::graftWish:
            touchGenotypes(change, "genotype");
            return {};
        default:
            return {};
        }
    }

    Outcome touchTasting(const Uuid& tasting) {
        const auto lots = m_store.where<Lot>("tasting", tasting);
        if (!lots) {
            return lots.problem();
        }
        for (const Lot& lot : *lots) {
            touchLot(lot.id.uuid);
        }
        return {};
    }

    Outcome reread(GenotypeId id) {
        const auto read = m_store.get(id);
        if (!read) {
            return read.problem();
        }
        auto at = m_view.genotype(id);
        if (!at) {
            at = static_cast<Index>(m_view.m_genotypes.size());
            m_view.m_genotypes.push_back({});
            m_view.m_genotypeAt.add(id.uuid, *at);
            m_view.m_plantsOfGenotype.resize(*at + 1);
            m_view.m_genotypeFacts.resize(*at + 1);
        }
        GenotypeEntry& entry = m_view.m_genotypes.change(*at);
        entry.id = id;
        entry.erased = !read->has_value();
        if (*read) {
            const Genotype& genotype = **read;
            entry.code = genotype.code;
            entry.name = genotype.name;
            entry.kind = genotype.kind;
            entry.species = genotype.species;
            entry.cross = genotype.cross;
            entry.ploidy = genotype.ploidy;
            entry.benchmark = genotype.benchmark;
        }
        m_stages.insert(id.uuid);
        return {};
    }

    Outcome reread(PlantId id) {
        const auto read = m_store.get(id);
        if (!read) {
            return read.problem();
        }
        auto at = m_view.plant(id);
        if (!at) {
            at = static_cast<Index>(m_view.m_plants.size());
            m_view.m_plants.push_back({});
            m_view.m_plantAt.add(id.uuid, *at);
            m_view.m_plantFacts.resize(*at + 1);
        }
        PlantEntry& entry = m_view.m_plants.change(*at);
        if (entry.position) {
            unlinkPlant(m_view.m_plantsAtPosition, *entry.position, *at);
        }
        entry.id = id;
        entry.position.reset();
        entry.erased = !read->has_value();
        if (*read) {
            const Plant& plant = **read;
            entry.tag = plant.tag;
            entry.kind = plant.kind;
            entry.state = plant.state;
            entry.frame = plant.frame;
            entry.planted = plant.planted;
            if (plant.position) {
                const auto position = m_view.m_places->positionAt.find(plant.position->uuid);
                if (position != m_view.m_places->positionAt.end()) {
                    entry.position = position->second;
                    linkPlant(m_view.m_plantsAtPosition, position->second, *at);
                }
            }
        }
        m_identities.insert(id.uuid);
        return {};
    }

    /// Positions were read anew: their places in the list may have moved.
    void relinkPlaces() {
        m_view.m_plantsAtPosition = {};
        m_view.m_plantsAtPosition.resize(m_view.m_places->positions.size());
        for (Index plant = 0; plant < m_view.m_plants.size(); ++plant) {
            const auto read = m_store.get(m_view.m_plants[plant].id);
            if (!read || !*read || !(*read)->position) {
                continue;
            }
            const auto position = m_view.m_places->positionAt.find((*read)->position->uuid);
            if (position != m_view.m_places->positionAt.end()) {
                m_view.m_plants.change(plant).position = position->second;
                linkPlant(m_view.m_plantsAtPosition, position->second, plant);
            }
        }
    }

    Outcome refresh() {
        for (const Uuid& plant : m_identities) {
            if (auto outcome = refreshIdentity(PlantId(plant)); !outcome) {
                return outcome;
            }
        }
        for (const Uuid& genotype : m_stages) {
            if (auto outcome = refreshStage(GenotypeId(genotype)); !outcome) {
                return outcome;
            }
        }
        if (!m_view.m_hasEvidence) {
            return {};
        }
        if (m_tasted.size() + m_evidence.size() > kManyTrees) {
            return ViewLoader(m_store).loadEvidence(resetEvidence());
        }
        for (const Index genotype : m_tasted) {
            for (const Index plant : m_view.plantsOf(genotype)) {
                m_evidence.insert(plant);
            }
        }
        return refreshEvidence();
    }

    OrchardView& resetEvidence() {
        m_view.m_plantFacts = {};
        m_view.m_plantFacts.resize(m_view.m_plants.size());
        m_view.m_genotypeFacts = {};
        m_view.m_genotypeFacts.resize(m_view.m_genotypes.size());
        return m_view;
    }

    Outcome refreshIdentity(PlantId id) {
        const auto at = m_view.plant(id);
        const auto identities = m_store.where<Identity>("plant", id.uuid);
        if (!identities) {
            return identities.problem();
        }
        if (!at) {
            return {};
        }
        PlantEntry& entry = m_view.m_plants.change(*at);
        if (entry.genotype) {
            unlinkPlant(m_view.m_plantsOfGenotype, *entry.genotype, *at);
            m_tasted.insert(*entry.genotype);
        }
        entry.identity.reset();
        entry.genotype.reset();
        entry.asserted.reset();
        entry.confirmed.reset();
        entry.basis = IdentityBasis::unknown;
        entry.confidence = Confidence::unknown;
        for (const Identity& identity : *identities) {
            if (!identity.voidReason.empty() ||
                (entry.identity && identity.asserted < entry.asserted)) {
                continue;
            }
            entry.identity = identity.id;
            entry.asserted = identity.asserted;
            entry.basis = identity.basis;
            entry.confidence = identity.confidence;
            entry.confirmed = identity.confirmed;
            entry.genotype = identity.genotype ? m_view.genotype(*identity.genotype) : std::nullopt;
        }
        if (entry.genotype) {
            linkPlant(m_view.m_plantsOfGenotype, *entry.genotype, *at);
            m_tasted.insert(*entry.genotype);
        }
        m_evidence.insert(*at);
        return {};
    }

    Outcome refreshStage(GenotypeId id) {
        const auto at = m_view.genotype(id);
        const auto decisions = m_store.where<Decision>("genotype", id.uuid);
        if (!decisions) {
            return decisions.problem();
        }
        if (!at) {
            return {};
        }
        GenotypeEntry& entry = m_view.m_genotypes.change(*at);
        entry.stage = Stage::unknown;
        entry.stageSince.reset();
        for (const Decision& decision : *decisions) {
            if (decision.voidReason.empty() &&
                (!entry.stageSince || decision.date >= *entry.stageSince)) {
                entry.stage = decision.stage;
                entry.stageSince = decision.date;
            }
        }
        return {};
    }

    template <typename Thing>
    Outcome gather(EvidenceBuilder& evidence, std::string_view field, const Uuid& id) const {
        const auto things = m_store.where<Thing>(field, id);
        if (!things) {
            return things.problem();
        }
        for (const Thing& thing : *things) {
            if (auto outcome = gatherOne(evidence, thing); !outcome) {
                return outcome;
            }
        }
        return {};
    }

    template <typename Thing>
    Outcome gatherOne(EvidenceBuilder& evidence, const Thing& thing) const {
        if constexpr (std::is_same_v<Thing, Lot>) {
            const auto tasting = m_store.get(thing.tasting);
            if (!tasting) {
                return tasting.problem();
            }
            if (*tasting) {
                evidence.take(**tasting);
            }
            evidence.take(thing);
            return gather<Score>(evidence, "lot", thing.id.uuid);
        } else {
            evidence.take(thing);
            return {};
        }
    }

    Outcome refreshEvidence() {
        EvidenceBuilder evidence(m_view);
        const auto keys = m_store.all<SealedKey>();
        if (!keys) {
            return keys.problem();
        }
        for (const SealedKey& key : *keys) {
            evidence.take(key);
        }
        for (const Index plant : m_evidence) {
            const Uuid id = m_view.plants()[plant].id.uuid;
            for (const auto& outcome :
                 {gather<Lot>(evidence, "plant", id), gather<Observation>(evidence, "plant", id),
                  gather<Photo>(evidence, "plant", id)}) {
                if (!outcome) {
                    return outcome;
                }
            }
        }
        for (const Index genotype : m_tasted) {
            const Uuid id = m_view.genotypes()[genotype].id.uuid;
            for (const auto& outcome : {gather<Lot>(evidence, "claimed_genotype", id),
                                        gather<Observation>(evidence, "genotype", id),
                                        gather<GraftWish>(evidence, "genotype", id)}) {
                if (!outcome) {
                    return outcome;
                }
            }
        }
        auto plantFacts = evidence.plantFacts();
        for (const Index plant : m_evidence) {
            m_view.m_plantFacts.change(plant) = plantFacts[plant];
        }
        auto genotypeFacts = evidence.genotypeFacts();
        for (const Index genotype : m_tasted) {
            m_view.m_genotypeFacts.change(genotype) = genotypeFacts[genotype];
        }
        return {};
    }

    /// From so many trees on, one pass over everything is quicker than asking tree by tree.
    static constexpr std::size_t kManyTrees = 2000;

    OrchardView& m_view;
    const Store& m_store;
    std::set<Uuid> m_identities; ///< plants whose identity to read again
    std::set<Uuid> m_stages;     ///< genotypes whose stage to read again
    std::set<Index> m_evidence;  ///< plants whose facts to gather again
    std::set<Index> m_tasted;    ///< genotypes whose facts to gather again
};

Result<OrchardView::Pointer> OrchardView::after(const std::vector<Change>& changes,
                                                const Store& store) const {
    auto view = std::make_shared<OrchardView>(*this);
    if (auto outcome = ViewUpdater(*view, store).take(changes); !outcome) {
        return outcome.problem();
    }
    return Pointer(std::move(view));
}

} // namespace pipwright
