#pragma once

#include "core/units/id.h"

#include <array>
#include <cstddef>
#include <string_view>

/// Every kind of record the orchard book keeps: the type, its name in C++ and in the tables,
/// and what it is. The order is the order of the archive's files: what is referred to stands
/// before what refers to it, as far as that is possible.
#define PIPWRIGHT_KINDS(X)                                                                         \
    X(BookFacts, bookFacts, "book_facts", "what the whole book says of itself")                    \
    X(Person, person, "person", "an observer, taster or grower")                                   \
    X(Site, site, "site", "a piece of ground with its own weather")                                \
    X(TrialRow, trialRow, "trial_row", "a numbered row of a site")                                 \
    X(Position, position, "position", "a place in a row")                                          \
    X(Species, species, "species", "a species, and how it differs from the others")                \
    X(Cross, cross, "cross_made",                                                                  \
      "a cross: seed parent x pollen parent in a year; its seedlings are a family")                \
    X(Genotype, genotype, "genotype",                                                              \
      "a genetic individual: seedling, selection, cultivar or rootstock")                          \
    X(Alias, alias, "alias", "another name or code of a genotype")                                 \
    X(Parentage, parentage, "parentage", "a dated assertion that a genotype has this parent")      \
    X(Plant, plant, "plant", "a living thing that carries a genotype")                             \
    X(Identity, identity, "identity", "a dated assertion that a plant is a genotype")              \
    X(Trait, trait, "trait", "what is observed: trait, method and scale")                          \
    X(TraitState, traitState, "trait_state", "a worded state of an ordinal or nominal scale")      \
    X(Tasting, tasting, "tasting", "one sitting on a date with its tasters")                       \
    X(Lot, lot, "lot", "some fruit in a tasting, with its condition")                              \
    X(Score, score, "score", "one taster's rating of one lot")                                     \
    X(Parcel, parcel, "parcel", "wood sent or received")                                           \
    X(Report, report, "report", "what another grower says of a genotype at his site")              \
    X(Observation, observation, "observation", "a trait of a subject on a date, by a person")      \
    X(Decision, decision, "decision", "a dated decision about a genotype, with its reason")        \
    X(Photo, photo, "photo", "a picture beside the book, by its hash")                             \
    X(GraftWish, graftWish, "graft_wish", "this clone, so many, why")                              \
    X(GraftOrder, graftOrder, "graft_order",                                                       \
      "so many grafts by a method onto named stocks in a season")                                  \
    X(GraftCheck, graftCheck, "graft_check", "what of a graft order was alive at a check")         \
    X(WeatherDay, weatherDay, "weather_day", "a day's weather at a site")                          \
    X(Slot, slot, "slot", "ten to fourteen days of the season that have a ladder of benchmarks")   \
    X(Election, election, "election", "a benchmark elected to a rung of a slot's ladder")          \
    X(Recipe, recipe, "recipe", "how the columns of somebody's table become records")              \
    X(SealedKey, sealedKey, "sealed_key",                                                          \
      "the key to the codes of a planned sitting, and whether it was opened")

namespace pipwright {

#define PIPWRIGHT_DECLARE(Type, name, table, meaning) struct Type;
PIPWRIGHT_KINDS(PIPWRIGHT_DECLARE)
#undef PIPWRIGHT_DECLARE

#define PIPWRIGHT_ID(Type, name, table, meaning) using Type##Id = Id<Type>;
PIPWRIGHT_KINDS(PIPWRIGHT_ID)
#undef PIPWRIGHT_ID

enum class Kind {
#define PIPWRIGHT_KIND(Type, name, table, meaning) name,
    PIPWRIGHT_KINDS(PIPWRIGHT_KIND)
#undef PIPWRIGHT_KIND
};

inline constexpr std::array kAllKinds = {
#define PIPWRIGHT_KIND(Type, name, table, meaning) Kind::name,
    PIPWRIGHT_KINDS(PIPWRIGHT_KIND)
#undef PIPWRIGHT_KIND
};

inline constexpr std::size_t kKindCount = kAllKinds.size();

/// The kind of a type: KindOf<Genotype>::value is Kind::genotype.
template <typename Type>
struct KindOf;
#define PIPWRIGHT_KIND_OF(Type, name, table, meaning)                                              \
    template <>                                                                                    \
    struct KindOf<Type> {                                                                          \
        static constexpr Kind value = Kind::name;                                                  \
    };
PIPWRIGHT_KINDS(PIPWRIGHT_KIND_OF)
#undef PIPWRIGHT_KIND_OF

/// The kind's name in schema, archive, journal and command line.
constexpr std::string_view nameOf(Kind kind) {
    constexpr std::array names = {
#define PIPWRIGHT_NAME(Type, name, table, meaning) std::string_view{table},
        PIPWRIGHT_KINDS(PIPWRIGHT_NAME)
#undef PIPWRIGHT_NAME
    };
    return names[static_cast<std::size_t>(kind)];
}

/// What the kind is, in a few words (for the archive's documentation).
constexpr std::string_view meaningOf(Kind kind) {
    constexpr std::array meanings = {
#define PIPWRIGHT_MEANING(Type, name, table, meaning) std::string_view{meaning},
        PIPWRIGHT_KINDS(PIPWRIGHT_MEANING)
#undef PIPWRIGHT_MEANING
    };
    return meanings[static_cast<std::size_t>(kind)];
}

} // namespace pipwright
