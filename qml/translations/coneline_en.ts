<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>AheadView</name>
    <message numerus="yes">
        <source>%n month(s)</source>
        <translation>
            <numerusform>%n month</numerusform>
            <numerusform>%n months</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LabelsPage</name>
    <message numerus="yes">
        <source>Save %n as PDF</source>
        <translation>
            <numerusform>Save %n as PDF</numerusform>
            <numerusform>Save %n as PDF</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PicturesOfRound</name>
    <message numerus="yes">
        <source>Enter %n move(s)</source>
        <translation>
            <numerusform>Enter %n move</numerusform>
            <numerusform>Enter %n moves</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RoundStart</name>
    <message numerus="yes">
        <source>%1: %n tray(s)</source>
        <translation>
            <numerusform>%1: %n tray</numerusform>
            <numerusform>%1: %n trays</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Strip</name>
    <message numerus="yes">
        <source>%n due</source>
        <translation>
            <numerusform>%n due</numerusform>
            <numerusform>%n due</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StripStation</name>
    <message numerus="yes">
        <source>%1: %2 on hand, %n due</source>
        <translation>
            <numerusform>%1: %2 on hand, %n due</numerusform>
            <numerusform>%1: %2 on hand, %n due</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n due</source>
        <translation>
            <numerusform>%n due</numerusform>
            <numerusform>%n due</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>coneline::window::LabelPrint</name>
    <message numerus="yes">
        <source>%n label(s) in %1</source>
        <translation>
            <numerusform>%n label in %1</numerusform>
            <numerusform>%n labels in %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>coneline::window::OldTable</name>
    <message numerus="yes">
        <source>%n row(s) of %1 came in</source>
        <translation>
            <numerusform>%n row of %1 came in</numerusform>
            <numerusform>%n rows of %1 came in</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) or cell(s) at fault; nothing can come in yet.</source>
        <translation>
            <numerusform>%n row or cell at fault; nothing can come in yet.</numerusform>
            <numerusform>%n rows or cells at fault; nothing can come in yet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) would come in.</source>
        <translation>
            <numerusform>%n row would come in.</numerusform>
            <numerusform>%n rows would come in.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>coneline::window::PapersPrint</name>
    <message numerus="yes">
        <source>%n page(s) in %1, which only you can read</source>
        <translation>
            <numerusform>%n page in %1, which only you can read</numerusform>
            <numerusform>%n pages in %1, which only you can read</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>coneline::window::PlanOrders</name>
    <message numerus="yes">
        <source> · %n day(s)</source>
        <translation>
            <numerusform> · %n day</numerusform>
            <numerusform> · %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bag(s)</source>
        <translation>
            <numerusform>%n bag</numerusform>
            <numerusform>%n bags</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bale(s)</source>
        <translation>
            <numerusform>%n bale</numerusform>
            <numerusform>%n bales</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n load(s)</source>
        <translation>
            <numerusform>%n load</numerusform>
            <numerusform>%n loads</numerusform>
        </translation>
    </message>
</context>
</TS>
