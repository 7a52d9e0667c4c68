#include "core/evaluation/merit/verdict.h"

#include "core/evaluation/living_copies.h"
#include "core/evaluation/merit/ladder_odds.h"
#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <unordered_map>
#include <utility>

namespace pipwright {

namespace {

constexpr double kEighty = 1.2815515655446004;     // normal quantile of .90
constexpr double kNinetyFive = 1.9599639845400545; // of .975

/// A seedling's merit with its covariances with the references.
struct Standing {
    UncertainValue merit;
    double reliability = 0;
    std::vector<double> together; ///< by reference

    [[nodiscard]] double variance() const { return merit.standardError * merit.standardError; }
};

/// Genotypes the others are held against, with their covariances with all of the model.
struct References {
    std::vector<Index> list;
    std::unordered_map<Index, std::size_t> at;
    DenseMatrix covariance; ///< list x merits()

    void add(const MeritModel& model, Index genotype, bool seenOnly) {
        const GenotypeMerit* merit = model.meritOf(genotype);
        if (merit != nullptr && (merit->seen() || !seenOnly) &&
            at.try_emplace(genotype, list.size()).second) {
            list.push_back(genotype);
        }
    }
};

bool isJudged(const VerdictGround& ground, Index genotype) {
    const GenotypeEntry& entry = ground.view->genotypes()[genotype];
    const bool ours = entry.kind == GenotypeKind::seedling || entry.kind == GenotypeKind::selection;
    if (!ours || entry.erased) {
        return false;
    }
    const GenotypeMerit* merit = ground.model->meritOf(genotype);
    if (merit != nullptr && merit->seen()) {
        return true;
    }
    const auto fruited = ground.view->hasEvidence()
                             ? ground.view->genotypeFacts(genotype).firstFruitYear
                             : std::nullopt;
    return fruited && (!ground.lastCropYear || *fruited <= ground.lastCropYear->year);
}

class VerdictMaker {
  public:
    VerdictMaker(const VerdictGround& ground, const VerdictChoices& choices)
        : m_ground(ground), m_view(*ground.view), m_model(*ground.model),
          m_ladders(*ground.ladders), m_days(*ground.days), m_faults(*ground.faults),
          m_choices(choices) {}

    Result<std::vector<SeedlingVerdict>> make(std::optional<Index> only) {
        std::vector<Index> judged;
        for (Index i = 0; i < m_view.genotypes().size(); ++i) {
            if ((!only || *only == i) && isJudged(m_ground, i)) {
                judged.push_back(i);
            }
        }
        if (auto done = gatherReferences(judged); !done) {
            return done.problem();
        }
        std::vector<SeedlingVerdict> all;
        all.reserve(judged.size());
        for (const Index genotype : judged) {
            auto one = judge(genotype);
            if (!one) {
                return one.problem();
            }
            all.push_back(std::move(*one));
        }
        return all;
    }

  private:
    Outcome gatherReferences(const std::vector<Index>& judged) {
        // Of a single one only its own slot's benchmarks matter.
        SeedlingVerdict alone;
        if (judged.size() == 1) {
            alone.genotype = judged.front();
            findSlot(alone);
        }
        for (std::size_t i = 0; i < m_ladders.size(); ++i) {
            for (std::size_t k = 0; k < m_ladders[i].slots.size(); ++k) {
                const SlotLadder& ladder = m_ladders[i].slots[k];
                if (alone.slot && (alone.ladders != i || alone.slot != k)) {
                    continue;
                }
                for (const Index one : ladder.benchmarks) {
                    m_references.add(m_model, one, true);
                }
                for (const auto* rung : {&ladder.floor, &ladder.best, &ladder.famous}) {
                    if (*rung) {
                        m_references.add(m_model, (*rung)->genotype, true);
                    }
                }
            }
        }
        m_benchmarkCount = m_references.list.size();
        for (const Index one : judged) {
            if (m_model.meritOf(one) == nullptr) {
                const ParentsOf parents = m_view.parentsOf(one);
                if (parents.seed && parents.pollen) {
                    m_references.add(m_model, *parents.seed, false);
                    m_references.add(m_model, *parents.pollen, false);
                }
            }
        }
        if (m_references.list.empty()) {
            return {};
        }
        auto covariance = m_model.covariances(m_references.list);
        if (!covariance) {
            return covariance.problem();
        }
        m_references.covariance = std::move(*covariance);
        return {};
    }

    /// The place of a genotype in the model's list.
    [[nodiscard]] std::optional<std::size_t> placeOf(Index genotype) const {
        const GenotypeMerit* merit = m_model.meritOf(genotype);
        return merit == nullptr
                   ? std::nullopt
                   : std::optional(static_cast<std::size_t>(merit - m_model.merits().data()));
    }

    [[nodiscard]] double covariance(std::size_t reference, std::size_t place) const {
        return m_references.covariance(reference, place);
    }

    [[nodiscard]] std::optional<Standing> standingOf(Index genotype, MeritBasis& basis) const {
        if (const auto place = placeOf(genotype)) {
            const GenotypeMerit& merit = m_model.merits()[*place];
            Standing standing{merit.merit, merit.reliability, {}};
            for (std::size_t k = 0; k < m_benchmarkCount; ++k) {
                standing.together.push_back(covariance(k, *place));
            }
            basis = merit.seen() ? MeritBasis::tasted : MeritBasis::relatives;
            return standing;
        }
        const ParentsOf parents = m_view.parentsOf(genotype);
        const auto seed =
            parents.seed ? m_references.at.find(*parents.seed) : m_references.at.end();
        const auto pollen =
            parents.pollen ? m_references.at.find(*parents.pollen) : m_references.at.end();
        if (seed == m_references.at.end() || pollen == m_references.at.end()) {
            return std::nullopt;
        }
        basis = MeritBasis::relatives;
        return midway(seed->second, pollen->second);
    }

    /// Midway between two references, with half the genotypes' variance segregating (parents taken
    /// as not inbred, which errs on the side of doubt).
    [[nodiscard]] Standing midway(std::size_t seed, std::size_t pollen) const {
        const std::size_t one = *placeOf(m_references.list[seed]);
        const std::size_t other = *placeOf(m_references.list[pollen]);
        const GenotypeMerit& a = m_model.merits()[one];
        const GenotypeMerit& b = m_model.merits()[other];
        Standing standing;
        standing.merit.value = (a.merit.value + b.merit.value) / 2;
        const double both =
            covariance(seed, one) + covariance(pollen, other) + 2 * covariance(seed, other);
        standing.merit.standardError =
            std::sqrt(std::max(both, 0.0) / 4 + m_model.varianceOf(MeritTerm::genotype) / 2);
        standing.reliability = (a.reliability + b.reliability) / 4;
        for (std::size_t k = 0; k < m_benchmarkCount; ++k) {
            standing.together.push_back((covariance(k, one) + covariance(k, other)) / 2);
        }
        return standing;
    }

    Result<SeedlingVerdict> judge(Index genotype) {
        SeedlingVerdict verdict;
        verdict.genotype = genotype;
        verdict.stage = m_ground.stages == nullptr ? m_view.genotypes()[genotype].stage
                                                   : (*m_ground.stages)[genotype];
        verdict.gate = gateOf(verdict.stage);
        verdict.evidence.genotype = genotype;
        if (const GenotypeMerit* merit = m_model.meritOf(genotype)) {
            verdict.evidence = *merit;
        }
        const auto standing = standingOf(genotype, verdict.basis);
        if (standing) {
            putMerit(*standing, verdict);
        }
        findSlot(verdict);
        if (standing && verdict.slot) {
            const SlotLadder& ladder = m_ladders[*verdict.ladders].slots[*verdict.slot];
            verdict.floor = against(ladder.floor, *standing, genotype);
            verdict.best = against(ladder.best, *standing, genotype);
            verdict.famous = against(ladder.famous, *standing, genotype);
            if (auto done = putAboveAll(ladder, *standing, verdict); !done) {
                return done.problem();
            }
            if (!verdict.floor && !verdict.best) {
                verdict.lack = LadderLack::benchmarkUnseen;
            }
        }
        verdict.deficit = deficitOf(verdict);
        verdict.faults = m_faults.beyond(genotype, m_choices.limits);
        suggest(verdict);
        return verdict;
    }

    static void putMerit(const Standing& standing, SeedlingVerdict& verdict) {
        const auto around = [&](double quantile) {
            return MeritInterval{standing.merit.value - quantile * standing.merit.standardError,
                                 standing.merit.value + quantile * standing.merit.standardError};
        };
        verdict.merit = standing.merit;
        verdict.eighty = around(kEighty);
        verdict.ninetyFive = around(kNinetyFive);
        verdict.reliability = standing.reliability;
    }

    void findSlot(SeedlingVerdict& verdict) const {
        if (verdict.genotype < m_days.size()) {
            verdict.season = m_days[verdict.genotype];
        }
        const SeasonLadders* season = laddersFor(m_ladders, m_view.genotypes()[verdict.genotype]);
        if (season == nullptr || season->slots.empty()) {
            verdict.lack = LadderLack::noLadders;
            return;
        }
        verdict.ladders = static_cast<std::size_t>(season - m_ladders.data());
        if (!verdict.season.day) {
            verdict.lack = LadderLack::unknownSeason;
            return;
        }
        verdict.slot = season->slotOf(*verdict.season.day);
        verdict.lack = verdict.slot ? LadderLack::none : LadderLack::outsideSlots;
    }

    [[nodiscard]] std::optional<RungOdds> against(const std::optional<LadderRung>& rung,
                                                  const Standing& standing, Index genotype) const {
        const auto reference = rung ? m_references.at.find(rung->genotype) : m_references.at.end();
        if (reference == m_references.at.end() || reference->second >= m_benchmarkCount ||
            rung->genotype == genotype) {
            return std::nullopt;
        }
        const UncertainValue other = m_model.meritOf(rung->genotype)->merit;
        const double variance = standing.variance() + other.standardError * other.standardError -
                                2 * standing.together[reference->second];
        const double ahead = standing.merit.value - other.value;
        RungOdds odds;
        odds.reference = rung->genotype;
        odds.borrowed = rung->borrowed;
        odds.ahead = {ahead, std::sqrt(std::max(variance, 0.0))};
        odds.above = chanceAboveZero(ahead, variance);
        odds.aboveByMargin = chanceAboveZero(ahead - m_choices.thresholds.margin, variance);
        return odds;
    }

    Outcome putAboveAll(const SlotLadder& ladder, const Standing& standing,
                        SeedlingVerdict& verdict) {
        std::vector<std::size_t> members;
        for (const Index one : ladder.benchmarks) {
            const auto found = m_references.at.find(one);
            if (one != verdict.genotype && found != m_references.at.end() &&
                found->second < m_benchmarkCount) {
                members.push_back(found->second);
            }
        }
        verdict.benchmarks = static_cast<int>(members.size());
        verdict.benchmarksBorrowed = ladder.benchmarksBorrowed;
        if (members.empty()) {
            return {};
        }
        auto odds = m_odds.find(members);
        if (odds == m_odds.end()) {
            auto made = oddsOf(members);
            if (!made) {
                return made.problem();
            }
            odds = m_odds.emplace(members, std::move(*made)).first;
        }
        std::vector<double> together;
        for (const std::size_t k : members) {
            together.push_back(standing.together[k]);
        }
        verdict.aboveAll =
            odds->second.aboveAll(standing.merit.value, standing.variance(), together);
        return {};
    }

    [[nodiscard]] Result<LadderOdds> oddsOf(const std::vector<std::size_t>& members) const {
        std::vector<double> means;
        DenseMatrix covariances(members.size(), members.size());
        for (std::size_t i = 0; i < members.size(); ++i) {
            const std::size_t place = *placeOf(m_references.list[members[i]]);
            means.push_back(m_model.merits()[place].merit.value);
            for (std::size_t k = 0; k < members.size(); ++k) {
                covariances(k, i) = covariance(members[k], place);
            }
        }
        // Exactly symmetric, whatever rounding did.
        for (std::size_t i = 0; i < members.size(); ++i) {
            for (std::size_t k = 0; k < i; ++k) {
                covariances(i, k) = covariances(k, i);
            }
        }
        return LadderOdds::of(std::move(means), std::move(covariances));
    }

    static double deficitOf(const SeedlingVerdict& verdict) {
        if (verdict.basis == MeritBasis::none) {
            return 0;
        }
        const double spread =
            verdict.floor ? verdict.floor->ahead.standardError : verdict.merit.standardError;
        if (!(spread > 0)) {
            return 0;
        }
        const double z = verdict.floor ? std::abs(verdict.floor->ahead.value) / spread : 0;
        return spread * (standardNormalDensity(z) - z * standardNormalAbove(z));
    }

    void suggest(SeedlingVerdict& verdict) const {
        const auto [suggestion, reason] = suggestionFor(verdict);
        verdict.suggestion = suggestion;
        verdict.reason = reason;
    }

    [[nodiscard]] std::pair<Suggestion, SuggestionReason>
    suggestionFor(const SeedlingVerdict& verdict) const {
        using Why = SuggestionReason;
        const VerdictThresholds& limits = m_choices.thresholds;
        if (verdict.stage == Stage::culled || verdict.stage == Stage::parent ||
            verdict.stage == Stage::named || verdict.stage == Stage::released) {
            return {Suggestion::none, Why::settledAlready};
        }
        if (verdict.basis != MeritBasis::tasted) {
            return {Suggestion::notEnoughYet, Why::neverTasted};
        }
        if (!verdict.floor && !verdict.best) {
            return {Suggestion::notEnoughYet, Why::nothingToBeat};
        }
        const double aboveFloor = verdict.floor ? verdict.floor->above : verdict.best->above;
        const double aboveBest = verdict.best ? verdict.best->above : verdict.floor->above;
        if (!verdict.faults.empty()) {
            return aboveFloor >= limits.watchAboveFloor
                       ? std::pair{Suggestion::parentOnly, Why::goodButFaulty}
                       : std::pair{Suggestion::cull, Why::faulty};
        }
        if (verdict.evidence.fairLots < limits.fairLots) {
            return {Suggestion::notEnoughYet, Why::noFairLot};
        }
        if (1 - aboveFloor >= limits.cullBelowFloor) {
            return {Suggestion::cull, Why::belowFloor};
        }
        if (aboveBest >= limits.nameAboveBest &&
            verdict.evidence.cropYears >= limits.nameCropYears) {
            return {Suggestion::nameTalk, Why::aboveBest};
        }
        if (aboveBest >= limits.backUpAboveBest &&
            livingCopies(m_view, verdict.genotype).stems < 2) {
            return {Suggestion::backUpNow, Why::aboveBestOneTree};
        }
        if (aboveBest >= limits.nameAboveBest) {
            return {Suggestion::watch, Why::aboveBestTooFewYears};
        }
        if (aboveFloor >= limits.watchAboveFloor) {
            return {Suggestion::watch, Why::aboveFloor};
        }
        return {Suggestion::again, Why::undecided};
    }

    const VerdictGround& m_ground;
    const OrchardView& m_view;
    const MeritModel& m_model;
    const std::vector<SeasonLadders>& m_ladders;
    const std::vector<RipeningDay>& m_days;
    const FaultLedger& m_faults;
    const VerdictChoices& m_choices;
    References m_references; ///< benchmarks first, then parents
    std::size_t m_benchmarkCount = 0;
    std::map<std::vector<std::size_t>, LadderOdds> m_odds;
};

Problem badThreshold(std::string what) {
    return {ProblemCode::badInput, std::move(what), "Set it again.", "thresholds"};
}

} // namespace

Gate gateOf(Stage stage) {
    switch (stage) {
    case Stage::planned:
    case Stage::seed:
    case Stage::nursery:
    case Stage::juvenile:
        return Gate::beforeFruit;
    case Stage::unknown:
    case Stage::bearing:
        return Gate::firstFruit;
    case Stage::watched:
        return Gate::watchToSelection;
    case Stage::selection:
        return Gate::selectionToAdvanced;
    case Stage::advanced:
        return Gate::naming;
    case Stage::named:
    case Stage::released:
    case Stage::parent:
    case Stage::culled:
        break;
    }
    return Gate::none;
}

Outcome checkThresholds(const VerdictThresholds& thresholds) {
    for (const double chance : {thresholds.watchAboveFloor, thresholds.backUpAboveBest,
                                thresholds.nameAboveBest, thresholds.cullBelowFloor}) {
        if (!(chance >= 0 && chance <= 1)) {
            return badThreshold("A chance lies between 0 and 1.");
        }
    }
    if (!(thresholds.margin >= 0) || !std::isfinite(thresholds.margin)) {
        return badThreshold("A margin is a number of points, 0 or more.");
    }
    if (thresholds.nameCropYears < 0 || thresholds.fairLots < 0) {
        return badThreshold("Crop years and lots are counted from 0.");
    }
    if (thresholds.watchAboveFloor <= 1 - thresholds.cullBelowFloor) {
        return badThreshold("A seedling would be worth watching and culling at once.");
    }
    return {};
}

Result<std::vector<SeedlingVerdict>>
verdicts(const VerdictGround& ground, const VerdictChoices& choices, std::optional<Index> only) {
    if (auto fine = checkThresholds(choices.thresholds); !fine) {
        return fine.problem();
    }
    if (!ground.model->records().isLiking()) {
        return Problem{ProblemCode::badInput, "A verdict is about liking, not about another trait.",
                       "Ask for the merit in liking.", ""};
    }
    return VerdictMaker(ground, choices).make(only);
}

EvidenceLedger evidenceLedger(const std::vector<SeedlingVerdict>& verdicts) {
    EvidenceLedger ledger;
    for (std::size_t i = 0; i < verdicts.size(); ++i) {
        if (verdicts[i].reason != SuggestionReason::settledAlready) {
            (verdicts[i].fairlyTested() ? ledger.tested : ledger.neverFair).push_back(i);
        }
    }
    const auto byDeficit = [&](std::size_t a, std::size_t b) {
        return verdicts[a].deficit > verdicts[b].deficit;
    };
    std::stable_sort(ledger.neverFair.begin(), ledger.neverFair.end(), byDeficit);
    std::stable_sort(ledger.tested.begin(), ledger.tested.end(), byDeficit);
    return ledger;
}

} // namespace pipwright
