#include "core/orchard/dictionary.h"
#include "tests/sample/sample_book.h"

#include <set>

using namespace pipwright;

namespace {

/// Every word of a vocabulary stands in that field somewhere, "unknown" included.
void expectAllWords(Kind kind, std::string_view field) {
    const auto index = fieldIndex(kind, field);
    ASSERT_TRUE(index) << field;
    std::set<std::string> used;
    ASSERT_TRUE(sampleBook().scan(kind, {{*index}, {}}, [&](const Record& record) {
        used.insert(std::get<std::string>(record.values[*index]));
        return true;
    }));
    for (const std::string_view word : fieldsOf(kind)[*index].words) {
        EXPECT_TRUE(used.contains(std::string(word))) << field << " " << word;
    }
}

} // namespace

TEST(SampleConditions, UseEveryWordOfALot) {
    for (const char* field :
         {"origin", "bag", "soundness", "storage", "ripeness", "canopy_place", "crop_load"}) {
        expectAllWords(Kind::lot, field);
    }
}

TEST(SampleConditions, UseEveryVerdictAndSight) {
    expectAllWords(Kind::score, "verdict");
    expectAllWords(Kind::tasting, "sight");
}

TEST(SampleConditions, UseEveryWalkMark) {
    std::set<TraitStateId> used;
    for (const Observation& seen : allOf<Observation>()) {
        if (seen.state) {
            used.insert(*seen.state);
        }
    }
    for (const WalkMark mark :
         {WalkMark::notYet, WalkMark::ripening, WalkMark::ripe, WalkMark::over, WalkMark::gone}) {
        EXPECT_TRUE(used.contains(stateOf(mark))) << keyOf(mark);
    }
}

TEST(SampleConditions, KnowEveryConfidenceOfAnIdentity) {
    expectAllWords(Kind::identity, "confidence");
}

TEST(SampleConditions, KeepFruitThatWasOnlySaidToBeABenchmark) {
    int bought = 0;
    for (const Lot& lot : allOf<Lot>()) {
        bought += lot.claimedGenotype && !lot.plant && !lot.source.empty() ? 1 : 0;
    }
    EXPECT_GE(bought, 1);
}
