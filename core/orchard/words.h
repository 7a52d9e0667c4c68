#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

/// The closed vocabularies of the book. Every one knows "unknown"; the key is what the schema,
/// the archive and the journal hold, and what the window translates.
namespace pipwright {

template <typename Enum>
struct Word {
    Enum value;
    std::string_view key;
};

/// Specialised for each vocabulary: `static constexpr std::array<Word<Enum>, n> words`.
template <typename Enum>
struct Words;

template <typename Enum>
constexpr std::string_view keyOf(Enum value) {
    for (const auto& word : Words<Enum>::words) {
        if (word.value == value) {
            return word.key;
        }
    }
    return "unknown";
}

/// Nothing when the key is not one of the vocabulary's.
template <typename Enum>
constexpr std::optional<Enum> fromKey(std::string_view key) {
    for (const auto& word : Words<Enum>::words) {
        if (word.key == key) {
            return word.value;
        }
    }
    return std::nullopt;
}

#define PIPWRIGHT_WORDS(Enum, ...)                                                                 \
    template <>                                                                                    \
    struct Words<Enum> {                                                                           \
        using enum Enum;                                                                           \
        static constexpr auto words = std::to_array<Word<Enum>>({__VA_ARGS__});                    \
    };

enum class Hemisphere { unknown, north, south };
PIPWRIGHT_WORDS(Hemisphere, {unknown, "unknown"}, {north, "north"}, {south, "south"})

enum class GenotypeKind { unknown, seedling, selection, cultivar, rootstock };
PIPWRIGHT_WORDS(GenotypeKind, {unknown, "unknown"}, {seedling, "seedling"},
                {selection, "selection"}, {cultivar, "cultivar"}, {rootstock, "rootstock"})

/// How the pollen came: by a chosen father, openly, by the tree itself, or nobody knows.
enum class Pollination { unknown, controlled, open, self };
PIPWRIGHT_WORDS(Pollination, {unknown, "unknown"}, {controlled, "controlled"}, {open, "open"},
                {self, "self"})

/// How sure a cross is to have had only the chosen pollen.
enum class Purity { unknown, emasculatedBagged, bagged, taggedOnly, open };
PIPWRIGHT_WORDS(Purity, {unknown, "unknown"}, {emasculatedBagged, "emasculated_bagged"},
                {bagged, "bagged"}, {taggedOnly, "tagged_only"}, {open, "open"})

enum class ParentRole { unknown, seed, pollen };
PIPWRIGHT_WORDS(ParentRole, {unknown, "unknown"}, {seed, "seed"}, {pollen, "pollen"})

enum class Confidence { unknown, sure, byMap, byFruit };
PIPWRIGHT_WORDS(Confidence, {unknown, "unknown"}, {sure, "sure"}, {byMap, "by_map"},
                {byFruit, "by_fruit"})

/// What an identity rests on.
enum class IdentityBasis { unknown, tagAndMap, tagOnly, mapOnly, graftRecord, fruit, guess };
PIPWRIGHT_WORDS(IdentityBasis, {unknown, "unknown"}, {tagAndMap, "tag_and_map"},
                {tagOnly, "tag_only"}, {mapOnly, "map_only"}, {graftRecord, "graft_record"},
                {fruit, "fruit"}, {guess, "guess"})

enum class AliasKind { unknown, code, name, tradeName, misspelling };
PIPWRIGHT_WORDS(AliasKind, {unknown, "unknown"}, {code, "code"}, {name, "name"},
                {tradeName, "trade_name"}, {misspelling, "misspelling"})

enum class PlantKind { unknown, ownRoots, grafted, limb };
PIPWRIGHT_WORDS(PlantKind, {unknown, "unknown"}, {ownRoots, "own_roots"}, {grafted, "grafted"},
                {limb, "limb"})

/// The plant's state; the stage is its genotype's.
enum class PlantState { unknown, growing, lost, dead, removed };
PIPWRIGHT_WORDS(PlantState, {unknown, "unknown"}, {growing, "growing"}, {lost, "lost"},
                {dead, "dead"}, {removed, "removed"})

enum class ScaleKind { unknown, numeric, ordinal, nominal, date, text };
PIPWRIGHT_WORDS(ScaleKind, {unknown, "unknown"}, {numeric, "numeric"}, {ordinal, "ordinal"},
                {nominal, "nominal"}, {date, "date"}, {text, "text"})

/// Which end of a scale is the good one.
enum class Direction { unknown, higherIsBetter, lowerIsBetter, neither };
PIPWRIGHT_WORDS(Direction, {unknown, "unknown"}, {higherIsBetter, "higher_is_better"},
                {lowerIsBetter, "lower_is_better"}, {neither, "neither"})

/// How exact a value is: 13, ~13, <13, >13, or 13-14.
enum class Qualifier { unknown, exact, about, lessThan, greaterThan, range };
PIPWRIGHT_WORDS(Qualifier, {unknown, "unknown"}, {exact, "exact"}, {about, "about"},
                {lessThan, "less_than"}, {greaterThan, "greater_than"}, {range, "range"})

enum class Sight { unknown, blind, sighted };
PIPWRIGHT_WORDS(Sight, {unknown, "unknown"}, {blind, "blind"}, {sighted, "sighted"})

enum class TastingPlace { unknown, table, row };
PIPWRIGHT_WORDS(TastingPlace, {unknown, "unknown"}, {table, "table"}, {row, "row"})

enum class Origin { unknown, pickedRipe, pickedEarly, droppedToday, onGroundLonger, shaken };
PIPWRIGHT_WORDS(Origin, {unknown, "unknown"}, {pickedRipe, "picked_ripe"},
                {pickedEarly, "picked_early"}, {droppedToday, "dropped_today"},
                {onGroundLonger, "on_ground_longer"}, {shaken, "shaken"})

enum class Bag { unknown, none, paper, organza, clear };
PIPWRIGHT_WORDS(Bag, {unknown, "unknown"}, {none, "none"}, {paper, "paper"}, {organza, "organza"},
                {clear, "clear"})

enum class Soundness { unknown, sound, insect, bird, split, rot };
PIPWRIGHT_WORDS(Soundness, {unknown, "unknown"}, {sound, "sound"}, {insect, "insect"},
                {bird, "bird"}, {split, "split"}, {rot, "rot"})

enum class StoragePath { unknown, none, counter, fridge, cellar, chained };
PIPWRIGHT_WORDS(StoragePath, {unknown, "unknown"}, {none, "none"}, {counter, "counter"},
                {fridge, "fridge"}, {cellar, "cellar"}, {chained, "chained"})

/// Ripeness as eaten, in the order of time.
enum class Ripeness {
    unknown,
    green,
    gettingThere,
    earlyPrime,
    prime,
    latePrime,
    onItsWayOut,
    gone
};
PIPWRIGHT_WORDS(Ripeness, {unknown, "unknown"}, {green, "green"}, {gettingThere, "getting_there"},
                {earlyPrime, "early_prime"}, {prime, "prime"}, {latePrime, "late_prime"},
                {onItsWayOut, "on_its_way_out"}, {gone, "gone"})

enum class CanopyPlace { unknown, top, sunSide, inside, low };
PIPWRIGHT_WORDS(CanopyPlace, {unknown, "unknown"}, {top, "top"}, {sunSide, "sun_side"},
                {inside, "inside"}, {low, "low"})

enum class CropLoad { unknown, lone, light, medium, heavy };
PIPWRIGHT_WORDS(CropLoad, {unknown, "unknown"}, {lone, "lone"}, {light, "light"},
                {medium, "medium"}, {heavy, "heavy"})

/// A taster's word on a lot.
enum class Verdict { unknown, cull, noReasonToKeep, again, watch, backUpNow, parentOnly, nameTalk };
PIPWRIGHT_WORDS(Verdict, {unknown, "unknown"}, {cull, "cull"},
                {noReasonToKeep, "no_reason_to_keep"}, {again, "again"}, {watch, "watch"},
                {backUpNow, "back_up_now"}, {parentOnly, "parent_only"}, {nameTalk, "name_talk"})

/// Where a genotype stands.
enum class Stage {
    unknown,
    planned,
    seed,
    nursery,
    juvenile,
    bearing,
    watched,
    selection,
    advanced,
    named,
    released,
    parent,
    culled
};
PIPWRIGHT_WORDS(Stage, {unknown, "unknown"}, {planned, "planned"}, {seed, "seed"},
                {nursery, "nursery"}, {juvenile, "juvenile"}, {bearing, "bearing"},
                {watched, "watched"}, {selection, "selection"}, {advanced, "advanced"},
                {named, "named"}, {released, "released"}, {parent, "parent"}, {culled, "culled"})

/// What is seen of a tree's fruit on a walk.
enum class WalkMark { unknown, notYet, ripening, ripe, over, gone };
PIPWRIGHT_WORDS(WalkMark, {unknown, "unknown"}, {notYet, "not_yet"}, {ripening, "ripening"},
                {ripe, "ripe"}, {over, "over"}, {gone, "gone"})

enum class WishState { unknown, open, ordered, done, dropped };
PIPWRIGHT_WORDS(WishState, {unknown, "unknown"}, {open, "open"}, {ordered, "ordered"},
                {done, "done"}, {dropped, "dropped"})

enum class GraftMethod { unknown, whipAndTongue, cleft, bark, chipBud, tBud, other };
PIPWRIGHT_WORDS(GraftMethod, {unknown, "unknown"}, {whipAndTongue, "whip_and_tongue"},
                {cleft, "cleft"}, {bark, "bark"}, {chipBud, "chip_bud"}, {tBud, "t_bud"},
                {other, "other"})

enum class GraftCheckpoint { unknown, fourToSixWeeks, midsummer, leafFall };
PIPWRIGHT_WORDS(GraftCheckpoint, {unknown, "unknown"}, {fourToSixWeeks, "four_to_six_weeks"},
                {midsummer, "midsummer"}, {leafFall, "leaf_fall"})

enum class ParcelDirection { unknown, sent, received };
PIPWRIGHT_WORDS(ParcelDirection, {unknown, "unknown"}, {sent, "sent"}, {received, "received"})

/// A rung of a slot's ladder.
enum class Rung { unknown, floor, best, famous };
PIPWRIGHT_WORDS(Rung, {unknown, "unknown"}, {floor, "floor"}, {best, "best"}, {famous, "famous"})

enum class RipeningPath { unknown, onTree, pickThenChill, pickThenRipen, cooked };
PIPWRIGHT_WORDS(RipeningPath, {unknown, "unknown"}, {onTree, "on_tree"},
                {pickThenChill, "pick_then_chill"}, {pickThenRipen, "pick_then_ripen"},
                {cooked, "cooked"})

enum class YesNo { unknown, no, yes };
PIPWRIGHT_WORDS(YesNo, {unknown, "unknown"}, {no, "no"}, {yes, "yes"})

enum class WeatherSource { unknown, station, filled, typed };
PIPWRIGHT_WORDS(WeatherSource, {unknown, "unknown"}, {station, "station"}, {filled, "filled"},
                {typed, "typed"})

/// What a named recipe makes of each line of a table.
enum class RecipeTarget { unknown, trees, parents, scores, walkMarks };
PIPWRIGHT_WORDS(RecipeTarget, {unknown, "unknown"}, {trees, "trees"}, {parents, "parents"},
                {scores, "scores"}, {walkMarks, "walk_marks"})

#undef PIPWRIGHT_WORDS

} // namespace pipwright
