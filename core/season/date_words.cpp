#include "core/season/date_words.h"

#include "core/units/digits.h"

#include <array>

namespace pipwright {

namespace {

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

constexpr std::array<std::string_view, 12> kMonthNames = {
    "January", "February", "March",     "April",   "May",      "June",
    "July",    "August",   "September", "October", "November", "December"};

struct MonthWord {
    std::string_view name; // folded, in full
    int month;
};

// Words are looked up by their beginning; no two months share one of three letters, except that
// "jui" (French) is June or July and is therefore not enough.
constexpr MonthWord kMonths[] = {
    {"january", 1},   {"januar", 1},    {"janner", 1},    {"janvier", 1},  {"february", 2},
    {"februar", 2},   {"fevrier", 2},   {"march", 3},     {"marz", 3},     {"maerz", 3},
    {"mars", 3},      {"mrz", 3},       {"april", 4},     {"avril", 4},    {"may", 5},
    {"mai", 5},       {"june", 6},      {"juni", 6},      {"juin", 6},     {"july", 7},
    {"juli", 7},      {"juillet", 7},   {"august", 8},    {"aout", 8},     {"september", 9},
    {"septembre", 9}, {"october", 10},  {"oktober", 10},  {"octobre", 10}, {"november", 11},
    {"novembre", 11}, {"december", 12}, {"dezember", 12}, {"decembre", 12}};

std::optional<int> monthOf(std::string_view word) {
    if (word.size() < 3 || word == "jui") {
        return std::nullopt;
    }
    for (const auto& month : kMonths) {
        if (month.name.substr(0, word.size()) == word) {
            return month.month;
        }
    }
    return std::nullopt;
}

struct PlainWord {
    std::string_view word;
    DateToken token;
};

constexpr PlainWord kWords[] = {
    {"w", {'w', 0}},      {"wk", {'w', 0}},       {"week", {'w', 0}},  {"kw", {'w', 0}},
    {"woche", {'w', 0}},  {"semaine", {'w', 0}},  {"early", {'p', 1}}, {"beginning", {'p', 1}},
    {"start", {'p', 1}},  {"anfang", {'p', 1}},   {"debut", {'p', 1}}, {"mid", {'p', 2}},
    {"middle", {'p', 2}}, {"mitte", {'p', 2}},    {"mi", {'p', 2}},    {"late", {'p', 3}},
    {"end", {'p', 3}},    {"ende", {'p', 3}},     {"fin", {'p', 3}},   {"last", {'l', 0}},
    {"letzte", {'l', 0}}, {"derniere", {'l', 0}}, {"first", {'n', 1}}, {"second", {'n', 2}},
    {"third", {'n', 3}},  {"fourth", {'n', 4}},   {"fifth", {'n', 5}}};

constexpr std::string_view kIgnored[] = {"of", "the", "de", "du", "der", "des", "im", "in", "d"};
constexpr std::string_view kOrdinalEndings[] = {"st", "nd", "rd", "th", "er", "e", "re", "eme"};

template <typename List>
bool isAmong(std::string_view word, const List& list) {
    for (const auto& one : list) {
        if (one == word) {
            return true;
        }
    }
    return false;
}

DateToken numberToken(std::string_view digits) {
    if (digits.size() != 4 && digits.size() > 2) {
        return {'x', 0};
    }
    int value = 0;
    for (const char c : digits) {
        value = value * 10 + (c - '0');
    }
    return {digits.size() == 4 ? 'y' : 'n', value};
}

DateToken wordToken(std::string_view word) {
    for (const auto& plain : kWords) {
        if (plain.word == word) {
            return plain.token;
        }
    }
    if (const auto month = monthOf(word)) {
        return {'m', *month};
    }
    return {'u', 0};
}

std::string_view takeWhile(std::string_view text, bool (*holds)(char)) {
    std::size_t length = 0;
    while (length < text.size() && holds(text[length])) {
        ++length;
    }
    return text.substr(0, length);
}

} // namespace

std::vector<DateToken> dateTokens(std::string_view folded) {
    std::vector<DateToken> tokens;
    bool afterNumber = false; // with no blank between
    while (!folded.empty()) {
        const char c = folded.front();
        const std::string_view piece = isDigit(c)    ? takeWhile(folded, isDigit)
                                       : isLetter(c) ? takeWhile(folded, isLetter)
                                                     : folded.substr(0, 1);
        folded.remove_prefix(piece.size());
        if (isDigit(c)) {
            tokens.push_back(numberToken(piece));
        } else if (isLetter(c)) {
            const bool ending = afterNumber && isAmong(piece, kOrdinalEndings);
            if (!ending && !isAmong(piece, kIgnored)) {
                tokens.push_back(wordToken(piece));
            }
        } else if (c == '-' || c == '.' || c == '/') {
            tokens.push_back({c, 0});
        } else if (c != ' ' && c != ',' && c != '\'') {
            tokens.push_back({'u', 0});
        }
        afterNumber = isDigit(c);
    }
    return tokens;
}

std::string patternOf(const std::vector<DateToken>& tokens) {
    std::string pattern;
    for (const auto& token : tokens) {
        pattern += token.kind;
    }
    return pattern;
}

std::optional<std::string_view> afterAbout(std::string_view folded) {
    constexpr std::string_view kAbout[] = {
        "~",   "\xE2\x89\x88", "about ",   "around ", "circa ",         "ca. ",
        "ca ", "c. ",          "approx. ", "approx ", "approximately ", "etwa ",
        "um ", "environ ",     "vers "};
    for (const auto word : kAbout) {
        if (folded.substr(0, word.size()) == word) {
            return folded.substr(word.size());
        }
    }
    return std::nullopt;
}

std::string_view monthName(int month) {
    return kMonthNames.at(static_cast<std::size_t>(month - 1));
}

} // namespace pipwright
