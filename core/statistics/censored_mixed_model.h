#pragma once

#include "core/statistics/mixed_model_fit.h"

#include <limits>
#include <vector>

namespace pipwright {

/// What is known of a response: it lies between the two. Equal ends are an exact number; an
/// infinite end leaves that side open ("not yet ripe", "already gone"); NaN leaves the record out.
struct ResponseInterval {
    double low = -std::numeric_limits<double>::infinity();
    double high = std::numeric_limits<double>::infinity();
};

/// A mixed model of interval-, left- and right-censored responses.
///
/// The likelihood of a record is the normal probability of its interval; the effects are
/// integrated out by Laplace's approximation at their joint posterior mode (Tierney & Kadane 1986,
/// J. Am. Stat. Assoc. 81:82-86), fixed effects as well with LikelihoodKind::restricted. Exact for
/// uncensored records (it is then fitMixedModel), and with LikelihoodKind::full and no random
/// term the maximum-likelihood survival regression with normal errors (Tobin 1958).
/// `model.response` is ignored; one residual group only.
/// Problems as fitMixedModel; also an interval whose low end lies above its high end, and data
/// without any finite end.
Result<MixedFit> fitCensoredMixedModel(MixedModel model,
                                       const std::vector<ResponseInterval>& responses,
                                       const FitControl& control = {});

} // namespace pipwright
