#include "tests/support/simulated_orchard.h"

#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <random>
#include <string>

namespace pipwright::test {

namespace {

std::size_t slot(std::int64_t number) {
    return static_cast<std::size_t>(number);
}

/// Random numbers that come out the same with every standard library.
class Chance {
  public:
    explicit Chance(std::uint64_t seed) : m_engine(seed) {}
    double uniform() { return (static_cast<double>(m_engine() >> 11U) + 0.5) * 0x1p-53; }
    double normal(double sd = 1) { return sd * standardNormalQuantile(uniform()); }
    int below(int count) { return static_cast<int>(uniform() * count); }
    bool happens(double probability) { return uniform() < probability; }
    /// Mean 0, variance 1, skewness about -1: a gamma curve of shape 4, turned round.
    double skewed() {
        double sum = 0;
        for (int i = 0; i < 4; ++i) {
            sum -= std::log(uniform());
        }
        return (4 - sum) / 2;
    }

  private:
    std::mt19937_64 m_engine;
};

std::uint8_t conditionNamed(std::string_view key) {
    const auto classes = conditionClasses();
    for (std::size_t i = 0; i < classes.size(); ++i) {
        if (classes[i].key == key) {
            return static_cast<std::uint8_t>(i);
        }
    }
    return 0;
}

/// Builds one orchard.
class OrchardSimulation {
  public:
    OrchardSimulation(const SimulationPlan& plan, std::uint64_t seed)
        : m_plan(plan), m_chance(seed), m_priors(likingPriors()) {}

    SimulatedOrchard run() {
        drawTruth();
        breed();
        for (int year = 0; year < m_plan.cropYears; ++year) {
            tasteYear(year);
        }
        m_orchard.records.sittings = m_sittings;
        m_orchard.records.lots.resize(slot(m_lots));
        m_orchard.records.persons.resize(slot(m_plan.tasters));
        return std::move(m_orchard);
    }

  private:
    [[nodiscard]] double sdOf(MeritTerm term) const {
        return std::sqrt(m_priors.of(term).variance * m_plan.varianceFactor);
    }

    void drawTruth() {
        m_orchard.truth = m_priors;
        for (VariancePrior& prior : m_orchard.truth.terms) {
            prior = {prior.variance * m_plan.varianceFactor,
                     std::numeric_limits<double>::infinity()};
        }
        m_orchard.truth.residual = {m_priors.residual.variance * m_plan.varianceFactor,
                                    std::numeric_limits<double>::infinity()};
        m_level = m_plan.ceiling ? 7.0 : 5.5 + m_chance.normal(0.7);
        for (const ConditionClass& one : m_priors.conditions) {
            m_effects.push_back(one.mean + m_chance.normal(one.sd));
        }
        for (int i = 0; i < m_plan.tasters; ++i) {
            m_tasterLevels.push_back(m_chance.normal(sdOf(MeritTerm::taster)));
            m_tasterNoise.push_back(std::exp(m_chance.normal(0.15)));
        }
    }

    void breed() {
        std::vector<Parents> parents;
        std::vector<double> values;
        const double sd = sdOf(MeritTerm::genotype);
        for (int i = 0; i < m_plan.benchmarks; ++i) {
            m_orchard.benchmarks.push_back(static_cast<Index>(parents.size()));
            parents.push_back({});
            values.push_back(m_chance.normal(sd));
        }
        std::vector<Parents> crosses;
        for (int i = 0; i < m_plan.families; ++i) {
            const int seed = m_chance.below(m_plan.benchmarks);
            const int step = 1 + m_chance.below(m_plan.benchmarks - 1);
            crosses.push_back({seed, (seed + step) % m_plan.benchmarks});
        }
        for (int i = 0; i < m_plan.seedlings; ++i) {
            const Parents both = crosses[slot(m_chance.below(m_plan.families))];
            const double middle = (values[slot(*both.seed)] + values[slot(*both.pollen)]) / 2;
            m_orchard.seedlings.push_back(static_cast<Index>(parents.size()));
            parents.push_back(both);
            values.push_back(middle + m_chance.normal(sd * std::sqrt(0.5)));
        }
        auto names = std::make_shared<std::vector<std::string>>();
        for (std::size_t i = 0; i < parents.size(); ++i) {
            names->push_back("G" + std::to_string(i));
        }
        auto pedigree = Pedigree::of(parents, [&](int one) { return (*names)[slot(one)]; });
        m_orchard.families = {std::make_shared<const Pedigree>(std::move(*pedigree)), names};
        for (std::size_t i = 0; i < values.size(); ++i) {
            m_orchard.merit.push_back(m_level + values[i]);
            m_plantLuck.push_back(m_chance.normal(sdOf(MeritTerm::plant)));
            m_earliness.push_back(m_chance.uniform());
            m_overRipeLoss.push_back(m_plan.lossByGenotype ? m_chance.normal(0.6) : 0);
            m_ahead.push_back(0);
            m_lotsLeft.push_back(i < slot(m_plan.benchmarks)
                                     ? 2 * m_plan.cropYears
                                     : 1 + m_chance.below(m_plan.mostTastings));
        }
    }

    /// Lots of a year: each goes to one of those that still have some, or to the best so far.
    void tasteYear(int year) {
        const double yearLuck = m_chance.normal(sdOf(MeritTerm::cropYear));
        std::map<Index, double> genotypeLuck;
        std::vector<Index> today;
        const auto count = static_cast<Index>(m_orchard.merit.size());
        for (Index genotype = 0; genotype < count; ++genotype) {
            const bool benchmark = genotype < static_cast<Index>(m_plan.benchmarks);
            int lots = benchmark ? 2 : 0;
            if (!benchmark) {
                const int yearsLeft = yearsLeftOf(genotype, year);
                while (m_lotsLeft[genotype] > 0 && yearsLeft > 0 &&
                       m_chance.happens(1.0 / yearsLeft)) {
                    --m_lotsLeft[genotype];
                    ++lots;
                }
                if (m_plan.bestTastedMost && year > 0) {
                    lots += m_ahead[genotype] > 1 ? 2 : 0;
                    lots = m_ahead[genotype] < -0.5 ? 0 : lots;
                }
            }
            today.insert(today.end(), slot(lots), genotype);
            genotypeLuck[genotype] = m_chance.normal(sdOf(MeritTerm::genotypeYear));
        }
        std::shuffle(today.begin(), today.end(), std::mt19937_64{slot(year) + 17});
        if (m_plan.cohorts) {
            std::stable_sort(today.begin(), today.end(),
                             [this](Index a, Index b) { return m_earliness[a] < m_earliness[b]; });
        }
        for (std::size_t first = 0; first < today.size(); first += 8) {
            sit(year, yearLuck, genotypeLuck,
                {today.begin() + static_cast<std::ptrdiff_t>(first),
                 today.begin() + static_cast<std::ptrdiff_t>(std::min(first + 8, today.size()))});
        }
    }

    /// Crop years in which it can still be tasted, this one included.
    [[nodiscard]] int yearsLeftOf(Index genotype, int year) const {
        if (!m_plan.cohorts) {
            return m_plan.cropYears - year;
        }
        constexpr int kYearsOfFruit = 4;
        const int seedling = static_cast<int>(genotype) - m_plan.benchmarks;
        const int first =
            seedling * std::max(1, m_plan.cropYears - kYearsOfFruit + 1) / m_plan.seedlings;
        return year < first ? 0 : std::max(0, first + kYearsOfFruit - year);
    }

    void sit(int year, double yearLuck, const std::map<Index, double>& genotypeLuck,
             const std::vector<Index>& lots) {
        const double dayLuck = m_chance.normal(sdOf(MeritTerm::sitting));
        std::vector<int> present;
        for (int taster = 0; taster < m_plan.tasters; ++taster) {
            if (taster == 0 || m_chance.happens(0.5)) {
                present.push_back(taster);
            }
        }
        std::int64_t order = 0;
        for (const Index believed : lots) {
            Index eaten = believed;
            if (m_chance.happens(m_plan.swappedLabels) && !m_orchard.seedlings.empty()) {
                eaten = m_orchard.seedlings[slot(m_chance.below(m_plan.seedlings))];
            }
            const std::vector<ConditionAmount> states = conditionsToday(eaten, ++order);
            double base = m_orchard.merit[eaten] + genotypeLuck.at(eaten) + m_plantLuck[eaten] +
                          m_chance.normal(sdOf(MeritTerm::lot)) + dayLuck + yearLuck;
            double noise = 1;
            for (const ConditionAmount& one : states) {
                const double amount = static_cast<double>(one.amount);
                base += m_effects[one.condition] * amount;
                noise += m_priors.conditions[one.condition].noise * amount;
                if (one.condition == m_overRipe) {
                    base += m_overRipeLoss[eaten];
                }
            }
            for (const int taster : present) {
                give(believed, year, taster, base, noise, states);
            }
            ++m_lots;
        }
        ++m_sittings;
    }

    /// Early fruit is met over-ripe or on the ground more often.
    std::vector<ConditionAmount> conditionsToday(Index genotype, std::int64_t order) {
        std::vector<ConditionAmount> states;
        const double early = genotype < static_cast<Index>(m_plan.benchmarks)
                                 ? 0.1
                                 : 0.2 + 0.4 * m_earliness[genotype];
        if (m_chance.happens(early)) {
            states.push_back({m_overRipe, 1});
        } else if (m_chance.happens(0.1)) {
            states.push_back({conditionNamed("getting there"), 1});
        }
        if (m_chance.happens(early / 2)) {
            states.push_back({conditionNamed("dropped today"), 1});
        }
        if (m_chance.happens(0.25)) {
            states.push_back({conditionNamed("day in the refrigerator"),
                              static_cast<float>(1 + m_chance.below(20))});
        }
        if (order > 1) {
            states.push_back({conditionNamed("place in the order"), static_cast<float>(order - 1)});
        }
        return states;
    }

    void give(Index believed, int year, int taster, double base, double noise,
              const std::vector<ConditionAmount>& states) {
        const double sd = std::sqrt(m_priors.residual.variance * m_plan.varianceFactor * noise) *
                          m_tasterNoise[slot(taster)];
        const double luck = m_plan.skewed ? m_chance.skewed() : m_chance.normal();
        TraitRecord record;
        const double liking = base + m_tasterLevels[slot(taster)] + sd * luck;
        record.value = std::clamp(std::round(liking * 2) / 2, 1.0, 9.0);
        record.genotype = believed;
        record.plant = static_cast<std::int32_t>(believed);
        record.person = taster;
        record.lot = m_lots;
        record.sitting = m_sittings;
        record.cropYear = 2020 + year;
        record.fair = states.empty();
        record.conditions = states;
        m_ahead[believed] = m_ahead[believed] / 2 + (record.value - m_level) / 2;
        m_orchard.records.records.push_back(std::move(record));
    }

    const SimulationPlan& m_plan;
    Chance m_chance;
    MeritPriors m_priors;
    SimulatedOrchard m_orchard;
    double m_level = 0;
    std::vector<double> m_effects; ///< by condition
    std::vector<double> m_tasterLevels;
    std::vector<double> m_tasterNoise;
    std::vector<double> m_plantLuck; ///< this and the following by genotype
    std::vector<double> m_earliness;
    std::vector<double> m_overRipeLoss;
    std::vector<double> m_ahead; ///< how well it did before
    std::vector<int> m_lotsLeft;
    std::int32_t m_lots = 0;
    std::int32_t m_sittings = 0;
    const std::uint8_t m_overRipe = conditionNamed("on its way out");
};

} // namespace

SimulatedOrchard simulateOrchard(const SimulationPlan& plan, std::uint64_t seed) {
    return OrchardSimulation(plan, seed).run();
}

} // namespace pipwright::test
