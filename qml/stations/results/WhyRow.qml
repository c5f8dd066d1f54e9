// SPDX-License-Identifier: GPL-3.0-or-later
// One group: its range in words and as a bar, and how it differs from the one compared with.
import QtQuick
import ConelineWindow

Item {
    id: row

    required property string level
    required property string counts
    required property string range
    required property real low
    required property real high
    required property real likely
    required property string alone
    required property string together
    required property bool reference
    readonly property bool beside: width > Look.wide(700)

    height: Math.max(left.height, right.y + right.height) + 12
    Accessible.role: Accessible.ListItem
    Accessible.name: level + ", " + range + ", " + counts + ", " + difference.text

    Column {
        id: left

        width: row.beside ? row.width * 0.55 : row.width

        Words {
            width: parent.width
            text: row.level
            font.weight: Font.DemiBold
        }
        Words {
            width: parent.width
            text: row.range
        }
        RangeBar {
            width: parent.width
            low: row.low
            high: row.high
            likely: row.likely
            tone: Look.link
        }
        Words {
            width: parent.width
            text: row.counts
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
    }
    Column {
        id: right

        x: row.beside ? left.width + 24 : 0
        y: row.beside ? 0 : left.height
        width: row.width - x

        Words {
            id: difference

            width: parent.width
            text: row.reference ? qsTr("the others are compared with it") : row.alone === "" ? qsTr("no difference can be given") : qsTr("%1 points in a hundred").arg(row.alone)
            color: row.reference ? Look.quiet : Look.ink
        }
        Words {
            width: parent.width
            visible: row.together !== ""
            text: qsTr("%1, the other conditions held as they were").arg(row.together)
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
    }
}
