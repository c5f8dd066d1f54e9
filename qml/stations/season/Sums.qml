// SPDX-License-Identifier: GPL-3.0-or-later
// Sums over the next three months, the next year, and all of the plan.
import QtQuick
import ConelineWindow

Column {
    id: sums

    required property Rows rows
    property string title: ""
    readonly property real column: 88

    Heading {
        text: sums.title
    }
    Row {
        Say {
            width: sums.width - 3 * sums.column
            text: " "
        }
        Repeater {
            model: [qsTr("3 months"), qsTr("12 months"), qsTr("24 months")]

            Say {
                required property string modelData

                width: sums.column
                text: modelData
                horizontalAlignment: Text.AlignRight
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
        }
    }
    Repeater {
        model: sums.rows

        Item {
            id: row

            required property string name
            required property string soon
            required property string year
            required property string all

            width: sums.width
            height: line.height + 12

            Rectangle {
                width: parent.width
                height: 1
                color: Look.rule
            }
            Row {
                id: line

                y: 6

                Say {
                    width: sums.width - 3 * sums.column
                    text: row.name
                }
                Repeater {
                    model: [row.soon, row.year, row.all]

                    Say {
                        required property string modelData

                        width: sums.column
                        text: modelData
                        horizontalAlignment: Text.AlignRight
                    }
                }
            }
        }
    }
}
