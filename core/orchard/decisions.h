#pragma once

#include "core/orchard/kinds.h"
#include "core/orchard/words.h"
#include "core/season/crop_year.h"
#include "core/season/date.h"

#include <cstdint>
#include <optional>
#include <string>

namespace pipwright {

/// A dated decision: the genotype goes to this stage, for this reason. The newest that is not
/// void says where the genotype stands.
struct Decision {
    DecisionId id;
    GenotypeId genotype;
    Stage stage = Stage::unknown;
    Date date;
    std::string reason;
    std::optional<PersonId> person;
    std::string voidReason;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("genotype", self.genotype, "what was decided about");
        visit("stage", self.stage, "the stage it goes to");
        visit("date", self.date, "day of the decision");
        visit("reason", self.reason, "why");
        visit("person", self.person, "who decided");
        visit("void_reason", self.voidReason, "why it no longer counts; empty while it does");
    }
};

/// Ten to fourteen days of a crop year's season, for one species, that have a ladder.
struct Slot {
    SlotId id;
    CropYear cropYear;
    std::optional<SpeciesId> species;
    Date first;
    Date last;
    std::string name;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("crop_year", self.cropYear, "the season it belongs to");
        visit("species", self.species, "the species it is for");
        visit("first_day", self.first, "first day");
        visit("last_day", self.last, "last day");
        visit("name", self.name, "what it is called");
        visit("notes", self.notes, "anything else");
    }
};

/// A benchmark elected, at the winter's meeting, to a rung of a slot's ladder.
struct Election {
    ElectionId id;
    SlotId slot;
    Rung rung = Rung::unknown;
    GenotypeId genotype;
    std::optional<Date> elected;
    std::string reason;
    std::string voidReason;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("slot", self.slot, "the slot");
        visit("rung", self.rung, "floor, best or famous name");
        visit("genotype", self.genotype, "the benchmark");
        visit("elected", self.elected, "day of the election");
        visit("reason", self.reason, "why");
        visit("void_reason", self.voidReason, "why it no longer counts; empty while it does");
    }
};

/// A picture that lies beside the book, named by the SHA-256 of its bytes.
struct Photo {
    PhotoId id;
    std::string sha256;
    std::string mediaType;
    std::string caption;
    std::optional<Date> taken;
    std::optional<PersonId> person;
    std::optional<PlantId> plant;
    std::optional<GenotypeId> genotype;
    std::optional<LotId> lot;
    std::optional<PositionId> position;
    std::string voidReason;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("sha256", self.sha256, "hash of the file, 64 lower-case hexadecimal digits");
        visit("media_type", self.mediaType, "image/png, image/jpeg or image/svg+xml");
        visit("caption", self.caption, "what it shows");
        visit("taken", self.taken, "day it was taken");
        visit("person", self.person, "who took it");
        visit("plant", self.plant, "the plant it shows");
        visit("genotype", self.genotype, "the genotype it shows");
        visit("lot", self.lot, "the lot it shows");
        visit("position", self.position, "the place it shows");
        visit("void_reason", self.voidReason, "why it no longer counts; empty while it does");
    }
};

/// How the columns of somebody's table become records, kept under a name.
struct Recipe {
    RecipeId id;
    std::string name;
    RecipeTarget target = RecipeTarget::unknown;
    std::string columns;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("name", self.name, "name of the recipe");
        visit("target", self.target, "what each line becomes");
        visit("columns", self.columns, "JSON: for each column of the table, the field it fills");
        visit("notes", self.notes, "anything else");
    }
};

} // namespace pipwright
