#include "tests/ui/widgets/look.h"
#include "ui/widgets/languages.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/status_line.h"

#include <QLocale>
#include <QToolButton>

#include <cmath>
#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

/// Speaks one language for the length of a test.
class Speaking {
  public:
    explicit Speaking(Language language) {
        applyLanguage(*static_cast<QApplication*>(QCoreApplication::instance()), language);
    }
    ~Speaking() {
        applyLanguage(*static_cast<QApplication*>(QCoreApplication::instance()), Language::english);
    }
    Speaking(const Speaking&) = delete;
    Speaking& operator=(const Speaking&) = delete;
};

std::string plain(QString text) {
    return text.replace(QChar(0x202F), QLatin1Char(' '))
        .replace(QChar(0x2212), QLatin1Char('-'))
        .toStdString();
}

TEST(NumberText, WearsDoubtAndUnit) {
    const Speaking english(Language::english);
    EXPECT_EQ(plain(doubtText(7.44, 0.61, 1)), "7.4 ± 0.6");
    EXPECT_EQ(plain(doubtText(152, 12, 0, QStringLiteral("g"))), "152 ± 12 g");
    EXPECT_EQ(plain(doubtText(7.4, std::nullopt, 1)), "7.4");
    EXPECT_EQ(plain(signedText(0.9, 1)), "+0.9");
    EXPECT_EQ(plain(signedText(-0.2, 1)), "-0.2");
    EXPECT_EQ(plain(signedText(-0.01, 1)), "0.0");
    EXPECT_EQ(plain(numberText(12345, 0)), "12345");
    EXPECT_EQ(plain(numberText(std::nan(""), 1)), "–");
}

TEST(NumberText, NearlySureIsNotSure) {
    const Speaking english(Language::english);
    EXPECT_EQ(plain(chanceText(0.57)), "57 %");
    EXPECT_EQ(plain(chanceText(0.004)), "< 1 %");
    EXPECT_EQ(plain(chanceText(0.999)), "> 99 %");
    EXPECT_EQ(plain(chanceText(1)), "100 %");
}

TEST(NumberText, UnitsByChoice) {
    const Speaking english(Language::english);
    EXPECT_EQ(plain(lengthText(Metres{4.2}, UnitChoice::metric)), "4.20 m");
    EXPECT_EQ(plain(lengthText(Metres{4.2}, UnitChoice::us)), "13.8 ft");
    EXPECT_EQ(plain(massText(Grams{150}, UnitChoice::us)), "5.3 oz");
    EXPECT_EQ(plain(smallLengthText(Millimetres{70}, UnitChoice::us)), "2.76 in");
    EXPECT_EQ(plain(temperatureText(Celsius{-2.5}, UnitChoice::us)), "27.5 °F");
    EXPECT_EQ(unitChoiceFromKey(keyOf(UnitChoice::us)), UnitChoice::us);
    EXPECT_EQ(unitChoiceFromKey(QStringLiteral("cubits")), UnitChoice::metric);
}

TEST(DateText, English) {
    const Speaking english(Language::english);
    const Date day = *Date::of(2026, 8, 22);
    EXPECT_EQ(dateText(day), QStringLiteral("22 Aug 2026"));
    EXPECT_EQ(dateWithWeekText(day), QStringLiteral("Sat 22 Aug 2026, week 34"));
    EXPECT_EQ(dateSpanText(day, day.plusDays(2)),
              QStringLiteral("22 Aug 2026 to 24 Aug 2026, 3 days"));
}

TEST(DateText, German) {
    const Speaking german(Language::german);
    const Date day = *Date::of(2026, 8, 22);
    EXPECT_EQ(plain(doubtText(7.4, 0.6, 1)), "7,4 ± 0,6");
    EXPECT_EQ(dateText(day), QStringLiteral("22. Aug. 2026"));
    EXPECT_EQ(dateWithWeekText(day), QStringLiteral("Sa. 22. Aug. 2026, Woche 34"));
    EXPECT_EQ(dateSpanText(day, day.plusDays(2)),
              QStringLiteral("22. Aug. 2026 bis 24. Aug. 2026, 3 Tage"));
}

TEST(Languages, WidgetsSpeakGerman) {
    const Speaking german(Language::german);
    StatusLine line;
    line.setUndo(QStringLiteral("X"));
    EXPECT_EQ(line.undoButton()->accessibleName(), QStringLiteral("Rückgängig: X"));
    EXPECT_EQ(QLocale().language(), QLocale::German);
}

TEST(Languages, ChangeBackLeavesNothing) {
    { const Speaking german(Language::german); }
    StatusLine line;
    line.setUndo(QStringLiteral("X"));
    EXPECT_EQ(line.undoButton()->accessibleName(), QStringLiteral("Undo: X"));
    EXPECT_EQ(QLocale().language(), QLocale::English);
    EXPECT_EQ(languageFromKey(keyOf(Language::german)), Language::german);
    EXPECT_EQ(languageFromKey(QStringLiteral("tlh")), Language::system);
}

} // namespace
} // namespace pipwright::ui
