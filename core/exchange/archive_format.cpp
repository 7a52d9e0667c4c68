#include "core/exchange/archive_format.h"

#include "core/exchange/csv_writer.h"
#include "core/units/text.h"

#include <algorithm>
#include <charconv>
#include <cstdio>
#include <nlohmann/json.hpp>

namespace pipwright {

namespace {

using Json = nlohmann::ordered_json;

constexpr std::int64_t kDay = 86'400'000;

std::string_view typeName(FieldType type) {
    switch (type) {
    case FieldType::text:
        return "text";
    case FieldType::integer:
        return "whole number";
    case FieldType::number:
        return "number";
    case FieldType::flag:
        return "0 or 1";
    case FieldType::date:
        return "date";
    case FieldType::word:
        return "word";
    case FieldType::reference:
        return "uuid";
    }
    return "text";
}

std::string joined(std::span<const std::string_view> words) {
    std::string text;
    for (const auto word : words) {
        text += (text.empty() ? "" : " ") + std::string(word);
    }
    return text;
}

void addJournalColumns(CsvWriter& table) {
    const auto entry = [&table](std::string_view column, std::string_view type,
                                std::string_view refersTo, std::string_view words,
                                std::string_view meaning) {
        table.record({"journal_entry", column, type, refersTo, words, meaning});
    };
    entry("position", "whole number", "", "", "1, 2, 3 ... in the order of the edits");
    entry("copy", "uuid", "", "", "the copy of the book in which the entry was written");
    entry("moment", "moment", "", "", "when, in universal time (UTC) to the millisecond");
    entry("person", "uuid", "person", "", "who, if the book knew");
    entry("kind", "word", "", "edit undo redo baseline", "what sort of entry it is");
    entry("target", "whole number", "journal_entry", "", "the position undone or done again");
    entry("sentence", "text", "", "", "what was done, in words");
    entry("digest", "text", "", "", "of a baseline: the digest of the book's content then");
    const auto change = [&table](std::string_view column, std::string_view type,
                                 std::string_view refersTo, std::string_view meaning) {
        table.record({"journal_change", column, type, refersTo, "", meaning});
    };
    change("position", "whole number", "journal_entry", "the entry the change belongs to");
    change("number", "whole number", "", "1, 2, 3 ... within the entry");
    change("kind", "text", "", "the table of the record that was changed");
    change("record", "uuid", "", "the record that was changed");
    change("before", "text", "", "JSON: the fields before; empty where the record was created");
    change("after", "text", "", "JSON: the fields after; empty where the record was taken away");
}

Problem notAManifest(std::string what) {
    return {ProblemCode::badInput, std::move(what),
            "Choose a folder that was written as an archive, with its manifest unharmed.",
            std::string(kManifestFile)};
}

bool isPlainName(std::string_view name) {
    return !name.empty() && name.find("..") == std::string_view::npos && name.front() != '/' &&
           name.find('\0') == std::string_view::npos && name.find('\\') == std::string_view::npos;
}

bool isHash(std::string_view text) {
    return text.size() == 64 &&
           text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

Result<ArchivedFile> fileFrom(const Json& json) {
    if (!json.is_object() || !json.contains("name") || !json["name"].is_string() ||
        !json.contains("sha256") || !json["sha256"].is_string()) {
        return notAManifest("a file is listed without its name or its SHA-256.");
    }
    ArchivedFile file;
    file.name = json["name"].get<std::string>();
    file.sha256 = json["sha256"].get<std::string>();
    if (!isPlainName(file.name) || !isHash(file.sha256)) {
        return notAManifest("the name or the SHA-256 of a listed file cannot be right.");
    }
    if (json.contains("bytes") && json["bytes"].is_number_integer()) {
        file.bytes = json["bytes"].get<std::int64_t>();
    }
    if (json.contains("records") && json["records"].is_number_integer()) {
        file.records = json["records"].get<std::int64_t>();
    }
    return file;
}

Outcome checkVersion(const Json& json) {
    if (!json.is_object() || !json.contains("format") || json["format"] != kArchiveFormat) {
        return notAManifest("this does not describe an archive of an orchard book.");
    }
    if (!json.contains("version") || !json["version"].is_number_integer() ||
        json["version"].get<std::int64_t>() < 1) {
        return notAManifest("the version of the archive's layout is missing or unknown.");
    }
    if (json["version"].get<std::int64_t>() > kArchiveVersion) {
        return Problem{
            ProblemCode::newer,
            "the archive was written by a newer Pipwright (layout " + json["version"].dump() +
                ", this one knows " + std::to_string(kArchiveVersion) + ").",
            "Install the newer Pipwright and import with it.", std::string(kManifestFile)};
    }
    return {};
}

} // namespace

const ArchivedFile* Manifest::find(std::string_view name) const {
    const auto found = std::find_if(files.begin(), files.end(),
                                    [name](const ArchivedFile& file) { return file.name == name; });
    return found == files.end() ? nullptr : &*found;
}

std::string manifestText(const Manifest& manifest) {
    Json json;
    json["format"] = kArchiveFormat;
    json["version"] = manifest.version;
    json["worked_on"] = manifest.workedOn ? Json(manifest.workedOn->iso()) : Json(nullptr);
    json["files"] = Json::array();
    for (const auto& file : manifest.files) {
        Json entry;
        entry["name"] = file.name;
        if (file.records) {
            entry["records"] = *file.records;
        }
        entry["bytes"] = file.bytes;
        entry["sha256"] = file.sha256;
        json["files"].push_back(std::move(entry));
    }
    json["missing_photos"] = manifest.missingPhotos;
    return json.dump(2) + "\n";
}

Result<Manifest> readManifest(std::string_view text) {
    const Json json = Json::parse(text, nullptr, false);
    if (auto outcome = checkVersion(json); !outcome) {
        return outcome.problem();
    }
    Manifest manifest;
    manifest.version = json["version"].get<int>();
    if (json.contains("worked_on") && json["worked_on"].is_string()) {
        manifest.workedOn = Date::fromIso(json["worked_on"].get<std::string>());
        if (!manifest.workedOn) {
            return notAManifest("\"worked_on\" is not a day of the calendar.");
        }
    }
    if (!json.contains("files") || !json["files"].is_array()) {
        return notAManifest("the list of files is missing.");
    }
    for (const auto& entry : json["files"]) {
        auto file = fileFrom(entry);
        if (!file) {
            return file.problem();
        }
        manifest.files.push_back(std::move(*file));
    }
    if (json.contains("missing_photos") && json["missing_photos"].is_array()) {
        for (const auto& hash : json["missing_photos"]) {
            if (hash.is_string()) {
                manifest.missingPhotos.push_back(hash.get<std::string>());
            }
        }
    }
    return manifest;
}

std::string fileNameOf(Kind kind) {
    return std::string(nameOf(kind)) + ".csv";
}

int firstVersionWith(Kind kind) {
    return kind == Kind::sealedKey ? 2 : 1;
}

std::vector<std::string_view> headerOf(Kind kind) {
    std::vector<std::string_view> header{"uuid"};
    for (const auto& field : fieldsOf(kind)) {
        header.push_back(field.name);
    }
    return header;
}

std::string columnsTable() {
    std::string text;
    CsvWriter table(text);
    table.record({"table", "column", "type", "refers_to", "words", "meaning"});
    for (const Kind kind : kAllKinds) {
        table.record({nameOf(kind), "uuid", "uuid", "", "", meaningOf(kind)});
        for (const auto& field : fieldsOf(kind)) {
            const bool reference = field.type == FieldType::reference;
            table.record({nameOf(kind), field.name, typeName(field.type),
                          reference ? nameOf(field.refersTo) : std::string_view{},
                          joined(field.words), field.meaning});
        }
    }
    addJournalColumns(table);
    return text;
}

std::string readmeText() {
    return "This folder is the whole of a fruit breeder's orchard book, as plain text.\r\n"
           "\r\n"
           "It needs no program to be read. Every .csv file is one table: UTF-8, cells parted "
           "by\r\n"
           "commas, the first line naming the columns, cells with commas, quotes or line ends\r\n"
           "between double quotes, a quote inside a cell doubled (RFC 4180). Lines end in CR "
           "LF.\r\n"
           "\r\n"
           "columns.csv        says what each column of each table means\r\n"
           "site.csv ...       one table for each kind of thing: places, plants, pedigree,\r\n"
           "                   observations, tastings, decisions, grafts, people\r\n"
           "journal_entry.csv  every edit ever made, in order, with who and when\r\n"
           "journal_change.csv what each of those edits changed, before and after, as JSON\r\n"
           "photos/            the pictures; a file is named by the SHA-256 of its bytes\r\n"
           "manifest.json      the files with their sizes and SHA-256, to show that none is "
           "harmed\r\n"
           "\r\n"
           "The first column, uuid, names a record. Where another table refers to it, the same\r\n"
           "uuid stands there. Dates are year-month-day, days of the place where the tree "
           "stands.\r\n"
           "Numbers have a decimal point. An empty cell means that nothing is known, the word\r\n"
           "\"unknown\" the same. A record with a void_reason was found wrong and no longer "
           "counts.\r\n"
           "\r\n"
           "To follow one tree: find its code in genotype.csv, its uuid in the column genotype "
           "of\r\n"
           "identity.csv, the plant named there in plant.csv, lot.csv and observation.csv, and "
           "the\r\n"
           "lots in score.csv.\r\n"
           "\r\n"
           "Pipwright makes a book of this folder again, to the last byte.\r\n";
}

std::string momentText(std::int64_t milliseconds) {
    constexpr std::int64_t kFirst = -62'167'219'200'000;  // 0000-01-01
    constexpr std::int64_t kBehind = 253'402'300'800'000; // 10000-01-01
    if (milliseconds < kFirst || milliseconds >= kBehind) {
        return std::to_string(milliseconds);
    }
    const std::int64_t day = milliseconds / kDay - (milliseconds % kDay < 0 ? 1 : 0);
    const auto rest = static_cast<int>(milliseconds - day * kDay);
    std::array<char, 24> clock{};
    std::snprintf(clock.data(), clock.size(), "T%02d:%02d:%02d.%03dZ", rest / 3'600'000,
                  rest / 60'000 % 60, rest / 1000 % 60, rest % 1000);
    return Date::fromDays(static_cast<std::int32_t>(day)).iso() + clock.data();
}

std::optional<std::int64_t> momentFromText(std::string_view text) {
    const auto whole = [](std::string_view digits) -> std::optional<std::int64_t> {
        std::int64_t number = 0;
        const char* const end = digits.data() + digits.size();
        const auto [stop, error] = std::from_chars(digits.data(), end, number);
        return error == std::errc{} && stop == end && !digits.empty() ? std::optional(number)
                                                                      : std::nullopt;
    };
    const std::size_t clock = text.find('T');
    if (clock == std::string_view::npos) {
        return whole(text);
    }
    const auto day = Date::fromIso(text.substr(0, clock));
    const std::string_view time = text.substr(clock);
    if (!day || time.size() != 14) {
        return std::nullopt;
    }
    const auto hours = whole(time.substr(1, 2));
    const auto minutes = whole(time.substr(4, 2));
    const auto seconds = whole(time.substr(7, 2));
    const auto thousandths = whole(time.substr(10, 3));
    if (!hours || !minutes || !seconds || !thousandths) {
        return std::nullopt;
    }
    const std::int64_t moment = day->days() * kDay + *hours * 3'600'000 + *minutes * 60'000 +
                                *seconds * 1000 + *thousandths;
    return momentText(moment) == text ? std::optional(moment) : std::nullopt;
}

} // namespace pipwright
