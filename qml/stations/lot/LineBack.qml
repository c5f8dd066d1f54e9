// SPDX-License-Identifier: GPL-3.0-or-later
// From the cone down to this lot: each step as wide as its count, what was lost named at its side.
import QtQuick
import ConelineWindow

Column {
    id: back

    required property Rows line
    readonly property real widest: Math.max(120, width * 0.44)
    signal opened(string code)

    visible: line.count > 0

    Heading {
        text: qsTr("The line back to the cone")
    }
    Repeater {
        model: back.line

        LineStep {
            required property int index

            width: back.width
            widest: back.widest
            first: index === 0
            last: index === back.line.count - 1
            onOpened: back.opened(code)
        }
    }
}
