// SPDX-License-Identifier: GPL-3.0-or-later
// Says what belongs here while nothing does.
import QtQuick
import ConelineWindow

Column {
    id: empty

    property string belongs: ""
    property string next: ""
    signal taken

    spacing: 16

    Say {
        width: parent.width
        text: empty.belongs
        color: Look.quiet
        font.pixelSize: Look.large
    }
    Press {
        visible: empty.next !== ""
        text: empty.next
        weight: "act"
        onClicked: empty.taken()
    }
}
