// SPDX-License-Identifier: GPL-3.0-or-later
// A row that is tapped: a line below it, a mark at the edge of the chosen one, a ring where the
// keyboard is.
import QtQuick
import QtQuick.Templates as T
import ConelineWindow

T.ItemDelegate {
    id: row

    property bool chosen: false

    focusPolicy: Look.focusByTab
    Accessible.role: Accessible.ListItem
    Keys.onReturnPressed: row.clicked()
    Keys.onEnterPressed: row.clicked()

    background: Rectangle {
        color: row.chosen ? Look.sheet : row.down ? Look.flow : "transparent"

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
}
