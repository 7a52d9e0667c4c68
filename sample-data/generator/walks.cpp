#include <algorithm>

#include "sample-data/generator/observing.h"
#include "sample-data/generator/tasting_table.h"
#include "sample-data/generator/world.h"

namespace pipwright::sample {

namespace {

/// What a walker would note of a tree today; nothing when she would walk on.
WalkMark markFor(const Tree& tree, const Fruiting& fruiting, Date today, bool sure,
                 Chance& chance) {
    const bool seen = tree.markYear == today.year();
    const WalkMark last = seen ? tree.mark : WalkMark::unknown;
    const GoodDays& days = fruiting.days;
    if (last > WalkMark::ripe || (today < days.first && last == WalkMark::ripe)) {
        return last == WalkMark::over && daysBetween(days.last, today) > 8 && chance.happens(0.3)
                   ? WalkMark::gone
                   : WalkMark::unknown;
    }
    if (today < days.first) {
        const int early = daysBetween(today, days.first);
        if (early <= 7 && last < WalkMark::ripening &&
            chance.happens(sure && today.year() == 2026 ? 1.0 : 0.45)) {
            return WalkMark::ripening;
        }
        return early > 7 && early <= 14 && !seen && chance.happens(sure ? 0.5 : 0.25)
                   ? WalkMark::notYet
                   : WalkMark::unknown;
    }
    if (today <= days.last) {
        return last != WalkMark::ripe
                   ? (sure || chance.happens(0.95) ? WalkMark::ripe : WalkMark::unknown)
               : chance.happens(0.1) ? WalkMark::ripe
                                     : WalkMark::unknown;
    }
    if (daysBetween(days.last, today) <= 8) {
        const bool missed = last != WalkMark::ripe && last != WalkMark::over;
        return last < WalkMark::over && chance.happens(missed ? 0.9 : 0.4) ? WalkMark::over
                                                                           : WalkMark::unknown;
    }
    return seen && last < WalkMark::gone && daysBetween(days.last, today) <= 15 &&
                   chance.happens(0.4)
               ? WalkMark::gone
               : WalkMark::unknown;
}

std::string dropFor(const Tree& tree, Chance& chance) {
    if (tree.mark == WalkMark::ripening) {
        return chance.happens(0.15) ? "few" : "";
    }
    if (tree.mark == WalkMark::ripe && chance.happens(0.16)) {
        return chance.oneOf(std::vector<std::string>{"none", "few", "few", "some"});
    }
    return tree.mark == WalkMark::over && chance.happens(0.35) ? "many" : "";
}

std::string fruitCount(CropLoad load) {
    return load == CropLoad::lone ? "One to three fruits." : "A light crop at once.";
}

bool isCopy(const World& world, std::size_t index) {
    const Tree& tree = world.trees[index];
    const Strain& strain = world.strains[tree.strain];
    return strain.own && world.treeOf.at(strain.record.code) != index &&
           world.stands(world.trees[world.treeOf.at(strain.record.code)]);
}

struct Noticed {
    int marks = 0;
    int firsts = 0;
    std::vector<std::size_t> toBite;
};

void passTree(World& world, std::size_t index, Noticed& noticed) {
    Tree& tree = world.trees[index];
    Strain& strain = world.strain(tree);
    const Date today = world.scribe.today();
    if (!world.stands(tree) || strain.stage == Stage::culled) {
        return;
    }
    const Fruiting fruiting = world.fruiting(tree, today.year());
    if (!fruiting.bears || (isCopy(world, index) && tree.markYear == today.year())) {
        return; // of a clone's other copies she notes no more than that they bear
    }
    Chance chance(strain.record.code + std::to_string(index) + " walk " + today.iso());
    const bool firstCrop = strain.own && fruiting.cropNumber == 1;
    const WalkMark mark = markFor(tree, fruiting, today, firstCrop || strain.told, chance);
    if (mark == WalkMark::unknown || (isCopy(world, index) && mark != WalkMark::ripe)) {
        return;
    }
    if (tree.markYear != today.year()) {
        tree.seen = today;
    }
    tree.mark = mark;
    tree.markYear = today.year();
    observeMark(world, tree, mark);
    ++noticed.marks;
    if (const std::string drop = dropFor(tree, chance); !drop.empty()) {
        observeState(world, tree, trait_key::kDrop, drop);
    }
    if (!world.isKnown(tree)) {
        return; // what it is worth can be said once it is known what it is
    }
    if (strain.own && strain.stage < Stage::bearing) {
        world.decide(strain, Stage::bearing, "First fruit. " + fruitCount(fruiting.load));
        ++noticed.firsts;
    }
    const double tempting = mark != WalkMark::ripe ? 0.06 : firstCrop ? 0.45 : 0.03;
    if (mark != WalkMark::notYet && mark != WalkMark::gone && strain.own && !strain.told &&
        chance.happens(tempting)) {
        noticed.toBite.push_back(index);
    }
}

std::string countOf(int count, const std::string& one, const std::string& many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

void biteAlongTheWay(World& world, const Noticed& noticed) {
    auto& scribe = world.scribe;
    scribe.begin("Bites in the row, " + spoken(scribe.today()));
    for (const std::size_t index : noticed.toBite) {
        const Tree& tree = world.trees[index];
        Chance chance(world.strain(tree).record.code + " bite " + scribe.today().iso());
        Sitting sitting;
        sitting.sight = Sight::sighted;
        sitting.place = TastingPlace::row;
        sitting.tasters = {world.annis};
        if (chance.happens(0.12) && world.bodo.id != PersonId{}) {
            sitting.tasters.push_back(chance.happens(0.5) ? world.bodo : world.corra);
        }
        Serving serving;
        serving.strain = tree.strain;
        serving.lot = lotFrom(world, tree, scribe.today(), scribe.today(), chance);
        serving.lot.fruits = 1;
        sitting.servings = {serving};
        hold(world, sitting, chance);
    }
    scribe.finish();
}

void walk(World& world) {
    auto& scribe = world.scribe;
    scribe.begin("");
    Noticed noticed;
    std::vector<std::size_t> order(world.trees.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        order[i] = i;
    }
    std::stable_sort(order.begin(), order.end(), [&world](std::size_t a, std::size_t b) {
        const Tree& left = world.trees[a];
        const Tree& right = world.trees[b];
        return std::pair(left.row, left.place) < std::pair(right.row, right.place);
    });
    for (const std::size_t index : order) {
        passTree(world, index, noticed);
    }
    std::string sentence =
        "Walk of " + spoken(scribe.today()) + ": " + countOf(noticed.marks, "mark", "marks");
    if (noticed.firsts > 0) {
        sentence += ", " + countOf(noticed.firsts, "first fruit", "first fruits");
    }
    scribe.rename(sentence);
    scribe.finish();
    biteAlongTheWay(world, noticed);
}

} // namespace

void tellWalks(World& world) {
    for (int year = 2016; year <= 2026; ++year) {
        Date day = on(year, 7, 9);
        while ((day.days() + 5) % 7 != 0) { // 3 January 1970 was a Saturday
            day = day.plusDays(1);
        }
        const int step = year < 2018 ? 14 : 7;
        for (; day < on(year, 11, 7); day = day.plusDays(step)) {
            world.agenda.add(day, 430, [&world] { walk(world); });
        }
    }
}

} // namespace pipwright::sample
