// Frames of the row map with 100,000 cells in a window of 1920 x 1080, through a real repaint.
#include "tests/ui/rows/random_scene.h"
#include "ui/rows/filter_spec.h"
#include "ui/rows/row_map.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QWindow>

#include <benchmark/benchmark.h>

namespace {

using namespace pipwright;
using namespace pipwright::ui;
using pipwright::ui::testing::OrchardValues;
using pipwright::ui::testing::randomScene;
using pipwright::ui::testing::randomValues;

/// 250 rows of 400 places: made once, for every measurement.
const ScenePointer& largeScene() {
    static const ScenePointer scene = randomScene({1, 250, 400, false, true, 7});
    return scene;
}

const OrchardValues& largeValues() {
    static const OrchardValues values = randomValues(*largeScene());
    return values;
}

/// A shown map that can be painted at once.
class Window {
  public:
    explicit Window(benchmark::State& state) {
        m_map.setFixedSize(1920, 1080);
        m_map.setScene(largeScene());
        m_map.show();
        // Nothing is painted before the screen has taken the window.
        for (int turn = 0; turn < 1000 && !m_map.windowHandle()->isExposed(); ++turn) {
            QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
        }
        if (!m_map.windowHandle()->isExposed()) {
            state.SkipWithError("the window was not shown");
        }
        frame();
    }
    RowMap& map() { return m_map; }
    void frame() { m_map.viewport()->repaint(); }

  private:
    RowMap m_map;
};

void measureFrames(benchmark::State& state, double cellWidth, bool families) {
    Window window(state);
    if (families) {
        window.map().setColouring(
            colourByFamily(*largeScene(), largeValues().familyOf, largeValues().families));
    }
    if (cellWidth > 0) {
        window.map().setCellWidth(cellWidth, {960, 540});
    }
    window.frame();
    for (auto _ : state) {
        window.frame();
    }
    state.counters["cell_px"] = window.map().frame().scale.cellWidth;
    state.counters["pitch_px"] = window.map().frame().scale.rowPitch;
}

void Map_AllVisible(benchmark::State& state) {
    measureFrames(state, 0, false);
}
void Map_HalfWay(benchmark::State& state) {
    measureFrames(state, 14, true);
}
void Map_WithCodes(benchmark::State& state) {
    measureFrames(state, 30, true);
}

void Map_Recolour(benchmark::State& state) {
    Window window(state);
    bool turn = false;
    for (auto _ : state) {
        turn = !turn;
        window.map().setColouring(
            turn ? colourByLiking(*largeScene(), largeValues().liking)
                 : colourByFamily(*largeScene(), largeValues().familyOf, largeValues().families));
        window.frame();
    }
}

void Map_Filter(benchmark::State& state) {
    Window window(state);
    const FilterFacts facts{largeValues().families,
                            largeValues().familyOf,
                            {{QStringLiteral("liking"), {}, 1, largeValues().liking}}};
    FilterSpec spec;
    spec.stages = {Stage::bearing, Stage::watched, Stage::selection};
    spec.bounds = {{QStringLiteral("liking"), 4.0, std::nullopt}};
    bool turn = false;
    for (auto _ : state) {
        turn = !turn;
        spec.text = turn ? QStringLiteral("at1 pollen") : QStringLiteral("7");
        window.map().setShown(shownBy(spec, *largeScene(), facts));
        window.frame();
    }
}

void Map_SelectAll(benchmark::State& state) {
    Window window(state);
    for (auto _ : state) {
        window.map().selectAllShown();
        window.frame();
        window.map().setSelection({});
        window.frame();
    }
}

void Map_MoveCursorWithCodes(benchmark::State& state) {
    Window window(state);
    window.map().setCellWidth(48, {0, 0});
    bool turn = false;
    for (auto _ : state) {
        turn = !turn;
        QKeyEvent key(QEvent::KeyPress, turn ? Qt::Key_Right : Qt::Key_Left, Qt::NoModifier);
        QCoreApplication::sendEvent(&window.map(), &key);
        window.frame();
    }
}

void Map_FirstFrame(benchmark::State& state) {
    Window window(state);
    const ScenePointer& scene = largeScene();
    for (auto _ : state) {
        window.map().setScene(scene);
        window.frame();
    }
}

BENCHMARK(Map_AllVisible)->Unit(benchmark::kMillisecond);
BENCHMARK(Map_HalfWay)->Unit(benchmark::kMillisecond);
BENCHMARK(Map_WithCodes)->Unit(benchmark::kMillisecond);
BENCHMARK(Map_Recolour)->Unit(benchmark::kMillisecond);
BENCHMARK(Map_Filter)->Unit(benchmark::kMillisecond);
BENCHMARK(Map_SelectAll)->Unit(benchmark::kMillisecond);
BENCHMARK(Map_MoveCursorWithCodes)->Unit(benchmark::kMillisecond);
BENCHMARK(Map_FirstFrame)->Unit(benchmark::kMillisecond);

} // namespace
