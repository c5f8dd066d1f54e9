// SPDX-License-Identifier: GPL-3.0-or-later
// One possible cross: who, how related, the plants to expect as a range, and what is fixed about it.
import QtQuick
import ConelineWindow

Item {
    id: row

    required property int index
    required property string key
    required property string code
    required property string cross
    required property string facts
    required property string plants
    required property real low
    required property real likely
    required property real high
    required property string state
    required property string why
    required property string missing
    readonly property string stateWord: state === "pinned" ? qsTr("pinned") : state === "forbidden" ? qsTr("forbidden") : state === "proposed" ? qsTr("proposed") : state
    readonly property bool narrow: width < Look.wide(560)
    readonly property bool made: state === "proposed" || state === "pinned"
    signal pinned(string key)
    signal forbidden(string key)

    implicitHeight: narrow ? lines.height + buttons.height + 28 : Math.max(lines.height, buttons.height) + 20
    Accessible.role: Accessible.ListItem
    Accessible.name: code + ", " + cross + ", " + facts + ", " + plants + (state === "" ? "" : ", " + stateWord)

    Rectangle {
        width: 4
        height: parent.height
        visible: row.made
        color: Look.act
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1
        color: Look.rule
    }
    Column {
        id: lines

        x: 24
        y: 10
        width: row.narrow ? row.width - 48 : buttons.x - 40
        spacing: 2

        Words {
            width: parent.width
            text: row.code + "  " + row.cross + (row.state === "" ? "" : "  › " + row.stateWord)
            font.weight: row.made ? Font.DemiBold : Font.Normal
            color: row.state === "forbidden" ? Look.quiet : Look.ink
        }
        Words {
            width: parent.width
            text: qsTr("plants: %1").arg(row.plants)
        }
        RangeBar {
            width: Math.min(parent.width, 420)
            visible: row.low >= 0
            low: row.low
            likely: row.likely
            high: row.high
            Accessible.name: row.plants
        }
        Words {
            width: parent.width
            text: row.facts
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
        Say {
            width: parent.width
            visible: row.why !== "" && row.state === ""
            text: row.why
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
        Say {
            width: parent.width
            visible: row.missing !== ""
            text: qsTr("missing: %1").arg(row.missing)
            font.pixelSize: Look.tiny
            color: Look.act
        }
    }
    Row {
        id: buttons

        anchors.right: parent.right
        anchors.rightMargin: 24
        y: row.narrow ? lines.y + lines.height + 8 : (parent.height - height) / 2
        spacing: 8

        Press {
            objectName: "pin-" + row.key
            text: qsTr("make it")
            checked: row.state === "pinned"
            Accessible.name: qsTr("make %1").arg(row.cross)
            onClicked: row.pinned(row.key)
        }
        Press {
            objectName: "forbid-" + row.key
            text: qsTr("not this")
            checked: row.state === "forbidden"
            Accessible.name: qsTr("do not make %1").arg(row.cross)
            onClicked: row.forbidden(row.key)
        }
    }
}
