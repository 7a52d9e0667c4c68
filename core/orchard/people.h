#pragma once

#include "core/orchard/kinds.h"
#include "core/orchard/words.h"
#include "core/season/date.h"

#include <cstdint>
#include <optional>
#include <string>

namespace pipwright {

/// An observer, taster or grower. Health notes only if the person gave them.
struct Person {
    PersonId id;
    std::string name;
    std::string initials;
    bool tastes = false;
    bool grows = false;
    std::string place;
    std::string healthNotes;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("name", self.name, "name");
        visit("initials", self.initials, "initials, as on the sheets");
        visit("tastes", self.tastes, "1 if the person tastes");
        visit("grows", self.grows, "1 if the person grows our wood elsewhere");
        visit("place", self.place, "where the person gardens");
        visit("health_notes", self.healthNotes, "allergies, only if the person gave them");
        visit("notes", self.notes, "anything else");
    }
};

/// Wood sent to a grower or received from one.
struct Parcel {
    ParcelId id;
    ParcelDirection direction = ParcelDirection::unknown;
    PersonId person;
    GenotypeId genotype;
    std::optional<PlantId> motherPlant;
    std::optional<Date> date;
    std::optional<std::int64_t> sticks;
    std::string conditions;
    std::optional<Date> reportDue;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("direction", self.direction, "sent or received");
        visit("person", self.person, "the grower");
        visit("genotype", self.genotype, "whose wood");
        visit("mother_plant", self.motherPlant, "the exact plant the wood was cut from");
        visit("date", self.date, "day it went or came");
        visit("sticks", self.sticks, "number of sticks");
        visit("conditions", self.conditions, "what was agreed: naming, passing on, reporting");
        visit("report_due", self.reportDue, "when a report may be asked for");
        visit("notes", self.notes, "anything else");
    }
};

/// What another grower says of a genotype at his site, in his words.
struct Report {
    ReportId id;
    PersonId person;
    GenotypeId genotype;
    std::optional<SiteId> site;
    std::optional<ParcelId> parcel;
    std::optional<Date> received;
    std::string words;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("person", self.person, "the grower");
        visit("genotype", self.genotype, "what it is about");
        visit("site", self.site, "where it grows");
        visit("parcel", self.parcel, "the wood behind it");
        visit("received", self.received, "day the report came");
        visit("words", self.words, "the grower's own words");
        visit("notes", self.notes, "anything else");
    }
};

} // namespace pipwright
