// SPDX-License-Identifier: GPL-3.0-or-later
// One cross: its name, its range in words and as a bar on the scale all share.
import QtQuick
import QtQuick.Templates as T
import ConelineWindow

T.ItemDelegate {
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
    property bool chosen: false

    focusPolicy: Qt.TabFocus
    implicitHeight: lines.implicitHeight + 24
    Accessible.role: Accessible.ListItem
    Accessible.name: name + ", " + range + ", " + counts + ", " + alike
    Keys.onReturnPressed: row.clicked()
    Keys.onEnterPressed: row.clicked()

    background: Rectangle {
        color: row.chosen ? Look.sheet : "transparent"

        Rectangle {
            width: 4
            height: parent.height
            visible: row.chosen
            color: Look.link
        }
        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Look.rule
        }
        Ring {
            anchors.margins: 1
            shown: row.visualFocus
        }
    }
    contentItem: Item {
        Column {
            id: lines

            x: 16
            y: 12
            width: parent.width - 32
            spacing: 4

            Say {
                width: parent.width
                text: row.name
                Accessible.ignored: true
            }
            Say {
                width: parent.width
                text: row.range
                font.weight: Font.DemiBold
                Accessible.ignored: true
            }
            RangeBar {
                width: parent.width
                low: row.low
                high: row.high
                likely: row.likely
                tone: Look.link
            }
            Say {
                width: parent.width
                text: row.counts + (row.alike === "" ? "" : " · " + row.alike)
                font.pixelSize: Look.tiny
                color: Look.quiet
                Accessible.ignored: true
            }
        }
    }
}
