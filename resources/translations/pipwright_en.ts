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
    <name>pipwright::ui::MapFilterBar</name>
    <message numerus="yes">
        <source>%n tree(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
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
    <name>pipwright::ui::MapMargins</name>
    <message numerus="yes">
        <source>%n row(s)</source>
        <translation>
            <numerusform>%n row</numerusform>
            <numerusform>%n rows</numerusform>
        </translation>
    </message>
</context>
</TS>
