// SPDX-License-Identifier: GPL-3.0-or-later
// One thing in a list: its code, what it is, where it stands, and what is due.
import QtQuick
import ConelineWindow

TapRow {
    id: row

    required property string code
    property string what: ""
    property string place: ""
    property string due: ""
    property bool faint: false
    /// What is due stands below where there is no room beside; the code above where there is less.
    readonly property bool narrow: width < Look.wide(360)
    readonly property bool tight: width < Look.wide(250)

    implicitHeight: Math.max(56, lines.implicitHeight + 16 + (tight ? code.height : 0))
    Accessible.name: [row.code, row.what, row.place, row.due === "" ? "" : qsTr("due: %1").arg(row.due)].filter(part => part !== "").join(", ")

    contentItem: Item {
        Say {
            id: code

            x: 16
            y: row.tight ? lines.y - height : (parent.height - height) / 2
            width: Math.min(Look.wide(92), row.width - 24)
            text: row.code
            wrapMode: Text.NoWrap
            font.family: Look.mono
            font.weight: Font.DemiBold
            color: row.faint ? Look.quiet : Look.ink
        }
        Column {
            id: lines

            x: row.tight ? 16 : code.x + code.width + 8
            y: (parent.height - height + (row.tight ? code.height : 0)) / 2
            width: (row.narrow ? parent.width : mark.x) - x - 8

            Say {
                width: parent.width
                text: row.what
                color: row.faint ? Look.quiet : Look.ink
            }
            Say {
                width: parent.width
                visible: row.place !== ""
                text: row.place
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
            Say {
                width: parent.width
                visible: row.narrow && row.due !== ""
                text: mark.text
                font.weight: Font.DemiBold
                color: Look.act
            }
        }
        Say {
            id: mark

            visible: !row.narrow
            x: parent.width - width - 16
            width: Math.min(implicitWidth, row.width * 0.4)
            horizontalAlignment: Text.AlignRight
            anchors.verticalCenter: parent.verticalCenter
            text: row.due === "" ? "" : "› " + row.due
            font.weight: Font.DemiBold
            color: Look.act
        }
    }
}
