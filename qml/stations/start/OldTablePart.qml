// SPDX-License-Identifier: GPL-3.0-or-later
// An old spreadsheet: its columns matched by hand, tried out, then taken in whole or not at all.
import QtQuick
import ConelineWindow

Column {
    id: part

    required property Session session
    readonly property bool someFile: old.columns.count > 0

    spacing: 16

    OldTable {
        id: old

        session: part.session
    }
    Column {
        width: parent.width
        spacing: 16
        visible: !part.session.open

        Say {
            width: parent.width
            text: qsTr("The sheet comes into a new book.")
            color: Look.quiet
        }
        Field {
            id: nursery

            objectName: "tableNursery"
            width: parent.width
            says: qsTr("The nursery's name")
            placeholderText: qsTr("the nursery's name")
        }
        PathField {
            id: into

            width: parent.width
            label: qsTr("The new book's file")
            path: part.session.usualPath()
        }
        Press {
            objectName: "tableBook"
            text: qsTr("Begin the book")
            weight: "act"
            onClicked: part.session.makeBook(into.path, nursery.text)
        }
    }
    Column {
        width: parent.width
        spacing: 16
        visible: part.session.open

        PathField {
            id: file

            objectName: "tableFile"
            width: parent.width
            label: qsTr("The sheet, saved as CSV: its file, typed or dropped here")
            onFinished: old.read(path)
        }
        Press {
            objectName: "tableRead"
            text: qsTr("Read it")
            weight: part.someFile ? "plain" : "act"
            enabled: !old.busy
            onClicked: old.read(file.path)
        }
        Flow {
            width: parent.width
            spacing: 12
            visible: old.reading

            Say {
                width: Math.min(implicitWidth, parent.width)
                height: Math.max(Look.target, implicitHeight)
                verticalAlignment: Text.AlignVCenter
                text: qsTr("Reading the sheet …")
                Accessible.role: Accessible.AlertMessage
            }
            Press {
                objectName: "tableReadStop"
                text: qsTr("Stop")
                onClicked: old.stop()
            }
        }
        Heading {
            visible: part.someFile
            text: qsTr("What each column holds")
        }
        Repeater {
            model: old.columns

            Flow {
                id: line

                required property int index
                required property string column
                required property string first
                required property string field

                width: part.width
                spacing: 12

                readonly property bool beside: width >= Look.wide(560)

                Column {
                    width: line.beside ? Look.wide(280) : part.width

                    Say {
                        width: parent.width
                        text: line.column
                        font.weight: Font.DemiBold
                    }
                    Say {
                        width: parent.width
                        visible: line.first !== ""
                        text: qsTr("such as %1").arg(line.first)
                        font.pixelSize: Look.tiny
                        color: Look.quiet
                    }
                }
                Choice {
                    objectName: "tableColumn-" + line.index
                    width: line.beside ? part.width - Look.wide(280) - 12 : part.width
                    says: qsTr("%1 holds").arg(line.column)
                    choices: old.fields
                    shown: old.fieldsShown
                    chosen: line.field
                    onPicked: value => old.match(line.index, value)
                }
            }
        }
        Column {
            width: parent.width
            spacing: 12
            visible: part.someFile

            Heading {
                text: qsTr("For every row, where no column says it")
            }
            Column {
                width: parent.width
                spacing: 4
                visible: !old.matched.includes("kind")

                Say {
                    text: qsTr("What the rows are")
                    font.pixelSize: Look.tiny
                    color: Look.quiet
                }
                Choice {
                    objectName: "tableKind"
                    width: parent.width
                    says: qsTr("what the rows are")
                    choices: ["seed", "tray", "pot", "parent"]
                    shown: [qsTr("seed"), qsTr("tray"), qsTr("pot"), qsTr("parent")]
                    onPicked: value => {
                        chosen = value;
                        old.forAll("kind", value);
                    }
                }
            }
            Repeater {
                model: ["taxon", "pot", "litres", "width", "place", "since", "pollinated", "supplier"]

                Column {
                    id: all

                    required property string modelData

                    width: part.width
                    spacing: 4
                    visible: !old.matched.includes(modelData)

                    Say {
                        width: parent.width
                        text: old.named(all.modelData) + ": " + old.about(all.modelData)
                        font.pixelSize: Look.tiny
                        color: Look.quiet
                    }
                    Field {
                        objectName: "tableAll-" + all.modelData
                        width: parent.width
                        says: old.named(all.modelData)
                        onTextEdited: old.forAll(all.modelData, text)
                    }
                }
            }
            Say {
                text: qsTr("How its dates are written")
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
            Choice {
                width: parent.width
                says: qsTr("how its dates are written")
                choices: old.dateOrders
                shown: old.dateOrdersShown
                chosen: old.dateOrders[0]
                onPicked: value => {
                    chosen = value;
                    old.writeDates(value);
                }
            }
            Flow {
                width: parent.width
                spacing: 12

                Press {
                    objectName: "tableTry"
                    text: qsTr("Try it out")
                    weight: old.ready ? "plain" : "act"
                    enabled: !old.busy
                    onClicked: old.tryOut()
                }
                Press {
                    objectName: "tableTake"
                    text: qsTr("Take it in")
                    weight: "act"
                    visible: old.ready
                    onClicked: old.takeIn()
                }
                Press {
                    objectName: "tableStop"
                    text: qsTr("Stop, %1 % done").arg(Math.round(100 * old.done))
                    visible: old.busy
                    onClicked: old.stop()
                }
            }
        }
        Say {
            objectName: "tableFault"
            width: parent.width
            visible: text !== ""
            text: old.fault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Repeater {
            model: old.said

            Say {
                required property string modelData

                width: part.width
                text: modelData
                Accessible.role: Accessible.AlertMessage
            }
        }
        Repeater {
            model: old.rows

            Row {
                id: row

                required property int line
                required property string told
                required property bool wrong

                width: part.width
                spacing: 12

                Say {
                    id: where

                    width: Look.wide(84)
                    text: row.wrong ? qsTr("wrong") : qsTr("line %1").arg(row.line)
                    color: row.wrong ? Look.lost : Look.quiet
                    font.weight: row.wrong ? Font.DemiBold : Font.Normal
                }
                Say {
                    width: parent.width - where.width - 12
                    text: row.told
                    color: row.wrong ? Look.lost : Look.ink
                }
            }
        }
    }
}
