#include "core/units/uuid.h"

#include <algorithm>
#include <chrono>
#include <random>

namespace pipwright {

namespace {

constexpr std::string_view kBase32 = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
constexpr std::string_view kHex = "0123456789abcdef";

std::optional<unsigned> digitIn(std::string_view alphabet, char c) {
    const auto at = alphabet.find(c);
    if (at == std::string_view::npos) {
        return std::nullopt;
    }
    return static_cast<unsigned>(at);
}

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}
char upper(char c) {
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

std::uint64_t fnv1a(std::string_view words, std::uint64_t basis) {
    std::uint64_t hash = basis;
    for (const char c : words) {
        hash ^= static_cast<std::uint8_t>(c);
        hash *= 0x100000001b3ULL;
    }
    return hash;
}

void stamp(Uuid& uuid, unsigned version) {
    uuid.bytes[6] = static_cast<std::uint8_t>((uuid.bytes[6] & 0x0FU) | (version << 4U));
    uuid.bytes[8] = static_cast<std::uint8_t>((uuid.bytes[8] & 0x3FU) | 0x80U);
}

} // namespace

bool Uuid::isNil() const {
    return std::all_of(bytes.begin(), bytes.end(), [](std::uint8_t b) { return b == 0; });
}

std::string Uuid::text() const {
    std::string result;
    result.reserve(36);
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        if (i == 4 || i == 6 || i == 8 || i == 10) {
            result += '-';
        }
        result += kHex[bytes[i] >> 4U];
        result += kHex[bytes[i] & 0x0FU];
    }
    return result;
}

std::string Uuid::labelCode() const {
    std::string result;
    result.reserve(26);
    unsigned buffer = 0;
    unsigned bits = 0;
    for (const std::uint8_t byte : bytes) {
        buffer = (buffer << 8U) | byte;
        bits += 8;
        while (bits >= 5) {
            bits -= 5;
            result += kBase32[(buffer >> bits) & 0x1FU];
        }
    }
    result += kBase32[(buffer << (5 - bits)) & 0x1FU];
    return result;
}

std::optional<Uuid> Uuid::fromText(std::string_view text) {
    if (text.size() != 36) {
        return std::nullopt;
    }
    Uuid uuid;
    std::size_t half = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool dash = i == 8 || i == 13 || i == 18 || i == 23;
        if (dash) {
            if (text[i] != '-') {
                return std::nullopt;
            }
            continue;
        }
        const auto digit = digitIn(kHex, lower(text[i]));
        if (!digit) {
            return std::nullopt;
        }
        auto& byte = uuid.bytes[half / 2];
        byte = static_cast<std::uint8_t>((byte << 4U) | *digit);
        ++half;
    }
    return uuid;
}

std::optional<Uuid> Uuid::fromLabelCode(std::string_view code) {
    while (!code.empty() && (code.front() == ' ' || code.front() == '\t')) {
        code.remove_prefix(1);
    }
    while (!code.empty() && (code.back() == ' ' || code.back() == '\t')) {
        code.remove_suffix(1);
    }
    if (code.size() != 26) {
        return std::nullopt;
    }
    Uuid uuid;
    unsigned buffer = 0;
    unsigned bits = 0;
    std::size_t at = 0;
    for (const char c : code) {
        const auto digit = digitIn(kBase32, upper(c));
        if (!digit) {
            return std::nullopt;
        }
        buffer = (buffer << 5U) | *digit;
        bits += 5;
        if (bits >= 8) {
            bits -= 8;
            uuid.bytes[at++] = static_cast<std::uint8_t>(buffer >> bits);
        }
    }
    if ((buffer & ((1U << bits) - 1U)) != 0) {
        return std::nullopt; // the two spare bits of the last character must be zero
    }
    return uuid;
}

Uuid Uuid::named(std::string_view words) {
    const std::uint64_t high = fnv1a(words, 0xcbf29ce484222325ULL);
    const std::uint64_t low = fnv1a(words, high ^ 0x9e3779b97f4a7c15ULL);
    Uuid uuid;
    for (std::size_t i = 0; i < 8; ++i) {
        uuid.bytes[i] = static_cast<std::uint8_t>(high >> (56 - 8 * i));
        uuid.bytes[8 + i] = static_cast<std::uint8_t>(low >> (56 - 8 * i));
    }
    stamp(uuid, 8);
    return uuid;
}

UuidMaker::UuidMaker()
    : m_state((static_cast<std::uint64_t>(std::random_device{}()) << 32U) | std::random_device{}()),
      m_clock([] {
          using namespace std::chrono;
          return static_cast<std::int64_t>(
              duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count());
      }) {}

UuidMaker::UuidMaker(std::uint64_t seed, Clock clock) : m_state(seed), m_clock(std::move(clock)) {}

std::uint64_t UuidMaker::nextRandom() {
    // SplitMix64 (Steele, Lea and Flood 2014): enough to keep two books apart, and repeatable.
    m_state += 0x9e3779b97f4a7c15ULL;
    std::uint64_t z = m_state;
    z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27U)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31U);
}

Uuid UuidMaker::make() {
    const std::int64_t now = m_clock();
    if (now > m_lastMoment) {
        m_lastMoment = now;
        m_counter = 0;
    } else if (++m_counter == 0x1000) { // the counter's 12 bits are used up: borrow from the future
        ++m_lastMoment;
        m_counter = 0;
    }
    Uuid uuid;
    for (std::size_t i = 0; i < 6; ++i) {
        uuid.bytes[i] = static_cast<std::uint8_t>(m_lastMoment >> (40 - 8 * i));
    }
    uuid.bytes[6] = static_cast<std::uint8_t>(m_counter >> 8U);
    uuid.bytes[7] = static_cast<std::uint8_t>(m_counter);
    const std::uint64_t tail = nextRandom();
    for (std::size_t i = 0; i < 8; ++i) {
        uuid.bytes[8 + i] = static_cast<std::uint8_t>(tail >> (56 - 8 * i));
    }
    stamp(uuid, 7);
    return uuid;
}

} // namespace pipwright
