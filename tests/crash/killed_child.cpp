#include "tests/crash/killed_child.h"

#include <array>
#include <csignal>
#include <cstdlib>
#include <cstring>
#include <gtest/gtest.h>
#include <poll.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace pipwright::test {

namespace {

[[noreturn]] void beChild(int pipe, const std::function<bool(const Report&)>& work) {
    const bool good = work([pipe](std::int64_t reached) {
        static_cast<void>(::write(pipe, &reached, sizeof reached) < 0);
    });
    ::_exit(good ? 0 : 3);
}

/// Reads what the child has told so far; waits for the first if asked to.
std::int64_t lastReport(int pipe, bool wait, std::int64_t before) {
    std::int64_t last = before;
    pollfd ready{pipe, POLLIN, 0};
    while (::poll(&ready, 1, wait ? 60'000 : 0) > 0) {
        std::int64_t reached = 0;
        if (::read(pipe, &reached, sizeof reached) != sizeof reached) {
            break;
        }
        last = reached;
        if (wait) {
            break;
        }
    }
    return last;
}

} // namespace

Ended runAndKill(std::chrono::microseconds after, const std::function<bool(const Report&)>& work) {
    std::array<int, 2> pipe{};
    EXPECT_EQ(::pipe(pipe.data()), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(pipe[0]);
        beChild(pipe[1], work);
    }
    ::close(pipe[1]);
    Ended ended;
    ended.reported = lastReport(pipe[0], true, 0);
    std::this_thread::sleep_for(after);
    ::kill(child, SIGKILL);
    int status = 0;
    EXPECT_EQ(::waitpid(child, &status, 0), child);
    ended.wasKilled = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
    EXPECT_TRUE(ended.wasKilled || (WIFEXITED(status) && WEXITSTATUS(status) == 0))
        << "the child failed by itself";
    ended.reported = lastReport(pipe[0], false, ended.reported);
    ::close(pipe[0]);
    return ended;
}

int killsWanted() {
    const char* wanted = std::getenv("PIPWRIGHT_KILLS");
    const int number = wanted == nullptr ? 0 : std::atoi(wanted);
    return number > 0 ? number : 200;
}

} // namespace pipwright::test
