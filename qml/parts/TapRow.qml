// SPDX-License-Identifier: GPL-3.0-or-later
// A row that is tapped: a line below it, a mark at the edge of the chosen one, a ring where the
// keyboard is.
import QtQuick
import ConelineWindow

Tap {
    id: row

    property bool chosen: false

    ringMargin: 1
    Accessible.role: Accessible.ListItem

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
    }
}
