#pragma once

namespace pipwright {

/// What an interval tells of the mean of a normal distribution that a number in it came from.
struct IntervalEvidence {
    /// ln of the probability of the interval; of the density where its ends are equal.
    double logProbability = 0;
    double slope = 0;     ///< of logProbability in the mean
    double curvature = 0; ///< minus the second derivative in the mean, above 0 to 1 / sd^2
};

/// Of the interval from `low` to `high`, either of which may be infinite, low <= high, with a
/// standard deviation above 0. Keeps its digits far in the tails, where the probability itself
/// would vanish, and for intervals much narrower than the standard deviation.
IntervalEvidence intervalEvidence(double low, double high, double mean, double standardDeviation);

} // namespace pipwright
