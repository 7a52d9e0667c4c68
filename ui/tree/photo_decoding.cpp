#include "ui/tree/photo_decoding.h"

#include <QBuffer>
#include <QImageReader>
#include <QPainter>
#include <QSvgRenderer>

namespace pipwright::ui {

namespace {

constexpr qint64 kMostPixels = 120'000'000; ///< of the file, before it is made smaller
constexpr int kMostMegabytes = 256;

QImage decodedSvg(const QByteArray& bytes, QSize most) {
    QSvgRenderer renderer(bytes);
    if (!renderer.isValid()) {
        return {};
    }
    QSize size = renderer.defaultSize();
    if (size.isEmpty()) {
        size = most;
    }
    size.scale(most, Qt::KeepAspectRatio);
    if (size.isEmpty()) {
        return {};
    }
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    renderer.setAspectRatioMode(Qt::KeepAspectRatio);
    renderer.render(&painter);
    return image;
}

} // namespace

QImage decodedPhoto(const QByteArray& bytes, const QString& mediaType, QSize most) {
    if (mediaType == QStringLiteral("image/svg+xml")) {
        return decodedSvg(bytes, most);
    }
    QBuffer buffer;
    buffer.setData(bytes);
    if (!buffer.open(QIODevice::ReadOnly)) {
        return {};
    }
    QImageReader::setAllocationLimit(kMostMegabytes);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (!size.isValid() || qint64{size.width()} * size.height() > kMostPixels) {
        return {};
    }
    if (size.width() > most.width() || size.height() > most.height()) {
        reader.setScaledSize(size.scaled(most, Qt::KeepAspectRatio).expandedTo({1, 1}));
    }
    return reader.read();
}

} // namespace pipwright::ui
