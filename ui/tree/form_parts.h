#pragma once

#include <QString>
#include <QVBoxLayout>
#include <QWidget>

#include <string_view>

namespace pipwright::ui {

/// The key of a word as chips know it.
inline QString keyText(std::string_view key) {
    return QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size()));
}

/// Lays the fields of a short form under each other.
template <typename... Widgets>
void stack(QWidget* form, Widgets*... widgets) {
    auto* layout = new QVBoxLayout(form);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    (layout->addWidget(widgets), ...);
}

} // namespace pipwright::ui
