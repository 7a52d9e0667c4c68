#pragma once

#include "core/statistics/dense_matrix.h"
#include "core/units/result.h"

#include <cstddef>
#include <span>
#include <vector>

/// Several traits weighed into one number.
namespace pipwright {

/// What is known of the traits. Units: those of the traits; weights are worth per unit.
struct TraitCovariances {
    DenseMatrix phenotypic; ///< P, between the traits that are measured
    DenseMatrix genetic;    ///< G, between all traits of the goal, in the same order
};

struct SelectionIndex {
    std::vector<double> coefficients{};      ///< b of each trait; 0 of one not measured
    double indexDeviation = 0;               ///< sigma_I = sqrt(b'Pb)
    double goalDeviation = 0;                ///< sigma_H = sqrt(a'Ga)
    double accuracy = 0;                     ///< correlation of index and goal
    std::vector<double> responses{};         ///< of each trait at intensity 1: Gb/sigma_I
    std::vector<std::size_t> turnedTraits{}; ///< weighed against the wish: b and a of opposite sign

    /// What an index promises for the whole goal, i x (a'Gb)/sigma_I.
    [[nodiscard]] double response(double intensity) const {
        return intensity * accuracy * goalDeviation;
    }
};

/// Smith (1936) and Hazel (1943): b = P^-1 G a, the linear index with the highest accuracy.
/// `measured` names the traits with records, by place; where it is shorter than the goal, the rows
/// of the others are left out, b = P_mm^-1 G_m a, and they respond through correlation alone.
/// `ridge` is added to the diagonal of P as a share of it, for traits that nearly repeat each
/// other. Problem: sizes that do not fit, numbers that are not finite, G no covariance matrix,
/// weights all 0, a trait that repeats the others (named by place; leave it out or give a ridge).
Result<SelectionIndex> smithHazelIndex(const TraitCovariances& traits,
                                       std::span<const double> weights,
                                       std::span<const std::size_t> measured, double ridge = 0);

/// With every trait measured.
Result<SelectionIndex> smithHazelIndex(const TraitCovariances& traits,
                                       std::span<const double> weights);

/// Williams (1962): b = a; needs no inverse, and errs less where the covariances are rough.
Result<SelectionIndex> baseIndex(const TraitCovariances& traits, std::span<const double> weights);

} // namespace pipwright
