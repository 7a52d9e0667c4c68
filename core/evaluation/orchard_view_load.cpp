#include "core/evaluation/evidence_builder.h"
#include "core/evaluation/view_loader.h"
#include "core/units/text.h"

#include <algorithm>

namespace pipwright {

namespace {

template <typename Thing>
Outcome fill(const Store& store, std::vector<Thing>& list, std::unordered_map<Uuid, Index>& at) {
    auto things = store.all<Thing>();
    if (!things) {
        return things.problem();
    }
    list = std::move(*things);
    for (Index i = 0; i < list.size(); ++i) {
        at[list[i].id.uuid] = i;
    }
    return {};
}

/// Scans a kind as its own type, with only those fields read.
template <typename Thing, typename Take>
Outcome scanAs(const Store& store, std::initializer_list<std::string_view> fields, Take take) {
    return store.scan(KindOf<Thing>::value, onlyFields(KindOf<Thing>::value, fields),
                      [&take](const Record& record) {
                          take(fromRecord<Thing>(record));
                          return true;
                      });
}

/// Runs the steps until one fails.
Outcome inTurn(std::initializer_list<std::function<Outcome()>> steps) {
    for (const auto& step : steps) {
        if (auto outcome = step(); !outcome) {
            return outcome;
        }
    }
    return {};
}

} // namespace

ScanRequest onlyFields(Kind kind, std::initializer_list<std::string_view> names) {
    ScanRequest request;
    for (const auto name : names) {
        if (const auto index = fieldIndex(kind, name)) {
            request.fields.push_back(*index);
        }
    }
    return request;
}

void linkPlant(Chunked<std::vector<Index>>& lists, Index at, Index plant) {
    lists.resize(std::max<std::size_t>(lists.size(), at + 1));
    auto& list = lists.change(at);
    list.insert(std::upper_bound(list.begin(), list.end(), plant), plant);
}

void unlinkPlant(Chunked<std::vector<Index>>& lists, Index at, Index plant) {
    if (at < lists.size()) {
        std::erase(lists.change(at), plant);
    }
}

Outcome ViewLoader::loadPlaces(OrchardView& view) const {
    auto places = std::make_shared<OrchardView::Places>();
    auto outcome = inTurn({[&] { return fill(m_store, places->sites, places->siteAt); },
                           [&] { return fill(m_store, places->rows, places->rowAt); },
                           [&] { return fill(m_store, places->positions, places->positionAt); }});
    if (!outcome) {
        return outcome;
    }
    places->rowsInOrder.resize(places->rows.size());
    for (Index i = 0; i < places->rows.size(); ++i) {
        places->rowsInOrder[i] = i;
    }
    const auto keyOfRow = [&places](Index row) {
        const TrialRow& one = places->rows[row];
        const auto site = places->siteAt.find(one.site.uuid);
        const std::string& siteName =
            site == places->siteAt.end() ? one.name : places->sites[site->second].name;
        return std::make_tuple(foldedForSearch(siteName), one.site.uuid, one.number, one.id.uuid);
    };
    std::sort(places->rowsInOrder.begin(), places->rowsInOrder.end(),
              [&](Index a, Index b) { return keyOfRow(a) < keyOfRow(b); });
    places->positionsOfRow.resize(places->rows.size());
    for (Index i = 0; i < places->positions.size(); ++i) {
        const auto row = places->rowAt.find(places->positions[i].row.uuid);
        if (row != places->rowAt.end()) {
            places->positionsOfRow[row->second].push_back(i);
        }
    }
    for (auto& positions : places->positionsOfRow) {
        std::sort(positions.begin(), positions.end(), [&places](Index a, Index b) {
            const Position& one = places->positions[a];
            const Position& other = places->positions[b];
            return std::tie(one.ordinal, one.distance, one.id.uuid) <
                   std::tie(other.ordinal, other.distance, other.id.uuid);
        });
    }
    view.m_places = std::move(places);
    return {};
}

Outcome ViewLoader::loadWords(OrchardView& view) const {
    auto words = std::make_shared<OrchardView::BookWords>();
    auto outcome = inTurn({
        [&] { return fill(m_store, words->crosses, words->at); },
        [&] { return fill(m_store, words->species, words->at); },
        [&] { return fill(m_store, words->persons, words->at); },
        [&] { return fill(m_store, words->traits, words->at); },
        [&] { return fill(m_store, words->states, words->at); },
        [&] { return fill(m_store, words->aliases, words->at); },
        [&] { return fill(m_store, words->parentages, words->at); },
        [&]() -> Outcome {
            auto facts = m_store.all<BookFacts>();
            if (!facts) {
                return facts.problem();
            }
            if (!facts->empty()) {
                words->facts = facts->front();
            }
            return {};
        },
    });
    if (!outcome) {
        return outcome;
    }
    for (Index i = 0; i < words->parentages.size(); ++i) {
        words->parentagesOf[words->parentages[i].genotype.uuid].push_back(i);
    }
    view.m_words = std::move(words);
    return {};
}

Outcome ViewLoader::loadGenotypes(OrchardView& view) const {
    auto ids = std::make_shared<std::unordered_map<Uuid, Index>>();
    auto outcome = scanAs<Genotype>(
        m_store, {"code", "name", "kind", "species", "cross", "ploidy", "benchmark"},
        [&](const Genotype& genotype) {
            (*ids)[genotype.id.uuid] = static_cast<Index>(view.m_genotypes.size());
            GenotypeEntry entry;
            entry.id = genotype.id;
            entry.code = genotype.code;
            entry.name = genotype.name;
            entry.kind = genotype.kind;
            entry.species = genotype.species;
            entry.cross = genotype.cross;
            entry.ploidy = genotype.ploidy;
            entry.benchmark = genotype.benchmark;
            view.m_genotypes.push_back(std::move(entry));
        });
    view.m_genotypeAt = OrchardView::IdIndex(std::move(ids));
    view.m_plantsOfGenotype.resize(view.m_genotypes.size());
    view.m_genotypeFacts.resize(view.m_genotypes.size());
    return outcome;
}

Outcome ViewLoader::loadPlants(OrchardView& view) const {
    auto ids = std::make_shared<std::unordered_map<Uuid, Index>>();
    view.m_plantsAtPosition.resize(view.m_places->positions.size());
    auto outcome = scanAs<Plant>(
        m_store, {"kind", "tag", "position", "frame", "planted", "state"}, [&](const Plant& plant) {
            const auto at = static_cast<Index>(view.m_plants.size());
            (*ids)[plant.id.uuid] = at;
            PlantEntry entry;
            entry.id = plant.id;
            entry.tag = plant.tag;
            entry.kind = plant.kind;
            entry.state = plant.state;
            entry.frame = plant.frame;
            entry.planted = plant.planted;
            if (plant.position) {
                const auto position = view.m_places->positionAt.find(plant.position->uuid);
                if (position != view.m_places->positionAt.end()) {
                    entry.position = position->second;
                    linkPlant(view.m_plantsAtPosition, position->second, at);
                }
            }
            view.m_plants.push_back(std::move(entry));
        });
    view.m_plantAt = OrchardView::IdIndex(std::move(ids));
    view.m_plantFacts.resize(view.m_plants.size());
    return outcome;
}

Outcome ViewLoader::loadIdentities(OrchardView& view) const {
    auto outcome = scanAs<Identity>(
        m_store,
        {"plant", "genotype", "basis", "confidence", "asserted", "confirmed", "void_reason"},
        [&](const Identity& identity) {
            const auto plant = view.plant(identity.plant);
            if (!plant || !identity.voidReason.empty()) {
                return;
            }
            PlantEntry& entry = view.m_plants.change(*plant);
            // The scan runs in the order of ids, so of two of the same day the later made counts.
            if (entry.identity && identity.asserted < entry.asserted) {
                return;
            }
            entry.identity = identity.id;
            entry.asserted = identity.asserted;
            entry.basis = identity.basis;
            entry.confidence = identity.confidence;
            entry.confirmed = identity.confirmed;
            entry.genotype = identity.genotype ? view.genotype(*identity.genotype) : std::nullopt;
        });
    for (Index plant = 0; plant < view.m_plants.size(); ++plant) {
        if (const auto genotype = view.m_plants[plant].genotype) {
            linkPlant(view.m_plantsOfGenotype, *genotype, plant);
        }
    }
    return outcome;
}

Outcome ViewLoader::loadStages(OrchardView& view) const {
    return scanAs<Decision>(m_store, {"genotype", "stage", "date", "void_reason"},
                            [&](const Decision& decision) {
                                const auto genotype = view.genotype(decision.genotype);
                                if (!genotype || !decision.voidReason.empty()) {
                                    return;
                                }
                                GenotypeEntry& entry = view.m_genotypes.change(*genotype);
                                if (!entry.stageSince || decision.date >= *entry.stageSince) {
                                    entry.stage = decision.stage;
                                    entry.stageSince = decision.date;
                                }
                            });
}

Outcome ViewLoader::loadEvidence(OrchardView& view) const {
    EvidenceBuilder evidence(view);
    const auto into = [&evidence](const auto& thing) { evidence.take(thing); };
    auto outcome = inTurn({
        [&] {
            return scanAs<SealedKey>(m_store, {"tasting", "opened"}, into);
        },
        [&] { return scanAs<Tasting>(m_store, {"date"}, into); },
        [&] {
            return scanAs<Lot>(m_store,
                               {"tasting", "plant", "claimed_genotype", "crop_year", "taken",
                                "origin", "bag", "soundness", "storage", "days_on_counter",
                                "days_in_fridge", "days_in_cellar", "ripeness", "crop_number"},
                               into);
        },
        [&] {
            return scanAs<Score>(m_store, {"lot", "taster", "liking", "void_reason"}, into);
        },
        [&] {
            return scanAs<Observation>(m_store,
                                       {"plant", "genotype", "trait", "date", "date_to",
                                        "crop_year", "state", "value_date", "void_reason"},
                                       into);
        },
        [&] {
            return scanAs<Photo>(m_store, {"plant", "void_reason"}, into);
        },
        [&] {
            return scanAs<GraftWish>(m_store, {"genotype", "number", "state"}, into);
        },
    });
    if (!outcome) {
        return outcome;
    }
    for (auto& [plant, facts] : evidence.plantFacts()) {
        view.m_plantFacts.change(plant) = facts;
    }
    for (auto& [genotype, facts] : evidence.genotypeFacts()) {
        view.m_genotypeFacts.change(genotype) = facts;
    }
    view.m_hasEvidence = true;
    return {};
}

Result<std::shared_ptr<OrchardView>> ViewLoader::load() {
    auto view = std::make_shared<OrchardView>();
    auto outcome =
        inTurn({[&] { return loadPlaces(*view); }, [&] { return loadWords(*view); },
                [&] { return loadGenotypes(*view); }, [&] { return loadPlants(*view); },
                [&] { return loadIdentities(*view); }, [&] { return loadStages(*view); }});
    if (!outcome) {
        return outcome.problem();
    }
    return view;
}

Result<OrchardView::Pointer> OrchardView::load(const Store& store) {
    auto view = ViewLoader(store).load();
    if (!view) {
        return view.problem();
    }
    return Pointer(std::move(*view));
}

Result<OrchardView::Pointer> OrchardView::withEvidence(const Store& store) const {
    auto view = std::make_shared<OrchardView>(*this);
    if (auto outcome = ViewLoader(store).loadEvidence(*view); !outcome) {
        return outcome.problem();
    }
    return Pointer(std::move(view));
}

Result<Pedigree> OrchardView::pedigree() const {
    std::vector<Parents> parents;
    parents.reserve(m_genotypes.size());
    for (Index i = 0; i < m_genotypes.size(); ++i) {
        const ParentsOf of = parentsOf(i);
        Parents one;
        one.seed = of.seed ? std::optional(static_cast<int>(*of.seed)) : std::nullopt;
        one.pollen = of.pollen ? std::optional(static_cast<int>(*of.pollen)) : std::nullopt;
        if (!of.pollen && of.pollination == Pollination::self) {
            one.pollen = one.seed;
        }
        parents.push_back(one);
    }
    return Pedigree::of(parents, [this](int genotype) {
        return m_genotypes[static_cast<std::size_t>(genotype)].called();
    });
}

} // namespace pipwright
