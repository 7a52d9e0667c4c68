// From the file to the map: the large book (100,000 trees, 1,000,000 scores) opened and painted,
// and one note from the key to the disk and to the repainted map.
#include "core/store/orchard_book.h"
#include "tests/support/temporary_folder.h"
#include "ui/book/open_book.h"
#include "ui/rows/colour_chooser.h"
#include "ui/rows/row_map.h"
#include "ui/rows/rows_place.h"

#include <QApplication>
#include <QThreadPool>

#include <benchmark/benchmark.h>
#include <cstdio>
#include <fstream>
#include <memory>

#include "sample-data/generator/large_book.h"

namespace pipwright::ui {
namespace {

class LargeFile {
  public:
    LargeFile() {
        auto book = createBook(file());
        if (!book || !sample::makeLargeBook(**book, {})) {
            std::fputs("the large book could not be made\n", stderr);
        }
    }
    [[nodiscard]] std::filesystem::path file() const { return m_folder.path() / "large.orchard"; }
    static LargeFile& one() {
        static LargeFile file;
        return file;
    }

  private:
    test::TemporaryFolder m_folder;
};

Result<std::unique_ptr<OpenBook>> opened() {
    auto book = openBook(LargeFile::one().file());
    if (!book) {
        return book.problem();
    }
    return OpenBook::open(std::move(*book), {}, []() -> Result<std::unique_ptr<Store>> {
        auto reader = openBook(LargeFile::one().file(), OpenMode::read);
        if (!reader) {
            return reader.problem();
        }
        return std::unique_ptr<Store>(std::move(*reader));
    });
}

double residentMegabytes() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);) {
        if (line.starts_with("VmRSS:")) {
            return std::stod(line.substr(6)) / 1024;
        }
    }
    return 0;
}

/// File to painted map, evidence left aside (it comes from a worker afterwards).
void Window_OpenLargeToMap(benchmark::State& state) {
    LargeFile::one();
    for (auto _ : state) {
        auto book = opened();
        RowsPlace place(**book);
        place.resize(1366, 768);
        place.show();
        place.map()->viewport()->repaint();
        state.PauseTiming();
        QThreadPool::globalInstance()->waitForDone();
        QApplication::processEvents();
        state.counters["MB"] = residentMegabytes();
        state.ResumeTiming();
    }
}
BENCHMARK(Window_OpenLargeToMap)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(3);

/// One note: key to disk to repainted map, with all evidence gathered.
void Window_NoteInLarge(benchmark::State& state) {
    auto book = opened();
    RowsPlace place(**book);
    place.resize(1366, 768);
    place.show();
    while (!(*book)->view()->hasEvidence()) {
        QApplication::processEvents(QEventLoop::AllEvents, 50);
    }
    Index plant = 0;
    for (auto _ : state) {
        plant = (plant + 7919) % static_cast<Index>((*book)->view()->plants().size());
        const std::array trees = {(*book)->treeAt(plant)};
        (*book)->apply(noteOn(trees, "split bark", (*book)->context(plant)));
        place.map()->viewport()->repaint();
    }
}
BENCHMARK(Window_NoteInLarge)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(60);

/// One decision: the cell's stage changes, so its colour does.
void Window_DecisionInLarge(benchmark::State& state) {
    auto book = opened();
    RowsPlace place(**book);
    place.resize(1366, 768);
    place.show();
    while (!(*book)->view()->hasEvidence()) {
        QApplication::processEvents(QEventLoop::AllEvents, 50);
    }
    Index plant = 0;
    for (auto _ : state) {
        plant = (plant + 7919) % static_cast<Index>((*book)->view()->plants().size());
        const std::array trees = {(*book)->treeAt(plant)};
        (*book)->apply(
            decisionOn(trees, Stage::watched, "worth another year", (*book)->context(plant)));
        place.map()->viewport()->repaint();
    }
}
BENCHMARK(Window_DecisionInLarge)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(60);

} // namespace
} // namespace pipwright::ui
