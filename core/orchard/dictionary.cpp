#include "core/orchard/dictionary.h"

#include "core/orchard/fruit_traits.h"
#include "core/season/growth_stage.h"

#include <array>
#include <span>

namespace pipwright {

namespace {

struct StateRow {
    int rank;
    const char* key;
    const char* name;
    const char* meaning;
};

struct TraitRow {
    std::string_view key;
    const char* name;
    const char* method;
    ScaleKind scale;
    const char* unit;
    std::optional<double> lowest;
    std::optional<double> highest;
    Direction direction;
    const char* topic;
    const char* description;
    const char* source;
    std::span<const StateRow> states = {};
};

using enum ScaleKind;
constexpr auto kUp = Direction::higherIsBetter;
constexpr auto kDown = Direction::lowerIsBetter;
constexpr auto kNeither = Direction::neither;

constexpr std::array kRipeningStates = {
    StateRow{1, "not_yet", "not yet", "nothing to eat for days"},
    StateRow{2, "ripening", "ripening", "colour or softness turning, look again soon"},
    StateRow{3, "ripe", "ripe", "good to eat today"},
    StateRow{4, "over", "over", "past its best on the tree"},
    StateRow{5, "gone", "gone", "no fruit left"},
};

constexpr std::array kDropStates = {
    StateRow{1, "none", "none", "no fruit on the ground"},
    StateRow{2, "few", "few", "one or two"},
    StateRow{3, "some", "some", "a handful"},
    StateRow{4, "many", "many", "more than hang"},
};

constexpr std::array kLoadStates = {
    StateRow{0, "none", "none", "no fruit this year"},
    StateRow{1, "lone", "lone", "one to three fruits"},
    StateRow{2, "light", "light", "thin crop"},
    StateRow{3, "medium", "medium", "as much as it should carry"},
    StateRow{4, "heavy", "heavy", "more than it should carry"},
};

constexpr StateRow bloomState(int code) {
    const GrowthStage stage = pomeStage(code).value();
    return {stage.code, stage.digits, stage.name, stage.meaning};
}

constexpr std::array kBloomStates = {
    bloomState(0),  bloomState(51), bloomState(53), bloomState(54), bloomState(56),
    bloomState(57), bloomState(59), bloomState(60), bloomState(61), bloomState(65),
    bloomState(67), bloomState(69), bloomState(72),
};

constexpr std::array kLeafStates = {
    StateRow{0, "0", "clean", "no symptom found"},
    StateRow{1, "1", "trace", "a few spots"},
    StateRow{2, "2", "slight", "found on many leaves, small"},
    StateRow{3, "3", "moderate", "a quarter of the leaf area or less"},
    StateRow{4, "4", "heavy", "a quarter to three quarters of the leaf area"},
    StateRow{5, "5", "very heavy", "more than three quarters of the leaf area"},
};

constexpr std::array kVigourStates = {
    StateRow{1, "1", "very weak", "hardly grows"},
    StateRow{2, "2", "weak", "less than its neighbours"},
    StateRow{3, "3", "middling", "as its neighbours"},
    StateRow{4, "4", "strong", "more than its neighbours"},
    StateRow{5, "5", "very strong", "shades its neighbours"},
};

constexpr std::array kIntensityStates = {
    StateRow{1, "1", "none", "cannot be found"},
    StateRow{2, "2", "slight", "found when looked for"},
    StateRow{3, "3", "clear", "found at once"},
    StateRow{4, "4", "strong", "leads the bite"},
    StateRow{5, "5", "very strong", "covers all else"},
};

const std::array kTraits = {
    TraitRow{trait_key::kNote,
             "note",
             "in words",
             text,
             "",
             {},
             {},
             kNeither,
             "note",
             "anything seen",
             "ours"},
    TraitRow{trait_key::kBloomStage,
             "bloom stage",
             "by eye, whole tree",
             ordinal,
             "BBCH",
             {},
             {},
             kNeither,
             "bloom",
             "growth stage of the flowers",
             "BBCH pome fruit, Meier (2001); words ours",
             kBloomStates},
    TraitRow{trait_key::kFullBloom,
             "full bloom",
             "by eye, half the flowers open",
             date,
             "",
             {},
             {},
             kNeither,
             "bloom",
             "day of full bloom",
             "BBCH 65, Meier (2001)"},
    TraitRow{trait_key::kRipeningState,
             "ripening state",
             "bite, colour and give, on a walk",
             ordinal,
             "",
             {},
             {},
             kNeither,
             "ripening",
             "how far the fruit on the tree is",
             "ours",
             kRipeningStates},
    TraitRow{trait_key::kDrop,
             "drop",
             "fruit on the ground, by eye",
             ordinal,
             "",
             {},
             {},
             kDown,
             "ripening",
             "how much has fallen",
             "common practice, no source",
             kDropStates},
    TraitRow{trait_key::kFirstRipe,
             "first ripe",
             "first fruit that tasted good",
             date,
             "",
             {},
             {},
             kNeither,
             "ripening",
             "day of the first ripe fruit",
             "common practice, no source"},
    TraitRow{trait_key::kLastGood,
             "last good on tree",
             "last fruit that tasted good",
             date,
             "",
             {},
             {},
             kNeither,
             "ripening",
             "day of the last good fruit on the tree",
             "common practice, no source"},
    TraitRow{trait_key::kCropLoad,
             "crop load",
             "by eye",
             ordinal,
             "",
             {},
             {},
             kNeither,
             "fruit",
             "how much the tree carries",
             "common practice, no source",
             kLoadStates},
    TraitRow{"fruit_mass", "fruit mass", "scale, mean of the fruits", numeric, "g", 0.0, 2000.0,
             kNeither, "fruit", "mass of one fruit", "common practice, no source"},
    TraitRow{"fruit_diameter", "fruit diameter", "calliper at the widest", numeric, "mm", 0.0,
             300.0, kNeither, "fruit", "widest diameter", "common practice, no source"},
    TraitRow{trait_key::kSolubleSolids, "soluble solids", "refractometer, pooled juice", numeric,
             "°Brix", 0.0, 40.0, kUp, "fruit", "sugar and other solids of the juice",
             "common practice, no source"},
    TraitRow{trait_key::kAcidity, "titratable acidity", "titration to pH 8.1, as malic acid",
             numeric, "g/L", 0.0, 40.0, kNeither, "fruit", "acid of the juice",
             "common practice, no source"},
    TraitRow{trait_key::kFirmness, "firmness", "penetrometer; write the probe as instrument",
             numeric, "kgf", 0.0, 20.0, kNeither, "fruit",
             "force to push the probe in; never converted between probes",
             "common practice, no source"},
    TraitRow{trait_key::kStarchEight, "starch, 1 to 8", "iodine on the cut face", numeric, "", 1.0,
             8.0, kNeither, "fruit", "1 all stained, 8 no starch left",
             "generic scale of Blanpied and Silsby (1992)"},
    TraitRow{trait_key::kStarchTen, "starch, 1 to 10", "iodine on the cut face", numeric, "", 1.0,
             10.0, kNeither, "fruit", "1 all stained, 10 no starch left; not the 1 to 8 scale",
             "common practice, no source"},
    TraitRow{"sweetness",
             "sweetness",
             "by taste",
             ordinal,
             "",
             {},
             {},
             kNeither,
             "taste",
             "how sweet",
             "ours",
             kIntensityStates},
    TraitRow{"sharpness",
             "sharpness",
             "by taste",
             ordinal,
             "",
             {},
             {},
             kNeither,
             "taste",
             "how sharp the acid",
             "ours",
             kIntensityStates},
    TraitRow{"aroma",
             "aroma",
             "by taste",
             ordinal,
             "",
             {},
             {},
             kUp,
             "taste",
             "how aromatic",
             "ours",
             kIntensityStates},
    TraitRow{"crispness",
             "crispness",
             "by bite",
             ordinal,
             "",
             {},
             {},
             kUp,
             "taste",
             "how crisp",
             "ours",
             kIntensityStates},
    TraitRow{"juiciness",
             "juiciness",
             "by bite",
             ordinal,
             "",
             {},
             {},
             kUp,
             "taste",
             "how juicy",
             "ours",
             kIntensityStates},
    TraitRow{"mealiness",
             "mealiness",
             "by bite",
             ordinal,
             "",
             {},
             {},
             kDown,
             "taste",
             "how mealy",
             "ours",
             kIntensityStates},
    TraitRow{
        trait_key::kScab,
        "scab",
        "leaves, worst shoot",
        ordinal,
        "",
        {},
        {},
        kDown,
        "disease",
        "scab on the leaves",
        "0 to 5 by leaf area, end points as Plant Protect. Sci. 10.17221/10566-PPS; words ours",
        kLeafStates},
    TraitRow{trait_key::kMildew,
             "mildew",
             "leaves, worst shoot",
             ordinal,
             "",
             {},
             {},
             kDown,
             "disease",
             "powdery mildew on the leaves",
             "as scab; common practice, no source",
             kLeafStates},
    TraitRow{trait_key::kFireBlight, "fire blight", "share of the tree struck", numeric, "", 1.0,
             10.0, kUp, "disease", "10 none, 1 dead: high is good, unlike scab",
             "scale of van der Zwet et al. (1970), from memory"},
    TraitRow{trait_key::kVigour,
             "vigour",
             "by eye, against its neighbours",
             ordinal,
             "",
             {},
             {},
             kNeither,
             "tree",
             "how strongly the tree grows",
             "ours",
             kVigourStates},
    TraitRow{"height", "height", "pole", numeric, "m", 0.0, 30.0, kNeither, "tree",
             "height of the tree", "common practice, no source"},
    TraitRow{trait_key::kDaysGood, "days still good", "bites from a kept lot", numeric, "d", 0.0,
             400.0, kUp, "fruit",
             "days off the tree until it is no longer good; name the path as instrument",
             "common practice, no source"},
};

struct SpeciesRow {
    std::string_view key;
    const char* name;
    const char* latin;
    std::optional<int> ploidy;
    YesNo selfCompatible;
    RipeningPath path;
    double seeds;
    const char* notes;
};

constexpr std::array kSpecies = {
    SpeciesRow{"apple", "apple", "Malus domestica", 2, YesNo::no, RipeningPath::onTree, 7, ""},
    SpeciesRow{"pear", "pear", "Pyrus communis", 2, YesNo::no, RipeningPath::pickThenChill, 7,
               "picked firm, chilled, then ripened in the room"},
    SpeciesRow{"plum", "European plum", "Prunus domestica", 6, YesNo::unknown, RipeningPath::onTree,
               1, "self-compatible in part"},
    SpeciesRow{"japanese_plum", "Japanese plum", "Prunus salicina", 2, YesNo::no,
               RipeningPath::onTree, 1, ""},
    SpeciesRow{"peach", "peach", "Prunus persica", 2, YesNo::yes, RipeningPath::onTree, 1, ""},
    SpeciesRow{"sweet_cherry", "sweet cherry", "Prunus avium", 2, YesNo::unknown,
               RipeningPath::onTree, 1, "mostly self-incompatible"},
    SpeciesRow{"quince", "quince", "Cydonia oblonga", 2, YesNo::yes, RipeningPath::cooked, 30,
               "judged cooked"},
};

} // namespace

TraitId shippedTraitId(std::string_view key) {
    return TraitId(Uuid::named("trait/" + std::string(key)));
}

TraitStateId shippedStateId(std::string_view traitKey, std::string_view stateKey) {
    return TraitStateId(
        Uuid::named("trait/" + std::string(traitKey) + "/" + std::string(stateKey)));
}

SpeciesId shippedSpeciesId(std::string_view key) {
    return SpeciesId(Uuid::named("species/" + std::string(key)));
}

std::vector<Trait> shippedTraits() {
    std::vector<Trait> traits;
    for (const TraitRow& row : kTraits) {
        traits.push_back({shippedTraitId(row.key), std::string(row.key), row.name, row.method,
                          row.scale, row.unit, row.lowest, row.highest, row.direction, row.topic,
                          row.description, row.source});
    }
    return traits;
}

std::vector<TraitState> shippedTraitStates() {
    std::vector<TraitState> states;
    for (const TraitRow& trait : kTraits) {
        for (const StateRow& row : trait.states) {
            states.push_back({shippedStateId(trait.key, row.key), shippedTraitId(trait.key),
                              row.rank, row.key, row.name, row.meaning});
        }
    }
    return states;
}

std::vector<Species> shippedSpecies() {
    std::vector<Species> species;
    for (const SpeciesRow& row : kSpecies) {
        Species one;
        one.id = shippedSpeciesId(row.key);
        one.key = row.key;
        one.name = row.name;
        one.latin = row.latin;
        one.ploidy = row.ploidy;
        one.selfCompatible = row.selfCompatible;
        one.ripeningPath = row.path;
        one.seedsPerFruit = row.seeds;
        one.notes = row.notes;
        species.push_back(one);
    }
    return species;
}

TraitStateId stateOf(WalkMark mark) {
    return shippedStateId(trait_key::kRipeningState, keyOf(mark));
}

} // namespace pipwright
