#include "tests/ui/tree/sheet_on_orchard.h"
#include "ui/tree/bite_form.h"
#include "ui/tree/condition_fields.h"
#include "ui/tree/observation_form.h"
#include "ui/tree/record_list.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/inexact_date_edit.h"
#include "ui/widgets/notice_bar.h"

#include <QFile>
#include <QLineEdit>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QToolButton>

namespace pipwright::ui {
namespace {

class Entry : public SheetOnOrchard {
  protected:
    EntryStrip* strip() { return m_sheet->strip(); }
    void setDay(const char* words) { strip()->day()->line()->setText(QString::fromLatin1(words)); }
};

TEST_F(Entry, TakesANoteInThreeActions) {
    m_sheet->setFocus();
    press(Qt::Key_N);
    type("leans to the east");
    press(Qt::Key_Return);
    const auto notes = seen(trait_key::kNote);
    ASSERT_EQ(notes.size(), 1U);
    EXPECT_EQ(notes[0].words, "leans to the east");
    EXPECT_EQ(notes[0].plant, m_first.plant);
    EXPECT_EQ(notes[0].date, Date::of(2026, 8, 22));
    EXPECT_EQ(notes[0].person, m_taster);
    EXPECT_FALSE(strip()->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), m_sheet.get());
    m_book->undo();
    EXPECT_TRUE(seen(trait_key::kNote).empty());
}

TEST_F(Entry, KeepsWhatWasTypedWhenItIsLeft) {
    m_sheet->begin(EntryKind::note);
    type("half a thought");
    press(Qt::Key_Escape);
    EXPECT_FALSE(strip()->isVisible());
    EXPECT_TRUE(seen(trait_key::kNote).empty());
    m_sheet->begin(EntryKind::note);
    press(Qt::Key_Return);
    ASSERT_EQ(seen(trait_key::kNote).size(), 1U);
    EXPECT_EQ(seen(trait_key::kNote)[0].words, "half a thought");
    m_sheet->begin(EntryKind::note);
    EXPECT_EQ(qobject_cast<QLineEdit*>(QApplication::focusWidget())->text(), QString());
}

TEST_F(Entry, TabStaysInTheStripSoThatNoWordBecomesACommand) {
    m_sheet->begin(EntryKind::note);
    for (int i = 0; i < 12; ++i) {
        press(Qt::Key_Tab);
        ASSERT_TRUE(strip()->isAncestorOf(QApplication::focusWidget())) << i;
    }
    press(Qt::Key_Backtab);
    EXPECT_TRUE(strip()->isAncestorOf(QApplication::focusWidget()));
}

TEST_F(Entry, RefusesAnEmptyNoteAndSaysWhatToDo) {
    m_sheet->begin(EntryKind::note);
    press(Qt::Key_Return);
    EXPECT_TRUE(strip()->isVisible());
    EXPECT_TRUE(strip()->notice()->isVisible());
    EXPECT_TRUE(strip()->notice()->text().contains(QStringLiteral("Type what you saw")));
}

TEST_F(Entry, TakesAWalkMarkWithDropsForAllSelectedTrees) {
    m_book->setSelection({plant(m_first), plant(m_second)});
    m_sheet->begin(EntryKind::walkMark);
    EXPECT_TRUE(strip()->titleText().contains(QStringLiteral("2 tree")));
    type("r");
    press(Qt::Key_Return);
    const auto marks = seen(trait_key::kRipeningState);
    ASSERT_EQ(marks.size(), 2U);
    EXPECT_EQ(marks[0].state, stateOf(WalkMark::ripe));
    EXPECT_EQ(marks[1].state, stateOf(WalkMark::ripe));
    EXPECT_TRUE(seen(trait_key::kDrop).empty());
    m_book->undo();
    EXPECT_TRUE(seen(trait_key::kRipeningState).empty());
}

TEST_F(Entry, KeepsAnInexactDayAsItWasTyped) {
    m_sheet->begin(EntryKind::note);
    type("first fruit");
    setDay("mid August 2025");
    press(Qt::Key_Return);
    const auto notes = seen(trait_key::kNote);
    ASSERT_EQ(notes.size(), 1U);
    EXPECT_EQ(notes[0].date, Date::of(2025, 8, 11));
    EXPECT_EQ(notes[0].dateTo, Date::of(2025, 8, 20));
    EXPECT_EQ(notes[0].dateTyped, "mid August 2025");
    EXPECT_EQ(notes[0].cropYear, CropYear{2025});
}

TEST_F(Entry, RefusesADayAheadOfToday) {
    m_sheet->begin(EntryKind::note);
    type("from the future");
    setDay("2026-08-23");
    press(Qt::Key_Return);
    EXPECT_TRUE(seen(trait_key::kNote).empty());
    EXPECT_TRUE(strip()->notice()->isVisible());
}

TEST_F(Entry, TakesTheDayAsItIsSpokenOf) {
    m_sheet->begin(EntryKind::note);
    type("two drops");
    setDay("last tue");
    press(Qt::Key_Return);
    ASSERT_EQ(seen(trait_key::kNote).size(), 1U);
    EXPECT_EQ(seen(trait_key::kNote)[0].date, Date::of(2026, 8, 18));
}

TEST_F(Entry, SaysOnceWhatIsWrongWithTheDayAndOnlyAsLongAsItIs) {
    m_sheet->begin(EntryKind::note);
    type("two drops");
    setDay("31 June");
    press(Qt::Key_Return);
    EXPECT_TRUE(seen(trait_key::kNote).empty());
    EXPECT_TRUE(strip()->day()->meaning().contains(QStringLiteral("30 days")));
    EXPECT_FALSE(strip()->notice()->isVisible()); // the field has said it
    EXPECT_EQ(QApplication::focusWidget(), strip()->day()->line());
    setDay("2026-08-23");
    press(Qt::Key_Return);
    EXPECT_TRUE(strip()->notice()->isVisible()); // ahead of today: the field cannot know
    setDay("21 Aug");
    EXPECT_FALSE(strip()->notice()->isVisible());
    press(Qt::Key_Return);
    EXPECT_EQ(seen(trait_key::kNote).size(), 1U);
}

TEST_F(Entry, DecisionNeedsAReasonAndOneDay) {
    m_sheet->begin(EntryKind::decision);
    type("w");
    press(Qt::Key_Return); // on to the reason
    press(Qt::Key_Return);
    EXPECT_TRUE(strip()->notice()->isVisible());
    type("plain but keeps");
    setDay("August 2026");
    press(Qt::Key_Return);
    EXPECT_TRUE(strip()->isVisible());
    setDay("2026-08-20");
    press(Qt::Key_Return);
    EXPECT_FALSE(strip()->isVisible());
    const auto genotype = *m_book->view()->genotype(*m_first.genotype);
    EXPECT_EQ(m_book->view()->genotypes()[genotype].stage, Stage::watched);
    EXPECT_EQ(m_book->view()->genotypes()[genotype].stageSince, Date::of(2026, 8, 20));
}

TEST_F(Entry, WishesGraftsWithNumberAndReason) {
    m_sheet->begin(EntryKind::graftWish);
    type("3");
    press(Qt::Key_Tab);
    type("only one tree of it");
    press(Qt::Key_Return);
    const auto wishes = all<GraftWish>();
    ASSERT_EQ(wishes.size(), 1U);
    EXPECT_EQ(wishes[0].reason, "only one tree of it");
    EXPECT_EQ(wishes[0].motherPlant, m_first.plant);
}

TEST_F(Entry, MarksManyAsLost) {
    m_book->setSelection({plant(m_first), plant(m_third)});
    m_sheet->begin(EntryKind::state);
    type("l");
    press(Qt::Key_Return);
    type("voles");
    press(Qt::Key_Return);
    EXPECT_EQ(m_book->view()->plants()[plant(m_first)].state, PlantState::lost);
    EXPECT_EQ(m_book->view()->plants()[plant(m_second)].state, PlantState::growing);
    EXPECT_EQ(m_book->view()->plants()[plant(m_third)].state, PlantState::lost);
}

TEST_F(Entry, TakesABiteInOneLine) {
    m_sheet->begin(EntryKind::bite);
    type("7h crisp, aniseed");
    press(Qt::Key_Return);
    const auto scores = all<Score>();
    ASSERT_EQ(scores.size(), 1U);
    EXPECT_EQ(scores[0].liking, 7.5);
    EXPECT_EQ(scores[0].words, "crisp, aniseed");
    EXPECT_EQ(scores[0].taster, m_taster);
    ASSERT_EQ(m_sheet->tastings()->count(), 1U);
    EXPECT_TRUE(m_sheet->tastings()->records()[0].heading.contains(QStringLiteral("7.5")));
}

TEST_F(Entry, RemembersTheConditionAndCautionsOfFallenFruit) {
    m_sheet->begin(EntryKind::bite);
    auto* form = static_cast<BiteForm*>(strip()->form(EntryKind::bite));
    EXPECT_FALSE(form->fields()->caution()->isVisible());
    QTest::mouseClick(form->fields()->origin()->chip(QStringLiteral("on_ground_longer")),
                      Qt::LeftButton);
    EXPECT_TRUE(form->fields()->caution()->isVisible());
    EXPECT_TRUE(form->fields()->caution()->text().contains(QStringLiteral("germs")));
    QTest::mouseClick(form->fields()->soundness()->chip(QStringLiteral("rot")), Qt::LeftButton);
    EXPECT_TRUE(form->fields()->caution()->text().contains(QStringLiteral("do not eat")));
    form->line()->setFocus();
    type("4");
    press(Qt::Key_Return);
    m_book->selectPlant(plant(m_second));
    m_sheet->begin(EntryKind::bite);
    type("5 flat");
    press(Qt::Key_Return);
    const auto lots = all<Lot>();
    ASSERT_EQ(lots.size(), 2U);
    for (const Lot& lot : lots) {
        EXPECT_EQ(lot.origin, Origin::onGroundLonger);
        EXPECT_EQ(lot.soundness, Soundness::rot);
    }
}

TEST_F(Entry, AnUndoneBiteLeavesNeitherItsPraiseNorItsCondition) {
    m_sheet->begin(EntryKind::bite);
    auto* form = static_cast<BiteForm*>(strip()->current());
    type("7 sharp");
    QTest::mouseClick(form->fields()->origin()->chip(QStringLiteral("picked_ripe")),
                      Qt::LeftButton);
    press(Qt::Key_Return);
    EXPECT_TRUE(m_sheet->said()->isVisible());
    m_book->undo();
    EXPECT_FALSE(m_sheet->said()->isVisible());
    m_sheet->begin(EntryKind::bite);
    EXPECT_FALSE(form->carried()->isVisible());
    EXPECT_FALSE(form->fields()->anyChosen());
    // Another entry undone leaves the condition of the last bite as it was.
    type("7 sharp");
    QTest::mouseClick(form->fields()->origin()->chip(QStringLiteral("picked_ripe")),
                      Qt::LeftButton);
    press(Qt::Key_Return);
    m_sheet->begin(EntryKind::note);
    type("leans");
    press(Qt::Key_Return);
    m_book->undo();
    m_sheet->begin(EntryKind::bite);
    EXPECT_TRUE(form->carried()->isVisible());
}

/// Trees of which it is known when they usually ripen.
class EntryInSeason : public Entry {
  protected:
    void prepare() override {
        for (const int year : {2024, 2025}) {
            m_orchard.apply(walkMarkOn(std::vector{m_first}, WalkMark::ripe, std::nullopt,
                                       m_orchard.on(*Date::of(year, 9, 20))));
        }
    }
};

TEST_F(EntryInSeason, RipeWeeksBeforeTheUsualDayIsSaidButNotForbidden) {
    m_sheet->begin(EntryKind::bite);
    auto* form = static_cast<BiteForm*>(strip()->current());
    type("7 sharp");
    EXPECT_FALSE(form->early()->isVisible()); // nothing is said of the ripeness yet
    const auto ripeness = [&](const char* key) {
        QTest::mouseClick(form->fields()->ripeness()->chip(QString::fromLatin1(key)),
                          Qt::LeftButton);
    };
    ripeness("prime");
    EXPECT_TRUE(form->early()->isVisible());
    EXPECT_TRUE(form->early()->text().contains(QStringLiteral("29 day")))
        << form->early()->text().toStdString();
    ripeness("green");
    EXPECT_FALSE(form->early()->isVisible());
    ripeness("prime");
    setDay("10 Sep 2025"); // ten days ahead may be
    EXPECT_FALSE(form->early()->isVisible());
    setDay("22 Aug 2026");
    EXPECT_TRUE(form->early()->isVisible());
    press(Qt::Key_Return);
    EXPECT_EQ(all<Score>().size(), 1U);
}

TEST_F(Entry, ReadsDaysInStore) {
    m_sheet->begin(EntryKind::bite);
    auto* form = static_cast<BiteForm*>(strip()->form(EntryKind::bite));
    form->fields()->storage()->chip(QStringLiteral("fridge"))->setFocus();
    type("f");
    QTest::keyClick(form->line(), Qt::Key_6);
    form->fields()->days()->setFocus();
    form->fields()->days()->selectAll();
    type("5");
    press(Qt::Key_Return);
    const auto lots = all<Lot>();
    ASSERT_EQ(lots.size(), 1U);
    EXPECT_EQ(lots[0].daysInFridge, 5);
    EXPECT_EQ(lots[0].taken, Date::of(2026, 8, 17));
}

TEST(BiteLine, ReadsLikingsAndRefusesWhatIsOffTheScale) {
    const auto bite = readBite(QStringLiteral("7,5: sweet"));
    ASSERT_TRUE(bite);
    EXPECT_EQ(bite->liking, 7.5);
    EXPECT_EQ(bite->words, QStringLiteral("sweet"));
    EXPECT_FALSE(readBite(QStringLiteral("only words"))->liking);
    EXPECT_EQ(readBite(QStringLiteral("9"))->liking, 9.0);
    for (const char* wrong : {"0", "10", "9h", "7.3", "7.5h", "45 good"}) {
        EXPECT_FALSE(readBite(QString::fromLatin1(wrong))) << wrong;
    }
    EXPECT_FALSE(readBite(QStringLiteral("7th tree"))->liking);
}

TEST_F(Entry, ObservesAValueInTheTraitsUnit) {
    m_sheet->begin(EntryKind::observation);
    type("solub");
    press(Qt::Key_Return); // takes the match
    type("13-14");
    press(Qt::Key_Return);
    const auto values = seen("soluble_solids");
    ASSERT_EQ(values.size(), 1U);
    EXPECT_EQ(values[0].value, 13.0);
    EXPECT_EQ(values[0].valueTo, 14.0);
    EXPECT_EQ(values[0].qualifier, Qualifier::range);
    EXPECT_EQ(values[0].typed, "13-14");
}

TEST_F(Entry, RefusesAValueOffTheScaleWithItsRemedy) {
    m_sheet->begin(EntryKind::observation);
    type("solub");
    press(Qt::Key_Return);
    type("130");
    press(Qt::Key_Return);
    EXPECT_TRUE(seen("soluble_solids").empty());
    EXPECT_TRUE(strip()->notice()->text().contains(QStringLiteral("0 to 40")));
}

TEST_F(Entry, ObservesAWordedStateByItsNumber) {
    m_sheet->begin(EntryKind::observation);
    type("scab");
    press(Qt::Key_Return);
    type("2");
    press(Qt::Key_Return);
    const auto values = seen(trait_key::kScab);
    ASSERT_EQ(values.size(), 1U);
    EXPECT_EQ(values[0].state, shippedStateId(trait_key::kScab, "2"));
}

TEST_F(Entry, AddsAPhotoAndShowsIt) {
    QTemporaryDir folder;
    QImage picture(40, 30, QImage::Format_RGB32);
    picture.fill(Qt::red);
    const QString path = folder.filePath(QStringLiteral("a.png"));
    ASSERT_TRUE(picture.save(path));
    strip()->setPhotoChooser([path] { return path; });
    m_sheet->begin(EntryKind::photo);
    type("the fruit");
    press(Qt::Key_Return);
    const auto photos = all<Photo>();
    ASSERT_EQ(photos.size(), 1U);
    EXPECT_EQ(photos[0].caption, "the fruit");
    EXPECT_EQ(photos[0].mediaType, "image/png");
    EXPECT_EQ(photos[0].plant, m_first.plant);
}

TEST_F(Entry, RefusesAFileThatIsNoPhoto) {
    QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("a.png")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("no picture at all");
    file.close();
    strip()->setPhotoChooser([&file] { return file.fileName(); });
    m_sheet->begin(EntryKind::photo);
    press(Qt::Key_Return);
    EXPECT_TRUE(all<Photo>().empty());
    EXPECT_TRUE(strip()->notice()->isVisible());
}

} // namespace
} // namespace pipwright::ui
