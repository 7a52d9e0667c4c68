#include "core/pedigree/segregation.h"

#include "core/statistics/number_needed.h"

#include <algorithm>
#include <array>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <utility>

namespace pipwright {

namespace {

using Expression = SegregatingGene::Expression;

constexpr int kMostCopies = 2;
constexpr double kFewExpected = 5;

/// Chances of a seedling with 0, 1 and 2 copies.
std::array<double, kMostCopies + 1> copiesOf(const SegregatingGene& gene) {
    const double fromSeed = gene.seedParentCopies / 2.0;
    const double fromPollen = gene.pollenParentCopies / 2.0;
    return {(1 - fromSeed) * (1 - fromPollen),
            fromSeed * (1 - fromPollen) + (1 - fromSeed) * fromPollen, fromSeed * fromPollen};
}

int shownBy(int copies, Expression expression) {
    switch (expression) {
    case Expression::dominant:
        return copies > 0 ? 1 : 0;
    case Expression::recessive:
        return copies == kMostCopies ? 1 : 0;
    case Expression::codominant:
        break;
    }
    return copies;
}

std::vector<int> grouped(const std::vector<int>& shown, Grouping grouping) {
    const auto shows = [](int one) { return one > 0; };
    switch (grouping) {
    case Grouping::anyGene:
        return {std::any_of(shown.begin(), shown.end(), shows) ? 1 : 0};
    case Grouping::everyGene:
        return {std::all_of(shown.begin(), shown.end(), shows) ? 1 : 0};
    case Grouping::eachGene:
        break;
    }
    return shown;
}

std::optional<Problem> faultIn(std::span<const SegregatingGene> genes, Grouping grouping) {
    constexpr std::size_t kMostGenes = 8;
    if (genes.empty() || genes.size() > kMostGenes) {
        return Problem{ProblemCode::badInput, "A hypothesis needs one to eight genes.",
                       "Name the genes that are thought to segregate.", ""};
    }
    for (const SegregatingGene& gene : genes) {
        for (const int copies : {gene.seedParentCopies, gene.pollenParentCopies}) {
            if (copies < 0 || copies > kMostCopies) {
                return Problem{ProblemCode::badInput,
                               "A parent cannot carry an allele " + std::to_string(copies) +
                                   " times.",
                               "Give 0, 1 or 2 copies.", ""};
            }
        }
        if (grouping != Grouping::eachGene && gene.expression == Expression::codominant) {
            return Problem{ProblemCode::badInput,
                           "A gene whose copies can be counted cannot be grouped with others.",
                           "Say whether one copy shows.", ""};
        }
    }
    return std::nullopt;
}

bool isPart(double part) {
    return part >= 0 && part <= 1;
}

} // namespace

Result<std::vector<SegregationClass>> segregationOf(std::span<const SegregatingGene> genes,
                                                    Grouping grouping) {
    if (const auto fault = faultIn(genes, grouping)) {
        return *fault;
    }
    // By what is seen of the genes so far, the most shown first.
    std::map<std::vector<int>, double, std::greater<>> shares{{{}, 1.0}};
    for (const SegregatingGene& gene : genes) {
        const auto chances = copiesOf(gene);
        std::map<std::vector<int>, double, std::greater<>> next;
        for (const auto& [shown, share] : shares) {
            for (int copies = 0; copies <= kMostCopies; ++copies) {
                const double chance = chances[static_cast<std::size_t>(copies)];
                if (chance > 0) {
                    std::vector<int> more(shown);
                    more.push_back(shownBy(copies, gene.expression));
                    next[std::move(more)] += share * chance;
                }
            }
        }
        shares = std::move(next);
    }
    std::map<std::vector<int>, double, std::greater<>> together;
    for (const auto& [shown, share] : shares) {
        together[grouped(shown, grouping)] += share;
    }
    std::vector<SegregationClass> classes;
    classes.reserve(together.size());
    for (const auto& [shown, share] : together) {
        classes.push_back({shown, share});
    }
    return classes;
}

Result<SegregationTest> testSegregation(std::span<const SegregationClass> classes,
                                        std::span<const std::int64_t> counted) {
    std::vector<double> ratio;
    ratio.reserve(classes.size());
    for (const SegregationClass& one : classes) {
        ratio.push_back(one.share);
    }
    auto fit = goodnessOfFit(counted, ratio);
    if (!fit) {
        return fit.problem();
    }
    SegregationTest test{std::move(*fit), std::nullopt, false};
    test.readExact = test.fit.smallestExpected < kFewExpected;
    if (classes.size() == 2) {
        const auto exact = exactBinomialTest(counted[0], counted[0] + counted[1], ratio[0]);
        if (exact) {
            test.exact = MultinomialTest{*exact};
        } else if (test.readExact) {
            return exact.problem();
        }
    } else if (test.readExact) {
        const auto exact = exactMultinomialTest(counted, ratio);
        if (!exact) {
            return exact.problem();
        }
        test.exact = *exact;
    }
    return test;
}

Result<std::int64_t> seedsToSow(std::int64_t plants, const WayOfASeed& way, double assurance) {
    if (!isPart(way.wanted) || !isPart(way.germination) || !isPart(way.survival)) {
        return Problem{ProblemCode::badInput,
                       "The parts that germinate, live and are wanted must lie between 0 and 1.",
                       "Give each as a part of what came before it.", ""};
    }
    return numberNeeded(plants, way.chance(), assurance);
}

} // namespace pipwright
