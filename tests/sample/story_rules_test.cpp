#include "core/orchard/dictionary.h"
#include "tests/sample/sample_book.h"

#include <algorithm>
#include <set>
#include <tuple>

/// What must hold over the whole record for its stories to make sense.
using namespace pipwright;

namespace {

struct Marked {
    Date date;
    WalkMark mark;
};

/// The walk marks of each plant and crop year, by date.
std::map<std::pair<PlantId, int>, std::vector<Marked>> walkMarks() {
    std::map<TraitStateId, WalkMark> words;
    for (const WalkMark mark :
         {WalkMark::notYet, WalkMark::ripening, WalkMark::ripe, WalkMark::over, WalkMark::gone}) {
        words[stateOf(mark)] = mark;
    }
    std::map<std::pair<PlantId, int>, std::vector<Marked>> marks;
    for (const Observation& seen : allOf<Observation>()) {
        if (seen.trait == shippedTraitId(trait_key::kRipeningState) && seen.voidReason.empty()) {
            marks[{*seen.plant, seen.cropYear->year}].push_back({*seen.date, words[*seen.state]});
        }
    }
    for (auto& [key, list] : marks) {
        std::stable_sort(list.begin(), list.end(),
                         [](const Marked& a, const Marked& b) { return a.date < b.date; });
    }
    return marks;
}

std::map<PlantId, GenotypeId> genotypeOfPlant() {
    std::map<PlantId, GenotypeId> carried;
    for (const Identity& identity : allOf<Identity>()) {
        if (identity.genotype) {
            carried[identity.plant] = *identity.genotype;
        }
    }
    return carried;
}

bool isStored(const Lot& lot) {
    return lot.daysInFridge || lot.daysOnCounter || lot.daysInCellar;
}

const Date kMorning = Date::of(2026, 8, 22).value();

} // namespace

TEST(StoryRules, NothingHappensOnOrAfterTheMorning) {
    for (const Kind kind : kAllKinds) {
        const auto& fields = fieldsOf(kind);
        ASSERT_TRUE(sampleBook().scan(kind, {}, [&](const Record& record) {
            for (std::size_t i = 0; i < fields.size(); ++i) {
                const bool plan = fields[i].name == "report_due" || kind == Kind::slot;
                const auto* text = std::get_if<std::string>(&record.values[i]);
                if (fields[i].type == FieldType::date && text != nullptr && !plan) {
                    EXPECT_LT(*text, kMorning.iso()) << nameOf(kind) << " " << fields[i].name;
                }
            }
            return true;
        }));
    }
}

TEST(StoryRules, WalkMarksFollowTheSeason) {
    for (const auto& [key, marks] : walkMarks()) {
        for (std::size_t i = 1; i < marks.size(); ++i) {
            EXPECT_LE(marks[i - 1].mark, marks[i].mark)
                << key.first.uuid.text() << " " << marks[i].date.iso();
        }
    }
}

TEST(StoryRules, NoFruitIsTakenBeforeItIsThereOrAfterItIsGone) {
    const auto marks = walkMarks();
    for (const Lot& lot : allOf<Lot>()) {
        if (!lot.plant) {
            continue;
        }
        const auto found = marks.find({*lot.plant, lot.cropYear->year});
        if (found == marks.end()) {
            EXPECT_TRUE(isStored(lot)) << lot.taken->iso() << ": fresh fruit of an unmarked tree";
            continue;
        }
        for (const Marked& marked : found->second) {
            if (lot.origin == Origin::pickedRipe && marked.mark == WalkMark::notYet) {
                EXPECT_GT(*lot.taken, marked.date) << lot.plant->uuid.text();
            }
            if (marked.mark == WalkMark::gone) {
                EXPECT_LE(*lot.taken, marked.date) << lot.plant->uuid.text();
            }
        }
    }
}

TEST(StoryRules, TakenTastedAndStoredAgree) {
    const auto tastings = byId<Tasting>();
    for (const Lot& lot : allOf<Lot>()) {
        const Date eaten = tastings.at(lot.tasting).date;
        if (!lot.taken) {
            EXPECT_FALSE(lot.source.empty());
            continue;
        }
        const auto days = lot.daysInFridge.value_or(0) + lot.daysOnCounter.value_or(0) +
                          lot.daysInCellar.value_or(0);
        if (lot.storage != StoragePath::unknown) {
            EXPECT_EQ(daysBetween(*lot.taken, eaten), days) << eaten.iso();
        }
        EXPECT_EQ(lot.storage == StoragePath::none, *lot.taken == eaten) << eaten.iso();
    }
}

TEST(StoryRules, NobodyTastesBeforeTheFirstFruit) {
    const auto carried = genotypeOfPlant();
    const auto genotypes = byId<Genotype>();
    std::map<GenotypeId, Date> bearing;
    for (const Decision& decision : allOf<Decision>()) {
        if (decision.stage == Stage::bearing) {
            bearing.emplace(decision.genotype, decision.date);
        }
    }
    for (const Lot& lot : allOf<Lot>()) {
        if (!lot.plant) {
            continue;
        }
        const GenotypeId genotype = carried.at(*lot.plant);
        if (genotypes.at(genotype).kind == GenotypeKind::cultivar) {
            continue;
        }
        ASSERT_TRUE(bearing.contains(genotype)) << genotypes.at(genotype).code;
        EXPECT_LE(bearing.at(genotype), *lot.taken) << genotypes.at(genotype).code;
        EXPECT_GE(lot.cropNumber.value_or(0), 1);
    }
}

TEST(StoryRules, NoTreeOfUnknownIdentityIsTasted) {
    std::map<PlantId, bool> known;
    for (const Identity& identity : allOf<Identity>()) { // ids stand in the order of time
        known[identity.plant] = identity.genotype.has_value();
    }
    EXPECT_TRUE(
        std::any_of(known.begin(), known.end(), [](const auto& entry) { return !entry.second; }));
    for (const Lot& lot : allOf<Lot>()) {
        if (lot.plant) {
            EXPECT_TRUE(known.at(*lot.plant)) << lot.plant->uuid.text();
        }
    }
}

TEST(StoryRules, NothingIsSeenOfATreeThatIsGoneOrNotYetPlanted) {
    const auto plants = byId<Plant>();
    for (const Observation& seen : allOf<Observation>()) {
        if (seen.plant) {
            const Plant& plant = plants.at(*seen.plant);
            EXPECT_GE(*seen.date, *plant.planted);
            if (plant.state != PlantState::growing) {
                EXPECT_LE(*seen.date, *plant.stateSince) << plant.stateReason;
            }
        }
    }
    for (const Lot& lot : allOf<Lot>()) {
        if (lot.plant && plants.at(*lot.plant).state != PlantState::growing) {
            EXPECT_LE(*lot.taken, *plants.at(*lot.plant).stateSince);
        }
    }
    for (const auto& [id, plant] : plants) {
        EXPECT_EQ(plant.state != PlantState::growing, !plant.stateReason.empty());
    }
}

TEST(StoryRules, AReplantComesAfterThePlantBeforeIt) {
    std::map<PositionId, std::vector<Plant>> plants;
    for (const Plant& plant : allOf<Plant>()) {
        if (plant.position) {
            plants[*plant.position].push_back(plant);
        }
    }
    for (const auto& [position, list] : plants) {
        for (std::size_t i = 1; i < list.size(); ++i) {
            if (list[i - 1].state != PlantState::growing) {
                EXPECT_LT(*list[i - 1].stateSince, *list[i].planted);
            }
        }
    }
}

TEST(StoryRules, StagesOnlyGoForward) {
    std::map<GenotypeId, Decision> last;
    for (const Decision& decision : allOf<Decision>()) {
        EXPECT_FALSE(decision.reason.empty());
        const auto found = last.find(decision.genotype);
        if (found != last.end()) {
            EXPECT_LT(found->second.stage, decision.stage) << decision.reason;
            EXPECT_LE(found->second.date, decision.date) << decision.reason;
            EXPECT_NE(found->second.stage, Stage::parent);
        }
        last[decision.genotype] = decision;
    }
}

TEST(StoryRules, ScoresAreHalvesFromOneToNine) {
    for (const Score& score : allOf<Score>()) {
        if (score.liking) {
            EXPECT_GE(*score.liking, 1.0);
            EXPECT_LE(*score.liking, 9.0);
            EXPECT_EQ(*score.liking * 2, static_cast<int>(*score.liking * 2));
        } else {
            EXPECT_FALSE(score.words.empty()); // rotten fruit is looked at, not eaten
        }
    }
}

TEST(StoryRules, RottenFruitIsNotEaten) {
    const auto lots = byId<Lot>();
    for (const Score& score : allOf<Score>()) {
        if (lots.at(score.lot).soundness == Soundness::rot) {
            EXPECT_FALSE(score.liking);
        }
    }
}

TEST(StoryRules, EveryOwnGenotypeComesFromACrossMadeBeforeIt) {
    const auto crosses = byId<Cross>();
    std::map<GenotypeId, Date> first;
    for (const Decision& decision : allOf<Decision>()) {
        first.emplace(decision.genotype, decision.date);
    }
    for (const Genotype& genotype : allOf<Genotype>()) {
        if (genotype.cross) {
            const Cross& cross = crosses.at(*genotype.cross);
            EXPECT_LT(cross.cropYear->year, first.at(genotype.id).year()) << genotype.code;
        }
    }
}
