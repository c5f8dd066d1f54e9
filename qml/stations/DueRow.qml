// SPDX-License-Identifier: GPL-3.0-or-later
// One thing that is due: why, since when, and the button that begins it.
import QtQuick
import QtQuick.Templates as T
import ConelineWindow

T.ItemDelegate {
    id: row

    required property string code
    required property string verb
    required property string word
    required property string told
    required property string since
    property bool chosen: false
    required property string key
    required property bool atOnce
    signal wanted
    signal later

    focusPolicy: Qt.TabFocus
    implicitHeight: Math.max(80, lines.implicitHeight + 20)
    Accessible.role: Accessible.ListItem
    Accessible.name: told + ", " + since
    Keys.onReturnPressed: row.clicked()

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
            width: parent.width - begin.width - later.width - 56
            anchors.verticalCenter: parent.verticalCenter

            Say {
                text: row.code
                font.family: Look.mono
                font.weight: Font.DemiBold
                Accessible.ignored: true
            }
            Say {
                width: parent.width
                text: row.told
                Accessible.ignored: true
            }
            Say {
                width: parent.width
                text: row.since
                font.pixelSize: Look.tiny
                color: Look.quiet
                Accessible.ignored: true
            }
        }
        Press {
            id: later

            anchors.right: begin.left
            anchors.rightMargin: 8
            anchors.verticalCenter: parent.verticalCenter
            width: 72
            text: qsTr("later")
            visible: row.verb !== "later"
            Accessible.name: qsTr("put off or strike: %1").arg(row.told)
            onClicked: row.later()
        }
        Press {
            id: begin

            anchors.right: parent.right
            anchors.rightMargin: 16
            anchors.verticalCenter: parent.verticalCenter
            width: 112
            text: row.word
            Accessible.name: row.word + " " + row.code
            contentItem: Say {
                text: row.word
                color: Look.act
                font.weight: Font.DemiBold
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
                Accessible.ignored: true
            }
            onClicked: row.wanted()
        }
    }
}
