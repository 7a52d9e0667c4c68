#include "core/evaluation/merit/tasters.h"

#include "core/evaluation/merit/corrected_records.h"
#include "core/evaluation/merit/verdict_words.h"
#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <set>
#include <tuple>

namespace pipwright {

namespace {

constexpr int kLeastCommonLots = 3;

Problem noTasterNamed() {
    return {ProblemCode::badInput, "No score says who tasted.",
            "Choose the taster when scores are entered, and come back.", ""};
}

std::optional<PointSpread> repeatSpread(double squares, int freedom) {
    if (freedom < 1) {
        return std::nullopt;
    }
    const ChiSquareDistribution chi{static_cast<double>(freedom)};
    const auto upper = quantile(chi, 0.975);
    const auto lower = quantile(chi, 0.025);
    if (!upper || !lower) {
        return std::nullopt;
    }
    PointSpread spread;
    spread.deviation = std::sqrt(squares / freedom);
    spread.low = std::sqrt(squares / *upper);
    spread.high = std::sqrt(squares / *lower);
    spread.degreesOfFreedom = freedom;
    return spread;
}

/// Sums of a group of values, for variances within and between.
struct ValueGroup {
    int count = 0;
    double sum = 0;
    double squares = 0;

    void add(double value) {
        ++count;
        sum += value;
        squares += value * value;
    }
    [[nodiscard]] double within() const {
        return count > 0 ? std::max(0.0, squares - sum * sum / count) : 0;
    }
};

/// The state of the fruit, its place in the order left aside.
std::vector<std::pair<int, float>> fruitStateOf(const TraitRecord& record) {
    std::vector<std::pair<int, float>> state;
    for (const ConditionAmount& one : record.conditions) {
        if (conditionClasses()[one.condition].correction != Correction::servingOrder) {
            state.emplace_back(one.condition, one.amount);
        }
    }
    return state;
}

std::optional<Discrimination> discriminationOf(const std::map<Index, ValueGroup>& byGenotype) {
    Discrimination found;
    ValueGroup all;
    double within = 0;
    double squaredCounts = 0;
    for (const auto& [genotype, group] : byGenotype) {
        if (group.count < 2) {
            continue;
        }
        ++found.genotypes;
        found.scores += group.count;
        within += group.within();
        squaredCounts += static_cast<double>(group.count) * group.count;
        all.count += group.count;
        all.sum += group.sum;
        all.squares += group.squares;
    }
    const int between = found.genotypes - 1;
    const int freedom = found.scores - found.genotypes;
    if (between < 2 || freedom < 1 || !(within > 0)) {
        return std::nullopt;
    }
    const double meanWithin = within / freedom;
    const double meanBetween = std::max(0.0, all.within() - within) / between;
    found.ratio = meanBetween / meanWithin;
    const auto chance = probabilityAbove(
        VarianceRatioDistribution{static_cast<double>(between), static_cast<double>(freedom)},
        found.ratio);
    found.pValue = chance ? *chance : 1;
    const double each = (found.scores - squaredCounts / found.scores) / between;
    found.share =
        std::max(0.0, (meanBetween - meanWithin) / (meanBetween + (each - 1) * meanWithin));
    return found;
}

/// What is gathered of one taster.
struct TasterTally {
    ValueGroup scores;
    std::set<Index> genotypes;
    std::set<std::int32_t> sittings;
    std::map<Index, ValueGroup> freed; ///< of condition, sitting and year
    std::map<std::tuple<std::int32_t, Index, std::vector<std::pair<int, float>>>, ValueGroup>
        servings;
};

std::vector<TasterTally> tallied(const MeritModel& model) {
    const TraitRecords& records = model.records();
    std::vector<TasterTally> tallies(records.persons.size());
    for (const TraitRecord& record : records.records) {
        if (record.person < 0) {
            continue;
        }
        TasterTally& tally = tallies[static_cast<std::size_t>(record.person)];
        tally.scores.add(record.value);
        tally.genotypes.insert(record.genotype);
        if (record.sitting >= 0) {
            tally.sittings.insert(record.sitting);
            tally.servings[{record.sitting, record.genotype, fruitStateOf(record)}].add(
                record.value);
        }
    }
    for (const GenotypeMerit& merit : model.merits()) {
        if (!merit.seen()) {
            continue;
        }
        for (const CorrectedRecord& one : correctedRecords(model, merit.genotype)) {
            const std::int32_t person = records.records[one.record].person;
            if (person >= 0) {
                tallies[static_cast<std::size_t>(person)].freed[merit.genotype].add(
                    one.raw + one.conditions + one.moment);
            }
        }
    }
    return tallies;
}

TasterAccount sheetOf(const TasterReport& report, const TasterTally& tally) {
    TasterAccount sheet;
    sheet.taster = report.taster;
    sheet.scores = report.scores;
    sheet.genotypes = static_cast<int>(tally.genotypes.size());
    sheet.sittings = static_cast<int>(tally.sittings.size());
    sheet.level = report.level;
    sheet.noise = report.noise;
    sheet.ownNoise = report.ownNoise;
    sheet.spread =
        tally.scores.count > 1 ? std::sqrt(tally.scores.within() / (tally.scores.count - 1)) : 0;
    double squares = 0;
    int freedom = 0;
    for (const auto& [serving, group] : tally.servings) {
        squares += group.within();
        freedom += group.count - 1;
    }
    sheet.repeat = repeatSpread(squares, freedom);
    sheet.discrimination = discriminationOf(tally.freed);
    return sheet;
}

/// Likings by lot and person; the last one of two.
using LotTable = std::map<std::int32_t, std::map<std::int32_t, double>>;

/// Lots that all of them scored.
std::vector<std::int32_t> commonLots(const LotTable& table,
                                     const std::vector<std::int32_t>& persons) {
    std::vector<std::int32_t> lots;
    for (const auto& [lot, likings] : table) {
        if (std::all_of(persons.begin(), persons.end(),
                        [&likings](std::int32_t one) { return likings.contains(one); })) {
            lots.push_back(lot);
        }
    }
    return lots;
}

/// Tasters whose full table is the largest: all of them, then one fewer each time, the one without
/// whom most lots are in common.
std::vector<std::int32_t> largestPanel(const LotTable& table, std::vector<std::int32_t> persons) {
    std::vector<std::int32_t> best;
    std::size_t cells = 0;
    while (persons.size() >= 2) {
        const std::size_t lots = commonLots(table, persons).size();
        if (lots >= kLeastCommonLots && lots * persons.size() > cells) {
            cells = lots * persons.size();
            best = persons;
        }
        std::size_t most = 0;
        std::size_t leave = 0;
        for (std::size_t i = 0; i < persons.size(); ++i) {
            auto rest = persons;
            rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(i));
            const std::size_t left = commonLots(table, rest).size();
            if (left >= most) {
                most = left;
                leave = i;
            }
        }
        persons.erase(persons.begin() + static_cast<std::ptrdiff_t>(leave));
    }
    return best;
}

std::optional<PanelAgreement> agreementIn(const TraitRecords& records) {
    LotTable table;
    std::set<std::int32_t> known;
    for (const TraitRecord& record : records.records) {
        if (record.lot >= 0 && record.person >= 0) {
            table[record.lot][record.person] = record.value;
            known.insert(record.person);
        }
    }
    const auto panel = largestPanel(table, {known.begin(), known.end()});
    if (panel.empty()) {
        return std::nullopt;
    }
    const auto lots = commonLots(table, panel);
    DenseMatrix byTaster(panel.size(), lots.size());
    DenseMatrix byLot(lots.size(), panel.size());
    for (std::size_t i = 0; i < panel.size(); ++i) {
        for (std::size_t j = 0; j < lots.size(); ++j) {
            byTaster(i, j) = byLot(j, i) = table.at(lots[j]).at(panel[i]);
        }
    }
    auto order = friedmanTest(byTaster);
    if (!order) {
        return std::nullopt; // everybody ties all
    }
    PanelAgreement agreement;
    for (const std::int32_t one : panel) {
        agreement.tasters.push_back(records.persons[static_cast<std::size_t>(one)]);
    }
    agreement.lots = static_cast<int>(lots.size());
    agreement.order = std::move(*order);
    if (auto correlations = intraclassCorrelations(byLot)) {
        agreement.correlations = *correlations;
    }
    return agreement;
}

std::string pointsText(double value) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.1f", value);
    return text.data();
}

} // namespace

Result<TasterReports> tasterReports(const MeritModel& model) {
    const std::vector<TasterTally> tallies = tallied(model);
    const std::vector<TasterReport> reports = model.tasters();
    TasterReports all;
    for (std::size_t i = 0; i < tallies.size(); ++i) {
        if (tallies[i].scores.count == 0) {
            continue;
        }
        all.tasters.push_back(sheetOf(reports[i], tallies[i]));
        bool linked = false;
        for (std::size_t j = 0; j < tallies.size() && !linked; ++j) {
            linked = j != i &&
                     std::any_of(tallies[i].genotypes.begin(), tallies[i].genotypes.end(),
                                 [&](Index one) { return tallies[j].genotypes.contains(one); });
        }
        all.tasters.back().linkedToNobody = !linked;
    }
    if (all.tasters.empty()) {
        return noTasterNamed();
    }
    std::stable_sort(
        all.tasters.begin(), all.tasters.end(),
        [](const TasterAccount& a, const TasterAccount& b) { return a.scores > b.scores; });
    all.agreement = agreementIn(model.records());
    return all;
}

std::string sentenceOf(const TasterAccount& sheet, const std::string& name) {
    std::string text = name;
    if (sheet.linkedToNobody) {
        text += " has tasted nothing that anybody else tasted, so whether the scores or the fruit "
                "are high cannot be told";
    } else {
        const double low = sheet.level.value - 1.96 * sheet.level.standardError;
        const double high = sheet.level.value + 1.96 * sheet.level.standardError;
        text += " scores " + pointsText(std::abs(sheet.level.value)) + " points " +
                (sheet.level.value < 0 ? "below" : "above") +
                " the average taster (95 %: " + pointsText(low) + " to " + pointsText(high) + ")";
    }
    if (sheet.repeat) {
        text += " and comes back to the same fruit within " + pointsText(sheet.repeat->deviation) +
                " points (95 %: " + pointsText(sheet.repeat->low) + " to " +
                pointsText(sheet.repeat->high) + ")";
    }
    text += ".";
    if (sheet.discrimination) {
        text += sheet.discrimination->pValue < 0.05
                    ? " The scores tell genotypes apart: "
                    : " Whether the scores tell genotypes apart is not settled: ";
        text += percentText(sheet.discrimination->share) + " of what varies lies between them.";
    }
    return text;
}

std::string sentenceOf(const PanelAgreement& agreement) {
    const double order = agreement.order.concordance;
    const char* how = order >= 0.7 ? "agrees well" : order >= 0.4 ? "agrees in part" : "differs";
    std::array<char, 32> figure{};
    std::snprintf(figure.data(), figure.size(), "%.2f", order);
    return "Of " + std::to_string(agreement.lots) + " lots that all " +
           std::to_string(agreement.tasters.size()) + " scored the order " + how +
           " (Kendall's W " + figure.data() + ", by chance " + percentText(agreement.pValue()) +
           ").";
}

} // namespace pipwright
