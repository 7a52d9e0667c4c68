#include <algorithm>
#include <cmath>

#include "sample-data/generator/figures.h"
#include "sample-data/generator/observing.h"
#include "sample-data/generator/words.h"
#include "sample-data/generator/world.h"

namespace pipwright::sample {

namespace {

/// Late apples do not bloom much later than early ones: a day for every twelve of ripening.
Date fullBloom(const Strain& strain, int year) {
    Chance chance(strain.record.code + " blooms " + std::to_string(year));
    const double day =
        122 + 0.7 * seasonOf(year).shift + (strain.truth.season - 250) / 12 + 1.5 * chance.normal();
    return on(year, 1, 1).plusDays(static_cast<int>(std::lround(day)) - 1);
}

void noteBloom(World& world) {
    auto& scribe = world.scribe;
    const int year = scribe.today().year();
    scribe.begin("Full bloom of the benchmarks, " + std::to_string(year));
    for (std::size_t i = 0; i < 16 && i < world.trees.size(); ++i) {
        const Tree& tree = world.trees[i];
        const Date day = fullBloom(world.strain(tree), year);
        if (day <= scribe.today()) {
            observeDay(world, tree, trait_key::kFullBloom, day);
        }
    }
    scribe.finish();
}

void noteBloomStages(World& world) {
    auto& scribe = world.scribe;
    scribe.begin("Bloom stages, " + spoken(scribe.today()));
    for (const char* code : {"AT13-004", "AT13-019", "AT14-003", "AT16-009", "AT15-012", "MAR"}) {
        const int days =
            daysBetween(scribe.today(), fullBloom(world.strain(code), scribe.today().year()));
        const char* stage = days > 9   ? "57"
                            : days > 5 ? "59"
                            : days > 2 ? "60"
                            : days > 0 ? "61"
                                       : "65";
        observeState(world, world.tree(code), trait_key::kBloomStage, stage);
    }
    scribe.finish();
}

void noteLoads(World& world) {
    auto& scribe = world.scribe;
    const int year = scribe.today().year();
    scribe.begin("Crop loads after the June drop, " + std::to_string(year));
    for (const Tree& tree : world.trees) {
        const Strain& strain = world.strain(tree);
        const Fruiting fruiting = world.fruiting(tree, year);
        Chance chance(strain.record.code + " counted " + std::to_string(year));
        const double share = strain.record.benchmark ? 0.4 : strain.told ? 0.5 : 0.16;
        if (!world.stands(tree) || strain.stage == Stage::culled || year <= tree.firstCrop ||
            tree.record.kind == PlantKind::limb || !chance.happens(share)) {
            continue;
        }
        observeState(world, tree, trait_key::kCropLoad,
                     fruiting.bears ? keyOf(fruiting.load) : "none",
                     seasonOf(year).lateFrost && !fruiting.bears ? "Frosted." : "");
    }
    scribe.finish();
}

void measure(World& world) {
    auto& scribe = world.scribe;
    scribe.begin("Weighed and measured, " + spoken(scribe.today()));
    for (const Tree& tree : world.trees) {
        const Strain& strain = world.strain(tree);
        Chance chance(strain.record.code + " measured " + scribe.today().iso());
        const Date today = scribe.today();
        const bool ripe = tree.markYear == today.year() && tree.mark == WalkMark::ripe &&
                          today <= world.fruiting(tree, today.year()).days.last;
        const bool chosen = strain.stage >= Stage::watched && strain.stage < Stage::parent;
        if (!world.stands(tree) || !ripe || !chosen || tree.record.kind == PlantKind::limb ||
            !chance.happens(0.5)) {
            continue;
        }
        const int mass = static_cast<int>(strain.truth.mass + 12 * chance.normal());
        observeNumber(world, tree, "fruit_mass",
                      (chance.happens(0.3) ? "~" : "") + std::to_string(mass), "kitchen scale");
        const double brix = 9.6 + strain.truth.sweetness + 0.7 * chance.normal();
        const std::string low = inHalves(brix);
        observeNumber(world, tree, "soluble_solids",
                      chance.happens(0.3) ? low + "-" + inHalves(brix + 1) : low, "refractometer");
    }
    scribe.finish();
}

/// The label repair walk of November: what could not be read, and what that leaves us with.
void mendLabels(World& world) {
    auto& scribe = world.scribe;
    scribe.begin("Label repair walk of " + spoken(scribe.today()));
    int missing = 0;
    int unsure = 0;
    for (std::size_t i = 0; i < world.trees.size(); ++i) {
        Tree& tree = world.trees[i];
        const Strain& strain = world.strain(tree);
        Chance chance(strain.record.code + " tag " + scribe.today().iso());
        const bool mappedOnly = world.identities[tree.identity].confidence == Confidence::byMap;
        if (!world.stands(tree) || !strain.own || strain.told || strain.stage == Stage::culled ||
            !tree.record.position || mappedOnly || !chance.happens(0.035)) {
            continue;
        }
        Identity identity;
        identity.plant = tree.record.id;
        identity.asserted = scribe.today();
        identity.person = world.annis.id;
        if (chance.happens(0.88)) {
            identity.genotype = strain.record.id;
            identity.basis = IdentityBasis::mapOnly;
            identity.confidence = Confidence::byMap;
            identity.notes = chance.oneOf(std::vector<std::string>{
                "Tag gone, the wire rusted through.", "Tag faded to white.",
                "Tag found in a nest two rows on.", "Stake and tag mown."});
        } else if (strain.stage == Stage::juvenile) {
            identity.basis = IdentityBasis::unknown;
            identity.confidence = Confidence::unknown;
            identity.notes =
                "No tag, and the tape says it could be either neighbour. The map says " +
                strain.record.code + ".";
            ++unsure;
        } else {
            continue;
        }
        world.identities.push_back(scribe.add(identity));
        tree.identity = world.identities.size() - 1;
        ++missing;
    }
    scribe.rename("Label repair walk of " + spoken(scribe.today()) + ": " +
                  std::to_string(missing) + " tags missing");
    scribe.finish();
}

/// Vigour of the young, and a few words on the way.
void noteVigour(World& world) {
    auto& scribe = world.scribe;
    scribe.begin("Vigour of the young rows, " + spoken(scribe.today()));
    for (const Tree& tree : world.trees) {
        const Strain& strain = world.strain(tree);
        Chance chance(strain.record.code + " vigour " + scribe.today().iso());
        const bool weak = strain.record.code.starts_with("AT16-02");
        if (!world.stands(tree) || !strain.own || strain.stage != Stage::juvenile ||
            !tree.record.position || !chance.happens(weak ? 1.0 : 0.14)) {
            continue;
        }
        const long score =
            std::lround(std::clamp((weak ? 1.8 : 3.2) + 0.8 * chance.normal(), 1.0, 5.0));
        observeState(world, tree, trait_key::kVigour, std::to_string(score));
    }
    scribe.finish();
}

} // namespace

void tellFieldwork(World& world) {
    for (int year = 2019; year <= 2026; ++year) {
        if (year != 2020) {
            world.agenda.add(on(year, 5, 16), 1150, [&world] { noteBloom(world); });
        }
        world.agenda.add(on(year, 6, 27), 1120, [&world] { noteLoads(world); });
        world.agenda.add(on(year, 8, 30), 1140, [&world] { measure(world); });
        world.agenda.add(on(year, 9, 27), 1140, [&world] { measure(world); });
        world.agenda.add(on(year, 11, 15), 880, [&world] { mendLabels(world); });
    }
    for (const int year : {2024, 2025, 2026}) {
        world.agenda.add(on(year, 4, 26), 1000, [&world] { noteBloomStages(world); });
    }
    for (const int year : {2019, 2022, 2025}) {
        world.agenda.add(on(year, 6, 20), 950, [&world] { noteVigour(world); });
    }
}

} // namespace pipwright::sample
