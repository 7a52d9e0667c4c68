#pragma once

#include "core/evaluation/orchard_view.h"

#include <string>
#include <vector>

namespace pipwright {

/// The growing plants of a genotype and how far they share one fate.
struct LivingCopies {
    int plants = 0;
    int stems = 0;                  ///< trees they stand on; limbs of one frame tree die with it
    std::vector<std::string> sites; ///< names, in order

    /// One accident ends it.
    [[nodiscard]] bool onlyTree() const { return stems == 1; }
    [[nodiscard]] bool none() const { return plants == 0; }
};

LivingCopies livingCopies(const OrchardView& view, Index genotype);

/// A limb of a frame tree that grows, or grew.
struct FrameLimb {
    Index plant = 0;
    std::string code;
    PlantState state = PlantState::unknown;
    std::optional<double> bearing; ///< degrees, clockwise from north
    std::optional<double> height;  ///< centimetres above ground
    std::optional<std::int64_t> order;
    std::string mark;
};

/// A tree that carries limbs of other genotypes.
struct FrameTree {
    Index plant = 0;
    std::string name; ///< its code and place
    int limbs = 0;    ///< growing
};

/// All frame trees of the book, by name.
std::vector<FrameTree> frameTrees(const OrchardView& view);
/// The limbs worked on a frame tree, lowest first.
Result<std::vector<FrameLimb>> limbsOf(const OrchardView& view, const Store& store, Index frame);

} // namespace pipwright
