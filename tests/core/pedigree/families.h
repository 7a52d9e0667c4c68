#pragma once

#include "core/pedigree/pedigree.h"

#include <gtest/gtest.h>
#include <random>
#include <string>
#include <utility>
#include <vector>

namespace pipwright {

/// How near to a closed form: a few roundings.
inline constexpr double kHardlyRounded = 1e-12;

inline std::string letterOf(int genotype) {
    return genotype < 26 ? std::string(1, static_cast<char>('A' + genotype))
                         : "G" + std::to_string(genotype);
}

/// A pedigree that the test knows to have no ring; 0 is an unknown parent, as in printed
/// pedigrees, and the first genotype is number 1.
inline Pedigree pedigreeOf(const std::vector<std::pair<int, int>>& seedAndPollen) {
    const auto known = [](int number) {
        return number == 0 ? std::nullopt : std::optional<int>{number - 1};
    };
    std::vector<Parents> parents;
    for (const auto& [seed, pollen] : seedAndPollen) {
        parents.push_back({known(seed), known(pollen)});
    }
    return Pedigree::of(parents, letterOf).value();
}

/// Any pedigree of so many genotypes, with selfings and unknown parents, in no order of age.
inline std::vector<Parents> randomParents(std::mt19937_64& random, int size) {
    std::vector<int> oldestFirst(static_cast<std::size_t>(size));
    for (std::size_t i = 0; i < oldestFirst.size(); ++i) {
        oldestFirst[i] = static_cast<int>(i);
        std::swap(oldestFirst[i], oldestFirst[random() % (i + 1)]);
    }
    std::vector<Parents> parents(oldestFirst.size());
    for (std::size_t age = 1; age < oldestFirst.size(); ++age) {
        const auto anyOlder = [&]() -> std::optional<int> {
            return random() % 5 == 0 ? std::nullopt : std::optional{oldestFirst[random() % age]};
        };
        Parents& both = parents[static_cast<std::size_t>(oldestFirst[age])];
        both.seed = anyOlder();
        both.pollen = random() % 10 == 0 ? both.seed : anyOlder();
    }
    return parents;
}

} // namespace pipwright
