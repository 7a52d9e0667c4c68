#include "core/units/sha256.h"

#include <sha2.h> // libmd

namespace pipwright {

std::array<std::uint8_t, 32> sha256(std::string_view bytes) {
    SHA2_CTX context;
    SHA256Init(&context);
    SHA256Update(&context, reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
    std::array<std::uint8_t, 32> hash{};
    SHA256Final(hash.data(), &context);
    return hash;
}

std::string hexOf(const std::array<std::uint8_t, 32>& hash) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    text.reserve(64);
    for (const std::uint8_t byte : hash) {
        text += digits[byte >> 4U];
        text += digits[byte & 0x0FU];
    }
    return text;
}

} // namespace pipwright
