// SPDX-License-Identifier: GPL-3.0-or-later
// One line of the plan; opened, it shows every month.
import QtQuick
import ConelineWindow

TapRow {
    id: row

    required property int index
    required property string group
    required property string name
    required property string unit
    required property bool happens
    required property var low
    required property var middle
    required property var high
    required property real capacity
    required property real highest
    required property string told
    property bool begins: true
    property bool tall: false
    property real names: 220

    objectName: "ahead-" + index
    implicitHeight: content.height
    Accessible.role: Accessible.Button
    Accessible.name: group + ", " + name + ": " + told

    contentItem: Item {
        Column {
            id: content

            width: parent.width

            Heading {
                x: 24
                visible: row.begins
                text: row.group
            }
            Item {
                width: parent.width
                height: row.tall ? words.height + 64 : Math.max(64, words.height + 12)

                Column {
                    id: words

                    x: 24
                    y: row.tall ? 4 : (parent.height - height) / 2
                    width: row.tall ? parent.width - 48 : row.names - 32

                    Say {
                        width: parent.width
                        text: row.name
                        font.weight: Font.DemiBold
                    }
                    Say {
                        width: parent.width
                        text: row.told
                        font.pixelSize: Look.tiny
                        color: Look.quiet
                    }
                }
                MonthStrip {
                    x: row.tall ? 24 : row.names
                    y: row.tall ? words.height + 8 : 6
                    width: parent.width - x - 24
                    height: 52
                    low: row.low
                    middle: row.middle
                    high: row.high
                    happens: row.happens
                    capacity: row.capacity
                    highest: row.highest
                }
            }
        }
    }
}
