// SPDX-License-Identifier: GPL-3.0-or-later
// A round from a folder of pictures: what was seen, what was not, and moves to look at.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property alias pictures: pictures
    signal over

    RoundPictures {
        id: pictures

        session: page.session
    }
    DropArea {
        anchors.fill: parent
        onDropped: drop => {
            if (drop.hasUrls)
                folder.text = drop.urls[0];
        }
    }
    RowList {
        id: list

        readonly property real room: width - 24

        anchors.fill: parent
        anchors.topMargin: 24
        anchors.bottomMargin: 24
        anchors.leftMargin: 24 // at the right it reaches the page's edge, where its mark stands
        model: pictures.rest
        header: Column {
            width: list.room
            spacing: 12
            bottomPadding: 12

            Say {
                width: parent.width
                text: qsTr("A round from pictures")
                font.pixelSize: Look.title
                Accessible.role: Accessible.Heading
            }
            Say {
                width: parent.width
                text: qsTr("Drop the folder here, or write where it is. Each tray found is marked as seen on the picture's day; moves are entered only when you say so.")
                color: Look.quiet
            }
            Field {
                id: folder

                objectName: "picturesFolder"
                width: parent.width
                says: qsTr("folder of the pictures")
                placeholderText: qsTr("folder of the pictures")
            }
            Choice {
                id: place

                objectName: "picturesPlace"
                width: parent.width
                says: qsTr("place that was pictured")
                choices: pictures.places
                chosen: pictures.places.length > 0 ? pictures.places[0] : ""
                onPicked: value => chosen = value
            }
            Field {
                id: day

                objectName: "picturesDay"
                width: parent.width
                says: qsTr("day of pictures that do not say theirs; may stay empty")
                placeholderText: qsTr("day of pictures that do not say theirs")
            }
            Flow {
                width: parent.width
                spacing: 8

                Press {
                    objectName: "picturesRead"
                    text: qsTr("Read them")
                    weight: "act"
                    visible: !pictures.reading
                    onClicked: pictures.read(folder.text, place.chosen, day.text)
                }
                Press {
                    objectName: "picturesStop"
                    text: qsTr("Stop")
                    visible: pictures.reading
                    onClicked: pictures.stop()
                }
                Press {
                    text: qsTr("back")
                    weight: "quiet"
                    onClicked: page.over()
                }
            }
            Say {
                width: parent.width
                visible: text !== ""
                text: pictures.progress
                color: Look.quiet
            }
            Say {
                objectName: "picturesSaid"
                width: parent.width
                visible: text !== ""
                text: pictures.said
                font.weight: Font.DemiBold
            }
            Say {
                objectName: "picturesFault"
                width: parent.width
                visible: text !== ""
                text: pictures.fault
                color: Look.lost
                Accessible.role: Accessible.AlertMessage
            }
            Heading {
                visible: pictures.moves.count > 0
                text: qsTr("Moves to look at")
            }
            Repeater {
                model: pictures.moves

                Row {
                    id: move

                    required property int index
                    required property string code
                    required property string what
                    required property string doubt
                    required property bool wanted

                    spacing: 12

                    Press {
                        id: want

                        objectName: "move-" + move.code
                        width: Look.wide(96)
                        text: move.wanted ? qsTr("enter") : qsTr("leave")
                        checked: move.wanted
                        Accessible.name: qsTr("%1: enter the move").arg(move.code)
                        onClicked: pictures.want(move.index, !move.wanted)
                    }
                    Column {
                        width: list.room - want.width - 12

                        Say {
                            width: parent.width
                            text: move.code + "  " + move.what
                        }
                        Say {
                            width: parent.width
                            visible: text !== ""
                            text: move.doubt
                            color: Look.act
                        }
                    }
                }
            }
            Press {
                objectName: "picturesAccept"
                visible: pictures.moves.count > 0
                enabled: pictures.wanted > 0
                weight: "act"
                text: qsTr("Enter %n move(s)", "", pictures.wanted)
                onClicked: pictures.accept()
            }
        }
        section.property: "heading"
        section.delegate: Heading {
            required property string section

            text: section
            width: list.room
        }
        delegate: Say {
            required property string code
            required property string what

            width: list.room
            topPadding: 4
            text: code + "  " + what
        }
    }
}
