#pragma once

#include <QByteArray>
#include <QImage>
#include <QSize>
#include <QString>

namespace pipwright::ui {

/// The picture, no larger than `most` device pixels, its shape kept; null when it cannot be read or
/// would need more memory than a photo has a right to. May be called on any thread.
QImage decodedPhoto(const QByteArray& bytes, const QString& mediaType, QSize most);

} // namespace pipwright::ui
