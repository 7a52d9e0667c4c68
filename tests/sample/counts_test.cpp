#include "core/orchard/dictionary.h"
#include "core/pedigree/inbreeding.h"
#include "tests/sample/sample_book.h"

#include <algorithm>
#include <set>

#include "sample-data/generator/large_book.h"

using namespace pipwright;

namespace {

bool isOwn(const Genotype& genotype) {
    return genotype.kind == GenotypeKind::seedling || genotype.kind == GenotypeKind::selection;
}

std::map<GenotypeId, Stage> stages() {
    std::map<GenotypeId, Stage> newest;
    for (const Decision& decision : allOf<Decision>()) { // ids stand in the order of time
        newest[decision.genotype] = decision.stage;
    }
    return newest;
}

} // namespace

TEST(SampleCounts, AreAsPromised) {
    std::set<CrossId> families;
    int seedlings = 0;
    int benchmarks = 0;
    int triploids = 0;
    for (const Genotype& genotype : allOf<Genotype>()) {
        seedlings += isOwn(genotype) ? 1 : 0;
        benchmarks += genotype.benchmark && genotype.kind == GenotypeKind::cultivar ? 1 : 0;
        triploids += genotype.ploidy == 3 && genotype.species == shippedSpeciesId("apple") ? 1 : 0;
        if (genotype.cross) {
            families.insert(*genotype.cross);
        }
    }
    EXPECT_GE(seedlings, 440);
    EXPECT_LE(seedlings, 460);
    EXPECT_EQ(families.size(), 25U);
    EXPECT_EQ(benchmarks, 16);
    EXPECT_EQ(triploids, 1);
    const auto people = allOf<Person>();
    const auto grows = [](const Person& person) { return person.grows; };
    EXPECT_EQ(std::count_if(people.begin(), people.end(),
                            [](const Person& person) { return person.tastes; }),
              3);
    EXPECT_EQ(std::count_if(people.begin(), people.end(), grows), 2);
    EXPECT_EQ(allOf<Site>().size(), 2U);
    EXPECT_EQ(allOf<TrialRow>().size(), 11U);
    EXPECT_EQ(allOf<Report>().size(), 2U);
    EXPECT_GE(allOf<Photo>().size(), 24U);
}

TEST(SampleCounts, HaveGenotypesAtEveryStageFromNurseryOn) {
    std::set<Stage> found;
    for (const auto& [genotype, stage] : stages()) {
        found.insert(stage);
    }
    for (const Stage stage :
         {Stage::nursery, Stage::juvenile, Stage::bearing, Stage::watched, Stage::selection,
          Stage::advanced, Stage::named, Stage::released, Stage::parent, Stage::culled}) {
        EXPECT_TRUE(found.contains(stage)) << keyOf(stage);
    }
}

TEST(SampleCounts, HaveRepeatedParents) {
    const auto crosses = byId<Cross>();
    const auto genotypes = allOf<Genotype>();
    std::map<GenotypeId, int> place;
    for (std::size_t i = 0; i < genotypes.size(); ++i) {
        place[genotypes[i].id] = static_cast<int>(i);
    }
    std::vector<Parents> parents(genotypes.size());
    for (std::size_t i = 0; i < genotypes.size(); ++i) {
        if (genotypes[i].cross) {
            const Cross& cross = crosses.at(*genotypes[i].cross);
            parents[i].seed = place.at(*cross.seedParent);
            if (cross.pollenParent) {
                parents[i].pollen = place.at(*cross.pollenParent);
            }
        }
    }
    const auto pedigree = Pedigree::of(
        parents, [&](int index) { return genotypes[static_cast<std::size_t>(index)].code; });
    ASSERT_TRUE(pedigree) << pedigree.problem().sentence();
    const auto coefficients = inbreeding(*pedigree);
    const auto inbred = [&](double value) {
        return std::count(coefficients.begin(), coefficients.end(), value);
    };
    EXPECT_EQ(inbred(0.25), 18 + 24); // full sisters; a daughter back to her mother
    EXPECT_EQ(inbred(0.125), 18);     // half sisters
    int openPollinated = 0;
    for (const auto& [id, cross] : crosses) {
        openPollinated += cross.pollination == Pollination::open ? 1 : 0;
    }
    EXPECT_GE(openPollinated, 2);
}

TEST(SampleCounts, HaveGapsReplantsAndTwoTreesAtOneStake) {
    std::map<PositionId, int> plants;
    std::map<PositionId, int> standing;
    for (const Plant& plant : allOf<Plant>()) {
        if (plant.position) {
            ++plants[*plant.position];
            standing[*plant.position] += plant.state == PlantState::growing ? 1 : 0;
        }
    }
    int gaps = 0;
    int replanted = 0;
    std::vector<PositionId> shared;
    const auto positions = byId<Position>();
    for (const auto& [id, position] : positions) {
        gaps += position.notes.starts_with("left free") && plants[id] == 0 ? 1 : 0;
        replanted += plants[id] > standing[id] && standing[id] == 1 ? 1 : 0;
        if (standing[id] > 1) {
            shared.push_back(id);
        }
    }
    EXPECT_GE(gaps, 5);
    EXPECT_GE(replanted, 10);
    ASSERT_EQ(shared.size(), 1U);
    const Position& stake = positions.at(shared.front());
    EXPECT_EQ(byId<TrialRow>().at(stake.row).name, "C");
    EXPECT_EQ(stake.distance, 3.40);
}

TEST(SampleCounts, HaveUndoneAndRedoneEdits) {
    JournalRequest all;
    all.limit = 100'000;
    all.withChanges = false;
    const auto journal = sampleBook().journal(all);
    ASSERT_TRUE(journal);
    std::map<EntryKind, int> kinds;
    for (const JournalEntry& entry : *journal) {
        ++kinds[entry.kind];
        EXPECT_FALSE(entry.sentence.empty()) << entry.position;
    }
    EXPECT_GE(kinds[EntryKind::undo], 3);
    EXPECT_GE(kinds[EntryKind::redo], 1);
    for (std::size_t i = 1; i < journal->size(); ++i) { // newest first
        EXPECT_GT((*journal)[i - 1].moment, (*journal)[i].moment) << (*journal)[i].sentence;
    }
}

TEST(LargeBook, HasTheTreesAndScoresAskedForAndIsTheSameTwice) {
    const sample::LargeBook wanted{1200, 3001, 7};
    MemoryStore one;
    MemoryStore two;
    ASSERT_TRUE(sample::makeLargeBook(one, wanted));
    ASSERT_TRUE(sample::makeLargeBook(two, wanted));
    EXPECT_EQ(*one.count(Kind::plant), 1200);
    EXPECT_EQ(*one.count(Kind::score), 3001);
    const auto first = one.journal({});
    const auto second = two.journal({});
    ASSERT_EQ(first->size(), 1U);
    EXPECT_EQ(first->front().kind, EntryKind::baseline);
    EXPECT_EQ(first->front().digest, second->front().digest);
}
