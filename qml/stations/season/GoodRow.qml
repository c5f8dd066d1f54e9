// SPDX-License-Identifier: GPL-3.0-or-later
// One good in the shed: how much lies there, how much can, how long it keeps.
import QtQuick
import ConelineWindow

Column {
    id: good

    required property string name
    required property string onHand
    required property string counted
    required property string room
    required property string keeps
    required property string need
    property string unit: ""
    signal written(string name, var typed)

    function write() {
        good.written(good.name, {
            "onHand": here.now,
            "room": most.now,
            "keeps": months.now
        });
    }

    spacing: 4
    topPadding: 8

    Rectangle {
        width: parent.width
        height: 1
        color: Look.rule
    }
    Say {
        width: parent.width
        text: good.name + (good.need === "" ? "" : " · " + good.need)
    }
    Flow {
        width: parent.width
        spacing: 12

        LabelledField {
            id: here

            objectName: "onHand-" + good.name
            label: qsTr("there, %1").arg(good.unit) + (good.counted === "" ? "" : qsTr(", counted %1").arg(good.counted))
            says: good.name + ", " + qsTr("there, %1").arg(good.unit)
            text: good.onHand
            onWritten: good.write()
        }
        LabelledField {
            id: most

            label: qsTr("room for, %1").arg(good.unit)
            says: good.name + ", " + qsTr("room for, %1").arg(good.unit)
            text: good.room
            onWritten: good.write()
        }
        LabelledField {
            id: months

            label: qsTr("keeps months")
            says: good.name + ", " + qsTr("keeps months")
            text: good.keeps
            onWritten: good.write()
        }
    }
}
