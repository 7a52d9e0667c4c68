#pragma once

#include "ui/tree/record_list.h"

#include <vector>

namespace pipwright::ui {

struct TreeFacts;

/// The tastings of a tree, newest first: day, liking as eaten, condition, fair or why not, words.
std::vector<RecordWords> tastingWords(const TreeFacts& facts);
/// All that was seen, decided, wished and grafted, newest first: the time line as text.
std::vector<RecordWords> seenWords(const TreeFacts& facts);

} // namespace pipwright::ui
