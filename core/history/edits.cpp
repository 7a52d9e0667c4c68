#include "core/history/edits.h"

#include "core/history/named_change.h"
#include "core/orchard/dictionary.h"
#include "core/season/crop_season.h"

namespace pipwright {

namespace {

std::string namesOf(std::span<const EditedTree> trees) {
    if (trees.size() == 1) {
        return trees.front().code;
    }
    return std::to_string(trees.size()) + " trees";
}

std::optional<CropYear> cropYearOf(Date date, const EditContext& context, CropRecord about) {
    if (context.hemisphere == Hemisphere::unknown) {
        return CropYear{date.year()};
    }
    const auto side =
        context.hemisphere == Hemisphere::south ? SeasonSide::southern : SeasonSide::northern;
    return proposedCropYear(date, side, about);
}

Observation about(const EditedTree& tree, const EditContext& context) {
    Observation one;
    one.id = ObservationId(context.ids->make());
    if (tree.plant) {
        one.plant = tree.plant;
    } else {
        one.genotype = tree.genotype;
    }
    one.date = context.day;
    one.dateTo = context.lastDay;
    one.dateTyped = context.dayTyped;
    one.cropYear = cropYearOf(context.day, context, CropRecord::fruit);
    one.person = context.person;
    return one;
}

/// Words for the sentence of an undo; the key reads well enough in English.
std::string spoken(std::string_view key) {
    std::string words(key);
    for (char& c : words) {
        c = c == '_' ? ' ' : c;
    }
    return words;
}

} // namespace

ChangeSet noteOn(std::span<const EditedTree> trees, const std::string& words,
                 const EditContext& context) {
    ChangeSet set = named("Note on " + namesOf(trees), context);
    for (const EditedTree& tree : trees) {
        Observation note = about(tree, context);
        note.trait = shippedTraitId(trait_key::kNote);
        note.words = words;
        set.create(note);
    }
    return set;
}

ChangeSet walkMarkOn(std::span<const EditedTree> trees, WalkMark mark,
                     std::optional<TraitStateId> drop, const EditContext& context) {
    ChangeSet set =
        named("Walk mark \"" + spoken(keyOf(mark)) + "\" on " + namesOf(trees), context);
    for (const EditedTree& tree : trees) {
        Observation seen = about(tree, context);
        seen.trait = shippedTraitId(trait_key::kRipeningState);
        seen.state = stateOf(mark);
        seen.qualifier = Qualifier::exact;
        set.create(seen);
        if (drop) {
            Observation fallen = about(tree, context);
            fallen.trait = shippedTraitId(trait_key::kDrop);
            fallen.state = drop;
            fallen.qualifier = Qualifier::exact;
            set.create(fallen);
        }
    }
    return set;
}

ChangeSet observationOn(std::span<const EditedTree> trees, const Observation& what,
                        const std::string& traitName, const EditContext& context) {
    ChangeSet set = named(traitName + " of " + namesOf(trees), context);
    for (const EditedTree& tree : trees) {
        const Observation frame = about(tree, context);
        Observation one = what;
        one.id = frame.id;
        one.plant = frame.plant;
        one.genotype = frame.genotype;
        one.person = what.person ? what.person : frame.person;
        if (!one.date) {
            one.date = frame.date;
            one.dateTo = frame.dateTo;
            one.dateTyped = frame.dateTyped;
        }
        if (!one.cropYear) {
            one.cropYear = cropYearOf(*one.date, context, CropRecord::fruit);
        }
        set.create(one);
    }
    return set;
}

LotCondition conditionOf(const Lot& lot) {
    LotCondition condition;
    condition.taken = lot.taken;
    condition.origin = lot.origin;
    condition.bag = lot.bag;
    condition.soundness = lot.soundness;
    condition.storage = lot.storage;
    condition.daysOnCounter = lot.daysOnCounter;
    condition.daysInFridge = lot.daysInFridge;
    condition.daysInCellar = lot.daysInCellar;
    condition.storageTyped = lot.storageTyped;
    condition.ripeness = lot.ripeness;
    condition.fruits = lot.fruits;
    condition.canopyPlace = lot.canopyPlace;
    condition.cropLoad = lot.cropLoad;
    condition.cropNumber = lot.cropNumber;
    return condition;
}

void putCondition(const LotCondition& condition, Lot& lot) {
    lot.taken = condition.taken;
    lot.origin = condition.origin;
    lot.bag = condition.bag;
    lot.soundness = condition.soundness;
    lot.storage = condition.storage;
    lot.daysOnCounter = condition.daysOnCounter;
    lot.daysInFridge = condition.daysInFridge;
    lot.daysInCellar = condition.daysInCellar;
    lot.storageTyped = condition.storageTyped;
    lot.ripeness = condition.ripeness;
    lot.fruits = condition.fruits;
    lot.canopyPlace = condition.canopyPlace;
    lot.cropLoad = condition.cropLoad;
    lot.cropNumber = condition.cropNumber;
}

ChangeSet biteOf(const EditedTree& tree, const LotCondition& condition, const BiteScore& score,
                 const EditContext& context) {
    ChangeSet set = named("Bite of " + tree.code, context);
    Tasting tasting;
    tasting.id = TastingId(context.ids->make());
    tasting.date = context.day;
    tasting.sight = Sight::sighted;
    tasting.place = TastingPlace::row;
    // A sitting has one day; how it was written down is kept in words.
    tasting.notes = context.dayTyped;
    set.create(tasting);

    Lot lot;
    lot.id = LotId(context.ids->make());
    lot.tasting = tasting.id;
    lot.plant = tree.plant;
    if (!tree.plant) {
        lot.claimedGenotype = tree.genotype;
    }
    lot.servingOrder = 1;
    putCondition(condition, lot);
    lot.cropYear = cropYearOf(condition.taken.value_or(context.day), context, CropRecord::fruit);
    set.create(lot);

    Score given;
    given.id = ScoreId(context.ids->make());
    given.lot = lot.id;
    given.taster = score.taster;
    given.liking = score.liking;
    given.servingOrder = 1;
    given.verdict = score.verdict;
    given.words = score.words;
    set.create(given);
    return set;
}

ChangeSet decisionOn(std::span<const EditedTree> trees, Stage stage, const std::string& reason,
                     const EditContext& context) {
    ChangeSet set = named(namesOf(trees) + ": " + spoken(keyOf(stage)), context);
    for (const EditedTree& tree : trees) {
        if (!tree.genotype) {
            continue;
        }
        Decision decision;
        decision.id = DecisionId(context.ids->make());
        decision.genotype = *tree.genotype;
        decision.stage = stage;
        decision.date = context.day;
        decision.reason = reason;
        decision.person = context.person;
        set.create(decision);
    }
    return set;
}

ChangeSet plantsBecome(std::span<const Plant> plants, PlantState state, const std::string& reason,
                       const EditContext& context) {
    ChangeSet set = named(spoken(keyOf(state)) + ": " + std::to_string(plants.size()) +
                              (plants.size() == 1 ? " plant" : " plants") +
                              (reason.empty() ? "" : ", " + reason),
                          context);
    for (const Plant& plant : plants) {
        Plant after = plant;
        after.state = state;
        after.stateSince = context.day;
        after.stateReason = reason;
        set.edit(plant, after);
    }
    return set;
}

ChangeSet graftWishFor(const EditedTree& tree, std::int64_t number, const std::string& reason,
                       const EditContext& context) {
    ChangeSet set = named("Wish " + std::to_string(number) +
                              (number == 1 ? " graft of " : " grafts of ") + tree.code,
                          context);
    if (tree.genotype) {
        GraftWish wish;
        wish.id = GraftWishId(context.ids->make());
        wish.genotype = *tree.genotype;
        wish.motherPlant = tree.plant;
        wish.number = number;
        wish.reason = reason;
        wish.wished = context.day;
        wish.person = context.person;
        set.create(wish);
    }
    return set;
}

namespace {

Identity assertionOf(const EditedTree& tree, std::optional<GenotypeId> genotype,
                     IdentityBasis basis, Confidence confidence, const std::string& notes,
                     const EditContext& context) {
    Identity identity;
    identity.id = IdentityId(context.ids->make());
    identity.plant = tree.plant.value_or(PlantId());
    identity.genotype = genotype;
    identity.basis = basis;
    identity.confidence = confidence;
    identity.asserted = context.day;
    identity.person = context.person;
    identity.notes = notes;
    return identity;
}

} // namespace

ChangeSet identityOf(const EditedTree& tree, std::optional<GenotypeId> genotype,
                     const std::string& genotypeCode, IdentityBasis basis, Confidence confidence,
                     const std::string& notes, const EditContext& context,
                     std::optional<Date> confirmed) {
    std::string sentence = tree.code + " is " + (genotype ? genotypeCode : "of unknown identity");
    if (genotype && genotype == tree.genotype) {
        sentence = "Identity of " + tree.code + ": " + spoken(keyOf(basis));
    }
    ChangeSet set = named(std::move(sentence), context);
    Identity identity = assertionOf(tree, genotype, basis, confidence, notes, context);
    identity.confirmed = confirmed;
    set.create(identity);
    return set;
}

ChangeSet swapOfTags(const EditedTree& one, const EditedTree& other, const std::string& notes,
                     const EditContext& context) {
    ChangeSet set = named("Tags of " + one.code + " and " + other.code + " put right", context);
    set.create(
        assertionOf(one, other.genotype, IdentityBasis::mapOnly, Confidence::sure, notes, context));
    set.create(
        assertionOf(other, one.genotype, IdentityBasis::mapOnly, Confidence::sure, notes, context));
    return set;
}

ChangeSet identityConfirmed(const Identity& identity, const std::string& code,
                            const EditContext& context) {
    ChangeSet set = named("Identity of " + code + " confirmed", context);
    Identity after = identity;
    after.confirmed = context.day;
    after.confidence = Confidence::sure;
    set.edit(identity, after);
    return set;
}

ChangeSet photoOf(const EditedTree& tree, const std::string& sha256, const std::string& mediaType,
                  const std::string& caption, const EditContext& context) {
    ChangeSet set = named("Photo of " + tree.code, context);
    Photo photo;
    photo.id = PhotoId(context.ids->make());
    photo.sha256 = sha256;
    photo.mediaType = mediaType;
    photo.caption = caption;
    photo.taken = context.day;
    photo.person = context.person;
    photo.plant = tree.plant;
    if (!tree.plant) {
        photo.genotype = tree.genotype;
    }
    set.create(photo);
    return set;
}

ChangeSet plantBeside(const PlantBeside& beside, const EditedTree& first,
                      const EditContext& context) {
    ChangeSet set = named(beside.called + " stands beside " + first.code, context);
    Plant plant;
    plant.id = PlantId(context.ids->make());
    plant.tag = beside.tag;
    plant.position = beside.position;
    plant.state = PlantState::growing;
    set.create(plant);
    const bool known = beside.genotype.has_value();
    set.create(assertionOf({plant.id, beside.genotype, beside.called}, beside.genotype,
                           known ? IdentityBasis::tagOnly : IdentityBasis::unknown,
                           known ? Confidence::sure : Confidence::unknown, "", context));
    return set;
}

ChangeSet movedToTree(const RecordsOfTree& records, const EditedTree& wrong,
                      const EditedTree& right) {
    ChangeSet set;
    set.sentence = "Records of " + wrong.code + " moved to " + right.code;
    const auto moved = [&](const auto& thing) {
        auto after = thing;
        after.plant = right.plant;
        set.edit(thing, after);
    };
    for (const Observation& one : records.observations) {
        moved(one);
    }
    for (const Lot& one : records.lots) {
        moved(one);
    }
    for (const Photo& one : records.photos) {
        moved(one);
    }
    return set;
}

} // namespace pipwright
