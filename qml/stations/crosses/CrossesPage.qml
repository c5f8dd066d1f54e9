// SPDX-License-Identifier: GPL-3.0-or-later
// Choosing crosses: what is proposed and how sure, and every possible cross to pin or forbid.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session

    CrossingChoice {
        id: choice

        session: page.session
    }
    RowList {
        id: list

        objectName: "crossesList"
        anchors.fill: parent
        model: choice.rows
        // Another list begins at its top; one that a cross was pinned in stays where it is.
        onCountChanged: Qt.callLater(list.positionViewAtBeginning)
        header: Column {
            width: list.width
            topPadding: 16
            bottomPadding: 12
            spacing: 12

            Say {
                x: 24
                width: parent.width - 48
                text: qsTr("Crosses to make")
                font.pixelSize: Look.title
                Accessible.role: Accessible.Heading
            }
            Choice {
                objectName: "aim"
                x: 24
                width: parent.width - 48
                says: qsTr("what matters most")
                choices: choice.aims
                chosen: choice.aim
                onPicked: value => choice.aim = value
            }
            Flow {
                x: 24
                width: parent.width - 48
                spacing: 8

                Press {
                    objectName: "everyFemale"
                    most: parent.width
                    text: qsTr("as if every female cones")
                    checked: choice.everyFemale
                    Accessible.role: Accessible.CheckBox
                    Accessible.checked: checked
                    onClicked: choice.everyFemale = !choice.everyFemale
                }
                Press {
                    objectName: "hybrids"
                    most: parent.width
                    text: qsTr("hybrids too")
                    checked: choice.hybrids
                    Accessible.role: Accessible.CheckBox
                    Accessible.checked: checked
                    onClicked: choice.hybrids = !choice.hybrids
                }
                Press {
                    objectName: "anyRoom"
                    most: parent.width
                    text: qsTr("whatever the room")
                    checked: choice.anyRoom
                    Accessible.role: Accessible.CheckBox
                    Accessible.checked: checked
                    onClicked: choice.anyRoom = !choice.anyRoom
                }
                Press {
                    objectName: "freeAll"
                    most: parent.width
                    visible: choice.fixed
                    text: qsTr("take back what is fixed")
                    weight: "quiet"
                    onClicked: choice.freeAll()
                }
            }
            // Always so high, so that the list stays where it is.
            Item {
                x: 24
                width: parent.width - 48
                height: underway.implicitHeight

                Say {
                    id: underway

                    objectName: "crossesReckoning"
                    width: parent.width
                    visible: choice.reckoning
                    text: qsTr("Reckoning …")
                    font.pixelSize: Look.tiny
                    color: Look.quiet
                    Accessible.role: Accessible.AlertMessage
                }
            }
            Say {
                objectName: "crossesFault"
                x: 24
                width: parent.width - 48
                visible: text !== ""
                text: choice.fault
                color: Look.lost
                Accessible.role: Accessible.AlertMessage
            }
            Column {
                x: 24
                width: parent.width - 48

                Repeater {
                    model: choice.summary

                    Say {
                        required property string modelData
                        required property int index

                        width: parent.width
                        text: modelData
                        font.pixelSize: index === 0 ? Look.large : Look.plain
                        color: index === 0 ? Look.ink : Look.quiet
                    }
                }
            }
        }
        delegate: PossibleCross {
            width: list.width
            onPinned: key => choice.pin(key)
            onForbidden: key => choice.forbid(key)
        }
        footer: Column {
            width: list.width
            topPadding: 12
            bottomPadding: 24

            Heading {
                x: 24
                width: parent.width - 48
                text: qsTr("To know of this")
            }
            Repeater {
                model: choice.remarks

                Say {
                    required property string modelData

                    x: 24
                    width: list.width - 48
                    text: modelData
                    font.pixelSize: Look.tiny
                    color: Look.quiet
                    bottomPadding: 4
                }
            }
        }
    }
}
