#include "sample-data/generator/large_book.h"

#include "core/history/digest.h"
#include "core/history/new_book.h"
#include "core/orchard/dictionary.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

#include "sample-data/generator/chance.h"

namespace pipwright::sample {

namespace {

constexpr std::int64_t kFamilySize = 80;
constexpr std::int64_t kRowLength = 500;
constexpr std::int64_t kLotsPerSitting = 40;
constexpr std::int64_t kTastersPerLot = 4;
constexpr std::int64_t kMoment = 1'787'385'600'000; // 22 August 2026, 08:00 UTC

class LargeMaker {
  public:
    LargeMaker(BulkLoad& load, const LargeBook& wanted)
        : m_load(load), m_wanted(wanted), m_chance(wanted.seed),
          m_ids(wanted.seed, [] { return kMoment; }) {}

    Outcome make() {
        for (const Change& change : newBook("Large book for measuring", "", m_ids).changes) {
            keep(recordOf(change));
        }
        people();
        ground();
        families();
        trees();
        sittings();
        if (m_outcome) {
            JournalEntry baseline;
            baseline.position = 1;
            baseline.copy = Uuid::named("large book");
            baseline.moment = kMoment;
            baseline.kind = EntryKind::baseline;
            baseline.sentence = "Made for measuring";
            baseline.digest = m_digest.text();
            m_outcome = m_load.add(baseline);
        }
        return m_outcome;
    }

  private:
    template <typename Thing>
    Thing add(Thing thing) {
        thing.id = Id<Thing>(m_ids.make());
        keep(toRecord(thing));
        return thing;
    }
    void keep(const Record& record) {
        if (m_outcome) {
            m_digest.add(record);
            m_outcome = m_load.add(record);
        }
    }

    void people() {
        for (int i = 0; i < kTastersPerLot; ++i) {
            Person person;
            person.name = "Taster " + std::to_string(i + 1);
            person.initials = "T" + std::to_string(i + 1);
            person.tastes = true;
            m_people.push_back(add(person).id);
        }
    }

    void ground() {
        const std::int64_t rows = (m_wanted.trees + kRowLength - 1) / kRowLength;
        SiteId site;
        for (std::int64_t at = 0; at < rows; ++at) {
            if (at % 50 == 0) {
                Site ground;
                ground.name = "Site " + std::to_string(at / 50 + 1);
                ground.hemisphere = Hemisphere::north;
                ground.timeZone = "Europe/London";
                site = add(ground).id;
            }
            TrialRow row;
            row.site = site;
            row.number = at % 50 + 1;
            row.length = static_cast<double>(kRowLength) * 0.8;
            const TrialRowId id = add(row).id;
            const std::int64_t left = m_wanted.trees - at * kRowLength;
            for (std::int64_t place = 1; place <= std::min(kRowLength, left); ++place) {
                Position position;
                position.row = id;
                position.ordinal = place;
                position.distance = static_cast<double>(place * 8) / 10;
                m_places.push_back(add(position).id);
            }
        }
    }

    void families() {
        std::vector<GenotypeId> parents;
        for (int i = 0; i < 40; ++i) {
            Genotype parent;
            parent.code = "P" + std::to_string(i + 1);
            parent.kind = GenotypeKind::cultivar;
            parent.species = shippedSpeciesId("apple");
            parent.benchmark = i < 16;
            parents.push_back(add(parent).id);
        }
        const std::int64_t count = (m_wanted.trees + kFamilySize - 1) / kFamilySize;
        for (std::int64_t i = 0; i < count; ++i) {
            Cross cross;
            cross.code = "C" + std::to_string(i + 1);
            cross.species = shippedSpeciesId("apple");
            cross.seedParent = m_chance.oneOf(parents);
            cross.pollenParent = m_chance.oneOf(parents);
            cross.pollination = Pollination::controlled;
            cross.purity = Purity::bagged;
            cross.cropYear = yearOf(i);
            cross.planted = kFamilySize;
            m_families.push_back(add(cross));
        }
    }

    static CropYear yearOf(std::int64_t family) {
        return CropYear{2000 + static_cast<int>(family % 20)};
    }

    void trees() {
        for (std::int64_t i = 0; i < m_wanted.trees; ++i) {
            const Cross& family = m_families[static_cast<std::size_t>(i / kFamilySize)];
            Genotype genotype;
            genotype.code = family.code + "-" + std::to_string(i % kFamilySize + 1);
            genotype.kind = GenotypeKind::seedling;
            genotype.species = shippedSpeciesId("apple");
            genotype.cross = family.id;
            const GenotypeId id = add(genotype).id;
            Plant plant;
            plant.kind = PlantKind::ownRoots;
            plant.position = m_places[static_cast<std::size_t>(i)];
            plant.planted = Date::of(family.cropYear->year + 2, 3, 20);
            plant.state = PlantState::growing;
            const PlantId plantId = add(plant).id;
            m_plants.push_back(plantId);
            Identity identity;
            identity.plant = plantId;
            identity.genotype = id;
            identity.basis = IdentityBasis::tagAndMap;
            identity.confidence = Confidence::sure;
            identity.asserted = plant.planted;
            add(identity);
            decideAndMark(id, plantId);
        }
    }

    void decideAndMark(GenotypeId genotype, PlantId plant) {
        constexpr std::array kStages = {Stage::juvenile, Stage::juvenile, Stage::bearing,
                                        Stage::bearing,  Stage::watched,  Stage::culled};
        Decision decision;
        decision.genotype = genotype;
        decision.stage = m_chance.oneOf(kStages);
        decision.date = Date::of(2025, 1, 11).value();
        add(decision);
        Observation mark;
        mark.plant = plant;
        mark.trait = shippedTraitId(trait_key::kRipeningState);
        mark.date = Date::of(2026, 7, 1).value().plusDays(static_cast<int>(m_chance.below(52)));
        mark.cropYear = CropYear{2026};
        mark.state = stateOf(m_chance.happens(0.5) ? WalkMark::notYet : WalkMark::ripening);
        mark.person = m_people.front();
        add(mark);
    }

    void sittings() {
        std::int64_t written = 0;
        std::int64_t lots = 0;
        Tasting tasting;
        while (written < m_wanted.scores && m_outcome && !m_plants.empty()) {
            if (lots % kLotsPerSitting == 0) {
                const int year = 2010 + static_cast<int>(m_chance.below(16));
                tasting = {};
                tasting.date =
                    Date::of(year, 8, 1).value().plusDays(static_cast<int>(m_chance.below(75)));
                tasting.sight = m_chance.happens(0.7) ? Sight::blind : Sight::sighted;
                tasting.place = TastingPlace::table;
                tasting = add(tasting);
            }
            written += lotWithScores(tasting, lots++, m_wanted.scores - written);
        }
    }

    std::int64_t lotWithScores(const Tasting& tasting, std::int64_t at, std::int64_t left) {
        Lot lot;
        lot.tasting = tasting.id;
        // Trees are tasted unevenly, as in life: the square favours the low numbers.
        const double share = m_chance.unit();
        lot.plant = m_plants[static_cast<std::size_t>(share * share *
                                                      static_cast<double>(m_plants.size()))];
        lot.servingOrder = at % kLotsPerSitting + 1;
        lot.cropYear = CropYear{tasting.date.year()};
        lot.taken = tasting.date;
        lot.origin = m_chance.happens(0.8) ? Origin::pickedRipe : Origin::droppedToday;
        lot.soundness = Soundness::sound;
        lot.storage = StoragePath::none;
        lot.ripeness = m_chance.happens(0.7) ? Ripeness::prime : Ripeness::onItsWayOut;
        lot.fruits = 3;
        lot = add(lot);
        const std::int64_t tasters = std::min(kTastersPerLot, left);
        const double liking = 5.8 + m_chance.normal();
        for (std::int64_t i = 0; i < tasters; ++i) {
            Score score;
            score.lot = lot.id;
            score.taster = m_people[static_cast<std::size_t>(i)];
            score.liking =
                std::clamp(std::round((liking + 0.8 * m_chance.normal()) * 2) / 2, 1.0, 9.0);
            add(score);
        }
        return tasters;
    }

    BulkLoad& m_load;
    LargeBook m_wanted;
    Chance m_chance;
    UuidMaker m_ids;
    Digest m_digest;
    Outcome m_outcome;
    std::vector<PersonId> m_people;
    std::vector<PositionId> m_places;
    std::vector<Cross> m_families;
    std::vector<PlantId> m_plants;
};

} // namespace

Outcome makeLargeBook(Store& store, const LargeBook& wanted) {
    auto load = store.beginLoad();
    if (!load) {
        return load.problem();
    }
    LargeMaker maker(**load, wanted);
    if (auto outcome = maker.make(); !outcome) {
        return outcome;
    }
    return (*load)->finish();
}

} // namespace pipwright::sample
