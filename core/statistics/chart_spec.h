#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

/// What a chart shows, as plain data; how it is drawn is the window's affair. The same values give
/// the drawing, the table read aloud and the CSV file, so the three cannot disagree.
namespace pipwright {

/// What the numbers along an axis mean.
enum class AxisKind {
    numeric,  ///< a quantity with a unit
    week,     ///< days since 1970-01-01; drawn as ISO weeks with the names of months below
    category, ///< index into ChartAxis::categories, from 0
};

struct ChartAxis {
    AxisKind kind = AxisKind::numeric;
    std::string title{};
    std::string unit{};                    ///< "°Brix", "g"; empty for counts and scales
    std::vector<std::string> categories{}; ///< only for AxisKind::category
    std::optional<double> low{};           ///< where the axis begins; else from the marks
    std::optional<double> high{};
    int decimals = 1; ///< of numbers of this axis in tables and texts

    bool operator==(const ChartAxis&) const = default;
};

enum class SeriesKind {
    line,           ///< x, y joined in the order given
    points,         ///< x, y with intervals where the marks have them
    spans,          ///< from `low` to `high` along x, in lane `y` (index into ChartSpec::lanes)
    band,           ///< between `low` and `high` along y, over x: an envelope
    columns,        ///< from the axis up to y, centred on x
    horizontalRule, ///< a hairline at each y
    verticalRule,   ///< a hairline at each x
    shade,          ///< from `low` to `high` along x, over the whole height
};

/// Which colour a series wears; the theme knows the colour itself.
enum class ColourRole {
    categorical, ///< one of eight hues told apart by every eye: ChartColour::index
    ink,
    secondInk,
    action,    ///< leaf
    attention, ///< russet
    link,      ///< sky
    fault,     ///< blood
};

struct ChartColour {
    ColourRole role = ColourRole::categorical;
    std::size_t index = 0; ///< only for ColourRole::categorical; beyond seven it begins again

    bool operator==(const ChartColour&) const = default;
};

/// From `low` to `high`, in the unit of its axis.
struct ChartInterval {
    double low = 0;
    double high = 0;

    bool operator==(const ChartInterval&) const = default;
};

/// One thing drawn: a point, a span, a step of a line.
struct ChartMark {
    double x = 0;
    double y = 0;
    std::optional<ChartInterval> xInterval{}; ///< of a point; the extent of a span or shade
    std::optional<ChartInterval> yInterval{}; ///< of a point; the extent of a band
    std::optional<ChartInterval> core{};      ///< the prime inside a span, along x
    std::string label{};                      ///< a few letters written beside the mark
    std::string tooltip{};                    ///< the whole story in a sentence or two
    std::string id{};                         ///< of the thing it stands for; empty when of none
    bool uncertain = false;                   ///< drawn open and paler, never hidden

    bool operator==(const ChartMark&) const = default;
};

struct ChartSeries {
    std::string name{};
    SeriesKind kind = SeriesKind::points;
    ChartColour colour{};
    std::vector<ChartMark> marks{};
    bool dashed = false; ///< of lines and hairlines

    bool operator==(const ChartSeries&) const = default;
};

/// A header and rows of text, each as long as the header.
struct ChartTable {
    std::vector<std::string> header{};
    std::vector<std::vector<std::string>> rows{};

    /// RFC 4180, UTF-8, CRLF, header first.
    [[nodiscard]] std::string csv() const;
    bool operator==(const ChartTable&) const = default;
};

struct ChartSpec {
    std::string title{};
    std::string summary{};            ///< one sentence that says what the chart shows
    std::string emptyText{};          ///< what would fill the chart, when it has no marks
    std::vector<std::string> lanes{}; ///< named strips above the plot, for spans, top first
    ChartAxis xAxis{};
    ChartAxis yAxis{};
    std::vector<ChartSeries> series{};

    /// No series has a mark.
    [[nodiscard]] bool isEmpty() const;
    /// One row a mark, in the order of series and marks: series, label (with the lane), x, x from,
    /// x to, y, y from, y to, uncertain ("yes" or empty), remark. Dates are ISO, with the ISO week
    /// behind.
    [[nodiscard]] ChartTable toTable() const;
    bool operator==(const ChartSpec&) const = default;
};

/// The number as an axis writes it: a date and week, a category's name, or a decimal number without
/// the unit. Empty when it is not finite or names no category.
std::string axisValueText(const ChartAxis& axis, double value);

/// What the axis must span: its own `low` and `high` where given, else all marks with their
/// intervals, with 4 % of air on either side; one unit around a lone value, 0 to 1 when empty.
ChartInterval rangeOfX(const ChartSpec& spec);
ChartInterval rangeOfY(const ChartSpec& spec);

/// A week as drawn along a week axis.
struct ChartWeek {
    double monday = 0; ///< days since 1970-01-01
    int year = 0;      ///< the ISO year the week belongs to
    int week = 0;      ///< 1 to 53

    bool operator==(const ChartWeek&) const = default;
};

/// The ISO 8601 weeks that touch the days from `from` to `to`, in order.
std::vector<ChartWeek> weeksBetween(double from, double to);

/// The first day of a month, along a week axis.
struct ChartMonth {
    double firstDay = 0; ///< days since 1970-01-01
    int year = 0;
    int month = 0; ///< 1 to 12

    bool operator==(const ChartMonth&) const = default;
};

/// The months that touch the days from `from` to `to`, in order.
std::vector<ChartMonth> monthsBetween(double from, double to);

/// Round steps for a numeric axis: 1, 2 or 5 times a power of ten, at most `most` steps in range.
std::vector<double> axisTicks(ChartInterval range, int most);

} // namespace pipwright
