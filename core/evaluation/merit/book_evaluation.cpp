#include "core/evaluation/merit/book_evaluation.h"

#include "core/evaluation/season_chart.h"
#include "core/season/crop_season.h"

#include <algorithm>
#include <utility>

namespace pipwright {

namespace {

std::vector<Stage> stagesNow(const OrchardView& view) {
    std::vector<Stage> stages;
    for (Index i = 0; i < view.genotypes().size(); ++i) {
        stages.push_back(view.genotypes()[i].stage);
    }
    return stages;
}

} // namespace

Result<std::vector<Stage>> stagesAsOf(const OrchardView& view, const Store& store, Date asOf) {
    std::vector<Stage> stages(view.genotypes().size(), Stage::unknown);
    std::vector<std::optional<Date>> since(stages.size());
    const Outcome done = store.scan(Kind::decision, {}, [&](const Record& record) {
        const auto decision = fromRecord<Decision>(record);
        const auto genotype = view.genotype(decision.genotype);
        if (genotype && decision.voidReason.empty() && decision.date <= asOf &&
            (!since[*genotype] || decision.date >= *since[*genotype])) {
            stages[*genotype] = decision.stage;
            since[*genotype] = decision.date;
        }
        return true;
    });
    if (!done) {
        return done.problem();
    }
    return stages;
}

VerdictGround BookEvaluation::ground(const OrchardView& view) const {
    VerdictGround ground{&view, &model, &ladders, &days, &faults};
    ground.stages = &stages;
    if (asOf) {
        ground.lastCropYear = cropYear;
    }
    return ground;
}

const SeedlingVerdict* BookEvaluation::verdictOn(Index genotype) const {
    const auto found = std::lower_bound(
        verdicts.begin(), verdicts.end(), genotype,
        [](const SeedlingVerdict& one, Index wanted) { return one.genotype < wanted; });
    return found != verdicts.end() && found->genotype == genotype ? &*found : nullptr;
}

Result<BookEvaluation> evaluateBook(const OrchardView& view, const Store& store,
                                    const TastingLedger& ledger, const EvaluationRequest& request,
                                    std::stop_token stop) {
    const auto asOf = request.asItStood ? std::optional(request.day) : std::nullopt;
    auto model = MeritModel::fit(view, ledger.likings(view, asOf), request.options, stop);
    if (!model) {
        return model.problem();
    }
    auto records = readLadders(view, store, asOf);
    if (!records) {
        return records.problem();
    }
    auto usual = asOf ? usualRipeDaysAsOf(view, store, *asOf)
                      : Result<std::vector<std::optional<int>>>(usualRipeDays(view));
    if (!usual) {
        return usual.problem();
    }
    auto stages =
        asOf ? stagesAsOf(view, store, *asOf) : Result<std::vector<Stage>>(stagesNow(view));
    if (!stages) {
        return stages.problem();
    }
    auto faults = FaultLedger::read(view, store, asOf);
    if (!faults) {
        return faults.problem();
    }
    const CropYear cropYear = proposedCropYear(request.day, seasonSideOf(view), CropRecord::fruit);
    auto ladders = seasonLadders(view, *records, &*model, cropYear);
    auto days = ripeningDays(view, *usual, model->records());
    BookEvaluation evaluation{cropYear,           asOf,
                              std::move(*model),  std::move(ladders),
                              std::move(days),    std::move(*stages),
                              std::move(*faults), {}};
    auto all = verdicts(evaluation.ground(view), request.choices);
    if (!all) {
        return all.problem();
    }
    evaluation.verdicts = std::move(*all);
    return evaluation;
}

} // namespace pipwright
