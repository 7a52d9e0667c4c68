#pragma once

#include "core/evaluation/merit/corrections.h"
#include "core/orchard/traits.h"

#include <array>
#include <optional>
#include <vector>

namespace pipwright {

/// The random terms of the merit model.
enum class MeritTerm {
    genotype,     ///< what is asked for; related through the pedigree
    genotypeYear, ///< a genotype's own luck with a crop year
    plant,        ///< a tree better or worse than its genotype
    lot,          ///< the fruit that happened to be picked
    taster,       ///< how high a taster scores
    sitting,      ///< how high all scored that day
    cropYear,     ///< good years and poor ones
};
inline constexpr std::array kMeritTerms = {
    MeritTerm::genotype, MeritTerm::genotypeYear, MeritTerm::plant,   MeritTerm::lot,
    MeritTerm::taster,   MeritTerm::sitting,      MeritTerm::cropYear};

/// What is believed of a variance beforehand: a scaled-inverse-chi-square prior, as if
/// `weight` squares with this mean had been seen (see VarianceChoice). Weight 0: nothing is
/// believed; infinite: the variance is known.
struct VariancePrior {
    double variance = 1; ///< squared units of the trait
    double weight = 4;
};

/// All that the merit model believes before it has seen the book.
struct MeritPriors {
    /// The general level: a normal prior, or nothing believed at all.
    struct Level {
        double mean = 0;
        double sd = 1; ///< 0: known
    };
    std::optional<Level> level;
    std::array<VariancePrior, kMeritTerms.size()> terms; ///< by MeritTerm
    VariancePrior residual;
    std::vector<ConditionClass>
        conditions; ///< one for each of conditionClasses(), in units of the trait

    [[nodiscard]] const VariancePrior& of(MeritTerm term) const {
        return terms[static_cast<std::size_t>(term)];
    }
    [[nodiscard]] VariancePrior& of(MeritTerm term) {
        return terms[static_cast<std::size_t>(term)];
    }
};

/// For liking on the 9-point scale. Parts of the variance: one fruit of one tree in one year tells
/// 0.33 of what varies, genotype x year 0.12, fruit and residual 0.55 (Saito et al., Japanese pear
/// sugars; the split of the rest is assumed); level of a taster about two thirds of the residual
/// in standard deviations (20 tasters of apples, DAAG appletaste data: 18 against 27).
MeritPriors likingPriors();

/// For another trait: the same parts of `variance`, what its values vary by in all, and nothing
/// believed of its level. Condition effects are believed to be nothing, give or take what they
/// would be on the liking scale, in proportion.
MeritPriors traitPriors(double variance);

} // namespace pipwright
