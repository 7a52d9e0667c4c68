#include "core/pedigree/purdy.h"

#include <gtest/gtest.h>
#include <random>
#include <string>
#include <vector>

namespace pipwright {
namespace {

/// The line as it is written after reading, or where and why it was refused.
std::string reread(std::string_view line) {
    const auto descent = readPurdy(line);
    return descent ? writePurdy(*descent) : descent.problem().sentence();
}

Descent named(const char* name) {
    return Descent::of(name);
}

TEST(Purdy, NumbersCrossesFromTheFirst) {
    const Descent first = Descent::cross(named("A"), named("B"));
    const Descent second = Descent::cross(named("C"), first);
    const Descent third = Descent::cross(second, Descent::cross(named("D"), named("E")));
    EXPECT_EQ(writePurdy(first), "A/B");
    EXPECT_EQ(writePurdy(second), "C//A/B");
    EXPECT_EQ(writePurdy(third), "C//A/B/3/D/E");
    EXPECT_EQ(writePurdy(Descent::cross(third, named("F"))), "C//A/B/3/D/E/4/F");
}

TEST(Purdy, ReadsAllWaysToNumberACross) {
    EXPECT_EQ(reread("C /2/ A / B"), "C//A/B");
    EXPECT_EQ(reread("A/B//C///D"), "A/B//C/3/D");
    EXPECT_EQ(reread("A /1/ B"), "A/B");
    EXPECT_EQ(reread("A//B"), "A/B") << "numbers may be left out";
    EXPECT_EQ(reread(" A "), "A");
}

TEST(Purdy, ARecurrentParentIsCounted) {
    const Descent a = named("A");
    const Descent b = named("B");
    const Descent seedRecurs = Descent::cross(a, Descent::cross(a, Descent::cross(a, b)));
    const Descent pollenRecurs = Descent::cross(Descent::cross(Descent::cross(b, a), a), a);
    EXPECT_EQ(writePurdy(seedRecurs), "A*3/B");
    EXPECT_EQ(writePurdy(pollenRecurs), "B/3*A");
    for (const char* line : {"A*3/B", "A * 3 / B", "3*A/B", "*3 A/B", "A/3/A//A/B"}) {
        EXPECT_EQ(*readPurdy(line), seedRecurs) << line;
    }
    for (const char* line : {"B/3*A", "B/A*3", "B/*3 A", "B/A//A/3/A", "B/A//A///A"}) {
        EXPECT_EQ(*readPurdy(line), pollenRecurs) << line;
    }
    EXPECT_EQ(reread("A*3//B/C"), "A*3//B/C");
    EXPECT_EQ(reread("A*2/B//C"), "A*2/B//C");
    EXPECT_EQ(reread("C//2*A/B"), "C//A*2/B");
    EXPECT_EQ(reread("A*1/B"), "A/B");
    EXPECT_EQ(reread("A*2/A"), "A//A/self");
}

TEST(Purdy, QuotesNamesThatCouldBeReadOtherwise) {
    for (const char* name :
         {"12/34", "A*3", "7", "?", "OP", "o.p.", "Self", "", " A", "say \"x\"", "\"", "open"}) {
        const Descent descent = Descent::cross(named(name), named("B"));
        const std::string line = writePurdy(descent);
        EXPECT_EQ(line.front(), '"') << line;
        const auto back = readPurdy(line);
        ASSERT_TRUE(back.ok()) << line << ": " << back.problem().sentence();
        EXPECT_EQ(*back, descent) << line;
    }
    for (const char* name : {"21-014", "Opal", "Cox's Orange Pippin", "Selfmade", "M.9", "苹果"}) {
        EXPECT_EQ(writePurdy(named(name)), name);
    }
    EXPECT_EQ(reread("\"12/34\"*3 / \"7\""), "\"12/34\"*3/\"7\"");
    EXPECT_EQ(reread("\"Plain\"/B"), "Plain/B");
}

TEST(Purdy, KnowsUnknownOpenAndSelfed) {
    EXPECT_EQ(*readPurdy("A/OP"), Descent::openPollination(named("A")));
    EXPECT_EQ(*readPurdy("A/o.p."), Descent::openPollination(named("A")));
    EXPECT_EQ(*readPurdy("A/?"), Descent::cross(named("A"), Descent::nothingKnown()));
    EXPECT_EQ(*readPurdy("?"), Descent::nothingKnown());
    for (const char* line : {"A/self", "A/⊗", "A/A", "A / Selfed"}) {
        EXPECT_EQ(*readPurdy(line), Descent::selfing(named("A"))) << line;
    }
    EXPECT_EQ(reread("A/B//self"), "A/B//self");
    EXPECT_EQ(readPurdy("A/B//A/B")->form, Descent::Form::crossed) << "two sisters, no selfing";
}

TEST(Purdy, SaysWhereItWentWrong) {
    EXPECT_EQ(reread(""), "character 1: A parent is missing here. Type its name, or ? when it is "
                          "not known.");
    EXPECT_EQ(reread("A/"), "character 3: A parent is missing here. Type its name, or ? when it is "
                            "not known.");
    EXPECT_EQ(reread("Éé/B/C"), "character 5: Two crosses have the same number, so it is open "
                                "which came first. Write the later cross with the higher number: "
                                "/, //, /3/.");
    const auto where = [](std::string_view line) {
        const auto descent = readPurdy(line);
        return descent ? "read" : descent.problem().where;
    };
    EXPECT_EQ(where("/B"), "character 1");
    EXPECT_EQ(where("A/\"B"), "character 3");
    EXPECT_EQ(where("A/B\"C"), "character 4");
    EXPECT_EQ(where("\"A\"B/C"), "character 4");
    EXPECT_EQ(where("A*/B"), "character 2");
    EXPECT_EQ(where("A*99/B"), "character 1");
    EXPECT_EQ(where("A*0/B"), "character 1");
    EXPECT_EQ(where("A*3"), "character 1") << "recurs in no cross";
    EXPECT_EQ(where("A*3/B*2"), "character 5");
    EXPECT_EQ(where("2*A*3/B"), "character 1");
    EXPECT_EQ(where("OP/A"), "character 1");
    EXPECT_EQ(where("A/self/B"), "character 7");
    EXPECT_EQ(where("A/2*OP"), "character 3");
    EXPECT_EQ(where("?*2/B"), "character 1");
    EXPECT_EQ(where("A/0/B"), "character 2");
    EXPECT_EQ(where("A/\xFF"), "character 3");
    EXPECT_EQ(where("A" + std::string(200, '/') + "B"), "character 2");
}

/// Any descent of so many crosses, with names that are awkward to write.
Descent randomDescent(std::mt19937_64& random, int crosses) {
    static const std::vector<const char*> names = {"A", "B",   "C",    "12/3",
                                                   "4", "x*2", "self", "é \"q\""};
    if (crosses == 0) {
        return random() % 8 == 0 ? Descent::nothingKnown() : named(names[random() % names.size()]);
    }
    if (random() % 6 == 0) {
        return Descent::selfing(randomDescent(random, crosses - 1));
    }
    if (random() % 6 == 0) {
        return Descent::openPollination(randomDescent(random, crosses - 1));
    }
    const int left = static_cast<int>(random() % static_cast<unsigned>(crosses));
    Descent seed = randomDescent(random, left);
    Descent pollen = randomDescent(random, crosses - 1 - left);
    return Descent::cross(std::move(seed), std::move(pollen));
}

TEST(Purdy, WhatIsWrittenReadsBackTheSame) {
    const std::uint64_t seed = 1968;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 20000; ++round) {
        const Descent descent = randomDescent(random, round % 12);
        const std::string line = writePurdy(descent);
        const auto back = readPurdy(line);
        ASSERT_TRUE(back.ok()) << line << ": " << back.problem().sentence();
        ASSERT_EQ(*back, descent) << line << " became " << writePurdy(*back);
    }
}

TEST(Purdy, AnyLineIsReadOrRefused) {
    const std::uint64_t seed = 405;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    const std::vector<std::string> pieces = {"A", "B", "/",  "//",   "/3/", "*",    "3", "\"",
                                             " ", "?", "OP", "self", "é",   "\xC3", "⊗"};
    int read = 0;
    for (int round = 0; round < 100000; ++round) {
        std::string line;
        for (std::uint64_t count = random() % 9; count > 0; --count) {
            line += pieces[random() % pieces.size()];
        }
        const auto descent = readPurdy(line);
        if (!descent) {
            EXPECT_EQ(descent.problem().where.substr(0, 10), "character ") << line;
            EXPECT_FALSE(descent.problem().remedy.empty());
            continue;
        }
        ++read;
        const auto again = readPurdy(writePurdy(*descent));
        ASSERT_TRUE(again.ok()) << line;
        EXPECT_EQ(*again, *descent) << line;
    }
    EXPECT_GT(read, 5000);
}

TEST(Purdy, ALongLineIsNoMatter) {
    std::string line = "A";
    for (int i = 0; i < 100000; ++i) {
        line += "/A";
    }
    EXPECT_FALSE(readPurdy(line).ok());
    EXPECT_EQ(readPurdy(std::string(1000000, 'A'))->name.size(), 1000000U);
}

} // namespace
} // namespace pipwright
