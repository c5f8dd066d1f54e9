// SPDX-License-Identifier: GPL-3.0-or-later
// One bar that splits as its pieces are counted: lengths are true to the counts, and the sum that
// must come out is always there.
import QtQuick
import ConelineWindow

Column {
    id: split

    required property Rows pieces
    property string total: ""

    visible: pieces.count > 0
    spacing: 8

    Rectangle {
        id: bar

        width: parent.width
        height: Math.max(32, Look.wide(26))
        color: Look.sheet
        border.color: Look.quiet
        border.width: 1

        Row {
            anchors.fill: parent
            anchors.margins: 1

            Repeater {
                model: split.pieces

                Rectangle {
                    id: part

                    required property real share
                    required property string role
                    required property string figure

                    width: (split.width - 2) * share
                    height: bar.height - 2
                    color: role === "quiet" ? "transparent" : Look.role(role)

                    Words {
                        anchors.centerIn: parent
                        visible: implicitWidth + 8 < part.width
                        text: part.figure
                        font.pixelSize: Look.tiny
                        color: part.role === "quiet" ? Look.ink : Look.paper
                    }
                    // Pieces of one colour are told apart.
                    Rectangle {
                        anchors.right: parent.right
                        visible: part.width > 4
                        width: 1
                        height: parent.height
                        color: Look.paper
                    }
                }
            }
        }
    }
    Flow {
        width: parent.width
        spacing: 16

        Repeater {
            model: split.pieces

            Row {
                id: piece

                required property string label
                required property string figure
                required property string role
                required property int count

                spacing: 8

                Rectangle {
                    width: 12
                    height: 12
                    anchors.verticalCenter: parent.verticalCenter
                    color: piece.role === "quiet" ? Look.sheet : Look.role(piece.role)
                    border.color: Look.quiet
                    border.width: piece.role === "quiet" ? 1 : 0
                }
                Say {
                    text: piece.count < 0 ? qsTr("%1 too many").arg(String(-piece.count)) : piece.figure + " " + piece.label
                    color: piece.count < 0 ? Look.lost : Look.ink
                    font.pixelSize: Look.tiny
                }
            }
        }
        Say {
            text: qsTr("together %1").arg(split.total)
            color: Look.quiet
            font.pixelSize: Look.tiny
        }
    }
}
