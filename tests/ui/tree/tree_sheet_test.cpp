#include "tests/ui/tree/sheet_on_orchard.h"
#include "ui/tree/ancestry_view.h"
#include "ui/tree/identity_forms.h"
#include "ui/tree/kin_view.h"
#include "ui/tree/life_line.h"
#include "ui/tree/life_painting.h"
#include "ui/tree/photo_strip.h"
#include "ui/tree/record_list.h"
#include "ui/tree/sheet_section.h"
#include "ui/tree/tree_journal.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QCoreApplication>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QMouseEvent>
#include <QPushButton>
#include <QToolButton>

namespace pipwright::ui {
namespace {

class Sheet : public SheetOnOrchard {
  protected:
    void prepare() override {
        const auto on = [this](int month, int day) {
            return m_orchard.on(
                *Date::of(2025, static_cast<unsigned>(month), static_cast<unsigned>(day)));
        };
        m_orchard.apply(walkMarkOn({{m_first}}, WalkMark::ripening, {}, on(8, 3)));
        m_orchard.apply(walkMarkOn({{m_first}}, WalkMark::ripe, {}, on(8, 10)));
        m_orchard.apply(walkMarkOn({{m_first}}, WalkMark::ripe, {}, on(8, 24)));
        LotCondition fair;
        fair.origin = Origin::pickedRipe;
        fair.soundness = Soundness::sound;
        fair.storage = StoragePath::none;
        fair.ripeness = Ripeness::prime;
        m_orchard.apply(
            biteOf(m_first, fair, {m_orchard.taster.id, 7.5, Verdict::again, "crisp"}, on(8, 12)));
        LotCondition fallen = fair;
        fallen.origin = Origin::onGroundLonger;
        fallen.storage = StoragePath::fridge;
        fallen.daysInFridge = 3;
        fallen.ripeness = Ripeness::latePrime;
        m_orchard.apply(biteOf(m_first, fallen,
                               {m_orchard.taster.id, 5.0, Verdict::unknown, "mealy"}, on(8, 20)));
        m_orchard.apply(noteOn({{m_first}}, "bark split", on(9, 1)));
        m_orchard.apply(decisionOn({{m_first}}, Stage::watched, "two good bites", on(10, 1)));
    }
    QAction* action(const char* part) {
        for (QAction* one : m_sheet->head()->identityButton()->menu()->actions()) {
            if (one->text().contains(QString::fromLatin1(part))) {
                return one;
            }
        }
        return nullptr;
    }
    [[nodiscard]] const PlantEntry& entry(const EditedTree& tree) const {
        return m_book->view()->plants()[plant(tree)];
    }
};

TEST_F(Sheet, TellsWhoTheTreeIs) {
    const QString all = m_sheet->head()->lines().join(QLatin1Char('\n'));
    for (const char* part :
         {"AT17-001", "Ash Tarn x Russet Moor", "watched", "growing", "row 1, place 1",
          "from the zero stake", "on its own roots", "identity sure", "tag and map agree"}) {
        EXPECT_TRUE(all.contains(QString::fromLatin1(part))) << part << "\n" << all.toStdString();
    }
    EXPECT_TRUE(all.contains(QString::fromStdString(m_first.plant->uuid.labelCode())));
}

TEST_F(Sheet, DrawsTheAncestryAndGoesToAnAncestor) {
    const auto& ancestors = m_sheet->kin()->ancestry()->ancestors();
    ASSERT_EQ(ancestors.size(), 2U);
    EXPECT_EQ(ancestors[0]->text(), QStringLiteral("Ash Tarn"));
    EXPECT_TRUE(m_sheet->kin()->inbreedingWords().contains(QStringLiteral("F = 0.000")));
    ancestors[0]->setFocus();
    press(Qt::Key_Space);
    EXPECT_EQ(m_book->currentGenotype(), m_book->view()->genotypeCalled("Ash Tarn"));
    EXPECT_TRUE(m_sheet->kin()->inbreedingWords().contains(QStringLiteral("not known")));
    bool toldOffspring = false;
    for (const auto* button : m_sheet->kin()->findChildren<QToolButton*>()) {
        toldOffspring = toldOffspring || button->text().contains(QStringLiteral("3 offspring"));
    }
    EXPECT_TRUE(toldOffspring);
}

TEST_F(Sheet, SaysThatInbreedingOfTriploidsIsNotDefined) {
    const auto genotype = *m_book->store().get(*m_first.genotype);
    Genotype after = *genotype;
    after.ploidy = 3;
    ChangeSet set;
    set.sentence = "Three sets counted";
    set.edit(*genotype, after);
    ASSERT_TRUE(m_book->apply(set));
    EXPECT_TRUE(
        m_sheet->kin()->inbreedingWords().contains(QStringLiteral("not defined for triploids")));
}

TEST_F(Sheet, DrawsTheLifeAndTellsItInWords) {
    auto* drawing = m_sheet->life()->drawing();
    ASSERT_EQ(drawing->lanes().size(), 2U);
    EXPECT_EQ(drawing->lanes()[0].cropYear, 2025);
    EXPECT_TRUE(
        drawing->lanes()[0].windowWords.contains(QStringLiteral("still green on 3 Aug 2025")));
    EXPECT_TRUE(drawing->lanes()[0].windowWords.contains(QStringLiteral("its end was not seen")));
    drawing->setFocus(Qt::TabFocusReason);
    EXPECT_TRUE(drawing->currentWords().contains(QStringLiteral("liked 7.5 of 9")));
    EXPECT_TRUE(drawing->currentWords().contains(QStringLiteral("fair")));
    press(Qt::Key_Right);
    EXPECT_TRUE(drawing->currentWords().contains(QStringLiteral("3 day")));
    EXPECT_TRUE(drawing->currentWords().contains(QStringLiteral("not fair: fallen")));
    EXPECT_EQ(drawing->accessibleDescription(), drawing->currentWords());
    press(Qt::Key_End);
    EXPECT_TRUE(drawing->currentWords().contains(QStringLiteral("seen ripe")));
    press(Qt::Key_Down);
    EXPECT_TRUE(drawing->currentWords().contains(QStringLiteral("2019")));
    const QPointF at = drawing->pointOf(0, 0);
    QMouseEvent move(QEvent::MouseMove, at, drawing->mapToGlobal(at), Qt::NoButton, Qt::NoButton,
                     Qt::NoModifier);
    QApplication::sendEvent(drawing, &move);
    EXPECT_TRUE(drawing->currentWords().contains(QStringLiteral("liked 7.5 of 9")));
}

TEST_F(Sheet, ListsTastingsNewestFirst) {
    const auto& records = m_sheet->tastings()->records();
    ASSERT_EQ(records.size(), 2U);
    EXPECT_TRUE(records[0].heading.contains(QStringLiteral("20 Aug 2025")));
    EXPECT_TRUE(records[0].quiet.first().contains(QStringLiteral("late prime; not fair: fallen")));
    EXPECT_TRUE(records[1].quiet.first().endsWith(QStringLiteral("; fair")));
    EXPECT_TRUE(records[1]
                    .lines.join(QLatin1Char(' '))
                    .contains(QStringLiteral("Mara Thorne 7.5, taste again: crisp")));
}

TEST_F(Sheet, VoidsARecordWithAReason) {
    QWidget* row = m_sheet->tastings()->row(0);
    row->setFocus();
    press(Qt::Key_Delete);
    press(Qt::Key_Return);
    EXPECT_TRUE(m_sheet->strip()->isVisible()); // no reason yet
    type("another tree's fruit");
    press(Qt::Key_Return);
    int voidScores = 0;
    for (const Score& score : all<Score>()) {
        voidScores += score.voidReason == "another tree's fruit" ? 1 : 0;
    }
    EXPECT_EQ(voidScores, 1);
}

TEST_F(Sheet, ReadsAgainOnlyWhenItsTreeChanges) {
    const int before = m_sheet->readings();
    const EditedTree other = m_book->treeAt(plant(m_second));
    m_book->apply(noteOn({{other}}, "not here", m_book->context()));
    EXPECT_EQ(m_sheet->readings(), before);
    const EditedTree own = m_book->treeAt(plant(m_first));
    m_book->apply(noteOn({{own}}, "here", m_book->context()));
    EXPECT_EQ(m_sheet->readings(), before + 1);
    EXPECT_TRUE(m_sheet->seen()->records()[0].lines[0].contains(QStringLiteral("here")));
}

TEST_F(Sheet, ConfirmsTheIdentity) {
    action("Confirmed")->trigger();
    EXPECT_EQ(entry(m_first).confirmed, Date::of(2026, 8, 22));
    EXPECT_TRUE(m_sheet->head()
                    ->lines()
                    .join(QLatin1Char(' '))
                    .contains(QStringLiteral("last confirmed 22 Aug 2026")));
}

TEST_F(Sheet, TakesUnreadableTags) {
    action("by the map")->trigger();
    EXPECT_EQ(entry(m_first).confidence, Confidence::byMap);
    action("by its fruit")->trigger();
    EXPECT_EQ(entry(m_first).confidence, Confidence::byFruit);
    action("Nobody")->trigger();
    EXPECT_FALSE(entry(m_first).genotype);
    m_book->undo();
    EXPECT_TRUE(entry(m_first).genotype);
}

TEST_F(Sheet, PutsAWrongTagAndASwapRight) {
    action("another genotype")->trigger();
    type("at17-003");
    press(Qt::Key_Return);
    EXPECT_EQ(entry(m_first).genotype, m_book->view()->genotypeCalled("AT17-003"));
    m_book->undo();
    action("swap")->trigger();
    type("1/2");
    press(Qt::Key_Return);
    EXPECT_EQ(entry(m_first).genotype, m_book->view()->genotypeCalled("AT17-002"));
    EXPECT_EQ(entry(m_second).genotype, m_book->view()->genotypeCalled("AT17-001"));
}

TEST_F(Sheet, AddsASecondPlantAtThePlace) {
    action("Another plant")->trigger();
    press(Qt::Key_Return);
    const auto place = *entry(m_first).position;
    ASSERT_EQ(m_book->view()->plantsAt(place).size(), 2U);
    // Each names the other and leads to it.
    const auto neighbour = [this] {
        QCoreApplication::processEvents(); // the head shows its new lines
        for (auto* link : m_sheet->head()->findChildren<QPushButton*>()) {
            if (link->isVisible() &&
                link->accessibleName().contains(QStringLiteral("same place"))) {
                return link;
            }
        }
        return static_cast<QPushButton*>(nullptr);
    };
    ASSERT_NE(neighbour(), nullptr);
    EXPECT_TRUE(neighbour()->text().contains(QStringLiteral("nobody has identified")));
    neighbour()->click();
    ASSERT_NE(m_book->currentPlant(), plant(m_first));
    EXPECT_EQ(m_book->view()->plants()[*m_book->currentPlant()].position, place);
    ASSERT_NE(neighbour(), nullptr);
    EXPECT_EQ(neighbour()->text(), QStringLiteral("AT17-001"));
    neighbour()->click();
    EXPECT_EQ(m_book->currentPlant(), plant(m_first));
}

TEST_F(Sheet, TheLifeHasALegendAndAMarkForNotesAndNothingCoversABite) {
    const QStringList legend = m_sheet->life()->legend()->words();
    for (const char* word : {"fair tasting", "not a fair one", "decision", "note"}) {
        EXPECT_TRUE(legend.contains(QString::fromLatin1(word))) << word;
    }
    EXPECT_FALSE(legend.contains(QStringLiteral("graft"))); // only what occurs
    auto* drawing = m_sheet->life()->drawing();
    const auto& marks = drawing->lanes()[0].marks;
    std::vector<QPointF> bites;
    std::vector<QPointF> words;
    for (std::size_t mark = 0; mark < marks.size(); ++mark) {
        const bool bite = marks[mark].shape == LifeMark::Shape::fair ||
                          marks[mark].shape == LifeMark::Shape::unfair;
        (bite ? bites : words).push_back(drawing->pointOf(0, mark));
    }
    ASSERT_EQ(bites.size(), 2U);
    ASSERT_EQ(words.size(), 2U); // the note and the decision
    for (const QPointF& word : words) {
        for (const QPointF& bite : bites) {
            EXPECT_GT(bite.y() - word.y(), 10); // above, on the same day too
        }
    }
    EXPECT_TRUE(std::any_of(marks.begin(), marks.end(), [](const LifeMark& mark) {
        return mark.shape == LifeMark::Shape::note &&
               mark.words.contains(QStringLiteral("bark split"));
    }));
}

TEST_F(Sheet, NotesOfOneDayStandSideBySide) {
    for (int i = 0; i < 3; ++i) {
        ASSERT_TRUE(m_book->apply(
            noteOn(std::vector{m_book->treeAt(plant(m_first))}, "again", m_book->context())));
    }
    auto* drawing = m_sheet->life()->drawing();
    ASSERT_EQ(drawing->lanes()[0].cropYear, 2026);
    ASSERT_EQ(drawing->lanes()[0].marks.size(), 3U);
    EXPECT_GE(drawing->pointOf(0, 1).x() - drawing->pointOf(0, 0).x(), 10);
    EXPECT_GE(drawing->pointOf(0, 2).x() - drawing->pointOf(0, 1).x(), 10);
}

TEST_F(Sheet, MovesTheRecordsOfADayToTheRightTree) {
    action("wrong tree")->trigger();
    auto* form = static_cast<MoveForm*>(m_sheet->strip()->current());
    ASSERT_GT(form->list()->count(), 2);
    EXPECT_EQ(form->list()->item(0)->checkState(), Qt::Checked);
    EXPECT_EQ(form->list()->item(1)->checkState(), Qt::Unchecked);
    type("nobody");
    press(Qt::Key_Return);
    EXPECT_TRUE(m_sheet->strip()->isVisible());
    qobject_cast<QLineEdit*>(QApplication::focusWidget())->selectAll();
    type("AT17-002");
    press(Qt::Key_Return);
    ASSERT_EQ(seen(trait_key::kNote).size(), 1U);
    EXPECT_EQ(seen(trait_key::kNote)[0].plant, m_second.plant);
}

TEST_F(Sheet, TellsTheJournalAndTheHistoryOfAField) {
    m_sheet->begin(EntryKind::state);
    type("d");
    press(Qt::Key_Return);
    type("frost");
    press(Qt::Key_Return);
    m_sheet->journalSection()->setFolded(false);
    const auto* list = m_sheet->journal()->list();
    ASSERT_GT(list->count(), 5U);
    const QString newest = list->records()[0].lines.join(QLatin1Char('\n'));
    EXPECT_TRUE(newest.contains(QStringLiteral("plant, state: growing, then dead")))
        << newest.toStdString();
    auto* fields = m_sheet->journal()->fields();
    fields->setCurrentIndex(fields->findText(QStringLiteral("Only plant, state")));
    ASSERT_EQ(list->count(), 2U); // as it was planted, and now
    EXPECT_EQ(list->records()[0].lines.size(), 2);
    EXPECT_TRUE(list->records()[1].lines.last().contains(QStringLiteral("growing")));
}

TEST_F(Sheet, SaysWhatWouldFillItWithoutATree) {
    m_book->selectPlant(std::nullopt);
    EXPECT_FALSE(m_sheet->facts());
    m_sheet->begin(EntryKind::note);
    EXPECT_TRUE(m_sheet->strip()->isVisible());
}

TEST_F(Sheet, KeepsItsWidthWhateverATreeIsCalled) {
    const auto genotype = *m_book->store().get(*m_first.genotype);
    Genotype after = *genotype;
    after.code = std::string(200, 'W');
    ChangeSet set;
    set.sentence = "A long code";
    set.edit(*genotype, after);
    ASSERT_TRUE(m_book->apply(set));
    m_sheet->journalSection()->setFolded(false);
    QCoreApplication::processEvents();
    EXPECT_LE(m_sheet->head()->width(), m_sheet->width());
    EXPECT_EQ(m_sheet->head()->lines().first().size(), 200);
}

TEST_F(Sheet, NamesEverythingThatTakesTheFocus) {
    for (const EntryKind kind :
         {EntryKind::note, EntryKind::bite, EntryKind::walkMark, EntryKind::observation,
          EntryKind::decision, EntryKind::graftWish, EntryKind::state}) {
        m_sheet->begin(kind);
    }
    for (const QWidget* widget : m_sheet->findChildren<QWidget*>()) {
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        const bool named =
            !widget->accessibleName().isEmpty() || (button != nullptr && !button->text().isEmpty());
        const bool inner = qobject_cast<const QLineEdit*>(widget) != nullptr &&
                           widget->parentWidget()->inherits("QAbstractSpinBox");
        if ((widget->focusPolicy() & Qt::TabFocus) != 0 && widget->isVisibleTo(m_sheet.get()) &&
            !inner && widget->focusProxy() == nullptr) {
            EXPECT_TRUE(named) << widget->metaObject()->className() << " in "
                               << widget->parentWidget()->metaObject()->className();
        }
    }
}

} // namespace
} // namespace pipwright::ui
