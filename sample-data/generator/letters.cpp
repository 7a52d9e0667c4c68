#include <memory>

#include "sample-data/generator/observing.h"
#include "sample-data/generator/world.h"

namespace pipwright::sample {

namespace {

Parcel parcelTo(World& world, PersonId grower, const std::string& code, int sticks, Date due) {
    Parcel parcel;
    parcel.direction = ParcelDirection::sent;
    parcel.person = grower;
    parcel.genotype = world.strain(code).record.id;
    parcel.motherPlant = world.tree(code).record.id;
    parcel.date = world.scribe.today();
    parcel.sticks = sticks;
    parcel.conditions = "No name given, not passed on, a report in return.";
    parcel.reportDue = due;
    return parcel;
}

/// A letter, and what of it is an observation.
void writeReport(World& world, PersonId grower, const std::string& code, ParcelId parcel,
                 const std::string& words, Date firstRipe, const std::string& remark) {
    auto& scribe = world.scribe;
    Report report;
    report.person = grower;
    report.genotype = world.strain(code).record.id;
    report.parcel = parcel;
    report.received = scribe.today();
    report.words = words;
    report = scribe.add(report);
    Observation ripe = observationOf(world, trait_key::kFirstRipe);
    ripe.genotype = report.genotype;
    ripe.valueDate = firstRipe;
    ripe.person = grower;
    ripe.report = report.id;
    scribe.add(ripe);
    Observation note = observationOf(world, trait_key::kNote);
    note.genotype = report.genotype;
    note.words = remark;
    note.person = grower;
    note.report = report.id;
    scribe.add(note);
}

void tellInes(World& world, std::shared_ptr<Parcel> first) {
    world.agenda.add(on(2021, 2, 13), 1000, [&world, first] {
        world.scribe.begin("Three sticks of AT13-004 to Ines Marrow");
        *first = world.scribe.add(parcelTo(world, world.ines, "AT13-004", 3, on(2024, 9, 1)));
        world.scribe.finish();
    });
    world.agenda.add(on(2024, 9, 30), 1180, [&world, first] {
        world.scribe.begin("Letter of Ines Marrow on AT13-004");
        writeReport(world, world.ines, "AT13-004", first->id,
                    "Your 13-004 gave eleven apples this year, the first on 29 August, three weeks "
                    "before my Lady Vennick. Sweeter than you wrote, less sharp, a little soft "
                    "after a week on the sill. No scab here, but nothing has scab here.",
                    on(2024, 8, 29), "Sweeter and softer in the south; no scab seen.");
        world.scribe.finish();
    });
    world.agenda.add(on(2025, 2, 15), 1010, [&world] {
        world.scribe.begin("Four sticks of AT16-009 to Ines Marrow");
        Parcel parcel = parcelTo(world, world.ines, "AT16-009", 4, on(2026, 9, 1));
        parcel.notes = "She works them high on a bearing tree, so there may be fruit next summer.";
        world.scribe.add(parcel);
        world.scribe.finish();
    });
    world.agenda.add(on(2023, 2, 18), 1010, [&world] {
        world.scribe.begin("Sticks of Odo's Russet from Ines Marrow");
        Parcel parcel;
        parcel.direction = ParcelDirection::received;
        parcel.person = world.ines;
        parcel.genotype = world.strain("ODO").record.id;
        parcel.date = world.scribe.today();
        parcel.sticks = 2;
        parcel.notes = "What she grows under the name. Frame 6, low, to compare with ours.";
        world.scribe.add(parcel);
        world.scribe.finish();
    });
}

void tellTorben(World& world, std::shared_ptr<Parcel> first) {
    world.agenda.add(on(2022, 2, 12), 1000, [&world, first] {
        world.scribe.begin("Three sticks of AT13-004 to Torben Oake");
        *first = world.scribe.add(parcelTo(world, world.torben, "AT13-004", 3, on(2025, 10, 15)));
        world.scribe.finish();
    });
    world.agenda.add(on(2023, 2, 11), 1000, [&world] {
        world.scribe.begin("Two sticks of AT14-003 to Torben Oake");
        world.scribe.add(parcelTo(world, world.torben, "AT14-003", 2, on(2026, 10, 15)));
        world.scribe.finish();
    });
    world.agenda.add(on(2025, 11, 8), 1170, [&world, first] {
        world.scribe.begin("Postcard of Torben Oake on AT13-004");
        writeReport(world, world.torben, "AT13-004", first->id,
                    "13-004: two fruits, picked 14 October before the gale. Sharp, hard, very good "
                    "by St Martin's. Canker on none of the three. More of this, please. T.",
                    on(2025, 10, 14),
                    "Three weeks later than with us; sharp at picking, good a "
                    "month on.");
        world.scribe.finish();
    });
}

} // namespace

void tellLetters(World& world) {
    tellInes(world, std::make_shared<Parcel>());
    tellTorben(world, std::make_shared<Parcel>());
}

} // namespace pipwright::sample
