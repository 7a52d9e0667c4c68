#include "core/units/uuid.h"
#include "tests/fuzz/must.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

using pipwright::Uuid;
using pipwright::fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view input(reinterpret_cast<const char*>(data), size);
    if (const auto uuid = Uuid::fromText(input)) {
        must(uuid->text().size() == 36, "a name is 36 characters long");
        must(Uuid::fromText(uuid->text()) == uuid, "a name that was read is written the same");
        must(Uuid::fromLabelCode(uuid->labelCode()) == uuid, "its label code reads back");
    }
    if (const auto uuid = Uuid::fromLabelCode(input)) {
        must(uuid->labelCode().size() == 26, "a label code is 26 characters long");
        must(Uuid::fromLabelCode(uuid->labelCode()) == uuid,
             "a label code that was read is written the same");
    }
    return 0;
}
