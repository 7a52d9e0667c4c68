#include "core/evaluation/merit/ripening_days.h"

#include "core/evaluation/observed_window.h"
#include "core/evaluation/usual_ripening.h"
#include "core/orchard/dictionary.h"

#include <array>
#include <map>
#include <string_view>
#include <unordered_map>
#include <utility>

namespace pipwright {

namespace {

constexpr std::size_t kFewestSiblings = 3;

std::optional<Index> markedGenotype(const OrchardView& view, const Observation& one) {
    if (one.plant) {
        const auto plant = view.plant(*one.plant);
        return plant ? view.plants()[*plant].genotype : std::nullopt;
    }
    return one.genotype ? view.genotype(*one.genotype) : std::nullopt;
}

/// The median over crop years of each genotype's day.
std::unordered_map<Index, int> mediansOf(const std::map<std::pair<Index, int>, int>& dayOfYear) {
    std::unordered_map<Index, std::vector<int>> days;
    for (const auto& [key, day] : dayOfYear) {
        days[key.first].push_back(day);
    }
    std::unordered_map<Index, int> medians;
    for (auto& [genotype, list] : days) {
        medians[genotype] = *medianDay(std::move(list));
    }
    return medians;
}

std::unordered_map<Index, int> daysEatenFair(const TraitRecords& records) {
    std::map<std::pair<Index, int>, int> first;
    for (const TraitRecord& record : records.records) {
        const auto day = dayOfCropYear(record.cropYear, record.date);
        if (!record.fair || !day) {
            continue;
        }
        const auto [at, fresh] = first.try_emplace({record.genotype, record.cropYear}, *day);
        if (!fresh && *day < at->second) {
            at->second = *day;
        }
    }
    return mediansOf(first);
}

} // namespace

std::vector<std::optional<int>> usualRipeDays(const OrchardView& view) {
    std::vector<std::optional<int>> days(view.genotypes().size());
    if (view.hasEvidence()) {
        for (Index i = 0; i < days.size(); ++i) {
            days[i] = view.genotypeFacts(i).usualRipeDay;
        }
    }
    return days;
}

Result<std::vector<std::optional<int>>> usualRipeDaysAsOf(const OrchardView& view,
                                                          const Store& store, Date asOf) {
    std::map<std::pair<Index, int>, int> first;
    for (const std::string_view key : {trait_key::kRipeningState, trait_key::kFirstRipe}) {
        const auto seen = store.where<Observation>("trait", shippedTraitId(key).uuid);
        if (!seen) {
            return seen.problem();
        }
        for (const Observation& one : *seen) {
            const auto window = observedWindow(std::span(&one, 1));
            const auto genotype = markedGenotype(view, one);
            const auto told = one.date ? one.date : one.valueDate;
            if (!window.firstRipe || !genotype || !told || *told > asOf) {
                continue;
            }
            const int year = one.cropYear ? one.cropYear->year : window.firstRipe->year();
            const auto day = dayOfCropYear(year, window.firstRipe);
            const auto [at, fresh] = first.try_emplace({*genotype, year}, *day);
            if (!fresh && *day < at->second) {
                at->second = *day;
            }
        }
    }
    std::vector<std::optional<int>> days(view.genotypes().size());
    for (const auto& [genotype, day] : mediansOf(first)) {
        days[genotype] = day;
    }
    return days;
}

std::vector<RipeningDay> ripeningDays(const OrchardView& view,
                                      const std::vector<std::optional<int>>& usual,
                                      const TraitRecords& records) {
    std::vector<RipeningDay> days(view.genotypes().size());
    const auto eaten = daysEatenFair(records);
    std::unordered_map<Uuid, std::vector<int>> families;
    for (Index i = 0; i < days.size(); ++i) {
        if (i < usual.size() && usual[i]) {
            days[i] = {usual[i], RipeningBasis::seenRipe};
        } else if (const auto found = eaten.find(i); found != eaten.end()) {
            days[i] = {found->second, RipeningBasis::eatenPrime};
        }
        if (days[i].day && view.genotypes()[i].cross) {
            families[view.genotypes()[i].cross->uuid].push_back(*days[i].day);
        }
    }
    const std::vector<RipeningDay> own = days;
    for (Index i = 0; i < days.size(); ++i) {
        if (own[i].day) {
            continue;
        }
        const auto& cross = view.genotypes()[i].cross;
        const auto family = cross ? families.find(cross->uuid) : families.end();
        if (family != families.end() && family->second.size() >= kFewestSiblings) {
            days[i] = {medianDay(family->second), RipeningBasis::siblings};
            continue;
        }
        const ParentsOf parents = view.parentsOf(i);
        if (parents.seed && parents.pollen && own[*parents.seed].day && own[*parents.pollen].day) {
            days[i] = {(*own[*parents.seed].day + *own[*parents.pollen].day) / 2,
                       RipeningBasis::parents};
        }
    }
    return days;
}

} // namespace pipwright
