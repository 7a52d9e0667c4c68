#pragma once

#include "core/evaluation/comparison.h"

#include <algorithm>
#include <map>
#include <vector>

namespace pipwright::ui {

/// Scores of one liking stand on one another, on screen and on paper, in the order of their dates.
struct ScoreStack {
    std::vector<int> levels; ///< of each score, from 0
    int highest = 1;         ///< scores in the highest stack, at least 1

    explicit ScoreStack(const std::vector<ComparedScore>& scores) {
        std::map<double, int> height;
        for (const ComparedScore& score : scores) {
            levels.push_back(height[score.liking]++);
            highest = std::max(highest, levels.back() + 1);
        }
    }
};

} // namespace pipwright::ui
