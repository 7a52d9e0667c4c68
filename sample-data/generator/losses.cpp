#include "sample-data/generator/observing.h"
#include "sample-data/generator/world.h"

namespace pipwright::sample {

namespace {

struct Cause {
    unsigned month;
    unsigned day;
    const char* sentence;
    PlantState state;
    const char* reason;
    double share; ///< of the young trees
};

constexpr Cause kCauses[] = {
    {1, 24, "Voles under the snow", PlantState::dead, "girdled by voles under the snow", 0.016},
    {5, 2, "What the frost left", PlantState::dead,
     "shoots killed by late frost, nothing from below", 0.008},
    {6, 16, "The mower", PlantState::dead, "mown off", 0.006},
    {8, 2, "Dried up", PlantState::dead, "dried up in the hot weeks", 0.005},
    {9, 26, "Not to be found", PlantState::lost, "only the stake is left; nobody saw what happened",
     0.004},
};

void reap(World& world, const Cause& cause) {
    auto& scribe = world.scribe;
    scribe.begin(cause.sentence);
    const int year = scribe.today().year();
    const double share = cause.share * (cause.month == 5 && seasonOf(year).lateFrost ? 3 : 1);
    int count = 0;
    for (Tree& tree : world.trees) {
        const Strain& strain = world.strain(tree);
        Chance chance(strain.record.code + " " + cause.reason + std::to_string(year));
        const bool young = strain.own && year - strain.sown <= 8;
        if (!world.stands(tree) || !young || strain.told || strain.stage >= Stage::watched ||
            tree.row == kNurseryBed || !chance.happens(share)) {
            continue;
        }
        world.takeAway(tree, cause.state, cause.reason);
        ++count;
    }
    scribe.rename(std::string(cause.sentence) + ": " + std::to_string(count) +
                  (count == 1 ? " seedling" : " seedlings"));
    scribe.finish();
}

} // namespace

void tellLosses(World& world) {
    for (int year = 2016; year <= 2026; ++year) {
        for (const Cause& cause : kCauses) {
            world.agenda.add(on(year, cause.month, cause.day), 840,
                             [&world, &cause] { reap(world, cause); });
        }
    }
}

} // namespace pipwright::sample
