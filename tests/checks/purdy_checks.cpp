#include "core/pedigree/inbreeding.h"
#include "core/pedigree/purdy.h"

#include <gtest/gtest.h>
#include <map>
#include <optional>
#include <string>
#include <vector>

// Purdy, Loegering, Konzak, Peterson and Allan (1968), A proposed standard method for
// illustrating pedigrees of small grain varieties, Crop Science 8:405-406.

namespace pipwright {
namespace {

Descent named(const char* name) {
    return Descent::of(name);
}

Descent descentOf(const char* line) {
    const auto descent = readPurdy(line);
    EXPECT_TRUE(descent.ok()) << line;
    return descent ? *descent : Descent::nothingKnown();
}

// GrainGenes, "About Cultivar Pedigrees": the wheat Scout is the cross of
// (Nebred x (Hope x Turkey Red)) with (Cheyenne x Ponca).
TEST(PurdyCheck, Scout) {
    const Descent scout = Descent::cross(
        Descent::cross(named("Nebred"), Descent::cross(named("Hope"), named("Turkey Red"))),
        Descent::cross(named("Cheyenne"), named("Ponca")));
    EXPECT_EQ(descentOf("Nebred /2/ Hope / Turkey Red /3/ Cheyenne / Ponca"), scout);
    EXPECT_EQ(writePurdy(scout), "Nebred//Hope/Turkey Red/3/Cheyenne/Ponca");
}

// Course page on plant pedigrees: A/B*3 stands for A/B//B///B.
TEST(PurdyCheck, TheOtherWayToWriteABackcross) {
    EXPECT_EQ(descentOf("A/B*3"), descentOf("A/B//B///B"));
}

// Published parentage of Gala: (Cox's Orange Pippin x Delicious) x Golden Delicious.
TEST(PurdyCheck, Gala) {
    const Descent gala =
        Descent::cross(Descent::cross(named("Cox's Orange Pippin"), named("Delicious")),
                       named("Golden Delicious"));
    EXPECT_EQ(descentOf("Cox's Orange Pippin/Delicious//Golden Delicious"), gala);
    EXPECT_EQ(writePurdy(gala), "Cox's Orange Pippin/Delicious//Golden Delicious");
}

// Hunter (1999): Harvest Queen is Bartlett x (Bartlett x (Bartlett x Seckel)).
TEST(PurdyCheck, HarvestQueen) {
    const Descent barseck = Descent::cross(named("Bartlett"), named("Seckel"));
    const Descent harvestQueen =
        Descent::cross(named("Bartlett"), Descent::cross(named("Bartlett"), barseck));
    EXPECT_EQ(descentOf("Bartlett/3/Bartlett//Bartlett/Seckel"), harvestQueen);
    EXPECT_EQ(descentOf("Bartlett*3/Seckel"), harvestQueen);
    EXPECT_EQ(writePurdy(harvestQueen), "Bartlett*3/Seckel");
}

/// The pedigree a line stands for: names are single genotypes, each cross is one of its own.
class WrittenPedigree {
  public:
    explicit WrittenPedigree(const Descent& descent) : m_last(add(descent)) {}

    [[nodiscard]] int last() const { return m_last; }
    [[nodiscard]] int at(const std::string& name) const { return m_named.at(name); }
    [[nodiscard]] Pedigree pedigree() const {
        return Pedigree::of(m_parents, [](int) { return std::string(); }).value();
    }

  private:
    int add(const Descent& descent) {
        if (descent.form == Descent::Form::named && m_named.contains(descent.name)) {
            return m_named[descent.name];
        }
        Parents both;
        if (!descent.parents.empty()) {
            both.seed = add(descent.parents[0]);
            both.pollen = descent.form == Descent::Form::selfed ? both.seed
                          : descent.parents.size() > 1 ? std::optional{add(descent.parents[1])}
                                                       : std::nullopt;
        }
        const int number = static_cast<int>(m_parents.size());
        m_parents.push_back(both);
        if (descent.form == Descent::Form::named) {
            m_named[descent.name] = number;
        }
        return number;
    }

    std::vector<Parents> m_parents;
    std::map<std::string, int> m_named;
    int m_last;
};

// Three doses of Bartlett: contribution and inbreeding computed in R; the same as Harvest Queen's.
TEST(PurdyCheck, DosesOfBartlett) {
    for (const char* line : {"Bartlett*3/Seckel", "Bartlett/3/Bartlett//Bartlett/Seckel"}) {
        const WrittenPedigree written{descentOf(line)};
        const Pedigree pedigree = written.pedigree();
        EXPECT_NEAR(inbreeding(pedigree)[static_cast<std::size_t>(written.last())], .375, 1e-9);
        const auto founders = founderContributions(pedigree, written.last()).founders;
        ASSERT_EQ(founders.size(), 2U);
        EXPECT_EQ(founders[0].founder, written.at("Bartlett"));
        EXPECT_NEAR(founders[0].share, .875, 1e-9);
    }
}

} // namespace
} // namespace pipwright
