#include "tests/ui/print/printed_sheet.h"
#include "ui/print/label_panel.h"
#include "ui/print/misfit_list.h"
#include "ui/print/page_preview.h"
#include "ui/print/paper_panel.h"
#include "ui/print/preview_pane.h"
#include "ui/print/print_buttons.h"

#include <QAbstractButton>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

class Labelling : public testing::Test {
  protected:
    void SetUp() override {
        m_panel.resize(1000, 700);
        m_panel.setLabels(labelsFor(23));
        m_panel.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&m_panel));
    }
    [[nodiscard]] PagePreview* preview() const { return m_panel.preview()->preview(); }
    QCheckBox* choice(const QString& part) {
        for (QCheckBox* box : m_panel.findChildren<QCheckBox*>()) {
            if (box->text().remove(QLatin1Char('&')).contains(part)) {
                return box;
            }
        }
        return nullptr;
    }
    QSpinBox* start() { return m_panel.findChild<QSpinBox*>(); }

    LabelPanel m_panel;
};

TEST_F(Labelling, LaysTheLabelsOnTheStockChosen) {
    EXPECT_EQ(m_panel.stockKey(), "sheet_63x38_a4");
    EXPECT_EQ(preview()->pageCount(), 2);
    m_panel.setStock("hang_tag");
    EXPECT_EQ(preview()->pageCount(), 23);
    m_panel.setStock("no such stock");
    EXPECT_EQ(m_panel.stockKey(), "hang_tag");
}

TEST_F(Labelling, OffersEveryStock) {
    const auto* stocks = m_panel.findChild<QComboBox*>();
    EXPECT_EQ(stocks->count(), static_cast<int>(labelStocks().size()));
    QSignalSpy chosen(&m_panel, &LabelPanel::stockChosen);
    m_panel.setStock("row_post");
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].toString(), QStringLiteral("row_post"));
}

TEST_F(Labelling, StartsWhereTheHalfUsedSheetIsFree) {
    start()->setValue(20);
    EXPECT_EQ(preview()->pageCount(), 2);
    EXPECT_EQ(preview()->accessibleDescription().section(QLatin1Char('\n'), 0, 0),
              QStringLiteral("AT17-1"));
    EXPECT_FALSE(preview()->accessibleDescription().contains(QStringLiteral("AT17-3")));
    m_panel.setStock("hang_tag");
    EXPECT_FALSE(start()->isEnabled());
    EXPECT_EQ(start()->value(), 1);
}

TEST_F(Labelling, AClickOnALabelStartsThere) {
    const LabelStock sheet = *labelStock("sheet_63x38_a4");
    const PaperPoint corner = sheet.cornerOf(4);
    Q_EMIT preview()->clickedAt(0, {corner.x + 10_mm, corner.y + 10_mm});
    EXPECT_EQ(start()->value(), 5);
    Q_EMIT preview()->clickedAt(0, {1_mm, 1_mm});
    EXPECT_EQ(start()->value(), 5);
}

TEST_F(Labelling, SaysWhyThereAreNoCutMarks) {
    EXPECT_FALSE(m_panel.cutMarks()->isEnabled());
    EXPECT_TRUE(m_panel.cutMarksWhy()->isVisible());
    EXPECT_TRUE(m_panel.cutMarksWhy()->text().contains(QStringLiteral("cut already")));
    EXPECT_EQ(m_panel.cutMarks()->toolTip(), m_panel.cutMarksWhy()->text());
    for (const LabelStock& stock : labelStocks()) {
        m_panel.setStock(stock.key);
        EXPECT_EQ(m_panel.cutMarks()->isEnabled(), stock.toCut) << stock.key;
        EXPECT_EQ(m_panel.cutMarksWhy()->isVisible(), !stock.toCut) << stock.key;
    }
}

TEST_F(Labelling, ShowsTheSheetAsWideAsThePlace) {
    const double wide = preview()->zoomPercent();
    preview()->showWholePage();
    EXPECT_GT(wide, 1.2 * preview()->zoomPercent());
    preview()->showPageWidth();
    EXPECT_DOUBLE_EQ(preview()->zoomPercent(), wide);
    m_panel.resize(1300, 700); // and follows it
    EXPECT_GT(preview()->zoomPercent(), wide);
}

TEST_F(Labelling, ListsWhatDoesNotFitAndWhy) {
    EXPECT_FALSE(m_panel.misfits()->isVisible());
    auto labels = labelsFor(3);
    labels[1].code = "AN-ENDLESS-CODE-THAT-NO-LABEL-HOLDS-AT-TWENTY-POINTS";
    m_panel.setLabels(labels);
    ASSERT_EQ(m_panel.misfits()->count(), 1);
    EXPECT_TRUE(m_panel.misfits()->isVisible());
    const QString sentence = m_panel.misfits()->item(0)->text();
    EXPECT_TRUE(sentence.contains(QStringLiteral("AN-ENDLESS-CODE")));
    EXPECT_TRUE(sentence.contains(QStringLiteral("the code is")));
    EXPECT_TRUE(sentence.contains(QStringLiteral("57.5 mm")) ||
                sentence.contains(QStringLiteral("57,5 mm")));
}

TEST_F(Labelling, PrintsWithoutWhatDoesNotFitOnlyWhenAskedTo) {
    auto labels = labelsFor(1);
    labels[0].cross = std::string(90, 'x');
    m_panel.setLabels(labels);
    EXPECT_EQ(preview()->pageCount(), 0);
    EXPECT_FALSE(m_panel.buttons()->printButton()->isEnabled());
    choice(QStringLiteral("without"))->click();
    EXPECT_EQ(preview()->pageCount(), 1);
    EXPECT_TRUE(m_panel.buttons()->printButton()->isEnabled());
    EXPECT_EQ(m_panel.misfits()->count(), 1);
}

TEST_F(Labelling, PutsARulerPageFirstWhenAskedTo) {
    choice(QStringLiteral("Ruler"))->click();
    EXPECT_EQ(preview()->pageCount(), 3);
    EXPECT_TRUE(preview()->accessibleDescription().contains(QStringLiteral("actual size")));
}

TEST_F(Labelling, SavesAPdfAndSaysWhere) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("field labels.pdf"));
    m_panel.buttons()->setPathChooser([&](QWidget*, const QString&) { return path; });
    QSignalSpy saved(m_panel.buttons(), &PrintButtons::saved);
    QTest::mouseClick(m_panel.buttons()->saveButton(), Qt::LeftButton);
    ASSERT_EQ(saved.count(), 1);
    EXPECT_TRUE(m_panel.buttons()->lastWord().contains(QStringLiteral("field labels.pdf")));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
}

TEST_F(Labelling, SaysWhyAPdfCouldNotBeSaved) {
    QTemporaryDir folder;
    m_panel.buttons()->setPathChooser([&](QWidget*, const QString&) {
        return folder.filePath(QStringLiteral("missing/labels.pdf"));
    });
    QSignalSpy saved(m_panel.buttons(), &PrintButtons::saved);
    m_panel.buttons()->saveButton()->click();
    EXPECT_EQ(saved.count(), 0);
    EXPECT_TRUE(m_panel.buttons()->lastWord().contains(QStringLiteral("could not be written")));
}

TEST_F(Labelling, NamesEveryControl) {
    for (const QWidget* widget : m_panel.findChildren<QWidget*>()) {
        const bool isControl = qobject_cast<const QComboBox*>(widget) != nullptr ||
                               qobject_cast<const QSpinBox*>(widget) != nullptr ||
                               qobject_cast<const QListWidget*>(widget) != nullptr ||
                               qobject_cast<const PagePreview*>(widget) != nullptr;
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        if (isControl) {
            EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->metaObject()->className();
        } else if (button != nullptr && button->focusPolicy() != Qt::NoFocus) {
            EXPECT_FALSE(button->accessibleName().isEmpty() && button->text().isEmpty());
        }
    }
}

TEST(PaperPanelTest, ShowsPagesWithWhatCouldNotBePrinted) {
    PaperPanel panel;
    Misfit misfit;
    misfit.name = "AT17-014";
    misfit.field = PrintedField::note;
    misfit.reason = MisfitReason::tooManyLines;
    misfit.linesNeeded = 9;
    misfit.linesOfRoom = 6;
    panel.setMatter({{Page{kA5, {}}}, {misfit}}, QStringLiteral("Walk"));
    EXPECT_EQ(panel.preview()->preview()->pageCount(), 1);
    const auto* list = panel.findChild<MisfitList*>();
    ASSERT_EQ(list->count(), 1);
    EXPECT_TRUE(list->item(0)->text().contains(QStringLiteral("needs 9 lines")));
    EXPECT_TRUE(panel.buttons()->saveButton()->isEnabled());
}

} // namespace
} // namespace pipwright::ui
