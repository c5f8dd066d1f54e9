// SPDX-License-Identifier: GPL-3.0-or-later
// A small table: a heading, names of its columns, rows.
import QtQuick
import ConelineWindow

Column {
    id: table

    required property Rows rows
    property string title: ""
    property var head: []
    property var columns: []
    readonly property real first: width * 0.32
    readonly property real other: (width - first) / Math.max(1, columns.length - 1)

    Heading {
        text: table.title
    }
    Row {
        Repeater {
            model: table.head

            Say {
                required property string modelData
                required property int index

                width: (index === 0 ? table.first : table.other) - 8
                rightPadding: 8
                text: modelData
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
        }
    }
    Repeater {
        model: table.rows

        Item {
            id: line

            required property var model

            width: table.width
            height: cells.height + 12

            Rectangle {
                width: parent.width
                height: 1
                color: Look.rule
            }
            Row {
                id: cells

                y: 6

                Repeater {
                    model: table.columns

                    Say {
                        required property string modelData
                        required property int index

                        width: (index === 0 ? table.first : table.other) - 8
                        rightPadding: 8
                        text: line.model[modelData] ?? ""
                    }
                }
            }
        }
    }
}
