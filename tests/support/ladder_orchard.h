#pragma once

#include "core/evaluation/merit/slots.h"
#include "core/evaluation/merit/tasting_ledger.h"
#include "core/evaluation/merit/verdict.h"
#include "core/evaluation/season_chart.h"
#include "core/history/ladder_edits.h"
#include "tests/support/tasted_orchard.h"

namespace pipwright::test {

/// A tasted orchard with benchmarks through the season, and the whole way from the book to the
/// verdicts in one call.
class LadderOrchard : public TastedOrchard {
  public:
    explicit LadderOrchard(std::unique_ptr<Store> emptyStore = std::make_unique<MemoryStore>())
        : TastedOrchard(std::move(emptyStore)) {
        Person second;
        second.id = PersonId(ids.make());
        second.name = "Tom Ellery";
        second.tastes = true;
        ChangeSet set;
        set.sentence = "Tom Ellery tastes too";
        set.create(second);
        apply(set);
        other = second;
    }

    Genotype benchmark(const std::string& name) {
        Genotype genotype;
        genotype.id = GenotypeId(ids.make());
        genotype.code = name;
        genotype.name = name;
        genotype.kind = GenotypeKind::cultivar;
        genotype.species = shippedSpeciesId("apple");
        genotype.benchmark = true;
        ChangeSet set;
        set.sentence = "Benchmark " + name;
        set.create(genotype);
        apply(set);
        return genotype;
    }

    /// Seen ripe on the day of each year.
    void ripens(const Genotype& genotype, const char* monthAndDay, int firstYear = 2023,
                int years = 2) {
        for (int year = firstYear; year < firstYear + years; ++year) {
            walk(treeOf(genotype), WalkMark::ripe,
                 (std::to_string(year) + "-" + monthAndDay).c_str());
        }
    }

    /// Fair bites of both tasters about a liking, in the two years.
    void tastes(const EditedTree& tree, double liking, const char* monthAndDay, int years = 2,
                int firstYear = 2023) {
        for (int year = firstYear; year < firstYear + years; ++year) {
            const std::string day = std::to_string(year) + "-" + monthAndDay;
            bite(tree, liking, day.c_str());
            std::swap(taster, other);
            bite(tree, liking - 0.5, day.c_str());
            std::swap(taster, other);
        }
    }

    Slot slotOf(int year, const char* first, const char* last, const std::string& name) {
        Slot slot;
        slot.id = SlotId(ids.make());
        slot.cropYear = CropYear{year};
        slot.species = shippedSpeciesId("apple");
        slot.first = *Date::fromIso(std::to_string(year) + "-" + first);
        slot.last = *Date::fromIso(std::to_string(year) + "-" + last);
        slot.name = name;
        ChangeSet set;
        set.sentence = "Slot " + name;
        set.create(slot);
        apply(set);
        return slot;
    }

    void elect(const Slot& slot, Rung rung, const Genotype& genotype, const char* day) {
        apply(electRung(slot, {rung, genotype.id, "at the winter's meeting"}, genotype.code,
                        on(*Date::fromIso(day))));
    }

    /// What every verdict is made from, as the window has it at hand.
    struct Evaluation {
        OrchardView::Pointer view;
        std::optional<MeritModel> model;
        LadderRecords records;
        std::vector<SeasonLadders> ladders;
        std::vector<RipeningDay> days;
        FaultLedger faults;

        [[nodiscard]] VerdictGround ground() const {
            return {view.get(), &*model, &ladders, &days, &faults};
        }
        [[nodiscard]] Index at(const EditedTree& tree) const {
            return *view->genotype(*tree.genotype);
        }
        [[nodiscard]] Index at(const Genotype& genotype) const {
            return *view->genotype(genotype.id);
        }
    };

    template <typename Value>
    static Value taken(Result<Value> result) {
        if (!result) {
            throw std::runtime_error(result.problem().sentence());
        }
        return std::move(*result);
    }

    Evaluation evaluate(int cropYear) {
        Evaluation all;
        all.view = view();
        const auto ledger = taken(TastingLedger::read(store()));
        all.model = taken(MeritModel::fit(*all.view, ledger.likings(*all.view)));
        all.records = taken(readLadders(*all.view, store()));
        all.ladders = seasonLadders(*all.view, all.records, &*all.model, CropYear{cropYear});
        all.days = ripeningDays(*all.view, usualRipeDays(*all.view), all.model->records());
        all.faults = taken(FaultLedger::read(*all.view, store()));
        return all;
    }

    SeedlingVerdict verdictOn(const Evaluation& evaluation, const EditedTree& tree,
                              const VerdictChoices& choices = {}) {
        auto all = taken(verdicts(evaluation.ground(), choices, evaluation.at(tree)));
        if (all.size() != 1) {
            throw std::runtime_error("no verdict on " + tree.code);
        }
        return all.front();
    }

    Person other;
};

} // namespace pipwright::test
