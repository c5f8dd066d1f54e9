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
            required property bool stands
            required property bool reversible
            readonly property bool asking: past.asked === entry.entry

            width: past.width
            height: Math.max(56, words.height + 16 + (narrow && buttons.width > 0 ? buttons.height : 0))
            readonly property bool narrow: width < Look.wide(520)

            Rectangle {
                width: parent.width
                height: 1
                color: Look.rule
            }
            Say {
                id: day

                width: Look.wide(96) + 16
                y: words.y
                text: entry.day
                color: Look.quiet
            }
            Column {
                id: words

                anchors.left: day.right
                anchors.right: entry.narrow ? parent.right : buttons.left
                anchors.rightMargin: 8
                y: entry.narrow ? 8 : (parent.height - height) / 2

                Say {
                    width: parent.width
                    text: entry.told
                    color: entry.stands ? Look.ink : Look.quiet
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
                y: entry.narrow ? words.y + words.height : (parent.height - height) / 2

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
