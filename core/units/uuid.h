#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace pipwright {

/// The name of a thing outside the book: 16 bytes, time-ordered when we make it
/// (RFC 9562, version 7), so that copies of a book made apart can meet again.
struct Uuid {
    std::array<std::uint8_t, 16> bytes{};

    auto operator<=>(const Uuid&) const = default;

    /// All bytes zero: what a thing has before it is given a name.
    [[nodiscard]] bool isNil() const;
    /// "018f2a3c-...": 36 lower-case characters (RFC 9562, section 4).
    [[nodiscard]] std::string text() const;
    /// 26 capital base-32 characters (RFC 4648 alphabet, no padding): the label code.
    [[nodiscard]] std::string labelCode() const;

    /// Reads text(); any letter case. Nothing for anything else.
    static std::optional<Uuid> fromText(std::string_view text);
    /// Reads labelCode(); any letter case, surrounding blanks ignored.
    static std::optional<Uuid> fromLabelCode(std::string_view code);
    /// A name that is always the same for the same words (for what ships with the program):
    /// version 8 of RFC 9562, from the FNV-1a hash of the words.
    static Uuid named(std::string_view words);
};

/// Makes time-ordered names. Give it a fixed seed and clock to make a book that is always the same.
class UuidMaker {
  public:
    /// Milliseconds since 1970-01-01 UTC.
    using Clock = std::function<std::int64_t()>;

    /// Random seed and the system's clock.
    UuidMaker();
    UuidMaker(std::uint64_t seed, Clock clock);

    /// A fresh name, greater than every earlier one of this maker.
    Uuid make();

  private:
    std::uint64_t nextRandom();

    std::uint64_t m_state;
    Clock m_clock;
    std::int64_t m_lastMoment = 0;
    std::uint16_t m_counter = 0;
};

} // namespace pipwright

template <>
struct std::hash<pipwright::Uuid> {
    std::size_t operator()(const pipwright::Uuid& uuid) const noexcept {
        // The low bytes of a time-ordered name are random: any eight of them will do.
        std::size_t mixed = 0;
        for (std::size_t i = 8; i < 16; ++i) {
            mixed = (mixed << 8U) | uuid.bytes[i];
        }
        return mixed ^ (static_cast<std::size_t>(uuid.bytes[6]) << 8U) ^ uuid.bytes[7];
    }
};
