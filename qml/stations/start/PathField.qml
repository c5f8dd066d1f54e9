// SPDX-License-Identifier: GPL-3.0-or-later
// A path to type, or to drop as a file.
import QtQuick
import ConelineWindow

Column {
    id: entry

    property string label: ""
    property alias path: field.text
    signal finished

    spacing: 4

    Say {
        width: parent.width
        text: entry.label
        font.pixelSize: Look.tiny
        color: Look.quiet
    }
    Field {
        id: field

        width: parent.width
        says: entry.label
        onAccepted: entry.finished()

        DropArea {
            anchors.fill: parent
            keys: ["text/uri-list"]
            onDropped: drop => field.text = drop.urls[0].toString()
        }
    }
}
