#pragma once

#include "core/exchange/print/page.h"
#include "core/units/result.h"

#include <QString>

#include <span>

class QPrinter;

namespace pipwright::ui {

/// Writes the pages as one PDF, drawn at 1200 dots per inch and exact from the top left corner
/// (the page box itself is rounded to whole points, up to 0.18 mm, at the right and bottom).
/// The file appears whole or not at all. badInput without pages, unwritable for the rest.
Outcome writePdf(std::span<const Page> pages, const QString& title, const QString& path);

/// Sends the pages to a printer that the user has chosen. The paper size is set from the pages.
Outcome printPages(std::span<const Page> pages, QPrinter& printer);

} // namespace pipwright::ui
