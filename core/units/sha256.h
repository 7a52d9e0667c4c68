#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <string_view>

namespace pipwright {

/// SHA-256 (FIPS 180-4) of the bytes.
std::array<std::uint8_t, 32> sha256(std::string_view bytes);

/// SHA-256 of bytes that come piece by piece.
class Sha256 {
  public:
    Sha256();
    ~Sha256();
    Sha256(const Sha256&) = delete;
    Sha256& operator=(const Sha256&) = delete;

    void add(std::string_view bytes);
    /// The hash of all that was added; ends the work of this object.
    std::array<std::uint8_t, 32> finish();

  private:
    struct State;
    std::unique_ptr<State> m_state;
};

/// 64 lower-case hexadecimal digits.
std::string hexOf(const std::array<std::uint8_t, 32>& hash);

} // namespace pipwright
