#pragma once

#include "core/statistics/mixed_model_fit.h"
#include "core/statistics/mixed_model_scaling.h"
#include "core/statistics/sparse_cholesky.h"

#include <cstdint>
#include <span>
#include <utility>
#include <vector>

namespace pipwright {

/// What the equations of a model need besides their numbers: made once.
struct EquationPlan {
    EquationPlan(const ModelRecords& records, const EquationCounts& counts);

    FactorPlan factor;
    std::vector<std::int64_t> ownSlots; ///< of each unknown, in the wanted numbers: its diagonal
    /// Beside PrecisionPlaces::places: the slot of that place.
    std::vector<std::vector<std::int64_t>> precisionSlots;
};

/// A direction of the search: a relative change of a variance. For a random term's covariance
/// S = L L' the point moves to L (I + D) L', D symmetric; a parameter is one number of D. For a
/// residual group it is the relative change of its variance.
struct SearchParameter {
    std::int32_t term = -1; ///< -1 for the residual
    std::int32_t group = 0;
    std::int32_t row = 0;
    std::int32_t column = 0;
};

/// Minus twice the (restricted) log-likelihood of variances, with its exact gradient and its
/// average information. The residual scale can be profiled out.
///
/// With P = V^-1 - V^-1 X (X'V^-1 X)^-1 X'V^-1 and V' the derivative of V for a parameter, the
/// gradient is tr(P V') - y'P V' P y and the average information (of minus twice the log-
/// likelihood) f' P f with the working variate f = V' P y (Gilmour, Thompson & Cullis 1995,
/// Biometrics 51:1440-1450). In the scaled effects v all of it comes from C alone: the traces
/// from the sparse inverse, P f from one more solve.
class RestrictedLikelihood {
  public:
    RestrictedLikelihood(const ModelRecords& records, const EquationCounts& counts,
                         const EquationPlan& plan, const ScaledEquations& equations,
                         std::int32_t fixedRank, LikelihoodKind kind);

    /// Factorises and solves at a point. With `profile` the point is then multiplied by the common
    /// scale that maximises the likelihood. False when the equations break down there.
    bool moveTo(VarianceState state, bool profile);
    [[nodiscard]] double criterion() const { return m_criterion; }
    [[nodiscard]] const VarianceState& state() const { return m_state; }
    /// r'V^-1 r at the point moved to, before profiling.
    [[nodiscard]] double quadratic() const { return m_quadratic; }

    /// Brings in the sparse inverse at this point; needed before what follows.
    void invert();
    /// Sums of the inverse and of the solution over the levels of a term, weighted by its
    /// precision: T = sum a^lm C^lm and U = sum a^lm v_l v_m', k x k. T is q I when the data say
    /// nothing, and smaller the more they say.
    [[nodiscard]] std::vector<double> inverseSums(std::size_t term) const;
    [[nodiscard]] std::vector<double> solutionSums(std::size_t term) const;
    [[nodiscard]] std::vector<double> gradient(std::span<const SearchParameter> parameters) const;
    /// Average information, one row and column a parameter.
    [[nodiscard]] std::vector<double>
    averageInformation(std::span<const SearchParameter> parameters) const;

    /// Effects at this point: u and b, fixed ones still centred.
    [[nodiscard]] std::vector<double> effects() const;
    /// Brings in the inverse with the uncertainty of the fixed effects, whatever the likelihood.
    void invertForErrors();
    /// Its numbers at the plan's wanted places.
    [[nodiscard]] std::span<const double> inverse() const { return m_inverse; }
    /// The factor F, whose fixed rows profiling has left behind: C = D F D, D the diagonal with 1
    /// for random and 1 / fixedScale for fixed unknowns.
    [[nodiscard]] SparseCholesky takeFactor() { return std::move(m_factor); }
    [[nodiscard]] double fixedScale() const { return m_fixedScale; }

  private:
    void finishMove(bool profile);
    [[nodiscard]] std::vector<double> groupTraces() const;
    void groupVariates(std::span<const SearchParameter> parameters, std::span<double> sides,
                       std::span<double> squares) const;

    const ModelRecords& m_records;
    const EquationCounts& m_counts;
    const EquationPlan& m_plan;
    const ScaledEquations& m_equations;
    std::int32_t m_fixedRank;
    LikelihoodKind m_kind;

    VarianceState m_moved; ///< as moved to: what the factor is of
    VarianceState m_state; ///< after profiling
    double m_profile = 1;  ///< what it was multiplied by
    double m_fixedScale = 1;
    double m_criterion = 0;
    double m_quadratic = 0;
    double m_residualSquares = 0; ///< e'R^-1 e at m_moved
    std::vector<double> m_values;
    std::vector<double> m_solution;     ///< v and b at m_moved
    std::vector<double> m_shrinkage;    ///< G0^-1 v
    std::vector<double> m_groupSquares; ///< e'R^-1 e of each residual group
    std::vector<double> m_rest;         ///< y - W b; only with several groups
    std::vector<double> m_inverse;
    bool m_inverted = false; ///< m_inverse is of this point and counts the fixed effects
    SparseCholesky m_factor;
};

} // namespace pipwright
