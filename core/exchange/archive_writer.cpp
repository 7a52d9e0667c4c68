#include "core/exchange/archive.h"
#include "core/exchange/archive_folder.h"
#include "core/exchange/archive_format.h"
#include "core/exchange/csv_format.h"
#include "core/exchange/csv_writer.h"
#include "core/history/photo_type.h"
#include "core/units/text.h"

#include <algorithm>
#include <set>

namespace pipwright {

namespace {

constexpr std::int64_t kProgressEvery = 4096;
constexpr std::size_t kEntriesAtOnce = 4000;

/// The writing of one archive into a folder that nobody else sees yet.
class ArchiveWriting {
  public:
    ArchiveWriting(const Store& store, std::filesystem::path folder, const Progress& progress)
        : m_store(store), m_folder(std::move(folder)), m_progress(progress) {}

    Result<ArchiveReport> run() {
        if (auto outcome = countAll(); !outcome) {
            return outcome.problem();
        }
        for (const Kind kind : kAllKinds) {
            if (auto outcome = writeKind(kind); !outcome) {
                return outcome.problem();
            }
        }
        for (auto step : {&ArchiveWriting::writeJournal, &ArchiveWriting::writePhotos,
                          &ArchiveWriting::writeWords}) {
            if (auto outcome = (this->*step)(); !outcome) {
                return outcome.problem();
            }
        }
        return m_report;
    }

  private:
    Outcome countAll() {
        m_total = m_store.position();
        for (const Kind kind : kAllKinds) {
            const auto count = m_store.count(kind);
            if (!count) {
                return count.problem();
            }
            m_total += *count;
        }
        return {};
    }

    /// False when the work is to stop.
    bool step() {
        ++m_done;
        return !m_progress || m_done % kProgressEvery != 0 ||
               m_progress(m_done, std::max<std::int64_t>(m_total, m_done));
    }

    static Problem stopped() {
        return {ProblemCode::cancelled, "the archive was stopped.",
                "Nothing was written; start again when it suits.", ""};
    }

    Outcome close(ArchiveFile& file, std::optional<std::int64_t> records) {
        auto done = file.close();
        if (!done) {
            return done.problem();
        }
        done->records = records;
        m_report.bytes += done->bytes;
        m_manifest.files.push_back(std::move(*done));
        return {};
    }

    Outcome writeKind(Kind kind) {
        auto file = ArchiveFile::create(m_folder, fileNameOf(kind));
        if (!file) {
            return file.problem();
        }
        CsvWriter table(file->text());
        table.record(headerOf(kind));
        std::int64_t records = 0;
        Outcome outcome;
        const auto take = [&](const Record& record) {
            ++records;
            outcome = writeRecord(table, record);
            if (outcome) {
                outcome = file->flush();
            }
            if (outcome && !step()) {
                outcome = stopped();
            }
            return outcome.ok();
        };
        if (auto scanned = m_store.scan(kind, {}, take); !scanned) {
            return scanned;
        }
        if (!outcome) {
            return outcome;
        }
        m_report.records += records;
        return close(*file, records);
    }

    Outcome writeRecord(CsvWriter& table, const Record& record) {
        table.cell(record.id.text());
        for (const Value& value : record.values) {
            if (const auto* text = std::get_if<std::string>(&value)) {
                if (auto outcome = checkText(*text, record); !outcome) {
                    return outcome;
                }
                table.cell(*text);
            } else {
                table.cell(textOf(value));
            }
        }
        table.endRecord();
        notePhoto(record);
        return {};
    }

    static Outcome checkText(const std::string& text, const Record& record) {
        if (text.size() > CsvFormat{}.cellLimit || firstBadUtf8(text)) {
            return Problem{ProblemCode::damaged,
                           "a text of this record is too long or is not UTF-8.",
                           "Correct it in the book, then write the archive again.",
                           std::string(nameOf(record.kind)) + " " + record.id.text()};
        }
        return {};
    }

    /// Pictures of undone records are kept too: they can be done again.
    void notePhoto(const Record& record) {
        static const auto field = fieldIndex(Kind::photo, "sha256");
        if (record.kind == Kind::photo && field) {
            if (const auto* hash = std::get_if<std::string>(&record.values[*field])) {
                m_photos.insert(*hash);
            }
        }
    }

    void notePhotos(const Change& change) {
        if (change.kind == Kind::photo) {
            Record side{change.kind, change.record,
                        std::vector<Value>(fieldsOf(change.kind).size())};
            for (const bool after : {false, true}) {
                for (const auto& field : change.fields) {
                    side.values[field.field] = after ? field.after : field.before;
                }
                notePhoto(side);
            }
        }
    }

    Outcome writeJournal() {
        auto entries = ArchiveFile::create(m_folder, kEntriesFile);
        auto changes = ArchiveFile::create(m_folder, kChangesFile);
        if (!entries || !changes) {
            return entries ? changes.problem() : entries.problem();
        }
        CsvWriter entryTable(entries->text());
        CsvWriter changeTable(changes->text());
        entryTable.record(kEntryColumns);
        changeTable.record(kChangeColumns);
        std::int64_t changeCount = 0;
        JournalRequest request;
        request.newestFirst = false;
        request.limit = kEntriesAtOnce;
        for (;;) {
            auto page = m_store.journal(request);
            if (!page) {
                return page.problem();
            }
            for (const JournalEntry& entry : *page) {
                writeEntry(entryTable, entry);
                changeCount += writeChanges(changeTable, entry);
                for (auto* file : {&*entries, &*changes}) {
                    if (auto outcome = file->flush(); !outcome) {
                        return outcome;
                    }
                }
                if (!step()) {
                    return stopped();
                }
                request.after = entry.position;
                ++m_report.entries;
            }
            if (page->size() < kEntriesAtOnce) {
                break;
            }
        }
        if (auto outcome = close(*entries, m_report.entries); !outcome) {
            return outcome;
        }
        return close(*changes, changeCount);
    }

    static void writeEntry(CsvWriter& table, const JournalEntry& entry) {
        table.record({std::to_string(entry.position), entry.copy.text(), momentText(entry.moment),
                      entry.person ? entry.person->uuid.text() : std::string{}, nameOf(entry.kind),
                      entry.target ? std::to_string(*entry.target) : std::string{}, entry.sentence,
                      entry.digest});
    }

    std::int64_t writeChanges(CsvWriter& table, const JournalEntry& entry) {
        std::int64_t number = 0;
        for (const Change& change : entry.changes) {
            table.record({std::to_string(entry.position), std::to_string(++number),
                          nameOf(change.kind), change.record.text(), beforeAsJson(change),
                          afterAsJson(change)});
            notePhotos(change);
        }
        return number;
    }

    Outcome writePhotos() {
        for (const auto& hash : m_photos) {
            auto bytes = m_store.photoBytes(hash);
            if (!bytes && bytes.problem().code != ProblemCode::notFound) {
                return bytes.problem();
            }
            if (!bytes) {
                m_manifest.missingPhotos.push_back(hash);
                m_report.notices.push_back("The picture " + hash +
                                           " is not beside the book; the archive is without it.");
                continue;
            }
            const auto type = photoTypeOf(*bytes);
            const std::string ending(type ? type->ending : std::string_view{});
            std::string name = std::string(kPhotoFolder) + "/";
            name.append(hash).append(ending);
            auto file = ArchiveFile::create(m_folder, name);
            if (!file) {
                return file.problem();
            }
            file->text() = std::move(*bytes);
            if (auto outcome = close(*file, std::nullopt); !outcome) {
                return outcome;
            }
            ++m_report.photos;
        }
        return {};
    }

    Outcome writeWords() {
        m_manifest.workedOn = m_store.workedOn();
        const auto write = [this](std::string_view name, std::string text) -> Outcome {
            auto file = ArchiveFile::create(m_folder, name);
            if (!file) {
                return file.problem();
            }
            file->text() = std::move(text);
            return close(*file, std::nullopt);
        };
        if (auto outcome = write(kColumnsFile, columnsTable()); !outcome) {
            return outcome;
        }
        if (auto outcome = write(kReadmeFile, readmeText()); !outcome) {
            return outcome;
        }
        return write(kManifestFile, manifestText(m_manifest));
    }

    const Store& m_store;
    std::filesystem::path m_folder;
    const Progress& m_progress;
    Manifest m_manifest;
    ArchiveReport m_report;
    std::set<std::string> m_photos;
    std::int64_t m_done = 0;
    std::int64_t m_total = 0;
};

} // namespace

Result<ArchiveReport> writeArchive(const Store& store, const std::filesystem::path& folder,
                                   const Progress& progress) {
    auto place = ArchiveFolder::prepare(folder);
    if (!place) {
        return place.problem();
    }
    auto report = ArchiveWriting(store, place->workingFolder(), progress).run();
    if (!report) {
        return report;
    }
    if (auto outcome = place->putInPlace(); !outcome) {
        return outcome.problem();
    }
    return report;
}

} // namespace pipwright
