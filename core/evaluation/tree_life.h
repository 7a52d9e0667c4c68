#pragma once

#include "core/evaluation/fairness.h"
#include "core/evaluation/observed_window.h"
#include "core/evaluation/orchard_view.h"

#include <optional>
#include <string>
#include <vector>

namespace pipwright {

/// A lot with its sitting, its scores and whether it was a fair test.
struct TastedLot {
    Tasting tasting;
    Lot lot;
    Fairness fairness;
    std::vector<Score> scores;            ///< not void, in the order they were given
    std::vector<Observation> intensities; ///< of the lot

    /// Mean of the likings as eaten; nothing when nobody gave one.
    [[nodiscard]] std::optional<double> meanLiking() const;
    [[nodiscard]] int cropYear() const;
};

/// A graft order with its checks.
struct GraftedOrder {
    GraftOrder order;
    std::vector<GraftCheck> checks;
};

/// One crop year of a tree's life.
struct LifeYear {
    int cropYear = 0;
    std::vector<Observation> observations; ///< by date
    std::vector<TastedLot> tastings;       ///< by date
    std::vector<Decision> decisions;       ///< by date
    ObservedWindow window;                 ///< from the walk marks of that year
};

/// Everything the book tells of a plant and its genotype, read from the store at once.
struct TreeLife {
    std::optional<Plant> plant;       ///< nothing when a genotype without a plant was asked for
    std::optional<Genotype> genotype; ///< nothing when the plant is not identified
    std::vector<Identity> identities; ///< of the plant, oldest first, void ones included
    std::vector<Plant> plantsOfGenotype;
    std::vector<Alias> aliases;
    std::vector<Parentage> parentages;
    std::vector<Observation> observations; ///< not void, of the plant and of its genotype, by date
    std::vector<TastedLot> tastings;       ///< of all the genotype's plants, by date
    std::vector<Decision> decisions;       ///< not void, by date
    std::vector<GraftWish> wishes;
    std::vector<GraftedOrder> orders;
    std::vector<Photo> photos;
    std::vector<Parcel> parcels;
    std::vector<Report> reports;
    std::vector<LifeYear> years; ///< oldest first; only years with something in them
};

/// The life of a plant (and of the genotype it is).
Result<TreeLife> lifeOfPlant(const OrchardView& view, const Store& store, Index plant);
/// The life of a genotype over all its plants.
Result<TreeLife> lifeOfGenotype(const OrchardView& view, const Store& store, Index genotype);

} // namespace pipwright
