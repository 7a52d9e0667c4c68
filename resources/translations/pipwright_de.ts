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
    <message>
        <source>%1, %2</source>
        <comment>date, time</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>Print</name>
    <message>
        <source>Hang tag</source>
        <translation>Hängeetikett</translation>
    </message>
    <message>
        <source>Branch tag</source>
        <translation>Astetikett</translation>
    </message>
    <message>
        <source>Loop label</source>
        <translation>Schlaufenetikett</translation>
    </message>
    <message>
        <source>Pot label</source>
        <translation>Topfetikett</translation>
    </message>
    <message>
        <source>Row post</source>
        <translation>Reihenpfahl</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>A4 across</source>
        <translation>A4 quer</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>the code</source>
        <translation>die Kennung</translation>
    </message>
    <message>
        <source>the cross</source>
        <translation>die Kreuzung</translation>
    </message>
    <message>
        <source>year and place</source>
        <translation>Jahr und Platz</translation>
    </message>
    <message>
        <source>the further lines</source>
        <translation>die weiteren Zeilen</translation>
    </message>
    <message>
        <source>the label code</source>
        <translation>der Etikettencode</translation>
    </message>
    <message>
        <source>the last note</source>
        <translation>die letzte Notiz</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>ripening</source>
        <translation>beginnt zu reifen</translation>
    </message>
    <message>
        <source>ripe</source>
        <translation>reif</translation>
    </message>
    <message>
        <source>over</source>
        <translation>überreif</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>vorbei</translation>
    </message>
    <message>
        <source>Row %1, from the zero stake</source>
        <translation>Reihe %1, vom Nullpfahl weg</translation>
    </message>
    <message>
        <source>Row %1, back to the zero stake</source>
        <translation>Reihe %1, zurück zum Nullpfahl</translation>
    </message>
    <message>
        <source>expected: %1</source>
        <translation>erwartet: %1</translation>
    </message>
    <message>
        <source>… more in the book</source>
        <translation>… mehr im Buch</translation>
    </message>
    <message>
        <source>Fallen fruit can carry germs from animals: wash it, taste nothing rotten, keep it out of raw juice. Taste nothing within the waiting time of a spray.</source>
        <translation>Fallobst kann Keime von Tieren tragen: waschen, nichts Faules kosten, nicht in rohen Saft geben. Nichts kosten, solange die Wartezeit einer Spritzung läuft.</translation>
    </message>
    <message>
        <source>Ruler page</source>
        <translation>Linealblatt</translation>
    </message>
    <message>
        <source>Print at actual size (100 %), never &quot;fit to page&quot;. Lay a ruler on the line: it must measure %1 mm. If it does not, the labels will not lie where they should.</source>
        <translation>In Originalgröße drucken (100 %), nie „an Seite anpassen“. Ein Lineal an die Linie legen: Sie muss %1 mm messen. Sonst liegen die Etiketten nicht dort, wo sie sollen.</translation>
    </message>
    <message>
        <source>%1, %2 x %3 mm</source>
        <comment>kind, width, height</comment>
        <translation>%1, %2 x %3 mm</translation>
    </message>
    <message>
        <source>%1: single</source>
        <translation>%1: einzeln</translation>
    </message>
    <message>
        <source>%1: %2 to cut, %3 x %4</source>
        <comment>label, paper, grid</comment>
        <translation>%1: %2 zum Schneiden, %3 x %4</translation>
    </message>
    <message>
        <source>%1: %2, %3 x %4</source>
        <comment>label, paper, grid</comment>
        <translation>%1: %2, %3 x %4</translation>
    </message>
    <message>
        <source>Label %1</source>
        <translation>Etikett %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>tree, field</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 is %2 mm wide, there is room for %3 mm. (%4)</source>
        <translation>%1 ist %2 mm breit, Platz ist für %3 mm. (%4)</translation>
    </message>
    <message>
        <source>%1 needs %2 lines, there is room for %3. (%4)</source>
        <translation>%1 braucht %2 Zeilen, Platz ist für %3. (%4)</translation>
    </message>
    <message>
        <source>%1 have no room on this stock. (%2)</source>
        <translation>%1 haben auf diesem Etikett keinen Platz. (%2)</translation>
    </message>
    <message>
        <source>%1 cannot be drawn as a QR code. (%2)</source>
        <translation>%1 lässt sich nicht als QR-Code zeichnen. (%2)</translation>
    </message>
    <message>
        <source>%1 is empty.</source>
        <translation>%1 ist leer.</translation>
    </message>
</context>
<context>
    <name>pipwright::app</name>
    <message>
        <source>, %1 left out</source>
        <translation>, %1 ausgelassen</translation>
    </message>
    <message>
        <source>  journal entries: %1, photos: %2</source>
        <translation>  Journaleinträge: %1, Fotos: %2</translation>
    </message>
    <message>
        <source>Dry run: nothing is wrong, nothing was written.</source>
        <translation>Probelauf: Alles in Ordnung, nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Dry run: %1 faults, nothing was written.</source>
        <translation>Probelauf: %1 Fehler, nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Nothing was imported: %1 faults. Repair the lines, or use --skip-faulty.</source>
        <translation>Nichts wurde übernommen: %1 Fehler. Die Zeilen berichtigen oder --skip-faulty verwenden.</translation>
    </message>
    <message>
        <source>Makes an empty orchard book with the shipped traits.</source>
        <translation>Legt ein leeres Obstbuch mit den mitgelieferten Merkmalen an.</translation>
    </message>
    <message>
        <source>the file to make, NAME.orchard</source>
        <translation>die neue Datei, NAME.orchard</translation>
    </message>
    <message>
        <source>Title of the book.</source>
        <translation>Titel des Buches.</translation>
    </message>
    <message>
        <source>My orchard</source>
        <translation>Mein Obstgarten</translation>
    </message>
    <message>
        <source>Whose breeding work it is.</source>
        <translation>Wessen Zuchtarbeit es ist.</translation>
    </message>
    <message>
        <source>%1 is ready.</source>
        <translation>%1 ist angelegt.</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>liest</translation>
    </message>
    <message>
        <source>Writes a whole book as a folder of plain tables, pictures and history included.</source>
        <translation>Schreibt ein ganzes Buch als Ordner mit einfachen Tabellen, samt Bildern und Geschichte.</translation>
    </message>
    <message>
        <source>the book</source>
        <translation>das Buch</translation>
    </message>
    <message>
        <source>the folder: new, empty, or an older archive</source>
        <translation>der Ordner: neu, leer oder ein älteres Archiv</translation>
    </message>
    <message>
        <source>writing</source>
        <translation>schreibt</translation>
    </message>
    <message>
        <source>%1: %2 records, %3 journal entries, %4 photos, %5 bytes.</source>
        <translation>%1: %2 Datensätze, %3 Journaleinträge, %4 Fotos, %5 Byte.</translation>
    </message>
    <message>
        <source>Checks a book: file, references, finder, pictures by hash, and that the journal leads to the content.</source>
        <translation>Prüft ein Buch: Datei, Verweise, Suche, Bilder anhand ihrer Prüfsumme, und ob das Journal zum Inhalt führt.</translation>
    </message>
    <message>
        <source>%1 records, %2 journal entries (%3 replayed), %4 photos: %5</source>
        <translation>%1 Datensätze, %2 Journaleinträge (%3 nachvollzogen), %4 Fotos: %5</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>%1 findings</source>
        <translation>%1 Befunde</translation>
    </message>
    <message>
        <source>%1 lines: %2 new, %3 in the book already, %4 faulty</source>
        <translation>%1 Zeilen: %2 neu, %3 schon im Buch, %4 fehlerhaft</translation>
    </message>
    <message>
        <source>Dry run: nothing was written.</source>
        <translation>Probelauf: Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Nothing was brought in. Repair the lines, or use --skip-faulty.</source>
        <translation>Nichts wurde übernommen. Die Zeilen berichtigen oder --skip-faulty verwenden.</translation>
    </message>
    <message>
        <source>There is nothing new in it.</source>
        <translation>Es steht nichts Neues darin.</translation>
    </message>
    <message>
        <source>Done: %1. One undo in the window takes it back.</source>
        <translation>Fertig: %1. Einmal „Rückgängig“ im Fenster nimmt es zurück.</translation>
    </message>
    <message>
        <source>Rebuilds a book from an archive folder (the book is made), or brings a table into a book by a recipe kept in it.</source>
        <translation>Stellt ein Buch aus einem Archivordner wieder her (das Buch wird angelegt) oder übernimmt eine Tabelle nach einem darin abgelegten Rezept.</translation>
    </message>
    <message>
        <source>the folder of an archive, or a CSV or TSV file</source>
        <translation>der Ordner eines Archivs oder eine CSV- oder TSV-Datei</translation>
    </message>
    <message>
        <source>The named recipe that says what each column is.</source>
        <translation>Das benannte Rezept, das sagt, was jede Spalte ist.</translation>
    </message>
    <message>
        <source>Only looks, writes nothing.</source>
        <translation>Sieht nur nach, schreibt nichts.</translation>
    </message>
    <message>
        <source>Leaves faulty lines out, and what depends on them.</source>
        <translation>Lässt fehlerhafte Zeilen aus, und was an ihnen hängt.</translation>
    </message>
    <message>
        <source>The day taken as today, for records without a date.</source>
        <translation>Der Tag, der als heute gilt, für Datensätze ohne Datum.</translation>
    </message>
    <message>
        <source>Takes tables of an archive that were edited after it was written.</source>
        <translation>Nimmt auch Tabellen eines Archivs an, die danach bearbeitet wurden.</translation>
    </message>
    <message>
        <source>pipwright import: a table needs --recipe NAME. See &apos;pipwright import --help&apos;.</source>
        <translation>pipwright import: Eine Tabelle braucht --recipe NAME. Siehe &apos;pipwright import --help&apos;.</translation>
    </message>
    <message>
        <source>--today: &quot;%1&quot; is not a day. Write it as 2026-08-22.</source>
        <translation>--today: „%1“ ist kein Tag. Schreibweise: 2026-08-22.</translation>
    </message>
    <message>
        <source>Lays out the field labels of plants as a PDF. Print it at actual size, never &quot;fit to page&quot;.

Stocks:
</source>
        <translation>Setzt die Feldetiketten von Pflanzen als PDF. In Originalgröße drucken, nie „an Seite anpassen“.

Etikettenbogen:
</translation>
    </message>
    <message>
        <source>the file to write</source>
        <translation>die Datei, die geschrieben wird</translation>
    </message>
    <message>
        <source>codes or row/position; all growing plants when none</source>
        <translation>Kennungen oder Reihe/Platz; ohne Angabe alle lebenden Pflanzen</translation>
    </message>
    <message>
        <source>What to print on.</source>
        <translation>Worauf gedruckt wird.</translation>
    </message>
    <message>
        <source>First free label of a half-used sheet, from 1.</source>
        <translation>Erstes freies Etikett eines angebrochenen Bogens, ab 1.</translation>
    </message>
    <message>
        <source>--stock: there is no such stock. There are:
%1</source>
        <translation>--stock: Diesen Bogen gibt es nicht. Es gibt:
%1</translation>
    </message>
    <message>
        <source>Field labels</source>
        <translation>Feldetiketten</translation>
    </message>
    <message>
        <source>%1: %2 labels asked for, %3 remarks, %4 pages.</source>
        <translation>%1: %2 Etiketten verlangt, %3 Anmerkungen, %4 Seiten.</translation>
    </message>
    <message>
        <source>Draws every screen of a book as PNG at 100 % and 200 %, light and dark, a sheet of labels and a walking sheet as PDF.</source>
        <translation>Zeichnet alle Ansichten eines Buches als PNG zu 100 % und 200 %, hell und dunkel, dazu einen Bogen Etiketten und ein Rundgangsblatt als PDF.</translation>
    </message>
    <message>
        <source>the folder to draw into</source>
        <translation>der Ordner für die Bilder</translation>
    </message>
    <message>
        <source>Only this scale: 1 or 2.</source>
        <translation>Nur diese Größe: 1 oder 2.</translation>
    </message>
    <message>
        <source>The day taken as today.</source>
        <translation>Der Tag, der als heute gilt.</translation>
    </message>
    <message>
        <source>The tour is in %1.</source>
        <translation>Die Bilder liegen in %1.</translation>
    </message>
    <message>
        <source>Tasting sheets %1</source>
        <translation>Verkostungsbögen %1</translation>
    </message>
    <message>
        <source>Tasting key %1</source>
        <translation>Verkostungsschlüssel %1</translation>
    </message>
    <message>
        <source>--date: write the day of the sitting as 2026-08-22.</source>
        <translation>--date: Den Tag der Verkostung als 2026-08-22 schreiben.</translation>
    </message>
    <message>
        <source>--draw: write a whole number above 0.</source>
        <translation>--draw: Eine ganze Zahl über 0 schreiben.</translation>
    </message>
    <message>
        <source>--paper: there is a4 and letter.</source>
        <translation>--paper: Es gibt a4 und letter.</translation>
    </message>
    <message>
        <source>Plans a tasting: draws codes and an order for each taster, balanced for place and carry-over, hides the benchmark of that season twice, and lays out sheets and key as PDF.

A lot is a code, a name or row/place, bought fruit with its source (&quot;Ash Tarn @ farm shop&quot;), and behind = its condition: origin, ripeness, soundness, where it was kept.
  AT17-014=t4sf5   picked ripe, prime, sound, five days in the fridge
The letters are those of the tasting sheet; ? is unknown.</source>
        <translation>Plant eine Verkostung: lost Nummern und für jeden Verkoster eine Reihenfolge aus, ausgewogen nach Stelle und Nachwirkung, versteckt die Vergleichssorte der Zeit zweimal und setzt Bögen und Schlüssel als PDF.

Eine Probe ist ein Code, ein Name oder Reihe/Platz, gekaufte Frucht mit ihrer Quelle (&quot;Ash Tarn @ farm shop&quot;), und hinter = ihr Zustand: Herkunft, Reife, Unversehrtheit, Lager.
  AT17-014=t4sf5   reif gepflückt, genussreif, heil, fünf Tage im Kühlschrank
Die Buchstaben sind die des Verkostungsbogens; ? ist unbekannt.</translation>
    </message>
    <message>
        <source>fruit, each with its condition</source>
        <translation>Früchte, jede mit ihrem Zustand</translation>
    </message>
    <message>
        <source>The tasters know what they eat.</source>
        <translation>Die Verkoster wissen, was sie essen.</translation>
    </message>
    <message>
        <source>Serve a lot of the last sitting again, if one is fit.</source>
        <translation>Eine Probe der letzten Verkostung wieder vorlegen, wenn eine taugt.</translation>
    </message>
    <message>
        <source>Put the plan into the book, its key sealed.</source>
        <translation>Den Plan ins Buch legen, der Schlüssel versiegelt.</translation>
    </message>
    <message>
        <source>As the book stood on that day, as 2026-08-22.</source>
        <translation>Wie das Buch an diesem Tag stand, etwa 2026-08-22.</translation>
    </message>
    <message>
        <source>A table for a spreadsheet.</source>
        <translation>Eine Tabelle für ein Rechenblatt.</translation>
    </message>
    <message>
        <source>Figures for another program.</source>
        <translation>Zahlen für ein anderes Programm.</translation>
    </message>
    <message>
        <source>--as-of: &quot;%1&quot; is not a day. Write it as 2026-08-22.</source>
        <translation>--as-of: „%1“ ist kein Tag. Schreiben Sie ihn wie 2026-08-22.</translation>
    </message>
    <message>
        <source>--csv and --json: choose one of them.</source>
        <translation>--csv und --json: Wählen Sie eines davon.</translation>
    </message>
    <message>
        <source>Standard deviations: %1, a single score %2.</source>
        <translation>Standardabweichungen: %1, eine einzelne Note %2.</translation>
    </message>
    <message>
        <source>code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>merit</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>+/-</source>
        <translation>+/-</translation>
    </message>
    <message>
        <source>95 % from</source>
        <translation>95 % von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>reliability</source>
        <translation>Verlässlichkeit</translation>
    </message>
    <message>
        <source>raw mean</source>
        <translation>rohes Mittel</translation>
    </message>
    <message>
        <source>scores</source>
        <translation>Noten</translation>
    </message>
    <message>
        <source>fair lots</source>
        <translation>faire Proben</translation>
    </message>
    <message>
        <source>lots</source>
        <translation>Proben</translation>
    </message>
    <message>
        <source>tasters</source>
        <translation>Verkoster</translation>
    </message>
    <message>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>Merit of %1 in %2: what a fair, prime, fresh lot would show an average taster on an average day of an average year, from %3 scores.</source>
        <translation>Wert für %1 in %2: was eine faire, genussreife, frische Probe einem mittleren Verkoster an einem mittleren Tag eines mittleren Jahres zeigte, aus %3 Noten.</translation>
    </message>
    <message>
        <source>liking</source>
        <translation>Gefallen</translation>
    </message>
    <message>
        <source>points of 9</source>
        <translation>Punkten von 9</translation>
    </message>
    <message>
        <source>its own unit</source>
        <translation>der eigenen Einheit</translation>
    </message>
    <message>
        <source>%1 scores are of fruit that is linked to no genotype.</source>
        <translation>%1 Noten gelten Früchten, die zu keinem Genotyp gehören.</translation>
    </message>
    <message>
        <source>The variances did not settle; take the figures with care.</source>
        <translation>Die Varianzen kamen nicht zur Ruhe; nehmen Sie die Zahlen mit Vorsicht.</translation>
    </message>
    <message>
        <source>suggestion</source>
        <translation>Vorschlag</translation>
    </message>
    <message>
        <source>above floor %</source>
        <translation>über Untergrenze %</translation>
    </message>
    <message>
        <source>above best %</source>
        <translation>über Bester %</translation>
    </message>
    <message>
        <source>evidence</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>%1 fruited seedlings and selections, against the benchmarks of their own slot in crop year %2. These are suggestions; no stage was changed.</source>
        <translation>%1 Sämlinge und Auslesen, die schon trugen, gegen die Vergleichssorten ihres eigenen Abschnitts im Erntejahr %2. Das sind Vorschläge; keine Stufe wurde geändert.</translation>
    </message>
    <message>
        <source>taster</source>
        <translation>Verkoster</translation>
    </message>
    <message>
        <source>genotypes</source>
        <translation>Genotypen</translation>
    </message>
    <message>
        <source>level</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>Spreizung</translation>
    </message>
    <message>
        <source>noise</source>
        <translation>Rauschen</translation>
    </message>
    <message>
        <source>repeat</source>
        <translation>Wiederholung</translation>
    </message>
    <message>
        <source>between fruit %</source>
        <translation>zwischen Früchten %</translation>
    </message>
    <message>
        <source>No two tasters scored three of the same lots, so agreement is unknown.</source>
        <translation>Keine zwei Verkoster benoteten drei gleiche Proben, darum ist ihre Einigkeit unbekannt.</translation>
    </message>
    <message>
        <source>path</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>fresh</source>
        <translation>frisch</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>je Tag</translation>
    </message>
    <message>
        <source>days good</source>
        <translation>Tage gut</translation>
    </message>
    <message>
        <source>half good</source>
        <translation>zur Hälfte gut</translation>
    </message>
    <message>
        <source>longest</source>
        <translation>längste</translation>
    </message>
    <message>
        <source>Days good: until fewer than %1 % of the lots are liked %2 points or more; a dash: longer than %3 days.</source>
        <translation>Tage gut: bis weniger als %1 % der Proben mit %2 Punkten oder mehr gefallen; ein Strich: länger als %3 Tage.</translation>
    </message>
    <message>
        <source>Ranks everything tasted by its merit: the scores freed of taster, sitting, year and the state of the fruit, with what parents and sibs lend, and how sure that is.</source>
        <translation>Ordnet alles Verkostete nach seinem Wert: die Noten befreit von Verkoster, Runde, Jahr und Zustand der Frucht, mit dem, was Eltern und Geschwister leihen, und wie sicher das ist.</translation>
    </message>
    <message>
        <source>A trait with numbers or ordered states, by key or name; liking when left out.</source>
        <translation>Ein Merkmal mit Zahlen oder geordneten Stufen, nach Schlüssel oder Name; ohne Angabe das Gefallen.</translation>
    </message>
    <message>
        <source>Holds every fruited seedling against the benchmarks of its own slot and says what the figures suggest. It changes nothing.</source>
        <translation>Hält jeden Sämling, der schon trug, gegen die Vergleichssorten seines eigenen Abschnitts und sagt, was die Zahlen nahelegen. Es ändert nichts.</translation>
    </message>
    <message>
        <source>Says how high each taster scores, how well each repeats and tells fruit apart, how far they agree, and what own seedlings gain when their names are known.</source>
        <translation>Sagt, wie hoch jeder Verkoster benotet, wie gut er wiederholt und Früchte unterscheidet, wie weit sie sich einig sind und was eigene Sämlinge gewinnen, wenn man ihre Namen kennt.</translation>
    </message>
    <message>
        <source>Says how fast each genotype loses on each way of keeping it, and for how many days it stays good.</source>
        <translation>Sagt, wie schnell jeder Genotyp auf jedem Lagerweg verliert und wie viele Tage er gut bleibt.</translation>
    </message>
    <message>
        <source>Liking that still counts as good, 1 to 9.</source>
        <translation>Gefallen, das noch als gut gilt, 1 bis 9.</translation>
    </message>
    <message>
        <source>--good-from: write a number from 1 to 9.</source>
        <translation>--good-from: Schreiben Sie eine Zahl von 1 bis 9.</translation>
    </message>
    <message>
        <source>above best by the margin %</source>
        <translation>über Bester um den Abstand %</translation>
    </message>
    <message>
        <source>Thresholds, as set in the window on this computer: margin %1 points; watched from P(above the floor) %2 %; culled from P(below it) %3 %; backed up from P(above the best) %4 %; talked of as a name from %5 % and %6 crop years.</source>
        <translation>Schwellen, wie im Fenster auf diesem Rechner gesetzt: Abstand %1 Punkte; beobachtet ab P(über der Untergrenze) %2 %; verworfen ab P(darunter) %3 %; gesichert ab P(über dem Besten) %4 %; als Name im Gespräch ab %5 % und %6 Erntejahren.</translation>
    </message>
</context>
<context>
    <name>pipwright::app::FileDoors</name>
    <message>
        <source>The archive holds %1 records, %2 journal entries and %3 photos.</source>
        <translation>Das Archiv enthält %1 Datensätze, %2 Journaleinträge und %3 Fotos.</translation>
    </message>
    <message>
        <source>The book is rebuilt, with %1 journal entries.</source>
        <translation>Das Buch ist wiederhergestellt, mit %1 Journaleinträgen.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing was imported: %n fault(s) in the archive.</source>
        <translation>
            <numerusform>Nichts wurde übernommen: %n Fehler im Archiv.</numerusform>
            <numerusform>Nichts wurde übernommen: %n Fehler im Archiv.</numerusform>
        </translation>
    </message>
    <message>
        <source>The book is sound: %1 records, %2 journal entries replayed, %3 photos.</source>
        <translation>Das Buch ist in Ordnung: %1 Datensätze, %2 Journaleinträge nachvollzogen, %3 Fotos.</translation>
    </message>
    <message numerus="yes">
        <source>The check found %n thing(s) wrong.</source>
        <translation>
            <numerusform>Die Prüfung fand %n Fehler.</numerusform>
            <numerusform>Die Prüfung fand %n Fehler.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::app::Tour</name>
    <message>
        <source>Field labels</source>
        <translation>Feldetiketten</translation>
    </message>
    <message>
        <source>/labels.pdf</source>
        <translation>/labels.pdf</translation>
    </message>
    <message>
        <source>Walking sheet</source>
        <translation>Rundgangsblatt</translation>
    </message>
    <message>
        <source>/walking-sheet.pdf</source>
        <translation>/walking-sheet.pdf</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::AccessibleMap</name>
    <message>
        <source>place %1</source>
        <translation>Platz %1</translation>
    </message>
    <message>
        <source>row %1</source>
        <translation>Reihe %1</translation>
    </message>
    <message>
        <source>no place</source>
        <translation>kein Platz</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::Actions</name>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Buch</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>B&amp;earbeiten</translation>
    </message>
    <message>
        <source>&amp;Tree</source>
        <translation>B&amp;aum</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Gehe zu</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>Ans&amp;icht</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>New book...</source>
        <translation>Neues Buch …</translation>
    </message>
    <message>
        <source>Open book...</source>
        <translation>Buch öffnen …</translation>
    </message>
    <message>
        <source>Open the sample orchard</source>
        <translation>Das Musterbuch öffnen</translation>
    </message>
    <message>
        <source>Close book</source>
        <translation>Buch schließen</translation>
    </message>
    <message>
        <source>Bring in a table...</source>
        <translation>Tabelle übernehmen …</translation>
    </message>
    <message>
        <source>Rebuild a book from an archive...</source>
        <translation>Buch aus Archiv wiederherstellen …</translation>
    </message>
    <message>
        <source>Write an archive...</source>
        <translation>Archiv schreiben …</translation>
    </message>
    <message>
        <source>Restore a dated copy...</source>
        <translation>Tageskopie zurückholen …</translation>
    </message>
    <message>
        <source>Check the book</source>
        <translation>Buch prüfen</translation>
    </message>
    <message>
        <source>Day taken as today...</source>
        <translation>Tag, der als heute gilt …</translation>
    </message>
    <message>
        <source>Who is at the keyboard...</source>
        <translation>Wer schreibt …</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>History of the book</source>
        <translation>Geschichte des Buches</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Select all shown trees</source>
        <translation>Alle gezeigten Bäume auswählen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Bite</source>
        <translation>Bissprobe</translation>
    </message>
    <message>
        <source>Walk mark</source>
        <translation>Reifezeichen</translation>
    </message>
    <message>
        <source>Observation</source>
        <translation>Beobachtung</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>Graft wish</source>
        <translation>Pfropfwunsch</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Lost, dead or removed</source>
        <translation>Verloren, tot oder entfernt</translation>
    </message>
    <message>
        <source>Lay beside</source>
        <translation>Danebenlegen</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Walking sheet of these trees</source>
        <translation>Rundgangsblatt dieser Bäume</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Reihen</translation>
    </message>
    <message>
        <source>Tastings</source>
        <translation>Verkosten</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <source>Grafting</source>
        <translation>Veredeln</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Tree sheet</source>
        <translation>Baumblatt</translation>
    </message>
    <message>
        <source>Trees as a list</source>
        <translation>Bäume als Liste</translation>
    </message>
    <message>
        <source>Fold the tree sheet</source>
        <translation>Baumblatt einklappen</translation>
    </message>
    <message>
        <source>Zoom in</source>
        <translation>Vergrößern</translation>
    </message>
    <message>
        <source>Zoom out</source>
        <translation>Verkleinern</translation>
    </message>
    <message>
        <source>Whole orchard</source>
        <translation>Ganzer Obstgarten</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Farbschema</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Let things move</source>
        <translation>Bewegung zulassen</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>About, and cautions</source>
        <translation>Über Pipwright, und Warnhinweise</translation>
    </message>
    <message>
        <source>What to do first</source>
        <translation>Was zuerst zu tun ist</translation>
    </message>
    <message>
        <source>Merit</source>
        <translation>Wert</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::AncestryView</name>
    <message>
        <source>seed parent</source>
        <translation>Mutter</translation>
    </message>
    <message>
        <source>pollen parent</source>
        <translation>Vater</translation>
    </message>
    <message>
        <source>grandparent</source>
        <translation>Großelter</translation>
    </message>
    <message>
        <source>great-grandparent</source>
        <translation>Urgroßelter</translation>
    </message>
    <message>
        <source>%1 on the seed side</source>
        <translation>%1 mütterlicherseits</translation>
    </message>
    <message>
        <source>%1 on the pollen side</source>
        <translation>%1 väterlicherseits</translation>
    </message>
    <message>
        <source>Ancestry, three generations</source>
        <translation>Abstammung, drei Generationen</translation>
    </message>
    <message>
        <source>open pollinated</source>
        <translation>frei abgeblüht</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::AnotherForm</name>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>code or name of what it is</source>
        <translation>Kennung oder Name dessen, was es ist</translation>
    </message>
    <message>
        <source>What that rests on</source>
        <translation>Worauf das beruht</translation>
    </message>
    <message>
        <source>%1 is another genotype</source>
        <translation>%1 ist ein anderer Genotyp</translation>
    </message>
    <message>
        <source>The book has no genotype &quot;%1&quot;.</source>
        <translation>Im Buch steht kein Genotyp „%1“.</translation>
    </message>
    <message>
        <source>Type a code or name that is in the book.</source>
        <translation>Eine Kennung oder einen Namen aus dem Buch eingeben.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::BesideForm</name>
    <message>
        <source>What stands there too</source>
        <translation>Was dort noch steht</translation>
    </message>
    <message>
        <source>code, or what its tag says; empty if nobody knows</source>
        <translation>Kennung oder Text des Schildes; leer, wenn es niemand weiß</translation>
    </message>
    <message>
        <source>Another plant stands beside %1</source>
        <translation>Neben %1 steht eine weitere Pflanze</translation>
    </message>
    <message>
        <source>This plant stands at no known place.</source>
        <translation>Der Platz dieser Pflanze ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Choose one in a row.</source>
        <translation>Eine Pflanze in einer Reihe wählen.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::BiteForm</name>
    <message>
        <source>&quot;%1&quot; is not a liking.</source>
        <translation>„%1“ ist kein Gefallen.</translation>
    </message>
    <message>
        <source>Type 1 to 9, halves allowed, as 7, 7.5 or 7h; words go behind it.</source>
        <translation>1 bis 9 eingeben, halbe erlaubt, als 7, 7.5 oder 7h; Worte dahinter.</translation>
    </message>
    <message>
        <source>Liking, then words</source>
        <translation>Gefallen, dann Worte</translation>
    </message>
    <message>
        <source>7.5 crisp, sharp, aniseed</source>
        <translation>7.5 knackig, säuerlich, Anis</translation>
    </message>
    <message>
        <source>Taster</source>
        <translation>Verkoster</translation>
    </message>
    <message>
        <source>Sprayed fruit: not before its waiting time is over. Who gets an itching mouth or throat from raw fruit should not taste; with trouble breathing, call for help at once.</source>
        <translation>Gespritztes Obst: nicht vor Ablauf der Wartezeit. Wem rohes Obst in Mund oder Hals juckt, der sollte nicht kosten; bei Atemnot sofort Hilfe rufen.</translation>
    </message>
    <message>
        <source>Bite of %1</source>
        <translation>Bissprobe von %1</translation>
    </message>
    <message>
        <source>tasted by %1</source>
        <translation>verkostet von %1</translation>
    </message>
    <message>
        <source>Liking 1 to 9 first (7, 7.5 or 7h), then words. Enter saves.</source>
        <translation>Gefallen 1 bis 9 (7, 7.5, 7h), dann Worte; Eingabe sichert.</translation>
    </message>
    <message>
        <source>The bite has neither liking nor words.</source>
        <translation>Die Bissprobe hat weder Gefallen noch Worte.</translation>
    </message>
    <message>
        <source>Type 1 to 9, then words, then Enter.</source>
        <translation>1 bis 9 eingeben, dann Worte, dann die Eingabetaste.</translation>
    </message>
    <message>
        <source>The book knows nobody who tastes.</source>
        <translation>Das Buch kennt niemanden, der verkostet.</translation>
    </message>
    <message>
        <source>Enter yourself as a taster in the book first.</source>
        <translation>Zuerst sich selbst als Verkoster ins Buch eintragen.</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>Clear the condition taken over from the last bite</source>
        <translation>Den von der letzten Bissprobe übernommenen Zustand leeren</translation>
    </message>
    <message>
        <source>The condition below is the one of your last bite (%1): change what differs.</source>
        <translation>Der Zustand unten ist der der letzten Bissprobe (%1): ändern, was anders ist.</translation>
    </message>
    <message>
        <source>liking %1 of 9 as eaten; as a test: %2</source>
        <translation>Gefallen %1 von 9 beim Essen; als Probe: %2</translation>
    </message>
    <message>
        <source>Bite of %1 kept: a fair test.</source>
        <translation>Bissprobe von %1 aufgenommen: eine faire Probe.</translation>
    </message>
    <message>
        <source>Bite of %1 kept; whether it is a fair test stays unclear: %2.</source>
        <translation>Bissprobe von %1 aufgenommen; ob sie eine faire Probe ist, bleibt unklar: %2.</translation>
    </message>
    <message>
        <source>Bite of %1 kept, but not as a fair test: %2.</source>
        <translation>Bissprobe von %1 aufgenommen, aber nicht als faire Probe: %2.</translation>
    </message>
    <message numerus="yes">
        <source>&quot;%1&quot; %n day(s) before it is usually first ripe (%2): look again at tree, day and fruit. Damage ripens fruit early too.</source>
        <translation>
            <numerusform>„%1“ %n Tag, bevor er gewöhnlich reif wird (%2): Baum, Tag und Frucht noch einmal ansehen. Auch Schaden macht Früchte früh reif.</numerusform>
            <numerusform>„%1“ %n Tage, bevor er gewöhnlich reif wird (%2): Baum, Tag und Frucht noch einmal ansehen. Auch Schaden macht Früchte früh reif.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::BookHistory</name>
    <message>
        <source>History of the book</source>
        <translation>Geschichte des Buches</translation>
    </message>
    <message>
        <source>Entries of the journal</source>
        <translation>Einträge des Journals</translation>
    </message>
    <message>
        <source>when</source>
        <translation>wann</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>who</source>
        <translation>wer</translation>
    </message>
    <message>
        <source>Older entries</source>
        <translation>Ältere Einträge</translation>
    </message>
    <message>
        <source>Open an entry to see every field before and after. Nothing here can be erased; undone steps stay listed.</source>
        <translation>Ein geöffneter Eintrag zeigt jedes Feld vorher und nachher. Hier lässt sich nichts löschen; zurückgenommene Schritte bleiben stehen.</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Wiederholt: %1</translation>
    </message>
    <message>
        <source>Baseline: the content came without its history</source>
        <translation>Ausgangsstand: Der Inhalt kam ohne seine Geschichte</translation>
    </message>
    <message numerus="yes">
        <source>... and %n more</source>
        <translation>
            <numerusform>... und %n weiterer</numerusform>
            <numerusform>... und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>new %1</source>
        <translation>neu: %1</translation>
    </message>
    <message>
        <source>taken back: %1</source>
        <translation>zurückgenommen: %1</translation>
    </message>
    <message>
        <source>changed: %1</source>
        <translation>geändert: %1</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::BookWords</name>
    <message>
        <source>about</source>
        <translation>ungefähr</translation>
    </message>
    <message>
        <source>advanced</source>
        <translation>fortgeschritten</translation>
    </message>
    <message>
        <source>again</source>
        <translation>noch einmal</translation>
    </message>
    <message>
        <source>alias</source>
        <translation>Zweitname</translation>
    </message>
    <message>
        <source>alive</source>
        <translation>lebt</translation>
    </message>
    <message>
        <source>apple</source>
        <translation>Apfel</translation>
    </message>
    <message>
        <source>aroma</source>
        <translation>Aroma</translation>
    </message>
    <message>
        <source>asserted</source>
        <translation>festgestellt am</translation>
    </message>
    <message>
        <source>back up now</source>
        <translation>jetzt sichern</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>Tüte</translation>
    </message>
    <message>
        <source>bagged</source>
        <translation>eingetütet</translation>
    </message>
    <message>
        <source>balloon</source>
        <translation>Ballon</translation>
    </message>
    <message>
        <source>bark</source>
        <translation>Rindenpfropfen</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>bearing</source>
        <translation>tragend</translation>
    </message>
    <message>
        <source>bearing deg</source>
        <translation>Richtung in Grad</translation>
    </message>
    <message>
        <source>beginning of bloom</source>
        <translation>Blühbeginn</translation>
    </message>
    <message>
        <source>benchmark</source>
        <translation>Vergleichssorte</translation>
    </message>
    <message>
        <source>best</source>
        <translation>Beste</translation>
    </message>
    <message>
        <source>bird</source>
        <translation>Vogel</translation>
    </message>
    <message>
        <source>blind</source>
        <translation>blind</translation>
    </message>
    <message>
        <source>bloom stage</source>
        <translation>Blühstadium</translation>
    </message>
    <message>
        <source>book</source>
        <translation>Buch</translation>
    </message>
    <message>
        <source>book facts</source>
        <translation>Angaben zum Buch</translation>
    </message>
    <message>
        <source>bud burst</source>
        <translation>Knospenaufbruch</translation>
    </message>
    <message>
        <source>buds swelling</source>
        <translation>Knospenschwellen</translation>
    </message>
    <message>
        <source>by fruit</source>
        <translation>nach der Frucht</translation>
    </message>
    <message>
        <source>by map</source>
        <translation>nach dem Plan</translation>
    </message>
    <message>
        <source>canopy place</source>
        <translation>Ort in der Krone</translation>
    </message>
    <message>
        <source>caption</source>
        <translation>Bildunterschrift</translation>
    </message>
    <message>
        <source>cause</source>
        <translation>Ursache</translation>
    </message>
    <message>
        <source>cellar</source>
        <translation>Keller</translation>
    </message>
    <message>
        <source>chained</source>
        <translation>mehrere Orte</translation>
    </message>
    <message>
        <source>checkpoint</source>
        <translation>Kontrolltermin</translation>
    </message>
    <message>
        <source>chip bud</source>
        <translation>Chipveredlung</translation>
    </message>
    <message>
        <source>claimed genotype</source>
        <translation>angeblicher Genotyp</translation>
    </message>
    <message>
        <source>clean</source>
        <translation>befallsfrei</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>deutlich</translation>
    </message>
    <message>
        <source>cleft</source>
        <translation>Spaltpfropfen</translation>
    </message>
    <message>
        <source>code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>conditions</source>
        <translation>Bedingungen</translation>
    </message>
    <message>
        <source>confidence</source>
        <translation>Gewissheit</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>bestätigt am</translation>
    </message>
    <message>
        <source>controlled</source>
        <translation>gelenkt</translation>
    </message>
    <message>
        <source>cooked</source>
        <translation>gekocht</translation>
    </message>
    <message>
        <source>counter</source>
        <translation>Zimmer</translation>
    </message>
    <message>
        <source>crispness</source>
        <translation>Knackigkeit</translation>
    </message>
    <message>
        <source>crop load</source>
        <translation>Behang</translation>
    </message>
    <message>
        <source>crop number</source>
        <translation>wievielter Ertrag</translation>
    </message>
    <message>
        <source>crop year</source>
        <translation>Erntejahr</translation>
    </message>
    <message>
        <source>cross</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <source>cross made</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <source>cull</source>
        <translation>verwerfen</translation>
    </message>
    <message>
        <source>culled</source>
        <translation>verworfen</translation>
    </message>
    <message>
        <source>cultivar</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>date to</source>
        <translation>Tag bis</translation>
    </message>
    <message>
        <source>date typed</source>
        <translation>Tag wie eingegeben</translation>
    </message>
    <message>
        <source>days in cellar</source>
        <translation>Tage im Keller</translation>
    </message>
    <message>
        <source>days in fridge</source>
        <translation>Tage im Kühlschrank</translation>
    </message>
    <message>
        <source>days on counter</source>
        <translation>Tage im Zimmer</translation>
    </message>
    <message>
        <source>days still good</source>
        <translation>Tage noch gut</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>tot</translation>
    </message>
    <message>
        <source>decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>description</source>
        <translation>Beschreibung</translation>
    </message>
    <message>
        <source>direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>distance m</source>
        <translation>Entfernung in m</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>dormant</source>
        <translation>Knospenruhe</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Fallobst</translation>
    </message>
    <message>
        <source>dropped</source>
        <translation>fallen gelassen</translation>
    </message>
    <message>
        <source>dropped today</source>
        <translation>heute gefallen</translation>
    </message>
    <message>
        <source>early prime</source>
        <translation>frühe Genussreife</translation>
    </message>
    <message>
        <source>elected</source>
        <translation>gewählt am</translation>
    </message>
    <message>
        <source>election</source>
        <translation>Wahl</translation>
    </message>
    <message>
        <source>elevation m</source>
        <translation>Höhe über NN in m</translation>
    </message>
    <message>
        <source>emasculated bagged</source>
        <translation>kastriert und eingetütet</translation>
    </message>
    <message>
        <source>end of bloom</source>
        <translation>Blühende</translation>
    </message>
    <message>
        <source>European plum</source>
        <translation>Pflaume</translation>
    </message>
    <message>
        <source>evidence</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>exact</source>
        <translation>genau</translation>
    </message>
    <message>
        <source>fading</source>
        <translation>abgehende Blüte</translation>
    </message>
    <message>
        <source>famous</source>
        <translation>bekannte</translation>
    </message>
    <message>
        <source>few</source>
        <translation>wenige</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>ausgeführt</translation>
    </message>
    <message>
        <source>fire blight</source>
        <translation>Feuerbrand</translation>
    </message>
    <message>
        <source>firmness</source>
        <translation>Festigkeit</translation>
    </message>
    <message>
        <source>first day</source>
        <translation>erster Tag</translation>
    </message>
    <message>
        <source>first flowers</source>
        <translation>erste Blüten</translation>
    </message>
    <message>
        <source>first ripe</source>
        <translation>erste reife Frucht</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Untergrenze</translation>
    </message>
    <message>
        <source>flowers</source>
        <translation>Blüten</translation>
    </message>
    <message>
        <source>four to six weeks</source>
        <translation>vier bis sechs Wochen</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>Gerüstbaum</translation>
    </message>
    <message>
        <source>fridge</source>
        <translation>Kühlschrank</translation>
    </message>
    <message>
        <source>fruit</source>
        <translation>Frucht</translation>
    </message>
    <message>
        <source>fruit diameter</source>
        <translation>Fruchtdurchmesser</translation>
    </message>
    <message>
        <source>fruit mass</source>
        <translation>Fruchtmasse</translation>
    </message>
    <message>
        <source>fruit to 20 mm</source>
        <translation>Frucht bis 20 mm</translation>
    </message>
    <message>
        <source>fruits</source>
        <translation>Früchte</translation>
    </message>
    <message>
        <source>fruits set</source>
        <translation>angesetzte Früchte</translation>
    </message>
    <message>
        <source>full bloom</source>
        <translation>Vollblüte</translation>
    </message>
    <message>
        <source>genotype</source>
        <translation>Genotyp</translation>
    </message>
    <message>
        <source>germinated</source>
        <translation>gekeimt</translation>
    </message>
    <message>
        <source>getting there</source>
        <translation>fast so weit</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>weg</translation>
    </message>
    <message>
        <source>graft check</source>
        <translation>Anwuchskontrolle</translation>
    </message>
    <message>
        <source>graft order</source>
        <translation>Veredlungsauftrag</translation>
    </message>
    <message>
        <source>graft record</source>
        <translation>Veredlungsbuch</translation>
    </message>
    <message>
        <source>graft wish</source>
        <translation>Veredlungswunsch</translation>
    </message>
    <message>
        <source>grafted</source>
        <translation>veredelt</translation>
    </message>
    <message>
        <source>greater than</source>
        <translation>größer als</translation>
    </message>
    <message>
        <source>green</source>
        <translation>grün</translation>
    </message>
    <message>
        <source>green bud</source>
        <translation>Grüne Knospe</translation>
    </message>
    <message>
        <source>growing</source>
        <translation>wächst</translation>
    </message>
    <message>
        <source>grows</source>
        <translation>wächst als</translation>
    </message>
    <message>
        <source>guess</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>health notes</source>
        <translation>Gesundheitsangaben</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>hemisphere</source>
        <translation>Erdhälfte</translation>
    </message>
    <message>
        <source>higher is better</source>
        <translation>mehr ist besser</translation>
    </message>
    <message>
        <source>highest</source>
        <translation>Höchstwert</translation>
    </message>
    <message>
        <source>highest c</source>
        <translation>Höchsttemperatur in °C</translation>
    </message>
    <message>
        <source>identity</source>
        <translation>Identität</translation>
    </message>
    <message>
        <source>initials</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>insect</source>
        <translation>Insekt</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>Japanese plum</source>
        <translation>Japanische Pflaume</translation>
    </message>
    <message>
        <source>juiciness</source>
        <translation>Saftigkeit</translation>
    </message>
    <message>
        <source>juvenile</source>
        <translation>jugendlich</translation>
    </message>
    <message>
        <source>key</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Gattung des Eintrags</translation>
    </message>
    <message>
        <source>last day</source>
        <translation>letzter Tag</translation>
    </message>
    <message>
        <source>last good on tree</source>
        <translation>zuletzt gut am Baum</translation>
    </message>
    <message>
        <source>late prime</source>
        <translation>späte Genussreife</translation>
    </message>
    <message>
        <source>latin</source>
        <translation>lateinischer Name</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>leaf fall</source>
        <translation>Laubfall</translation>
    </message>
    <message>
        <source>length m</source>
        <translation>Länge in m</translation>
    </message>
    <message>
        <source>less than</source>
        <translation>kleiner als</translation>
    </message>
    <message>
        <source>light</source>
        <translation>schwach</translation>
    </message>
    <message>
        <source>liking</source>
        <translation>Gefallen</translation>
    </message>
    <message>
        <source>limb</source>
        <translation>Ast</translation>
    </message>
    <message>
        <source>limb bearing deg</source>
        <translation>Richtung des Astes in Grad</translation>
    </message>
    <message>
        <source>limb height cm</source>
        <translation>Höhe des Astes in cm</translation>
    </message>
    <message>
        <source>limb mark</source>
        <translation>Farbmarke des Astes</translation>
    </message>
    <message>
        <source>limb order</source>
        <translation>Reihenfolge am Ast</translation>
    </message>
    <message>
        <source>lone</source>
        <translation>einzelne</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>low</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>lower is better</source>
        <translation>weniger ist besser</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation>Mindestwert</translation>
    </message>
    <message>
        <source>lowest c</source>
        <translation>Tiefsttemperatur in °C</translation>
    </message>
    <message>
        <source>many</source>
        <translation>viele</translation>
    </message>
    <message>
        <source>map only</source>
        <translation>nur nach dem Plan</translation>
    </message>
    <message>
        <source>mealiness</source>
        <translation>Mehligkeit</translation>
    </message>
    <message>
        <source>meaning</source>
        <translation>Bedeutung</translation>
    </message>
    <message>
        <source>media type</source>
        <translation>Medientyp</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>middling</source>
        <translation>durchschnittlich</translation>
    </message>
    <message>
        <source>midsummer</source>
        <translation>Hochsommer</translation>
    </message>
    <message>
        <source>mildew</source>
        <translation>Mehltau</translation>
    </message>
    <message>
        <source>misspelling</source>
        <translation>Schreibfehler</translation>
    </message>
    <message>
        <source>moderate</source>
        <translation>mäßig</translation>
    </message>
    <message>
        <source>mother plant</source>
        <translation>Mutterpflanze</translation>
    </message>
    <message>
        <source>mouse-ear</source>
        <translation>Mausohr</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>name talk</source>
        <translation>Namensgespräch</translation>
    </message>
    <message>
        <source>named</source>
        <translation>benannt</translation>
    </message>
    <message>
        <source>neither</source>
        <translation>keins von beiden</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no reason to keep</source>
        <translation>kein Grund zum Behalten</translation>
    </message>
    <message>
        <source>nominal</source>
        <translation>nominal</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>north</source>
        <translation>Nord</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>numeric</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>nursery</source>
        <translation>Anzucht</translation>
    </message>
    <message>
        <source>observation</source>
        <translation>Beobachtung</translation>
    </message>
    <message>
        <source>on ground longer</source>
        <translation>länger am Boden</translation>
    </message>
    <message>
        <source>on its way out</source>
        <translation>am Vergehen</translation>
    </message>
    <message>
        <source>on tree</source>
        <translation>am Baum</translation>
    </message>
    <message>
        <source>onto plant</source>
        <translation>auf Pflanze</translation>
    </message>
    <message>
        <source>onto words</source>
        <translation>worauf</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>bestellt</translation>
    </message>
    <message>
        <source>ordinal</source>
        <translation>Platznummer</translation>
    </message>
    <message>
        <source>organza</source>
        <translation>Organza</translation>
    </message>
    <message>
        <source>origin</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
    <message>
        <source>over</source>
        <translation>überreif</translation>
    </message>
    <message>
        <source>own roots</source>
        <translation>wurzelecht</translation>
    </message>
    <message>
        <source>owner</source>
        <translation>Besitzer</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>parcel</source>
        <translation>Sendung</translation>
    </message>
    <message>
        <source>parent</source>
        <translation>Elternteil</translation>
    </message>
    <message>
        <source>parent only</source>
        <translation>nur als Elter</translation>
    </message>
    <message>
        <source>parentage</source>
        <translation>Abstammung</translation>
    </message>
    <message>
        <source>parents</source>
        <translation>Eltern</translation>
    </message>
    <message>
        <source>peach</source>
        <translation>Pfirsich</translation>
    </message>
    <message>
        <source>pear</source>
        <translation>Birne</translation>
    </message>
    <message>
        <source>person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>pick then chill</source>
        <translation>pflücken, dann kühlen</translation>
    </message>
    <message>
        <source>pick then ripen</source>
        <translation>pflücken, dann nachreifen</translation>
    </message>
    <message>
        <source>picked early</source>
        <translation>früh gepflückt</translation>
    </message>
    <message>
        <source>picked ripe</source>
        <translation>reif gepflückt</translation>
    </message>
    <message>
        <source>pink bud</source>
        <translation>Rosa Knospe</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>plant</source>
        <translation>Pflanze</translation>
    </message>
    <message>
        <source>planted</source>
        <translation>gepflanzt</translation>
    </message>
    <message>
        <source>planted typed</source>
        <translation>gepflanzt wie eingegeben</translation>
    </message>
    <message>
        <source>ploidy</source>
        <translation>Ploidie</translation>
    </message>
    <message>
        <source>pollen</source>
        <translation>Pollen</translation>
    </message>
    <message>
        <source>pollen parent</source>
        <translation>Vatersorte</translation>
    </message>
    <message>
        <source>pollination</source>
        <translation>Bestäubung</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>prime</source>
        <translation>Genussreife</translation>
    </message>
    <message>
        <source>purity</source>
        <translation>Reinheit</translation>
    </message>
    <message>
        <source>qualifier</source>
        <translation>Zusatz</translation>
    </message>
    <message>
        <source>quince</source>
        <translation>Quitte</translation>
    </message>
    <message>
        <source>rain mm</source>
        <translation>Regen in mm</translation>
    </message>
    <message>
        <source>range</source>
        <translation>von bis</translation>
    </message>
    <message>
        <source>rank</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>received</source>
        <translation>erhalten</translation>
    </message>
    <message>
        <source>recipe</source>
        <translation>Rezept</translation>
    </message>
    <message>
        <source>released</source>
        <translation>freigegeben</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>replicate</source>
        <translation>Wiederholung</translation>
    </message>
    <message>
        <source>report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>report due</source>
        <translation>Bericht fällig</translation>
    </message>
    <message>
        <source>ripe</source>
        <translation>reif</translation>
    </message>
    <message>
        <source>ripeness</source>
        <translation>Reife</translation>
    </message>
    <message>
        <source>ripening</source>
        <translation>reifend</translation>
    </message>
    <message>
        <source>ripening path</source>
        <translation>Reifeweg</translation>
    </message>
    <message>
        <source>ripening state</source>
        <translation>Reifestand</translation>
    </message>
    <message>
        <source>role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>rootstock</source>
        <translation>Unterlage</translation>
    </message>
    <message>
        <source>rot</source>
        <translation>Fäule</translation>
    </message>
    <message>
        <source>row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>rung</source>
        <translation>Sprosse</translation>
    </message>
    <message>
        <source>s alleles</source>
        <translation>S-Allele</translation>
    </message>
    <message>
        <source>scab</source>
        <translation>Schorf</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>Skala</translation>
    </message>
    <message>
        <source>score</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>scores</source>
        <translation>Noten</translation>
    </message>
    <message>
        <source>season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>seed</source>
        <translation>Same</translation>
    </message>
    <message>
        <source>seed parent</source>
        <translation>Muttersorte</translation>
    </message>
    <message>
        <source>seedling</source>
        <translation>Sämling</translation>
    </message>
    <message>
        <source>seeds got</source>
        <translation>gewonnene Samen</translation>
    </message>
    <message>
        <source>seeds per fruit</source>
        <translation>Samen je Frucht</translation>
    </message>
    <message>
        <source>seeds sown</source>
        <translation>gesäte Samen</translation>
    </message>
    <message>
        <source>selection</source>
        <translation>Zuchtklon</translation>
    </message>
    <message>
        <source>self</source>
        <translation>selbst</translation>
    </message>
    <message>
        <source>self compatible</source>
        <translation>selbstfruchtbar</translation>
    </message>
    <message>
        <source>sent</source>
        <translation>geschickt</translation>
    </message>
    <message>
        <source>serving code</source>
        <translation>Serviercode</translation>
    </message>
    <message>
        <source>serving order</source>
        <translation>Servierfolge</translation>
    </message>
    <message>
        <source>sha256</source>
        <translation>SHA-256</translation>
    </message>
    <message>
        <source>shaken</source>
        <translation>geschüttelt</translation>
    </message>
    <message>
        <source>sharpness</source>
        <translation>Säure im Mund</translation>
    </message>
    <message>
        <source>sight</source>
        <translation>Sicht</translation>
    </message>
    <message>
        <source>sighted</source>
        <translation>offen verkostet</translation>
    </message>
    <message>
        <source>since</source>
        <translation>seit</translation>
    </message>
    <message>
        <source>site</source>
        <translation>Standort</translation>
    </message>
    <message>
        <source>slight</source>
        <translation>leicht</translation>
    </message>
    <message>
        <source>slot</source>
        <translation>Erntefenster</translation>
    </message>
    <message>
        <source>soluble solids</source>
        <translation>lösliche Trockensubstanz</translation>
    </message>
    <message>
        <source>some</source>
        <translation>einige</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>unversehrt</translation>
    </message>
    <message>
        <source>soundness</source>
        <translation>Unversehrtheit</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>source cell</source>
        <translation>Quellzelle</translation>
    </message>
    <message>
        <source>source file</source>
        <translation>Quelldatei</translation>
    </message>
    <message>
        <source>source sheet</source>
        <translation>Quellblatt</translation>
    </message>
    <message>
        <source>south</source>
        <translation>Süd</translation>
    </message>
    <message>
        <source>species</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>split</source>
        <translation>geplatzt</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>starch, 1 to 10</source>
        <translation>Stärke, 1 bis 10</translation>
    </message>
    <message>
        <source>starch, 1 to 8</source>
        <translation>Stärke, 1 bis 8</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>state reason</source>
        <translation>Grund des Zustands</translation>
    </message>
    <message>
        <source>state since</source>
        <translation>Zustand seit</translation>
    </message>
    <message>
        <source>station</source>
        <translation>Versuchsstation</translation>
    </message>
    <message>
        <source>sticks</source>
        <translation>Reiser</translation>
    </message>
    <message>
        <source>stock</source>
        <translation>Unterlage</translation>
    </message>
    <message>
        <source>stock words</source>
        <translation>Unterlage in Worten</translation>
    </message>
    <message>
        <source>storage</source>
        <translation>Lagerung</translation>
    </message>
    <message>
        <source>storage typed</source>
        <translation>Lagerung wie eingegeben</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>kräftig</translation>
    </message>
    <message>
        <source>sun side</source>
        <translation>Sonnenseite</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sicher</translation>
    </message>
    <message>
        <source>sweet cherry</source>
        <translation>Süßkirsche</translation>
    </message>
    <message>
        <source>sweetness</source>
        <translation>Süße</translation>
    </message>
    <message>
        <source>t bud</source>
        <translation>Okulation</translation>
    </message>
    <message>
        <source>table</source>
        <translation>Tisch</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>tag and map</source>
        <translation>Etikett und Plan</translation>
    </message>
    <message>
        <source>tag only</source>
        <translation>nur nach dem Etikett</translation>
    </message>
    <message>
        <source>tagged only</source>
        <translation>nur etikettiert</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>gepflückt</translation>
    </message>
    <message>
        <source>target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>taster</source>
        <translation>Verkoster</translation>
    </message>
    <message>
        <source>tastes</source>
        <translation>verkostet</translation>
    </message>
    <message>
        <source>tasting</source>
        <translation>Verkostung</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>titratable acidity</source>
        <translation>titrierbare Säure</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Krone oben</translation>
    </message>
    <message>
        <source>topic</source>
        <translation>Thema</translation>
    </message>
    <message>
        <source>trace</source>
        <translation>Spuren</translation>
    </message>
    <message>
        <source>trade name</source>
        <translation>Handelsname</translation>
    </message>
    <message>
        <source>trait</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <source>trait state</source>
        <translation>Merkmalsstufe</translation>
    </message>
    <message>
        <source>trees</source>
        <translation>Bäume</translation>
    </message>
    <message>
        <source>trial row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>eingegeben</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>unit typed</source>
        <translation>Einheit wie eingegeben</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>uses</source>
        <translation>Verwendung</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>value date</source>
        <translation>Wert (Tag)</translation>
    </message>
    <message>
        <source>value to</source>
        <translation>Wert bis</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>very heavy</source>
        <translation>sehr stark</translation>
    </message>
    <message>
        <source>very strong</source>
        <translation>sehr kräftig</translation>
    </message>
    <message>
        <source>very weak</source>
        <translation>sehr schwach</translation>
    </message>
    <message>
        <source>vigour</source>
        <translation>Wuchs</translation>
    </message>
    <message>
        <source>void reason</source>
        <translation>Grund der Ungültigkeit</translation>
    </message>
    <message>
        <source>walk marks</source>
        <translation>Rundgangsmarken</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>beobachten</translation>
    </message>
    <message>
        <source>watched</source>
        <translation>beobachtet</translation>
    </message>
    <message>
        <source>weak</source>
        <translation>kümmerlich</translation>
    </message>
    <message>
        <source>weather day</source>
        <translation>Wettertag</translation>
    </message>
    <message>
        <source>whip and tongue</source>
        <translation>Kopulation mit Gegenzunge</translation>
    </message>
    <message>
        <source>wish</source>
        <translation>Wunsch</translation>
    </message>
    <message>
        <source>wished</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>words</source>
        <translation>Worte</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>zero end</source>
        <translation>Nullpunkt</translation>
    </message>
    <message>
        <source>draw</source>
        <translation>Auslosung</translation>
    </message>
    <message>
        <source>opened</source>
        <translation>geöffnet</translation>
    </message>
    <message>
        <source>sealed key</source>
        <translation>versiegelter Schlüssel</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ChangeWords</name>
    <message>
        <source>one that is gone</source>
        <translation>nicht mehr vorhanden</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>%1, %2: %3, then %4</source>
        <translation>%1, %2: %3, danach %4</translation>
    </message>
    <message>
        <source>new %1: %2</source>
        <translation>neu: %1: %2</translation>
    </message>
    <message>
        <source>taken away: %1: %2</source>
        <translation>entfernt: %1: %2</translation>
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
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>First fruit year</source>
        <translation>Jahr der ersten Frucht</translation>
    </message>
    <message>
        <source>Latest liking</source>
        <translation>Letztes Gefallen</translation>
    </message>
    <message>
        <source>Number of fair lots</source>
        <translation>Zahl fairer Proben</translation>
    </message>
    <message>
        <source>Harvest week</source>
        <translation>Erntewoche</translation>
    </message>
    <message>
        <source>Scab</source>
        <translation>Schorf</translation>
    </message>
    <message>
        <source>Identity</source>
        <translation>Identität</translation>
    </message>
    <message>
        <source>Last visited</source>
        <translation>Letzter Besuch</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ColourChooser</name>
    <message>
        <source>Colour by</source>
        <translation>Farbe nach</translation>
    </message>
    <message>
        <source>What the colours of the map show</source>
        <translation>Was die Farben der Karte zeigen</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::Colourings</name>
    <message>
        <source>Stage</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Identity</source>
        <translation>Identität</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>First fruit (crop year)</source>
        <translation>Erste Frucht (Erntejahr)</translation>
    </message>
    <message>
        <source>Fair lots</source>
        <translation>Faire Proben</translation>
    </message>
    <message>
        <source>Latest liking (1 to 9)</source>
        <translation>Letztes Gefallen (1 bis 9)</translation>
    </message>
    <message>
        <source>Scab (1 none to 9 worst)</source>
        <translation>Schorf (1 keiner bis 9 stärkster)</translation>
    </message>
    <message>
        <source>today or yesterday</source>
        <translation>heute oder gestern</translation>
    </message>
    <message>
        <source>within a week</source>
        <translation>in der letzten Woche</translation>
    </message>
    <message>
        <source>within a month</source>
        <translation>im letzten Monat</translation>
    </message>
    <message>
        <source>within a year</source>
        <translation>im letzten Jahr</translation>
    </message>
    <message>
        <source>longer ago</source>
        <translation>länger her</translation>
    </message>
    <message>
        <source>Last visited</source>
        <translation>Letzter Besuch</translation>
    </message>
    <message>
        <source>worse beyond doubt</source>
        <translation>sicher schlechter</translation>
    </message>
    <message>
        <source>within doubt</source>
        <translation>nicht sicher verschieden</translation>
    </message>
    <message>
        <source>better beyond doubt</source>
        <translation>sicher besser</translation>
    </message>
    <message>
        <source>Usual harvest week, calendar of %1</source>
        <translation>Übliche Erntewoche, Kalender %1</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::Compare</name>
    <message>
        <source>%1 %2</source>
        <comment>day and month</comment>
        <translation>%1. %2</translation>
    </message>
    <message numerus="yes">
        <source>%n fair score(s)</source>
        <translation>
            <numerusform>%n faire Wertung</numerusform>
            <numerusform>%n faire Wertungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n score(s), none fair</source>
        <translation>
            <numerusform>%n Wertung, nicht fair</numerusform>
            <numerusform>%n Wertungen, keine fair</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taster(s)</source>
        <translation>
            <numerusform>%n Verkoster</numerusform>
            <numerusform>%n Verkoster</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n crop year(s)</source>
        <translation>
            <numerusform>%n Erntejahr</numerusform>
            <numerusform>%n Erntejahre</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (n = %2)</source>
        <translation>%1 (n = %2)</translation>
    </message>
    <message>
        <source>%1 (%2 to %3, n = %4)</source>
        <translation>%1 (%2 bis %3, n = %4)</translation>
    </message>
    <message>
        <source>benchmark</source>
        <translation>Vergleichssorte</translation>
    </message>
    <message>
        <source>%1 since %2</source>
        <translation>%1 seit %2</translation>
    </message>
    <message>
        <source>stands at %1</source>
        <translation>steht auf %1</translation>
    </message>
    <message>
        <source>parents not known</source>
        <translation>Eltern unbekannt</translation>
    </message>
    <message>
        <source>never walked: a walk mark (W) at the tree starts it</source>
        <translation>nie begangen: ein Reifezeichen (W) am Baum macht den Anfang</translation>
    </message>
    <message>
        <source>never yet seen ripe</source>
        <translation>noch nie reif gesehen</translation>
    </message>
    <message>
        <source>ripe about %1</source>
        <translation>reif um den %1</translation>
    </message>
    <message>
        <source>usually ripe %1 to %2</source>
        <translation>meist reif %1 bis %2</translation>
    </message>
    <message>
        <source>, from week %1</source>
        <translation>, ab Woche %1</translation>
    </message>
    <message numerus="yes">
        <source> (%n crop year(s))</source>
        <translation>
            <numerusform> (%n Erntejahr)</numerusform>
            <numerusform> (%n Erntejahre)</numerusform>
        </translation>
    </message>
    <message>
        <source>no fair score yet; %1 from %2</source>
        <translation>noch keine faire Wertung; %1 aus %2</translation>
    </message>
    <message>
        <source>not tasted yet</source>
        <translation>noch nicht verkostet</translation>
    </message>
    <message>
        <source>%1 (n = 1)</source>
        <translation>%1 (n = 1)</translation>
    </message>
    <message>
        <source>no lot tasted</source>
        <translation>keine Probe verkostet</translation>
    </message>
    <message numerus="yes">
        <source>%1 fair of %n lot(s)</source>
        <translation>
            <numerusform>%1 von %n Probe fair</numerusform>
            <numerusform>%1 von %n Proben fair</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sitting(s)</source>
        <translation>
            <numerusform>%n Verkostung</numerusform>
            <numerusform>%n Verkostungen</numerusform>
        </translation>
    </message>
    <message>
        <source>▲ %1 above %2</source>
        <translation>▲ %1 über %2</translation>
    </message>
    <message>
        <source>▼ %1 below %2</source>
        <translation>▼ %1 unter %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>trait, unit</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1
(more is better)</source>
        <translation>%1
(mehr ist besser)</translation>
    </message>
    <message>
        <source>%1
(less is better)</source>
        <translation>%1
(weniger ist besser)</translation>
    </message>
    <message>
        <source>Fruit</source>
        <translation>Frucht</translation>
    </message>
    <message>
        <source>In the mouth</source>
        <translation>Im Mund</translation>
    </message>
    <message>
        <source>Disease</source>
        <translation>Krankheit</translation>
    </message>
    <message>
        <source>Tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>Other traits</source>
        <translation>Andere Merkmale</translation>
    </message>
    <message>
        <source>still green on %1</source>
        <translation>am %1 noch grün</translation>
    </message>
    <message>
        <source>not seen ripe</source>
        <translation>nicht reif gesehen</translation>
    </message>
    <message>
        <source>ripe from %1, over by %2</source>
        <translation>reif ab %1, überreif am %2</translation>
    </message>
    <message>
        <source>ripe from %1 to %2, its end not seen</source>
        <translation>reif %1 bis %2, Ende nicht gesehen</translation>
    </message>
    <message>
        <source>ripe on %1, its end not seen</source>
        <translation>reif am %1, Ende nicht gesehen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>crop year, what was seen</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>stays good %1 off the tree (n = %2)</source>
        <translation>bleibt vom Baum %1 gut (n = %2)</translation>
    </message>
    <message>
        <source>d</source>
        <comment>days</comment>
        <translation>d</translation>
    </message>
    <message numerus="yes">
        <source>up to %n day(s)</source>
        <translation>
            <numerusform>bis %n Tag</numerusform>
            <numerusform>bis %n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>kept more than %1 days: %2 (%3, %4)</source>
        <translation>länger als %1 Tage gelagert: %2 (%3, %4)</translation>
    </message>
    <message numerus="yes">
        <source>%n score(s)</source>
        <translation>
            <numerusform>%n Note</numerusform>
            <numerusform>%n Noten</numerusform>
        </translation>
    </message>
    <message>
        <source>not yet tasted after more than %1 days off the tree</source>
        <translation>noch nie nach mehr als %1 Tagen vom Baum verkostet</translation>
    </message>
    <message>
        <source>▲ ▼: the mean differs from that of the first column by more than two standard errors of the difference (three values or more on both sides), as eaten, not yet adjusted for taster and condition. ± is one standard error. Usual is the median of the crop years; its days and weeks are those of this year&apos;s calendar.</source>
        <translation>▲ ▼: Der Mittelwert weicht um mehr als zwei Standardfehler der Differenz von dem der ersten Spalte ab (auf beiden Seiten drei Werte oder mehr), wie gegessen, noch nicht um Verkoster und Bedingung bereinigt. ± ist ein Standardfehler. Üblich ist der Median der Erntejahre; seine Tage und Wochen sind die des Kalenders dieses Jahres.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::CompareCells</name>
    <message>
        <source>%1 d</source>
        <comment>days</comment>
        <translation>%1 d</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::CompareLegend</name>
    <message>
        <source>What the marks mean</source>
        <translation>Was die Zeichen bedeuten</translation>
    </message>
    <message>
        <source>ripe in one crop year, the oldest on top</source>
        <translation>reif in einem Erntejahr, das älteste oben</translation>
    </message>
    <message>
        <source>its end not seen</source>
        <translation>Ende nicht gesehen</translation>
    </message>
    <message>
        <source>usual window</source>
        <translation>übliches Fenster</translation>
    </message>
    <message>
        <source>fair score, tasted blind</source>
        <translation>faire Note, blind verkostet</translation>
    </message>
    <message>
        <source>sighted</source>
        <translation>offen verkostet</translation>
    </message>
    <message>
        <source>not known which</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>open: not fair, or unclear</source>
        <translation>hohl: nicht fair oder unklar</translation>
    </message>
    <message>
        <source>mean of the fair scores ± standard error</source>
        <translation>Mittel der fairen Noten ± Standardfehler</translation>
    </message>
    <message>
        <source>mean of a trait, from its lowest to its highest value</source>
        <translation>Mittel eines Merkmals, vom kleinsten zum größten Wert</translation>
    </message>
    <message>
        <source>shown; press to fold away</source>
        <translation>gezeigt; drücken blendet aus</translation>
    </message>
    <message>
        <source>folded away; press to show</source>
        <translation>ausgeblendet; drücken zeigt es</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::CompareModel</name>
    <message>
        <source>tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>Fotos</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s)</source>
        <translation>
            <numerusform>%n Foto</numerusform>
            <numerusform>%n Fotos</numerusform>
        </translation>
    </message>
    <message>
        <source>pedigree</source>
        <translation>Abstammung</translation>
    </message>
    <message>
        <source>rests on</source>
        <translation>beruht auf</translation>
    </message>
    <message>
        <source>said of it</source>
        <translation>was gesagt wurde</translation>
    </message>
    <message>
        <source>liking as eaten, 1 to 9</source>
        <translation>Gefallen, 1 bis 9</translation>
    </message>
    <message>
        <source>harvest window,
ISO weeks of %1</source>
        <translation>Erntefenster,
Kalenderwochen %1</translation>
    </message>
    <message>
        <source>keeping: liking by
days off the tree</source>
        <translation>Haltbarkeit: Gefallen
nach Tagen vom Baum</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ComparePaper</name>
    <message>
        <source>Trees side by side</source>
        <translation>Bäume nebeneinander</translation>
    </message>
    <message>
        <source>%1, as the book stood on %2</source>
        <translation>%1, Stand des Buches am %2</translation>
    </message>
    <message>
        <source>book not named</source>
        <translation>Buch ohne Titel</translation>
    </message>
    <message>
        <source>Window: a line is one crop year, the oldest on top, broken when its end was not seen; the bar is the usual window. Scores: filled fair, open not fair or unclear; round blind, on its corner sighted, square not known; below them the mean of the fair scores with its standard error. Traits: the mean, from its lowest to its highest value.</source>
        <translation>Fenster: Eine Linie ist ein Erntejahr, das älteste oben, gebrochen, wenn sein Ende nicht gesehen wurde; der Balken ist das übliche Fenster. Noten: gefüllt fair, hohl nicht fair oder unklar; rund blind, auf der Spitze offen verkostet, Quadrat nicht bekannt; darunter das Mittel der fairen Noten mit seinem Standardfehler. Merkmale: das Mittel, vom kleinsten zum größten Wert.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ComparePlace</name>
    <message>
        <source>Nothing to compare yet</source>
        <translation>Noch nichts zu vergleichen</translation>
    </message>
    <message>
        <source>Select a tree on the map, or press C on two to eight trees, and they stand here side by side.</source>
        <translation>Auf der Karte einen Baum wählen oder C auf zwei bis acht Bäumen drücken: Hier stehen sie dann nebeneinander.</translation>
    </message>
    <message>
        <source>&amp;Print or save PDF</source>
        <translation>&amp;Drucken oder als PDF sichern</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <translation>Strg+P</translation>
    </message>
    <message>
        <source>&amp;Back to the table</source>
        <translation>&amp;Zurück zur Tabelle</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) laid side by side. C on a tree adds it; Delete takes a column out; Ctrl with an arrow moves it; Enter goes to the tree.</source>
        <translation>
            <numerusform>%n Baum liegt hier. C auf einem Baum legt ihn dazu; Entf nimmt eine Spalte heraus; Strg mit Pfeil verschiebt sie; die Eingabetaste führt zum Baum.</numerusform>
            <numerusform>%n Bäume nebeneinander. C auf einem Baum legt ihn dazu; Entf nimmt eine Spalte heraus; Strg mit Pfeil verschiebt sie; die Eingabetaste führt zum Baum.</numerusform>
        </translation>
    </message>
    <message>
        <source>weeks not known</source>
        <translation>Wochen unbekannt</translation>
    </message>
    <message>
        <source>+ %1 · %2</source>
        <comment>benchmark, how near</comment>
        <translation>+ %1 · %2</translation>
    </message>
    <message>
        <source>Add the benchmark %1, %2</source>
        <translation>Die Vergleichssorte %1 dazulegen, %2</translation>
    </message>
    <message>
        <source>Comparison %1</source>
        <translation>Vergleich %1</translation>
    </message>
    <message>
        <source>%1 beside the benchmarks that ripen within two weeks of it.</source>
        <translation>%1 neben den Vergleichssorten, die höchstens zwei Wochen früher oder später reifen.</translation>
    </message>
    <message>
        <source>%1 alone: the book has no benchmark of its species.</source>
        <translation>%1 allein: Das Buch hat keine Vergleichssorte dieser Art.</translation>
    </message>
    <message>
        <source>%1: no benchmark is known to ripen within two weeks of it; others stand beside.</source>
        <translation>%1: Von keiner Vergleichssorte ist bekannt, dass sie im Abstand von zwei Wochen reift; andere stehen daneben.</translation>
    </message>
    <message>
        <source>C on a tree lays it beside; Delete takes a column out.</source>
        <translation>C legt einen Baum daneben; Entf nimmt eine Spalte heraus.</translation>
    </message>
    <message>
        <source>Ripe within two weeks of %1:</source>
        <translation>Reif im Abstand von zwei Wochen zu %1:</translation>
    </message>
    <message>
        <source>Further off:</source>
        <translation>Weiter entfernt:</translation>
    </message>
    <message>
        <source>same day</source>
        <translation>am selben Tag</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) later</source>
        <translation>
            <numerusform>%n Tag später</numerusform>
            <numerusform>%n Tage später</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) earlier</source>
        <translation>
            <numerusform>%n Tag früher</numerusform>
            <numerusform>%n Tage früher</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::CompareTable</name>
    <message>
        <source>Trees side by side</source>
        <translation>Bäume nebeneinander</translation>
    </message>
    <message>
        <source>Trees: drag to reorder</source>
        <translation>Bäume: zum Umordnen ziehen</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ConditionFields</name>
    <message>
        <source>on the counter</source>
        <translation>auf dem Tisch</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) on the counter</source>
        <translation>
            <numerusform>%n Tag auf dem Tisch</numerusform>
            <numerusform>%n Tage auf dem Tisch</numerusform>
        </translation>
    </message>
    <message>
        <source>in the fridge</source>
        <translation>im Kühlschrank</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) in the fridge</source>
        <translation>
            <numerusform>%n Tag im Kühlschrank</numerusform>
            <numerusform>%n Tage im Kühlschrank</numerusform>
        </translation>
    </message>
    <message>
        <source>in the cellar</source>
        <translation>im Keller</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) in the cellar</source>
        <translation>
            <numerusform>%n Tag im Keller</numerusform>
            <numerusform>%n Tage im Keller</numerusform>
        </translation>
    </message>
    <message>
        <source>, then </source>
        <comment>between two places fruit was kept</comment>
        <translation>, dann </translation>
    </message>
    <message>
        <source>How it left the tree</source>
        <translation>Wie es vom Baum kam</translation>
    </message>
    <message>
        <source>Sound or hurt</source>
        <translation>Heil oder verletzt</translation>
    </message>
    <message>
        <source>Ripeness as eaten</source>
        <translation>Reife beim Essen</translation>
    </message>
    <message>
        <source>Where it was kept</source>
        <translation>Wo es lag</translation>
    </message>
    <message>
        <source>Bag it grew in</source>
        <translation>Tüte, in der es wuchs</translation>
    </message>
    <message>
        <source>Days off the tree</source>
        <translation>Tage seit der Ernte</translation>
    </message>
    <message>
        <source> days</source>
        <translation> Tage</translation>
    </message>
    <message>
        <source>Places one after another, with the days in each</source>
        <translation>Orte nacheinander, mit den Tagen an jedem</translation>
    </message>
    <message>
        <source>f5 c2: fridge 5 days, then counter 2</source>
        <translation>f5 c2: Kühlschrank 5 Tage, dann Tisch 2</translation>
    </message>
    <message>
        <source>Left the tree</source>
        <translation>Vom Baum</translation>
    </message>
    <message>
        <source>As eaten</source>
        <translation>Beim Essen</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>early</source>
        <comment>picked</comment>
        <translation>zu früh</translation>
    </message>
    <message>
        <source>shaken</source>
        <translation>geschüttelt</translation>
    </message>
    <message>
        <source>dropped today</source>
        <translation>heute gefallen</translation>
    </message>
    <message>
        <source>on the ground</source>
        <translation>am Boden</translation>
    </message>
    <message>
        <source>insect</source>
        <translation>Insekt</translation>
    </message>
    <message>
        <source>rot</source>
        <translation>Fäule</translation>
    </message>
    <message>
        <source>one after another</source>
        <translation>nacheinander</translation>
    </message>
    <message>
        <source>paper</source>
        <comment>bag</comment>
        <translation>Papier</translation>
    </message>
    <message>
        <source>organza</source>
        <comment>bag</comment>
        <translation>Organza</translation>
    </message>
    <message>
        <source>clear</source>
        <comment>bag</comment>
        <translation>durchsichtig</translation>
    </message>
    <message>
        <source>Rotten fruit can hold a poison that cutting out does not remove: do not eat it.</source>
        <translation>Faules Obst kann ein Gift enthalten, das durch Ausschneiden nicht verschwindet: nicht essen.</translation>
    </message>
    <message>
        <source>Fruit from the ground can carry germs of animal droppings: wash it, cut it, and leave it be if you are pregnant, ill, very young or old. Never juice it raw.</source>
        <translation>Obst vom Boden kann Keime aus Tierkot tragen: waschen, aufschneiden, und liegen lassen, wer schwanger, krank, sehr jung oder alt ist. Nie roh entsaften.</translation>
    </message>
    <message>
        <source>Hurt fruit: cut well around the damage, and spit it out if it tastes musty.</source>
        <translation>Verletztes Obst: großzügig ausschneiden, und ausspucken, was muffig schmeckt.</translation>
    </message>
    <message>
        <source>The places are missing.</source>
        <translation>Die Orte fehlen.</translation>
    </message>
    <message>
        <source>Type them one after another, as f5 c2 for five days in the fridge, then two on the counter.</source>
        <translation>Die Orte nacheinander eintippen, etwa f5 c2 für fünf Tage im Kühlschrank, dann zwei auf dem Tisch.</translation>
    </message>
    <message>
        <source>c counter, f fridge, l cellar, each with its days.</source>
        <translation>c Tisch, f Kühlschrank, l Keller, jeweils mit den Tagen.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ConditionForm</name>
    <message>
        <source>Condition of the fruit of %1 tasted on %2</source>
        <translation>Zustand der Frucht von %1, verkostet am %2</translation>
    </message>
    <message>
        <source>Nothing is changed yet.</source>
        <translation>Noch ist nichts geändert.</translation>
    </message>
    <message>
        <source>Choose what is to be put right, or go back with Esc.</source>
        <translation>Wählen, was berichtigt werden soll, oder mit Esc zurück.</translation>
    </message>
    <message>
        <source>Condition put right. As a test: %1.</source>
        <translation>Zustand berichtigt. Als Probe: %1.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::CrossOutlook</name>
    <message>
        <source>Seedlings: %1.</source>
        <translation>Sämlinge: %1.</translation>
    </message>
    <message>
        <source>Incompatible: the style rejects all of this pollen. Expect few seeds, if any.</source>
        <translation>Unverträglich: Der Griffel weist allen diesen Pollen ab. Erwarten Sie wenige oder keine Samen.</translation>
    </message>
    <message>
        <source>Half compatible: half of the pollen is rejected.</source>
        <translation>Halb verträglich: Die Hälfte des Pollens wird abgewiesen.</translation>
    </message>
    <message>
        <source>Compatible: all of the pollen is accepted.</source>
        <translation>Verträglich: Aller Pollen wird angenommen.</translation>
    </message>
    <message>
        <source>Between %1 and %2 of the pollen is accepted; an S allele that is not known decides.</source>
        <translation>Zwischen %1 und %2 des Pollens werden angenommen; ein unbekanntes S-Allel entscheidet.</translation>
    </message>
    <message>
        <source>Not predicted: the pollen of a triploid is poor.</source>
        <translation>Nicht vorhergesagt: Der Pollen einer triploiden Sorte ist schlecht.</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>The species accepts its own pollen; S alleles do not hinder.</source>
        <translation>Die Art nimmt eigenen Pollen an; S-Allele hindern nicht.</translation>
    </message>
    <message>
        <source>Not predicted: the pollen parent is unknown.</source>
        <translation>Nicht vorhergesagt: Der Vater ist unbekannt.</translation>
    </message>
    <message>
        <source>Unknown: the S alleles &quot;%1&quot; and &quot;%2&quot; cannot both be read. Write them as S2 S5.</source>
        <translation>Unbekannt: Die S-Allele „%1“ und „%2“ sind nicht beide lesbar. Schreiben Sie sie als S2 S5.</translation>
    </message>
    <message>
        <source>So if the species rejects its own pollen, which is not known.</source>
        <translation>So ist es, falls die Art eigenen Pollen abweist; das ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Not computed. %1</source>
        <translation>Nicht berechnet. %1</translation>
    </message>
    <message>
        <source>F = %1 or more: %2 of the ancestry is unknown and counts as unrelated.</source>
        <translation>F = %1 oder mehr: %2 der Abstammung sind unbekannt und gelten als nicht verwandt.</translation>
    </message>
    <message>
        <source>F = %1, founders taken as unrelated.</source>
        <translation>F = %1, die Gründer gelten als nicht verwandt.</translation>
    </message>
    <message>
        <source>Unknown, as a parent is unknown.</source>
        <translation>Unbekannt, denn ein Elter ist unbekannt.</translation>
    </message>
    <message>
        <source>at most %1 (%2)</source>
        <translation>höchstens %1 (%2)</translation>
    </message>
    <message>
        <source>none is known to be related</source>
        <translation>von keinem ist Verwandtschaft bekannt</translation>
    </message>
    <message numerus="yes">
        <source>F = 0 if the pollen came from elsewhere. If it was one of the %n growing genotype(s) of this book: %1 on average, %2.</source>
        <translation>
            <numerusform>F = 0, wenn der Pollen von anderswo kam. War es der %n wachsende Genotyp dieses Buches: %1, %2.</numerusform>
            <numerusform>F = 0, wenn der Pollen von anderswo kam. War es einer der %n wachsenden Genotypen dieses Buches: im Mittel %1, %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>others %1</source>
        <translation>andere %1</translation>
    </message>
    <message>
        <source>unknown %1</source>
        <translation>unbekannt %1</translation>
    </message>
    <message>
        <source>Triploid: %1. Expect few good seeds, and weak seedlings with odd chromosome numbers.</source>
        <translation>Triploid: %1. Erwarten Sie wenige gute Samen und schwache Sämlinge mit ungeraden Chromosomenzahlen.</translation>
    </message>
    <message>
        <source>A triploid stands among the ancestors. One of its parents gave it two thirds, but which one is not known; the shares count halves.</source>
        <translation>Unter den Vorfahren ist eine triploide Sorte. Ein Elter gab ihr zwei Drittel, doch welcher ist nicht bekannt; die Anteile zählen Hälften.</translation>
    </message>
    <message>
        <source>Too young to be a parent in that year: %1. Correct a year or the parent.</source>
        <translation>Zu jung, um in jenem Jahr Elter zu sein: %1. Berichtigen Sie ein Jahr oder den Elter.</translation>
    </message>
    <message>
        <source>The S alleles of these seedlings cannot come from these parents: %1. A parent, a label or an allele is wrong.</source>
        <translation>Die S-Allele dieser Sämlinge können nicht von diesen Eltern stammen: %1. Ein Elter, ein Etikett oder ein Allel ist falsch.</translation>
    </message>
    <message>
        <source>%1 of the seedlings have it all; raise %2 to be judged.</source>
        <translation>%1 der Sämlinge haben alles; ziehen Sie %2 bis zur Beurteilung auf.</translation>
    </message>
    <message>
        <source>How many seeds that takes is unknown: no cross of the species tells how its seeds germinated.</source>
        <translation>Wie viele Samen das braucht, ist unbekannt: Keine Kreuzung der Art sagt, wie ihre Samen keimten.</translation>
    </message>
    <message>
        <source>many more</source>
        <translation>viel mehr</translation>
    </message>
    <message>
        <source>Sow %1 seeds (%2 to %3, as well as the book knows).</source>
        <translation>Säen Sie %1 Samen (%2 bis %3, so gut das Buch es weiß).</translation>
    </message>
    <message>
        <source>%1 of %2 seeds germinated.</source>
        <translation>%1 von %2 Samen keimten.</translation>
    </message>
    <message>
        <source>%1 of %2 were planted out.</source>
        <translation>%1 von %2 wurden gepflanzt.</translation>
    </message>
    <message>
        <source>How many of them live is unknown and counted as all.</source>
        <translation>Wie viele davon leben, ist unbekannt und als alle gezählt.</translation>
    </message>
    <message>
        <source>This hardly fits %1.</source>
        <translation>Das passt kaum zu %1.</translation>
    </message>
    <message>
        <source>This does not speak against %1.</source>
        <translation>Das spricht nicht gegen %1.</translation>
    </message>
    <message>
        <source>Expected %1. %2: %3. %4</source>
        <translation>Erwartet %1. %2: %3. %4</translation>
    </message>
    <message>
        <source>Exact test, as few are expected</source>
        <translation>Exakter Test, da wenige erwartet werden</translation>
    </message>
    <message>
        <source>Chi-square %1, 1 degree of freedom</source>
        <translation>Chi-Quadrat %1, 1 Freiheitsgrad</translation>
    </message>
    <message>
        <source>one of %1 pairs, by its parents</source>
        <translation>nach seinen Eltern eines von %1 Paaren</translation>
    </message>
    <message>
        <source>%1, by its parents</source>
        <translation>nach seinen Eltern %1</translation>
    </message>
    <message>
        <source> or </source>
        <comment>between possible S alleles</comment>
        <translation> oder </translation>
    </message>
    <message>
        <source>S alleles of the seed parent: %1; of the pollen parent: %2.</source>
        <translation>S-Allele der Mutter: %1; des Pollenspenders: %2.</translation>
    </message>
    <message>
        <source>%1 of the pollen is accepted, whichever it is.</source>
        <translation>%1 des Pollens wird angenommen, welches es auch ist.</translation>
    </message>
    <message>
        <source>Between %1 and %2 of the pollen is accepted, %3 on average.</source>
        <translation>Zwischen %1 und %2 des Pollens wird angenommen, im Mittel %3.</translation>
    </message>
    <message>
        <source>Not predicted.</source>
        <translation>Nicht vorhergesagt.</translation>
    </message>
    <message>
        <source>Write them down for both to see how much pollen is accepted.</source>
        <translation>Sind sie für beide aufgeschrieben, steht hier, wie viel Pollen angenommen wird.</translation>
    </message>
    <message>
        <source>Pollen is rejected where it has an allele of the style; the other parent&apos;s alleles decide.</source>
        <translation>Pollen wird abgewiesen, wenn er ein Allel des Griffels hat; die Allele des anderen Elters entscheiden.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::CrossTable</name>
    <message>
        <source>emasculated and bagged</source>
        <translation>kastriert und eingebeutelt</translation>
    </message>
    <message>
        <source>bagged</source>
        <translation>eingebeutelt</translation>
    </message>
    <message>
        <source>tagged only</source>
        <translation>nur markiert</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>cross</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <source>seed x pollen parent</source>
        <translation>Mutter × Vater</translation>
    </message>
    <message>
        <source>species</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>crop year</source>
        <translation>Erntejahr</translation>
    </message>
    <message>
        <source>purity</source>
        <translation>Reinheit</translation>
    </message>
    <message>
        <source>flowers</source>
        <translation>Blüten</translation>
    </message>
    <message>
        <source>fruits set</source>
        <translation>Früchte</translation>
    </message>
    <message>
        <source>seeds</source>
        <translation>Kerne</translation>
    </message>
    <message>
        <source>germinated</source>
        <translation>gekeimt</translation>
    </message>
    <message>
        <source>seedlings</source>
        <translation>Sämlinge</translation>
    </message>
    <message>
        <source>growing</source>
        <translation>am Leben</translation>
    </message>
    <message>
        <source>fruited</source>
        <translation>getragen</translation>
    </message>
    <message>
        <source>fairly tasted</source>
        <translation>fair verkostet</translation>
    </message>
    <message>
        <source>watched or further</source>
        <translation>beobachtet oder weiter</translation>
    </message>
    <message>
        <source>culled</source>
        <translation>verworfen</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::CrossesPlace</name>
    <message>
        <source>Crosses</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <source>Enter on a cross selects its growing trees. A dash is unknown.</source>
        <translation>Die Eingabetaste auf einer Kreuzung wählt ihre lebenden Bäume. Ein Strich heißt: unbekannt.</translation>
    </message>
    <message>
        <source>No crosses yet</source>
        <translation>Noch keine Kreuzung</translation>
    </message>
    <message>
        <source>Crosses come in with a table of trees that names their parents.</source>
        <translation>Kreuzungen kommen mit einer Tabelle von Bäumen, die ihre Eltern nennt.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::DecisionForm</name>
    <message>
        <source>Stage</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>Decision on %1</source>
        <translation>Entscheidung über %1</translation>
    </message>
    <message>
        <source>No stage is chosen.</source>
        <translation>Keine Stufe gewählt.</translation>
    </message>
    <message>
        <source>Press the letter of a stage.</source>
        <translation>Den Buchstaben einer Stufe drücken.</translation>
    </message>
    <message>
        <source>The decision has no reason.</source>
        <translation>Die Entscheidung hat keinen Grund.</translation>
    </message>
    <message>
        <source>Say why in a few words; in three years you will want to know.</source>
        <translation>In wenigen Worten sagen, warum; in drei Jahren ist es gut zu wissen.</translation>
    </message>
    <message>
        <source>Nobody knows what this plant is, so nothing can be decided of it.</source>
        <translation>Niemand weiß, was diese Pflanze ist; so lässt sich nichts über sie entscheiden.</translation>
    </message>
    <message>
        <source>Say first who it is.</source>
        <translation>Zuerst sagen, wer sie ist.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::EntryModel</name>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>  (best: %1)</source>
        <translation>  (beste: %1)</translation>
    </message>
    <message>
        <source>liking 1 to 9 (7, 7.5 or 7h); a verdict and words may follow: 7.5 + crisp</source>
        <translation>Gefallen 1 bis 9 (7, 7,5 oder 7h); ein Urteil und Worte dürfen folgen: 7,5 + knackig</translation>
    </message>
    <message>
        <source>what stands on the sheet, in the taster&apos;s own words; may stay empty</source>
        <translation>was auf dem Bogen steht, in den eigenen Worten; darf leer bleiben</translation>
    </message>
    <message>
        <source>liking, 1 to 9</source>
        <translation>Gefallen, 1 bis 9</translation>
    </message>
    <message>
        <source>words</source>
        <translation>Worte</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::EntryStrip</name>
    <message>
        <source>Save (Enter)</source>
        <translation>Sichern (Eingabe)</translation>
    </message>
    <message>
        <source>Back (Esc)</source>
        <translation>Zurück (Esc)</translation>
    </message>
    <message>
        <source>Photo of the tree</source>
        <translation>Foto des Baumes</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.svg)</source>
        <translation>Bilder (*.jpg *.jpeg *.png *.svg)</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>New entry</source>
        <translation>Neuer Eintrag</translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s)</source>
        <translation>
            <numerusform>%n Baum</numerusform>
            <numerusform>%n Bäume</numerusform>
        </translation>
    </message>
    <message>
        <source>No tree is selected.</source>
        <translation>Kein Baum ist gewählt.</translation>
    </message>
    <message>
        <source>Choose one in the rows, or find it with Ctrl+K.</source>
        <translation>In den Reihen einen wählen oder mit Strg+K suchen.</translation>
    </message>
    <message>
        <source>There is no day.</source>
        <translation>Es fehlt der Tag.</translation>
    </message>
    <message>
        <source>Type it as 22 Aug, or press Up in the field for today.</source>
        <translation>Als 22.8. eingeben, oder im Feld den Pfeil nach oben drücken für heute.</translation>
    </message>
    <message>
        <source>The day lies ahead of today.</source>
        <translation>Der Tag liegt nach heute.</translation>
    </message>
    <message>
        <source>Put the day back, or set what is taken as today.</source>
        <translation>Den Tag zurücksetzen, oder ändern, was als heute gilt.</translation>
    </message>
    <message>
        <source>This needs one day.</source>
        <translation>Hier muss es ein einzelner Tag sein.</translation>
    </message>
    <message>
        <source>Type the day itself, as 22 Aug.</source>
        <translation>Den Tag selbst eingeben, als 22.8.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::EntryWords</name>
    <message>
        <source>No tree is named.</source>
        <translation>Kein Baum ist genannt.</translation>
    </message>
    <message>
        <source>Type its code, or its row/place, as C/14.</source>
        <translation>Die Kennung eingeben oder Reihe/Platz, als C/14.</translation>
    </message>
    <message>
        <source>More than one plant stands at %1.</source>
        <translation>Auf %1 steht mehr als eine Pflanze.</translation>
    </message>
    <message>
        <source>Type the code of the one that is meant.</source>
        <translation>Die Kennung der gemeinten eingeben.</translation>
    </message>
    <message>
        <source>No plant is called &quot;%1&quot;.</source>
        <translation>Keine Pflanze heißt „%1“.</translation>
    </message>
    <message>
        <source>Type a code that is in the book, or a row/place, as C/14.</source>
        <translation>Eine Kennung aus dem Buch eingeben, oder Reihe/Platz, als C/14.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::Finder</name>
    <message>
        <source>tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>benchmark</source>
        <translation>Vergleichssorte</translation>
    </message>
    <message>
        <source>genotype</source>
        <translation>Genotyp</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>tasting</source>
        <translation>Verkostung</translation>
    </message>
    <message>
        <source>decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>alias</source>
        <translation>anderer Name</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>record</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>command</source>
        <translation>Befehl</translation>
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
    <name>pipwright::ui::FrameTreeView</name>
    <message>
        <source>Frame tree drawn limb by limb</source>
        <translation>Gerüstbaum, Ast für Ast gezeichnet</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n limb(s); the list beside it has them in words.</source>
        <translation>
            <numerusform>%1, %n Ast; die Liste daneben nennt ihn in Worten.</numerusform>
            <numerusform>%1, %n Äste; die Liste daneben nennt sie in Worten.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>No limb is worked on this tree.</source>
        <translation>Auf diesem Baum ist kein Ast veredelt.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::FruitWords</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 (mean of %2)</source>
        <translation>%1 (Mittel aus %2)</translation>
    </message>
    <message>
        <source>Not corrected to 20 °C: the table goes from 10 to 30 °C and up to 30 °Brix.</source>
        <translation>Nicht auf 20 °C umgerechnet: Die Tabelle reicht von 10 bis 30 °C und bis 30 °Brix.</translation>
    </message>
    <message>
        <source>%1 °Brix at 20 °C (%2; table of 1936)</source>
        <translation>%1 °Brix bei 20 °C (%2; Tabelle von 1936)</translation>
    </message>
    <message>
        <source>%1; above 21 °C its rows are not proofread</source>
        <translation>%1; über 21 °C sind ihre Zeilen nicht gegengelesen</translation>
    </message>
    <message>
        <source>Sugar to acid %1, from %2 and %3</source>
        <translation>Zucker zu Säure %1, aus %2 und %3</translation>
    </message>
    <message>
        <source>Streif index %1 by kgf, %2 by N (do not mix the two); from %3, %4 and starch %5 of 10</source>
        <translation>Streif-Index %1 nach kgf, %2 nach N (nicht mischen); aus %3, %4 und Stärke %5 von 10</translation>
    </message>
    <message>
        <source>probe: 11 mm or 8 mm</source>
        <translation>Stempel: 11 mm oder 8 mm</translation>
    </message>
    <message>
        <source>ATC, or without it the juice&apos;s temperature, as 17 °C</source>
        <translation>ATC, oder ohne sie die Temperatur des Saftes, etwa 17 °C</translation>
    </message>
    <message>
        <source>where it was kept: counter, fridge, cellar</source>
        <translation>wo sie lag: Zimmer, Kühlschrank, Keller</translation>
    </message>
    <message>
        <source>Iodine is poisonous: nobody eats what it touched, no animal gets it, and it does not go on the compost. Keep the bottle dark, marked and away from children and pets. Povidone-iodine does not show starch.</source>
        <translation>Jod ist giftig: Was es berührt hat, isst niemand, bekommt kein Tier und kommt nicht auf den Kompost. Die Flasche dunkel, beschriftet und fern von Kindern und Haustieren halten. Povidon-Jod zeigt keine Stärke.</translation>
    </message>
    <message>
        <source>Alkali burns: goggles and gloves, never a pipette by mouth, bottles marked. Nobody tastes juice that was titrated.</source>
        <translation>Lauge ätzt: Schutzbrille und Handschuhe, nie mit dem Mund pipettieren, Flaschen beschriften. Titrierten Saft kostet niemand.</translation>
    </message>
    <message>
        <source>No Streif index: it needs firmness of the 11 mm probe, named as the instrument.</source>
        <translation>Kein Streif-Index: Er braucht die Festigkeit mit dem 11-mm-Stempel, der als Gerät genannt ist.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::GraftOrderModel</name>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>not looked</source>
        <translation>nicht nachgesehen</translation>
    </message>
    <message>
        <source>%1 of %2 alive</source>
        <translation>%1 von %2 leben</translation>
    </message>
    <message>
        <source>grafted on</source>
        <translation>veredelt am</translation>
    </message>
    <message>
        <source>clone</source>
        <translation>Klon</translation>
    </message>
    <message>
        <source>method</source>
        <translation>Methode</translation>
    </message>
    <message>
        <source>grafts</source>
        <translation>Reiser</translation>
    </message>
    <message>
        <source>onto</source>
        <translation>auf</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::GraftWishModel</name>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>any of its trees</source>
        <translation>jeder seiner Bäume</translation>
    </message>
    <message>
        <source>place not known</source>
        <translation>Platz unbekannt</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number of grafts.</source>
        <translation>„%1“ ist keine Zahl von Reisern.</translation>
    </message>
    <message>
        <source>Type a whole number from 1 to %1.</source>
        <translation>Eine ganze Zahl von 1 bis %1 eingeben.</translation>
    </message>
    <message>
        <source>clone</source>
        <translation>Klon</translation>
    </message>
    <message>
        <source>wood from</source>
        <translation>Reis von</translation>
    </message>
    <message>
        <source>grafts</source>
        <translation>Reiser</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>wished on</source>
        <translation>gewünscht am</translation>
    </message>
    <message>
        <source>by</source>
        <translation>von</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>alive now</source>
        <translation>leben jetzt</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::GraftWords</name>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>bestellt</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>dropped</source>
        <translation>fallen gelassen</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>4 to 6 weeks</source>
        <translation>4 bis 6 Wochen</translation>
    </message>
    <message>
        <source>midsummer</source>
        <translation>Mittsommer</translation>
    </message>
    <message>
        <source>leaf fall</source>
        <translation>Laubfall</translation>
    </message>
    <message>
        <source>some time</source>
        <translation>irgendwann</translation>
    </message>
    <message>
        <source>⚠ none alive</source>
        <translation>⚠ keiner lebt</translation>
    </message>
    <message>
        <source>place not known</source>
        <translation>Platz unbekannt</translation>
    </message>
    <message>
        <source>⚠ only tree, %1</source>
        <translation>⚠ einziger Baum, %1</translation>
    </message>
    <message numerus="yes">
        <source>⚠ %n limb(s) on a single tree, %1</source>
        <translation>
            <numerusform>⚠ %n Ast auf einem einzigen Baum, %1</numerusform>
            <numerusform>⚠ %n Äste auf einem einzigen Baum, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n plant(s) on %1 trees, %2</source>
        <translation>
            <numerusform>%n Pflanze auf %1 Bäumen, %2</numerusform>
            <numerusform>%n Pflanzen auf %1 Bäumen, %2</numerusform>
        </translation>
    </message>
    <message>
        <source>N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW</source>
        <translation>N NNO NO ONO O OSO SO SSO S SSW SW WSW W WNW NW NNW</translation>
    </message>
    <message>
        <source>%1° (%2)</source>
        <translation>%1° (%2)</translation>
    </message>
    <message>
        <source>bearing not known</source>
        <translation>Richtung unbekannt</translation>
    </message>
    <message>
        <source>%1 cm up</source>
        <translation>%1 cm hoch</translation>
    </message>
    <message>
        <source>height not known</source>
        <translation>Höhe unbekannt</translation>
    </message>
    <message>
        <source>number %1 from the trunk</source>
        <translation>Nummer %1 vom Stamm aus</translation>
    </message>
    <message>
        <source>mark %1</source>
        <translation>Farbe %1</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::GraftingPlace</name>
    <message>
        <source>State of the wish</source>
        <translation>Stand des Wunsches</translation>
    </message>
    <message>
        <source>Graft wishes</source>
        <translation>Pfropfwünsche</translation>
    </message>
    <message>
        <source>Graft orders and what lives of them</source>
        <translation>Veredelungen und was davon lebt</translation>
    </message>
    <message>
        <source>Cut away from yourself and keep the other thumb guarded. Wipe knife and saw with 70 % alcohol between trees, so that fire blight and canker do not travel along. Set a ladder on firm ground and do not climb it when nobody is near. Wood carries viruses that do not show: one infected graft infects the whole frame. Ask your plant-health authority before wood crosses a border or a protected zone, and the owner before you graft a protected variety.</source>
        <translation>Vom Körper weg schneiden und den anderen Daumen schützen. Messer und Säge zwischen den Bäumen mit 70-prozentigem Alkohol abwischen, damit Feuerbrand und Krebs nicht mitreisen. Die Leiter auf festen Grund stellen und nicht hinaufsteigen, wenn niemand in der Nähe ist. Holz trägt Viren, die man nicht sieht: Ein krankes Reis steckt den ganzen Gerüstbaum an. Die Pflanzenschutzbehörde fragen, bevor Holz über eine Grenze oder in ein Schutzgebiet geht, und den Inhaber, bevor eine geschützte Sorte veredelt wird.</translation>
    </message>
    <message>
        <source>Grafts ordered, and how many were alive</source>
        <translation>Bestellte Reiser, und wie viele lebten</translation>
    </message>
    <message>
        <source>Frame tree</source>
        <translation>Gerüstbaum</translation>
    </message>
    <message>
        <source>Limbs of the frame tree, lowest first</source>
        <translation>Äste des Gerüstbaumes, der unterste zuerst</translation>
    </message>
    <message>
        <source>Frame trees, from above and from the south</source>
        <translation>Gerüstbäume, von oben und von Süden</translation>
    </message>
    <message>
        <source>No wish yet. G on a tree wishes grafts of it, with their number and why.</source>
        <translation>Noch kein Wunsch. G auf einem Baum wünscht Reiser von ihm, mit Zahl und Grund.</translation>
    </message>
    <message>
        <source>Double click or F2 changes number, reason or state; Ctrl+C copies the table.</source>
        <translation>Doppelklick oder F2 ändert Zahl, Grund oder Stand; Strg+C kopiert die Tabelle.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n limb(s) growing</source>
        <translation>
            <numerusform>%1: %n Ast lebt</numerusform>
            <numerusform>%1: %n Äste leben</numerusform>
        </translation>
    </message>
    <message>
        <source>no frame tree</source>
        <translation>kein Gerüstbaum</translation>
    </message>
    <message>
        <source>%1  %2: %3</source>
        <translation>%1  %2: %3</translation>
    </message>
    <message>
        <source>Wishes and orders</source>
        <translation>Wünsche und Aufträge</translation>
    </message>
    <message>
        <source>Frame trees</source>
        <translation>Gerüstbäume</translation>
    </message>
    <message>
        <source>Limbs, lowest first</source>
        <translation>Äste, die untersten zuerst</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::HelpWindow</name>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Help page</source>
        <translation>Hilfeseite</translation>
    </message>
    <message>
        <source>action</source>
        <translation>Handlung</translation>
    </message>
    <message>
        <source>keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Pages of the help</source>
        <translation>Seiten der Hilfe</translation>
    </message>
    <message>
        <source>What to do first</source>
        <translation>Was zuerst zu tun ist</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>About, and cautions</source>
        <translation>Über Pipwright, und Vorsicht</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ImportWindow</name>
    <message>
        <source>Bring in a table</source>
        <translation>Tabelle übernehmen</translation>
    </message>
    <message>
        <source>Paste a table here: one line of headings, then one line a tree (or score, or walk mark). Columns may be cut by tabs, commas or semicolons.</source>
        <translation>Hier eine Tabelle einfügen: eine Zeile Überschriften, dann je Baum (oder Wertung, oder Reifezeichen) eine Zeile. Spalten dürfen durch Tabulator, Komma oder Strichpunkt getrennt sein.</translation>
    </message>
    <message>
        <source>Table to bring in</source>
        <translation>Tabelle zum Übernehmen</translation>
    </message>
    <message>
        <source>Open a file...</source>
        <translation>Datei öffnen …</translation>
    </message>
    <message>
        <source>1. The table</source>
        <translation>1. Die Tabelle</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>day first: 3/8 is 3 August</source>
        <translation>Tag zuerst: 3/8 ist der 3. August</translation>
    </message>
    <message>
        <source>month first: 3/8 is 8 March</source>
        <translation>Monat zuerst: 3/8 ist der 8. März</translation>
    </message>
    <message>
        <source>point: 7.5</source>
        <translation>Punkt: 7.5</translation>
    </message>
    <message>
        <source>comma: 7,5</source>
        <translation>Komma: 7,5</translation>
    </message>
    <message>
        <source>the site, if no column says it</source>
        <translation>die Anlage, wenn keine Spalte sie nennt</translation>
    </message>
    <message>
        <source>the taster, if no column says it</source>
        <translation>der Verkoster, wenn keine Spalte ihn nennt</translation>
    </message>
    <message>
        <source>Each line is</source>
        <translation>Jede Zeile ist</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Rezept</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Daten</translation>
    </message>
    <message>
        <source>Decimals</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Anlage</translation>
    </message>
    <message>
        <source>Taster</source>
        <translation>Verkoster</translation>
    </message>
    <message>
        <source>First lines, with what each column is</source>
        <translation>Erste Zeilen, mit der Bedeutung jeder Spalte</translation>
    </message>
    <message>
        <source>Trial run, line by line</source>
        <translation>Probelauf, Zeile für Zeile</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>fate</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>what becomes of it</source>
        <translation>was daraus wird</translation>
    </message>
    <message>
        <source>Leave faulty lines out</source>
        <translation>Fehlerhafte Zeilen auslassen</translation>
    </message>
    <message>
        <source>name of the recipe</source>
        <translation>Name des Rezeptes</translation>
    </message>
    <message>
        <source>Name of the recipe</source>
        <translation>Name des Rezeptes</translation>
    </message>
    <message>
        <source>Keep as recipe</source>
        <translation>Als Rezept ablegen</translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>2. What is each column?</source>
        <translation>2. Was ist jede Spalte?</translation>
    </message>
    <message>
        <source>3. Trial run: nothing is written yet</source>
        <translation>3. Probelauf: Noch wird nichts geschrieben</translation>
    </message>
    <message>
        <source>Open a table</source>
        <translation>Tabelle öffnen</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Tabellen (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>pasted text</source>
        <translation>eingefügter Text</translation>
    </message>
    <message>
        <source>tabs</source>
        <translation>Tabulatoren</translation>
    </message>
    <message>
        <source>semicolons</source>
        <translation>Strichpunkte</translation>
    </message>
    <message>
        <source>commas</source>
        <translation>Kommas</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s)</source>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>, columns cut by %1</source>
        <translation>, Spalten getrennt durch %1</translation>
    </message>
    <message>
        <source>assign the columns by hand</source>
        <translation>Spalten von Hand zuordnen</translation>
    </message>
    <message>
        <source>Column %1 is</source>
        <translation>Spalte %1 ist</translation>
    </message>
    <message>
        <source>(left out)</source>
        <translation>(ausgelassen)</translation>
    </message>
    <message>
        <source>Say of at least one column what it is.</source>
        <translation>Von mindestens einer Spalte sagen, was sie ist.</translation>
    </message>
    <message>
        <source>Paste a table or open a file.</source>
        <translation>Eine Tabelle einfügen oder eine Datei öffnen.</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) new</source>
        <translation>
            <numerusform>%n Zeile neu</numerusform>
            <numerusform>%n Zeilen neu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n in the book already</source>
        <translation>
            <numerusform>, %n schon im Buch</numerusform>
            <numerusform>, %n schon im Buch</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n faulty.</source>
        <translation>
            <numerusform>, %n fehlerhaft.</numerusform>
            <numerusform>, %n fehlerhaft.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing can be brought in until the faulty lines are repaired or left out.</source>
        <translation>Nichts kann übernommen werden, bis die fehlerhaften Zeilen berichtigt oder ausgelassen sind.</translation>
    </message>
    <message>
        <source>Brought in: %1.</source>
        <translation>Übernommen: %1.</translation>
    </message>
    <message>
        <source>One Undo takes it out again.</source>
        <translation>Einmal „Rückgängig“ nimmt es wieder heraus.</translation>
    </message>
    <message>
        <source>The book refused it; nothing has changed.</source>
        <translation>Das Buch hat es abgelehnt; nichts ist verändert.</translation>
    </message>
    <message>
        <source>The reason stands above the rows in the main window.</source>
        <translation>Der Grund steht über den Reihen im Hauptfenster.</translation>
    </message>
    <message>
        <source>The recipe has no name yet.</source>
        <translation>Das Rezept hat noch keinen Namen.</translation>
    </message>
    <message>
        <source>Type a name beside the button.</source>
        <translation>Neben dem Knopf einen Namen eingeben.</translation>
    </message>
    <message>
        <source>The recipe is kept in the book.</source>
        <translation>Das Rezept liegt im Buch.</translation>
    </message>
    <message>
        <source>pipwright import BOOK FILE --recipe does the same without the window.</source>
        <translation>pipwright import BUCH DATEI --recipe tut dasselbe ohne Fenster.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ImportWords</name>
    <message>
        <source>code</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Schild</translation>
    </message>
    <message>
        <source>site</source>
        <translation>Anlage</translation>
    </message>
    <message>
        <source>row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Platz in der Reihe</translation>
    </message>
    <message>
        <source>row/position</source>
        <translation>Reihe/Platz</translation>
    </message>
    <message>
        <source>tape distance (m)</source>
        <translation>Maßband (m)</translation>
    </message>
    <message>
        <source>cross</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <source>seed parent</source>
        <translation>Mutter</translation>
    </message>
    <message>
        <source>pollen parent</source>
        <translation>Vater</translation>
    </message>
    <message>
        <source>year of the cross</source>
        <translation>Kreuzungsjahr</translation>
    </message>
    <message>
        <source>planted</source>
        <translation>gepflanzt</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>species</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>taster</source>
        <translation>Verkoster</translation>
    </message>
    <message>
        <source>liking (1 to 9)</source>
        <translation>Gefallen (1 bis 9)</translation>
    </message>
    <message>
        <source>words</source>
        <translation>Worte</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>at a table or in the row</source>
        <translation>am Tisch oder in der Reihe</translation>
    </message>
    <message>
        <source>picked on</source>
        <translation>gepflückt am</translation>
    </message>
    <message>
        <source>picked or fallen</source>
        <translation>gepflückt oder gefallen</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>sound or hurt</source>
        <translation>heil oder verletzt</translation>
    </message>
    <message>
        <source>storage path</source>
        <translation>Lagerweg</translation>
    </message>
    <message>
        <source>days on the counter</source>
        <translation>Tage auf dem Tisch</translation>
    </message>
    <message>
        <source>days in the fridge</source>
        <translation>Tage im Kühlschrank</translation>
    </message>
    <message>
        <source>days in the cellar</source>
        <translation>Tage im Keller</translation>
    </message>
    <message>
        <source>ripeness as eaten</source>
        <translation>Reife beim Essen</translation>
    </message>
    <message>
        <source>fruits in the lot</source>
        <translation>Früchte in der Probe</translation>
    </message>
    <message>
        <source>place on the tree</source>
        <translation>Ort am Baum</translation>
    </message>
    <message>
        <source>crop load</source>
        <translation>Behang</translation>
    </message>
    <message>
        <source>number of the crop</source>
        <translation>Nummer der Ernte</translation>
    </message>
    <message>
        <source>walk mark</source>
        <translation>Reifezeichen</translation>
    </message>
    <message>
        <source>drops</source>
        <translation>Fallobst</translation>
    </message>
    <message>
        <source>a tree</source>
        <translation>ein Baum</translation>
    </message>
    <message>
        <source>a child with its parents</source>
        <translation>ein Kind mit seinen Eltern</translation>
    </message>
    <message>
        <source>a score</source>
        <translation>eine Wertung</translation>
    </message>
    <message>
        <source>a walk mark</source>
        <translation>ein Reifezeichen</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>in the book already</source>
        <translation>schon im Buch</translation>
    </message>
    <message>
        <source>faulty</source>
        <translation>fehlerhaft</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::InexactDateEdit</name>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>No date. Up for today.</source>
        <translation>Kein Datum. Pfeil nach oben: heute.</translation>
    </message>
    <message>
        <source>22 Aug, last Tuesday, late August …</source>
        <translation>22. Aug., letzten Dienstag, Ende August …</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::KinView</name>
    <message>
        <source>Inbreeding F is not defined for triploids.</source>
        <translation>Für Triploide ist der Inzuchtgrad F nicht erklärt.</translation>
    </message>
    <message>
        <source>Inbreeding F is defined for diploids only; this has %1 sets of chromosomes.</source>
        <translation>Der Inzuchtgrad F ist nur für Diploide erklärt; hier sind es %1 Chromosomensätze.</translation>
    </message>
    <message>
        <source>Inbreeding F cannot be told: a parent is not known.</source>
        <translation>Der Inzuchtgrad F lässt sich nicht angeben: Ein Elter ist unbekannt.</translation>
    </message>
    <message>
        <source>Inbreeding F = %1, by the pedigree as the book knows it; unknown ancestors count as unrelated.</source>
        <translation>Inzuchtgrad F = %1, nach der Abstammung, wie das Buch sie kennt; unbekannte Vorfahren gelten als nicht verwandt.</translation>
    </message>
    <message>
        <source>Nobody knows yet what this plant is, so it has no ancestors here.</source>
        <translation>Noch weiß niemand, was diese Pflanze ist; darum hat sie hier keine Vorfahren.</translation>
    </message>
    <message>
        <source>Purdy notation: seed parent first, the latest cross has the most slashes</source>
        <translation>Schreibweise nach Purdy: die Mutter zuerst, die jüngste Kreuzung hat die meisten Schrägstriche</translation>
    </message>
    <message numerus="yes">
        <source>%n full sib(s)</source>
        <translation>
            <numerusform>%n Vollgeschwister</numerusform>
            <numerusform>%n Vollgeschwister</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n half sib(s)</source>
        <translation>
            <numerusform>%n Halbgeschwister</numerusform>
            <numerusform>%n Halbgeschwister</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n offspring</source>
        <translation>
            <numerusform>%n Nachkomme</numerusform>
            <numerusform>%n Nachkommen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::LabelPanel</name>
    <message>
        <source>C&amp;ut marks</source>
        <translation>Schnitt&amp;marken</translation>
    </message>
    <message>
        <source>Print &amp;without what does not fit</source>
        <translation>&amp;Ohne das drucken, was nicht passt</translation>
    </message>
    <message>
        <source>&amp;Ruler page first</source>
        <translation>Zuerst das &amp;Linealblatt</translation>
    </message>
    <message>
        <source>Does not &amp;fit</source>
        <translation>&amp;Passt nicht</translation>
    </message>
    <message>
        <source>Label stock</source>
        <translation>Etikettenbogen</translation>
    </message>
    <message>
        <source>First free label on the sheet</source>
        <translation>Erstes freies Etikett auf dem Bogen</translation>
    </message>
    <message>
        <source>For a half-used sheet: the first free label, counted row by row. A click on a label in the preview sets it too.</source>
        <translation>Für einen angebrochenen Bogen: das erste freie Etikett, Reihe für Reihe gezählt. Ein Klick auf ein Etikett der Vorschau stellt es auch ein.</translation>
    </message>
    <message>
        <source>&amp;Stock</source>
        <translation>Eti&amp;kettenbogen</translation>
    </message>
    <message>
        <source>S&amp;tart at label</source>
        <translation>Ab E&amp;tikett</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>Labels: %1 of %2 · sheets: %3</source>
        <translation>Etiketten: %1 von %2 · Bögen: %3</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>These labels are cut already. Cut marks are for plain sheets that are cut up by hand.</source>
        <translation>Diese Etiketten sind schon geschnitten. Schnittmarken sind für glatte Bogen, die von Hand zerschnitten werden.</translation>
    </message>
    <message>
        <source>Thin marks at the corners, to cut along.</source>
        <translation>Feine Marken an den Ecken, zum Schneiden.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::LadderPanel</name>
    <message>
        <source>Slot of the season</source>
        <translation>Abschnitt der Saison</translation>
    </message>
    <message>
        <source>S&amp;lot</source>
        <translation>A&amp;bschnitt</translation>
    </message>
    <message>
        <source>Elect</source>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>Benchmark for the rung: %1</source>
        <translation>Vergleichssorte für die Sprosse: %1</translation>
    </message>
    <message>
        <source>Elect to the rung: %1</source>
        <translation>Auf die Sprosse wählen: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No slots yet: mark benchmarks ripe on your walks, and the season is cut by their days.</source>
        <translation>Noch keine Abschnitte: Markieren Sie auf Ihren Rundgängen Vergleichssorten als reif, dann wird die Saison nach deren Tagen geteilt.</translation>
    </message>
    <message numerus="yes">
        <source>Cut the season of %1 into these %n slot(s)</source>
        <translation>
            <numerusform>Die Saison %1 in diesen %n Abschnitt teilen</numerusform>
            <numerusform>Die Saison %1 in diese %n Abschnitte teilen</numerusform>
        </translation>
    </message>
    <message>
        <source>No benchmark ripens in this slot or near it.</source>
        <translation>In diesem Abschnitt und daneben reift keine Vergleichssorte.</translation>
    </message>
    <message>
        <source>No benchmark ripens in this slot: those of the slots beside it stand in.</source>
        <translation>In diesem Abschnitt reift keine Vergleichssorte: Die der Abschnitte daneben springen ein.</translation>
    </message>
    <message>
        <source>Ripe in it: %1.</source>
        <translation>Darin reif: %1.</translation>
    </message>
    <message>
        <source>For %1 nobody has been elected yet; cut the season first, everybody who stands here keeps the rung.</source>
        <translation>Für %1 ist noch niemand gewählt; teilen Sie zuerst die Saison, alle hier Stehenden behalten ihre Sprosse.</translation>
    </message>
    <message>
        <source>%1, never tasted</source>
        <translation>%1, nie verkostet</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation>noch niemand</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>Another of the slot has the higher merit now.</source>
        <translation>Eine andere des Abschnitts hat jetzt den höheren Wert.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::LifeDrawing</name>
    <message>
        <source>Life by crop year</source>
        <translation>Leben nach Erntejahren</translation>
    </message>
    <message>
        <source>Crop %1. </source>
        <translation>Behang %1. </translation>
    </message>
    <message>
        <source>crop %1</source>
        <translation>Behang %1</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::LifeLegend</name>
    <message>
        <source>fair tasting</source>
        <translation>faire Verkostung</translation>
    </message>
    <message>
        <source>not a fair one</source>
        <translation>keine faire</translation>
    </message>
    <message>
        <source>fair or not is unclear</source>
        <translation>fair oder nicht: unklar</translation>
    </message>
    <message>
        <source>decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>graft</source>
        <translation>Veredelung</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>bloom</source>
        <translation>Blüte</translation>
    </message>
    <message>
        <source>drops</source>
        <translation>Fallobst</translation>
    </message>
    <message>
        <source>disease</source>
        <translation>Krankheit</translation>
    </message>
    <message>
        <source>What the marks mean</source>
        <translation>Was die Zeichen bedeuten</translation>
    </message>
    <message>
        <source>seen ripe; dotted where an end was not seen</source>
        <translation>reif gesehen; gepunktet, wo ein Ende nicht gesehen wurde</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::LifeLine</name>
    <message>
        <source>Point at a mark, or go along with the arrow keys, to read it.</source>
        <translation>Auf ein Zeichen zeigen oder mit den Pfeiltasten hingehen, um es zu lesen.</translation>
    </message>
    <message>
        <source>Bloom, walk marks, tastings, notes and decisions will draw its years here.</source>
        <translation>Blüte, Rundgänge, Verkostungen, Notizen und Entscheidungen zeichnen hier seine Jahre.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::LifeWords</name>
    <message>
        <source>tasted, no liking given</source>
        <translation>verkostet, ohne Gefallen</translation>
    </message>
    <message>
        <source>liked %1 of 9 as eaten</source>
        <translation>Gefallen %1 von 9 wie gegessen</translation>
    </message>
    <message>
        <source>liked %1 of 9 as eaten, scores from %2 to %3</source>
        <translation>Gefallen %1 von 9 wie gegessen, Wertungen von %2 bis %3</translation>
    </message>
    <message>
        <source>%1: %2; %3; %4</source>
        <translation>%1: %2; %3; %4</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>%1: decided &quot;%2&quot;</source>
        <translation>%1: entschieden „%2“</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n graft(s), %2</source>
        <translation>
            <numerusform>%1: %n Reis, %2</numerusform>
            <numerusform>%1: %n Reiser, %2</numerusform>
        </translation>
    </message>
    <message>
        <source> onto %1</source>
        <translation> auf %1</translation>
    </message>
    <message>
        <source>; %1 alive at the last look</source>
        <translation>; %1 lebten beim letzten Nachsehen</translation>
    </message>
    <message>
        <source>still green on %1</source>
        <translation>noch grün am %1</translation>
    </message>
    <message>
        <source>seen ripe %1 to %2</source>
        <translation>reif gesehen %1 bis %2</translation>
    </message>
    <message>
        <source>seen ripe on %1</source>
        <translation>reif gesehen am %1</translation>
    </message>
    <message>
        <source>its beginning was not seen</source>
        <translation>der Anfang wurde nicht gesehen</translation>
    </message>
    <message>
        <source>over by %1</source>
        <translation>vorüber am %1</translation>
    </message>
    <message>
        <source>its end was not seen</source>
        <translation>das Ende wurde nicht gesehen</translation>
    </message>
    <message>
        <source>%1: noted: %2</source>
        <translation>%1: notiert: %2</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::LookBackPanel</name>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n weiterer</numerusform>
            <numerusform>%n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Set the book back</source>
        <translation>Das Buch &amp;zurückstellen</translation>
    </message>
    <message>
        <source>Back to &amp;today</source>
        <translation>Zurück zu &amp;heute</translation>
    </message>
    <message>
        <source>What each threshold would have culled</source>
        <translation>Was jede Schwelle verworfen hätte</translation>
    </message>
    <message>
        <source>Day the book is set back to</source>
        <translation>Tag, auf den das Buch zurückgestellt wird</translation>
    </message>
    <message>
        <source>As the book stood on</source>
        <translation>Wie das Buch stand am</translation>
    </message>
    <message>
        <source>Would you have culled then what is among your best now? Set the book back to a day: tastings, walk marks, faults, decisions and elections count up to it; pedigree and identity stay as they are known today.</source>
        <translation>Hätten Sie damals verworfen, was heute zu Ihren Besten gehört? Stellen Sie das Buch auf einen Tag zurück: Verkostungen, Reifezeichen, Mängel, Entscheidungen und Wahlen zählen bis dahin; Abstammung und Identität bleiben, wie man sie heute kennt.</translation>
    </message>
    <message>
        <source>There is nothing to compare with today.</source>
        <translation>Es gibt nichts mit heute zu vergleichen.</translation>
    </message>
    <message numerus="yes">
        <source>Judged then: %n seedling(s). Best tenth now: %1. A seedling that was truly culled could not prove the rule wrong, so look at those tasted since.</source>
        <translation>
            <numerusform>Damals beurteilt: %n Sämling. Bestes Zehntel heute: %1. Was wirklich verworfen wurde, konnte die Regel nicht widerlegen; sehen Sie also auf die seither verkosteten.</numerusform>
            <numerusform>Damals beurteilt: %n Sämlinge. Bestes Zehntel heute: %1. Was wirklich verworfen wurde, konnte die Regel nicht widerlegen; sehen Sie also auf die seither verkosteten.</numerusform>
        </translation>
    </message>
    <message>
        <source>rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>would have culled</source>
        <translation>hätte verworfen</translation>
    </message>
    <message>
        <source>tasted since</source>
        <translation>seither verkostet</translation>
    </message>
    <message>
        <source>among the best now</source>
        <translation>heute unter den Besten</translation>
    </message>
    <message>
        <source>which</source>
        <translation>welche</translation>
    </message>
    <message>
        <source>%1, tasted since %2</source>
        <translation>%1, seither verkostet %2</translation>
    </message>
    <message>
        <source>cull from P(below the floor) %1</source>
        <translation>verwerfen ab P(unter der Untergrenze) %1</translation>
    </message>
    <message>
        <source>what you had culled</source>
        <translation>was Sie verworfen hatten</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MainWindow</name>
    <message>
        <source>Orchard books (*.orchard)</source>
        <translation>Obstbücher (*.orchard)</translation>
    </message>
    <message>
        <source>Pipwright</source>
        <translation>Pipwright</translation>
    </message>
    <message>
        <source>%1 - Pipwright</source>
        <translation>%1 - Pipwright</translation>
    </message>
    <message>
        <source>Making the sample orchard</source>
        <translation>Das Musterbuch wird angelegt</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Where to keep the new book</source>
        <translation>Wo das neue Buch liegen soll</translation>
    </message>
    <message>
        <source>my.orchard</source>
        <translation>mein.orchard</translation>
    </message>
    <message>
        <source>Open a book</source>
        <translation>Buch öffnen</translation>
    </message>
    <message>
        <source>The folder of the archive</source>
        <translation>Der Ordner des Archivs</translation>
    </message>
    <message>
        <source>Where to keep the rebuilt book</source>
        <translation>Wo das wiederhergestellte Buch liegen soll</translation>
    </message>
    <message>
        <source>rebuilt.orchard</source>
        <translation>wiederhergestellt.orchard</translation>
    </message>
    <message>
        <source>Rebuilding the book</source>
        <translation>Das Buch wird wiederhergestellt</translation>
    </message>
    <message>
        <source>An empty folder for the archive</source>
        <translation>Ein leerer Ordner für das Archiv</translation>
    </message>
    <message>
        <source>Writing the archive</source>
        <translation>Das Archiv wird geschrieben</translation>
    </message>
    <message>
        <source>Dated copies</source>
        <translation>Tageskopien</translation>
    </message>
    <message>
        <source>Go back to %1 (%2)</source>
        <translation>Zurück auf %1 (%2)</translation>
    </message>
    <message>
        <source>The book is as it was on %1.</source>
        <translation>Das Buch ist, wie es am %1 war.</translation>
    </message>
    <message>
        <source>What stood there is kept as %1.</source>
        <translation>Was dort stand, liegt als %1.</translation>
    </message>
    <message>
        <source>There is no dated copy yet; one is made each time the book is opened after a change.</source>
        <translation>Es gibt noch keine Tageskopie; sie entsteht beim Öffnen, sooft das Buch sich geändert hat.</translation>
    </message>
    <message>
        <source>Checking the book</source>
        <translation>Das Buch wird geprüft</translation>
    </message>
    <message>
        <source>Something else is still being done.</source>
        <translation>Etwas anderes läuft noch.</translation>
    </message>
    <message>
        <source>Wait for it, or stop it on the bottom line.</source>
        <translation>Warten oder es in der unteren Zeile anhalten.</translation>
    </message>
    <message>
        <source>Who is at the keyboard</source>
        <translation>Wer schreibt</translation>
    </message>
    <message>
        <source>Nobody in particular</source>
        <translation>Niemand Bestimmtes</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Wie der Schreibtisch</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Metric: m, mm, g, °C</source>
        <translation>Metrisch: m, mm, g, °C</translation>
    </message>
    <message>
        <source>US: ft, in, oz, °F</source>
        <translation>US: ft, in, oz, °F</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what is set, and to what</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>%1 (reading only) - Pipwright</source>
        <translation>%1 (nur zum Lesen) - Pipwright</translation>
    </message>
    <message>
        <source>Open for reading only: nothing can be entered.</source>
        <translation>Nur zum Lesen geöffnet: eintragen lässt sich nichts.</translation>
    </message>
    <message>
        <source>To write, close it where it is being written and open it again.</source>
        <translation>Zum Schreiben dort schließen, wo geschrieben wird, und das Buch neu öffnen.</translation>
    </message>
    <message>
        <source>Open for reading only</source>
        <translation>Nur zum Lesen öffnen</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MapFilterBar</name>
    <message>
        <source>Lowest value of the trait</source>
        <translation>Kleinster Wert des Merkmals</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>Highest value of the trait</source>
        <translation>Größter Wert des Merkmals</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Filter of the map</source>
        <translation>Filter der Karte</translation>
    </message>
    <message>
        <source>Words to filter by</source>
        <translation>Worte, nach denen gefiltert wird</translation>
    </message>
    <message>
        <source>Code, family, row/place</source>
        <translation>Kennung, Familie, Reihe/Platz</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>Trait with bounds</source>
        <translation>Merkmal mit Grenzen</translation>
    </message>
    <message>
        <source>Clear the filter</source>
        <translation>Filter leeren</translation>
    </message>
    <message>
        <source>Trees that pass the filter</source>
        <translation>Bäume, die durch den Filter gehen</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>Every family</source>
        <translation>Alle Familien</translation>
    </message>
    <message>
        <source>No trait</source>
        <translation>Kein Merkmal</translation>
    </message>
    <message>
        <source>%1 of %2 trees</source>
        <translation>%1 von %2 Bäumen</translation>
    </message>
    <message>
        <source>Every stage</source>
        <translation>Alle Stufen</translation>
    </message>
    <message>
        <source>1 tree</source>
        <translation>1 Baum</translation>
    </message>
    <message>
        <source>%1 trees</source>
        <translation>%1 Bäume</translation>
    </message>
    <message numerus="yes">
        <source>%n stages</source>
        <translation>
            <numerusform>%n Stufe</numerusform>
            <numerusform>%n Stufen</numerusform>
        </translation>
    </message>
    <message>
        <source>and</source>
        <translation>und</translation>
    </message>
    <message>
        <source>Another trait with bounds</source>
        <translation>Ein weiteres Merkmal mit Grenzen</translation>
    </message>
    <message>
        <source>Keep this bound and choose another trait</source>
        <translation>Diese Grenze behalten und ein weiteres Merkmal wählen</translation>
    </message>
    <message>
        <source>Further bounds</source>
        <translation>Weitere Grenzen</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 von %2 bis %3</translation>
    </message>
    <message>
        <source>%1 from %2 on</source>
        <translation>%1 ab %2</translation>
    </message>
    <message>
        <source>%1 up to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Take this bound away</source>
        <translation>Diese Grenze wegnehmen</translation>
    </message>
    <message>
        <source>Take away: %1</source>
        <translation>Wegnehmen: %1</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MapHoverCard</name>
    <message>
        <source>About this tree</source>
        <translation>Über diesen Baum</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MapLegend</name>
    <message>
        <source>%1: %2 trees</source>
        <translation>%1: %2 Bäume</translation>
    </message>
    <message>
        <source>%1, %2: %3 trees</source>
        <translation>%1, %2: %3 Bäume</translation>
    </message>
    <message>
        <source>Select these trees</source>
        <translation>Diese Bäume wählen</translation>
    </message>
    <message>
        <source>Legend of the map</source>
        <translation>Legende der Karte</translation>
    </message>
    <message>
        <source>No tree has a value yet.</source>
        <translation>Noch kein Baum hat einen Wert.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MapMargins</name>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 Reihe</translation>
    </message>
    <message numerus="yes">
        <source>%n rows</source>
        <translation>
            <numerusform>%n Reihe</numerusform>
            <numerusform>%n Reihen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MapWords</name>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>seed</source>
        <translation>Kern</translation>
    </message>
    <message>
        <source>nursery</source>
        <translation>Anzucht</translation>
    </message>
    <message>
        <source>juvenile</source>
        <translation>juvenil</translation>
    </message>
    <message>
        <source>bearing</source>
        <translation>tragend</translation>
    </message>
    <message>
        <source>watched</source>
        <translation>beobachtet</translation>
    </message>
    <message>
        <source>selection</source>
        <translation>Auslese</translation>
    </message>
    <message>
        <source>advanced</source>
        <translation>in Prüfung</translation>
    </message>
    <message>
        <source>named</source>
        <translation>benannt</translation>
    </message>
    <message>
        <source>released</source>
        <translation>freigegeben</translation>
    </message>
    <message>
        <source>kept as parent</source>
        <translation>als Elter behalten</translation>
    </message>
    <message>
        <source>culled</source>
        <translation>verworfen</translation>
    </message>
    <message>
        <source>stage unknown</source>
        <translation>Stufe unbekannt</translation>
    </message>
    <message>
        <source>growing</source>
        <translation>am Leben</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>tot</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>state unknown</source>
        <translation>Zustand unbekannt</translation>
    </message>
    <message>
        <source>identity sure</source>
        <translation>Identität sicher</translation>
    </message>
    <message>
        <source>identity by map only</source>
        <translation>Identität: Karte</translation>
    </message>
    <message>
        <source>identity by fruit only</source>
        <translation>Identität: Frucht</translation>
    </message>
    <message>
        <source>identity unsure</source>
        <translation>Identität unsicher</translation>
    </message>
    <message>
        <source>row %1, place %2</source>
        <translation>Reihe %1, Platz %2</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Lücke</translation>
    </message>
    <message>
        <source>%1 m from the zero stake</source>
        <translation>%1 m vom Nullpfahl</translation>
    </message>
    <message>
        <source>note today</source>
        <translation>Notiz von heute</translation>
    </message>
    <message>
        <source>graft wish</source>
        <translation>Pfropfwunsch</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>earlier plants here</source>
        <translation>hier standen früher Pflanzen</translation>
    </message>
    <message>
        <source>two plants at this place</source>
        <translation>zwei Pflanzen auf diesem Platz</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MeritFilterBar</name>
    <message>
        <source>Show all</source>
        <translation>Alle zeigen</translation>
    </message>
    <message>
        <source>Ranked by</source>
        <translation>Geordnet nach</translation>
    </message>
    <message>
        <source>Slot</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Suggestion</source>
        <translation>Vorschlag</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>liking</source>
        <translation>Gefallen</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>all slots</source>
        <translation>alle Abschnitte</translation>
    </message>
    <message>
        <source>all species</source>
        <translation>alle Arten</translation>
    </message>
    <message>
        <source>all stages</source>
        <translation>alle Stufen</translation>
    </message>
    <message>
        <source>all suggestions</source>
        <translation>alle Vorschläge</translation>
    </message>
    <message>
        <source>all families</source>
        <translation>alle Familien</translation>
    </message>
    <message numerus="yes">
        <source>Never had a fair test: %n</source>
        <translation>
            <numerusform>Nie fair geprüft: %n</numerusform>
            <numerusform>Nie fair geprüft: %n</numerusform>
        </translation>
    </message>
    <message>
        <source>never had a fair test</source>
        <translation>nie fair geprüft</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MeritLegend</name>
    <message>
        <source>Dot: merit; thick bar: 80 %; thin bar: 95 %; open and pale: no fair lot yet. Lines: floor dotted, best solid, famous name dashed.</source>
        <translation>Punkt: Wert; dicker Balken: 80 %; dünner Balken: 95 %; offen und blass: noch keine faire Probe. Linien: Untergrenze gepunktet, Beste durchgezogen, bekannter Name gestrichelt.</translation>
    </message>
    <message>
        <source>merit, thick 80 %, thin 95 %</source>
        <translation>Wert, dick 80 %, dünn 95 %</translation>
    </message>
    <message>
        <source>no fair lot yet</source>
        <translation>noch keine faire Probe</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Untergrenze</translation>
    </message>
    <message>
        <source>best</source>
        <translation>Beste</translation>
    </message>
    <message>
        <source>famous name</source>
        <translation>bekannter Name</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MeritPaper</name>
    <message>
        <source>Merit against the benchmarks</source>
        <translation>Wert gegen die Vergleichssorten</translation>
    </message>
    <message>
        <source>%1, as the book stood on %2. %3</source>
        <translation>%1, wie das Buch am %2 stand. %3</translation>
    </message>
    <message>
        <source>book not named</source>
        <translation>Buch ohne Namen</translation>
    </message>
    <message>
        <source>Merit: liking in points, 1 to 9, as a fair, prime, fresh lot would show it to an average taster in an average year; ± one standard error. P: chance to be better than that benchmark of its slot. Reliability: 0 nothing known, 1 all known.</source>
        <translation>Wert: Gefallen in Punkten, 1 bis 9, wie eine faire, genussreife, frische Probe es einem mittleren Verkoster in einem mittleren Jahr zeigte; ± ein Standardfehler. P: Wahrscheinlichkeit, besser zu sein als jene Vergleichssorte des Abschnitts. Verlässlichkeit: 0 nichts bekannt, 1 alles bekannt.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MeritPlace</name>
    <message>
        <source>No verdict yet</source>
        <translation>Noch kein Urteil</translation>
    </message>
    <message>
        <source>Taste fruit and score it (B on a tree), mark benchmarks ripe (W): then every seedling stands here against the best of its days.</source>
        <translation>Verkosten und benoten Sie Früchte (B auf einem Baum), markieren Sie Vergleichssorten als reif (W): Dann steht hier jeder Sämling gegen die Beste seiner Tage.</translation>
    </message>
    <message>
        <source>&amp;Print or save PDF</source>
        <translation>&amp;Drucken oder PDF sichern</translation>
    </message>
    <message>
        <source>Seedlings by merit</source>
        <translation>Sämlinge nach Wert</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <translation>Strg+P</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>Woher er kommt</translation>
    </message>
    <message>
        <source>What would settle it</source>
        <translation>Was es klären würde</translation>
    </message>
    <message>
        <source>Ladder of the slot</source>
        <translation>Leiter des Abschnitts</translation>
    </message>
    <message>
        <source>Thresholds</source>
        <translation>Schwellen</translation>
    </message>
    <message>
        <source>Looking back</source>
        <translation>Rückblick</translation>
    </message>
    <message>
        <source>&amp;Back to the table</source>
        <translation>&amp;Zurück zur Tabelle</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>No seedling has fruited yet. Mark the first fruit on a walk (W) or bite into it (B).</source>
        <translation>Noch kein Sämling hat getragen. Markieren Sie die erste Frucht auf einem Rundgang (W) oder beißen Sie hinein (B).</translation>
    </message>
    <message>
        <source>The book is set back: this is how it stood on %1.</source>
        <translation>Das Buch ist zurückgestellt: So stand es am %1.</translation>
    </message>
    <message>
        <source>Nothing can be lost: only this place looks back.</source>
        <translation>Nichts kann verloren gehen: Nur dieser Platz blickt zurück.</translation>
    </message>
    <message>
        <source>The evaluation is being made…</source>
        <translation>Die Auswertung entsteht …</translation>
    </message>
    <message>
        <source>Stale: from before the last edit; being worked out anew…</source>
        <translation>Überholt: von vor der letzten Änderung; wird neu berechnet …</translation>
    </message>
    <message>
        <source>Stale: from before the last edit.</source>
        <translation>Überholt: von vor der letzten Änderung.</translation>
    </message>
    <message>
        <source>Up to date, worked out in %1 s.</source>
        <translation>Auf dem Stand, berechnet in %1 s.</translation>
    </message>
    <message>
        <source>Choose a seedling in the table above.</source>
        <translation>Wählen Sie oben einen Sämling.</translation>
    </message>
    <message>
        <source>Merit %1</source>
        <translation>Wert %1</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MeritTableModel</name>
    <message>
        <source>season not known</source>
        <translation>Reifezeit unbekannt</translation>
    </message>
    <message>
        <source>no benchmarks</source>
        <translation>keine Vergleichssorten</translation>
    </message>
    <message>
        <source>outside all slots</source>
        <translation>außerhalb aller Abschnitte</translation>
    </message>
    <message>
        <source>not enough yet</source>
        <translation>noch zu wenig</translation>
    </message>
    <message>
        <source>no benchmark</source>
        <translation>keine Vergleichssorte</translation>
    </message>
    <message>
        <source>no slot</source>
        <translation>kein Abschnitt</translation>
    </message>
    <message>
        <source>nobody on this rung</source>
        <translation>Sprosse leer</translation>
    </message>
    <message>
        <source>%1 by family</source>
        <translation>%1 nach Familie</translation>
    </message>
    <message>
        <source>%1 (next slot)</source>
        <translation>%1 (Nachbar)</translation>
    </message>
    <message>
        <source>never measured</source>
        <translation>nie gemessen</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s), %1 crop years</source>
        <translation>
            <numerusform>%n Eintrag, Erntejahre: %1</numerusform>
            <numerusform>%n Einträge, Erntejahre: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>slot</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>worth ± error</source>
        <translation>Größe ± Fehler</translation>
    </message>
    <message>
        <source>merit ± error, points</source>
        <translation>Wert ± Fehler, Punkte</translation>
    </message>
    <message>
        <source>suggestion</source>
        <translation>Vorschlag</translation>
    </message>
    <message>
        <source>P(above floor)</source>
        <translation>P(über Untergrenze)</translation>
    </message>
    <message>
        <source>P(above best)</source>
        <translation>P(über Beste)</translation>
    </message>
    <message>
        <source>P(by %1)</source>
        <translation>P(um %1)</translation>
    </message>
    <message>
        <source>reliability</source>
        <translation>Verlässlichkeit</translation>
    </message>
    <message>
        <source>evidence</source>
        <translation>Belege</translation>
    </message>
    <message>
        <source>faults</source>
        <translation>Mängel</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MeritWords</name>
    <message>
        <source>picked early</source>
        <translation>früh gepflückt</translation>
    </message>
    <message>
        <source>dropped today</source>
        <translation>heute gefallen</translation>
    </message>
    <message>
        <source>on the ground longer</source>
        <translation>länger am Boden</translation>
    </message>
    <message>
        <source>shaken</source>
        <translation>geschüttelt</translation>
    </message>
    <message>
        <source>origin unknown</source>
        <translation>Herkunft unbekannt</translation>
    </message>
    <message>
        <source>insect</source>
        <translation>Insektenfraß</translation>
    </message>
    <message>
        <source>bird</source>
        <translation>Vogelfraß</translation>
    </message>
    <message>
        <source>split</source>
        <translation>geplatzt</translation>
    </message>
    <message>
        <source>rot</source>
        <translation>faul</translation>
    </message>
    <message>
        <source>paper bag</source>
        <translation>Papiertüte</translation>
    </message>
    <message>
        <source>cloth bag</source>
        <translation>Stoffbeutel</translation>
    </message>
    <message>
        <source>clear bag</source>
        <translation>Klarsichtbeutel</translation>
    </message>
    <message>
        <source>green</source>
        <translation>grün</translation>
    </message>
    <message>
        <source>getting there</source>
        <translation>fast so weit</translation>
    </message>
    <message>
        <source>early prime</source>
        <translation>eben reif</translation>
    </message>
    <message>
        <source>late prime</source>
        <translation>noch gut</translation>
    </message>
    <message>
        <source>on its way out</source>
        <translation>im Abgehen</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>vorbei</translation>
    </message>
    <message>
        <source>ripeness unknown</source>
        <translation>Reife unbekannt</translation>
    </message>
    <message>
        <source>storage unknown</source>
        <translation>Lagerung unbekannt</translation>
    </message>
    <message>
        <source>sunny side</source>
        <translation>Sonnenseite</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>im Inneren</translation>
    </message>
    <message>
        <source>low</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>lone fruit</source>
        <translation>einzelne Frucht</translation>
    </message>
    <message>
        <source>light crop</source>
        <translation>schwacher Behang</translation>
    </message>
    <message>
        <source>heavy crop</source>
        <translation>starker Behang</translation>
    </message>
    <message>
        <source>first crop</source>
        <translation>erste Ernte</translation>
    </message>
    <message>
        <source>second crop</source>
        <translation>zweite Ernte</translation>
    </message>
    <message>
        <source>own seedling, sighted</source>
        <translation>eigener Sämling, offen verkostet</translation>
    </message>
    <message>
        <source>%1 (of a neighbouring slot)</source>
        <translation>%1 (aus einem Nachbarabschnitt)</translation>
    </message>
    <message>
        <source>better than %1: %2</source>
        <translation>besser als %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>not enough yet</source>
        <translation>noch zu wenig</translation>
    </message>
    <message>
        <source>cull</source>
        <translation>verwerfen</translation>
    </message>
    <message>
        <source>taste again</source>
        <translation>noch einmal verkosten</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>beobachten</translation>
    </message>
    <message>
        <source>back up now</source>
        <translation>jetzt sichern</translation>
    </message>
    <message>
        <source>talk of a name</source>
        <translation>über einen Namen reden</translation>
    </message>
    <message>
        <source>parent only</source>
        <translation>nur als Elter</translation>
    </message>
    <message>
        <source>decided</source>
        <translation>entschieden</translation>
    </message>
    <message>
        <source>The book has no benchmark of its species to beat.</source>
        <translation>Das Buch hat keine Vergleichssorte seiner Art, die zu schlagen wäre.</translation>
    </message>
    <message>
        <source>Nobody knows when it ripens, so nobody knows what it has to beat: mark it ripe on a walk.</source>
        <translation>Niemand weiß, wann er reift, also auch nicht, was er schlagen muss: auf einem Rundgang als reif markieren.</translation>
    </message>
    <message>
        <source>It ripens outside all slots of the season: cut one for it.</source>
        <translation>Er reift außerhalb aller Abschnitte der Saison: einen dafür abteilen.</translation>
    </message>
    <message>
        <source>No benchmark of its slot or the slots beside it was ever tasted: taste one.</source>
        <translation>Keine Vergleichssorte seines Abschnitts oder der Abschnitte daneben wurde je verkostet: eine verkosten.</translation>
    </message>
    <message>
        <source>It has fruited, but nobody has scored it yet.</source>
        <translation>Er hat getragen, aber noch niemand hat ihn benotet.</translation>
    </message>
    <message>
        <source>Fair lots: %1 of %2, where %3 are asked for. Taste it at its prime.</source>
        <translation>Faire Proben: %1 von %2, verlangt sind %3. In der Genussreife verkosten.</translation>
    </message>
    <message>
        <source>Worse than %1: %2; from %3 on it may go.</source>
        <translation>Schlechter als %1: %2; ab %3 darf er gehen.</translation>
    </message>
    <message>
        <source>Ruled out: %1. And %2.</source>
        <translation>Ausgeschlossen: %1. Und %2.</translation>
    </message>
    <message>
        <source>Ruled out: %1. But %2; of use as a parent.</source>
        <translation>Ausgeschlossen: %1. Aber %2; als Elter brauchbar.</translation>
    </message>
    <message>
        <source>Undecided, %1: too little to watch it, too much to cull it.</source>
        <translation>Unentschieden, %1: zu wenig zum Beobachten, zu viel zum Verwerfen.</translation>
    </message>
    <message>
        <source>Its chance to be %1; from %2 on it is watched.</source>
        <translation>Wahrscheinlich %1; ab %2 wird er beobachtet.</translation>
    </message>
    <message>
        <source>Its chance to be %1, and one accident would end it.</source>
        <translation>Wahrscheinlich %1, und ein Unglück wäre sein Ende.</translation>
    </message>
    <message>
        <source>Its chance to be %1, but crop years tasted: %2 of %3 asked for.</source>
        <translation>Wahrscheinlich %1, aber verkostete Erntejahre: %2 von %3 verlangten.</translation>
    </message>
    <message>
        <source>Its chance to be %1; from %2 on a name is talked of.</source>
        <translation>Wahrscheinlich %1; ab %2 wird über einen Namen geredet.</translation>
    </message>
    <message>
        <source>Decided already: %1.</source>
        <translation>Schon entschieden: %1.</translation>
    </message>
    <message>
        <source>never tasted</source>
        <translation>nie verkostet</translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s), %1 fair</source>
        <translation>
            <numerusform>%n Probe, %1 fair</numerusform>
            <numerusform>%n Proben, %1 fair</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taster(s)</source>
        <translation>
            <numerusform>%n Verkoster</numerusform>
            <numerusform>%n Verkoster</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n crop year(s)</source>
        <translation>
            <numerusform>%n Erntejahr</numerusform>
            <numerusform>%n Erntejahre</numerusform>
        </translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>noch nicht bekannt</translation>
    </message>
    <message>
        <source>%1 by its relatives alone</source>
        <translation>%1 allein nach den Verwandten</translation>
    </message>
    <message>
        <source>P(beats best of its slot, %1) %2</source>
        <translation>P(schlägt die Beste seines Abschnitts, %1) %2</translation>
    </message>
    <message>
        <source>P(beats floor of its slot, %1) %2</source>
        <translation>P(schlägt die Untergrenze seines Abschnitts, %1) %2</translation>
    </message>
    <message>
        <source>scab</source>
        <translation>Schorf</translation>
    </message>
    <message>
        <source>mildew</source>
        <translation>Mehltau</translation>
    </message>
    <message>
        <source>fire blight</source>
        <translation>Feuerbrand</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Fruchtfall</translation>
    </message>
    <message>
        <source>splitting</source>
        <translation>Platzen</translation>
    </message>
    <message>
        <source>mealiness</source>
        <translation>Mehligkeit</translation>
    </message>
    <message>
        <source>short keeping</source>
        <translation>kurze Haltbarkeit</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 im Jahr %2</translation>
    </message>
    <message numerus="yes">
        <source>%1, ruled out at %2 (%n reading(s))</source>
        <translation>
            <numerusform>%1, ausgeschlossen ab %2 (%n Ablesung)</numerusform>
            <numerusform>%1, ausgeschlossen ab %2 (%n Ablesungen)</numerusform>
        </translation>
    </message>
    <message>
        <source>Is it healthy and strong enough to keep its place until it fruits?</source>
        <translation>Ist er gesund und kräftig genug, seinen Platz bis zur ersten Frucht zu behalten?</translation>
    </message>
    <message>
        <source>Does its fruit earn another tasting?</source>
        <translation>Verdient seine Frucht eine weitere Verkostung?</translation>
    </message>
    <message>
        <source>Is it ahead of the best of its days, in more than one crop and at its prime, and are its faults bearable?</source>
        <translation>Liegt er vor der Besten seiner Tage, in mehr als einer Ernte und genussreif, und sind seine Mängel erträglich?</translation>
    </message>
    <message>
        <source>Does it do the same on other stocks and sites, does it crop and keep, and do others like it?</source>
        <translation>Hält er das auf anderen Unterlagen und Standorten, trägt und lagert er, und gefällt er anderen?</translation>
    </message>
    <message>
        <source>Can it be told from what there is, is its wood clean, and is a name free for it?</source>
        <translation>Ist er von Bekanntem zu unterscheiden, ist sein Holz gesund und ein Name frei?</translation>
    </message>
    <message>
        <source>elected for this crop year</source>
        <translation>für dieses Erntejahr gewählt</translation>
    </message>
    <message>
        <source>elected for an earlier crop year</source>
        <translation>für ein früheres Erntejahr gewählt</translation>
    </message>
    <message>
        <source>proposed: the highest merit of the slot</source>
        <translation>vorgeschlagen: höchster Wert des Abschnitts</translation>
    </message>
    <message>
        <source>proposed: the lowest merit of the slot still kept</source>
        <translation>vorgeschlagen: niedrigster noch gehaltener Wert des Abschnitts</translation>
    </message>
    <message>
        <source>proposed: three in four of the slot are better</source>
        <translation>vorgeschlagen: drei von vier des Abschnitts sind besser</translation>
    </message>
    <message>
        <source>proposed: most often the famous name before</source>
        <translation>vorgeschlagen: bisher am häufigsten der bekannte Name</translation>
    </message>
    <message>
        <source>proposed: the one of the slot with most scores</source>
        <translation>vorgeschlagen: die des Abschnitts mit den meisten Noten</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Untergrenze</translation>
    </message>
    <message>
        <source>best</source>
        <translation>Beste</translation>
    </message>
    <message>
        <source>famous name</source>
        <translation>bekannter Name</translation>
    </message>
    <message>
        <source>dessert fruit</source>
        <translation>Tafelobst</translation>
    </message>
    <message>
        <source>cooking fruit</source>
        <translation>Kochobst</translation>
    </message>
    <message>
        <source>cider fruit</source>
        <translation>Mostobst</translation>
    </message>
    <message>
        <source>keeper</source>
        <translation>Lagerobst</translation>
    </message>
    <message>
        <source>how it came off the tree</source>
        <translation>wie sie vom Baum kam</translation>
    </message>
    <message>
        <source>soundness</source>
        <translation>Unversehrtheit</translation>
    </message>
    <message>
        <source>bagging</source>
        <translation>Eintüten</translation>
    </message>
    <message>
        <source>ripeness</source>
        <translation>Reife</translation>
    </message>
    <message>
        <source>store and days</source>
        <translation>Lager und Tage</translation>
    </message>
    <message>
        <source>place in the canopy</source>
        <translation>Platz in der Krone</translation>
    </message>
    <message>
        <source>crop load</source>
        <translation>Behang</translation>
    </message>
    <message>
        <source>first or second crop</source>
        <translation>erste oder zweite Ernte</translation>
    </message>
    <message>
        <source>place in the serving order</source>
        <translation>Platz in der Reihenfolge</translation>
    </message>
    <message>
        <source>hope (own seedling, sighted)</source>
        <translation>Hoffnung (eigener Sämling, offen)</translation>
    </message>
    <message>
        <source>how high the tasters score</source>
        <translation>wie hoch die Verkoster benoten</translation>
    </message>
    <message>
        <source>the sitting</source>
        <translation>der Tisch</translation>
    </message>
    <message>
        <source>the crop year</source>
        <translation>das Erntejahr</translation>
    </message>
    <message>
        <source>luck taken off, family added</source>
        <translation>Glück abgezogen, Familie dazu</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) on the counter</source>
        <translation>
            <numerusform>%n Tag in der Küche</numerusform>
            <numerusform>%n Tage in der Küche</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) in the refrigerator</source>
        <translation>
            <numerusform>%n Tag im Kühlschrank</numerusform>
            <numerusform>%n Tage im Kühlschrank</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) in the cellar</source>
        <translation>
            <numerusform>%n Tag im Keller</numerusform>
            <numerusform>%n Tage im Keller</numerusform>
        </translation>
    </message>
    <message>
        <source>place %1 in the serving order</source>
        <translation>Platz %1 in der Reihenfolge</translation>
    </message>
    <message numerus="yes">
        <source>%n fair lot(s) beside the benchmark</source>
        <translation>
            <numerusform>%n faire Probe neben der Vergleichssorte</numerusform>
            <numerusform>%n faire Proben neben der Vergleichssorte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fair lot(s)</source>
        <translation>
            <numerusform>%n faire Probe</numerusform>
            <numerusform>%n faire Proben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>at each of %n sitting(s)</source>
        <translation>
            <numerusform>an %n Tisch</numerusform>
            <numerusform>an jedem von %n Tischen</numerusform>
        </translation>
    </message>
    <message>
        <source>blind</source>
        <translation>blind</translation>
    </message>
    <message>
        <source>sighted</source>
        <translation>offen</translation>
    </message>
    <message numerus="yes">
        <source>in each of %n crop year(s)</source>
        <translation>
            <numerusform>in %n Erntejahr</numerusform>
            <numerusform>in jedem von %n Erntejahren</numerusform>
        </translation>
    </message>
    <message>
        <source>this crop year</source>
        <translation>dieses Erntejahr</translation>
    </message>
    <message>
        <source>next crop year</source>
        <translation>nächstes Erntejahr</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>day of the month, month</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MisfitList</name>
    <message>
        <source>What does not fit, with the reason</source>
        <translation>Was nicht passt, mit dem Grund</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::MoveForm</name>
    <message>
        <source>The right tree</source>
        <translation>Der richtige Baum</translation>
    </message>
    <message>
        <source>code or row/place of the right tree</source>
        <translation>Kennung oder Reihe/Platz des richtigen Baumes</translation>
    </message>
    <message>
        <source>Records to move; Space marks one</source>
        <translation>Einträge zum Umhängen; die Leertaste wählt einen</translation>
    </message>
    <message>
        <source>Move records of %1 to the right tree</source>
        <translation>Einträge von %1 zum richtigen Baum bringen</translation>
    </message>
    <message>
        <source>tasting, liked %1</source>
        <translation>Verkostung, Gefallen %1</translation>
    </message>
    <message>
        <source>tasting</source>
        <translation>Verkostung</translation>
    </message>
    <message>
        <source>photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>No record is marked.</source>
        <translation>Kein Eintrag ist angekreuzt.</translation>
    </message>
    <message>
        <source>Mark with Space what is to be moved.</source>
        <translation>Mit der Leertaste ankreuzen, was umziehen soll.</translation>
    </message>
    <message>
        <source>That is this tree itself.</source>
        <translation>Das ist dieser Baum selbst.</translation>
    </message>
    <message>
        <source>Type the code of the right tree.</source>
        <translation>Die Kennung des richtigen Baumes eingeben.</translation>
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
    <name>pipwright::ui::NoteForm</name>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>what you saw</source>
        <translation>was zu sehen war</translation>
    </message>
    <message>
        <source>Note on %1</source>
        <translation>Notiz zu %1</translation>
    </message>
    <message>
        <source>The note has no words.</source>
        <translation>Die Notiz hat keine Worte.</translation>
    </message>
    <message>
        <source>Type what you saw, then Enter.</source>
        <translation>Eingeben, was zu sehen war, dann die Eingabetaste.</translation>
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
    <name>pipwright::ui::ObservationForm</name>
    <message>
        <source>Traits that match</source>
        <translation>Merkmale, die passen</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Trait</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <source>trait, as scab or mass, then Enter</source>
        <translation>Merkmal, etwa Schorf oder Masse, dann Eingabe</translation>
    </message>
    <message>
        <source>The day observed, as the value</source>
        <translation>Der beobachtete Tag als Wert</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>remark (may stay empty)</source>
        <translation>Bemerkung (darf leer bleiben)</translation>
    </message>
    <message>
        <source>Observation on %1</source>
        <translation>Beobachtung an %1</translation>
    </message>
    <message>
        <source>No trait of the book is called so.</source>
        <translation>Kein Merkmal des Buches heißt so.</translation>
    </message>
    <message>
        <source>Enter takes the first.</source>
        <translation>Die Eingabetaste nimmt das erste.</translation>
    </message>
    <message>
        <source>13, ~13, &lt;12 or 13-14, in %1</source>
        <translation>13, ~13, &lt;12 oder 13-14, in %1</translation>
    </message>
    <message>
        <source>steps of the scale</source>
        <translation>Stufen der Skala</translation>
    </message>
    <message>
        <source>in words</source>
        <translation>in Worten</translation>
    </message>
    <message>
        <source>No value is chosen.</source>
        <translation>Kein Wert gewählt.</translation>
    </message>
    <message>
        <source>Choose one of the words.</source>
        <translation>Eines der Worte wählen.</translation>
    </message>
    <message>
        <source>The value is a day, and none can be read.</source>
        <translation>Der Wert ist ein Tag, und keiner ist zu lesen.</translation>
    </message>
    <message>
        <source>Type it as 22 Aug or 2026-08-22.</source>
        <translation>Als 22.8. oder 2026-08-22 eingeben.</translation>
    </message>
    <message>
        <source>There are no words.</source>
        <translation>Es fehlen die Worte.</translation>
    </message>
    <message>
        <source>Type what you saw.</source>
        <translation>Eingeben, was zu sehen war.</translation>
    </message>
    <message>
        <source>The trait has no scale.</source>
        <translation>Das Merkmal hat keine Skala.</translation>
    </message>
    <message>
        <source>Choose another trait.</source>
        <translation>Ein anderes Merkmal wählen.</translation>
    </message>
    <message>
        <source>No trait is chosen.</source>
        <translation>Kein Merkmal gewählt.</translation>
    </message>
    <message>
        <source>Type its name, then Enter.</source>
        <translation>Seinen Namen eingeben, dann die Eingabetaste.</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Gerät</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::OrchardScene</name>
    <message>
        <source>latest liking (1 to 9)</source>
        <translation>letztes Gefallen (1 bis 9)</translation>
    </message>
    <message>
        <source>fair lots</source>
        <translation>faire Proben</translation>
    </message>
    <message>
        <source>first fruit (crop year)</source>
        <translation>erste Frucht (Erntejahr)</translation>
    </message>
    <message>
        <source>place %1</source>
        <translation>Platz %1</translation>
    </message>
    <message numerus="yes">
        <source>latest liking %1 as eaten, mean of %n score(s)</source>
        <translation>
            <numerusform>letztes Gefallen %1 wie gegessen, aus %n Wertung</numerusform>
            <numerusform>letztes Gefallen %1 wie gegessen, Mittel aus %n Wertungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s) tasted</source>
        <translation>
            <numerusform>%n Probe verkostet</numerusform>
            <numerusform>%n Proben verkostet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n of them fair</source>
        <translation>
            <numerusform>, %n davon fair</numerusform>
            <numerusform>, %n davon fair</numerusform>
        </translation>
    </message>
    <message>
        <source>last visited %1</source>
        <translation>zuletzt besucht %1</translation>
    </message>
    <message>
        <source>family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>scores in it</source>
        <translation>Wertungen darin</translation>
    </message>
    <message>
        <source>last visited</source>
        <translation>zuletzt besucht</translation>
    </message>
    <message>
        <source>usual harvest week (ISO, %1)</source>
        <comment>year of the calendar</comment>
        <translation>übliche Erntewoche (KW %1)</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::OrchardWords</name>
    <message>
        <source>tag and map agree</source>
        <translation>Schild und Karte stimmen überein</translation>
    </message>
    <message>
        <source>by its tag</source>
        <translation>nach dem Schild</translation>
    </message>
    <message>
        <source>by the map</source>
        <translation>nach der Karte</translation>
    </message>
    <message>
        <source>by the grafting record</source>
        <translation>nach dem Veredelungsbuch</translation>
    </message>
    <message>
        <source>by its fruit</source>
        <translation>nach der Frucht</translation>
    </message>
    <message>
        <source>a guess</source>
        <translation>vermutet</translation>
    </message>
    <message>
        <source>basis not known</source>
        <translation>Grundlage unbekannt</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>ripening</source>
        <translation>beginnt zu reifen</translation>
    </message>
    <message>
        <source>ripe</source>
        <translation>reif</translation>
    </message>
    <message>
        <source>over</source>
        <translation>überreif</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>vorbei</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>on its own roots</source>
        <translation>wurzelecht</translation>
    </message>
    <message>
        <source>grafted</source>
        <translation>veredelt</translation>
    </message>
    <message>
        <source>limb of a frame tree</source>
        <translation>Ast eines Gerüstbaumes</translation>
    </message>
    <message>
        <source>roots not known</source>
        <translation>Wurzel unbekannt</translation>
    </message>
    <message>
        <source>picked ripe</source>
        <translation>reif gepflückt</translation>
    </message>
    <message>
        <source>picked early</source>
        <translation>zu früh gepflückt</translation>
    </message>
    <message>
        <source>dropped that day</source>
        <translation>am selben Tag gefallen</translation>
    </message>
    <message>
        <source>on the ground longer</source>
        <translation>länger am Boden</translation>
    </message>
    <message>
        <source>shaken off</source>
        <translation>heruntergeschüttelt</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>heil</translation>
    </message>
    <message>
        <source>insect inside</source>
        <translation>Insekt darin</translation>
    </message>
    <message>
        <source>pecked</source>
        <translation>angepickt</translation>
    </message>
    <message>
        <source>split</source>
        <translation>geplatzt</translation>
    </message>
    <message>
        <source>rotten in part</source>
        <translation>teils faul</translation>
    </message>
    <message>
        <source>green</source>
        <translation>grün</translation>
    </message>
    <message>
        <source>getting there</source>
        <translation>halbreif</translation>
    </message>
    <message>
        <source>early prime</source>
        <translation>eben reif</translation>
    </message>
    <message>
        <source>prime</source>
        <translation>genussreif</translation>
    </message>
    <message>
        <source>late prime</source>
        <translation>noch gut</translation>
    </message>
    <message>
        <source>on its way out</source>
        <translation>lässt nach</translation>
    </message>
    <message>
        <source>gone by</source>
        <translation>vorbei</translation>
    </message>
    <message>
        <source>straight off the tree</source>
        <translation>frisch vom Baum</translation>
    </message>
    <message>
        <source>counter</source>
        <translation>Tisch</translation>
    </message>
    <message>
        <source>fridge</source>
        <translation>Kühlschrank</translation>
    </message>
    <message>
        <source>cellar</source>
        <translation>Keller</translation>
    </message>
    <message>
        <source>several places</source>
        <translation>mehrere Orte</translation>
    </message>
    <message>
        <source>no bag</source>
        <translation>ohne Beutel</translation>
    </message>
    <message>
        <source>paper bag</source>
        <translation>Papierbeutel</translation>
    </message>
    <message>
        <source>organza bag</source>
        <translation>Organzabeutel</translation>
    </message>
    <message>
        <source>clear bag</source>
        <translation>Klarsichtbeutel</translation>
    </message>
    <message>
        <source>from the top</source>
        <translation>aus dem Wipfel</translation>
    </message>
    <message>
        <source>from the sunny side</source>
        <translation>von der Sonnenseite</translation>
    </message>
    <message>
        <source>from inside the crown</source>
        <translation>aus dem Kroneninneren</translation>
    </message>
    <message>
        <source>from low down</source>
        <translation>von weit unten</translation>
    </message>
    <message>
        <source>a lone fruit</source>
        <translation>eine einzelne Frucht</translation>
    </message>
    <message>
        <source>light crop</source>
        <translation>schwacher Behang</translation>
    </message>
    <message>
        <source>medium crop</source>
        <translation>mittlerer Behang</translation>
    </message>
    <message>
        <source>heavy crop</source>
        <translation>starker Behang</translation>
    </message>
    <message>
        <source>cull it</source>
        <translation>verwerfen</translation>
    </message>
    <message>
        <source>no reason to keep it</source>
        <translation>nichts spricht für ihn</translation>
    </message>
    <message>
        <source>taste again</source>
        <translation>noch einmal kosten</translation>
    </message>
    <message>
        <source>watch it</source>
        <translation>beobachten</translation>
    </message>
    <message>
        <source>back it up now</source>
        <translation>jetzt absichern</translation>
    </message>
    <message>
        <source>for a parent only</source>
        <translation>nur als Elter</translation>
    </message>
    <message>
        <source>talk of a name</source>
        <translation>eines Namens wert</translation>
    </message>
    <message>
        <source>no verdict</source>
        <translation>kein Urteil</translation>
    </message>
    <message>
        <source>whip and tongue</source>
        <translation>Kopulation mit Gegenzungen</translation>
    </message>
    <message>
        <source>cleft</source>
        <translation>Spaltpfropfen</translation>
    </message>
    <message>
        <source>bark</source>
        <translation>Rindenpfropfen</translation>
    </message>
    <message>
        <source>chip bud</source>
        <translation>Chipveredelung</translation>
    </message>
    <message>
        <source>T bud</source>
        <translation>Okulation</translation>
    </message>
    <message>
        <source>another method</source>
        <translation>andere Methode</translation>
    </message>
    <message>
        <source>method not known</source>
        <translation>Methode unbekannt</translation>
    </message>
    <message>
        <source>fallen</source>
        <translation>gefallen</translation>
    </message>
    <message>
        <source>hurt</source>
        <translation>verletzt</translation>
    </message>
    <message>
        <source>under-ripe</source>
        <translation>unreif</translation>
    </message>
    <message>
        <source>over-ripe</source>
        <translation>überreif</translation>
    </message>
    <message>
        <source>kept more than 7 days</source>
        <translation>länger als 7 Tage gelagert</translation>
    </message>
    <message>
        <source>grown in a paper bag</source>
        <translation>im Papierbeutel gewachsen</translation>
    </message>
    <message>
        <source>first crop</source>
        <translation>erste Ernte</translation>
    </message>
    <message>
        <source>origin not known</source>
        <translation>Herkunft unbekannt</translation>
    </message>
    <message>
        <source>ripeness not known</source>
        <translation>Reife unbekannt</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) on the counter</source>
        <translation>
            <numerusform>%n Tag auf dem Tisch</numerusform>
            <numerusform>%n Tage auf dem Tisch</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) in the fridge</source>
        <translation>
            <numerusform>%n Tag im Kühlschrank</numerusform>
            <numerusform>%n Tage im Kühlschrank</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) in the cellar</source>
        <translation>
            <numerusform>%n Tag im Keller</numerusform>
            <numerusform>%n Tage im Keller</numerusform>
        </translation>
    </message>
    <message>
        <source>condition not known</source>
        <translation>Zustand unbekannt</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>fair</translation>
    </message>
    <message>
        <source>unclear: %1</source>
        <translation>unklar: %1</translation>
    </message>
    <message>
        <source>not fair: %1</source>
        <translation>nicht fair: %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source> (written as %1)</source>
        <translation> (geschrieben als %1)</translation>
    </message>
    <message>
        <source>no date</source>
        <translation>ohne Datum</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>somebody</source>
        <translation>jemand</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::OrderLine</name>
    <message>
        <source>Method of grafting</source>
        <translation>Veredelungsmethode</translation>
    </message>
    <message>
        <source>Number of grafts</source>
        <translation>Zahl der Reiser</translation>
    </message>
    <message>
        <source>Onto which tree or stock</source>
        <translation>Auf welchen Baum oder welche Unterlage</translation>
    </message>
    <message>
        <source>onto: code, row/place, or words</source>
        <translation>auf: Kennung, Reihe/Platz oder Worte</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Bestellen</translation>
    </message>
    <message>
        <source>Order grafts of %1</source>
        <translation>Reiser von %1 bestellen</translation>
    </message>
    <message>
        <source>Choose a wish above to order its grafts.</source>
        <translation>Oben einen Wunsch wählen, um seine Reiser zu bestellen.</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>noch unbekannt</translation>
    </message>
    <message>
        <source>onto the tree %1, %2</source>
        <translation>auf den Baum %1, %2</translation>
    </message>
    <message>
        <source>no tree of the book: kept in your words</source>
        <translation>kein Baum des Buches: bleibt in diesen Worten</translation>
    </message>
    <message>
        <source>%1 has no graft wish: G makes one, or choose another wish above.</source>
        <translation>%1 hat keinen Pfropfwunsch: G legt einen an, oder oben einen anderen Wunsch wählen.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::OutlookPanel</name>
    <message>
        <source>Seed parent</source>
        <translation>Mutter</translation>
    </message>
    <message>
        <source>Pollen parent</source>
        <translation>Vater</translation>
    </message>
    <message>
        <source>open pollination</source>
        <translation>offene Bestäubung</translation>
    </message>
    <message>
        <source>Pollen on the style</source>
        <translation>Pollen auf dem Griffel</translation>
    </message>
    <message>
        <source>Inbreeding of the seedlings</source>
        <translation>Inzucht der Sämlinge</translation>
    </message>
    <message>
        <source>Founders of the seedlings</source>
        <translation>Gründer der Sämlinge</translation>
    </message>
    <message>
        <source>What to mind</source>
        <translation>Was zu beachten ist</translation>
    </message>
    <message>
        <source>&amp;Parents</source>
        <translation>&amp;Eltern</translation>
    </message>
    <message>
        <source>Pollen</source>
        <translation>Pollen</translation>
    </message>
    <message>
        <source>Inbreeding</source>
        <translation>Inzucht</translation>
    </message>
    <message>
        <source>Founders</source>
        <translation>Gründer</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not in the book.</source>
        <translation>„%1“ steht nicht im Buch.</translation>
    </message>
    <message>
        <source>Choose a cross, or type two parents.</source>
        <translation>Wählen Sie eine Kreuzung, oder tippen Sie zwei Eltern ein.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PagePreview</name>
    <message>
        <source>Preview: nothing to print</source>
        <translation>Vorschau: nichts zu drucken</translation>
    </message>
    <message>
        <source>Preview, page %1 of %2</source>
        <translation>Vorschau, Seite %1 von %2</translation>
    </message>
    <message>
        <source>Nothing to print yet. Choose trees on the row map.</source>
        <translation>Noch nichts zu drucken. Auf der Karte Bäume wählen.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PaperPlace</name>
    <message>
        <source>Labels of the selected trees</source>
        <translation>Etiketten der gewählten Bäume</translation>
    </message>
    <message>
        <source>Walk the selected trees</source>
        <translation>Rundgang zu den gewählten Bäumen</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Walking sheet</source>
        <translation>Rundgangsblatt</translation>
    </message>
    <message>
        <source>Select trees on the map and press L: their labels appear here.</source>
        <translation>Auf der Karte Bäume wählen und L drücken: Hier erscheinen ihre Etiketten.</translation>
    </message>
    <message numerus="yes">
        <source>%n label(s), in the order of the selection.</source>
        <translation>
            <numerusform>%n Etikett, in der Reihenfolge der Auswahl.</numerusform>
            <numerusform>%n Etiketten, in der Reihenfolge der Auswahl.</numerusform>
        </translation>
    </message>
    <message>
        <source>Select the trees to visit on the map: their sheet appears here, in walking order.</source>
        <translation>Auf der Karte die Bäume wählen, die besucht werden: Hier erscheint ihr Blatt, in der Reihenfolge des Weges.</translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) in walking order, each with its newest note.</source>
        <translation>
            <numerusform>%n Baum auf dem Weg, mit seiner letzten Notiz.</numerusform>
            <numerusform>%n Bäume in der Reihenfolge des Weges, jeder mit seiner letzten Notiz.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) stand nowhere known and are left out.</source>
        <translation>
            <numerusform>%n Baum ohne bekannten Platz bleibt weg.</numerusform>
            <numerusform>%n Bäume ohne bekannten Platz bleiben weg.</numerusform>
        </translation>
    </message>
    <message>
        <source>walk-%1</source>
        <translation>rundgang-%1</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PhotoForm</name>
    <message>
        <source>What it shows</source>
        <translation>Was es zeigt</translation>
    </message>
    <message>
        <source>what it shows (may stay empty)</source>
        <translation>was es zeigt (darf leer bleiben)</translation>
    </message>
    <message>
        <source>Choose another file.</source>
        <translation>Eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>The picture is larger than 64 MB.</source>
        <translation>Das Bild ist größer als 64 MB.</translation>
    </message>
    <message>
        <source>Save it smaller and choose it again.</source>
        <translation>Das Bild kleiner speichern und noch einmal wählen.</translation>
    </message>
    <message>
        <source>Photo of %1</source>
        <translation>Foto von %1</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PhotoStrip</name>
    <message>
        <source>cannot be shown</source>
        <translation>nicht darstellbar</translation>
    </message>
    <message>
        <source>reading …</source>
        <translation>wird gelesen …</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>No photo yet. P adds one from a file.</source>
        <translation>Noch kein Foto. P nimmt eines aus einer Datei.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PlanLotsModel</name>
    <message>
        <source>twice</source>
        <translation>zweimal</translation>
    </message>
    <message>
        <source>again</source>
        <translation>wieder</translation>
    </message>
    <message>
        <source>the benchmark, hidden under two codes</source>
        <translation>die Vergleichssorte, unter zwei Nummern versteckt</translation>
    </message>
    <message>
        <source>of an earlier sitting, for each taster&apos;s own noise</source>
        <translation>von einer früheren Verkostung, für die eigene Streuung jedes Verkosters</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PlanPage</name>
    <message>
        <source>Keep the plan (Ctrl+Enter)</source>
        <translation>Plan sichern (Strg+Eingabe)</translation>
    </message>
    <message>
        <source>Later (Esc)</source>
        <translation>Später (Esc)</translation>
    </message>
    <message>
        <source>Draw anew</source>
        <translation>Neu auslosen</translation>
    </message>
    <message>
        <source>Other codes and other orders, as even as these.</source>
        <translation>Andere Nummern und Reihenfolgen, so ausgewogen wie diese.</translation>
    </message>
    <message>
        <source>Empty the plan</source>
        <translation>Plan leeren</translation>
    </message>
    <message>
        <source>Plan a sitting</source>
        <translation>Eine Verkostung planen</translation>
    </message>
    <message>
        <source>What the sitting is called</source>
        <translation>Wie die Verkostung heißt</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>darf leer bleiben</translation>
    </message>
    <message>
        <source>Whether the tasters know what they eat</source>
        <translation>Ob die Verkoster wissen, was sie essen</translation>
    </message>
    <message>
        <source>nobody but who serves knows which tree a piece comes from</source>
        <translation>nur wer vorlegt, weiß, von welchem Baum ein Stück ist</translation>
    </message>
    <message>
        <source>the trees are known</source>
        <translation>die Bäume sind bekannt</translation>
    </message>
    <message>
        <source>Lots of the planned sitting</source>
        <translation>Proben der geplanten Verkostung</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Called</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>To taste</source>
        <translation>Verkostet</translation>
    </message>
    <message>
        <source>Tasters</source>
        <translation>Verkoster</translation>
    </message>
    <message numerus="yes">
        <source>Add %n tree(s) marked on the map</source>
        <translation>
            <numerusform>%n auf der Karte markierten Baum dazu</numerusform>
            <numerusform>%n auf der Karte markierte Bäume dazu</numerusform>
        </translation>
    </message>
    <message>
        <source>Hide %1 twice</source>
        <translation>%1 zweimal verstecken</translation>
    </message>
    <message numerus="yes">
        <source>Serve %1 of %n day(s) ago again</source>
        <translation>
            <numerusform>%1 von vor %n Tag wieder vorlegen</numerusform>
            <numerusform>%1 von vor %n Tagen wieder vorlegen</numerusform>
        </translation>
    </message>
    <message>
        <source>Line %1, %2: %3</source>
        <translation>Zeile %1, %2: %3</translation>
    </message>
    <message>
        <source>%1. A &quot; repeats what stands above.</source>
        <translation>%1. Ein &quot; wiederholt, was darüber steht.</translation>
    </message>
    <message>
        <source>The sitting has no day yet.</source>
        <translation>Die Verkostung hat noch keinen Tag.</translation>
    </message>
    <message>
        <source>Type it as you know it: 22 Aug, week 34, late August.</source>
        <translation>Schreiben Sie ihn, wie Sie ihn wissen: 22. Aug, Woche 34, Ende August.</translation>
    </message>
    <message>
        <source>Serve this line once (Ctrl+B)</source>
        <translation>Diese Zeile einmal vorlegen (Strg+B)</translation>
    </message>
    <message>
        <source>Hide this line twice (Ctrl+B)</source>
        <translation>Diese Zeile zweimal verstecken (Strg+B)</translation>
    </message>
    <message>
        <source>The benchmark is served under two codes.</source>
        <translation>Die Vergleichssorte wird unter zwei Nummern vorgelegt.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PlanView</name>
    <message>
        <source>Codes in each taster&apos;s order</source>
        <translation>Nummern in der Reihenfolge jedes Verkosters</translation>
    </message>
    <message>
        <source>As it will be served</source>
        <translation>So wird vorgelegt</translation>
    </message>
    <message>
        <source>Name the lots and who tastes: codes and orders appear here.</source>
        <translation>Nennen Sie die Proben und wer verkostet: Nummern und Reihenfolgen erscheinen hier.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PlanWords</name>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>once</source>
        <translation>einmal</translation>
    </message>
    <message numerus="yes">
        <source>%n times</source>
        <translation>
            <numerusform>%n-mal</numerusform>
            <numerusform>%n-mal</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 for %2: a lot stands in the same place %3 and directly after the same other lot %4.</source>
        <translation>%1 für %2: Eine Probe steht %3 an derselben Stelle und %4 gleich nach derselben anderen.</translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n Probe</numerusform>
            <numerusform>%n Proben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taster(s)</source>
        <translation>
            <numerusform>%n Verkoster</numerusform>
            <numerusform>%n Verkoster</numerusform>
        </translation>
    </message>
    <message>
        <source>Imbalance 0: no orders of these numbers are more even.</source>
        <translation>Ungleichheit 0: Ausgewogener geht es mit diesen Zahlen nicht.</translation>
    </message>
    <message>
        <source>Imbalance %1 (sum of squares above the least possible): one lot or taster more or less may even it out.</source>
        <translation>Ungleichheit %1 (Quadratsumme über der kleinstmöglichen): Eine Probe oder ein Verkoster mehr oder weniger kann sie ausgleichen.</translation>
    </message>
    <message>
        <source>%1 is the benchmark, hidden twice under two codes; it usually ripens with the middle lot.</source>
        <translation>%1 ist die Vergleichssorte, zweimal unter zwei Nummern versteckt; sie reift sonst mit der mittleren Probe.</translation>
    </message>
    <message numerus="yes">
        <source>%1 is the benchmark, hidden twice under two codes; it usually ripens %n day(s) after the middle lot.</source>
        <translation>
            <numerusform>%1 ist die Vergleichssorte, zweimal unter zwei Nummern versteckt; sie reift sonst %n Tag nach der mittleren Probe.</numerusform>
            <numerusform>%1 ist die Vergleichssorte, zweimal unter zwei Nummern versteckt; sie reift sonst %n Tage nach der mittleren Probe.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 is the benchmark, hidden twice under two codes; it usually ripens %n day(s) before the middle lot.</source>
        <translation>
            <numerusform>%1 ist die Vergleichssorte, zweimal unter zwei Nummern versteckt; sie reift sonst %n Tag vor der mittleren Probe.</numerusform>
            <numerusform>%1 ist die Vergleichssorte, zweimal unter zwei Nummern versteckt; sie reift sonst %n Tage vor der mittleren Probe.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 was served before and comes again, for each taster&apos;s own noise; it has kept longer since.</source>
        <translation>%1 wurde schon vorgelegt und kommt wieder, für die eigene Streuung jedes Verkosters; es liegt seither länger.</translation>
    </message>
    <message numerus="yes">
        <source>%1 was served %n day(s) ago and comes again, for each taster&apos;s own noise; it has kept longer since.</source>
        <translation>
            <numerusform>%1 wurde vor %n Tag vorgelegt und kommt wieder, für die eigene Streuung jedes Verkosters; es liegt seither länger.</numerusform>
            <numerusform>%1 wurde vor %n Tagen vorgelegt und kommt wieder, für die eigene Streuung jedes Verkosters; es liegt seither länger.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Pause, water and a plain cracker after %n lot(s).</source>
        <translation>
            <numerusform>Pause, Wasser und ein einfacher Keks nach %n Probe.</numerusform>
            <numerusform>Pause, Wasser und ein einfacher Keks nach %n Proben.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is rotten in part: look at it, do not eat of it (patulin), also not around the rotten place.</source>
        <translation>%1 ist teils faul: nur ansehen, nichts davon essen (Patulin), auch nicht um die faule Stelle.</translation>
    </message>
    <message>
        <source>%1 is not in its prime: look only, no score; a score would say nothing of the tree.</source>
        <translation>%1 ist nicht auf der Höhe: nur ansehen, keine Note; sie würde nichts über den Baum sagen.</translation>
    </message>
    <message>
        <source>%1 lay on the ground: wash it; nothing for children, old people, anyone pregnant or ill. Fallen fruit is riper than its tree.</source>
        <translation>%1 lag am Boden: waschen; nichts für Kinder, Alte, Schwangere oder Kranke. Fallobst ist reifer als sein Baum.</translation>
    </message>
    <message>
        <source>%1 has insects in it: cut the places out; it ripened early and tastes of it.</source>
        <translation>In %1 sind Insekten: Stellen ausschneiden; es reifte zu früh und schmeckt danach.</translation>
    </message>
    <message>
        <source>%1 is pecked by birds: cut widely around it and wash, or leave it out.</source>
        <translation>%1 ist von Vögeln angepickt: weit ausschneiden und waschen oder weglassen.</translation>
    </message>
    <message>
        <source>%1 has no ripeness yet: without it the score speaks for little.</source>
        <translation>%1 hat noch keine Reife: Ohne sie sagt die Note wenig.</translation>
    </message>
    <message>
        <source>%1 is a single fruit: cut two to five and mix the slices, if there are.</source>
        <translation>%1 ist eine einzige Frucht: zwei bis fünf schneiden und die Schnitze mischen, wenn es sie gibt.</translation>
    </message>
    <message>
        <source>%1 is on the list more than once.</source>
        <translation>%1 steht mehrmals auf der Liste.</translation>
    </message>
    <message>
        <source>%1 tastes alone: nothing will be known of agreement.</source>
        <translation>%1 verkostet allein: Über Einigkeit wird man nichts wissen.</translation>
    </message>
    <message>
        <source>The lots were kept unequally long, %1 to %2: what kept longer is softer and less sour for that alone.</source>
        <translation>Die Proben lagen ungleich lang, %1 bis %2: Was länger lag, ist allein deshalb weicher und weniger sauer.</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>The lots were not kept in the same place: compare what lay together.</source>
        <translation>Die Proben lagen nicht am selben Ort: Vergleichen Sie, was beisammen lag.</translation>
    </message>
    <message>
        <source>Nobody wrote how long these were kept: %1.</source>
        <translation>Niemand schrieb, wie lange diese lagen: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n lots are many: six to nine are tasted well in half an hour.</source>
        <translation>
            <numerusform>%n Probe ist viel: Sechs bis neun lassen sich in einer halben Stunde gut verkosten.</numerusform>
            <numerusform>%n Proben sind viele: Sechs bis neun lassen sich in einer halben Stunde gut verkosten.</numerusform>
        </translation>
    </message>
    <message>
        <source>No benchmark is hidden among the lots: nothing will tell what a score is worth.</source>
        <translation>Keine Vergleichssorte ist unter den Proben versteckt: Nichts wird sagen, was eine Note wert ist.</translation>
    </message>
    <message>
        <source>The tasters know what they eat: hope scores too.</source>
        <translation>Die Verkoster wissen, was sie essen: Die Hoffnung benotet mit.</translation>
    </message>
    <message>
        <source>Leave out rotten fruit, also around the rotten place (patulin), and whatever iodine touched: nobody eats, feeds or composts that. Fallen and wormy fruit is washed and cut out, and not for children, old people, anyone pregnant or ill. Taste nothing within the waiting time of a spray. Who reacts to birch pollen may itch or swell from raw apple, pear, plum or cherry: say so before, stop at once; trouble breathing needs an ambulance. Do not chew pips or stones.</source>
        <translation>Faule Früchte bleiben weg, auch um die faule Stelle (Patulin), und alles, was Jod berührt hat: Das isst, verfüttert und kompostiert niemand. Fallobst und Wurmiges wird gewaschen und ausgeschnitten und ist nichts für Kinder, Alte, Schwangere oder Kranke. Nichts verkosten, solange die Wartezeit einer Spritzung läuft. Wer auf Birkenpollen anspricht, kann von rohem Apfel, rohen Birnen, Pflaumen oder Kirschen Jucken oder Schwellungen bekommen: vorher sagen, sofort aufhören; Atemnot braucht den Notarzt. Kerne und Steine nicht kauen.</translation>
    </message>
    <message>
        <source>Tasting sheet of %1</source>
        <translation>Verkostungsbogen von %1</translation>
    </message>
    <message>
        <source>Taste in this order, from top to bottom. Eat a slice with its skin; write 1 to 9, halves if you like. Water between the lots. Nobody speaks before the sheets are turned.</source>
        <translation>Verkosten Sie in dieser Reihenfolge, von oben nach unten. Einen Schnitz mit Schale essen; 1 bis 9 schreiben, gern auch halbe. Wasser zwischen den Proben. Niemand spricht, bevor die Bögen umgedreht sind.</translation>
    </message>
    <message>
        <source>Pause: water, a plain cracker, five minutes</source>
        <translation>Pause: Wasser, ein einfacher Keks, fünf Minuten</translation>
    </message>
    <message>
        <source>no.</source>
        <comment>heading of the place in the order</comment>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>code</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>1 to 9</source>
        <translation>1 bis 9</translation>
    </message>
    <message>
        <source>what you taste, in your own words</source>
        <translation>was Sie schmecken, in eigenen Worten</translation>
    </message>
    <message>
        <source>The best, by code:</source>
        <translation>Die besten, nach Nummer:</translation>
    </message>
    <message>
        <source>first</source>
        <translation>erste</translation>
    </message>
    <message>
        <source>second</source>
        <translation>zweite</translation>
    </message>
    <message>
        <source>third</source>
        <translation>dritte</translation>
    </message>
    <message>
        <source>Look only, no score: %1</source>
        <translation>Nur ansehen, keine Note: %1</translation>
    </message>
    <message>
        <source>spat it out</source>
        <translation>ausgespuckt</translation>
    </message>
    <message>
        <source>bad</source>
        <translation>schlecht</translation>
    </message>
    <message>
        <source>poor</source>
        <translation>schwach</translation>
    </message>
    <message>
        <source>rather poor</source>
        <translation>eher schwach</translation>
    </message>
    <message>
        <source>so so</source>
        <translation>so lala</translation>
    </message>
    <message>
        <source>rather good</source>
        <translation>recht gut</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>very good</source>
        <translation>sehr gut</translation>
    </message>
    <message>
        <source>none better</source>
        <translation>nichts besser</translation>
    </message>
    <message>
        <source>Key of the sitting</source>
        <translation>Schlüssel der Verkostung</translation>
    </message>
    <message>
        <source>Only for whoever cuts and serves. Fold it, and keep it until every sheet is entered.</source>
        <translation>Nur für den, der schneidet und vorlegt. Falten und aufheben, bis alle Bögen eingetragen sind.</translation>
    </message>
    <message>
        <source>fruit</source>
        <translation>Frucht</translation>
    </message>
    <message>
        <source>where</source>
        <translation>wo</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>Who gets what, in this order</source>
        <translation>Wer was bekommt, in dieser Reihenfolge</translation>
    </message>
    <message>
        <source>%1 is the benchmark, hidden twice under two codes: how far a taster&apos;s two scores lie apart shows what a score is worth.</source>
        <translation>%1 ist die Vergleichssorte, zweimal unter zwei Nummern versteckt: Wie weit die zwei Noten eines Verkosters auseinanderliegen, zeigt, was eine Note wert ist.</translation>
    </message>
    <message>
        <source>Codes differ in two digits or more, none reads as a number upside down, none was used lately. Drawn with number %1.</source>
        <translation>Die Nummern unterscheiden sich in mindestens zwei Ziffern, keine liest sich auf dem Kopf als Zahl, keine war kürzlich vergeben. Ausgelost mit der Zahl %1.</translation>
    </message>
    <message>
        <source>Drawn with number %1.</source>
        <translation>Ausgelost mit der Zahl %1.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PlannedPage</name>
    <message>
        <source>Open the key …</source>
        <translation>Schlüssel öffnen …</translation>
    </message>
    <message>
        <source>Shows what stood behind the codes.</source>
        <translation>Zeigt, was hinter den Nummern stand.</translation>
    </message>
    <message>
        <source>Why the key is opened early</source>
        <translation>Warum der Schlüssel vorzeitig geöffnet wird</translation>
    </message>
    <message>
        <source>why all the same, then Enter</source>
        <translation>warum trotzdem, dann Eingabe</translation>
    </message>
    <message>
        <source>Whose sheet is typed</source>
        <translation>Wessen Bogen eingetragen wird</translation>
    </message>
    <message>
        <source>The sheet as it is typed</source>
        <translation>Der Bogen, wie er eingetragen wird</translation>
    </message>
    <message>
        <source>7, 7.5 or 7h, then Enter goes down; Tab goes to the words. A line that was not tasted: write so in its words.</source>
        <translation>7, 7,5 oder 7h, dann geht Eingabe nach unten; Tab geht zu den Worten. Nicht verkostet: Schreiben Sie es in die Worte der Zeile.</translation>
    </message>
    <message>
        <source>The best ones by code, best first</source>
        <translation>Die besten nach Nummer, die beste zuerst</translation>
    </message>
    <message>
        <source>up to three codes, best first, then Enter: 417 532 286</source>
        <translation>bis zu drei Nummern, die beste zuerst, dann Eingabe: 417 532 286</translation>
    </message>
    <message>
        <source>&amp;Best ones</source>
        <translation>&amp;Die besten</translation>
    </message>
    <message>
        <source>The key is opened early with a reason.</source>
        <translation>Vorzeitig wird der Schlüssel mit einem Grund geöffnet.</translation>
    </message>
    <message>
        <source>Type why, then Enter; it is kept with the sitting.</source>
        <translation>Schreiben Sie warum, dann Eingabe; es bleibt bei der Verkostung.</translation>
    </message>
    <message>
        <source>%1 %2/%3</source>
        <translation>%1 %2/%3</translation>
    </message>
    <message>
        <source>the sheet of %1</source>
        <translation>der Bogen von %1</translation>
    </message>
    <message>
        <source>Planned sitting</source>
        <translation>Geplante Verkostung</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Sheets and key to print …</source>
        <translation>Bögen und Schlüssel drucken …</translation>
    </message>
    <message>
        <source>Type the sheets</source>
        <translation>Bögen eintragen</translation>
    </message>
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
            <numerusform>%n Probe unter Nummer, %1</numerusform>
            <numerusform>%n Proben unter Nummern, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1. Every sheet is in: the key may be opened.</source>
        <translation>%1. Alle Bögen sind eingetragen: Der Schlüssel darf geöffnet werden.</translation>
    </message>
    <message>
        <source>%1. The key is sealed. Lines still empty: %2.</source>
        <translation>%1. Der Schlüssel ist versiegelt. Noch leere Zeilen: %2.</translation>
    </message>
    <message>
        <source>somebody</source>
        <translation>jemand</translation>
    </message>
    <message>
        <source>%1 is none of the codes here, or it is too many.</source>
        <translation>%1 ist keine der Nummern hier oder eine zu viel.</translation>
    </message>
    <message>
        <source>Type up to three different codes of this sheet, best first.</source>
        <translation>Schreiben Sie bis zu drei verschiedene Nummern dieses Bogens, die beste zuerst.</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) are still empty and would be left out.</source>
        <translation>
            <numerusform>%n Zeile ist noch leer und fiele weg.</numerusform>
            <numerusform>%n Zeilen sind noch leer und fielen weg.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PreviewPane</name>
    <message>
        <source>%1 (%2)</source>
        <comment>what, key</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Seite davor</translation>
    </message>
    <message>
        <source>Page Up</source>
        <translation>Bild auf</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <source>Page Down</source>
        <translation>Bild ab</translation>
    </message>
    <message>
        <source>Zoom out</source>
        <translation>Verkleinern</translation>
    </message>
    <message>
        <source>Zoom in</source>
        <translation>Vergrößern</translation>
    </message>
    <message>
        <source>True size</source>
        <translation>Wahre Größe</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>Ganze Seite</translation>
    </message>
    <message>
        <source>no page</source>
        <translation>keine Seite</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Page width</source>
        <translation>Seitenbreite</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::PrintButtons</name>
    <message>
        <source>Save PDF</source>
        <translation>PDF sichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken …</translation>
    </message>
    <message>
        <source>Save P&amp;DF…</source>
        <translation>PDF &amp;sichern …</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>In the printer&apos;s dialog choose actual size (100 %), not &quot;fit to page&quot;.</source>
        <translation>Im Druckdialog Originalgröße wählen (100 %), nicht „an Seite anpassen“.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Gesichert als %1.</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>An den Drucker geschickt.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::RaisingPanel</name>
    <message>
        <source>Genes one parent carries once</source>
        <translation>Gene, die ein Elter einmal trägt</translation>
    </message>
    <message>
        <source>Genes both carry once, one copy enough</source>
        <translation>Gene, die beide einmal tragen, eine Kopie genügt</translation>
    </message>
    <message>
        <source>Genes both carry once, two copies needed</source>
        <translation>Gene, die beide einmal tragen, zwei Kopien nötig</translation>
    </message>
    <message>
        <source>Plants wanted</source>
        <translation>Gewünschte Pflanzen</translation>
    </message>
    <message>
        <source>Seedlings seen with it all</source>
        <translation>Sämlinge mit allem</translation>
    </message>
    <message>
        <source>Seedlings seen without</source>
        <translation>Sämlinge ohne</translation>
    </message>
    <message>
        <source>%1 % sure</source>
        <translation>zu %1 % sicher</translation>
    </message>
    <message>
        <source>How sure to be</source>
        <translation>Wie sicher es sein soll</translation>
    </message>
    <message>
        <source>Seedlings and seeds to raise</source>
        <translation>Nötige Sämlinge und Samen</translation>
    </message>
    <message>
        <source>Whether the counts fit</source>
        <translation>Ob die Zählung passt</translation>
    </message>
    <message>
        <source>Seen with it all</source>
        <translation>Gezählt mit allem</translation>
    </message>
    <message>
        <source>without</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>Genes of one parent (1 in 2)</source>
        <translation>Gene eines Elters (1 von 2)</translation>
    </message>
    <message>
        <source>Of both, one copy (3 in 4)</source>
        <translation>Beider, eine Kopie (3 von 4)</translation>
    </message>
    <message>
        <source>Of both, two copies (1 in 4)</source>
        <translation>Beider, zwei Kopien (1 von 4)</translation>
    </message>
    <message>
        <source>%1 genes at once: no more than %2 can be reckoned with, and already 8 genes of which both copies are needed meet in 1 of 65,536 seedlings. Lower the numbers above.</source>
        <translation>%1 Gene auf einmal: mit mehr als %2 lässt sich nicht rechnen, und schon 8 Gene, von denen beide Kopien nötig sind, treffen in 1 von 65.536 Sämlingen zusammen. Bitte oben kleinere Zahlen wählen.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::RecordList</name>
    <message>
        <source>What can be done with this record</source>
        <translation>Was mit diesem Eintrag geschehen kann</translation>
    </message>
    <message>
        <source>Void this record (Delete)</source>
        <translation>Diesen Eintrag stornieren (Entf)</translation>
    </message>
    <message>
        <source>Void %1 …</source>
        <translation>%1 stornieren …</translation>
    </message>
    <message>
        <source>Show all %1</source>
        <translation>Alle %1 zeigen</translation>
    </message>
    <message>
        <source>Put the condition right (F2), void (Delete)</source>
        <translation>Zustand berichtigen (F2), für ungültig erklären (Entf)</translation>
    </message>
    <message>
        <source>Put the condition of the fruit right …</source>
        <translation>Den Zustand der Frucht berichtigen …</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::RowMap</name>
    <message>
        <source>Map of the rows</source>
        <translation>Karte der Reihen</translation>
    </message>
    <message>
        <source>Arrow keys move along and across the rows; type a digit or / to find a tree.</source>
        <translation>Pfeiltasten gehen in der Reihe und quer dazu; eine Ziffer oder / sucht einen Baum.</translation>
    </message>
    <message>
        <source>Along the rows</source>
        <translation>Die Reihen entlang</translation>
    </message>
    <message>
        <source>Across the rows</source>
        <translation>Quer zu den Reihen</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::RowsPlace</name>
    <message>
        <source>Map of the rows</source>
        <translation>Karte der Reihen</translation>
    </message>
    <message>
        <source>List of the trees</source>
        <translation>Liste der Bäume</translation>
    </message>
    <message>
        <source>Colour by</source>
        <translation>Farbe nach</translation>
    </message>
    <message>
        <source>Show the trees as a list (F3)</source>
        <translation>Die Bäume als Liste zeigen (F3)</translation>
    </message>
    <message>
        <source>Show as list</source>
        <translation>Als Liste zeigen</translation>
    </message>
    <message>
        <source>by tape</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>Space the trees by their tape distance instead of evenly</source>
        <translation>Die Bäume nach dem Maßband setzen statt gleichmäßig</translation>
    </message>
    <message>
        <source>Colour:</source>
        <translation>Farbe:</translation>
    </message>
    <message>
        <source>No rows yet</source>
        <translation>Noch keine Reihen</translation>
    </message>
    <message>
        <source>Your rows and trees will stand here. Bring in a table of your trees, pasted or from a file, with row and place in columns.</source>
        <translation>Hier werden die Reihen und Bäume stehen. Eine Tabelle der Bäume übernehmen, eingefügt oder aus einer Datei, mit Spalten für Reihe und Platz.</translation>
    </message>
    <message>
        <source>Bring in a table of trees</source>
        <translation>Tabelle der Bäume übernehmen</translation>
    </message>
    <message>
        <source>%1 of %2 trees shown</source>
        <translation>%1 von %2 Bäumen gezeigt</translation>
    </message>
    <message>
        <source>%1 is no command here. To find a code that begins with a letter, press / or Ctrl+K first.</source>
        <translation>%1 ist hier kein Befehl. Um einen Code zu finden, der mit einem Buchstaben beginnt, zuerst / oder Strg+K drücken.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ScoreTable</name>
    <message>
        <source>fair, prime, fresh</source>
        <translation>fair, genussreif, frisch</translation>
    </message>
    <message>
        <source>Its scores, raw and corrected</source>
        <translation>Seine Noten, roh und berichtigt</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>taster</source>
        <translation>Verkoster</translation>
    </message>
    <message>
        <source>fruit and moment</source>
        <translation>Frucht und Umstände</translation>
    </message>
    <message>
        <source>as eaten</source>
        <translation>wie gegessen</translation>
    </message>
    <message>
        <source>fruit</source>
        <translation>Frucht</translation>
    </message>
    <message>
        <source>day and year</source>
        <translation>Tag und Jahr</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>berichtigt</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SeasonPlace</name>
    <message>
        <source>Crop year</source>
        <translation>Erntejahr</translation>
    </message>
    <message>
        <source>Species of the benchmarks</source>
        <translation>Obstart der Vergleichssorten</translation>
    </message>
    <message>
        <source>Season chart</source>
        <translation>Bild der Saison</translation>
    </message>
    <message>
        <source>Crop &amp;year</source>
        <translation>Ernte&amp;jahr</translation>
    </message>
    <message>
        <source>&amp;Species</source>
        <translation>Obsta&amp;rt</translation>
    </message>
    <message>
        <source>Harvest windows and liking</source>
        <translation>Erntefenster und Gefallen</translation>
    </message>
    <message>
        <source>Walk marks and tastings of this crop year will fill this chart. Stand at a tree and press W for a walk mark, B for a bite.</source>
        <translation>Reifezeichen und Verkostungen dieses Erntejahres füllen dieses Bild. Am Baum W für ein Reifezeichen drücken, B für eine Bissprobe.</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>liking as eaten (1 to 9)</source>
        <translation>Gefallen wie gegessen (1 bis 9)</translation>
    </message>
    <message>
        <source>benchmarks</source>
        <translation>Vergleichssorten</translation>
    </message>
    <message>
        <source>selected</source>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>bar to beat: the week&apos;s best benchmark</source>
        <translation>die Latte: beste Vergleichssorte der Woche</translation>
    </message>
    <message>
        <source>fair lot</source>
        <translation>faire Probe</translation>
    </message>
    <message>
        <source>unfair or unclear lot</source>
        <translation>unfaire oder unklare Probe</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>still green</source>
        <translation>noch grün</translation>
    </message>
    <message>
        <source>seen ripe</source>
        <translation>reif gesehen</translation>
    </message>
    <message>
        <source>over</source>
        <translation>überreif</translation>
    </message>
    <message>
        <source>scores</source>
        <translation>Wertungen</translation>
    </message>
    <message>
        <source>Benchmarks only. Select trees on the map to see them beside.</source>
        <translation>Nur Vergleichssorten. Auf der Karte gewählte Bäume stehen daneben.</translation>
    </message>
    <message>
        <source>Beside the benchmarks: %1</source>
        <translation>Neben den Vergleichssorten: %1</translation>
    </message>
    <message>
        <source>all species</source>
        <translation>alle Obstarten</translation>
    </message>
    <message>
        <source>%1 (usually first ripe about %2)</source>
        <translation>%1 (gewöhnlich reif um den %2)</translation>
    </message>
    <message>
        <source>%1 (never seen ripe)</source>
        <translation>%1 (nie reif gesehen)</translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n weiterer</numerusform>
            <numerusform>%n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing walked or tasted in %1 of: %2. W at the tree marks what you see, B is a bite.</source>
        <translation>In %1 nicht begangen und nicht gekostet: %2. W am Baum hält fest, was zu sehen ist, B ist eine Bissprobe.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SettleView</name>
    <message>
        <source>Tastings that could be held</source>
        <translation>Verkostungen, die man abhalten könnte</translation>
    </message>
    <message>
        <source>Nothing to settle: there is no rung of a ladder that its verdict hangs on.</source>
        <translation>Nichts zu klären: An keiner Sprosse einer Leiter hängt sein Urteil.</translation>
    </message>
    <message>
        <source>tasting</source>
        <translation>Verkostung</translation>
    </message>
    <message>
        <source>scores</source>
        <translation>Noten</translation>
    </message>
    <message>
        <source>chance moves by</source>
        <translation>P rückt um</translation>
    </message>
    <message>
        <source>changes the verdict</source>
        <translation>ändert das Urteil</translation>
    </message>
    <message>
        <source>error after, points</source>
        <translation>Fehler danach, Punkte</translation>
    </message>
    <message>
        <source>reliability after</source>
        <translation>Verlässlichkeit danach</translation>
    </message>
    <message>
        <source>%1 on average</source>
        <translation>%1 im Mittel</translation>
    </message>
    <message>
        <source>Better than %1 today: %2.</source>
        <translation>Heute besser als %1: %2.</translation>
    </message>
    <message>
        <source>The one sitting that tells most: %1. It moves that chance by %2 on average.</source>
        <translation>Am meisten sagt: %1. Das verschiebt diese Wahrscheinlichkeit im Mittel um %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n crop year(s): %1</source>
        <translation>
            <numerusform>%n Erntejahr: %1</numerusform>
            <numerusform>%n Erntejahre: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Chance to be sure enough of standing above %1 to be named, tasted beside it by three tasters once a crop year: %2.</source>
        <translation>Aussicht, für einen Namen sicher genug über %1 zu stehen, einmal je Erntejahr von drei Verkostern daneben verkostet: %2.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SheetModel</name>
    <message>
        <source>&quot;%1&quot; is none of the letters here.</source>
        <translation>„%1“ gehört nicht zu den Buchstaben hier.</translation>
    </message>
    <message>
        <source>Type one of: %1.</source>
        <translation>Einen davon eingeben: %1.</translation>
    </message>
    <message>
        <source>code, name or row/place; bought fruit with its source: Ash Tarn @ farm shop</source>
        <translation>Kennung, Name oder Reihe/Platz; gekauftes Obst mit Herkunft: Ash Tarn @ Hofladen</translation>
    </message>
    <message>
        <source>liking 1 to 9 (7, 7.5 or 7h), verdict (x cull, - no reason to keep, ? again, + watch, ++ back up, P parent, N name), then words</source>
        <translation>Gefallen 1 bis 9 (7, 7.5 oder 7h), Urteil (x verwerfen, - nichts spricht dafür, ? noch einmal, + beobachten, ++ absichern, P Elter, N Name), dann Worte</translation>
    </message>
    <message>
        <source>%1 (bought)</source>
        <translation>%1 (gekauft)</translation>
    </message>
    <message>
        <source>%1 (from %2)</source>
        <translation>%1 (von %2)</translation>
    </message>
    <message>
        <source>%1 (no tree in the book)</source>
        <translation>%1 (kein Baum im Buch)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>This row does not say which fruit it was.</source>
        <translation>Diese Zeile sagt nicht, welche Frucht es war.</translation>
    </message>
    <message>
        <source>Type a code, a name or row/place in its first cell.</source>
        <translation>In die erste Zelle Kennung, Namen oder Reihe/Platz eingeben.</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>fruit</source>
        <translation>Frucht</translation>
    </message>
    <message>
        <source>origin</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>ripeness</source>
        <translation>Reife</translation>
    </message>
    <message>
        <source>soundness</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>days kept</source>
        <translation>Tage im Lager</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SheetSection</name>
    <message>
        <source>folded</source>
        <translation>eingeklappt</translation>
    </message>
    <message>
        <source>unfolded</source>
        <translation>ausgeklappt</translation>
    </message>
    <message>
        <source>Unfold</source>
        <translation>Ausklappen</translation>
    </message>
    <message>
        <source>Fold</source>
        <translation>Einklappen</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SittingListModel</name>
    <message numerus="yes">
        <source>%n bite(s) in the row</source>
        <translation>
            <numerusform>%n Bissprobe in der Reihe</numerusform>
            <numerusform>%n Bissproben in der Reihe</numerusform>
        </translation>
    </message>
    <message>
        <source>sitting</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>lots</source>
        <translation>Proben</translation>
    </message>
    <message>
        <source>tasters</source>
        <translation>Verkoster</translation>
    </message>
    <message>
        <source>tasted</source>
        <translation>verkostet</translation>
    </message>
    <message>
        <source>blind</source>
        <translation>blind</translation>
    </message>
    <message>
        <source>sighted</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <comment>lots, tasters, how tasted</comment>
        <translation>%1, %2, %3</translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n Probe</numerusform>
            <numerusform>%n Proben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taster(s)</source>
        <translation>
            <numerusform>%n Verkoster</numerusform>
            <numerusform>%n Verkoster</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SittingPage</name>
    <message>
        <source>Lots and tasters of the sitting</source>
        <translation>Proben und Verkoster der Verkostung</translation>
    </message>
    <message>
        <source>Score no longer counts …</source>
        <translation>Wertung zählt nicht mehr …</translation>
    </message>
    <message>
        <source>Del on a score. It stays in the history, with your reason.</source>
        <translation>Entf auf einer Wertung. Sie bleibt in der Geschichte, mit dem Grund.</translation>
    </message>
    <message>
        <source>Why the score no longer counts</source>
        <translation>Warum die Wertung nicht mehr zählt</translation>
    </message>
    <message>
        <source>why it no longer counts, then Enter</source>
        <translation>warum sie nicht mehr zählt, dann Eingabe</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n Probe</numerusform>
            <numerusform>%n Proben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n taster(s)</source>
        <translation>
            <numerusform>%n Verkoster</numerusform>
            <numerusform>%n Verkoster</numerusform>
        </translation>
    </message>
    <message>
        <source>bites in the row</source>
        <translation>Bissproben in der Reihe</translation>
    </message>
    <message>
        <source>at a table</source>
        <translation>am Tisch</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4</source>
        <translation>%1, %2, %3, %4</translation>
    </message>
    <message>
        <source>No lot was tasted by two people, so nothing is known of how far tasters are apart.</source>
        <translation>Keine Probe kosteten zwei; darum ist nicht bekannt, wie weit die Verkoster auseinander liegen.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message numerus="yes">
        <source>Tasters were %1 points apart (standard deviation within a lot, %n lot(s)). Against the mean of the same lots: %2.</source>
        <translation>
            <numerusform>Die Verkoster lagen %1 Punkte auseinander (Standardabweichung innerhalb der Probe, %n Probe). Gegen das Mittel derselben Proben: %2.</numerusform>
            <numerusform>Die Verkoster lagen %1 Punkte auseinander (Standardabweichung innerhalb der Probe, %n Proben). Gegen das Mittel derselben Proben: %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 was served %n time(s), but nobody gave it two likings.</source>
        <translation>
            <numerusform>%1 stand %n-mal auf dem Tisch, aber niemand gab zweimal ein Gefallen an.</numerusform>
            <numerusform>%1 stand %n-mal auf dem Tisch, aber niemand gab zweimal ein Gefallen an.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 was served %n time(s): the same taster differed by %2 points on average, %3 at most.</source>
        <translation>
            <numerusform>%1 stand %n-mal auf dem Tisch: Derselbe Verkoster wich im Mittel um %2 Punkte ab, höchstens um %3.</numerusform>
            <numerusform>%1 stand %n-mal auf dem Tisch: Derselbe Verkoster wich im Mittel um %2 Punkte ab, höchstens um %3.</numerusform>
        </translation>
    </message>
    <message>
        <source>No longer counts: %1 for %2 (%3), because: %4</source>
        <translation>Zählt nicht mehr: %1 für %2 (%3), Grund: %4</translation>
    </message>
    <message>
        <source>words</source>
        <translation>Worte</translation>
    </message>
    <message>
        <source>A score is voided with a reason.</source>
        <translation>Eine Wertung wird mit einem Grund storniert.</translation>
    </message>
    <message>
        <source>Type why it no longer counts, then Enter.</source>
        <translation>Eingeben, warum sie nicht mehr zählt, dann die Eingabetaste.</translation>
    </message>
    <message>
        <source>Likings as eaten, 1 to 9, not corrected for condition. F2 or double click puts a score right (7.5 + crisp), and a condition.</source>
        <translation>Gefallen wie gegessen, 1 bis 9, nicht um den Zustand berichtigt. F2 oder Doppelklick berichtigt eine Wertung (7,5 + knackig) oder einen Zustand.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SittingPapers</name>
    <message>
        <source>Paper size</source>
        <translation>Papiergröße</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Key, for whoever serves</source>
        <translation>Schlüssel, für den, der vorlegt</translation>
    </message>
    <message>
        <source>It is not shown here, so that you may taste blind.</source>
        <translation>Er wird hier nicht gezeigt, damit Sie blind verkosten können.</translation>
    </message>
    <message>
        <source>Tasting sheets %1</source>
        <translation>Verkostungsbögen %1</translation>
    </message>
    <message>
        <source>benchmark, twice</source>
        <translation>Vergleichssorte, zweimal</translation>
    </message>
    <message>
        <source>served again</source>
        <translation>wieder vorgelegt</translation>
    </message>
    <message>
        <source>Tasting key %1</source>
        <translation>Verkostungsschlüssel %1</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SittingResult</name>
    <message>
        <source>%1 points (95 %: %2 to %3)</source>
        <translation>%1 Punkte (95 %: %2 bis %3)</translation>
    </message>
    <message>
        <source>p &lt; %1</source>
        <translation>p &lt; %1</translation>
    </message>
    <message>
        <source>p = %1</source>
        <translation>p = %1</translation>
    </message>
    <message>
        <source>The lots, the best liked first</source>
        <translation>Die Proben, die beliebteste zuerst</translation>
    </message>
    <message>
        <source>Do the tasters agree?</source>
        <translation>Sind sich die Verkoster einig?</translation>
    </message>
    <message>
        <source>What is a score worth?</source>
        <translation>Was ist eine Note wert?</translation>
    </message>
    <message>
        <source>Then: the lots</source>
        <translation>Dann: die Proben</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>title and day of a sitting</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The key was opened on %1 before every sheet was in: %2</source>
        <translation>Der Schlüssel wurde am %1 geöffnet, bevor alle Bögen eingetragen waren: %2</translation>
    </message>
    <message>
        <source>They put the lots in much the same order: Kendall&apos;s W %1 of 1, %2 (%3, %4).</source>
        <translation>Sie reihen die Proben recht gleich: Kendalls W %1 von 1, %2 (%3, %4).</translation>
    </message>
    <message>
        <source>Their orders agree no better than chance may do: Kendall&apos;s W %1 of 1, %2 (%3, %4).</source>
        <translation>Ihre Reihungen stimmen nicht besser überein, als es der Zufall kann: Kendalls W %1 von 1, %2 (%3, %4).</translation>
    </message>
    <message numerus="yes">
        <source>%n taster(s)</source>
        <translation>
            <numerusform>%n Verkoster</numerusform>
            <numerusform>%n Verkoster</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n Probe</numerusform>
            <numerusform>%n Proben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s) are left out, since not all scored them.</source>
        <translation>
            <numerusform>%n Probe bleibt weg, weil nicht alle sie benotet haben.</numerusform>
            <numerusform>%n Proben bleiben weg, weil nicht alle sie benotet haben.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Levels against the mean of the same lots: %1.</source>
        <translation>Höhe gegen das Mittel derselben Proben: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%1 came twice: a taster&apos;s own scores of it scatter by %2 (standard deviation of one score, %n taster(s)), %3 points apart at most. Its mean is %4 of 9.</source>
        <translation>
            <numerusform>%1 kam zweimal: Die eigenen Noten eines Verkosters dafür streuen um %2 (Standardabweichung einer Note, %n Verkoster), höchstens %3 Punkte auseinander. Das Mittel ist %4 von 9.</numerusform>
            <numerusform>%1 kam zweimal: Die eigenen Noten eines Verkosters dafür streuen um %2 (Standardabweichung einer Note, %n Verkoster), höchstens %3 Punkte auseinander. Das Mittel ist %4 von 9.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was served twice and scored twice by the same taster, so nobody knows.</source>
        <translation>Nichts wurde zweimal vorgelegt und vom selben Verkoster zweimal benotet; also weiß es niemand.</translation>
    </message>
    <message>
        <source>fruit</source>
        <translation>Frucht</translation>
    </message>
    <message>
        <source>1 to 9, with its interval</source>
        <translation>1 bis 9, mit Spanne</translation>
    </message>
    <message>
        <source>mean of 9 (95 %)</source>
        <translation>Mittel von 9 (95 %)</translation>
    </message>
    <message>
        <source>among the best</source>
        <translation>unter den besten</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>fruit and its code</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>named %1×, first %2×</source>
        <translation>%1× genannt, %2× erste</translation>
    </message>
    <message>
        <source>As eaten, each taster drawn to the same level, not corrected for condition.</source>
        <translation>Wie gegessen, jeder Verkoster auf dieselbe Höhe gebracht, nicht nach Zustand berichtigt.</translation>
    </message>
    <message>
        <source>Two means closer than %1 points cannot be told apart.</source>
        <translation>Zwei Mittel, die näher als %1 Punkte beisammen liegen, lassen sich nicht unterscheiden.</translation>
    </message>
    <message>
        <source>Scatter of a single score: %1.</source>
        <translation>Streuung einer einzelnen Note: %1.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SittingSheet</name>
    <message>
        <source>What the sitting is called</source>
        <translation>Wie die Verkostung heißt</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>darf leer bleiben</translation>
    </message>
    <message>
        <source>Whether the tasters knew what they ate</source>
        <translation>Ob die Verkoster wussten, was sie aßen</translation>
    </message>
    <message>
        <source>nobody knew which tree a piece came from</source>
        <translation>niemand wusste, von welchem Baum ein Stück kam</translation>
    </message>
    <message>
        <source>the trees were known</source>
        <translation>die Bäume waren bekannt</translation>
    </message>
    <message>
        <source>Sheet of the sitting</source>
        <translation>Blatt der Verkostung</translation>
    </message>
    <message>
        <source>Keep (Ctrl+Enter)</source>
        <translation>Sichern (Strg+Eingabe)</translation>
    </message>
    <message>
        <source>Later (Esc)</source>
        <translation>Später (Esc)</translation>
    </message>
    <message>
        <source>Empty the sheet</source>
        <translation>Blatt leeren</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Called</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Tasted</source>
        <translation>Verkostet</translation>
    </message>
    <message>
        <source>Tasters</source>
        <translation>Verkoster</translation>
    </message>
    <message>
        <source>Leave out mouldy or rotten fruit, and keep fallen or wormy fruit away from children, old people, anyone pregnant or ill; wash what you serve. Taste nothing before the waiting time of a spray is over. Ask beforehand who reacts to birch pollen: raw apple, pear or plum can make mouth and throat itch or swell; whoever has trouble breathing needs an ambulance. Do not chew pips or stones.</source>
        <translation>Schimmliges oder faules Obst weglassen; Fallobst und wurmiges Obst nicht für Kinder, Alte, Schwangere und Kranke; waschen, was auf den Tisch kommt. Nichts kosten, bevor die Wartezeit einer Spritzung um ist. Vorher fragen, wer auf Birkenpollen reagiert: Roher Apfel, Birne oder Pflaume kann Mund und Hals jucken oder schwellen lassen; wer schlecht Luft bekommt, braucht den Notarzt. Kerne und Steine nicht in Mengen zerkauen.</translation>
    </message>
    <message>
        <source>New sitting</source>
        <translation>Neue Verkostung</translation>
    </message>
    <message>
        <source>⚠ %1: %2</source>
        <translation>⚠ %1: %2</translation>
    </message>
    <message>
        <source>%1. A &quot; repeats what stands above.</source>
        <translation>%1. Ein &quot; wiederholt, was darüber steht.</translation>
    </message>
    <message>
        <source>Line %1, %2: %3</source>
        <translation>Zeile %1, %2: %3</translation>
    </message>
    <message>
        <source>The sitting has no day yet.</source>
        <translation>Die Verkostung hat noch keinen Tag.</translation>
    </message>
    <message>
        <source>Type it as you know it: 22 Aug, week 34, late August.</source>
        <translation>Eingeben, was bekannt ist: 22.8., Woche 34, Ende August.</translation>
    </message>
    <message>
        <source>There is no fruit on the sheet yet.</source>
        <translation>Noch steht kein Obst auf dem Blatt.</translation>
    </message>
    <message>
        <source>Type a code, a name or row/place in the first cell.</source>
        <translation>In die erste Zelle Kennung, Namen oder Reihe/Platz eingeben.</translation>
    </message>
    <message>
        <source>Day as written: %1 (%2 to %3)</source>
        <translation>Tag wie geschrieben: %1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>The sheet is empty.</source>
        <translation>Das Blatt ist leer.</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Zurückholen</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SittingTableModel</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>nothing written</source>
        <translation>nichts geschrieben</translation>
    </message>
    <message>
        <source>fruit</source>
        <translation>Frucht</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>fair test?</source>
        <translation>faire Probe?</translation>
    </message>
    <message>
        <source>mean of 9</source>
        <translation>Mittel von 9</translation>
    </message>
    <message>
        <source>range</source>
        <translation>Spanne</translation>
    </message>
    <message>
        <source>n</source>
        <translation>n</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::SittingView</name>
    <message>
        <source>What of the sitting is shown</source>
        <translation>Was von der Verkostung gezeigt wird</translation>
    </message>
    <message>
        <source>what it says</source>
        <translation>was sie sagt</translation>
    </message>
    <message>
        <source>scores and conditions</source>
        <translation>Noten und Zustände</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::StartPage</name>
    <message>
        <source>Pipwright</source>
        <translation>Pipwright</translation>
    </message>
    <message>
        <source>The book of your seedlings: what stands where, what it came from, when it ripens, how it tastes, and what to do next.</source>
        <translation>Das Buch der Sämlinge: was wo steht, woher es kommt, wann es reift, wie es schmeckt und was als Nächstes zu tun ist.</translation>
    </message>
    <message>
        <source>Look at the sample orchard</source>
        <translation>Das Musterbuch ansehen</translation>
    </message>
    <message>
        <source>An invented breeder&apos;s book of fourteen years, yours to try things on.</source>
        <translation>Das erfundene Buch einer Züchterin aus vierzehn Jahren, zum Ausprobieren.</translation>
    </message>
    <message>
        <source>Begin a new book</source>
        <translation>Ein neues Buch anfangen</translation>
    </message>
    <message>
        <source>One file for everything; bring in a table of your trees next.</source>
        <translation>Eine Datei für alles; als Nächstes eine Tabelle der Bäume übernehmen.</translation>
    </message>
    <message>
        <source>Open a book</source>
        <translation>Buch öffnen</translation>
    </message>
    <message>
        <source>A file that ends in .orchard.</source>
        <translation>Eine Datei, die auf .orchard endet.</translation>
    </message>
    <message>
        <source>Lately open</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::StateForm</name>
    <message>
        <source>State of the plant</source>
        <translation>Zustand der Pflanze</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>why, as voles, mower, fire blight</source>
        <translation>warum, etwa Wühlmaus, Mäher, Feuerbrand</translation>
    </message>
    <message>
        <source>Whether %1 grows</source>
        <translation>Ob %1 wächst</translation>
    </message>
    <message>
        <source>No state is chosen.</source>
        <translation>Kein Zustand gewählt.</translation>
    </message>
    <message>
        <source>Press the letter of a state.</source>
        <translation>Den Buchstaben eines Zustandes drücken.</translation>
    </message>
    <message>
        <source>It has no plant in the orchard.</source>
        <translation>Es hat keine Pflanze im Obstgarten.</translation>
    </message>
    <message>
        <source>Choose a tree that stands.</source>
        <translation>Einen Baum wählen, der steht.</translation>
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
    <name>pipwright::ui::SwapForm</name>
    <message>
        <source>The other tree</source>
        <translation>Der andere Baum</translation>
    </message>
    <message>
        <source>code or row/place of the other tree</source>
        <translation>Kennung oder Reihe/Platz des anderen Baumes</translation>
    </message>
    <message>
        <source>Each plant becomes what the other was held to be. Records stay with the plant they were taken at.</source>
        <translation>Jede Pflanze wird das, wofür die andere galt. Einträge bleiben bei der Pflanze, an der sie entstanden.</translation>
    </message>
    <message>
        <source>%1 carries the tag of another tree</source>
        <translation>%1 trägt das Schild eines anderen Baumes</translation>
    </message>
    <message>
        <source>That is this tree itself.</source>
        <translation>Das ist dieser Baum selbst.</translation>
    </message>
    <message>
        <source>Type the code of the other tree.</source>
        <translation>Die Kennung des anderen Baumes eingeben.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TasterRow</name>
    <message>
        <source>Tasters</source>
        <translation>Verkoster</translation>
    </message>
    <message>
        <source>somebody new, then Enter</source>
        <translation>jemand Neues, dann Eingabe</translation>
    </message>
    <message>
        <source>Name of a new taster</source>
        <translation>Name eines neuen Verkosters</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TastingsPlace</name>
    <message>
        <source>Which sittings are listed</source>
        <translation>Welche Verkostungen in der Liste stehen</translation>
    </message>
    <message>
        <source>sittings</source>
        <translation>Tisch</translation>
    </message>
    <message>
        <source>at a table</source>
        <translation>am Tisch</translation>
    </message>
    <message>
        <source>bites</source>
        <translation>Bissproben</translation>
    </message>
    <message>
        <source>in the row, day by day</source>
        <translation>in der Reihe, Tag für Tag</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beides</translation>
    </message>
    <message>
        <source>Only sittings with this tree or title</source>
        <translation>Nur Verkostungen mit diesem Baum oder Titel</translation>
    </message>
    <message>
        <source>Sittings</source>
        <translation>Verkostungen</translation>
    </message>
    <message>
        <source>No sitting yet</source>
        <translation>Noch keine Verkostung</translation>
    </message>
    <message>
        <source>A sitting is a table of fruit and tasters. Write down one that was held; bites are taken in the row with B on a tree.</source>
        <translation>Eine Verkostung ist ein Tisch voll Obst mit seinen Verkostern. Hier wird eingetragen, was stattgefunden hat; Bissproben kommen in der Reihe dazu, mit B auf einem Baum.</translation>
    </message>
    <message>
        <source>New sitting (Ctrl+E)</source>
        <translation>Neue Verkostung (Strg+E)</translation>
    </message>
    <message>
        <source>Go on with the sitting (Ctrl+E)</source>
        <translation>Verkostung fortsetzen (Strg+E)</translation>
    </message>
    <message>
        <source>Reading the sittings …</source>
        <translation>Die Verkostungen werden gelesen …</translation>
    </message>
    <message numerus="yes">
        <source>%n sitting(s) with that.</source>
        <translation>
            <numerusform>%n Verkostung damit.</numerusform>
            <numerusform>%n Verkostungen damit.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sitting(s), newest first.</source>
        <translation>
            <numerusform>%n Verkostung, neueste zuerst.</numerusform>
            <numerusform>%n Verkostungen, neueste zuerst.</numerusform>
        </translation>
    </message>
    <message>
        <source>only with this tree or title</source>
        <translation>nur mit diesem Baum oder Titel</translation>
    </message>
    <message>
        <source>Looking for these sittings …</source>
        <translation>Diese Sitzungen werden gesucht …</translation>
    </message>
    <message>
        <source>Go on with the plan (Ctrl+L)</source>
        <translation>Weiter mit dem Plan (Strg+L)</translation>
    </message>
    <message>
        <source>Plan a sitting (Ctrl+L)</source>
        <translation>Verkostung planen (Strg+L)</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ThresholdPanel</name>
    <message>
        <source>Back to the proposals</source>
        <translation>Zurück zu den Vorschlägen</translation>
    </message>
    <message>
        <source> points</source>
        <translation> Punkte</translation>
    </message>
    <message>
        <source>Watched from P(above the floor)</source>
        <translation>Beobachtet ab P(über der Untergrenze)</translation>
    </message>
    <message>
        <source>Culled from P(below the floor)</source>
        <translation>Verworfen ab P(unter der Untergrenze)</translation>
    </message>
    <message>
        <source>Backed up from P(above the best)</source>
        <translation>Gesichert ab P(über der Besten)</translation>
    </message>
    <message>
        <source>Talked of as a name from P(above the best)</source>
        <translation>Namensgespräch ab P(über der Besten)</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>Clearly better means by</source>
        <translation>Deutlich besser heißt um</translation>
    </message>
    <message>
        <source>Crop years tasted before a name</source>
        <translation>Verkostete Erntejahre vor einem Namen</translation>
    </message>
    <message>
        <source>Fair lots before it is judged</source>
        <translation>Faire Proben vor dem Urteil</translation>
    </message>
    <message>
        <source>Faults are judged for</source>
        <translation>Mängel beurteilt für</translation>
    </message>
    <message>
        <source>They only suggest: no stage changes by itself. They are yours on this computer, for all books.</source>
        <translation>Sie schlagen nur vor: Keine Stufe ändert sich von selbst. Sie gelten für Sie auf diesem Rechner, in allen Büchern.</translation>
    </message>
    <message>
        <source>These contradict each other: one and the same seedling would be watched and culled. Nothing has changed yet.</source>
        <translation>Diese widersprechen sich: Derselbe Sämling würde beobachtet und verworfen. Noch hat sich nichts geändert.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::ThumbLetters</name>
    <message>
        <source>? unknown</source>
        <translation>? unbekannt</translation>
    </message>
    <message>
        <source>days off the tree: f5 fridge five days · c2 counter · l60 cellar · f14c3 fridge, then counter · 0 straight off the tree · ? unknown</source>
        <translation>Tage seit der Ernte: f5 fünf Tage Kühlschrank · c2 Tisch · l60 Keller · f14c3 Kühlschrank, dann Tisch · 0 frisch vom Baum · ? unbekannt</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TodayPopup</name>
    <message>
        <source>Day taken as today</source>
        <translation>Der Tag, der als heute gilt</translation>
    </message>
    <message>
        <source>Take this day</source>
        <translation>Diesen Tag nehmen</translation>
    </message>
    <message>
        <source>Follow the calendar</source>
        <translation>Dem Kalender folgen</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TreeColumns</name>
    <message>
        <source>Code</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Tape (m)</source>
        <translation>Maß (m)</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Identity</source>
        <translation>Identität</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TreeHead</name>
    <message>
        <source>stands nowhere known</source>
        <translation>Platz unbekannt</translation>
    </message>
    <message>
        <source>%1, row %2, place %3</source>
        <translation>%1, Reihe %2, Platz %3</translation>
    </message>
    <message>
        <source>, %1 from the zero stake</source>
        <translation>, %1 vom Nullpfahl</translation>
    </message>
    <message>
        <source>bearing %1° (%2)</source>
        <translation>Richtung %1° (%2)</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 hoch</translation>
    </message>
    <message>
        <source>number %1 from the trunk</source>
        <translation>Nummer %1 vom Stamm aus</translation>
    </message>
    <message>
        <source>mark %1</source>
        <translation>Farbe %1</translation>
    </message>
    <message>
        <source>grafted on %1</source>
        <translation>veredelt auf %1</translation>
    </message>
    <message>
        <source>limb of %1</source>
        <translation>Ast von %1</translation>
    </message>
    <message>
        <source>, planted %1</source>
        <translation>, gepflanzt %1</translation>
    </message>
    <message>
        <source>, worked %1</source>
        <translation>, veredelt %1</translation>
    </message>
    <message>
        <source>identity not known</source>
        <translation>Identität unbekannt</translation>
    </message>
    <message>
        <source>, last confirmed %1</source>
        <translation>, zuletzt bestätigt %1</translation>
    </message>
    <message>
        <source>, since %1, never confirmed at the tree</source>
        <translation>, seit %1, nie am Baum bestätigt</translation>
    </message>
    <message>
        <source> since %1</source>
        <translation> seit %1</translation>
    </message>
    <message>
        <source> · benchmark</source>
        <translation> · Vergleichssorte</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>Who is it?</source>
        <translation>Wer ist es?</translation>
    </message>
    <message>
        <source>Who this tree is: confirm or put right</source>
        <translation>Wer dieser Baum ist: bestätigen oder berichtigen</translation>
    </message>
    <message>
        <source>Confirm who this tree is, or put it right</source>
        <translation>Bestätigen, wer dieser Baum ist, oder es berichtigen</translation>
    </message>
    <message>
        <source>Confirmed at the tree today</source>
        <translation>Heute am Baum bestätigt</translation>
    </message>
    <message>
        <source>It is another genotype (wrong tag) …</source>
        <translation>Es ist ein anderer Genotyp (falsches Schild) …</translation>
    </message>
    <message>
        <source>Tag unreadable: this by the map only</source>
        <translation>Schild unleserlich: dieser nur nach der Karte</translation>
    </message>
    <message>
        <source>Tag unreadable: this by its fruit only</source>
        <translation>Schild unleserlich: dieser nur nach der Frucht</translation>
    </message>
    <message>
        <source>Nobody knows what it is</source>
        <translation>Niemand weiß, was es ist</translation>
    </message>
    <message>
        <source>Its tag hangs on another tree: swap …</source>
        <translation>Sein Schild hängt an einem anderen Baum: tauschen …</translation>
    </message>
    <message>
        <source>Another plant stands at this place too …</source>
        <translation>Auf diesem Platz steht noch eine Pflanze …</translation>
    </message>
    <message>
        <source>Records were put down for the wrong tree …</source>
        <translation>Einträge gehören zu einem anderen Baum …</translation>
    </message>
    <message>
        <source>Seed parent %1</source>
        <translation>Mutter %1</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>Pollen parent %1</source>
        <translation>Vater %1</translation>
    </message>
    <message>
        <source>open pollinated</source>
        <translation>frei abgeblüht</translation>
    </message>
    <message numerus="yes">
        <source>%n other plant(s) of it:</source>
        <translation>
            <numerusform>%n weitere Pflanze davon:</numerusform>
            <numerusform>%n weitere Pflanzen davon:</numerusform>
        </translation>
    </message>
    <message>
        <source> limb at %1°</source>
        <translation> Ast bei %1°</translation>
    </message>
    <message>
        <source> limb</source>
        <translation> Ast</translation>
    </message>
    <message>
        <source>Go to the plant at %1</source>
        <translation>Zur Pflanze auf %1 gehen</translation>
    </message>
    <message>
        <source>also called %1</source>
        <translation>auch %1 genannt</translation>
    </message>
    <message>
        <source>label code %1</source>
        <translation>Etikettencode %1</translation>
    </message>
    <message>
        <source>At the same place also grows:</source>
        <translation>Am selben Platz wächst auch:</translation>
    </message>
    <message>
        <source>a plant nobody has identified</source>
        <translation>eine Pflanze, die niemand bestimmt hat</translation>
    </message>
    <message>
        <source>Go to %1, which grows at the same place</source>
        <translation>Zu %1 gehen, am selben Platz</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TreeJournal</name>
    <message>
        <source>Undone: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Wiederholt: %1</translation>
    </message>
    <message>
        <source>Came with the book: %1</source>
        <translation>Kam mit dem Buch: %1</translation>
    </message>
    <message>
        <source>Nothing has been written of this tree yet.</source>
        <translation>Von diesem Baum ist noch nichts geschrieben.</translation>
    </message>
    <message>
        <source>Whose history: everything, or one field</source>
        <translation>Wessen Geschichte: alles oder ein Feld</translation>
    </message>
    <message>
        <source>The whole history</source>
        <translation>Die ganze Geschichte</translation>
    </message>
    <message>
        <source>Only %1, %2</source>
        <translation>Nur %1, %2</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TreeListView</name>
    <message>
        <source>List of trees</source>
        <translation>Liste der Bäume</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TreeSheet</name>
    <message>
        <source>No tree is selected</source>
        <translation>Kein Baum ist gewählt</translation>
    </message>
    <message>
        <source>Choose one in the rows, or find it with Ctrl+K: its life will stand here.</source>
        <translation>In den Reihen einen wählen oder mit Strg+K suchen: Hier steht dann sein Leben.</translation>
    </message>
    <message>
        <source>Not tasted yet. B puts down a bite.</source>
        <translation>Noch nicht verkostet. B schreibt eine Bissprobe auf.</translation>
    </message>
    <message>
        <source>Nothing seen yet. N notes, W marks on a walk, O observes.</source>
        <translation>Noch nichts gesehen. N notiert, W setzt ein Reifezeichen, O beobachtet.</translation>
    </message>
    <message>
        <source>Tree sheet</source>
        <translation>Baumblatt</translation>
    </message>
    <message>
        <source>Ancestry</source>
        <translation>Abstammung</translation>
    </message>
    <message>
        <source>Life by crop year</source>
        <translation>Leben nach Erntejahren</translation>
    </message>
    <message>
        <source>Tastings</source>
        <translation>Verkosten</translation>
    </message>
    <message>
        <source>Seen and decided</source>
        <translation>Gesehen und entschieden</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>N: note</source>
        <translation>N: Notiz</translation>
    </message>
    <message>
        <source>B: bite: liking 1 to 9 (7, 7.5, 7h), then words</source>
        <translation>B: Bissprobe: Gefallen 1 bis 9 (7, 7.5, 7h), dann Worte</translation>
    </message>
    <message>
        <source>W: walk mark, then its letter</source>
        <translation>W: Reifezeichen, dann sein Buchstabe</translation>
    </message>
    <message>
        <source>O: observation: trait, Enter, value</source>
        <translation>O: Beobachtung: Merkmal, Eingabe, Wert</translation>
    </message>
    <message>
        <source>D: decision: letter of the stage, Enter, reason</source>
        <translation>D: Entscheidung: Buchstabe der Stufe, Eingabe, Grund</translation>
    </message>
    <message>
        <source>G: graft wish</source>
        <translation>G: Pfropfwunsch</translation>
    </message>
    <message>
        <source>P: photo from a file</source>
        <translation>P: Foto aus einer Datei</translation>
    </message>
    <message>
        <source>X: lost, dead or removed</source>
        <translation>X: verloren, tot oder entfernt</translation>
    </message>
    <message>
        <source>Enter: save; Esc: back, and keep what was typed</source>
        <translation>Eingabe: sichern; Esc: zurück, das Getippte bleibt</translation>
    </message>
    <message>
        <source>Up and Down in the day: one day later or earlier</source>
        <translation>Pfeil auf und ab im Tag: ein Tag später oder früher</translation>
    </message>
    <message>
        <source>Arrows in the time line: from mark to mark</source>
        <translation>Pfeile in der Lebenslinie: von Zeichen zu Zeichen</translation>
    </message>
    <message>
        <source>Delete on a record: void it, with a reason</source>
        <translation>Entf auf einem Eintrag: stornieren, mit Grund</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <source>F2 on a tasting: put its condition right</source>
        <translation>F2 auf einer Verkostung: ihren Zustand berichtigen</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::TreeWords</name>
    <message>
        <source> · %1 as eaten</source>
        <translation> · %1 wie gegessen</translation>
    </message>
    <message>
        <source>the score of %1 of %2</source>
        <translation>die Wertung %1 von %2</translation>
    </message>
    <message>
        <source>observation</source>
        <translation>Beobachtung</translation>
    </message>
    <message>
        <source>the %1 of %2</source>
        <translation>Eintrag %1 vom %2</translation>
    </message>
    <message>
        <source>%1 · decided: %2</source>
        <translation>%1 · entschieden: %2</translation>
    </message>
    <message>
        <source>the decision of %1</source>
        <translation>die Entscheidung vom %1</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>bestellt</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>dropped</source>
        <translation>fallen gelassen</translation>
    </message>
    <message>
        <source>state not known</source>
        <translation>Zustand unbekannt</translation>
    </message>
    <message numerus="yes">
        <source>%1 · %n graft(s) wished, %2</source>
        <translation>
            <numerusform>%1 · %n Reis gewünscht, %2</numerusform>
            <numerusform>%1 · %n Reiser gewünscht, %2</numerusform>
        </translation>
    </message>
    <message>
        <source>no date</source>
        <translation>ohne Datum</translation>
    </message>
    <message numerus="yes">
        <source>%1 · %n graft(s), %2</source>
        <translation>
            <numerusform>%1 · %n Reis, %2</numerusform>
            <numerusform>%1 · %n Reiser, %2</numerusform>
        </translation>
    </message>
    <message>
        <source>onto %1</source>
        <translation>auf %1</translation>
    </message>
    <message>
        <source>%1: %2 alive %3</source>
        <translation>%1: %2 leben %3</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>mit %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>trait, value</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::VerdictCard</name>
    <message>
        <source>Merit</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Where the verdict comes from</source>
        <translation>Woher das Urteil kommt</translation>
    </message>
    <message>
        <source>Suggested: %1. %2.</source>
        <translation>Vorschlag: %1. %2.</translation>
    </message>
    <message>
        <source>From before the last edit.</source>
        <translation>Von vor der letzten Änderung.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::VoidForm</name>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>why it is wrong</source>
        <translation>warum es falsch ist</translation>
    </message>
    <message>
        <source>It stays in the history, but counts no more.</source>
        <translation>Es bleibt in der Geschichte, zählt aber nicht mehr.</translation>
    </message>
    <message>
        <source>Void %1</source>
        <translation>%1 stornieren</translation>
    </message>
    <message>
        <source>No reason is given.</source>
        <translation>Es fehlt der Grund.</translation>
    </message>
    <message>
        <source>Say in a few words what is wrong with it.</source>
        <translation>In wenigen Worten sagen, was daran falsch ist.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::WalkForm</name>
    <message>
        <source>Walk mark</source>
        <translation>Reifezeichen</translation>
    </message>
    <message>
        <source>Fruit on the ground</source>
        <translation>Obst am Boden</translation>
    </message>
    <message>
        <source>n</source>
        <comment>letter of the mark</comment>
        <translation>n</translation>
    </message>
    <message>
        <source>p</source>
        <comment>letter of the mark</comment>
        <translation>p</translation>
    </message>
    <message>
        <source>r</source>
        <comment>letter of the mark</comment>
        <translation>r</translation>
    </message>
    <message>
        <source>o</source>
        <comment>letter of the mark</comment>
        <translation>o</translation>
    </message>
    <message>
        <source>g</source>
        <comment>letter of the mark</comment>
        <translation>g</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keines</translation>
    </message>
    <message>
        <source>few</source>
        <translation>wenig</translation>
    </message>
    <message>
        <source>one or two</source>
        <translation>ein, zwei</translation>
    </message>
    <message>
        <source>some</source>
        <translation>einiges</translation>
    </message>
    <message>
        <source>a handful</source>
        <translation>eine Handvoll</translation>
    </message>
    <message>
        <source>many</source>
        <translation>viel</translation>
    </message>
    <message>
        <source>more than hang</source>
        <translation>mehr als am Baum</translation>
    </message>
    <message>
        <source>On the ground (may stay open):</source>
        <translation>Am Boden (darf offen bleiben):</translation>
    </message>
    <message>
        <source>Walk mark on %1</source>
        <translation>Reifezeichen für %1</translation>
    </message>
    <message>
        <source>No mark is chosen.</source>
        <translation>Kein Zeichen gewählt.</translation>
    </message>
    <message>
        <source>Press the letter of a mark: n, p, r, o or g, then Enter.</source>
        <translation>Den Buchstaben eines Zeichens drücken: n, p, r, o oder g, dann die Eingabetaste.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::WaterfallView</name>
    <message>
        <source>From the mean as eaten to the merit</source>
        <translation>Vom Mittel wie gegessen zum Wert</translation>
    </message>
    <message>
        <source>Borrow from parents and siblings</source>
        <translation>Von Eltern und Geschwistern borgen</translation>
    </message>
    <message>
        <source>Correct for: %1</source>
        <translation>Berichtigen um: %1</translation>
    </message>
    <message>
        <source>Off: it borrows nothing from parents and siblings.</source>
        <translation>Aus: Er borgt nichts von Eltern und Geschwistern.</translation>
    </message>
    <message>
        <source>Off: the scores count as they stand in this.</source>
        <translation>Aus: Hierin zählen die Noten, wie sie sind.</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message numerus="yes">
        <source>%n score(s)</source>
        <translation>
            <numerusform>%n Note</numerusform>
            <numerusform>%n Noten</numerusform>
        </translation>
    </message>
    <message>
        <source>mean as eaten</source>
        <translation>Mittel wie gegessen</translation>
    </message>
    <message>
        <source>merit</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>%1: %2 as eaten, %3 had it been fair fruit at its best, an average taster and an average year.</source>
        <translation>%1: %2 wie gegessen, %3 bei fairer Frucht in Genussreife, mittlerem Verkoster und mittlerem Jahr.</translation>
    </message>
    <message>
        <source>Better than %1: %2.</source>
        <translation>Besser als %1: %2.</translation>
    </message>
    <message>
        <source>Points of liking, 1 to 9; each figure is the mean over its scores. The switches count for this picture only: table and suggestions keep all corrections.</source>
        <translation>Punkte des Gefallens, 1 bis 9; jede Zahl ist das Mittel über seine Noten. Die Schalter gelten nur für dieses Bild: Tabelle und Vorschläge behalten alle Berichtigungen.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::WishForm</name>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>why, Enter</source>
        <translation>warum, dann Eingabe</translation>
    </message>
    <message>
        <source>How many grafts</source>
        <translation>Wie viele Reiser</translation>
    </message>
    <message>
        <source> grafts</source>
        <translation> Reiser</translation>
    </message>
    <message>
        <source>Wish grafts of %1</source>
        <translation>Reiser von %1 wünschen</translation>
    </message>
    <message>
        <source>Nobody knows what this plant is, so no graft of it can be wished.</source>
        <translation>Niemand weiß, was diese Pflanze ist; so lässt sich kein Reis von ihr wünschen.</translation>
    </message>
    <message>
        <source>Say first who it is.</source>
        <translation>Zuerst sagen, wer sie ist.</translation>
    </message>
</context>
<context>
    <name>pipwright::ui::Workbench</name>
    <message>
        <source>Rows</source>
        <translation>Reihen</translation>
    </message>
    <message>
        <source>Tastings</source>
        <translation>Verkosten</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <source>Grafting</source>
        <translation>Veredeln</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message numerus="yes">
        <source>%n genotype(s) laid side by side.</source>
        <translation>
            <numerusform>%n Genotyp liegt nebeneinander.</numerusform>
            <numerusform>%n Genotypen liegen nebeneinander.</numerusform>
        </translation>
    </message>
    <message>
        <source>Press C again to look at them.</source>
        <translation>Noch einmal C zeigt sie.</translation>
    </message>
    <message numerus="yes">
        <source>%n tree(s) selected</source>
        <translation>
            <numerusform>%n Baum gewählt</numerusform>
            <numerusform>%n Bäume gewählt</numerusform>
        </translation>
    </message>
    <message>
        <source>Find a tree, row/place, family, word or command (Ctrl+K or /)</source>
        <translation>Baum, Reihe/Platz, Familie, Wort oder Befehl finden (Strg+K oder /)</translation>
    </message>
    <message>
        <source>Merit</source>
        <translation>Wert</translation>
    </message>
</context>
</TS>
