#include "core/pedigree/inbreeding.h"
#include "core/pedigree/relationship.h"
#include "tests/checks/tolerances.h"
#include "tests/core/pedigree/families.h"

#include <gtest/gtest.h>
#include <map>
#include <string>
#include <vector>

// Where no other source is named, the values were computed with R 4.2.2 by two independent
// algorithms (tabular method; Meuwissen and Luo 1992).

namespace pipwright {
namespace {

using Numbers = std::vector<double>;

void expectExactly(const Numbers& computed, const Numbers& known) {
    ASSERT_EQ(computed.size(), known.size());
    for (std::size_t i = 0; i < known.size(); ++i) {
        EXPECT_NEAR(computed[i], known[i], kClosedForm) << "number " << i + 1;
    }
}

Numbers rowOf(const RelationshipMatrix& matrix, int row) {
    Numbers numbers;
    for (int column = 0; column < matrix.size(); ++column) {
        numbers.push_back(matrix.at(row, column));
    }
    return numbers;
}

TEST(PedigreeCheck, SmallFamilies) {
    expectExactly(inbreeding(pedigreeOf({{0, 0}, {0, 0}, {1, 2}, {1, 2}, {3, 4}})),
                  {0, 0, 0, 0, .25});
    expectExactly(inbreeding(pedigreeOf({{0, 0}, {0, 0}, {0, 0}, {1, 2}, {1, 3}, {4, 5}})),
                  {0, 0, 0, 0, 0, .125});
    const auto cousins =
        pedigreeOf({{0, 0}, {0, 0}, {0, 0}, {0, 0}, {1, 2}, {1, 2}, {5, 3}, {6, 4}, {7, 8}});
    EXPECT_NEAR(inbreeding(cousins).back(), .0625, kClosedForm);
    const auto doubleCousins = pedigreeOf(
        {{0, 0}, {0, 0}, {0, 0}, {0, 0}, {1, 2}, {1, 2}, {3, 4}, {3, 4}, {5, 7}, {6, 8}, {9, 10}});
    EXPECT_NEAR(inbreeding(doubleCousins).back(), .125, kClosedForm);
    EXPECT_NEAR(RelationshipMatrix{doubleCousins}.at(8, 9), .25, kClosedForm);
}

TEST(PedigreeCheck, RepeatedBackcrossingSibbingAndSelfing) {
    const auto backcross = pedigreeOf({{0, 0}, {0, 0}, {1, 2}, {3, 1}, {1, 4}, {1, 5}, {1, 6}});
    expectExactly(inbreeding(backcross), {0, 0, 0, .25, .375, .4375, .46875});
    EXPECT_NEAR(RelationshipMatrix{backcross}.at(3, 0), .75, kClosedForm);
    const auto sibs = pedigreeOf(
        {{0, 0}, {0, 0}, {1, 2}, {1, 2}, {3, 4}, {3, 4}, {5, 6}, {5, 6}, {7, 8}, {7, 8}, {9, 10}});
    expectExactly(inbreeding(sibs), {0, 0, 0, 0, .25, .25, .375, .375, .5, .5, .59375});
    const auto selfing = pedigreeOf({{0, 0}, {1, 1}, {2, 2}, {3, 3}});
    expectExactly(inbreeding(selfing), {0, .5, .75, .875});
    expectExactly(rowOf(RelationshipMatrix{selfing}, 3), {1, 1.5, 1.75, 1.875});
}

TEST(PedigreeCheck, SelfingFollowedByOpenPollination) {
    const auto pedigree = pedigreeOf({{0, 0}, {0, 0}, {1, 2}, {3, 3}, {4, 4}, {4, 0}, {6, 3}});
    const auto traced = inbreeding(pedigree);
    expectExactly(traced, {0, 0, 0, .5, .75, 0, .25});
    expectExactly(mendelianSampling(pedigree, traced), {1, 1, .5, .5, .25, .625, .5});
    expectExactly(rowOf(RelationshipMatrix{pedigree}, 4), {.5, .5, 1, 1.5, 1.75, .75, .875});
    expectExactly(rowOf(RelationshipMatrix{pedigree}, 6), {.375, .375, .75, .875, .875, .75, 1.25});
}

// Mrode (2014), Linear Models for the Prediction of Animal Breeding Values, 3rd edition,
// example 2.1, pages 24 to 27.
TEST(PedigreeCheck, MrodeExample21) {
    const auto pedigree = pedigreeOf({{0, 0}, {0, 0}, {1, 2}, {1, 0}, {4, 3}, {5, 2}});
    const auto traced = inbreeding(pedigree);
    expectExactly(traced, {0, 0, 0, 0, .125, .125});
    expectExactly(mendelianSampling(pedigree, traced), {1, 1, .5, .75, .5, .46875});
    const RelationshipMatrix matrix{pedigree};
    expectExactly(rowOf(matrix, 4), {.5, .25, .625, .625, 1.125, .6875});
    expectExactly(rowOf(matrix, 5), {.25, .625, .5625, .3125, .6875, 1.125});
    // Row 6 of T in the book: 1 gives .25 and 2 gives .625; the rest of 6 is 4's unknown parent.
    const auto contributions = founderContributions(pedigree, 5);
    ASSERT_EQ(contributions.founders.size(), 2U);
    EXPECT_EQ(contributions.founders[0].founder, 1);
    EXPECT_NEAR(contributions.founders[0].share, .625, kClosedForm);
    EXPECT_NEAR(contributions.founders[1].share, .25, kClosedForm);
    EXPECT_NEAR(contributions.unknown, .125, kClosedForm);
}

// Mrode (2014), example 4.1, page 64: the pedigree; its inbreeding computed in R.
TEST(PedigreeCheck, MrodeExample41) {
    const auto pedigree =
        pedigreeOf({{0, 0}, {0, 0}, {0, 0}, {1, 2}, {3, 2}, {1, 5}, {3, 4}, {1, 7}});
    const auto traced = inbreeding(pedigree);
    expectExactly(traced, {0, 0, 0, 0, 0, 0, 0, .125});
    EXPECT_NEAR(coancestry(pedigree, traced, 7, 5), .40625 / 2, kClosedForm);
}

/// Cultivars by name, entered in the order given.
class Cultivars {
  public:
    void add(const std::string& name, const std::string& seed = "",
             const std::string& pollen = "") {
        m_index.emplace(name, static_cast<int>(m_parents.size()));
        m_parents.push_back({indexOf(seed), indexOf(pollen)});
    }

    [[nodiscard]] int at(const std::string& name) const { return m_index.at(name); }
    [[nodiscard]] Pedigree pedigree() const { return Pedigree::of(m_parents, letterOf).value(); }
    /// The expected contribution of a founder; 0 when it is none.
    [[nodiscard]] double share(const std::string& founder, const std::string& of) const {
        for (const auto& part : founderContributions(pedigree(), at(of)).founders) {
            if (part.founder == at(founder)) {
                return part.share;
            }
        }
        return 0;
    }

  private:
    [[nodiscard]] std::optional<int> indexOf(const std::string& name) const {
        return name.empty() ? std::nullopt : std::optional{m_index.at(name)};
    }

    std::map<std::string, int> m_index;
    std::vector<Parents> m_parents;
};

// Parentages of apple cultivars as generally published (Gala and Kidd's Orange Red read in
// encyclopaedia articles), founders taken as unrelated; the numbers computed in R.
Cultivars apples() {
    Cultivars apples;
    for (const char* founder : {"Cox's Orange Pippin", "Delicious", "Golden Delicious", "Jonathan",
                                "Wagener", "McIntosh"}) {
        apples.add(founder);
    }
    apples.add("Kidd's Orange Red", "Cox's Orange Pippin", "Delicious");
    apples.add("Gala", "Kidd's Orange Red", "Golden Delicious");
    apples.add("Ingrid Marie", "Cox's Orange Pippin");
    apples.add("Elstar", "Golden Delicious", "Ingrid Marie");
    apples.add("Idared", "Jonathan", "Wagener");
    apples.add("Empire", "McIntosh", "Delicious");
    apples.add("Gala x Elstar", "Gala", "Elstar");
    apples.add("Idared x Elstar", "Idared", "Elstar");
    apples.add("Gala x Empire", "Gala", "Empire");
    apples.add("Elstar open pollinated", "Elstar");
    return apples;
}

TEST(PedigreeCheck, InbreedingOfPlannedAppleCrosses) {
    const Cultivars known = apples();
    const Pedigree pedigree = known.pedigree();
    const auto traced = inbreeding(pedigree);
    const auto ofCross = [&](const char* seed, const char* pollen) {
        return coancestry(pedigree, traced, known.at(seed), known.at(pollen));
    };
    EXPECT_NEAR(ofCross("Gala", "Elstar"), 0.15625, kClosedForm);
    EXPECT_NEAR(ofCross("Gala", "Empire"), 0.0625, kClosedForm);
    EXPECT_NEAR(ofCross("Idared", "Elstar"), 0, kClosedForm);
    const auto index = [&](const char* name) { return static_cast<std::size_t>(known.at(name)); };
    EXPECT_NEAR(traced[index("Gala x Elstar")], 0.15625, kClosedForm);
    EXPECT_NEAR(traced[index("Elstar open pollinated")], 0, kClosedForm);
    EXPECT_NEAR(mendelianSampling(pedigree, traced)[index("Elstar open pollinated")], 0.75,
                kClosedForm);
}

TEST(PedigreeCheck, FoundersOfPlannedAppleCrosses) {
    const Cultivars known = apples();
    EXPECT_NEAR(known.share("Golden Delicious", "Gala x Elstar"), .5, kClosedForm);
    EXPECT_NEAR(known.share("Cox's Orange Pippin", "Gala x Elstar"), .25, kClosedForm);
    EXPECT_NEAR(known.share("Delicious", "Gala x Elstar"), .125, kClosedForm);
    EXPECT_NEAR(known.share("Delicious", "Gala x Empire"), .375, kClosedForm);
    EXPECT_NEAR(known.share("Golden Delicious", "Gala x Empire"), .25, kClosedForm);
    EXPECT_NEAR(known.share("McIntosh", "Gala x Empire"), .25, kClosedForm);
    EXPECT_NEAR(known.share("Cox's Orange Pippin", "Gala x Empire"), .125, kClosedForm);
    EXPECT_NEAR(known.share("Jonathan", "Idared x Elstar"), .25, kClosedForm);
    EXPECT_NEAR(known.share("Wagener", "Idared x Elstar"), .25, kClosedForm);
    EXPECT_NEAR(known.share("Golden Delicious", "Idared x Elstar"), .25, kClosedForm);
    EXPECT_NEAR(known.share("Golden Delicious", "Elstar open pollinated"), .25, kClosedForm);
    EXPECT_NEAR(known.share("Cox's Orange Pippin", "Elstar open pollinated"), .125, kClosedForm);
    EXPECT_NEAR(known.share("Cox's Orange Pippin", "Idared x Elstar"), .125, kClosedForm);
    const auto unknown = [&](const char* name) {
        return founderContributions(known.pedigree(), known.at(name)).unknown;
    };
    EXPECT_NEAR(unknown("Gala x Elstar"), .125, kClosedForm);
    EXPECT_NEAR(unknown("Idared x Elstar"), .125, kClosedForm);
    EXPECT_NEAR(unknown("Gala x Empire"), 0, kClosedForm);
    EXPECT_NEAR(unknown("Elstar open pollinated"), .625, kClosedForm);
}

// D. M. Hunter (1999), Pear Selections and Cultivars, Compact Fruit Tree, February 1999: the
// parentages; the numbers computed in R.
TEST(PedigreeCheck, APearBredBackToOneParent) {
    Cultivars pears;
    pears.add("Bartlett");
    pears.add("Seckel");
    pears.add("Barseck", "Bartlett", "Seckel");
    pears.add("Michigan 572", "Bartlett", "Barseck");
    pears.add("Harvest Queen", "Bartlett", "Michigan 572");
    pears.add("Purdue 80-51");
    pears.add("H6516-2.046", "Bartlett", "Purdue 80-51");
    pears.add("the selection", "H6516-2.046", "Harvest Queen");
    const auto pedigree = pears.pedigree();
    const auto traced = inbreeding(pedigree);
    expectExactly(traced, {0, 0, 0, .25, .375, 0, 0, .21875});
    const auto sampling = mendelianSampling(pedigree, traced);
    EXPECT_NEAR(sampling[static_cast<std::size_t>(pears.at("Harvest Queen"))], .4375, kClosedForm);
    EXPECT_NEAR(sampling[static_cast<std::size_t>(pears.at("the selection"))], .40625, kClosedForm);
    EXPECT_NEAR(pears.share("Bartlett", "Harvest Queen"), .875, kClosedForm);
    EXPECT_NEAR(pears.share("Seckel", "Harvest Queen"), .125, kClosedForm);
    EXPECT_NEAR(RelationshipMatrix{pedigree}.at(pears.at("the selection"), pears.at("Bartlett")),
                .6875, kClosedForm);
}

} // namespace
} // namespace pipwright
