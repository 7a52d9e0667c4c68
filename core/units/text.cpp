#include "core/units/text.h"

#include "core/units/digits.h"

#include <cstdint>

namespace pipwright {

namespace {

struct Decoded {
    char32_t character = 0;
    std::size_t length = 1;
    bool good = false;
};

bool continues(char byte) {
    return (static_cast<std::uint8_t>(byte) & 0xC0U) == 0x80U;
}

/// The character that starts at the front of a text that is not empty.
Decoded decodeFront(std::string_view text) {
    const auto lead = static_cast<std::uint8_t>(text.front());
    if (lead < 0x80) {
        return {lead, 1, true};
    }
    const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || text.size() < length) {
        return {};
    }
    char32_t character = lead & (0xFFU >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        if (!continues(text[i])) {
            return {};
        }
        character = (character << 6U) | (static_cast<std::uint8_t>(text[i]) & 0x3FU);
    }
    const bool overlong =
        (length == 3 && character < 0x800) || (length == 4 && character < 0x10000);
    const bool surrogate = character >= 0xD800 && character <= 0xDFFF;
    if (overlong || surrogate || character > 0x10FFFF) {
        return {};
    }
    return {character, length, true};
}

void appendUtf8(std::string& text, char32_t character) {
    const auto add = [&text](char32_t byte) { text += static_cast<char>(byte); };
    if (character < 0x80) {
        add(character);
    } else if (character < 0x800) {
        add(0xC0U | (character >> 6U));
        add(0x80U | (character & 0x3FU));
    } else if (character < 0x10000) {
        add(0xE0U | (character >> 12U));
        add(0x80U | ((character >> 6U) & 0x3FU));
        add(0x80U | (character & 0x3FU));
    } else {
        add(0xF0U | (character >> 18U));
        add(0x80U | ((character >> 12U) & 0x3FU));
        add(0x80U | ((character >> 6U) & 0x3FU));
        add(0x80U | (character & 0x3FU));
    }
}

/// The base letter of each character of a block of Unicode; a blank where there is no single one.
struct LetterBlock {
    char32_t first;
    std::string_view letters;
};

// From the canonical decompositions of the Unicode character database, and the stroked letters,
// which have none, by their look.
constexpr LetterBlock kBlocks[] = {
    {0x00C0, "aaaaaa ceeeeiiiidnoooooxouuuuy  aaaaaa ceeeeiiiidnooooo ouuuuy y"
             "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiiiiijjkkklllllll"
             "lllnnnnnnnnnoooooo  rrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs"},
    {0x01CD, "aaiioouuuuuuuuuu aaaa    ggkkoooo  jdddgg  nnaa    aaaaeeeeiiiio"
             "ooorrrruuuusstt  hh      aaeeooooooooyy"},
    {0x1E00, "aabbbbbbccddddddddddeeeeeeeeeeffgghhhhhhhhhhiiiikkkkkkllllllllmm"
             "mmmmnnnnnnnnoooooooopppprrrrrrrrssssssssssttttttttuuuuuuuuuuvvvv"
             "wwwwwwwwwwxxxxyyzzzzzzhtwyas    aaaaaaaaaaaaaaaaaaaaaaaaeeeeeeee"
             "eeeeeeeeiiiioooooooooooooooooooooooouuuuuuuuuuuuuuyyyyyyyy"},
};

std::string_view pairOfLetters(char32_t character) {
    switch (character) {
    case 0xC6:
    case 0xE6:
        return "ae";
    case 0xDE:
    case 0xFE:
        return "th";
    case 0xDF:
    case 0x1E9E:
        return "ss";
    case 0x132:
    case 0x133:
        return "ij";
    case 0x152:
    case 0x153:
        return "oe";
    default:
        return {};
    }
}

std::optional<char> plainMark(char32_t character) {
    switch (character) {
    case '\t':
    case '\n':
    case '\v':
    case '\f':
    case '\r':
    case 0xA0:   // no-break space
    case 0x2007: // figure space
    case 0x2009: // thin space
    case 0x202F: // narrow no-break space
        return ' ';
    case 0x2018:
    case 0x2019:
    case 0x02BC:
        return '\'';
    case 0x201C:
    case 0x201D:
        return '"';
    case 0x2010:
    case 0x2011:
    case 0x2012:
    case 0x2013:
    case 0x2014:
        return '-';
    default:
        return std::nullopt;
    }
}

char32_t lowerOfOtherScripts(char32_t character) {
    const bool greek = character >= 0x391 && character <= 0x3A9 && character != 0x3A2;
    const bool cyrillic = character >= 0x410 && character <= 0x42F;
    if (greek || cyrillic) {
        return character + 0x20;
    }
    if (character >= 0x400 && character <= 0x40F) {
        return character + 0x50;
    }
    return character;
}

bool isCombiningMark(char32_t character) {
    return character >= 0x300 && character <= 0x36F;
}

void appendFolded(std::string& folded, char32_t character) {
    if (character >= 'A' && character <= 'Z') {
        folded += static_cast<char>(character - 'A' + 'a');
        return;
    }
    if (isCombiningMark(character)) {
        return;
    }
    if (const auto mark = plainMark(character)) {
        folded += *mark;
        return;
    }
    if (const auto letters = pairOfLetters(character); !letters.empty()) {
        folded += letters;
        return;
    }
    for (const auto& block : kBlocks) {
        const bool inside =
            character >= block.first && character < block.first + block.letters.size();
        if (inside && block.letters[character - block.first] != ' ') {
            folded += block.letters[character - block.first];
            return;
        }
    }
    appendUtf8(folded, lowerOfOtherScripts(character));
}

std::string withSingleBlanks(std::string_view text) {
    std::string result;
    result.reserve(text.size());
    for (const char c : text) {
        if (c != ' ' || (!result.empty() && result.back() != ' ')) {
            result += c;
        }
    }
    if (!result.empty() && result.back() == ' ') {
        result.pop_back();
    }
    return result;
}

/// A number so written that its bytes sort by value: the digit zero as a sign that a number
/// follows, how many digits it has, and the digits. No other character of a key is a digit.
void appendNumberKey(std::string& key, std::string_view digits) {
    while (!digits.empty() && digits.front() == '0') {
        digits.remove_prefix(1);
    }
    key += '0';
    key.append(digits.size() / 255, '\xFF');
    key += static_cast<char>(digits.size() % 255);
    key += digits;
}

/// The length of the blank at the front of the text, 0 if it does not start with one.
std::size_t blankAtFront(std::string_view text) {
    const Decoded front = decodeFront(text);
    if (!front.good) {
        return 0;
    }
    const bool blank = front.character == ' ' || plainMark(front.character) == ' ';
    return blank ? front.length : 0;
}

std::size_t blankAtBack(std::string_view text) {
    std::size_t start = text.size() - 1;
    while (start > 0 && text.size() - start < 4 && continues(text[start])) {
        --start;
    }
    const std::size_t length = blankAtFront(text.substr(start));
    return length == text.size() - start ? length : 0;
}

} // namespace

std::string_view trimmed(std::string_view text) {
    while (!text.empty()) {
        const std::size_t length = blankAtFront(text);
        if (length == 0) {
            break;
        }
        text.remove_prefix(length);
    }
    while (!text.empty()) {
        const std::size_t length = blankAtBack(text);
        if (length == 0) {
            break;
        }
        text.remove_suffix(length);
    }
    return text;
}

std::vector<std::string_view> split(std::string_view text, char separator) {
    std::vector<std::string_view> parts;
    while (true) {
        const std::size_t at = text.find(separator);
        parts.push_back(text.substr(0, at));
        if (at == std::string_view::npos) {
            return parts;
        }
        text.remove_prefix(at + 1);
    }
}

std::optional<std::size_t> firstBadUtf8(std::string_view text) {
    std::size_t at = 0;
    while (at < text.size()) {
        const Decoded next = decodeFront(text.substr(at));
        if (!next.good) {
            return at;
        }
        at += next.length;
    }
    return std::nullopt;
}

std::size_t characterCount(std::string_view text) {
    std::size_t count = 0;
    while (!text.empty()) {
        text.remove_prefix(decodeFront(text).length);
        ++count;
    }
    return count;
}

std::string foldedForSearch(std::string_view text) {
    std::string folded;
    folded.reserve(text.size());
    while (!text.empty()) {
        const Decoded next = decodeFront(text);
        if (next.good) {
            appendFolded(folded, next.character);
        } else {
            folded += text.front();
        }
        text.remove_prefix(next.length);
    }
    return withSingleBlanks(folded);
}

std::string naturalSortKey(std::string_view text) {
    const std::string folded = foldedForSearch(text);
    std::string key;
    key.reserve(folded.size() + 8);
    for (std::size_t at = 0; at < folded.size();) {
        std::size_t end = at;
        while (end < folded.size() && isDigit(folded[end])) {
            ++end;
        }
        if (end > at) {
            appendNumberKey(key, std::string_view{folded}.substr(at, end - at));
            at = end;
        } else {
            key += folded[at++];
        }
    }
    return key;
}

std::strong_ordering naturalOrder(std::string_view left, std::string_view right) {
    const std::strong_ordering byKey = naturalSortKey(left) <=> naturalSortKey(right);
    return std::is_neq(byKey) ? byKey : left <=> right;
}

} // namespace pipwright
