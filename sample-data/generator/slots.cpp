#include "core/orchard/dictionary.h"

#include "sample-data/generator/world.h"

namespace pipwright::sample {

namespace {

struct SlotRow {
    const char* species;
    const char* name;
    unsigned fromMonth, fromDay, toMonth, toDay;
    const char* floor;
    const char* best;
    const char* famous;
};

constexpr SlotRow kSlots[] = {
    {"apple", "end of July", 7, 20, 7, 31, "PEN", "HAY", ""},
    {"apple", "first apples of August", 8, 1, 8, 12, "HAY", "TAN", ""},
    {"apple", "middle of August", 8, 13, 8, 24, "TAN", "MAR", "MAR"},
    {"apple", "turn of the month", 8, 25, 9, 6, "FEN", "ODO", "FEN"},
    {"apple", "September", 9, 7, 9, 19, "BRA", "ODO", "ODO"},
    {"apple", "end of September", 9, 20, 10, 3, "BRA", "LAD", "LAD"},
    {"apple", "October", 10, 4, 10, 16, "LAD", "SAL", "SAL"},
    {"apple", "last apples", 10, 17, 10, 30, "IRO", "COR", "COR"},
    {"pear", "August pears", 8, 12, 8, 25, "VIC", "VIC", "VIC"},
    {"pear", "autumn pears", 9, 15, 9, 28, "VIC", "ABB", "ABB"},
    {"plum", "plums", 8, 6, 8, 19, "TOL", "TOL", "TOL"},
    {"plum", "late plums", 9, 1, 9, 14, "TOL", "SEX", "SEX"},
};

void elect(World& world, const Slot& slot, Rung rung, const std::string& code,
           const std::string& why) {
    if (code.empty()) {
        return;
    }
    Election election;
    election.slot = slot.id;
    election.rung = rung;
    election.genotype = world.strain(code).record.id;
    election.elected = world.scribe.today();
    election.reason = why;
    world.scribe.add(election);
}

void electAll(World& world, int year) {
    auto& scribe = world.scribe;
    scribe.begin("Ladders of the slots for " + std::to_string(year));
    for (const SlotRow& row : kSlots) {
        Slot slot;
        slot.cropYear = CropYear{year};
        slot.species = shippedSpeciesId(row.species);
        slot.first = on(year, row.fromMonth, row.fromDay);
        slot.last = on(year, row.toMonth, row.toDay);
        slot.name = row.name;
        slot = scribe.add(slot);
        std::string best = row.best;
        std::string why;
        if (year == 2026 && best == "LAD") {
            best = "AT13-004";
            why = "Blind, ahead of Lady Vennick under both codes in 2024 and in 2025, and a week "
                  "earlier.";
            scribe.edit(world.strain(best).record,
                        [](Genotype& genotype) { genotype.benchmark = true; });
        }
        elect(world, slot, Rung::floor, row.floor, "");
        elect(world, slot, Rung::best, best, why);
        elect(world, slot, Rung::famous, row.famous, "");
    }
    scribe.finish();
}

} // namespace

void tellSlots(World& world) {
    for (int year = 2024; year <= 2026; ++year) {
        world.agenda.add(on(year, 1, 11), 1120, [&world, year] { electAll(world, year); });
    }
}

} // namespace pipwright::sample
