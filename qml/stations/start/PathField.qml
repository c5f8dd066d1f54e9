// SPDX-License-Identifier: GPL-3.0-or-later
// A path to type, or to drop as a file.
import QtQuick
import ConelineWindow

Column {
    id: entry

    property string label: ""
    property alias path: field.text
    /// The path once nobody types any more: what costs a look at the disk waits for it.
    property string settled: ""
    signal finished

    spacing: 4
    Component.onCompleted: settled = path
    onPathChanged: {
        if (field.activeFocus)
            typing.restart();
        else
            entry.settled = entry.path;
    }

    Timer {
        id: typing

        interval: 600
        onTriggered: entry.settled = entry.path
    }
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
        onEditingFinished: {
            typing.stop();
            entry.settled = entry.path;
        }

        DropArea {
            anchors.fill: parent
            keys: ["text/uri-list"]
            onDropped: drop => field.text = drop.urls[0].toString()
        }
    }
}
