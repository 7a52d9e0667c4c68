#pragma once

#include "core/orchard/kinds.h"
#include "core/orchard/words.h"
#include "core/season/date.h"

#include <cstdint>
#include <optional>
#include <string>

namespace pipwright {

/// A living thing that carries a genotype; which one is said by its Identity records, never here.
struct Plant {
    PlantId id;
    PlantKind kind = PlantKind::unknown;
    std::string tag;
    std::optional<PositionId> position;
    std::optional<PlantId> frame;
    std::optional<GenotypeId> stock;
    std::string stockWords;
    std::optional<PlantId> motherPlant;
    std::optional<Date> planted;
    std::string plantedTyped;
    PlantState state = PlantState::unknown;
    std::optional<Date> stateSince;
    std::string stateReason;
    std::optional<double> limbBearing;
    std::optional<double> limbHeight;
    std::optional<std::int64_t> limbOrder;
    std::string limbMark;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("kind", self.kind, "own roots, grafted, or a limb of a frame tree");
        visit("tag", self.tag, "what its tag says, if not the genotype's code");
        visit("position", self.position, "the place it stands in, or stood in");
        visit("frame", self.frame, "for a limb: the frame tree it is worked on");
        visit("stock", self.stock, "rootstock, if it is in the book");
        visit("stock_words", self.stockWords, "rootstock in words, if it is not");
        visit("mother_plant", self.motherPlant, "the exact plant its wood came from");
        visit("planted", self.planted, "day it was planted or worked");
        visit("planted_typed", self.plantedTyped, "that day as typed, if inexact");
        visit("state", self.state, "growing, lost, dead or removed");
        visit("state_since", self.stateSince, "since when");
        visit("state_reason", self.stateReason, "why it was lost, died or was removed");
        visit("limb_bearing_deg", self.limbBearing, "for a limb: compass bearing, degrees");
        visit("limb_height_cm", self.limbHeight, "for a limb: height above ground, centimetres");
        visit("limb_order", self.limbOrder, "for a limb: order along the branch from the trunk");
        visit("limb_mark", self.limbMark, "for a limb: its colour mark");
        visit("notes", self.notes, "anything else");
    }
};

/// A dated assertion that a plant is a genotype. The newest that is not void counts; a swap of
/// tags is put right by one new assertion a plant, and every record goes with it.
struct Identity {
    IdentityId id;
    PlantId plant;
    std::optional<GenotypeId> genotype;
    IdentityBasis basis = IdentityBasis::unknown;
    Confidence confidence = Confidence::unknown;
    std::optional<Date> asserted;
    std::optional<Date> confirmed;
    std::optional<PersonId> person;
    std::string notes;
    std::string voidReason;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("plant", self.plant, "the plant");
        visit("genotype", self.genotype, "what it is said to be; empty for unknown");
        visit("basis", self.basis, "what the assertion rests on");
        visit("confidence", self.confidence, "how sure");
        visit("asserted", self.asserted, "from which day it is asserted");
        visit("confirmed", self.confirmed, "day it was last confirmed at the tree");
        visit("person", self.person, "who asserted it");
        visit("notes", self.notes, "anything else");
        visit("void_reason", self.voidReason, "why it no longer counts; empty while it does");
    }
};

} // namespace pipwright
