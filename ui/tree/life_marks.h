#pragma once

#include "core/evaluation/tree_life.h"

#include <QString>

#include <optional>
#include <vector>

namespace pipwright::ui {

struct TreeFacts;

/// One thing that happened to a tree, as the time line draws it.
struct LifeMark {
    enum class Shape { bloom, fair, unfair, unclear, decision, graft, note, drop, disease };

    Shape shape = Shape::bloom;
    Date date;
    std::optional<double> liking{}; ///< of tastings, mean as eaten
    std::optional<double> lowest{}; ///< of the scores, when they differ
    std::optional<double> highest{};
    QString words; ///< the whole of it, with its day
};

/// A crop year as the time line draws it.
struct LifeLane {
    int cropYear = 0;
    ObservedWindow window;
    QString windowWords;         ///< empty when nothing was walked
    QString cropLoad;            ///< the word; empty when not seen
    std::vector<LifeMark> marks; ///< by date
};

/// Newest first.
std::vector<LifeLane> lifeLanes(const TreeFacts& facts);
/// "still green on 3 Aug, seen ripe 10 to 24 Aug, over on 31 Aug", with what was not seen.
QString windowWords(const ObservedWindow& window);

} // namespace pipwright::ui
