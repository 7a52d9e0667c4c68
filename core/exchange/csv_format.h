#pragma once

#include <cstddef>

namespace pipwright {

/// How a table of plain text is cut into cells (RFC 4180), and how much of it one cell may be.
struct CsvFormat {
    char delimiter = ',';
    /// Takes a quote inside an unquoted cell as an ordinary character, which RFC 4180 forbids but
    /// strangers' tables hold (5" pot).
    bool quotesInside = false;
    std::size_t cellLimit = std::size_t{16} << 20U;   ///< bytes of one cell
    std::size_t recordLimit = std::size_t{64} << 20U; ///< bytes of one record
};

} // namespace pipwright
