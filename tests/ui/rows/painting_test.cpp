#include "tests/ui/rows/random_scene.h"
#include "ui/rows/map_painter.h"
#include "ui/widgets/palettes.h"

#include <QImage>
#include <QPainter>

#include <cmath>
#include <gtest/gtest.h>
#include <set>

namespace pipwright::ui {
namespace {

using testing::plainScene;
using testing::randomScene;
using testing::treeNumber;

MapFrame frameOf(double cellWidth, double pitch, double ratio, QSize size = {400, 200}) {
    MapFrame frame;
    frame.scale = {cellWidth, pitch, 30};
    frame.size = size;
    frame.ratio = ratio;
    return frame;
}

QImage painted(MapPainter& painter, const MapFrame& frame) {
    QImage image(frame.size * frame.ratio, QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(frame.ratio);
    image.fill(Qt::magenta);
    QPainter target(&image);
    painter.paint(target, frame, QRect(QPoint(0, 0), frame.size), std::nullopt);
    target.end();
    image.setDevicePixelRatio(1);
    return image;
}

ScenePointer oneTree(Stage stage, PlantState state = PlantState::growing,
                     Confidence identity = Confidence::sure) {
    MapSceneBuilder builder;
    PlaceFacts facts;
    facts.plant = treeNumber(1);
    facts.ordinal = 1;
    facts.code = "A1";
    facts.shortCode = "A1";
    facts.stage = stage;
    facts.state = state;
    facts.identity = identity;
    builder.addPlace(facts);
    return builder.finish();
}

class PaintingTest : public ::testing::TestWithParam<double> {
  protected:
    /// Colour of a device pixel given in logical units.
    QRgb at(const QImage& image, double x, double y) const {
        return image.pixel(static_cast<int>(x * GetParam()), static_cast<int>(y * GetParam())) |
               0xff000000U;
    }
};

TEST_P(PaintingTest, CellsLieOnTheEdgesOfTheLayout) {
    MapPainter painter;
    painter.setTheme(lightTheme(), GetParam());
    painter.setLayout(MapLayout(plainScene(2, 5), PlaceSpacing::byOrder));
    const QImage image = painted(painter, frameOf(16, 18, GetParam()));
    const QRgb fill = stageFill(Stage::bearing, lightTheme())->rgb();
    const QRgb paper = lightTheme().paper.rgb();
    // Heading, then the first row; the last pixel of each place is the gap to the next.
    EXPECT_EQ(at(image, 8, 29), paper);
    EXPECT_EQ(at(image, 8, 36), fill);
    EXPECT_EQ(image.pixel(static_cast<int>(16 * GetParam()) - 1, static_cast<int>(36 * GetParam())),
              paper);
    EXPECT_EQ(at(image, 5 * 16 + 3, 36), paper);
    EXPECT_EQ(at(image, 3 * 16 + 8, 30 + 18 + 8), fill);
}

TEST_P(PaintingTest, TheOverviewShowsOnlyColoursOfTheScheme) {
    MapPainter painter;
    painter.setTheme(lightTheme(), GetParam());
    painter.setLayout(MapLayout(plainScene(4, 80), PlaceSpacing::byOrder));
    const QImage image = painted(painter, frameOf(3, 4, GetParam()));
    // No smoothing: a pixel is either a tree or the ground.
    const std::set<QRgb> allowed = {stageFill(Stage::bearing, lightTheme())->rgb(),
                                    lightTheme().paper.rgb()};
    for (int y = static_cast<int>(31 * GetParam()); y < static_cast<int>(46 * GetParam()); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            ASSERT_TRUE(allowed.count(image.pixel(x, y) | 0xff000000U)) << x << ' ' << y;
        }
    }
    EXPECT_EQ(at(image, 80 * 3 - 1, 44), stageFill(Stage::bearing, lightTheme())->rgb());
    EXPECT_EQ(at(image, 80 * 3 + 1, 44), lightTheme().paper.rgb());
}

TEST_P(PaintingTest, ThePartThatIsRepaintedEqualsTheWhole) {
    MapPainter painter;
    painter.setTheme(lightTheme(), GetParam());
    painter.setLayout(MapLayout(randomScene({}), PlaceSpacing::byOrder));
    for (const double width : {4.0, 13.0, 40.0}) {
        MapFrame frame = frameOf(width, width < 30 ? width * 1.4 : 36, GetParam());
        frame.rowNames = painter.rowNamesWidth();
        frame.ruler = painter.rulerHeight();
        frame.scroll = {3, 5};
        const QImage whole = painted(painter, frame);
        QImage patched = whole.copy();
        const QRect part(101, 53, 90, 61);
        patched.setDevicePixelRatio(GetParam());
        {
            QPainter target(&patched);
            target.setClipRect(part);
            target.fillRect(part, Qt::magenta);
            painter.paint(target, frame, part, std::nullopt);
        }
        patched.setDevicePixelRatio(1);
        EXPECT_EQ(patched, whole) << width;
    }
}

TEST_P(PaintingTest, SelectionAndFilterChangeTheOverviewWhereTheyShould) {
    MapPainter painter;
    painter.setTheme(lightTheme(), GetParam());
    painter.setLayout(MapLayout(plainScene(1, 4), PlaceSpacing::byOrder));
    const MapFrame frame = frameOf(5, 5, GetParam());
    const QRgb plain = at(painted(painter, frame), 2, 32);
    painter.setSelection(MapSelection::of(CellIndex{1}));
    const QImage selected = painted(painter, frame);
    EXPECT_EQ(at(selected, 2, 32), plain);
    EXPECT_NE(at(selected, 7, 32), plain);
    painter.setSelection({});
    EXPECT_EQ(at(painted(painter, frame), 7, 32), plain);
    painter.setShown({true, false, true, true});
    const QImage dimmed = painted(painter, frame);
    EXPECT_NE(at(dimmed, 7, 32), plain);
    EXPECT_NE(at(dimmed, 7, 32), lightTheme().paper.rgb());
    EXPECT_EQ(at(dimmed, 2, 32), plain);
}

TEST_P(PaintingTest, TwoPlantsOfAPlaceAreBothSeen) {
    MapSceneBuilder builder;
    PlaceFacts facts;
    facts.ordinal = 1;
    facts.plant = treeNumber(1);
    facts.stage = Stage::bearing;
    builder.addPlace(facts);
    facts.plant = treeNumber(2);
    facts.stage = Stage::advanced;
    builder.addPlace(facts);
    MapPainter painter;
    painter.setTheme(lightTheme(), GetParam());
    painter.setLayout(MapLayout(builder.finish(), PlaceSpacing::byOrder));
    for (const double size : {4.0, 22.0}) {
        const QImage image = painted(painter, frameOf(size, size, GetParam()));
        EXPECT_EQ(at(image, size * 0.5, 30 + size * 0.2),
                  stageFill(Stage::bearing, lightTheme())->rgb())
            << size;
        EXPECT_EQ(at(image, size * 0.12, 30 + size * 0.6),
                  stageFill(Stage::advanced, lightTheme())->rgb())
            << size;
    }
}

TEST_P(PaintingTest, StagesAreToldApartWithoutColour) {
    std::vector<QImage> seen;
    for (const Stage stage :
         {Stage::nursery, Stage::juvenile, Stage::bearing, Stage::watched, Stage::selection,
          Stage::advanced, Stage::named, Stage::released, Stage::parent, Stage::culled}) {
        MapPainter painter;
        painter.setTheme(lightTheme(), GetParam());
        painter.setLayout(MapLayout(oneTree(stage), PlaceSpacing::byOrder));
        // All coloured alike, so that only the shape is left.
        const std::vector<int> classOf{0};
        const std::vector<QString> names{QStringLiteral("all")};
        painter.setColouring(colourByFamily(painter.layout().scene(), classOf, names));
        const QImage image = painted(painter, frameOf(20, 24, GetParam()))
                                 .convertToFormat(QImage::Format_Grayscale8);
        for (const QImage& other : seen) {
            EXPECT_NE(image, other);
        }
        seen.push_back(image);
    }
}

TEST_P(PaintingTest, StateAndDoubtAreSeen) {
    std::vector<QImage> seen;
    for (const auto& [state, identity] : {std::pair(PlantState::growing, Confidence::sure),
                                          std::pair(PlantState::growing, Confidence::byMap),
                                          std::pair(PlantState::dead, Confidence::sure),
                                          std::pair(PlantState::removed, Confidence::sure)}) {
        MapPainter painter;
        painter.setTheme(darkTheme(), GetParam());
        painter.setLayout(
            MapLayout(oneTree(Stage::bearing, state, identity), PlaceSpacing::byOrder));
        const QImage image = painted(painter, frameOf(20, 24, GetParam()));
        for (const QImage& other : seen) {
            EXPECT_NE(image, other);
        }
        seen.push_back(image);
    }
}

TEST_P(PaintingTest, CodesOfAnyScriptStayInTheirCells) {
    const std::vector<std::string> codes = {std::string(200, 'W'), "שתיל 7 אגס", "🍎🍐 17",
                                            "تفاح-12"};
    for (const std::string& code : codes) {
        MapSceneBuilder builder;
        PlaceFacts facts;
        facts.plant = treeNumber(1);
        facts.ordinal = 2;
        facts.code = code;
        facts.shortCode = code;
        facts.stage = Stage::bearing;
        builder.addPlace(facts);
        MapPainter painter;
        painter.setTheme(lightTheme(), GetParam());
        painter.setLayout(MapLayout(builder.finish(), PlaceSpacing::byOrder));
        const QImage image = painted(painter, frameOf(64, 40, GetParam()));
        int written = 0;
        const QRgb fill = stageFill(Stage::bearing, lightTheme())->rgb();
        for (int y = static_cast<int>(34 * GetParam()); y < static_cast<int>(60 * GetParam());
             ++y) {
            for (int x = 0; x < image.width(); ++x) {
                const double place = x / GetParam() / 64;
                if (place < 1 || place > 2) {
                    ASSERT_EQ(image.pixel(x, y) | 0xff000000U, lightTheme().paper.rgb())
                        << code << ' ' << x << ' ' << y;
                } else if (place > 1.1 && place < 1.9) {
                    written += (image.pixel(x, y) | 0xff000000U) != fill ? 1 : 0;
                }
            }
        }
        EXPECT_GT(written, 20) << code;
    }
}

TEST_P(PaintingTest, ManyPlacesAndNoPlaceAreNoTrouble) {
    MapPainter painter;
    painter.setTheme(lightTheme(), GetParam());
    const QImage none = painted(painter, frameOf(12, 14, GetParam()));
    EXPECT_EQ(at(none, 100, 100), lightTheme().paper.rgb());
    painter.setLayout(MapLayout(plainScene(2, 2000), PlaceSpacing::byOrder));
    for (const double width : {0.2, 12.0, 48.0}) {
        MapFrame frame = frameOf(width, 30, GetParam());
        frame.scroll = {2000 * width - 100, 0};
        const QImage image = painted(painter, frame);
        EXPECT_EQ(at(image, 200, 40), lightTheme().paper.rgb()) << width;
        EXPECT_NE(at(image, 100 - width / 2, 38), lightTheme().paper.rgb()) << width;
    }
}

INSTANTIATE_TEST_SUITE_P(Ratios, PaintingTest, ::testing::Values(1.0, 1.5, 2.0),
                         [](const auto& ratio) {
                             return "at" + std::to_string(std::lround(ratio.param * 100));
                         });

TEST(OverviewTest, APatchedPictureEqualsANewOne) {
    const MapLayout layout(randomScene({}), PlaceSpacing::byTape);
    std::vector<QRgb> colours(layout.scene().cells().size(), 0xff112233);
    const auto colourOf = [&](CellIndex cell) { return colours[cell]; };
    OverviewImage patched;
    patched.rebuild(layout, 0xffffffff, colourOf);
    const std::vector<CellIndex> changed = {3, 50, 51, 200};
    for (const CellIndex cell : changed) {
        colours[cell] = 0xff998877;
    }
    patched.patch(layout, changed, colourOf);
    OverviewImage fresh;
    fresh.rebuild(layout, 0xffffffff, colourOf);
    EXPECT_EQ(patched.image(), fresh.image());
}

} // namespace
} // namespace pipwright::ui
