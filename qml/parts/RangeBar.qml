// SPDX-License-Identifier: GPL-3.0-or-later
// A range on a scale from 0 to 1, with what is likely as a mark.
import QtQuick
import ConelineWindow

Item {
    id: bar

    property real low: 0
    property real high: 0
    property real likely: -1
    property color tone: Look.forecast

    implicitHeight: 20
    implicitWidth: 160
    Accessible.role: Accessible.Indicator

    Rectangle {
        anchors.verticalCenter: parent.verticalCenter
        width: parent.width
        height: 1
        color: Look.rule
    }
    Rectangle {
        x: parent.width * bar.low
        width: Math.max(3, parent.width * (bar.high - bar.low))
        height: 12
        anchors.verticalCenter: parent.verticalCenter
        color: bar.tone
        opacity: 0.45
    }
    Rectangle {
        visible: bar.likely >= 0
        x: parent.width * bar.likely - 2
        width: 4
        height: parent.height
        color: bar.tone
    }
}
