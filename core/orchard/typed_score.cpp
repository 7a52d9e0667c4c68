#include "core/orchard/typed_score.h"

#include "core/units/digits.h"
#include "core/units/text.h"

#include <array>
#include <cmath>
#include <utility>

namespace pipwright {

namespace {

constexpr double kLeast = 1;
constexpr double kMost = 9;

constexpr std::array<std::pair<Verdict, std::string_view>, 7> kMarks = {{
    {Verdict::cull, "x"},
    {Verdict::noReasonToKeep, "-"},
    {Verdict::again, "?"},
    {Verdict::watch, "+"},
    {Verdict::backUpNow, "++"},
    {Verdict::parentOnly, "P"},
    {Verdict::nameTalk, "N"},
}};

/// Takes the first word off the text.
std::string_view firstWord(std::string_view& text) {
    text = trimmed(text);
    const std::size_t end = std::min(text.find_first_of(" \t"), text.size());
    const std::string_view word = text.substr(0, end);
    text = trimmed(text.substr(end));
    return word;
}

/// Without the comma or full stop that ends a number in a sentence ("7, crisp").
std::string_view withoutStop(std::string_view word) {
    while (!word.empty() &&
           (word.back() == ',' || word.back() == ';' || word.back() == '.' || word.back() == ':')) {
        word.remove_suffix(1);
    }
    return word;
}

std::optional<double> numberIn(std::string_view word) {
    double whole = 0;
    std::size_t at = 0;
    for (; at < word.size() && isDigit(word[at]) && at < 4; ++at) {
        whole = whole * 10 + (word[at] - '0');
    }
    const std::string_view rest = word.substr(at);
    if (rest.empty()) {
        return whole;
    }
    if (rest == "h" || rest == "H" || rest == "½") {
        return whole + 0.5;
    }
    if (rest.size() < 2 || (rest[0] != '.' && rest[0] != ',')) {
        return std::nullopt;
    }
    double part = 0;
    double unit = 1;
    for (const char c : rest.substr(1)) {
        if (!isDigit(c)) {
            return std::nullopt;
        }
        unit /= 10;
        part += unit * (c - '0');
    }
    return whole + part;
}

Problem noLiking(std::string_view word, const std::string& why) {
    return {ProblemCode::badInput,
            "\"" + std::string(word) + "\" " + why,
            "Liking goes from 1 to 9 in halves: type 7, 7.5 or 7h; words come behind it.",
            {}};
}

std::optional<Verdict> verdictMarked(std::string_view word) {
    for (const auto& [verdict, mark] : kMarks) {
        const bool capitalCross = verdict == Verdict::cull && word == "X";
        if (word == mark || capitalCross) {
            return verdict;
        }
    }
    return std::nullopt;
}

} // namespace

Result<TypedScore> readTypedScore(std::string_view typed) {
    TypedScore score;
    std::string_view rest = trimmed(typed);
    if (!rest.empty() && isDigit(rest.front())) {
        const std::string_view word = withoutStop(firstWord(rest));
        const auto number = numberIn(word);
        if (!number) {
            return noLiking(word, "is no liking.");
        }
        if (*number < kLeast || *number > kMost) {
            return noLiking(word, "is outside the scale.");
        }
        if (std::abs(*number * 2 - std::round(*number * 2)) > 1e-9) {
            return noLiking(word, "lies between the halves.");
        }
        score.liking = std::round(*number * 2) / 2;
    }
    std::string_view behind = rest;
    if (const auto verdict = verdictMarked(firstWord(behind))) {
        score.verdict = *verdict;
        rest = behind;
    }
    score.words = std::string(rest);
    return score;
}

std::string_view markOf(Verdict verdict) {
    for (const auto& [one, mark] : kMarks) {
        if (one == verdict) {
            return mark;
        }
    }
    return {};
}

std::string typedText(const TypedScore& score) {
    std::string text;
    const auto add = [&text](std::string_view part) {
        if (!part.empty()) {
            text += text.empty() ? "" : " ";
            text += part;
        }
    };
    if (score.liking) {
        const auto halves = static_cast<long>(std::lround(*score.liking * 2));
        add(std::to_string(halves / 2) + (halves % 2 == 0 ? "" : ".5"));
    }
    add(markOf(score.verdict));
    add(score.words);
    return text;
}

} // namespace pipwright
