#pragma once

#include "core/orchard/kinds.h"
#include "core/orchard/words.h"
#include "core/season/date.h"

#include <cstdint>
#include <optional>
#include <string>

namespace pipwright {

// Every word of the book lists its fields once, in `fields`: name, member, meaning. Schema check,
// journal, archive and both stores read that list; there is no second one.

/// What the whole book says of itself; there is one such record.
struct BookFacts {
    BookFactsId id;
    std::string title;
    std::string owner;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("title", self.title, "title of the book");
        visit("owner", self.owner, "whose breeding work it is");
        visit("notes", self.notes, "anything else");
    }
};

/// A piece of ground. Weather belongs to it; all dates of its trees are civil dates here.
struct Site {
    SiteId id;
    std::string name;
    std::optional<double> latitude;
    std::optional<double> longitude;
    std::optional<double> elevation;
    Hemisphere hemisphere = Hemisphere::unknown;
    std::string timeZone;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("name", self.name, "name of the site");
        visit("latitude", self.latitude, "degrees, north positive");
        visit("longitude", self.longitude, "degrees, east positive");
        visit("elevation_m", self.elevation, "metres above sea level");
        visit("hemisphere", self.hemisphere, "decides the crop year of a date");
        visit("time_zone", self.timeZone, "name in the IANA time zone database");
        visit("notes", self.notes, "anything else");
    }
};

/// A row of a site, counted from a zero stake.
struct TrialRow {
    TrialRowId id;
    SiteId site;
    std::int64_t number = 0;
    std::string name;
    std::optional<double> bearing;
    std::string zeroEnd;
    std::optional<double> length;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("site", self.site, "the site it runs through");
        visit("number", self.number, "its number on the site, in walking order");
        visit("name", self.name, "what it is called, if not by its number");
        visit("bearing_deg", self.bearing, "compass bearing from the zero stake, degrees");
        visit("zero_end", self.zeroEnd, "which end the zero stake is at, in words");
        visit("length_m", self.length, "metres from the zero stake to the end");
        visit("notes", self.notes, "anything else");
    }
};

/// A place in a row. The tape distance is what lasts: deaths renumber ordinals.
struct Position {
    PositionId id;
    TrialRowId row;
    std::int64_t ordinal = 0;
    std::optional<double> distance;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("row", self.row, "the row it is in");
        visit("ordinal", self.ordinal, "its number counted from the zero stake");
        visit("distance_m", self.distance, "tape distance from the zero stake, metres");
        visit("notes", self.notes, "anything else");
    }
};

/// A day's weather at a site.
struct WeatherDay {
    WeatherDayId id;
    SiteId site;
    Date date;
    std::optional<double> lowest;
    std::optional<double> highest;
    std::optional<double> rain;
    WeatherSource source = WeatherSource::unknown;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("site", self.site, "where it was measured");
        visit("date", self.date, "civil day of the site");
        visit("lowest_c", self.lowest, "lowest air temperature, degrees Celsius");
        visit("highest_c", self.highest, "highest air temperature, degrees Celsius");
        visit("rain_mm", self.rain, "precipitation, millimetres");
        visit("source", self.source, "measured, filled by a rule, or typed");
    }
};

} // namespace pipwright
