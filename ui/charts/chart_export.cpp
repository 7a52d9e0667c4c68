#include "ui/charts/chart_export.h"

#include "ui/charts/chart_drawing.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QSaveFile>
#include <QSvgGenerator>

namespace pipwright::ui {

namespace {

constexpr int kScale = 2;
constexpr double kTitleHeight = 24;

/// The translator's place for the words of this file.
class ChartExport {
    Q_DECLARE_TR_FUNCTIONS(ChartExport)
};

void paintWithTitle(QPainter& painter, const ChartSpec& spec, const std::vector<bool>& shown,
                    QSize size) {
    const Theme& theme = lightTheme();
    painter.fillRect(QRect(QPoint(0, 0), size), theme.surface);
    painter.setFont(theme.strongFont());
    painter.setPen(theme.ink);
    painter.drawText(QRectF(8, 0, size.width() - 16, kTitleHeight),
                     Qt::AlignLeft | Qt::AlignVCenter, QString::fromStdString(spec.title));
    painter.translate(0, kTitleHeight);
    const ChartDrawing drawing(spec, shown, QSizeF(size.width(), size.height() - kTitleHeight),
                               theme);
    drawing.paint(painter, std::nullopt);
}

QByteArray asPng(const ChartSpec& spec, const std::vector<bool>& shown, QSize size) {
    QImage image(size * kScale, QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(kScale);
    QPainter painter(&image);
    paintWithTitle(painter, spec, shown, size);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    image.save(&buffer, "PNG");
    return bytes;
}

QByteArray asSvg(const ChartSpec& spec, const std::vector<bool>& shown, QSize size) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(size);
    generator.setViewBox(QRect(QPoint(0, 0), size));
    generator.setTitle(QString::fromStdString(spec.title));
    generator.setDescription(QString::fromStdString(spec.summary));
    QPainter painter(&generator);
    paintWithTitle(painter, spec, shown, size);
    painter.end();
    return bytes;
}

} // namespace

Outcome exportChart(const ChartSpec& spec, const std::vector<bool>& shown, QSize size,
                    const QString& path) {
    const QString ending = QFileInfo(path).suffix().toLower();
    QByteArray bytes;
    if (ending == QStringLiteral("png")) {
        bytes = asPng(spec, shown, size);
    } else if (ending == QStringLiteral("svg")) {
        bytes = asSvg(spec, shown, size);
    } else if (ending == QStringLiteral("csv")) {
        bytes = QByteArray::fromStdString(spec.toTable().csv());
    } else {
        return Problem{
            ProblemCode::badInput,
            ChartExport::tr("A chart cannot be written as “%1”.").arg(ending).toStdString(),
            ChartExport::tr("End the name with .png, .svg or .csv.").toStdString(),
            path.toStdString()};
    }
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit()) {
        return Problem{ProblemCode::unwritable,
                       ChartExport::tr("The chart could not be written: %1.")
                           .arg(file.errorString())
                           .toStdString(),
                       ChartExport::tr("Choose a folder you may write in.").toStdString(),
                       path.toStdString()};
    }
    return {};
}

} // namespace pipwright::ui
