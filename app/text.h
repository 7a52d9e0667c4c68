#pragma once

#include <QString>

#include <string>

namespace pipwright::app {

/// Words of core as Qt has them.
inline QString text(const std::string& words) {
    return QString::fromStdString(words);
}

} // namespace pipwright::app
