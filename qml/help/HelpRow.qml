// SPDX-License-Identifier: GPL-3.0-or-later
// One topic of the help in the list of all.
import QtQuick
import ConelineWindow

TapRow {
    id: row

    property string text: ""

    implicitHeight: Math.max(Look.target, words.implicitHeight + 16)
    Accessible.name: text

    contentItem: Item {
        Words {
            id: words

            x: 12
            width: parent.width - 24
            anchors.verticalCenter: parent.verticalCenter
            text: row.text
            color: Look.link
        }
    }
}
