#include "core/exchange/import_draft.h"
#include "core/orchard/dictionary.h"

#include <cmath>

namespace pipwright {

namespace {

using enum TableField;

/// The line's day, or the recipe's; a fault without either.
std::optional<Date> dayOf(LineCells& cells, const ImportDraft& draft) {
    if (const auto given = cells.day(date, draft.today())) {
        return given;
    }
    if (cells.isEmpty(date) && cells.recipe().date) {
        return cells.recipe().date;
    }
    if (cells.isEmpty(date)) {
        cells.fault(date, "the line has no day.", "Give one, or name the day in the recipe.");
    }
    return std::nullopt;
}

std::string tasterOf(const LineCells& cells) {
    return cells.isEmpty(taster) ? cells.recipe().taster : cells.text(taster);
}

std::optional<double> likingOf(LineCells& cells) {
    const auto number = cells.number(liking);
    if (number && (*number < 1 || *number > 9 || *number * 2 != std::round(*number * 2))) {
        cells.fault(liking, "a liking of " + cells.text(liking) + " is not on the scale.",
                    "Likings go from 1 to 9 in halves; give the marks of another scale their "
                    "meaning in the recipe.");
        return std::nullopt;
    }
    return number;
}

/// The condition columns, as they fill a lot.
Lot lotOf(LineCells& cells, Date today) {
    Lot lot;
    lot.taken = cells.day(taken, today);
    lot.origin = cells.word<Origin>(origin);
    lot.bag = cells.word<Bag>(bag);
    lot.soundness = cells.word<Soundness>(soundness);
    lot.storage = cells.word<StoragePath>(storage);
    lot.storageTyped = cells.text(storage);
    lot.daysOnCounter = cells.wholeNumber(daysOnCounter);
    lot.daysInFridge = cells.wholeNumber(daysInFridge);
    lot.daysInCellar = cells.wholeNumber(daysInCellar);
    lot.ripeness = cells.word<Ripeness>(ripeness);
    lot.fruits = cells.wholeNumber(fruits);
    lot.canopyPlace = cells.word<CanopyPlace>(canopyPlace);
    lot.cropLoad = cells.word<CropLoad>(cropLoad);
    lot.cropNumber = cells.wholeNumber(cropNumber);
    return lot;
}

template <typename Thing>
bool sameButId(const Thing& one, const Thing& other) {
    return toRecord(one).values == toRecord(other).values;
}

/// The one tasting of that day and place.
TastingId tastingFor(Date day, TastingPlace where, const LineCells& cells, ImportDraft& draft,
                     std::string& said) {
    std::optional<TastingId> found;
    draft.tastings.forEach([&](const Tasting& one) {
        if (one.date == day && one.place == where) {
            found = one.id;
        }
    });
    if (found) {
        return *found;
    }
    auto one = draft.fresh<Tasting>();
    one.date = day;
    one.place = where;
    one.sight = where == TastingPlace::row ? Sight::sighted : Sight::unknown;
    one.notes = "from " + cells.tableName();
    said += (said.empty() ? "" : "; ") + std::string("new tasting of ") + day.iso();
    return draft.tastings.create(one).id;
}

ImportDraft::Subject subjectOf(const Lot& lot) {
    const Uuid fruit = lot.plant             ? lot.plant->uuid
                       : lot.claimedGenotype ? lot.claimedGenotype->uuid
                                             : Uuid{};
    return {lot.tasting.uuid, fruit};
}

/// What the book holds of a tasting is fetched when the first line speaks of it.
void fetchTasting(TastingId tasting, ImportDraft& draft) {
    if (!draft.fetchedTastings.insert(tasting.uuid).second) {
        return;
    }
    const auto lots = draft.store().where<Lot>("tasting", tasting.uuid);
    for (const Lot& lot : lots ? *lots : std::vector<Lot>{}) {
        draft.lots.know(lot);
        draft.lotsOf[subjectOf(lot)].push_back(lot.id);
        const auto scores = draft.store().where<Score>("lot", lot.id.uuid);
        for (const Score& score : scores ? *scores : std::vector<Score>{}) {
            draft.scores.know(score);
            draft.scoresOf[lot.id.uuid].push_back(score.id);
        }
    }
}

LotId lotFor(Lot lot, ImportDraft& draft) {
    auto& ofTree = draft.lotsOf[subjectOf(lot)];
    for (const LotId id : ofTree) {
        Lot other = draft.lots.at(id.uuid);
        other.servingOrder.reset();
        other.servingCode.clear();
        if (sameButId(other, lot)) {
            return id;
        }
    }
    lot.id = draft.fresh<Lot>().id;
    ofTree.push_back(lot.id);
    return draft.lots.create(std::move(lot)).id;
}

bool addScore(Score score, ImportDraft& draft) {
    auto& ofLot = draft.scoresOf[score.lot.uuid];
    for (const ScoreId id : ofLot) {
        Score other = draft.scores.at(id.uuid);
        other.servingOrder.reset();
        other.rank.reset();
        other.uses.clear();
        if (sameButId(other, score)) {
            return false;
        }
    }
    score.id = draft.fresh<Score>().id;
    ofLot.push_back(score.id);
    draft.scores.create(std::move(score));
    return true;
}

/// All observations of a plant or genotype, those of the book fetched once.
std::vector<ObservationId>& observationsOf(const Observation& one, ImportDraft& draft) {
    const Uuid subject = one.plant ? one.plant->uuid : one.genotype->uuid;
    const auto [place, isNew] = draft.observationsOf.try_emplace(subject);
    if (isNew) {
        const auto stored =
            draft.store().where<Observation>(one.plant ? "plant" : "genotype", subject);
        for (const Observation& known : stored ? *stored : std::vector<Observation>{}) {
            draft.observations.know(known);
            place->second.push_back(known.id);
        }
    }
    return place->second;
}

/// The observation, unless the book has it already.
bool addObservation(Observation one, const LineCells& cells, TableField field, ImportDraft& draft) {
    auto& ofSubject = observationsOf(one, draft);
    for (const ObservationId id : ofSubject) {
        const Observation& other = draft.observations.at(id.uuid);
        if (other.trait == one.trait && other.date == one.date && other.state == one.state &&
            other.words == one.words && other.voidReason.empty()) {
            return false;
        }
    }
    one.id = draft.fresh<Observation>().id;
    one.typed = cells.typed(field);
    one.sourceFile = cells.tableName();
    one.sourceCell = cells.placeOf(field);
    ofSubject.push_back(one.id);
    draft.observations.create(std::move(one));
    return true;
}

std::optional<TraitStateId> dropsOf(LineCells& cells) {
    if (cells.isEmpty(drops)) {
        return std::nullopt;
    }
    std::string known;
    for (const TraitState& state : shippedTraitStates()) {
        if (state.trait != shippedTraitId(trait_key::kDrop)) {
            continue;
        }
        if (wordKey(state.name) == wordKey(cells.text(drops))) {
            return state.id;
        }
        known += (known.empty() ? "" : ", ") + state.name;
    }
    cells.fault(drops, "\"" + cells.text(drops) + "\" is not one of the words known here.",
                "Use one of: " + known + "; or give this spelling a meaning in the recipe.");
    return std::nullopt;
}

} // namespace

bool planScore(LineCells& cells, ImportDraft& draft, std::string& said) {
    const auto tree = draft.tree(cells);
    const auto day = dayOf(cells, draft);
    Score score;
    score.liking = likingOf(cells);
    score.words = cells.text(words);
    score.verdict = cells.word<Verdict>(verdict);
    Lot lot = lotOf(cells, draft.today());
    const TastingPlace where =
        cells.isEmpty(setting) ? cells.recipe().setting : cells.word<TastingPlace>(setting);
    const std::string name = tasterOf(cells);
    if (name.empty()) {
        cells.fault(taster, "the line does not say who tasted.",
                    "Give a name, or name the taster in the recipe.");
    }
    if (cells.isEmpty(liking) && score.words.empty() && score.verdict == Verdict::unknown) {
        cells.fault(liking, "there is neither a liking nor a word on the fruit.",
                    "Give one of them, or take the line out.");
    }
    if (!cells.good() || !tree || !day) {
        return false;
    }
    lot.plant = tree->plant;
    lot.claimedGenotype = tree->plant ? std::nullopt : tree->genotype;
    lot.cropYear = draft.cropYear(tree->plant, lot.taken.value_or(*day));
    lot.tasting = tastingFor(*day, where, cells, draft, said);
    fetchTasting(lot.tasting, draft);
    score.lot = lotFor(std::move(lot), draft);
    score.taster = draft.personFor(name, said);
    const bool added = addScore(std::move(score), draft);
    if (added) {
        said = "score of " + tree->code + (said.empty() ? "" : "; " + said);
    }
    return added;
}

bool planWalkMark(LineCells& cells, ImportDraft& draft, std::string& said) {
    const auto tree = draft.tree(cells);
    const auto day = dayOf(cells, draft);
    const WalkMark seen = cells.word<WalkMark>(mark);
    const auto fallen = dropsOf(cells);
    if (cells.good() && seen == WalkMark::unknown && !fallen && cells.isEmpty(words)) {
        cells.fault(mark, "nothing was seen of this tree.", "Give a mark, or take the line out.");
    }
    if (!cells.good() || !tree || !day) {
        return false;
    }
    Observation one;
    one.plant = tree->plant;
    one.genotype = tree->plant ? std::nullopt : tree->genotype;
    one.date = day;
    one.cropYear = draft.cropYear(tree->plant, *day);
    if (const std::string who = tasterOf(cells); !who.empty()) {
        one.person = draft.personFor(who, said);
    }
    bool changed = false;
    Observation note = one;
    note.trait = shippedTraitId(trait_key::kNote);
    note.words = cells.text(words);
    one.qualifier = Qualifier::exact;
    if (seen != WalkMark::unknown) {
        one.trait = shippedTraitId(trait_key::kRipeningState);
        one.state = stateOf(seen);
        changed = addObservation(one, cells, mark, draft) || changed;
    }
    if (fallen) {
        one.trait = shippedTraitId(trait_key::kDrop);
        one.state = fallen;
        changed = addObservation(one, cells, drops, draft) || changed;
    }
    if (!note.words.empty()) {
        changed = addObservation(note, cells, words, draft) || changed;
    }
    if (changed) {
        said = "walk mark on " + tree->code + (said.empty() ? "" : "; " + said);
    }
    return changed;
}

} // namespace pipwright
