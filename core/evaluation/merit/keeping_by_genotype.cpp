#include "core/evaluation/merit/keeping_by_genotype.h"

#include "core/evaluation/merit/ladder_odds.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <unordered_map>
#include <utility>

namespace pipwright {

namespace {

constexpr std::size_t kPaths = kKeepingPaths.size();
constexpr double kSlopeShare = 0.5; // of the general slope: spread of the genotypes' slopes
constexpr double kSlopeWeight = 6;
using PathDays = std::array<double, kPaths>;

Problem nothingKept() {
    return {ProblemCode::badInput, "No fruit was tasted after it was kept.",
            "Taste some that lay on the counter, in the fridge or in the cellar.", ""};
}

/// The place among the paths of a condition that counts days; nothing for all others.
std::optional<std::size_t> pathOfCondition(std::uint8_t condition) {
    static constexpr std::array<std::string_view, kPaths> kKeys = {
        "day on the counter", "day in the refrigerator", "day in the cellar"};
    const auto at = std::find(kKeys.begin(), kKeys.end(), conditionClasses()[condition].key);
    return at == kKeys.end() ? std::nullopt
                             : std::optional(static_cast<std::size_t>(at - kKeys.begin()));
}

PathDays daysOn(const TraitRecord& record) {
    PathDays days{};
    for (const ConditionAmount& one : record.conditions) {
        if (const auto path = pathOfCondition(one.condition)) {
            days[*path] += static_cast<double>(one.amount);
        }
    }
    return days;
}

bool isKept(const PathDays& days) {
    return std::any_of(days.begin(), days.end(), [](double one) { return one > 0; });
}

bool hasUnknownStorage(const TraitRecord& record) {
    return std::any_of(record.conditions.begin(), record.conditions.end(), [](const auto& one) {
        return conditionClasses()[one.condition].correction == Correction::storage &&
               !pathOfCondition(one.condition);
    });
}

/// Codes for keys as they come.
template <typename Key>
class KeepingCodes {
  public:
    void add(const Key& key) {
        const auto [at, fresh] = m_known.try_emplace(key, m_codes.count);
        m_codes.count += fresh ? 1 : 0;
        m_codes.ofRecord.push_back(at->second);
    }
    [[nodiscard]] const LevelCodes& codes() const { return m_codes; }

  private:
    std::map<Key, std::int32_t> m_known;
    LevelCodes m_codes;
};

/// Sets up and solves the model of keeping.
class KeepingFitter {
  public:
    KeepingFitter(const MeritModel& model, const KeepingChoices& choices)
        : m_model(model), m_choices(choices) {}

    Result<KeepingByGenotype> run(const std::stop_token& stop) {
        chooseRecords();
        if (m_records.empty()) {
            return nothingKept();
        }
        chooseBeliefs();
        build();
        FitControl control;
        control.stop = stop;
        control.tolerance = 1e-6;
        const auto fit = fitMixedModel(m_mixed, control);
        if (!fit) {
            return fit.problem();
        }
        return read(*fit);
    }

  private:
    void chooseRecords() {
        std::set<Index> kept;
        for (const TraitRecord& record : m_model.records().records) {
            if (isKept(daysOn(record))) {
                kept.insert(record.genotype);
            }
        }
        for (const TraitRecord& record : m_model.records().records) {
            if (kept.contains(record.genotype) && !hasUnknownStorage(record)) {
                m_records.push_back(&record);
            }
        }
        m_genotypes.assign(kept.begin(), kept.end());
    }

    void chooseBeliefs() {
        m_found.assign(conditionClasses().size(), 0.0);
        for (const ConditionReport& report : m_model.conditions()) {
            m_found[report.condition] = report.found.value;
            if (const auto path = pathOfCondition(report.condition)) {
                m_believed[*path] = report.believed;
            }
        }
        for (std::size_t path = 0; path < kPaths; ++path) {
            if (m_believed[path]) {
                m_scale[path] = kSlopeShare * std::hypot(m_believed[path]->value,
                                                         m_believed[path]->standardError);
            }
        }
    }

    /// What the states of the fruit did to a score, keeping left in.
    [[nodiscard]] double statesOf(const TraitRecord& record, bool kept) const {
        double sum = 0;
        for (const ConditionAmount& one : record.conditions) {
            const bool ripeness =
                conditionClasses()[one.condition].correction == Correction::ripeness;
            if (!pathOfCondition(one.condition) && !(kept && ripeness)) {
                sum += m_found[one.condition] * static_cast<double>(one.amount);
            }
        }
        return sum;
    }

    void build() {
        KeepingCodes<Index> genotypes;
        KeepingCodes<std::pair<Index, std::int32_t>> years;
        KeepingCodes<std::int32_t> lots;
        KeepingCodes<std::int32_t> tasters;
        KeepingCodes<std::int32_t> sittings;
        for (const Index one : m_genotypes) {
            m_levelOf.emplace(one, static_cast<std::int32_t>(m_levelOf.size()));
        }
        LevelCodes own;
        own.count = static_cast<std::int32_t>(m_genotypes.size());
        for (const TraitRecord* record : m_records) {
            const PathDays days = daysOn(*record);
            double expected = statesOf(*record, isKept(days));
            double noise = 1;
            for (std::size_t path = 0; path < kPaths; ++path) {
                expected += m_believed[path] ? m_believed[path]->value * days[path] : 0;
            }
            for (const ConditionAmount& one : record->conditions) {
                noise += conditionClasses()[one.condition].noise * static_cast<double>(one.amount);
            }
            m_days.push_back(days);
            m_mixed.response.push_back(record->value - expected);
            m_mixed.weights.push_back(1 / noise);
            own.ofRecord.push_back(m_levelOf.at(record->genotype));
            years.add({record->genotype, record->cropYear});
            lots.add(record->lot);
            tasters.add(record->person);
            sittings.add(record->sitting);
        }
        m_genotypeTerm = add(MeritTerm::genotype, own);
        add(MeritTerm::genotypeYear, years.codes());
        add(MeritTerm::lot, lots.codes());
        m_tasterTerm = add(MeritTerm::taster, tasters.codes());
        m_sittingTerm = add(MeritTerm::sitting, sittings.codes());
        addSlopes(own);
        m_mixed.residual.variance = {VarianceChoice::held(m_model.residualVariance())};
    }

    std::int32_t add(MeritTerm term, const LevelCodes& codes) {
        if (m_model.varianceOf(term) <= 0) {
            return -1;
        }
        RandomTerm random;
        random.levels = codes;
        random.variance = VarianceChoice::held(m_model.varianceOf(term));
        m_mixed.random.push_back(std::move(random));
        return static_cast<std::int32_t>(m_mixed.random.size()) - 1;
    }

    /// Each slope is counted in its own scale, so that the variances are near 1.
    void addSlopes(const LevelCodes& genotypes) {
        m_general.fill(-1);
        m_own.fill(-1);
        for (std::size_t path = 0; path < kPaths; ++path) {
            if (!m_believed[path]) {
                continue;
            }
            RandomTerm general;
            general.intercept = false;
            general.levels.count = 1;
            general.levels.ofRecord.assign(m_records.size(), 0);
            general.covariates.emplace_back();
            RandomTerm own;
            own.intercept = false;
            own.levels = genotypes;
            own.covariates.emplace_back();
            for (const PathDays& days : m_days) {
                general.covariates[0].push_back(days[path] * m_believed[path]->standardError);
                own.covariates[0].push_back(days[path] * m_scale[path]);
            }
            general.variance = VarianceChoice::held(1);
            own.variance = VarianceChoice::inverseChiSquare(1, kSlopeWeight);
            m_general[path] = static_cast<std::int32_t>(m_mixed.random.size());
            m_mixed.random.push_back(std::move(general));
            m_own[path] = static_cast<std::int32_t>(m_mixed.random.size());
            m_mixed.random.push_back(std::move(own));
        }
    }

    [[nodiscard]] Contrast slopeOf(std::size_t path, std::optional<std::int32_t> genotype) const {
        Contrast slope = {
            {EffectRef::ofRandom(m_general[path], 0), m_believed[path]->standardError}};
        if (genotype) {
            slope.push_back({EffectRef::ofRandom(m_own[path], *genotype), m_scale[path]});
        }
        return slope;
    }

    Result<KeepingByGenotype> read(const MixedFit& fit) {
        KeepingByGenotype keeping;
        keeping.choices = m_choices;
        keeping.lotVariance = m_model.varianceOf(MeritTerm::lot);
        for (std::size_t path = 0; path < kPaths; ++path) {
            if (!m_believed[path]) {
                continue;
            }
            auto general = fit.contrast(slopeOf(path, std::nullopt));
            if (!general) {
                return general.problem();
            }
            general->value += m_believed[path]->value;
            keeping.general[path] = *general;
            keeping.spread[path] = m_scale[path] * std::sqrt(fit.variance(m_own[path]));
        }
        for (const Index genotype : m_genotypes) {
            if (auto done = readGenotype(fit, genotype, keeping); !done) {
                return done.problem();
            }
        }
        readScores(fit, keeping);
        return keeping;
    }

    Outcome readGenotype(const MixedFit& fit, Index genotype, KeepingByGenotype& keeping) const {
        const std::int32_t level = m_levelOf.at(genotype);
        const Contrast fresh = {{EffectRef::theIntercept(), 1},
                                {EffectRef::ofRandom(m_genotypeTerm, level), 1}};
        for (std::size_t path = 0; path < kPaths; ++path) {
            GenotypeKeeping curve;
            curve.genotype = genotype;
            curve.path = kKeepingPaths[path];
            countKept(path, curve);
            if (curve.scores == 0) {
                continue;
            }
            const std::array both = {fresh, slopeOf(path, level)};
            const auto covariances = fit.contrastCovariances(both);
            const auto start = fit.contrast(both[0]);
            const auto slope = fit.contrast(both[1]);
            if (!covariances || !start || !slope) {
                return nothingKept();
            }
            curve.fresh = *start;
            curve.slope = *slope;
            curve.slope.value += m_believed[path]->value;
            curve.together = (*covariances)[1];
            keeping.curves.push_back(curve);
        }
        return {};
    }

    void countKept(std::size_t path, GenotypeKeeping& curve) const {
        std::set<std::int32_t> lots;
        for (std::size_t i = 0; i < m_records.size(); ++i) {
            if (m_records[i]->genotype == curve.genotype && m_days[i][path] > 0) {
                ++curve.scores;
                lots.insert(m_records[i]->lot);
                curve.longest = std::max(curve.longest, m_days[i][path]);
            }
        }
        curve.lots = static_cast<int>(lots.size());
    }

    void readScores(const MixedFit& fit, KeepingByGenotype& keeping) const {
        for (std::size_t i = 0; i < m_records.size(); ++i) {
            double value = m_records[i]->value - statesOf(*m_records[i], isKept(m_days[i]));
            for (const std::int32_t term : {m_tasterTerm, m_sittingTerm}) {
                if (term >= 0) {
                    const auto at = static_cast<std::size_t>(term);
                    value -=
                        fit.randomEffects()[at].prediction(m_mixed.random[at].levels.ofRecord[i]);
                }
            }
            keeping.scores.push_back(
                {m_records[i]->genotype, m_days[i], value, m_records[i]->source});
        }
    }

    const MeritModel& m_model;
    const KeepingChoices& m_choices;
    std::vector<const TraitRecord*> m_records;
    std::vector<Index> m_genotypes;
    std::unordered_map<Index, std::int32_t> m_levelOf;
    std::vector<double> m_found; ///< by condition
    std::array<std::optional<UncertainValue>, kPaths> m_believed;
    std::array<double, kPaths> m_scale{};
    std::vector<PathDays> m_days; ///< of each record
    MixedModel m_mixed;
    std::array<std::int32_t, kPaths> m_general{};
    std::array<std::int32_t, kPaths> m_own{};
    std::int32_t m_genotypeTerm = -1;
    std::int32_t m_tasterTerm = -1;
    std::int32_t m_sittingTerm = -1;
};

/// The last day on which the wanted share of lots is still good, to a tenth of a day.
std::optional<double> lastDayGood(const GenotypeKeeping& curve, double lotVariance,
                                  const KeepingChoices& choices, double share) {
    constexpr double kStep = 0.1;
    const auto good = [&](double day) {
        const UncertainValue value = curve.at(day);
        return chanceAboveZero(value.value - choices.goodFrom,
                               value.standardError * value.standardError + lotVariance) >= share;
    };
    const int steps = static_cast<int>(choices.mostDays / kStep);
    for (int step = 0; step <= steps; ++step) {
        if (!good(step * kStep)) {
            return std::max(0.0, (step - 1) * kStep);
        }
    }
    return std::nullopt;
}

void putDays(GenotypeKeeping& curve, double lotVariance, const KeepingChoices& choices) {
    curve.daysGood = lastDayGood(curve, lotVariance, choices, choices.share);
    curve.halfGood = lastDayGood(curve, lotVariance, choices, 0.5);
}

} // namespace

UncertainValue GenotypeKeeping::at(double day) const {
    const double variance = fresh.standardError * fresh.standardError + 2 * day * together +
                            day * day * slope.standardError * slope.standardError;
    return {fresh.value + day * slope.value, std::sqrt(std::max(variance, 0.0))};
}

const GenotypeKeeping* KeepingByGenotype::of(Index genotype, StoragePath path) const {
    const auto found = std::find_if(curves.begin(), curves.end(), [&](const auto& curve) {
        return curve.genotype == genotype && curve.path == path;
    });
    return found == curves.end() ? nullptr : &*found;
}

std::optional<GenotypeKeeping> KeepingByGenotype::curveOf(const MeritModel& model, Index genotype,
                                                          StoragePath path) const {
    if (const GenotypeKeeping* own = of(genotype, path)) {
        return *own;
    }
    const auto at = std::find(kKeepingPaths.begin(), kKeepingPaths.end(), path);
    const GenotypeMerit* merit = model.meritOf(genotype);
    if (at == kKeepingPaths.end() || merit == nullptr) {
        return std::nullopt;
    }
    const auto place = static_cast<std::size_t>(at - kKeepingPaths.begin());
    if (!general[place]) {
        return std::nullopt;
    }
    GenotypeKeeping curve;
    curve.genotype = genotype;
    curve.path = path;
    curve.fresh = merit->merit;
    curve.slope = {general[place]->value, std::hypot(general[place]->standardError, spread[place])};
    putDays(curve, lotVariance, choices);
    return curve;
}

Result<KeepingByGenotype> keepingByGenotype(const MeritModel& model, const KeepingChoices& choices,
                                            std::stop_token stop) {
    if (!(choices.share > 0 && choices.share < 1) || choices.mostDays < 1 ||
        !std::isfinite(choices.goodFrom)) {
        return Problem{ProblemCode::badInput,
                       "A share lies between 0 and 1, and days are counted from 1.",
                       "Set them again.", "keeping"};
    }
    auto keeping = KeepingFitter(model, choices).run(stop);
    if (!keeping) {
        return keeping;
    }
    for (GenotypeKeeping& curve : keeping->curves) {
        putDays(curve, keeping->lotVariance, choices);
    }
    return keeping;
}

} // namespace pipwright
