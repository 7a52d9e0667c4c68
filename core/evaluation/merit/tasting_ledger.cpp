#include "core/evaluation/merit/tasting_ledger.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>
#include <utility>

namespace pipwright {

namespace {

Problem ledgerStopped() {
    return {ProblemCode::cancelled, "Reading the tastings was stopped.", "Start it again.", ""};
}

/// Numbers for things as they come: 0, 1, 2 and so on.
template <typename Key>
class Numbering {
  public:
    std::int32_t of(const Key& key) {
        return m_numbers.try_emplace(key, static_cast<std::int32_t>(m_numbers.size()))
            .first->second;
    }
    [[nodiscard]] std::int32_t count() const { return static_cast<std::int32_t>(m_numbers.size()); }

  private:
    std::map<Key, std::int32_t> m_numbers;
};

/// The fields of a kind that carry long texts nobody computes with are left unread.
ScanRequest allFieldsBut(Kind kind, std::initializer_list<std::string_view> left) {
    ScanRequest request;
    const auto& fields = fieldsOf(kind);
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (std::find(left.begin(), left.end(), fields[i].name) == left.end()) {
            request.fields.push_back(i);
        }
    }
    return request;
}

template <typename Thing, typename Take>
Outcome readAll(const Store& store, std::initializer_list<std::string_view> left,
                const std::stop_token& stop, const Take& take) {
    const Outcome outcome = store.scan(
        KindOf<Thing>::value, allFieldsBut(KindOf<Thing>::value, left), [&](const Record& record) {
            take(fromRecord<Thing>(record));
            return !stop.stop_requested();
        });
    if (outcome && stop.stop_requested()) {
        return ledgerStopped();
    }
    return outcome;
}

/// Brings scores into the form of records.
class LikingList {
  public:
    explicit LikingList(const OrchardView& view) : m_view(view) {}

    void add(const Score& score, const Lot& lot, const Fairness& fairness, const Tasting& tasting) {
        const std::optional<Index> plant = lot.plant ? m_view.plant(*lot.plant) : std::nullopt;
        std::optional<Index> genotype;
        if (plant) {
            genotype = m_view.plants()[*plant].genotype;
        } else if (lot.claimedGenotype) {
            genotype = m_view.genotype(*lot.claimedGenotype);
        }
        if (!genotype) {
            ++m_all.leftOut;
            return;
        }
        TraitRecord record;
        record.value = *score.liking;
        record.genotype = *genotype;
        record.plant = plant ? static_cast<std::int32_t>(*plant) : -1;
        record.person = numberOf(m_persons, score.taster, m_all.persons);
        record.lot = numberOf(m_lots, lot.id, m_all.lots);
        record.date = tasting.date;
        // Bites in the row have no table around them: those of one day are one sitting.
        const bool bite = tasting.place == TastingPlace::row;
        record.sitting = m_sittings.of(bite ? std::pair{record.date.days(), Uuid{}}
                                            : std::pair{kTable, tasting.id.uuid});
        record.cropYear = lot.cropYear ? lot.cropYear->year : record.date.year();
        record.fair = fairness.fair();
        record.unclear = fairness.unclear;
        record.sight = tasting.sight;
        record.conditions =
            conditionsOf(lot, record.sight, isOwnSeedling(m_view.genotypes()[*genotype]),
                         score.servingOrder ? score.servingOrder : lot.servingOrder);
        record.source = score.id.uuid;
        m_all.records.push_back(std::move(record));
    }

    TraitRecords take() {
        m_all.sittings = m_sittings.count();
        return std::move(m_all);
    }

  private:
    static constexpr std::int32_t kTable = std::numeric_limits<std::int32_t>::min();

    template <typename Thing>
    static std::int32_t numberOf(Numbering<Uuid>& numbers, Thing id, std::vector<Thing>& list) {
        const std::int32_t number = numbers.of(id.uuid);
        if (static_cast<std::size_t>(number) == list.size()) {
            list.push_back(id);
        }
        return number;
    }

    const OrchardView& m_view;
    TraitRecords m_all;
    Numbering<Uuid> m_persons;
    Numbering<Uuid> m_lots;
    Numbering<std::pair<std::int32_t, Uuid>> m_sittings;
};

} // namespace

void TastingLedger::take(const SealedKey& key) {
    m_keys[key.id.uuid] = key;
}

void TastingLedger::take(Tasting tasting) {
    m_tastings[tasting.id.uuid] = std::move(tasting);
}

void TastingLedger::take(Lot lot) {
    Fairness fairness = fairnessOf(lot);
    m_lots[lot.id.uuid] = {std::move(lot), std::move(fairness)};
}

void TastingLedger::take(Score score) {
    m_scores[score.id.uuid] = std::move(score);
}

Result<TastingLedger> TastingLedger::read(const Store& store, std::stop_token stop) {
    TastingLedger ledger;
    if (auto done =
            readAll<SealedKey>(store, {}, stop, [&](const SealedKey& one) { ledger.take(one); });
        !done) {
        return done.problem();
    }
    if (auto done = readAll<Tasting>(store, {"notes"}, stop,
                                     [&](Tasting one) { ledger.take(std::move(one)); });
        !done) {
        return done.problem();
    }
    if (auto done = readAll<Lot>(store, {"notes", "storage_typed", "source"}, stop,
                                 [&](Lot one) { ledger.take(std::move(one)); });
        !done) {
        return done.problem();
    }
    if (auto done = readAll<Score>(store, {"words", "uses"}, stop,
                                   [&](Score one) { ledger.take(std::move(one)); });
        !done) {
        return done.problem();
    }
    return ledger;
}

Outcome TastingLedger::refresh(std::span<const Change> changes, const Store& store) {
    const auto again = [&](const Change& change, auto& held, auto thing) -> Outcome {
        using Thing = decltype(thing);
        held.erase(change.record);
        if (change.what == ChangeWhat::erased) {
            return {};
        }
        auto found = store.get(Id<Thing>(change.record));
        if (!found) {
            return found.problem();
        }
        if (*found) {
            take(std::move(**found));
        }
        return {};
    };
    for (const Change& change : changes) {
        Outcome done;
        if (change.kind == Kind::tasting) {
            done = again(change, m_tastings, Tasting{});
        } else if (change.kind == Kind::lot) {
            done = again(change, m_lots, Lot{});
        } else if (change.kind == Kind::score) {
            done = again(change, m_scores, Score{});
        } else if (change.kind == Kind::sealedKey) {
            done = again(change, m_keys, SealedKey{});
        }
        if (!done) {
            return done;
        }
    }
    return {};
}

TraitRecords TastingLedger::likings(const OrchardView& view, std::optional<Date> asOf) const {
    std::vector<const Score*> scores;
    scores.reserve(m_scores.size());
    for (const auto& [id, score] : m_scores) {
        if (score.liking && score.voidReason.empty()) {
            scores.push_back(&score);
        }
    }
    std::sort(scores.begin(), scores.end(),
              [](const Score* a, const Score* b) { return a->id.uuid < b->id.uuid; });

    std::set<TastingId> sealed;
    for (const auto& [id, key] : m_keys) {
        if (!key.opened) {
            sealed.insert(key.tasting);
        }
    }
    LikingList list(view);
    for (const Score* score : scores) {
        const auto held = m_lots.find(score->lot.uuid);
        if (held == m_lots.end()) {
            continue;
        }
        const auto tasting = m_tastings.find(held->second.lot.tasting.uuid);
        if (tasting == m_tastings.end() || sealed.contains(tasting->second.id) ||
            (asOf && *asOf < tasting->second.date)) {
            continue;
        }
        list.add(*score, held->second.lot, held->second.fairness, tasting->second);
    }
    return list.take();
}

} // namespace pipwright
