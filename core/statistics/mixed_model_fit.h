#pragma once

#include "core/statistics/mixed_model.h"
#include "core/units/result.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

namespace pipwright {

/// Which likelihood the variances maximise.
enum class LikelihoodKind {
    restricted, ///< REML: of error contrasts, free of the fixed effects
    full,       ///< ML: needed to compare models that differ in their fixed terms
};

/// Where a running fit stands.
struct FitProgress {
    int iteration = 0;
    double criterion = 0; ///< minus twice the log-likelihood so far
};

struct FitControl {
    LikelihoodKind likelihood = LikelihoodKind::restricted;
    /// The search ends when a full step promises to lower the criterion by less than this.
    double tolerance = 1e-10;
    int maximumIterations = 200;
    std::function<void(const FitProgress&)> progress{}; ///< called after each iteration
    std::stop_token stop{}; ///< a request ends the fit with Problem cancelled
};

/// A value and the standard error that goes with it.
struct UncertainValue {
    double value = 0;
    double standardError = 0;
};

/// One variance, or one covariance between an intercept and a slope.
struct VarianceComponent {
    /// Index of the random term in the model; nothing for the residual.
    std::optional<std::int32_t> term{};
    std::int32_t group = 0;  ///< of the residual
    std::int32_t row = 0;    ///< effect within the level
    std::int32_t column = 0; ///< the same as row for a variance
    double value = 0;        ///< squared units of the response (and of the covariates)
    /// From the average information; nothing when held or on the boundary.
    std::optional<double> standardError{};
    bool held = false;
    /// A variance that came out as 0, or part of a covariance matrix that came out singular. Of a
    /// residual group: less than a millionth of the largest, where it is left.
    bool atBoundary = false;

    [[nodiscard]] bool isResidual() const { return !term.has_value(); }
};

/// A fixed effect. Dropped ones are linear combinations of earlier ones and count as 0.
struct FixedEffect {
    EffectRef effect{};
    double estimate = 0;
    double standardError = 0;
    bool dropped = false;
};

/// The predicted effects of a random term; numbers of a level stand together.
struct RandomEffects {
    std::int32_t effectsPerLevel = 1; ///< k
    std::vector<double> predictions;  ///< best linear unbiased predictions, levels x k
    /// Prediction error variances and covariances, var(u_hat - u), levels x k x k. The uncertainty
    /// of the fixed effects is included, that of the variances not (Henderson 1975); with a flat
    /// prior on the fixed effects it is the posterior covariance.
    std::vector<double> errorCovariance;
    /// 1 - PEV / (a_ii v), levels x k, between 0 and 1; 0 where the variance is 0.
    std::vector<double> reliabilities;

    [[nodiscard]] std::int32_t levelCount() const {
        return static_cast<std::int32_t>(predictions.size()) / effectsPerLevel;
    }
    [[nodiscard]] double prediction(std::int32_t level, std::int32_t effect = 0) const;
    [[nodiscard]] double errorVariance(std::int32_t level, std::int32_t effect = 0) const;
    /// The square root of errorVariance: the posterior standard deviation.
    [[nodiscard]] double standardError(std::int32_t level, std::int32_t effect = 0) const;
    [[nodiscard]] double reliability(std::int32_t level, std::int32_t effect = 0) const;
};

/// Two crossed factors whose levels fall into parts that no record joins: tasters of one part
/// never saw a fruit of the other. Differences across parts rest on the model's assumptions alone.
struct DisconnectedParts {
    std::string firstTerm; ///< names of the two terms
    std::string secondTerm;
    std::int32_t parts = 0; ///< 2 or more
    /// The part of each level, from 0 in order of the first term's levels; -1 without records.
    std::vector<std::int32_t> partOfFirst;
    std::vector<std::int32_t> partOfSecond;
};

/// A finished fit. A value, cheap to copy; safe to read from several threads.
class MixedFit {
  public:
    [[nodiscard]] LikelihoodKind likelihood() const;
    /// Minus twice the log-likelihood with all its constants, penalties of priors not included:
    /// REML (n - p) ln 2 pi + ln |V| + ln |X'V^-1 X| + r'V^-1 r; ML n ln 2 pi + ln |V| + r'V^-1 r.
    /// The restricted one depends on how X is coded, so compare like with like.
    [[nodiscard]] double criterion() const;
    /// The penalties of the priors, to be added for what was minimised.
    [[nodiscard]] double penalty() const;
    /// Whether the search ended by its tolerance. True also when nothing had to be estimated.
    [[nodiscard]] bool converged() const;
    [[nodiscard]] int iterations() const;

    [[nodiscard]] std::int64_t recordsUsed() const;
    [[nodiscard]] std::int64_t recordsLeftOut() const;
    [[nodiscard]] std::int32_t fixedRank() const;
    /// Records used less the rank of X.
    [[nodiscard]] std::int64_t residualDegreesOfFreedom() const;
    /// Estimated variances and covariances, for information criteria (fixed effects not counted).
    [[nodiscard]] std::int32_t estimatedVarianceCount() const;
    /// Criterion + 2 q, q the variances (and with ML the fixed effects) estimated.
    [[nodiscard]] double akaikeCriterion() const;
    /// The same + 2 q (q + 1) / (n - q - 1), for few records: with n - p in place of n for REML
    /// (Hurvich & Tsai 1989, Biometrika 76:297-307). Nothing when q is n - 1 or more.
    [[nodiscard]] std::optional<double> correctedAkaikeCriterion() const;
    /// Criterion + q ln n, with n - p in place of n for REML.
    [[nodiscard]] double bayesCriterion() const;

    /// By term, within a term rows before columns of the lower triangle; the residual groups last.
    [[nodiscard]] const std::vector<VarianceComponent>& varianceComponents() const;
    /// The variance of a term's effect (its first unless told otherwise).
    [[nodiscard]] double variance(std::int32_t term, std::int32_t effect = 0) const;
    [[nodiscard]] double residualVariance(std::int32_t group = 0) const;
    /// Sampling covariance of the variance components, one row and column each, rows in a row;
    /// 0 for those held or on the boundary.
    [[nodiscard]] const std::vector<double>& varianceComponentCovariance() const;

    /// The intercept first (if any), then the columns term by term.
    [[nodiscard]] const std::vector<FixedEffect>& fixedEffects() const;
    /// By term, as in MixedModel::random.
    [[nodiscard]] const std::vector<RandomEffects>& randomEffects() const;
    [[nodiscard]] const std::vector<DisconnectedParts>& disconnectedParts() const;

    /// The estimate of a weighted sum of effects and the standard error of its prediction.
    /// Problem badInput: an effect the model does not have.
    [[nodiscard]] Result<UncertainValue> contrast(const Contrast& contrast) const;
    /// Covariances of the prediction errors of several contrasts, one row and column each, rows in
    /// a row. Each contrast costs one pass through the factor.
    [[nodiscard]] Result<std::vector<double>>
    contrastCovariances(std::span<const Contrast> contrasts) const;
    /// Covariances of the prediction errors of several contrasts with every effect of a random
    /// term: a row a contrast, in a row the effects as in RandomEffects::predictions.
    /// Problem badInput: an effect or a term the model does not have.
    [[nodiscard]] Result<std::vector<double>>
    contrastCovariancesWith(std::span<const Contrast> contrasts, std::int32_t term) const;

    struct Content;
    explicit MixedFit(std::shared_ptr<const Content> content) : m_content(std::move(content)) {}
    /// For the library's own use.
    [[nodiscard]] const std::shared_ptr<const Content>& content() const { return m_content; }

  private:
    std::shared_ptr<const Content> m_content;
};

/// Variances to hold, in the order of MixedFit::varianceComponents.
using VarianceValues = std::vector<double>;

/// Henderson's equations of one model, brought together and ordered once: fits and refits share
/// them. A value, cheap to copy; safe to use from several threads.
class MixedModelEquations {
  public:
    /// Problem badInput, with the term named: no records, lengths or codes that do not fit,
    /// infinities, negative weights or variances, a precision matrix that is not positive definite.
    static Result<MixedModelEquations> of(MixedModel model, std::stop_token stop = {});

    /// Estimates the variances that are to be estimated, then everything else.
    /// Problem badInput: a response that does not vary, no residual degrees of freedom, or a term
    /// whose variance the data cannot tell from the residual's. Problem cancelled.
    [[nodiscard]] Result<MixedFit> fit(const FitControl& control = {}) const;

    /// Everything else at variances given (all of them): the live path.
    [[nodiscard]] Result<MixedFit>
    withVariances(const VarianceValues& values,
                  LikelihoodKind likelihood = LikelihoodKind::restricted) const;

    /// The same design with other numbers observed, one a record of the model; records left out
    /// stay left out. Problem badInput: a wrong count, or a number that is not finite.
    [[nodiscard]] Result<MixedModelEquations> withResponse(std::span<const double> response) const;

    /// The same equations with other knowledge of one random term's variance.
    [[nodiscard]] Result<MixedModelEquations> withVarianceChoice(std::int32_t term,
                                                                 VarianceChoice choice) const;
    /// The same equations with other knowledge of a residual group's variance.
    [[nodiscard]] Result<MixedModelEquations> withResidualChoice(std::int32_t group,
                                                                 VarianceChoice choice) const;

    struct Content;
    /// For the library's own use.
    [[nodiscard]] const std::shared_ptr<const Content>& content() const { return m_content; }

  private:
    explicit MixedModelEquations(std::shared_ptr<const Content> content)
        : m_content(std::move(content)) {}
    std::shared_ptr<const Content> m_content;
};

/// MixedModelEquations::of and fit in one call.
Result<MixedFit> fitMixedModel(MixedModel model, const FitControl& control = {});

} // namespace pipwright
