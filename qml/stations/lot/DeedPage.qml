// SPDX-License-Identifier: GPL-3.0-or-later
// One deed as a form, in place of the lot it is done to.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property string code: ""
    property string deed: ""
    signal closed
    signal entered(string made)

    function enter() {
        if (deedForm.submit())
            page.entered(deedForm.made.length > 0 ? deedForm.made[0] : "");
    }

    Form {
        id: deedForm

        session: page.session
        code: page.code
        deed: page.deed
    }
    Flickable {
        width: parent.width
        anchors.top: parent.top
        anchors.bottom: foot.top
        clip: true
        contentHeight: content.height + 32
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: content

            x: 24
            y: 16
            width: Math.min(parent.width - 48, 640)
            spacing: 16

            Flow {
                width: parent.width
                spacing: 16

                Say {
                    width: Math.min(implicitWidth, content.width)
                    text: deedForm.title
                    font.pixelSize: Look.title
                    Accessible.role: Accessible.Heading
                }
                Say {
                    topPadding: Look.title - Look.large
                    visible: page.code !== ""
                    text: page.code
                    font.family: Look.mono
                    font.pixelSize: Look.large
                    color: Look.quiet
                }
            }
            SplitBar {
                width: parent.width
                pieces: deedForm.pieces
                total: deedForm.piecesTotal
            }
            Flow {
                width: parent.width
                spacing: 16

                Repeater {
                    model: deedForm.fields

                    FormField {
                        width: kind === "count" || kind === "day" ? Math.min(Look.wide(280), content.width) : content.width
                        form: deedForm
                        wrong: deedForm.faultField === key
                        onFinished: page.enter()
                    }
                }
            }
            Repeater {
                model: deedForm.cautions

                Caution {
                    required property string modelData

                    width: content.width
                    text: modelData
                }
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

        Rectangle {
            width: parent.width
            height: 1
            color: Look.rule
        }
        Say {
            objectName: "formFault"
            width: parent.width
            visible: text !== ""
            text: deedForm.fault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Row {
            spacing: 16

            Press {
                objectName: "enter"
                text: qsTr("Enter it")
                weight: "act"
                onClicked: page.enter()
            }
            Press {
                text: qsTr("back")
                weight: "quiet"
                onClicked: page.closed()
            }
        }
    }
}
