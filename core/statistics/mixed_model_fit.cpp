#include "core/statistics/mixed_model_fit.h"

#include "core/statistics/mixed_model_content.h"
#include "core/statistics/mixed_model_problems.h"
#include "core/statistics/refusal.h"
#include "core/statistics/subscript.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace pipwright {

namespace {

/// Notes what is needed of a random term later, and fills in what its precision matrix lacks.
Result<TermSheet> readTerm(RandomTerm& term) {
    TermSheet sheet;
    sheet.name = term.name;
    sheet.levels = term.levels.count;
    sheet.width = term.effectsPerLevel();
    if (!term.precision) {
        return sheet;
    }
    LevelPrecision& precision = *term.precision;
    if (!precision.logDeterminant || !precision.relationshipDiagonal) {
        Result<InverseSummary> summary = summariseInverse(precision.matrix);
        if (!summary) {
            Problem problem = summary.problem();
            problem.where = term.name;
            return problem;
        }
        precision.logDeterminant = summary->logDeterminant;
        precision.relationshipDiagonal = std::move(summary->diagonal);
    }
    sheet.relationshipDiagonal = *precision.relationshipDiagonal;
    double sum = 0;
    for (const double number : sheet.relationshipDiagonal) {
        if (!(number > 0) || !std::isfinite(number)) {
            return unusable("The diagonal of the relationship is not above 0 everywhere.",
                            "Build it from the pedigree anew.", term.name);
        }
        sum += number;
    }
    if (!std::isfinite(*precision.logDeterminant)) {
        return unusable("The determinant of the precision matrix is not a number.",
                        "Build it from the pedigree anew.", term.name);
    }
    sheet.meanRelationship = sum / std::max(1.0, static_cast<double>(sheet.levels));
    return sheet;
}

/// A term whose effects could stand for every single residual cannot be told from it.
Outcome checkSeparable(const MixedModelEquations::Content& content) {
    const ModelRecords& records = *content.records;
    const bool residualOpen = std::all_of(
        content.groupChoices.begin(), content.groupChoices.end(), [](const VarianceChoice& choice) {
            return choice.knowledge == VarianceKnowledge::estimated;
        });
    for (std::size_t term = 0; term < content.termChoices.size(); ++term) {
        const DesignFamily& family = records.families[term];
        if (!residualOpen || content.termChoices[term].knowledge != VarianceKnowledge::estimated ||
            !content.terms[term].relationshipDiagonal.empty() || !records.weights.empty()) {
            continue;
        }
        std::vector<bool> met(at(family.levels), false);
        for (std::size_t record = 0; record < records.count(); ++record) {
            if (family.level(record) >= 0) {
                met[at(family.level(record))] = true;
            }
        }
        const auto levels = std::count(met.begin(), met.end(), true);
        if (levels * family.width >= static_cast<std::int64_t>(records.count())) {
            return unusable("The term has as many effects as there are records, so its variance "
                            "cannot be told from the residual's.",
                            "Leave the term out, or hold one of the two variances.",
                            content.terms[term].name);
        }
    }
    return {};
}

Outcome checkEstimable(const MixedModelEquations::Content& content) {
    const auto open = [](const VarianceChoice& choice) {
        return choice.knowledge == VarianceKnowledge::estimated;
    };
    if (std::none_of(content.termChoices.begin(), content.termChoices.end(), open) &&
        std::none_of(content.groupChoices.begin(), content.groupChoices.end(), open)) {
        return {};
    }
    if (static_cast<std::int64_t>(content.records->count()) <= content.fixed.rank) {
        return unusable("There are no more records than fixed effects.",
                        "Bring in more scores, leave out a fixed term, or hold the variances.",
                        "mixed model");
    }
    constexpr double kRounding = 1e-20;
    if (!(content.counts->squares > 0)) {
        return unusable("The response does not vary.", "Hold the variances, or leave it.",
                        "response");
    }
    if (!(content.fixed.restSquares > kRounding * content.counts->squares) ||
        content.fixed.restSquares < 1e-12 * content.counts->squares) {
        return unusable("The fixed terms explain the response entirely.",
                        "Leave out a fixed term, or hold the variances.", "response");
    }
    return checkSeparable(content);
}

SearchTask taskOf(const MixedModelEquations::Content& content) {
    return {content.termChoices, content.groupChoices,
            1 / (content.records->scale * content.records->scale)};
}

} // namespace

Result<MixedModelEquations> MixedModelEquations::of(MixedModel model, std::stop_token stop) {
    auto content = std::make_shared<Content>();
    content->intercept = model.intercept;
    for (const RandomTerm& term : model.random) {
        content->termChoices.push_back(term.variance);
    }
    for (const FixedTerm& term : model.fixed) {
        content->fixedLevels.push_back(term.levels.ofRecord.empty() ? 0 : term.levels.count);
    }
    Result<ModelRecords> records = readRecords(model);
    if (!records) {
        return records.problem();
    }
    content->groupChoices = std::vector<VarianceChoice>(at(records->groupCount));
    for (std::size_t group = 0; group < content->groupChoices.size(); ++group) {
        if (!model.residual.variance.empty()) {
            content->groupChoices[group] =
                model.residual.variance[model.residual.variance.size() == 1 ? 0 : group];
        }
    }
    std::vector<const LevelPrecision*> precisions;
    for (RandomTerm& term : model.random) {
        Result<TermSheet> sheet = readTerm(term);
        if (!sheet) {
            return sheet.problem();
        }
        content->terms.push_back(std::move(*sheet));
        precisions.push_back(term.precision ? &*term.precision : nullptr);
    }
    if (stop.stop_requested()) {
        return fitStopped();
    }
    content->records = std::make_shared<const ModelRecords>(std::move(*records));
    EquationCounts counts = countEquations(*content->records, precisions);
    for (std::size_t term = 0; term < precisions.size(); ++term) {
        if (precisions[term] != nullptr) {
            counts.precision[term].logDeterminant = *precisions[term]->logDeterminant;
        }
    }
    content->counts = std::make_shared<const EquationCounts>(std::move(counts));
    if (stop.stop_requested()) {
        return fitStopped();
    }
    content->plan = std::make_shared<const EquationPlan>(*content->records, *content->counts);
    content->fixed = examineFixed(*content->records, *content->counts);
    content->disconnected = findDisconnected(*content->records);
    return MixedModelEquations(std::move(content));
}

Result<MixedFit> MixedModelEquations::fit(const FitControl& control) const {
    if (Outcome outcome = checkEstimable(*m_content); !outcome) {
        return outcome.problem();
    }
    const ModelRecords& records = *m_content->records;
    const ScaledEquations equations(records, *m_content->counts, m_content->fixed.dropped);
    RestrictedLikelihood likelihood(records, *m_content->counts, *m_content->plan, equations,
                                    m_content->fixed.rank, control.likelihood);
    std::vector<double> meanRelationship;
    for (const TermSheet& term : m_content->terms) {
        meanRelationship.push_back(term.meanRelationship);
    }
    VarianceState start =
        startingState(records, *m_content->counts, m_content->fixed, m_content->termChoices,
                      m_content->groupChoices, meanRelationship);
    const SearchTask task = taskOf(*m_content);
    Result<SearchEnd> end = searchVariances(likelihood, records, std::move(start), task, control);
    if (!end) {
        return end.problem();
    }
    return MixedFit(gatherFit(m_content, likelihood, control.likelihood, *end));
}

Result<MixedFit> MixedModelEquations::withVariances(const VarianceValues& values,
                                                    LikelihoodKind kind) const {
    const ModelRecords& records = *m_content->records;
    const double unit = 1 / (records.scale * records.scale);
    VarianceState state;
    std::size_t next = 0;
    std::size_t expected = m_content->groupChoices.size();
    for (const TermSheet& term : m_content->terms) {
        expected += at(term.width) * (at(term.width) + 1) / 2;
    }
    if (values.size() != expected) {
        return unusable("There is not one number for each variance component.",
                        "Give them in the order of the fit.", "variances");
    }
    for (const TermSheet& term : m_content->terms) {
        const std::size_t width = at(term.width);
        std::vector<double> covariance(width * width);
        for (std::size_t row = 0; row < width; ++row) {
            for (std::size_t column = 0; column <= row; ++column) {
                covariance[row * width + column] = values[next];
                covariance[column * width + row] = values[next++];
            }
        }
        if (Outcome outcome =
                checkVarianceChoice(VarianceChoice::held(covariance), term.width, term.name);
            !outcome) {
            return outcome.problem();
        }
        for (double& value : covariance) {
            value *= unit;
        }
        state.factors.push_back(covarianceRoot(covariance, term.width));
    }
    for (; next < values.size(); ++next) {
        if (!(values[next] > 0) || !std::isfinite(values[next])) {
            return unusable("A residual variance is not above 0.", "Give one above 0.", "residual");
        }
        state.residual.push_back(values[next] * unit);
    }
    const ScaledEquations equations(records, *m_content->counts, m_content->fixed.dropped);
    RestrictedLikelihood likelihood(records, *m_content->counts, *m_content->plan, equations,
                                    m_content->fixed.rank, kind);
    if (!likelihood.moveTo(std::move(state), false)) {
        return unusable("The equations of the model cannot be solved at these variances.",
                        "Look for variances of extreme size.", "variances");
    }
    SearchEnd end;
    end.termAtBoundary.assign(m_content->terms.size(), false);
    end.allHeld = true;
    return MixedFit(gatherFit(m_content, likelihood, kind, end));
}

Result<MixedModelEquations>
MixedModelEquations::withResponse(std::span<const double> response) const {
    const ModelRecords& old = *m_content->records;
    if (static_cast<std::int64_t>(response.size()) != old.given) {
        return unusable("There is not one number for each record.",
                        "Give as many numbers as the model has records.", "response");
    }
    std::vector<double> used;
    used.reserve(old.count());
    for (std::size_t record = 0; record < old.count(); ++record) {
        used.push_back(response[old.kept.empty() ? record : at(old.kept[record])]);
    }
    if (!std::all_of(used.begin(), used.end(), [](double value) { return std::isfinite(value); })) {
        return unusable("A response is not a finite number.", "Correct it.", "response");
    }
    auto content = std::make_shared<Content>(*m_content);
    auto records = std::make_shared<ModelRecords>(old);
    if (Outcome outcome = setResponse(*records, std::move(used), content->intercept); !outcome) {
        return outcome.problem();
    }
    auto counts = std::make_shared<EquationCounts>(*m_content->counts);
    counts->side = designProduct(*records, records->response, {});
    counts->squares = weightedSquares(*records, records->response, -1);
    content->fixed = examineFixed(*records, *counts);
    content->records = std::move(records);
    content->counts = std::move(counts);
    return MixedModelEquations(std::move(content));
}

Result<MixedModelEquations> MixedModelEquations::withVarianceChoice(std::int32_t term,
                                                                    VarianceChoice choice) const {
    if (term < 0 || at(term) >= m_content->terms.size()) {
        return unusable("The model has no such random term.", "Count its terms from 0.", "term");
    }
    const TermSheet& sheet = m_content->terms[at(term)];
    if (Outcome outcome = checkVarianceChoice(choice, sheet.width, sheet.name); !outcome) {
        return outcome.problem();
    }
    auto content = std::make_shared<Content>(*m_content);
    content->termChoices[at(term)] = std::move(choice);
    return MixedModelEquations(std::move(content));
}

Result<MixedModelEquations> MixedModelEquations::withResidualChoice(std::int32_t group,
                                                                    VarianceChoice choice) const {
    if (group < 0 || at(group) >= m_content->groupChoices.size()) {
        return unusable("The model has no such residual group.", "Count its groups from 0.",
                        "residual");
    }
    if (Outcome outcome = checkVarianceChoice(choice, 1, "residual"); !outcome) {
        return outcome.problem();
    }
    if (choice.knowledge == VarianceKnowledge::held && !(choice.value[0] > 0)) {
        return unusable("A residual variance of 0 cannot be held.", "Give one above 0.",
                        "residual");
    }
    auto content = std::make_shared<Content>(*m_content);
    content->groupChoices[at(group)] = std::move(choice);
    return MixedModelEquations(std::move(content));
}

Result<MixedFit> fitMixedModel(MixedModel model, const FitControl& control) {
    Result<MixedModelEquations> equations = MixedModelEquations::of(std::move(model), control.stop);
    if (!equations) {
        return equations.problem();
    }
    return equations->fit(control);
}

} // namespace pipwright
