#pragma once

#include "core/statistics/goodness_of_fit.h"
#include "core/units/result.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

/// What simple inheritance lets a family expect (Mendel 1866), held against what was counted, and
/// the seedlings to raise for what is wanted. Diploid; the genes are taken as unlinked.
namespace pipwright {

/// One gene: how many copies of the looked-for allele each parent carries, 0 to 2, and whether
/// one copy can be told from two.
struct SegregatingGene {
    enum class Expression {
        dominant,   ///< one copy shows as two do: with and without
        codominant, ///< two copies, one and none differ
        recessive   ///< shows only with two copies: with and without
    };

    int seedParentCopies = 1;
    int pollenParentCopies = 0;
    Expression expression = Expression::dominant;
};

/// How the classes of several genes come together in what is seen.
enum class Grouping {
    eachGene,  ///< every combination is a class of its own: 9:3:3:1
    anyGene,   ///< shows when at least one gene shows: 15:1, 3:1 of two genes carried once each
    everyGene, ///< shows when all genes show: 9:7
};

/// A class of seedlings that can be told apart.
struct SegregationClass {
    /// What is seen of each gene: the copies when codominant, else 1 for shown and 0 for not. A
    /// single 1 or 0 when the genes are grouped.
    std::vector<int> shown;
    double share; ///< expected, above 0, at most 1; those of all classes sum to 1
};

/// The classes to expect, what shows most first; classes that cannot occur are left out.
/// Problem: no gene, more than 8, copies outside 0 to 2, codominant genes that are grouped.
Result<std::vector<SegregationClass>> segregationOf(std::span<const SegregatingGene> genes,
                                                    Grouping grouping = Grouping::eachGene);

/// Counted classes beside expected ones. The counts are never corrected: where too few of a class
/// come, a lethal gene beside the marker may be the reason.
struct SegregationTest {
    GoodnessOfFit fit;
    /// Of two classes the exact binomial test; of more only where it is the one to read.
    std::optional<MultinomialTest> exact;
    /// Some class expects fewer than 5, so that the exact test is the one to read.
    bool readExact = false;

    [[nodiscard]] double pValue() const {
        return readExact && exact ? exact->pValue : fit.pearson.pValue;
    }
};

/// Problem: as goodnessOfFit(): counts that do not go with the classes, nothing counted, fewer
/// than two classes.
Result<SegregationTest> testSegregation(std::span<const SegregationClass> classes,
                                        std::span<const std::int64_t> counted);

/// What lies between a seed and a wanted plant, each 0 to 1.
struct WayOfASeed {
    double wanted = 1;      ///< part of the seedlings that have what is wanted
    double germination = 1; ///< part of the seeds that germinate
    double survival = 1;    ///< part of the seedlings that live to be judged

    [[nodiscard]] double chance() const { return wanted * germination * survival; }
};

/// Seeds to sow, so that with the given assurance (0.95, say) at least so many wanted plants
/// stand in the end. Exact (see numberNeeded). Problem: parts outside 0 to 1, as numberNeeded().
Result<std::int64_t> seedsToSow(std::int64_t plants, const WayOfASeed& way, double assurance);

} // namespace pipwright
