#pragma once

#include "core/evaluation/fairness.h"
#include "core/evaluation/merit/trait_records.h"
#include "core/history/change.h"
#include "core/history/store.h"

#include <memory>
#include <optional>
#include <span>
#include <stop_token>
#include <unordered_map>

namespace pipwright {

/// All tastings of a book, kept at hand so that one more score does not mean reading forty
/// thousand. Made once, then carried along by each change set. A value; copies share the bulk
/// only while unchanged.
class TastingLedger {
  public:
    /// One pass over tastings, lots, scores and the keys of planned sittings. Problem cancelled.
    static Result<TastingLedger> read(const Store& store, std::stop_token stop = {});
    /// Takes over what these changes, which are in the store already, did to tastings, lots and
    /// scores.
    Outcome refresh(std::span<const Change> changes, const Store& store);

    /// The likings given up to a day, with what the view says of plants and genotypes; none of a
    /// sitting whose key is sealed. In the order of their ids, so the same book gives the same
    /// list.
    [[nodiscard]] TraitRecords likings(const OrchardView& view,
                                       std::optional<Date> asOf = std::nullopt) const;

  private:
    struct HeldLot {
        Lot lot;
        Fairness fairness;
    };
    void take(const SealedKey& key);
    void take(Tasting tasting);
    void take(Lot lot);
    void take(Score score);

    std::unordered_map<Uuid, SealedKey> m_keys;
    std::unordered_map<Uuid, Tasting> m_tastings;
    std::unordered_map<Uuid, HeldLot> m_lots;
    std::unordered_map<Uuid, Score> m_scores;
};

} // namespace pipwright
