#include "core/evaluation/merit/merit_model.h"
#include "tests/support/simulated_orchard.h"

#include <benchmark/benchmark.h>

// The merit model on simulated orchards: one of the size of the sample (about 1,000 scores) and one
// of 3,000 seedlings, 20 crop years and 40,000 scores. A fit estimates all variances and every
// error, a switch keeps the variances.

namespace pipwright {
namespace {

const test::SimulatedOrchard& orchardOnce(bool large) {
    const auto made = [](bool ofLarge) {
        test::SimulationPlan plan;
        plan.seedlings = ofLarge ? 3000 : 130;
        plan.families = ofLarge ? 60 : 10;
        plan.benchmarks = ofLarge ? 16 : 6;
        plan.cropYears = ofLarge ? 20 : 8;
        plan.mostTastings = ofLarge ? 12 : 5;
        plan.cohorts = true;
        return simulateOrchard(plan, 1);
    };
    static const test::SimulatedOrchard small = made(false);
    static const test::SimulatedOrchard big = made(true);
    return large ? big : small;
}

const MeritModel& modelOnce(bool large) {
    static const MeritModel small =
        *MeritModel::fit(orchardOnce(false).families, orchardOnce(false).records);
    static const MeritModel big =
        *MeritModel::fit(orchardOnce(true).families, orchardOnce(true).records);
    return large ? big : small;
}

void fitOf(benchmark::State& state, bool large) {
    const auto& orchard = orchardOnce(large);
    for (auto round : state) {
        const auto model = MeritModel::fit(orchard.families, orchard.records);
        benchmark::DoNotOptimize(model->merits().data());
    }
    state.counters["scores"] = static_cast<double>(orchard.records.records.size());
}

void switchOf(benchmark::State& state, bool large) {
    const MeritModel& model = modelOnce(large);
    MeritOptions options = model.options();
    options.off.insert(Correction::ripeness);
    for (auto round : state) {
        const auto other = model.switched(options);
        benchmark::DoNotOptimize(other->merits().data());
    }
}

void Merit_FitSample(benchmark::State& state) {
    fitOf(state, false);
}
void Merit_SwitchSample(benchmark::State& state) {
    switchOf(state, false);
}
void Merit_FitLarge(benchmark::State& state) {
    fitOf(state, true);
}
void Merit_SwitchLarge(benchmark::State& state) {
    switchOf(state, true);
}

BENCHMARK(Merit_FitSample)->Unit(benchmark::kMillisecond);
BENCHMARK(Merit_SwitchSample)->Unit(benchmark::kMillisecond);
BENCHMARK(Merit_FitLarge)->Unit(benchmark::kMillisecond);
BENCHMARK(Merit_SwitchLarge)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace pipwright
