<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en_GB">
<context>
    <name>ChartExport</name>
    <message>
        <source>A chart cannot be written as “%1”.</source>
        <translation>Ein Diagramm kann nicht als „%1“ geschrieben werden.</translation>
    </message>
    <message>
        <source>End the name with .png, .svg or .csv.</source>
        <translation>Der Name soll auf .png, .svg oder .csv enden.</translation>
    </message>
    <message>
        <source>The chart could not be written: %1.</source>
        <translation>Das Diagramm konnte nicht geschrieben werden: %1.</translation>
    </message>
    <message>
        <source>Choose a folder you may write in.</source>
        <translation>Einen Ordner wählen, in den geschrieben werden darf.</translation>
    </message>
</context>
<context>
    <name>ChartWords</name>
    <message>
        <source>week</source>
        <translation>Woche</translation>
    </message>
</context>
<context>
    <name>NumberText</name>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>oz</source>
        <translation>oz</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>The order of day (d), short month (MMM) and year (yyyy) in a date</extracomment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>%1 %2, week %3</source>
        <extracomment>Weekday, date, number of the ISO week</extracomment>
        <translation>%1 %2, Woche %3</translation>
    </message>
    <message numerus="yes">
        <source>%1 to %2, %n day(s)</source>
        <translation>
            <numerusform>%1 bis %2, %n Tag</numerusform>
            <numerusform>%1 bis %2, %n Tage</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Print</name>
    <message>
        <source>Hang tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Branch tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loop label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pot label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row post</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4 across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cross</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>year and place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the further lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the label code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the last note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ripening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ripe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row %1, from the zero stake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row %1, back to the zero stake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>… more in the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fallen fruit can carry germs from animals: wash it, taste nothing rotten, keep it out of raw juice. Taste nothing within the waiting time of a spray.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ruler page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print at actual size (100 %), never &quot;fit to page&quot;. Lay a ruler on the line: it must measure %1 mm. If it does not, the labels will not lie where they should.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 x %3 mm</source>
        <comment>kind, width, height</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: single</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 to cut, %3 x %4</source>
        <comment>label, paper, grid</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3 x %4</source>
        <comment>label, paper, grid</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>tree, field</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is %2 mm wide, there is room for %3 mm. (%4)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 needs %2 lines, there is room for %3. (%4)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 have no room on this stock. (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be drawn as a QR code. (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is empty.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::AccessibleMap</name>
    <message>
        <source>place %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>row %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no place</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ChartLegend</name>
    <message>
        <source>Legend</source>
        <translation>Legende</translation>
    </message>
    <message>
        <source>Hide or show</source>
        <translation>Verbergen oder zeigen</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ChartPanel</name>
    <message>
        <source>Show as table</source>
        <translation>Als Tabelle zeigen</translation>
    </message>
    <message>
        <source>Write to a file</source>
        <translation>In eine Datei schreiben</translation>
    </message>
    <message>
        <source>Picture (PNG)</source>
        <translation>Bild (PNG)</translation>
    </message>
    <message>
        <source>Drawing (SVG)</source>
        <translation>Zeichnung (SVG)</translation>
    </message>
    <message>
        <source>Numbers (CSV)</source>
        <translation>Zahlen (CSV)</translation>
    </message>
    <message>
        <source>Nothing to draw yet.</source>
        <translation>Noch nichts zu zeichnen.</translation>
    </message>
    <message>
        <source>%1 as a table</source>
        <translation>%1 als Tabelle</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>Geschrieben: %1.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ChartTableModel</name>
    <message>
        <source>uncertain</source>
        <translation>unsicher</translation>
    </message>
    <message>
        <source>series</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>label</source>
        <translation>Beschriftung</translation>
    </message>
    <message>
        <source>%1 from</source>
        <translation>%1 von</translation>
    </message>
    <message>
        <source>%1 to</source>
        <translation>%1 bis</translation>
    </message>
    <message>
        <source>sure?</source>
        <translation>sicher?</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ColourChoices</name>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First fruit year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latest liking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number of fair lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Harvest week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Identity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last visited</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ColourChooser</name>
    <message>
        <source>Colour by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the colours of the map show</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::Colourings</name>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Identity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First fruit (crop year)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fair lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latest liking (1 to 9)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Harvest week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scab (1 none to 9 worst)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today or yesterday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within a month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>longer ago</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last visited</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worse beyond doubt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within doubt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>better beyond doubt</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::FinderLine</name>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Nothing found</source>
        <translation>Nichts gefunden</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) found</source>
        <translation>
            <numerusform>%n Fund</numerusform>
            <numerusform>%n Funde</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::InexactDateEdit</name>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>22 Aug, week 34, late August …</source>
        <translation>22.8., Woche 34, Ende August …</translation>
    </message>
    <message>
        <source>No date. Up for today.</source>
        <translation>Kein Datum. Pfeil nach oben: heute.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::LabelPanel</name>
    <message>
        <source>C&amp;ut marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print &amp;without what does not fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ruler page first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does not &amp;fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First free label on the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a half-used sheet: the first free label, counted row by row. A click on a label in the preview sets it too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;tart at label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels: %1 of %2 · sheets: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MapFilterBar</name>
    <message>
        <source>Lowest value of the trait</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Highest value of the trait</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter of the map</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words to filter by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code, family, row/place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trait with bounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear the filter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trees that pass the filter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trait</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2 trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n stage(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MapHoverCard</name>
    <message>
        <source>About this tree</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MapLegend</name>
    <message>
        <source>%1: %2 trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3 trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select these trees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Legend of the map</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No tree has a value yet.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MapMargins</name>
    <message numerus="yes">
        <source>%n row(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MapWords</name>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nursery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>juvenile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>watched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>selection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advanced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>released</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept as parent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>culled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stage unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>growing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>state unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>identity sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>identity by map only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>identity by fruit only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>identity unsure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>row %1, place %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m from the zero stake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>graft wish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>earlier plants here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two plants at this place</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MisfitList</name>
    <message>
        <source>What does not fit, with the reason</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::NavigationRail</name>
    <message>
        <source>Places</source>
        <translation>Orte</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::NoticeBar</name>
    <message>
        <source>Close this notice</source>
        <translation>Diesen Hinweis schließen</translation>
    </message>
    <message>
        <source>Close (Esc)</source>
        <translation>Schließen (Esc)</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PagePreview</name>
    <message>
        <source>Preview: nothing to print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Preview, page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to print yet. Choose trees on the row map.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PreviewPane</name>
    <message>
        <source>%1 (%2)</source>
        <comment>what, key</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page Up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>True size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PrintButtons</name>
    <message>
        <source>Save PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save P&amp;DF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the printer&apos;s dialog choose actual size (100 %), not &quot;fit to page&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::RowMap</name>
    <message>
        <source>Map of the rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrow keys move along and across the rows; type a digit or / to find a tree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along the rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across the rows</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::StatusLine</name>
    <message>
        <source>Show all again</source>
        <translation>Wieder alles zeigen</translation>
    </message>
    <message>
        <source>Stop this work</source>
        <translation>Diese Arbeit anhalten</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>The day taken as today</source>
        <translation>Der Tag, der als heute gilt</translation>
    </message>
    <message>
        <source>Work in the background</source>
        <translation>Arbeit im Hintergrund</translation>
    </message>
    <message>
        <source>State of the book</source>
        <translation>Stand des Buches</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>today taken as %1</source>
        <translation>als heute gilt %1</translation>
    </message>
    <message>
        <source>The day taken as today: %1</source>
        <translation>Als heute gilt: %1</translation>
    </message>
    <message>
        <source>This day was set by hand or by the book. Click to change it.</source>
        <translation>Dieser Tag wurde von Hand oder vom Buch gesetzt. Zum Ändern klicken.</translation>
    </message>
    <message>
        <source>The day of the calendar. Click to take another day.</source>
        <translation>Der Tag des Kalenders. Klicken, um einen anderen zu nehmen.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TreeColumns</name>
    <message>
        <source>Code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape (m)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Identity</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TreeListView</name>
    <message>
        <source>List of trees</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
