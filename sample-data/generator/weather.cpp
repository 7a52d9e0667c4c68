#include <algorithm>

#include "sample-data/generator/figures.h"
#include "sample-data/generator/world.h"

namespace pipwright::sample {

namespace {

WeatherDay dayOf(SiteId site, Date date, double cooler, double& warmth, Chance& chance) {
    const double fromPeak = (date.dayOfYear() - 204) / 180.0;
    warmth = 0.75 * warmth + 1.7 * chance.normal();
    const double mean = 17.3 - 21.0 * fromPeak * fromPeak + warmth - cooler;
    const double swing = std::max(3.0, 10.0 + 2.0 * chance.normal());
    const bool wet = chance.happens(0.36);
    WeatherDay day;
    day.site = site;
    day.date = date;
    day.lowest = roundedTo(mean - swing / 2, 0.1);
    day.highest = roundedTo(mean + swing / (wet ? 3 : 2), 0.1);
    const double draw = chance.unit();
    day.rain = wet ? roundedTo(0.2 + 16 * draw * draw * draw, 0.1) : 0.0;
    day.source = WeatherSource::station;
    return day;
}

/// Reads the station's month into the book on the first day of the next.
void readMonth(World& world, SiteId site, const std::string& name, Date first, double cooler) {
    auto& scribe = world.scribe;
    scribe.begin("Weather of " + name + " to " + spoken(scribe.today().plusDays(-1)));
    double warmth = 0;
    Chance chance("weather " + name + first.iso());
    for (Date date = first; date < scribe.today(); date = date.plusDays(1)) {
        WeatherDay day = dayOf(site, date, cooler, warmth, chance);
        if (date == on(2024, 4, 24) || date == on(2026, 5, 2)) {
            day.lowest = date.year() == 2024 ? -2.4 : -0.8;
        }
        if (date.year() == 2025 && date.month() == 6 && date.day() >= 10 && date.day() <= 12) {
            day.source = date.day() == 12 ? WeatherSource::typed : WeatherSource::filled;
        }
        scribe.add(day);
    }
    scribe.finish();
}

} // namespace

void tellWeather(World& world) {
    for (int year = 2024; year <= 2026; ++year) {
        for (unsigned month = 4; month <= 9; ++month) {
            const Date first = on(year, month, 1);
            const bool running = year == 2026 && month == 8;
            const Date read = running ? on(2026, 8, 21) : on(year, month + 1, 1);
            world.agenda.add(read, 1260, [&world, first] {
                readMonth(world, world.field, "Low Farfield", first, 0.0);
            });
            if (year == 2026 && month > 5) {
                world.agenda.add(read, 1262, [&world, first] {
                    readMonth(world, world.garden, "Wallgarth", first, -0.7);
                });
            }
        }
    }
}

} // namespace pipwright::sample
