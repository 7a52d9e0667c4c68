#pragma once

#include "core/exchange/print/table_page.h"
#include "ui/compare/compare_model.h"

namespace pipwright::ui {

/// How high the drawings of a row of Compare stand on paper; 0 for rows that are words alone.
Micrometres drawingHeightOnPaper(const CompareModel& model, int row);

/// The same pictures as on screen, in ink: the windows of all crop years, every score, kept fruit
/// by its days, and means on the row's own scale. `column` counts the trees from 0.
std::vector<Mark> drawnOnPaper(const CompareModel& model, int row, int column, const PaperBox& box);

} // namespace pipwright::ui
