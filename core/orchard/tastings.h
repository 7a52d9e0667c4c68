#pragma once

#include "core/orchard/kinds.h"
#include "core/orchard/words.h"
#include "core/season/crop_year.h"
#include "core/season/date.h"

#include <cstdint>
#include <optional>
#include <string>

namespace pipwright {

/// One sitting on a date. A single bite in the row is one too: one lot, one taster, sighted.
struct Tasting {
    TastingId id;
    Date date;
    std::string title;
    Sight sight = Sight::unknown;
    TastingPlace place = TastingPlace::unknown;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("date", self.date, "day of the sitting");
        visit("title", self.title, "what it is called");
        visit("sight", self.sight, "whether the tasters knew what they ate");
        visit("place", self.place, "at a table or standing in the row");
        visit("notes", self.notes, "anything else");
    }
};

/// Some fruit of one plant in a tasting, or bought fruit of a claimed genotype, with the
/// condition that decides how far it speaks for the genotype.
struct Lot {
    LotId id;
    TastingId tasting;
    std::optional<PlantId> plant;
    std::optional<GenotypeId> claimedGenotype;
    std::string source;
    std::optional<std::int64_t> servingOrder;
    std::string servingCode;
    std::optional<CropYear> cropYear;
    std::optional<Date> taken;
    Origin origin = Origin::unknown;
    Bag bag = Bag::unknown;
    Soundness soundness = Soundness::unknown;
    StoragePath storage = StoragePath::unknown;
    std::optional<std::int64_t> daysOnCounter;
    std::optional<std::int64_t> daysInFridge;
    std::optional<std::int64_t> daysInCellar;
    std::string storageTyped;
    Ripeness ripeness = Ripeness::unknown;
    std::optional<std::int64_t> fruits;
    CanopyPlace canopyPlace = CanopyPlace::unknown;
    CropLoad cropLoad = CropLoad::unknown;
    std::optional<std::int64_t> cropNumber;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("tasting", self.tasting, "the sitting");
        visit("plant", self.plant, "the plant the fruit came from");
        visit("claimed_genotype", self.claimedGenotype, "what bought or given fruit is said to be");
        visit("source", self.source, "where bought or given fruit came from");
        visit("serving_order", self.servingOrder, "place in the serving order");
        visit("serving_code", self.servingCode, "three-digit code it was served under");
        visit("crop_year", self.cropYear, "year of the bloom that made the fruit");
        visit("taken", self.taken, "day it was picked or lifted from the ground");
        visit("origin", self.origin, "picked or fallen");
        visit("bag", self.bag, "bag it grew in");
        visit("soundness", self.soundness, "sound or hurt, and by what");
        visit("storage", self.storage, "the path it took after leaving the tree");
        visit("days_on_counter", self.daysOnCounter, "days at room temperature");
        visit("days_in_fridge", self.daysInFridge, "days in the refrigerator");
        visit("days_in_cellar", self.daysInCellar, "days in the cellar");
        visit("storage_typed", self.storageTyped, "the path as typed");
        visit("ripeness", self.ripeness, "ripeness as eaten");
        visit("fruits", self.fruits, "fruits in the lot");
        visit("canopy_place", self.canopyPlace, "place on the tree");
        visit("crop_load", self.cropLoad, "crop load of the tree");
        visit("crop_number", self.cropNumber, "1 for the tree's first crop, 2 for its second");
        visit("notes", self.notes, "anything else");
    }
};

/// One taster's rating of one lot: liking on the 9-point hedonic scale (Peryam and Pilgrim 1957),
/// halves allowed. Intensities are observations of the lot.
struct Score {
    ScoreId id;
    LotId lot;
    PersonId taster;
    std::optional<double> liking;
    std::optional<std::int64_t> servingOrder;
    std::optional<std::int64_t> rank;
    Verdict verdict = Verdict::unknown;
    std::string uses;
    std::string words;
    std::string voidReason;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("lot", self.lot, "the lot");
        visit("taster", self.taster, "the taster");
        visit("liking", self.liking, "liking, 1 to 9, halves allowed");
        visit("serving_order", self.servingOrder, "this taster's place for the lot");
        visit("rank", self.rank, "this taster's rank of the lot, 1 the best");
        visit("verdict", self.verdict, "what the taster would do with it");
        visit("uses", self.uses, "uses it suits: dessert cooking juice cider keeping");
        visit("words", self.words, "free words");
        visit("void_reason", self.voidReason, "why it no longer counts; empty while it does");
    }
};

/// The key to the codes of a sitting that was planned: which fruit stood under which code. It stays
/// sealed until the sheets are in. A sitting without one was written down after the event.
struct SealedKey {
    SealedKeyId id;
    TastingId tasting;
    std::int64_t draw = 0;
    std::optional<Date> opened;
    std::string reason;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("tasting", self.tasting, "the sitting");
        visit("draw", self.draw, "number the codes and orders were drawn from");
        visit("opened", self.opened, "day it was opened; empty while it is sealed");
        visit("reason", self.reason,
              "why it was opened before every sheet was in; empty when all were");
    }
};

/// Whether a taster has written anything about the lot; a planned sitting keeps each taster's place
/// for each lot as a score without a word yet.
inline bool isWritten(const Score& score) {
    return score.liking || score.rank || score.verdict != Verdict::unknown || !score.uses.empty() ||
           !score.words.empty();
}

} // namespace pipwright
