#pragma once

#include "core/statistics/sparse_symmetric.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What a linear mixed model is made of, as values.
///
///     y = X b + Z1 u1 + Z2 u2 + ... + e,   u_k ~ N(0, A_k (x) S_k),   e_i ~ N(0, v_g / w_i)
///
/// y is the response, b the fixed effects, u_k the effects of the levels of random term k (one
/// number a level, or an intercept and slopes with a covariance S_k), A_k the relationship among
/// its levels (the identity unless a precision matrix, its inverse, is given), w_i the weight of
/// record i and v_g the residual variance of its group (one group unless told otherwise).
/// Henderson (1975), Biometrics 31:423-447; Bates et al. (2015), J. Stat. Softw. 67(1).
namespace pipwright {

/// The level of each record within a factor: 0 to count - 1; -1 where a record has none. Crossing
/// and nesting are a matter of the codes alone: nested levels simply have codes of their own.
struct LevelCodes {
    std::vector<std::int32_t> ofRecord;
    std::int32_t count = 0;

    bool operator==(const LevelCodes&) const = default;
};

/// Which levels of a fixed factor get a column.
enum class FixedCoding {
    treatment,  ///< all but level 0: effects are differences from level 0
    everyLevel, ///< all; with an intercept the last one proves redundant and is dropped
};

/// One fixed term: a factor, a covariate, or a covariate with a slope for each level of a factor
/// (both given). An interaction of factors is a factor of its own codes; any other coding (say
/// orthogonal polynomials) is handed in as covariates.
struct FixedTerm {
    std::string name;
    LevelCodes levels;                           ///< empty for a plain covariate
    FixedCoding coding = FixedCoding::treatment; ///< of the levels
    std::vector<double> covariate;               ///< one number a record; empty for a plain factor

    static FixedTerm factor(std::string name, LevelCodes levels,
                            FixedCoding coding = FixedCoding::treatment);
    static FixedTerm number(std::string name, std::vector<double> covariate);
    /// How many columns the term asks for, dropped ones included.
    [[nodiscard]] std::int32_t columnCount() const;
};

/// What is known beforehand of a variance.
enum class VarianceKnowledge {
    estimated,        ///< nothing: found by REML or ML
    held,             ///< known: kept at the value given
    inverseChiSquare, ///< a scaled-inverse-chi-square prior around the value
    halfT,            ///< a half-t prior on the standard deviation, with the value as its scale
};

/// How a variance component enters a fit. Variances are in squared units of the response.
///
/// Priors add a penalty to the criterion (minus twice the log-likelihood), so a fit with them is a
/// posterior mode (Chung et al. 2013, Psychometrika 78:685-709):
///  - inverseChiSquare, nu degrees of freedom, mean square s2: nu (ln v + s2 / v), as if nu
///    squares with mean s2 had been seen before. Its mode is s2; it never allows v = 0.
///    For an intercept with slopes: nu (ln |S| + tr(S^-1 S0)), the inverse Wishart form.
///  - halfT, nu degrees of freedom, scale s2 = A^2: (nu + 1) ln(1 + v / (nu A^2)), which allows
///    v = 0 and only discourages large values (Gelman 2006, Bayesian Anal. 1:515-533). For single
///    variances only.
struct VarianceChoice {
    VarianceKnowledge knowledge = VarianceKnowledge::estimated;
    /// The value of `held`, s2 of a prior, unused when estimated. One number; for a term with an
    /// intercept and slopes its covariance matrix, k x k numbers row by row.
    std::vector<double> value;
    double degreesOfFreedom = 0; ///< nu, above 0; of the priors only

    static VarianceChoice held(double variance);
    static VarianceChoice held(std::vector<double> covariance);
    static VarianceChoice inverseChiSquare(double meanSquare, double degreesOfFreedom);
    static VarianceChoice halfT(double scaleSquared, double degreesOfFreedom);
};

/// The inverse of the relationship among the levels of a random term. Its log determinant and the
/// diagonal of the relationship itself (1 + F for a pedigree) are found by factorisation when they
/// are not given.
struct LevelPrecision {
    SparseSymmetric matrix;
    std::optional<double> logDeterminant;                    ///< ln |A^-1|
    std::optional<std::vector<double>> relationshipDiagonal; ///< a_ii, one a level
};

/// One random term. Its levels share one variance; with covariates each level has an intercept
/// (unless switched off) and one slope a covariate, in that order, which are correlated with each
/// other through an unstructured covariance. Uncorrelated slopes are a second term of the same
/// codes, without intercept.
struct RandomTerm {
    std::string name;
    LevelCodes levels;
    bool intercept = true;
    std::vector<std::vector<double>> covariates; ///< one number a record each
    std::optional<LevelPrecision> precision;
    VarianceChoice variance;

    /// How many numbers a level has: k.
    [[nodiscard]] std::int32_t effectsPerLevel() const {
        return static_cast<std::int32_t>(covariates.size()) + (intercept ? 1 : 0);
    }
};

/// The residual: one variance, or one for each group of records (a taster's noise).
struct ResidualSpec {
    LevelCodes groups;                    ///< empty: one group
    std::vector<VarianceChoice> variance; ///< empty: estimated; else one, or one a group
};

/// A whole model. A record is left out (and counted) when its response, weight or a covariate is
/// not a number (NaN), when its weight is 0, or when a fixed factor has no level for it; a record
/// without a level in a random term merely has no effect of it.
struct MixedModel {
    std::vector<double> response;
    std::vector<double> weights; ///< empty: all 1
    bool intercept = true;
    std::vector<FixedTerm> fixed;
    std::vector<RandomTerm> random;
    ResidualSpec residual;
};

/// An effect of a model, to be named in a contrast.
struct EffectRef {
    enum class Kind { intercept, fixed, random };
    Kind kind = Kind::intercept;
    std::int32_t term = 0;   ///< index in MixedModel::fixed or ::random
    std::int32_t level = 0;  ///< code of the level; 0 for a covariate
    std::int32_t effect = 0; ///< of a random level: 0 intercept (if any), then slopes

    static EffectRef theIntercept() { return {}; }
    static EffectRef ofFixed(std::int32_t term, std::int32_t level = 0) {
        return {Kind::fixed, term, level, 0};
    }
    static EffectRef ofRandom(std::int32_t term, std::int32_t level, std::int32_t effect = 0) {
        return {Kind::random, term, level, effect};
    }
    bool operator==(const EffectRef&) const = default;
};

/// A weighted sum of effects; effects not named have weight 0.
struct ContrastPart {
    EffectRef effect;
    double coefficient = 1;
};
using Contrast = std::vector<ContrastPart>;

} // namespace pipwright
