// SPDX-License-Identifier: GPL-3.0-or-later
// One thing that is due: why, since when, and the button that begins it.
import QtQuick
import ConelineWindow

TapRow {
    id: row

    required property string code
    required property string verb
    required property string word
    required property string told
    required property string since
    required property string key
    required property bool atOnce
    /// The buttons stand below where there is no room beside.
    readonly property bool narrow: width < Look.wide(400)
    signal wanted
    signal later

    implicitHeight: Math.max(80, lines.implicitHeight + 20 + (narrow ? begin.height + 8 : 0))
    Accessible.name: told + ", " + since

    contentItem: Item {
        Column {
            id: lines

            x: 16
            width: row.narrow ? parent.width - 32 : parent.width - begin.width - later.width - 56
            y: row.narrow ? 10 : (parent.height - height) / 2

            Words {
                text: row.code
                font.family: Look.mono
                font.weight: Look.strong
            }
            Words {
                width: parent.width
                text: row.told
            }
            Words {
                width: parent.width
                text: row.since
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
        }
        Press {
            id: later

            anchors.right: begin.left
            anchors.rightMargin: 8
            y: begin.y
            width: Math.max(implicitWidth, Look.wide(72))
            text: qsTr("later")
            visible: row.verb !== "later"
            Accessible.name: qsTr("put off or strike: %1").arg(row.told)
            onClicked: row.later()
        }
        Press {
            id: begin

            anchors.right: parent.right
            anchors.rightMargin: 16
            y: row.narrow ? lines.y + lines.height + 8 : (parent.height - height) / 2
            width: Look.wide(120)
            text: row.word
            Accessible.name: row.word + " " + row.code
            tone: Look.act
            onClicked: row.wanted()
        }
    }
}
