#include "core/evaluation/comparison.h"

#include "core/evaluation/usual_ripening.h"
#include "core/pedigree/descent.h"
#include "core/pedigree/purdy.h"
#include "core/units/text.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <set>

namespace pipwright {

namespace {

constexpr int kGenerations = 3;
constexpr int kDaysOfAYear = 365;
constexpr int kFewestValues = 3;
constexpr std::size_t kMostSaid = 8;
constexpr int kUnknownLast = 9999;

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
            one.daysOff = daysOffTree(lot.lot);
            one.storage = lot.lot.storage;
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

void addSeason(ComparedGenotype& column) {
    ComparedSeason& season = column.season;
    std::vector<int> firsts;
    std::vector<int> lasts;
    for (const LifeYear& year : column.life.years) {
        const ObservedWindow& window = year.window;
        if (window.empty()) {
            continue;
        }
        const ComparedWindow days{year.cropYear, dayOfCropYear(year.cropYear, window.stillGreen),
                                  dayOfCropYear(year.cropYear, window.firstRipe),
                                  dayOfCropYear(year.cropYear, window.lastRipe),
                                  dayOfCropYear(year.cropYear, window.over)};
        season.windows.push_back(days);
        if (days.firstRipe) {
            firsts.push_back(*days.firstRipe);
            lasts.push_back(days.over ? *days.over - 1 : days.lastRipe.value_or(*days.firstRipe));
        }
    }
    season.usualFirst = medianDay(std::move(firsts));
    season.usualLast = medianDay(std::move(lasts));
}

void addKeeping(ComparedGenotype& column) {
    ComparedKeeping& keeping = column.keeping;
    std::vector<double> kept;
    for (const ComparedScore& score : column.scores) {
        if (!score.daysOff) {
            continue;
        }
        if (*score.daysOff > kFairDays) {
            kept.push_back(score.liking);
        }
        if (!keeping.longestDays || *score.daysOff > *keeping.longestDays) {
            keeping.longestDays = score.daysOff;
            keeping.longestPath = score.storage;
        }
    }
    if (!kept.empty()) {
        keeping.liking = summaryOf(TraitId(), kept);
    }
}

/// Days from one day of the crop year to another, the short way round the year.
int daysFrom(int one, int other) {
    const int straight = other - one;
    const int around = straight > 0 ? straight - kDaysOfAYear : straight + kDaysOfAYear;
    return std::abs(straight) <= std::abs(around) ? straight : around;
}

/// The genotype with its known ancestors so many generations back, itself at 0: small, whatever
/// the size of the book.
class NearAncestors {
  public:
    NearAncestors(const OrchardView& view, Index genotype) : m_view(view) {
        numberOf(genotype);
        std::size_t done = 0;
        for (int generation = 0; generation < kGenerations; ++generation) {
            const std::size_t last = m_members.size();
            for (; done < last; ++done) {
                const ParentsOf parents = view.parentsOf(m_members[done]);
                const auto at = [this](const std::optional<Index>& one) {
                    return one ? std::optional(numberOf(*one)) : std::nullopt;
                };
                const Parents numbered{at(parents.seed), at(parents.pollen)};
                m_parents[done] = numbered;
            }
        }
    }

    [[nodiscard]] std::string purdy() const {
        const auto nameOf = [this](int one) { return m_view.genotypes()[memberAt(one)].called(); };
        const auto pedigree = Pedigree::of(m_parents, nameOf);
        if (!pedigree) { // a ring
            return {};
        }
        const auto isOpen = [this](int one) {
            return m_view.parentsOf(memberAt(one)).pollination == Pollination::open;
        };
        return writePurdy(descentOf(*pedigree, 0, kGenerations, nameOf, isOpen));
    }

  private:
    [[nodiscard]] Index memberAt(int number) const {
        return m_members[static_cast<std::size_t>(number)];
    }
    int numberOf(Index genotype) {
        const auto [at, fresh] =
            m_numbers.try_emplace(genotype, static_cast<int>(m_members.size()));
        if (fresh) {
            m_members.push_back(genotype);
            m_parents.emplace_back();
        }
        return at->second;
    }

    const OrchardView& m_view;
    std::map<Index, int> m_numbers;
    std::vector<Index> m_members;
    std::vector<Parents> m_parents;
};

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

std::string purdyLine(const OrchardView& view, Index genotype) {
    return NearAncestors(view, genotype).purdy();
}

Result<ComparedGenotype> compared(const OrchardView& view, const Store& store, Index genotype) {
    auto life = lifeOfGenotype(view, store, genotype);
    if (!life) {
        return life.problem();
    }
    ComparedGenotype column;
    column.genotype = genotype;
    column.plant = view.plantFor(genotype);
    column.life = std::move(*life);
    column.facts = view.genotypeFacts(genotype);
    column.purdy = purdyLine(view, genotype);
    addScores(column);
    addTraits(view, column);
    addSeason(column);
    addKeeping(column);
    return column;
}

Comparison sideBySide(const OrchardView& view, std::vector<ComparedGenotype> columns) {
    Comparison comparison;
    comparison.columns = std::move(columns);
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

Result<Comparison> compare(const OrchardView& view, const Store& store,
                           const std::vector<Index>& genotypes) {
    std::vector<ComparedGenotype> columns;
    for (const Index genotype : genotypes) {
        auto column = compared(view, store, genotype);
        if (!column) {
            return column.problem();
        }
        columns.push_back(std::move(*column));
    }
    return sideBySide(view, std::move(columns));
}

std::vector<NearBenchmark> benchmarksNear(const OrchardView& view, Index genotype) {
    const GenotypeEntry& own = view.genotypes()[genotype];
    const auto day = view.genotypeFacts(genotype).usualRipeDay;
    std::vector<NearBenchmark> near;
    for (Index i = 0; i < view.genotypes().size(); ++i) {
        const GenotypeEntry& other = view.genotypes()[i];
        if (i == genotype || other.erased || !other.benchmark || other.species != own.species) {
            continue;
        }
        const auto otherDay = view.genotypeFacts(i).usualRipeDay;
        NearBenchmark one{i, std::nullopt};
        if (day && otherDay) {
            one.daysLater = daysFrom(*day, *otherDay);
        }
        near.push_back(one);
    }
    std::stable_sort(near.begin(), near.end(), [](const auto& a, const auto& b) {
        return std::abs(a.daysLater.value_or(kUnknownLast)) <
               std::abs(b.daysLater.value_or(kUnknownLast));
    });
    return near;
}

} // namespace pipwright
