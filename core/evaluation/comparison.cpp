#include "core/evaluation/comparison.h"

#include "core/pedigree/descent.h"
#include "core/pedigree/purdy.h"
#include "core/season/iso_week.h"
#include "core/units/text.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <set>

namespace pipwright {

namespace {

constexpr int kGenerations = 3;
constexpr int kWeeksOfAYear = 52;
constexpr int kFewestValues = 3;
constexpr std::size_t kMostSaid = 8;
constexpr int kUnknownLast = 99;

ComparedTrait summaryOf(TraitId trait, const std::vector<double>& values) {
    ComparedTrait summary;
    summary.trait = trait;
    summary.count = static_cast<int>(values.size());
    summary.lowest = *std::min_element(values.begin(), values.end());
    summary.highest = *std::max_element(values.begin(), values.end());
    double mean = 0;
    double squares = 0;
    int n = 0;
    for (const double value : values) { // Welford (1962)
        ++n;
        const double step = value - mean;
        mean += step / n;
        squares += step * (value - mean);
    }
    summary.mean = mean;
    if (n > 1) {
        summary.standardError = std::sqrt(squares / (n - 1) / n);
    }
    return summary;
}

std::optional<double> valueOf(const OrchardView& view, const Observation& one) {
    if (one.state) {
        const TraitState* state = view.traitState(*one.state);
        return state == nullptr ? std::nullopt : std::optional(static_cast<double>(state->rank));
    }
    if (one.value && one.valueTo && one.qualifier == Qualifier::range) {
        return (*one.value + *one.valueTo) / 2;
    }
    return one.value;
}

ScoreGround groundOf(const std::vector<TastedLot>& lots, bool fairOnly) {
    ScoreGround ground;
    std::set<PersonId> tasters;
    std::set<int> cropYears;
    std::set<TastingId> sittings;
    for (const TastedLot& lot : lots) {
        if (fairOnly && !lot.fairness.fair()) {
            continue;
        }
        for (const Score& score : lot.scores) {
            if (score.liking) {
                ++ground.scores;
                tasters.insert(score.taster);
                cropYears.insert(lot.cropYear());
                sittings.insert(lot.tasting.id);
            }
        }
    }
    ground.tasters = static_cast<int>(tasters.size());
    ground.cropYears = static_cast<int>(cropYears.size());
    ground.sittings = static_cast<int>(sittings.size());
    return ground;
}

/// The phrases between commas, semicolons and full stops, counted without regard to case.
std::vector<SaidWords> saidIn(const std::vector<ComparedScore>& scores) {
    std::vector<SaidWords> said;
    std::map<std::string, std::size_t> at;
    for (const ComparedScore& score : scores) {
        std::string text = score.words;
        std::replace_if(
            text.begin(), text.end(),
            [](char one) { return one == ';' || one == '.' || one == '\n'; }, ',');
        for (const std::string_view part : split(text, ',')) {
            const std::string phrase(trimmed(part));
            if (phrase.empty()) {
                continue;
            }
            const auto [found, fresh] = at.try_emplace(foldedForSearch(phrase), said.size());
            if (fresh) {
                said.push_back({phrase, 0});
            }
            ++said[found->second].times;
        }
    }
    std::stable_sort(said.begin(), said.end(),
                     [](const auto& a, const auto& b) { return a.times > b.times; });
    said.resize(std::min(said.size(), kMostSaid));
    return said;
}

void addScores(ComparedGenotype& column) {
    std::vector<double> fair;
    std::vector<double> any;
    for (const TastedLot& lot : column.life.tastings) {
        for (const Score& score : lot.scores) {
            if (!score.liking) {
                continue;
            }
            ComparedScore one;
            one.date = lot.tasting.date;
            one.cropYear = lot.cropYear();
            one.taster = score.taster;
            one.liking = *score.liking;
            one.fair = lot.fairness.fair();
            one.unclear = lot.fairness.unclear;
            one.sight = lot.tasting.sight;
            one.ripeness = lot.lot.ripeness;
            one.words = score.words;
            any.push_back(one.liking);
            if (one.fair) {
                fair.push_back(one.liking);
            }
            column.scores.push_back(std::move(one));
        }
    }
    column.fairGround = groundOf(column.life.tastings, true);
    column.anyGround = groundOf(column.life.tastings, false);
    column.said = saidIn(column.scores);
    if (!any.empty()) {
        column.anyLiking = summaryOf(TraitId(), any);
    }
    if (!fair.empty()) {
        column.fairLiking = summaryOf(TraitId(), fair);
    }
}

void addTraits(const OrchardView& view, ComparedGenotype& column) {
    std::vector<const Observation*> observations;
    for (const Observation& one : column.life.observations) {
        observations.push_back(&one);
    }
    for (const TastedLot& lot : column.life.tastings) {
        for (const Observation& one : lot.intensities) {
            observations.push_back(&one);
        }
    }
    for (const Trait& trait : view.traits()) {
        // Stages of a day are drawn as windows, not averaged.
        if (trait.topic == "ripening" || trait.topic == "bloom" || trait.topic == "note") {
            continue;
        }
        std::vector<double> values;
        std::map<std::int64_t, int> states;
        for (const Observation* one : observations) {
            const auto value = one->trait == trait.id ? valueOf(view, *one) : std::nullopt;
            if (value) {
                values.push_back(*value);
                if (one->state) {
                    ++states[static_cast<std::int64_t>(std::lround(*value))];
                }
            }
        }
        if (!values.empty()) {
            column.traits.push_back(summaryOf(trait.id, values));
            column.traits.back().states = std::move(states);
        }
    }
}

std::optional<int> dayIn(int cropYear, const std::optional<Date>& date) {
    const auto newYear = Date::of(cropYear, 1, 1);
    return newYear && date ? std::optional(daysBetween(*newYear, *date) + 1) : std::nullopt;
}

std::optional<int> medianOf(std::vector<int> days) {
    if (days.empty()) {
        return std::nullopt;
    }
    std::sort(days.begin(), days.end());
    const std::size_t middle = days.size() / 2;
    return days.size() % 2 == 1 ? days[middle] : (days[middle - 1] + days[middle]) / 2;
}

void addSeason(ComparedGenotype& column) {
    ComparedSeason& season = column.season;
    season.usualWeek = column.facts.harvestWeek;
    std::vector<double> lengths;
    std::vector<int> firsts;
    std::vector<int> lasts;
    for (const LifeYear& year : column.life.years) {
        const ObservedWindow& window = year.window;
        if (window.empty()) {
            continue;
        }
        season.years.push_back(year);
        const ComparedWindow days{year.cropYear, dayIn(year.cropYear, window.stillGreen),
                                  dayIn(year.cropYear, window.firstRipe),
                                  dayIn(year.cropYear, window.lastRipe),
                                  dayIn(year.cropYear, window.over)};
        season.windows.push_back(days);
        if (!days.firstRipe) {
            continue;
        }
        firsts.push_back(*days.firstRipe);
        lasts.push_back(days.over ? *days.over - 1 : days.lastRipe.value_or(*days.firstRipe));
        if (window.over) {
            lengths.push_back(daysBetween(*window.firstRipe, *window.over));
        }
    }
    season.usualFirst = medianOf(firsts);
    season.usualLast = medianOf(lasts);
    if (!firsts.empty()) {
        season.earliestDay = *std::min_element(firsts.begin(), firsts.end());
        season.latestDay = *std::max_element(firsts.begin(), firsts.end());
    }
    if (!lengths.empty()) {
        season.usualLength = summaryOf(TraitId(), lengths).mean;
    }
}

/// Weeks between two week numbers, the short way round the year.
int weeksApart(int one, int other) {
    const int straight = std::abs(one - other);
    const int year = std::max({one, other, kWeeksOfAYear}); // a week 53 makes its year longer
    return std::min(straight, year - straight);
}

} // namespace

std::optional<MeanDifference> differenceOf(const ComparedTrait& one, const ComparedTrait& other,
                                           double step) {
    if (one.count < kFewestValues || other.count < kFewestValues || !one.standardError ||
        !other.standardError) {
        return std::nullopt;
    }
    const auto squaredError = [step](const ComparedTrait& mean) {
        const double rounding = step * step / (12.0 * mean.count);
        return std::max(*mean.standardError * *mean.standardError, rounding);
    };
    MeanDifference found;
    found.difference = one.mean - other.mean;
    found.standardError = std::sqrt(squaredError(one) + squaredError(other));
    found.beyondDoubt =
        found.standardError > 0 && std::abs(found.difference) > 2 * found.standardError;
    return found;
}

std::optional<double> stepOf(const Trait& trait) {
    switch (trait.scale) {
    case ScaleKind::numeric:
        return 0.0;
    case ScaleKind::ordinal:
        return 1.0;
    default:
        return std::nullopt;
    }
}

namespace {

std::string purdyIn(const Pedigree& pedigree, const OrchardView& view, Index genotype) {
    const auto descent = descentOf(
        pedigree, static_cast<int>(genotype), kGenerations,
        [&view](int one) { return view.genotypes()[static_cast<std::size_t>(one)].called(); },
        [&view](int one) {
            return view.parentsOf(static_cast<Index>(one)).pollination == Pollination::open;
        });
    return writePurdy(descent);
}

} // namespace

Result<std::string> purdyLine(const OrchardView& view, Index genotype) {
    const auto pedigree = view.pedigree();
    if (!pedigree) {
        return pedigree.problem();
    }
    return purdyIn(*pedigree, view, genotype);
}

Result<Comparison> compare(const OrchardView& view, const Store& store,
                           const std::vector<Index>& genotypes) {
    Comparison comparison;
    if (genotypes.empty()) {
        return comparison;
    }
    const auto pedigree = view.pedigree();
    for (const Index genotype : genotypes) {
        auto life = lifeOfGenotype(view, store, genotype);
        if (!life) {
            return life.problem();
        }
        ComparedGenotype column;
        column.genotype = genotype;
        column.plant = view.plantFor(genotype);
        column.life = std::move(*life);
        column.facts = view.genotypeFacts(genotype);
        if (pedigree) { // a ring in the pedigree leaves the lines empty
            column.purdy = purdyIn(*pedigree, view, genotype);
        }
        addScores(column);
        addTraits(view, column);
        addSeason(column);
        comparison.columns.push_back(std::move(column));
    }
    for (const Trait& trait : view.traits()) {
        const bool any = std::any_of(
            comparison.columns.begin(), comparison.columns.end(), [&trait](const auto& column) {
                return std::any_of(column.traits.begin(), column.traits.end(),
                                   [&trait](const auto& one) { return one.trait == trait.id; });
            });
        if (any) {
            comparison.traits.push_back(trait.id);
        }
    }
    return comparison;
}

std::vector<NearBenchmark> benchmarksNear(const OrchardView& view, Index genotype) {
    const GenotypeEntry& own = view.genotypes()[genotype];
    const auto week = view.genotypeFacts(genotype).harvestWeek;
    std::vector<NearBenchmark> near;
    for (Index i = 0; i < view.genotypes().size(); ++i) {
        const GenotypeEntry& other = view.genotypes()[i];
        if (i == genotype || other.erased || !other.benchmark || other.species != own.species) {
            continue;
        }
        const auto otherWeek = view.genotypeFacts(i).harvestWeek;
        NearBenchmark one{i, std::nullopt};
        if (week && otherWeek) {
            one.weeksApart = weeksApart(*week, *otherWeek);
        }
        near.push_back(one);
    }
    std::stable_sort(near.begin(), near.end(), [](const auto& a, const auto& b) {
        return a.weeksApart.value_or(kUnknownLast) < b.weeksApart.value_or(kUnknownLast);
    });
    return near;
}

} // namespace pipwright
