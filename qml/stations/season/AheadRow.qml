// SPDX-License-Identifier: GPL-3.0-or-later
// One line of the plan; opened, it shows every month.
import QtQuick
import QtQuick.Templates as T
import ConelineWindow

T.ItemDelegate {
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
    property bool opened: false
    property bool tall: false
    property real names: 220

    objectName: "ahead-" + index
    focusPolicy: Qt.TabFocus
    implicitHeight: content.height
    Accessible.role: Accessible.Button
    Accessible.name: group + ", " + name + ": " + told
    Keys.onReturnPressed: row.clicked()
    Keys.onEnterPressed: row.clicked()

    background: Rectangle {
        color: row.opened ? Look.sheet : "transparent"

        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Look.rule
        }
        Ring {
            anchors.margins: 1
            shown: row.visualFocus
        }
    }
    contentItem: Item {
        Column {
            id: content

            width: parent.width

            Heading {
                x: 16
                visible: row.begins
                text: row.group
            }
            Item {
                width: parent.width
                height: row.tall ? words.height + 64 : Math.max(64, words.height + 12)

                Column {
                    id: words

                    x: 16
                    y: row.tall ? 4 : (parent.height - height) / 2
                    width: row.tall ? parent.width - 32 : row.names - 24

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
                    x: row.tall ? 16 : row.names
                    y: row.tall ? words.height + 8 : 6
                    width: parent.width - x - 16
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
