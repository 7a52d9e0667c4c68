#include "core/orchard/dictionary.h"

#include <algorithm>
#include <cmath>

#include "sample-data/generator/figures.h"
#include "sample-data/generator/tables.h"
#include "sample-data/generator/world.h"

namespace pipwright::sample {

namespace {

std::string called(World& world, const std::string& code) {
    return world.strain(code).record.called();
}

std::string pairOf(World& world, const FamilyRow& row) {
    return called(world, row.seedParent) + (row.pollenParent.empty()
                                                ? ", open pollinated"
                                                : " × " + called(world, row.pollenParent));
}

void pollinate(World& world, const FamilyRow& row) {
    auto& scribe = world.scribe;
    scribe.begin("Cross " + row.code + ": " + pairOf(world, row));
    Cross cross;
    cross.code = row.code;
    cross.species = shippedSpeciesId(row.species);
    cross.seedParent = world.strain(row.seedParent).record.id;
    cross.pollination = row.pollenParent.empty() ? Pollination::open : Pollination::controlled;
    if (!row.pollenParent.empty()) {
        cross.pollenParent = world.strain(row.pollenParent).record.id;
        cross.flowers = row.flowers;
    }
    cross.cropYear = CropYear{row.year};
    cross.purity = row.purity;
    cross.notes = row.notes;
    world.crosses[row.code] = scribe.add(cross);
    scribe.finish();
}

void countSeeds(World& world, const FamilyRow& row) {
    world.scribe.begin("Seeds of " + row.code + ": " + std::to_string(row.seeds) + " from " +
                       std::to_string(row.fruits) + " fruits");
    world.scribe.edit(world.crosses.at(row.code), [&row](Cross& cross) {
        cross.fruitsSet = row.fruits;
        cross.seedsGot = row.seeds;
    });
    world.scribe.finish();
}

int yearsToFruit(const std::string& species, Chance& chance) {
    const double mean = species == "pear" ? 6.2 : species == "plum" ? 4.0 : 4.9;
    return std::clamp(static_cast<int>(std::lround(mean + 0.95 * chance.normal())), 3, 9);
}

void applyStory(Strain& strain, int& firstCrop) {
    for (const StoryRow& story : storyTrees()) {
        if (story.code == strain.record.code) {
            strain.told = true;
            strain.truth.liking = story.liking;
            strain.truth.season = story.season;
            strain.truth.window = story.window;
            strain.truth.hue = story.hue;
            strain.truth.sharpness = story.sharpness;
            strain.truth.scab = story.scab;
            firstCrop = story.firstCrop;
        }
    }
}

Strain seedlingOf(World& world, const FamilyRow& row, int number) {
    Strain strain;
    strain.record.code = "AT" + std::to_string(row.year % 100) + "-" + threeDigits(number);
    strain.record.kind = GenotypeKind::seedling;
    strain.record.species = shippedSpeciesId(row.species);
    strain.record.cross = world.crosses.at(row.code).id;
    strain.own = true;
    strain.sown = row.year + 1;
    const Truth& mother = world.strain(row.seedParent).truth;
    Truth stranger = mother;
    stranger.liking = 5.6;
    stranger.season = 255;
    const Truth& father =
        row.pollenParent.empty() ? stranger : world.strain(row.pollenParent).truth;
    strain.truth = childOf(mother, father, Chance("truth of " + strain.record.code));
    return strain;
}

/// The next free place of the field: now and then one that an earlier plant has left.
std::pair<std::size_t, std::size_t> nextPlace(World& world, double reuse, Chance& chance) {
    if (chance.happens(reuse)) {
        for (std::size_t row = kRowB; row <= kRowH; ++row) {
            for (std::size_t at = 0; at < world.rows[row].places.size(); ++at) {
                const Place& place = world.rows[row].places[at];
                if (place.free && daysBetween(*place.free, world.scribe.today()) > 180) {
                    return {row, at};
                }
            }
        }
    }
    for (std::size_t row = kRowB; row <= kRowH; ++row) {
        for (std::size_t at = 0; at < world.rows[row].places.size(); ++at) {
            const Place& place = world.rows[row].places[at];
            if (!place.gap && !place.tree && !place.free) {
                return {row, at};
            }
        }
    }
    return {kRowH, world.rows[kRowH].places.size() - 1};
}

void plantSeedling(World& world, const FamilyRow& row, int number, std::size_t rowAt,
                   std::size_t placeAt) {
    Strain strain = seedlingOf(world, row, number);
    Chance chance("first crop of " + strain.record.code);
    Tree tree;
    tree.firstCrop = strain.sown + yearsToFruit(row.species, chance);
    applyStory(strain, tree.firstCrop);
    tree.strain = world.addStrain(std::move(strain));
    tree.row = rowAt;
    tree.place = placeAt;
    tree.record.kind = PlantKind::ownRoots;
    tree.record.position = world.rows[rowAt].places[placeAt].record.id;
    tree.record.planted = world.scribe.today();
    tree.record.state = PlantState::growing;
    world.addTree(tree, IdentityBasis::tagAndMap);
}

int firstNumber(const FamilyRow& row) {
    int number = 1;
    for (const FamilyRow& other : families()) {
        if (other.code == row.code) {
            break;
        }
        number += other.year == row.year ? other.numbered : 0;
    }
    return number;
}

void enterCounts(World& world, const FamilyRow& row) {
    world.scribe.edit(world.crosses.at(row.code), [&row](Cross& cross) {
        cross.seedsSown = row.seeds;
        cross.germinated = row.germinated;
        cross.planted = row.numbered;
    });
}

void plantFamily(World& world, const FamilyRow& row) {
    auto& scribe = world.scribe;
    const int first = firstNumber(row);
    const std::string years = "AT" + std::to_string(row.year % 100) + "-";
    scribe.begin("Planted " + std::to_string(row.numbered) + " seedlings of " + row.code + ", " +
                 years + threeDigits(first) + " to " + years +
                 threeDigits(first + row.numbered - 1));
    enterCounts(world, row);
    Chance chance("places of " + row.code);
    for (int number = first; number < first + row.numbered; ++number) {
        const bool neighbours = row.code == "18-1" && (number == 5 || number == 6);
        auto [rowAt, placeAt] = nextPlace(world, neighbours ? 0.0 : 0.2, chance);
        if (row.code == "14-2" && (number == 24 || number == 32)) {
            rowAt = kRowC; // both at one stake, see below
            placeAt = 3;
        }
        plantSeedling(world, row, number, rowAt, placeAt);
        world.decide(world.strains.back(), Stage::juvenile, "Planted in the row.");
    }
    scribe.finish();
    if (row.code == "14-2") {
        scribe.begin("Note on AT14-032");
        scribe.edit(world.tree("AT14-032").record, [](Plant& plant) {
            plant.notes = "No hole was left, so it went in beside AT14-024, on the north side of "
                          "the same stake at 3.40 m.";
        });
        scribe.finish();
    }
}

void bedFamily(World& world, const FamilyRow& row) {
    auto& scribe = world.scribe;
    const int first = firstNumber(row);
    scribe.begin("Potted on " + std::to_string(row.numbered) + " seedlings of " + row.code +
                 " into the nursery bed");
    enterCounts(world, row);
    std::size_t place = 0;
    for (int number = first; number < first + row.numbered; ++number) {
        plantSeedling(world, row, number, kNurseryBed, place++);
        world.decide(world.strains.back(), Stage::nursery, "Strong enough to have a number.");
    }
    scribe.finish();
}

Cross laterCross(World& world, const std::string& code, const std::string& mother,
                 const std::string& father, int year, int flowers, Purity purity,
                 const std::string& notes) {
    Cross cross;
    cross.code = code;
    cross.species = world.strain(mother).record.species;
    cross.seedParent = world.strain(mother).record.id;
    cross.pollenParent = world.strain(father).record.id;
    cross.pollination = Pollination::controlled;
    cross.cropYear = CropYear{year};
    cross.purity = purity;
    cross.flowers = flowers;
    cross.notes = notes;
    return cross;
}

void tellBarrenCrosses(World& world) {
    world.agenda.add(on(2021, 4, 30), 1010, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Cross 21-3 failed in the frost");
        Cross cross = laterCross(world, "21-3", "SAL", "AT13-004", 2021, 60, Purity::bagged,
                                 "All 60 flowers brown inside after -3.4 °C on the night to the "
                                 "28th. Nothing set.");
        cross.fruitsSet = 0;
        cross.seedsGot = 0;
        world.crosses["21-3"] = scribe.add(cross);
        scribe.finish();
    });
    world.agenda.add(on(2026, 4, 24), 1020, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Crosses 26-1 and 26-2");
        world.crosses["26-1"] =
            scribe.add(laterCross(world, "26-1", "AT16-014", "AT13-019", 2026, 38, Purity::bagged,
                                  "The plain tree of last August to the late keeper."));
        world.crosses["26-2"] =
            scribe.add(laterCross(world, "26-2", "AT15-012", "AT16-009", 2026, 44,
                                  Purity::emasculatedBagged, "Clean leaves again."));
        scribe.finish();
    });
    world.agenda.add(on(2026, 6, 20), 1100, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Fruits set on 26-1 and 26-2");
        scribe.edit(world.crosses.at("26-1"), [](Cross& cross) { cross.fruitsSet = 8; });
        scribe.edit(world.crosses.at("26-2"), [](Cross& cross) { cross.fruitsSet = 11; });
        scribe.finish();
    });
}

} // namespace

void tellCrosses(World& world) {
    for (const FamilyRow& row : families()) {
        const unsigned day = 22 + static_cast<unsigned>(row.code.back() - '0');
        world.agenda.add(on(row.year, 4, day), 1050, [&world, &row] { pollinate(world, row); });
        world.agenda.add(on(row.year, 11, day), 1100, [&world, &row] { countSeeds(world, row); });
        if (row.year < 2025) {
            world.agenda.add(on(row.year + 2, 3, 18), 960 + row.code.back(),
                             [&world, &row] { plantFamily(world, row); });
        } else {
            world.agenda.add(on(2026, 5, 30), 1000, [&world, &row] { bedFamily(world, row); });
        }
    }
    tellBarrenCrosses(world);
}

} // namespace pipwright::sample
