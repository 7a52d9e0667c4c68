#include "core/history/sitting_edits.h"

#include "core/history/lot_crop_year.h"

namespace pipwright {

namespace {

Lot lotOf(const ServedLot& served, const Tasting& tasting, std::int64_t order,
          const EditContext& context) {
    Lot lot;
    lot.id = LotId(context.ids->make());
    lot.tasting = tasting.id;
    lot.plant = served.plant;
    if (!served.plant) {
        lot.claimedGenotype = served.claimedGenotype;
    }
    lot.source = served.source;
    lot.servingOrder = order;
    lot.cropYear = cropYearOfLot(served.condition, tasting.date,
                                 served.hemisphere == Hemisphere::unknown ? context.hemisphere
                                                                          : served.hemisphere);
    putCondition(served.condition, lot);
    return lot;
}

} // namespace

ChangeSet sittingHeld(const HeldSitting& sitting, const EditContext& context) {
    ChangeSet set;
    set.person = context.person;
    const std::size_t lots = sitting.lots.size();
    set.sentence = "Sitting of " + sitting.date.iso() + ", " + std::to_string(lots) +
                   (lots == 1 ? " lot" : " lots");
    for (const Person& person : sitting.newPersons) {
        set.create(person);
    }
    Tasting tasting;
    tasting.id = TastingId(context.ids->make());
    tasting.date = sitting.date;
    tasting.title = sitting.title;
    tasting.sight = sitting.sight;
    tasting.place = sitting.place;
    tasting.notes = sitting.notes;
    set.create(tasting);
    std::int64_t order = 0;
    for (const ServedLot& served : sitting.lots) {
        const Lot lot = lotOf(served, tasting, ++order, context);
        set.create(lot);
        for (const BiteScore& given : served.scores) {
            if (!given.liking && given.verdict == Verdict::unknown && given.words.empty()) {
                continue;
            }
            Score score;
            score.id = ScoreId(context.ids->make());
            score.lot = lot.id;
            score.taster = given.taster;
            score.liking = given.liking;
            score.servingOrder = order;
            score.verdict = given.verdict;
            score.words = given.words;
            set.create(score);
        }
    }
    return set;
}

void putPath(const StoredPath& path, LotCondition& condition) {
    condition.storage = path.path;
    condition.daysOnCounter = path.daysOnCounter;
    condition.daysInFridge = path.daysInFridge;
    condition.daysInCellar = path.daysInCellar;
    condition.storageTyped = path.typed;
}

ChangeSet conditionCorrected(const Lot& lot, const LotCondition& condition, Date tasted,
                             const std::string& what, const EditContext& context) {
    ChangeSet set;
    set.sentence = what + " corrected";
    set.person = context.person;
    Lot after = lot;
    putCondition(condition, after);
    if (dayLotLeft(condition, tasted) != dayLotLeft(conditionOf(lot), tasted)) {
        after.cropYear = cropYearOfLot(condition, tasted, context.hemisphere);
    }
    set.edit(lot, after);
    return set;
}

ChangeSet scoreCorrected(const Score& score, const TypedScore& typed, const std::string& what,
                         const EditContext& context) {
    ChangeSet set;
    set.sentence = what + " corrected";
    set.person = context.person;
    Score after = score;
    after.liking = typed.liking;
    after.verdict = typed.verdict;
    after.words = typed.words;
    set.edit(score, after);
    return set;
}

ChangeSet scoreAdded(LotId lot, PersonId taster, const TypedScore& typed, const std::string& what,
                     const EditContext& context) {
    ChangeSet set;
    set.sentence = what + " added";
    set.person = context.person;
    if (typed.empty()) {
        return set;
    }
    Score score;
    score.id = ScoreId(context.ids->make());
    score.lot = lot;
    score.taster = taster;
    score.liking = typed.liking;
    score.verdict = typed.verdict;
    score.words = typed.words;
    set.create(score);
    return set;
}

} // namespace pipwright
