#pragma once

#include "core/statistics/chart_spec.h"
#include "core/units/result.h"

#include <QSize>
#include <QString>

#include <vector>

namespace pipwright::ui {

/// Writes the chart to a file, always in the light theme: "png" at twice the size, "svg", or "csv",
/// by the ending of the name. Another ending, or a file that cannot be written, is a Problem.
Outcome exportChart(const ChartSpec& spec, const std::vector<bool>& shown, QSize size,
                    const QString& path);

} // namespace pipwright::ui
