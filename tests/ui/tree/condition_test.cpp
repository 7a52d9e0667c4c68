#include "tests/ui/tree/sheet_on_orchard.h"
#include "ui/tree/bite_form.h"
#include "ui/tree/condition_fields.h"
#include "ui/tree/condition_form.h"
#include "ui/tree/record_list.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/notice_bar.h"

#include <QAbstractButton>
#include <QApplication>
#include <QLineEdit>
#include <QScrollArea>
#include <QSet>
#include <QSpinBox>
#include <QToolButton>

namespace pipwright::ui {
namespace {

class Condition : public SheetOnOrchard {
  protected:
    EntryStrip* strip() { return m_sheet->strip(); }
    BiteForm* bite() {
        m_sheet->begin(EntryKind::bite);
        return static_cast<BiteForm*>(strip()->form(EntryKind::bite));
    }
    static void choose(ChipRow* row, const char* key) {
        QTest::mouseClick(row->chip(QString::fromLatin1(key)), Qt::LeftButton);
    }
    [[nodiscard]] QString said() const {
        return m_sheet->said()->isVisible() ? m_sheet->said()->text() : QString();
    }
};

TEST_F(Condition, SavingABiteSaysWhyItIsNoFairTest) {
    BiteForm* form = bite();
    choose(form->fields()->origin(), "on_ground_longer");
    choose(form->fields()->ripeness(), "on_its_way_out");
    form->line()->setFocus();
    type("5 flat");
    EXPECT_TRUE(form->understood()->text().contains(QStringLiteral("not fair: fallen, over-ripe")));
    press(Qt::Key_Return);
    EXPECT_EQ(said(), QStringLiteral("Bite of AT17-001 kept, but not as a fair test: fallen, "
                                     "over-ripe."));
    m_book->selectPlant(plant(m_second)); // the word was of another tree
    EXPECT_EQ(said(), QString());
}

TEST_F(Condition, TheTabKeyLeadsFromTheLineToTheConditionNotToTheTaster) {
    BiteForm* form = bite();
    type("7.5 crisp");
    press(Qt::Key_Tab);
    EXPECT_TRUE(form->fields()->isAncestorOf(QApplication::focusWidget()));
}

TEST_F(Condition, SavingAFairBiteSaysSoAndAnUnclearOneWhatIsMissing) {
    BiteForm* form = bite();
    type("7");
    press(Qt::Key_Return);
    EXPECT_TRUE(said().contains(QStringLiteral("stays unclear: origin not known, ripeness not "
                                               "known")))
        << said().toStdString();
    bite();
    choose(form->fields()->origin(), "picked_ripe");
    choose(form->fields()->ripeness(), "prime");
    form->line()->setFocus();
    type("7");
    press(Qt::Key_Return);
    EXPECT_EQ(said(), QStringLiteral("Bite of AT17-001 kept: a fair test."));
}

TEST_F(Condition, TheFormSaysThatTheConditionIsTakenOverAndCanClearIt) {
    BiteForm* form = bite();
    EXPECT_FALSE(form->carried()->isVisible()); // nothing was taken over yet
    choose(form->fields()->origin(), "shaken");
    form->line()->setFocus();
    type("6");
    press(Qt::Key_Return);
    m_book->selectPlant(plant(m_second));
    bite();
    ASSERT_TRUE(form->carried()->isVisible());
    EXPECT_TRUE(
        form->carried()->findChild<FlowText*>()->text().contains(QStringLiteral("AT17-001")));
    form->carried()->findChild<QAbstractButton*>()->click();
    EXPECT_FALSE(form->carried()->isVisible());
    EXPECT_FALSE(form->fields()->anyChosen());
}

TEST_F(Condition, EveryLetterStandsOnceAndWorksFromAnyRow) {
    ConditionFields fields(ConditionFields::Asked::alsoBag);
    QSet<QString> letters;
    for (ChipRow* row : fields.findChildren<ChipRow*>()) {
        for (QToolButton* chip : row->findChildren<QToolButton*>()) {
            const QString letter = chip->accessibleDescription();
            if (letter != QStringLiteral("?")) {
                EXPECT_FALSE(letters.contains(letter)) << letter.toStdString();
                letters.insert(letter);
            }
        }
    }
    EXPECT_EQ(letters.size(), 26);
    BiteForm* form = bite();
    form->fields()->origin()->setFocus();
    type("d"); // dropped today
    type("i"); // insect: another row
    type("4"); // prime: another row again
    type("0"); // straight off the tree
    EXPECT_EQ(form->fields()->origin()->chosen(), QStringLiteral("dropped_today"));
    EXPECT_EQ(form->fields()->soundness()->chosen(), QStringLiteral("insect"));
    EXPECT_EQ(form->fields()->ripeness()->chosen(), QStringLiteral("prime"));
    EXPECT_EQ(form->fields()->storage()->chosen(), QStringLiteral("none"));
}

TEST_F(Condition, OnePlaceAfterAnotherIsTyped) {
    BiteForm* form = bite();
    form->fields()->storage()->setFocus();
    type("m");
    ASSERT_TRUE(form->fields()->path()->isVisible());
    EXPECT_FALSE(form->fields()->days()->isVisible());
    form->line()->setFocus();
    type("6");
    press(Qt::Key_Return);
    EXPECT_TRUE(strip()->notice()->isVisible()); // no place is typed yet
    form->fields()->path()->setFocus();
    type("f5 q2");
    EXPECT_TRUE(form->fields()->pathMeaning()->text().contains(QStringLiteral("no storage path")));
    form->fields()->path()->selectAll();
    type("f5 c2");
    EXPECT_EQ(form->fields()->pathMeaning()->text(),
              QStringLiteral("5 day(s) in the fridge, then 2 day(s) on the counter"));
    press(Qt::Key_Return);
    const auto lots = all<Lot>();
    ASSERT_EQ(lots.size(), 1U);
    EXPECT_EQ(lots[0].storage, StoragePath::chained);
    EXPECT_EQ(lots[0].daysInFridge, 5);
    EXPECT_EQ(lots[0].daysOnCounter, 2);
    EXPECT_EQ(lots[0].storageTyped, "f5 c2");
    EXPECT_EQ(lots[0].taken, Date::of(2026, 8, 15));
}

TEST_F(Condition, OfALotInTheBookIsPutRightAndUndone) {
    BiteForm* form = bite();
    choose(form->fields()->origin(), "dropped_today");
    choose(form->fields()->ripeness(), "prime");
    form->line()->setFocus();
    type("6");
    press(Qt::Key_Return);
    QWidget* row = m_sheet->tastings()->row(0);
    ASSERT_NE(row, nullptr);
    row->setFocus();
    QTest::keyClick(row, Qt::Key_F2);
    ASSERT_TRUE(strip()->isVisible());
    auto* correction = static_cast<ConditionForm*>(strip()->current());
    EXPECT_EQ(correction->fields()->origin()->chosen(), QStringLiteral("dropped_today"));
    QTest::keyClick(correction->fields()->origin()->chip(QStringLiteral("dropped_today")),
                    Qt::Key_Return);
    EXPECT_TRUE(strip()->notice()->isVisible()); // nothing is changed yet
    choose(correction->fields()->origin(), "picked_ripe");
    choose(correction->fields()->bag(), "organza");
    QTest::keyClick(correction->fields()->origin()->chip(QStringLiteral("picked_ripe")),
                    Qt::Key_Return);
    EXPECT_FALSE(strip()->isVisible());
    EXPECT_EQ(said(), QStringLiteral("Condition put right. As a test: fair."));
    ASSERT_EQ(all<Lot>().size(), 1U);
    EXPECT_EQ(all<Lot>()[0].origin, Origin::pickedRipe);
    EXPECT_EQ(all<Lot>()[0].bag, Bag::organza);
    EXPECT_EQ(all<Lot>()[0].ripeness, Ripeness::prime);
    EXPECT_TRUE(m_book->undoSentence()->contains(QStringLiteral("Condition of AT17-001")));
    m_book->undo();
    EXPECT_EQ(all<Lot>()[0].origin, Origin::droppedToday);
    EXPECT_TRUE(m_sheet->tastings()->records()[0].quiet.first().contains(QStringLiteral("fallen")));
}

TEST_F(Condition, NothingOfTheFormIsCutOffOnASmallScreen) {
    m_sheet->resize(360, 560);
    BiteForm* form = bite();
    choose(form->fields()->origin(), "on_ground_longer"); // a caution as well
    QTest::qWait(1);
    for (ChipRow* row : form->fields()->findChildren<ChipRow*>()) {
        for (const QToolButton* chip : row->findChildren<QToolButton*>()) {
            EXPECT_TRUE(row->isHidden() || row->rect().contains(chip->geometry()))
                << chip->text().toStdString();
        }
    }
    // What has no room is reached by the keys, and then in sight.
    QToolButton* last = form->fields()->storage()->chip(QStringLiteral("unknown"));
    last->setFocus(Qt::TabFocusReason);
    const auto* scroll = strip()->findChild<QScrollArea*>();
    const QRect seen(scroll->viewport()->mapToGlobal(QPoint(0, 0)), scroll->viewport()->size());
    EXPECT_TRUE(seen.contains(QRect(last->mapToGlobal(QPoint(0, 0)), last->size())));
}

} // namespace
} // namespace pipwright::ui
