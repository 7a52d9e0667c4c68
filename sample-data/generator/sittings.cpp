#include "core/orchard/dictionary.h"

#include <algorithm>

#include "sample-data/generator/tasting_table.h"

namespace pipwright::sample {

namespace {

/// Told trees that nobody thought of bringing to the table before this day.
bool overlooked(const std::string& code, Date day) {
    static const std::map<std::string, Date> until = {
        {"AT17-014", on(2030, 1, 1)},  {"AT19-023", on(2030, 1, 1)},  {"AT17-038", on(2030, 1, 1)},
        {"AT16-014", on(2025, 8, 24)}, {"AT15-031", on(2025, 8, 24)}, {"AT14-024", on(2024, 1, 1)},
        {"AT14-032", on(2024, 1, 1)},  {"AT18-005", on(2026, 1, 1)},  {"AT18-006", on(2026, 1, 1)}};
    const auto found = until.find(code);
    return found != until.end() && day < found->second;
}

/// How much the breeder wants it on the table: good ones and new ones first.
double wanted(const Strain& strain, Date day) {
    double sum = 0;
    for (const Heard& heard : strain.heard) {
        sum += heard.liking;
    }
    const auto count = static_cast<double>(strain.heard.size());
    const double mean = (sum + 6.2) / (count + 1);
    const bool lately = !strain.heard.empty() && daysBetween(strain.heard.back().date, day) < 15;
    return mean - 0.04 * count + (strain.heard.empty() ? 0.4 : 0.0) - (lately ? 1.0 : 0.0) +
           (strain.told ? 0.9 : 0.0);
}

std::vector<std::size_t> ripeTrees(World& world, bool own) {
    const Date today = world.scribe.today();
    std::vector<std::size_t> trees;
    for (std::size_t i = 0; i < world.trees.size(); ++i) {
        const Tree& tree = world.trees[i];
        const Strain& strain = world.strain(tree);
        if (!world.stands(tree) || !world.isKnown(tree) || strain.own != own ||
            strain.stage == Stage::culled || strain.stage == Stage::parent ||
            tree.markYear != today.year() || tree.mark != WalkMark::ripe ||
            overlooked(strain.record.code, today) || (!own && !strain.record.benchmark)) {
            continue;
        }
        const Fruiting fruiting = world.fruiting(tree, today.year());
        const bool pear = strain.record.species == shippedSpeciesId("pear");
        const bool twice = std::any_of(trees.begin(), trees.end(), [&](std::size_t other) {
            return world.trees[other].strain == tree.strain;
        });
        const bool pastIt = strain.told && today > fruiting.days.last;
        if (!twice && !pastIt && fruiting.bears && today <= fruiting.days.last.plusDays(2) &&
            (!pear || today >= fruiting.days.first.plusDays(4))) {
            trees.push_back(i);
        }
    }
    std::stable_sort(trees.begin(), trees.end(), [&](std::size_t a, std::size_t b) {
        return wanted(world.strain(world.trees[a]), today) >
               wanted(world.strain(world.trees[b]), today);
    });
    return trees;
}

Date takenFor(World& world, const Tree& tree, Chance& chance) {
    const Date today = world.scribe.today();
    const Date first =
        std::max(world.fruiting(tree, today.year()).days.first, tree.seen.value_or(today));
    const bool pear = world.strain(tree).record.species == shippedSpeciesId("pear");
    if (pear) {
        return std::max(first, today.plusDays(-9));
    }
    return chance.happens(0.6)
               ? today
               : std::max(first, today.plusDays(-1 - static_cast<int>(chance.below(5))));
}

Serving serve(World& world, std::size_t index, Chance& chance) {
    const Tree& tree = world.trees[index];
    Serving serving;
    serving.strain = tree.strain;
    const Strain& strain = world.strain(tree);
    const Date today = world.scribe.today();
    const bool pear = strain.record.species == shippedSpeciesId("pear");
    const bool careful = strain.told || (!strain.own && chance.happens(0.8));
    serving.lot = careful && !pear
                      ? cleanLot(world, tree, today)
                      : lotFrom(world, tree, takenFor(world, tree, chance), today, chance);
    return serving;
}

std::vector<Taster> present(World& world, Chance& chance) {
    std::vector<Taster> tasters = {world.annis};
    if (chance.happens(0.9)) {
        tasters.push_back(world.bodo);
    }
    if (chance.happens(0.85)) {
        tasters.push_back(world.corra);
    }
    return tasters;
}

void sit(World& world) {
    auto& scribe = world.scribe;
    const Date today = scribe.today();
    Chance chance("sitting " + today.iso());
    const auto own = ripeTrees(world, true);
    const auto benchmarks = ripeTrees(world, false);
    if (own.size() < 2) {
        return;
    }
    Sitting sitting;
    sitting.title = "Sitting of " + spoken(today);
    sitting.sight = today.year() < 2020 || chance.happens(0.1) ? Sight::sighted : Sight::blind;
    sitting.tasters = present(world, chance);
    for (std::size_t i = 0; i < std::min<std::size_t>(own.size(), 6); ++i) {
        sitting.servings.push_back(serve(world, own[i], chance));
    }
    if (!benchmarks.empty()) {
        sitting.servings.push_back(serve(world, benchmarks.front(), chance));
        if (sitting.sight == Sight::blind) {
            Serving again = sitting.servings.back(); // the same fruit under a second code
            sitting.servings.insert(sitting.servings.begin() + 1, again);
            sitting.notes = "Benchmark twice, under two codes.";
        }
    }
    scribe.begin(sitting.title + ": " + std::to_string(sitting.servings.size()) + " lots, " +
                 std::to_string(sitting.tasters.size()) + " tasters");
    hold(world, sitting, chance);
    scribe.finish();
}

/// In December: what still hangs together of the cellar.
void sitInDecember(World& world) {
    auto& scribe = world.scribe;
    const Date today = scribe.today();
    Chance chance("cellar " + today.iso());
    Sitting sitting;
    sitting.title = "Cellar test of " + spoken(today);
    sitting.sight = today.year() < 2020 ? Sight::sighted : Sight::blind;
    sitting.tasters = present(world, chance);
    std::vector<std::string> seen;
    for (const Tree& tree : world.trees) {
        const Strain& strain = world.strain(tree);
        const Fruiting fruiting = world.fruiting(tree, today.year());
        const bool likely = strain.own ? strain.stage >= Stage::watched : strain.record.benchmark;
        const bool again = std::find(seen.begin(), seen.end(), strain.record.code) != seen.end();
        if (!world.stands(tree) || !likely || strain.stage >= Stage::parent || !fruiting.bears ||
            strain.truth.season < 266 || again || sitting.servings.size() >= 7 ||
            overlooked(strain.record.code, today)) {
            continue;
        }
        seen.push_back(strain.record.code);
        Serving serving;
        serving.strain = tree.strain;
        const Date taken =
            fruiting.days.first.plusDays(daysBetween(fruiting.days.first, fruiting.days.last) / 3);
        serving.lot = cleanLot(world, tree, taken);
        const int days = daysBetween(taken, today);
        serving.lot.storage = StoragePath::cellar;
        serving.lot.daysInCellar = days;
        serving.lot.storageTyped = "l" + std::to_string(days);
        const double lost = strain.truth.keeping * 0.6 * days;
        serving.lot.ripeness = lost < 0.7   ? Ripeness::prime
                               : lost < 1.4 ? Ripeness::latePrime
                                            : Ripeness::onItsWayOut;
        sitting.servings.push_back(serving);
    }
    if (sitting.servings.size() < 3) {
        return;
    }
    scribe.begin(sitting.title + ": " + std::to_string(sitting.servings.size()) + " lots");
    hold(world, sitting, chance);
    scribe.finish();
}

} // namespace

void tellSittings(World& world) {
    const std::map<int, std::vector<Date>> days = {
        {2018, {on(2018, 8, 18), on(2018, 9, 15)}},
        {2019, {on(2019, 8, 24), on(2019, 9, 21), on(2019, 10, 5)}},
        {2020, {on(2020, 8, 15), on(2020, 9, 5), on(2020, 9, 19), on(2020, 10, 3)}},
        {2021, {on(2021, 8, 28), on(2021, 9, 18), on(2021, 10, 9)}},
        {2022,
         {on(2022, 7, 30), on(2022, 8, 20), on(2022, 9, 10), on(2022, 9, 24), on(2022, 10, 8)}},
        {2023, {on(2023, 8, 12), on(2023, 8, 26), on(2023, 9, 16), on(2023, 9, 30)}},
        {2024,
         {on(2024, 7, 27), on(2024, 8, 17), on(2024, 9, 7), on(2024, 9, 21), on(2024, 10, 5)}},
        {2025, {on(2025, 7, 26), on(2025, 8, 9), on(2025, 9, 6), on(2025, 9, 20), on(2025, 10, 4)}},
        {2026, {on(2026, 7, 25), on(2026, 8, 8)}}};
    for (const auto& [year, sittings] : days) {
        for (const Date day : sittings) {
            world.agenda.add(day, 660, [&world] { sit(world); });
        }
        if (year >= 2019 && year <= 2025) {
            world.agenda.add(on(year, 12, 13), 1080, [&world] { sitInDecember(world); });
        }
    }
}

} // namespace pipwright::sample
