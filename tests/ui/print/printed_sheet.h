#pragma once

#include "core/exchange/print/label_sheet.h"
#include "core/units/uuid.h"
#include "ui/print/paper_font.h"
#include "ui/print/pdf_writer.h"

#include <QDir>
#include <QImage>
#include <QImageReader>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <vector>

namespace pipwright::ui {

inline std::vector<LabelText> labelsFor(int count) {
    std::vector<LabelText> labels;
    for (int i = 1; i <= count; ++i) {
        const std::string number = std::to_string(i);
        labels.push_back({"AT17-" + number,
                          "Ash Tarn x Russet Moor",
                          "2017",
                          "Upper, 3/" + number,
                          Uuid::named("plant " + number).labelCode(),
                          {}});
    }
    return labels;
}

/// A PDF as a printer would see it: 600 dots per inch, grey.
class PrintedSheet {
  public:
    static constexpr int kDotsPerInch = 600;

    explicit PrintedSheet(const std::vector<Page>& pages) {
        QImageReader::setAllocationLimit(512); // MB: a sheet at 600 dots per inch
        const QString pdf = m_folder.filePath(QStringLiteral("sheet.pdf"));
        const Outcome written = writePdf(pages, QStringLiteral("Sheet"), pdf);
        EXPECT_TRUE(written.ok());
        const int fault = QProcess::execute(QStringLiteral("pdftoppm"),
                                            {QStringLiteral("-gray"), QStringLiteral("-r"),
                                             QString::number(kDotsPerInch), pdf,
                                             m_folder.filePath(QStringLiteral("page"))});
        EXPECT_EQ(fault, 0) << "pdftoppm (poppler-utils) is needed";
        const QDir folder(m_folder.path());
        for (const QString& name :
             folder.entryList({QStringLiteral("*.pgm")}, QDir::Files, QDir::Name)) {
            images.push_back(
                QImage(folder.filePath(name)).convertToFormat(QImage::Format_Grayscale8));
        }
    }

    std::vector<QImage> images;

  private:
    QTemporaryDir m_folder;
};

inline double dots(Micrometres length) {
    return inMillimetres(length) / 25.4 * PrintedSheet::kDotsPerInch;
}

/// Where the ink of a thin line lies along a scan, in millimetres from the edge of the page: its
/// middle, looked for within 2 mm of where it should be. -1 when there is no ink.
inline double inkNear(const QImage& image, Micrometres expected, Micrometres across,
                      bool isHorizontalScan) {
    const int from = qRound(dots(expected - 2_mm));
    const int to = qRound(dots(expected + 2_mm));
    const int other = qRound(dots(across));
    double weight = 0.0;
    double moment = 0.0;
    for (int i = std::max(from, 0); i <= to; ++i) {
        const QPoint place = isHorizontalScan ? QPoint(i, other) : QPoint(other, i);
        if (!image.valid(place)) {
            break;
        }
        const double ink = 255.0 - qGray(image.pixel(place));
        weight += ink;
        moment += ink * (i + 0.5);
    }
    return weight > 0.0 ? moment / weight * 25.4 / PrintedSheet::kDotsPerInch : -1.0;
}

} // namespace pipwright::ui
