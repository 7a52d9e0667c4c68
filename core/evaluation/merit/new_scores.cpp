#include "core/evaluation/merit/new_scores.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <tuple>
#include <utility>

namespace pipwright {

namespace {

Problem nothingKnown() {
    return {ProblemCode::badInput, "Nothing is known of the merit of that genotype.",
            "Choose one that has been tasted, or a parent of one.", "genotype"};
}

Problem unfitCovariances() {
    return {ProblemCode::internal, "The covariances of the merits do not fit together.",
            "Please report this.", ""};
}

/// c' V^-1 c of a covariance matrix factored as L L'.
double toldOf(const DenseMatrix& factor, const std::vector<double>& together) {
    std::vector<double> side = together;
    double sum = 0;
    for (std::size_t i = 0; i < side.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            side[i] -= factor(i, k) * side[k];
        }
        side[i] /= factor(i, i);
        sum += side[i] * side[i];
    }
    return sum;
}

} // namespace

/// Scores to come as sums of effects: known ones, by their place in the covariances, and new ones.
class KnownEffects::ScoreList {
  public:
    ScoreList(const KnownEffects& known, const TastingPlan& plan) : m_known(known), m_plan(plan) {
        for (int year = 0; year < plan.cropYears; ++year) {
            for (int sitting = 0; sitting < plan.sittings; ++sitting) {
                for (int lot = 0; lot < plan.lots; ++lot) {
                    for (int who = 0; who < (plan.withReference ? 2 : 1); ++who) {
                        for (int taster = 0; taster < plan.tasters; ++taster) {
                            add(year, sitting, lot, who, taster);
                        }
                    }
                }
            }
        }
    }

    [[nodiscard]] std::size_t size() const { return m_scores.size(); }

    [[nodiscard]] DenseMatrix variance() const {
        DenseMatrix matrix(size(), size());
        for (std::size_t i = 0; i < size(); ++i) {
            for (std::size_t j = 0; j <= i; ++j) {
                double sum = i == j ? m_scores[i].noise : 0;
                for (const std::size_t a : m_scores[i].known) {
                    for (const std::size_t b : m_scores[j].known) {
                        sum += m_known.m_covariance(a, b);
                    }
                }
                for (const std::size_t a : m_scores[i].fresh) {
                    const auto& others = m_scores[j].fresh;
                    if (std::find(others.begin(), others.end(), a) != others.end()) {
                        sum += m_variances[a];
                    }
                }
                matrix(i, j) = sum;
                matrix(j, i) = sum;
            }
        }
        return matrix;
    }

    /// Covariances with an effect of the book.
    [[nodiscard]] std::vector<double> with(std::size_t effect) const {
        std::vector<double> covariances;
        for (const NewScore& score : m_scores) {
            double sum = 0;
            for (const std::size_t a : score.known) {
                sum += m_known.m_covariance(effect, a);
            }
            covariances.push_back(sum);
        }
        return covariances;
    }

  private:
    struct NewScore {
        std::vector<std::size_t> known;
        std::vector<std::size_t> fresh;
        double noise = 0;
    };
    /// What a new effect belongs to, so that scores share it.
    using FreshKey = std::tuple<MeritTerm, int, int, int, int>;

    void add(int year, int sitting, int lot, int who, int taster) {
        const Shared& shared = m_known.m_shared[static_cast<std::size_t>(who)];
        const Taster& mouth = m_known.m_tasters[static_cast<std::size_t>(taster)];
        const bool running = m_plan.thisYear && year == 0;
        const MeritOptions& options = m_known.m_model.options();
        NewScore score;
        score.noise = mouth.noise;
        score.known.push_back(shared.merit);
        put(score, shared.plant, {MeritTerm::plant, who, 0, 0, 0});
        put(score, running ? shared.genotypeYear : std::nullopt,
            {MeritTerm::genotypeYear, who, year, 0, 0});
        put(score, std::nullopt, {MeritTerm::lot, who, year, sitting, lot});
        if (options.sittings) {
            put(score, std::nullopt, {MeritTerm::sitting, year, sitting, 0, 0});
        }
        if (options.cropYears) {
            put(score, running ? m_known.m_cropYear : std::nullopt,
                {MeritTerm::cropYear, year, 0, 0, 0});
        }
        if (options.tasterLevels && (mouth.effect || mouth.stranger)) {
            put(score, mouth.effect, {MeritTerm::taster, taster, 0, 0, 0});
        }
        if (!m_plan.blind && who == 0 && m_known.m_hopeVariance > 0) {
            score.fresh.push_back(hope());
        }
        m_scores.push_back(std::move(score));
    }

    void put(NewScore& score, std::optional<std::size_t> known, const FreshKey& key) {
        if (known) {
            score.known.push_back(*known);
            return;
        }
        const auto [at, isNew] = m_numbers.try_emplace(key, m_variances.size());
        if (isNew) {
            m_variances.push_back(m_known.m_model.varianceOf(std::get<0>(key)));
        }
        score.fresh.push_back(at->second);
    }

    /// What hope adds is shared by all sighted scores, and not quite known.
    std::size_t hope() {
        if (!m_hope) {
            m_hope = m_variances.size();
            m_variances.push_back(m_known.m_hopeVariance);
        }
        return *m_hope;
    }

    const KnownEffects& m_known;
    const TastingPlan& m_plan;
    std::vector<NewScore> m_scores;
    std::map<FreshKey, std::size_t> m_numbers;
    std::vector<double> m_variances; ///< of the new effects
    std::optional<std::size_t> m_hope;
};

Result<KnownEffects> KnownEffects::of(const MeritModel& model, const SettlingQuestion& question,
                                      int tasters) {
    const auto genotype = model.contrastOf(question.genotype);
    const auto reference = model.contrastOf(question.reference);
    if (!genotype || !reference) {
        return nothingKnown();
    }
    KnownEffects known(model);
    known.m_shared[0].merit = known.add(*genotype);
    known.m_shared[1].merit = known.add(*reference);
    known.m_genotype = known.add({genotype->back()}); // its effect stands behind the level
    known.m_reliability = model.meritOf(question.genotype)->reliability;
    known.gather(question, tasters);
    const auto covariances = model.mixedFit().contrastCovariances(known.m_contrasts);
    if (!covariances) {
        return covariances.problem();
    }
    const std::size_t size = known.m_contrasts.size();
    known.m_covariance = DenseMatrix(size, size);
    for (std::size_t i = 0; i < size; ++i) {
        for (std::size_t k = 0; k < size; ++k) {
            known.m_covariance(i, k) = (*covariances)[i * size + k];
        }
    }
    return known;
}

std::size_t KnownEffects::add(Contrast contrast) {
    m_contrasts.push_back(std::move(contrast));
    return m_contrasts.size() - 1;
}

std::optional<std::size_t> KnownEffects::addEffect(MeritTerm term,
                                                   std::optional<std::size_t> record) {
    const auto effect = record ? m_model.effectOf(term, *record) : std::nullopt;
    return effect ? std::optional(add({{*effect, 1}})) : std::nullopt;
}

void KnownEffects::gather(const SettlingQuestion& question, int tasters) {
    const std::vector<TraitRecord>& records = m_model.records().records;
    const auto persons = m_model.tasters();
    std::array<std::optional<std::size_t>, 2> newest; // record of seedling and reference
    std::array<std::optional<std::size_t>, 2> thisYear;
    std::optional<std::size_t> inYear;
    std::vector<std::optional<std::size_t>> ofPerson(persons.size());
    for (std::size_t i = 0; i < records.size(); ++i) {
        const TraitRecord& record = records[i];
        const bool running = record.cropYear == question.cropYear.year;
        inYear = running ? i : inYear;
        if (record.person >= 0) {
            ofPerson[static_cast<std::size_t>(record.person)] = i;
        }
        for (const std::size_t who : {0U, 1U}) {
            if (record.genotype != (who == 0 ? question.genotype : question.reference)) {
                continue;
            }
            if (!newest[who] || records[*newest[who]].date <= record.date) {
                newest[who] = i;
            }
            thisYear[who] = running ? i : thisYear[who];
        }
    }
    for (const std::size_t who : {0U, 1U}) {
        m_shared[who].plant = addEffect(MeritTerm::plant, newest[who]);
        m_shared[who].genotypeYear = addEffect(MeritTerm::genotypeYear, thisYear[who]);
    }
    m_cropYear = addEffect(MeritTerm::cropYear, inYear);
    std::vector<std::size_t> order(persons.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return persons[a].scores > persons[b].scores;
    });
    for (int i = 0; i < tasters; ++i) {
        const auto place = static_cast<std::size_t>(i);
        if (place < order.size()) {
            const double noise = persons[order[place]].noise;
            m_tasters.push_back(
                {addEffect(MeritTerm::taster, ofPerson[order[place]]), false, noise * noise});
        } else {
            m_tasters.push_back({std::nullopt, true, m_model.residualVariance()});
        }
    }
    for (const ConditionReport& report : m_model.conditions()) {
        const bool hope = conditionClasses()[report.condition].correction == Correction::hope;
        if (question.ownSeedling && hope) {
            m_hopeVariance = report.found.standardError * report.found.standardError;
        }
    }
    if (question.ownSeedling && m_hopeVariance == 0 &&
        !m_model.options().off.contains(Correction::hope)) {
        for (const ConditionClass& one : conditionClasses()) {
            if (one.correction == Correction::hope) {
                m_hopeVariance = one.sd * one.sd;
            }
        }
    }
}

Result<ToldByScores> KnownEffects::toldBy(const TastingPlan& plan) const {
    const ScoreList scores(*this, plan);
    const auto factor = choleskyFactor(scores.variance());
    if (!factor) {
        return unfitCovariances();
    }
    std::vector<double> difference = scores.with(m_shared[0].merit);
    const std::vector<double> reference = scores.with(m_shared[1].merit);
    for (std::size_t i = 0; i < difference.size(); ++i) {
        difference[i] -= reference[i];
    }
    return ToldByScores{toldOf(*factor, difference), toldOf(*factor, scores.with(m_genotype))};
}

double KnownEffects::differenceVariance() const {
    return m_covariance(0, 0) + m_covariance(1, 1) - 2 * m_covariance(0, 1);
}

double KnownEffects::reliabilityAfter(double told) const {
    const double before = m_covariance(m_genotype, m_genotype);
    return before > 0 ? 1 - (1 - m_reliability) * std::max(0.0, before - told) / before
                      : m_reliability;
}

} // namespace pipwright
