#pragma once

#include "core/evaluation/orchard_view.h"

#include <set>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace pipwright {

/// Gathers the facts of plants and genotypes from records given in any order of kinds: keys and
/// tastings before lots, lots before scores; observations, photos and wishes at any time. A sitting
/// whose key is sealed tells nothing yet.
class EvidenceBuilder {
  public:
    explicit EvidenceBuilder(const OrchardView& view) : m_view(view) {}

    void take(const SealedKey& key);
    void take(const Tasting& tasting);
    void take(const Lot& lot);
    void take(const Score& score);
    void take(const Observation& observation);
    void take(const Photo& photo);
    void take(const GraftWish& wish);

    /// Facts of those plants and genotypes that anything was taken for.
    [[nodiscard]] std::unordered_map<Index, PlantFacts> plantFacts() const;
    [[nodiscard]] std::unordered_map<Index, GenotypeFacts> genotypeFacts() const;

  private:
    struct TastedLot {
        Index genotype = 0;
        Date date;
        int cropYear = 0;
        bool fair = false;
        int scores = 0;
        double sum = 0;
    };
    struct Seen {
        PlantFacts facts;
        std::unordered_map<int, Date> firstRipe; ///< by crop year
    };
    struct Tasted {
        GenotypeFacts facts;
        std::vector<Index> lots;
        std::set<std::uint64_t> tasters;
        std::unordered_map<int, Date> firstRipe;
    };

    void sight(Index plant, const Observation& observation);
    static void ripe(std::unordered_map<int, Date>& firstRipe, int cropYear, Date day);
    static std::optional<int> usualRipeDay(const std::unordered_map<int, Date>& firstRipe);

    const OrchardView& m_view;
    std::unordered_set<Uuid> m_sealed; ///< tastings
    std::unordered_map<Uuid, Date> m_tastings;
    std::unordered_map<Uuid, Index> m_lotAt;
    std::vector<TastedLot> m_lots;
    std::unordered_map<Index, Seen> m_seen;
    std::unordered_map<Index, Tasted> m_tasted;
};

} // namespace pipwright
