#include "core/orchard/dictionary.h"

#include <algorithm>

#include "sample-data/generator/drawing.h"
#include "sample-data/generator/tables.h"
#include "sample-data/generator/world.h"

namespace pipwright::sample {

namespace {

void keep(World& world, const std::string& code, int year) {
    auto& scribe = world.scribe;
    Tree& tree = world.tree(code);
    const Strain& strain = world.strain(code);
    scribe.begin("Picture of " + strain.record.called());
    Photo photo;
    photo.caption = strain.record.called() + ", whole and cut lengthwise, on the 10 mm grid, " +
                    spoken(scribe.today());
    photo.taken = scribe.today();
    photo.person = world.annis.id;
    photo.plant = tree.record.id;
    photo.genotype = strain.record.id;
    scribe.keepPhoto(photo,
                     drawnFruit(strain.truth, strain.record.species == shippedSpeciesId("pear"),
                                strain.record.code + std::to_string(year)));
    scribe.finish();
}

void tell(World& world, const std::string& code, const Truth& truth, int year) {
    const GoodDays days = goodDaysOf(truth, code, year);
    const Date day = days.first.plusDays(std::max(1, daysBetween(days.first, days.last) / 2));
    world.agenda.add(day, 1130, [&world, code, year] {
        const Tree& tree = world.tree(code);
        if (world.stands(tree) && world.fruiting(tree, year).bears) {
            keep(world, code, year);
        }
    });
}

} // namespace

void tellPhotos(World& world) {
    for (const CultivarRow& row : cultivars()) {
        if (row.benchmark) {
            tell(world, row.code, row.truth, 2023);
        }
    }
    for (const StoryRow& row : storyTrees()) {
        Truth truth;
        truth.season = row.season;
        truth.window = row.window;
        for (const int year : {row.firstCrop + 1, 2025}) {
            if (year <= 2025 && row.code != "AT17-014") {
                tell(world, row.code, truth, year);
            }
        }
    }
}

} // namespace pipwright::sample
