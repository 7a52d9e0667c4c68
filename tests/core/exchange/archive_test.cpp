#include "core/exchange/archive.h"
#include "core/exchange/archive_format.h"
#include "core/history/digest.h"
#include "core/history/edits.h"
#include "core/history/memory_store.h"
#include "core/history/new_book.h"
#include "core/orchard/dictionary.h"
#include "core/units/sha256.h"

#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <map>
#include <sstream>

namespace pipwright {

using testing::Contains;
using testing::Field;
using testing::HasSubstr;
namespace fs = std::filesystem;

namespace {

std::string bytesOf(const fs::path& file) {
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

std::map<std::string, std::string> filesIn(const fs::path& folder) {
    std::map<std::string, std::string> files;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.is_regular_file()) {
            files[entry.path().lexically_relative(folder).generic_string()] = bytesOf(entry.path());
        }
    }
    return files;
}

/// Says which files differ, not with which bytes.
std::string differences(const fs::path& one, const fs::path& other) {
    const auto left = filesIn(one);
    const auto right = filesIn(other);
    std::string text;
    for (const auto& [name, bytes] : left) {
        const auto found = right.find(name);
        text += found == right.end() || found->second != bytes ? name + " " : "";
    }
    return text + (left.size() == right.size() ? "" : "(not as many files)");
}

class ArchiveTest : public testing::Test {
  protected:
    ArchiveTest()
        : m_scratch(fs::path(testing::TempDir()) / ("archive-" + UuidMaker().make().text())) {
        fs::create_directories(m_scratch);
        makeBook();
    }
    ~ArchiveTest() override { fs::remove_all(m_scratch); }

    template <typename Thing>
    Thing named() {
        Thing thing;
        thing.id = decltype(thing.id)(m_ids.make());
        return thing;
    }

    void apply(ChangeSet set) {
        m_now += 61'007;
        const auto entry = m_book.apply(set, {m_person, m_now});
        ASSERT_TRUE(entry.ok()) << entry.problem().sentence();
    }

    void makeBook() {
        apply(newBook("Book of trials", "A. Breeder", m_ids));
        ChangeSet set;
        set.sentence = "Two rows, a cross, three trees";
        auto person = named<Person>();
        person.name = "Wilma, of the \"Upper\" Orchard";
        auto site = named<Site>();
        site.name = "Hillside";
        site.latitude = 47.123456789012345;
        site.longitude = -0.1;
        auto row = named<TrialRow>();
        row.site = site.id;
        auto place = named<Position>();
        place.row = row.id;
        place.distance = 3.4;
        m_mother = named<Genotype>();
        m_mother.code = "M-1";
        m_mother.notes = "line one\r\nline two, with \"quotes\" and ü";
        auto cross = named<Cross>();
        cross.code = "X1";
        cross.seedParent = m_mother.id;
        m_child = named<Genotype>();
        m_child.code = "C-1";
        m_child.cross = cross.id;
        auto plant = named<Plant>();
        plant.position = place.id;
        plant.planted = Date::of(2019, 4, 2);
        auto limb = named<Plant>();
        limb.frame = plant.id;
        auto identity = named<Identity>();
        identity.plant = plant.id;
        identity.genotype = m_child.id;
        set.create(person);
        set.create(site);
        set.create(row);
        set.create(place);
        set.create(m_mother);
        set.create(cross);
        set.create(m_child);
        set.create(plant);
        set.create(limb);
        set.create(identity);
        apply(set);
        m_person = person.id;
        m_plant = plant.id;
        const EditedTree tree{plant.id, m_child.id, "C-1"};
        const EditContext context{*Date::of(2026, 8, 22), person.id, Hemisphere::north, &m_ids};
        apply(biteOf(tree, {}, {person.id, 6.5, Verdict::again, "sharp"}, context));
        apply(noteOn(std::span(&tree, 1), "=not a formula", context));
        ASSERT_TRUE(m_book.undo({m_person, m_now + 5}).ok());
        ASSERT_TRUE(m_book.redo({m_person, m_now + 6}).ok());
        ASSERT_TRUE(m_book.undo({m_person, m_now + 7}).ok());
        const std::string picture = "<svg xmlns='http://www.w3.org/2000/svg'/>";
        auto photo = named<Photo>();
        photo.sha256 = m_book.addPhoto(picture)->sha256;
        photo.mediaType = "image/svg+xml";
        photo.plant = plant.id;
        ChangeSet withPhoto;
        withPhoto.sentence = "A picture";
        withPhoto.create(photo);
        apply(withPhoto);
        ASSERT_TRUE(m_book.setWorkedOn(*Date::of(2026, 8, 22)).ok());
    }

    fs::path archive() {
        const fs::path folder = m_scratch / "archive";
        const auto report = writeArchive(m_book, folder);
        EXPECT_TRUE(report.ok()) << report.problem().sentence();
        return folder;
    }

    /// Writes the archive and changes a file of it.
    fs::path archiveWith(const std::string& file, const std::string& from, const std::string& to) {
        fs::remove_all(m_scratch / "archive");
        const fs::path folder = archive();
        std::string bytes = bytesOf(folder / file);
        const auto at = bytes.find(from);
        EXPECT_NE(at, std::string::npos) << from;
        bytes.replace(at, from.size(), to);
        std::ofstream(folder / file, std::ios::binary) << bytes;
        return folder;
    }

    /// Reads a faulty archive, without and with leaving out; the first must not write.
    ImportReport faulty(const fs::path& folder) {
        MemoryStore store;
        const auto report = readArchive(folder, store);
        EXPECT_TRUE(report.ok());
        EXPECT_FALSE(report->written);
        EXPECT_EQ(store.position(), 0);
        EXPECT_EQ(*store.count(Kind::trait), 0);
        EXPECT_GT(report->faultCount, 0);
        for (const auto& fault : report->faults) {
            EXPECT_FALSE(fault.where.empty()) << fault.what;
            EXPECT_FALSE(fault.remedy.empty()) << fault.what;
        }
        return *report;
    }

    static auto hasFault(const std::string& where, const std::string& what) {
        return Contains(AllOf(Field("where", &Problem::where, where),
                              Field("what", &Problem::what, HasSubstr(what))));
    }

    fs::path m_scratch;
    std::int64_t m_now = 1'787'392'800'123;
    UuidMaker m_ids{17, [this] { return m_now; }};
    MemoryStore m_book{Uuid::named("copy one")};
    std::optional<PersonId> m_person;
    Genotype m_mother;
    Genotype m_child;
    PlantId m_plant;
};

std::int64_t lineOf(const fs::path& file, const std::string& text) {
    const std::string bytes = bytesOf(file);
    const auto at = bytes.find(text);
    return 1 + std::count(bytes.begin(), bytes.begin() + static_cast<std::ptrdiff_t>(at), '\n');
}

TEST_F(ArchiveTest, ARebuiltBookArchivesToIdenticalBytes) {
    const fs::path first = archive();
    MemoryStore rebuilt(Uuid::named("copy two"));
    const auto report = readArchive(first, rebuilt);
    ASSERT_TRUE(report.ok()) << report.problem().sentence();
    EXPECT_TRUE(report->written);
    EXPECT_TRUE(report->faults.empty()) << report->faults.front().sentence();
    EXPECT_EQ(report->entries, m_book.position());
    EXPECT_EQ(rebuilt.position(), m_book.position());
    EXPECT_EQ(rebuilt.redoSentence(), m_book.redoSentence());
    EXPECT_EQ(rebuilt.undoSentence(), m_book.undoSentence());
    EXPECT_EQ(rebuilt.workedOn(), Date::of(2026, 8, 22));
    const fs::path second = m_scratch / "second";
    ASSERT_TRUE(writeArchive(rebuilt, second).ok());
    EXPECT_EQ(differences(first, second), "");
    // What was undone can be undone and done again in the rebuilt book as in the first.
    ASSERT_TRUE(rebuilt.undo({}).ok());
    ASSERT_TRUE(rebuilt.undo({}).ok());
}

TEST_F(ArchiveTest, TheManifestTellsTheHashOfEveryFile) {
    const fs::path folder = archive();
    const auto manifest = readManifest(bytesOf(folder / kManifestFile));
    ASSERT_TRUE(manifest.ok());
    const auto files = filesIn(folder);
    EXPECT_EQ(manifest->files.size() + 1, files.size());
    for (const auto& file : manifest->files) {
        EXPECT_EQ(file.sha256, hexOf(sha256(files.at(file.name)))) << file.name;
        EXPECT_EQ(file.bytes, static_cast<std::int64_t>(files.at(file.name).size()));
    }
    EXPECT_EQ(manifest->find("genotype.csv")->records, 2);
    EXPECT_THAT(files.at("columns.csv"), HasSubstr("genotype,cross,uuid,cross_made,,"));
}

TEST_F(ArchiveTest, AnOlderArchiveIsExchangedAndAnythingElseRefused) {
    const fs::path folder = archive();
    ASSERT_TRUE(m_book.undo({m_person, m_now + 9}).ok());
    EXPECT_TRUE(writeArchive(m_book, folder).ok());
    MemoryStore rebuilt;
    ASSERT_TRUE(readArchive(folder, rebuilt)->written);
    EXPECT_EQ(rebuilt.position(), m_book.position());
    std::ofstream(folder / "my own notes.txt") << "keep me";
    const auto refused = writeArchive(m_book, folder);
    ASSERT_FALSE(refused.ok());
    EXPECT_THAT(refused.problem().what, HasSubstr("my own notes.txt"));
    const fs::path other = m_scratch / "other";
    fs::create_directories(other);
    std::ofstream(other / "letter.txt") << "dear";
    EXPECT_FALSE(writeArchive(m_book, other).ok());
    EXPECT_TRUE(fs::exists(other / "letter.txt"));
    for (const auto& entry : fs::directory_iterator(m_scratch)) {
        EXPECT_FALSE(entry.path().filename().string().starts_with(".")) << entry.path();
    }
}

TEST_F(ArchiveTest, AStoppedArchiveLeavesNothing) {
    ChangeSet set;
    set.sentence = "Many people";
    for (int i = 0; i < 5000; ++i) {
        set.create(named<Person>());
    }
    apply(set);
    const auto stopped =
        writeArchive(m_book, m_scratch / "stopped", [](auto, auto) { return false; });
    ASSERT_FALSE(stopped.ok());
    EXPECT_EQ(stopped.problem().code, ProblemCode::cancelled);
    EXPECT_TRUE(fs::is_empty(m_scratch));
    const fs::path folder = archive();
    MemoryStore store;
    const auto import = readArchive(folder, store, {}, [](auto, auto) { return false; });
    ASSERT_FALSE(import.ok());
    EXPECT_EQ(import.problem().code, ProblemCode::cancelled);
    EXPECT_EQ(*store.count(Kind::person), 0);
}

TEST_F(ArchiveTest, APictureThatIsNotBesideTheBookIsSaid) {
    auto photo = named<Photo>();
    photo.sha256 = std::string(64, 'a');
    ChangeSet set;
    set.sentence = "A lost picture";
    set.create(photo);
    apply(set);
    const auto report = writeArchive(m_book, m_scratch / "first");
    ASSERT_TRUE(report.ok());
    EXPECT_EQ(report->notices.size(), 1U);
    MemoryStore rebuilt;
    ASSERT_TRUE(readArchive(m_scratch / "first", rebuilt)->written);
    ASSERT_TRUE(writeArchive(rebuilt, m_scratch / "second").ok());
    EXPECT_EQ(differences(m_scratch / "first", m_scratch / "second"), "");
}

TEST_F(ArchiveTest, ADryRunWritesNothing) {
    const fs::path folder = archive();
    MemoryStore store;
    ImportOptions options;
    options.dryRun = true;
    const auto report = readArchive(folder, store, options);
    ASSERT_TRUE(report.ok());
    EXPECT_FALSE(report->written);
    EXPECT_EQ(report->faultCount, 0);
    EXPECT_EQ(report->counts[static_cast<std::size_t>(Kind::plant)].read, 2);
    EXPECT_EQ(*store.count(Kind::plant), 0);
}

TEST_F(ArchiveTest, NoManifestForeignManifestAndNewerLayout) {
    EXPECT_THAT(faulty(m_scratch).faults, hasFault("manifest.json", "not an archive"));
    EXPECT_THAT(faulty(archiveWith("manifest.json", "pipwright-archive", "something")).faults,
                hasFault("manifest.json", "does not describe"));
    EXPECT_THAT(
        faulty(archiveWith("manifest.json", "\"version\": 2", "\"version\": \"one\"")).faults,
        hasFault("manifest.json", "unknown"));
    const auto newer = faulty(archiveWith("manifest.json", "\"version\": 2", "\"version\": 99"));
    EXPECT_EQ(newer.faults.at(0).code, ProblemCode::newer);
}

TEST_F(ArchiveTest, AWrongHeaderAndAMissingTable) {
    EXPECT_THAT(faulty(archiveWith("plant.csv", "uuid,kind,tag", "uuid,tag,kind")).faults,
                hasFault("plant.csv, line 1", "columns"));
    const fs::path folder = archive();
    fs::remove(folder / "site.csv");
    EXPECT_THAT(faulty(folder).faults, hasFault("site.csv", "not there"));
}

TEST_F(ArchiveTest, AnArchiveFromBeforePlannedSittingsHasNoKeys) {
    const fs::path folder = archiveWith("manifest.json", "\"version\": 2", "\"version\": 1");
    fs::remove(folder / "sealed_key.csv");
    std::string manifest = bytesOf(folder / kManifestFile);
    const auto entry = manifest.rfind('{', manifest.find("sealed_key.csv"));
    const auto end = manifest.find('}', entry);
    manifest.erase(entry, manifest.find('{', end) - entry);
    std::ofstream(folder / kManifestFile, std::ios::binary) << manifest;
    MemoryStore rebuilt;
    const auto report = readArchive(folder, rebuilt);
    ASSERT_TRUE(report.ok()) << report.problem().sentence();
    EXPECT_TRUE(report->written) << (report->faults.empty() ? "" : report->faults[0].sentence());
    EXPECT_EQ(rebuilt.position(), m_book.position());
    EXPECT_EQ(*rebuilt.count(Kind::sealedKey), 0);
    // The layout of today must have the table.
    const fs::path today = m_scratch / "today";
    ASSERT_TRUE(writeArchive(m_book, today).ok());
    fs::remove(today / "sealed_key.csv");
    EXPECT_THAT(faulty(today).faults, hasFault("sealed_key.csv", "not there"));
}

TEST_F(ArchiveTest, ABadByteIsPlaced) {
    const fs::path folder = archiveWith("site.csv", "Hillside", "Hill\xE9side");
    EXPECT_THAT(faulty(folder).faults, hasFault("site.csv, line 2, character 42", "0xE9"));
}

TEST_F(ArchiveTest, ImpossibleDatesWordsAndIds) {
    const fs::path folder = archiveWith("plant.csv", "2019-04-02", "2019-02-30");
    const auto line = std::to_string(lineOf(folder / "plant.csv", "2019-02-30"));
    EXPECT_THAT(faulty(folder).faults,
                hasFault("plant.csv, line " + line + ", column planted", "not a day"));
    EXPECT_THAT(faulty(archiveWith("site.csv", "unknown", "sideways")).faults,
                hasFault("site.csv, line 2, column hemisphere", "sideways"));
    EXPECT_THAT(faulty(archiveWith("site.csv", "47.12", "47,12")).faults,
                hasFault("site.csv, line 2", "cells"));
    const std::string id = m_mother.id.uuid.text();
    EXPECT_THAT(faulty(archiveWith("genotype.csv", id, "no-id")).faults,
                Contains(Field("what", &Problem::what, HasSubstr("is not an id"))));
    EXPECT_THAT(
        faulty(archiveWith("genotype.csv", m_child.id.uuid.text(), m_mother.id.uuid.text())).faults,
        hasFault("genotype.csv, line 4, column uuid", "earlier line"));
}

TEST_F(ArchiveTest, AnUnknownParentIsNamed) {
    const std::string nobody = Uuid::named("nobody").text();
    const auto report = faulty(archiveWith("cross_made.csv", m_mother.id.uuid.text(), nobody));
    EXPECT_THAT(report.faults, hasFault("cross_made.csv, line 2, column seed_parent", nobody));
    EXPECT_EQ(report.faultCount, 2); // that, and the hash of the file
}

TEST_F(ArchiveTest, ARingInThePedigreeIsNamedByItsCodes) {
    auto wrong = named<Parentage>();
    wrong.genotype = m_mother.id;
    wrong.role = ParentRole::pollen;
    wrong.parent = m_child.id;
    ChangeSet set;
    set.sentence = "A child is its mother's father";
    set.create(wrong);
    apply(set);
    const fs::path folder = archive();
    const auto report = faulty(folder);
    ASSERT_EQ(report.faults.size(), 1U);
    EXPECT_EQ(report.faults[0].where, "parentage.csv, line 2");
    EXPECT_THAT(report.faults[0].what,
                testing::AnyOf(HasSubstr("M-1 > C-1 > M-1"), HasSubstr("C-1 > M-1 > C-1")));
    MemoryStore store;
    ImportOptions options;
    options.skipFaulty = true;
    const auto left = readArchive(folder, store, options);
    ASSERT_TRUE(left->written);
    EXPECT_EQ(*store.count(Kind::parentage), 0);
    EXPECT_EQ(*store.count(Kind::genotype), 2);
}

TEST_F(ArchiveTest, FaultsOfTheJournalArePlaced) {
    EXPECT_THAT(faulty(archiveWith("journal_entry.csv", "2,", "7,")).faults,
                Contains(Field("where", &Problem::where, HasSubstr("journal_entry.csv, line "))));
    EXPECT_THAT(faulty(archiveWith("journal_change.csv", "{\"\"", "{\"\"no such ")).faults,
                Contains(Field("where", &Problem::where, HasSubstr("journal_change.csv, line 2"))));
    EXPECT_THAT(faulty(archiveWith("journal_entry.csv", ",undo,4,", ",undo,,")).faults,
                Contains(Field("where", &Problem::where, HasSubstr("column target"))));
}

TEST_F(ArchiveTest, AChangedTableIsTakenOnlyWhenTold) {
    const fs::path folder = archiveWith("site.csv", "Hillside", "Hilltop");
    EXPECT_THAT(faulty(folder).faults, hasFault("site.csv", "SHA-256"));
    MemoryStore store;
    ImportOptions options;
    options.takeChanged = true;
    const auto report = readArchive(folder, store, options);
    ASSERT_TRUE(report->written);
    EXPECT_TRUE(report->baselineLaid);
    EXPECT_EQ(store.all<Site>()->front().name, "Hilltop");
    const auto last = store.journal({std::nullopt, 0, std::nullopt, 1, true, true})->front();
    EXPECT_EQ(last.kind, EntryKind::baseline);
    Digest digest;
    for (const Kind kind : kAllKinds) {
        ASSERT_TRUE(store
                        .scan(kind, {},
                              [&](const Record& r) {
                                  digest.add(r);
                                  return true;
                              })
                        .ok());
    }
    EXPECT_EQ(last.digest, digest.text());
    EXPECT_FALSE(store.undoSentence().has_value());
}

TEST_F(ArchiveTest, SkippingLeavesOutWhatDependsAndSaysSo) {
    const fs::path folder = archiveWith("plant.csv", "2019-04-02", "2019-02-30");
    MemoryStore store;
    ImportOptions options;
    options.skipFaulty = true;
    options.dryRun = true;
    const auto dry = readArchive(folder, store, options);
    options.dryRun = false;
    const auto report = readArchive(folder, store, options);
    ASSERT_TRUE(report.ok());
    ASSERT_TRUE(report->written);
    EXPECT_TRUE(report->baselineLaid);
    EXPECT_EQ(*store.count(Kind::plant), 0);    // the tree, and the limb on it
    EXPECT_EQ(*store.count(Kind::identity), 0); // of the tree
    EXPECT_EQ(*store.count(Kind::lot), 0);
    EXPECT_EQ(*store.count(Kind::score), 0);
    EXPECT_EQ(*store.count(Kind::tasting), 1);
    EXPECT_EQ(report->counts[static_cast<std::size_t>(Kind::plant)].skipped, 2);
    EXPECT_EQ(dry->counts[static_cast<std::size_t>(Kind::score)].skipped, 1);
    EXPECT_THAT(report->notices, Contains(HasSubstr("score.csv: 1 line is left out")));
    EXPECT_EQ(store.position(), m_book.position() + 1);
    // What came of it is a book like any other.
    ASSERT_TRUE(writeArchive(store, m_scratch / "again").ok());
    MemoryStore again;
    EXPECT_TRUE(readArchive(m_scratch / "again", again)->written);
}

TEST_F(ArchiveTest, AHarmedPictureIsAFault) {
    const fs::path folder = archive();
    for (const auto& entry : fs::directory_iterator(folder / "photos")) {
        std::ofstream(entry.path(), std::ios::app) << " ";
    }
    EXPECT_THAT(faulty(folder).faults,
                Contains(Field("where", &Problem::where, HasSubstr("photos/"))));
}

TEST_F(ArchiveTest, FaultsBeyondTheCapAreCounted) {
    ChangeSet set;
    set.sentence = "Many people";
    for (int i = 0; i < 300; ++i) {
        set.create(named<Person>());
    }
    apply(set);
    const fs::path folder = archive();
    std::string bytes = bytesOf(folder / "person.csv");
    std::string harmed;
    for (std::size_t at = 0; at < bytes.size(); ++at) {
        harmed += bytes[at] == '\r' && at > 100 ? std::string(",superfluous\r")
                                                : std::string(1, bytes[at]);
    }
    std::ofstream(folder / "person.csv", std::ios::binary) << harmed;
    const auto report = faulty(folder);
    EXPECT_EQ(report.faults.size(), 100U);
    EXPECT_GT(report.faultCount, 300);
    EXPECT_EQ(report.moreFaults(),
              "and " + std::to_string(report.faultCount - 100) + " more faults");
}

} // namespace

} // namespace pipwright
