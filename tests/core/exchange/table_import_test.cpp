#include "core/exchange/archive.h"
#include "core/exchange/table_import.h"
#include "core/history/memory_store.h"
#include "core/orchard/dictionary.h"

#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace pipwright {

using testing::Contains;
using testing::ElementsAre;
using testing::Field;
using testing::HasSubstr;

namespace {

const Date kToday = *Date::of(2026, 8, 22);

PlainTable tableOf(const std::string& text) {
    auto table = readTable(text, "trees.csv");
    EXPECT_TRUE(table.ok());
    return *table;
}

class TableImport : public testing::Test {
  protected:
    Result<ImportPlan> plan(RecipeTarget target, const std::string& text,
                            PlanOptions options = {}) {
        const auto table = tableOf(text);
        TableRecipe recipe = recipeFromHeadings(target, table.headings);
        if (m_adjust) {
            m_adjust(recipe);
        }
        return planImport(table, recipe, m_book, kToday, m_ids, options);
    }

    ImportPlan import(RecipeTarget target, const std::string& text) {
        auto planned = plan(target, text);
        EXPECT_TRUE(planned.ok()) << planned.problem().sentence();
        for (const auto& fault : planned->faults) {
            ADD_FAILURE() << fault.sentence();
        }
        if (!planned->changes.empty()) {
            const auto entry = m_book.apply(planned->changes, {});
            EXPECT_TRUE(entry.ok()) << entry.problem().sentence();
        }
        return *planned;
    }

    /// A faulty table changes nothing, and each fault says where and what to do.
    std::vector<Problem> faults(RecipeTarget target, const std::string& text) {
        const auto planned = plan(target, text);
        EXPECT_TRUE(planned.ok());
        EXPECT_TRUE(planned->changes.empty());
        for (const auto& fault : planned->faults) {
            EXPECT_THAT(fault.where, HasSubstr("trees.csv, line "));
            EXPECT_FALSE(fault.remedy.empty());
        }
        return planned->faults;
    }

    static auto hasFault(const std::string& where, const std::string& what) {
        return Contains(AllOf(Field("where", &Problem::where, "trees.csv, " + where),
                              Field("what", &Problem::what, HasSubstr(what))));
    }

    Genotype genotype(const std::string& code) {
        const auto all = m_book.where<Genotype>("code", Value{code});
        EXPECT_EQ(all->size(), 1U) << code;
        return all->empty() ? Genotype{} : all->front();
    }

    void importTrees() {
        import(RecipeTarget::trees,
               "code,row,position,distance,seed parent,pollen parent,year,planted\n"
               "AP1,3,1,0.8,Ash Tarn,Red Moor,2016,2017\n"
               "AP2,3,2,1.6,Ash Tarn,Red Moor,2016,2017-04-02\n"
               "AP3,4,1,,Ash Tarn,open,2016,\n");
    }

    std::int64_t count(Kind kind) { return *m_book.count(kind); }

    MemoryStore m_book;
    UuidMaker m_ids{5, [] { return std::int64_t{1'000'000}; }};
    std::function<void(TableRecipe&)> m_adjust;
};

TEST(PlainTable, FindsTheDelimiterAndNamesTheColumns) {
    EXPECT_EQ(tableOf("a;b;c\n1,5;2;3\n").delimiter, ';');
    EXPECT_EQ(tableOf("a\tb\n1, 2\t3, 4\n").delimiter, '\t');
    EXPECT_EQ(tableOf("a,b\n").delimiter, ',');
    const auto table = tableOf("code,,code\r\n\r\n A ,1\r\n,,\r\nB,2,3,,\r\n");
    EXPECT_THAT(table.headings, ElementsAre("code", "column 2", "code (2)"));
    ASSERT_EQ(table.lines.size(), 2U);
    EXPECT_EQ(table.lines[0].number, 3);
    EXPECT_EQ(table.lines[0].cells.size(), 3U);
    EXPECT_THAT(table.lines[1].cells, ElementsAre("B", "2", "3"));
}

TEST(PlainTable, TellsWhatCannotBeRead) {
    EXPECT_FALSE(readTable("", "x").ok());
    EXPECT_FALSE(readTable(" \n,\n", "x").ok());
    const auto table = tableOf("a,b\n1,2,3\n\xFF,2\n3,4\n");
    ASSERT_EQ(table.faults.size(), 2U);
    EXPECT_EQ(table.faults[0].where, "trees.csv, line 2");
    EXPECT_EQ(table.faults[1].where, "trees.csv, line 3, character 1");
    EXPECT_EQ(table.lines.size(), 1U);
}

TEST(TableRecipeTest, IsKeptInTheBookAndComesBack) {
    TableRecipe recipe;
    recipe.name = "My old list";
    recipe.target = RecipeTarget::walkMarks;
    recipe.columns = {{"Baum", TableField::code, {}},
                      {"Reife", TableField::mark, {{"noch nicht", "not yet"}, {"reif", "ripe"}}}};
    recipe.dateOrder = DateOrder::monthDayYear;
    recipe.decimalMark = ',';
    recipe.site = "Hillside";
    recipe.date = Date::of(2025, 9, 1);
    recipe.setting = TastingPlace::row;
    const Recipe stored = storedRecipe(recipe, RecipeId(Uuid::named("recipe")));
    EXPECT_TRUE(checkRecord(toRecord(stored)).ok());
    const auto back = tableRecipe(stored);
    ASSERT_TRUE(back.ok());
    EXPECT_EQ(*back, recipe);
    Recipe harmed = stored;
    harmed.columns = "[";
    EXPECT_FALSE(tableRecipe(harmed).ok());
}

TEST_F(TableImport, TreesMakeAWorkingBookOutOfAnEmptyOne) {
    importTrees();
    EXPECT_EQ(count(Kind::site), 1);
    EXPECT_EQ(count(Kind::trialRow), 2);
    EXPECT_EQ(count(Kind::position), 3);
    EXPECT_EQ(count(Kind::plant), 3);
    EXPECT_EQ(count(Kind::identity), 3);
    EXPECT_EQ(count(Kind::genotype), 5); // three trees, two parents
    EXPECT_EQ(count(Kind::cross), 2);
    EXPECT_EQ(count(Kind::trait), static_cast<std::int64_t>(shippedTraits().size()));
    EXPECT_EQ(count(Kind::traitState), static_cast<std::int64_t>(shippedTraitStates().size()));
    const auto first = genotype("AP1");
    EXPECT_EQ(first.kind, GenotypeKind::seedling);
    const auto family = m_book.get(*first.cross);
    EXPECT_EQ((*family)->code, "Ash Tarn x Red Moor 2016");
    EXPECT_EQ((*family)->seedParent, genotype("Ash Tarn").id);
    const auto open = m_book.get(*genotype("AP3").cross);
    EXPECT_EQ((*open)->pollination, Pollination::open);
    EXPECT_FALSE((*open)->pollenParent.has_value());
    const auto plants = *m_book.all<Plant>();
    EXPECT_EQ(plants[0].planted, Date::of(2017, 1, 1));
    EXPECT_EQ(plants[0].plantedTyped, "2017");
    EXPECT_EQ(plants[1].plantedTyped, "");
    EXPECT_EQ(m_book.all<Position>()->front().distance, 0.8);
}

TEST_F(TableImport, OneStepTakesItAllBack) {
    importTrees();
    EXPECT_EQ(m_book.undoSentence(), "Import 3 trees from trees.csv");
    ASSERT_TRUE(m_book.undo({}).ok());
    for (const Kind kind : kAllKinds) {
        EXPECT_EQ(count(kind), 0) << nameOf(kind);
    }
    ASSERT_TRUE(m_book.redo({}).ok());
    EXPECT_EQ(count(Kind::plant), 3);
}

TEST_F(TableImport, TheSameTableAgainChangesNothing) {
    importTrees();
    const auto position = m_book.position();
    importTrees();
    EXPECT_EQ(m_book.position(), position);
    const auto again = import(RecipeTarget::trees, "code,row/position\n ap 1 ,3/1\nAP4,3/3\n");
    EXPECT_EQ(again.matched, 1);
    EXPECT_EQ(again.created, 1);
    EXPECT_THAT(again.lines[1].what, HasSubstr("AP4"));
    EXPECT_EQ(count(Kind::trialRow), 2);
}

TEST_F(TableImport, FaultsOfTreesArePlacedAndChangeNothing) {
    importTrees();
    EXPECT_THAT(faults(RecipeTarget::trees, "code,row,position\n,1,1\nAP9,1,x\n"),
                AllOf(hasFault("line 2, column code", "neither code nor name"),
                      hasFault("line 3, column position", "where the tree stands")));
    EXPECT_THAT(faults(RecipeTarget::trees, "code,distance\nAP9,1,5\n"),
                hasFault("line 2", "cells"));
    EXPECT_THAT(faults(RecipeTarget::trees, "code;distance\nAP9;1,5\n"),
                hasFault("line 2, column distance", "not a number"));
    EXPECT_THAT(faults(RecipeTarget::trees, "code,planted,stage\nAP9,31.2.2020,bering\n"),
                AllOf(hasFault("line 2, column planted", "not a day"),
                      hasFault("line 2, column stage", "bering")));
    EXPECT_EQ(count(Kind::genotype), 5);
}

TEST_F(TableImport, TwoMatchesAreAFault) {
    importTrees();
    ChangeSet set;
    for (const std::string code : {"ap-x", "AP-X "}) {
        Genotype one;
        one.id = GenotypeId(m_ids.make());
        one.code = code;
        set.create(one);
    }
    ASSERT_TRUE(m_book.apply(set, {}).ok());
    EXPECT_THAT(faults(RecipeTarget::trees, "code\nAP-X\n"),
                hasFault("line 2, column code", "could be any of"));
    EXPECT_TRUE(plan(RecipeTarget::trees, "code\nap-x\n")->faults.empty()); // exactly one
}

TEST_F(TableImport, GoodLinesAreTakenWhenTold) {
    PlanOptions options;
    options.skipFaulty = true;
    const auto planned =
        plan(RecipeTarget::trees, "code,row,position\nA,1,1\n,1,2\nB,1,3\n", options);
    ASSERT_TRUE(planned.ok());
    EXPECT_EQ(planned->created, 2);
    EXPECT_EQ(planned->faulty, 1);
    ASSERT_TRUE(m_book.apply(planned->changes, {}).ok());
    EXPECT_EQ(count(Kind::plant), 2);
}

TEST_F(TableImport, AliasesAndTheDecimalMarkAndTheOrderOfDates) {
    importTrees();
    ChangeSet set;
    Alias alias;
    alias.id = AliasId(m_ids.make());
    alias.genotype = genotype("AP2").id;
    alias.text = "Old Two";
    set.create(alias);
    ASSERT_TRUE(m_book.apply(set, {}).ok());
    m_adjust = [](TableRecipe& recipe) {
        recipe.decimalMark = ',';
        recipe.dateOrder = DateOrder::monthDayYear;
        recipe.taster = "Wilma";
    };
    import(RecipeTarget::scores, "code;date;liking\nold two;8/3/2026;6,5\n");
    EXPECT_EQ(m_book.all<Tasting>()->front().date, Date::of(2026, 8, 3));
    EXPECT_EQ(m_book.all<Score>()->front().liking, 6.5);
    EXPECT_EQ(m_book.get(*m_book.all<Lot>()->front().plant)->value().plantedTyped, "");
    EXPECT_EQ(m_book.all<Person>()->front().name, "Wilma");
}

TEST_F(TableImport, ParentsGiveFamiliesAndARingIsNamed) {
    importTrees();
    import(RecipeTarget::parents,
           "code,seed parent,pollen parent,year\n"
           "Ash Tarn,Old Beam,?,\nRed Moor,Old Beam,OP,1990\nNew,AP1,self,2024\n");
    EXPECT_EQ((*m_book.get(*genotype("New").cross))->pollenParent, genotype("AP1").id);
    EXPECT_EQ((*m_book.get(*genotype("Ash Tarn").cross))->pollination, Pollination::unknown);
    const auto ring = faults(RecipeTarget::parents, "code,seed parent\nOther,AP2\nOld Beam,New\n");
    ASSERT_EQ(ring.size(), 1U);
    EXPECT_EQ(ring[0].where, "trees.csv, line 3, column code");
    EXPECT_THAT(ring[0].what, AllOf(HasSubstr("Old Beam"), HasSubstr("AP1"), HasSubstr("New")));
    PlanOptions options;
    options.skipFaulty = true;
    const auto rest =
        plan(RecipeTarget::parents, "code,seed parent\nOther,AP2\nOld Beam,New\n", options);
    EXPECT_EQ(rest->created, 1);
    EXPECT_EQ(rest->faulty, 1);
    EXPECT_TRUE(m_book.apply(rest->changes, {}).ok());
}

TEST_F(TableImport, OtherParentsThanTheBooksAreAssertedBesideThem) {
    importTrees();
    import(RecipeTarget::parents, "code,pollen parent\nAP1,Stray\n");
    ASSERT_EQ(count(Kind::parentage), 1);
    const auto one = m_book.all<Parentage>()->front();
    EXPECT_EQ(one.parent, genotype("Stray").id);
    EXPECT_EQ(one.role, ParentRole::pollen);
    EXPECT_EQ(one.evidence, "trees.csv, line 2");
    EXPECT_EQ(import(RecipeTarget::parents, "code,pollen parent\nAP1,Stray\n").matched, 1);
}

TEST_F(TableImport, ScoresShareTheTastingOfADayAndPlace) {
    importTrees();
    const std::string table =
        "code,date,taster,liking,words,origin,ripeness,days in fridge,setting\n"
        "AP1,2026-08-20,Wilma,7,crisp,dropped today,prime,2,table\n"
        "AP1,2026-08-20,Odo,6.5,,dropped today,prime,2,table\n"
        "AP2,2026-08-20,Wilma,3,sour,,,,row\n";
    const auto done = import(RecipeTarget::scores, table);
    EXPECT_EQ(done.created, 3);
    EXPECT_EQ(count(Kind::tasting), 2);
    EXPECT_EQ(count(Kind::lot), 2);
    EXPECT_EQ(count(Kind::score), 3);
    EXPECT_EQ(count(Kind::person), 2);
    const auto lots = m_book.all<Lot>();
    for (const Lot& lot : *lots) {
        EXPECT_EQ(lot.cropYear, CropYear{2026});
        EXPECT_TRUE(lot.plant.has_value());
    }
    EXPECT_EQ(import(RecipeTarget::scores, table).matched, 3);
    EXPECT_EQ(count(Kind::score), 3);
}

TEST_F(TableImport, FaultsOfScores) {
    importTrees();
    EXPECT_THAT(faults(RecipeTarget::scores, "code,date,taster,liking\n"
                                             "AP1,2026-08-20,W,10\nAP1,2026-08-20,W,6.3\n"
                                             "AP7,2026-08-20,W,6\nAP1,2026-08-23,W,6\n"
                                             "AP1,,W,6\nAP1,2026-08-20,,6\nAP1,2026-08-20,W,\n"),
                AllOf(hasFault("line 2, column liking", "not on the scale"),
                      hasFault("line 3, column liking", "not on the scale"),
                      hasFault("line 4, column code", "no tree of the book"),
                      hasFault("line 5, column date", "after today"),
                      hasFault("line 6, column date", "no day"),
                      hasFault("line 7, column taster", "who tasted"),
                      hasFault("line 8, column liking", "neither")));
}

TEST_F(TableImport, WalkMarksKeepTheCellTheyCameFrom) {
    importTrees();
    m_adjust = [](TableRecipe& recipe) {
        for (auto& use : recipe.columns) {
            if (use.field == TableField::mark) {
                use.spellings = {{"colouring", "ripening"}};
            }
        }
    };
    const std::string table = "row/position,date,mark,drops\n3/1,2026-08-20, Colouring ,few\n"
                              "4/1,2026-08-20,not yet,\n";
    import(RecipeTarget::walkMarks, table);
    const auto plant = m_book.where<Identity>("genotype", genotype("AP1").id.uuid)->front().plant;
    const auto seen = *m_book.where<Observation>("plant", plant.uuid);
    ASSERT_EQ(seen.size(), 2U);
    EXPECT_EQ(seen[0].trait, shippedTraitId(trait_key::kRipeningState));
    EXPECT_EQ(seen[0].state, stateOf(WalkMark::ripening));
    EXPECT_EQ(seen[0].typed, " Colouring ");
    EXPECT_EQ(seen[0].sourceFile, "trees.csv");
    EXPECT_EQ(seen[0].sourceCell, "line 2, column mark");
    EXPECT_EQ(seen[1].trait, shippedTraitId(trait_key::kDrop));
    EXPECT_EQ(import(RecipeTarget::walkMarks, table).matched, 2);
}

TEST_F(TableImport, FaultsOfWalkMarks) {
    importTrees();
    EXPECT_THAT(
        faults(RecipeTarget::walkMarks, "code,row/position,date,mark,drops\n"
                                        "AP1,3/2,2026-08-20,ripe,\n,9/9,2026-08-20,ripe,\n"
                                        "AP1,,2026-08-20,blue,\nAP1,,2026-08-20,ripe,heaps\n"
                                        "AP1,,2026-08-20,,\n,,2026-08-20,ripe,\n"),
        AllOf(hasFault("line 2, column code", "stands AP2"),
              hasFault("line 3, column row/position", "no tree of the book stands"),
              hasFault("line 4, column mark", "blue"), hasFault("line 5, column drops", "heaps"),
              hasFault("line 6, column mark", "nothing was seen"),
              hasFault("line 7, column code", "which tree")));
}

TEST_F(TableImport, ARecipeThatDoesNotFitIsAProblem) {
    const auto table = tableOf("a,b\n1,2\n");
    TableRecipe recipe;
    recipe.columns = {{"c", TableField::code, {}}};
    EXPECT_THAT(planImport(table, recipe, m_book, kToday, m_ids).problem().what,
                HasSubstr("\"c\""));
    recipe.columns = {{"a", TableField::code, {}}, {"b", TableField::code, {}}};
    EXPECT_THAT(planImport(table, recipe, m_book, kToday, m_ids).problem().what,
                HasSubstr("two columns"));
    recipe.columns = {{"a", TableField::mark, {}}};
    EXPECT_THAT(planImport(table, recipe, m_book, kToday, m_ids).problem().what,
                HasSubstr("no place"));
}

TEST_F(TableImport, AnImportedBookGoesThroughTheArchive) {
    importTrees();
    const auto folder = std::filesystem::path(testing::TempDir()) / UuidMaker().make().text();
    ASSERT_TRUE(writeArchive(m_book, folder).ok());
    MemoryStore rebuilt;
    EXPECT_TRUE(readArchive(folder, rebuilt)->written);
    std::filesystem::remove_all(folder);
}

} // namespace

} // namespace pipwright
