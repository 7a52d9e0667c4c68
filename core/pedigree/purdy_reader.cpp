#include "core/pedigree/purdy.h"
#include "core/pedigree/purdy_words.h"
#include "core/units/digits.h"
#include "core/units/text.h"

#include <algorithm>
#include <optional>
#include <span>
#include <vector>

namespace pipwright {

namespace {

/// A name, with how often it was used, or the sign of a cross.
struct Piece {
    bool isSign = false;
    int number = 1; ///< of the cross, or the doses of the name
    std::string name;
    bool quoted = false;
    std::size_t at = 0; ///< byte in the line
};

struct Fault {
    std::size_t at;
    std::string what;
    std::string remedy;
};

Fault faultAt(std::size_t at, std::string what, std::string remedy) {
    return {at, std::move(what), std::move(remedy)};
}

/// A number of one or two digits at the front of the text, which it is taken from.
std::optional<int> takeNumber(std::string_view& text) {
    int value = 0;
    std::size_t length = 0;
    while (length < text.size() && length < 2 && isDigit(text[length])) {
        value = value * 10 + (text[length] - '0');
        ++length;
    }
    if (length == 0) {
        return std::nullopt;
    }
    text.remove_prefix(length);
    return value;
}

/// Cuts a line into names and signs. Stops at the first fault.
class Cutter {
  public:
    explicit Cutter(std::string_view line) : m_line(line) {}

    void run() {
        while (!m_fault) {
            takeOperand();
            if (m_fault || m_at == m_line.size()) {
                return;
            }
            takeSign();
        }
    }

    [[nodiscard]] const std::optional<Fault>& fault() const { return m_fault; }
    [[nodiscard]] std::span<const Piece> pieces() const { return m_pieces; }

  private:
    [[nodiscard]] std::string_view rest() const { return m_line.substr(m_at); }
    void fail(std::size_t at, std::string what, std::string remedy) {
        m_fault = Fault{at, std::move(what), std::move(remedy)};
    }
    void skipBlanks() { m_at = m_line.size() - trimmedFront(rest()).size(); }
    static std::string_view trimmedFront(std::string_view text) {
        const std::string_view inner = trimmed(text);
        return inner.empty() ? inner
                             : text.substr(static_cast<std::size_t>(inner.data() - text.data()));
    }

    /// "/", "//", "///" or "/4/".
    void takeSign() {
        const std::size_t start = m_at;
        std::string_view after = rest().substr(1);
        Piece sign{true, 1, {}, false, start};
        const auto number = takeNumber(after);
        if (number && !after.empty() && after.front() == '/') {
            after.remove_prefix(1);
            sign.number = *number;
        } else {
            after = rest().substr(1);
            while (!after.empty() && after.front() == '/') {
                after.remove_prefix(1);
                ++sign.number;
            }
        }
        if (sign.number < 1 || sign.number > kLatestCross) {
            return fail(start, "A cross cannot have this number.",
                        "Number the crosses from the first: /, //, /3/, /4/.");
        }
        m_at = m_line.size() - after.size();
        m_pieces.push_back(std::move(sign));
    }

    /// A name with the stars before and after it.
    void takeOperand() {
        skipBlanks();
        Piece piece;
        piece.at = m_at;
        std::optional<int> before = takeDosesBefore();
        if (m_fault) {
            return;
        }
        skipBlanks();
        takeName(piece);
        if (m_fault) {
            return;
        }
        skipBlanks();
        const std::optional<int> after = takeDosesAfter();
        if (m_fault) {
            return;
        }
        if (before && after) {
            return fail(piece.at, "\"" + piece.name + "\" has a number of uses on both sides.",
                        "Keep one of the two.");
        }
        piece.number = before.value_or(after.value_or(1));
        if (piece.number < 1 || piece.number > kMostDoses) {
            return fail(piece.at,
                        "A parent cannot be used " + std::to_string(piece.number) + " times.",
                        "Type a number from 1 to " + std::to_string(kMostDoses) + ".");
        }
        skipBlanks();
        if (m_at < m_line.size() && m_line[m_at] != '/') {
            return fail(
                m_at, "A slash is missing before this.",
                "Part the parents by a slash, or put the whole name between double quotes.");
        }
        m_pieces.push_back(std::move(piece));
    }

    /// "3*" or "*3 " in front of a name.
    std::optional<int> takeDosesBefore() {
        std::string_view text = rest();
        if (!text.empty() && text.front() == '*') {
            text.remove_prefix(1);
            const auto number = takeNumber(text);
            const bool parted = !text.empty() && (text.front() == ' ' || text.front() == '"');
            if (!number || !parted) {
                fail(m_at, "A star must stand between a name and a number.",
                     "Type the uses as A*3/B or B/3*A.");
                return std::nullopt;
            }
            m_at = m_line.size() - text.size();
            return number;
        }
        const auto number = takeNumber(text);
        if (!number || text.empty() || text.front() != '*') {
            return std::nullopt;
        }
        m_at = m_line.size() - text.size() + 1;
        return number;
    }

    std::optional<int> takeDosesAfter() {
        if (m_at == m_line.size() || m_line[m_at] != '*') {
            return std::nullopt;
        }
        std::string_view text = trimmedFront(rest().substr(1));
        const auto number = takeNumber(text);
        if (!number || (!text.empty() && isDigit(text.front()))) {
            fail(m_at, "A number must follow the star.", "Type the uses as A*3/B or B/3*A.");
            return std::nullopt;
        }
        m_at = m_line.size() - text.size();
        return number;
    }

    void takeName(Piece& piece) {
        if (m_at < m_line.size() && m_line[m_at] == '"') {
            return takeQuotedName(piece);
        }
        const std::size_t start = m_at;
        const std::size_t end = std::min(m_line.find_first_of("/*\"", start), m_line.size());
        if (end < m_line.size() && m_line[end] == '"') {
            return fail(end, "A quotation mark stands inside a name.",
                        "Put the whole name between double quotes, and double the mark inside.");
        }
        piece.name = trimmed(m_line.substr(start, end - start));
        m_at = end;
        if (piece.name.empty()) {
            fail(start, "A parent is missing here.", "Type its name, or ? when it is not known.");
        }
    }

    void takeQuotedName(Piece& piece) {
        const std::size_t start = m_at;
        piece.quoted = true;
        for (++m_at; m_at < m_line.size(); ++m_at) {
            if (m_line[m_at] == '"') {
                const bool doubled = m_at + 1 < m_line.size() && m_line[m_at + 1] == '"';
                if (!doubled) {
                    ++m_at;
                    return;
                }
                ++m_at;
            }
            piece.name += m_line[m_at];
        }
        fail(start, "A quotation mark is not closed.", "Add the closing mark after the name.");
    }

    std::string_view m_line;
    std::size_t m_at = 0;
    std::vector<Piece> m_pieces;
    std::optional<Fault> m_fault;
};

/// Builds the tree: the latest cross parts the line, and so on in both parts.
class Builder {
  public:
    Descent build(std::span<const Piece> pieces) {
        if (pieces.size() == 1) {
            return leaf(pieces.front());
        }
        const std::size_t cut = latestCross(pieces);
        if (m_fault) {
            return {};
        }
        const auto seed = pieces.first(cut);
        const auto pollen = pieces.subspan(cut + 1);
        if (pollen.size() == 1 && !pollen.front().quoted) {
            const Piece& word = pollen.front();
            if (meansSelfing(word.name)) {
                return once(word) ? Descent::selfing(build(seed)) : Descent{};
            }
            if (meansOpenPollination(word.name)) {
                return once(word) ? Descent::openPollination(build(seed)) : Descent{};
            }
        }
        return recurrentCross(seed, pollen);
    }

    [[nodiscard]] const std::optional<Fault>& fault() const { return m_fault; }

  private:
    void fail(Fault found) {
        if (!m_fault) {
            m_fault = std::move(found);
        }
    }

    std::size_t latestCross(std::span<const Piece> pieces) {
        std::size_t cut = 1;
        bool twice = false;
        for (std::size_t i = 3; i < pieces.size(); i += 2) {
            if (pieces[i].number > pieces[cut].number) {
                cut = i;
                twice = false;
            } else if (pieces[i].number == pieces[cut].number) {
                cut = i;
                twice = true;
            }
        }
        if (twice) {
            fail(faultAt(pieces[cut].at,
                         "Two crosses have the same number, so it is open which came first.",
                         "Write the later cross with the higher number: /, //, /3/."));
        }
        return cut;
    }

    bool once(const Piece& piece) {
        if (piece.number == 1) {
            return true;
        }
        fail(faultAt(piece.at, "\"" + piece.name + "\" cannot be used more than once here.",
                     "Only a named parent recurs."));
        return false;
    }

    Descent leaf(const Piece& piece) {
        if (!once(piece)) {
            return {};
        }
        if (!piece.quoted && meansUnknown(piece.name)) {
            return Descent::nothingKnown();
        }
        if (!piece.quoted && (meansSelfing(piece.name) || meansOpenPollination(piece.name))) {
            fail(faultAt(piece.at, "\"" + piece.name + "\" is written where a parent is expected.",
                         "Write it right of the slash, or put a name between double quotes."));
            return {};
        }
        return Descent::of(piece.name);
    }

    /// A*3/B is A x (A x (A x B)); B/3*A is ((B x A) x A) x A.
    Descent recurrentCross(std::span<const Piece> seed, std::span<const Piece> pollen) {
        const int seedDoses = seed.size() == 1 ? seed.front().number : 1;
        const int pollenDoses = pollen.size() == 1 ? pollen.front().number : 1;
        if (seedDoses > 1 && pollenDoses > 1) {
            fail(faultAt(pollen.front().at, "Both parents of a cross cannot recur.",
                         "Keep the number of uses at one of them."));
            return {};
        }
        Descent left = seedDoses > 1 ? recurrent(seed.front()) : build(seed);
        Descent right = pollenDoses > 1 ? recurrent(pollen.front()) : build(pollen);
        for (int dose = 1; dose < std::max(seedDoses, pollenDoses); ++dose) {
            if (seedDoses > 1) {
                right = Descent::cross(left, std::move(right));
            } else {
                left = Descent::cross(std::move(left), right);
            }
        }
        return Descent::cross(std::move(left), std::move(right));
    }

    Descent recurrent(Piece piece) {
        if (!piece.quoted && meansUnknown(piece.name)) {
            once(piece);
        }
        piece.number = 1;
        return leaf(piece);
    }

    std::optional<Fault> m_fault;
};

Problem problemOf(const Fault& fault, std::string_view line) {
    return {ProblemCode::badInput, fault.what, fault.remedy,
            "character " + std::to_string(characterCount(line.substr(0, fault.at)) + 1)};
}

} // namespace

Result<Descent> readPurdy(std::string_view line) {
    if (const auto bad = firstBadUtf8(line)) {
        return problemOf(faultAt(*bad, "This byte is not part of any character.",
                                 "Save the text as UTF-8 and read it again."),
                         line);
    }
    Cutter cutter{line};
    cutter.run();
    if (cutter.fault()) {
        return problemOf(*cutter.fault(), line);
    }
    Builder builder;
    Descent descent = builder.build(cutter.pieces());
    if (builder.fault()) {
        return problemOf(*builder.fault(), line);
    }
    return descent;
}

} // namespace pipwright
