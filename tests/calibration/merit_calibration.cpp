// How far the merit model can be believed: simulated orchards with known truth. Prints, for each
// kind of orchard, how many of the 95 % intervals hold the truth, how well chances of being better
// than the best benchmark come true, and what choosing the best tenth gains. Ends with 1 when a
// limit is missed where the truth follows the model.
#include "core/evaluation/merit/merit_model.h"
#include "core/statistics/distributions.h"
#include "tests/support/simulated_orchard.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <numeric>
#include <string>
#include <vector>

namespace pipwright::test {
namespace {

struct Tally {
    long intervals = 0, held = 0;
    long differences = 0, differencesHeld = 0;
    std::array<double, 10> promised{};
    std::array<double, 10> came{};
    std::array<long, 10> cases{};
    double weight = 0; ///< seedlings chosen, the weight of the gains
    double gain = 0, gainTrue = 0, gainRaw = 0, gainPerfect = 0;
    double squares = 0, standardised = 0;
    int unconverged = 0, fits = 0;
};

/// What the best tenth of the seedlings by a score are better by than all of them.
double gainOf(const SimulatedOrchard& orchard, const std::vector<Index>& seen,
              const std::vector<double>& score) {
    std::vector<std::size_t> order(seen.size());
    std::iota(order.begin(), order.end(), 0U);
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return score[a] > score[b]; });
    const std::size_t best = std::max<std::size_t>(1, seen.size() / 10);
    double all = 0;
    for (const Index one : seen) {
        all += orchard.merit[one] / static_cast<double>(seen.size());
    }
    double chosen = 0;
    for (std::size_t i = 0; i < best; ++i) {
        chosen += orchard.merit[seen[order[i]]] / static_cast<double>(best);
    }
    return chosen - all;
}

void tryOrchard(const SimulationPlan& plan, std::uint64_t seed, Tally& tally) {
    const SimulatedOrchard orchard = simulateOrchard(plan, seed);
    const auto model = MeritModel::fit(orchard.families, orchard.records);
    MeritOptions known;
    known.priors = orchard.truth;
    const auto truth = MeritModel::fit(orchard.families, orchard.records, known);
    if (!model || !truth) {
        std::printf("seed %llu: %s\n", static_cast<unsigned long long>(seed),
                    (model ? truth : model).problem().sentence().c_str());
        std::exit(1);
    }
    ++tally.fits;
    tally.unconverged += model->converged() ? 0 : 1;
    Index best = orchard.benchmarks.front();
    for (const Index one : orchard.benchmarks) {
        if (model->meritOf(one)->merit.value > model->meritOf(best)->merit.value) {
            best = one;
        }
    }
    const auto with = model->covariances(std::array{best});
    const UncertainValue bar = model->meritOf(best)->merit;
    std::vector<Index> seen;
    std::vector<double> ours, theirs, raw, perfect;
    for (std::size_t at = 0; at < model->merits().size(); ++at) {
        const GenotypeMerit& one = model->merits()[at];
        if (!one.seen() || one.genotype < static_cast<Index>(plan.benchmarks)) {
            continue;
        }
        const double error = one.merit.value - orchard.merit[one.genotype];
        ++tally.intervals;
        tally.held += std::abs(error) <= 1.959964 * one.merit.standardError ? 1 : 0;
        tally.squares += error * error;
        tally.standardised += std::pow(error / one.merit.standardError, 2);
        const double variance = one.merit.standardError * one.merit.standardError +
                                bar.standardError * bar.standardError - 2 * (*with)(0, at);
        const double difference = one.merit.value - bar.value;
        const double truly = orchard.merit[one.genotype] - orchard.merit[best];
        const double sd = std::sqrt(std::max(variance, 1e-12));
        ++tally.differences;
        tally.differencesHeld += std::abs(difference - truly) <= 1.959964 * sd ? 1 : 0;
        const double chance = standardNormalBelow(difference / sd);
        const auto bin = static_cast<std::size_t>(std::min(9.0, std::floor(chance * 10)));
        tally.promised[bin] += chance;
        tally.came[bin] += truly > 0 ? 1 : 0;
        ++tally.cases[bin];
        seen.push_back(one.genotype);
        ours.push_back(one.merit.value);
        theirs.push_back(truth->meritOf(one.genotype)->merit.value);
        raw.push_back(one.rawMean);
        perfect.push_back(orchard.merit[one.genotype]);
    }
    const double weight = static_cast<double>(std::max<std::size_t>(1, seen.size() / 10));
    tally.weight += weight;
    tally.gain += weight * gainOf(orchard, seen, ours);
    tally.gainTrue += weight * gainOf(orchard, seen, theirs);
    tally.gainRaw += weight * gainOf(orchard, seen, raw);
    tally.gainPerfect += weight * gainOf(orchard, seen, perfect);
}

/// Points by which the chosen tenth is better than all, pooled over the orchards.
struct PooledGains {
    double ours = 0, known = 0, raw = 0, weight = 0;
} pooled;

/// False when a limit is missed.
bool report(const std::string& name, const Tally& tally, bool binding) {
    const double covered =
        100.0 * static_cast<double>(tally.held) / static_cast<double>(tally.intervals);
    const double coveredDifferences =
        100.0 * static_cast<double>(tally.differencesHeld) / static_cast<double>(tally.differences);
    double calibrationError = 0;
    for (std::size_t bin = 0; bin < 10; ++bin) {
        calibrationError += std::abs(tally.promised[bin] - tally.came[bin]) /
                            static_cast<double>(tally.differences);
    }
    const double efficiency = 100 * tally.gain / tally.gainTrue;
    const double rawEfficiency = 100 * tally.gainRaw / tally.gainTrue;
    std::printf("%-34s covered %5.1f %%, differences %5.1f %%, z2 %.3f, calibration error %.4f, "
                "gain %.1f %% of known variances (raw means %.1f %%, perfect %.1f %%)%s\n",
                name.c_str(), covered, coveredDifferences,
                tally.standardised / static_cast<double>(tally.intervals), calibrationError,
                efficiency, rawEfficiency, 100 * tally.gainPerfect / tally.gainTrue,
                tally.unconverged > 0
                    ? (", not converged " + std::to_string(tally.unconverged)).c_str()
                    : "");
    std::printf("    promised -> came true (cases):");
    for (std::size_t bin = 0; bin < 10; ++bin) {
        if (tally.cases[bin] > 0) {
            const auto cases = static_cast<double>(tally.cases[bin]);
            std::printf(" %.2f->%.2f (%ld)", tally.promised[bin] / cases, tally.came[bin] / cases,
                        tally.cases[bin]);
        }
    }
    std::printf("\n");
    pooled.ours += tally.gain;
    pooled.known += tally.gainTrue;
    pooled.raw += tally.gainRaw;
    pooled.weight += tally.weight;
    std::fflush(stdout);
    return !binding || (covered >= 93 && covered <= 97 && calibrationError < 0.03 &&
                        efficiency >= 97 && rawEfficiency < efficiency - 2);
}

bool tryKind(const std::string& name, const SimulationPlan& plan, int seeds, bool binding) {
    Tally tally;
    for (int seed = 1; seed <= seeds; ++seed) {
        tryOrchard(plan, static_cast<std::uint64_t>(seed), tally);
    }
    return report(name, tally, binding);
}

/// `quick`: few seeds and no large orchard, to look at; too few for the limits to bind.
bool tryAll(bool quick) {
    bool good = true;
    const int seeds = quick ? 10 : 50;
    SimulationPlan small;
    small.seedlings = 60;
    small.families = 4;
    small.cropYears = 3;
    SimulationPlan middle;
    SimulationPlan large;
    large.seedlings = 3000;
    large.families = 60;
    large.cropYears = 15;
    large.benchmarks = 16;
    SimulationPlan firstYear = small;
    firstYear.cropYears = 1;
    firstYear.mostTastings = 1;
    SimulationPlan noisy = middle;
    noisy.varianceFactor = 1.6;
    good = tryKind("60 seedlings, 3 years", small, seeds, !quick) && good;
    good = tryKind("60 seedlings, first year", firstYear, seeds, !quick) && good;
    good = tryKind("300 seedlings, 6 years", middle, seeds, !quick) && good;
    good = tryKind("300, variances 1.6 times believed", noisy, seeds, !quick) && good;
    if (!quick) {
        constexpr int kLargeSeeds = 10; // each takes as long as a hundred middle ones
        good = tryKind("3,000 seedlings, 15 years", large, kLargeSeeds, true) && good;
    }
    std::printf("\nWhere the truth breaks the model (not binding):\n");
    SimulationPlan broken = middle;
    broken.skewed = true;
    tryKind("broken: skewed scores", broken, seeds, false);
    std::printf(
        "    Scores miss more towards poor than towards good; over a few scores that evens out, so "
        "little\n    harm is done.\n");
    broken = middle;
    broken.ceiling = true;
    tryKind("broken: a ceiling at 9", broken, seeds, false);
    std::printf("    No score exceeds 9, so the best are given less than they are worth, the best "
                "benchmark "
                "most\n    of all: the promised chances of beating it are too high.\n");
    broken = middle;
    broken.lossByGenotype = true;
    tryKind("broken: over-ripe loss differs", broken, seeds, false);
    std::printf("    One loss for all is taken off over-ripe fruit; whoever loses less looks too "
                "good, whoever\n    loses more too poor, and the intervals do not know it.\n");
    broken = middle;
    broken.bestTastedMost = true;
    tryKind("broken: best tasted most", broken, seeds, false);
    std::printf("    Lots go to what did well before. All its scores are in the model, early luck "
                "included, so\n    the choice does no harm beyond poor ones staying unsure.\n");
    broken = middle;
    broken.swappedLabels = 0.05;
    tryKind("broken: 5 % swapped labels", broken, seeds, false);
    std::printf("    Some lots are of another seedling; their scores pull merits towards the "
                "middle, and the\n    intervals count it only as noise.\n");
    std::printf(
        "\nThe best tenth, chosen by merit, by merit at the true variances and by raw means, "
        "is better than all by %.3f, %.3f and %.3f points (all orchards).\n",
        pooled.ours / pooled.weight, pooled.known / pooled.weight, pooled.raw / pooled.weight);
    return good;
}

} // namespace
} // namespace pipwright::test

int main(int count, char** words) {
    const bool quick = count > 1 && std::strcmp(words[1], "--quick") == 0;
    return pipwright::test::tryAll(quick) ? 0 : 1;
}
