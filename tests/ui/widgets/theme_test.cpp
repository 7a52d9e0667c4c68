#include "tests/ui/widgets/look.h"
#include "ui/widgets/palettes.h"
#include "ui/widgets/theme.h"

#include <QFontInfo>
#include <QLabel>
#include <QPainter>

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace pipwright::ui {
namespace {

const std::vector<const Theme*> kThemes{&lightTheme(), &darkTheme()};

TEST(Contrast, KnownValues) {
    // WCAG 2.1: black on white is 21:1; #767676 is the palest grey that reads on white (4.54:1).
    EXPECT_NEAR(contrastRatio(Qt::black, Qt::white), 21.0, 1e-6);
    EXPECT_NEAR(contrastRatio(QColor(0x76, 0x76, 0x76), Qt::white), 4.54, 0.005);
    EXPECT_DOUBLE_EQ(contrastRatio(Qt::red, Qt::red), 1.0);
}

TEST(ThemeContrast, EveryTextReads) {
    for (const Theme* theme : kThemes) {
        for (const QColor& behind : {theme->paper, theme->surface, theme->raised, theme->wash}) {
            for (const QColor& text : {theme->ink, theme->secondInk, theme->leaf, theme->russet,
                                       theme->sky, theme->blood}) {
                EXPECT_GE(contrastRatio(text, behind), 4.5)
                    << text.name().toStdString() << " on " << behind.name().toStdString();
            }
        }
        EXPECT_GE(contrastRatio(theme->onLeaf, theme->leaf), 4.5);
        EXPECT_GE(contrastRatio(theme->onSky, theme->sky), 4.5);
    }
}

TEST(ThemeContrast, EveryMarkShowsAndCarriesText) {
    for (const Theme* theme : kThemes) {
        std::vector<MarkColour> colours;
        for (std::size_t i = 0; i < kCategoricalCount; ++i) {
            colours.push_back(categoricalColour(i, *theme));
        }
        for (int step = 0; step <= 40; ++step) {
            colours.push_back(rampColour(step / 40.0, *theme));
            colours.push_back(balanceColour(step / 20.0 - 1, *theme));
        }
        for (const auto& colour : colours) {
            EXPECT_GE(contrastRatio(colour.outline, theme->surface), 3.0)
                << colour.fill.name().toStdString();
            EXPECT_GE(contrastRatio(colour.text, colour.fill), 4.5)
                << colour.fill.name().toStdString();
        }
    }
}

/// CIE 1976 lightness of a colour, 0 to 100, from its contrast with black.
double lightness(const QColor& colour) {
    const double luminance = contrastRatio(colour, Qt::black) * 0.05 - 0.05;
    return luminance > 216.0 / 24389 ? 116 * std::cbrt(luminance) - 16 : luminance * 24389 / 27;
}

TEST(Palettes, RampIsEven) {
    double last = lightness(rampColour(0, lightTheme()).fill);
    for (int step = 1; step <= 11; ++step) {
        const double now = lightness(rampColour(step / 11.0, lightTheme()).fill);
        EXPECT_NEAR(now - last, 7.2, 2.0) << "step " << step;
        last = now;
    }
}

TEST(Palettes, LettersGoOnBehindZ) {
    EXPECT_EQ(categoricalLetter(0), QStringLiteral("A"));
    EXPECT_EQ(categoricalLetter(25), QStringLiteral("Z"));
    EXPECT_EQ(categoricalLetter(26), QStringLiteral("AA"));
    EXPECT_EQ(categoricalLetter(27), QStringLiteral("AB"));
}

TEST(Palettes, NonsenseIsNoColourOfItsOwn) {
    EXPECT_EQ(rampColour(std::nan(""), lightTheme()).fill, rampColour(0, lightTheme()).fill);
    EXPECT_EQ(rampColour(7, lightTheme()).fill, rampColour(1, lightTheme()).fill);
}

TEST(ApplyTheme, WidgetsHearOfIt) {
    class Listener : public QWidget {
      public:
        int changes = 0;

      protected:
        void changeEvent(QEvent* event) override {
            changes += event->type() == QEvent::PaletteChange ? 1 : 0;
        }
    };
    dress(ThemeChoice::light);
    Listener listener;
    listener.show();
    EXPECT_FALSE(themeOf(&listener).dark);
    const int before = listener.changes;
    dress(ThemeChoice::dark);
    EXPECT_GT(listener.changes, before);
    EXPECT_TRUE(themeOf(&listener).dark);
    EXPECT_TRUE(currentTheme().dark);
    dress(ThemeChoice::light);
    EXPECT_FALSE(themeOf(&listener).dark);
}

TEST(ApplyTheme, FontIsTheOneWePromise) {
    dress();
    EXPECT_EQ(QFontInfo(QApplication::font()).family(), QStringLiteral("Noto Sans"));
    EXPECT_DOUBLE_EQ(QApplication::font().pointSizeF(), 10.0);
}

TEST(ThemeChoiceKey, RoundTrip) {
    for (const auto choice : {ThemeChoice::system, ThemeChoice::light, ThemeChoice::dark}) {
        EXPECT_EQ(themeChoiceFromKey(keyOf(choice)), choice);
    }
    EXPECT_EQ(themeChoiceFromKey(QStringLiteral("plaid")), ThemeChoice::system);
}

TEST(Motion, CanBeStilled) {
    auto& application = *static_cast<QApplication*>(QCoreApplication::instance());
    EXPECT_EQ(motionMilliseconds(), 120);
    setMotion(application, false);
    EXPECT_EQ(motionMilliseconds(), 0);
    setMotion(application, true);
}

} // namespace
} // namespace pipwright::ui
