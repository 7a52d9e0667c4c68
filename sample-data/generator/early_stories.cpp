#include "sample-data/generator/observing.h"
#include "sample-data/generator/tasting_table.h"
#include "sample-data/generator/world.h"

namespace pipwright::sample {

namespace {

void decideAlone(World& world, const std::string& code, Stage stage, const std::string& reason) {
    world.scribe.begin("Decision on " + code + ": " + std::string(keyOf(stage)));
    world.decide(world.strain(code), stage, reason);
    world.scribe.finish();
}

/// The reason begins with what the sheets of that season say, where they say anything.
void decideOn(World& world, Date day, const std::string& code, Stage stage, int season,
              const std::string& reason) {
    world.agenda.add(day, 1090, [&world, code, stage, season, reason] {
        const std::string sheets = world.evidence(world.strain(code), season);
        decideAlone(world, code, stage, sheets.empty() ? reason : sheets + ". " + reason);
    });
}

void select(World& world, Date day, const std::string& code, const std::string& number, int season,
            const std::string& reason) {
    world.agenda.add(day, 1095, [&world, code, number, season, reason] {
        auto& scribe = world.scribe;
        Strain& strain = world.strain(code);
        scribe.begin(code + " selected as " + number);
        const std::string sheets = world.evidence(strain, season);
        world.decide(strain, Stage::selection, sheets.empty() ? reason : sheets + ". " + reason);
        scribe.edit(strain.record,
                    [](Genotype& genotype) { genotype.kind = GenotypeKind::selection; });
        Alias alias;
        alias.genotype = strain.record.id;
        alias.text = number;
        alias.kind = AliasKind::code;
        alias.since = scribe.today();
        scribe.add(alias);
        scribe.finish();
    });
}

void christen(World& world, Date day, const std::string& code, const std::string& name,
              const std::string& reason) {
    world.agenda.add(day, 1100, [&world, code, name, reason] {
        auto& scribe = world.scribe;
        Strain& strain = world.strain(code);
        scribe.begin(code + " named " + name);
        world.decide(strain, Stage::named, reason);
        scribe.edit(strain.record, [&name](Genotype& genotype) { genotype.name = name; });
        Alias alias;
        alias.genotype = strain.record.id;
        alias.text = name;
        alias.kind = AliasKind::name;
        alias.since = scribe.today();
        scribe.add(alias);
        scribe.finish();
    });
}

void tellSelections(World& world) {
    using enum Stage;
    decideOn(world, on(2019, 1, 12), "AT13-004", watched, 2018,
             "A first crop like this is luck until it happens twice.");
    select(world, on(2020, 1, 11), "AT13-004", "T-1", 2019,
           "Twice now. Number it and get it onto a frame.");
    decideOn(world, on(2022, 1, 15), "AT13-004", advanced, 2021,
             "Good even in the frost year; on a frame by now, and Ines has wood of it.");
    christen(world, on(2023, 12, 2), "AT13-004", "Wren's Supper",
             "Ten in a bowl were gone before the soup. The wrens had the last one on the tree.");
    decideOn(world, on(2025, 3, 1), "AT13-004", released, 2024,
             "Both growers ask for more wood. It may go to anybody who asks.");
    decideOn(world, on(2020, 1, 11), "AT13-019", watched, 2019,
             "Hard as a stone in October. See what the cellar makes of it.");
    select(world, on(2021, 1, 9), "AT13-019", "T-2", 2020, "The cellar made an apple of it.");
    decideOn(world, on(2023, 1, 14), "AT13-019", advanced, 2022,
             "Keeps as long as Winter Corsair and has more to say.");
    christen(
        world, on(2026, 1, 10), "AT13-019", "Tarrow Late",
        "Five winters in the cellar. Still crisp at the end of March, when Winter Corsair is not.");
    decideOn(world, on(2021, 1, 9), "AT14-003", watched, 2020,
             "The scent of Sallowpit in a better skin.");
    select(world, on(2022, 1, 15), "AT14-003", "T-3", 2021, "Held its taste in a poor year.");
    decideOn(world, on(2025, 1, 11), "AT14-003", advanced, 2024, "On two frames and with Torben.");
    decideOn(world, on(2022, 1, 15), "AT15-012", watched, 2021,
             "Clean leaves in a scab year, and fruit one finishes.");
    select(world, on(2023, 1, 14), "AT15-012", "T-4", 2022,
           "Not a spot of scab since it was planted, and an apple one wants.");
    decideOn(world, on(2022, 1, 15), "AT16-009", watched, 2021,
             "Two fruits, both good to the core. More next year.");
    select(world, on(2024, 1, 13), "AT16-009", "T-5", 2023,
           "Three seasons at the upper end of the sheet.");
    decideOn(world, on(2021, 1, 9), "AT14-007", parent, 2020,
             "Never a spot of scab and hangs till November, but it tastes of wet paper. For its "
             "children.");
    decideOn(world, on(2024, 1, 13), "AT14-024", watched, 2023,
             "Watched with its neighbour at the stake; bring both to the table.");
    decideOn(world, on(2024, 1, 13), "AT14-032", watched, 2023,
             "Watched with its neighbour at the stake; bring both to the table.");
    decideOn(world, on(2026, 1, 10), "AT19-047", watched, 2025,
             "The kitchen asks for it by number.");
}

/// Promising, one tree, no wood cut: and then the snow melted.
void tellVoles(World& world) {
    decideOn(world, on(2022, 1, 15), "AT15-003", Stage::watched, 2021,
             "The clean leaves of the crab and a fruit one finishes. One tree only.");
    world.agenda.add(on(2023, 1, 7), 1110, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Wish: 2 of AT15-003");
        GraftWish wish;
        wish.genotype = world.strain("AT15-003").record.id;
        wish.motherPlant = world.tree("AT15-003").record.id;
        wish.number = 2;
        wish.reason = "Only tree. Cut wood on the next frost-free day.";
        wish.wished = scribe.today();
        wish.person = world.annis.id;
        wish = scribe.add(wish);
        scribe.finish();
        world.agenda.add(on(2023, 2, 4), 1000, [&world, wish]() mutable {
            auto& late = world.scribe;
            late.begin("AT15-003 eaten by voles, the only tree");
            Tree& tree = world.tree("AT15-003");
            observeNote(world, tree,
                        "Snow gone: bark off all round to 30 cm, and the roots with it. The wish "
                        "is four weeks old. Two minutes with the knife would have saved it.");
            world.takeAway(tree, PlantState::dead, "girdled by voles under the snow");
            late.edit(wish, [](GraftWish& gone) {
                gone.state = WishState::dropped;
                gone.notes = "No living wood left.";
            });
            late.finish();
        });
    });
}

/// Mown down, and a limb that nobody remembered.
void tellForgottenLimb(World& world) {
    decideOn(world, on(2020, 1, 11), "AT14-011", Stage::watched, 2019,
             "Roses, and keeps a little.");
    world.agenda.add(on(2021, 11, 6), 950, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("AT14-011 snapped in the gale");
        Tree& tree = world.tree("AT14-011");
        observeNote(world, tree,
                    "Snapped at the ground in the gale of Thursday night; canker "
                    "where it broke. Did I not work it somewhere?");
        world.takeAway(tree, PlantState::dead, "snapped at an old canker in the gale");
        scribe.finish();
    });
    world.agenda.add(on(2025, 10, 4), 900, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("The forgotten limb on frame 3 is AT14-011");
        Tree& limb = world.trees[world.limbs.at(2).at("AT14-011")];
        observeMark(world, limb, WalkMark::ripe);
        observeNote(world, limb,
                    "Blue band, north-north-west, at 1.80 m: a limb as thick as my wrist, full of "
                    "red apples. Worked in April 2020, checked three times, and not looked at "
                    "since. The tree it came from is dead. This is the only copy.");
        Identity identity;
        identity.plant = limb.record.id;
        identity.genotype = world.strain("AT14-011").record.id;
        identity.basis = IdentityBasis::fruit;
        identity.confidence = Confidence::byFruit;
        identity.asserted = scribe.today();
        identity.confirmed = scribe.today();
        identity.person = world.annis.id;
        identity.notes = "Fruit as in the notes of 2019 and 2020, and the band is right.";
        scribe.add(identity);
        limb.firstCrop = 2025;
        scribe.finish();
    });
    world.agenda.add(on(2026, 1, 10), 1150, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Wish: 2 of AT14-011");
        GraftWish wish;
        wish.genotype = world.strain("AT14-011").record.id;
        wish.motherPlant = world.trees[world.limbs.at(2).at("AT14-011")].record.id;
        wish.number = 2;
        wish.reason = "One limb on one frame is all there is. Not to be forgotten twice.";
        wish.wished = scribe.today();
        wish.person = world.annis.id;
        scribe.add(wish);
        scribe.finish();
    });
}

/// A sheet found in a coat three months later.
void tellLateEntry(World& world) {
    world.agenda.add(on(2024, 1, 20), 1185, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Entered late: the sheet of 21 October 2023");
        Sitting sitting;
        sitting.title = "Sheet of 21 October 2023";
        sitting.date = on(2023, 10, 21);
        sitting.sight = Sight::unknown;
        sitting.notes = "Found in the pocket of the old coat. Whether the codes were covered, "
                        "nobody remembers.";
        sitting.tasters = {world.annis, world.corra};
        sitting.servings = {
            servingOf(world, "AT13-019", on(2023, 10, 21),
                      {{"AT", {7.0, "Hard, juicy; will be better at Christmas."}},
                       {"CV", {8.0, "This one answers back."}}}),
            servingOf(world, "COR", on(2023, 10, 21),
                      {{"AT", {6.5, "As every year."}}, {"CV", {6.0, ""}}}),
            servingOf(world, "AT14-003", on(2023, 10, 17),
                      {{"AT", {7.0, "Orange peel. Late for it."}}, {"CV", {7.0, ""}}})};
        sitting.servings.back().lot.storage = StoragePath::counter;
        sitting.servings.back().lot.daysOnCounter = 4;
        Chance chance("late entry");
        hold(world, sitting, chance);
        scribe.finish();
    });
}

/// Slips of the pen, taken back.
void tellSlips(World& world) {
    world.agenda.add(on(2022, 8, 20), 1200, [&world] {
        note(world, "AT14-024", "Water shoots all along the top; summer prune.");
        world.scribe.undo(); // it was the neighbour
        note(world, "AT14-032",
             "Water shoots all along the top; summer prune. (The northern of the two.)");
    });
    world.agenda.add(on(2023, 6, 3), 1210, [&world] {
        note(world, "AT16-009", "Aphids on the leader, brushed off.");
        world.scribe.undo();
        world.scribe.redo(); // it was the right tree after all
    });
    world.agenda.add(on(2025, 1, 11), 1100, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Decision on AT16-014: culled");
        Decision slip;
        slip.genotype = world.strain("AT16-014").record.id;
        slip.stage = Stage::culled;
        slip.date = scribe.today();
        slip.reason = "Small, green, nobody asked for it.";
        slip.person = world.annis.id;
        scribe.add(slip);
        scribe.finish();
        scribe.undo();
        note(world, "AT16-014",
             "Nearly culled on one bite of a green apple. It has never been on "
             "the table; give it that first.");
    });
}

} // namespace

void tellEarlyStories(World& world) {
    tellSelections(world);
    tellVoles(world);
    tellForgottenLimb(world);
    tellLateEntry(world);
    tellSlips(world);
    world.agenda.add(on(2017, 4, 27), 450, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Frost of 27 April 2017");
        Observation frost = observationOf(world, trait_key::kNote);
        frost.site = world.field;
        frost.words = "-3.9 °C at the gate, pink bud to full bloom. Black centres in nine of ten "
                      "flowers below the hedge; the wall is untouched.";
        scribe.add(frost);
        scribe.finish();
    });
    world.agenda.add(on(2021, 9, 4), 1120, [&world] {
        biteInRow(world, "AT14-003", 2.5, "Bitten for the record, green as grass.",
                  Verdict::unknown, Ripeness::green);
    });
    world.agenda.add(on(2023, 10, 21), 1120, [&world] {
        biteInRow(world, "AT13-004", 3.0,
                  "Lifted from the grass a week late: brown wool. It does not hang; pick it.",
                  Verdict::unknown, Ripeness::gone);
    });
    world.agenda.add(on(2019, 5, 12), 1120, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Note on family 16-2");
        Observation weak = observationOf(world, trait_key::kNote);
        weak.cross = world.crosses.at("16-2").id;
        weak.words = "All eight of the triploid's children are weak, two with crinkled leaves.";
        scribe.add(weak);
        scribe.finish();
    });
}

} // namespace pipwright::sample
