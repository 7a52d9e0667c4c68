#pragma once

#include "core/season/date.h"

#include <cstdint>
#include <optional>

namespace pipwright {

/// What has been seen of one plant, in a few figures for the map.
struct PlantFacts {
    std::optional<Date> lastVisited;   ///< day of the newest observation or pick
    std::optional<int> worstScab;      ///< highest state seen, 0 to 5
    std::optional<int> firstFruitYear; ///< crop year
    std::optional<int> usualRipeDay; ///< usual first ripe day, of the crop year (usual_ripening.h)
    int notes = 0;
    int photos = 0;

    bool operator==(const PlantFacts&) const = default;
};

/// What has been tasted of one genotype, over all its plants.
struct GenotypeFacts {
    std::optional<double> latestLiking; ///< mean of the newest tasting's scores, as eaten, 1 to 9
    int latestScores = 0;               ///< how many scores that mean rests on
    std::optional<Date> lastTasted;
    int fairLots = 0;
    int lots = 0;
    int tasters = 0;
    int cropYears = 0;                 ///< crop years it was tasted in
    std::optional<int> firstFruitYear; ///< of any of its plants
    std::optional<int> usualRipeDay;   ///< of all its plants, and sightings told of the genotype
    int openWishes = 0;                ///< graft wishes not yet done

    bool operator==(const GenotypeFacts&) const = default;
};

} // namespace pipwright
