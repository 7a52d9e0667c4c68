#include "core/pedigree/purdy.h"
#include "tests/fuzz/must.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

using pipwright::readPurdy;
using pipwright::writePurdy;
using pipwright::fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view input(reinterpret_cast<const char*>(data), size);
    const auto read = readPurdy(input);
    if (!read) {
        must(!read.problem().what.empty() && !read.problem().remedy.empty(),
             "a line that cannot be read is answered with what is wrong and what to do");
        return 0;
    }
    const std::string line = writePurdy(*read);
    const auto again = readPurdy(line);
    must(again.ok(), "what was written can be read");
    must(*again == *read, "what was written says the same descent");
    return 0;
}
