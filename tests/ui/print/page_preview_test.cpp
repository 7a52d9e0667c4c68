#include "ui/print/page_preview.h"
#include "ui/print/preview_pane.h"

#include <QLabel>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

Page pageWith(const std::string& text) {
    return {kA5, {TextMark{{20_mm, 20_mm, 80_mm, 10_mm}, text, 12.0, false, Align::left}}};
}

class Previewing : public testing::Test {
  protected:
    void SetUp() override {
        m_preview.resize(400, 500);
        m_preview.setPages({pageWith("one"), pageWith("two"), pageWith("three")});
        m_preview.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&m_preview));
    }
    void press(Qt::Key key) { QTest::keyClick(&m_preview, key); }

    PagePreview m_preview;
};

TEST_F(Previewing, TurnsPagesByKeyAndStopsAtTheEnds) {
    press(Qt::Key_PageDown);
    EXPECT_EQ(m_preview.currentPage(), 1);
    press(Qt::Key_End);
    EXPECT_EQ(m_preview.currentPage(), 2);
    press(Qt::Key_PageDown);
    EXPECT_EQ(m_preview.currentPage(), 2);
    press(Qt::Key_Home);
    press(Qt::Key_PageUp);
    EXPECT_EQ(m_preview.currentPage(), 0);
}

TEST_F(Previewing, SaysWhichPageIsShownAndWhatStandsOnIt) {
    press(Qt::Key_PageDown);
    EXPECT_EQ(m_preview.accessibleName(), QStringLiteral("Preview, page 2 of 3"));
    EXPECT_EQ(m_preview.accessibleDescription(), QStringLiteral("two"));
    m_preview.setPages({});
    EXPECT_EQ(m_preview.accessibleName(), QStringLiteral("Preview: nothing to print"));
}

TEST_F(Previewing, ZoomsByKeyAndComesBackToTheWholePage) {
    const double whole = m_preview.zoomPercent();
    press(Qt::Key_Plus);
    EXPECT_NEAR(m_preview.zoomPercent(), whole * 1.25, 0.01);
    press(Qt::Key_Minus);
    EXPECT_NEAR(m_preview.zoomPercent(), whole, 0.01);
    press(Qt::Key_1);
    EXPECT_NEAR(m_preview.zoomPercent(), 100.0, 0.01);
    press(Qt::Key_0);
    EXPECT_NEAR(m_preview.zoomPercent(), whole, 0.01);
}

TEST_F(Previewing, TheWholePageFollowsTheWindow) {
    const double before = m_preview.zoomPercent();
    QSignalSpy changed(&m_preview, &PagePreview::changed);
    m_preview.resize(800, 1000);
    EXPECT_GE(changed.count(), 1);
    EXPECT_GT(m_preview.zoomPercent(), before * 1.5);
}

TEST_F(Previewing, ShowsInkWhereTheMarkIs) {
    m_preview.setPages({Page{kA5, {FillMark{{74_mm, 105_mm, 74_mm, 105_mm}, 100}}}});
    const QImage image = m_preview.viewport()->grab().toImage();
    const QPoint centre(image.width() / 2, image.height() / 2);
    EXPECT_LT(qGray(image.pixel(centre + QPoint(20, 20))), 40);
    EXPECT_GT(qGray(image.pixel(centre - QPoint(20, 20))), 240);
}

TEST_F(Previewing, TellsWhereItWasClicked) {
    PaperPoint place;
    QObject::connect(&m_preview, &PagePreview::clickedAt, &m_preview,
                     [&](int, PaperPoint where) { place = where; });
    QTest::mouseClick(m_preview.viewport(), Qt::LeftButton, {},
                      m_preview.viewport()->rect().center());
    EXPECT_NEAR(inMillimetres(place.x), 74.0, 1.0);
    EXPECT_NEAR(inMillimetres(place.y), 105.0, 1.0);
}

TEST_F(Previewing, StaysOnThePageWhenThePagesAreLaidAnew) {
    press(Qt::Key_End);
    m_preview.setPages({pageWith("one"), pageWith("two"), pageWith("three")});
    EXPECT_EQ(m_preview.currentPage(), 2);
    m_preview.setPages({pageWith("one")});
    EXPECT_EQ(m_preview.currentPage(), 0);
}

TEST(PreviewPane, NamesEveryButtonAndGreysTheOnesThatLeadNowhere) {
    PreviewPane pane;
    pane.setPages({pageWith("one"), pageWith("two")});
    const auto buttons = pane.findChildren<QToolButton*>();
    ASSERT_EQ(buttons.size(), 7);
    for (const QToolButton* button : buttons) {
        EXPECT_FALSE(button->accessibleName().isEmpty());
    }
    EXPECT_FALSE(buttons[0]->isEnabled());
    EXPECT_TRUE(buttons[1]->isEnabled());
    buttons[1]->click();
    EXPECT_EQ(pane.preview()->currentPage(), 1);
    EXPECT_TRUE(buttons[0]->isEnabled());
    EXPECT_FALSE(buttons[1]->isEnabled());
}

} // namespace
} // namespace pipwright::ui
