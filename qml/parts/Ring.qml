// SPDX-License-Identifier: GPL-3.0-or-later
// Shows where the keyboard is.
import QtQuick
import ConelineWindow

Rectangle {
    property bool shown: true
    property real margin: -3

    anchors.fill: parent
    anchors.margins: margin
    color: "transparent"
    border.color: Look.link
    border.width: 3
    radius: 6
    visible: shown
}
