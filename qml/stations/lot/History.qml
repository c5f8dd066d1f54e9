// SPDX-License-Identifier: GPL-3.0-or-later
// What happened, the latest first. A wrong entry is taken back by one that names it.
import QtQuick
import ConelineWindow

Column {
    id: past

    required property Rows history
    property int asked: -1
    signal reversed(int entry)

    visible: past.history.count > 0

    Heading {
        text: qsTr("History")
    }
    Repeater {
        model: past.history

        Item {
            id: entry

            required property int index
            required property int entry
            required property string day
            required property string told
            required property string note
            required property bool reversible
            readonly property bool asking: past.asked === entry.entry

            width: past.width
            height: Math.max(56, words.height + 16)

            Rectangle {
                width: parent.width
                height: 1
                color: Look.rule
            }
            Say {
                id: day

                width: 112
                anchors.verticalCenter: parent.verticalCenter
                text: entry.day
                color: Look.quiet
            }
            Column {
                id: words

                anchors.left: day.right
                anchors.right: buttons.left
                anchors.rightMargin: 8
                anchors.verticalCenter: parent.verticalCenter

                Say {
                    width: parent.width
                    text: entry.told
                    color: entry.reversible ? Look.ink : Look.quiet
                }
                Say {
                    width: parent.width
                    visible: entry.note !== ""
                    text: entry.note
                    font.pixelSize: Look.tiny
                    color: Look.quiet
                }
            }
            Row {
                id: buttons

                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter

                Press {
                    visible: entry.asking
                    text: qsTr("keep it")
                    weight: "quiet"
                    onClicked: past.asked = -1
                }
                Press {
                    objectName: "takeBack-" + entry.index
                    visible: entry.reversible
                    text: entry.asking ? qsTr("take it back now") : qsTr("take back")
                    weight: entry.asking ? "act" : "quiet"
                    Accessible.name: qsTr("Take back: %1").arg(entry.told)
                    onClicked: {
                        const sure = entry.asking;
                        past.asked = sure ? -1 : entry.entry;
                        if (sure)
                            past.reversed(entry.entry); // this row is made anew
                    }
                }
            }
        }
    }
}
