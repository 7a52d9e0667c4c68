#pragma once

#include "core/history/memory_store.h"

#include <gtest/gtest.h>
#include <map>
#include <string>
#include <vector>

#include "sample-data/generator/sample_orchard.h"

namespace pipwright {

/// The sample orchard, made once for all tests of the program.
inline const MemoryStore& sampleBook() {
    static const MemoryStore* const store = [] {
        auto* made = new MemoryStore(sample::sampleCopy());
        const auto outcome = sample::makeOrchard(*made);
        EXPECT_TRUE(outcome) << (outcome ? "" : outcome.problem().sentence());
        return made;
    }();
    return *store;
}

template <typename Thing>
std::vector<Thing> allOf() {
    auto things = sampleBook().all<Thing>();
    EXPECT_TRUE(things);
    return things ? *things : std::vector<Thing>{};
}

/// All records of a kind by their id.
template <typename Thing>
std::map<Id<Thing>, Thing> byId() {
    std::map<Id<Thing>, Thing> found;
    for (const Thing& thing : allOf<Thing>()) {
        found.emplace(thing.id, thing);
    }
    return found;
}

} // namespace pipwright
