#include "core/evaluation/merit/ladder_odds.h"
#include "core/evaluation/merit/settle.h"
#include "core/statistics/distributions.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>
#include <map>
#include <random>
#include <tuple>

namespace pipwright {
namespace {

constexpr int kGenotypes = 6; // the first one is the benchmark
constexpr int kKnownTasters = 3;
constexpr int kLastYear = 2024;

/// Variances of the merit model, all of them known.
MeritPriors knownPriors() {
    MeritPriors priors = likingPriors();
    for (VariancePrior& prior : priors.terms) {
        prior.weight = std::numeric_limits<double>::infinity();
    }
    priors.residual.weight = std::numeric_limits<double>::infinity();
    return priors;
}

/// A small orchard whose every effect is drawn when it is first needed, so that tastings can be
/// added to it as life would.
class DrawnOrchard {
  public:
    explicit DrawnOrchard(std::uint64_t seed) : m_engine(seed) {
        m_level = m_priors.level->mean + normal(m_priors.level->sd);
        for (int year = kLastYear - 1; year <= kLastYear; ++year) {
            for (int genotype = 0; genotype < kGenotypes; ++genotype) {
                const int lots = genotype == 0 ? 3 : 1 + (genotype + year) % 2;
                for (int lot = 0; lot < lots; ++lot) {
                    const int sitting = newSitting(year);
                    const int fruit = m_lots++;
                    for (int taster = 0; taster < kKnownTasters - (genotype + lot) % 3; ++taster) {
                        add(genotype, year, sitting, fruit, taster);
                    }
                }
            }
        }
    }

    [[nodiscard]] MeritModel fit() const {
        TraitRecords records;
        records.records = m_records;
        records.persons.resize(static_cast<std::size_t>(m_tasters));
        records.lots.resize(static_cast<std::size_t>(m_lots));
        records.sittings = static_cast<std::int32_t>(m_yearOfSitting.size());
        auto pedigree = Pedigree::of(std::vector<Parents>(kGenotypes),
                                     [](int one) { return std::to_string(one); });
        MeritOptions options;
        options.tasterNoise = false;
        options.priors = m_priors;
        const MeritFamilies families{
            std::make_shared<const Pedigree>(std::move(*pedigree)),
            std::make_shared<const std::vector<std::string>>(kGenotypes, "one")};
        auto model = MeritModel::fit(families, records, options);
        EXPECT_TRUE(model.ok()) << (model.ok() ? "" : model.problem().sentence());
        return *model;
    }

    /// Holds the tastings of a plan.
    void hold(const TastingPlan& plan, int genotype) {
        for (int step = 0; step < plan.cropYears; ++step) {
            const int year = kLastYear + step + (plan.thisYear ? 0 : 1);
            for (int i = 0; i < plan.sittings; ++i) {
                const int sitting = newSitting(year);
                for (int lot = 0; lot < plan.lots; ++lot) {
                    for (const int one : {genotype, 0}) {
                        if (one == 0 && !plan.withReference) {
                            continue;
                        }
                        const int fruit = m_lots++;
                        for (int taster = 0; taster < plan.tasters; ++taster) {
                            add(one, year, sitting, fruit, taster);
                        }
                    }
                }
            }
        }
    }

  private:
    using Key = std::tuple<MeritTerm, int, int>;

    double normal(double sd) {
        const double uniform = (static_cast<double>(m_engine() >> 11U) + 0.5) * 0x1p-53;
        return sd * standardNormalQuantile(uniform);
    }
    double effect(MeritTerm term, int one, int other = 0) {
        const auto [at, fresh] = m_effects.try_emplace({term, one, other}, 0.0);
        if (fresh) {
            at->second = normal(std::sqrt(m_priors.of(term).variance));
        }
        return at->second;
    }
    int newSitting(int year) {
        m_yearOfSitting.push_back(year);
        return static_cast<int>(m_yearOfSitting.size()) - 1;
    }
    void add(int genotype, int year, int sitting, int lot, int taster) {
        TraitRecord record;
        record.value = m_level + effect(MeritTerm::genotype, genotype) +
                       effect(MeritTerm::genotypeYear, genotype, year) +
                       effect(MeritTerm::plant, genotype) + effect(MeritTerm::lot, lot) +
                       effect(MeritTerm::taster, taster) + effect(MeritTerm::sitting, sitting) +
                       effect(MeritTerm::cropYear, year) +
                       normal(std::sqrt(m_priors.residual.variance));
        record.genotype = static_cast<Index>(genotype);
        record.plant = genotype;
        record.person = taster;
        record.lot = lot;
        record.sitting = sitting;
        record.cropYear = year;
        record.date = *Date::of(year, 9, 1);
        record.fair = true;
        m_records.push_back(record);
        m_tasters = std::max(m_tasters, taster + 1);
    }

    const MeritPriors m_priors = knownPriors();
    std::mt19937_64 m_engine;
    double m_level = 0;
    std::map<Key, double> m_effects;
    std::vector<TraitRecord> m_records;
    std::vector<int> m_yearOfSitting;
    int m_lots = 0;
    int m_tasters = 0;
};

std::vector<TastingPlan> blindPlans() {
    std::vector<TastingPlan> plans = usualPlans();
    for (TastingPlan& plan : plans) {
        plan.blind = true;
    }
    TastingPlan strangers;
    strangers.tasters = kKnownTasters + 2;
    strangers.lots = 2;
    strangers.withReference = true;
    plans.push_back(strangers);
    return plans;
}

SettlingQuestion questionOf(const MeritModel& model, Index genotype) {
    SettlingQuestion question;
    question.genotype = genotype;
    question.reference = 0;
    question.cropYear = CropYear{kLastYear};
    question.thresholds = {0.1, 0.3};
    const auto ahead = model.difference(genotype, 0);
    EXPECT_TRUE(ahead.ok());
    question.ahead = *ahead;
    return question;
}

TEST(Settle, PromisesTheErrorThatARefitThenHas) {
    for (const std::uint64_t seed : {3U, 4U}) {
        const DrawnOrchard orchard(seed);
        const MeritModel model = orchard.fit();
        const auto plans = blindPlans();
        for (const Index genotype : {1U, 4U}) {
            const auto powers = settlingPowers(model, questionOf(model, genotype), plans);
            ASSERT_TRUE(powers.ok());
            for (const SettlingPower& power : *powers) {
                DrawnOrchard later = orchard;
                later.hold(power.plan, static_cast<int>(genotype));
                const MeritModel refit = later.fit();
                EXPECT_NEAR(power.errorAfter, refit.difference(genotype, 0)->standardError, 1e-6)
                    << wordsOf(power.plan);
                EXPECT_NEAR(power.reliabilityAfter, refit.meritOf(genotype)->reliability, 1e-6)
                    << wordsOf(power.plan);
            }
        }
    }
}

struct Tally {
    int count = 0;
    double sum = 0;
    double squares = 0;

    void add(double value) {
        ++count;
        sum += value;
        squares += value * value;
    }
    [[nodiscard]] double mean() const { return sum / count; }
    [[nodiscard]] double error() const {
        return std::sqrt((squares / count - mean() * mean()) / (count - 1));
    }
};

TEST(Settle, PromisesTheMoveThatThenHappens) {
    const auto all = blindPlans();
    const std::vector<TastingPlan> plans = {all[1], all[3], all[4]};
    std::vector<Tally> moves(plans.size());
    std::vector<Tally> flips(plans.size());
    std::vector<Tally> drifts(plans.size());
    for (std::uint64_t seed = 100; seed < 150; ++seed) {
        const DrawnOrchard orchard(seed);
        const MeritModel model = orchard.fit();
        for (const Index genotype : {1U, 2U, 5U}) {
            const SettlingQuestion question = questionOf(model, genotype);
            const auto powers = settlingPowers(model, question, plans);
            ASSERT_TRUE(powers.ok());
            for (std::size_t i = 0; i < plans.size(); ++i) {
                DrawnOrchard later = orchard;
                later.hold(plans[i], static_cast<int>(genotype));
                const auto ahead = later.fit().difference(genotype, 0);
                ASSERT_TRUE(ahead.ok());
                const double now = (*powers)[i].now;
                const double then =
                    chanceAboveZero(ahead->value, ahead->standardError * ahead->standardError);
                moves[i].add(std::abs(then - now) - (*powers)[i].expectedMove);
                drifts[i].add(then - now);
                const auto side = [](double chance) { return (chance >= 0.1) + (chance >= 0.3); };
                flips[i].add((side(then) != side(now) ? 1 : 0) - (*powers)[i].flipChance);
            }
        }
    }
    for (std::size_t i = 0; i < plans.size(); ++i) {
        EXPECT_LT(moves[i].error(), 0.015);
        EXPECT_LT(std::abs(moves[i].mean()), 4 * moves[i].error()) << wordsOf(plans[i]);
        EXPECT_LT(std::abs(drifts[i].mean()), 4 * drifts[i].error()) << wordsOf(plans[i]);
        EXPECT_LT(std::abs(flips[i].mean()), 4 * flips[i].error()) << wordsOf(plans[i]);
    }
}

TEST(Settle, PrefersTheBenchmarkBesideIt) {
    const DrawnOrchard orchard(7);
    const MeritModel model = orchard.fit();
    const auto powers = settlingPowers(model, questionOf(model, 2), usualPlans());
    ASSERT_TRUE(powers.ok());
    // Bite, lot, pair of one taster, pair of three, three lots next year, pair next year, two.
    const auto& list = *powers;
    ASSERT_EQ(list.size(), 7U);
    EXPECT_LT(list[0].expectedMove, list[1].expectedMove); // hope blurs a sighted bite
    EXPECT_LT(list[2].expectedMove, list[3].expectedMove);
    EXPECT_LT(list[5].expectedMove, list[6].expectedMove);
    for (const SettlingPower& power : list) {
        EXPECT_GT(power.expectedMove, 0);
        EXPECT_LT(power.errorAfter, questionOf(model, 2).ahead.standardError);
        EXPECT_LE(power.flipChance, 1);
    }
    // A new year tells more, but too little more to wait for it.
    EXPECT_GT(list[5].expectedMove, list[3].expectedMove);
    EXPECT_LT(list[5].expectedMove, list[3].expectedMove + 0.02);
    EXPECT_EQ(bestNextSitting(list), 3U);
    auto worthWaiting = list;
    worthWaiting[5].expectedMove = list[3].expectedMove + 0.03;
    EXPECT_EQ(bestNextSitting(worthWaiting), 5U);
    EXPECT_FALSE(bestNextSitting({}));
    EXPECT_EQ(wordsOf(list[3].plan), "1 fair lot beside the benchmark, 3 tasters, blind, this crop "
                                     "year");

    const auto years = yearsToSettle(model, questionOf(model, 2), 0.8, 3);
    ASSERT_TRUE(years.ok());
    ASSERT_EQ(years->size(), 5U);
    for (std::size_t i = 1; i < years->size(); ++i) {
        EXPECT_GT((*years)[i].reliability, (*years)[i - 1].reliability);
        EXPECT_LT((*years)[i].errorAfter, (*years)[i - 1].errorAfter);
    }
}

TEST(Settle, AsksForTheRungInQuestion) {
    SeedlingVerdict verdict;
    EXPECT_FALSE(openQuestion(verdict, {}, {2024}).has_value());
    verdict.floor = RungOdds{3, false, {0.2, 0.5}, 0.66, 0.3};
    verdict.best = RungOdds{4, false, {-0.4, 0.5}, 0.21, 0.1};
    EXPECT_EQ(openQuestion(verdict, {}, {2024})->reference, 3U);
    verdict.floor->above = 0.95;
    const auto best = openQuestion(verdict, {}, {2024});
    EXPECT_EQ(best->reference, 4U);
    EXPECT_THAT(best->thresholds, ::testing::ElementsAre(0.5, 0.8));
}

TEST(Settle, RefusesSenselessPlans) {
    const MeritModel model = DrawnOrchard(7).fit();
    TastingPlan nobody;
    nobody.tasters = 0;
    EXPECT_FALSE(settlingPowers(model, questionOf(model, 2), std::vector{nobody}).ok());
    TastingPlan feast;
    feast.lots = 150;
    feast.tasters = 2;
    EXPECT_FALSE(settlingPowers(model, questionOf(model, 2), std::vector{feast}).ok());
    SettlingQuestion unknown = questionOf(model, 2);
    unknown.genotype = 999;
    EXPECT_FALSE(settlingPowers(model, unknown, usualPlans()).ok());
}

} // namespace
} // namespace pipwright
