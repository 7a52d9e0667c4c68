#pragma once

#include "core/history/edits.h"

namespace pipwright {

/// The day the fruit left the tree, as far as its condition tells; else the day it was eaten.
Date dayLotLeft(const LotCondition& fruit, Date eaten);

/// The crop year of that day; its calendar year while the hemisphere is unknown.
CropYear cropYearOfLot(const LotCondition& fruit, Date eaten, Hemisphere half);

} // namespace pipwright
