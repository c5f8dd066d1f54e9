// SPDX-License-Identifier: GPL-3.0-or-later
// What is at one station: due first, then by cross or by place.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property string station: ""
    property string chosen: ""
    readonly property bool placed: station === "seed" || station === "trays" || station === "pots"
    readonly property var titles: ({
            "pollen": qsTr("Pollen"),
            "cones": qsTr("Cones"),
            "seed": qsTr("Seed"),
            "trays": qsTr("Trays"),
            "pots": qsTr("Pots"),
            "out": qsTr("Out")
        })
    readonly property var belongs: ({
            "pollen": qsTr("Parent plants and their pollen belong here. Begin with a plant."),
            "cones": qsTr("Cones belong here from the day they are seen. Begin with a plant, then give it its cone."),
            "seed": qsTr("Batches of seed belong here: one for each cone harvested."),
            "trays": qsTr("Trays belong here as soon as seed is sown. Open a batch and sow it."),
            "pots": qsTr("Plants in pots belong here. Open a tray with seedlings and pot them."),
            "out": qsTr("What was sold or planted out is told here.")
        })
    signal opened(string code)
    signal wanted(string deed)
    signal labelsWanted
    signal crossesWanted

    StationList {
        id: model

        session: page.session
        station: page.station
        byPlace: page.placed && place.checked
    }
    Flow {
        id: head

        x: 16
        topPadding: 12
        bottomPadding: 12
        width: parent.width - 32
        spacing: 8

        Say {
            // Takes the room that the buttons leave, so that they stand at the right.
            width: Math.max(implicitWidth, Math.min(head.width, head.width - buttons - 8))
            text: page.titles[page.station] ?? ""
            font.pixelSize: Look.title
            Accessible.role: Accessible.Heading

            readonly property real buttons: crosses.visible ? crosses.width : page.placed ? (labels.visible ? labels.width + 8 : 0) + cross.width + place.width + 8 : 0
        }
        Press {
            id: crosses

            objectName: "chooseCrosses"
            visible: page.station === "pollen" || page.station === "cones"
            text: qsTr("choose crosses")
            weight: "quiet"
            onClicked: page.crossesWanted()
        }
        Press {
            id: labels

            objectName: "labels"
            visible: page.placed && page.station !== "out" && list.count > 0
            text: qsTr("labels")
            weight: "quiet"
            onClicked: page.labelsWanted()
        }
        Press {
            id: cross

            visible: page.placed
            text: qsTr("by cross")
            checked: !place.checked
            onClicked: place.checked = false
        }
        Press {
            id: place

            visible: page.placed
            text: qsTr("by place")
            onClicked: place.checked = true
        }
    }
    RowList {
        id: list

        objectName: "stationList"
        anchors.top: head.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        model: model.rows
        section.property: "heading"
        section.delegate: Heading {
            required property string section

            text: section
            width: list.width
            leftPadding: 16
            rightPadding: 16
        }
        delegate: ListRow {
            id: row

            required what
            required place
            required due
            required property bool ended

            width: list.width
            chosen: row.code === page.chosen
            faint: row.ended
            onClicked: page.opened(row.code)
        }
    }
    Empty {
        x: 16
        anchors.top: head.bottom
        anchors.topMargin: 16
        width: parent.width - 32
        visible: list.count === 0
        belongs: page.belongs[page.station] ?? ""
        next: page.station === "pollen" || page.station === "cones" ? qsTr("New plant") : ""
        onTaken: page.wanted("new plant")
    }
}
