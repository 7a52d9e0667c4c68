#include <array>
#include <memory>

#include "sample-data/generator/world.h"

namespace pipwright::sample {

namespace {

struct LimbRow {
    int bearing = 0;
    int height = 0;
    int order = 1;
};

/// A wish, the order that answered it, what took, and the limbs it made.
struct GraftRow {
    const char* code;
    Date wished;
    int copies;
    const char* why;
    Date grafted;
    GraftMethod method;
    int number;
    std::size_t frame; ///< place in the frame walk
    std::array<int, 3> alive;
    const char* cause;
    const char* mark;
    std::vector<LimbRow> limbs;
};

const std::vector<GraftRow>& graftRows() {
    using enum GraftMethod;
    static const std::vector<GraftRow> rows = {
        {"AT13-004",
         on(2020, 1, 12),
         2,
         "One tree only, and the best of two seasons.",
         on(2020, 4, 11),
         bark,
         3,
         0,
         {3, 3, 3},
         "",
         "white",
         {{20, 140, 1}, {200, 175, 1}}},
        {"AT14-011",
         on(2020, 1, 12),
         1,
         "In case; there was wood left over.",
         on(2020, 4, 11),
         cleft,
         2,
         2,
         {2, 1, 1},
         "one blown out in June",
         "blue",
         {{340, 180, 2}}},
        {"AT13-019",
         on(2021, 1, 10),
         2,
         "The first of ours that keeps to March.",
         on(2021, 4, 17),
         whipAndTongue,
         3,
         1,
         {3, 3, 2},
         "a bird sat on one",
         "yellow",
         {{80, 120, 1}, {265, 150, 1}}},
        {"AT14-003",
         on(2022, 1, 15),
         3,
         "Selected; wants three.",
         on(2022, 4, 16),
         whipAndTongue,
         4,
         3,
         {4, 4, 3},
         "one dried up in July",
         "red",
         {{10, 110, 1}, {120, 140, 1}, {250, 170, 1}}},
        {"AT15-012",
         on(2023, 1, 14),
         1,
         "Clean leaves, good fruit, one tree.",
         on(2023, 4, 15),
         cleft,
         2,
         5,
         {2, 2, 1},
         "one strangled by its tape",
         "green",
         {{45, 130, 1}}},
        {"AT16-009",
         on(2024, 1, 13),
         2,
         "Selected at the meeting.",
         on(2024, 4, 13),
         bark,
         3,
         4,
         {2, 2, 2},
         "one never pushed",
         "black",
         {{90, 125, 1}, {280, 160, 1}}},
        {"AT16-014",
         on(2025, 8, 23),
         2,
         "The plain tree, half a point from the best of the week, blind. On two frames.",
         on(2025, 8, 23),
         chipBud,
         1,
         0,
         {1, 1, 1},
         "",
         "orange",
         {{110, 95, 2}}},
        {"AT16-014",
         on(2025, 8, 23),
         0,
         "The second of the two frames.",
         on(2025, 8, 23),
         chipBud,
         1,
         5,
         {1, 1, 1},
         "",
         "orange",
         {{300, 105, 1}}},
    };
    return rows;
}

struct Ongoing {
    std::optional<GraftWish> wish;
    GraftOrder order;
};

void order(World& world, const GraftRow& row, Ongoing& going) {
    auto& scribe = world.scribe;
    scribe.begin("Grafted " + std::to_string(row.number) + " of " + row.code + " onto frame " +
                 std::to_string(row.frame + 1));
    GraftOrder graft;
    if (going.wish) {
        graft.wish = going.wish->id;
        scribe.edit(*going.wish, [](GraftWish& wish) { wish.state = WishState::ordered; });
    }
    graft.genotype = world.strain(row.code).record.id;
    graft.motherPlant = world.tree(row.code).record.id;
    graft.method = row.method;
    graft.number = row.number;
    const auto frame = world.rows[kFrameWalk].places[row.frame].tree;
    graft.ontoPlant = world.trees[*frame].record.id;
    graft.date = row.grafted;
    graft.reason = row.why;
    graft.person = world.annis.id;
    going.order = scribe.add(graft);
    scribe.finish();
}

void enterLimbs(World& world, const GraftRow& row) {
    const auto frame = world.rows[kFrameWalk].places[row.frame].tree;
    for (const LimbRow& place : row.limbs) {
        Tree limb;
        limb.strain = world.strainOf.at(row.code);
        limb.firstCrop = std::string_view(row.code) == "AT14-011" ? 9999 : row.grafted.year() + 4;
        limb.record.kind = PlantKind::limb;
        limb.record.frame = world.trees[*frame].record.id;
        limb.record.motherPlant = world.tree(row.code).record.id;
        limb.record.planted = row.grafted;
        limb.record.state = PlantState::growing;
        limb.record.limbBearing = place.bearing;
        limb.record.limbHeight = place.height;
        limb.record.limbOrder = place.order;
        limb.record.limbMark = row.mark;
        limb.row = kFrameWalk;
        limb.place = row.frame;
        const std::size_t index = world.addTree(limb, IdentityBasis::graftRecord);
        world.limbs[static_cast<int>(row.frame)].emplace(row.code, index);
    }
}

void check(World& world, const GraftRow& row, Ongoing& going, std::size_t at) {
    const bool bud = row.method == GraftMethod::chipBud; // buds wait for their first midsummer
    const std::array points = {GraftCheckpoint::fourToSixWeeks,
                               bud ? GraftCheckpoint::leafFall : GraftCheckpoint::midsummer,
                               bud ? GraftCheckpoint::midsummer : GraftCheckpoint::leafFall};
    auto& scribe = world.scribe;
    scribe.begin("Grafts of " + std::string(row.code) + ": " + std::to_string(row.alive[at]) +
                 " of " + std::to_string(row.number) + " alive");
    GraftCheck look;
    look.order = going.order.id;
    look.checkpoint = points[at];
    look.date = scribe.today();
    look.alive = row.alive[at];
    const int before = at == 0 ? row.number : row.alive[at - 1];
    look.cause = row.alive[at] < before ? row.cause : "";
    scribe.add(look);
    if (at == 2) {
        enterLimbs(world, row);
        if (going.wish) {
            scribe.edit(*going.wish, [](GraftWish& wish) { wish.state = WishState::done; });
        }
    }
    scribe.finish();
}

void tellRow(World& world, const GraftRow& row) {
    auto going = std::make_shared<Ongoing>();
    if (row.copies > 0) {
        world.agenda.add(row.wished, 1120, [&world, &row, going] {
            world.scribe.begin("Wish: " + std::to_string(row.copies) + " of " + row.code);
            GraftWish wish;
            wish.genotype = world.strain(row.code).record.id;
            wish.motherPlant = world.tree(row.code).record.id;
            wish.number = row.copies;
            wish.reason = row.why;
            wish.wished = row.wished;
            wish.person = world.annis.id;
            going->wish = world.scribe.add(wish);
            world.scribe.finish();
        });
    }
    const Date grafted = row.grafted;
    world.agenda.add(grafted, 1130, [&world, &row, going] { order(world, row, *going); });
    const bool bud = row.method == GraftMethod::chipBud;
    const int offsets[] = {35, bud ? 84 : 80, bud ? 308 : 210};
    for (std::size_t at = 0; at < 3; ++at) {
        world.agenda.add(grafted.plusDays(offsets[at]), 1000,
                         [&world, &row, going, at] { check(world, row, *going, at); });
    }
}

/// Two trees of the first selection on M.9, budded in 2022 and planted along the south wall.
void tellWallTrees(World& world) {
    world.agenda.add(on(2022, 8, 20), 1150, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Budded two M.9 with AT13-004");
        GraftOrder graft;
        graft.genotype = world.strain("AT13-004").record.id;
        graft.motherPlant = world.tree("AT13-004").record.id;
        graft.method = GraftMethod::chipBud;
        graft.number = 2;
        graft.ontoWords = "two M.9 in the nursery bed";
        graft.date = scribe.today();
        graft.reason = "Trees of its own, away from the field.";
        graft.person = world.annis.id;
        scribe.add(graft);
        scribe.finish();
    });
    world.agenda.add(on(2023, 11, 18), 900, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Two AT13-004 on M.9 to the south wall");
        for (std::size_t place = 0; place < 2; ++place) {
            Tree tree;
            tree.strain = world.strainOf.at("AT13-004");
            tree.row = kSouthWall;
            tree.place = place;
            tree.firstCrop = 2026;
            tree.record.kind = PlantKind::grafted;
            tree.record.position = world.rows[kSouthWall].places[place].record.id;
            tree.record.stock = world.strain("M.9").record.id;
            tree.record.motherPlant = world.tree("AT13-004").record.id;
            tree.record.planted = scribe.today();
            tree.record.state = PlantState::growing;
            world.addTree(tree, IdentityBasis::graftRecord);
        }
        scribe.finish();
    });
}

GraftWish wishFor(World& world, const std::string& code, int copies, const std::string& why) {
    GraftWish wish;
    wish.genotype = world.strain(code).record.id;
    wish.motherPlant = world.tree(code).record.id;
    wish.number = copies;
    wish.reason = why;
    wish.wished = world.scribe.today();
    wish.person = world.annis.id;
    return wish;
}

void tellOpenWishes(World& world) {
    world.agenda.add(on(2026, 1, 10), 1170, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Wishes of the winter meeting");
        scribe.add(
            wishFor(world, "AT15-012", 2, "Two copies, and both on this side of the brook."));
        scribe.add(wishFor(world, "AT18-025", 1, "The first pear of ours that anybody finished."));
        GraftWish keeper = wishFor(world, "AT14-003", 2, "For Torben and for the south wall.");
        keeper.state = WishState::ordered;
        keeper = scribe.add(keeper);
        GraftOrder plan;
        plan.wish = keeper.id;
        plan.genotype = keeper.genotype;
        plan.motherPlant = keeper.motherPlant;
        plan.method = GraftMethod::whipAndTongue;
        plan.number = 3;
        plan.ontoWords = "three M.9, ordered for February";
        plan.season = "winter 2026/27";
        plan.reason = keeper.reason;
        scribe.add(plan);
        scribe.finish();
    });
    world.agenda.add(on(2025, 8, 17), 1150, [&world] {
        auto& scribe = world.scribe;
        scribe.begin("Budded the plum AT19-047");
        GraftOrder graft;
        graft.genotype = world.strain("AT19-047").record.id;
        graft.motherPlant = world.tree("AT19-047").record.id;
        graft.method = GraftMethod::tBud;
        graft.number = 2;
        graft.ontoWords = "two St Julien A by the water butt";
        graft.date = scribe.today();
        graft.reason = "The bowl came back empty from the kitchen, last year and this.";
        graft.person = world.annis.id;
        scribe.add(graft);
        scribe.finish();
    });
}

} // namespace

void tellGrafting(World& world) {
    for (const GraftRow& row : graftRows()) {
        tellRow(world, row);
    }
    tellWallTrees(world);
    tellOpenWishes(world);
}

} // namespace pipwright::sample
