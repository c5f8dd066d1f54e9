// SPDX-License-Identifier: GPL-3.0-or-later
// A large counter for a wet hand: the plus takes most of it, the number can be typed.
import QtQuick
import ConelineWindow

FocusScope {
    id: counter

    property int value: 0
    property string says: ""
    property color tone: Look.ink
    signal counted(int value)
    /// A letter was typed: the beginning of a scan, which is no count.
    signal letter(string text)

    function set(to: int) {
        counter.counted(Math.max(0, Math.min(to, 1000000)));
    }

    implicitHeight: 280
    /// Below this the plus would be no target any more.
    readonly property int least: name.height + figure.height + Look.target + 48

    Rectangle {
        anchors.fill: parent
        radius: 6
        color: Look.sheet
        border.color: Look.rule
        border.width: 1
    }
    Say {
        id: name

        anchors.top: parent.top
        anchors.topMargin: 12
        width: parent.width
        horizontalAlignment: Text.AlignHCenter
        text: counter.says
        font.pixelSize: Look.large
        color: counter.tone
    }
    Press {
        id: less

        anchors.top: name.bottom
        anchors.topMargin: 8
        anchors.left: parent.left
        anchors.leftMargin: 8
        width: Math.min(64, parent.width * 0.3)
        height: figure.height
        text: "−"
        enabled: counter.value > 0
        Accessible.name: qsTr("%1, one less").arg(counter.says)
        onClicked: counter.set(counter.value - 1)
    }
    Field {
        id: figure

        anchors.top: less.top
        anchors.left: less.right
        anchors.leftMargin: 8
        anchors.right: parent.right
        anchors.rightMargin: 8
        height: Look.wide(64)
        leftPadding: 4
        rightPadding: 4
        says: counter.says
        text: String(counter.value)
        font.pixelSize: Look.huge
        horizontalAlignment: TextInput.AlignHCenter
        inputMethodHints: Qt.ImhDigitsOnly
        validator: IntValidator {
            bottom: 0
            top: 1000000
        }
        onTextEdited: counter.set(parseInt(text === "" ? "0" : text))
        onActiveFocusChanged: if (activeFocus)
            selectAll()
        Keys.onUpPressed: counter.set(counter.value + 1)
        Keys.onDownPressed: counter.set(counter.value - 1)
        Keys.onPressed: event => {
            if (/[A-Za-z]/.test(event.text) && !(event.modifiers & Qt.ControlModifier)) {
                counter.letter(event.text);
                event.accepted = true;
            }
        }
    }
    Press {
        objectName: counter.objectName + "-more"
        anchors.top: figure.bottom
        anchors.bottom: parent.bottom
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.margins: 8
        text: "+"
        Accessible.name: qsTr("%1, one more").arg(counter.says)
        size: Math.max(Look.plain, Math.min(64, (counter.height - figure.y - figure.height - 16) * 0.7))
        tone: counter.tone
        onClicked: counter.set(counter.value + 1)
    }
}
