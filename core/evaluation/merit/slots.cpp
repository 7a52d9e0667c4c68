#include "core/evaluation/merit/slots.h"

#include "core/evaluation/observed_window.h"
#include "core/evaluation/usual_ripening.h"
#include "core/orchard/dictionary.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <set>
#include <utility>

namespace pipwright {

namespace {

constexpr int kDaysOutside = 7;
constexpr std::size_t kFewForQuartile = 4;

using SpeciesKey = std::optional<SpeciesId>;

bool isMark(const Observation& one) {
    return one.trait == shippedTraitId(trait_key::kRipeningState) ||
           one.trait == shippedTraitId(trait_key::kFirstRipe) ||
           one.trait == shippedTraitId(trait_key::kLastGood);
}

Outcome addMarks(const Store& store, std::string_view field, const Uuid& subject,
                 std::optional<Date> asOf, std::map<int, std::vector<Observation>>& byYear) {
    auto all = store.where<Observation>(field, subject);
    if (!all) {
        return all.problem();
    }
    for (Observation& one : *all) {
        const auto day = one.date ? one.date : one.valueDate;
        if (isMark(one) && day && (!asOf || *day <= *asOf)) {
            byYear[one.cropYear ? one.cropYear->year : day->year()].push_back(std::move(one));
        }
    }
    return {};
}

Result<std::optional<BenchmarkWindow>> windowOf(const OrchardView& view, const Store& store,
                                                Index genotype, std::optional<Date> asOf) {
    std::map<int, std::vector<Observation>> byYear;
    for (const Index plant : view.plantsOf(genotype)) {
        if (auto done = addMarks(store, "plant", view.plants()[plant].id.uuid, asOf, byYear);
            !done) {
            return done.problem();
        }
    }
    if (auto done = addMarks(store, "genotype", view.genotypes()[genotype].id.uuid, asOf, byYear);
        !done) {
        return done.problem();
    }
    std::vector<int> firsts;
    std::vector<int> lasts;
    for (const auto& [year, marks] : byYear) {
        const ObservedWindow window = observedWindow(marks);
        if (const auto day = dayOfCropYear(year, window.firstRipe)) {
            firsts.push_back(*day);
            const auto last = dayOfCropYear(year, window.lastRipe);
            lasts.push_back(std::max(*day, last.value_or(*day)));
        }
    }
    if (firsts.empty()) {
        return std::optional<BenchmarkWindow>{};
    }
    BenchmarkWindow window;
    window.genotype = genotype;
    window.cropYears = static_cast<int>(firsts.size());
    window.first = *medianDay(std::move(firsts));
    window.last = std::max(window.first, *medianDay(std::move(lasts)));
    return std::optional(window);
}

/// Builds the ladders of one species.
class LadderBuilder {
  public:
    LadderBuilder(const OrchardView& view, const LadderRecords& records, const MeritModel* model,
                  SpeciesKey species, CropYear cropYear)
        : m_view(view), m_records(records), m_model(model) {
        m_season.species = species;
        m_season.cropYear = cropYear;
    }

    SeasonLadders build() {
        chooseCut();
        for (const BenchmarkWindow& window : m_records.windows) {
            if (ofSpecies(window.genotype)) {
                if (const auto at = m_season.slotOf(window.first)) {
                    join(m_season.slots[*at], window.genotype);
                }
            }
        }
        for (SlotLadder& ladder : m_season.slots) {
            takeElections(ladder);
        }
        for (SlotLadder& ladder : m_season.slots) {
            propose(ladder);
        }
        const std::vector<SlotLadder> own = m_season.slots;
        for (std::size_t at = 0; at < own.size(); ++at) {
            borrow(at, own);
        }
        return std::move(m_season);
    }

  private:
    [[nodiscard]] bool ofSpecies(Index genotype) const {
        return m_view.genotypes()[genotype].species == m_season.species;
    }

    void chooseCut() {
        for (const Slot& slot : m_records.slots) {
            if (slot.species == m_season.species && slot.cropYear <= m_season.cropYear &&
                (!m_season.metFor || *m_season.metFor < slot.cropYear)) {
                m_season.metFor = slot.cropYear;
            }
        }
        if (m_season.metFor) {
            for (const Slot& slot : m_records.slots) {
                if (slot.species == m_season.species && slot.cropYear == *m_season.metFor) {
                    SlotLadder ladder;
                    ladder.slot = slot.id;
                    ladder.days = {dayOfCropYear(slot.cropYear.year, slot.first).value_or(0),
                                   dayOfCropYear(slot.cropYear.year, slot.last).value_or(0)};
                    ladder.name = slot.name;
                    m_season.slots.push_back(std::move(ladder));
                }
            }
        } else {
            std::vector<BenchmarkWindow> windows;
            std::copy_if(m_records.windows.begin(), m_records.windows.end(),
                         std::back_inserter(windows),
                         [this](const auto& window) { return ofSpecies(window.genotype); });
            for (const SlotSpan& span : cutSeason(windows)) {
                SlotLadder ladder;
                ladder.days = span;
                m_season.slots.push_back(std::move(ladder));
            }
        }
        std::sort(
            m_season.slots.begin(), m_season.slots.end(),
            [](const SlotLadder& a, const SlotLadder& b) { return a.days.first < b.days.first; });
    }

    static void join(SlotLadder& ladder, Index genotype) {
        if (std::find(ladder.benchmarks.begin(), ladder.benchmarks.end(), genotype) ==
            ladder.benchmarks.end()) {
            ladder.benchmarks.push_back(genotype);
        }
    }

    /// The newest election to each rung counts.
    void takeElections(SlotLadder& ladder) {
        const Election* newest[3] = {};
        for (const Election& election : m_records.elections) {
            if (!ladder.slot || election.slot != *ladder.slot || election.rung == Rung::unknown) {
                continue;
            }
            const Election*& held = newest[static_cast<std::size_t>(election.rung) - 1];
            if (held == nullptr || std::pair(held->elected, held->id.uuid) <
                                       std::pair(election.elected, election.id.uuid)) {
                held = &election;
            }
        }
        std::optional<LadderRung>* rungs[3] = {&ladder.floor, &ladder.best, &ladder.famous};
        for (std::size_t i = 0; i < 3; ++i) {
            const auto genotype =
                newest[i] == nullptr ? std::nullopt : m_view.genotype(newest[i]->genotype);
            if (genotype) {
                LadderRung rung;
                rung.genotype = *genotype;
                rung.ground = m_season.metFor == m_season.cropYear ? RungGround::elected
                                                                   : RungGround::carriedOver;
                rung.election = newest[i]->id;
                rung.reason = newest[i]->reason;
                *rungs[i] = rung;
                join(ladder, *genotype);
            }
        }
    }

    [[nodiscard]] const GenotypeMerit* meritOf(Index genotype) const {
        const GenotypeMerit* merit = m_model == nullptr ? nullptr : m_model->meritOf(genotype);
        return merit != nullptr && merit->seen() ? merit : nullptr;
    }

    [[nodiscard]] double expected(Index genotype) const {
        const GenotypeMerit* merit = meritOf(genotype);
        return merit == nullptr ? -1e9 : merit->merit.value;
    }

    /// The slot's benchmarks that were tasted and are still kept, the weakest first.
    [[nodiscard]] std::vector<Index> candidates(const SlotLadder& ladder) const {
        std::vector<Index> list;
        for (const Index one : ladder.benchmarks) {
            if (meritOf(one) != nullptr && m_view.genotypes()[one].stage != Stage::culled) {
                list.push_back(one);
            }
        }
        std::stable_sort(list.begin(), list.end(),
                         [this](Index a, Index b) { return expected(a) < expected(b); });
        return list;
    }

    void propose(SlotLadder& ladder) const {
        const std::vector<Index> list = candidates(ladder);
        if (list.empty()) {
            return;
        }
        const auto put = [](std::optional<LadderRung>& rung, Index genotype, RungGround ground) {
            if (!rung) {
                rung = LadderRung{};
                rung->genotype = genotype;
                rung->ground = ground;
            }
        };
        put(ladder.best, list.back(), RungGround::highestMerit);
        const GenotypeMerit* best = meritOf(ladder.best->genotype);
        ladder.best->overtaken = best != nullptr && expected(list.back()) > best->merit.value;
        if (list.size() >= kFewForQuartile) {
            put(ladder.floor, list[(list.size() - 1) / 4], RungGround::lowerQuartile);
        } else {
            put(ladder.floor, list.front(), RungGround::lowestMerit);
        }
        const auto [famous, ground] = mostKnown(list);
        put(ladder.famous, famous, ground);
    }

    [[nodiscard]] std::pair<Index, RungGround> mostKnown(const std::vector<Index>& list) const {
        Index known = list.front();
        std::pair<std::ptrdiff_t, int> most{-1, -1};
        for (const Index one : list) {
            const GenotypeId id = m_view.genotypes()[one].id;
            const auto times = std::count_if(
                m_records.elections.begin(), m_records.elections.end(), [&](const auto& election) {
                    return election.rung == Rung::famous && election.genotype == id;
                });
            const std::pair mine{times, meritOf(one)->records};
            if (mine > most) {
                most = mine;
                known = one;
            }
        }
        return {known, most.first > 0 ? RungGround::knownBefore : RungGround::mostTasted};
    }

    /// Of the nearest slots that have such a rung the one with the higher merit on it.
    template <typename Has, typename Merit>
    [[nodiscard]] static std::optional<std::size_t> nearest(std::size_t at,
                                                            const std::vector<SlotLadder>& all,
                                                            const Has& has, const Merit& merit) {
        std::optional<std::size_t> chosen;
        std::pair<int, double> least;
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (i == at || !has(all[i])) {
                continue;
            }
            const int gap = std::abs((all[i].days.first + all[i].days.last) -
                                     (all[at].days.first + all[at].days.last));
            const std::pair mine{gap, -merit(all[i])};
            if (!chosen || mine < least) {
                chosen = i;
                least = mine;
            }
        }
        return chosen;
    }

    void borrow(std::size_t at, const std::vector<SlotLadder>& own) {
        SlotLadder& ladder = m_season.slots[at];
        const auto merit = [this](const std::optional<LadderRung>& rung) {
            return expected(rung->genotype);
        };
        const auto lend = [&](std::optional<LadderRung> SlotLadder::*rung) {
            if (ladder.*rung) {
                return;
            }
            const auto from = nearest(
                at, own, [&](const SlotLadder& one) { return (one.*rung).has_value(); },
                [&](const SlotLadder& one) { return merit(one.*rung); });
            if (from) {
                ladder.*rung = own[*from].*rung;
                (ladder.*rung)->borrowed = true;
                (ladder.*rung)->from = *from;
            }
        };
        lend(&SlotLadder::floor);
        lend(&SlotLadder::best);
        lend(&SlotLadder::famous);
        if (candidates(ladder).empty()) {
            const auto from = nearest(
                at, own, [this](const SlotLadder& one) { return !candidates(one).empty(); },
                [this](const SlotLadder& one) { return expected(candidates(one).back()); });
            if (from) {
                ladder.benchmarksBorrowed = true;
                for (const Index one : own[*from].benchmarks) {
                    join(ladder, one);
                }
            }
        }
    }

    const OrchardView& m_view;
    const LadderRecords& m_records;
    const MeritModel* m_model;
    SeasonLadders m_season;
};

} // namespace

Result<LadderRecords> readLadders(const OrchardView& view, const Store& store,
                                  std::optional<Date> asOf) {
    auto slots = store.all<Slot>();
    if (!slots) {
        return slots.problem();
    }
    auto elections = store.all<Election>();
    if (!elections) {
        return elections.problem();
    }
    LadderRecords records;
    records.slots = std::move(*slots);
    for (Election& election : *elections) {
        if (election.voidReason.empty() &&
            (!asOf || !election.elected || *election.elected <= *asOf)) {
            records.elections.push_back(std::move(election));
        }
    }
    std::set<Index> wanted;
    for (Index i = 0; i < view.genotypes().size(); ++i) {
        if (view.genotypes()[i].benchmark && !view.genotypes()[i].erased) {
            wanted.insert(i);
        }
    }
    for (const Index genotype : wanted) {
        const auto window = windowOf(view, store, genotype, asOf);
        if (!window) {
            return window.problem();
        }
        if (*window) {
            records.windows.push_back(**window);
        }
    }
    std::stable_sort(records.windows.begin(), records.windows.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    return records;
}

std::optional<std::size_t> SeasonLadders::slotOf(int day) const {
    std::optional<std::size_t> nearest;
    int least = kDaysOutside + 1;
    for (std::size_t i = 0; i < slots.size(); ++i) {
        const SlotSpan& days = slots[i].days;
        const int outside = std::max({0, days.first - day, day - days.last});
        if (outside < least) {
            least = outside;
            nearest = i;
        }
    }
    return nearest;
}

std::vector<SeasonLadders> seasonLadders(const OrchardView& view, const LadderRecords& records,
                                         const MeritModel* model, CropYear cropYear) {
    std::vector<SpeciesKey> species;
    const auto add = [&species](const SpeciesKey& one) {
        if (std::find(species.begin(), species.end(), one) == species.end()) {
            species.push_back(one);
        }
    };
    for (const Slot& slot : records.slots) {
        add(slot.species);
    }
    for (const BenchmarkWindow& window : records.windows) {
        add(view.genotypes()[window.genotype].species);
    }
    std::vector<SeasonLadders> all;
    for (const SpeciesKey& one : species) {
        all.push_back(LadderBuilder(view, records, model, one, cropYear).build());
    }
    return all;
}

const SeasonLadders* laddersFor(const std::vector<SeasonLadders>& all,
                                const GenotypeEntry& genotype) {
    for (const SeasonLadders& one : all) {
        if (one.species == genotype.species) {
            return &one;
        }
    }
    return !genotype.species && all.size() == 1 ? &all.front() : nullptr;
}

} // namespace pipwright
