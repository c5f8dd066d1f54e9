// SPDX-License-Identifier: GPL-3.0-or-later
// One cross: its name, its range in words and as a bar on the scale all share.
import QtQuick
import ConelineWindow

TapRow {
    id: row

    required property int index
    required property string name
    required property string taxon
    required property string counts
    required property string range
    required property real low
    required property real high
    required property real likely
    required property string alike

    implicitHeight: lines.implicitHeight + 24
    Accessible.name: name + ", " + range + ", " + counts + ", " + alike

    contentItem: Item {
        Column {
            id: lines

            x: 24
            y: 12
            width: parent.width - 48
            spacing: 4

            Words {
                width: parent.width
                text: row.name
            }
            Words {
                width: parent.width
                text: row.range
                font.weight: Font.DemiBold
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
                text: row.counts + (row.alike === "" ? "" : " · " + row.alike)
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
        }
    }
}
