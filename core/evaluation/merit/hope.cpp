#include "core/evaluation/merit/hope.h"

#include "core/statistics/mixed_model_fit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <map>

namespace pipwright {

namespace {

constexpr int kLeastScores = 2;
constexpr double kNormalTail = 1.959964;

Problem hopeUnknown(const std::string& lacking, const std::string& remedy) {
    return {ProblemCode::badInput, "Hope cannot be measured: " + lacking + ".", remedy, ""};
}

/// A random term for numbers that the records carry; levels as they come.
template <typename KeyOf>
RandomTerm hopeTerm(const char* name, const std::vector<const TraitRecord*>& records,
                    const KeyOf& keyOf) {
    RandomTerm term;
    term.name = name;
    std::map<std::int64_t, std::int32_t> codes;
    for (const TraitRecord* record : records) {
        const std::int64_t key = keyOf(*record);
        if (key < 0) {
            term.levels.ofRecord.push_back(-1);
            continue;
        }
        const auto [at, fresh] = codes.try_emplace(key, term.levels.count);
        term.levels.count += fresh ? 1 : 0;
        term.levels.ofRecord.push_back(at->second);
    }
    return term;
}

/// Adds a term with the belief about its variance, if it has levels to be told apart.
void addHopeTerm(MixedModel& model, RandomTerm term, const VariancePrior& prior) {
    // Levels of a single score each are part of the residual.
    const bool tellsApart =
        term.levels.count >= 2 &&
        term.levels.ofRecord.size() > static_cast<std::size_t>(term.levels.count);
    if (!tellsApart || !(prior.variance > 0)) {
        return;
    }
    term.variance = VarianceChoice::inverseChiSquare(prior.variance, prior.weight);
    model.random.push_back(std::move(term));
}

Outcome checkCounts(const HopeGap& gap) {
    if (gap.ownBlind < kLeastScores || gap.benchmarkBlind < kLeastScores) {
        return hopeUnknown("too little was tasted blind",
                           "Serve own seedlings and benchmarks under codes at the next sitting.");
    }
    if (gap.ownSighted < kLeastScores || gap.benchmarkSighted < kLeastScores) {
        return hopeUnknown("too little was tasted with its name known",
                           "Bites of seedlings and benchmarks in the row will do.");
    }
    return {};
}

} // namespace

Result<HopeGap> hopeGap(const OrchardView& view, const MeritModel& model) {
    HopeSides sides;
    for (Index i = 0; i < view.genotypes().size(); ++i) {
        sides.own.push_back(isOwnSeedling(view.genotypes()[i]));
        sides.benchmark.push_back(view.genotypes()[i].benchmark);
    }
    return hopeGap(sides, model);
}

Result<HopeGap> hopeGap(const HopeSides& sides, const MeritModel& model) {
    if (!model.records().isLiking()) {
        return hopeUnknown("it is a matter of liking", "Ask it of liking.");
    }
    std::vector<double> worth(conditionClasses().size(), 0.0);
    for (const ConditionReport& report : model.conditions()) {
        worth[report.condition] = report.found.value;
    }
    HopeGap gap;
    MixedModel mixed;
    std::vector<const TraitRecord*> used;
    std::vector<double> own, sighted, both;
    for (const TraitRecord& record : model.records().records) {
        const bool isOwn = sides.own.at(record.genotype);
        if (record.sight == Sight::unknown || (!isOwn && !sides.benchmark.at(record.genotype))) {
            continue;
        }
        const bool isSighted = record.sight == Sight::sighted;
        ++(isOwn ? (isSighted ? gap.ownSighted : gap.ownBlind)
                 : (isSighted ? gap.benchmarkSighted : gap.benchmarkBlind));
        double value = record.value;
        for (const ConditionAmount& one : record.conditions) {
            if (conditionClasses()[one.condition].correction != Correction::hope) {
                value -= worth[one.condition] * static_cast<double>(one.amount);
            }
        }
        mixed.response.push_back(value);
        own.push_back(isOwn ? 1 : 0);
        sighted.push_back(isSighted ? 1 : 0);
        both.push_back(isOwn && isSighted ? 1 : 0);
        used.push_back(&record);
    }
    if (const Outcome enough = checkCounts(gap); !enough) {
        return enough.problem();
    }
    mixed.fixed = {FixedTerm::number("own", std::move(own)),
                   FixedTerm::number("sighted", std::move(sighted)),
                   FixedTerm::number("own and sighted", std::move(both))};
    const MeritPriors believed = likingPriors();
    addHopeTerm(mixed, hopeTerm("genotype", used, [](const auto& one) { return one.genotype; }),
                believed.of(MeritTerm::genotype));
    addHopeTerm(mixed, hopeTerm("taster", used, [](const auto& one) { return one.person; }),
                believed.of(MeritTerm::taster));
    addHopeTerm(mixed, hopeTerm("sitting", used, [](const auto& one) { return one.sitting; }),
                believed.of(MeritTerm::sitting));
    addHopeTerm(mixed, hopeTerm("lot", used, [](const auto& one) { return one.lot; }),
                believed.of(MeritTerm::lot));
    mixed.residual.variance = {
        VarianceChoice::inverseChiSquare(believed.residual.variance, believed.residual.weight)};
    const auto fit = fitMixedModel(std::move(mixed));
    if (!fit) {
        return fit.problem();
    }
    const FixedEffect& effect = fit->fixedEffects().back();
    if (effect.dropped || !(effect.standardError > 0)) {
        return hopeUnknown("sighted and blind scores cannot be compared",
                           "Taste own seedlings and benchmarks at the same blind sitting.");
    }
    gap.gap = {effect.estimate, effect.standardError};
    gap.low = effect.estimate - kNormalTail * effect.standardError;
    gap.high = effect.estimate + kNormalTail * effect.standardError;
    return gap;
}

std::string sentenceOf(const HopeGap& gap) {
    std::array<char, 256> text{};
    std::snprintf(text.data(), text.size(),
                  "Own seedlings get %.1f points %s than benchmarks do when it is known what they "
                  "are (95 %%: %.1f to %.1f; %d sighted and %d blind scores)%s",
                  std::abs(gap.gap.value), gap.gap.value < 0 ? "less" : "more", gap.low, gap.high,
                  gap.ownSighted, gap.ownBlind, gap.beyondDoubt() ? "." : ": it may be nothing.");
    return text.data();
}

} // namespace pipwright
