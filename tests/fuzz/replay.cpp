// Stands in for libFuzzer where there is none: hands every seed to the target, and then damages of
// it that are the same in every run.
#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <random>
#include <string>
#include <string_view>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

using Bytes = std::vector<std::uint8_t>;

Bytes contentOf(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

/// One to four places overwritten, taken out, doubled, or cut off behind.
Bytes damaged(Bytes bytes, std::mt19937& random) {
    const auto below = [&random](std::size_t bound) { return random() % bound; };
    const std::size_t wounds = 1 + below(4);
    for (std::size_t wound = 0; wound < wounds && !bytes.empty(); ++wound) {
        const auto place = bytes.begin() + static_cast<std::ptrdiff_t>(below(bytes.size()));
        switch (below(5)) {
        case 0:
            *place = static_cast<std::uint8_t>(below(256));
            break;
        case 1:
            bytes.erase(place);
            break;
        case 2: {
            const std::uint8_t same = *place;
            bytes.insert(place, same);
            break;
        }
        case 3:
            *place = static_cast<std::uint8_t>("\"',;\n\r\t -"[below(9)]);
            break;
        default:
            bytes.erase(place, bytes.end());
            break;
        }
    }
    return bytes;
}

void hand(const Bytes& bytes) {
    LLVMFuzzerTestOneInput(bytes.data(), bytes.size());
}

} // namespace

int main(int argc, char** argv) {
    unsigned long damages = 0;
    std::vector<std::filesystem::path> seeds;
    for (int i = 1; i < argc; ++i) {
        const std::string_view word = argv[i];
        if (word == "--damages" && i + 1 < argc) {
            damages = std::strtoul(argv[++i], nullptr, 10);
        } else if (std::filesystem::is_directory(word)) {
            for (const auto& entry : std::filesystem::recursive_directory_iterator(word)) {
                if (entry.is_regular_file()) {
                    seeds.push_back(entry.path());
                }
            }
        } else if (std::filesystem::is_regular_file(word)) {
            seeds.emplace_back(word);
        }
    }
    if (seeds.empty()) {
        std::cerr << "usage: PROGRAM [--damages N] FILE-OR-FOLDER...; no seed was found\n";
        return 1;
    }
    std::sort(seeds.begin(), seeds.end());
    std::mt19937 random(20260822);
    for (const auto& seed : seeds) {
        const Bytes whole = contentOf(seed);
        std::cout << seed.filename().string() << ": " << whole.size() << " bytes" << std::endl;
        hand(whole);
        for (unsigned long i = 0; i < damages; ++i) {
            hand(damaged(whole, random));
        }
    }
    std::cout << seeds.size() << " seeds, each with " << damages << " damages\n";
    return 0;
}
