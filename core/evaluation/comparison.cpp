#include "core/evaluation/comparison.h"

#include "core/pedigree/descent.h"
#include "core/pedigree/purdy.h"
#include "core/season/iso_week.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace pipwright {

namespace {

constexpr int kGenerations = 3;
constexpr int kWeeksOfAYear = 52;
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
        for (const Observation* one : observations) {
            const auto value = one->trait == trait.id ? valueOf(view, *one) : std::nullopt;
            if (value) {
                values.push_back(*value);
            }
        }
        if (!values.empty()) {
            column.traits.push_back(summaryOf(trait.id, values));
        }
    }
}

void addSeason(ComparedGenotype& column) {
    ComparedSeason& season = column.season;
    season.usualWeek = column.facts.harvestWeek;
    std::vector<double> lengths;
    for (const LifeYear& year : column.life.years) {
        const ObservedWindow& window = year.window;
        if (window.empty()) {
            continue;
        }
        season.years.push_back(year);
        if (!window.firstRipe) {
            continue;
        }
        const auto newYear = Date::of(year.cropYear, 1, 1);
        const int day = newYear ? daysBetween(*newYear, *window.firstRipe) + 1 : 0;
        season.earliestDay = std::min(season.earliestDay.value_or(day), day);
        season.latestDay = std::max(season.latestDay.value_or(day), day);
        if (window.over) {
            lengths.push_back(daysBetween(*window.firstRipe, *window.over));
        }
    }
    if (!lengths.empty()) {
        season.usualLength = summaryOf(TraitId(), lengths).mean;
    }
}

/// Weeks between two week numbers, the short way round the year.
int weeksApart(int one, int other) {
    const int straight = std::abs(one - other);
    return std::min(straight, kWeeksOfAYear - straight);
}

} // namespace

Result<std::string> purdyLine(const OrchardView& view, Index genotype) {
    const auto pedigree = view.pedigree();
    if (!pedigree) {
        return pedigree.problem();
    }
    const auto descent = descentOf(
        *pedigree, static_cast<int>(genotype), kGenerations,
        [&view](int one) { return view.genotypes()[static_cast<std::size_t>(one)].called(); },
        [&view](int one) {
            return view.parentsOf(static_cast<Index>(one)).pollination == Pollination::open;
        });
    return writePurdy(descent);
}

Result<Comparison> compare(const OrchardView& view, const Store& store,
                           const std::vector<Index>& genotypes) {
    Comparison comparison;
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
        if (auto line = purdyLine(view, genotype)) {
            column.purdy = *line;
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
