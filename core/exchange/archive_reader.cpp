#include "core/exchange/archive.h"
#include "core/exchange/archive_folder.h"
#include "core/exchange/archive_journal.h"
#include "core/exchange/archive_records.h"
#include "core/history/digest.h"
#include "core/history/photo_type.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <future>

namespace pipwright {

namespace {

constexpr std::uintmax_t kManifestLimit = std::uintmax_t{256} << 20U;
constexpr std::uintmax_t kPhotoLimit = std::uintmax_t{512} << 20U;

std::int64_t now() {
    using namespace std::chrono;
    return duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
}

bool isPhoto(const ArchivedFile& file) {
    return file.name.starts_with(std::string(kPhotoFolder) + "/");
}

bool isTable(const ArchivedFile& file) {
    return file.records.has_value();
}

/// The files whose bytes are not those the manifest tells of; found beside the reading.
std::vector<std::string> changedFiles(const std::filesystem::path& folder,
                                      const std::vector<ArchivedFile>& files,
                                      const std::atomic<bool>& stop) {
    std::vector<std::string> changed;
    for (const auto& file : files) {
        if (stop) {
            break;
        }
        if ((isTable(file) || isPhoto(file)) && hashOfFile(folder / file.name) != file.sha256) {
            changed.push_back(file.name);
        }
    }
    return changed;
}

/// The reading of one archive into a store.
class ArchiveReading {
  public:
    ArchiveReading(std::filesystem::path folder, Store& store, const ImportOptions& options,
                   const Progress& progress)
        : m_folder(std::move(folder)), m_store(store), m_options(options), m_progress(progress),
          m_faults(options.mostFaults) {}

    Result<ImportReport> run() {
        const auto text = contentOf(m_folder / kManifestFile, kManifestLimit);
        if (!text) {
            return withFault({text.problem().code,
                              "this folder is not an archive: it has no "
                              "manifest that can be read.",
                              "Choose the folder that was written as an archive.",
                              std::string(kManifestFile)});
        }
        auto manifest = readManifest(*text);
        if (!manifest) {
            return withFault(manifest.problem());
        }
        m_manifest = std::move(*manifest);
        for (const auto& file : m_manifest.files) {
            m_total += isTable(file) ? file.bytes : 0;
        }
        if (auto outcome = readAll(); !outcome) {
            return outcome.problem();
        }
        finishReport();
        return m_report;
    }

  private:
    Result<ImportReport> withFault(Problem problem) {
        m_faults.add(std::move(problem));
        finishReport();
        return m_report;
    }

    void finishReport() {
        m_report.faults = m_faults.kept();
        m_report.faultCount = m_faults.count();
    }

    bool told(std::int64_t bytes) {
        m_done += bytes;
        return !m_progress || m_progress(m_done, std::max<std::int64_t>({1, m_total, m_done}));
    }

    Outcome readAll() {
        std::atomic<bool> stop{false};
        auto changed = std::async(std::launch::async, changedFiles, std::cref(m_folder),
                                  std::cref(m_manifest.files), std::cref(stop));
        ArchiveRecords records(m_folder, m_manifest, m_faults);
        auto outcome = readFirst(records);
        stop = !outcome.ok();
        const auto names = changed.get();
        if (!outcome) {
            return outcome;
        }
        tellChanged(names);
        return m_faults.count() == 0 ? write(records) : withFaults(records);
    }

    /// Looks at everything, and loads it at the same time as long as no fault has come up.
    Outcome readFirst(ArchiveRecords& records) {
        if (!m_options.dryRun) {
            auto load = m_store.beginLoad();
            if (!load) {
                return load.problem();
            }
            m_load = std::move(*load);
        }
        const auto take = [this](const auto& item) -> Outcome {
            if (m_faults.count() > 0) {
                m_load.reset();
            }
            return m_load ? m_load->add(item) : Outcome{};
        };
        if (auto outcome = records.read(take, [this](auto bytes) { return told(bytes); });
            !outcome) {
            return outcome;
        }
        return readJournal(take);
    }

    Outcome readJournal(const EntrySink& sink) {
        ArchiveJournal journal(m_folder, m_faults);
        auto outcome = journal.read(sink, [this](auto bytes) { return told(bytes); });
        m_report.entries = journal.entries();
        m_report.changes = journal.changes();
        return outcome;
    }

    void tellChanged(const std::vector<std::string>& names) {
        for (const auto& name : names) {
            const bool photo = name.starts_with(kPhotoFolder);
            if (!photo && (m_options.takeChanged || m_options.skipFaulty)) {
                m_report.notices.push_back(name + " was changed after the archive was written.");
                m_tablesChanged = true;
            } else {
                m_faults.add({ProblemCode::damaged,
                              photo ? "the picture is missing, or is not the one it was."
                                    : "the file is not as it was written: its SHA-256 differs from "
                                      "the manifest's.",
                              photo ? "Put the picture back from another copy of the archive."
                                    : "If you changed it on purpose, import again and say so; "
                                      "otherwise take another copy.",
                              name});
            }
        }
    }

    Outcome withFaults(ArchiveRecords& records) {
        m_load.reset();
        const auto look = [](const Record&) { return Outcome{}; };
        while (m_options.skipFaulty && !records.settled()) {
            if (auto outcome = records.read(look, [this](auto bytes) { return told(bytes); });
                !outcome) {
                return outcome;
            }
        }
        m_report.counts = records.counts();
        if (!m_options.skipFaulty) {
            return {};
        }
        for (const Kind kind : kAllKinds) {
            if (const auto count = records.dependents(kind); count > 0) {
                m_report.notices.push_back(fileNameOf(kind) + ": " + std::to_string(count) +
                                           (count == 1 ? " line is" : " lines are") +
                                           " left out because of what they refer to.");
            }
        }
        return m_options.dryRun ? Outcome{} : loadWithout(records);
    }

    /// Loads what is good of a faulty archive. The history does not lead to it, so a baseline
    /// follows.
    Outcome loadWithout(ArchiveRecords& records) {
        auto load = m_store.beginLoad();
        if (!load) {
            return load.problem();
        }
        m_load = std::move(*load);
        Digest digest;
        const auto takeRecord = [&](const Record& record) {
            digest.add(record);
            return m_load->add(record);
        };
        const auto quiet = [this](auto bytes) { return told(bytes); };
        if (auto outcome = records.read(takeRecord, quiet); !outcome) {
            return outcome;
        }
        FaultList ignored(0); // they have been told
        ArchiveJournal journal(m_folder, ignored);
        const auto takeEntry = [this](const JournalEntry& entry) { return m_load->add(entry); };
        if (auto outcome = journal.read(takeEntry, quiet); !outcome) {
            return outcome;
        }
        if (auto outcome = layBaseline(journal.entries(), digest); !outcome) {
            return outcome;
        }
        return finish();
    }

    Outcome layBaseline(std::int64_t after, const Digest& digest) {
        JournalEntry entry;
        entry.position = after + 1;
        entry.copy = m_options.copy;
        entry.moment = m_options.moment.value_or(now());
        entry.kind = EntryKind::baseline;
        entry.sentence = "Rebuilt from an archive that was not as it had been written";
        entry.digest = digest.text();
        m_report.baselineLaid = true;
        m_report.notices.emplace_back(
            "The history is kept for reading, but no longer leads to this content: a new baseline "
            "was laid, and what was done before it cannot be undone.");
        return m_load->add(entry);
    }

    /// Everything is well: what was loaded while reading is kept.
    Outcome write(ArchiveRecords& records) {
        m_report.counts = records.counts();
        if (m_options.dryRun) {
            return {};
        }
        if (m_tablesChanged) {
            m_load.reset();
            return loadWithout(records);
        }
        return finish();
    }

    Outcome finish() {
        for (const auto& file : m_manifest.files) {
            if (!isPhoto(file)) {
                continue;
            }
            const auto bytes = contentOf(m_folder / file.name, kPhotoLimit);
            if (!bytes || hexOf(sha256(*bytes)) != file.sha256 || !photoTypeOf(*bytes)) {
                m_report.notices.push_back(file.name + " was left out.");
                continue; // told as a fault; only skipFaulty comes here
            }
            if (auto added = m_store.addPhoto(*bytes); !added) {
                return added.problem();
            }
            ++m_report.photos;
        }
        if (auto outcome = m_load->finish(); !outcome) {
            return outcome;
        }
        m_load.reset();
        m_report.written = true;
        return m_manifest.workedOn ? m_store.setWorkedOn(*m_manifest.workedOn) : Outcome{};
    }

    std::filesystem::path m_folder;
    Store& m_store;
    const ImportOptions& m_options;
    const Progress& m_progress;
    FaultList m_faults;
    Manifest m_manifest;
    ImportReport m_report;
    std::unique_ptr<BulkLoad> m_load;
    bool m_tablesChanged = false;
    std::int64_t m_done = 0;
    std::int64_t m_total = 0;
};

} // namespace

std::string ImportReport::moreFaults() const {
    const auto more = faultCount - static_cast<std::int64_t>(faults.size());
    return more <= 0 ? ""
                     : "and " + std::to_string(more) + (more == 1 ? " more fault" : " more faults");
}

Result<ImportReport> readArchive(const std::filesystem::path& folder, Store& store,
                                 const ImportOptions& options, const Progress& progress) {
    return ArchiveReading(folder, store, options, progress).run();
}

} // namespace pipwright
