#pragma once

#include <chrono>
#include <cstdint>
#include <functional>

namespace pipwright::test {

/// Tells the parent how far the child has come.
using Report = std::function<void(std::int64_t)>;

/// What became of a child.
struct Ended {
    bool wasKilled = false;    ///< false: it was done before
    std::int64_t reported = 0; ///< the last it told
};

/// Runs the work in a process of its own and kills it (SIGKILL: nothing is flushed, no destructor
/// runs) when the time is over, counted from its first report. The work ends well or the child
/// exits with an error, which fails the test.
Ended runAndKill(std::chrono::microseconds after, const std::function<bool(const Report&)>& work);

/// How many kills there are to be altogether (PIPWRIGHT_KILLS, else 200).
int killsWanted();

} // namespace pipwright::test
