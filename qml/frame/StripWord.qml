// SPDX-License-Identifier: GPL-3.0-or-later
// A word in the strip that leads to a page.
import QtQuick
import ConelineWindow

Tap {
    id: spot

    property string word: ""
    property string figure: ""
    property bool urgent: false
    property bool chosen: false

    ringMargin: 4
    opacity: enabled ? 1 : 0.5
    Accessible.role: Accessible.Button
    Accessible.name: figure === "" ? word : word + ", " + figure

    contentItem: Item {
        Column {
            anchors.centerIn: parent
            width: parent.width - 8

            Words {
                width: parent.width
                horizontalAlignment: Text.AlignHCenter
                text: spot.word
                font.weight: spot.chosen ? Look.strong : Look.regular
                color: spot.chosen ? Look.link : Look.ink
            }
            Words {
                width: parent.width
                horizontalAlignment: Text.AlignHCenter
                visible: spot.figure !== ""
                text: spot.figure
                font.pixelSize: Look.tiny
                font.weight: spot.urgent ? Look.strong : Look.regular
                color: spot.urgent ? Look.act : Look.quiet
            }
        }
    }
    background: Item {
        Rectangle {
            visible: spot.chosen
            anchors.bottom: parent.bottom
            anchors.horizontalCenter: parent.horizontalCenter
            width: parent.width - 24
            height: 3
            color: Look.link
        }
    }
}
