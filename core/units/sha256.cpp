#include "core/units/sha256.h"

#include <sha2.h> // libmd

namespace pipwright {

struct Sha256::State {
    SHA2_CTX context;
};

Sha256::Sha256() : m_state(std::make_unique<State>()) {
    SHA256Init(&m_state->context);
}

Sha256::~Sha256() = default;

void Sha256::add(std::string_view bytes) {
    SHA256Update(&m_state->context, reinterpret_cast<const std::uint8_t*>(bytes.data()),
                 bytes.size());
}

std::array<std::uint8_t, 32> Sha256::finish() {
    std::array<std::uint8_t, 32> hash{};
    SHA256Final(hash.data(), &m_state->context);
    return hash;
}

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
