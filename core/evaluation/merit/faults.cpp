#include "core/evaluation/merit/faults.h"

#include "core/evaluation/fairness.h"
#include "core/orchard/dictionary.h"
#include "core/units/text.h"

#include <algorithm>
#include <map>
#include <unordered_map>
#include <utility>

namespace pipwright {

namespace {

constexpr std::array<std::string_view, kFaultKinds.size()> kFaultKeys = {
    "scab", "mildew", "fire_blight", "drop", "split", "mealiness", "short_keeping"};
constexpr std::array<std::string_view, 4> kPurposeKeys = {"dessert", "cooking", "cider", "keeper"};
constexpr int kFreshForMealiness = 3;

struct YearSum {
    double sum = 0;
    double worst = 0;
    int count = 0;
};

/// Readings of one fault and genotype by crop year.
using FaultYears = std::map<int, YearSum>;

struct LotSeen {
    Index genotype = 0;
    int cropYear = 0;
    std::optional<int> daysOff;
};

class FaultReader {
  public:
    FaultReader(const OrchardView& view, const Store& store, std::optional<Date> asOf)
        : m_view(view), m_store(store), m_asOf(asOf) {}

    Outcome read() {
        if (auto done = readLots(); !done) {
            return done;
        }
        const std::pair<FaultKind, std::string_view> traits[] = {
            {FaultKind::scab, trait_key::kScab},
            {FaultKind::mildew, trait_key::kMildew},
            {FaultKind::fireBlight, trait_key::kFireBlight},
            {FaultKind::drop, trait_key::kDrop},
            {FaultKind::mealiness, "mealiness"},
            {FaultKind::shortKeeping, trait_key::kDaysGood}};
        for (const auto& [kind, key] : traits) {
            if (auto done = readTrait(kind, key); !done) {
                return done;
            }
        }
        return {};
    }

    [[nodiscard]] std::vector<std::vector<Fault>> faults() const {
        std::vector<std::vector<Fault>> all(m_view.genotypes().size());
        for (const auto& [key, years] : m_years) {
            all[key.first].push_back(figureOf(key.second, years));
        }
        for (const auto& [genotype, lots] : m_split) {
            all[genotype].push_back({FaultKind::split, lots.sum / static_cast<double>(lots.count),
                                     lots.count, std::nullopt, 0});
        }
        for (const auto& [genotype, days] : m_days) {
            std::vector<double> sorted = days;
            std::sort(sorted.begin(), sorted.end());
            const double median = (sorted[(sorted.size() - 1) / 2] + sorted[sorted.size() / 2]) / 2;
            all[genotype].push_back({FaultKind::shortKeeping, median,
                                     static_cast<int>(sorted.size()), std::nullopt, 0});
        }
        for (auto& list : all) {
            std::sort(list.begin(), list.end(),
                      [](const Fault& a, const Fault& b) { return a.kind < b.kind; });
        }
        return all;
    }

  private:
    /// Fruit of lots not tasted until then is none of that day's business.
    Outcome readLots() {
        std::unordered_map<Uuid, Date> sittings;
        auto done = m_store.scan(Kind::tasting, {}, [&](const Record& record) {
            const auto tasting = fromRecord<Tasting>(record);
            sittings[tasting.id.uuid] = tasting.date;
            return true;
        });
        if (!done) {
            return done;
        }
        return m_store.scan(Kind::lot, {}, [&](const Record& record) {
            const auto lot = fromRecord<Lot>(record);
            const auto sitting = sittings.find(lot.tasting.uuid);
            if (sitting != sittings.end() && (!m_asOf || sitting->second <= *m_asOf)) {
                take(lot, sitting->second);
            }
            return true;
        });
    }

    void take(const Lot& lot, Date date) {
        std::optional<Index> genotype;
        if (lot.plant) {
            const auto plant = m_view.plant(*lot.plant);
            genotype = plant ? m_view.plants()[*plant].genotype : std::nullopt;
        } else if (lot.claimedGenotype) {
            genotype = m_view.genotype(*lot.claimedGenotype);
        }
        if (!genotype) {
            return;
        }
        m_lots[lot.id.uuid] = {*genotype, lot.cropYear ? lot.cropYear->year : date.year(),
                               daysOffTree(lot)};
        if (lot.soundness != Soundness::unknown) {
            YearSum& split = m_split[*genotype];
            split.sum += lot.soundness == Soundness::split ? 1 : 0;
            ++split.count;
        }
    }

    Outcome readTrait(FaultKind kind, std::string_view key) {
        const auto all = m_store.where<Observation>("trait", shippedTraitId(key).uuid);
        if (!all) {
            return all.problem();
        }
        for (const Observation& one : *all) {
            if (one.voidReason.empty() && one.date && (!m_asOf || *one.date <= *m_asOf)) {
                take(kind, one);
            }
        }
        return {};
    }

    void take(FaultKind kind, const Observation& one) {
        std::optional<double> value = one.value;
        if (one.state) {
            const TraitState* state = m_view.traitState(*one.state);
            value = state == nullptr ? value : static_cast<double>(state->rank);
        }
        std::optional<Index> genotype;
        int year = one.cropYear ? one.cropYear->year : one.date->year();
        if (one.lot) {
            const auto lot = m_lots.find(one.lot->uuid);
            if (lot == m_lots.end() || (kind == FaultKind::mealiness &&
                                        lot->second.daysOff.value_or(0) > kFreshForMealiness)) {
                return;
            }
            genotype = lot->second.genotype;
            year = lot->second.cropYear;
        } else if (one.plant) {
            const auto plant = m_view.plant(*one.plant);
            genotype = plant ? m_view.plants()[*plant].genotype : std::nullopt;
        } else if (one.genotype) {
            genotype = m_view.genotype(*one.genotype);
        }
        if (!value || !genotype) {
            return;
        }
        if (kind == FaultKind::shortKeeping) {
            if (foldedForSearch(one.instrument) == keyOf(StoragePath::counter)) {
                return; // a kitchen counter is no store
            }
            m_days[*genotype].push_back(*value);
            return;
        }
        YearSum& sum = m_years[{*genotype, kind}][year];
        const bool worse = sum.count == 0 || (kind == FaultKind::fireBlight ? *value < sum.worst
                                                                            : *value > sum.worst);
        sum.worst = worse ? *value : sum.worst;
        sum.sum += *value;
        ++sum.count;
    }

    static Fault figureOf(FaultKind kind, const FaultYears& years) {
        Fault fault;
        fault.kind = kind;
        double sum = 0;
        double worsts = 0;
        for (const auto& [year, one] : years) {
            const bool worse =
                kind == FaultKind::fireBlight ? one.worst < fault.figure : one.worst > fault.figure;
            if (!fault.cropYear || worse) {
                fault.cropYear = year;
                fault.figure = one.worst;
            }
            sum += one.sum;
            worsts += one.worst;
            fault.readings += one.count;
        }
        if (kind == FaultKind::mealiness || kind == FaultKind::drop) {
            fault.cropYear.reset();
            fault.figure = kind == FaultKind::drop ? worsts / static_cast<double>(years.size())
                                                   : sum / fault.readings;
        }
        return fault;
    }

    const OrchardView& m_view;
    const Store& m_store;
    std::optional<Date> m_asOf;
    std::unordered_map<Uuid, LotSeen> m_lots;
    std::map<std::pair<Index, FaultKind>, FaultYears> m_years;
    std::unordered_map<Index, YearSum> m_split;
    std::unordered_map<Index, std::vector<double>> m_days;
};

} // namespace

namespace {

bool isBeyond(const Fault& fault, double limit) {
    switch (fault.kind) {
    case FaultKind::fireBlight:
        return fault.figure <= limit;
    case FaultKind::shortKeeping:
        return fault.figure < limit;
    default:
        return fault.figure >= limit;
    }
}

} // namespace

std::string_view keyOf(FaultKind kind) {
    return kFaultKeys[static_cast<std::size_t>(kind)];
}

std::string_view keyOf(Purpose purpose) {
    return kPurposeKeys[static_cast<std::size_t>(purpose)];
}

std::optional<Purpose> purposeFromKey(std::string_view key) {
    for (std::size_t i = 0; i < kPurposeKeys.size(); ++i) {
        if (kPurposeKeys[i] == key) {
            return static_cast<Purpose>(i);
        }
    }
    return std::nullopt;
}

std::vector<FaultLimit> proposedLimits(Purpose purpose) {
    if (purpose == Purpose::cooking) {
        return {{FaultKind::scab, 5, 1},
                {FaultKind::mildew, 5, 1},
                {FaultKind::fireBlight, 3, 1},
                {FaultKind::drop, 4, 2}};
    }
    if (purpose == Purpose::cider) {
        return {{FaultKind::scab, 5, 1}, {FaultKind::mildew, 5, 1}, {FaultKind::fireBlight, 3, 1}};
    }
    std::vector<FaultLimit> limits = {{FaultKind::scab, 4, 1},       {FaultKind::mildew, 4, 1},
                                      {FaultKind::fireBlight, 3, 1}, {FaultKind::drop, 4, 2},
                                      {FaultKind::split, 0.5, 3},    {FaultKind::mealiness, 4, 2}};
    if (purpose == Purpose::keeper) {
        limits.push_back({FaultKind::shortKeeping, 60, 2});
    }
    return limits;
}

Result<FaultLedger> FaultLedger::read(const OrchardView& view, const Store& store,
                                      std::optional<Date> asOf) {
    FaultReader reader(view, store, asOf);
    if (auto done = reader.read(); !done) {
        return done.problem();
    }
    FaultLedger ledger;
    ledger.m_ofGenotype = reader.faults();
    return ledger;
}

bool FaultLedger::concerns(std::span<const Change> changes) {
    return std::any_of(changes.begin(), changes.end(), [](const Change& change) {
        return change.kind == Kind::observation || change.kind == Kind::lot ||
               change.kind == Kind::tasting || change.kind == Kind::identity;
    });
}

std::vector<Fault> FaultLedger::seen(Index genotype) const {
    return genotype < m_ofGenotype.size() ? m_ofGenotype[genotype] : std::vector<Fault>{};
}

std::vector<Fault> FaultLedger::beyond(Index genotype, std::span<const FaultLimit> limits) const {
    std::vector<Fault> list;
    for (Fault fault : seen(genotype)) {
        for (const FaultLimit& limit : limits) {
            if (limit.kind == fault.kind && fault.readings >= limit.readings &&
                isBeyond(fault, limit.limit)) {
                fault.limit = limit.limit;
                list.push_back(fault);
            }
        }
    }
    return list;
}

} // namespace pipwright
