#include "core/exchange/archive.h"
#include "core/history/memory_store.h"
#include "core/store/orchard_book.h"

#include <charconv>
#include <cstdio>
#include <string>
#include <string_view>
#include <vector>

#include "sample-data/generator/large_book.h"
#include "sample-data/generator/sample_orchard.h"

namespace {

constexpr int kUsage = 2;

int fail(const pipwright::Problem& problem) {
    std::fprintf(stderr, "make_sample: %s\n", problem.sentence().c_str());
    return 1;
}

int usage() {
    std::fputs(
        "make_sample orchard DIR                                the sample orchard, as a "
        "plain archive\n"
        "make_sample large BOOK [--trees N] [--scores N]        a large book for measuring\n",
        stderr);
    return kUsage;
}

int makeOrchardArchive(const std::string& folder) {
    pipwright::MemoryStore store(pipwright::sample::sampleCopy());
    if (auto outcome = pipwright::sample::makeOrchard(store); !outcome) {
        return fail(outcome.problem());
    }
    const auto report = pipwright::writeArchive(store, folder);
    if (!report) {
        return fail(report.problem());
    }
    std::printf("%lld records, %lld entries, %lld photos, %lld bytes\n",
                static_cast<long long>(report->records), static_cast<long long>(report->entries),
                static_cast<long long>(report->photos), static_cast<long long>(report->bytes));
    return 0;
}

int makeLarge(const std::string& file, const pipwright::sample::LargeBook& wanted) {
    auto book = pipwright::createBook(file);
    if (!book) {
        return fail(book.problem());
    }
    if (auto outcome = pipwright::sample::makeLargeBook(**book, wanted); !outcome) {
        return fail(outcome.problem());
    }
    return 0;
}

bool readNumber(std::string_view text, std::int64_t& number) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc{} && end == text.data() + text.size() && number >= 0;
}

} // namespace

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    if (words.size() == 2 && words[0] == "orchard") {
        return makeOrchardArchive(words[1]);
    }
    if (words.size() < 2 || words[0] != "large") {
        return usage();
    }
    pipwright::sample::LargeBook wanted;
    for (std::size_t i = 2; i < words.size(); i += 2) {
        const bool known = words[i] == "--trees" || words[i] == "--scores";
        std::int64_t& number = words[i] == "--trees" ? wanted.trees : wanted.scores;
        if (!known || i + 1 == words.size() || !readNumber(words[i + 1], number)) {
            return usage();
        }
    }
    return makeLarge(words[1], wanted);
}
