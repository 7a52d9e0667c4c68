#pragma once

#include "core/orchard/kinds.h"
#include "core/orchard/words.h"
#include "core/season/crop_year.h"
#include "core/season/date.h"

#include <cstdint>
#include <optional>
#include <string>

namespace pipwright {

/// What is observed, by which method, on which scale. A scale is frozen once it is used: a
/// changed scale is a new trait.
struct Trait {
    TraitId id;
    std::string key;
    std::string name;
    std::string method;
    ScaleKind scale = ScaleKind::unknown;
    std::string unit;
    std::optional<double> lowest;
    std::optional<double> highest;
    Direction direction = Direction::unknown;
    std::string topic;
    std::string description;
    std::string source;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("key", self.key, "stable key of a shipped trait; empty for the user's own");
        visit("name", self.name, "name of the trait");
        visit("method", self.method, "how it is observed");
        visit("scale", self.scale, "kind of scale");
        visit("unit", self.unit, "unit of a numeric scale");
        visit("lowest", self.lowest, "lowest value the scale allows");
        visit("highest", self.highest, "highest value the scale allows");
        visit("direction", self.direction, "which end is the good one");
        visit("topic", self.topic, "bloom, ripening, fruit, taste, disease, tree or note");
        visit("description", self.description, "what it means");
        visit("source", self.source, "where the scale comes from");
    }
};

/// A worded state of an ordinal or nominal scale.
struct TraitState {
    TraitStateId id;
    TraitId trait;
    std::int64_t rank = 0;
    std::string key;
    std::string name;
    std::string meaning;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("trait", self.trait, "the trait whose scale it belongs to");
        visit("rank", self.rank, "its order, and the number that stands for it");
        visit("key", self.key, "stable key of a shipped state; empty for the user's own");
        visit("name", self.name, "the word for it");
        visit("meaning", self.meaning, "when to use it");
    }
};

/// A trait of a subject on a date. Exactly one of the subjects is set. A value may be inexact
/// and keeps what was typed; "still green on 3 August" is an observation too.
struct Observation {
    ObservationId id;
    std::optional<PlantId> plant;
    std::optional<GenotypeId> genotype;
    std::optional<LotId> lot;
    std::optional<CrossId> cross;
    std::optional<PositionId> position;
    std::optional<SiteId> site;
    TraitId trait;
    std::optional<Date> date;
    std::optional<Date> dateTo;
    std::string dateTyped;
    std::optional<CropYear> cropYear;
    std::optional<double> value;
    std::optional<double> valueTo;
    Qualifier qualifier = Qualifier::unknown;
    std::optional<TraitStateId> state;
    std::optional<Date> valueDate;
    std::string words;
    std::string typed;
    std::string unitTyped;
    std::optional<std::int64_t> replicate;
    std::string instrument;
    std::optional<PersonId> person;
    std::optional<ReportId> report;
    std::string sourceFile;
    std::string sourceSheet;
    std::string sourceCell;
    std::string voidReason;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("plant", self.plant, "subject, if a plant or limb");
        visit("genotype", self.genotype, "subject, if a genotype");
        visit("lot", self.lot, "subject, if a lot of fruit");
        visit("cross", self.cross, "subject, if a family");
        visit("position", self.position, "subject, if a place in a row");
        visit("site", self.site, "subject, if a site");
        visit("trait", self.trait, "what was observed");
        visit("date", self.date, "day, or first day it may have been");
        visit("date_to", self.dateTo, "last day it may have been, if inexact");
        visit("date_typed", self.dateTyped, "the date as typed, if inexact");
        visit("crop_year", self.cropYear, "year of the bloom it belongs to");
        visit("value", self.value, "number, or lower end of a range");
        visit("value_to", self.valueTo, "upper end of a range");
        visit("qualifier", self.qualifier, "how exact the value is");
        visit("state", self.state, "the worded state, on ordinal and nominal scales");
        visit("value_date", self.valueDate, "the value, on date scales");
        visit("words", self.words, "words: the value on text scales, else a remark");
        visit("typed", self.typed, "the value as typed");
        visit("unit_typed", self.unitTyped, "the unit as typed");
        visit("replicate", self.replicate, "number of the fruit or reading");
        visit("instrument", self.instrument, "what it was measured with");
        visit("person", self.person, "who observed");
        visit("report", self.report, "the grower's report it comes from");
        visit("source_file", self.sourceFile, "file it was imported from");
        visit("source_sheet", self.sourceSheet, "sheet it was imported from");
        visit("source_cell", self.sourceCell, "cell or line it was imported from");
        visit("void_reason", self.voidReason, "why it no longer counts; empty while it does");
    }
};

} // namespace pipwright
