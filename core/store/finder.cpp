#include "core/store/finder.h"

#include "core/history/searchable.h"
#include "core/store/place_of_kind.h"
#include "core/store/record_table.h"
#include "core/units/text.h"

#include <algorithm>

namespace pipwright {

namespace {

constexpr std::int64_t kKindsInARow = 64; // rowid = key * 64 + number of the kind

/// The words as an FTS5 query: each must stand in the record, as the beginning of a word.
std::string queryOf(std::string_view words) {
    std::string query;
    const std::string folded = foldedForSearch(words); // the words below point into it
    for (const auto word : split(folded, ' ')) {
        const bool hasLetters = std::any_of(word.begin(), word.end(), [](char c) {
            const auto byte = static_cast<unsigned char>(c);
            return byte >= 0x80 || (byte >= '0' && byte <= '9') || (byte >= 'a' && byte <= 'z');
        });
        if (!hasLetters) {
            continue;
        }
        query += query.empty() ? "\"" : " \"";
        for (const char c : word) {
            query += c == '"' || c == '\0' ? ' ' : c;
        }
        query += "\"*";
    }
    return query;
}

/// 0 when a text is what was asked for, 1 when it begins with it, else 2.
int distanceOf(const std::string& text, const std::string& asked) {
    const std::string folded = foldedForSearch(text);
    const bool begins = folded.starts_with(asked);
    const bool ends = begins && (folded.size() == asked.size() ||
                                 folded.compare(asked.size(), 3, " \xC2\xB7") == 0);
    return ends ? 0 : begins ? 1 : 2;
}

} // namespace

std::string finderWords(const Record& record) {
    std::string text;
    for (std::size_t i = 0; i < record.values.size(); ++i) {
        const auto* part = std::get_if<std::string>(&record.values[i]);
        if (part != nullptr && !part->empty() && isSearchable(record.kind, i)) {
            text += (text.empty() ? "" : " \xC2\xB7 ") + *part;
        }
    }
    return text;
}

Outcome Finder::open() {
    for (const Kind kind : kAllKinds) {
        auto number = m_connection->number("SELECT number FROM finder_kind WHERE kind = '" +
                                           std::string(nameOf(kind)) + "'");
        if (!number) {
            return number.problem();
        }
        m_numbers[placeOf(kind)] = *number;
    }
    return {};
}

std::int64_t Finder::rowOf(Kind kind, std::int64_t key) const {
    return key * kKindsInARow + m_numbers[placeOf(kind)];
}

Outcome Finder::add(std::int64_t key, const Record& record) {
    const std::string words = finderWords(record);
    if (words.empty()) {
        return {};
    }
    auto row = m_pool->lend("INSERT INTO finder (rowid, words) VALUES (?, ?)");
    if (!row) {
        return row.problem();
    }
    (*row)->bind(1, rowOf(record.kind, key));
    (*row)->bind(2, std::string_view(words));
    return (*row)->run();
}

Outcome Finder::remove(Kind kind, std::int64_t key) {
    auto row = m_pool->lend("DELETE FROM finder WHERE rowid = ?");
    if (!row) {
        return row.problem();
    }
    (*row)->bind(1, rowOf(kind, key));
    return (*row)->run();
}

Result<std::vector<Found>> Finder::find(std::string_view words, std::size_t limit) const {
    std::vector<Found> found;
    const std::string query = queryOf(words);
    if (query.empty() || limit == 0) {
        return found;
    }
    auto rows =
        m_pool->lend("SELECT rowid, words FROM finder WHERE finder MATCH ? ORDER BY rank LIMIT ?");
    if (!rows) {
        return rows.problem();
    }
    RowStatement& row = **rows;
    row.bind(1, std::string_view(query));
    row.bind(2, static_cast<std::int64_t>(std::clamp<std::size_t>(limit, 200, 1'000'000)));
    while (true) {
        const auto more = row.step();
        if (!more) {
            return more.problem();
        }
        if (!*more) {
            break;
        }
        const std::int64_t number = row.integer(0) % kKindsInARow;
        const auto kind = std::find(m_numbers.begin(), m_numbers.end(), number);
        if (kind == m_numbers.end()) {
            continue;
        }
        const Kind what = kAllKinds[static_cast<std::size_t>(kind - m_numbers.begin())];
        auto uuid = m_pool->lend("SELECT uuid FROM " + sqlName(nameOf(what)) + " WHERE id = ?");
        if (!uuid) {
            return uuid.problem();
        }
        (*uuid)->bind(1, row.integer(0) / kKindsInARow);
        const auto there = (*uuid)->step();
        if (there && *there) {
            found.push_back({what, (*uuid)->uuid(0), std::string(row.text(1))});
        }
    }
    const std::string asked = foldedForSearch(words);
    std::stable_sort(found.begin(), found.end(), [&asked](const Found& left, const Found& right) {
        return distanceOf(left.text, asked) < distanceOf(right.text, asked);
    });
    found.resize(std::min(found.size(), limit), Found{});
    return found;
}

} // namespace pipwright
