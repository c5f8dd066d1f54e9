// SPDX-License-Identifier: GPL-3.0-or-later
// Giving a table away: as a PDF, a spreadsheet or CSV, to a path that is filled in. Folded up it is a
// button among others; unfolded it takes a row of its own.
import QtQuick
import ConelineWindow

Flow {
    id: bar

    property string path: ""
    property var usual: ending => "table." + ending
    property string said: ""
    property string fault: ""
    property bool unfolded: false
    signal wanted(string path)

    width: unfolded || told.visible ? parent.width : open.width
    spacing: 8

    Fold {
        id: open

        objectName: bar.objectName + "Open"
        text: qsTr("Save")
        unfolded: bar.unfolded
        onClicked: {
            bar.unfolded = !bar.unfolded;
            where.text = bar.path;
        }
    }
    Repeater {
        model: bar.unfolded ? ["pdf", "xlsx", "csv"] : []

        Press {
            required property string modelData

            objectName: bar.objectName + "-" + modelData
            text: modelData === "pdf" ? qsTr("on paper (PDF)") : modelData === "xlsx" ? qsTr("spreadsheet") : qsTr("CSV")
            checked: where.text.endsWith("." + modelData)
            onClicked: where.text = bar.usual(modelData)
        }
    }
    Field {
        id: where

        objectName: bar.objectName + "Path"
        visible: bar.unfolded
        width: Math.min(Look.wide(360), bar.width)
        says: qsTr("the file to save in")
        onAccepted: bar.wanted(text)
    }
    Press {
        objectName: bar.objectName + "Do"
        visible: bar.unfolded
        weight: "act"
        text: qsTr("Save it")
        onClicked: bar.wanted(where.text)
    }
    Say {
        id: told

        height: Math.max(Look.target, implicitHeight)
        visible: text !== ""
        width: Math.min(implicitWidth, bar.width)
        text: bar.fault !== "" ? bar.fault : bar.said
        color: bar.fault !== "" ? Look.lost : Look.ink
        verticalAlignment: Text.AlignVCenter
        Accessible.role: Accessible.AlertMessage
    }
}
