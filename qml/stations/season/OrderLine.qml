// SPDX-License-Identifier: GPL-3.0-or-later
// One thing to buy: by when, what, from whom, for how much.
import QtQuick
import ConelineWindow

Item {
    id: line

    required property string by
    required property string what
    required property string from
    required property string price
    required property string weight
    /// The day stands above where there is no room beside.
    readonly property bool narrow: width < Look.wide(520)

    implicitHeight: words.y + words.height + 8
    Accessible.role: Accessible.ListItem
    Accessible.name: qsTr("order by %1: %2 of %3, %4").arg(by).arg(what).arg(from).arg(price)

    Rectangle {
        width: parent.width
        height: 1
        color: Look.rule
    }
    Say {
        id: day

        y: 8
        width: Look.wide(120)
        text: line.by
        font.weight: Font.DemiBold
    }
    Column {
        id: words

        x: line.narrow ? 0 : day.width + 8
        y: line.narrow ? Math.max(day.y + day.height, cost.y + cost.height) : 8
        width: line.width - x - (line.narrow ? 0 : cost.width + 8)

        Say {
            width: parent.width
            text: line.what
        }
        Say {
            width: parent.width
            text: line.from + (line.weight === "" ? "" : " · " + line.weight)
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
    }
    Say {
        id: cost

        y: 8
        width: Look.wide(112)
        anchors.right: parent.right
        text: line.price
        horizontalAlignment: Text.AlignRight
    }
}
