// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done now, likeliest first.
import QtQuick
import ConelineWindow

Flow {
    id: deeds

    property var deeds: []
    readonly property var words: ({
            "table": qsTr("On the table"),
            "water": qsTr("Water changed"),
            "recheck": qsTr("Looked at again"),
            "lose": qsTr("Died"),
            "open": qsTr("Cut some open"),
            "labels": qsTr("Label"),
            "later": qsTr("Put off or strike"),
            "want label": qsTr("Label wanted"),
            "new cone": qsTr("New cone"),
            "new pollen": qsTr("Pollen collected"),
            "pollinate": qsTr("Pollinate"),
            "harvest": qsTr("Harvest"),
            "check scales": qsTr("Check scales"),
            "watch male cone": qsTr("Watch male cone"),
            "collect pollen": qsTr("Collect pollen"),
            "test pollen": qsTr("Test pollen"),
            "discard pollen": qsTr("Discard pollen"),
            "plan move": qsTr("Plan move"),
            "inspect": qsTr("Inspect"),
            "pot": qsTr("Pot"),
            "pot on": qsTr("Pot on"),
            "move": qsTr("Move"),
            "sell": qsTr("Sell"),
            "plant out": qsTr("Plant out"),
            "recount": qsTr("Recount"),
            "discard": qsTr("Discard"),
            "clean": qsTr("Clean"),
            "sort": qsTr("Sort"),
            "sow": qsTr("Sow"),
            "store": qsTr("Store"),
            "correct plant": qsTr("Correct plant"),
            "add paper": qsTr("Add paper"),
            "strike paper": qsTr("Strike paper"),
            "amend place": qsTr("Amend place")
        })
    signal wanted(string verb)

    spacing: 8

    Repeater {
        model: deeds.deeds

        Press {
            required property string modelData
            required property int index

            objectName: "deed-" + modelData
            text: deeds.words[modelData] ?? modelData[0].toUpperCase() + modelData.substring(1)
            weight: index === 0 ? "act" : "plain"
            onClicked: deeds.wanted(modelData)
        }
    }
}
