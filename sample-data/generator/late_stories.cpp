#include "sample-data/generator/observing.h"
#include "sample-data/generator/tasting_table.h"
#include "sample-data/generator/world.h"

namespace pipwright::sample {

namespace {

void identify(World& world, Tree& tree, std::optional<GenotypeId> genotype, IdentityBasis basis,
              Confidence confidence, const std::string& notes) {
    Identity identity;
    identity.plant = tree.record.id;
    identity.genotype = genotype;
    identity.basis = basis;
    identity.confidence = confidence;
    identity.asserted = world.scribe.today();
    identity.confirmed = world.scribe.today();
    identity.person = world.annis.id;
    identity.notes = notes;
    world.identities.push_back(world.scribe.add(identity));
    tree.identity = world.identities.size() - 1;
}

/// Two tags exchanged at planting; the labels buried at the foot tell.
void tellSwappedPair(World& world) {
    world.agenda.add(on(2025, 10, 18), 960, [&world] {
        auto& scribe = world.scribe;
        Tree& first = world.tree("AT18-005");
        Tree& second = world.tree("AT18-006");
        scribe.begin("AT18-005 and AT18-006 exchanged: the tags were swapped at planting");
        identify(world, first, world.strain("AT18-006").record.id, IdentityBasis::tagOnly,
                 Confidence::sure,
                 "Tag says AT18-005, but the label buried at the foot says AT18-006; the same the "
                 "other way round next door. Swapped when they were planted in March 2020.");
        identify(world, second, world.strain("AT18-005").record.id, IdentityBasis::tagOnly,
                 Confidence::sure, "See its neighbour: the buried label says AT18-005.");
        std::swap(first.strain, second.strain);
        std::swap(world.treeOf["AT18-005"], world.treeOf["AT18-006"]);
        Strain& five = world.strain("AT18-005");
        Strain& six = world.strain("AT18-006");
        std::swap(five.truth, six.truth);
        std::swap(five.heard, six.heard);
        scribe.finish();
    });
}

/// Two trees at one stake, and the tag of one gone blind.
void tellTwoAtOneStake(World& world) {
    world.agenda.add(on(2025, 9, 6), 940, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Row C, 3.40 m: one of the two tags cannot be read");
        Tree& northern = world.tree("AT14-032");
        identify(world, northern, world.strain("AT14-032").record.id, IdentityBasis::mapOnly,
                 Confidence::byMap,
                 "Tag faded to white. Two trees stand at this stake; by the planting note this is "
                 "the northern one. Red fruit, the southern one is gold.");
        scribe.edit(northern.record, [](Plant& plant) { plant.tag = "(unreadable)"; });
        Observation place = observationOf(world, trait_key::kNote);
        place.position = world.rows[kRowC].places[3].record.id;
        place.words = "Two trees here. Bring two new tags, and tie them while there is fruit to "
                      "tell the trees apart.";
        scribe.add(place);
        Parentage father;
        father.genotype = world.strain("AT14-032").record.id;
        father.role = ParentRole::pollen;
        father.parent = world.strain("MAR").record.id;
        father.pollination = Pollination::open;
        father.confidence = Confidence::byFruit;
        father.asserted = scribe.today();
        father.evidence = "Stripes and the smell of Marchbell, which stood four trees upwind of "
                          "the mother in 2014.";
        scribe.add(father);
        scribe.finish();
    });
}

Sitting sittingOf23August(World& world) {
    Sitting sitting;
    const Date day = world.scribe.today();
    sitting.title = "Sitting of 23 August 2025";
    sitting.notes = "Fennimore twice, under two codes. Nobody spoke till the sheets were turned.";
    sitting.tasters = {world.annis, world.bodo, world.corra};
    sitting.servings = {
        servingOf(world, "AT15-031", day,
                  {{"AT", {6.0, "Thin after the first bite. Which is this?"}},
                   {"BQ", {7.5, "Very nice."}},
                   {"CV", {6.0, "Too sweet for me."}}}),
        servingOf(
            world, "FEN", day,
            {{"AT", {7.0, "Crisp, clean, Fennimore-like."}}, {"BQ", {7.5, ""}}, {"CV", {6.5, ""}}}),
        servingOf(world, "AT16-014", day,
                  {{"AT", {7.5, "Fine grain, acid and sugar at once, a scent that stays."}},
                   {"BQ", {7.5, "I like it."}},
                   {"CV", {7.0, "Good, a shade sweet."}}}),
        servingOf(world, "AT14-024", day,
                  {{"AT", {5.5, "Honey, soft."}}, {"BQ", {7.0, ""}}, {"CV", {5.0, "Asleep."}}}),
        servingOf(world, "AT15-012", day,
                  {{"AT", {7.5, "Cracks when bitten, bright."}},
                   {"BQ", {8.0, "Is there more?"}},
                   {"CV", {8.0, "Awake at once. Yes."}}}),
        servingOf(
            world, "AT14-032", day,
            {{"AT", {6.0, "Good acid, a thick skin."}}, {"BQ", {7.0, ""}}, {"CV", {6.0, ""}}}),
        servingOf(world, "FEN", day,
                  {{"AT", {6.5, ""}}, {"BQ", {7.5, "Very nice."}}, {"CV", {7.0, ""}}})};
    Serving stored = servingOf(world, "AT17-038", on(2025, 8, 15),
                               {{"AT", {5.5, "Fridge has dulled it."}},
                                {"BQ", {6.5, ""}},
                                {"CV", {4.5, "A turnip with sugar."}}});
    stored.lot.storage = StoragePath::fridge;
    stored.lot.daysInFridge = 8;
    stored.lot.storageTyped = "f8";
    stored.lot.ripeness = Ripeness::latePrime;
    stored.lot.notes = "The tree is empty since the 15th.";
    sitting.servings.push_back(stored);
    return sitting;
}

/// Last August: the thrill of Tuesday, and a plain tree.
void tellLastAugust(World& world) {
    world.agenda.add(on(2024, 8, 17), 1136, [&world] {
        biteInRow(world, "AT16-014", 4.5, "Plain green and starchy. Next.", Verdict::noReasonToKeep,
                  Ripeness::gettingThere);
    });
    world.agenda.add(on(2025, 8, 19), 1085, [&world] {
        biteInRow(world, "AT15-031", 8.5,
                  "Stood still for it. Raspberry, snap, juice to the elbow. The best thing in the "
                  "field; back up at once!",
                  Verdict::backUpNow);
    });
    world.agenda.add(on(2025, 8, 23), 640, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Sitting of 23 August 2025: 8 lots, 3 tasters");
        Chance chance("sitting of 23 August 2025");
        hold(world, sittingOf23August(world), chance);
        scribe.finish();
        scribe.begin("Decisions after the sitting of 23 August 2025");
        world.decide(world.strain("AT15-031"), Stage::watched,
                     "Tuesday's thrill (8.5 in the row, label in view) came fourth blind: AT 6.0, "
                     "BQ 7.5, CV 6.0, behind AT15-012, AT16-014 and Fennimore. Again, a prime pair "
                     "beside Fennimore needed; no wood cut.");
        world.decide(world.strain("AT16-014"), Stage::watched,
                     "Nobody had noticed it. Blind: AT 7.5, BQ 7.5, CV 7.0, half a point from "
                     "AT15-012, the best of the week, and ahead of Fennimore under both codes. Bud "
                     "it today, on two frames.");
        scribe.finish();
    });
    world.agenda.add(on(2026, 1, 10), 1105, [&world] {
        auto& scribe = world.scribe;
        Strain& strain = world.strain("AT16-014");
        scribe.begin("AT16-014 selected as T-6");
        world.decide(strain, Stage::selection,
                     world.evidence(strain, 2025) +
                         ". Both buds alive. A number for it, and a prime pair next August.");
        scribe.edit(strain.record,
                    [](Genotype& genotype) { genotype.kind = GenotypeKind::selection; });
        Alias alias;
        alias.genotype = strain.record.id;
        alias.text = "T-6";
        alias.kind = AliasKind::code;
        alias.since = scribe.today();
        scribe.add(alias);
        scribe.finish();
    });
}

/// A basket from the market, and what it was said to be.
void tellMarketFruit(World& world) {
    world.agenda.add(on(2024, 8, 24), 1020, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Bought fruit said to be Marchbell");
        Sitting sitting;
        sitting.title = "From the market";
        sitting.sight = Sight::sighted;
        sitting.tasters = {world.annis, world.corra};
        Serving bought;
        bought.strain = world.strainOf.at("MAR");
        bought.lot.claimedGenotype = world.strain("MAR").record.id;
        bought.lot.source = "market stall at Nether Vennick, sold as Marchbell";
        bought.lot.cropYear = CropYear{2024};
        bought.lot.fruits = 4;
        bought.lot.notes = "No stripes and a long stalk. The name is the stall's, not ours.";
        bought.said = {{"AT",
                        {4.5, "Green, starch on the tongue. If this is Marchbell, it was picked "
                              "two weeks early; I rather think it is something else."}},
                       {"CV", {6.0, "Sharp, at least."}}};
        sitting.servings = {bought};
        Chance chance("market");
        hold(world, sitting, chance);
        scribe.finish();
    });
    world.agenda.add(on(2024, 8, 25), 1000, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Alias of Marchbell");
        Alias alias;
        alias.genotype = world.strain("MAR").record.id;
        alias.text = "March Belle";
        alias.kind = AliasKind::misspelling;
        alias.notes = "So on the stall's board.";
        scribe.add(alias);
        scribe.finish();
    });
}

/// A mark entered on the wrong tree, voided when it was found.
void tellVoidedMark(World& world) {
    world.agenda.add(on(2025, 8, 30), 1170, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Fire blight entered for AT15-012");
        Observation blight = observationOf(world, trait_key::kFireBlight);
        blight.plant = world.tree("AT15-012").record.id;
        blight.value = 8;
        blight.typed = "8";
        blight.qualifier = Qualifier::exact;
        blight = scribe.add(blight);
        scribe.finish();
        world.agenda.add(on(2025, 8, 31), 600, [&world, blight]() mutable {
            world.scribe.begin("Fire blight of AT15-012 voided");
            world.scribe.edit(blight, [](Observation& wrong) {
                wrong.voidReason = "Looked again in daylight: wind-broken tip, not blight.";
            });
            world.scribe.finish();
        });
    });
}

/// The first pear and the first plum of our own that were asked for again.
void tellPearAndPlum(World& world) {
    world.agenda.add(on(2024, 8, 17), 1135, [&world] {
        biteInRow(world, "AT19-047", 7.0,
                  "Orange peel, clean stone, skin not bitter. Took a bowl home.", Verdict::watch);
    });
    world.agenda.add(on(2025, 8, 16), 1135, [&world] {
        biteInRow(world, "AT19-047", 7.5, "As last year, and more of it. The stone falls out.",
                  Verdict::watch);
    });
    world.agenda.add(on(2025, 8, 31), 1050, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("The first pear of AT18-025, ripened in the room");
        Sitting sitting;
        sitting.title = "AT18-025 and Vicar's Lantern, seven days cold and three in the room";
        sitting.sight = Sight::sighted;
        sitting.tasters = {world.annis, world.bodo, world.corra};
        sitting.servings = {
            servingOf(world, "AT18-025", on(2025, 8, 21),
                      {{"AT", {7.5, "Melting, quince and honey, no grit. Finished to the stalk."}},
                       {"BQ", {8.5, "Wonderful. Is there more?"}},
                       {"CV", {5.5, "Sweet. But I finished it."}}}),
            servingOf(world, "VIC", on(2025, 8, 21),
                      {{"AT", {6.5, "As always; a little grit."}},
                       {"BQ", {7.5, "Very nice."}},
                       {"CV", {5.0, "Asleep."}}})};
        for (Serving& serving : sitting.servings) {
            serving.lot.storage = StoragePath::chained;
            serving.lot.daysInFridge = 7;
            serving.lot.daysOnCounter = 3;
            serving.lot.storageTyped = "f7c3";
            serving.lot.ripeness = Ripeness::prime;
        }
        Chance chance("pear of 2025");
        hold(world, sitting, chance);
        scribe.finish();
    });
    world.agenda.add(on(2026, 1, 10), 1102, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Decision on AT18-025: watched");
        world.decide(world.strain("AT18-025"), Stage::watched,
                     world.evidence(world.strain("AT18-025"), 2025) +
                         ". Ahead of Vicar's Lantern from the same box with all three tasters.");
        scribe.finish();
    });
}

/// What leads up to the morning on which the book stands.
void tellThisWeek(World& world) {
    world.agenda.add(on(2025, 8, 30), 900, [&world] {
        biteInRow(world, "AT17-014", 5.5, "Small, brown, got nothing. Four on the tree; walked on.",
                  Verdict::again, Ripeness::unknown);
    });
    world.agenda.add(on(2026, 8, 17), 1150, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("AT17-038 picked empty");
        Tree& tree = world.tree("AT17-038");
        observeMark(world, tree, WalkMark::gone, "Picked the last six.");
        tree.mark = WalkMark::gone;
        tree.markYear = 2026;
        observeNote(world, tree, "Last six in the fridge since 17 August, for Saturday's sitting.");
        scribe.finish();
    });
    world.agenda.add(on(2026, 8, 18), 1090, [&world] {
        auto& scribe = world.scribe;
        Tree& tree = world.tree("AT19-023");
        if (tree.markYear != 2026 || tree.mark != WalkMark::ripe) {
            scribe.begin("AT19-023 is ripe");
            observeMark(world, tree, WalkMark::ripe);
            tree.mark = WalkMark::ripe;
            tree.markYear = 2026;
            scribe.finish();
        }
        biteInRow(world, "AT19-023", 8.5,
                  "Oh! Sharp and sweet in one, strawberry, snaps like ice. Best bite of the year. "
                  "Must not cut wood before somebody else has tasted it.",
                  Verdict::backUpNow);
    });
    world.agenda.add(on(2026, 8, 21), 1210, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("For tomorrow's walk");
        Observation list = observationOf(world, trait_key::kNote);
        list.site = world.field;
        list.words = "Tomorrow: walk all of C to F, two tags to row C at 3.40 m, drops under "
                     "AT15-012. Bodo and Corra at nine. Lots: AT19-023, AT17-014 (never been on "
                     "the table), AT16-014, AT15-012, AT17-038 from the fridge, both of the stake, "
                     "Fennimore twice.";
        scribe.add(list);
        scribe.finish();
    });
}

} // namespace

void tellLateStories(World& world) {
    tellSwappedPair(world);
    tellTwoAtOneStake(world);
    tellLastAugust(world);
    tellPearAndPlum(world);
    tellMarketFruit(world);
    tellVoidedMark(world);
    tellThisWeek(world);
}

} // namespace pipwright::sample
