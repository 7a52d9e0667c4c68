#include "core/store/orchard_book.h"
#include "tests/support/temporary_folder.h"

#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdio>
#include <random>

// The book in its file: 100,000 trees and 1,000,000 scores in the temporary folder (set TMPDIR to
// measure another disk). A durable edit is as fast as the disk settles: name it with the figure.

namespace pipwright {
namespace {

constexpr int kTrees = 100'000;
constexpr int kScores = 1'000'000;
constexpr int kScoresALot = 4;

template <typename Thing>
Thing fresh(UuidMaker& ids) {
    Thing thing;
    thing.id = Id<Thing>(ids.make());
    return thing;
}

class LargeBook {
  public:
    LargeBook() {
        const auto begun = std::chrono::steady_clock::now();
        auto book = createBook(file());
        auto load = book->get()->beginLoad();
        fill(**load);
        if (!(*load)->finish()) {
            std::fputs("the large book could not be made\n", stderr);
        }
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begun;
        std::fprintf(stderr, "filled %d trees and %d scores in %.1f s\n", kTrees, kScores,
                     took.count());
    }

    [[nodiscard]] std::filesystem::path file() const { return m_folder.path() / "large.orchard"; }

    static LargeBook& one() {
        static LargeBook book;
        return book;
    }

  private:
    void fill(BulkLoad& load) {
        UuidMaker ids(3, [this] { return m_clock += 1; });
        std::mt19937_64 random(3);
        std::vector<Person> tasters;
        for (const char* initials : {"KM", "JO", "AB"}) {
            tasters.push_back(fresh<Person>(ids));
            tasters.back().initials = initials;
            add(load, tasters.back());
        }
        const auto sitting = fresh<Tasting>(ids);
        add(load, sitting);
        std::vector<PlantId> plants;
        for (int i = 0; i < kTrees; ++i) {
            auto genotype = fresh<Genotype>(ids);
            genotype.code = "T" + std::to_string(i);
            add(load, genotype);
            auto plant = fresh<Plant>(ids);
            add(load, plant);
            plants.push_back(plant.id);
            auto identity = fresh<Identity>(ids);
            identity.plant = plant.id;
            identity.genotype = genotype.id;
            add(load, identity);
        }
        auto lot = fresh<Lot>(ids);
        for (int i = 0; i < kScores; ++i) {
            if (i % kScoresALot == 0) {
                lot = fresh<Lot>(ids);
                lot.tasting = sitting.id;
                lot.plant = plants[random() % plants.size()];
                add(load, lot);
            }
            auto score = fresh<Score>(ids);
            score.lot = lot.id;
            score.taster = tasters[random() % tasters.size()].id;
            score.liking = 1.0 + 0.5 * static_cast<double>(random() % 17);
            add(load, score);
        }
    }

    template <typename Thing>
    static void add(BulkLoad& load, const Thing& thing) {
        if (auto outcome = load.add(toRecord(thing)); !outcome) {
            std::fprintf(stderr, "%s\n", outcome.problem().sentence().c_str());
        }
    }

    test::TemporaryFolder m_folder;
    std::int64_t m_clock = 1'700'000'000'000;
};

void Book_Open(benchmark::State& state) {
    const auto file = LargeBook::one().file();
    for (auto step : state) {
        auto book = openBook(file);
        benchmark::DoNotOptimize(book->get()->position());
    }
}
BENCHMARK(Book_Open)->Unit(benchmark::kMillisecond)->UseRealTime();

void Book_EditDurable(benchmark::State& state) {
    auto book = openBook(LargeBook::one().file()).value();
    auto genotype = fromRecord<Genotype>(Record{Kind::genotype, {}, {}});
    auto outcome = book->scan(Kind::genotype, {}, [&genotype](const Record& record) {
        genotype = fromRecord<Genotype>(record);
        return false;
    });
    int count = 0;
    for (auto step : state) {
        Genotype noted = genotype;
        noted.notes = "note " + std::to_string(++count);
        ChangeSet set;
        set.sentence = "Note on " + genotype.code;
        set.edit(genotype, noted);
        if (!book->apply(set, {}).ok()) {
            state.SkipWithError("the edit failed");
        }
        genotype = noted;
    }
    benchmark::DoNotOptimize(outcome.ok());
}
BENCHMARK(Book_EditDurable)->Unit(benchmark::kMillisecond)->UseRealTime();

/// Lot, taster and liking of every score, as the evaluation takes them.
void Book_ScanScores(benchmark::State& state) {
    const auto book = openBook(LargeBook::one().file(), OpenMode::read).value();
    const ScanRequest request{{*fieldIndex(Kind::score, "lot"), *fieldIndex(Kind::score, "taster"),
                               *fieldIndex(Kind::score, "liking"),
                               *fieldIndex(Kind::score, "void_reason")},
                              std::nullopt};
    const std::size_t liking = request.fields[2];
    for (auto step : state) {
        double sum = 0;
        auto outcome = book->scan(Kind::score, request, [&sum, liking](const Record& record) {
            sum += std::get<double>(record.values[liking]);
            return true;
        });
        benchmark::DoNotOptimize(sum);
        benchmark::DoNotOptimize(outcome.ok());
    }
}
BENCHMARK(Book_ScanScores)->Unit(benchmark::kMillisecond)->UseRealTime();

void Book_ScanPlants(benchmark::State& state) {
    const auto book = openBook(LargeBook::one().file(), OpenMode::read).value();
    for (auto step : state) {
        std::size_t count = 0;
        auto outcome = book->scan(Kind::plant, {}, [&count](const Record&) {
            ++count;
            return true;
        });
        benchmark::DoNotOptimize(count);
        benchmark::DoNotOptimize(outcome.ok());
    }
}
BENCHMARK(Book_ScanPlants)->Unit(benchmark::kMillisecond)->UseRealTime();

void Book_FindWord(benchmark::State& state) {
    const auto book = openBook(LargeBook::one().file(), OpenMode::read).value();
    for (auto step : state) {
        benchmark::DoNotOptimize(book->findWords("t50", 20)->size());
    }
}
BENCHMARK(Book_FindWord)->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace
} // namespace pipwright
