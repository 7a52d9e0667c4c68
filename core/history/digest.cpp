#include "core/history/digest.h"

#include "core/units/sha256.h"

namespace pipwright {

namespace {

std::array<std::uint32_t, 8> hashOf(const Record& record) {
    std::string bytes(nameOf(record.kind));
    bytes += '\n';
    bytes += record.id.text();
    bytes += '\n';
    bytes += asJson(record);
    const auto hash = sha256(bytes);
    std::array<std::uint32_t, 8> words{};
    for (std::size_t i = 0; i < hash.size(); ++i) {
        words[i / 4] |= static_cast<std::uint32_t>(hash[i]) << (8 * (i % 4));
    }
    return words;
}

} // namespace

void Digest::add(const Record& record) {
    const auto words = hashOf(record);
    std::uint64_t carry = 0;
    for (std::size_t i = 0; i < m_sum.size(); ++i) {
        carry += std::uint64_t{m_sum[i]} + words[i];
        m_sum[i] = static_cast<std::uint32_t>(carry);
        carry >>= 32U;
    }
}

void Digest::remove(const Record& record) {
    const auto words = hashOf(record);
    std::uint64_t borrow = 0;
    for (std::size_t i = 0; i < m_sum.size(); ++i) {
        const std::uint64_t difference = std::uint64_t{m_sum[i]} - words[i] - borrow;
        m_sum[i] = static_cast<std::uint32_t>(difference);
        borrow = (difference >> 32U) & 1U;
    }
}

std::string Digest::text() const {
    std::array<std::uint8_t, 32> bytes{};
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        bytes[i] = static_cast<std::uint8_t>(m_sum[i / 4] >> (8 * (i % 4)));
    }
    return hexOf(bytes);
}

} // namespace pipwright
