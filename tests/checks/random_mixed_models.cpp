#include "tests/checks/random_mixed_models.h"

#include "core/pedigree/inbreeding.h"
#include "core/pedigree/inverse_relationship.h"
#include "tests/core/pedigree/families.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

namespace pipwright {

namespace {

LevelCodes randomCodes(Dice& dice, std::size_t records, int count) {
    LevelCodes codes{{}, count};
    for (std::size_t record = 0; record < records; ++record) {
        codes.ofRecord.push_back(dice.upTo(count));
    }
    return codes;
}

std::vector<double> randomNumbers(Dice& dice, std::size_t records, double low, double high) {
    std::vector<double> numbers(records);
    for (double& number : numbers) {
        number = dice.between(low, high);
    }
    return numbers;
}

LevelPrecision randomRelationship(Dice& dice, int levels) {
    for (;;) {
        const Pedigree pedigree =
            Pedigree::of(randomParents(dice.engine(), levels), letterOf).value();
        // A parent selfed for ever leaves no Mendelian sampling: such a pedigree is thrown again.
        auto precision = inverseRelationship(pedigree, inbreeding(pedigree), letterOf);
        if (precision.ok()) {
            return *precision;
        }
    }
}

RandomTerm randomTerm(Dice& dice, std::size_t records, int index) {
    RandomTerm term;
    term.name = "term " + std::to_string(index);
    term.levels = randomCodes(dice, records, 2 + dice.upTo(8));
    if (dice.oneIn(3)) {
        term.precision = randomRelationship(dice, term.levels.count);
    }
    if (dice.oneIn(3)) {
        term.covariates.push_back(randomNumbers(dice, records, -1, 1));
        term.intercept = !dice.oneIn(4);
    }
    if (dice.oneIn(4)) {
        term.levels.ofRecord[static_cast<std::size_t>(dice.upTo(10))] = -1;
    }
    return term;
}

} // namespace

MixedModel randomModel(Dice& dice) {
    const std::size_t records = 25 + static_cast<std::size_t>(dice.upTo(20));
    MixedModel model;
    model.response = randomNumbers(dice, records, 10, 20);
    model.intercept = !dice.oneIn(6);
    for (int term = dice.upTo(3); term > 0; --term) {
        FixedTerm fixed = FixedTerm::factor(
            "fixed " + std::to_string(term), randomCodes(dice, records, 2 + dice.upTo(3)),
            dice.oneIn(2) ? FixedCoding::treatment : FixedCoding::everyLevel);
        if (dice.oneIn(3)) {
            fixed.covariate = randomNumbers(dice, records, 0, 3);
        }
        model.fixed.push_back(std::move(fixed));
    }
    if (dice.oneIn(2)) {
        model.fixed.push_back(FixedTerm::number("slope", randomNumbers(dice, records, 0, 5)));
    }
    if (!model.intercept && model.fixed.empty()) {
        model.intercept = true;
    }
    for (int term = dice.upTo(4); term > 0; --term) {
        model.random.push_back(randomTerm(dice, records, term));
    }
    if (dice.oneIn(3)) {
        model.weights = randomNumbers(dice, records, .5, 3);
    }
    if (dice.oneIn(3)) {
        model.residual.groups = randomCodes(dice, records, 2);
    }
    return model;
}

VarianceValues randomVariances(Dice& dice, const MixedModel& model) {
    VarianceValues values;
    for (const RandomTerm& term : model.random) {
        if (term.effectsPerLevel() == 2) {
            const double first = dice.between(.2, 3);
            const double second = dice.between(.2, 3);
            values.insert(values.end(),
                          {first, dice.between(-.8, .8) * std::sqrt(first * second), second});
        } else {
            values.push_back(dice.oneIn(6) ? 0 : dice.between(.1, 4));
        }
    }
    for (std::int32_t group = 0; group < std::max(1, model.residual.groups.count); ++group) {
        values.push_back(dice.between(.3, 3));
    }
    return values;
}

MixedModel randomAnimalModel(Dice& dice, int size) {
    MixedModel model;
    RandomTerm animal;
    animal.name = "animal";
    animal.precision = randomRelationship(dice, size);
    const std::size_t records = 3 * static_cast<std::size_t>(size);
    animal.levels = randomCodes(dice, records, size);
    RandomTerm taster;
    taster.name = "taster";
    taster.levels = randomCodes(dice, records, 5);
    const LevelCodes year = randomCodes(dice, records, 3);
    std::vector<double> genetic(static_cast<std::size_t>(size));
    std::generate(genetic.begin(), genetic.end(), [&] { return 1.5 * dice.normal(); });
    std::vector<double> habit(5);
    std::generate(habit.begin(), habit.end(), [&] { return .7 * dice.normal(); });
    for (std::size_t record = 0; record < records; ++record) {
        model.response.push_back(5 +
                                 genetic[static_cast<std::size_t>(animal.levels.ofRecord[record])] +
                                 habit[static_cast<std::size_t>(taster.levels.ofRecord[record])] +
                                 .4 * year.ofRecord[record] + dice.normal());
    }
    model.fixed = {FixedTerm::factor("year", year)};
    model.random = {std::move(animal), std::move(taster)};
    return model;
}

} // namespace pipwright
