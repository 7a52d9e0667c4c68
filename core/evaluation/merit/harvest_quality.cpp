#include "core/evaluation/merit/harvest_quality.h"

#include "core/evaluation/merit/ladder_odds.h"
#include "core/evaluation/usual_ripening.h"
#include "core/season/iso_week.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace pipwright {

namespace {

constexpr int kThursday = 3; // days after Monday
constexpr int kDaysOfWeek = 7;

} // namespace

std::optional<QualityCurve> qualityByWeek(const MeritModel& model, const KeepingByGenotype* keeping,
                                          const BenchmarkWindow& window, StoragePath path,
                                          CropYear cropYear) {
    const GenotypeMerit* merit = model.meritOf(window.genotype);
    if (merit == nullptr || !merit->seen()) {
        return std::nullopt;
    }
    const auto kept =
        keeping == nullptr ? std::nullopt : keeping->curveOf(model, window.genotype, path);
    const Date first = dateInCalendar(window.first, cropYear.year);
    QualityCurve curve;
    curve.genotype = window.genotype;
    curve.path = path;
    int monday = *dayOfCropYear(cropYear.year, firstDay(isoWeekOf(first)));
    for (;; monday += kDaysOfWeek) {
        const int day = monday + kThursday;
        // A window that opens after Thursday still belongs to its week.
        const double days = std::max(0, day - window.last);
        WeekQuality week{monday, merit->merit, days};
        if (days > 0) {
            if (!kept || days > keeping->choices.mostDays) {
                break;
            }
            week.quality.value += days * kept->slope.value;
            week.quality.standardError =
                std::hypot(merit->merit.standardError, days * kept->slope.standardError);
            if (week.quality.value < keeping->choices.goodFrom) {
                break;
            }
        }
        curve.weeks.push_back(week);
    }
    return curve;
}

std::vector<BarWeek> barByWeek(std::span<const QualityCurve> curves) {
    std::map<int, BarWeek> bar;
    for (const QualityCurve& curve : curves) {
        for (const WeekQuality& week : curve.weeks) {
            const BarWeek mine{week.monday, curve.genotype, week.quality, week.daysKept};
            const auto [at, fresh] = bar.try_emplace(week.monday, mine);
            if (!fresh && mine.quality.value > at->second.quality.value) {
                at->second = mine;
            }
        }
    }
    std::vector<BarWeek> weeks;
    for (const auto& [monday, week] : bar) {
        weeks.push_back(week);
    }
    return weeks;
}

std::vector<BeatenWeek> beatenWeeks(const QualityCurve& curve, std::span<const BarWeek> bar) {
    std::vector<BeatenWeek> beaten;
    for (const WeekQuality& week : curve.weeks) {
        const auto found = std::find_if(
            bar.begin(), bar.end(), [&](const BarWeek& one) { return one.monday == week.monday; });
        if (found == bar.end()) {
            beaten.push_back({week.monday, week.quality.value, 1, true});
            continue;
        }
        const double ahead = week.quality.value - found->quality.value;
        const double variance = week.quality.standardError * week.quality.standardError +
                                found->quality.standardError * found->quality.standardError;
        if (ahead > 0 && found->genotype != curve.genotype) {
            beaten.push_back({week.monday, ahead, chanceAboveZero(ahead, variance), false});
        }
    }
    return beaten;
}

} // namespace pipwright
