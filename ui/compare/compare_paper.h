#pragma once

#include "core/exchange/print/table_page.h"
#include "ui/compare/compare_model.h"

namespace pipwright::ui {

/// The comparison as a table for paper: what is compared down, the trees across, the same words and
/// drawings as on screen, with what the marks mean below. The model must outlive the table.
PrintedTable comparedOnPaper(const CompareModel& model, Date today, const QString& bookName);

} // namespace pipwright::ui
