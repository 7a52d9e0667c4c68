#pragma once

#include "core/history/memory_store.h"
#include "tests/support/small_orchard.h"
#include "ui/book/open_book.h"
#include "ui/tree/entry_strip.h"
#include "ui/tree/tree_sheet.h"

#include <QApplication>
#include <QTest>

#include <gtest/gtest.h>
#include <memory>

namespace pipwright::ui {

/// The sheet over a small orchard with three seedlings in row 1, the first selected.
class SheetOnOrchard : public testing::Test {
  protected:
    void SetUp() override {
        const TrialRow row = m_orchard.row(1);
        m_first = m_orchard.seedling(row, 1, "AT17-001", Stage::bearing);
        m_second = m_orchard.seedling(row, 2, "AT17-002");
        m_third = m_orchard.seedling(row, 3, "AT17-003");
        prepare();
        m_taster = m_orchard.taster.id;
        auto opened = OpenBook::open(m_orchard.takeStore(), {}, {});
        ASSERT_TRUE(opened);
        m_book = std::move(*opened);
        m_book->setToday(Date::of(2026, 8, 22));
        m_book->setPerson(m_taster);
        m_sheet = std::make_unique<TreeSheet>(*m_book);
        m_sheet->resize(420, 900);
        m_sheet->show();
        m_book->selectPlant(plant(m_first));
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_sheet.get()));
    }
    void TearDown() override {
        m_sheet.reset();
        m_book.reset();
    }
    /// What a test wants in the book before it is opened.
    virtual void prepare() {}

    [[nodiscard]] Index plant(const EditedTree& tree) const {
        return *m_book->view()->plant(*tree.plant);
    }
    /// Keys as they come from the keyboard: to whatever has the focus.
    static void type(const char* keys) {
        for (const char* key = keys; *key != '\0'; ++key) {
            QTest::keyClick(QApplication::focusWidget(), *key);
        }
    }
    static void press(Qt::Key key) { QTest::keyClick(QApplication::focusWidget(), key); }

    template <typename Thing>
    [[nodiscard]] std::vector<Thing> all() const {
        return *m_book->store().all<Thing>();
    }
    /// The observations of a trait.
    [[nodiscard]] std::vector<Observation> seen(std::string_view trait) const {
        auto found = all<Observation>();
        std::erase_if(found,
                      [&](const Observation& one) { return one.trait != shippedTraitId(trait); });
        return found;
    }

    test::SmallOrchard m_orchard;
    EditedTree m_first;
    EditedTree m_second;
    EditedTree m_third;
    PersonId m_taster;
    std::unique_ptr<OpenBook> m_book;
    std::unique_ptr<TreeSheet> m_sheet;
};

} // namespace pipwright::ui
