#include "core/statistics/keeping_fit.h"

#include "core/statistics/distributions.h"
#include "core/statistics/refusal.h"
#include "core/units/no_number.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pipwright {

namespace {

/// The error of a law at one point z.
struct ErrorAt {
    double below = 0;     ///< F
    double above = 0;     ///< 1 - F
    double density = 0;   ///< f
    double relative = 0;  ///< f'/f
    double curvature = 0; ///< (f'/f)'
};

ErrorAt extremeValueAt(double z) {
    const double hazard = std::exp(z);
    return {-std::expm1(-hazard), std::exp(-hazard), std::exp(z - hazard), 1 - hazard, -hazard};
}

ErrorAt logisticAt(double z) {
    const double below = 1 / (1 + std::exp(-z));
    const double above = 1 / (1 + std::exp(z));
    return {below, above, below * above, above - below, -2 * below * above};
}

ErrorAt normalAt(double z) {
    return {standardNormalBelow(z), standardNormalAbove(z), standardNormalDensity(z), -z, -1};
}

ErrorAt errorAt(KeepingLaw law, double z) {
    switch (law) {
    case KeepingLaw::weibull:
    case KeepingLaw::exponential:
        return extremeValueAt(z);
    case KeepingLaw::logLogistic:
        return logisticAt(z);
    case KeepingLaw::logNormal:
    case KeepingLaw::normal:
        break;
    }
    return normalAt(z);
}

double errorQuantile(KeepingLaw law, double share) {
    switch (law) {
    case KeepingLaw::weibull:
    case KeepingLaw::exponential:
        return std::log(-std::log1p(-share));
    case KeepingLaw::logLogistic:
        return std::log(share / (1 - share));
    case KeepingLaw::logNormal:
    case KeepingLaw::normal:
        break;
    }
    return standardNormalQuantile(share);
}

/// A record on the scale of the law.
struct Observation {
    double low = -kInfinity;
    double high = kInfinity;
    std::vector<double> row{}; ///< 1, covariates
    double jacobian = 0;       ///< -ln t of an exact day
    [[nodiscard]] bool isExact() const { return low == high; }
};

/// The log likelihood of one record, with derivatives by its mean and by ln scale.
struct Contribution {
    double value = 0;
    double mean = 0;
    double scale = 0;
    double meanMean = 0;
    double meanScale = 0;
    double scaleScale = 0;
};

Contribution exactContribution(KeepingLaw law, const Observation& o, double mean, double scale) {
    const double z = (o.low - mean) / scale;
    const ErrorAt e = errorAt(law, z);
    Contribution c;
    c.value = std::log(e.density) - std::log(scale) + o.jacobian;
    c.mean = -e.relative / scale;
    c.scale = -z * e.relative - 1;
    c.meanMean = e.curvature / (scale * scale);
    c.meanScale = (z * e.curvature + e.relative) / scale;
    c.scaleScale = z * (z * e.curvature + e.relative);
    return c;
}

/// Of ln P(low < g(T) <= high), by the chain rule through both ends.
Contribution intervalContribution(KeepingLaw law, const Observation& o, double mean, double scale) {
    double chance = 0;
    double f = 0;    // differences, high end less low end, of: the density
    double zf = 0;   // z f
    double df = 0;   // f'
    double zdf = 0;  // z f' + f
    double zzdf = 0; // z (z f' + f)
    const auto end = [&](double bound, double sign) {
        if (std::isinf(bound)) {
            return;
        }
        const double z = (bound - mean) / scale;
        const ErrorAt e = errorAt(law, z);
        const double slope = e.density > 0 ? e.density * e.relative : 0;
        f += sign * e.density;
        zf += sign * z * e.density;
        df += sign * slope;
        zdf += sign * (z * slope + e.density);
        zzdf += sign * z * (z * slope + e.density);
    };
    end(o.high, 1);
    end(o.low, -1);
    const ErrorAt low = errorAt(law, (o.low - mean) / scale);
    const ErrorAt high = errorAt(law, (o.high - mean) / scale);
    if (std::isinf(o.high)) {
        chance = low.above;
    } else if (std::isinf(o.low)) {
        chance = high.below;
    } else {
        chance = low.below > .5 ? low.above - high.above : high.below - low.below;
    }
    Contribution c;
    c.value = std::log(chance);
    c.mean = -f / (scale * chance);
    c.scale = -zf / chance;
    c.meanMean = df / (scale * scale * chance) - c.mean * c.mean;
    c.meanScale = zdf / (scale * chance) - c.mean * c.scale;
    c.scaleScale = zzdf / chance - c.scale * c.scale;
    return c;
}

struct LikelihoodAt {
    double value = 0;
    std::vector<double> slope{};
    DenseMatrix information{}; ///< minus the second derivatives
};

/// Parameters: coefficients, then ln scale unless fixed.
LikelihoodAt likelihoodAt(KeepingLaw law, const std::vector<Observation>& observations,
                          const std::vector<double>& parameters) {
    const std::size_t columns = observations.front().row.size();
    const bool scaleFree = parameters.size() > columns;
    const double scale = scaleFree ? std::exp(parameters.back()) : 1;
    LikelihoodAt at;
    at.slope.assign(parameters.size(), 0);
    at.information = DenseMatrix(parameters.size(), parameters.size());
    for (const Observation& o : observations) {
        const double mean = dot(o.row, std::span(parameters).first(columns));
        const Contribution c = o.isExact() ? exactContribution(law, o, mean, scale)
                                           : intervalContribution(law, o, mean, scale);
        at.value += c.value;
        for (std::size_t i = 0; i < columns; ++i) {
            at.slope[i] += c.mean * o.row[i];
            for (std::size_t j = 0; j < columns; ++j) {
                at.information(i, j) -= c.meanMean * o.row[i] * o.row[j];
            }
            if (scaleFree) {
                at.information(i, columns) -= c.meanScale * o.row[i];
                at.information(columns, i) -= c.meanScale * o.row[i];
            }
        }
        if (scaleFree) {
            at.slope[columns] += c.scale;
            at.information(columns, columns) -= c.scaleScale;
        }
    }
    return at;
}

bool isUsable(KeepingLaw law, double day) {
    return std::isfinite(day) && (law == KeepingLaw::normal || day > 0);
}

std::optional<Problem> faultOf(KeepingLaw law, std::span<const KeepingRecord> records) {
    if (records.empty()) {
        return unusable("There are no keeping records.", "Look at stored fruit first.");
    }
    bool endSeen = false;
    for (const KeepingRecord& record : records) {
        if (record.covariates.size() != records.front().covariates.size() ||
            !std::all_of(record.covariates.begin(), record.covariates.end(),
                         [](double x) { return std::isfinite(x); })) {
            return unusable("The records do not all have the same covariates.",
                            "Give every record the same finite numbers.");
        }
        const bool startsAtZero = record.first && *record.first == 0;
        if ((!record.first && !record.last) ||
            (record.first && !startsAtZero && !isUsable(law, *record.first)) ||
            (record.last && !isUsable(law, *record.last)) ||
            (record.first && record.last && *record.first > *record.last)) {
            return unusable("A keeping record has days that are out of order, negative or "
                            "missing.",
                            "The last good day comes first, then the first bad one.");
        }
        endSeen = endSeen || record.last.has_value();
    }
    if (!endSeen) {
        return unusable("Every lot was still good at the last look.",
                        "Keep looking; only that they outlast it can be said.");
    }
    return std::nullopt;
}

std::vector<Observation> observationsOf(KeepingLaw law, std::span<const KeepingRecord> records) {
    std::vector<Observation> observations;
    const auto scaled = [law](double day) {
        return law == KeepingLaw::normal ? day : std::log(day); // day 0 becomes minus infinity
    };
    for (const KeepingRecord& record : records) {
        Observation o;
        o.low = record.first ? scaled(*record.first) : -kInfinity;
        o.high = record.last ? scaled(*record.last) : kInfinity;
        o.row = {1};
        o.row.insert(o.row.end(), record.covariates.begin(), record.covariates.end());
        o.jacobian = o.isExact() && law != KeepingLaw::normal ? -o.low : 0;
        observations.push_back(std::move(o));
    }
    return observations;
}

/// A finite point to stand for a record: the middle of its bounds.
double middleOf(const Observation& o) {
    if (std::isinf(o.low)) {
        return std::isinf(o.high) ? 0 : o.high;
    }
    return std::isinf(o.high) ? o.low : (o.low + o.high) / 2;
}

std::vector<double> startOf(KeepingLaw law, const std::vector<Observation>& observations) {
    double mean = 0;
    double squares = 0;
    const auto count = static_cast<double>(observations.size());
    for (const Observation& o : observations) {
        mean += middleOf(o) / count;
    }
    for (const Observation& o : observations) {
        squares += (middleOf(o) - mean) * (middleOf(o) - mean) / count;
    }
    std::vector<double> start(observations.front().row.size(), 0);
    start[0] = mean;
    if (law != KeepingLaw::exponential) {
        start.push_back(squares > 0 ? std::log(squares) / 2 : 0);
    }
    return start;
}

/// The information made positive definite for a step: more and more of its diagonal.
std::optional<DenseMatrix> steppingInverse(const LikelihoodAt& at) {
    for (double share = 0; share < 1e6; share = share == 0 ? 1e-3 : share * 10) {
        DenseMatrix damped = at.information;
        for (std::size_t i = 0; i < damped.rows(); ++i) {
            damped(i, i) += share * (std::abs(damped(i, i)) + 1e-8);
        }
        if (auto inverse = inverseOfPositive(damped)) {
            return inverse;
        }
    }
    return std::nullopt;
}

struct Climbed {
    std::vector<double> parameters;
    DenseMatrix covariance;
    double value = 0;
};

std::optional<Climbed> climb(KeepingLaw law, const std::vector<Observation>& observations) {
    std::vector<double> parameters = startOf(law, observations);
    LikelihoodAt at = likelihoodAt(law, observations, parameters);
    for (int iteration = 0; iteration < 200; ++iteration) {
        const auto inverse = steppingInverse(at);
        if (!inverse || !std::isfinite(at.value)) {
            return std::nullopt;
        }
        const std::vector<double> step = inverse->times(at.slope);
        const double promise = dot(step, at.slope);
        std::vector<double> next = parameters;
        LikelihoodAt there;
        double length = 1;
        for (int halving = 0; halving < 50; ++halving, length /= 2) {
            for (std::size_t i = 0; i < next.size(); ++i) {
                next[i] = parameters[i] + length * step[i];
            }
            there = likelihoodAt(law, observations, next);
            if (std::isfinite(there.value) && there.value >= at.value - 1e-12) {
                break;
            }
        }
        parameters = next;
        at = std::move(there);
        if (promise < 1e-14) {
            auto covariance = inverseOfPositive(at.information);
            if (!covariance) {
                return std::nullopt;
            }
            return Climbed{parameters, *covariance, at.value};
        }
        const bool runsAway =
            std::any_of(parameters.begin(), parameters.end(),
                        [](double p) { return !std::isfinite(p); }) ||
            (law != KeepingLaw::exponential &&
             std::abs(parameters.back() - startOf(law, observations).back()) > 14);
        if (runsAway) {
            return std::nullopt;
        }
    }
    return std::nullopt;
}

/// A coefficient the records do not bound (a group none of which ended) climbs until the likelihood
/// is flat; its standard error then dwarfs the scale.
bool isUnbounded(const std::vector<Observation>& observations, const Climbed& climbed) {
    constexpr double kDwarfed = 1e3;
    const std::size_t columns = observations.front().row.size();
    const double scale =
        climbed.parameters.size() > columns ? std::exp(climbed.parameters.back()) : 1;
    for (std::size_t i = 0; i < columns; ++i) {
        double squares = 0;
        for (const Observation& o : observations) {
            squares += o.row[i] * o.row[i] / static_cast<double>(observations.size());
        }
        if (std::sqrt(climbed.covariance(i, i) * squares) > kDwarfed * scale) {
            return true;
        }
    }
    return false;
}

} // namespace

KeepingRecord KeepingRecord::onDay(double day, std::vector<double> covariates) {
    return {day, day, std::move(covariates)};
}

KeepingRecord KeepingRecord::after(double day, std::vector<double> covariates) {
    return {day, std::nullopt, std::move(covariates)};
}

KeepingRecord KeepingRecord::between(double first, double last, std::vector<double> covariates) {
    return {first, last, std::move(covariates)};
}

double KeepingFit::scale() const {
    return std::exp(logScale);
}

Result<KeepingDay> KeepingFit::dayOf(double share, std::span<const double> covariates) const {
    if (!(share > 0 && share < 1)) {
        return unusable("A share must lie between 0 and 1.", "Give one, such as 0.5.");
    }
    if (covariates.size() + 1 != coefficients.size()) {
        return unusable("The model has another number of covariates.", "Give one for each.");
    }
    std::vector<double> slope{1};
    slope.insert(slope.end(), covariates.begin(), covariates.end());
    const double z = errorQuantile(law, share);
    const double point = dot(slope, coefficients) + z * scale();
    if (!std::isfinite(point)) {
        return unusable("A covariate is not a finite number.", "Give one for each.");
    }
    if (law != KeepingLaw::exponential) {
        slope.push_back(z * scale());
    }
    const double reach = 1.959963984540054 * std::sqrt(covariance.form(slope, slope));
    const auto days = [this](double x) { return law == KeepingLaw::normal ? x : std::exp(x); };
    return KeepingDay{days(point), days(point - reach), days(point + reach)};
}

Result<KeepingFit> fitKeeping(KeepingLaw law, std::span<const KeepingRecord> records) {
    if (auto fault = faultOf(law, records)) {
        return *fault;
    }
    const std::vector<Observation> observations = observationsOf(law, records);
    const std::size_t columns = observations.front().row.size();
    DenseMatrix crossProducts(columns, columns);
    for (const Observation& o : observations) {
        for (std::size_t i = 0; i < columns; ++i) {
            for (std::size_t j = 0; j < columns; ++j) {
                crossProducts(i, j) += o.row[i] * o.row[j];
            }
        }
    }
    if (firstDependentRow(crossProducts)) {
        return unusable("A covariate does not vary or repeats the others.", "Leave it out.");
    }
    const auto climbed = climb(law, observations);
    if (!climbed || isUnbounded(observations, *climbed)) {
        return unusable("The records do not bound the keeping curve.",
                        "At least two lots must end at different times, and some in every group; "
                        "look at more lots.");
    }
    KeepingFit fit;
    fit.law = law;
    fit.coefficients.assign(climbed->parameters.begin(),
                            climbed->parameters.begin() + static_cast<std::ptrdiff_t>(columns));
    fit.logScale = law == KeepingLaw::exponential ? 0 : climbed->parameters.back();
    fit.covariance = climbed->covariance;
    for (std::size_t i = 0; i < fit.covariance.rows(); ++i) {
        fit.standardErrors.push_back(std::sqrt(fit.covariance(i, i)));
    }
    fit.logLikelihood = climbed->value;
    return fit;
}

} // namespace pipwright
