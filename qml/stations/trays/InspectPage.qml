// SPDX-License-Identifier: GPL-3.0-or-later
// A tray in the hand: three counters as large as there is room for.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property string tray: ""
    readonly property bool narrow: width < Look.wide(560)
    signal closed
    signal entered
    signal letter(string text)

    /// Counts that were not entered yet are entered before the next tray takes their place. False
    /// where they are refused; then they stay to be put right.
    function settle(): bool {
        return !look.counted || look.record();
    }

    Inspection {
        id: look

        session: page.session
        tray: page.tray
    }
    // Scrolls where large text leaves no room for the counters.
    Scroll {
        anchors.fill: parent
        contentHeight: sheet.height
        interactive: contentHeight > height

        Item {
            id: sheet

            width: page.width
            height: Math.max(page.height, head.height + foot.height + 56 + Math.max(roots.least, leaves.least, dead.least))

            Column {
                id: head

                x: 24
                y: 16
                width: parent.width - 48
                spacing: 4

                Flow {
                    width: parent.width
                    spacing: 16

                    Say {
                        text: page.tray
                        font.family: Look.mono
                        font.pixelSize: Look.title
                        font.weight: Font.DemiBold
                        Accessible.role: Accessible.Heading
                    }
                    Say {
                        topPadding: y > 0 ? 0 : Look.title - Look.plain
                        width: Math.min(implicitWidth, head.width)
                        text: look.place
                        color: Look.quiet
                    }
                }
                Say {
                    width: parent.width
                    text: look.title
                }
                Say {
                    objectName: "inspectHolds"
                    width: parent.width
                    text: look.holds
                    font.pixelSize: Look.large
                    font.weight: Font.DemiBold
                }
                Say {
                    width: parent.width
                    text: look.expected === "" ? look.looked : look.looked + " · " + look.expected
                    color: look.expected === "" ? Look.quiet : Look.forecast
                }
            }
            Row {
                id: counters

                readonly property real each: (width - 2 * spacing) / 3

                anchors.top: head.bottom
                anchors.topMargin: 16
                anchors.bottom: foot.top
                anchors.bottomMargin: 8
                x: 24
                width: parent.width - 48
                spacing: page.narrow ? 8 : 16

                Counter {
                    id: roots

                    objectName: "roots"
                    width: counters.each
                    height: counters.height
                    says: qsTr("new roots")
                    value: look.roots
                    onCounted: value => look.roots = value
                    onLetter: text => page.letter(text)
                }
                Counter {
                    id: leaves

                    objectName: "leaves"
                    width: counters.each
                    height: counters.height
                    says: qsTr("new leaves")
                    value: look.leaves
                    onCounted: value => look.leaves = value
                    onLetter: text => page.letter(text)
                }
                Counter {
                    id: dead

                    objectName: "dead"
                    width: counters.each
                    height: counters.height
                    says: qsTr("taken out dead")
                    tone: Look.lost
                    value: look.dead
                    onCounted: value => look.dead = value
                    onLetter: text => page.letter(text)
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
                    objectName: "inspectFault"
                    width: parent.width
                    visible: text !== ""
                    text: look.fault
                    color: Look.lost
                    Accessible.role: Accessible.AlertMessage
                }
                Row {
                    width: parent.width
                    spacing: 16

                    Press {
                        objectName: "enterLook"
                        width: Math.round(parent.width * 0.55)
                        implicitHeight: Math.max(64, wordsHeight + 16)
                        weight: "act"
                        text: look.counted ? qsTr("Enter it") : qsTr("Nothing new")
                        onClicked: if (look.record())
                            page.entered()
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
    }
}
