#include "ui/compare/compare_photos.h"

#include "ui/book/open_book.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QImageReader>
#include <QPainter>
#include <QSvgRenderer>
#include <QThreadPool>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr std::size_t kMostPhotos = 3;
constexpr int kMostMegabytes = 256;
constexpr int kWidest = 4; ///< times its height

QImage drawn(const QByteArray& bytes, int side) {
    QSvgRenderer renderer(bytes);
    if (!renderer.isValid() || renderer.defaultSize().isEmpty()) {
        return {};
    }
    const QSize size =
        renderer.defaultSize().scaled(side * kWidest, side, Qt::KeepAspectRatio).expandedTo({1, 1});
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    renderer.render(&painter);
    return image;
}

QImage decoded(const QByteArray& bytes, const std::string& mediaType, int side) {
    if (mediaType == "image/svg+xml") {
        return drawn(bytes, side);
    }
    QBuffer buffer;
    buffer.setData(bytes);
    if (!buffer.open(QIODevice::ReadOnly)) {
        return {};
    }
    QImageReader::setAllocationLimit(kMostMegabytes);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    if (reader.size().isValid()) {
        reader.setScaledSize(
            reader.size().scaled(side * kWidest, side, Qt::KeepAspectRatio).expandedTo({1, 1}));
    }
    return reader.read();
}

std::vector<QImage> readFrom(const Store& store, const std::vector<Photo>& photos, int side) {
    std::vector<QImage> images;
    for (const Photo& photo : photos) {
        const auto bytes = store.photoBytes(photo.sha256);
        if (!bytes) {
            continue;
        }
        QImage image = decoded(QByteArray::fromStdString(*bytes), photo.mediaType, side);
        if (!image.isNull()) {
            images.push_back(std::move(image));
        }
    }
    return images;
}

} // namespace

void readComparedPhotos(const OpenBook& book, const std::vector<Photo>& photos, int side,
                        const std::function<void(std::vector<QImage>)>& done) {
    std::vector<Photo> wanted = photos;
    std::stable_sort(wanted.begin(), wanted.end(),
                     [](const Photo& a, const Photo& b) { return a.taken > b.taken; });
    wanted.resize(std::min(wanted.size(), kMostPhotos));
    if (wanted.empty()) {
        return;
    }
    if (!book.openReader()) {
        done(readFrom(book.store(), wanted, side));
        return;
    }
    QThreadPool::globalInstance()->start([wanted, side, done, openReader = book.openReader()] {
        const auto reader = openReader();
        if (!reader) {
            return;
        }
        QMetaObject::invokeMethod(
            QCoreApplication::instance(),
            [done, images = readFrom(**reader, wanted, side)] { done(images); },
            Qt::QueuedConnection);
    });
}

} // namespace pipwright::ui
