<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_GB" sourcelanguage="en_GB">
<context>
    <name>NumberText</name>
    <message numerus="yes">
        <source>%1 to %2, %n day(s)</source>
        <translation>
            <numerusform>%1 to %2, %n day</numerusform>
            <numerusform>%1 to %2, %n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::app::FileDoors</name>
    <message numerus="yes">
        <source>Nothing was imported: %n fault(s) in the archive.</source>
        <translation>
            <numerusform>Nothing was imported: %n fault in the archive.</numerusform>
            <numerusform>Nothing was imported: %n faults in the archive.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The check found %n thing(s) wrong.</source>
        <translation>
            <numerusform>The check found %n thing wrong.</numerusform>
            <numerusform>The check found %n things wrong.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::BiteForm</name>
    <message numerus="yes">
        <source>&quot;%1&quot; %n day(s) before it is usually first ripe (%2): look again at tree, day and fruit. Damage ripens fruit early too.</source>
        <translation>
            <numerusform>&quot;%1&quot; %n day before it is usually first ripe (%2): look again at tree, day and fruit. Damage ripens fruit early too.</numerusform>
            <numerusform>&quot;%1&quot; %n days before it is usually first ripe (%2): look again at tree, day and fruit. Damage ripens fruit early too.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::BookHistory</name>
    <message numerus="yes">
        <source>... and %n more</source>
        <translation>
            <numerusform>... and %n more</numerusform>
            <numerusform>... and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::Compare</name>
    <message numerus="yes">
        <source>%n fair score(s)</source>
        <translation>
            <numerusform>%n fair score</numerusform>
            <numerusform>%n fair scores</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n score(s), none fair</source>
        <translation>
            <numerusform>%n score, none fair</numerusform>
            <numerusform>%n scores, none fair</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taster(s)</source>
        <translation>
            <numerusform>%n taster</numerusform>
            <numerusform>%n tasters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n crop year(s)</source>
        <translation>
            <numerusform>%n crop year</numerusform>
            <numerusform>%n crop years</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source> (%n crop year(s))</source>
        <translation>
            <numerusform> (%n crop year)</numerusform>
            <numerusform> (%n crop years)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 fair of %n lot(s)</source>
        <translation>
            <numerusform>%1 fair of %n lot</numerusform>
            <numerusform>%1 fair of %n lots</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sitting(s)</source>
        <translation>
            <numerusform>%n sitting</numerusform>
            <numerusform>%n sittings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>up to %n day(s)</source>
        <translation>
            <numerusform>up to %n day</numerusform>
            <numerusform>up to %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n score(s)</source>
        <translation>
            <numerusform>%n score</numerusform>
            <numerusform>%n scores</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::CompareModel</name>
    <message numerus="yes">
        <source>%n photo(s)</source>
        <translation>
            <numerusform>%n photo</numerusform>
            <numerusform>%n photos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ComparePlace</name>
    <message numerus="yes">
        <source>%n tree(s) laid side by side. C on a tree adds it; Delete takes a column out; Ctrl with an arrow moves it; Enter goes to the tree.</source>
        <translation>
            <numerusform>%n tree laid here. C on a tree adds it; Delete takes a column out; Ctrl with an arrow moves it; Enter goes to the tree.</numerusform>
            <numerusform>%n trees laid side by side. C on a tree adds it; Delete takes a column out; Ctrl with an arrow moves it; Enter goes to the tree.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) later</source>
        <translation>
            <numerusform>%n day later</numerusform>
            <numerusform>%n days later</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) earlier</source>
        <translation>
            <numerusform>%n day earlier</numerusform>
            <numerusform>%n days earlier</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ConditionFields</name>
    <message numerus="yes">
        <source>%n day(s) on the counter</source>
        <translation>
            <numerusform>%n day on the counter</numerusform>
            <numerusform>%n days on the counter</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) in the fridge</source>
        <translation>
            <numerusform>%n day in the fridge</numerusform>
            <numerusform>%n days in the fridge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) in the cellar</source>
        <translation>
            <numerusform>%n day in the cellar</numerusform>
            <numerusform>%n days in the cellar</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::CrossOutlook</name>
    <message numerus="yes">
        <source>F = 0 if the pollen came from elsewhere. If it was one of the %n growing genotype(s) of this book: %1 on average, %2.</source>
        <translation>
            <numerusform>F = 0 if the pollen came from elsewhere. If it was the %n growing genotype of this book: %1, %2.</numerusform>
            <numerusform>F = 0 if the pollen came from elsewhere. If it was one of the %n growing genotypes of this book: %1 on average, %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::EntryStrip</name>
    <message numerus="yes">
        <source>%n tree(s)</source>
        <translation>
            <numerusform>%n tree</numerusform>
            <numerusform>%n trees</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::FinderLine</name>
    <message numerus="yes">
        <source>%n thing(s) found</source>
        <translation>
            <numerusform>%n found</numerusform>
            <numerusform>%n found</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::FrameTreeView</name>
    <message numerus="yes">
        <source>%1, %n limb(s); the list beside it has them in words.</source>
        <translation>
            <numerusform>%1, %n limb; the list beside it has it in words.</numerusform>
            <numerusform>%1, %n limbs; the list beside it has them in words.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::GraftWords</name>
    <message numerus="yes">
        <source>⚠ %n limb(s) on a single tree, %1</source>
        <translation>
            <numerusform>⚠ %n limb on a single tree, %1</numerusform>
            <numerusform>⚠ %n limbs on a single tree, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n plant(s) on %1 trees, %2</source>
        <translation>
            <numerusform>%n plant on %1 trees, %2</numerusform>
            <numerusform>%n plants on %1 trees, %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::GraftingPlace</name>
    <message numerus="yes">
        <source>%1: %n limb(s) growing</source>
        <translation>
            <numerusform>%1: %n limb growing</numerusform>
            <numerusform>%1: %n limbs growing</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ImportWindow</name>
    <message numerus="yes">
        <source>%n line(s)</source>
        <translation>
            <numerusform>%n line</numerusform>
            <numerusform>%n lines</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) new</source>
        <translation>
            <numerusform>%n line new</numerusform>
            <numerusform>%n lines new</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n in the book already</source>
        <translation>
            <numerusform>, %n in the book already</numerusform>
            <numerusform>, %n in the book already</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n faulty.</source>
        <translation>
            <numerusform>, %n faulty.</numerusform>
            <numerusform>, %n faulty.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::KinView</name>
    <message numerus="yes">
        <source>%n full sib(s)</source>
        <translation>
            <numerusform>%n full sib</numerusform>
            <numerusform>%n full sibs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n half sib(s)</source>
        <translation>
            <numerusform>%n half sib</numerusform>
            <numerusform>%n half sibs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n offspring</source>
        <translation>
            <numerusform>%n offspring</numerusform>
            <numerusform>%n offspring</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::LadderPanel</name>
    <message numerus="yes">
        <source>Cut the season of %1 into these %n slot(s)</source>
        <translation>
            <numerusform>Cut the season of %1 into this %n slot</numerusform>
            <numerusform>Cut the season of %1 into these %n slots</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::LifeWords</name>
    <message numerus="yes">
        <source>%1: %n graft(s), %2</source>
        <translation>
            <numerusform>%1: %n graft, %2</numerusform>
            <numerusform>%1: %n grafts, %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::LookBackPanel</name>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n more</numerusform>
            <numerusform>%n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Judged then: %n seedling(s). Best tenth now: %1. A seedling that was truly culled could not prove the rule wrong, so look at those tasted since.</source>
        <translation>
            <numerusform>Judged then: %n seedling. Best tenth now: %1. A seedling that was truly culled could not prove the rule wrong, so look at those tasted since.</numerusform>
            <numerusform>Judged then: %n seedlings. Best tenth now: %1. A seedling that was truly culled could not prove the rule wrong, so look at those tasted since.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MapFilterBar</name>
    <message numerus="yes">
        <source>%n stages</source>
        <translation>
            <numerusform>%n stage</numerusform>
            <numerusform>%n stages</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MapMargins</name>
    <message numerus="yes">
        <source>%n rows</source>
        <translation>
            <numerusform>%n row</numerusform>
            <numerusform>%n rows</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MeritFilterBar</name>
    <message numerus="yes">
        <source>Never had a fair test: %n</source>
        <translation>
            <numerusform>Never had a fair test: %n</numerusform>
            <numerusform>Never had a fair test: %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MeritTableModel</name>
    <message numerus="yes">
        <source>%n record(s), %1 crop years</source>
        <translation>
            <numerusform>%n record, %1 crop years</numerusform>
            <numerusform>%n records, %1 crop years</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MeritWords</name>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s), %1 fair</source>
        <translation>
            <numerusform>%n lot, %1 fair</numerusform>
            <numerusform>%n lots, %1 fair</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taster(s)</source>
        <translation>
            <numerusform>%n taster</numerusform>
            <numerusform>%n tasters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n crop year(s)</source>
        <translation>
            <numerusform>%n crop year</numerusform>
            <numerusform>%n crop years</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, ruled out at %2 (%n reading(s))</source>
        <translation>
            <numerusform>%1, ruled out at %2 (%n reading)</numerusform>
            <numerusform>%1, ruled out at %2 (%n readings)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) on the counter</source>
        <translation>
            <numerusform>%n day on the counter</numerusform>
            <numerusform>%n days on the counter</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) in the refrigerator</source>
        <translation>
            <numerusform>%n day in the refrigerator</numerusform>
            <numerusform>%n days in the refrigerator</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) in the cellar</source>
        <translation>
            <numerusform>%n day in the cellar</numerusform>
            <numerusform>%n days in the cellar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fair lot(s) beside the benchmark</source>
        <translation>
            <numerusform>%n fair lot beside the benchmark</numerusform>
            <numerusform>%n fair lots beside the benchmark</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fair lot(s)</source>
        <translation>
            <numerusform>%n fair lot</numerusform>
            <numerusform>%n fair lots</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>at each of %n sitting(s)</source>
        <translation>
            <numerusform>at each of %n sitting</numerusform>
            <numerusform>at each of %n sittings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>in each of %n crop year(s)</source>
        <translation>
            <numerusform>in each of %n crop year</numerusform>
            <numerusform>in each of %n crop years</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::OrchardScene</name>
    <message numerus="yes">
        <source>latest liking %1 as eaten, mean of %n score(s)</source>
        <translation>
            <numerusform>latest liking %1 as eaten, mean of %n score</numerusform>
            <numerusform>latest liking %1 as eaten, mean of %n scores</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s) tasted</source>
        <translation>
            <numerusform>%n lot tasted</numerusform>
            <numerusform>%n lots tasted</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n of them fair</source>
        <translation>
            <numerusform>, %n of them fair</numerusform>
            <numerusform>, %n of them fair</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::OrchardWords</name>
    <message numerus="yes">
        <source>%n day(s) on the counter</source>
        <translation>
            <numerusform>%n day on the counter</numerusform>
            <numerusform>%n days on the counter</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) in the fridge</source>
        <translation>
            <numerusform>%n day in the fridge</numerusform>
            <numerusform>%n days in the fridge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) in the cellar</source>
        <translation>
            <numerusform>%n day in the cellar</numerusform>
            <numerusform>%n days in the cellar</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PaperPlace</name>
    <message numerus="yes">
        <source>%n label(s), in the order of the selection.</source>
        <translation>
            <numerusform>%n label, in the order of the selection.</numerusform>
            <numerusform>%n labels, in the order of the selection.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) in walking order, each with its newest note.</source>
        <translation>
            <numerusform>%n tree, with its newest note.</numerusform>
            <numerusform>%n trees in walking order, each with its newest note.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) stand nowhere known and are left out.</source>
        <translation>
            <numerusform>%n tree stands nowhere known and is left out.</numerusform>
            <numerusform>%n trees stand nowhere known and are left out.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PlanPage</name>
    <message numerus="yes">
        <source>Add %n tree(s) marked on the map</source>
        <translation>
            <numerusform>Add %n tree marked on the map</numerusform>
            <numerusform>Add %n trees marked on the map</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Serve %1 of %n day(s) ago again</source>
        <translation>
            <numerusform>Serve %1 of %n day ago again</numerusform>
            <numerusform>Serve %1 of %n days ago again</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PlanWords</name>
    <message numerus="yes">
        <source>%n times</source>
        <translation>
            <numerusform>%n time</numerusform>
            <numerusform>%n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n lot</numerusform>
            <numerusform>%n lots</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taster(s)</source>
        <translation>
            <numerusform>%n taster</numerusform>
            <numerusform>%n tasters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 is the benchmark, hidden twice under two codes; it usually ripens %n day(s) after the middle lot.</source>
        <translation>
            <numerusform>%1 is the benchmark, hidden twice under two codes; it usually ripens %n day after the middle lot.</numerusform>
            <numerusform>%1 is the benchmark, hidden twice under two codes; it usually ripens %n days after the middle lot.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 is the benchmark, hidden twice under two codes; it usually ripens %n day(s) before the middle lot.</source>
        <translation>
            <numerusform>%1 is the benchmark, hidden twice under two codes; it usually ripens %n day before the middle lot.</numerusform>
            <numerusform>%1 is the benchmark, hidden twice under two codes; it usually ripens %n days before the middle lot.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 was served %n day(s) ago and comes again, for each taster&apos;s own noise; it has kept longer since.</source>
        <translation>
            <numerusform>%1 was served %n day ago and comes again, for each taster&apos;s own noise; it has kept longer since.</numerusform>
            <numerusform>%1 was served %n days ago and comes again, for each taster&apos;s own noise; it has kept longer since.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Pause, water and a plain cracker after %n lot(s).</source>
        <translation>
            <numerusform>Pause, water and a plain cracker after %n lot.</numerusform>
            <numerusform>Pause, water and a plain cracker after %n lots.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lots are many: six to nine are tasted well in half an hour.</source>
        <translation>
            <numerusform>%n lot is many: six to nine are tasted well in half an hour.</numerusform>
            <numerusform>%n lots are many: six to nine are tasted well in half an hour.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PlannedPage</name>
    <message numerus="yes">
        <source>%1 %n</source>
        <comment>so many lines of this person are empty</comment>
        <translation>
            <numerusform>%1 %n</numerusform>
            <numerusform>%1 %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s) under codes, %1</source>
        <translation>
            <numerusform>%n lot under codes, %1</numerusform>
            <numerusform>%n lots under codes, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) are still empty and would be left out.</source>
        <translation>
            <numerusform>%n line is still empty and would be left out.</numerusform>
            <numerusform>%n lines are still empty and would be left out.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SeasonPlace</name>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n more</numerusform>
            <numerusform>%n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SettleView</name>
    <message numerus="yes">
        <source>%n crop year(s): %1</source>
        <translation>
            <numerusform>%n crop year: %1</numerusform>
            <numerusform>%n crop years: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SittingListModel</name>
    <message numerus="yes">
        <source>%n bite(s) in the row</source>
        <translation>
            <numerusform>%n bite in the row</numerusform>
            <numerusform>%n bites in the row</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n lot</numerusform>
            <numerusform>%n lots</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taster(s)</source>
        <translation>
            <numerusform>%n taster</numerusform>
            <numerusform>%n tasters</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SittingPage</name>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n lot</numerusform>
            <numerusform>%n lots</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taster(s)</source>
        <translation>
            <numerusform>%n taster</numerusform>
            <numerusform>%n tasters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Tasters were %1 points apart (standard deviation within a lot, %n lot(s)). Against the mean of the same lots: %2.</source>
        <translation>
            <numerusform>Tasters were %1 points apart (standard deviation within a lot, %n lot). Against the mean of the same lots: %2.</numerusform>
            <numerusform>Tasters were %1 points apart (standard deviation within a lot, %n lots). Against the mean of the same lots: %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 was served %n time(s), but nobody gave it two likings.</source>
        <translation>
            <numerusform>%1 was served %n time, but nobody gave it two likings.</numerusform>
            <numerusform>%1 was served %n times, but nobody gave it two likings.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 was served %n time(s): the same taster differed by %2 points on average, %3 at most.</source>
        <translation>
            <numerusform>%1 was served %n time: the same taster differed by %2 points on average, %3 at most.</numerusform>
            <numerusform>%1 was served %n times: the same taster differed by %2 points on average, %3 at most.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SittingResult</name>
    <message numerus="yes">
        <source>%n taster(s)</source>
        <translation>
            <numerusform>%n taster</numerusform>
            <numerusform>%n tasters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n lot</numerusform>
            <numerusform>%n lots</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s) are left out, since not all scored them.</source>
        <translation>
            <numerusform>%n lot is left out, since not all scored it.</numerusform>
            <numerusform>%n lots are left out, since not all scored them.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 came twice: a taster&apos;s own scores of it scatter by %2 (standard deviation of one score, %n taster(s)), %3 points apart at most. Its mean is %4 of 9.</source>
        <translation>
            <numerusform>%1 came twice: a taster&apos;s own scores of it scatter by %2 (standard deviation of one score, %n taster), %3 points apart at most. Its mean is %4 of 9.</numerusform>
            <numerusform>%1 came twice: a taster&apos;s own scores of it scatter by %2 (standard deviation of one score, %n tasters), %3 points apart at most. Its mean is %4 of 9.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TastingsPlace</name>
    <message numerus="yes">
        <source>%n sitting(s) with that.</source>
        <translation>
            <numerusform>%n sitting with that.</numerusform>
            <numerusform>%n sittings with that.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sitting(s), newest first.</source>
        <translation>
            <numerusform>%n sitting, newest first.</numerusform>
            <numerusform>%n sittings, newest first.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TreeHead</name>
    <message numerus="yes">
        <source>%n other plant(s) of it:</source>
        <translation>
            <numerusform>%n other plant of it:</numerusform>
            <numerusform>%n other plants of it:</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TreeWords</name>
    <message numerus="yes">
        <source>%1 · %n graft(s) wished, %2</source>
        <translation>
            <numerusform>%1 · %n graft wished, %2</numerusform>
            <numerusform>%1 · %n grafts wished, %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 · %n graft(s), %2</source>
        <translation>
            <numerusform>%1 · %n graft, %2</numerusform>
            <numerusform>%1 · %n grafts, %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::WaterfallView</name>
    <message numerus="yes">
        <source>%n score(s)</source>
        <translation>
            <numerusform>%n score</numerusform>
            <numerusform>%n scores</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::Workbench</name>
    <message numerus="yes">
        <source>%n genotype(s) laid side by side.</source>
        <translation>
            <numerusform>%n genotype laid beside.</numerusform>
            <numerusform>%n genotypes laid side by side.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) selected</source>
        <translation>
            <numerusform>%n tree selected</numerusform>
            <numerusform>%n trees selected</numerusform>
        </translation>
    </message>
</context>
</TS>
