// The place "Merit" as a breeder uses it: read the ranking, filter it, look where a merit comes
// from, switch a correction, elect to a ladder, set the date back.
#include "core/history/new_book.h"
#include "tests/support/ladder_orchard.h"
#include "ui/book/merit_desk.h"
#include "ui/book/merit_settings.h"
#include "ui/book/merit_words.h"
#include "ui/book/open_book.h"
#include "ui/merit/detail_tables.h"
#include "ui/merit/ladder_panel.h"
#include "ui/merit/look_back_panel.h"
#include "ui/merit/merit_filter_bar.h"
#include "ui/merit/merit_place.h"
#include "ui/merit/merit_table_model.h"
#include "ui/merit/threshold_panel.h"
#include "ui/merit/waterfall_view.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/plain_table.h"

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTabWidget>
#include <QTest>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

using test::LadderOrchard;

class MeritPlaceTest : public testing::Test {
  protected:
    void SetUp() override { QSettings().remove(QStringLiteral("merit")); }
    void TearDown() override {
        place.reset();
        desk.reset();
        book.reset();
        QSettings().remove(QStringLiteral("merit"));
    }

    /// Two benchmarks of one slot and three seedlings: one good and well known, one poor, one that
    /// was only eaten off the ground.
    static std::unique_ptr<LadderOrchard> orchardMade() {
        auto orchard = std::make_unique<LadderOrchard>();
        const Genotype plain = orchard->benchmark("Mill Plain");
        const Genotype fine = orchard->benchmark("Brook Fine");
        orchard->ripens(plain, "08-20");
        orchard->ripens(fine, "08-23");
        orchard->tastes(LadderOrchard::treeOf(plain), 5, "08-21");
        orchard->tastes(LadderOrchard::treeOf(fine), 7, "08-24");
        const auto row = orchard->row(1);
        const auto good = orchard->seedling(row, 1, "AT17-001", Stage::watched);
        const auto poor = orchard->seedling(row, 2, "AT17-002", Stage::bearing);
        const auto fallen = orchard->seedling(row, 3, "AT17-003", Stage::bearing);
        for (const EditedTree& tree : {good, poor, fallen}) {
            orchard->walk(tree, WalkMark::ripe, "2023-08-22");
            orchard->walk(tree, WalkMark::ripe, "2024-08-22");
        }
        orchard->tastes(good, 8.5, "08-23");
        orchard->tastes(poor, 3, "08-23");
        orchard->bite(fallen, 6, "2024-08-30", Origin::onGroundLonger);
        orchard->bite(good, 6.5, "2024-09-02", Origin::onGroundLonger);
        return orchard;
    }

    void open(std::unique_ptr<Store> store, OpenBook::OpenReader reader = {}) {
        auto opened = OpenBook::open(std::move(store), {}, std::move(reader));
        ASSERT_TRUE(opened);
        book = std::move(*opened);
        book->setToday(Date::of(2024, 9, 25));
        desk = std::make_unique<MeritDesk>(
            *book, MeritQuestion{std::nullopt, std::nullopt, keptChoices().choices()});
        place = std::make_unique<MeritPlace>(*book, *desk);
        place->resize(1200, 800);
        place->show();
        place->activateWindow();
    }
    void openOrchard() {
        auto orchard = orchardMade();
        taster = orchard->taster.id;
        open(orchard->takeStore());
        ASSERT_TRUE(settles());
    }
    bool settles() {
        return QTest::qWaitFor([this] { return place->isSettled(); }, 20000);
    }
    [[nodiscard]] Index called(const char* code) const {
        return *book->view()->genotypeCalled(code);
    }
    [[nodiscard]] QString cell(const char* code, int column) const {
        const auto row = place->ranking()->rowOf(called(code));
        return row ? place->ranking()->index(*row, column).data().toString() : QString();
    }
    [[nodiscard]] QStringList shownTrees() const {
        QStringList trees;
        const QAbstractItemModel* model = place->table()->model();
        for (int row = 0; row < model->rowCount(); ++row) {
            trees << model->index(row, MeritTableModel::tree).data().toString();
        }
        return trees;
    }
    void bite(const char* code, double liking) {
        LotCondition condition;
        condition.taken = book->today();
        condition.origin = Origin::pickedRipe;
        condition.soundness = Soundness::sound;
        condition.ripeness = Ripeness::prime;
        condition.storage = StoragePath::none;
        const auto tree = book->treeAt(*book->view()->plantFor(called(code)));
        ASSERT_TRUE(book->apply(
            biteOf(tree, condition, {taster, liking, Verdict::unknown, {}}, book->context())));
    }
    static void choose(QComboBox* box, const QString& words) {
        const int at = box->findText(words);
        ASSERT_GE(at, 0) << words.toStdString();
        box->setCurrentIndex(at);
    }

    PersonId taster;
    std::unique_ptr<OpenBook> book;
    std::unique_ptr<MeritDesk> desk;
    std::unique_ptr<MeritPlace> place;
};

TEST_F(MeritPlaceTest, RanksWithinTheSlotBesideItsLadder) {
    openOrchard();
    const QAbstractItemModelTester tester(place->ranking());
    EXPECT_EQ(shownTrees(), (QStringList{QStringLiteral("AT17-001"), QStringLiteral("AT17-003"),
                                         QStringLiteral("AT17-002")}));
    EXPECT_TRUE(cell("AT17-001", MeritTableModel::merit).contains(QStringLiteral("±")));
    EXPECT_TRUE(cell("AT17-001", MeritTableModel::aboveBest).contains(QLatin1Char('%')));
    EXPECT_EQ(cell("AT17-001", MeritTableModel::evidence),
              QStringLiteral("5 lot(s), 4 fair, 2 taster(s), 2 crop year(s)"));
    const MeritPlot plot = place->ranking()->plotOf(
        place->ranking()->row(*place->ranking()->rowOf(called("AT17-001"))));
    ASSERT_TRUE(plot.value && plot.floor && plot.best);
    EXPECT_LT(*plot.floor, *plot.best);
    EXPECT_LT(plot.widestLow, plot.eightyLow);
    EXPECT_FALSE(plot.pale);
    EXPECT_TRUE(place->ranking()
                    ->plotOf(place->ranking()->row(*place->ranking()->rowOf(called("AT17-003"))))
                    .pale);
}

TEST_F(MeritPlaceTest, AScoreChangesTheVerdictOnScreenAndIsStaleUntilThen) {
    openOrchard();
    const QString before = cell("AT17-002", MeritTableModel::merit);
    EXPECT_FALSE(desk->isStale());
    const std::int64_t position = desk->report()->position;
    bite("AT17-002", 9);
    EXPECT_TRUE(desk->isStale());
    EXPECT_TRUE(place->state()->text().contains(QStringLiteral("Stale")));
    EXPECT_EQ(cell("AT17-002", MeritTableModel::merit), before); // still there to be read
    ASSERT_TRUE(settles());
    EXPECT_NE(cell("AT17-002", MeritTableModel::merit), before);
    EXPECT_GT(desk->report()->position, position);
    EXPECT_FALSE(place->state()->text().contains(QStringLiteral("Stale")));
    book->undo();
    ASSERT_TRUE(settles());
    EXPECT_EQ(cell("AT17-002", MeritTableModel::merit), before);
}

TEST_F(MeritPlaceTest, TheNewestQuestionWinsAndStoppingKeepsWhatIsThere) {
    openOrchard();
    const MeritReportPointer before = desk->report();
    bite("AT17-002", 9);
    desk->stop();
    QTest::qWait(30);
    EXPECT_EQ(desk->report(), before);
    EXPECT_TRUE(desk->isStale());
    EXPECT_FALSE(desk->isWorking());
    bite("AT17-002", 8);
    bite("AT17-002", 9);
    ASSERT_TRUE(settles());
    EXPECT_EQ(desk->report()->verdictOn(called("AT17-002"))->evidence.records,
              before->verdictOn(called("AT17-002"))->evidence.records + 3);
}

TEST_F(MeritPlaceTest, ReadsBesideTheWindowWhereTheBookCanBeReadTwice) {
    auto orchard = orchardMade();
    taster = orchard->taster.id;
    open(orchard->takeStore(),
         [] { return Result<std::unique_ptr<Store>>(orchardMade()->takeStore()); });
    // The second orchard is made anew with ids of its own: only that an answer comes is asked.
    ASSERT_TRUE(QTest::qWaitFor([this] { return desk->report() != nullptr; }, 20000));
    EXPECT_FALSE(desk->isWorking());
}

TEST_F(MeritPlaceTest, FiltersBySuggestionStageAndFairTests) {
    openOrchard();
    choose(place->filterBar()->stageChoice(), QStringLiteral("watched"));
    EXPECT_EQ(shownTrees(), QStringList{QStringLiteral("AT17-001")});
    EXPECT_FALSE(place->filterBar()->clearButton()->isHidden());
    QTest::mouseClick(place->filterBar()->clearButton(), Qt::LeftButton);
    EXPECT_EQ(shownTrees().size(), 3);
    QPushButton* neverFair = place->filterBar()->neverFairButton();
    EXPECT_TRUE(neverFair->text().contains(QLatin1Char('1')));
    QTest::mouseClick(neverFair, Qt::LeftButton);
    EXPECT_EQ(shownTrees(), QStringList{QStringLiteral("AT17-003")});
    EXPECT_EQ(place->shownGenotype(), called("AT17-003"));
    QTest::keyClick(place.get(), Qt::Key_Escape);
    EXPECT_EQ(shownTrees().size(), 3);
}

TEST_F(MeritPlaceTest, TheKeysGoFromTreeToTreeAndToTheSheet) {
    openOrchard();
    place->table()->setFocus();
    place->table()->setCurrentIndex(place->table()->model()->index(0, 0));
    QTest::keyClick(place->table(), Qt::Key_Down);
    EXPECT_EQ(book->currentGenotype(), called("AT17-003"));
    QSignalSpy wanted(place.get(), &MeritPlace::treeActivated);
    QTest::keyClick(place->table(), Qt::Key_Return);
    EXPECT_EQ(wanted.count(), 1);
    book->selectGenotype(called("AT17-001")); // elsewhere: the table follows
    EXPECT_EQ(place->shownGenotype(), called("AT17-001"));
    EXPECT_EQ(place->table()->currentIndex().row(), 0);
}

TEST_F(MeritPlaceTest, AHeadingSortsTheTable) {
    openOrchard();
    place->table()->sortByColumn(MeritTableModel::merit, Qt::AscendingOrder);
    EXPECT_EQ(shownTrees().front(), QStringLiteral("AT17-002"));
    place->table()->sortByColumn(MeritTableModel::evidence, Qt::DescendingOrder);
    EXPECT_EQ(shownTrees().front(), QStringLiteral("AT17-001"));
}

TEST_F(MeritPlaceTest, ASwitchOfTheWaterfallChangesThisPictureOnly) {
    openOrchard();
    book->selectGenotype(called("AT17-001"));
    ASSERT_TRUE(settles());
    const QString word = correctionWord(Correction::origin);
    QCheckBox* box = place->waterfall()->switchOf(word);
    ASSERT_NE(box, nullptr);
    EXPECT_TRUE(box->isChecked());
    const QStringList lines = place->waterfall()->lines();
    EXPECT_TRUE(lines.front().startsWith(QStringLiteral("mean as eaten | 7.90")));
    const QString before = place->waterfall()->summary();
    const QString inTable = cell("AT17-001", MeritTableModel::merit);
    box->setFocus();
    QTest::keyClick(box, Qt::Key_Space);
    ASSERT_TRUE(settles());
    EXPECT_NE(place->waterfall()->summary(), before);
    EXPECT_TRUE(place->waterfall()->options().off.contains(Correction::origin));
    QCheckBox* again = place->waterfall()->switchOf(word);
    ASSERT_NE(again, nullptr);
    EXPECT_FALSE(again->isChecked());
    EXPECT_EQ(cell("AT17-001", MeritTableModel::merit), inTable);
    // The next seedling starts with all corrections.
    book->selectGenotype(called("AT17-002"));
    ASSERT_TRUE(settles());
    EXPECT_TRUE(place->waterfall()->options().off.empty());
}

TEST_F(MeritPlaceTest, ScoresStandRawBesideCorrected) {
    openOrchard();
    book->selectGenotype(called("AT17-001"));
    ASSERT_TRUE(settles());
    const QAbstractItemModel* scores = place->scores()->table()->model();
    ASSERT_EQ(scores->rowCount(), 5);
    const int last = scores->rowCount() - 1; // the one off the ground, the latest
    EXPECT_TRUE(
        scores->index(last, 2).data().toString().contains(QStringLiteral("on the ground longer")));
    EXPECT_EQ(scores->index(last, 3).data().toString(), QStringLiteral("6.5"));
    EXPECT_TRUE(scores->index(last, 4).data().toString().startsWith(QLatin1Char('+')));
    EXPECT_GT(scores->index(last, 7).data().toString().toDouble(), 6.5);
}

TEST_F(MeritPlaceTest, SaysWhichTastingWouldTellMost) {
    openOrchard();
    book->selectGenotype(called("AT17-003"));
    ASSERT_TRUE(settles());
    EXPECT_GT(place->settle()->table()->model()->rowCount(), 3);
    EXPECT_TRUE(place->settle()->advice().contains(QStringLiteral("tells most")))
        << place->settle()->advice().toStdString();
}

TEST_F(MeritPlaceTest, TheSeasonIsCutAndABenchmarkElectedAndBothUndone) {
    openOrchard();
    place->tabs()->setCurrentIndex(2);
    LadderPanel* panel = place->ladders();
    ASSERT_FALSE(panel->cutButton()->isHidden());
    EXPECT_FALSE(panel->electButton(Rung::floor)->isEnabled());
    QTest::mouseClick(panel->cutButton(), Qt::LeftButton);
    ASSERT_TRUE(settles());
    EXPECT_TRUE(panel->cutButton()->isHidden());
    EXPECT_TRUE(panel->rungWords(Rung::floor)->text().contains(QStringLiteral("Mill Plain")));
    ASSERT_TRUE(panel->electButton(Rung::floor)->isEnabled());
    QComboBox* choice = panel->rungChoice(Rung::floor);
    choice->setCurrentIndex(choice->findData(called("Brook Fine")));
    QTest::mouseClick(panel->electButton(Rung::floor), Qt::LeftButton);
    ASSERT_TRUE(settles());
    EXPECT_TRUE(panel->rungWords(Rung::floor)->text().contains(QStringLiteral("Brook Fine")));
    book->undo();
    ASSERT_TRUE(settles());
    EXPECT_TRUE(panel->rungWords(Rung::floor)->text().contains(QStringLiteral("Mill Plain")));
    book->undo();
    ASSERT_TRUE(settles());
    EXPECT_FALSE(panel->cutButton()->isHidden());
}

TEST_F(MeritPlaceTest, ThresholdsAreTheBreedersOwnAndCanBePutBack) {
    openOrchard();
    EXPECT_EQ(place->ranking()->headerData(MeritTableModel::aboveMargin, Qt::Horizontal).toString(),
              QStringLiteral("P(by 0.5)"));
    place->thresholds()->margin()->setValue(1.5);
    ASSERT_TRUE(settles());
    EXPECT_EQ(place->ranking()->headerData(MeritTableModel::aboveMargin, Qt::Horizontal).toString(),
              QStringLiteral("P(by 1.5)"));
    EXPECT_DOUBLE_EQ(keptChoices().thresholds.margin, 1.5);
    QTest::mouseClick(place->thresholds()->resetButton(), Qt::LeftButton);
    ASSERT_TRUE(settles());
    EXPECT_EQ(keptChoices(), KeptChoices{});
    // What contradicts itself is refused in words and not kept.
    place->thresholds()->cullBelowFloor()->setValue(10);
    EXPECT_FALSE(place->thresholds()->refusal()->isHidden());
    EXPECT_EQ(keptChoices(), KeptChoices{});
}

TEST_F(MeritPlaceTest, SetsTheBookBackAndSaysSo) {
    openOrchard();
    const QString now = cell("AT17-001", MeritTableModel::evidence);
    LookBackPanel* panel = place->lookBack();
    panel->day()->setDate(QDate(2023, 12, 31));
    QTest::mouseClick(panel->backButton(), Qt::LeftButton);
    ASSERT_TRUE(settles());
    EXPECT_TRUE(place->notice()->isVisible());
    EXPECT_TRUE(place->notice()->text().contains(QStringLiteral("set back")));
    EXPECT_EQ(cell("AT17-001", MeritTableModel::evidence),
              QStringLiteral("2 lot(s), 2 fair, 2 taster(s), 1 crop year(s)"));
    EXPECT_GT(panel->regrets()->model()->rowCount(), 1);
    QTest::mouseClick(panel->todayButton(), Qt::LeftButton);
    ASSERT_TRUE(settles());
    EXPECT_FALSE(place->notice()->isVisible());
    EXPECT_EQ(cell("AT17-001", MeritTableModel::evidence), now);
}

TEST_F(MeritPlaceTest, RanksByAnotherTrait) {
    auto orchard = orchardMade();
    for (int ordinal = 11; ordinal <= 13; ++ordinal) {
        const auto tree = orchard->seedling(orchard->row(ordinal), 1,
                                            "AT17-0" + std::to_string(ordinal), Stage::bearing);
        orchard->bite(tree, 5, "2024-08-25");
        orchard->measure(tree, "fruit_mass", 90.0 + 20 * (ordinal - 10), "2024-08-25");
    }
    open(orchard->takeStore());
    ASSERT_TRUE(settles());
    QComboBox* traits = place->filterBar()->traitChoice();
    const Trait* mass = book->view()->traitByKey("fruit_mass");
    ASSERT_NE(mass, nullptr);
    traits->setCurrentIndex(traits->findData(QString::fromStdString(mass->id.uuid.text())));
    ASSERT_TRUE(settles());
    EXPECT_TRUE(place->ranking()->ranksTrait());
    EXPECT_TRUE(place->table()->isColumnHidden(MeritTableModel::aboveBest));
    EXPECT_GT(cell("AT17-013", MeritTableModel::merit).section(QLatin1Char(' '), 0, 0).toDouble(),
              60);
    traits->setCurrentIndex(0);
    ASSERT_TRUE(settles());
    EXPECT_FALSE(place->ranking()->ranksTrait());
    EXPECT_FALSE(place->table()->isColumnHidden(MeritTableModel::aboveBest));
}

TEST_F(MeritPlaceTest, SaysWhatWouldFillAnEmptyBook) {
    auto store = std::make_unique<MemoryStore>();
    UuidMaker ids;
    ASSERT_TRUE(store->apply(newBook("Bare", "M. Thorne", ids), {}));
    open(std::move(store));
    ASSERT_TRUE(QTest::qWaitFor([this] { return desk->report() != nullptr; }));
    EXPECT_TRUE(place->isEmpty());
    EXPECT_TRUE(desk->report()->lack);
}

TEST_F(MeritPlaceTest, OneTreeWithOneBiteGetsWordsNotOdds) {
    auto orchard = std::make_unique<LadderOrchard>();
    const auto only = orchard->seedling(orchard->row(1), 1, "AT17-001", Stage::bearing);
    orchard->bite(only, 8, "2024-08-23");
    orchard->bite(only, 7, "2024-08-24");
    open(orchard->takeStore());
    ASSERT_TRUE(settles());
    ASSERT_EQ(shownTrees().size(), 1);
    EXPECT_EQ(cell("AT17-001", MeritTableModel::aboveBest), QStringLiteral("no benchmark"));
    EXPECT_EQ(cell("AT17-001", MeritTableModel::suggestion), QStringLiteral("not enough yet"));
    EXPECT_TRUE(cell("AT17-001", MeritTableModel::reason).contains(QStringLiteral("benchmark")));
}

TEST_F(MeritPlaceTest, PrintsWhatIsShown) {
    openOrchard();
    QTest::mouseClick(place->printButton(), Qt::LeftButton);
    EXPECT_TRUE(place->isPaper());
    QTest::keyClick(place.get(), Qt::Key_Escape);
    EXPECT_FALSE(place->isPaper());
    EXPECT_TRUE(place->table()->asTable().contains(QStringLiteral("AT17-001")));
}

} // namespace
} // namespace pipwright::ui
