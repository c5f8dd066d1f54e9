// SPDX-License-Identifier: GPL-3.0-or-later
// One thing in a list: its code, what it is, where it stands, and what is due.
import QtQuick
import QtQuick.Templates as T
import ConelineWindow

T.ItemDelegate {
    id: row

    required property string code
    property string what: ""
    property string place: ""
    property string due: ""
    property bool chosen: false
    property bool faint: false
    /// What is due stands below where there is no room beside.
    readonly property bool narrow: width < Look.wide(360)

    focusPolicy: Qt.TabFocus
    implicitHeight: Math.max(56, lines.implicitHeight + 16)
    Accessible.role: Accessible.ListItem
    Accessible.name: [row.code, row.what, row.place, row.due === "" ? "" : qsTr("due: %1").arg(row.due)].filter(part => part !== "").join(", ")
    Keys.onReturnPressed: row.clicked()
    Keys.onEnterPressed: row.clicked()

    background: Rectangle {
        color: row.chosen ? Look.sheet : row.down ? Look.rule : "transparent"

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
        Say {
            id: code

            x: 16
            width: Look.wide(92)
            anchors.verticalCenter: parent.verticalCenter
            text: row.code
            wrapMode: Text.NoWrap
            font.family: Look.mono
            font.weight: Font.DemiBold
            color: row.faint ? Look.quiet : Look.ink
        }
        Column {
            id: lines

            anchors.left: code.right
            anchors.leftMargin: 8
            anchors.right: row.narrow ? parent.right : mark.left
            anchors.rightMargin: 8
            anchors.verticalCenter: parent.verticalCenter

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
            width: Math.min(implicitWidth, row.width * 0.4)
            horizontalAlignment: Text.AlignRight
            anchors.right: parent.right
            anchors.rightMargin: 16
            anchors.verticalCenter: parent.verticalCenter
            text: row.due === "" ? "" : "▸ " + row.due
            font.weight: Font.DemiBold
            color: Look.act
        }
    }
}
