// SPDX-License-Identifier: GPL-3.0-or-later
// The right side while nothing is chosen: what it is for, and what can be begun at this station.
import QtQuick
import ConelineWindow

Item {
    id: nothing

    property string page: ""
    readonly property var begun: ({
            "today": [["nursery", qsTr("The nursery")]],
            "pollen": [["new plant", qsTr("New plant")], ["amend taxon", qsTr("Amend a kind of plant")], ["pollen store", qsTr("How pollen keeps")]],
            "cones": [["new plant", qsTr("New plant")], ["amend taxon", qsTr("Amend a kind of plant")]],
            "seed": [["buy in", qsTr("Buy in")], ["figures", qsTr("What you reckon with")]],
            "trays": [["new pot", qsTr("New kind of tray")], ["amend pot", qsTr("Amend a kind of tray")], ["new mix", qsTr("New mix")], ["amend mix", qsTr("Amend a mix")]],
            "pots": [["new pot", qsTr("New kind of pot")], ["amend pot", qsTr("Amend a kind of pot")], ["new place", qsTr("New place")], ["amend place", qsTr("Amend a place")], ["new mix", qsTr("New mix")], ["amend mix", qsTr("Amend a mix")]]
        })
    readonly property bool offers: begun[page] !== undefined
    /// What it needs to be seen whole.
    readonly property real least: Math.ceil(content.height)
    signal wanted(string deed)

    Scroll {
        anchors.fill: parent
        contentHeight: Math.max(height, content.height)
        interactive: contentHeight > height

        Column {
            id: content

            anchors.centerIn: parent
            width: Math.min(parent.width, Look.wide(420))
            spacing: 16

            Say {
                width: parent.width
                font.pixelSize: Look.large
                color: Look.quiet
                text: qsTr("Choose something from the list, or scan its label.")
            }
            Say {
                width: parent.width
                visible: nothing.page === "pollen" || nothing.page === "cones"
                color: Look.quiet
                text: qsTr("A new cone, or pollen collected, is begun on the page of its plant.")
            }
            Flow {
                width: parent.width
                spacing: 8

                Repeater {
                    model: nothing.begun[nothing.page] ?? []

                    Press {
                        required property var modelData

                        objectName: "begin-" + modelData[0]
                        most: content.width
                        text: modelData[1]
                        onClicked: nothing.wanted(modelData[0])
                    }
                }
            }
        }
    }
}
