// SPDX-License-Identifier: GPL-3.0-or-later
// The harvest table: what is counted now, the batch as it is split, how many are filled, what to do
// with the floaters.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property string batch: ""
    readonly property var words: ({
            "lost": qsTr("Cleaning"),
            "float": qsTr("Float"),
            "again": qsTr("Float again"),
            "sinkers": qsTr("Cut sinkers"),
            "floaters": qsTr("Cut floaters")
        })
    signal closed
    signal letter(string text)

    /// Counts that were not entered yet go into the book. False where they are refused.
    function settle(): bool {
        return !table.pending || table.record();
    }

    AtTable {
        id: table

        session: page.session
        batch: page.batch
    }
    Scroll {
        anchors.top: parent.top
        anchors.bottom: foot.top
        width: parent.width
        contentHeight: content.height + 24

        Column {
            id: content

            x: 24
            y: 12
            width: parent.width - 48
            spacing: 12

            Flow {
                width: parent.width
                spacing: 16

                Say {
                    text: page.batch
                    font.family: Look.mono
                    font.pixelSize: Look.title
                    font.weight: Font.DemiBold
                    Accessible.role: Accessible.Heading
                }
                Say {
                    topPadding: y > 0 ? 0 : Look.title - Look.plain
                    width: Math.min(implicitWidth, content.width)
                    text: table.title
                    color: Look.quiet
                }
            }
            Say {
                objectName: "tableNext"
                width: parent.width
                text: table.next
                font.pixelSize: Look.large
            }
            SplitBar {
                objectName: "tableSplit"
                width: parent.width
                pieces: table.pieces
                total: table.total
            }
            Flow {
                width: parent.width
                spacing: 8

                Repeater {
                    model: table.doings

                    Press {
                        required property string modelData

                        objectName: "doing-" + modelData
                        text: page.words[modelData]
                        checked: table.doing === modelData
                        onClicked: if (page.settle())
                            table.doing = modelData
                    }
                }
            }
            Row {
                id: counters

                readonly property bool both: table.second_says !== ""

                width: parent.width
                height: Math.max(216, one.least, two.least)
                spacing: 16
                visible: table.doings.length > 0

                Counter {
                    id: one

                    objectName: "first"
                    width: counters.both ? (parent.width - 16) / 2 : parent.width
                    height: parent.height
                    implicitHeight: height
                    says: table.first_says
                    tone: table.doing === "lost" ? Look.lost : Look.ink
                    value: table.first
                    onCounted: value => table.first = value
                    onLetter: text => page.letter(text)
                }
                Counter {
                    id: two

                    objectName: "second"
                    visible: counters.both
                    width: (parent.width - 16) / 2
                    height: parent.height
                    implicitHeight: height
                    says: table.second_says
                    tone: Look.lost
                    value: table.second
                    onCounted: value => table.second = value
                    onLetter: text => page.letter(text)
                }
            }
            Column {
                width: parent.width
                visible: table.ranges.count > 0
                spacing: 12

                Heading {
                    text: qsTr("How many are filled")
                }
                Repeater {
                    model: table.ranges

                    Column {
                        id: entry

                        required property string label
                        required property string figure
                        required property string likely
                        required property string hint
                        required property double low
                        required property double high
                        required property double at

                        width: content.width
                        spacing: 2

                        Say {
                            width: parent.width
                            text: entry.label + ": " + entry.figure + (entry.likely === "" ? "" : ", " + entry.likely)
                        }
                        RangeBar {
                            width: parent.width
                            low: entry.low
                            high: entry.high
                            likely: entry.at
                            Accessible.name: entry.label + ": " + entry.figure
                        }
                        Say {
                            width: parent.width
                            visible: text !== ""
                            text: entry.hint
                            color: Look.quiet
                            font.pixelSize: Look.tiny
                        }
                    }
                }
            }
            Column {
                width: parent.width
                spacing: 8

                Heading {
                    text: qsTr("The floaters")
                }
                Say {
                    objectName: "tableDecision"
                    width: parent.width
                    text: table.decision
                }
                Repeater {
                    model: table.choices

                    Say {
                        required property string label
                        required property string plants
                        required property string cost
                        required property string gain
                        required property bool chosen

                        width: content.width
                        text: (chosen ? "› " : "   ") + label + ": " + plants + ", " + cost + ", " + gain
                        font.weight: chosen ? Font.DemiBold : Font.Normal
                    }
                }
                Say {
                    width: parent.width
                    text: table.floatTold
                    color: Look.quiet
                }
                Press {
                    objectName: "acceptFloat"
                    visible: table.suggestion !== ""
                    text: table.suggestion
                    onClicked: table.accept()
                }
            }
            Caution {
                width: parent.width
                text: qsTr("seed is poisonous, cut seed most of all. Gloves; keep children and animals away; if any was eaten, see a vet or doctor at once.")
            }
        }
    }
    Column {
        id: foot

        x: 24
        width: parent.width - 48
        anchors.bottom: parent.bottom
        anchors.bottomMargin: 16
        spacing: 8

        Say {
            objectName: "tableFault"
            width: parent.width
            visible: text !== ""
            text: table.fault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Row {
            width: parent.width
            spacing: 16

            Press {
                objectName: "enterTable"
                width: Math.round(parent.width * 0.55)
                implicitHeight: Math.max(64, wordsHeight + 16)
                weight: "act"
                enabled: table.pending
                text: qsTr("Enter it")
                onClicked: table.record()
            }
            Press {
                objectName: "lineAndHistory"
                width: parent.width - x
                implicitHeight: Math.max(64, wordsHeight + 16)
                text: qsTr("Line and history")
                weight: "quiet"
                onClicked: page.closed()
            }
        }
    }
}
