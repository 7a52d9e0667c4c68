#include "core/exchange/archive_records.h"

#include <algorithm>
#include <fstream>

namespace pipwright {

namespace {

constexpr std::int64_t kLinesBetweenNews = 4096;

std::string joined(const std::vector<std::string_view>& names) {
    std::string text;
    for (const auto name : names) {
        text += (text.empty() ? "" : ",") + std::string(name);
    }
    return text;
}

} // namespace

ArchiveRecords::ArchiveRecords(std::filesystem::path folder, const Manifest& manifest,
                               FaultList& faults)
    : m_folder(std::move(folder)), m_manifest(manifest), m_faults(faults) {
    const std::string photos = std::string(kPhotoFolder) + "/";
    for (const auto& file : manifest.files) {
        if (file.name.starts_with(photos)) {
            m_pictures.insert(file.name.substr(photos.size(), 64));
        }
    }
    m_pictures.insert(manifest.missingPhotos.begin(), manifest.missingPhotos.end());
}

void ArchiveRecords::startReading() {
    ++m_reading;
    m_grown = false;
    m_pending.clear();
    m_rings = {};
    m_counts.clear();
    m_dependents = {};
    for (PerKind& kind : m_kinds) {
        kind.present = {};
        kind.complete = false;
    }
}

Outcome ArchiveRecords::read(const RecordSink& sink, const BytesRead& bytes) {
    startReading();
    for (const Kind kind : kAllKinds) {
        m_counts.push_back({kind, 0, 0});
        if (auto outcome = readTable(kind, sink, bytes); !outcome) {
            return outcome;
        }
        of(kind).complete = true;
    }
    settlePending();
    settleRings();
    return {};
}

void ArchiveRecords::fault(Problem problem) {
    // The faults of a line by itself come up again in every reading.
    if (m_reading == 1) {
        m_faults.add(std::move(problem));
    }
}

Outcome ArchiveRecords::readTable(Kind kind, const RecordSink& sink, const BytesRead& bytes) {
    const std::string name = fileNameOf(kind);
    if (firstVersionWith(kind) > m_manifest.version) {
        return {};
    }
    std::ifstream stream(m_folder / name, std::ios::binary);
    if (!stream) {
        fault({ProblemCode::badInput, "the table is not there.",
               "Look whether the folder is complete.", name});
        return {};
    }
    CsvReader table(stream, name);
    if (!readHeader(kind, table)) {
        return {};
    }
    std::int64_t told = 0;
    for (std::int64_t lines = 1; !table.finished(); ++lines) {
        const auto more = table.next();
        if (!more) {
            ++m_counts.back().read;
            ++m_counts.back().skipped;
            fault(more.problem());
        } else if (!*more) {
            break;
        } else if (auto outcome = takeLine(kind, table, sink); !outcome) {
            return outcome;
        }
        if (lines % kLinesBetweenNews == 0) {
            if (!bytes(table.bytesRead() - told)) {
                return Problem{ProblemCode::cancelled, "the import was stopped.",
                               "Nothing was written; start again when it suits.", ""};
            }
            told = table.bytesRead();
        }
    }
    return {};
}

bool ArchiveRecords::readHeader(Kind kind, CsvReader& table) {
    const auto header = headerOf(kind);
    const auto first = table.next();
    if (!first) {
        fault(first.problem());
        return false;
    }
    if (!*first || table.cells() != header) {
        fault({ProblemCode::badInput, "the columns are not those of this table.",
               "The first line must be: " + joined(header) + ".",
               placeInTable(fileNameOf(kind), 1)});
        return false;
    }
    return true;
}

Outcome ArchiveRecords::takeLine(Kind kind, const CsvReader& table, const RecordSink& sink) {
    const std::int64_t line = table.line();
    ++m_counts.back().read;
    if (const auto left = of(kind).without.find(line); left != of(kind).without.end()) {
        ++m_counts.back().skipped;
        m_dependents[static_cast<std::size_t>(kind)] += left->second ? 1 : 0;
        return {};
    }
    if (!parse(kind, table)) {
        ++m_counts.back().skipped;
        of(kind).left.insert(m_record.id);
        return {};
    }
    if (of(kind).present.contains(m_record.id)) {
        ++m_counts.back().skipped;
        fault({ProblemCode::badInput,
               "the id " + m_record.id.text() + " stands on an earlier line too.",
               "Give each record an id of its own, or take one of the lines out.",
               placeInTable(fileNameOf(kind), line, "uuid")});
        return {};
    }
    if (!referencesHold(line) || (kind == Kind::photo && !pictureIsThere(line))) {
        ++m_counts.back().skipped;
        of(kind).left.insert(m_record.id);
        return {};
    }
    of(kind).present.insert(m_record.id);
    m_rings.note(m_record, line);
    return sink(m_record);
}

bool ArchiveRecords::parse(Kind kind, const CsvReader& table) {
    const auto& fields = fieldsOf(kind);
    const auto& cells = table.cells();
    m_record.kind = kind;
    m_record.id = {};
    m_record.values.resize(fields.size());
    const auto place = [&](std::string_view column) {
        return placeInTable(fileNameOf(kind), table.line(), column);
    };
    if (const auto id = Uuid::fromText(cells.front()); id && !id->isNil()) {
        m_record.id = *id;
    } else {
        fault({ProblemCode::badInput, "\"" + std::string(cells.front()) + "\" is not an id.",
               "Write a UUID of 36 characters.", place("uuid")});
        return false;
    }
    if (cells.size() != fields.size() + 1) {
        fault({ProblemCode::badInput,
               "the line has " + std::to_string(cells.size()) + " cells and should have " +
                   std::to_string(fields.size() + 1) + ".",
               "Look for a missing or superfluous comma.", place({})});
        return false;
    }
    bool good = true;
    for (std::size_t i = 0; i < fields.size(); ++i) {
        auto value = valueFromText(fields[i], cells[i + 1]);
        if (value && std::holds_alternative<std::monostate>(*value) && fields[i].required) {
            value = checkValue(fields[i], Value{}).problem();
        }
        if (value) {
            m_record.values[i] = std::move(*value);
        } else {
            Problem problem = value.problem();
            problem.where = place(fields[i].name);
            fault(std::move(problem));
            good = false;
        }
    }
    return good;
}

bool ArchiveRecords::referencesHold(std::int64_t line) {
    const auto& fields = fieldsOf(m_record.kind);
    bool hold = true;
    const std::size_t before = m_pending.size();
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const auto* target = std::get_if<Uuid>(&m_record.values[i]);
        if (target == nullptr) {
            continue;
        }
        const Pending reference{m_record.kind, i, line, m_record.id, *target};
        PerKind& other = of(fields[i].refersTo);
        if (other.present.contains(*target)) {
            continue;
        }
        if (other.complete) {
            m_dependents[static_cast<std::size_t>(reference.from)] +=
                missing(reference) && hold ? 1 : 0;
            hold = false;
        } else {
            m_pending.push_back(reference);
        }
    }
    if (!hold) {
        m_pending.resize(before);
    }
    return hold;
}

bool ArchiveRecords::pictureIsThere(std::int64_t line) {
    static const auto field = fieldIndex(Kind::photo, "sha256").value_or(0);
    const auto* hash = std::get_if<std::string>(&m_record.values[field]);
    if (hash != nullptr && m_pictures.contains(*hash)) {
        return true;
    }
    fault({ProblemCode::badInput, "the picture of this line is not in the archive.",
           "Put it into the folder photos and list it in the manifest, or take the line out.",
           placeInTable(fileNameOf(Kind::photo), line, "sha256")});
    return false;
}

/// Tells of a reference to what is not there, once. True: it is not there only because its line
/// was left out.
bool ArchiveRecords::missing(const Pending& reference) {
    const FieldInfo& field = fieldsOf(reference.from)[reference.field];
    if (of(field.refersTo).left.contains(reference.target)) {
        return true; // a consequence of a fault that is told already
    }
    if (m_reading > 1 && of(reference.from).left.contains(reference.self)) {
        return false;
    }
    const std::string what(nameOf(field.refersTo));
    m_faults.add({ProblemCode::badInput,
                  "the " + what + " " + reference.target.text() + " is not in the archive.",
                  "Add it to " + fileNameOf(field.refersTo) + ", or empty this cell" +
                      (field.required ? " together with its line." : "."),
                  placeInTable(fileNameOf(reference.from), reference.line, field.name)});
    return false;
}

void ArchiveRecords::leaveOut(Kind kind, std::int64_t line, const Uuid& id, bool dependent) {
    m_grown = of(kind).without.emplace(line, dependent).second || m_grown;
    of(kind).left.insert(id);
}

void ArchiveRecords::settlePending() {
    for (const Pending& reference : m_pending) {
        if (!of(fieldsOf(reference.from)[reference.field].refersTo)
                 .present.contains(reference.target)) {
            const bool dependent = missing(reference);
            leaveOut(reference.from, reference.line, reference.self, dependent);
        }
    }
    m_pending.clear();
}

void ArchiveRecords::settleRings() {
    for (const PedigreeRing& ring : m_rings.find()) {
        m_faults.add(
            {ProblemCode::badInput,
             "the pedigree goes in a ring: " + ring.text() + " (each a parent of the next).",
             "Correct the parents of one of them, or give the wrong assertion a reason "
             "for being void.",
             placeInTable(fileNameOf(ring.link.kind), ring.link.line)});
        leaveOut(ring.link.kind, ring.link.line, ring.link.record, false);
    }
}

std::int64_t ArchiveRecords::dependents(Kind kind) const {
    return m_dependents[static_cast<std::size_t>(kind)];
}

} // namespace pipwright
