#include <algorithm>
#include <cmath>

#include "sample-data/generator/figures.h"
#include "sample-data/generator/observing.h"
#include "sample-data/generator/words.h"
#include "sample-data/generator/world.h"

namespace pipwright::sample {

namespace {

struct Record {
    int count = 0;
    int blind = 0;
    int seasons = 0;
    double mean = 0.0;
    double best = 0.0;
};

Record recordOf(const Strain& strain) {
    Record record;
    std::vector<int> years;
    for (const Heard& heard : strain.heard) {
        ++record.count;
        record.blind += heard.blind ? 1 : 0;
        record.mean += heard.liking;
        record.best = std::max(record.best, heard.liking);
        if (std::find(years.begin(), years.end(), heard.date.year()) == years.end()) {
            years.push_back(heard.date.year());
        }
    }
    record.seasons = static_cast<int>(years.size());
    record.mean = record.count > 0 ? record.mean / record.count : 0.0;
    return record;
}

std::string fault(const Strain& strain) {
    const Truth& truth = strain.truth;
    if (truth.scab > 3.3) {
        return "and the leaves scabby by June";
    }
    if (truth.sharpness > 4.0) {
        return "too sharp for the hand, not big enough for the pot";
    }
    if (truth.sharpness < 2.0) {
        return "sweet and nothing behind it";
    }
    if (truth.crispness < 2.4) {
        return "soft before it is ripe";
    }
    if (truth.mass < 80) {
        return "and too small to bend down for";
    }
    Chance chance(strain.record.code + " fault");
    return chance.oneOf(std::vector<std::string>{
        "nothing that is not better elsewhere in the row", "pleasant is not enough",
        "the place is worth more than the tree", "nobody asked for a second slice",
        "I should only taste the same apple again next year", "better things are ripe that week",
        "no reason to keep it but that it is ours"});
}

/// The breeder's best score of the year.
double bestOf(const Strain& strain, int year) {
    double best = 0.0;
    for (const Heard& heard : strain.heard) {
        if (heard.date.year() == year && heard.who == "AT") {
            best = std::max(best, heard.liking);
        }
    }
    return best;
}

std::string hopeFor(const Strain& strain, int seasons) {
    Chance chance(strain.record.code + " hope");
    if (seasons > 1) {
        return chance.oneOf(std::vector<std::string>{
            "Not a matter of one year. Prime fruit beside the benchmark next.",
            "Better than it began. Watch it.", "Good again; a pair with the benchmark, blind."});
    }
    return chance.oneOf(
        std::vector<std::string>{"Worth a second year; wants prime fruit beside the benchmark.",
                                 "One good day is not a good apple. Again next year.",
                                 "Mark the trunk white and come back in time.",
                                 "Three fruits is no crop. Taste it when it carries."});
}

void judge(World& world, std::size_t index, int year) {
    Strain& strain = world.strains[index];
    const bool open = strain.stage == Stage::bearing || strain.stage == Stage::watched;
    if (!strain.own || strain.told || !open) {
        return;
    }
    const Record record = recordOf(strain);
    const std::string evidence = world.evidence(strain, year);
    if (evidence.empty()) {
        return;
    }
    const bool poor = record.mean < 5.0 || (record.count >= 3 && record.mean < 5.8) ||
                      (record.seasons >= 3 && record.mean < 6.2);
    if (poor) {
        world.decide(strain, Stage::culled, evidence + "; " + fault(strain) + ".");
        return;
    }
    if (record.count >= 3 && record.mean >= 6.3 && bestOf(strain, year) >= 6.0) {
        world.decide(strain, Stage::watched, evidence + ". " + hopeFor(strain, record.seasons));
    }
}

void grub(World& world) {
    auto& scribe = world.scribe;
    scribe.begin("Grubbed out what was culled at the meeting");
    int count = 0;
    for (Tree& tree : world.trees) {
        Strain& strain = world.strain(tree);
        if (!world.stands(tree) || strain.stage != Stage::culled) {
            continue;
        }
        Chance chance(strain.record.code + " stays");
        if (chance.happens(0.1)) {
            continue; // left as a stump to graft over one day
        }
        world.takeAway(tree, PlantState::removed, "culled, grubbed out");
        ++count;
    }
    scribe.rename("Grubbed out " + std::to_string(count) + " culled trees");
    scribe.finish();
}

void meet(World& world, int season) {
    world.scribe.begin("Winter meeting on the season of " + std::to_string(season));
    for (std::size_t i = 0; i < world.strains.size(); ++i) {
        judge(world, i, season);
    }
    world.scribe.finish();
}

/// In a scab year the worst of the unfruited go, in June, by the leaf alone.
void cullByLeaf(World& world) {
    auto& scribe = world.scribe;
    scribe.begin("Scab walk of " + spoken(scribe.today()));
    const int year = scribe.today().year();
    int count = 0;
    for (Tree& tree : world.trees) {
        Strain& strain = world.strain(tree);
        Chance chance(strain.record.code + " scab " + std::to_string(year));
        const bool young = strain.own && strain.sown + 6 >= year;
        const bool looks = young ? chance.happens(0.42) : chance.happens(0.08);
        if (!world.stands(tree) || !looks || strain.stage == Stage::culled ||
            strain.record.species != world.strain("MAR").record.species ||
            strain.record.kind == GenotypeKind::rootstock) {
            continue;
        }
        const long score =
            std::lround(std::clamp(strain.truth.scab + 0.6 * chance.normal(), 0.0, 5.0));
        observeState(world, tree, trait_key::kScab, std::to_string(score));
        ++count;
        if (score >= 5 && strain.stage == Stage::juvenile && !strain.told) {
            world.decide(strain, Stage::culled,
                         "Scab 5 on " + spoken(scribe.today()) +
                             ", hardly a leaf left whole. Not waiting for its fruit.");
        }
    }
    scribe.rename("Scab walk of " + spoken(scribe.today()) + ": " + std::to_string(count) +
                  " trees");
    scribe.finish();
}

} // namespace

void tellMeetings(World& world) {
    for (int season = 2018; season <= 2025; ++season) {
        world.agenda.add(on(season + 1, 1, 10), 1080, [&world, season] { meet(world, season); });
        world.agenda.add(on(season + 1, 2, 14), 900, [&world] { grub(world); });
    }
    for (const int year : {2018, 2021, 2024, 2026}) {
        world.agenda.add(on(year, 6, 12), 940, [&world] { cullByLeaf(world); });
    }
}

} // namespace pipwright::sample
