#include "core/plan/cross_outlook.h"
#include "tests/support/small_orchard.h"

#include <gtest/gtest.h>

namespace pipwright {
namespace {

/// Ash Tarn and Russet Moor, and whatever a test makes of them.
class ParentsOrchard : public test::SmallOrchard {
  public:
    void edit(const Genotype& before, const Genotype& after) {
        ChangeSet set;
        set.sentence = "Genotype";
        set.edit(before, after);
        apply(set);
    }

    void giveAlleles(Genotype& genotype, const std::string& alleles) {
        const Genotype before = genotype;
        genotype.selfAlleles = alleles;
        edit(before, genotype);
    }

    void setPloidy(Genotype& genotype, std::int64_t ploidy) {
        const Genotype before = genotype;
        genotype.ploidy = ploidy;
        edit(before, genotype);
    }

    /// A seedling of the cross AT17 without a plant.
    Genotype child(const std::string& code, const std::string& alleles = {}) {
        Genotype genotype;
        genotype.id = GenotypeId(ids.make());
        genotype.code = code;
        genotype.kind = GenotypeKind::seedling;
        genotype.species = shippedSpeciesId("apple");
        genotype.cross = cross.id;
        genotype.selfAlleles = alleles;
        ChangeSet set;
        set.sentence = "Seedling";
        set.create(genotype);
        apply(set);
        return genotype;
    }

    CrossOutlook outlook(const std::optional<Genotype>& seed, const std::optional<Genotype>& pollen,
                         Pollination pollination = Pollination::controlled,
                         std::optional<int> year = 2026, std::optional<CrossId> made = {}) {
        const auto seen = view();
        const auto at = [&](const std::optional<Genotype>& one) {
            return one ? seen->genotype(one->id) : std::nullopt;
        };
        const auto crop = year ? std::optional{CropYear{*year}} : std::nullopt;
        auto result = outlookOf(*seen, store(), {at(seed), at(pollen), pollination, crop, made});
        if (!result) {
            throw std::runtime_error(result.problem().sentence());
        }
        return *result;
    }

    std::string nameOf(Index genotype) { return view()->genotypes()[genotype].called(); }
};

TEST(CrossOutlook, PollenByTheAllelesOfTheBook) {
    ParentsOrchard orchard;
    EXPECT_EQ(orchard.outlook(orchard.mother, orchard.father).sWord, SWord::allelesMissing);
    orchard.giveAlleles(orchard.mother, "S2 S5");
    orchard.giveAlleles(orchard.father, "S5 S7");
    const auto half = orchard.outlook(orchard.mother, orchard.father);
    ASSERT_EQ(half.sWord, SWord::predicted);
    EXPECT_EQ(half.compatibility->kind, SCompatibility::Kind::semiCompatible);
    EXPECT_EQ(half.compatibility->seedlings.size(), 2U);
    EXPECT_FALSE(half.incompatibilityUnsure) << "apples are known to reject their own pollen";
    EXPECT_EQ(orchard.outlook(orchard.mother, orchard.mother).compatibility->kind,
              SCompatibility::Kind::incompatible);
    EXPECT_EQ(orchard.outlook(orchard.mother, {}, Pollination::self).compatibility->kind,
              SCompatibility::Kind::incompatible);
    EXPECT_EQ(orchard.outlook(orchard.mother, {}).sWord, SWord::pollenUnknown);
    orchard.giveAlleles(orchard.father, "not tested");
    EXPECT_EQ(orchard.outlook(orchard.mother, orchard.father).sWord, SWord::unreadable);
}

TEST(CrossOutlook, WhatTheParentsOfAParentLeaveOpen) {
    ParentsOrchard orchard;
    const Genotype child = orchard.child("AT17-001");
    const Genotype other = orchard.child("AT17-002");
    EXPECT_FALSE(orchard.outlook(child, orchard.mother).possible) << "nothing is written down";
    orchard.giveAlleles(orchard.mother, "S2 S5");
    orchard.giveAlleles(orchard.father, "S5 S7");
    const auto back = orchard.outlook(child, orchard.father);
    EXPECT_EQ(back.sWord, SWord::allelesMissing);
    ASSERT_EQ(back.seedPossible.size(), 2U);
    for (const SClass& one : back.seedPossible) { // S7 came with the pollen, S5 was rejected
        EXPECT_NEAR(one.share, 0.5, 1e-12);
        EXPECT_TRUE(one.genotype.text() == "S2 S7" || one.genotype.text() == "S5 S7");
    }
    ASSERT_TRUE(back.possible); // S5 S7 on S2 S7: half; on S5 S7: none
    EXPECT_EQ(back.possible->acceptedLow, 0);
    EXPECT_EQ(back.possible->acceptedHigh, 0.5);
    EXPECT_NEAR(back.possible->acceptedMean, 0.25, 1e-12);
    const auto sibs = orchard.outlook(child, other); // alike: none; unlike: half
    ASSERT_TRUE(sibs.possible);
    EXPECT_NEAR(sibs.possible->acceptedMean, 0.25, 1e-12);
    orchard.giveAlleles(orchard.father, "S2 S5"); // rejected: then it is not the father
    EXPECT_TRUE(orchard.outlook(child, orchard.mother).seedPossible.empty());
}

TEST(CrossOutlook, KinshipAndFounders) {
    ParentsOrchard orchard;
    const Genotype one = orchard.child("AT17-001");
    const Genotype other = orchard.child("AT17-002");
    const auto sibs = orchard.outlook(one, other);
    ASSERT_TRUE(sibs.inbreeding);
    EXPECT_DOUBLE_EQ(*sibs.inbreeding, 0.25);
    ASSERT_EQ(sibs.founders.size(), 2U);
    EXPECT_DOUBLE_EQ(sibs.founders[0].share, 0.5);
    EXPECT_EQ(sibs.unknownShare, 0);
    const auto back = orchard.outlook(one, orchard.mother);
    EXPECT_DOUBLE_EQ(*back.inbreeding, 0.25);
    EXPECT_EQ(orchard.nameOf(back.founders[0].founder), "Ash Tarn");
    EXPECT_DOUBLE_EQ(back.founders[0].share, 0.75);
    const auto selfed = orchard.outlook(one, {}, Pollination::self);
    EXPECT_DOUBLE_EQ(*selfed.inbreeding, 0.5);
}

TEST(CrossOutlook, OpenPollinationByAnyOfTheGrowingTrees) {
    ParentsOrchard orchard;
    const auto row = orchard.row(1);
    orchard.seedling(row, 1, "AT17-001");
    orchard.seedling(row, 2, "AT17-002");
    const Genotype notPlanted = orchard.child("AT17-003");
    const auto open = orchard.outlook(notPlanted, {}, Pollination::open);
    EXPECT_FALSE(open.inbreeding);
    ASSERT_TRUE(open.anyFather);
    EXPECT_EQ(open.anyFather->fathers, 2);
    EXPECT_DOUBLE_EQ(open.anyFather->meanInbreeding, 0.25);
    EXPECT_DOUBLE_EQ(open.anyFather->mostInbreeding, 0.25);
    EXPECT_DOUBLE_EQ(open.unknownShare, 0.5);
    EXPECT_FALSE(orchard.outlook(notPlanted, {}, Pollination::unknown).anyFather);
    const auto seedUnknown = orchard.outlook({}, notPlanted);
    EXPECT_FALSE(seedUnknown.inbreeding);
    EXPECT_DOUBLE_EQ(seedUnknown.unknownShare, 0.5);
}

TEST(CrossOutlook, TriploidsTakeFAway) {
    ParentsOrchard orchard;
    orchard.setPloidy(orchard.father, 3);
    const auto direct = orchard.outlook(orchard.mother, orchard.father);
    EXPECT_FALSE(direct.inbreeding);
    ASSERT_TRUE(direct.noF);
    EXPECT_NE(direct.noF->what.find("Russet Moor is a triploid"), std::string::npos);
    EXPECT_EQ(direct.triploids.size(), 1U);
    EXPECT_TRUE(direct.unsureShares);
    const auto later = orchard.outlook(orchard.child("AT17-001"), orchard.mother);
    EXPECT_TRUE(later.noF);
    EXPECT_TRUE(later.triploids.empty());
}

TEST(CrossOutlook, FindsSeedlingsThatCannotBe) {
    ParentsOrchard orchard;
    orchard.giveAlleles(orchard.mother, "S2 S5");
    orchard.giveAlleles(orchard.father, "S5 S7");
    orchard.child("AT17-001", "S2 S7");
    orchard.child("AT17-002", "S2 S9");
    orchard.child("AT17-003");
    const auto outlook = orchard.outlook(orchard.mother, orchard.father, Pollination::controlled,
                                         2017, orchard.cross.id);
    ASSERT_EQ(outlook.contradicted.size(), 1U);
    EXPECT_EQ(orchard.nameOf(outlook.contradicted[0]), "AT17-002");
}

TEST(CrossOutlook, ASeedlingIsNoParentInItsOwnYear) {
    ParentsOrchard orchard;
    const Genotype child = orchard.child("AT17-001");
    EXPECT_TRUE(orchard.outlook(child, orchard.mother).tooYoung.empty());
    const auto outlook = orchard.outlook(child, orchard.mother, Pollination::controlled, 2017);
    ASSERT_EQ(outlook.tooYoung.size(), 1U);
    EXPECT_EQ(orchard.nameOf(outlook.tooYoung[0]), "AT17-001");
}

} // namespace
} // namespace pipwright
