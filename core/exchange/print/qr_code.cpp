#include "core/exchange/print/qr_code.h"

#include "core/units/uuid.h"

#include <memory>
#include <zint.h>

namespace pipwright {

namespace {

constexpr std::string_view kAlphanumeric = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";
constexpr int kVersion = 2;
constexpr int kLevelQ = 3; // the library counts L, M, Q, H from 1

struct SymbolEnd {
    void operator()(zint_symbol* symbol) const { ZBarcode_Delete(symbol); }
};

bool isDarkIn(const zint_symbol& symbol, int row, int column) {
    const unsigned byte = symbol.encoded_data[row][column / 8];
    return ((byte >> static_cast<unsigned>(column % 8)) & 1U) != 0;
}

} // namespace

Result<QrCode> makeQrCode(std::string_view text) {
    if (text.empty() || text.find_first_not_of(kAlphanumeric) != std::string_view::npos) {
        return Problem{ProblemCode::badInput,
                       "\"" + std::string(text) + "\" cannot be written as a code.",
                       "Use digits, capital letters, blanks and $%*+-./: only.", ""};
    }
    const std::unique_ptr<zint_symbol, SymbolEnd> symbol(ZBarcode_Create());
    if (!symbol) {
        return Problem{ProblemCode::internal, "There was no memory for drawing a code.",
                       "Close other programs and print again.", ""};
    }
    symbol->symbology = BARCODE_QRCODE;
    symbol->option_1 = kLevelQ;
    symbol->option_2 = kVersion;
    const std::string copy(text);
    const int fault =
        ZBarcode_Encode(symbol.get(), reinterpret_cast<const unsigned char*>(copy.data()),
                        static_cast<int>(copy.size()));
    if (fault >= ZINT_ERROR || symbol->rows != kLabelCodeModules ||
        symbol->width != kLabelCodeModules) {
        return Problem{ProblemCode::badInput,
                       "\"" + copy + "\" is too long for a code of 25 by 25 modules.",
                       "Use at most 29 characters.", ""};
    }
    QrCode code{copy, kLabelCodeModules, {}};
    constexpr std::size_t kAll = kLabelCodeModules * kLabelCodeModules;
    code.isDark.reserve(kAll);
    for (int row = 0; row < kLabelCodeModules; ++row) {
        for (int column = 0; column < kLabelCodeModules; ++column) {
            code.isDark.push_back(isDarkIn(*symbol, row, column));
        }
    }
    return code;
}

Result<QrCode> makeLabelQrCode(std::string_view labelCode) {
    const auto plant = Uuid::fromLabelCode(labelCode);
    if (!plant || plant->labelCode() != labelCode) {
        return Problem{ProblemCode::badInput,
                       "\"" + std::string(labelCode) + "\" is not the label code of a plant.",
                       "Print the label from the plant in the book.", ""};
    }
    return makeQrCode(labelCode);
}

} // namespace pipwright
