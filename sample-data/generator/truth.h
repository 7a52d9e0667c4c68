#pragma once

#include "core/orchard/orchard.h"

#include <string>

#include "sample-data/generator/chance.h"

/// What is really true of the invented fruit: the record is drawn from it, and nothing of it
/// stands in the book.
namespace pipwright::sample {

enum class Hue { red, striped, gold, green, russet, blue };

/// What a genotype's fruit is like in a plain year, ripe and fresh from the tree.
struct Truth {
    double liking = 6.0;    ///< on the 9-point scale, for a taster without likes of her own
    double season = 250.0;  ///< first ripe, day of a plain year
    double window = 12.0;   ///< days from first ripe to last good on the tree
    double keeping = 0.03;  ///< liking lost a day in the fridge
    double scab = 2.0;      ///< 0 to 5
    double sharpness = 3.0; ///< 1 to 5, as the next four
    double sweetness = 3.0;
    double aroma = 3.0;
    double crispness = 3.0;
    double mass = 140.0; ///< g
    Hue hue = Hue::striped;
    std::size_t flavour = 0; ///< which of the flavours of words.cpp
};

/// A seedling of the two: half-way between them, and its own deal of the cards.
Truth childOf(const Truth& mother, const Truth& father, Chance chance);

/// How a year's season lay: everything so many days later, the whole stretched about 7 September,
/// fruit liked so much better than in a plain year.
struct SeasonTruth {
    double shift = 0.0;
    double stretch = 1.0;
    double liking = 0.0;
    bool lateFrost = false;
};
SeasonTruth seasonOf(int year);

/// Days on which a genotype has good fruit on the tree in a year.
struct GoodDays {
    Date first;
    Date last;
};
GoodDays goodDaysOf(const Truth& truth, const std::string& code, int year);

/// Where a day lies in these days: what a bite would say of ripeness.
Ripeness ripenessOn(const GoodDays& days, Date day);

/// What the condition of a lot takes from the liking (0 or less).
double conditionEffect(const Lot& lot, const Truth& truth);

/// How a taster turns fruit into a number.
struct TasterTruth {
    double level = 0.0;  ///< above or below the others
    double spread = 1.0; ///< how much of a difference she shows
    double acid = 0.0;   ///< points for each step of sharpness
    double noise = 0.7;
    double hope = 0.0; ///< points for an own seedling she can see
};

/// A score in halves from 1 to 9.
double scoreOf(double liking, const TasterTruth& taster, const Truth& truth, bool hopes,
               Chance& chance);

} // namespace pipwright::sample
