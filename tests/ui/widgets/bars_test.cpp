#include "tests/ui/widgets/look.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/empty_place.h"
#include "ui/widgets/finder_line.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/inexact_date_edit.h"
#include "ui/widgets/navigation_rail.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/score_mark.h"
#include "ui/widgets/status_line.h"

#include <QHBoxLayout>
#include <QImage>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

TEST(StatusLineTest, ButtonsAsk) {
    dress();
    StatusLine line;
    line.resize(1000, line.sizeHint().height());
    line.show();
    EXPECT_TRUE(line.filterButton()->isHidden());
    line.setFilter(QStringLiteral("apples, July"));
    line.setUndo(QStringLiteral("marked 12 trees as watched"));
    line.setToday(QStringLiteral("22 Aug 2026"), true);
    QSignalSpy cleared(&line, &StatusLine::filterCleared);
    QSignalSpy undo(&line, &StatusLine::undoWanted);
    QSignalSpy today(&line, &StatusLine::todayWanted);
    QTest::mouseClick(line.filterButton(), Qt::LeftButton);
    QTest::mouseClick(line.undoButton(), Qt::LeftButton);
    QTest::mouseClick(line.todayButton(), Qt::LeftButton);
    EXPECT_EQ(cleared.count() + undo.count() + today.count(), 3);
}

TEST(StatusLineTest, WorkShowsAndStops) {
    StatusLine line;
    line.show();
    EXPECT_FALSE(line.isWorking());
    line.setWork(QStringLiteral("copying the book"), 0.4, true);
    EXPECT_TRUE(line.isWorking());
    QSignalSpy stopped(&line, &StatusLine::workCancelled);
    QTest::mouseClick(line.cancelButton(), Qt::LeftButton);
    EXPECT_EQ(stopped.count(), 1);
    line.setWork(QStringLiteral("checking"), std::nullopt, false);
    EXPECT_TRUE(line.cancelButton()->isHidden());
    line.endWork();
    EXPECT_FALSE(line.isWorking());
}

TEST(NoticeBarTest, SaysWhatWhereAndRemedy) {
    dress();
    QWidget window;
    auto* layout = new QVBoxLayout(&window);
    auto* bar = new NoticeBar(&window);
    layout->addWidget(bar);
    window.show();
    EXPECT_TRUE(bar->isHidden());
    bar->tell(
        {ProblemCode::badInput, "There is no row 14.", "Add the row first.", "walk.csv, line 3"});
    EXPECT_FALSE(bar->isHidden());
    EXPECT_EQ(bar->text(),
              QStringLiteral("walk.csv, line 3: There is no row 14. Add the row first."));
    EXPECT_EQ(bar->accessibleName(), bar->text());
    EXPECT_EQ(bar->kind(), NoticeBar::Kind::fault);
    EXPECT_TRUE(bar->offerButton()->isHidden());
    bar->offer(QStringLiteral("Add row 14"));
    QSignalSpy taken(bar, &NoticeBar::offerTaken);
    QSignalSpy closed(bar, &NoticeBar::closed);
    QTest::mouseClick(bar->offerButton(), Qt::LeftButton);
    EXPECT_EQ(taken.count(), 1);
    QTest::keyClick(bar->offerButton(), Qt::Key_Escape);
    EXPECT_TRUE(bar->isHidden());
    EXPECT_EQ(closed.count(), 1);
    bar->say(NoticeBar::Kind::word, QStringLiteral("<b>Copied</b>"));
    EXPECT_TRUE(bar->offerButton()->isHidden()) << "an offer is for one notice";
    EXPECT_EQ(bar->text(), QStringLiteral("<b>Copied</b>")) << "text is never markup";
}

TEST(EmptyPlaceTest, OffersTheFirstStep) {
    dress();
    EmptyPlace place(IconName::tastings, QStringLiteral("No tasting yet"),
                     QStringLiteral("Bite a fruit in the row, or lay out a sitting of six lots "
                                    "with the benchmark of the week among them."));
    place.resize(520, 320);
    place.show();
    EXPECT_TRUE(place.firstStepButton()->isHidden());
    place.setFirstStep(QStringLiteral("Lay out a sitting"));
    QSignalSpy wanted(&place, &EmptyPlace::firstStepWanted);
    QTest::mouseClick(place.firstStepButton(), Qt::LeftButton);
    EXPECT_EQ(wanted.count(), 1);
    EXPECT_EQ(place.accessibleName(), QStringLiteral("No tasting yet"));
    lookAt(place, QStringLiteral("empty-place"));
}

TEST(ElidedTextTest, ShowsTheRestAsTooltip) {
    ElidedText text;
    text.setText(QStringLiteral("A long sentence about one tree in the third row"));
    text.resize(60, 20);
    text.show();
    EXPECT_TRUE(text.isElided());
    EXPECT_EQ(text.toolTip(), text.text());
    text.resize(1000, 20);
    EXPECT_TRUE(text.toolTip().isEmpty());
}

QImage drawn(const IntervalDot& dot) {
    QImage image(200, 20, QImage::Format_ARGB32);
    image.fill(lightTheme().surface);
    QPainter painter(&image);
    drawIntervalDot(painter, QRectF(0, 0, 200, 20), dot, lightTheme());
    return image;
}

/// Columns that have a pixel of the leaf in the middle line.
std::pair<int, int> leafExtent(const QImage& image) {
    int first = -1;
    int last = -1;
    for (int x = 0; x < image.width(); ++x) {
        if (contrastRatio(image.pixelColor(x, 10), lightTheme().surface) > 2.5) {
            first = first < 0 ? x : first;
            last = x;
        }
    }
    return {first, last};
}

TEST(IntervalDotTest, LiesWhereItsNumbersAre) {
    // The scale runs from 5.5 to 194.5: 5 of 1 to 9 is the middle.
    const auto [from, to] = leafExtent(drawn({5, 3, 7, 1, 9, false, {}}));
    EXPECT_NEAR(from, 5.5 + 189 * 0.25, 2);
    EXPECT_NEAR(to, 5.5 + 189 * 0.75, 2);
    const QColor middle = drawn({5, {}, {}, 1, 9, false, {}}).pixelColor(100, 10);
    EXPECT_EQ(middle, lightTheme().leaf);
    EXPECT_EQ(drawn({5, {}, {}, 1, 9, true, {}}).pixelColor(100, 10), lightTheme().surface)
        << "uncertain is open";
}

TEST(ScoreMarkTest, IsReadAloud) {
    ScoreMark mark;
    mark.setScore({7.4, 6.8, 8.0, 1, 9, false, {}}, QStringLiteral("7.4 ± 0.6 of 9"),
                  QStringLiteral("two fair lots, one taster"));
    EXPECT_EQ(mark.accessibleName(), QStringLiteral("7.4 ± 0.6 of 9, two fair lots, one taster"));
    mark.setNone(QStringLiteral("no fair lot yet: a second one in August would settle it"));
    EXPECT_TRUE(mark.accessibleName().startsWith(QStringLiteral("no fair lot")));
}

/// Every common widget in one window, for eyes and for the names.
class Gallery : public QWidget {
  public:
    Gallery() {
        auto* rail = new NavigationRail(this);
        rail->addPlace(QStringLiteral("rows"), IconName::rows, QStringLiteral("Rows"));
        rail->addPlace(QStringLiteral("tastings"), IconName::tastings, QStringLiteral("Tastings"));
        rail->addPlace(QStringLiteral("compare"), IconName::compare, QStringLiteral("Compare"));
        rail->addPlace(QStringLiteral("season"), IconName::season, QStringLiteral("Season"));
        rail->setCurrent(QStringLiteral("rows"));
        auto* column = new QVBoxLayout;
        column->setContentsMargins(16, 16, 16, 16);
        fill(column);
        column->addStretch(1);
        auto* middle = new QHBoxLayout;
        middle->setSpacing(0);
        middle->addWidget(rail);
        middle->addLayout(column, 1);
        auto* all = new QVBoxLayout(this);
        all->setContentsMargins(0, 0, 0, 0);
        all->setSpacing(0);
        all->addWidget(addNotice());
        all->addLayout(middle, 1);
        all->addWidget(addStatus());
    }

  private:
    NoticeBar* addNotice() {
        auto* bar = new NoticeBar(this);
        bar->tell({ProblemCode::badInput, "There is no row 14 on the upper site.",
                   "Add the row, or correct the number in the table.", "walk.csv, line 3"});
        bar->offer(QStringLiteral("Add row 14"));
        return bar;
    }

    StatusLine* addStatus() {
        auto* line = new StatusLine(this);
        line->setSelection(QStringLiteral("AT17-014 and 11 more trees"));
        line->setFilter(QStringLiteral("apples, July: 42 of 448"));
        line->setWork(QStringLiteral("copying the book"), 0.4, true);
        line->setUndo(QStringLiteral("marked 12 trees as watched"));
        line->setToday(dateText(*Date::of(2026, 8, 22)), true);
        return line;
    }

    void fill(QVBoxLayout* column) {
        column->addWidget(
            new FlowText(QStringLiteral("AT17-014"), FlowText::Weight::heading, this));
        column->addWidget(new FlowText(
            QStringLiteral("Ash Tarn × Russet Moor, row 3, 14, 4.20 m from the zero stake. A long "
                           "paragraph wraps to the next line when the sheet is narrow."),
            FlowText::Weight::second, this));
        auto* score = new ScoreMark(this);
        score->setScore({7.4, 6.8, 8.0, 1, 9, false, {}}, doubtText(7.4, 0.6, 1),
                        QStringLiteral("two fair lots, one taster"));
        column->addWidget(score);
        auto* unsure = new ScoreMark(this);
        unsure->setScore({6.1, 3.8, 9.8, 1, 9, true, lightTheme().russet}, doubtText(6.1, 2.3, 1),
                         QStringLiteral("one dropped fruit"));
        column->addWidget(unsure);
        auto* chips = new ChipRow(QStringLiteral("State of the fruit"), this);
        chips->setChips(
            {{QStringLiteral("a"), QStringLiteral("not yet"), QStringLiteral("1"), {}},
             {QStringLiteral("b"), QStringLiteral("ripening"), QStringLiteral("2"), {}},
             {QStringLiteral("c"), QStringLiteral("ripe"), QStringLiteral("3"), {}},
             {QStringLiteral("d"), QStringLiteral("over"), QStringLiteral("4"), {}},
             {QStringLiteral("e"), QStringLiteral("gone"), QStringLiteral("5"), {}},
             {QStringLiteral("f"), QStringLiteral("unknown"), QStringLiteral("u"), {}}});
        chips->setChosen(QStringLiteral("c"));
        column->addWidget(chips);
        for (const auto* typed : {"late August", "2026-02-30"}) {
            auto* date = new InexactDateEdit(*Date::of(2026, 8, 22), this);
            date->line()->setText(QLatin1String(typed));
            column->addWidget(date);
        }
        auto* button = new QPushButton(QStringLiteral("Lay beside"), this);
        column->addWidget(button, 0, Qt::AlignLeft);
    }
};

TEST(Gallery, EveryControlHasAName) {
    dress();
    Gallery gallery;
    gallery.resize(820, 560);
    gallery.show();
    lookAt(gallery, QStringLiteral("gallery"));
    for (const QWidget* child : gallery.findChildren<QWidget*>()) {
        if (child->focusPolicy() != Qt::NoFocus && !child->isHidden() &&
            qobject_cast<const QPushButton*>(child) == nullptr &&
            qobject_cast<const QLabel*>(child) == nullptr &&
            child->objectName() != QStringLiteral("qt_spinbox_lineedit")) {
            EXPECT_FALSE(child->accessibleName().isEmpty()) << child->metaObject()->className();
        }
    }
}

} // namespace
} // namespace pipwright::ui
