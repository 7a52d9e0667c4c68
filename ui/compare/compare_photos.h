#pragma once

#include "core/orchard/orchard.h"

#include <QImage>

#include <functional>
#include <vector>

namespace pipwright::ui {

class OpenBook;

/// Reads the newest photos small, in the background where the book can be read twice, and hands
/// them over on the window's thread. Photos that cannot be read are left out.
void readComparedPhotos(const OpenBook& book, const std::vector<Photo>& photos, int side,
                        const std::function<void(std::vector<QImage>)>& done);

} // namespace pipwright::ui
