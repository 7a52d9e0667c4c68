#include "core/evaluation/merit/corrected_records.h"

#include <algorithm>
#include <array>

namespace pipwright {

std::vector<CorrectedRecord> correctedRecords(const MeritModel& model, Index genotype) {
    std::array<double, 256> found{};
    for (const ConditionReport& report : model.conditions()) {
        const Correction correction = conditionClasses()[report.condition].correction;
        found[report.condition] = model.options().off.contains(correction) ? 0 : report.found.value;
    }
    const auto effect = [&model](MeritTerm term, std::size_t record) {
        const auto at = model.effectOf(term, record);
        return at ? model.mixedFit().randomEffects()[static_cast<std::size_t>(at->term)].prediction(
                        at->level)
                  : 0.0;
    };
    const auto& records = model.records().records;
    std::vector<CorrectedRecord> corrected;
    for (std::size_t i = 0; i < records.size(); ++i) {
        if (records[i].genotype != genotype) {
            continue;
        }
        CorrectedRecord one;
        one.record = i;
        one.raw = records[i].value;
        for (const ConditionAmount& amount : records[i].conditions) {
            one.conditions -= static_cast<double>(amount.amount) * found[amount.condition];
        }
        one.taster = -effect(MeritTerm::taster, i);
        one.moment = -effect(MeritTerm::sitting, i) - effect(MeritTerm::cropYear, i);
        corrected.push_back(one);
    }
    std::stable_sort(corrected.begin(), corrected.end(),
                     [&records](const CorrectedRecord& a, const CorrectedRecord& b) {
                         return records[a.record].date < records[b.record].date;
                     });
    return corrected;
}

} // namespace pipwright
