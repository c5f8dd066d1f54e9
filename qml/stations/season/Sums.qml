// SPDX-License-Identifier: GPL-3.0-or-later
// Sums over the next three months, the next year, and all of the plan.
import QtQuick
import ConelineWindow

Column {
    id: sums

    required property Rows rows
    property string title: ""
    readonly property real column: Math.min(Look.wide(88), width / 3)
    /// The name stands above its figures where there is no room beside.
    readonly property bool narrow: width - 3 * column < Look.wide(120)

    Heading {
        text: sums.title
    }
    Row {
        Say {
            width: sums.narrow ? 0 : sums.width - 3 * sums.column
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
            Flow {
                id: line

                y: 6
                width: sums.width

                Say {
                    width: sums.narrow ? sums.width : sums.width - 3 * sums.column
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
