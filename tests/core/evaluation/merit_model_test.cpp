#include "core/evaluation/merit/merit_model.h"
#include "tests/support/simulated_orchard.h"
#include "tests/support/tasted_orchard.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <numeric>
#include <random>

namespace pipwright {
namespace {

using test::SimulatedOrchard;
using test::TastedOrchard;

SimulatedOrchard tastedBefore(std::uint64_t seed = 3) {
    test::SimulationPlan plan;
    plan.seedlings = 40;
    plan.benchmarks = 6;
    plan.families = 4;
    plan.cropYears = 3;
    return simulateOrchard(plan, seed);
}

MeritModel modelOf(const MeritFamilies& families, const TraitRecords& records,
                   const MeritOptions& options = {}) {
    auto model = MeritModel::fit(families, records, options);
    if (!model) {
        throw std::runtime_error(model.problem().sentence());
    }
    return *model;
}

MeritModel switchedTo(const MeritModel& model, const MeritOptions& options) {
    auto other = model.switched(options);
    if (!other) {
        throw std::runtime_error(other.problem().sentence());
    }
    return *other;
}

bool touchedBy(const TraitRecord& record, Correction correction) {
    return std::any_of(record.conditions.begin(), record.conditions.end(),
                       [correction](const ConditionAmount& one) {
                           return conditionClasses()[one.condition].correction == correction;
                       });
}

std::vector<Correction> correctionsIn(const TraitRecords& records) {
    std::vector<Correction> all;
    for (int i = 0; i < kCorrectionCount; ++i) {
        const auto correction = static_cast<Correction>(i);
        if (std::any_of(
                records.records.begin(), records.records.end(),
                [correction](const TraitRecord& one) { return touchedBy(one, correction); })) {
            all.push_back(correction);
        }
    }
    return all;
}

const MeritStep* stepOf(const MeritWaterfall& waterfall, MeritStep::Kind kind,
                        Correction correction = Correction::origin) {
    for (const MeritStep& step : waterfall.steps) {
        if (step.kind == kind &&
            (kind != MeritStep::Kind::condition || step.correction == correction)) {
            return &step;
        }
    }
    return nullptr;
}

/// Strangers and full sibs, each score by nobody in particular.
class FamilyBook {
  public:
    explicit FamilyBook(std::vector<Parents> parents) {
        for (std::size_t i = 0; i < parents.size(); ++i) {
            m_names.push_back("G" + std::to_string(i));
        }
        auto pedigree = Pedigree::of(
            parents, [this](int one) { return m_names.at(static_cast<std::size_t>(one)); });
        families = {std::make_shared<const Pedigree>(std::move(*pedigree)),
                    std::make_shared<const std::vector<std::string>>(m_names)};
    }

    void score(Index genotype, double value, std::int32_t person = -1) {
        TraitRecord record;
        record.value = value;
        record.genotype = genotype;
        record.person = person;
        record.lot = static_cast<std::int32_t>(records.lots.size());
        record.cropYear = 2025;
        record.fair = true;
        records.lots.emplace_back();
        while (person >= 0 && records.persons.size() <= static_cast<std::size_t>(person)) {
            records.persons.emplace_back();
        }
        records.records.push_back(record);
    }

    MeritFamilies families;
    TraitRecords records;

  private:
    std::vector<std::string> m_names;
};

TEST(MeritModelTest, EveryStepOfTheWaterfallIsWhatItsCorrectionFound) {
    const SimulatedOrchard orchard = tastedBefore();
    const MeritModel model = modelOf(orchard.families, orchard.records);
    std::vector<double> found(conditionClasses().size(), 0.0);
    for (const ConditionReport& report : model.conditions()) {
        found[report.condition] = report.found.value;
    }
    const std::vector<TasterReport> tasters = model.tasters();
    for (const GenotypeMerit& merit : model.merits()) {
        if (!merit.seen()) {
            continue;
        }
        const auto waterfall = model.waterfall(merit.genotype);
        ASSERT_TRUE(waterfall.ok());
        double sum = waterfall->rawMean;
        for (const MeritStep& step : waterfall->steps) {
            sum += step.change;
        }
        EXPECT_NEAR(sum, merit.merit.value, 1e-9);
        double overRipe = 0;
        double taster = 0;
        for (const TraitRecord& record : orchard.records.records) {
            if (record.genotype != merit.genotype) {
                continue;
            }
            for (const ConditionAmount& one : record.conditions) {
                if (conditionClasses()[one.condition].correction == Correction::ripeness) {
                    overRipe -= static_cast<double>(one.amount) * found[one.condition];
                }
            }
            taster -= tasters[static_cast<std::size_t>(record.person)].level.value;
        }
        if (const auto* step =
                stepOf(*waterfall, MeritStep::Kind::condition, Correction::ripeness)) {
            EXPECT_NEAR(step->change, overRipe / merit.records, 1e-9);
        } else {
            EXPECT_EQ(overRipe, 0);
        }
        EXPECT_NEAR(stepOf(*waterfall, MeritStep::Kind::taster)->change, taster / merit.records,
                    1e-9);
    }
}

TEST(MeritModelTest, ACorrectionSwitchedOffIsGoneAndOnlyThat) {
    const SimulatedOrchard orchard = tastedBefore();
    const MeritModel model = modelOf(orchard.families, orchard.records);
    const auto corrections = correctionsIn(orchard.records);
    ASSERT_GE(corrections.size(), 4U);
    for (const Correction off : corrections) {
        MeritOptions options = model.options();
        options.off.insert(off);
        const MeritModel other = switchedTo(model, options);
        for (const ConditionReport& report : other.conditions()) {
            EXPECT_NE(conditionClasses()[report.condition].correction, off);
        }
        EXPECT_LT(other.conditions().size(), model.conditions().size());
        double moved = 0;
        for (const GenotypeMerit& merit : other.merits()) {
            if (!merit.seen()) {
                continue;
            }
            moved = std::max(
                moved, std::abs(merit.merit.value - model.meritOf(merit.genotype)->merit.value));
            const auto waterfall = other.waterfall(merit.genotype);
            ASSERT_TRUE(waterfall.ok());
            for (const MeritStep& step : waterfall->steps) {
                const bool isOff =
                    step.kind == MeritStep::Kind::condition && step.correction == off;
                EXPECT_EQ(step.off, isOff);
                if (isOff) {
                    EXPECT_EQ(step.change, 0);
                    EXPECT_GT(step.records, 0);
                }
            }
        }
        EXPECT_GT(moved, 1e-3);
    }
}

TEST(MeritModelTest, FruitPastItsPrimeSinksWhenNobodyCorrectsForIt) {
    const auto classes = conditionClasses();
    const auto overRipe = static_cast<std::uint8_t>(
        std::find_if(classes.begin(), classes.end(),
                     [](const ConditionClass& one) { return one.key == "on its way out"; }) -
        classes.begin());
    // Five prime and five past it, liked alike.
    FamilyBook book{std::vector<Parents>(10)};
    for (Index genotype = 0; genotype < 10; ++genotype) {
        for (const double more : {-0.5, 0.0, 0.5}) {
            book.score(genotype, 5 + genotype % 5 / 2.0 + more);
            if (genotype >= 5) {
                book.records.records.back().conditions = {{overRipe, 1}};
            }
        }
    }
    const MeritModel model = modelOf(book.families, book.records);
    MeritOptions options = model.options();
    options.off.insert(Correction::ripeness);
    const MeritModel other = switchedTo(model, options);
    for (Index genotype = 0; genotype < 5; ++genotype) {
        EXPECT_GT(model.meritOf(genotype + 5)->merit.value,
                  model.meritOf(genotype)->merit.value + 0.2);
        EXPECT_NEAR(other.meritOf(genotype + 5)->merit.value, other.meritOf(genotype)->merit.value,
                    1e-9);
    }
}

TEST(MeritModelTest, SwitchesOfTastersSittingsAndYearsTakeTheirTermsAway) {
    const SimulatedOrchard orchard = tastedBefore();
    const MeritModel model = modelOf(orchard.families, orchard.records);
    const auto footing = [](const MeritModel& of, MeritTerm term) {
        return of.terms()[static_cast<std::size_t>(term)].footing;
    };
    for (const MeritTerm term : {MeritTerm::taster, MeritTerm::sitting, MeritTerm::cropYear}) {
        MeritOptions options = model.options();
        (term == MeritTerm::taster    ? options.tasterLevels
         : term == MeritTerm::sitting ? options.sittings
                                      : options.cropYears) = false;
        const MeritModel other = switchedTo(model, options);
        for (const MeritTerm each : kMeritTerms) {
            EXPECT_EQ(footing(other, each),
                      each == term ? TermFooting::absent : footing(model, each));
        }
        // Back again it is what it was.
        const MeritModel back = switchedTo(other, model.options());
        for (const GenotypeMerit& merit : model.merits()) {
            EXPECT_NEAR(back.meritOf(merit.genotype)->merit.value, merit.merit.value, 1e-9);
            EXPECT_NEAR(back.meritOf(merit.genotype)->merit.standardError,
                        merit.merit.standardError, 1e-9);
        }
    }
}

TEST(MeritModelTest, ASwitchIsARefitWithTheVariancesHeld) {
    const SimulatedOrchard orchard = tastedBefore(5);
    MeritOptions plain;
    plain.tasterNoise = false;
    const MeritModel model = modelOf(orchard.families, orchard.records, plain);
    MeritPriors held = likingPriors();
    for (const MeritTerm term : kMeritTerms) {
        held.of(term) = {model.varianceOf(term), std::numeric_limits<double>::infinity()};
    }
    held.residual = {model.residualVariance(), std::numeric_limits<double>::infinity()};
    for (const bool pedigree : {true, false}) {
        for (const bool sittings : {true, false}) {
            MeritOptions options = plain;
            options.pedigree = pedigree;
            options.sittings = sittings;
            options.off = {Correction::storage};
            const MeritModel switched = switchedTo(model, options);
            options.priors = held;
            const MeritModel refit = modelOf(orchard.families, orchard.records, options);
            ASSERT_EQ(switched.merits().size(), refit.merits().size());
            for (const GenotypeMerit& merit : refit.merits()) {
                const GenotypeMerit& other = *switched.meritOf(merit.genotype);
                EXPECT_NEAR(other.merit.value, merit.merit.value, 1e-7);
                EXPECT_NEAR(other.reliability, merit.reliability, 1e-7);
                const auto error = [&](const MeritModel& of) {
                    return of.mixedFit().contrast(*of.contrastOf(merit.genotype))->standardError;
                };
                EXPECT_NEAR(error(switched), error(refit), 1e-7);
            }
        }
    }
}

TEST(MeritModelTest, TheOrderOfTheBookDoesNotMatter) {
    const SimulatedOrchard orchard = tastedBefore(7);
    const MeritModel model = modelOf(orchard.families, orchard.records);
    std::mt19937 random(11);
    const auto shuffled = [&random](std::size_t count) {
        std::vector<std::int32_t> numbers(count);
        std::iota(numbers.begin(), numbers.end(), 0);
        std::shuffle(numbers.begin(), numbers.end(), random);
        return numbers;
    };
    const std::size_t genotypes = orchard.merit.size();
    const auto persons = shuffled(orchard.records.persons.size());
    const auto lots = shuffled(orchard.records.lots.size());
    const auto sittings = shuffled(static_cast<std::size_t>(orchard.records.sittings));
    const auto numbers = shuffled(genotypes);
    const auto at = [](const std::vector<std::int32_t>& list, std::int64_t number) {
        return list[static_cast<std::size_t>(number)];
    };
    std::vector<Parents> parents(genotypes);
    for (std::size_t i = 0; i < genotypes; ++i) {
        Parents both = orchard.families.pedigree->parentsOf(static_cast<int>(i));
        for (auto* one : {&both.seed, &both.pollen}) {
            *one = *one ? std::optional(at(numbers, **one)) : std::nullopt;
        }
        parents[static_cast<std::size_t>(at(numbers, static_cast<std::int64_t>(i)))] = both;
    }
    FamilyBook book(parents);
    book.records = orchard.records;
    for (TraitRecord& record : book.records.records) {
        record.genotype = static_cast<Index>(at(numbers, record.genotype));
        record.plant = static_cast<std::int32_t>(record.genotype);
        record.person = at(persons, record.person);
        record.lot = at(lots, record.lot);
        record.sitting = at(sittings, record.sitting);
    }
    std::shuffle(book.records.records.begin(), book.records.records.end(), random);
    const MeritModel other = modelOf(book.families, book.records);
    for (const GenotypeMerit& merit : model.merits()) {
        const auto* same = other.meritOf(static_cast<Index>(at(numbers, merit.genotype)));
        ASSERT_NE(same, nullptr);
        EXPECT_NEAR(same->merit.value, merit.merit.value, 1e-5);
        EXPECT_NEAR(same->merit.standardError, merit.merit.standardError, 1e-4);
        EXPECT_EQ(same->records, merit.records);
        EXPECT_EQ(same->fairLots, merit.fairLots);
    }
}

TEST(MeritModelTest, ATraitMayBeTakenInAnyUnit) {
    const SimulatedOrchard orchard = tastedBefore(9);
    TraitRecords grams = orchard.records;
    grams.trait = TraitId(Uuid{});
    TraitRecords others = grams;
    constexpr double kShift = 120;
    constexpr double kScale = 15;
    for (TraitRecord& record : others.records) {
        record.value = kShift + kScale * record.value;
    }
    const MeritModel model = modelOf(orchard.families, grams);
    const MeritModel other = modelOf(orchard.families, others);
    EXPECT_NEAR(other.spread(), kScale * model.spread(), 1e-9);
    EXPECT_NEAR(other.residualVariance() / (kScale * kScale * model.residualVariance()), 1, 1e-4);
    for (const GenotypeMerit& merit : model.merits()) {
        const UncertainValue same = other.meritOf(merit.genotype)->merit;
        EXPECT_NEAR((same.value - kShift) / kScale, merit.merit.value, 1e-4);
        EXPECT_NEAR(same.standardError / kScale, merit.merit.standardError, 1e-4);
    }
}

TEST(MeritModelTest, ASeedlingBorrowsFromItsSibs) {
    // Four parents; twelve sibs of 0 x 1 that are liked, twelve of 2 x 3 that are not.
    std::vector<Parents> parents(4);
    parents.insert(parents.end(), 12, Parents{0, 1});
    parents.insert(parents.end(), 12, Parents{2, 3});
    FamilyBook book(parents);
    for (Index sib = 0; sib < 11; ++sib) {
        for (const double more : {-0.5, 0.0, 0.5}) {
            book.score(4 + sib, 7 + more);
            book.score(16 + sib, 4 + more);
        }
    }
    book.score(15, 5.5);
    book.score(27, 5.5);
    const MeritModel model = modelOf(book.families, book.records);
    EXPECT_GT(model.meritOf(15)->merit.value, model.meritOf(27)->merit.value + 0.5);
    EXPECT_GT(model.meritOf(0)->merit.value, model.meritOf(2)->merit.value + 0.5);
    EXPECT_FALSE(model.meritOf(0)->seen());
    EXPECT_GT(model.meritOf(0)->merit.standardError, model.meritOf(4)->merit.standardError);

    MeritOptions alone;
    alone.pedigree = false;
    const MeritModel other = switchedTo(model, alone);
    EXPECT_NEAR(other.meritOf(15)->merit.value, other.meritOf(27)->merit.value, 1e-9);
    EXPECT_EQ(other.meritOf(0), nullptr); // never tasted, and nobody speaks for it
}

TEST(MeritModelTest, MoreScoresMakeItSurer) {
    FamilyBook book{std::vector<Parents>(6)};
    const std::vector<double> likings = {5, 6, 4, 7, 5.5, 6.5};
    for (Index genotype = 0; genotype < 6; ++genotype) {
        for (Index i = 0; i <= 2 * genotype; ++i) {
            book.score(genotype, likings[genotype] + (i % 2 == 0 ? 0.5 : -0.5));
        }
    }
    const MeritModel model = modelOf(book.families, book.records);
    for (Index genotype = 1; genotype < 6; ++genotype) {
        const GenotypeMerit& more = *model.meritOf(genotype);
        const GenotypeMerit& less = *model.meritOf(genotype - 1);
        // At given variances; doubt about them weighs most on whoever is far from the level.
        const auto error = [&model](Index of) {
            return model.mixedFit().contrast(*model.contrastOf(of))->standardError;
        };
        EXPECT_LT(error(genotype), error(genotype - 1));
        EXPECT_GE(more.merit.standardError, error(genotype));
        EXPECT_GT(more.reliability, less.reliability);
        EXPECT_EQ(more.records, static_cast<int>(2 * genotype + 1));
    }
}

TEST(MeritModelTest, SaysWhatCannotBeAnswered) {
    FamilyBook book{std::vector<Parents>(4)};
    auto model = MeritModel::fit(book.families, book.records);
    ASSERT_FALSE(model.ok());
    EXPECT_EQ(model.problem().sentence().find("Nothing has been scored yet."), 0U);
    for (const Index genotype : {0U, 1U, 2U}) {
        book.score(genotype, 6);
    }
    model = MeritModel::fit(book.families, book.records);
    ASSERT_FALSE(model.ok());
    EXPECT_EQ(model.problem().sentence().find("All scores are the same"), 0U);

    // One value of a trait: nothing is believed of its unit, so nothing can be said.
    FamilyBook single{std::vector<Parents>(4)};
    single.score(0, 140);
    single.records.trait = TraitId(Uuid{});
    model = MeritModel::fit(single.families, single.records);
    ASSERT_FALSE(model.ok());
    EXPECT_EQ(model.problem().sentence().find("One value alone"), 0U);

    book.score(1, 7);
    const MeritModel good = modelOf(book.families, book.records);
    EXPECT_FALSE(good.waterfall(3).ok()); // never tasted
    EXPECT_FALSE(good.difference(0, 99).ok());
    EXPECT_FALSE(good.covariances(std::vector<Index>{99}).ok());
}

TEST(MeritModelTest, OneLotOrOneTasterIsAnsweredWithItsDoubt) {
    FamilyBook lone{std::vector<Parents>(2)};
    lone.score(0, 8, 0);
    const MeritModel one = modelOf(lone.families, lone.records);
    const MeritPriors believed = likingPriors();
    EXPECT_GT(one.meritOf(0)->merit.value, believed.level->mean);
    EXPECT_LT(one.meritOf(0)->merit.value, 8);
    EXPECT_GT(one.meritOf(0)->merit.standardError, 0.7);
    for (const TermReport& term : one.terms()) {
        EXPECT_NE(term.footing, TermFooting::estimated);
    }

    FamilyBook book{std::vector<Parents>(5)};
    for (Index genotype = 0; genotype < 5; ++genotype) {
        for (const double more : {-1.0, 0.0, 1.0}) {
            book.score(genotype, 4 + genotype + more, 0);
        }
    }
    const MeritModel model = modelOf(book.families, book.records);
    const TermReport taster = model.terms()[static_cast<std::size_t>(MeritTerm::taster)];
    EXPECT_EQ(taster.footing, TermFooting::assumed);
    EXPECT_EQ(taster.levels, 1);
    EXPECT_GT(model.tasters().front().level.standardError, 0.3);
    EXPECT_GT(model.meritOf(4)->merit.value, model.meritOf(0)->merit.value + 1);
    // Whether he is a kind taster is a doubt about every merit, not about their difference.
    EXPECT_LT(model.difference(4, 0)->standardError, 2 * model.meritOf(4)->merit.standardError);
}

TEST(MeritModelTest, ARingInThePedigreeIsNamed) {
    TastedOrchard orchard;
    const auto row = orchard.row(1);
    const auto tree = orchard.seedling(row, 1, "AT17-001");
    orchard.bite(tree, 7, "2025-09-12");
    ChangeSet set;
    set.sentence = "Parent";
    Parentage ring;
    ring.id = ParentageId(orchard.ids.make());
    ring.genotype = orchard.mother.id;
    ring.role = ParentRole::seed;
    ring.parent = tree.genotype;
    set.create(ring);
    orchard.apply(set);
    const auto view = orchard.view();
    const auto model = MeritModel::fit(*view, TraitRecords{});
    ASSERT_FALSE(model.ok());
    EXPECT_NE(model.problem().sentence().find("AT17-001"), std::string::npos)
        << model.problem().sentence();
}

TEST(MeritModelTest, AStoppedFitSaysSo) {
    const SimulatedOrchard orchard = tastedBefore();
    std::stop_source source;
    source.request_stop();
    const auto model = MeritModel::fit(orchard.families, orchard.records, {}, source.get_token());
    ASSERT_FALSE(model.ok());
    EXPECT_EQ(model.problem().code, ProblemCode::cancelled);
}

} // namespace
} // namespace pipwright
