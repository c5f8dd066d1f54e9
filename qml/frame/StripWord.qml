// SPDX-License-Identifier: GPL-3.0-or-later
// A word in the strip that leads to a page.
import QtQuick
import QtQuick.Templates as T
import ConelineWindow

T.AbstractButton {
    id: word

    property string word: ""
    property string figure: ""
    property bool urgent: false
    property bool chosen: false

    focusPolicy: Qt.TabFocus
    opacity: enabled ? 1 : 0.5
    Accessible.role: Accessible.Button
    Accessible.name: figure === "" ? word : word + ", " + figure
    Keys.onReturnPressed: word.clicked()

    contentItem: Item {
        Column {
            anchors.centerIn: parent
            width: parent.width - 8

            Say {
                width: parent.width
                horizontalAlignment: Text.AlignHCenter
                text: word.word
                font.weight: word.chosen ? Font.Bold : Font.Normal
                color: word.chosen ? Look.link : Look.ink
                Accessible.ignored: true
            }
            Say {
                width: parent.width
                horizontalAlignment: Text.AlignHCenter
                visible: word.figure !== ""
                text: word.figure
                font.pixelSize: Look.tiny
                font.weight: word.urgent ? Font.DemiBold : Font.Normal
                color: word.urgent ? Look.act : Look.quiet
                Accessible.ignored: true
            }
        }
    }
    background: Item {
        Rectangle {
            visible: word.chosen
            anchors.bottom: parent.bottom
            anchors.horizontalCenter: parent.horizontalCenter
            width: parent.width - 24
            height: 3
            color: Look.link
        }
        Ring {
            anchors.margins: 4
            shown: word.visualFocus
        }
    }
}
