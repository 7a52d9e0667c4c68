#include "core/history/planned_sitting_edits.h"

#include "core/history/lot_crop_year.h"

#include <algorithm>

namespace pipwright {

namespace {

std::string countOfThings(std::size_t number, const char* one, const char* many) {
    return std::to_string(number) + " " + (number == 1 ? one : many);
}

} // namespace

ChangeSet sittingPlanned(const PlannedSitting& sitting, const EditContext& context) {
    ChangeSet set;
    set.person = context.person;
    set.sentence = "Sitting of " + sitting.date.iso() + " planned, " +
                   countOfThings(sitting.lots.size(), "lot", "lots") + ", " +
                   countOfThings(sitting.tasters.size(), "taster", "tasters");
    for (const Person& person : sitting.newPersons) {
        set.create(person);
    }
    Tasting tasting;
    tasting.id = TastingId(context.ids->make());
    tasting.date = sitting.date;
    tasting.title = sitting.title;
    tasting.sight = sitting.sight;
    tasting.place = TastingPlace::table;
    set.create(tasting);
    SealedKey key;
    key.id = SealedKeyId(context.ids->make());
    key.tasting = tasting.id;
    key.draw = sitting.draw;
    set.create(key);
    std::vector<LotId> lots;
    for (const PlannedLot& planned : sitting.lots) {
        Lot lot;
        lot.id = LotId(context.ids->make());
        lot.tasting = tasting.id;
        lot.plant = planned.plant;
        if (!planned.plant) {
            lot.claimedGenotype = planned.claimedGenotype;
        }
        lot.source = planned.source;
        lot.servingCode = planned.code;
        lot.notes = planned.notes;
        lot.cropYear = cropYearOfLot(
            planned.condition, tasting.date,
            planned.hemisphere == Hemisphere::unknown ? context.hemisphere : planned.hemisphere);
        putCondition(planned.condition, lot);
        set.create(lot);
        lots.push_back(lot.id);
    }
    for (std::size_t taster = 0; taster < sitting.tasters.size(); ++taster) {
        std::int64_t place = 0;
        for (const int lot : sitting.orders[taster]) {
            Score score;
            score.id = ScoreId(context.ids->make());
            score.lot = lots[static_cast<std::size_t>(lot)];
            score.taster = sitting.tasters[taster];
            score.servingOrder = ++place;
            set.create(score);
        }
    }
    return set;
}

ChangeSet sheetLineWritten(const Score& score, const TypedScore& typed, const std::string& what,
                           const EditContext& context) {
    ChangeSet set;
    set.sentence = what;
    set.person = context.person;
    Score after = score;
    after.liking = typed.liking;
    after.verdict = typed.verdict;
    after.words = typed.words;
    set.edit(score, after);
    return set;
}

ChangeSet bestOnesWritten(const std::vector<Score>& sheet, const std::vector<ScoreId>& best,
                          const std::string& taster, const EditContext& context) {
    ChangeSet set;
    set.sentence = "Best ones of " + taster;
    set.person = context.person;
    for (const Score& score : sheet) {
        Score after = score;
        const auto found = std::find(best.begin(), best.end(), score.id);
        after.rank = found == best.end()
                         ? std::optional<std::int64_t>{}
                         : std::optional<std::int64_t>(std::distance(best.begin(), found) + 1);
        set.edit(score, after);
    }
    return set;
}

ChangeSet keyOpened(const SealedKey& key, Date sitting, const std::vector<Score>& unwritten,
                    const std::string& reason, const EditContext& context) {
    ChangeSet set;
    set.sentence =
        "Key of " + sitting.iso() + " opened" + (reason.empty() ? "" : " early: ") + reason;
    set.person = context.person;
    SealedKey after = key;
    after.opened = context.day;
    after.reason = reason;
    set.edit(key, after);
    for (const Score& score : unwritten) {
        set.erase(score);
    }
    return set;
}

} // namespace pipwright
