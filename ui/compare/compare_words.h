#pragma once

#include "core/evaluation/comparison.h"

#include <QString>

/// What Compare says of a genotype, cell by cell, in the window's language; the same words stand on
/// screen, on paper and in what is read aloud.
namespace pipwright::ui {

/// "Ash Tarn", and under it code, kind, stage with its day.
QString headWords(const OrchardView& view, const ComparedGenotype& column);
/// Parents and the Purdy line.
QString pedigreeWords(const OrchardView& view, const ComparedGenotype& column);
/// "usually ripe 14 Aug to 2 Sep, from week 33 (5 crop years)": day and week in one calendar.
QString windowWords(const ComparedGenotype& column, int calendarYear);
/// What was seen in each crop year, a line each.
QString windowYearWords(const ComparedGenotype& column);
/// "7.4 ± 0.3 (12 fair scores, 2 tasters, 3 crop years)".
QString likingWords(const ComparedGenotype& column);
/// "stays good 62 d ± 4 (n = 3); after more than 7 days 6.2 ± 0.4 (4 scores, up to 75 days)".
QString keepingWords(const ComparedGenotype& column);
/// Mean with its standard error, the range and the count, with the unit; states in words.
QString traitWords(const OrchardView& view, const ComparedTrait& compared);
/// "2 fair lots of 7, 3 crop years, 5 sittings, 2 tasters".
QString evidenceWords(const ComparedGenotype& column);
/// "crisp (3), honey (2), thin skin".
QString saidWords(const ComparedGenotype& column);
/// "▲ 1.2 ± 0.4 above Ash Tarn"; empty unless the difference is beyond doubt.
QString differenceWords(const std::optional<MeanDifference>& difference, const QString& unit,
                        const QString& reference);

/// "scab, leaves (less is better)".
QString traitTitle(const Trait& trait);
/// The group a trait stands under: "Fruit", "Disease (less is better unless said)" ...
QString topicTitle(const std::string& topic);
/// What ▲, ▼, ± and "usual" mean, and how far they may be trusted.
QString legendWords();

const ComparedTrait* traitOf(const ComparedGenotype& column, TraitId trait);

} // namespace pipwright::ui
