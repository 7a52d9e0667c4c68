#pragma once

#include "core/statistics/censored_mixed_model.h"
#include "core/statistics/mixed_model_fit.h"

#include <cstddef>
#include <stop_token>
#include <vector>

namespace pipwright {

/// The most probable effects at given variances, and Laplace's criterion there.
struct CensoredMode {
    MixedFit effects; ///< of the equations with working weights and responses at the mode
    /// Minus twice the log of the integrated likelihood, without penalties.
    double criterion = 0;
};

/// Finds the mode of the effects of a model with censored responses by Newton's method: each step
/// solves Henderson's equations with the curvatures of the records as weights. Keeps the last mode
/// as the start of the next search.
class CensoredModeSearch {
  public:
    /// `model` has the records that are to be left out marked by a response that is NaN, and a
    /// first guess of the others; `responses` are one a record, all sound.
    CensoredModeSearch(MixedModel model, std::vector<ResponseInterval> responses,
                       LikelihoodKind likelihood, std::stop_token stop);

    /// Problem badInput when the effects run off without bound; cancelled.
    Result<CensoredMode> at(const VarianceValues& variances);

  private:
    struct Working {
        double logLikelihood = 0;
        double logWeights = 0;
    };
    /// Puts working responses and weights for the means into the model. `bounded` takes the
    /// largest possible curvature for each, which never overshoots.
    Working linearise(double residualVariance, bool bounded);
    struct Move {
        double distance = 0; ///< of the mean that goes farthest, in residual standard deviations
        double square = 0;   ///< weighted squares of the working responses around the new means
        double records = 0;
    };
    /// Moves the means, at most by `longest`.
    Move moveTo(const std::vector<double>& means, double residualVariance, double longest);

    MixedModel m_model;
    std::vector<ResponseInterval> m_responses;
    std::vector<double> m_givenWeights;
    std::vector<double> m_means;
    LikelihoodKind m_likelihood;
    std::stop_token m_stop;
};

} // namespace pipwright
