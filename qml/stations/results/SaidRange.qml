// SPDX-License-Identifier: GPL-3.0-or-later
// A share in words and its range as a bar, which stands below where there is no room beside.
import QtQuick
import ConelineWindow

Flow {
    id: range

    property string says: ""
    /// From 0 to 1; below 0 there is no range to show.
    property real low: -1
    property real high: -1
    property real most: Infinity

    width: Math.min(most, Math.ceil(words.implicitWidth + (bar.visible ? spacing + bar.width : 0)))
    spacing: 12

    Say {
        id: words

        width: Math.min(implicitWidth, range.most)
        text: range.says
    }
    RangeBar {
        id: bar

        height: words.lineCount > 1 ? implicitHeight : words.height
        visible: range.low >= 0
        low: range.low
        high: range.high
    }
}
