#pragma once

#include "core/exchange/print/micrometres.h"
#include "core/units/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace pipwright {

/// A QR code (ISO/IEC 18004, model 2) as a square of modules, without its quiet zone.
struct QrCode {
    std::string text;         ///< what a reader will say
    int modules = 0;          ///< modules along one side: 25 for version 2
    std::vector<bool> isDark; ///< row by row from the top left

    [[nodiscard]] bool dark(int row, int column) const {
        const auto side = static_cast<std::size_t>(modules);
        return isDark[static_cast<std::size_t>(row) * side + static_cast<std::size_t>(column)];
    }
    bool operator==(const QrCode&) const = default;
};

/// The empty border a reader needs around the modules.
inline constexpr int kQuietModules = 4;
/// Version 2 has 25 modules a side; with the quiet zone 33, so 16.5 mm at 0.5 mm a module.
inline constexpr int kLabelCodeModules = 25;

/// The side of a label's code with its quiet zone.
constexpr Micrometres labelCodeSide(Micrometres module) {
    return module * (kLabelCodeModules + 2 * kQuietModules);
}

/// Encodes text as version 2, error level Q (a quarter of the code may be damaged), in the
/// alphanumeric mode: digits, capitals, blank and $%*+-./: only, at most 29 of them.
/// badInput when the text does not fit or holds another character.
Result<QrCode> makeQrCode(std::string_view text);

/// As makeQrCode, for a plant's label code; badInput unless it is one (26 base-32 capitals).
Result<QrCode> makeLabelQrCode(std::string_view labelCode);

} // namespace pipwright
