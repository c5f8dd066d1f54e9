// SPDX-License-Identifier: GPL-3.0-or-later
// The round on the way: the tray in the hand with three large counters, and which comes next.
import QtQuick
import ConelineWindow

Item {
    id: going

    required property RoundWalk walk
    required property CameraScan camera
    readonly property bool narrow: width < Look.wide(560)
    readonly property bool holding: walk.inHand !== ""
    signal letter(string text)

    Shortcut {
        sequence: "F2"
        enabled: going.visible && going.holding
        onActivated: going.walk.count(going.walk.roots + 1, going.walk.leaves, going.walk.dead)
    }
    Shortcut {
        sequence: "F3"
        enabled: going.visible && going.holding
        onActivated: going.walk.count(going.walk.roots, going.walk.leaves + 1, going.walk.dead)
    }
    Shortcut {
        sequence: "F4"
        enabled: going.visible && going.holding
        onActivated: going.walk.count(going.walk.roots, going.walk.leaves, going.walk.dead + 1)
    }
    Shortcut {
        sequence: "F5"
        enabled: going.visible && going.holding
        onActivated: going.walk.enter()
    }
    // Scrolls where large text leaves no room for the counters.
    Scroll {
        anchors.fill: parent
        contentHeight: sheet.height
        interactive: contentHeight > height

        Item {
            id: sheet

            width: going.width
            height: Math.max(going.height, head.height + foot.height + 56 + (going.holding ? Math.max(roots.least, leaves.least, dead.least) : 160))

            Column {
                id: head

                x: 24
                y: 16
                width: parent.width - 48
                spacing: 4

                Say {
                    objectName: "roundProgress"
                    width: parent.width
                    text: going.walk.next === "" ? qsTr("%1 seen · all were found").arg(going.walk.progress) : qsTr("%1 seen · next: %2").arg(going.walk.progress).arg(going.walk.next)
                    color: Look.quiet
                }
                Say {
                    objectName: "roundTray"
                    width: parent.width
                    text: going.holding ? going.walk.inHand : qsTr("Scan a tray")
                    font.family: going.holding ? Look.mono : Look.sans
                    font.pixelSize: Look.huge
                    font.weight: Font.DemiBold
                    Accessible.role: Accessible.Heading
                }
                Say {
                    width: parent.width
                    visible: text !== ""
                    text: going.walk.title
                }
                Say {
                    width: parent.width
                    visible: text !== ""
                    text: going.walk.holds === "" ? "" : going.walk.holds + " · " + going.walk.place
                    font.pixelSize: Look.large
                    font.weight: Font.DemiBold
                }
                Row {
                    visible: going.walk.bench !== ""
                    spacing: 16
                    width: parent.width

                    Say {
                        objectName: "roundBench"
                        width: parent.width - stay.width - 16
                        anchors.verticalCenter: parent.verticalCenter
                        text: qsTr("What is scanned now moves to %1").arg(going.walk.bench)
                        color: Look.act
                        font.weight: Font.DemiBold
                    }
                    Press {
                        id: stay

                        objectName: "roundStay"
                        text: qsTr("Stop moving")
                        onClicked: going.walk.leaveBench()
                    }
                }
                Say {
                    objectName: "roundSaid"
                    width: parent.width
                    visible: text !== ""
                    text: going.walk.fault !== "" ? "✕ " + going.walk.fault : going.walk.said === "" ? "" : "✓ " + going.walk.said
                    color: going.walk.fault !== "" ? Look.lost : Look.link
                    font.weight: Font.DemiBold
                    Accessible.role: Accessible.AlertMessage
                }
                Say {
                    width: parent.width
                    visible: text !== ""
                    text: going.camera.says
                    color: Look.quiet
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
                spacing: going.narrow ? 8 : 16
                visible: going.holding

                Counter {
                    id: roots

                    objectName: "roundRoots"
                    width: counters.each
                    height: counters.height
                    says: qsTr("new roots")
                    value: going.walk.roots
                    onCounted: value => going.walk.count(value, going.walk.leaves, going.walk.dead)
                    onLetter: text => going.letter(text)
                }
                Counter {
                    id: leaves

                    objectName: "roundLeaves"
                    width: counters.each
                    height: counters.height
                    says: qsTr("new leaves")
                    value: going.walk.leaves
                    onCounted: value => going.walk.count(going.walk.roots, value, going.walk.dead)
                    onLetter: text => going.letter(text)
                }
                Counter {
                    id: dead

                    objectName: "roundDead"
                    width: counters.each
                    height: counters.height
                    says: qsTr("taken out dead")
                    tone: Look.lost
                    value: going.walk.dead
                    onCounted: value => going.walk.count(going.walk.roots, going.walk.leaves, value)
                    onLetter: text => going.letter(text)
                }
            }
            // A tray whose label cannot be read is taken into the hand by a tap.
            RowList {
                objectName: "roundToCome"
                anchors.fill: counters
                anchors.leftMargin: -24
                anchors.rightMargin: -24
                visible: !going.holding && !going.camera.active
                model: going.walk.toCome
                header: Heading {
                    x: 24
                    bottomPadding: 4
                    visible: going.walk.toCome.count > 0
                    text: qsTr("Still to come, in walking order")
                }
                delegate: ListRow {
                    id: row

                    required what
                    required place

                    objectName: "toCome-" + row.code
                    width: ListView.view.width
                    onClicked: going.walk.scan(row.code)
                }
            }
            Picture {
                anchors.fill: counters
                visible: !going.holding && going.camera.active
                image: going.camera.image
            }
            Column {
                id: foot

                x: 24
                width: parent.width - 48
                anchors.bottom: parent.bottom
                anchors.bottomMargin: 16
                spacing: 8

                Press {
                    objectName: "roundEnter"
                    width: parent.width
                    implicitHeight: Math.max(72, wordsHeight + 16)
                    visible: going.holding
                    weight: "act"
                    text: going.walk.counted ? qsTr("Enter it (F5), or scan the next") : qsTr("Nothing new (F5)")
                    onClicked: going.walk.enter()
                }
                Row {
                    width: parent.width
                    spacing: 8

                    Press {
                        objectName: "roundUndo"
                        width: (parent.width - 16) / 3
                        implicitHeight: Math.max(64, wordsHeight + 16)
                        enabled: going.walk.undoable
                        text: qsTr("‹ undo")
                        onClicked: going.walk.undo()
                    }
                    Press {
                        objectName: "roundCamera"
                        width: (parent.width - 16) / 3
                        implicitHeight: Math.max(64, wordsHeight + 16)
                        checked: going.camera.active
                        text: qsTr("Camera")
                        onClicked: going.camera.active = !going.camera.active
                    }
                    Press {
                        objectName: "roundEnd"
                        width: (parent.width - 16) / 3
                        implicitHeight: Math.max(64, wordsHeight + 16)
                        text: qsTr("End the round")
                        onClicked: going.walk.end()
                    }
                }
            }
        }
    }
}
