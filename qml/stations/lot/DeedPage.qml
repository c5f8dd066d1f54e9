// SPDX-License-Identifier: GPL-3.0-or-later
// One deed as a form, in place of the lot it is done to.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property string code: ""
    property string deed: ""
    signal left
    signal entered(string made)

    function enter() {
        if (form.submit())
            page.entered(form.made.length > 0 ? form.made[0] : "");
    }

    Form {
        id: form

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
                    text: form.title
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
                pieces: form.pieces
                total: form.piecesTotal
            }
            Repeater {
                model: form.fields

                FormField {
                    width: content.width
                    form: form
                    wrong: form.faultField === key
                    onFinished: page.enter()
                }
            }
            Say {
                objectName: "formFault"
                width: parent.width
                visible: form.fault !== "" && form.faultField === ""
                text: form.fault
                color: Look.lost
                Accessible.role: Accessible.AlertMessage
            }
            Repeater {
                model: form.cautions

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
                    onClicked: page.left()
                }
            }
        }
    }
}
