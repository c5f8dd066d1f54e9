// SPDX-License-Identifier: GPL-3.0-or-later
// Labels for a station's things: choose them, the stock, and where they go.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property string station: ""
    property string first: ""
    property bool stocking: false
    readonly property LabelPrint printing: labels
    readonly property string printPath: path.text
    signal closed

    LabelPrint {
        id: labels

        session: page.session
        station: page.station
        first: page.first
        onAsked: path.text = usualPath()
    }
    // Scrolls where large text leaves no room for the list.
    Scroll {
        anchors.fill: parent
        contentHeight: all.height
        interactive: contentHeight > height

        Item {
            id: all

            width: page.width
            height: Math.max(page.height, head.height + foot.height + Look.wide(160) + 48)

            Column {
                id: head

                x: 24
                y: 16
                width: sheet.visible ? sheet.x - 40 : parent.width - 48
                spacing: 12

                Say {
                    text: qsTr("Labels")
                    font.pixelSize: Look.title
                    Accessible.role: Accessible.Heading
                }
                Flow {
                    width: parent.width
                    spacing: 8

                    Press {
                        objectName: "labelsAll"
                        text: qsTr("all of them")
                        onClicked: labels.chooseAll()
                    }
                    Press {
                        text: qsTr("none")
                        onClicked: labels.chooseNone()
                    }
                    Press {
                        objectName: "labelPlaces"
                        text: labels.places ? qsTr("things") : qsTr("places")
                        onClicked: labels.places = !labels.places
                    }
                    Press {
                        objectName: "labelStock"
                        text: page.stocking ? qsTr("labels") : qsTr("another stock")
                        onClicked: page.stocking = !page.stocking
                    }
                }
            }
            RowList {
                id: list

                objectName: "labelList"
                anchors.top: head.bottom
                anchors.topMargin: 8
                anchors.bottom: foot.top
                width: sheet.visible ? sheet.x - 16 : parent.width
                visible: !page.stocking
                model: labels.rows
                delegate: ListRow {
                    id: row

                    required what
                    required chosen

                    width: list.width
                    due: row.chosen ? qsTr("chosen") : ""
                    Accessible.role: Accessible.CheckBox
                    Accessible.checked: row.chosen
                    onClicked: labels.toggle(row.code)
                }
            }
            Loader {
                anchors.fill: list
                active: page.stocking
                sourceComponent: StockForm {
                    labels: page.printing
                    unit: page.session.speech.lengthUnit
                    path: page.printPath
                }
            }
            Picture {
                id: sheet

                visible: labels.chosen > 0 && page.width > Look.wide(560)
                anchors.top: parent.top
                anchors.topMargin: 16
                anchors.bottom: foot.top
                anchors.bottomMargin: 16
                x: page.width - width - 24
                width: Math.min(height / 1.42, page.width * 0.42)
                image: labels.preview
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("The first page as it will be printed")
            }
            Column {
                id: foot

                x: 24
                width: parent.width - 48
                anchors.bottom: parent.bottom
                anchors.bottomMargin: 16
                spacing: 12

                Rectangle {
                    width: parent.width
                    height: 1
                    color: Look.rule
                }
                Choice {
                    width: parent.width
                    says: qsTr("stock")
                    choices: labels.stocks
                    shown: labels.stocksSaid
                    chosen: labels.stock
                    onPicked: value => labels.stock = value
                }
                Choice {
                    width: parent.width
                    objectName: "labelLayouts"
                    says: qsTr("what the labels say")
                    choices: labels.layouts
                    shown: labels.layoutsSaid
                    chosen: labels.layout
                    onPicked: value => labels.layout = value
                }
                Flow {
                    width: parent.width
                    spacing: 12

                    Say {
                        height: Math.max(Look.target, implicitHeight)
                        width: Math.min(implicitWidth, parent.width)
                        text: qsTr("first free label")
                        verticalAlignment: Text.AlignVCenter
                    }
                    CountField {
                        says: qsTr("first free label")
                        text: "1"
                        onWritten: written => labels.start = Math.max(1, parseInt(written === "" ? "1" : written))
                    }
                }
                Field {
                    id: path

                    objectName: "labelPath"
                    width: parent.width
                    says: qsTr("file for the labels")
                }
                Say {
                    objectName: "labelTold"
                    width: parent.width
                    visible: text !== ""
                    text: labels.fault === "" ? labels.told : labels.fault
                    color: labels.fault === "" ? Look.ink : Look.lost
                    Accessible.role: Accessible.AlertMessage
                }
                Flow {
                    width: parent.width
                    spacing: 12

                    Press {
                        objectName: "labelSave"
                        text: qsTr("Save %n as PDF", "", labels.chosen)
                        weight: "act"
                        enabled: labels.chosen > 0
                        onClicked: labels.save(path.text)
                    }
                    Repeater {
                        model: labels.printers

                        Press {
                            required property string modelData

                            text: qsTr("Print on %1").arg(modelData)
                            enabled: labels.chosen > 0
                            onClicked: labels.print(modelData)
                        }
                    }
                    Say {
                        height: Math.max(Look.target, implicitHeight)
                        width: Math.min(implicitWidth, parent.width)
                        visible: labels.printers.length === 0
                        text: qsTr("no printer here")
                        color: Look.quiet
                        verticalAlignment: Text.AlignVCenter
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
}
