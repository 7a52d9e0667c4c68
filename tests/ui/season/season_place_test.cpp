#include "tests/support/tasted_orchard.h"
#include "ui/book/open_book.h"
#include "ui/charts/chart_panel.h"
#include "ui/season/season_place.h"
#include "ui/widgets/flow_text.h"

#include <QComboBox>
#include <QTest>
#include <QThreadPool>

#include <algorithm>
#include <atomic>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

using test::TastedOrchard;

/// The same orchard whenever it is made, so that it can be read twice.
std::unique_ptr<TastedOrchard> walkedOrchard() {
    auto orchard = std::make_unique<TastedOrchard>();
    const auto seedling = orchard->seedling(orchard->row(1), 1, "AT17-001");
    const auto mother = TastedOrchard::treeOf(orchard->mother);
    orchard->walk(mother, WalkMark::ripe, "2025-08-20");
    orchard->walk(mother, WalkMark::ripe, "2026-08-20");
    orchard->walk(seedling, WalkMark::ripe, "2026-08-27");
    orchard->bite(seedling, 7, "2026-08-27");
    return orchard;
}

std::unique_ptr<OpenBook> opened(std::unique_ptr<Store> store, OpenBook::OpenReader reader = {}) {
    auto book = OpenBook::open(std::move(store), {}, std::move(reader));
    EXPECT_TRUE(book);
    (*book)->setToday(Date::of(2026, 9, 1));
    return std::move(*book);
}

bool settles(const SeasonPlace& place) {
    return QTest::qWaitFor([&place] { return place.isSettled(); });
}

TEST(SeasonPlace, ShowsTheRunningSeasonAndWhatIsSelected) {
    auto orchard = walkedOrchard();
    auto book = opened(orchard->takeStore());
    SeasonPlace place(*book);
    place.show();
    ASSERT_TRUE(settles(place));
    EXPECT_EQ(place.cropYear(), 2026);
    EXPECT_EQ(place.yearChoice()->count(), 2);
    EXPECT_EQ(place.chart()->spec().lanes.size(), 1U); // Ash Tarn
    book->selectPlant(Index{0});
    EXPECT_FALSE(place.isSettled());
    ASSERT_TRUE(settles(place));
    EXPECT_EQ(place.chart()->spec().lanes.size(), 2U);
}

TEST(SeasonPlace, SaysWhichSelectedTreeHasNothingToDraw) {
    auto orchard = walkedOrchard();
    const auto bare = orchard->seedling(orchard->row(2), 1, "AT17-002");
    auto book = opened(orchard->takeStore());
    SeasonPlace place(*book);
    place.resize(1000, 700);
    place.show();
    ASSERT_TRUE(settles(place));
    EXPECT_TRUE(place.without()->isHidden());
    book->selectPlant(*book->view()->plant(*bare.plant));
    ASSERT_TRUE(settles(place));
    EXPECT_FALSE(place.without()->isHidden());
    EXPECT_TRUE(place.without()->text().contains(QStringLiteral("AT17-002 (never seen ripe)")));
    book->selectPlant(Index{0});
    ASSERT_TRUE(settles(place));
    EXPECT_TRUE(place.without()->isHidden());
}

TEST(SeasonPlace, SpansWhatUsuallyRipensNotOnlyWhatWasSeen) {
    auto orchard = walkedOrchard();
    const auto father = TastedOrchard::treeOf(orchard->father);
    orchard->walk(father, WalkMark::ripe, "2025-10-10"); // not yet this year
    auto book = opened(orchard->takeStore());
    SeasonPlace place(*book);
    place.show();
    ASSERT_TRUE(settles(place));
    const auto& axis = place.chart()->spec().xAxis;
    ASSERT_TRUE(axis.low && axis.high);
    EXPECT_LE(*axis.low, Date::of(2026, 8, 13)->days());
    EXPECT_GE(*axis.high, Date::of(2026, 11, 7)->days());
}

TEST(SeasonPlace, TheChosenYearStays) {
    auto orchard = walkedOrchard();
    auto book = opened(orchard->takeStore());
    SeasonPlace place(*book);
    place.show();
    ASSERT_TRUE(settles(place));
    place.yearChoice()->setFocus();
    QTest::keyClick(place.yearChoice(), Qt::Key_Down);
    ASSERT_TRUE(settles(place));
    EXPECT_EQ(place.cropYear(), 2025);
    EXPECT_THAT(place.chart()->spec().title, testing::HasSubstr("2025"));
    book->selectPlant(Index{0});
    ASSERT_TRUE(settles(place));
    EXPECT_EQ(place.cropYear(), 2025);
}

TEST(SeasonPlace, AMarkGoesToItsTree) {
    auto orchard = walkedOrchard();
    auto book = opened(orchard->takeStore());
    SeasonPlace place(*book);
    place.show();
    ASSERT_TRUE(settles(place));
    const auto mother = *book->view()->genotype(orchard->mother.id);
    Q_EMIT place.chart()->pointActivated(QString::fromStdString(orchard->mother.id.uuid.text()));
    EXPECT_EQ(book->currentGenotype(), mother);
}

TEST(SeasonPlace, NamesASouthernSeasonByBothYears) {
    auto orchard = std::make_unique<TastedOrchard>();
    orchard->moveToTheSouth();
    orchard->walk(TastedOrchard::treeOf(orchard->mother), WalkMark::ripe, "2026-12-30");
    auto book = opened(orchard->takeStore());
    book->setToday(Date::of(2027, 1, 3));
    SeasonPlace place(*book);
    place.show();
    ASSERT_TRUE(settles(place));
    EXPECT_EQ(place.yearChoice()->currentText(), QStringLiteral("2026/27"));
    EXPECT_FALSE(place.chart()->spec().isEmpty());
}

TEST(SeasonPlace, SaysWhatWouldFillAnEmptySeason) {
    auto book = opened(std::make_unique<TastedOrchard>()->takeStore());
    SeasonPlace place(*book);
    place.show();
    ASSERT_TRUE(settles(place));
    EXPECT_TRUE(place.chart()->spec().isEmpty());
    EXPECT_FALSE(place.chart()->spec().emptyText.empty());
    EXPECT_EQ(place.cropYear(), 2026);
}

TEST(SeasonPlace, ReadsNothingWhileHidden) {
    std::atomic<int> readers = 0;
    auto book = opened(walkedOrchard()->takeStore(), [&readers] {
        ++readers;
        return Result<std::unique_ptr<Store>>(walkedOrchard()->takeStore());
    });
    ASSERT_TRUE(QTest::qWaitFor([&book] { return book->view()->hasEvidence(); }));
    const int before = readers;
    SeasonPlace place(*book);
    book->selectPlant(Index{0});
    QTest::qWait(80);
    EXPECT_EQ(readers, before);
    place.show();
    ASSERT_TRUE(settles(place));
    EXPECT_EQ(readers, before + 1);
}

TEST(SeasonPlace, AnOvertakenAnswerIsDropped) {
    std::atomic<int> readers = 0;
    auto book = opened(walkedOrchard()->takeStore(), [&readers] {
        ++readers;
        if (readers == 2) { // the first question of the place takes its time
            QTest::qSleep(200);
        }
        return Result<std::unique_ptr<Store>>(walkedOrchard()->takeStore());
    });
    ASSERT_TRUE(QTest::qWaitFor([&book] { return book->view()->hasEvidence(); }));
    SeasonPlace place(*book);
    place.show();
    book->selectPlant(Index{0});
    ASSERT_TRUE(QTest::qWaitFor([&readers] { return readers >= 3; }));
    ASSERT_TRUE(settles(place));
    EXPECT_EQ(place.chart()->spec().lanes.size(), 2U);
    QTest::qWait(300); // the late answer knew of no selection
    EXPECT_EQ(place.chart()->spec().lanes.size(), 2U);
}

TEST(SeasonPlace, MayGoWhileItReads) {
    std::atomic<int> reading = 0;
    auto book = opened(walkedOrchard()->takeStore(), [&reading] {
        ++reading;
        QTest::qSleep(50);
        return Result<std::unique_ptr<Store>>(walkedOrchard()->takeStore());
    });
    {
        SeasonPlace place(*book);
        place.show();
        ASSERT_TRUE(QTest::qWaitFor([&reading] { return reading > 0; }));
    }
    QThreadPool::globalInstance()->waitForDone();
    QTest::qWait(50); // the late answer comes, and finds nobody
    EXPECT_GT(reading, 0);
}

} // namespace
} // namespace pipwright::ui
