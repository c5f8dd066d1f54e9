// SPDX-License-Identifier: GPL-3.0-or-later
// Which trays to walk past.
import QtQuick
import ConelineWindow

Item {
    id: start

    required property RoundWalk walk
    signal picturesWanted

    Column {
        id: head

        x: 24
        y: 16
        width: parent.width - 48
        spacing: 12

        Say {
            width: parent.width
            text: qsTr("Walk a round")
            font.pixelSize: Look.title
            Accessible.role: Accessible.Heading
        }
        Say {
            width: parent.width
            text: qsTr("Trays come in walking order. Scan one, tap what is new, scan the next. A bench's label moves what is scanned after it.")
            color: Look.quiet
        }
        Press {
            objectName: "roundDue"
            width: parent.width
            implicitHeight: Math.max(64, wordsHeight + 16)
            weight: "act"
            enabled: start.walk.due > 0
            text: start.walk.due > 0 ? qsTr("All trays due for a look: %1").arg(start.walk.due) : qsTr("No tray is due for a look")
            onClicked: start.walk.begin("")
        }
        Press {
            objectName: "roundPictures"
            text: qsTr("From pictures")
            onClicked: start.picturesWanted()
        }
        Say {
            width: parent.width
            visible: text !== ""
            text: start.walk.fault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Heading {
            objectName: "roundPlaces"
            visible: start.walk.places.count > 0
            text: qsTr("Or one place, with every tray in it")
        }
    }
    RowList {
        anchors.top: head.bottom
        anchors.topMargin: 8
        anchors.bottom: parent.bottom
        width: parent.width
        model: start.walk.places
        delegate: Item {
            id: row

            required property string code
            required property string name
            required property int trays

            width: ListView.view.width
            height: at.height + 8

            Press {
                id: at

                objectName: "roundAt-" + row.code
                x: 24
                y: 4
                width: parent.width - 48
                implicitHeight: Math.max(56, wordsHeight + 16)
                text: qsTr("%1: %n tray(s)", "", row.trays).arg(row.name)
                onClicked: start.walk.begin(row.code)
            }
        }
    }
}
