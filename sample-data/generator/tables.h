#pragma once

#include <span>
#include <string>
#include <vector>

#include "sample-data/generator/truth.h"

namespace pipwright::sample {

/// A cultivar of the valley; all of them are invented.
struct CultivarRow {
    std::string code;
    std::string name;
    std::string species;
    Truth truth;
    bool benchmark = true;
    int ploidy = 2;
    std::string selfAlleles;
    std::string origin;
};
const std::vector<CultivarRow>& cultivars();

/// A cross and the seedlings numbered of it.
struct FamilyRow {
    std::string code;
    int year = 0;
    std::string seedParent;
    std::string pollenParent; ///< empty: open pollinated
    int numbered = 0;
    std::string species = "apple";
    Purity purity = Purity::bagged;
    int flowers = 0;
    int fruits = 0;
    int seeds = 0;
    int germinated = 0;
    std::string notes;
};
const std::vector<FamilyRow>& families();

/// A seedling whose story is told by hand: what is set rather than drawn.
struct StoryRow {
    std::string code;
    double liking = 6.0;
    double season = 250.0;
    double window = 12.0;
    int firstCrop = 0;
    Hue hue = Hue::striped;
    double sharpness = 3.0;
    double scab = 1.5;
};
const std::vector<StoryRow>& storyTrees();

} // namespace pipwright::sample
