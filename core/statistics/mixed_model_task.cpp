#include "core/statistics/mixed_model_search.h"

namespace pipwright {

std::vector<SearchParameter> searchParameters(const ModelRecords& records, const SearchTask& task) {
    std::vector<SearchParameter> parameters;
    for (std::size_t term = 0; term < task.terms.size(); ++term) {
        if (task.terms[term].knowledge == VarianceKnowledge::held) {
            continue;
        }
        for (std::int32_t row = 0; row < records.families[term].width; ++row) {
            for (std::int32_t column = 0; column <= row; ++column) {
                parameters.push_back({static_cast<std::int32_t>(term), 0, row, column});
            }
        }
    }
    for (std::size_t group = 0; group < task.groups.size(); ++group) {
        if (task.groups[group].knowledge != VarianceKnowledge::held) {
            parameters.push_back({-1, static_cast<std::int32_t>(group), 0, 0});
        }
    }
    return parameters;
}

} // namespace pipwright
