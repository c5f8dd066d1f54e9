// SPDX-License-Identifier: GPL-3.0-or-later
// What the round counted, moved and did not find.
import QtQuick
import ConelineWindow

Item {
    id: end

    required property RoundWalk walk
    signal over
    signal opened(string code)

    Column {
        id: head

        x: 24
        y: 16
        width: parent.width - 48
        spacing: 8

        Say {
            width: parent.width
            text: qsTr("The round has ended: %1 seen").arg(end.walk.progress)
            font.pixelSize: Look.title
            Accessible.role: Accessible.Heading
        }
        Say {
            objectName: "roundSums"
            width: parent.width
            text: end.walk.sums
            font.pixelSize: Look.large
        }
        Press {
            objectName: "roundDone"
            text: qsTr("Back to today")
            weight: "act"
            onClicked: {
                end.walk.forget();
                end.over();
            }
        }
    }
    RowList {
        objectName: "roundTrays"
        anchors.top: head.bottom
        anchors.topMargin: 8
        anchors.bottom: parent.bottom
        width: parent.width
        model: end.walk.trays
        delegate: ListRow {
            id: row

            required what
            required place
            required faint
            required property string came

            width: ListView.view.width
            due: came
            onClicked: end.opened(row.code)
        }
    }
}
