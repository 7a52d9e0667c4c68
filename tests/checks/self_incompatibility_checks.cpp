#include "core/pedigree/self_incompatibility.h"
#include "tests/core/pedigree/families.h"

#include <array>
#include <gtest/gtest.h>
#include <map>
#include <string>
#include <vector>

// S genotypes of apple cultivars. "opened": Matsumoto (2014), Apple pollination biology for stable
// and novel fruit production, International Journal of Agronomy 2014:138271, table 1; Delicious
// from the abstract of "Self-incompatibility alleles of 104 apple cultivars grown in northern
// Europe". "memory": from memory, no document could be opened; facts to be checked, here only the
// input of the rule. The compatibilities were computed from them in R.

namespace pipwright {
namespace {

enum class Source { opened, memory };

struct Cultivar {
    const char* name;
    const char* alleles;
    Source source;
};

const std::vector<Cultivar> kCultivars = {
    {"Golden Delicious", "S2 S3", Source::memory},
    {"Gala", "S2 S5", Source::memory},
    {"Elstar", "S3 S5", Source::memory},
    {"Jonathan", "S7 S9", Source::memory},
    {"Idared", "S3 S7", Source::memory},
    {"Delicious", "S9 S28", Source::opened},
    {"Cox's Orange Pippin", "S5 S9", Source::memory},
    {"Braeburn", "S9 S24", Source::memory},
    {"McIntosh", "S10 S25", Source::memory},
    {"Empire", "S10 S28", Source::memory},
    {"Cortland", "S5 S25", Source::memory},
    {"Spartan", "S9 S10", Source::memory},
    {"James Grieve", "S5 S8", Source::memory},
    {"Worcester Pearmain", "S2 S24", Source::memory},
    {"Akane", "S7 S24", Source::opened},
    {"Tsugaru", "S3 S7", Source::opened},
    {"Sansa", "S5 S7", Source::opened},
    {"Shinano Gold", "S1 S3", Source::opened},
    {"Shinano Red", "S3 S10", Source::opened},
    {"Shinano Sweet", "S1 S7", Source::opened},
    {"Pinova", "S2 S9", Source::memory},
    {"Prima", "S2 S10", Source::memory},
    {"Arlet", "S2 S7", Source::memory},
    {"Fiesta", "S3 S5", Source::memory},
    {"Falstaff", "S2 S8", Source::memory},
    {"Greensleeves", "S3 S8", Source::memory},
    {"Jonagold", "S2 S3 S9", Source::memory},
    {"Mutsu", "S2 S3 S20", Source::memory},
    {"Boskoop", "S2 S3 S5", Source::memory},
};

/// The diploids in the order above, a row for each as seed parent: 0 incompatible, h half of the
/// pollen accepted, 1 all of it.
constexpr std::array kAccepted = {
    "0hh1h11111111h1h1hh1hhhhhh", "h0h111h111h1hh11h111hhhhh1", "hh01h1h111h1h11hhhh111101h",
    "1110hhhh111h11hhh11hh1h111", "h1hh0111111111h0hhhh11hh1h", "111h10hh1h1h11111111h11111",
    "1hhh1h0h11hhh111h111h11h11", "111h1hh0111h1hh11111h11111", "111111110hhh111111h11h1111",
    "11111h11h01h111111h11h1111", "1hh111h1h101h111h111111h11", "111h1hhhhh10111111h1hh1111",
    "1hh111h111h10111h111111hhh", "hh11111h111110h11111hhh1h1", "111hh11h11111h0hh11h11h111",
    "h1hh0111111111h0hhhh11hh1h", "1hhhh1h111h1h1hh011h11hh11", "h1h1h1111111111h10hh111h1h",
    "h1h1h111hh1h111h1h011h1h1h", "111hh111111111hhhh1011h111", "hh1h1hhh111h1h1111110hh1h1",
    "hh111111hh1h1h1111h1h0h1h1", "hh1hh11111111hhhh11hhh01h1", "hh01h1h111h1h11hhhh111101h",
    "hh1111111111hh111111hhh10h", "h1h1h1111111h11h1hh1111hh0",
};

SGenotype of(const std::string& cultivar) {
    for (const Cultivar& one : kCultivars) {
        if (one.name == cultivar) {
            return SGenotype::read(one.alleles).value();
        }
    }
    ADD_FAILURE() << cultivar;
    return SGenotype::read("S1 S2").value();
}

/// "S2 S7 0.25, S2 S9 0.25".
std::string seedlingsOf(const std::string& seed, const std::string& pollen) {
    std::map<std::string, std::string> classes;
    for (const SClass& one : compatibilityOf(of(seed), of(pollen)).seedlings) {
        classes[one.genotype.text()] = one.share == 0.5 ? "1/2" : one.share == 0.25 ? "1/4" : "?";
    }
    std::string text;
    for (const auto& [genotype, share] : classes) {
        text += (text.empty() ? "" : ", ") + genotype + " " + share;
    }
    return text;
}

double accepted(const std::string& seed, const std::string& pollen) {
    const auto result = compatibilityOf(of(seed), of(pollen));
    EXPECT_EQ(result.acceptedLow, result.acceptedHigh);
    return result.acceptedHigh;
}

TEST(SelfIncompatibilityCheck, EveryPairOfDiploids) {
    std::vector<Cultivar> diploids;
    for (const Cultivar& one : kCultivars) {
        if (!of(one.name).isTriploid()) {
            diploids.push_back(one);
        }
    }
    ASSERT_EQ(diploids.size(), kAccepted.size());
    std::map<char, int> pairs;
    for (std::size_t seed = 0; seed < diploids.size(); ++seed) {
        for (std::size_t pollen = 0; pollen < diploids.size(); ++pollen) {
            const char known = kAccepted[seed][pollen];
            pairs[known] += seed == pollen ? 0 : 1;
            EXPECT_EQ(accepted(diploids[seed].name, diploids[pollen].name), known == '0'   ? 0
                                                                            : known == 'h' ? 0.5
                                                                                           : 1)
                << diploids[seed].name << " x " << diploids[pollen].name;
        }
    }
    EXPECT_EQ(pairs['0'], 4);
    EXPECT_EQ(pairs['h'], 242);
    EXPECT_EQ(pairs['1'], 404);
}

TEST(SelfIncompatibilityCheck, ClassesOfSeedlings) {
    EXPECT_EQ(seedlingsOf("Golden Delicious", "Jonathan"),
              "S2 S7 1/4, S2 S9 1/4, S3 S7 1/4, S3 S9 1/4");
    EXPECT_EQ(seedlingsOf("Golden Delicious", "Gala"), "S2 S5 1/2, S3 S5 1/2");
    EXPECT_EQ(seedlingsOf("Gala", "Golden Delicious"), "S2 S3 1/2, S3 S5 1/2")
        << "the reciprocal cross has other seedlings";
    EXPECT_EQ(seedlingsOf("Cox's Orange Pippin", "Elstar"), "S3 S5 1/2, S3 S9 1/2");
    EXPECT_EQ(accepted("Cox's Orange Pippin", "Elstar"), 0.5);
    EXPECT_EQ(accepted("Idared", "Tsugaru"), 0);
    EXPECT_EQ(accepted("Gala", "Gala"), 0);
    EXPECT_EQ(seedlingsOf("Idared", "Tsugaru"), "");
}

TEST(SelfIncompatibilityCheck, TriploidsAsSeedAndAsPollenParents) {
    EXPECT_EQ(accepted("Jonagold", "Golden Delicious"), 0);
    EXPECT_EQ(accepted("Jonagold", "Idared"), 0.5);
    EXPECT_TRUE(compatibilityOf(of("Jonagold"), of("Idared")).triploidSeedParent);
    EXPECT_EQ(seedlingsOf("Jonagold", "Idared"), "") << "mostly aneuploid: not predicted";
    EXPECT_EQ(compatibilityOf(of("Gala"), of("Boskoop")).kind,
              SCompatibility::Kind::triploidPollen);
}

// Fifteen recorded parentages carry one allele of each recorded parent. Agreement supports the
// table, it does not prove it.
TEST(SelfIncompatibilityCheck, AllelesGoWithTheParentages) {
    struct Recorded {
        const char* child;
        const char* seed;
        const char* pollen;
    };
    // Parentages from memory but for Gala (read); "" where the other parent is not in the table.
    const std::vector<Recorded> recorded = {
        {"Gala", "", "Golden Delicious"},
        {"Elstar", "Golden Delicious", ""},
        {"Idared", "Jonathan", ""},
        {"Empire", "McIntosh", "Delicious"},
        {"Cortland", "", "McIntosh"},
        {"Spartan", "McIntosh", ""},
        {"Jonagold", "Golden Delicious", "Jonathan"},
        {"Akane", "Jonathan", "Worcester Pearmain"},
        {"Tsugaru", "Golden Delicious", ""},
        {"Sansa", "Gala", "Akane"},
        {"Mutsu", "Golden Delicious", ""},
        {"Fiesta", "Cox's Orange Pippin", "Idared"},
        {"James Grieve", "", "Cox's Orange Pippin"},
        {"Falstaff", "James Grieve", "Golden Delicious"},
        {"Greensleeves", "James Grieve", "Golden Delicious"},
    };
    std::vector<Parents> parents;
    std::vector<std::optional<SGenotype>> genotypes;
    std::map<std::string, int> number;
    for (const Cultivar& one : kCultivars) {
        number[one.name] = static_cast<int>(parents.size());
        parents.emplace_back();
        genotypes.emplace_back(of(one.name));
    }
    for (const Recorded& one : recorded) {
        const auto at = [&](const std::string& name) {
            return name.empty() ? std::nullopt : std::optional{number.at(name)};
        };
        parents[static_cast<std::size_t>(number.at(one.child))] = {at(one.seed), at(one.pollen)};
    }
    const auto pedigree = Pedigree::of(parents, letterOf).value();
    for (const SInconsistency& one : sInconsistencies(pedigree, genotypes)) {
        ADD_FAILURE() << kCultivars[static_cast<std::size_t>(one.genotype)].name << " fault "
                      << static_cast<int>(one.kind);
    }
    // The check does find a wrong parent: Gala is no child of Jonathan.
    parents[static_cast<std::size_t>(number["Gala"])].pollen = number["Jonathan"];
    EXPECT_EQ(sInconsistencies(Pedigree::of(parents, letterOf).value(), genotypes).size(), 1U);
}

} // namespace
} // namespace pipwright
