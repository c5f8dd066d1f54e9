// SPDX-License-Identifier: GPL-3.0-or-later
// A label stock by its own dimensions, and how true a printer prints it.
import QtQuick
import ConelineWindow

Scroll {
    id: form

    required property LabelPrint labels
    required property string unit
    property string path: ""
    property var typed: labels.dimensions()
    readonly property var fields: [["name", qsTr("its name")], ["page_width", qsTr("page width, %1").arg(unit)], ["page_height", qsTr("page height, %1").arg(unit)], ["label_width", qsTr("label width, %1").arg(unit)], ["label_height", qsTr("label height, %1").arg(unit)], ["columns", qsTr("columns")], ["rows", qsTr("rows")], ["left", qsTr("left margin, %1").arg(unit)], ["top", qsTr("top margin, %1").arg(unit)], ["column_pitch", qsTr("column pitch, %1").arg(unit)], ["row_pitch", qsTr("row pitch, %1").arg(unit)], ["in_soil", qsTr("into the soil, %1").arg(unit)]]

    contentHeight: column.height + 16

    Column {
        id: column

        x: 24
        width: form.width - 48
        spacing: 12

        Flow {
            width: parent.width
            spacing: 12

            Repeater {
                model: form.fields

                Column {
                    required property var modelData

                    spacing: 4

                    Say {
                        width: Math.min(implicitWidth, column.width)
                        text: modelData[1]
                        color: Look.quiet
                    }
                    Field {
                        objectName: "stock-" + modelData[0]
                        width: Math.min(Look.wide(modelData[0] === "name" ? 320 : 132), column.width)
                        says: modelData[1]
                        text: form.typed[modelData[0]]
                        onTextEdited: form.typed[modelData[0]] = text
                    }
                }
            }
        }
        Flow {
            width: parent.width
            spacing: 12

            Press {
                objectName: "stockKeep"
                text: qsTr("Keep this stock")
                weight: "act"
                onClicked: form.labels.enterStock(form.typed)
            }
            Press {
                objectName: "stockTest"
                text: qsTr("Test page with rulers")
                onClicked: form.labels.saveTestPage(form.path.replace(/[^/]*$/, "test-page.pdf"))
            }
        }
        Say {
            width: parent.width
            wrapMode: Text.WordWrap
            text: qsTr("What the test page's rulers measure on paper corrects the printer for this stock.")
            color: Look.quiet
        }
        Flow {
            width: parent.width
            spacing: 12

            Field {
                id: printer

                width: Math.min(Look.wide(240), parent.width)
                says: qsTr("printer")
                placeholderText: qsTr("printer")
            }
            Field {
                id: across

                width: Math.min(Look.wide(160), parent.width)
                says: qsTr("mm across")
                placeholderText: qsTr("mm across")
            }
            Field {
                id: down

                width: Math.min(Look.wide(160), parent.width)
                says: qsTr("mm down")
                placeholderText: qsTr("mm down")
            }
            Press {
                text: qsTr("Correct the printer")
                enabled: printer.text !== "" && across.text !== "" && down.text !== ""
                onClicked: form.labels.correct(printer.text, across.text, down.text)
            }
        }
    }
}
