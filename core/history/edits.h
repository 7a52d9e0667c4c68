#pragma once

#include "core/history/change.h"
#include "core/units/uuid.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// The edits a breeder makes, each as one change set with its sentence. They decide nothing about
/// screens; the window, the command line and the tests use the same ones.
namespace pipwright {

/// What every edit needs to know: the day, who does it, where new names come from.
struct EditContext {
    Date day;                       ///< the day taken as today
    std::optional<PersonId> person; ///< who is at the keyboard, if known
    Hemisphere hemisphere = Hemisphere::unknown;
    UuidMaker* ids = nullptr; ///< never null
    /// For a late entry whose day is inexact: the last day it may have been, and the words it was
    /// written in. `day` is then the first.
    std::optional<Date> lastDay = std::nullopt;
    std::string dayTyped = {};
};

/// A tree as an edit speaks of it: its plant, what it is called in the sentence, and its genotype.
struct EditedTree {
    std::optional<PlantId> plant; ///< nothing: the record is of the genotype
    std::optional<GenotypeId> genotype;
    std::string code;
};

/// How the fruit of a bite or lot came to the mouth; all unknown unless said.
struct LotCondition {
    std::optional<Date> taken;
    Origin origin = Origin::unknown;
    Bag bag = Bag::unknown;
    Soundness soundness = Soundness::unknown;
    StoragePath storage = StoragePath::unknown;
    std::optional<std::int64_t> daysOnCounter;
    std::optional<std::int64_t> daysInFridge;
    std::optional<std::int64_t> daysInCellar;
    std::string storageTyped = {}; ///< the path as typed: "f5c2"
    Ripeness ripeness = Ripeness::unknown;
    std::optional<std::int64_t> fruits;
    CanopyPlace canopyPlace = CanopyPlace::unknown;
    CropLoad cropLoad = CropLoad::unknown;
    std::optional<std::int64_t> cropNumber;
};

/// The condition a lot is kept with.
LotCondition conditionOf(const Lot& lot);
/// Puts every part of the condition into the lot; crop year and all else stay as they are.
void putCondition(const LotCondition& condition, Lot& lot);

/// One taster's word on a lot.
struct BiteScore {
    PersonId taster;
    std::optional<double> liking; ///< 1 to 9, halves
    Verdict verdict = Verdict::unknown;
    std::string words;
};

/// "Note on AT17-014" or "Note on 12 trees".
ChangeSet noteOn(std::span<const EditedTree> trees, const std::string& words,
                 const EditContext& context);

/// The same walk mark on every tree, with drops if any were seen ("none", "few", "some", "many").
ChangeSet walkMarkOn(std::span<const EditedTree> trees, WalkMark mark,
                     std::optional<TraitStateId> drop, const EditContext& context);

/// The same observation on every tree; `what` names the trait in the sentence. Subject, id, person
/// and (if not given) date and crop year are filled in.
ChangeSet observationOn(std::span<const EditedTree> trees, const Observation& what,
                        const std::string& traitName, const EditContext& context);

/// One fruit eaten standing in the row: a sighted tasting of one lot.
ChangeSet biteOf(const EditedTree& tree, const LotCondition& condition, const BiteScore& score,
                 const EditContext& context);

/// The genotypes go to a stage, with a reason. A cull does not touch the plants.
ChangeSet decisionOn(std::span<const EditedTree> trees, Stage stage, const std::string& reason,
                     const EditContext& context);

/// The plants as they were, and the state they are in now ("Lost: 3 trees, voles").
ChangeSet plantsBecome(std::span<const Plant> plants, PlantState state, const std::string& reason,
                       const EditContext& context);

/// So many grafts of this tree, why.
ChangeSet graftWishFor(const EditedTree& tree, std::int64_t number, const std::string& reason,
                       const EditContext& context);

/// From `context.day` on, the plant is held to be this genotype (nothing: unknown). `confirmed` is
/// the day it was last confirmed at the tree, when the genotype stays the same.
ChangeSet identityOf(const EditedTree& tree, std::optional<GenotypeId> genotype,
                     const std::string& genotypeCode, IdentityBasis basis, Confidence confidence,
                     const std::string& notes, const EditContext& context,
                     std::optional<Date> confirmed = std::nullopt);

/// Puts a swap of tags right: each plant is held to be what the other was, and the records of both
/// go along, since they hang on the plants.
ChangeSet swapOfTags(const EditedTree& one, const EditedTree& other, const std::string& notes,
                     const EditContext& context);

/// The identity that counts was confirmed at the tree today.
ChangeSet identityConfirmed(const Identity& identity, const std::string& code,
                            const EditContext& context);

/// A picture of the tree, whose bytes the store has already.
ChangeSet photoOf(const EditedTree& tree, const std::string& sha256, const std::string& mediaType,
                  const std::string& caption, const EditContext& context);

/// A plant that stands at the place too, and what it is held to be (nothing: unknown). `tag` is
/// what its tag says, if anything.
struct PlantBeside {
    PositionId position;
    std::optional<GenotypeId> genotype;
    std::string tag;
    std::string called; ///< in the sentence
};
ChangeSet plantBeside(const PlantBeside& beside, const EditedTree& first,
                      const EditContext& context);

/// Records that were put down for the wrong tree go to the right one.
struct RecordsOfTree {
    std::vector<Observation> observations;
    std::vector<Lot> lots;
    std::vector<Photo> photos;
};
ChangeSet movedToTree(const RecordsOfTree& records, const EditedTree& wrong,
                      const EditedTree& right);

/// Voids a record: it stays in the history but counts no more. The reason must not be empty.
template <typename Thing>
ChangeSet voided(const Thing& thing, const std::string& reason, const std::string& what) {
    Thing after = thing;
    after.voidReason = reason;
    ChangeSet set;
    set.sentence = "Void: " + what;
    set.edit(thing, after);
    return set;
}

} // namespace pipwright
