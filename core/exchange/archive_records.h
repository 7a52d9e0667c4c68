#pragma once

#include "core/exchange/archive.h"
#include "core/exchange/archive_faults.h"
#include "core/exchange/archive_format.h"
#include "core/exchange/csv_reader.h"
#include "core/exchange/pedigree_rings.h"
#include "core/exchange/uuid_set.h"

#include <array>
#include <filesystem>
#include <functional>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace pipwright {

/// Takes up a good record. A Problem ends the reading.
using RecordSink = std::function<Outcome(const Record&)>;
/// Told the bytes taken in since the last call; false stops the work.
using BytesRead = std::function<bool(std::int64_t)>;

/// The record tables of an archive, read as often as needed. A reading hands on the good lines and
/// finds the faults; what is faulty only in the light of later lines (who is not there, who is
/// his own ancestor) is left out from the next reading on.
class ArchiveRecords {
  public:
    ArchiveRecords(std::filesystem::path folder, const Manifest& manifest, FaultList& faults);

    /// Reads all tables once. A Problem when it was stopped or `sink` had one.
    Outcome read(const RecordSink& sink, const BytesRead& bytes);
    /// The last reading found nothing that an earlier one had not left out already.
    [[nodiscard]] bool settled() const { return !m_grown; }

    [[nodiscard]] const std::vector<KindCount>& counts() const { return m_counts; }
    /// Lines left out only because of what they refer to, by kind.
    [[nodiscard]] std::int64_t dependents(Kind kind) const;

  private:
    struct Pending { // a reference to a table that is not read to its end yet
        Kind from = Kind::bookFacts;
        std::size_t field = 0;
        std::int64_t line = 0;
        Uuid self;
        Uuid target;
    };
    struct PerKind {
        UuidSet present; // in this reading
        UuidSet left;    // ids of lines left out, in any reading
        /// Lines to leave out, and whether only because of what they refer to.
        std::unordered_map<std::int64_t, bool> without;
        bool complete = false; // in this reading
    };

    PerKind& of(Kind kind) { return m_kinds[static_cast<std::size_t>(kind)]; }
    void startReading();
    Outcome readTable(Kind kind, const RecordSink& sink, const BytesRead& bytes);
    bool readHeader(Kind kind, CsvReader& table);
    Outcome takeLine(Kind kind, const CsvReader& table, const RecordSink& sink);
    /// Fills m_record; false when the line is faulty.
    bool parse(Kind kind, const CsvReader& table);
    bool referencesHold(std::int64_t line);
    bool pictureIsThere(std::int64_t line);
    void settlePending();
    void settleRings();
    bool missing(const Pending& reference);
    void leaveOut(Kind kind, std::int64_t line, const Uuid& id, bool dependent);
    void fault(Problem problem);

    std::filesystem::path m_folder;
    const Manifest& m_manifest;
    FaultList& m_faults;
    std::array<PerKind, kKindCount> m_kinds;
    std::vector<KindCount> m_counts;
    std::array<std::int64_t, kKindCount> m_dependents{};
    std::unordered_set<std::string> m_pictures;
    std::vector<Pending> m_pending;
    PedigreeRings m_rings;
    Record m_record;
    int m_reading = 0;
    bool m_grown = false;
};

} // namespace pipwright
