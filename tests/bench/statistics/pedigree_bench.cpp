#include "core/pedigree/breeding_stock.h"
#include "core/pedigree/inbreeding.h"
#include "core/pedigree/inverse_relationship.h"

#include <benchmark/benchmark.h>
#include <random>
#include <string>
#include <vector>

// Pedigrees of a million members, from integer columns in memory: made into a Pedigree (which
// looks for rings), their inbreeding, and the inverse of their relationships on top of it.

namespace pipwright {
namespace {

/// How a pedigree is shaped: generations of so many members, whose parents are drawn anew from
/// the generation before. `brothers` of 0 means that any parent may be either.
struct Shape {
    int generations;
    int members;
    int sisters;
    int brothers;
    int sibs;
};

constexpr Shape kOrchard{5, 250000, 320, 80, 214};
constexpr Shape kNursery{6, 200000, 2600, 1100, 20};
constexpr Shape kEverybody{10, 100000, 35670, 0, 1};
constexpr Shape kManyGenerations{60, 16667, 400, 100, 3};

struct Columns {
    ParentColumn seed;
    ParentColumn pollen;
};

std::vector<std::int32_t> drawn(std::mt19937_64& random, int first, int size, int count) {
    std::vector<std::int32_t> some;
    for (int i = 0; i < count; ++i) {
        some.push_back(first + static_cast<int>(random() % static_cast<unsigned>(size)));
    }
    return some;
}

Columns columnsOf(const Shape& shape) {
    std::mt19937_64 random{7};
    Columns columns;
    std::vector<std::int32_t> sisters;
    std::vector<std::int32_t> brothers;
    for (int generation = 0; generation < shape.generations; ++generation) {
        const int size = generation == 0 && shape.sibs > 1 ? 2 * (shape.sisters + shape.brothers)
                                                           : shape.members;
        const auto first = static_cast<int>(columns.seed.size());
        std::int32_t seed = kUnknownParent;
        std::int32_t pollen = kUnknownParent;
        for (int member = 0; member < size; ++member) {
            if (generation > 0 && member % shape.sibs == 0) {
                seed = sisters[random() % sisters.size()];
                pollen = brothers[random() % brothers.size()];
            }
            columns.seed.push_back(seed);
            columns.pollen.push_back(pollen);
        }
        sisters = drawn(random, first, size, shape.sisters);
        brothers = shape.brothers == 0 ? sisters : drawn(random, first, size, shape.brothers);
    }
    return columns;
}

const Columns& columnsOnce(const Shape& shape) {
    static std::vector<std::pair<const Shape*, Columns>> made;
    for (const auto& [of, columns] : made) {
        if (of == &shape) {
            return columns;
        }
    }
    made.reserve(8); // so that what was handed out stays where it is
    made.emplace_back(&shape, columnsOf(shape));
    return made.back().second;
}

std::string namelessly(int /*genotype*/) {
    return {};
}

void inbreedingOf(benchmark::State& state, const Shape& shape) {
    const Columns& columns = columnsOnce(shape);
    for (auto round : state) {
        state.PauseTiming();
        Columns copy = columns;
        state.ResumeTiming();
        const auto pedigree =
            Pedigree::ofColumns(std::move(copy.seed), std::move(copy.pollen), namelessly);
        auto result = inbreeding(*pedigree);
        benchmark::DoNotOptimize(result.data());
        state.PauseTiming(); // what was made goes out of the way
        result = {};
        copy = {};
        state.ResumeTiming();
    }
    const auto pedigree = Pedigree::ofColumns(columns.seed, columns.pollen, namelessly);
    const BreedingStock stock = breedingStockOf(*pedigree);
    state.counters["members"] = static_cast<double>(pedigree->size());
    state.counters["parents"] = static_cast<double>(stock.members.size());
    state.counters["crosses"] = static_cast<double>(stock.mates.size());
}

void inverseOf(benchmark::State& state, const Shape& shape) {
    const Columns& columns = columnsOnce(shape);
    const auto pedigree = Pedigree::ofColumns(columns.seed, columns.pollen, namelessly);
    const auto inbreedings = inbreeding(*pedigree);
    for (auto round : state) {
        auto result = inverseRelationship(*pedigree, inbreedings, namelessly);
        benchmark::DoNotOptimize(result->matrix.values().data());
    }
}

void Pedigree_OrchardInbreeding(benchmark::State& state) {
    inbreedingOf(state, kOrchard);
}
void Pedigree_OrchardInverse(benchmark::State& state) {
    inverseOf(state, kOrchard);
}
void Pedigree_NurseryInbreeding(benchmark::State& state) {
    inbreedingOf(state, kNursery);
}
void Pedigree_EverybodyInbreeding(benchmark::State& state) {
    inbreedingOf(state, kEverybody);
}
void Pedigree_EverybodyInverse(benchmark::State& state) {
    inverseOf(state, kEverybody);
}
void Pedigree_DeepInbreeding(benchmark::State& state) {
    inbreedingOf(state, kManyGenerations);
}

BENCHMARK(Pedigree_OrchardInbreeding)->Unit(benchmark::kMillisecond);
BENCHMARK(Pedigree_OrchardInverse)->Unit(benchmark::kMillisecond);
BENCHMARK(Pedigree_NurseryInbreeding)->Unit(benchmark::kMillisecond);
BENCHMARK(Pedigree_EverybodyInbreeding)->Unit(benchmark::kMillisecond);
BENCHMARK(Pedigree_EverybodyInverse)->Unit(benchmark::kMillisecond);
BENCHMARK(Pedigree_DeepInbreeding)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace pipwright
