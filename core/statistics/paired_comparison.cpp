#include "core/statistics/paired_comparison.h"

#include "core/statistics/refusal.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace pipwright {

namespace {

constexpr std::size_t kFirstPreferred = 0;
constexpr std::size_t kSecondPreferred = 1;
constexpr std::size_t kTied = 2;
using Outcomes = std::array<double, 3>;

Outcomes countsOf(const PairRecord& record) {
    return {record.firstPreferred, record.secondPreferred, record.ties};
}

double totalOf(const PairRecord& record) {
    return record.firstPreferred + record.secondPreferred + record.ties;
}

std::optional<Problem> faultOf(std::span<const PairRecord> records, std::size_t fruits,
                               const PairedModel& model) {
    double total = 0;
    for (const PairRecord& record : records) {
        if (record.first >= fruits || record.second >= fruits || record.first == record.second) {
            return unusable("A comparison is not of two fruits of the list.",
                            "Name two different ones.");
        }
        for (const double count : countsOf(record)) {
            if (!std::isfinite(count) || count < 0) {
                return unusable("A number of preferences is negative or no number.",
                                "Give 0 or more.");
            }
        }
        total += totalOf(record);
    }
    if (!(total > 0)) {
        return unusable("Nothing was compared.", "Taste at least one pair.");
    }
    if (model.priorDeviation &&
        !(std::isfinite(*model.priorDeviation) && *model.priorDeviation > 0)) {
        return unusable("The spread of a prior must be above 0.", "Give one, such as 1.");
    }
    return std::nullopt;
}

/// Fruits reached from fruit 0 over steps that `follows` allows.
template <typename Follows>
std::vector<bool> reached(std::span<const PairRecord> records, std::size_t fruits,
                          const Follows& follows) {
    std::vector<bool> seen(fruits, false);
    seen[0] = true;
    for (bool grown = true; grown;) {
        grown = false;
        for (const PairRecord& record : records) {
            const auto step = [&](std::size_t from, std::size_t to, double won) {
                if (seen[from] && !seen[to] && follows(won, record)) {
                    seen[to] = true;
                    grown = true;
                }
            };
            step(record.first, record.second, record.firstPreferred);
            step(record.second, record.first, record.secondPreferred);
        }
    }
    return seen;
}

std::optional<std::size_t> firstMissing(const std::vector<bool>& seen) {
    const auto found = std::find(seen.begin(), seen.end(), false);
    return found == seen.end() ? std::nullopt
                               : std::optional(static_cast<std::size_t>(found - seen.begin()));
}

/// Ford (1957): abilities are finite when from every fruit a chain of preferences or ties leads to
/// every other; chains from fruit 0 outwards and back show it.
std::optional<Problem> placelessFruit(std::span<const PairRecord> records, std::size_t fruits) {
    const auto compared = [](double, const PairRecord& record) { return totalOf(record) > 0; };
    if (const auto apart = firstMissing(reached(records, fruits, compared))) {
        return unusable("Fruits 1 and " + std::to_string(*apart + 1) +
                            " were never compared, not even through others.",
                        "Taste them against each other, or give a prior.");
    }
    const auto won = [](double count, const PairRecord& r) { return count + r.ties > 0; };
    const auto lost = [](double count, const PairRecord& r) { return totalOf(r) - count > 0; };
    auto stuck = firstMissing(reached(records, fruits, won));
    stuck = stuck ? stuck : firstMissing(reached(records, fruits, lost));
    if (stuck) {
        return unusable("Some fruits won or lost every comparison with the rest (fruit " +
                            std::to_string(*stuck + 1) + " against fruit 1, over all chains).",
                        "Their distance has no limit; give a prior.");
    }
    return std::nullopt;
}

/// Where each parameter stands: abilities first, then the order effect, then the tie parameter.
struct Layout {
    std::size_t fruits = 0;
    std::size_t fixedAbilities = 0; ///< 1 when fruit 0 is held at 0
    bool order = false;
    bool ties = false;

    [[nodiscard]] std::size_t size() const {
        return fruits - fixedAbilities + (order ? 1U : 0U) + (ties ? 1U : 0U);
    }
    [[nodiscard]] std::optional<std::size_t> ability(std::size_t fruit) const {
        return fruit < fixedAbilities ? std::nullopt : std::optional(fruit - fixedAbilities);
    }
    [[nodiscard]] std::size_t orderPlace() const { return fruits - fixedAbilities; }
    [[nodiscard]] std::size_t tiePlace() const { return size() - 1; }
};

/// How an outcome's log weight depends on the parameters: few places with their factors.
struct Part {
    std::size_t place = 0;
    double factor = 0;
};
using Parts = std::vector<Part>;

Parts partsOf(const Layout& layout, const PairRecord& record, std::size_t outcome) {
    Parts parts;
    const double half = outcome == kTied ? .5 : 1;
    if (outcome != kSecondPreferred) {
        if (const auto place = layout.ability(record.first)) {
            parts.push_back({*place, half});
        }
        if (layout.order) {
            parts.push_back({layout.orderPlace(), half});
        }
    }
    if (outcome != kFirstPreferred) {
        if (const auto place = layout.ability(record.second)) {
            parts.push_back({*place, half});
        }
    }
    if (outcome == kTied) {
        parts.push_back({layout.tiePlace(), 1});
    }
    return parts;
}

Outcomes chancesOf(const Layout& layout, const PairRecord& record,
                   const std::vector<double>& parameters) {
    Outcomes logs{};
    const std::size_t outcomes = layout.ties ? 3 : 2;
    for (std::size_t outcome = 0; outcome < outcomes; ++outcome) {
        for (const Part& part : partsOf(layout, record, outcome)) {
            logs[outcome] += part.factor * parameters[part.place];
        }
    }
    const double largest = *std::max_element(logs.begin(), logs.begin() + outcomes);
    Outcomes chances{};
    double sum = 0;
    for (std::size_t outcome = 0; outcome < outcomes; ++outcome) {
        chances[outcome] = std::exp(logs[outcome] - largest);
        sum += chances[outcome];
    }
    for (double& chance : chances) {
        chance /= sum;
    }
    return chances;
}

struct Penalised {
    double value = 0; ///< log likelihood, less half the squared abilities over the prior variance
    std::vector<double> slope{};
    DenseMatrix information{};
};

double valueAt(std::span<const PairRecord> records, const Layout& layout, double priorPrecision,
               const std::vector<double>& parameters) {
    double value = 0;
    for (const PairRecord& record : records) {
        const Outcomes counts = countsOf(record);
        const Outcomes chances = chancesOf(layout, record, parameters);
        for (std::size_t outcome = 0; outcome < counts.size(); ++outcome) {
            value += counts[outcome] > 0 ? counts[outcome] * std::log(chances[outcome]) : 0;
        }
    }
    for (std::size_t fruit = layout.fixedAbilities; fruit < layout.fruits; ++fruit) {
        const double ability = parameters[fruit - layout.fixedAbilities];
        value -= .5 * priorPrecision * ability * ability;
    }
    return value;
}

/// The derivatives of a multinomial logit: counts less their expectation, and covariance.
Penalised derivativesAt(std::span<const PairRecord> records, const Layout& layout,
                        double priorPrecision, const std::vector<double>& parameters) {
    Penalised at;
    at.value = valueAt(records, layout, priorPrecision, parameters);
    at.slope.assign(layout.size(), 0);
    at.information = DenseMatrix(layout.size(), layout.size());
    for (const PairRecord& record : records) {
        const double total = totalOf(record);
        const Outcomes counts = countsOf(record);
        const Outcomes chances = chancesOf(layout, record, parameters);
        std::array<Parts, 3> parts;
        for (std::size_t i = 0; i < (layout.ties ? 3U : 2U); ++i) {
            parts[i] = partsOf(layout, record, i);
            for (const Part& part : parts[i]) {
                at.slope[part.place] += (counts[i] - total * chances[i]) * part.factor;
                for (const Part& other : parts[i]) {
                    at.information(part.place, other.place) +=
                        total * chances[i] * part.factor * other.factor;
                }
            }
        }
        for (std::size_t i = 0; i < 3; ++i) {
            for (std::size_t j = 0; j < 3; ++j) {
                for (const Part& part : parts[i]) {
                    for (const Part& other : parts[j]) {
                        at.information(part.place, other.place) -=
                            total * chances[i] * chances[j] * part.factor * other.factor;
                    }
                }
            }
        }
    }
    for (std::size_t fruit = layout.fixedAbilities; fruit < layout.fruits; ++fruit) {
        const std::size_t place = fruit - layout.fixedAbilities;
        at.slope[place] -= priorPrecision * parameters[place];
        at.information(place, place) += priorPrecision;
    }
    return at;
}

struct Optimum {
    std::vector<double> parameters;
    DenseMatrix covariance;
};

/// Newton's steps, halved while the concave function falls.
std::optional<Optimum> climb(std::span<const PairRecord> records, const Layout& layout,
                             double priorPrecision) {
    std::vector<double> parameters(layout.size(), 0);
    for (int iteration = 0; iteration < 100; ++iteration) {
        const Penalised at = derivativesAt(records, layout, priorPrecision, parameters);
        const auto covariance = inverseOfPositive(at.information);
        if (!covariance) {
            return std::nullopt;
        }
        const std::vector<double> step = covariance->times(at.slope);
        double length = 1;
        std::vector<double> next = parameters;
        for (int halving = 0; halving < 40; ++halving, length /= 2) {
            for (std::size_t i = 0; i < next.size(); ++i) {
                next[i] = parameters[i] + length * step[i];
            }
            if (valueAt(records, layout, priorPrecision, next) >= at.value - 1e-12) {
                break;
            }
        }
        parameters = next;
        if (dot(step, at.slope) < 1e-18) {
            return Optimum{parameters, *covariance};
        }
    }
    return std::nullopt;
}

PairedComparison described(std::span<const PairRecord> records, const Layout& layout,
                           const Optimum& optimum) {
    PairedComparison found;
    found.abilities.assign(layout.fruits, 0);
    found.covariance = DenseMatrix(layout.fruits, layout.fruits);
    for (std::size_t i = layout.fixedAbilities; i < layout.fruits; ++i) {
        found.abilities[i] = optimum.parameters[*layout.ability(i)];
        for (std::size_t j = layout.fixedAbilities; j < layout.fruits; ++j) {
            found.covariance(i, j) = optimum.covariance(*layout.ability(i), *layout.ability(j));
        }
    }
    if (layout.order) {
        found.orderEffect = optimum.parameters[layout.orderPlace()];
        found.orderEffectError =
            std::sqrt(optimum.covariance(layout.orderPlace(), layout.orderPlace()));
    }
    if (layout.ties) {
        found.tieParameter = optimum.parameters[layout.tiePlace()];
    }
    found.degreesOfFreedom =
        -static_cast<int>(layout.fruits - 1) - (layout.order ? 1 : 0) - (layout.ties ? 1 : 0);
    for (const PairRecord& record : records) {
        const double total = totalOf(record);
        const Outcomes counts = countsOf(record);
        const Outcomes chances = chancesOf(layout, record, optimum.parameters);
        found.degreesOfFreedom += total > 0 ? (layout.ties ? 2 : 1) : 0;
        for (std::size_t i = 0; i < counts.size(); ++i) {
            if (counts[i] > 0) {
                found.logLikelihood += counts[i] * std::log(chances[i]);
                found.deviance += 2 * counts[i] * std::log(counts[i] / (total * chances[i]));
            }
        }
    }
    return found;
}

} // namespace

double PairedComparison::difference(std::size_t first, std::size_t second) const {
    return abilities[first] - abilities[second];
}

double PairedComparison::differenceError(std::size_t first, std::size_t second) const {
    return std::sqrt(std::max(0.0, covariance(first, first) + covariance(second, second) -
                                       2 * covariance(first, second)));
}

std::vector<double> PairedComparison::shares() const {
    std::vector<double> parts;
    const double largest = *std::max_element(abilities.begin(), abilities.end());
    double sum = 0;
    for (const double ability : abilities) {
        parts.push_back(std::exp(ability - largest));
        sum += parts.back();
    }
    for (double& part : parts) {
        part /= sum;
    }
    return parts;
}

Result<PairedComparison> pairedComparison(std::span<const PairRecord> records, std::size_t fruits,
                                          const PairedModel& model) {
    if (auto fault = faultOf(records, fruits, model)) {
        return *fault;
    }
    const auto placeless = placelessFruit(records, fruits);
    if (placeless && !model.priorDeviation) {
        return *placeless;
    }
    Layout layout;
    layout.fruits = fruits;
    layout.fixedAbilities = model.priorDeviation ? 0 : 1;
    layout.order = model.orderEffect;
    layout.ties =
        std::any_of(records.begin(), records.end(), [](const auto& r) { return r.ties > 0; });
    const double precision =
        model.priorDeviation ? 1 / (*model.priorDeviation * *model.priorDeviation) : 0;
    const auto optimum = climb(records, layout, precision);
    if (!optimum) {
        return unusable("The comparisons do not settle all parts of the model.",
                        "Leave out the order effect, or taste more pairs in both orders; with "
                        "nothing but ties there is nothing to fit.");
    }
    PairedComparison found = described(records, layout, *optimum);
    const auto compared = [](double, const PairRecord& record) { return totalOf(record) > 0; };
    found.commonScale = !firstMissing(reached(records, fruits, compared)).has_value();
    return found;
}

} // namespace pipwright
