#include "tests/support/small_orchard.h"
#include "ui/book/open_book.h"
#include "ui/grafting/frame_tree_view.h"
#include "ui/grafting/graft_order_model.h"
#include "ui/grafting/graft_wish_model.h"
#include "ui/grafting/grafting_place.h"
#include "ui/grafting/order_line.h"
#include "ui/widgets/inexact_date_edit.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/plain_table.h"

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollBar>
#include <QSpinBox>
#include <QTabWidget>
#include <QTest>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

class GraftingPlaceTest : public testing::Test {
  protected:
    GraftingPlaceTest() {
        const auto row = orchard.row(1);
        one = orchard.seedling(row, 1, "AT17-001");
        frame = orchard.seedling(row, 2, "AT17-002");
        orchard.apply(graftWishFor(one, 3, "the only tree", orchard.on(*Date::of(2026, 8, 20))));
        ChangeSet set;
        set.sentence = "A limb";
        Plant limb;
        limb.id = PlantId(orchard.ids.make());
        limb.kind = PlantKind::limb;
        limb.frame = frame.plant;
        limb.state = PlantState::growing;
        limb.limbBearing = 90;
        limb.limbHeight = 150;
        limb.limbMark = "blue";
        set.create(limb);
        Identity identity;
        identity.id = IdentityId(orchard.ids.make());
        identity.plant = limb.id;
        identity.genotype = orchard.father.id;
        set.create(identity);
        orchard.apply(set);
        limbId = limb.id;
    }
    void open() {
        auto opened = OpenBook::open(orchard.takeStore(), {}, {});
        ASSERT_TRUE(opened);
        book = std::move(*opened);
        book->setToday(*Date::of(2026, 8, 22));
        place = std::make_unique<GraftingPlace>(*book);
        place->resize(1200, 900);
        place->show();
    }
    QString wishCell(int column) const {
        return place->wishTable()->model()->index(0, column).data().toString();
    }

    test::SmallOrchard orchard;
    EditedTree one;
    EditedTree frame;
    PlantId limbId;
    std::unique_ptr<OpenBook> book;
    std::unique_ptr<GraftingPlace> place;
};

TEST_F(GraftingPlaceTest, TheWishSaysWhatIsAliveAndWarns) {
    open();
    ASSERT_EQ(place->wishTable()->model()->rowCount(), 1);
    EXPECT_EQ(wishCell(GraftWishModel::clone), QStringLiteral("AT17-001"));
    EXPECT_EQ(wishCell(GraftWishModel::from), QStringLiteral("1/1"));
    EXPECT_TRUE(wishCell(GraftWishModel::copies).contains(QStringLiteral("only tree, Ashcroft")));
    EXPECT_TRUE(place->wishTable()->asTable().contains(QStringLiteral("AT17-001\t1/1\t3\t")));
}

TEST_F(GraftingPlaceTest, NumberReasonAndStateChangeInPlace) {
    open();
    auto* model = place->wishTable()->model();
    EXPECT_FALSE(model->setData(model->index(0, GraftWishModel::number), QStringLiteral("none"),
                                Qt::EditRole));
    EXPECT_FALSE(place->notice()->text().isEmpty());
    model->setData(model->index(0, GraftWishModel::number), QStringLiteral("5"), Qt::EditRole);
    QCoreApplication::processEvents();
    EXPECT_EQ(wishCell(GraftWishModel::number), QStringLiteral("5"));
    model->setData(model->index(0, GraftWishModel::state), static_cast<int>(WishState::dropped),
                   Qt::EditRole);
    QCoreApplication::processEvents();
    EXPECT_EQ(book->store().all<GraftWish>()->front().state, WishState::dropped);
    book->undo();
    EXPECT_EQ(wishCell(GraftWishModel::state), QStringLiteral("open"));
}

TEST_F(GraftingPlaceTest, AnOrderIsMadeOfAWishAndLookedAt) {
    open();
    OrderLine* line = place->orderLine();
    ASSERT_TRUE(line->onto()->isEnabled());
    EXPECT_EQ(line->number()->value(), 3);
    QTest::keyClicks(line->onto(), QStringLiteral("1/2"));
    line->orderButton()->click();
    const auto orders = book->store().all<GraftOrder>();
    ASSERT_EQ(orders->size(), 1U);
    EXPECT_EQ(orders->front().ontoPlant, frame.plant);
    EXPECT_EQ(orders->front().date, Date::of(2026, 8, 22));
    EXPECT_EQ(wishCell(GraftWishModel::state), QStringLiteral("ordered"));
    auto* model = place->orderTable()->model();
    ASSERT_EQ(model->rowCount(), 1);
    EXPECT_FALSE(model->setData(model->index(0, GraftOrderModel::weeks), QStringLiteral("4"),
                                Qt::EditRole)); // of three
    model->setData(model->index(0, GraftOrderModel::weeks), QStringLiteral("2 frost"),
                   Qt::EditRole);
    QCoreApplication::processEvents();
    const QString look =
        place->orderTable()->model()->index(0, GraftOrderModel::weeks).data().toString();
    EXPECT_TRUE(look.startsWith(QStringLiteral("2 of 3 alive"))) << look.toStdString();
    EXPECT_TRUE(look.endsWith(QStringLiteral("frost")));
}

TEST_F(GraftingPlaceTest, TheWishChosenIsAlwaysOneOfTheSelectedTree) {
    orchard.apply(graftWishFor(frame, 2, "a good tree", orchard.on(*Date::of(2026, 8, 21))));
    const auto row = orchard.row(2);
    const EditedTree other = orchard.seedling(row, 1, "AT17-003");
    open();
    const auto chosen = [this] {
        const QModelIndex at = place->wishTable()->currentIndex();
        return at.isValid() ? at.siblingAtColumn(GraftWishModel::clone).data().toString()
                            : QString();
    };
    const auto plantOf = [this](const EditedTree& tree) {
        return *book->view()->plant(*tree.plant);
    };
    book->selectPlant(plantOf(frame));
    EXPECT_EQ(chosen(), QStringLiteral("AT17-002"));
    EXPECT_EQ(place->orderLine()->number()->value(), 2);
    book->selectPlant(plantOf(one));
    EXPECT_EQ(chosen(), QStringLiteral("AT17-001"));
    EXPECT_EQ(place->orderLine()->number()->value(), 3);
    // A tree without a wish: nothing can be ordered for another by mistake.
    book->selectPlant(plantOf(other));
    EXPECT_EQ(chosen(), QString());
    EXPECT_FALSE(place->orderLine()->orderButton()->isEnabled());
    EXPECT_TRUE(place->orderLine()->what().contains(QStringLiteral("AT17-003 has no graft wish")));
    // Whoever chooses a wish chooses its tree.
    for (int at = 0; at < 2; ++at) {
        place->wishTable()->setCurrentIndex(place->wishTable()->model()->index(at, 0));
        EXPECT_EQ(book->view()->plantCode(*book->currentPlant()), chosen().toStdString());
        EXPECT_TRUE(place->orderLine()->what().endsWith(chosen()));
    }
    // Also while another place was shown.
    place->hide();
    book->selectPlant(plantOf(one));
    place->show();
    EXPECT_EQ(chosen(), QStringLiteral("AT17-001"));
}

TEST_F(GraftingPlaceTest, HasRoomForSeveralWishesOnASmallScreen) {
    for (int i = 0; i < 5; ++i) {
        orchard.apply(graftWishFor(one, 1, "another reason, in rather many words for one cell",
                                   orchard.on(*Date::of(2026, 8, 21))));
    }
    open();
    place->resize(905, 690);
    QCoreApplication::processEvents();
    PlainTable* table = place->wishTable();
    EXPECT_GE(table->viewport()->height() / table->rowHeight(0), 3);
    EXPECT_EQ(table->horizontalScrollBar()->maximum(), 0); // no column is cut
    EXPECT_EQ(place->orderTable()->horizontalScrollBar()->maximum(), 0);
}

TEST_F(GraftingPlaceTest, ALimbIsChosenInTheDrawingAndInTheList) {
    open();
    ASSERT_EQ(place->frameChooser()->count(), 1);
    ASSERT_EQ(place->limbList()->count(), 1);
    EXPECT_TRUE(place->limbList()->item(0)->text().contains(QStringLiteral("90° (E)")));
    place->tabs()->setCurrentIndex(1);
    FrameTreeView* view = place->frameView();
    QTest::mouseClick(view, Qt::LeftButton, Qt::NoModifier, view->endFromAbove(0).toPoint());
    ASSERT_TRUE(book->currentPlant());
    EXPECT_EQ(book->view()->plants()[*book->currentPlant()].id, limbId);
    EXPECT_EQ(place->limbList()->currentRow(), 0);
}

} // namespace
} // namespace pipwright::ui
