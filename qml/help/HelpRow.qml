// SPDX-License-Identifier: GPL-3.0-or-later
// One topic of the help in the list of all.
import QtQuick
import QtQuick.Templates as T
import ConelineWindow

T.ItemDelegate {
    id: row

    property bool chosen: false

    focusPolicy: Qt.TabFocus
    implicitHeight: Math.max(Look.target, words.implicitHeight + 16)
    Accessible.role: Accessible.ListItem
    Accessible.name: text
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
            id: words

            x: 12
            width: parent.width - 24
            anchors.verticalCenter: parent.verticalCenter
            text: row.text
            color: Look.link
            Accessible.ignored: true
        }
    }
}
