#include "core/statistics/chart_spec.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <cstdio>

namespace pipwright {

namespace {

using Days = std::chrono::sys_days;

Days toDays(double value) {
    return Days{std::chrono::days{static_cast<int>(std::floor(value))}};
}

double toNumber(Days day) {
    return static_cast<double>(day.time_since_epoch().count());
}

Days mondayOf(Days day) {
    return day - (std::chrono::weekday{day} - std::chrono::Monday);
}

/// ISO 8601: the week belongs to the year that holds its Thursday.
ChartWeek weekOfMonday(Days monday) {
    const Days thursday = monday + std::chrono::days{3};
    const std::chrono::year_month_day date{thursday};
    const Days newYear{date.year() / std::chrono::January / 1};
    const auto dayOfYear = (thursday - newYear).count();
    return {toNumber(monday), static_cast<int>(date.year()), static_cast<int>(dayOfYear / 7 + 1)};
}

std::string formatted(const char* pattern, auto... values) {
    std::array<char, 64> buffer{};
    const int length = std::snprintf(buffer.data(), buffer.size(), pattern, values...);
    return {buffer.data(), static_cast<std::size_t>(std::clamp(length, 0, 63))};
}

std::string dayText(double value) {
    const Days day = toDays(value);
    const std::chrono::year_month_day date{day};
    const ChartWeek week = weekOfMonday(mondayOf(day));
    return formatted("%04d-%02u-%02u (%04d-W%02d)", static_cast<int>(date.year()),
                     static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                     week.year, week.week);
}

std::string quoted(const std::string& field) {
    if (field.find_first_of("\",\r\n") == std::string::npos) {
        return field;
    }
    std::string text = "\"";
    for (const char letter : field) {
        text += letter;
        if (letter == '"') {
            text += '"';
        }
    }
    return text + "\"";
}

void appendLine(std::string& text, const std::vector<std::string>& fields) {
    for (std::size_t i = 0; i < fields.size(); ++i) {
        text += (i == 0 ? "" : ",") + quoted(fields[i]);
    }
    text += "\r\n";
}

std::string heading(const ChartAxis& axis, const char* fallback) {
    const std::string title = axis.title.empty() ? fallback : axis.title;
    return axis.unit.empty() ? title : title + " (" + axis.unit + ")";
}

/// Grows with every finite number it is shown.
class Range {
  public:
    void include(double value) {
        if (std::isfinite(value)) {
            m_low = std::min(m_low, value);
            m_high = std::max(m_high, value);
        }
    }
    void include(const std::optional<ChartInterval>& interval) {
        if (interval) {
            include(interval->low);
            include(interval->high);
        }
    }
    [[nodiscard]] ChartInterval within(const ChartAxis& axis) const {
        ChartInterval range{0, 1};
        if (m_low <= m_high) {
            const double air = m_low < m_high ? 0.04 * (m_high - m_low) : 0.5;
            range = {m_low - air, m_high + air};
        }
        range.low = axis.low.value_or(range.low);
        range.high = axis.high.value_or(range.high);
        if (!(range.low < range.high)) {
            range.high = range.low + 1;
        }
        return range;
    }

  private:
    double m_low = HUGE_VAL;
    double m_high = -HUGE_VAL;
};

bool hasNoX(SeriesKind kind) {
    return kind == SeriesKind::horizontalRule;
}
bool spansX(SeriesKind kind) {
    return kind == SeriesKind::spans || kind == SeriesKind::shade;
}
bool hasNoY(SeriesKind kind) {
    return spansX(kind) || kind == SeriesKind::verticalRule;
}

std::vector<std::string> rowOf(const ChartSpec& spec, const ChartSeries& series,
                               const ChartMark& mark) {
    const auto end = [](const ChartAxis& axis, const std::optional<ChartInterval>& interval,
                        double ChartInterval::*side) {
        return interval ? axisValueText(axis, (*interval).*side) : std::string();
    };
    std::string label = mark.label;
    if (series.kind == SeriesKind::spans && mark.y >= 0 &&
        mark.y < static_cast<double>(spec.lanes.size())) {
        const std::string& lane = spec.lanes[static_cast<std::size_t>(mark.y)];
        label = label.empty() ? lane : lane + ", " + label;
    }
    const bool withY = !hasNoY(series.kind) && series.kind != SeriesKind::band;
    const bool withX = !hasNoX(series.kind) && !spansX(series.kind);
    return {series.name,
            label,
            withX ? axisValueText(spec.xAxis, mark.x) : std::string(),
            end(spec.xAxis, mark.xInterval, &ChartInterval::low),
            end(spec.xAxis, mark.xInterval, &ChartInterval::high),
            withY ? axisValueText(spec.yAxis, mark.y) : std::string(),
            end(spec.yAxis, mark.yInterval, &ChartInterval::low),
            end(spec.yAxis, mark.yInterval, &ChartInterval::high),
            mark.uncertain ? "yes" : "",
            mark.tooltip};
}

} // namespace

std::string ChartTable::csv() const {
    std::string text;
    appendLine(text, header);
    for (const auto& row : rows) {
        appendLine(text, row);
    }
    return text;
}

bool ChartSpec::isEmpty() const {
    return std::all_of(series.begin(), series.end(),
                       [](const ChartSeries& one) { return one.marks.empty(); });
}

ChartTable ChartSpec::toTable() const {
    const std::string x = heading(xAxis, "x");
    const std::string y = heading(yAxis, "y");
    ChartTable table{{"series", "label", x, x + " from", x + " to", y, y + " from", y + " to",
                      "uncertain", "remark"},
                     {}};
    for (const auto& one : series) {
        for (const auto& mark : one.marks) {
            table.rows.push_back(rowOf(*this, one, mark));
        }
    }
    return table;
}

std::string axisValueText(const ChartAxis& axis, double value) {
    if (!std::isfinite(value)) {
        return {};
    }
    switch (axis.kind) {
    case AxisKind::week:
        return dayText(value);
    case AxisKind::category: {
        const double index = std::round(value);
        const bool known = index >= 0 && index < static_cast<double>(axis.categories.size());
        return known ? axis.categories[static_cast<std::size_t>(index)] : std::string();
    }
    case AxisKind::numeric:
        break;
    }
    std::string text = formatted("%.*f", std::clamp(axis.decimals, 0, 9), value);
    // A number that rounds to nothing has no sign.
    if (text.starts_with('-') && text.find_first_of("123456789") == std::string::npos) {
        text.erase(0, 1);
    }
    return text;
}

ChartInterval rangeOfX(const ChartSpec& spec) {
    if (spec.xAxis.kind == AxisKind::category) {
        return {-0.5, std::max(0.5, static_cast<double>(spec.xAxis.categories.size()) - 0.5)};
    }
    Range range;
    for (const auto& series : spec.series) {
        for (const auto& mark : series.marks) {
            if (!hasNoX(series.kind) && !spansX(series.kind)) {
                range.include(mark.x);
            }
            range.include(mark.xInterval);
        }
    }
    return range.within(spec.xAxis);
}

ChartInterval rangeOfY(const ChartSpec& spec) {
    if (spec.yAxis.kind == AxisKind::category) {
        return {-0.5, std::max(0.5, static_cast<double>(spec.yAxis.categories.size()) - 0.5)};
    }
    Range range;
    for (const auto& series : spec.series) {
        for (const auto& mark : series.marks) {
            if (!hasNoY(series.kind) && series.kind != SeriesKind::band) {
                range.include(mark.y);
            }
            if (series.kind == SeriesKind::columns) {
                range.include(0);
            }
            range.include(mark.yInterval);
        }
    }
    return range.within(spec.yAxis);
}

std::vector<ChartWeek> weeksBetween(double from, double to) {
    std::vector<ChartWeek> weeks;
    for (Days monday = mondayOf(toDays(from)); toNumber(monday) <= to;
         monday += std::chrono::days{7}) {
        weeks.push_back(weekOfMonday(monday));
    }
    return weeks;
}

std::vector<ChartMonth> monthsBetween(double from, double to) {
    std::vector<ChartMonth> months;
    const std::chrono::year_month_day start{toDays(from)};
    std::chrono::year_month month{start.year(), start.month()};
    for (Days first{month / 1}; toNumber(first) <= to; first = Days{month / 1}) {
        months.push_back({toNumber(first), static_cast<int>(month.year()),
                          static_cast<int>(static_cast<unsigned>(month.month()))});
        month += std::chrono::months{1};
    }
    return months;
}

std::vector<double> axisTicks(ChartInterval range, int most) {
    std::vector<double> ticks;
    const double span = range.high - range.low;
    if (!std::isfinite(span) || span <= 0 || most < 1) {
        return ticks;
    }
    const double magnitude = std::pow(10.0, std::floor(std::log10(span / most)));
    double step = 10 * magnitude;
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (factor * magnitude * most >= span) {
            step = factor * magnitude;
            break;
        }
    }
    // Multiples of the step, not sums of it, so that 0.1 stays 0.1 to the last digit.
    const double slack = 1e-9 * step;
    for (double n = std::ceil((range.low - slack) / step); n * step <= range.high + slack; ++n) {
        ticks.push_back(n * step);
    }
    return ticks;
}

} // namespace pipwright
