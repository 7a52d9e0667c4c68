#include "core/evaluation/sitting_agreement.h"

#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace pipwright {

namespace {

constexpr double kTail = 0.025;

const Score* likingScore(const TastedLot& lot, PersonId taster) {
    for (const Score& score : lot.scores) {
        if (score.taster == taster && score.liking) {
            return &score;
        }
    }
    return nullptr;
}

/// Tasters who gave a liking at all.
std::vector<PersonId> likers(const Sitting& sitting) {
    std::vector<PersonId> all;
    for (const PersonId taster : sitting.tasters) {
        if (std::any_of(sitting.lots.begin(), sitting.lots.end(), [taster](const auto& lot) {
                return likingScore(lot, taster) != nullptr;
            })) {
            all.push_back(taster);
        }
    }
    return all;
}

std::optional<PointSpread> spreadOf(double squares, int freedom) {
    if (freedom < 1) {
        return std::nullopt;
    }
    PointSpread spread;
    spread.degreesOfFreedom = freedom;
    spread.deviation = std::sqrt(squares / freedom);
    const ChiSquareDistribution chi{static_cast<double>(freedom)};
    const auto upper = quantile(chi, 1 - kTail);
    const auto lower = quantile(chi, kTail);
    if (!upper || !lower) {
        return std::nullopt;
    }
    spread.low = std::sqrt(squares / *upper);
    spread.high = std::sqrt(squares / *lower);
    return spread;
}

/// y = lot + taster, the tasters summing to nothing, over the likings of a sitting.
class AdditiveFit {
  public:
    AdditiveFit(const Sitting& sitting, std::vector<std::size_t> lots,
                std::vector<PersonId> tasters)
        : m_lots(std::move(lots)), m_tasters(std::move(tasters)),
          m_size(m_lots.size() + m_tasters.size() - 1) {
        DenseMatrix normal(m_size, m_size);
        std::vector<double> right(m_size, 0);
        for (std::size_t lot = 0; lot < m_lots.size(); ++lot) {
            for (std::size_t taster = 0; taster < m_tasters.size(); ++taster) {
                const Score* score = likingScore(sitting.lots[m_lots[lot]], m_tasters[taster]);
                if (score == nullptr) {
                    continue;
                }
                const auto row = rowOf(lot, taster);
                for (std::size_t i = 0; i < m_size; ++i) {
                    right[i] += row[i] * *score->liking;
                    for (std::size_t j = 0; j < m_size; ++j) {
                        normal(i, j) += row[i] * row[j];
                    }
                }
                m_likings.push_back({lot, taster, *score->liking});
            }
        }
        m_inverse = inverseOfPositive(normal);
        if (m_inverse) {
            m_effects = m_inverse->times(right);
            addResiduals();
        }
    }

    [[nodiscard]] bool isLinked() const { return m_inverse.has_value(); }
    [[nodiscard]] double lotMean(std::size_t lot) const { return m_effects[lot]; }
    [[nodiscard]] double unitVariance(std::size_t lot) const { return (*m_inverse)(lot, lot); }
    [[nodiscard]] int freedom() const {
        return static_cast<int>(m_likings.size()) - static_cast<int>(m_size);
    }
    [[nodiscard]] double squares() const { return m_squares; }

  private:
    struct Liking {
        std::size_t lot;
        std::size_t taster;
        double value;
    };

    [[nodiscard]] std::vector<double> rowOf(std::size_t lot, std::size_t taster) const {
        std::vector<double> row(m_size, 0);
        row[lot] = 1;
        const std::size_t last = m_tasters.size() - 1;
        if (taster < last) {
            row[m_lots.size() + taster] = 1;
        } else {
            std::fill(row.begin() + static_cast<std::ptrdiff_t>(m_lots.size()), row.end(), -1.0);
        }
        return row;
    }

    void addResiduals() {
        for (const Liking& one : m_likings) {
            const double residual = one.value - dot(rowOf(one.lot, one.taster), m_effects);
            m_squares += residual * residual;
        }
    }

    std::vector<std::size_t> m_lots;
    std::vector<PersonId> m_tasters;
    std::size_t m_size;
    std::vector<Liking> m_likings;
    std::optional<DenseMatrix> m_inverse;
    std::vector<double> m_effects;
    double m_squares = 0;
};

RankedLot countedLot(const Sitting& sitting, std::size_t at) {
    RankedLot ranked;
    ranked.lot = at;
    for (const Score& score : sitting.lots[at].scores) {
        ranked.likings += score.liking ? 1 : 0;
        ranked.bestOnes += score.rank ? 1 : 0;
        ranked.firsts += score.rank == 1 ? 1 : 0;
    }
    return ranked;
}

} // namespace

Result<SittingAgreement> agreementOf(const Sitting& sitting) {
    const auto tasters = likers(sitting);
    std::vector<const TastedLot*> common;
    SittingAgreement agreement;
    for (const TastedLot& lot : sitting.lots) {
        const auto given = std::count_if(tasters.begin(), tasters.end(), [&lot](PersonId taster) {
            return likingScore(lot, taster) != nullptr;
        });
        if (given == static_cast<std::ptrdiff_t>(tasters.size()) && given > 0) {
            common.push_back(&lot);
        } else if (given > 0) {
            ++agreement.leftOut;
        }
    }
    agreement.tasters = static_cast<int>(tasters.size());
    agreement.lots = static_cast<int>(common.size());
    DenseMatrix scores(tasters.size(), common.size());
    for (std::size_t taster = 0; taster < tasters.size(); ++taster) {
        for (std::size_t lot = 0; lot < common.size(); ++lot) {
            scores(taster, lot) = *likingScore(*common[lot], tasters[taster])->liking;
        }
    }
    auto test = friedmanTest(scores);
    if (!test) {
        return test.problem();
    }
    agreement.order = std::move(*test);
    return agreement;
}

std::vector<RepeatError> repeatErrors(const OrchardView& view, const Sitting& sitting) {
    std::map<Index, std::map<Uuid, std::vector<double>>> likings;
    for (const TastedLot& lot : sitting.lots) {
        const auto genotype = genotypeOf(view, lot.lot);
        for (const Score& score : lot.scores) {
            if (genotype && score.liking) {
                likings[*genotype][score.taster.uuid].push_back(*score.liking);
            }
        }
    }
    std::vector<RepeatError> errors;
    for (const auto& [genotype, byTaster] : likings) {
        RepeatError error;
        double squares = 0;
        int freedom = 0;
        double sum = 0;
        int count = 0;
        for (const auto& [taster, values] : byTaster) {
            if (values.size() < 2) {
                continue;
            }
            ++error.tasters;
            double mean = 0;
            for (const double value : values) {
                mean += value / static_cast<double>(values.size());
                sum += value;
                ++count;
            }
            for (const double value : values) {
                squares += (value - mean) * (value - mean);
            }
            freedom += static_cast<int>(values.size()) - 1;
            const auto [low, high] = std::minmax_element(values.begin(), values.end());
            error.largestGap = std::max(error.largestGap, *high - *low);
        }
        if (const auto spread = spreadOf(squares, freedom)) {
            error.name = view.genotypes()[genotype].called();
            error.spread = *spread;
            error.meanLiking = sum / count;
            errors.push_back(std::move(error));
        }
    }
    return errors;
}

Result<SittingRanking> rankingOf(const Sitting& sitting) {
    std::vector<std::size_t> lots;
    for (std::size_t lot = 0; lot < sitting.lots.size(); ++lot) {
        if (likingOf(sitting.lots[lot])) {
            lots.push_back(lot);
        }
    }
    const auto tasters = likers(sitting);
    if (lots.empty()) {
        return Problem{ProblemCode::badInput,
                       "nobody has given a liking yet.",
                       "Type what stands on the sheets first.",
                       {}};
    }
    const AdditiveFit fit(sitting, lots, tasters);
    if (!fit.isLinked()) {
        return Problem{ProblemCode::badInput,
                       "some lots were scored by other tasters than the rest, so nothing links "
                       "them.",
                       "Serve lots that are to be compared to the same tasters.",
                       {}};
    }
    SittingRanking ranking;
    ranking.residual = spreadOf(fit.squares(), fit.freedom());
    std::optional<double> t;
    if (ranking.residual) {
        const StudentDistribution student{static_cast<double>(fit.freedom())};
        if (const auto bound = quantile(student, 1 - kTail)) {
            t = *bound * ranking.residual->deviation;
            ranking.leastDifference = *t * std::sqrt(2.0 / static_cast<double>(tasters.size()));
        }
    }
    for (std::size_t i = 0; i < lots.size(); ++i) {
        RankedLot ranked = countedLot(sitting, lots[i]);
        ranked.mean = fit.lotMean(i);
        const double half = t ? *t * std::sqrt(fit.unitVariance(i)) : 0;
        ranked.hasInterval = t.has_value();
        ranked.low = ranked.mean - half;
        ranked.high = ranked.mean + half;
        ranking.lots.push_back(ranked);
    }
    std::stable_sort(ranking.lots.begin(), ranking.lots.end(),
                     [](const RankedLot& a, const RankedLot& b) { return a.mean > b.mean; });
    return ranking;
}

} // namespace pipwright
