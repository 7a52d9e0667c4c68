#include "core/orchard/inexact_value.h"

#include <gtest/gtest.h>

namespace pipwright {
namespace {

Trait mass() {
    Trait trait;
    trait.name = "fruit mass";
    trait.scale = ScaleKind::numeric;
    trait.unit = "g";
    trait.lowest = 0.0;
    trait.highest = 2000.0;
    return trait;
}

InexactValue read(std::string_view typed) {
    const auto value = readInexactValue(typed);
    EXPECT_TRUE(value) << typed << ": " << (value ? "" : value.problem().sentence());
    return value ? *value : InexactValue{};
}

TEST(InexactValue, KeepsANumberAsTyped) {
    EXPECT_EQ(read(" 13.2 "), (InexactValue{"13.2", "", 13.2, {}, Qualifier::exact}));
    EXPECT_EQ(read("13,2"), (InexactValue{"13,2", "", 13.2, {}, Qualifier::exact}));
    EXPECT_EQ(read("0"), (InexactValue{"0", "", 0, {}, Qualifier::exact}));
}

TEST(InexactValue, ReadsHowExactItIs) {
    EXPECT_EQ(read("~13"), (InexactValue{"~13", "", 13, {}, Qualifier::about}));
    EXPECT_EQ(read("about 13"), (InexactValue{"about 13", "", 13, {}, Qualifier::about}));
    EXPECT_EQ(read("<12"), (InexactValue{"<12", "", 12, {}, Qualifier::lessThan}));
    EXPECT_EQ(read("> 12"), (InexactValue{"> 12", "", 12, {}, Qualifier::greaterThan}));
    EXPECT_EQ(read("Over 12"), (InexactValue{"Over 12", "", 12, {}, Qualifier::greaterThan}));
}

TEST(InexactValue, ReadsRanges) {
    for (const char* typed : {"13-14", "13 - 14", "13 to 14", "13..14", "13 \xE2\x80\x93 14"}) {
        EXPECT_EQ(read(typed), (InexactValue{typed, "", 13, 14, Qualifier::range}));
    }
    EXPECT_EQ(read("12.5-13,5 g"),
              (InexactValue{"12.5-13,5 g", "g", 12.5, 13.5, Qualifier::range}));
}

TEST(InexactValue, KeepsTheUnitAsTyped) {
    EXPECT_EQ(read("180 G").unitTyped, "G");
    EXPECT_EQ(read("~13\xC2\xB0"
                   "Brix")
                  .unitTyped,
              "\xC2\xB0"
              "Brix");
}

TEST(InexactValue, RefusesWhatIsNoValue) {
    for (const char* typed :
         {"", "big", "~", "-3", "13-", "13--14", "<13-14", "1.2.3", "13 14", "13,"}) {
        const auto value = readInexactValue(typed);
        ASSERT_FALSE(value) << typed;
        EXPECT_EQ(value.problem().code, ProblemCode::badInput);
        EXPECT_FALSE(value.problem().remedy.empty());
    }
    EXPECT_FALSE(readInexactValue("14-13"));
}

TEST(ValueOfTrait, ConvertsUnitsOfTheSameKind) {
    const auto value = readValueOf(mass(), "6 oz");
    ASSERT_TRUE(value);
    EXPECT_NEAR(value->low, 170.0971, 1e-4); // an ounce is 28.349523125 g
    EXPECT_EQ(value->typed, "6 oz");
    EXPECT_EQ(value->unitTyped, "oz");
}

TEST(ValueOfTrait, ConvertsForcesAndAcid) {
    Trait firmness = mass();
    firmness.unit = "kgf";
    EXPECT_NEAR(readValueOf(firmness, "16 lbf")->low, 7.257478, 1e-6);
    EXPECT_NEAR(readValueOf(firmness, "16 lb")->low, 7.257478, 1e-6);
    EXPECT_NEAR(readValueOf(firmness, "66.7 N")->low, 6.801507, 1e-6);
    EXPECT_NEAR(readValueOf(firmness, "7.5 kg")->low, 7.5, 1e-12);
    EXPECT_EQ(readValueOf(firmness, "16 lbf")->unitTyped, "lbf");
    Trait acid = mass();
    acid.unit = "g/L";
    EXPECT_NEAR(readValueOf(acid, "0.5 %")->low, 5, 1e-12);
    EXPECT_NEAR(readValueOf(acid, "5 g/L")->low, 5, 1e-12);
    EXPECT_FALSE(readValueOf(acid, "5 lbf"));
}

TEST(ValueOfTrait, RefusesForeignUnitsAndValuesOutsideTheScale) {
    const auto foreign = readValueOf(mass(), "18 mm");
    ASSERT_FALSE(foreign);
    EXPECT_NE(foreign.problem().remedy.find("in g"), std::string::npos);
    const auto outside = readValueOf(mass(), "180-2001");
    ASSERT_FALSE(outside);
    EXPECT_NE(outside.problem().remedy.find("0 to 2000 g"), std::string::npos);
    EXPECT_TRUE(readValueOf(mass(), "2000"));
}

TEST(ValueOfTrait, TellsItInWords) {
    EXPECT_EQ(inWords(read("~13.5")), "about 13.5");
    EXPECT_EQ(inWords(read("<12")), "under 12");
    EXPECT_EQ(inWords(read(">12")), "over 12");
    EXPECT_EQ(inWords(read("13-14")), "13 to 14");
    EXPECT_EQ(inWords(read("1200")), "1200");
}

TEST(ValueOfTrait, ComesBackFromAnObservation) {
    Observation one;
    EXPECT_FALSE(valueOf(one));
    const InexactValue typed = read("13-14 g");
    one.value = typed.low;
    one.valueTo = typed.high;
    one.qualifier = typed.qualifier;
    one.typed = typed.typed;
    one.unitTyped = typed.unitTyped;
    EXPECT_EQ(valueOf(one), typed);
}

} // namespace
} // namespace pipwright
