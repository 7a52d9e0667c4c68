#include "sample-data/generator/scribe.h"

#include "core/history/new_book.h"

#include <algorithm>
#include <array>

namespace pipwright::sample {

namespace {

constexpr std::int64_t kMinute = 60'000;

} // namespace

Scribe::Scribe(Store& store, std::uint64_t seed)
    : m_store(store), m_ids(seed, [this] { return m_moment; }) {}

void Scribe::wake(Date day, int minute) {
    const std::int64_t moment = std::int64_t{day.days()} * 1440 * kMinute + minute * kMinute;
    m_moment = std::max(m_moment, moment);
    m_today = day;
}

void Scribe::begin(std::string sentence) {
    m_set = {};
    m_set.sentence = std::move(sentence);
    m_set.person = m_writer;
}

Stamp Scribe::stamp() {
    m_moment += kMinute;
    return {m_writer, m_moment};
}

void Scribe::note(const Outcome& outcome) {
    if (m_outcome && !outcome) {
        m_outcome = outcome;
    }
}

void Scribe::finish() {
    if (m_set.empty() || !m_outcome) {
        return;
    }
    if (auto entry = m_store.apply(m_set, stamp()); !entry) {
        Problem problem = entry.problem();
        problem.where = m_today.iso() + ", " + m_set.sentence + ", " + problem.where;
        note(problem);
    }
    m_set = {};
}

void Scribe::undo() {
    if (auto entry = m_store.undo(stamp()); !entry) {
        note(entry.problem());
    }
}

void Scribe::redo() {
    if (auto entry = m_store.redo(stamp()); !entry) {
        note(entry.problem());
    }
}

void Scribe::openBook(const std::string& title, const std::string& owner) {
    m_set = newBook(title, owner, m_ids);
    finish();
}

void Scribe::keepPhoto(Photo photo, const std::string& bytes) {
    const auto file = m_store.addPhoto(bytes);
    if (!file) {
        note(file.problem());
        return;
    }
    photo.sha256 = file->sha256;
    photo.mediaType = file->mediaType;
    add(std::move(photo));
}

void Scribe::workedOn(Date day) {
    note(m_store.setWorkedOn(day));
}

std::string spoken(Date day) {
    constexpr std::array kMonths = {"January",   "February", "March",    "April",
                                    "May",       "June",     "July",     "August",
                                    "September", "October",  "November", "December"};
    return std::to_string(day.day()) + " " + kMonths[day.month() - 1] + " " +
           std::to_string(day.year());
}

} // namespace pipwright::sample
