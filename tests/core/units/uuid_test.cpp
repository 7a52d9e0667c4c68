#include "core/units/id.h"
#include "core/units/uuid.h"

#include <gtest/gtest.h>
#include <random>
#include <set>
#include <string>
#include <type_traits>
#include <unordered_set>

namespace pipwright {
namespace {

struct Apple;
struct Pear;
static_assert(!std::is_convertible_v<Id<Apple>, Id<Pear>>, "no other kind's id fits");
static_assert(!std::is_convertible_v<Uuid, Id<Apple>>, "an id is made on purpose");

Uuid randomUuid(std::mt19937_64& random) {
    Uuid uuid;
    for (auto& byte : uuid.bytes) {
        byte = static_cast<std::uint8_t>(random());
    }
    return uuid;
}

TEST(Uuid, BothWrittenFormsReadBack) {
    const std::uint64_t seed = 42;
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random{seed};
    for (int round = 0; round < 5000; ++round) {
        const Uuid uuid = randomUuid(random);
        EXPECT_EQ(uuid.text().size(), 36U);
        EXPECT_EQ(Uuid::fromText(uuid.text()), uuid);
        EXPECT_EQ(uuid.labelCode().size(), 26U);
        EXPECT_EQ(Uuid::fromLabelCode(uuid.labelCode()), uuid);
    }
}

TEST(Uuid, ReadsAnyLetterCaseAndRefusesTheRest) {
    const std::string text = "018f2a3c-0000-7abc-8def-0123456789ab";
    EXPECT_EQ(Uuid::fromText("018F2A3C-0000-7ABC-8DEF-0123456789AB"), Uuid::fromText(text));
    for (const char* wrong :
         {"", "018f2a3c-0000-7abc-8def-0123456789a", "018f2a3c00007abc8def0123456789ab",
          "018f2a3g-0000-7abc-8def-0123456789ab", "018f2a3c-0000-7abc-8def-0123456789abc",
          "018f2a3c00-00-7abc-8def-0123456789ab"}) {
        EXPECT_EQ(Uuid::fromText(wrong), std::nullopt) << wrong;
    }
}

TEST(Uuid, LabelCodeIgnoresBlanksAroundAndRefusesSpareBits) {
    const Uuid uuid = *Uuid::fromText("ffffffff-ffff-ffff-ffff-ffffffffffff");
    const std::string code = uuid.labelCode();
    EXPECT_EQ(code, std::string(25, '7') + "4");
    EXPECT_EQ(Uuid::fromLabelCode(" " + code + "\t"), uuid);
    EXPECT_EQ(Uuid::fromLabelCode(std::string(25, '7') + "5"), std::nullopt)
        << "a spare bit is set";
    EXPECT_EQ(Uuid::fromLabelCode(std::string(25, '7')), std::nullopt);
    EXPECT_EQ(Uuid::fromLabelCode("0" + std::string(25, 'A')), std::nullopt) << "0 is no digit";
    EXPECT_EQ(Uuid::fromLabelCode("aaaaaaaaaaaaaaaaaaaaaaaaaa"), Uuid{});
}

TEST(Uuid, NilIsAllZero) {
    EXPECT_TRUE(Uuid{}.isNil());
    EXPECT_FALSE(Uuid::named("").isNil());
}

TEST(Uuid, NamedIsStableAndTellsWordsApart) {
    EXPECT_EQ(Uuid::named("trait/liking"), Uuid::named("trait/liking"));
    std::set<Uuid> seen;
    for (int i = 0; i < 10000; ++i) {
        seen.insert(Uuid::named("trait/" + std::to_string(i)));
    }
    EXPECT_EQ(seen.size(), 10000U);
}

TEST(UuidMaker, GrowsEvenWhenTheClockStandsOrGoesBack) {
    std::int64_t now = 1'700'000'000'000;
    int calls = 0;
    UuidMaker maker{1, [&] {
                        ++calls;
                        return calls % 1000 == 0 ? --now : now;
                    }};
    Uuid last = maker.make();
    for (int i = 0; i < 20000; ++i) { // more than the counter's 4,096 in one millisecond
        const Uuid next = maker.make();
        ASSERT_LT(last, next) << "at " << i;
        last = next;
    }
}

TEST(UuidMaker, TheSameSeedAndClockMakeTheSameNames) {
    const auto clock = [] { return std::int64_t{1'700'000'000'000}; };
    UuidMaker one{7, clock};
    UuidMaker two{7, clock};
    UuidMaker other{8, clock};
    const Uuid first = one.make();
    EXPECT_EQ(first, two.make());
    EXPECT_NE(first, other.make());
}

TEST(UuidMaker, TwoMakersMeetNoName) {
    UuidMaker one;
    UuidMaker two;
    std::unordered_set<Uuid> seen;
    for (int i = 0; i < 5000; ++i) {
        seen.insert(one.make());
        seen.insert(two.make());
    }
    EXPECT_EQ(seen.size(), 10000U);
}

TEST(Id, ComparesAndHashesAsItsName) {
    const Id<Apple> id{Uuid::named("a")};
    EXPECT_EQ(id, Id<Apple>{Uuid::named("a")});
    EXPECT_NE(id, Id<Apple>{});
    EXPECT_EQ(std::unordered_set<Id<Apple>>({id, id}).size(), 1U);
}

} // namespace
} // namespace pipwright
