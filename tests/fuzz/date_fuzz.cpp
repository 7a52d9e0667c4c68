#include "core/season/date.h"
#include "tests/fuzz/must.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

using pipwright::Date;
using pipwright::fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view input(reinterpret_cast<const char*>(data), size);
    if (const auto date = Date::fromIso(input)) {
        must(date->iso() == input, "a date that was read is written the same");
        must(Date::of(date->year(), date->month(), date->day()) == date, "its parts make it again");
        must(Date::fromDays(date->days()) == *date, "its count of days makes it again");
    }
    return 0;
}
