#include "core/statistics/mixed_model_records.h"

#include "core/statistics/refusal.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>

namespace pipwright {

namespace {

/// One covariate or the response: as long as the records, without infinities.
Outcome checkNumbers(const std::vector<double>& numbers, std::size_t count,
                     const std::string& where) {
    if (numbers.size() != count) {
        return unusable("There is not one number for each record.",
                        "Give as many numbers as there are records.", where);
    }
    if (std::any_of(numbers.begin(), numbers.end(), [](double v) { return std::isinf(v); })) {
        return unusable("A number is infinite.", "Leave the record out or correct it.", where);
    }
    return {};
}

Outcome checkCodes(const LevelCodes& levels, std::size_t count, const std::string& where) {
    if (levels.ofRecord.size() != count) {
        return unusable("There is not one level for each record.",
                        "Give as many levels as there are records.", where);
    }
    if (levels.count < 1) {
        return unusable("The factor has no levels.", "Leave the term out of the model.", where);
    }
    const auto outside = [&](std::int32_t code) { return code < -1 || code >= levels.count; };
    if (std::any_of(levels.ofRecord.begin(), levels.ofRecord.end(), outside)) {
        return unusable("A record names a level that does not exist.",
                        "Number the levels from 0 to their count less one.", where);
    }
    return {};
}

Outcome checkFixed(const MixedModel& model) {
    for (const FixedTerm& term : model.fixed) {
        if (term.levels.ofRecord.empty() && term.covariate.empty() && !model.response.empty()) {
            return unusable("The term has neither levels nor numbers.", "Give it one of them.",
                            term.name);
        }
        if (!term.levels.ofRecord.empty()) {
            if (Outcome outcome = checkCodes(term.levels, model.response.size(), term.name);
                !outcome) {
                return outcome;
            }
        }
        if (!term.covariate.empty()) {
            if (Outcome outcome = checkNumbers(term.covariate, model.response.size(), term.name);
                !outcome) {
                return outcome;
            }
        }
    }
    return {};
}

Outcome checkRandom(const MixedModel& model) {
    constexpr std::int32_t kMostEffects = 16;
    for (const RandomTerm& term : model.random) {
        if (term.effectsPerLevel() < 1 || term.effectsPerLevel() > kMostEffects) {
            return unusable("A random term needs an intercept or a covariate, and at most 16.",
                            "Change the covariates of the term.", term.name);
        }
        if (Outcome outcome = checkCodes(term.levels, model.response.size(), term.name); !outcome) {
            return outcome;
        }
        for (const std::vector<double>& covariate : term.covariates) {
            if (Outcome outcome = checkNumbers(covariate, model.response.size(), term.name);
                !outcome) {
                return outcome;
            }
        }
        if (term.precision && term.precision->matrix.size() != term.levels.count) {
            return unusable("The precision matrix does not have one row for each level.",
                            "Build it from the same levels.", term.name);
        }
        if (term.precision && term.precision->relationshipDiagonal &&
            term.precision->relationshipDiagonal->size() !=
                static_cast<std::size_t>(term.levels.count)) {
            return unusable("The diagonal of the relationship does not have one number a level.",
                            "Build it from the same levels.", term.name);
        }
        if (Outcome outcome = checkVarianceChoice(term.variance, term.effectsPerLevel(), term.name);
            !outcome) {
            return outcome;
        }
    }
    return {};
}

Outcome checkResidual(const MixedModel& model) {
    const ResidualSpec& residual = model.residual;
    const std::string where = "residual";
    std::size_t groups = 1;
    if (!residual.groups.ofRecord.empty()) {
        if (Outcome outcome = checkCodes(residual.groups, model.response.size(), where); !outcome) {
            return outcome;
        }
        groups = static_cast<std::size_t>(residual.groups.count);
    }
    if (residual.variance.size() > 1 && residual.variance.size() != groups) {
        return unusable("There is not one variance for each group.",
                        "Give none, one, or one for each group.", where);
    }
    for (const VarianceChoice& choice : residual.variance) {
        if (Outcome outcome = checkVarianceChoice(choice, 1, where); !outcome) {
            return outcome;
        }
        if (choice.knowledge == VarianceKnowledge::held && !(choice.value[0] > 0)) {
            return unusable("A residual variance of 0 cannot be held.", "Give one above 0.", where);
        }
    }
    return {};
}

Outcome checkModel(const MixedModel& model) {
    if (model.response.empty()) {
        return unusable("There are no records.", "Bring in some scores first.", "response");
    }
    if (model.response.size() >
        static_cast<std::size_t>(std::numeric_limits<std::int32_t>::max()) / 2) {
        return unusable("There are too many records for one model.", "Split them.", "response");
    }
    if (Outcome outcome = checkNumbers(model.response, model.response.size(), "response");
        !outcome) {
        return outcome;
    }
    if (!model.weights.empty()) {
        if (Outcome outcome = checkNumbers(model.weights, model.response.size(), "weights");
            !outcome) {
            return outcome;
        }
        if (std::any_of(model.weights.begin(), model.weights.end(),
                        [](double weight) { return weight < 0; })) {
            return unusable("A weight is negative.", "Give weights of 0 or above.", "weights");
        }
    }
    for (const auto check : {checkFixed, checkRandom, checkResidual}) {
        if (Outcome outcome = check(model); !outcome) {
            return outcome;
        }
    }
    std::int64_t unknowns = model.intercept ? 1 : 0;
    for (const RandomTerm& term : model.random) {
        unknowns += static_cast<std::int64_t>(term.levels.count) * term.effectsPerLevel();
    }
    std::int64_t fixed = 0;
    for (const FixedTerm& term : model.fixed) {
        fixed += term.columnCount();
    }
    constexpr std::int64_t kMostFixed = 6000;
    if (fixed > kMostFixed || unknowns + fixed > std::numeric_limits<std::int32_t>::max() / 2) {
        return unusable("The model has too many effects.",
                        "Make factors of more than a few thousand levels random.", "model");
    }
    return {};
}

/// Which records can be used; nothing when all can.
std::optional<std::vector<std::int32_t>> usableRecords(const MixedModel& model) {
    const std::size_t count = model.response.size();
    std::vector<bool> usable(count, true);
    bool all = true;
    const auto drop = [&](std::size_t record) {
        usable[record] = false;
        all = false;
    };
    const auto dropMissing = [&](const std::vector<double>& numbers) {
        for (std::size_t record = 0; record < numbers.size(); ++record) {
            if (std::isnan(numbers[record])) {
                drop(record);
            }
        }
    };
    dropMissing(model.response);
    dropMissing(model.weights);
    for (std::size_t record = 0; record < model.weights.size(); ++record) {
        if (model.weights[record] == 0) {
            drop(record);
        }
    }
    for (const FixedTerm& term : model.fixed) {
        dropMissing(term.covariate);
    }
    for (const RandomTerm& term : model.random) {
        for (const std::vector<double>& covariate : term.covariates) {
            dropMissing(covariate);
        }
    }
    const auto dropUncoded = [&](const std::vector<std::int32_t>& codes) {
        for (std::size_t record = 0; record < codes.size(); ++record) {
            if (codes[record] < 0) {
                drop(record);
            }
        }
    };
    for (const FixedTerm& term : model.fixed) {
        dropUncoded(term.levels.ofRecord);
    }
    dropUncoded(model.residual.groups.ofRecord);
    if (all) {
        return std::nullopt;
    }
    std::vector<std::int32_t> kept;
    for (std::size_t record = 0; record < count; ++record) {
        if (usable[record]) {
            kept.push_back(static_cast<std::int32_t>(record));
        }
    }
    return kept;
}

template <typename T>
std::vector<T> keep(std::vector<T>&& all, const std::vector<std::int32_t>& kept, bool some) {
    if (!some || all.empty()) {
        return std::move(all);
    }
    std::vector<T> part;
    part.reserve(kept.size());
    for (const std::int32_t record : kept) {
        part.push_back(all[static_cast<std::size_t>(record)]);
    }
    return part;
}

DesignFamily randomFamily(RandomTerm& term, const std::vector<std::int32_t>& kept, bool some) {
    DesignFamily family;
    family.name = term.name;
    family.random = true;
    family.codes = keep(std::move(term.levels.ofRecord), kept, some);
    family.levels = term.levels.count;
    family.width = term.effectsPerLevel();
    if (!term.covariates.empty()) {
        std::vector<std::vector<double>> covariates;
        covariates.reserve(term.covariates.size());
        for (std::vector<double>& covariate : term.covariates) {
            covariates.push_back(keep(std::move(covariate), kept, some));
        }
        const std::size_t count = covariates.front().size();
        family.values.reserve(count * static_cast<std::size_t>(family.width));
        for (std::size_t record = 0; record < count; ++record) {
            if (term.intercept) {
                family.values.push_back(1);
            }
            for (const std::vector<double>& covariate : covariates) {
                family.values.push_back(covariate[record]);
            }
        }
    }
    return family;
}

/// A fixed factor, its codes shifted so that the first level with a column is 0.
DesignFamily fixedFamily(FixedTerm& term, const std::vector<std::int32_t>& kept, bool some) {
    DesignFamily family;
    family.name = term.name;
    family.levels = term.columnCount();
    family.codes = keep(std::move(term.levels.ofRecord), kept, some);
    if (term.coding == FixedCoding::treatment) {
        for (std::int32_t& code : family.codes) {
            --code;
        }
    }
    family.values = keep(std::move(term.covariate), kept, some);
    return family;
}

/// Adds the fixed factors as families, then intercept and covariates as one.
void addFixed(MixedModel& model, ModelRecords& records, bool some) {
    std::int32_t next = records.randomUnknowns;
    std::vector<std::vector<double>> covariates;
    std::vector<std::size_t> covariateColumn; // in fixedColumns
    if (model.intercept) {
        records.fixedColumns.push_back({EffectRef::theIntercept(), 0, 0});
    }
    for (std::size_t index = 0; index < model.fixed.size(); ++index) {
        FixedTerm& term = model.fixed[index];
        const auto number = static_cast<std::int32_t>(index);
        if (term.levels.ofRecord.empty()) {
            covariateColumn.push_back(records.fixedColumns.size());
            records.fixedColumns.push_back({EffectRef::ofFixed(number), 0, 0});
            covariates.push_back(keep(std::move(term.covariate), records.kept, some));
            continue;
        }
        const std::int32_t firstLevel = term.coding == FixedCoding::treatment ? 1 : 0;
        DesignFamily family = fixedFamily(term, records.kept, some);
        if (family.levels == 0) {
            continue;
        }
        family.firstUnknown = next;
        for (std::int32_t level = 0; level < family.levels; ++level) {
            records.fixedColumns.push_back(
                {EffectRef::ofFixed(number, level + firstLevel), next + level, 0});
        }
        next += family.levels;
        records.families.push_back(std::move(family));
    }
    DesignFamily plain;
    plain.name = "fixed effects";
    plain.width = static_cast<std::int32_t>(covariates.size()) + (model.intercept ? 1 : 0);
    plain.firstUnknown = next;
    const std::size_t count = records.count();
    for (std::size_t column = 0; column < covariates.size(); ++column) {
        FixedColumn& place = records.fixedColumns[covariateColumn[column]];
        place.unknown = next + static_cast<std::int32_t>(column) + (model.intercept ? 1 : 0);
        if (model.intercept) {
            // Centred covariates keep the equations well conditioned; the intercept is set right
            // afterwards.
            double sum = 0;
            for (const double value : covariates[column]) {
                sum += value;
            }
            place.centre = sum / static_cast<double>(count);
        }
    }
    if (model.intercept) {
        records.fixedColumns.front().unknown = next;
    }
    if (!covariates.empty()) {
        plain.values.reserve(count * static_cast<std::size_t>(plain.width));
        for (std::size_t record = 0; record < count; ++record) {
            if (model.intercept) {
                plain.values.push_back(1);
            }
            for (std::size_t column = 0; column < covariates.size(); ++column) {
                plain.values.push_back(covariates[column][record] -
                                       records.fixedColumns[covariateColumn[column]].centre);
            }
        }
    }
    next += plain.width;
    if (plain.width > 0) {
        records.families.push_back(std::move(plain));
    }
    records.fixedUnknowns = next - records.randomUnknowns;
}

} // namespace

Outcome checkVarianceChoice(const VarianceChoice& choice, std::int32_t effects,
                            const std::string& where) {
    if (choice.knowledge == VarianceKnowledge::estimated) {
        return {};
    }
    const auto side = static_cast<std::size_t>(effects);
    if (choice.value.size() != side * side) {
        return unusable("A variance given does not have the size of its term.",
                        "Give one number, or a full covariance matrix.", where);
    }
    const bool prior = choice.knowledge != VarianceKnowledge::held;
    for (std::size_t row = 0; row < side; ++row) {
        for (std::size_t column = 0; column < side; ++column) {
            const double value = choice.value[row * side + column];
            if (!std::isfinite(value) || value != choice.value[column * side + row]) {
                return unusable("A covariance matrix given is not symmetric and finite.",
                                "Correct it.", where);
            }
            const double limit = std::sqrt(choice.value[row * side + row]) *
                                 std::sqrt(choice.value[column * side + column]);
            if (row != column && !(std::abs(value) <= limit)) {
                return unusable("A covariance given is larger than its variances allow.",
                                "Correct it.", where);
            }
        }
        const double variance = choice.value[row * side + row];
        if (variance < 0 || (prior && variance <= 0)) {
            return unusable(prior ? "A prior needs a value above 0."
                                  : "A variance given is negative.",
                            "Give a variance of 0 or above, a prior one above 0.", where);
        }
    }
    if (prior && !(choice.degreesOfFreedom > 0 && std::isfinite(choice.degreesOfFreedom))) {
        return unusable("A prior needs degrees of freedom above 0.", "Give a number above 0.",
                        where);
    }
    if (choice.knowledge == VarianceKnowledge::halfT && effects != 1) {
        return unusable("A half-t prior is for a single variance.",
                        "Use the inverse chi-square prior for correlated slopes.", where);
    }
    return {};
}

Outcome setResponse(ModelRecords& records, std::vector<double> response, bool hasIntercept) {
    double sum = 0;
    double weightSum = 0;
    for (std::size_t record = 0; record < response.size(); ++record) {
        const double weight = records.weights.empty() ? 1 : records.weights[record];
        sum += weight * response[record];
        weightSum += weight;
    }
    const double mean = sum / weightSum;
    if (!std::isfinite(mean)) {
        return unusable("The response is too large to add up.", "Use a larger unit.", "response");
    }
    records.shift = hasIntercept ? mean : 0;
    double squares = 0;
    for (double& value : response) {
        value -= records.shift;
        squares += value * value;
    }
    const double spread = std::sqrt(squares / static_cast<double>(response.size()));
    if (!std::isfinite(spread)) {
        return unusable("The response is too large to add up.", "Use a larger unit.", "response");
    }
    // Rounding of the mean is no spread.
    const bool varies = spread > 1e-13 * std::abs(mean);
    records.scale = varies ? std::exp2(std::round(std::log2(spread))) : 1.0;
    const double factor = 1 / records.scale;
    for (double& value : response) {
        value = varies ? value * factor : (hasIntercept ? 0.0 : value);
    }
    records.response = std::move(response);
    return {};
}

Result<ModelRecords> readRecords(MixedModel& model) {
    if (Outcome outcome = checkModel(model); !outcome) {
        return outcome.problem();
    }
    ModelRecords records;
    records.given = static_cast<std::int64_t>(model.response.size());
    std::optional<std::vector<std::int32_t>> kept = usableRecords(model);
    const bool some = kept.has_value();
    if (some) {
        records.kept = std::move(*kept);
    }
    records.weights = keep(std::move(model.weights), records.kept, some);
    for (const double weight : records.weights) {
        records.logWeights += std::log(weight);
    }
    records.groups = keep(std::move(model.residual.groups.ofRecord), records.kept, some);
    records.groupCount = records.groups.empty() ? 1 : model.residual.groups.count;
    std::vector<double> response = keep(std::move(model.response), records.kept, some);
    if (response.empty()) {
        return unusable("No record can be used: all responses are missing.",
                        "Bring in some scores first.", "response");
    }
    if (Outcome outcome = setResponse(records, std::move(response), model.intercept); !outcome) {
        return outcome.problem();
    }
    for (RandomTerm& term : model.random) {
        DesignFamily family = randomFamily(term, records.kept, some);
        family.firstUnknown = records.randomUnknowns;
        records.randomUnknowns += family.unknowns();
        records.families.push_back(std::move(family));
    }
    addFixed(model, records, some);
    return records;
}

} // namespace pipwright
