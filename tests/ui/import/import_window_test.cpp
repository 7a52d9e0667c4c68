#include "core/history/memory_store.h"
#include "core/history/new_book.h"
#include "ui/book/open_book.h"
#include "ui/import/import_window.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

class ImportWindowTest : public testing::Test {
  protected:
    void SetUp() override {
        auto store = std::make_unique<MemoryStore>();
        UuidMaker ids(7, [] { return std::int64_t{1'700'000'000'000}; });
        ASSERT_TRUE(store->apply(newBook("Empty", "", ids), {}));
        auto opened = OpenBook::open(std::move(store), QStringLiteral("in memory"), {});
        ASSERT_TRUE(opened);
        book = std::move(*opened);
        book->setToday(Date::of(2026, 8, 22));
        window = std::make_unique<ImportWindow>(*book, nullptr);
        window->show();
    }

    std::unique_ptr<OpenBook> book;
    std::unique_ptr<ImportWindow> window;
};

TEST_F(ImportWindowTest, APastedTableMakesAWorkingBookInOneStep) {
    window->pasteField()->setPlainText(
        QStringLiteral("code\trow\tposition\tseed parent\tpollen parent\n"
                       "HB20-01\t1\t1\tAsh Tarn\tRusset Moor\n"
                       "HB20-02\t1\t2\tAsh Tarn\topen\n"));
    ASSERT_TRUE(window->plan()) << window->verdict().toStdString();
    EXPECT_EQ(window->plan()->created, 2);
    for (const Problem& fault : window->plan()->faults) {
        ADD_FAILURE() << fault.sentence();
    }
    EXPECT_TRUE(book->view()->plants().empty()) << "a trial run writes nothing";
    QTest::mouseClick(window->bringInButton(), Qt::LeftButton);
    ASSERT_EQ(book->view()->plants().size(), 2U);
    const auto genotype = book->view()->genotypeCalled("HB20-01");
    ASSERT_TRUE(genotype);
    EXPECT_EQ(book->view()->crossText(*genotype), "Ash Tarn x Russet Moor");
    book->undo();
    EXPECT_FALSE(book->view()->plantFor(*genotype).has_value());
}

TEST_F(ImportWindowTest, AFaultyLineStopsAllUntilItIsLeftOut) {
    window->pasteField()->setPlainText(QStringLiteral("code\trow\tposition\n"
                                                      "HB20-01\t1\t1\n"
                                                      "HB20-02\t1\tsecond\n"));
    ASSERT_TRUE(window->plan());
    EXPECT_EQ(window->plan()->faulty, 1);
    EXPECT_FALSE(window->bringInButton()->isEnabled());
    QTest::mouseClick(window->skipFaulty(), Qt::LeftButton, {},
                      QPoint(5, window->skipFaulty()->height() / 2));
    ASSERT_TRUE(window->bringInButton()->isEnabled());
    QTest::mouseClick(window->bringInButton(), Qt::LeftButton);
    EXPECT_EQ(book->view()->plants().size(), 1U);
}

TEST_F(ImportWindowTest, AnAssignmentIsKeptAsARecipeAndTakenAgain) {
    window->pasteField()->setPlainText(QStringLiteral("Baum,Reihe,Platz\nHB20-01,1,1\n"));
    EXPECT_FALSE(window->plan());
    const auto assign = [this](int column, TableField field) {
        QComboBox* choice = window->columnChoice(column);
        choice->setCurrentIndex(choice->findData(static_cast<int>(field)));
    };
    assign(0, TableField::code);
    assign(1, TableField::row);
    assign(2, TableField::place);
    ASSERT_TRUE(window->plan());
    window->recipeName()->setText(QStringLiteral("tree list"));
    QTest::mouseClick(window->keepRecipeButton(), Qt::LeftButton);
    ASSERT_EQ(book->store().all<Recipe>()->size(), 1U);

    ImportWindow again(*book, nullptr);
    again.show();
    again.pasteField()->setPlainText(QStringLiteral("Baum,Reihe,Platz\nHB20-02,1,2\n"));
    again.recipeChoice()->setCurrentIndex(1);
    ASSERT_TRUE(again.plan());
    EXPECT_EQ(again.plan()->created, 1);
}

} // namespace
} // namespace pipwright::ui
