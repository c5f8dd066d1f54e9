// SPDX-License-Identifier: GPL-3.0-or-later
// How full a place runs, month by month; the line above is its room.
import QtQuick
import ConelineWindow

TapRow {
    id: row

    required property int index
    required property string name
    required property var taken
    required property string told
    property var months: []

    objectName: "place-" + index
    implicitHeight: Math.max(64, words.height + 16)
    Accessible.role: Accessible.Button
    Accessible.name: name + ": " + told

    contentItem: Item {
        Column {
            id: words

            x: 8
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width * 0.45 - 16

            Say {
                width: parent.width
                text: row.name
                font.weight: Font.DemiBold
            }
            Say {
                width: parent.width
                text: row.told
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
        }
        MonthStrip {
            x: parent.width * 0.45
            y: 6
            width: parent.width - x - 8
            height: parent.height - 12
            low: row.taken
            middle: row.taken
            high: row.taken
            capacity: 1
            highest: 1.05
        }
    }
}
