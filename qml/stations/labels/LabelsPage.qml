// SPDX-License-Identifier: GPL-3.0-or-later
// Labels: on which paper, from which free place on, and where to.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property string about: ""
    signal closed

    LabelSheet {
        id: sheet

        session: page.session
        about: page.about
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
            width: parent.width - 48
            spacing: 16

            Say {
                text: sheet.count === 1 ? qsTr("1 label") : qsTr("%1 labels").arg(sheet.count)
                font.pixelSize: Look.title
                Accessible.role: Accessible.Heading
            }
            Say {
                width: parent.width
                visible: text !== ""
                text: sheet.fault
                color: Look.lost
                Accessible.role: Accessible.AlertMessage
            }
            Column {
                width: parent.width
                spacing: 4

                Say {
                    text: qsTr("Paper")
                    font.pixelSize: Look.tiny
                    color: Look.quiet
                }
                Choice {
                    width: parent.width
                    says: qsTr("Paper")
                    choices: sheet.stocks
                    chosen: sheet.stock
                    onPicked: value => sheet.stock = value
                }
            }
            Column {
                spacing: 4

                Say {
                    text: qsTr("First free label on the sheet")
                    font.pixelSize: Look.tiny
                    color: Look.quiet
                }
                CountField {
                    says: qsTr("First free label on the sheet")
                    text: String(sheet.start)
                    onWritten: text => sheet.start = Math.max(1, parseInt(text === "" ? "1" : text))
                }
            }
            Picture {
                width: Math.min(parent.width, 520)
                height: width * 1.42
                image: sheet.preview
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("The first page as it will be printed")
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
            objectName: "labelsTold"
            width: parent.width
            visible: text !== ""
            text: sheet.told
            Accessible.role: Accessible.AlertMessage
        }
        Field {
            id: path

            objectName: "labelsPath"
            width: parent.width
            says: qsTr("The PDF to write")
            text: page.about === "" ? "" : sheet.usualPath()
        }
        Flow {
            width: parent.width
            spacing: 8

            Press {
                objectName: "writePdf"
                text: qsTr("Write the PDF")
                weight: "act"
                enabled: sheet.count > 0
                onClicked: sheet.writePdf(path.text)
            }
            Repeater {
                model: sheet.printers

                Press {
                    required property string modelData

                    text: qsTr("Print on %1").arg(modelData)
                    onClicked: sheet.print(modelData)
                }
            }
            Press {
                text: qsTr("back")
                weight: "quiet"
                onClicked: page.closed()
            }
        }
    }
}
