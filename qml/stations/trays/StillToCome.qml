// SPDX-License-Identifier: GPL-3.0-or-later
// Of a tray in which seed waits: how many still come up, by when, and whether it is done.
import QtQuick
import ConelineWindow

Column {
    id: part

    required property Session session
    required property string code

    visible: outlook.tray
    spacing: 8

    TrayOutlook {
        id: outlook

        session: part.session
        code: part.code
    }
    Heading {
        text: qsTr("Still to come")
    }
    Say {
        width: parent.width
        visible: outlook.lines.length === 0
        text: qsTr("working it out …")
        color: Look.quiet
    }
    Repeater {
        model: outlook.lines

        Say {
            required property string modelData

            objectName: "outlook"
            width: part.width
            text: modelData
        }
    }
}
