#pragma once

#include "tests/support/store_contract_fixture.h"

namespace pipwright::test {

TYPED_TEST_SUITE_P(StoreContract);

TYPED_TEST_P(StoreContract, BeginsEmpty) {
    for (const Kind kind : kAllKinds) {
        const auto count = this->store().count(kind);
        ASSERT_TRUE(count.ok()) << count.problem().sentence();
        EXPECT_EQ(*count, 0) << nameOf(kind);
    }
    EXPECT_EQ(this->store().position(), 0);
    EXPECT_FALSE(this->store().undoSentence());
    EXPECT_FALSE(this->store().redoSentence());
}

TYPED_TEST_P(StoreContract, KeepsEveryFieldOfARecord) {
    auto site = this->template fresh<Site>();
    site.name = "Éclair's \"Halde\" \xF0\x9F\x8D\x8E";
    site.latitude = -41.25;
    site.longitude = 1.0 / 3.0;
    site.hemisphere = Hemisphere::south;
    this->create(site);
    const auto found = this->store().get(site.id);
    ASSERT_TRUE(found.ok() && found->has_value());
    EXPECT_EQ(toRecord(**found), toRecord(site));
    EXPECT_FALSE((*found)->elevation.has_value());
    this->restart();
    const auto again = this->store().get(site.id);
    ASSERT_TRUE(again.ok() && again->has_value());
    EXPECT_EQ(toRecord(**again), toRecord(site));
}

TYPED_TEST_P(StoreContract, ScansInTheOrderOfIdsAndOnlyWhatIsAskedFor) {
    auto late = this->genotype("B-2");
    auto early = this->genotype("A-1");
    std::swap(late.id, early.id); // made in the other order
    ChangeSet set;
    set.create(late);
    set.create(early);
    this->apply(set);
    const auto code = *fieldIndex(Kind::genotype, "code");
    const auto records = this->recordsOf(this->store(), Kind::genotype, {{code}, std::nullopt});
    ASSERT_EQ(records.size(), 2U);
    EXPECT_LT(records[0].id, records[1].id);
    EXPECT_EQ(records[0].values[code], Value{"A-1"});
    EXPECT_EQ(records[1].values[code], Value{"B-2"});
    for (std::size_t i = 0; i < records[0].values.size(); ++i) {
        EXPECT_EQ(std::holds_alternative<std::monostate>(records[0].values[i]), i != code);
    }
    int seen = 0;
    EXPECT_TRUE(this->store().scan(Kind::genotype, {}, [&seen](const Record&) {
        ++seen;
        return false;
    }));
    EXPECT_EQ(seen, 1);
}

TYPED_TEST_P(StoreContract, FindsByTheValueOfAField) {
    auto child = this->genotype("A-1");
    child.benchmark = true;
    auto plant = this->template fresh<Plant>();
    auto other = this->template fresh<Plant>();
    auto identity = this->template fresh<Identity>();
    identity.plant = plant.id;
    identity.genotype = child.id;
    auto unnamed = this->template fresh<Identity>();
    unnamed.plant = other.id;
    ChangeSet set;
    set.create(identity); // what is referred to may come later in the set
    set.create(unnamed);
    set.create(child);
    set.create(plant);
    set.create(other);
    this->apply(set);
    auto of = [this](std::string_view field, const Value& value) {
        const auto found = this->store().template where<Identity>(field, value);
        EXPECT_TRUE(found.ok());
        return found ? found->size() : 99;
    };
    EXPECT_EQ(of("plant", plant.id.uuid), 1U);
    EXPECT_EQ(of("genotype", Value{}), 1U);
    EXPECT_EQ(of("genotype", this->m_ids.make()), 0U);
    EXPECT_EQ(of("confidence", "unknown"), 2U);
    const auto benchmarks =
        this->store().template where<Genotype>("benchmark", Value{std::int64_t{1}});
    ASSERT_TRUE(benchmarks.ok());
    EXPECT_EQ(benchmarks->size(), 1U);
}

TYPED_TEST_P(StoreContract, RefusesAnEditWhoseBeforeNoLongerHolds) {
    const auto first = this->genotype("A-1");
    this->create(first);
    auto mine = first;
    mine.notes = "mine";
    auto theirs = first;
    theirs.notes = "theirs";
    this->edit(first, theirs);
    const std::string before = this->dumpOf(this->store());
    ChangeSet set;
    set.create(this->genotype("A-2")); // nothing of the set may stay
    set.edit(first, mine);
    const auto entry = this->store().apply(set, {});
    ASSERT_FALSE(entry.ok());
    EXPECT_EQ(entry.problem().code, ProblemCode::conflict);
    EXPECT_FALSE(entry.problem().remedy.empty());
    EXPECT_EQ(this->dumpOf(this->store()), before);
    EXPECT_EQ(this->store().position(), 2);
}

TYPED_TEST_P(StoreContract, RefusesReferencesThatLeadNowhere) {
    auto plant = this->template fresh<Plant>();
    plant.position = PositionId(this->m_ids.make());
    ChangeSet set;
    set.create(plant);
    const auto entry = this->store().apply(set, {});
    ASSERT_FALSE(entry.ok());
    EXPECT_EQ(entry.problem().code, ProblemCode::conflict);
    EXPECT_NE(entry.problem().where.find("position"), std::string::npos);
    // A record of another kind is no target either.
    const auto genotype = this->genotype("A-1");
    this->create(genotype);
    plant.position = PositionId(genotype.id.uuid);
    ChangeSet wrongKind;
    wrongKind.create(plant);
    EXPECT_FALSE(this->store().apply(wrongKind, {}).ok());
}

TYPED_TEST_P(StoreContract, RefusesToEraseWhatIsReferredTo) {
    const auto genotype = this->genotype("A-1");
    auto alias = this->template fresh<Alias>();
    alias.genotype = genotype.id;
    ChangeSet both;
    both.create(genotype);
    both.create(alias);
    this->apply(both);
    ChangeSet erase;
    erase.erase(genotype);
    const auto refused = this->store().apply(erase, {});
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.problem().code, ProblemCode::conflict);
    EXPECT_EQ(*this->store().count(Kind::genotype), 1);
    ChangeSet together;
    together.erase(genotype);
    together.erase(alias);
    this->apply(together);
    EXPECT_EQ(*this->store().count(Kind::genotype), 0);
    EXPECT_EQ(*this->store().count(Kind::alias), 0);
}

TYPED_TEST_P(StoreContract, RefusesValuesThatDoNotFit) {
    auto expectRefused = [this](const Record& record) {
        ChangeSet set;
        set.add(ChangeSet::creationOf(record));
        const auto entry = this->store().apply(set, {});
        EXPECT_FALSE(entry.ok()) << asJson(record);
        EXPECT_EQ(this->store().position(), 0);
    };
    Record badWord = toRecord(this->genotype("A-1"));
    badWord.values[*fieldIndex(Kind::genotype, "kind")] = Value{"apple"};
    expectRefused(badWord);
    Record badText = toRecord(this->genotype("A-1"));
    badText.values[*fieldIndex(Kind::genotype, "code")] = Value{"\xff\xfe"};
    expectRefused(badText);
    Record noId = toRecord(this->genotype("A-1"));
    noId.id = Uuid{};
    expectRefused(noId);
    Record short1 = toRecord(this->genotype("A-1"));
    short1.values[0] = Value{std::int64_t{3}};
    expectRefused(short1);
}

TYPED_TEST_P(StoreContract, AnObservationHasExactlyOneSubject) {
    const auto genotype = this->genotype("A-1");
    auto plant = this->template fresh<Plant>();
    auto trait = this->template fresh<Trait>();
    auto observation = this->template fresh<Observation>();
    observation.trait = trait.id;
    ChangeSet things;
    things.create(genotype);
    things.create(plant);
    things.create(trait);
    this->apply(things);
    ChangeSet ofNothing;
    ofNothing.create(observation);
    EXPECT_FALSE(this->store().apply(ofNothing, {}).ok());
    observation.plant = plant.id;
    this->create(observation);
    auto both = observation;
    both.genotype = genotype.id;
    ChangeSet ofTwo;
    ofTwo.edit(observation, both);
    EXPECT_FALSE(this->store().apply(ofTwo, {}).ok());
}

TYPED_TEST_P(StoreContract, JournalSaysWhoWhenAndWhat) {
    auto person = this->template fresh<Person>();
    person.initials = "KM";
    ChangeSet add;
    add.sentence = "Add KM";
    add.create(person);
    const auto written = this->store().apply(add, {person.id, 1234});
    ASSERT_TRUE(written.ok());
    auto renamed = person;
    renamed.initials = "KMx";
    this->edit(person, renamed, "Initials of KM");
    this->create(this->genotype("A-1"), "Add A-1");
    this->restart();
    JournalRequest all;
    const auto entries = this->store().journal(all);
    ASSERT_TRUE(entries.ok());
    ASSERT_EQ(entries->size(), 3U);
    EXPECT_EQ(entries->front().sentence, "Add A-1");
    EXPECT_EQ(entries->back().changes, written->changes);
    EXPECT_EQ(entries->back().person, person.id);
    EXPECT_EQ(entries->back().moment, 1234);
    EXPECT_FALSE(entries->back().copy.isNil());
    JournalRequest ofPerson;
    ofPerson.record = {Kind::person, person.id.uuid};
    ofPerson.newestFirst = false;
    const auto history = this->store().journal(ofPerson);
    ASSERT_TRUE(history.ok());
    ASSERT_EQ(history->size(), 2U);
    ASSERT_EQ((*history)[1].changes.size(), 1U);
    ASSERT_EQ((*history)[1].changes[0].fields.size(), 1U);
    EXPECT_EQ((*history)[1].changes[0].fields[0].before, Value{"KM"});
    EXPECT_EQ((*history)[1].changes[0].fields[0].after, Value{"KMx"});
    JournalRequest middle;
    middle.after = 1;
    middle.before = 3;
    middle.withChanges = false;
    const auto one = this->store().journal(middle);
    ASSERT_TRUE(one.ok());
    ASSERT_EQ(one->size(), 1U);
    EXPECT_EQ(one->front().position, 2);
    EXPECT_TRUE(one->front().changes.empty());
}

TYPED_TEST_P(StoreContract, UndoesToTheBeginningAndRedoesAcrossRestarts) {
    const auto first = this->genotype("A-1");
    auto noted = first;
    noted.notes = "sweet";
    this->create(first, "Add A-1");
    const std::string one = this->dumpOf(this->store());
    this->edit(first, noted, "Note on A-1");
    const std::string two = this->dumpOf(this->store());
    EXPECT_EQ(this->store().undoSentence(), "Note on A-1");
    this->undo();
    EXPECT_EQ(this->dumpOf(this->store()), one);
    this->restart();
    EXPECT_EQ(this->store().undoSentence(), "Add A-1");
    EXPECT_EQ(this->store().redoSentence(), "Note on A-1");
    this->undo();
    EXPECT_EQ(this->dumpOf(this->store()), "");
    EXPECT_FALSE(this->store().undoSentence());
    EXPECT_EQ(this->store().undo({}).problem().code, ProblemCode::notFound);
    this->restart();
    this->redo();
    this->redo();
    EXPECT_EQ(this->dumpOf(this->store()), two);
    EXPECT_FALSE(this->store().redo({}).ok());
    this->undo();
    this->create(this->genotype("A-2"), "Add A-2"); // ends what could be redone
    EXPECT_FALSE(this->store().redoSentence());
    this->restart();
    EXPECT_FALSE(this->store().redoSentence());
    EXPECT_EQ(this->store().undoSentence(), "Add A-2");
    EXPECT_EQ(this->store().position(), 8); // what was undone stays in the history
}

TYPED_TEST_P(StoreContract, FindsWordsByTheirBeginnings) {
    auto genotype = this->genotype("AT17-014");
    genotype.notes = "Geschmack wie Éclair, fest";
    auto person = this->template fresh<Person>();
    person.name = "Jo Éclair";
    person.healthNotes = "hazelnut";
    this->create(genotype);
    this->create(person);
    auto found = [this](std::string_view words) {
        const auto hits = this->store().findWords(words, 10);
        EXPECT_TRUE(hits.ok()) << words;
        std::set<Uuid> records;
        for (const Found& hit : hits ? *hits : std::vector<Found>{}) {
            records.insert(hit.record);
            EXPECT_FALSE(hit.text.empty());
        }
        return records;
    };
    const std::set<Uuid> only{genotype.id.uuid};
    const std::set<Uuid> both{genotype.id.uuid, person.id.uuid};
    EXPECT_EQ(found("at17-0"), only);
    EXPECT_EQ(found("eclair"), both);
    EXPECT_EQ(found("ÉCL fest"), only);
    EXPECT_EQ(found("clair"), std::set<Uuid>{});
    EXPECT_EQ(found("hazelnut"), std::set<Uuid>{}); // health notes are nobody's to look for
    EXPECT_EQ(found(""), std::set<Uuid>{});
    EXPECT_EQ(found("   "), std::set<Uuid>{});
    EXPECT_TRUE(this->store().findWords("\"' OR * ) : ^ {-} NEAR(", 10).ok());
    auto renamed = genotype;
    renamed.notes = "fest";
    this->edit(genotype, renamed);
    EXPECT_EQ(found("eclair"), std::set<Uuid>{person.id.uuid});
    this->undo();
    EXPECT_EQ(found("eclair"), both);
    EXPECT_EQ(this->store().findWords("eclair", 1)->size(), 1U);
}

TYPED_TEST_P(StoreContract, BulkLoadTakesContentAndHistoryAsTheyAre) {
    const auto first = this->genotype("A-1");
    auto noted = first;
    noted.notes = "sweet";
    auto cross = this->template fresh<Cross>();
    cross.seedParent = first.id; // refers to what comes later in the load
    this->create(first, "Add A-1");
    this->edit(first, noted, "Note");
    this->create(cross, "Cross");
    this->undo();
    this->redo();
    JournalRequest request;
    request.newestFirst = false;
    const auto entries = this->store().journal(request);
    ASSERT_TRUE(entries.ok());
    auto target = this->another();
    {
        auto load = target->beginLoad();
        ASSERT_TRUE(load.ok()) << load.problem().sentence();
        for (const Kind kind : kAllKinds) {
            for (const Record& record : this->recordsOf(this->store(), kind)) {
                ASSERT_TRUE((*load)->add(record).ok());
            }
        }
        for (const JournalEntry& entry : *entries) {
            ASSERT_TRUE((*load)->add(entry).ok());
        }
        const auto finished = (*load)->finish();
        ASSERT_TRUE(finished.ok()) << finished.problem().sentence();
    }
    EXPECT_EQ(this->dumpOf(*target), this->dumpOf(this->store()));
    const auto taken = target->journal(request);
    ASSERT_TRUE(taken.ok());
    ASSERT_EQ(taken->size(), entries->size());
    for (std::size_t i = 0; i < entries->size(); ++i) {
        EXPECT_EQ((*taken)[i].copy, (*entries)[i].copy);
        EXPECT_EQ((*taken)[i].moment, (*entries)[i].moment);
        EXPECT_EQ((*taken)[i].kind, (*entries)[i].kind);
        EXPECT_EQ((*taken)[i].target, (*entries)[i].target);
        EXPECT_EQ((*taken)[i].sentence, (*entries)[i].sentence);
        EXPECT_EQ((*taken)[i].changes, (*entries)[i].changes);
    }
    EXPECT_EQ(target->findWords("sweet", 5)->size(), 1U);
    EXPECT_EQ(target->undoSentence(), "Cross");
    ASSERT_TRUE(target->undo({}).ok());
    ASSERT_TRUE(target->undo({}).ok());
    ASSERT_TRUE(target->undo({}).ok());
    EXPECT_EQ(this->dumpOf(*target), "");
    EXPECT_FALSE(target->beginLoad().ok()); // no longer empty: it has a history
}

TYPED_TEST_P(StoreContract, BulkLoadLeavesNothingWhenItFails) {
    auto alias = this->template fresh<Alias>();
    alias.genotype = GenotypeId(this->m_ids.make());
    const auto genotype = this->genotype("A-1");
    {
        auto load = this->store().beginLoad();
        ASSERT_TRUE(load.ok());
        EXPECT_TRUE((*load)->add(toRecord(genotype)).ok());
        EXPECT_TRUE((*load)->add(toRecord(alias)).ok());
        EXPECT_FALSE((*load)->finish().ok()); // the alias is of nothing
    }
    EXPECT_EQ(this->dumpOf(this->store()), "");
    {
        auto load = this->store().beginLoad();
        ASSERT_TRUE(load.ok());
        EXPECT_TRUE((*load)->add(toRecord(genotype)).ok());
        const auto twice = (*load)->add(toRecord(genotype));
        ASSERT_FALSE(twice.ok());
        EXPECT_EQ(twice.problem().code, ProblemCode::badInput);
    }
    EXPECT_EQ(this->dumpOf(this->store()), "");
    {
        auto load = this->store().beginLoad();
        ASSERT_TRUE(load.ok());
        JournalEntry gap;
        gap.position = 2;
        gap.copy = this->m_ids.make();
        EXPECT_FALSE((*load)->add(gap).ok());
    }
    EXPECT_EQ(this->store().position(), 0);
    this->create(genotype); // the store is as good as before
    EXPECT_EQ(*this->store().count(Kind::genotype), 1);
}

TYPED_TEST_P(StoreContract, KeepsTheDayAndPictures) {
    EXPECT_FALSE(this->store().workedOn());
    const auto day = *Date::of(2026, 8, 22);
    ASSERT_TRUE(this->store().setWorkedOn(day).ok());
    const std::string svg = "<svg xmlns='http://www.w3.org/2000/svg'/>";
    const auto photo = this->store().addPhoto(svg);
    ASSERT_TRUE(photo.ok()) << photo.problem().sentence();
    EXPECT_EQ(photo->mediaType, "image/svg+xml");
    EXPECT_EQ(photo->sha256.size(), 64U);
    EXPECT_FALSE(this->store().addPhoto("no picture").ok());
    EXPECT_FALSE(this->store().photoBytes(std::string(64, '0')).ok());
    EXPECT_FALSE(this->store().photoBytes("../../etc/passwd").ok());
    this->restart();
    EXPECT_EQ(this->store().workedOn(), day);
    EXPECT_EQ(*this->store().photoBytes(photo->sha256), svg);
    EXPECT_EQ(this->store().position(), 0); // neither is part of the history
}

REGISTER_TYPED_TEST_SUITE_P(StoreContract, BeginsEmpty, KeepsEveryFieldOfARecord,
                            ScansInTheOrderOfIdsAndOnlyWhatIsAskedFor, FindsByTheValueOfAField,
                            RefusesAnEditWhoseBeforeNoLongerHolds, RefusesReferencesThatLeadNowhere,
                            RefusesToEraseWhatIsReferredTo, RefusesValuesThatDoNotFit,
                            AnObservationHasExactlyOneSubject, JournalSaysWhoWhenAndWhat,
                            UndoesToTheBeginningAndRedoesAcrossRestarts,
                            FindsWordsByTheirBeginnings, BulkLoadTakesContentAndHistoryAsTheyAre,
                            BulkLoadLeavesNothingWhenItFails, KeepsTheDayAndPictures);

} // namespace pipwright::test
