#pragma once

#include <map>
#include <string>
#include <vector>

#include "sample-data/generator/world.h"

namespace pipwright::sample {

/// What a story makes a taster say of a lot instead of what chance would.
struct Said {
    double liking = 0.0;
    std::string words;
};

/// A lot to be laid on the table.
struct Serving {
    Lot lot;
    std::size_t strain = 0;
    std::map<std::string, Said> said; ///< by the taster's initials
};

struct Sitting {
    std::string title;
    std::optional<Date> date; ///< nothing: today
    Sight sight = Sight::blind;
    TastingPlace place = TastingPlace::table;
    std::string notes;
    std::vector<Taster> tasters;
    std::vector<Serving> servings;
};

/// Fruit taken from the tree on that day, with the condition chance gives it.
Lot lotFrom(World& world, const Tree& tree, Date taken, Date eaten, Chance& chance);
/// Sound fruit picked ripe that day.
Lot cleanLot(World& world, const Tree& tree, Date taken);
/// Where a serving's fruit was picked, ready for said words.
Serving servingOf(World& world, const std::string& code, Date taken,
                  std::map<std::string, Said> said);

/// Writes the sitting of today with all scores into the change set begun.
void hold(World& world, const Sitting& sitting, Chance& chance);

/// A change set of its own: a bite in the row, standing, label in view.
void biteInRow(World& world, const std::string& code, double liking, const std::string& words,
               Verdict verdict, Ripeness ripeness = Ripeness::prime);

} // namespace pipwright::sample
