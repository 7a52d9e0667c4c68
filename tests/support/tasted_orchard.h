#pragma once

#include "tests/support/small_orchard.h"

#include <array>

namespace pipwright::test {

/// A small orchard whose trees are walked and bitten in one line each.
class TastedOrchard : public SmallOrchard {
  public:
    using SmallOrchard::SmallOrchard;

    void moveToTheSouth() {
        const Site before = site;
        site.hemisphere = Hemisphere::south;
        ChangeSet set;
        set.sentence = "Ashcroft lies in the south";
        set.edit(before, site);
        apply(set);
    }

    [[nodiscard]] static EditedTree treeOf(const Genotype& genotype) {
        return {std::nullopt, genotype.id, genotype.code};
    }

    void walk(const EditedTree& tree, WalkMark mark, const char* day) {
        const std::array trees = {tree};
        apply(walkMarkOn(trees, mark, std::nullopt, on(*Date::fromIso(day))));
    }

    /// One bite; fair unless the fruit was picked up from the ground.
    void bite(const EditedTree& tree, double liking, const char* day,
              Origin origin = Origin::pickedRipe, const std::string& words = {}) {
        const auto date = Date::fromIso(day);
        LotCondition condition;
        condition.taken = date;
        condition.origin = origin;
        condition.soundness = Soundness::sound;
        condition.ripeness = Ripeness::prime;
        condition.storage = StoragePath::none;
        apply(biteOf(tree, condition, {taster.id, liking, Verdict::unknown, words}, on(*date)));
    }

    /// A bite of fruit that lay in the cellar for so many days.
    void keptBite(const EditedTree& tree, double liking, const char* day, int days) {
        const auto date = Date::fromIso(day);
        LotCondition condition;
        condition.taken = date->plusDays(-days);
        condition.origin = Origin::pickedRipe;
        condition.soundness = Soundness::sound;
        condition.ripeness = Ripeness::prime;
        condition.storage = StoragePath::cellar;
        condition.daysInCellar = days;
        apply(biteOf(tree, condition, {taster.id, liking, Verdict::unknown, {}}, on(*date)));
    }

    void measure(const EditedTree& tree, const char* trait, double value, const char* day) {
        Observation what;
        what.trait = shippedTraitId(trait);
        what.value = value;
        what.qualifier = Qualifier::exact;
        const std::array trees = {tree};
        apply(observationOn(trees, what, trait, on(*Date::fromIso(day))));
    }
};

} // namespace pipwright::test
