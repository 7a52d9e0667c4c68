#pragma once

#include "core/history/store.h"

namespace pipwright::sample {

/// Fills an empty book with the sample orchard: the Vennick valley from March 2013 to the morning
/// of 22 August 2026, edit by edit. Always the same.
Outcome makeOrchard(Store& store);

/// The copy of the book its journal is written in.
Uuid sampleCopy();

} // namespace pipwright::sample
