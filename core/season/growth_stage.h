#pragma once

#include <array>
#include <optional>

namespace pipwright {

/// A stage of the year of a pome fruit tree. The codes are those of the BBCH scale for pome fruit
/// (Meier 2001, Growth stages of mono- and dicotyledonous plants, 2nd edition); the words are ours.
struct GrowthStage {
    int code;
    const char* digits;  ///< the code as it is written, with its leading zero
    const char* name;    ///< what it is called, in a word or two
    const char* meaning; ///< when to use it
    /// Whether the wording of the standard was read for it, or is only remembered.
    bool wasReadUp = true;
};

/// In the order of the codes, which within buds, shoots, flowers and fruit is that of time.
inline constexpr std::array kPomeStages = {
    GrowthStage{0, "00", "dormant", "buds closed"},
    GrowthStage{1, "01", "leaf buds swelling", "leaf buds begin to swell"},
    GrowthStage{3, "03", "leaf buds swollen", "leaf buds as thick as they get"},
    GrowthStage{7, "07", "bud break", "the first green can just be seen"},
    GrowthStage{9, "09", "green tip", "green stands 5 mm out of the scales"},
    GrowthStage{10, "10", "leaves part", "green stands 10 mm out, the first leaves part"},
    GrowthStage{11, "11", "first leaves", "the first leaves lie flat"},
    GrowthStage{15, "15", "more leaves", "more leaves lie flat, still small"},
    GrowthStage{19, "19", "leaves full size", "the first leaves have their full size"},
    GrowthStage{31, "31", "shoots start", "shoots begin to grow"},
    GrowthStage{32, "32", "shoots a fifth", "shoots have a fifth of their length"},
    GrowthStage{33, "33", "shoots three tenths", "shoots have three tenths of their length"},
    GrowthStage{39, "39", "shoots nearly done", "shoots have nine tenths of their length"},
    GrowthStage{51, "51", "buds swelling", "flower buds swell"},
    GrowthStage{52, "52", "buds swollen", "flower buds as thick as they get closed"},
    GrowthStage{53, "53", "bud burst", "green tips around the flower buds"},
    GrowthStage{54, "54", "mouse-ear", "leaves as long as a mouse's ear"},
    GrowthStage{55, "55", "cluster", "flower buds can be seen, close together"},
    GrowthStage{56, "56", "green bud", "single flower buds part, still closed"},
    GrowthStage{57, "57", "pink bud", "petals just show"},
    GrowthStage{59, "59", "balloon", "petals form a hollow ball"},
    GrowthStage{60, "60", "first flowers", "the first are open"},
    GrowthStage{61, "61", "beginning of bloom", "a tenth are open"},
    GrowthStage{62, "62", "a fifth open", "two flowers of ten are open"},
    GrowthStage{63, "63", "three tenths open", "three flowers of ten are open"},
    GrowthStage{64, "64", "four tenths open", "four flowers of ten are open"},
    GrowthStage{65, "65", "full bloom", "half are open, first petals fall"},
    GrowthStage{67, "67", "fading", "most petals fallen"},
    GrowthStage{69, "69", "end of bloom", "all petals fallen"},
    GrowthStage{71, "71", "fruit to 10 mm", "unset flowers fall, fruitlets as a pea", false},
    GrowthStage{72, "72", "fruit to 20 mm", "fruitlets as large as a hazelnut"},
    GrowthStage{73, "73", "June drop", "fruitlets fall a second time"},
    GrowthStage{74, "74", "fruit to 40 mm", "stalk and fruit stand like a T", false},
    GrowthStage{75, "75", "fruit half grown", "half of the final size", false},
    GrowthStage{76, "76", "fruit six tenths", "six tenths of the final size", false},
    GrowthStage{77, "77", "fruit seven tenths", "seven tenths of the final size", false},
    GrowthStage{78, "78", "fruit eight tenths", "eight tenths of the final size", false},
    GrowthStage{79, "79", "fruit nearly grown", "nine tenths of the final size", false},
    GrowthStage{81, "81", "ripening begins", "the colour of the kind begins to show", false},
    GrowthStage{85, "85", "ripening on", "the colour deepens", false},
    GrowthStage{87, "87", "ripe to pick", "can be picked for keeping", false},
    GrowthStage{89, "89", "ripe to eat", "tastes and bites as it should", false},
    GrowthStage{91, "91", "shoots done", "shoots closed, leaves still green", false},
    GrowthStage{92, "92", "leaves turn", "leaves begin to lose their green", false},
    GrowthStage{93, "93", "leaf fall begins", "the first leaves fall", false},
    GrowthStage{95, "95", "leaves half turned", "half of the leaves have lost their green", false},
    GrowthStage{97, "97", "leafless", "all leaves fallen", false},
    GrowthStage{99, "99", "picked", "fruit off the tree and stored", false},
};

/// The stage with a code; nothing when the scale has none.
constexpr std::optional<GrowthStage> pomeStage(int code) {
    for (const GrowthStage& stage : kPomeStages) {
        if (stage.code == code) {
            return stage;
        }
    }
    return std::nullopt;
}

} // namespace pipwright
