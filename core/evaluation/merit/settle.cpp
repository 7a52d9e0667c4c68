#include "core/evaluation/merit/settle.h"

#include "core/evaluation/merit/ladder_odds.h"
#include "core/evaluation/merit/new_scores.h"
#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>

namespace pipwright {

namespace {

constexpr int kMostNewScores = 200;

/// What a sitting of the next crop year must move the probability by beyond one of this year.
constexpr double kWorthAYear = 0.02;

Problem unfitPlan() {
    return {ProblemCode::badInput, "A tasting has 1 to 200 scores, at least one lot and a taster.",
            "Plan a smaller or a larger one.", "plan"};
}

bool isFit(const TastingPlan& plan) {
    return plan.sittings > 0 && plan.cropYears > 0 && plan.lots > 0 && plan.tasters > 0 &&
           plan.sittings <= kMostNewScores && plan.cropYears <= kMostNewScores &&
           plan.lots <= kMostNewScores && plan.tasters <= kMostNewScores &&
           plan.scores() <= kMostNewScores;
}

/// The probability afterwards as a function of how the difference moves: mean + r z over the
/// error left, z standard normal.
struct Outlook {
    double mean = 0;
    double spread = 0; ///< r
    double left = 0;   ///< error afterwards

    [[nodiscard]] double chanceAt(double z) const {
        return chanceAboveZero(mean + spread * z, left * left);
    }
    /// The z at which the probability comes to `chance`.
    [[nodiscard]] double pointOf(double chance) const {
        return (left * standardNormalQuantile(chance) - mean) / spread;
    }
};

/// E|P afterwards - P now|, by Simpson's rule.
double expectedMove(const Outlook& outlook, double now) {
    constexpr int kSteps = 400;
    constexpr double kEnd = 8;
    double sum = 0;
    for (int i = 0; i <= kSteps; ++i) {
        const double z = -kEnd + 2 * kEnd * i / kSteps;
        const double weight = i == 0 || i == kSteps ? 1 : (i % 2 == 1 ? 4 : 2);
        sum += weight * standardNormalDensity(z) * std::abs(outlook.chanceAt(z) - now);
    }
    return sum * (2 * kEnd / kSteps) / 3;
}

double flipChance(const Outlook& outlook, double now, const std::vector<double>& thresholds) {
    if (!(outlook.spread > 0)) {
        return 0;
    }
    // The nearest threshold on each side counts: beyond it all further ones are crossed too.
    double below = 0;
    double above = 0;
    for (const double threshold : thresholds) {
        if (threshold <= 0 || threshold >= 1) {
            continue;
        }
        const double point = outlook.pointOf(threshold);
        if (now >= threshold) {
            below = std::max(below, standardNormalBelow(point));
        } else {
            above = std::max(above, standardNormalAbove(point));
        }
    }
    return std::clamp(below + above, 0.0, 1.0);
}

} // namespace

std::vector<TastingPlan> usualPlans() {
    TastingPlan bite;
    bite.blind = false;
    TastingPlan lot;
    TastingPlan pair;
    pair.withReference = true;
    TastingPlan pairOfThree = pair;
    pairOfThree.tasters = 3;
    TastingPlan threeLots;
    threeLots.thisYear = false;
    threeLots.sittings = 3;
    TastingPlan nextPair = pairOfThree;
    nextPair.thisYear = false;
    TastingPlan twoYears = nextPair;
    twoYears.cropYears = 2;
    return {bite, lot, pair, pairOfThree, threeLots, nextPair, twoYears};
}

std::string wordsOf(const TastingPlan& plan) {
    const auto counted = [](int number, const char* one, const char* many) {
        return std::to_string(number) + " " + (number == 1 ? one : many);
    };
    std::string words = counted(plan.lots, "fair lot", "fair lots");
    if (plan.withReference) {
        words += " beside the benchmark";
    }
    if (plan.sittings > 1) {
        words += " at each of " + std::to_string(plan.sittings) + " sittings";
    }
    words += ", " + counted(plan.tasters, "taster", "tasters") +
             (plan.blind ? ", blind" : ", sighted") +
             (plan.thisYear ? ", this crop year" : ", next crop year");
    if (plan.cropYears > 1) {
        words += " and " + counted(plan.cropYears - 1, "more", "more");
    }
    return words;
}

std::optional<SettlingQuestion> openQuestion(const SeedlingVerdict& verdict,
                                             const VerdictThresholds& thresholds,
                                             CropYear cropYear) {
    const bool floorPassed = verdict.floor && verdict.floor->above >= thresholds.cullBelowFloor;
    const bool best = verdict.best && (!verdict.floor || floorPassed);
    if (!best && !verdict.floor) {
        return std::nullopt;
    }
    SettlingQuestion question;
    question.genotype = verdict.genotype;
    question.cropYear = cropYear;
    question.reference = best ? verdict.best->reference : verdict.floor->reference;
    question.ahead = best ? verdict.best->ahead : verdict.floor->ahead;
    question.thresholds =
        best ? std::vector<double>{thresholds.backUpAboveBest, thresholds.nameAboveBest}
             : std::vector<double>{1 - thresholds.cullBelowFloor, thresholds.watchAboveFloor};
    return question;
}

Result<std::vector<SettlingPower>> settlingPowers(const MeritModel& model,
                                                  const SettlingQuestion& question,
                                                  std::span<const TastingPlan> plans) {
    int tasters = 0;
    for (const TastingPlan& plan : plans) {
        if (!isFit(plan)) {
            return unfitPlan();
        }
        tasters = std::max(tasters, plan.tasters);
    }
    auto known = KnownEffects::of(model, question, tasters);
    if (!known) {
        return known.problem();
    }
    std::vector<SettlingPower> powers;
    for (const TastingPlan& plan : plans) {
        const auto told = known->toldBy(plan);
        if (!told) {
            return told.problem();
        }
        SettlingPower power;
        power.plan = plan;
        power.now = chanceAboveZero(question.ahead.value,
                                    question.ahead.standardError * question.ahead.standardError);
        power.meanSpread = std::sqrt(told->ofDifference);
        // What the fit does not reckon with, doubt about variances, stays.
        const double total = std::max(question.ahead.standardError * question.ahead.standardError,
                                      known->differenceVariance());
        power.errorAfter = std::sqrt(std::max(0.0, total - told->ofDifference));
        power.reliabilityAfter = known->reliabilityAfter(told->ofGenotype);
        const Outlook outlook{question.ahead.value, power.meanSpread, power.errorAfter};
        power.expectedMove = expectedMove(outlook, power.now);
        power.flipChance = flipChance(outlook, power.now, question.thresholds);
        powers.push_back(power);
    }
    return powers;
}

std::optional<std::size_t> bestNextSitting(const std::vector<SettlingPower>& powers) {
    const auto worth = [&powers](std::size_t at) {
        return powers[at].expectedMove - (powers[at].plan.thisYear ? 0 : kWorthAYear);
    };
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < powers.size(); ++i) {
        if (powers[i].plan.isOneSitting() && (!best || worth(i) > worth(*best))) {
            best = i;
        }
    }
    return best;
}

Result<std::vector<YearOutlook>> yearsToSettle(const MeritModel& model,
                                               const SettlingQuestion& question, double threshold,
                                               int tasters, int years) {
    std::vector<TastingPlan> plans;
    for (int year = 1; year <= years; ++year) {
        TastingPlan plan;
        plan.thisYear = false;
        plan.cropYears = year;
        plan.withReference = true;
        plan.tasters = tasters;
        plans.push_back(plan);
    }
    const auto powers = settlingPowers(model, question, plans);
    if (!powers) {
        return powers.problem();
    }
    std::vector<YearOutlook> outlooks;
    for (const SettlingPower& power : *powers) {
        YearOutlook outlook{power.plan.cropYears, power.reliabilityAfter, power.errorAfter, 0};
        const Outlook after{question.ahead.value, power.meanSpread, power.errorAfter};
        outlook.reachChance = after.spread > 0 ? standardNormalAbove(after.pointOf(threshold))
                                               : (power.now >= threshold ? 1.0 : 0.0);
        outlooks.push_back(outlook);
    }
    return outlooks;
}

} // namespace pipwright
