#include "core/pedigree/purdy.h"

#include <gtest/gtest.h>
#include <string>

// Purdy, Loegering, Konzak, Peterson and Allan (1968), A proposed standard method for
// illustrating pedigrees of small grain varieties, Crop Science 8:405-406.

namespace pipwright {
namespace {

Descent named(const char* name) {
    return Descent::of(name);
}

Descent read(const char* line) {
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
    EXPECT_EQ(read("Nebred /2/ Hope / Turkey Red /3/ Cheyenne / Ponca"), scout);
    EXPECT_EQ(writePurdy(scout), "Nebred//Hope/Turkey Red/3/Cheyenne/Ponca");
}

// Course page on plant pedigrees: A/B*3 stands for A/B//B///B.
TEST(PurdyCheck, TheOtherWayToWriteABackcross) {
    EXPECT_EQ(read("A/B*3"), read("A/B//B///B"));
}

// Published parentage of Gala: (Cox's Orange Pippin x Delicious) x Golden Delicious.
TEST(PurdyCheck, Gala) {
    const Descent gala =
        Descent::cross(Descent::cross(named("Cox's Orange Pippin"), named("Delicious")),
                       named("Golden Delicious"));
    EXPECT_EQ(read("Cox's Orange Pippin/Delicious//Golden Delicious"), gala);
    EXPECT_EQ(writePurdy(gala), "Cox's Orange Pippin/Delicious//Golden Delicious");
}

// Hunter (1999): Harvest Queen is Bartlett x (Bartlett x (Bartlett x Seckel)).
TEST(PurdyCheck, HarvestQueen) {
    const Descent barseck = Descent::cross(named("Bartlett"), named("Seckel"));
    const Descent harvestQueen =
        Descent::cross(named("Bartlett"), Descent::cross(named("Bartlett"), barseck));
    EXPECT_EQ(read("Bartlett/3/Bartlett//Bartlett/Seckel"), harvestQueen);
    EXPECT_EQ(read("Bartlett*3/Seckel"), harvestQueen);
    EXPECT_EQ(writePurdy(harvestQueen), "Bartlett*3/Seckel");
}

} // namespace
} // namespace pipwright
