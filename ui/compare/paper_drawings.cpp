#include "ui/compare/paper_drawings.h"

#include "core/evaluation/usual_ripening.h"
#include "core/season/iso_week.h"
#include "ui/compare/compare_words.h"
#include "ui/compare/scales.h"
#include "ui/compare/score_stack.h"

#include <algorithm>
#include <string>

namespace pipwright::ui {

namespace {

constexpr Micrometres kHairline = 0.1_mm;
constexpr Micrometres kLine = 0.25_mm;
constexpr Micrometres kPaperDot = 1.6_mm;
constexpr Micrometres kPaperYearLine = 1.2_mm;
constexpr Micrometres kFoot = 3_mm; ///< for the words of an axis
constexpr double kFootPoints = 6.5;

Micrometres share(Micrometres whole, double part) {
    return millimetres(inMillimetres(whole) * part);
}

/// A scale across or up a stretch of paper.
struct Scale {
    Micrometres from;
    Micrometres to;
    double low = 0;
    double high = 1;

    [[nodiscard]] Micrometres at(double value) const {
        const double part = high > low ? (value - low) / (high - low) : 0.5;
        return from + share(to - from, std::clamp(part, 0.0, 1.0));
    }
};

/// A disc: the line of a circle of half the width, as thick as that, leaves no hole.
CircleMark disc(PaperPoint at, Micrometres diameter) {
    return {at, diameter / 2, diameter / 2};
}

LineMark across(Micrometres left, Micrometres right, Micrometres y, Micrometres thickness) {
    return {{left, y}, {right, y}, thickness};
}

LineMark up(Micrometres x, Micrometres top, Micrometres bottom, Micrometres thickness) {
    return {{x, top}, {x, bottom}, thickness};
}

TextMark axisWord(Micrometres middle, Micrometres top, std::string text) {
    return {{middle - 5_mm, top, 10_mm, kFoot}, std::move(text), kFootPoints, false, Align::centre};
}

Mark scoreMark(PaperPoint at, Sight sight, bool fair) {
    const Micrometres half = kPaperDot / 2;
    const Micrometres line = fair ? Micrometres{} : 0.2_mm;
    if (sight == Sight::blind) {
        return fair ? disc(at, kPaperDot) : CircleMark{at, kPaperDot - line, line};
    }
    if (sight == Sight::sighted) {
        const Micrometres reach = half + 0.2_mm;
        return PolygonMark{{{at.x, at.y - reach},
                            {at.x + reach, at.y},
                            {at.x, at.y + reach},
                            {at.x - reach, at.y}},
                           line};
    }
    const PaperBox box{at.x - half, at.y - half, kPaperDot, kPaperDot};
    return fair ? Mark(FillMark{box}) : Mark(FrameMark{box, line});
}

std::vector<Mark> windowDrawing(const CompareModel& model, int column, const PaperBox& box) {
    const ComparedSeason& season = model.compared(column).season;
    std::vector<Mark> marks;
    if (model.lastDay() <= model.firstDay() || !season.usualFirst) {
        return marks;
    }
    const Scale days{box.x, box.right(), double(model.firstDay()), double(model.lastDay())};
    Micrometres y = box.y + 0.6_mm;
    for (const ComparedWindow& window : season.windows) {
        if (window.firstRipe) {
            const int last = window.over.value_or(window.lastRipe.value_or(*window.firstRipe) + 1);
            marks.emplace_back(disc({days.at(*window.firstRipe), y}, 0.7_mm));
            if (window.over) {
                marks.emplace_back(across(days.at(*window.firstRipe), days.at(last), y, kLine));
            } else { // its end was not seen: a broken line
                const Micrometres end = days.at(last);
                for (Micrometres x = days.at(*window.firstRipe); x < end; x += 1_mm) {
                    marks.emplace_back(across(x, std::min(x + 0.5_mm, end), y, kLine));
                }
            }
        }
        y += kPaperYearLine;
    }
    const Micrometres left = days.at(*season.usualFirst);
    const Micrometres right = days.at(season.usualLast.value_or(*season.usualFirst) + 1);
    marks.emplace_back(FillMark{{left, y, std::max(right - left, 0.5_mm), 1.6_mm}, 70});
    const Micrometres base = box.bottom() - kFoot;
    marks.emplace_back(across(box.x, box.right(), base, kHairline));
    Micrometres free = box.x;
    for (int day = model.firstDay(); day <= model.lastDay() - kDaysOfAWeek; ++day) {
        const IsoWeek week = isoWeekOf(dateInCalendar(day, model.calendarYear()));
        if (firstDay(week) != dateInCalendar(day, model.calendarYear())) {
            continue;
        }
        marks.emplace_back(up(days.at(day), base, base + 0.8_mm, kHairline));
        const Micrometres middle = days.at(day + kDaysOfAWeek / 2.0);
        if (free < middle - 2_mm) {
            marks.emplace_back(axisWord(middle, base, std::to_string(week.week)));
            free = middle + 2_mm;
        }
    }
    return marks;
}

std::vector<Mark> likingDrawing(const CompareModel& model, int column, const PaperBox& box) {
    const ComparedGenotype& shown = model.compared(column);
    const Scale likings{box.x + kPaperDot, box.right() - kPaperDot, kLowestLiking, kHighestLiking};
    const Micrometres base = box.bottom() - kFoot;
    std::vector<Mark> marks;
    for (int liking = 1; liking <= 9; ++liking) {
        marks.emplace_back(up(likings.at(liking), base, base + 0.8_mm, kHairline));
        if (liking % 2 == 1) {
            marks.emplace_back(axisWord(likings.at(liking), base, std::to_string(liking)));
        }
    }
    marks.emplace_back(across(box.x, box.right(), base, kHairline));
    const ScoreStack stack(shown.scores);
    const Micrometres room = base - box.y - kPaperDot;
    const Micrometres step = std::min(kPaperDot + 0.1_mm, room / std::max(stack.highest, 1));
    for (std::size_t i = 0; i < shown.scores.size(); ++i) {
        const ComparedScore& score = shown.scores[i];
        const PaperPoint at{likings.at(score.liking),
                            base - kPaperDot / 2 - 0.2_mm - step * stack.levels[i]};
        marks.push_back(scoreMark(at, score.sight, score.fair));
    }
    if (shown.fairLiking) {
        const ComparedTrait& mean = *shown.fairLiking;
        const double error = mean.standardError.value_or(0);
        marks.emplace_back(across(likings.at(mean.mean - error), likings.at(mean.mean + error),
                                  base + 0.3_mm, 0.6_mm));
        marks.emplace_back(up(likings.at(mean.mean), base - 0.8_mm, base + 0.8_mm, 0.5_mm));
    }
    return marks;
}

std::vector<Mark> keepingDrawing(const CompareModel& model, int column, const PaperBox& box) {
    const Micrometres base = box.bottom() - kFoot;
    const Scale days{box.x + 4_mm, box.right() - kPaperDot, 0, double(model.longestDays())};
    const Scale likings{base - kPaperDot, box.y + kPaperDot, kLowestLiking, kHighestLiking};
    std::vector<Mark> marks;
    marks.emplace_back(across(box.x + 3_mm, box.right(), base, kHairline));
    marks.emplace_back(up(box.x + 3_mm, box.y, base, kHairline));
    for (const int liking : {1, 5, 9}) {
        marks.emplace_back(TextMark{{box.x, likings.at(liking) - kFoot / 2, 2_mm, kFoot},
                                    std::to_string(liking),
                                    kFootPoints,
                                    false,
                                    Align::right});
    }
    marks.emplace_back(axisWord(days.at(0), base, "0"));
    marks.emplace_back(TextMark{{box.right() - 15_mm, base, 15_mm, kFoot},
                                std::to_string(model.longestDays()) + " d",
                                kFootPoints,
                                false,
                                Align::right});
    for (const ComparedScore& score : model.compared(column).scores) {
        if (score.daysOff && *score.daysOff <= model.longestDays()) {
            marks.push_back(scoreMark({days.at(*score.daysOff), likings.at(score.liking)},
                                      score.sight, score.fair));
        }
    }
    return marks;
}

std::vector<Mark> traitDrawing(const CompareModel& model, int row, int column,
                               const PaperBox& box) {
    const CompareRow& shown = model.row(row);
    const ComparedTrait* one = traitOf(model.compared(column), shown.trait);
    std::vector<Mark> marks;
    if (one == nullptr) {
        return marks;
    }
    const Scale values{box.x + kPaperDot, box.right() - kPaperDot, shown.low, shown.high};
    const Micrometres y = box.y + box.height / 2;
    marks.emplace_back(across(values.from, values.to, y, kHairline));
    for (const Micrometres end : {values.from, values.to}) {
        marks.emplace_back(up(end, y - 0.8_mm, y + 0.8_mm, kHairline));
    }
    if (one->count > 1) {
        marks.emplace_back(across(values.at(one->lowest), values.at(one->highest), y, 0.5_mm));
    }
    marks.emplace_back(disc({values.at(one->mean), y}, kPaperDot));
    return marks;
}

} // namespace

Micrometres drawingHeightOnPaper(const CompareModel& model, int row) {
    const CompareRow& shown = model.row(row);
    switch (shown.kind) {
    case CompareKind::window:
        return model.lastDay() > model.firstDay()
                   ? kPaperYearLine * model.mostYears() + 3_mm + kFoot
                   : Micrometres{};
    case CompareKind::liking:
        return 15_mm;
    case CompareKind::keeping:
        return model.longestDays() > 0 ? 16_mm : Micrometres{};
    case CompareKind::trait:
        return shown.drawn ? 2_mm : Micrometres{};
    default:
        return {};
    }
}

std::vector<Mark> drawnOnPaper(const CompareModel& model, int row, int column,
                               const PaperBox& box) {
    switch (model.row(row).kind) {
    case CompareKind::window:
        return windowDrawing(model, column, box);
    case CompareKind::liking:
        return likingDrawing(model, column, box);
    case CompareKind::keeping:
        return keepingDrawing(model, column, box);
    case CompareKind::trait:
        return traitDrawing(model, row, column, box);
    default:
        return {};
    }
}

} // namespace pipwright::ui
