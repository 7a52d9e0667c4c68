#include "core/evaluation/merit/merit_model.h"

#include "core/evaluation/merit/merit_content.h"
#include "core/evaluation/merit/variance_doubt.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace pipwright {

namespace {

/// From so many scores on a taster's noise is his own.
constexpr int kScoresForOwnNoise = 15;

std::size_t slotOf(MeritTerm term) {
    return static_cast<std::size_t>(term);
}

std::size_t slotOf(std::int32_t number) {
    return static_cast<std::size_t>(number);
}

/// All scores equal: there is nothing to tell them apart by.
bool allAlike(const TraitRecords& records) {
    return std::all_of(
        records.records.begin(), records.records.end(),
        [&](const TraitRecord& record) { return record.value == records.records.front().value; });
}

double spreadOf(const TraitRecords& records) {
    double mean = 0;
    const auto count = static_cast<double>(records.records.size());
    for (const TraitRecord& record : records.records) {
        mean += record.value / count;
    }
    double squares = 0;
    for (const TraitRecord& record : records.records) {
        squares += (record.value - mean) * (record.value - mean);
    }
    return std::sqrt(squares / std::max(1.0, count - 1));
}

FoundVariances variancesOf(const MeritDesign& design, const MixedFit& fit, std::size_t persons) {
    FoundVariances found;
    for (const MeritTerm term : kMeritTerms) {
        const std::int32_t at = design.termAt[slotOf(term)];
        found.terms.push_back(at >= 0 ? fit.variance(at) : design.priors.of(term).variance);
    }
    found.residual = fit.residualVariance(0);
    for (std::size_t person = 0; person < persons; ++person) {
        found.tasterResiduals.push_back(fit.residualVariance(design.residualGroupOf[person]));
    }
    return found;
}

/// What the records alone say of each genotype.
std::vector<GenotypeMerit> countRecords(const MeritDesign& design, const TraitRecords& records) {
    struct Seen {
        double sum = 0;
        std::set<std::int32_t> lots, fairLots, tasters, sittings, years;
    };
    std::vector<GenotypeMerit> merits(design.genotypes.size());
    std::vector<Seen> seen(design.genotypes.size());
    for (const TraitRecord& record : records.records) {
        const std::size_t at = slotOf(design.levelOf.at(record.genotype));
        GenotypeMerit& merit = merits[at];
        ++merit.records;
        merit.fairRecords += record.fair ? 1 : 0;
        seen[at].sum += record.value;
        seen[at].years.insert(record.cropYear);
        if (record.lot >= 0) {
            seen[at].lots.insert(record.lot);
            if (record.fair) {
                seen[at].fairLots.insert(record.lot);
            }
        }
        if (record.person >= 0) {
            seen[at].tasters.insert(record.person);
        }
        if (record.sitting >= 0) {
            seen[at].sittings.insert(record.sitting);
        }
    }
    for (std::size_t at = 0; at < merits.size(); ++at) {
        GenotypeMerit& merit = merits[at];
        merit.genotype = design.genotypes[at];
        merit.rawMean = merit.records > 0 ? seen[at].sum / merit.records : 0;
        merit.lots = static_cast<int>(seen[at].lots.size());
        merit.fairLots = static_cast<int>(seen[at].fairLots.size());
        merit.tasters = static_cast<int>(seen[at].tasters.size());
        merit.sittings = static_cast<int>(seen[at].sittings.size());
        merit.cropYears = static_cast<int>(seen[at].years.size());
    }
    return merits;
}

/// Adds level and genotype of each, with the errors that go with their sum.
Result<std::vector<GenotypeMerit>> estimateMerits(const MeritDesign& design,
                                                  const TraitRecords& records, const MixedFit& fit,
                                                  const MeritMoves& moves) {
    std::vector<GenotypeMerit> merits = countRecords(design, records);
    const std::int32_t term = design.termAt[slotOf(MeritTerm::genotype)];
    const RandomEffects& effects = fit.randomEffects()[slotOf(term)];
    const std::vector<double> values = meritValues(design, fit);
    double levelVariance = 0;
    std::vector<double> together(merits.size(), 0.0);
    if (const Contrast general = levelContrast(design); !general.empty()) {
        const Result<UncertainValue> value = fit.contrast(general);
        if (!value) {
            return value.problem();
        }
        levelVariance = value->standardError * value->standardError;
        Result<std::vector<double>> covariances =
            fit.contrastCovariancesWith(std::span(&general, 1), term);
        if (!covariances) {
            return covariances.problem();
        }
        together = std::move(*covariances);
    }
    for (std::size_t at = 0; at < merits.size(); ++at) {
        const auto number = static_cast<std::int32_t>(at);
        double variance = effects.errorVariance(number) + levelVariance + 2 * together[at];
        for (const std::vector<double>& move : moves) {
            variance += 2 * move[at] * move[at];
        }
        merits[at].merit = {values[at], std::sqrt(std::max(variance, 0.0))};
        merits[at].reliability = effects.reliability(number);
    }
    return merits;
}

std::vector<bool> tastersWithEnough(const TraitRecords& records) {
    std::vector<int> scores(records.persons.size(), 0);
    for (const TraitRecord& record : records.records) {
        if (record.person >= 0) {
            ++scores[slotOf(record.person)];
        }
    }
    std::vector<bool> enough;
    for (const int count : scores) {
        enough.push_back(count >= kScoresForOwnNoise);
    }
    return enough;
}

struct FittedDesign {
    MeritDesign design;
    MixedModelEquations equations;
    MixedFit fit;
    std::vector<bool> ownNoise;
};

Result<FittedDesign> fitDesign(const MeritFamilies& families, const TraitRecords& records,
                               const MeritOptions& options, const KnownBefore& known,
                               const std::stop_token& stop) {
    Result<MeritDesign> design = meritDesign(families, records, options, known);
    if (!design) {
        return design.problem();
    }
    FitControl control;
    control.stop = stop;
    control.tolerance = 1e-6; // of twice the log-likelihood: far below any doubt about variances
    Result<MixedModelEquations> equations = MixedModelEquations::of(design->model, stop);
    if (!equations) {
        return equations.problem();
    }
    Result<MixedFit> fit = equations->fit(control);
    if (!fit) {
        return fit.problem();
    }
    return FittedDesign{std::move(*design), std::move(*equations), std::move(*fit),
                        std::vector<bool>(records.persons.size(), false)};
}

/// First with one residual for all, then with one for each taster who has enough scores.
Result<FittedDesign> fitWithTasterNoise(const MeritFamilies& families, const TraitRecords& records,
                                        const MeritOptions& options, const std::stop_token& stop) {
    Result<FittedDesign> first = fitDesign(families, records, options, {}, stop);
    const std::vector<bool> enough = tastersWithEnough(records);
    if (!first || !options.tasterNoise || std::count(enough.begin(), enough.end(), true) < 2) {
        return first;
    }
    const TasterNoise noise{first->fit.residualVariance(0), enough};
    Result<FittedDesign> second = fitDesign(families, records, options, {nullptr, &noise}, stop);
    if (second) {
        second->ownNoise = enough;
    }
    return second;
}

} // namespace

Result<MeritModel> MeritModel::fit(const OrchardView& view, TraitRecords records,
                                   const MeritOptions& options, std::stop_token stop) {
    Result<Pedigree> pedigree = view.pedigree();
    if (!pedigree) {
        return pedigree.problem();
    }
    std::vector<std::string> names;
    names.reserve(view.genotypes().size());
    for (Index i = 0; i < view.genotypes().size(); ++i) {
        names.push_back(view.genotypes()[i].called());
    }
    return fit({std::make_shared<const Pedigree>(std::move(*pedigree)),
                std::make_shared<const std::vector<std::string>>(std::move(names))},
               std::move(records), options, std::move(stop));
}

Result<MeritModel> MeritModel::fit(MeritFamilies families, TraitRecords records,
                                   const MeritOptions& options, std::stop_token stop) {
    if (records.records.size() > 1 && allAlike(records)) {
        return Problem{ProblemCode::badInput,
                       "All scores are the same, so nothing can be told apart.",
                       "Taste again, and use the whole of the scale.", ""};
    }
    if (records.records.size() == 1 && !records.isLiking() && !options.priors) {
        return Problem{ProblemCode::badInput,
                       "One value alone does not say how much this trait varies.",
                       "Record it on more fruit or trees.", ""};
    }
    auto shared = std::make_shared<const TraitRecords>(std::move(records));
    Result<FittedDesign> fitted = fitWithTasterNoise(families, *shared, options, stop);
    if (!fitted) {
        return fitted.problem();
    }
    Result<MeritMoves> moves = varianceDoubt(fitted->design, fitted->equations, fitted->fit, stop);
    if (!moves) {
        return moves.problem();
    }
    auto merits = estimateMerits(fitted->design, *shared, fitted->fit, *moves);
    if (!merits) {
        return merits.problem();
    }
    FoundVariances found = variancesOf(fitted->design, fitted->fit, shared->persons.size());
    const double spread = spreadOf(*shared);
    return MeritModel(std::make_shared<const Content>(
        Content{std::move(families), std::move(shared), options, std::move(fitted->design),
                std::move(found), std::move(fitted->ownNoise), std::move(fitted->fit),
                std::move(*merits), spread, std::move(*moves)}));
}

Result<MeritModel> MeritModel::switched(const MeritOptions& options) const {
    MeritOptions held = options;
    held.priors = m_content->design.priors;
    Result<FittedDesign> fitted =
        fitDesign(m_content->families, records(), held, {&m_content->found, nullptr}, {});
    if (!fitted) {
        return fitted.problem();
    }
    // The doubt about the variances stays what it was.
    MeritMoves moves;
    for (const std::vector<double>& known : m_content->moves) {
        std::vector<double> move(fitted->design.genotypes.size(), 0.0);
        for (std::size_t at = 0; at < move.size(); ++at) {
            const auto level = m_content->design.levelOf.find(fitted->design.genotypes[at]);
            if (level != m_content->design.levelOf.end()) {
                move[at] = known[slotOf(level->second)];
            }
        }
        moves.push_back(std::move(move));
    }
    auto merits = estimateMerits(fitted->design, records(), fitted->fit, moves);
    if (!merits) {
        return merits.problem();
    }
    return MeritModel(std::make_shared<const Content>(
        Content{m_content->families, m_content->records, std::move(held), std::move(fitted->design),
                m_content->found, m_content->ownNoise, std::move(fitted->fit), std::move(*merits),
                m_content->spread, std::move(moves)}));
}

const TraitRecords& MeritModel::records() const {
    return *m_content->records;
}
const MeritOptions& MeritModel::options() const {
    return m_content->options;
}
const std::vector<GenotypeMerit>& MeritModel::merits() const {
    return m_content->merits;
}
const MixedFit& MeritModel::mixedFit() const {
    return m_content->fit;
}
bool MeritModel::converged() const {
    return m_content->fit.converged();
}
double MeritModel::spread() const {
    return m_content->spread;
}
double MeritModel::residualVariance() const {
    return m_content->found.residual;
}

const GenotypeMerit* MeritModel::meritOf(Index genotype) const {
    const auto found = m_content->design.levelOf.find(genotype);
    return found == m_content->design.levelOf.end() ? nullptr
                                                    : &m_content->merits[slotOf(found->second)];
}

std::vector<TermReport> MeritModel::terms() const {
    std::vector<TermReport> reports = m_content->design.reports;
    for (TermReport& report : reports) {
        if (report.footing != TermFooting::absent) {
            report.variance = m_content->found.terms[slotOf(report.term)];
        }
    }
    return reports;
}

std::vector<ConditionReport> MeritModel::conditions() const {
    const MeritDesign& design = m_content->design;
    std::vector<ConditionReport> reports;
    for (std::size_t i = 0; i < design.conditions.size(); ++i) {
        const ConditionTerm& mine = design.conditions[i];
        if (mine.term < 0) {
            continue;
        }
        const ConditionClass& belief = design.priors.conditions[i];
        const RandomEffects& effects = m_content->fit.randomEffects()[slotOf(mine.term)];
        ConditionReport report;
        report.condition = static_cast<std::uint8_t>(i);
        report.believed = {belief.mean, belief.sd};
        report.found = {belief.mean + mine.sd * effects.prediction(mine.level),
                        mine.sd * effects.standardError(mine.level)};
        for (const TraitRecord& record : records().records) {
            report.records += static_cast<int>(
                std::count_if(record.conditions.begin(), record.conditions.end(),
                              [i](const ConditionAmount& one) { return one.condition == i; }));
        }
        reports.push_back(report);
    }
    return reports;
}

std::vector<TasterReport> MeritModel::tasters() const {
    const std::int32_t term = m_content->design.termAt[slotOf(MeritTerm::taster)];
    std::vector<TasterReport> reports;
    for (std::size_t person = 0; person < records().persons.size(); ++person) {
        TasterReport report;
        report.taster = records().persons[person];
        report.noise = std::sqrt(m_content->found.tasterResiduals[person]);
        report.ownNoise = m_content->ownNoise[person];
        if (term >= 0) {
            const RandomEffects& effects = m_content->fit.randomEffects()[slotOf(term)];
            const auto level = static_cast<std::int32_t>(person);
            report.level = {effects.prediction(level), effects.standardError(level)};
        }
        for (const TraitRecord& record : records().records) {
            report.scores += record.person == static_cast<std::int32_t>(person) ? 1 : 0;
        }
        reports.push_back(report);
    }
    return reports;
}

Result<DenseMatrix> MeritModel::covariances(std::span<const Index> references) const {
    std::vector<Contrast> contrasts;
    for (const Index reference : references) {
        auto contrast = contrastOf(reference);
        if (!contrast) {
            return meritUnknown();
        }
        contrasts.push_back(std::move(*contrast));
    }
    const MixedFit& fit = m_content->fit;
    const std::int32_t term = m_content->design.termAt[slotOf(MeritTerm::genotype)];
    const Result<std::vector<double>> withGenotypes = fit.contrastCovariancesWith(contrasts, term);
    if (!withGenotypes) {
        return withGenotypes.problem();
    }
    std::vector<double> withLevel(references.size(), 0.0);
    if (const Contrast general = levelContrast(m_content->design); !general.empty()) {
        contrasts.push_back(general);
        const Result<std::vector<double>> all = fit.contrastCovariances(contrasts);
        if (!all) {
            return all.problem();
        }
        for (std::size_t k = 0; k < references.size(); ++k) {
            withLevel[k] = (*all)[k * contrasts.size() + references.size()];
        }
    }
    DenseMatrix result(references.size(), merits().size());
    for (std::size_t k = 0; k < references.size(); ++k) {
        for (std::size_t at = 0; at < merits().size(); ++at) {
            const auto own = slotOf(m_content->design.levelOf.at(references[k]));
            result(k, at) = (*withGenotypes)[k * merits().size() + at] + withLevel[k] +
                            m_content->doubt(own, at);
        }
    }
    return result;
}

Result<UncertainValue> MeritModel::difference(Index genotype, Index reference) const {
    const auto one = contrastOf(genotype);
    const auto other = contrastOf(reference);
    if (!one || !other) {
        return meritUnknown();
    }
    Contrast contrast = *one;
    for (ContrastPart part : *other) {
        part.coefficient = -part.coefficient;
        contrast.push_back(part);
    }
    Result<UncertainValue> found = m_content->fit.contrast(contrast);
    if (found) {
        const auto a = slotOf(m_content->design.levelOf.at(genotype));
        const auto b = slotOf(m_content->design.levelOf.at(reference));
        const double doubt =
            m_content->doubt(a, a) + m_content->doubt(b, b) - 2 * m_content->doubt(a, b);
        found->standardError = std::hypot(found->standardError, std::sqrt(std::max(doubt, 0.0)));
    }
    return found;
}

std::optional<Contrast> MeritModel::contrastOf(Index genotype) const {
    const auto found = m_content->design.levelOf.find(genotype);
    if (found == m_content->design.levelOf.end()) {
        return std::nullopt;
    }
    Contrast contrast = levelContrast(m_content->design);
    contrast.push_back(
        {EffectRef::ofRandom(m_content->design.termAt[slotOf(MeritTerm::genotype)], found->second),
         1});
    return contrast;
}

std::optional<EffectRef> MeritModel::effectOf(MeritTerm term, std::size_t record) const {
    const std::int32_t at = m_content->design.termAt[slotOf(term)];
    if (at < 0 || record >= records().records.size()) {
        return std::nullopt;
    }
    const std::int32_t level = m_content->design.codes[slotOf(term)][record];
    return level < 0 ? std::nullopt : std::optional(EffectRef::ofRandom(at, level));
}

double MeritModel::varianceOf(MeritTerm term) const {
    return m_content->found.terms[slotOf(term)];
}

} // namespace pipwright
