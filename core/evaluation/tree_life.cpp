#include "core/evaluation/tree_life.h"

#include <algorithm>
#include <map>
#include <set>

namespace pipwright {

namespace {

/// Reads the parts of a life one after the other and remembers the first problem.
class LifeReader {
  public:
    explicit LifeReader(const Store& store) : m_store(store) {}

    template <typename Thing>
    std::vector<Thing> where(std::string_view field, const Uuid& id) {
        if (m_problem) {
            return {};
        }
        auto things = m_store.where<Thing>(field, id);
        if (!things) {
            m_problem = things.problem();
            return {};
        }
        return std::move(*things);
    }

    template <typename Thing>
    std::optional<Thing> get(Id<Thing> id) {
        if (m_problem) {
            return std::nullopt;
        }
        auto thing = m_store.get(id);
        if (!thing) {
            m_problem = thing.problem();
            return std::nullopt;
        }
        return *thing;
    }

    template <typename Thing>
    void append(std::vector<Thing>& list, std::string_view field, const Uuid& id) {
        for (Thing& thing : where<Thing>(field, id)) {
            list.push_back(std::move(thing));
        }
    }

    /// Whether the tasting is planned and its key not opened yet: nobody shall look into it.
    bool isSealed(TastingId tasting) {
        if (!m_sealed) {
            m_sealed.emplace();
            const auto keys = m_store.all<SealedKey>();
            if (!keys) {
                m_problem = keys.problem();
                return false;
            }
            for (const SealedKey& key : *keys) {
                if (!key.opened) {
                    m_sealed->insert(key.tasting);
                }
            }
        }
        return m_sealed->contains(tasting);
    }

    [[nodiscard]] const std::optional<Problem>& problem() const { return m_problem; }

  private:
    const Store& m_store;
    std::optional<std::set<TastingId>> m_sealed;
    std::optional<Problem> m_problem;
};

template <typename Thing>
void dropVoid(std::vector<Thing>& list) {
    std::erase_if(list, [](const Thing& thing) { return !thing.voidReason.empty(); });
}

void addLots(LifeReader& reader, TreeLife& life, std::string_view field, const Uuid& id) {
    for (Lot& lot : reader.where<Lot>(field, id)) {
        if (reader.isSealed(lot.tasting)) {
            continue;
        }
        TastedLot tasted;
        if (auto tasting = reader.get(lot.tasting)) {
            tasted.tasting = std::move(*tasting);
        }
        tasted.fairness = fairnessOf(lot);
        tasted.scores = reader.where<Score>("lot", lot.id.uuid);
        dropVoid(tasted.scores);
        tasted.intensities = reader.where<Observation>("lot", lot.id.uuid);
        dropVoid(tasted.intensities);
        tasted.lot = std::move(lot);
        life.tastings.push_back(std::move(tasted));
    }
}

void readGenotype(LifeReader& reader, TreeLife& life, const OrchardView& view, Index genotype) {
    const GenotypeId id = view.genotypes()[genotype].id;
    life.genotype = reader.get(id);
    for (const Index plant : view.plantsOf(genotype)) {
        const PlantId plantId = view.plants()[plant].id;
        if (auto one = reader.get(plantId)) {
            life.plantsOfGenotype.push_back(std::move(*one));
        }
        addLots(reader, life, "plant", plantId.uuid);
    }
    addLots(reader, life, "claimed_genotype", id.uuid);
    life.aliases = reader.where<Alias>("genotype", id.uuid);
    life.parentages = reader.where<Parentage>("genotype", id.uuid);
    reader.append(life.observations, "genotype", id.uuid);
    life.decisions = reader.where<Decision>("genotype", id.uuid);
    dropVoid(life.decisions);
    life.wishes = reader.where<GraftWish>("genotype", id.uuid);
    for (GraftOrder& order : reader.where<GraftOrder>("genotype", id.uuid)) {
        GraftedOrder grafted;
        grafted.checks = reader.where<GraftCheck>("graft_order", order.id.uuid);
        grafted.order = std::move(order);
        life.orders.push_back(std::move(grafted));
    }
    reader.append(life.photos, "genotype", id.uuid);
    life.parcels = reader.where<Parcel>("genotype", id.uuid);
    life.reports = reader.where<Report>("genotype", id.uuid);
}

int cropYearOf(const Observation& one) {
    return one.cropYear ? one.cropYear->year : one.date ? one.date->year() : 0;
}

void order(TreeLife& life) {
    dropVoid(life.observations);
    dropVoid(life.photos);
    std::stable_sort(life.observations.begin(), life.observations.end(),
                     [](const auto& a, const auto& b) { return a.date < b.date; });
    std::stable_sort(life.tastings.begin(), life.tastings.end(),
                     [](const auto& a, const auto& b) { return a.tasting.date < b.tasting.date; });
    std::stable_sort(life.decisions.begin(), life.decisions.end(),
                     [](const auto& a, const auto& b) { return a.date < b.date; });
    std::stable_sort(life.identities.begin(), life.identities.end(),
                     [](const auto& a, const auto& b) { return a.asserted < b.asserted; });
    std::map<int, LifeYear> years;
    for (const Observation& one : life.observations) {
        years[cropYearOf(one)].observations.push_back(one);
    }
    for (const TastedLot& one : life.tastings) {
        years[one.cropYear()].tastings.push_back(one);
    }
    for (const Decision& one : life.decisions) {
        years[one.date.year()].decisions.push_back(one);
    }
    for (auto& [year, one] : years) {
        one.cropYear = year;
        one.window = observedWindow(one.observations);
        life.years.push_back(std::move(one));
    }
}

} // namespace

std::optional<double> TastedLot::meanLiking() const {
    double sum = 0;
    int count = 0;
    for (const Score& score : scores) {
        if (score.liking) {
            sum += *score.liking;
            ++count;
        }
    }
    return count == 0 ? std::nullopt : std::optional(sum / count);
}

int TastedLot::cropYear() const {
    return lot.cropYear ? lot.cropYear->year : tasting.date.year();
}

Result<TreeLife> lifeOfPlant(const OrchardView& view, const Store& store, Index plant) {
    LifeReader reader(store);
    TreeLife life;
    const PlantEntry& entry = view.plants()[plant];
    life.plant = reader.get(entry.id);
    life.identities = reader.where<Identity>("plant", entry.id.uuid);
    if (entry.genotype) {
        readGenotype(reader, life, view, *entry.genotype);
    } else {
        addLots(reader, life, "plant", entry.id.uuid);
    }
    reader.append(life.observations, "plant", entry.id.uuid);
    reader.append(life.photos, "plant", entry.id.uuid);
    if (reader.problem()) {
        return *reader.problem();
    }
    order(life);
    return life;
}

Result<TreeLife> lifeOfGenotype(const OrchardView& view, const Store& store, Index genotype) {
    LifeReader reader(store);
    TreeLife life;
    readGenotype(reader, life, view, genotype);
    for (const Index plant : view.plantsOf(genotype)) {
        const Uuid id = view.plants()[plant].id.uuid;
        reader.append(life.observations, "plant", id);
        reader.append(life.photos, "plant", id);
    }
    if (reader.problem()) {
        return *reader.problem();
    }
    order(life);
    return life;
}

} // namespace pipwright
