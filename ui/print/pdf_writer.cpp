#include "ui/print/pdf_writer.h"

#include "ui/print/page_painter.h"

#include <QBuffer>
#include <QDir>
#include <QPageLayout>
#include <QPageSize>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <QSaveFile>

namespace pipwright::ui {

namespace {

constexpr int kDotsPerInch = 1200;

/// A page that lies across is a standing size turned, so that a printer knows its paper.
QPageLayout layoutOf(PaperSize size) {
    const bool isAcross = size.width > size.height;
    const PaperSize standing = isAcross ? size.turned() : size;
    const QSizeF mm(inMillimetres(standing.width), inMillimetres(standing.height));
    return {QPageSize(mm, QPageSize::Millimeter, {}, QPageSize::ExactMatch),
            isAcross ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF(0, 0, 0, 0),
            QPageLayout::Millimeter};
}

Problem noPages() {
    return {ProblemCode::badInput, "There is nothing to print.",
            "Choose at least one tree whose label fits the stock.", ""};
}

Problem cannotWrite(const QString& path, const QString& why) {
    return {ProblemCode::unwritable, "The PDF could not be written (" + why.toStdString() + ").",
            "Choose another folder or make room on the disk.",
            QDir::toNativeSeparators(path).toStdString()};
}

bool paintAll(QPagedPaintDevice& device, int dotsPerInch, std::span<const Page> pages) {
    QPainter painter;
    if (!painter.begin(&device)) {
        return false;
    }
    const PageScale scale = PageScale::forResolution(dotsPerInch);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0) {
            if (pages[i].size != pages[i - 1].size) {
                device.setPageLayout(layoutOf(pages[i].size));
            }
            if (!device.newPage()) {
                return false;
            }
        }
        paintPage(painter, pages[i], scale);
    }
    return painter.end();
}

bool paintPdf(QIODevice& target, std::span<const Page> pages, const QString& title) {
    QPdfWriter writer(&target);
    writer.setResolution(kDotsPerInch);
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Pipwright"));
    writer.setPageLayout(layoutOf(pages.front().size));
    return paintAll(writer, kDotsPerInch, pages);
}

} // namespace

Outcome writePdf(std::span<const Page> pages, const QString& title, const QString& path) {
    if (pages.empty()) {
        return noPages();
    }
    // Drawn in memory first: whoever draws does not notice a full disk, the one write below does.
    QByteArray content;
    QBuffer buffer(&content);
    buffer.open(QIODevice::WriteOnly);
    if (!paintPdf(buffer, pages, title)) {
        return Problem{ProblemCode::internal, "The pages could not be drawn.",
                       "Print fewer labels at a time.", ""};
    }
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size() ||
        !file.flush() || !file.commit()) {
        return cannotWrite(path, file.errorString());
    }
    return {};
}

Outcome printPages(std::span<const Page> pages, QPrinter& printer) {
    if (pages.empty()) {
        return noPages();
    }
    printer.setFullPage(true); // from the corner of the paper, not of what can be printed on
    printer.setPageLayout(layoutOf(pages.front().size));
    if (!paintAll(printer, printer.resolution(), pages)) {
        return Problem{ProblemCode::unwritable, "The printer did not take the pages.",
                       "Look whether it is switched on and has paper, or save a PDF.",
                       printer.printerName().toStdString()};
    }
    return {};
}

} // namespace pipwright::ui
