#include "core/exchange/print/ruler_page.h"
#include "tests/ui/print/printed_sheet.h"
#include "ui/print/page_painter.h"

#include <QFontInfo>
#include <QPainter>

#define ZX_USE_UTF8 // results as UTF-8, not as wide characters
#include <ZXing/ReadBarcode.h>
#include <csignal>
#include <gtest/gtest.h>
#include <sys/resource.h>

namespace pipwright::ui {
namespace {

constexpr double kAllowedMillimetres = 0.2;

std::vector<Page> sheetOf(std::string_view stock, int labels) {
    const FontMeasure measure;
    auto placed = placeLabels(labelsFor(labels), *labelStock(stock), {}, measure);
    EXPECT_TRUE(placed.ok());
    EXPECT_TRUE(placed->misfits.empty());
    return placed->pages;
}

ZXing::Result readCode(const QImage& page, const CodeMark& mark) {
    const int side = qRound(dots(labelCodeSide(mark.module)));
    const QImage cut =
        page.copy(qRound(dots(mark.corner.x)), qRound(dots(mark.corner.y)), side, side);
    const ZXing::ImageView view(cut.constBits(), cut.width(), cut.height(), ZXing::ImageFormat::Lum,
                                static_cast<int>(cut.bytesPerLine()));
    ZXing::DecodeHints hints;
    hints.setFormats(ZXing::BarcodeFormat::QRCode);
    return ZXing::ReadBarcode(view, hints);
}

TEST(PrintedSheet, EveryCodeOfAFullSheetReadsAsItsPlantsLabelCode) {
    for (const char* stock : {"sheet_63x38_a4", "sheet_51x25_letter", "branch_tags_a4"}) {
        const int cells = labelStock(stock)->cells();
        const auto labels = labelsFor(cells);
        const auto pages = sheetOf(stock, cells);
        const PrintedSheet sheet(pages);
        ASSERT_EQ(sheet.images.size(), 1U);
        std::size_t read = 0;
        for (const Mark& mark : pages[0].marks) {
            if (const auto* code = std::get_if<CodeMark>(&mark)) {
                const ZXing::Result result = readCode(sheet.images[0], *code);
                ASSERT_TRUE(result.isValid()) << stock << ", label " << read;
                EXPECT_EQ(result.text(), labels[read].labelCode);
                EXPECT_EQ(result.ecLevel(), "Q");
                ++read;
            }
        }
        EXPECT_EQ(read, static_cast<std::size_t>(cells));
    }
}

/// Pencil fields have thin frames at known places: all four sides of every one are measured.
void expectFramesInPlace(const Page& page, const QImage& image) {
    int measured = 0;
    for (const Mark& mark : page.marks) {
        const auto* frame = std::get_if<FrameMark>(&mark);
        if (frame == nullptr) {
            continue;
        }
        const PaperBox& box = frame->box;
        const Micrometres half = frame->thickness / 2;
        const Micrometres midX = box.x + box.width / 2;
        const Micrometres midY = box.y + box.height / 2;
        const auto near = [&](Micrometres expected, Micrometres across, bool isHorizontal) {
            EXPECT_NEAR(inkNear(image, expected, across, isHorizontal), inMillimetres(expected),
                        kAllowedMillimetres);
        };
        near(box.x + half, midY, true);
        near(box.right() - half, midY, true);
        near(box.y + half, midX, false);
        near(box.bottom() - half, midX, false);
        ++measured;
    }
    EXPECT_GT(measured, 0);
}

TEST(PrintedSheet, LabelsLieWithinTwoTenthsOfAMillimetreFromTheTopLeft) {
    for (const char* stock : {"sheet_63x38_a4", "sheet_67x25_letter", "pot_labels_a4", "hang_tag",
                              "loop_label", "label_51x25", "row_post"}) {
        SCOPED_TRACE(stock);
        const auto pages = sheetOf(stock, labelStock(stock)->cells());
        const PrintedSheet sheet(pages);
        ASSERT_EQ(sheet.images.size(), 1U);
        expectFramesInPlace(pages[0], sheet.images[0]);
    }
}

TEST(PrintedSheet, ThePageIsAsLargeAsItsStock) {
    for (const char* stock : {"sheet_63x38_a4", "pot_labels_a4", "hang_tag", "row_post"}) {
        const auto pages = sheetOf(stock, 1);
        const PrintedSheet sheet(pages);
        // The page box is in whole points: up to half a point off, and one dot of rounding up.
        EXPECT_NEAR(sheet.images[0].width(), dots(pages[0].size.width), 600.0 / 144.0 + 1.5);
        EXPECT_NEAR(sheet.images[0].height(), dots(pages[0].size.height), 600.0 / 144.0 + 1.5);
    }
}

TEST(PrintedSheet, TheRulerIsAHundredMillimetresLong) {
    const FontMeasure measure;
    const std::vector<Page> pages{rulerPage(kA4, {}, measure)};
    const PrintedSheet sheet(pages);
    for (const bool isAcross : {true, false}) {
        // Between the line of the ruler and the end of the shortest ticks.
        const Micrometres zero = isAcross ? 15_mm : 26_mm;
        const double first = inkNear(sheet.images[0], zero, 15_mm + 4.5_mm, isAcross);
        const double last = inkNear(sheet.images[0], zero + 100_mm, 15_mm + 4.5_mm, isAcross);
        EXPECT_NEAR(last - first, 100.0, 0.1);
    }
}

TEST(PrintedSheet, PagesOfDifferentSizesKeepTheirSizes) {
    const PrintedSheet sheet({Page{kA5, {}}, Page{kA4, {}}, Page{kA4.turned(), {}}});
    ASSERT_EQ(sheet.images.size(), 3U);
    EXPECT_NEAR(sheet.images[0].width(), dots(148_mm), 6.0);
    EXPECT_NEAR(sheet.images[1].width(), dots(210_mm), 6.0);
    EXPECT_NEAR(sheet.images[2].width(), dots(297_mm), 6.0);
}

/// Columns with ink, as millimetres: leftmost and rightmost.
std::pair<double, double> inkSpan(const QImage& image) {
    int left = image.width();
    int right = -1;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (qGray(image.pixel(x, y)) < 128) {
                left = std::min(left, x);
                right = std::max(right, x);
            }
        }
    }
    return {left * 25.4 / PrintedSheet::kDotsPerInch,
            (right + 1) * 25.4 / PrintedSheet::kDotsPerInch};
}

TEST(PrintedText, IsAsWideOnPaperAsItWasMeasured) {
    const FontMeasure measure;
    const std::string text = "HHHH AT17-014 Ash Tarn HHHH";
    for (const bool bold : {false, true}) {
        const Micrometres width = measure.width(text, 12.0, bold);
        const Page page{{150_mm, 20_mm},
                        {TextMark{{20_mm, 5_mm, 100_mm, 10_mm}, text, 12.0, bold, Align::left}}};
        const auto [left, right] = inkSpan(PrintedSheet({page}).images.at(0));
        // An H has a little air on both sides: under a tenth of its size.
        EXPECT_GE(left, 20.0);
        EXPECT_LE(left, 20.5);
        EXPECT_LE(right, 20.0 + inMillimetres(width));
        EXPECT_GE(right, 20.0 + inMillimetres(width) - 0.5);
    }
}

TEST(PrintedText, StandsWhereItsAlignmentSays) {
    const FontMeasure measure;
    const double width = inMillimetres(measure.width("HHHH", 12.0, false));
    const auto spanOf = [](Align align) {
        const Page page{{150_mm, 20_mm},
                        {TextMark{{20_mm, 5_mm, 100_mm, 10_mm}, "HHHH", 12.0, false, align}}};
        return inkSpan(PrintedSheet({page}).images.at(0));
    };
    EXPECT_NEAR(spanOf(Align::left).first, 20.0, 0.5);
    EXPECT_NEAR(spanOf(Align::right).second, 120.0, 0.5);
    EXPECT_NEAR(spanOf(Align::centre).first, 70.0 - width / 2.0, 0.5);
}

TEST(PrintedText, CapitalsStandMidwayInTheirBox) {
    const Page page{{60_mm, 20_mm},
                    {TextMark{{5_mm, 5_mm, 50_mm, 10_mm}, "H", 24.0, true, Align::left}}};
    const QImage image = PrintedSheet({page}).images.at(0);
    const auto [top, bottom] = inkSpan(image.transformed(QTransform().rotate(-90)));
    EXPECT_NEAR((top + bottom) / 2.0, 10.0, kAllowedMillimetres);
}

TEST(PrintedText, IsSetInOurFace) {
    EXPECT_EQ(QFontInfo(paperFont(false)).family(), QStringLiteral("Noto Sans"))
        << "fonts-noto-core is needed";
    EXPECT_TRUE(QFontInfo(paperFont(true)).bold());
}

TEST(WritePdf, SaysWhatIsWrongAndLeavesNoFile) {
    QTemporaryDir folder;
    const std::vector<Page> pages{Page{kA5, {}}};
    const QString missing = folder.filePath(QStringLiteral("no/such/folder.pdf"));
    const Outcome outcome = writePdf(pages, QStringLiteral("x"), missing);
    ASSERT_FALSE(outcome.ok());
    EXPECT_EQ(outcome.problem().code, ProblemCode::unwritable);
    EXPECT_FALSE(outcome.problem().remedy.empty());
    EXPECT_FALSE(QFile::exists(missing));

    EXPECT_FALSE(writePdf(pages, QStringLiteral("x"), folder.path()).ok());

    const QString empty = folder.filePath(QStringLiteral("empty.pdf"));
    const Outcome nothing = writePdf({}, QStringLiteral("x"), empty);
    ASSERT_FALSE(nothing.ok());
    EXPECT_EQ(nothing.problem().code, ProblemCode::badInput);
    EXPECT_TRUE(QDir(folder.path()).isEmpty());
}

TEST(WritePdf, LeavesTheOldFileWhenThereIsNoRoomForTheNew) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("labels.pdf"));
    QFile old(path);
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("the old one");
    old.close();
    // As on a full disk: not a byte beyond the first 512 of any file can be written.
    rlimit before{};
    ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &before), 0);
    const rlimit low{512, before.rlim_max};
    const auto handler = std::signal(SIGXFSZ, SIG_IGN);
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &low), 0);
    const Outcome outcome = writePdf(std::vector<Page>{Page{kA5, {}}}, QStringLiteral("x"), path);
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &before), 0);
    std::signal(SIGXFSZ, handler);
    ASSERT_FALSE(outcome.ok());
    EXPECT_EQ(outcome.problem().code, ProblemCode::unwritable);
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).size(), 1);
    ASSERT_TRUE(old.open(QIODevice::ReadOnly));
    EXPECT_EQ(old.readAll(), QByteArray("the old one"));
}

} // namespace
} // namespace pipwright::ui
