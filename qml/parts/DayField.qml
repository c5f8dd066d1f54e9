// SPDX-License-Identifier: GPL-3.0-or-later
// A day: typed, or stepped.
import QtQuick
import ConelineWindow

Row {
    id: day

    property alias text: field.text
    property string says: ""
    property alias wrong: field.wrong
    /// Where it is written.
    readonly property alias line: field
    signal written(string text)
    signal stepped(int by)
    signal finished

    spacing: 8

    Press {
        text: "−"
        width: Look.target
        Accessible.name: qsTr("a day earlier")
        onClicked: day.stepped(-1)
    }
    Field {
        id: field

        width: Look.wide(152)
        says: day.says
        horizontalAlignment: TextInput.AlignHCenter
        onTextEdited: day.written(text)
        onAccepted: day.finished()
    }
    Press {
        text: "+"
        width: Look.target
        Accessible.name: qsTr("a day later")
        onClicked: day.stepped(1)
    }
}
