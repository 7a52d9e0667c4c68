#include "tests/ui/widgets/look.h"
#include "ui/charts/chart_canvas.h"
#include "ui/charts/chart_export.h"
#include "ui/charts/chart_legend.h"
#include "ui/charts/chart_panel.h"
#include "ui/charts/chart_style.h"

#include <QClipboard>
#include <QFile>
#include <QImage>
#include <QPainter>
#include <QSignalSpy>
#include <QSvgRenderer>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>

#include <cmath>
#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

constexpr double kFirstAugust2026 = 20666;

ChartMark window(double lane, double from, double to, const char* label) {
    ChartMark mark;
    mark.y = lane;
    mark.xInterval = {kFirstAugust2026 + from, kFirstAugust2026 + to};
    mark.core = {kFirstAugust2026 + from + 3, kFirstAugust2026 + to - 4};
    mark.label = label;
    mark.id = std::string("benchmark ") + label;
    mark.tooltip = "in prime for most of its window";
    return mark;
}

ChartMark liking(double day, double value, double doubt, const char* code, bool uncertain) {
    ChartMark mark;
    mark.x = kFirstAugust2026 + day;
    mark.y = value;
    mark.yInterval = {value - doubt, value + doubt};
    mark.label = code;
    mark.id = code;
    mark.tooltip = "two fair lots, one taster";
    mark.uncertain = uncertain;
    return mark;
}

/// A season of invented benchmarks and selections.
ChartSpec seasonChart() {
    ChartSpec spec;
    spec.title = "Liking by harvest week";
    spec.summary = "AT17-014 stands above the best benchmark of its week.";
    spec.lanes = {"Summer Ash", "Red Tarn", "Late Moor"};
    spec.xAxis.kind = AxisKind::week;
    spec.xAxis.title = "ISO week";
    spec.yAxis = {AxisKind::numeric, "liking", "1 to 9", {}, 1.0, 9.0, 1};
    ChartSeries windows{
        "benchmark windows", SeriesKind::spans, {ColourRole::secondInk, 0}, {}, false};
    windows.marks = {window(0, -10, 8, ""), window(1, 12, 34, ""), window(2, 38, 70, "")};
    ChartSeries best{"best benchmark", SeriesKind::band, {ColourRole::categorical, 4}, {}, false};
    for (int week = -1; week <= 10; ++week) {
        ChartMark mark;
        mark.x = kFirstAugust2026 + 7 * week;
        mark.yInterval = {5.8 + 0.5 * std::sin(week), 6.9 + 0.5 * std::sin(week)};
        best.marks.push_back(mark);
    }
    ChartSeries line{
        "middle of the best", SeriesKind::line, {ColourRole::categorical, 0}, {}, false};
    for (const auto& mark : best.marks) {
        line.marks.push_back({.x = mark.x, .y = (mark.yInterval->low + mark.yInterval->high) / 2});
    }
    ChartSeries own{"selections", SeriesKind::points, {ColourRole::action, 0}, {}, false};
    own.marks = {liking(5, 6.1, 1.4, "AT15-003", true), liking(20, 7.4, 0.6, "AT17-014", false),
                 liking(52, 7.0, 0.8, "KM16-120", false)};
    ChartSeries weak{"weak weeks", SeriesKind::shade, {ColourRole::attention, 0}, {}, false};
    ChartMark gap;
    gap.xInterval = {kFirstAugust2026 + 34, kFirstAugust2026 + 41};
    weak.marks = {gap};
    ChartSeries today{"today", SeriesKind::verticalRule, {ColourRole::fault, 0}, {}, true};
    today.marks = {{.x = kFirstAugust2026 + 21, .label = "today"}};
    ChartSeries floor{"floor", SeriesKind::horizontalRule, {ColourRole::ink, 0}, {}, true};
    floor.marks = {{.y = 5.5, .label = "worth watching"}};
    spec.series = {weak, windows, best, line, own, today, floor};
    return spec;
}

constexpr std::size_t kOwn = 4;

class ChartPanelTest : public testing::Test {
  protected:
    void SetUp() override {
        dress();
        panel.setSpec(seasonChart());
        panel.resize(820, 520);
        panel.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&panel));
        QApplication::processEvents();
    }

    /// The place of a selection's point, on the canvas.
    QPoint placeOf(const char* code) {
        for (const auto& placed : panel.canvas()->drawing().marks()) {
            if (panel.spec().series[placed.series].marks[placed.mark].id == code) {
                return placed.point.toPoint();
            }
        }
        ADD_FAILURE() << "no point " << code;
        return {};
    }

    ChartPanel panel;
};

TEST_F(ChartPanelTest, ForEyes) {
    lookAt(panel, QStringLiteral("chart-season"));
    QTest::mouseMove(panel.legend()->button(kOwn), QPoint(5, 5));
    panel.canvas()->setHighlighted(kOwn);
    lookAt(panel, QStringLiteral("chart-highlight"));
    panel.showAsTable(true);
    lookAt(panel, QStringLiteral("chart-table"));
    EXPECT_TRUE(panel.isTable());
}

TEST_F(ChartPanelTest, PointsLieWhereTheirNumbersSay) {
    const ChartDrawing& drawing = panel.canvas()->drawing();
    const QRectF plot = drawing.plotArea();
    const QPointF point = placeOf("AT17-014");
    EXPECT_NEAR(point.y(), plot.bottom() - (7.4 - 1) / 8 * plot.height(), 1);
    const ChartInterval days = rangeOfX(panel.spec());
    const double share = (kFirstAugust2026 + 20 - days.low) / (days.high - days.low);
    EXPECT_NEAR(point.x(), plot.left() + share * plot.width(), 1);
}

TEST_F(ChartPanelTest, TheLineOfQtChartsLiesUnderOurPlaces) {
    // A lone steep line from corner to corner: its pixels must be where our own places say.
    ChartSpec spec;
    spec.xAxis.low = 0;
    spec.xAxis.high = 10;
    spec.yAxis.low = 0;
    spec.yAxis.high = 10;
    ChartSeries line{"line", SeriesKind::line, {ColourRole::fault, 0}, {}, false};
    line.marks = {{.x = 0, .y = 5}, {.x = 10, .y = 5}};
    spec.series = {line};
    QImage image(400, 300, QImage::Format_ARGB32);
    QPainter painter(&image);
    const ChartDrawing drawing(spec, {true}, QSizeF(400, 300), lightTheme());
    drawing.paint(painter, std::nullopt);
    painter.end();
    const QRectF plot = drawing.plotArea();
    const QColor there =
        image.pixelColor(static_cast<int>(plot.center().x()), qRound(plot.center().y()));
    EXPECT_GT(there.red() - there.green(), 40) << there.name().toStdString();
    const QColor above =
        image.pixelColor(static_cast<int>(plot.center().x()), qRound(plot.center().y()) - 6);
    EXPECT_LT(above.red() - above.green(), 20) << above.name().toStdString();
}

TEST_F(ChartPanelTest, ClickTellsTheTree) {
    QSignalSpy activated(&panel, &ChartPanel::pointActivated);
    QTest::mouseMove(panel.canvas(), placeOf("AT17-014"));
    EXPECT_TRUE(panel.words().startsWith(QStringLiteral("AT17-014: two fair lots")));
    EXPECT_EQ(panel.canvas()->toolTip(), panel.words());
    QTest::mouseClick(panel.canvas(), Qt::LeftButton, {}, placeOf("AT17-014"));
    ASSERT_EQ(activated.count(), 1);
    EXPECT_EQ(activated[0][0].toString(), QStringLiteral("AT17-014"));
    QTest::mouseClick(panel.canvas(), Qt::LeftButton, {},
                      panel.canvas()->drawing().plotArea().topRight().toPoint() + QPoint(0, 3));
    EXPECT_EQ(activated.count(), 1) << "nothing lies there";
}

TEST_F(ChartPanelTest, KeysGoFromMarkToMark) {
    QSignalSpy activated(&panel, &ChartPanel::pointActivated);
    panel.canvas()->setFocus(Qt::TabFocusReason);
    QTest::keyClick(panel.canvas(), Qt::Key_Home);
    ASSERT_NE(panel.canvas()->currentMark(), nullptr);
    EXPECT_EQ(panel.canvas()->currentMark()->id, "benchmark ");
    QTest::keyClick(panel.canvas(), Qt::Key_Right);
    EXPECT_EQ(panel.canvas()->currentMark()->id, "AT15-003");
    EXPECT_EQ(panel.canvas()->accessibleDescription(), panel.words());
    QTest::keyClick(panel.canvas(), Qt::Key_Up);
    EXPECT_EQ(panel.canvas()->currentMark()->id, "benchmark ") << "the other series, nearest";
    QTest::keyClick(panel.canvas(), Qt::Key_Down);
    EXPECT_EQ(panel.canvas()->currentMark()->yInterval.has_value(), true);
    QTest::keyClick(panel.canvas(), Qt::Key_Return);
    EXPECT_EQ(activated.count(), 1);
    QTest::keyClick(panel.canvas(), Qt::Key_Escape);
    EXPECT_EQ(panel.canvas()->currentMark(), nullptr);
}

TEST_F(ChartPanelTest, LegendHidesAndHighlights) {
    const std::size_t before = panel.canvas()->drawing().marks().size();
    QTest::mouseClick(panel.legend()->button(kOwn), Qt::LeftButton);
    EXPECT_EQ(panel.canvas()->drawing().marks().size(), before - 3);
    QTest::mouseClick(panel.legend()->button(kOwn), Qt::LeftButton);
    EXPECT_EQ(panel.canvas()->drawing().marks().size(), before);
    panel.legend()->button(kOwn)->setFocus(Qt::TabFocusReason);
    EXPECT_EQ(panel.canvas()->highlighted(), kOwn);
    panel.canvas()->setFocus(Qt::TabFocusReason);
    EXPECT_FALSE(panel.canvas()->highlighted().has_value());
}

TEST_F(ChartPanelTest, ThePictureIsKeptWhileThePointerMoves) {
    panel.grab();
    const int made = panel.canvas()->picturesMade();
    for (int x = 100; x < 400; x += 10) {
        QTest::mouseMove(panel.canvas(), QPoint(x, 150));
        panel.grab();
    }
    EXPECT_EQ(panel.canvas()->picturesMade(), made);
    dress(ThemeChoice::dark);
    panel.grab();
    EXPECT_GT(panel.canvas()->picturesMade(), made);
    dress();
}

TEST_F(ChartPanelTest, TableSaysTheSameAndCopies) {
    QTest::mouseClick(panel.tableButton(), Qt::LeftButton);
    EXPECT_TRUE(panel.table()->isVisible());
    const QAbstractItemModel* model = panel.table()->model();
    EXPECT_EQ(model->rowCount(), static_cast<int>(panel.spec().toTable().rows.size()));
    panel.table()->selectRow(0);
    QTest::keyClick(panel.table(), Qt::Key_C, Qt::ControlModifier);
    const QStringList lines = QGuiApplication::clipboard()->text().split(QLatin1Char('\n'));
    ASSERT_EQ(lines.size(), 3);
    EXPECT_TRUE(lines[0].startsWith(QStringLiteral("series\t")));
    EXPECT_TRUE(lines[1].startsWith(QStringLiteral("weak weeks\t")));
    QSignalSpy activated(&panel, &ChartPanel::pointActivated);
    panel.table()->setCurrentIndex(model->index(1, 0));
    QTest::keyClick(panel.table(), Qt::Key_Return);
    ASSERT_EQ(activated.count(), 1);
    EXPECT_TRUE(activated[0][0].toString().startsWith(QStringLiteral("benchmark")));
}

TEST_F(ChartPanelTest, WritesPictureDrawingAndNumbers) {
    QTemporaryDir folder;
    const QString png = folder.filePath(QStringLiteral("chart.png"));
    ASSERT_TRUE(panel.writeTo(png).ok());
    const QImage image(png);
    EXPECT_EQ(image.width(), 2 * panel.canvas()->width());
    const QString svg = folder.filePath(QStringLiteral("chart.svg"));
    ASSERT_TRUE(panel.writeTo(svg).ok());
    EXPECT_TRUE(QSvgRenderer(svg).isValid());
    const QString csv = folder.filePath(QStringLiteral("chart.csv"));
    ASSERT_TRUE(panel.writeTo(csv).ok());
    QFile file(csv);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll().toStdString(), panel.spec().toTable().csv());
    const Outcome odd = panel.writeTo(folder.filePath(QStringLiteral("chart.bmp")));
    EXPECT_EQ(odd.problem().code, ProblemCode::badInput);
    const Outcome nowhere = panel.writeTo(folder.filePath(QStringLiteral("no/such/chart.png")));
    EXPECT_EQ(nowhere.problem().code, ProblemCode::unwritable);
    EXPECT_FALSE(nowhere.problem().remedy.empty());
}

TEST_F(ChartPanelTest, IsReadAloud) {
    EXPECT_TRUE(panel.canvas()->accessibleName().contains(QStringLiteral("stands above")));
    EXPECT_EQ(panel.legend()->button(kOwn)->accessibleName(), QStringLiteral("selections"));
    EXPECT_FALSE(panel.tableButton()->accessibleName().isEmpty());
    EXPECT_FALSE(panel.exportButton()->accessibleName().isEmpty());
    EXPECT_TRUE(panel.table()->currentIndex().isValid());
}

TEST_F(ChartPanelTest, EmptySaysWhatWouldFillIt) {
    ChartSpec spec;
    spec.title = "Season";
    spec.emptyText = "Walk marks of two weeks draw the first window.";
    panel.setSpec(spec);
    EXPECT_FALSE(panel.canvas()->isVisible());
    EXPECT_FALSE(panel.exportButton()->isEnabled());
    lookAt(panel, QStringLiteral("chart-empty"));
}

TEST_F(ChartPanelTest, SouthernSeasonAndWeek53) {
    ChartSpec spec;
    spec.title = "A southern season";
    spec.xAxis.kind = AxisKind::week;
    spec.yAxis = {AxisKind::numeric, "fruit mass", "g", {}, {}, {}, 0};
    ChartSeries points{"mass", SeriesKind::points, {ColourRole::categorical, 1}, {}, false};
    // December 2020 to March 2021: the year 2020 has a week 53.
    for (int week = 0; week < 16; ++week) {
        ChartMark mark{.x = 18600.0 + 7 * week, .y = 120 + 6 * std::cos(week)};
        mark.uncertain = week % 3 == 0;
        points.marks.push_back(mark);
    }
    spec.series = {points};
    panel.setSpec(spec);
    lookAt(panel, QStringLiteral("chart-south"));
    EXPECT_EQ(panel.canvas()->drawing().marks().size(), 16U);
    EXPECT_TRUE(panel.legend()->isHidden()) << "one series needs no legend";
}

TEST_F(ChartPanelTest, CategoriesAndColumns) {
    ChartSpec spec;
    spec.title = "Trees by stage";
    spec.xAxis = {AxisKind::category, "", "", {"juvenile", "bearing", "watched"}, {}, {}, 0};
    spec.yAxis = {AxisKind::numeric, "trees", "", {}, 0.0, {}, 0};
    ChartSeries columns{"trees", SeriesKind::columns, {ColourRole::action, 0}, {}, false};
    columns.marks = {{.x = 0, .y = 210}, {.x = 1, .y = 64}, {.x = 2, .y = 12, .uncertain = true}};
    spec.series = {columns};
    panel.setSpec(spec);
    lookAt(panel, QStringLiteral("chart-columns"));
    const auto& marks = panel.canvas()->drawing().marks();
    ASSERT_EQ(marks.size(), 3U);
    EXPECT_GT(marks[0].area.height(), 3 * marks[1].area.height());
}

TEST_F(ChartPanelTest, NonsenseDoesNoHarm) {
    ChartSpec spec;
    spec.title = "odd";
    ChartSeries line{"line", SeriesKind::line, {}, {}, false};
    line.marks = {{.x = 1, .y = 1}, {.x = 2, .y = std::nan("")}, {.x = 3, .y = 4}};
    ChartSeries points{"points", SeriesKind::points, {}, {}, false};
    points.marks = {{.x = HUGE_VAL, .y = 1}, {.x = 2, .y = 2}};
    spec.series = {line, points};
    panel.setSpec(spec);
    panel.grab();
    EXPECT_EQ(panel.canvas()->drawing().marks().size(), 1U);
}

} // namespace
} // namespace pipwright::ui
