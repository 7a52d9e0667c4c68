#include "core/statistics/intraclass_correlation.h"

#include "core/statistics/distributions.h"
#include "core/statistics/refusal.h"

#include <algorithm>

namespace pipwright {

namespace {

/// Mean squares of the table, and its size.
struct MeanSquares {
    double fruits = 0;   ///< BMS
    double tasters = 0;  ///< JMS
    double residual = 0; ///< EMS
    double within = 0;   ///< WMS
    double n = 0;        ///< fruits
    double k = 0;        ///< tasters
};

MeanSquares meanSquaresOf(const DenseMatrix& scores) {
    MeanSquares squares;
    squares.n = static_cast<double>(scores.rows());
    squares.k = static_cast<double>(scores.columns());
    std::vector<double> fruitMeans(scores.rows(), 0);
    std::vector<double> tasterMeans(scores.columns(), 0);
    double mean = 0;
    for (std::size_t i = 0; i < scores.rows(); ++i) {
        for (std::size_t j = 0; j < scores.columns(); ++j) {
            fruitMeans[i] += scores(i, j) / squares.k;
            tasterMeans[j] += scores(i, j) / squares.n;
            mean += scores(i, j) / (squares.n * squares.k);
        }
    }
    double within = 0;
    double residual = 0;
    for (std::size_t i = 0; i < scores.rows(); ++i) {
        squares.fruits += squares.k * (fruitMeans[i] - mean) * (fruitMeans[i] - mean);
        for (std::size_t j = 0; j < scores.columns(); ++j) {
            const double apart = scores(i, j) - fruitMeans[i];
            const double rest = apart - (tasterMeans[j] - mean);
            within += apart * apart;
            residual += rest * rest;
        }
    }
    for (const double taster : tasterMeans) {
        squares.tasters += squares.n * (taster - mean) * (taster - mean);
    }
    squares.fruits /= squares.n - 1;
    squares.tasters /= squares.k - 1;
    squares.residual = residual / ((squares.n - 1) * (squares.k - 1));
    squares.within = within / (squares.n * (squares.k - 1));
    return squares;
}

/// The upper point of F that leaves `tail` above it; degrees are known to be sound.
double upperPoint(double tail, double numerator, double denominator) {
    const auto point = quantile(VarianceRatioDistribution{numerator, denominator}, 1 - tail);
    return point ? *point : 0;
}

/// A correlation of one taster, and that of the mean of k (Spearman 1910; Brown 1910).
double ofMean(double single, double k) {
    return k * single / (1 + (k - 1) * single);
}

CorrelationInterval ofMean(const CorrelationInterval& single, double k) {
    return {ofMean(single.value, k), ofMean(single.low, k), ofMean(single.high, k)};
}

/// (1,1) and (3,1) rest on one variance ratio F: (F - 1)/(F + k - 1).
CorrelationInterval fromRatio(double ratio, double k, double tail, double numerator,
                              double denominator) {
    const auto correlation = [k](double f) { return (f - 1) / (f + k - 1); };
    const double low = ratio / upperPoint(tail, numerator, denominator);
    const double high = ratio * upperPoint(tail, denominator, numerator);
    return {correlation(ratio), correlation(low), correlation(high)};
}

/// (2,1); the interval by Satterthwaite's degrees of freedom (Shrout & Fleiss 1979, p. 424).
CorrelationInterval agreement(const MeanSquares& s, double tail) {
    const double value = (s.fruits - s.residual) /
                         (s.fruits + (s.k - 1) * s.residual + s.k * (s.tasters - s.residual) / s.n);
    const double a = s.k * value / (s.n * (1 - value));
    const double b = 1 + s.k * value * (s.n - 1) / (s.n * (1 - value));
    const double sum = a * s.tasters + b * s.residual;
    const double degrees = sum * sum /
                           (a * a * s.tasters * s.tasters / (s.k - 1) +
                            b * b * s.residual * s.residual / ((s.n - 1) * (s.k - 1)));
    const double below = upperPoint(tail, s.n - 1, degrees);
    const double above = upperPoint(tail, degrees, s.n - 1);
    const double noise = s.k * s.tasters + (s.k * s.n - s.k - s.n) * s.residual;
    return {value, s.n * (s.fruits - below * s.residual) / (below * noise + s.n * s.fruits),
            s.n * (above * s.fruits - s.residual) / (noise + s.n * above * s.fruits)};
}

} // namespace

Result<IntraclassCorrelations> intraclassCorrelations(const DenseMatrix& scores,
                                                      double confidence) {
    if (scores.rows() < 2 || scores.columns() < 2) {
        return unusable("Agreement needs at least two fruits and two tasters.",
                        "Let another taster score the same fruits.");
    }
    if (!scores.isFinite()) {
        return unusable("A score is missing or not a finite number.",
                        "Use the fruits that every taster scored.");
    }
    if (!(confidence > 0 && confidence < 1)) {
        return unusable("A confidence must lie between 0 and 1.", "Give one that does.");
    }
    const MeanSquares s = meanSquaresOf(scores);
    const double noise = 1e-13 * (s.fruits + s.tasters + s.within);
    if (!(s.fruits > noise)) {
        return unusable("The fruits do not differ, so nothing can be told from agreement.",
                        "Score fruits that differ.");
    }
    if (!(s.residual > noise)) {
        return unusable("The tasters never disagree about a difference.",
                        "Their scores are copies of each other up to a constant; no interval can "
                        "be given.");
    }
    const double tail = (1 - confidence) / 2;
    IntraclassCorrelations found;
    found.oneWaySingle = fromRatio(s.fruits / s.within, s.k, tail, s.n - 1, s.n * (s.k - 1));
    found.consistencySingle =
        fromRatio(s.fruits / s.residual, s.k, tail, s.n - 1, (s.n - 1) * (s.k - 1));
    found.twoWaySingle = agreement(s, tail);
    found.oneWayMean = ofMean(found.oneWaySingle, s.k);
    found.consistencyMean = ofMean(found.consistencySingle, s.k);
    found.twoWayMean = ofMean(found.twoWaySingle, s.k);
    return found;
}

} // namespace pipwright
