#include "core/pedigree/self_incompatibility.h"
#include "tests/core/pedigree/families.h"

#include <numeric>

namespace pipwright {
namespace {

using Kind = SCompatibility::Kind;

SGenotype s(std::string_view text) {
    const auto read = SGenotype::read(text);
    EXPECT_TRUE(read.ok()) << text;
    return read.value();
}

std::string rereadGenotype(std::string_view text) {
    const auto read = SGenotype::read(text);
    return read ? read->text() : read.problem().what;
}

TEST(SGenotype, IsReadInTheWaysItIsWritten) {
    for (const char* text : {"S2 S5", "S2S5", "s5s2", "2 5", "5/2", "S2, S5", " S5 ; 2 "}) {
        EXPECT_EQ(rereadGenotype(text), "S2 S5") << text;
    }
    EXPECT_EQ(rereadGenotype("S10 S9"), "S9 S10");
    EXPECT_EQ(rereadGenotype("S9 S3 S2"), "S2 S3 S9");
    EXPECT_EQ(rereadGenotype("S16b Sf"), "S16b Sf");
    EXPECT_EQ(rereadGenotype("S7"), "S7 S?");
    EXPECT_EQ(rereadGenotype("S? S7"), "S7 S?");
    EXPECT_EQ(rereadGenotype(""), "No S allele is given.");
    EXPECT_EQ(rereadGenotype("1 2 3 4"), "More S alleles are given than a triploid has.");
    EXPECT_EQ(rereadGenotype("not known"), "\"not\" is no S allele.");
    EXPECT_EQ(rereadGenotype("S2 S"), "\"S\" is no S allele.");
    EXPECT_TRUE(s("1 2 3").isTriploid());
    EXPECT_FALSE(s("1 2").isTriploid());
}

TEST(SCompatibility, SharesOfSeedlingsSumToOne) {
    const std::uint64_t seed = 138271;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    int predicted = 0;
    for (int round = 0; round < 500; ++round) {
        const auto any = [&] {
            return s(std::to_string(1 + random() % 5) + " " + std::to_string(1 + random() % 5));
        };
        const SGenotype mother = any();
        const SGenotype father = any();
        const auto result = compatibilityOf(mother, father);
        EXPECT_EQ(result.acceptedLow, result.acceptedHigh);
        EXPECT_EQ(result.seedlings.empty(), result.kind == Kind::incompatible);
        double sum = 0;
        for (const SClass& one : result.seedlings) {
            sum += one.share;
            // What the seed parent rejects no seedling has from the pollen parent.
            const auto child = std::vector<std::optional<SGenotype>>{mother, father, one.genotype};
            EXPECT_TRUE(sInconsistencies(pedigreeOf({{0, 0}, {0, 0}, {1, 2}}), child).empty());
        }
        if (!result.seedlings.empty()) {
            ++predicted;
            EXPECT_NEAR(sum, 1, 1e-12);
        }
    }
    EXPECT_GT(predicted, 100);
}

TEST(SCompatibility, WhatIsNotKnownDecidesNothing) {
    const auto half = compatibilityOf(s("2 5"), s("5 ?"));
    EXPECT_EQ(half.kind, Kind::notKnown);
    EXPECT_EQ(half.acceptedLow, 0);
    EXPECT_EQ(half.acceptedHigh, 0.5);
    EXPECT_TRUE(half.seedlings.empty());
    const auto open = compatibilityOf(s("2 ?"), s("5 7"));
    EXPECT_EQ(open.acceptedLow, 0);
    EXPECT_EQ(open.acceptedHigh, 1);
    EXPECT_EQ(compatibilityOf(s("2 ?"), s("2 2")).kind, Kind::incompatible);
    EXPECT_EQ(compatibilityOfSelfing().kind, Kind::incompatible);
    EXPECT_EQ(compatibilityOfSelfing().acceptedHigh, 0);
}

TEST(SCompatibility, TriploidsAreNotPredicted) {
    const auto pollen = compatibilityOf(s("2 5"), s("1 3 7"));
    EXPECT_EQ(pollen.kind, Kind::triploidPollen);
    EXPECT_TRUE(pollen.seedlings.empty());
    const auto seed = compatibilityOf(s("1 3 7"), s("2 7"));
    EXPECT_EQ(seed.kind, Kind::semiCompatible);
    EXPECT_TRUE(seed.triploidSeedParent);
    EXPECT_TRUE(seed.seedlings.empty());
}

TEST(SInconsistencies, SayWhichParentCannotBe) {
    using Fault = SInconsistency::Kind;
    const auto pedigree = pedigreeOf({{0, 0}, {0, 0}, {1, 2}});
    const auto faultOf = [&](const char* mother, const char* father,
                             const char* child) -> std::optional<Fault> {
        std::vector<std::optional<SGenotype>> genotypes;
        for (const char* text : {mother, father, child}) {
            genotypes.push_back(*text == '-' ? std::nullopt : std::optional{s(text)});
        }
        const auto faults = sInconsistencies(pedigree, genotypes);
        EXPECT_LE(faults.size(), 1U);
        return faults.empty() ? std::nullopt : std::optional{faults.front().kind};
    };
    EXPECT_EQ(faultOf("2 3", "7 9", "2 9"), std::nullopt);
    EXPECT_EQ(faultOf("2 3", "7 9", "7 9"), Fault::notFromSeedParent);
    EXPECT_EQ(faultOf("2 3", "7 9", "2 3"), Fault::notFromPollenParent);
    EXPECT_EQ(faultOf("2 3", "2 9", "2 4"), Fault::notFromBoth);
    EXPECT_EQ(faultOf("2 3", "2 9", "2 3"), Fault::neededRejectedPollen);
    EXPECT_EQ(faultOf("2 3", "-", "3 4"), std::nullopt);
    EXPECT_EQ(faultOf("2 3", "-", "4 5"), Fault::notFromSeedParent);
    EXPECT_EQ(faultOf("-", "7 9", "4 5"), Fault::notFromPollenParent);
    EXPECT_EQ(faultOf("2 ?", "7 9", "4 7"), std::nullopt);
    EXPECT_EQ(faultOf("2 3", "7 9", "4 ?"), Fault::notFromBoth) << "4 is of neither";
    EXPECT_EQ(faultOf("2 3", "7 9", "2 3 9"), std::nullopt) << "two of the seed parent";
    EXPECT_EQ(faultOf("2 3", "7 9", "2 7 9"), std::nullopt) << "two of the pollen parent";
    EXPECT_EQ(faultOf("2 3", "7 9", "2 3 5"), Fault::notFromPollenParent);
    EXPECT_EQ(faultOf("2 3", "7 9", "-"), std::nullopt);
}

} // namespace
} // namespace pipwright
