// SPDX-License-Identifier: GPL-3.0-or-later
// A short caution, where the step is.
import QtQuick
import ConelineWindow

Row {
    id: caution

    property string text: ""

    spacing: 8

    Rectangle {
        width: 4
        height: words.height
        color: Look.act
    }
    Say {
        id: words

        width: caution.width - 12
        text: qsTr("Caution: %1").arg(caution.text)
        font.pixelSize: Look.tiny
    }
}
