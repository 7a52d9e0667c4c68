#pragma once

#include "core/orchard/kinds.h"
#include "core/orchard/words.h"
#include "core/season/date.h"

#include <cstdint>
#include <optional>
#include <string>

namespace pipwright {

/// This clone, so many, why.
struct GraftWish {
    GraftWishId id;
    GenotypeId genotype;
    std::optional<PlantId> motherPlant;
    std::int64_t number = 1;
    std::string reason;
    std::optional<Date> wished;
    std::optional<PersonId> person;
    WishState state = WishState::open;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("genotype", self.genotype, "what to graft");
        visit("mother_plant", self.motherPlant, "the exact plant to take the wood from");
        visit("number", self.number, "how many living copies are wished for");
        visit("reason", self.reason, "why");
        visit("wished", self.wished, "day of the wish");
        visit("person", self.person, "who wishes");
        visit("state", self.state, "open, ordered, done or dropped");
        visit("notes", self.notes, "anything else");
    }
};

/// So many grafts of a genotype by a method onto a named stock or frame in a season.
struct GraftOrder {
    GraftOrderId id;
    std::optional<GraftWishId> wish;
    GenotypeId genotype;
    std::optional<PlantId> motherPlant;
    GraftMethod method = GraftMethod::unknown;
    std::int64_t number = 1;
    std::optional<PlantId> ontoPlant;
    std::string ontoWords;
    std::optional<Date> date;
    std::string season;
    std::string reason;
    std::optional<PersonId> person;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("wish", self.wish, "the wish it answers");
        visit("genotype", self.genotype, "what is grafted");
        visit("mother_plant", self.motherPlant, "the exact plant the wood came from");
        visit("method", self.method, "method");
        visit("number", self.number, "number of grafts");
        visit("onto_plant", self.ontoPlant, "frame tree or stock, if it is in the book");
        visit("onto_words", self.ontoWords, "frame tree or stock in words");
        visit("date", self.date, "day of grafting");
        visit("season", self.season, "planned season in words");
        visit("reason", self.reason, "why");
        visit("person", self.person, "whose hand");
        visit("notes", self.notes, "anything else");
    }
};

/// What of a graft order was alive when somebody looked.
struct GraftCheck {
    GraftCheckId id;
    GraftOrderId order;
    GraftCheckpoint checkpoint = GraftCheckpoint::unknown;
    std::optional<Date> date;
    std::int64_t alive = 0;
    std::string cause;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("graft_order", self.order, "the order");
        visit("checkpoint", self.checkpoint, "which of the three looks");
        visit("date", self.date, "day of the look");
        visit("alive", self.alive, "grafts alive");
        visit("cause", self.cause, "why the others died, in words");
        visit("notes", self.notes, "anything else");
    }
};

} // namespace pipwright
