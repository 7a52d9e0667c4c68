#include "sample-data/generator/tasting_table.h"

#include "core/orchard/dictionary.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "sample-data/generator/figures.h"
#include "sample-data/generator/observing.h"
#include "sample-data/generator/words.h"

namespace pipwright::sample {

namespace {

template <typename Word>
struct Share {
    double share;
    Word word;
};

/// The words with their shares; what is left of 1 is "unknown".
template <typename Word, std::size_t N>
Word drawn(const Share<Word> (&shares)[N], Chance& chance) {
    double draw = chance.unit();
    for (const auto& entry : shares) {
        draw -= entry.share;
        if (draw < 0) {
            return entry.word;
        }
    }
    return Word::unknown;
}

void setStorage(Lot& lot, int days, bool pear, Chance& chance) {
    if (days == 0) {
        lot.storage = StoragePath::none;
        return;
    }
    if (pear && days > 4) {
        lot.storage = StoragePath::chained;
        lot.daysInFridge = days - 3;
        lot.daysOnCounter = 3;
        lot.storageTyped = "f" + std::to_string(days - 3) + "c3";
        return;
    }
    const double draw = chance.unit();
    if (draw < 0.5) {
        lot.storage = StoragePath::fridge;
        lot.daysInFridge = days;
        lot.storageTyped = "f" + std::to_string(days);
    } else if (draw < 0.9 || days < 3) {
        lot.storage = StoragePath::counter;
        lot.daysOnCounter = days;
        lot.storageTyped = "c" + std::to_string(days);
    } else {
        lot.storage = StoragePath::chained;
        lot.daysInFridge = days - 1;
        lot.daysOnCounter = 1;
        lot.storageTyped = "f" + std::to_string(days - 1) + "c1";
    }
}

Verdict verdictOn(const Strain& strain, double liking) {
    if (!strain.own) {
        return Verdict::unknown;
    }
    if (strain.record.code == "AT14-007") {
        return Verdict::parentOnly;
    }
    if (strain.stage >= Stage::advanced && liking >= 7.5) {
        return Verdict::nameTalk;
    }
    if (liking < 4.5) {
        return Verdict::cull;
    }
    if (liking < 5.5) {
        return Verdict::noReasonToKeep;
    }
    if (liking < 6.5) {
        return Verdict::again;
    }
    return liking < 7.5 ? Verdict::watch : Verdict::backUpNow;
}

std::string usesOf(const Truth& truth, double liking) {
    std::string uses = liking >= 6 ? "dessert" : "";
    if (truth.sharpness >= 4) {
        uses += uses.empty() ? "cooking" : " cooking";
    }
    if (truth.keeping < 0.02 && liking >= 6) {
        uses += " keeping";
    }
    return uses;
}

bool isFair(const Lot& lot) {
    const bool ripe = lot.ripeness >= Ripeness::earlyPrime && lot.ripeness <= Ripeness::latePrime;
    const bool picked = lot.origin == Origin::pickedRipe || lot.origin == Origin::shaken;
    const bool fresh = lot.daysInFridge.value_or(0) + lot.daysOnCounter.value_or(0) +
                           lot.daysInCellar.value_or(0) <=
                       12;
    return ripe && picked && fresh && lot.soundness == Soundness::sound;
}

std::vector<std::int64_t> shuffled(std::size_t count, Chance& chance) {
    std::vector<std::int64_t> order(count);
    std::iota(order.begin(), order.end(), 1);
    for (std::size_t i = count; i > 1; --i) {
        std::swap(order[i - 1], order[chance.below(i)]);
    }
    return order;
}

double trueLiking(const Strain& strain, const Lot& lot) {
    const int year = lot.cropYear.value_or(CropYear{2020}).year;
    Chance chance(strain.record.code + " fruit of " + std::to_string(year));
    return strain.truth.liking + seasonOf(year).liking + 0.35 * chance.normal() +
           conditionEffect(lot, strain.truth);
}

/// Ranks the best three of a taster's scores.
void rankBest(std::vector<Score*>& scores) {
    std::stable_sort(scores.begin(), scores.end(), [](const Score* a, const Score* b) {
        return a->liking.value_or(0) > b->liking.value_or(0);
    });
    for (std::size_t i = 0; i < std::min<std::size_t>(3, scores.size()); ++i) {
        if (scores[i]->liking) {
            scores[i]->rank = static_cast<std::int64_t>(i + 1);
        }
    }
}

std::string wordsOf(const Taster& taster, const Strain& strain, const Lot& lot, double liking,
                    Chance& chance) {
    if (taster.name == "AT") {
        return chance.happens(0.75) ? breederWords(strain.truth, lot, liking, chance)
                                    : std::string{};
    }
    if (!chance.happens(0.4)) {
        return {};
    }
    return taster.name == "BQ" ? bodoWords(liking, chance)
                               : corraWords(strain.truth, liking, chance);
}

Score scoreBy(const Taster& taster, const Serving& serving, const Strain& strain,
              const Sitting& sitting, Chance& chance) {
    Score score;
    score.lot = serving.lot.id;
    score.taster = taster.id;
    if (serving.lot.soundness == Soundness::rot) {
        score.words = breederWords(strain.truth, serving.lot, 0, chance);
        return score;
    }
    const auto said = serving.said.find(taster.name);
    const bool hopes = strain.own && sitting.sight != Sight::blind;
    const double liking =
        said != serving.said.end()
            ? said->second.liking
            : scoreOf(trueLiking(strain, serving.lot), taster.truth, strain.truth, hopes, chance);
    score.liking = liking;
    score.words = said != serving.said.end() ? said->second.words
                                             : wordsOf(taster, strain, serving.lot, liking, chance);
    if (taster.name == "AT") {
        score.verdict = verdictOn(strain, liking);
        score.uses = usesOf(strain.truth, liking);
    }
    return score;
}

void writeScores(World& world, const Sitting& sitting, const std::vector<Serving>& served,
                 Chance& chance) {
    for (const Taster& taster : sitting.tasters) {
        const auto order = shuffled(served.size(), chance);
        std::vector<Score> scores;
        for (std::size_t i = 0; i < served.size(); ++i) {
            Strain& strain = world.strains[served[i].strain];
            const bool plum = strain.record.species == shippedSpeciesId("plum");
            if (taster.name == "BQ" && plum) {
                continue; // raw plums make his mouth itch
            }
            scores.push_back(scoreBy(taster, served[i], strain, sitting, chance));
            if (served.size() > 1) {
                scores.back().servingOrder = order[i];
            }
            if (scores.back().liking) {
                strain.heard.push_back({sitting.date.value_or(world.scribe.today()), taster.name,
                                        *scores.back().liking, sitting.sight == Sight::blind,
                                        isFair(served[i].lot)});
            }
        }
        if (sitting.sight == Sight::blind) {
            std::vector<Score*> ranked;
            ranked.reserve(scores.size());
            for (Score& score : scores) {
                ranked.push_back(&score);
            }
            rankBest(ranked);
        }
        for (const Score& score : scores) {
            world.scribe.add(score);
        }
    }
}

void tasteIntensities(World& world, const Serving& serving, Chance& chance) {
    const Truth& truth = world.strains[serving.strain].truth;
    const std::pair<const char*, double> traits[] = {
        {"sharpness", truth.sharpness}, {"aroma", truth.aroma}, {"crispness", truth.crispness}};
    for (const auto& [trait, value] : traits) {
        const double felt = std::clamp(value + 0.5 * chance.normal(), 1.0, 5.0);
        Observation observation = observationOf(world, trait);
        observation.lot = serving.lot.id;
        observation.state = shippedStateId(trait, std::to_string(std::lround(felt)));
        world.scribe.add(observation);
    }
}

Ripeness eatenAs(const Truth& truth, Ripeness picked, int days) {
    const double lost = truth.keeping * days;
    if (picked == Ripeness::unknown || lost < 0.15) {
        return picked;
    }
    const int steps = lost < 0.5 ? 0 : lost < 1.1 ? 1 : 2;
    const int last = static_cast<int>(Ripeness::gone);
    return static_cast<Ripeness>(std::min(last, static_cast<int>(picked) + steps));
}

void drawCondition(Lot& lot, Chance& chance) {
    lot.bag = drawn<Bag>(
        {{0.8, Bag::none}, {0.06, Bag::organza}, {0.04, Bag::paper}, {0.03, Bag::clear}}, chance);
    lot.soundness = drawn<Soundness>({{0.8, Soundness::sound},
                                      {0.08, Soundness::insect},
                                      {0.04, Soundness::bird},
                                      {0.03, Soundness::split},
                                      {0.015, Soundness::rot}},
                                     chance);
    lot.canopyPlace = drawn<CanopyPlace>({{0.15, CanopyPlace::top},
                                          {0.2, CanopyPlace::sunSide},
                                          {0.1, CanopyPlace::inside},
                                          {0.1, CanopyPlace::low}},
                                         chance);
    lot.origin = drawn<Origin>({{0.72, Origin::pickedRipe},
                                {0.1, Origin::droppedToday},
                                {0.05, Origin::onGroundLonger},
                                {0.06, Origin::shaken},
                                {0.03, Origin::pickedEarly}},
                               chance);
}

} // namespace

Lot cleanLot(World& world, const Tree& tree, Date taken) {
    const Fruiting fruiting = world.fruiting(tree, taken.year());
    Lot lot;
    lot.plant = tree.record.id;
    lot.cropYear = CropYear{taken.year()};
    lot.taken = taken;
    lot.origin = Origin::pickedRipe;
    lot.bag = Bag::none;
    lot.soundness = Soundness::sound;
    lot.storage = StoragePath::none;
    lot.ripeness = ripenessOn(fruiting.days, taken);
    lot.cropLoad = fruiting.load;
    lot.cropNumber = fruiting.cropNumber;
    lot.fruits = fruiting.load == CropLoad::lone ? 1 : 3;
    return lot;
}

Lot lotFrom(World& world, const Tree& tree, Date taken, Date eaten, Chance& chance) {
    const Strain& strain = world.strain(tree);
    Lot lot = cleanLot(world, tree, taken);
    drawCondition(lot, chance);
    const bool picked = lot.origin == Origin::pickedRipe || lot.origin == Origin::pickedEarly;
    if (picked) { // she can see whether it is ripe
        lot.origin = lot.ripeness < Ripeness::earlyPrime ? Origin::pickedEarly : Origin::pickedRipe;
    }
    if (lot.ripeness == Ripeness::gone) {
        lot.origin = Origin::onGroundLonger;
    }
    const int days = daysBetween(taken, eaten);
    if (days > 0 && chance.happens(0.06)) {
        lot.storage = StoragePath::unknown;
        lot.storageTyped = "in the bag since?";
    } else {
        setStorage(lot, days, strain.record.species == shippedSpeciesId("pear"), chance);
    }
    lot.ripeness = eatenAs(strain.truth, lot.ripeness, days);
    if (chance.happens(0.06)) {
        lot.ripeness = Ripeness::unknown;
    }
    if (chance.happens(0.1)) {
        lot.cropLoad = CropLoad::unknown;
    }
    if (lot.fruits != 1) {
        lot.fruits = 1 + static_cast<std::int64_t>(chance.below(5));
    }
    return lot;
}

Serving servingOf(World& world, const std::string& code, Date taken,
                  std::map<std::string, Said> said) {
    Serving serving;
    serving.strain = world.strainOf.at(code);
    serving.lot = cleanLot(world, world.tree(code), taken);
    serving.said = std::move(said);
    return serving;
}

void hold(World& world, const Sitting& sitting, Chance& chance) {
    Tasting tasting;
    tasting.date = sitting.date.value_or(world.scribe.today());
    tasting.title = sitting.title;
    tasting.sight = sitting.sight;
    tasting.place = sitting.place;
    tasting.notes = sitting.notes;
    tasting = world.scribe.add(tasting);
    std::vector<Serving> served = sitting.servings;
    std::int64_t place = 0;
    std::vector<int> codes;
    for (Serving& serving : served) {
        serving.lot.tasting = tasting.id;
        if (served.size() > 1) {
            serving.lot.servingOrder = ++place;
        }
        if (sitting.sight == Sight::blind) {
            int code = 0;
            do {
                code = 100 + static_cast<int>(chance.below(900));
            } while (std::find(codes.begin(), codes.end(), code) != codes.end());
            codes.push_back(code);
            serving.lot.servingCode = std::to_string(code);
        }
        serving.lot = world.scribe.add(serving.lot);
    }
    writeScores(world, sitting, served, chance);
    for (const Serving& serving : served) {
        const bool asked = serving.said.empty() && serving.lot.soundness != Soundness::rot;
        if (sitting.sight == Sight::blind && asked && chance.happens(0.2)) {
            tasteIntensities(world, serving, chance);
        }
    }
}

void biteInRow(World& world, const std::string& code, double liking, const std::string& words,
               Verdict verdict, Ripeness ripeness) {
    auto& scribe = world.scribe;
    Strain& strain = world.strain(code);
    scribe.begin("Bite of " + code);
    Tasting tasting;
    tasting.date = scribe.today();
    tasting.sight = Sight::sighted;
    tasting.place = TastingPlace::row;
    tasting = scribe.add(tasting);
    Lot lot = cleanLot(world, world.tree(code), scribe.today());
    lot.tasting = tasting.id;
    lot.ripeness = ripeness;
    const bool early = ripeness == Ripeness::green || ripeness == Ripeness::gettingThere;
    lot.origin = early                        ? Origin::pickedEarly
                 : ripeness == Ripeness::gone ? Origin::onGroundLonger
                                              : Origin::pickedRipe;
    lot.fruits = 1;
    lot = scribe.add(lot);
    Score score;
    score.lot = lot.id;
    score.taster = world.annis.id;
    score.liking = liking;
    score.words = words;
    score.verdict = verdict;
    scribe.add(score);
    strain.heard.push_back({scribe.today(), "AT", liking, false, isFair(lot)});
    scribe.finish();
}

} // namespace pipwright::sample
