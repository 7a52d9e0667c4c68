#include "core/fruit/instrument.h"

#include <gtest/gtest.h>

namespace pipwright {
namespace {

TEST(ProbeNamed, ReadsWhatIsWritten) {
    for (const char* apple : {"11 mm", "11.1", "probe 11,1 mm", "7/16 in", "stand, 11mm"}) {
        EXPECT_EQ(probeNamed(apple), NamedProbe::apple) << apple;
    }
    for (const char* pear : {"8 mm", "8", "5/16", "pocket penetrometer 8.0 mm"}) {
        EXPECT_EQ(probeNamed(pear), NamedProbe::pear) << pear;
    }
    for (const char* neither :
         {"", "penetrometer", "8 or 11 mm", "FT 327", "118 mm", "7/16 or 5/16", "11 lb spring"}) {
        EXPECT_EQ(probeNamed(neither), std::nullopt) << neither;
    }
}

TEST(JuiceTemperatureNamed, NeedsAUnit) {
    EXPECT_EQ(juiceTemperatureNamed("17 \xC2\xB0"
                                    "C"),
              Celsius{17});
    EXPECT_EQ(juiceTemperatureNamed("hand refractometer, 17.5C"), Celsius{17.5});
    EXPECT_NEAR(juiceTemperatureNamed("63 F")->degrees(), 17.2222, 1e-4);
    for (const char* none : {"", "refractometer 2", "17", "ATC, 17 C", "20 cm", "17 feet"}) {
        EXPECT_EQ(juiceTemperatureNamed(none), std::nullopt) << none;
    }
    EXPECT_EQ(juiceTemperatureNamed("in a batch, 15 C"), Celsius{15}) << "atc is a word of its own";
}

} // namespace
} // namespace pipwright
