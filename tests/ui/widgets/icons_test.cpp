#include "tests/ui/widgets/look.h"
#include "ui/widgets/icons.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

namespace pipwright::ui {
namespace {

int inkedPixels(const QImage& image) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            count += qAlpha(image.pixel(x, y)) > 96 ? 1 : 0;
        }
    }
    return count;
}

TEST(Icons, EveryOneIsDrawnAtSixteenPixels) {
    dress();
    std::vector<QImage> seen;
    for (std::size_t i = 0; i < kIconCount; ++i) {
        const QImage image = icon(static_cast<IconName>(i)).pixmap(QSize(16, 16), 1.0).toImage();
        ASSERT_EQ(image.size(), QSize(16, 16));
        EXPECT_GT(inkedPixels(image), 12) << i;
        EXPECT_LT(inkedPixels(image), 160) << i;
        for (std::size_t other = 0; other < seen.size(); ++other) {
            EXPECT_NE(seen[other], image) << i << " looks like " << other;
        }
        seen.push_back(image);
    }
}

TEST(Icons, WearTheThemesInk) {
    const QByteArray dark = iconDrawing(IconName::leaf, darkTheme());
    EXPECT_TRUE(dark.contains(darkTheme().ink.name().toLatin1()));
    EXPECT_TRUE(dark.contains(darkTheme().leaf.name().toLatin1()));
    EXPECT_FALSE(dark.toLower().contains(lightTheme().ink.name().toLatin1()));
}

TEST(Icons, FollowTheApplication) {
    dress(ThemeChoice::light);
    const QIcon one = icon(IconName::rows);
    const QImage light = one.pixmap(QSize(24, 24), 1.0).toImage();
    dress(ThemeChoice::dark);
    EXPECT_NE(one.pixmap(QSize(24, 24), 1.0).toImage(), light);
    dress(ThemeChoice::light);
    EXPECT_EQ(one.pixmap(QSize(24, 24), 1.0).toImage(), light);
}

TEST(Icons, SharpAtTwiceTheScale) {
    const QPixmap picture = icon(IconName::rows).pixmap(QSize(16, 16), 2.0);
    EXPECT_EQ(picture.size(), QSize(32, 32));
    EXPECT_DOUBLE_EQ(picture.devicePixelRatio(), 2.0);
    const QImage twice = icon(IconName::rows).pixmap(QSize(32, 32), 1.0).toImage();
    EXPECT_EQ(picture.toImage().convertToFormat(QImage::Format_ARGB32),
              twice.convertToFormat(QImage::Format_ARGB32));
}

class IconSheet : public QWidget {
  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.fillRect(rect(), themeOf(this).paper);
        for (int i = 0; i < static_cast<int>(kIconCount); ++i) {
            const QIcon one = icon(static_cast<IconName>(i));
            const QPoint corner(10 + (i % 11) * 64, 10 + (i / 11) * 44);
            one.paint(&painter, QRect(corner, QSize(16, 16)));
            one.paint(&painter, QRect(corner + QPoint(22, -4), QSize(32, 32)));
        }
    }
};

TEST(Icons, SheetForEyes) {
    IconSheet sheet;
    sheet.resize(714, 186);
    lookAt(sheet, QStringLiteral("icons"));
    EXPECT_EQ(sheet.width(), 714);
}

} // namespace
} // namespace pipwright::ui
