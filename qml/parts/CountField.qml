// SPDX-License-Identifier: GPL-3.0-or-later
// A whole number to type, or to step up and down.
import QtQuick
import ConelineWindow

Row {
    id: counting

    property alias text: field.text
    property string says: ""
    property alias wrong: field.wrong
    /// Where it is written.
    readonly property alias line: field
    signal written(string text)

    function step(by: int) {
        const now = parseInt(field.text);
        field.text = String(Math.max(0, (isNaN(now) ? 0 : now) + by));
        counting.written(field.text);
    }

    spacing: 8

    Press {
        text: "−"
        width: Look.target
        Accessible.name: qsTr("%1, one less").arg(counting.says)
        onClicked: counting.step(-1)
    }
    Field {
        id: field

        width: Look.wide(112)
        says: counting.says
        horizontalAlignment: TextInput.AlignHCenter
        inputMethodHints: Qt.ImhDigitsOnly
        onTextEdited: counting.written(text)
        onActiveFocusChanged: if (activeFocus)
            selectAll()
    }
    Press {
        text: "+"
        width: Look.target
        Accessible.name: qsTr("%1, one more").arg(counting.says)
        onClicked: counting.step(1)
    }
}
