#include "core/evaluation/merit/keeping_by_genotype.h"
#include "core/orchard/dictionary.h"
#include "core/statistics/censored_mixed_model.h"
#include "core/statistics/distributions.h"
#include "core/units/text.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <unordered_map>
#include <utility>

namespace pipwright {

namespace {

constexpr double kAbout = 1.0 / 7;
constexpr double kShortest = 0.5; // days; a lot that was gone at the first look
constexpr VariancePrior kLifeOfGenotype{0.16, 4};
constexpr VariancePrior kLifeOfLot{0.25, 4};

std::optional<StoragePath> pathNamed(const std::string& instrument) {
    const std::string name = foldedForSearch(instrument);
    for (const auto& [word, path] : {std::pair{"counter", StoragePath::counter},
                                     {"fridge", StoragePath::fridge},
                                     {"refrigerator", StoragePath::fridge},
                                     {"cellar", StoragePath::cellar}}) {
        if (name.find(word) != std::string::npos) {
            return path;
        }
    }
    return std::nullopt;
}

std::optional<Index> keptGenotype(const OrchardView& view, const Store& store,
                                  const Observation& one) {
    std::optional<PlantId> plant = one.plant;
    std::optional<GenotypeId> genotype = one.genotype;
    if (one.lot) {
        const auto lot = store.get(*one.lot);
        if (lot && *lot) {
            plant = (*lot)->plant;
            genotype = (*lot)->claimedGenotype;
        }
    }
    if (plant) {
        const auto at = view.plant(*plant);
        return at ? view.plants()[*at].genotype : std::nullopt;
    }
    return genotype ? view.genotype(*genotype) : std::nullopt;
}

/// What the value says of the last good day.
void putBounds(const Observation& one, LastGoodDay& day) {
    const double value = *one.value;
    switch (one.qualifier) {
    case Qualifier::lessThan:
        day.high = value;
        break;
    case Qualifier::greaterThan:
        day.low = value;
        break;
    case Qualifier::about:
        day.low = value * (1 - kAbout);
        day.high = value * (1 + kAbout);
        break;
    case Qualifier::range:
        day.low = value;
        day.high = std::max(value, one.valueTo.value_or(value));
        break;
    case Qualifier::unknown:
    case Qualifier::exact:
        day.low = value;
        day.high = value;
        break;
    }
}

/// The lives of one path.
Outcome addLives(StoragePath path, const std::vector<LastGoodDay>& days,
                 const KeepingChoices& choices, std::vector<LastGoodKeeping>& lives) {
    std::map<Index, std::int32_t> levels;
    std::unordered_map<Index, int> lots;
    MixedModel model;
    RandomTerm term;
    term.name = "genotype";
    std::vector<ResponseInterval> responses;
    for (const LastGoodDay& day : days) {
        const auto level =
            levels.try_emplace(day.genotype, static_cast<std::int32_t>(levels.size())).first;
        term.levels.ofRecord.push_back(level->second);
        ++lots[day.genotype];
        ResponseInterval response;
        if (day.low > 0 || (day.high && *day.high <= kShortest)) {
            response.low = std::log(std::max(day.low, kShortest));
        }
        if (day.high) {
            response.high = std::log(std::max(*day.high, kShortest));
        }
        responses.push_back(response);
    }
    term.levels.count = static_cast<std::int32_t>(levels.size());
    // One genotype alone does not tell how genotypes vary.
    term.variance = levels.size() > 1 ? VarianceChoice::inverseChiSquare(kLifeOfGenotype.variance,
                                                                         kLifeOfGenotype.weight)
                                      : VarianceChoice::held(kLifeOfGenotype.variance);
    model.random.push_back(std::move(term));
    model.residual.variance = {
        VarianceChoice::inverseChiSquare(kLifeOfLot.variance, kLifeOfLot.weight)};
    model.response.assign(responses.size(), 0.0);
    auto fit = fitCensoredMixedModel(model, responses);
    if (!fit) { // nor do very few of several
        model.random.front().variance = VarianceChoice::held(kLifeOfGenotype.variance);
        fit = fitCensoredMixedModel(std::move(model), responses);
    }
    if (!fit) {
        return fit.problem();
    }
    for (const auto& [genotype, level] : levels) {
        const auto middle =
            fit->contrast({{EffectRef::theIntercept(), 1}, {EffectRef::ofRandom(0, level), 1}});
        if (!middle) {
            return middle.problem();
        }
        LastGoodKeeping life;
        life.genotype = genotype;
        life.path = path;
        life.lots = lots[genotype];
        life.logDay = *middle;
        const double spread =
            std::sqrt(fit->residualVariance() + middle->standardError * middle->standardError);
        life.daysGood = std::exp(middle->value - standardNormalQuantile(choices.share) * spread);
        life.halfGood = std::exp(middle->value);
        lives.push_back(life);
    }
    return {};
}

} // namespace

Result<std::vector<LastGoodDay>> readLastGoodDays(const OrchardView& view, const Store& store,
                                                  std::optional<Date> asOf) {
    const auto all = store.where<Observation>("trait", shippedTraitId(trait_key::kDaysGood).uuid);
    if (!all) {
        return all.problem();
    }
    std::vector<LastGoodDay> days;
    for (const Observation& one : *all) {
        const auto path = pathNamed(one.instrument);
        const bool late = asOf && (!one.date || *one.date > *asOf);
        if (!one.voidReason.empty() || !one.value || !path || late) {
            continue;
        }
        const auto genotype = keptGenotype(view, store, one);
        if (genotype) {
            LastGoodDay day;
            day.genotype = *genotype;
            day.path = *path;
            putBounds(one, day);
            days.push_back(day);
        }
    }
    return days;
}

Result<std::vector<LastGoodKeeping>> lastGoodByGenotype(std::span<const LastGoodDay> days,
                                                        const KeepingChoices& choices) {
    if (days.empty()) {
        return Problem{ProblemCode::badInput, "Nobody has noted how long a lot stayed good.",
                       "Note days still good, with the path they lay on.", ""};
    }
    std::vector<LastGoodKeeping> lives;
    for (const StoragePath path : kKeepingPaths) {
        std::vector<LastGoodDay> here;
        std::copy_if(days.begin(), days.end(), std::back_inserter(here),
                     [path](const LastGoodDay& day) { return day.path == path; });
        const bool ended = std::any_of(here.begin(), here.end(),
                                       [](const LastGoodDay& day) { return day.high.has_value(); });
        if (ended) {
            if (auto done = addLives(path, here, choices, lives); !done) {
                return done.problem();
            }
        }
    }
    return lives;
}

} // namespace pipwright
