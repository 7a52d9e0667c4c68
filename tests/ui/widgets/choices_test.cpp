#include "tests/ui/widgets/look.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/inexact_date_edit.h"
#include "ui/widgets/number_text.h"

#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

class ChipTest : public testing::Test {
  protected:
    void SetUp() override {
        dress();
        row.setChips(
            {{QStringLiteral("not_yet"), QStringLiteral("not yet"), QStringLiteral("1"), {}},
             {QStringLiteral("ripening"), QStringLiteral("ripening"), QStringLiteral("2"), {}},
             {QStringLiteral("ripe"), QStringLiteral("ripe"), QStringLiteral("r"), {}},
             {QStringLiteral("unknown"), QStringLiteral("unknown"), QStringLiteral("u"), {}}});
        row.resize(400, 40);
        row.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&row));
    }

    ChipRow row{QStringLiteral("State of the fruit")};
};

TEST_F(ChipTest, ClickLetterAndArrowsChoose) {
    QSignalSpy made(&row, &ChipRow::choiceMade);
    EXPECT_FALSE(row.chosen().has_value());
    QTest::mouseClick(row.chip(QStringLiteral("ripening")), Qt::LeftButton);
    EXPECT_EQ(row.chosen(), QStringLiteral("ripening"));
    QTest::keyClick(row.chip(QStringLiteral("ripening")), Qt::Key_R, Qt::ShiftModifier);
    EXPECT_EQ(row.chosen(), QStringLiteral("ripe"));
    QTest::keyClick(row.chip(QStringLiteral("ripe")), Qt::Key_Right);
    EXPECT_EQ(row.chosen(), QStringLiteral("unknown"));
    EXPECT_EQ(made.count(), 3);
    EXPECT_EQ(made[1][0].toString(), QStringLiteral("ripe"));
}

TEST_F(ChipTest, SetChosenSaysNothingAndLetsGo) {
    QSignalSpy made(&row, &ChipRow::choiceMade);
    row.setChosen(QStringLiteral("ripe"));
    EXPECT_EQ(row.chosen(), QStringLiteral("ripe"));
    row.setChosen(std::nullopt);
    EXPECT_FALSE(row.chosen().has_value());
    EXPECT_EQ(made.count(), 0);
    EXPECT_FALSE(row.takeLetter(QStringLiteral("q")));
}

TEST_F(ChipTest, ControlLettersAreNotForChips) {
    QTest::keyClick(row.chip(QStringLiteral("ripe")), Qt::Key_R, Qt::ControlModifier);
    EXPECT_FALSE(row.chosen().has_value());
}

TEST_F(ChipTest, BreaksTheLineWhenNarrow) {
    const int wide = row.heightForWidth(400);
    EXPECT_GT(row.heightForWidth(150), wide);
}

TEST(InexactDateEditTest, ShowsWhatWasUnderstood) {
    dress();
    InexactDateEdit edit(*Date::of(2026, 8, 22));
    edit.show();
    QSignalSpy changed(&edit, &InexactDateEdit::dateChanged);
    QTest::keyClicks(edit.line(), QStringLiteral("late August"));
    ASSERT_TRUE(edit.date().has_value());
    EXPECT_EQ(edit.date()->from, *Date::of(2026, 8, 21));
    EXPECT_EQ(edit.date()->to, *Date::of(2026, 8, 31));
    EXPECT_TRUE(edit.meaning().contains(QStringLiteral("11"))) << edit.meaning().toStdString();
    EXPECT_GT(changed.count(), 0);
}

TEST(InexactDateEditTest, WritesADayAsTheScreenDoesAndReadsItBack) {
    dress();
    for (const QLocale& locale : {QLocale(QLocale::English, QLocale::UnitedStates),
                                  QLocale(QLocale::German), QLocale(QLocale::Japanese)}) {
        QLocale::setDefault(locale);
        InexactDateEdit edit(*Date::of(2026, 8, 22));
        const Date march = *Date::of(2026, 3, 4);
        edit.setDate({{}, march, march});
        ASSERT_TRUE(edit.date()) << edit.line()->text().toStdString();
        EXPECT_EQ(edit.date()->from, march);
        if (locale.language() == QLocale::English) {
            EXPECT_EQ(edit.line()->text(), dateText(march));
        }
    }
    QLocale::setDefault(QLocale::c());
}

TEST(InexactDateEditTest, SaysWhatIsWrong) {
    dress(ThemeChoice::dark); // the program is dressed before any widget is made
    InexactDateEdit edit(*Date::of(2026, 8, 22));
    edit.line()->setText(QStringLiteral("2026-02-30"));
    EXPECT_FALSE(edit.date().has_value());
    EXPECT_TRUE(edit.meaning().contains(QStringLiteral("28 days")));
    const auto* words = edit.findChild<QLabel*>();
    for (const auto choice : {ThemeChoice::light, ThemeChoice::dark, ThemeChoice::light}) {
        dress(choice);
        EXPECT_EQ(words->palette().color(words->foregroundRole()), themeOf(words).blood);
    }
    QSignalSpy accepted(&edit, &InexactDateEdit::accepted);
    QTest::keyClick(edit.line(), Qt::Key_Return);
    EXPECT_EQ(accepted.count(), 0);
}

TEST(InexactDateEditTest, UpIsTodayThenTheNextDay) {
    InexactDateEdit edit(*Date::of(2026, 8, 22));
    QTest::keyClick(edit.line(), Qt::Key_Up);
    EXPECT_EQ(edit.date()->from, *Date::of(2026, 8, 22));
    QTest::keyClick(edit.line(), Qt::Key_Up);
    EXPECT_EQ(edit.date()->from, *Date::of(2026, 8, 23));
    QSignalSpy accepted(&edit, &InexactDateEdit::accepted);
    QTest::keyClick(edit.line(), Qt::Key_Return);
    EXPECT_EQ(accepted.count(), 1);
}

} // namespace
} // namespace pipwright::ui
