#pragma once

#include "core/history/change.h"

#include <functional>
#include <unordered_map>
#include <vector>

namespace pipwright {

/// Reads the record that stands in the book now; nothing when there is none.
using RecordReader = std::function<Result<std::optional<Record>>(Kind, const Uuid&)>;

/// The records a change set touches as they stand after it; nothing for those it takes away.
using RecordsAfter = std::unordered_map<Uuid, std::optional<Record>>;

/// What every store asks of a change set before it writes a row: each `before` still holds, each
/// value fits its field, each reference leads to a record of the right kind. Whether an erased
/// record is still referred to is left to the store.
Result<RecordsAfter> checkChanges(const std::vector<Change>& changes, const RecordReader& read);

} // namespace pipwright
