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
        anchors.fill: parent
        clip: true
        contentHeight: content.height + 32
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: content

            x: 24
            y: 16
            width: Math.min(parent.width - 48, 640)
            spacing: 16

            Row {
                spacing: 16

                Say {
                    text: deedForm.title
                    font.pixelSize: Look.title
                    Accessible.role: Accessible.Heading
                }
                Say {
                    anchors.baseline: parent.children[0].baseline
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
            Repeater {
                model: deedForm.fields

                FormField {
                    width: content.width
                    form: deedForm
                    wrong: deedForm.faultField === key
                    onFinished: page.enter()
                }
            }
            Say {
                objectName: "formFault"
                width: parent.width
                visible: deedForm.fault !== "" && deedForm.faultField === ""
                text: deedForm.fault
                color: Look.lost
                Accessible.role: Accessible.AlertMessage
            }
            Repeater {
                model: deedForm.cautions

                Caution {
                    required property string modelData

                    width: content.width
                    text: modelData
                }
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
}
