#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/history/edits.h"
#include "core/history/memory_store.h"
#include "core/history/new_book.h"
#include "core/orchard/dictionary.h"

#include <memory>
#include <stdexcept>
#include <string>

namespace pipwright::test {

/// A small invented orchard to build tests on: one northern site "Ashcroft" with rows as asked
/// for, parents Ash Tarn and Russet Moor, and whatever trees the test plants. Each call is one
/// change set of the store, so undo works as in life. A refused edit throws.
class SmallOrchard {
  public:
    /// Fills the given empty store, or a MemoryStore of its own.
    explicit SmallOrchard(std::unique_ptr<Store> emptyStore = std::make_unique<MemoryStore>())
        : m_store(std::move(emptyStore)) {
        apply(newBook("Ashcroft trials", "M. Thorne", ids));
        ChangeSet set;
        set.sentence = "Site, people, parents and cross";
        site.id = SiteId(ids.make());
        site.name = "Ashcroft";
        site.hemisphere = Hemisphere::north;
        set.create(site);
        taster.id = PersonId(ids.make());
        taster.name = "Mara Thorne";
        taster.initials = "MT";
        taster.tastes = true;
        set.create(taster);
        mother = cultivar("Ash Tarn", set);
        father = cultivar("Russet Moor", set);
        cross.id = CrossId(ids.make());
        cross.code = "AT17";
        cross.species = shippedSpeciesId("apple");
        cross.seedParent = mother.id;
        cross.pollenParent = father.id;
        cross.pollination = Pollination::controlled;
        cross.cropYear = CropYear{2017};
        set.create(cross);
        apply(set);
    }

    Store& store() { return *m_store; }
    std::unique_ptr<Store> takeStore() { return std::move(m_store); }

    JournalEntry apply(const ChangeSet& set) {
        auto entry = m_store->apply(set, {});
        if (!entry) {
            throw std::runtime_error(entry.problem().sentence());
        }
        return *entry;
    }

    TrialRow row(std::int64_t number) {
        TrialRow one;
        one.id = TrialRowId(ids.make());
        one.site = site.id;
        one.number = number;
        one.length = 60.0;
        ChangeSet set;
        set.sentence = "Row " + std::to_string(number);
        set.create(one);
        apply(set);
        return one;
    }

    Position position(const TrialRow& inRow, std::int64_t ordinal) {
        Position one;
        one.id = PositionId(ids.make());
        one.row = inRow.id;
        one.ordinal = ordinal;
        one.distance = 0.3 * static_cast<double>(ordinal);
        ChangeSet set;
        set.sentence = "Position";
        set.create(one);
        apply(set);
        return one;
    }

    /// A growing seedling of the cross at a new position, with a sure identity and a stage.
    EditedTree seedling(const TrialRow& inRow, std::int64_t ordinal, const std::string& code,
                        Stage stage = Stage::juvenile) {
        return seedlingAt(position(inRow, ordinal), code, stage);
    }

    EditedTree seedlingAt(const Position& place, const std::string& code, Stage stage) {
        ChangeSet set;
        set.sentence = "Plant " + code;
        Genotype genotype;
        genotype.id = GenotypeId(ids.make());
        genotype.code = code;
        genotype.kind = GenotypeKind::seedling;
        genotype.species = shippedSpeciesId("apple");
        genotype.cross = cross.id;
        set.create(genotype);
        Plant plant;
        plant.id = PlantId(ids.make());
        plant.kind = PlantKind::ownRoots;
        plant.position = place.id;
        plant.planted = Date::of(2019, 11, 9);
        plant.state = PlantState::growing;
        set.create(plant);
        Identity identity;
        identity.id = IdentityId(ids.make());
        identity.plant = plant.id;
        identity.genotype = genotype.id;
        identity.basis = IdentityBasis::tagAndMap;
        identity.confidence = Confidence::sure;
        identity.asserted = plant.planted;
        set.create(identity);
        Decision decision;
        decision.id = DecisionId(ids.make());
        decision.genotype = genotype.id;
        decision.stage = stage;
        decision.date = *plant.planted;
        decision.reason = "planted out";
        set.create(decision);
        apply(set);
        return {plant.id, genotype.id, code};
    }

    EditContext on(Date day) { return {day, taster.id, site.hemisphere, &ids}; }

    OrchardView::Pointer view() {
        auto loaded = OrchardView::load(*m_store);
        auto full = loaded ? (*loaded)->withEvidence(*m_store) : loaded;
        if (!full) {
            throw std::runtime_error(full.problem().sentence());
        }
        return *full;
    }

    UuidMaker ids{42, [] { return std::int64_t{1'700'000'000'000}; }};
    Site site;
    Person taster;
    Genotype mother;
    Genotype father;
    Cross cross;

  private:
    Genotype cultivar(const std::string& name, ChangeSet& set) {
        Genotype genotype;
        genotype.id = GenotypeId(ids.make());
        genotype.code = name;
        genotype.name = name;
        genotype.kind = GenotypeKind::cultivar;
        genotype.species = shippedSpeciesId("apple");
        genotype.benchmark = true;
        set.create(genotype);
        return genotype;
    }

    std::unique_ptr<Store> m_store;
};

} // namespace pipwright::test
