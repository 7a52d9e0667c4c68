#include "core/exchange/print/paper_words.h"

namespace pipwright {

std::string filledIn(const std::string& pattern, const std::string& first,
                     const std::string& second) {
    std::string text;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        const bool isPlace = pattern[i] == '%' && i + 1 < pattern.size() &&
                             (pattern[i + 1] == '1' || pattern[i + 1] == '2');
        if (!isPlace) {
            text += pattern[i];
            continue;
        }
        ++i;
        text += pattern[i] == '1' ? first : second;
    }
    return text;
}

} // namespace pipwright
