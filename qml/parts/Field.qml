// SPDX-License-Identifier: GPL-3.0-or-later
// One line to write in.
import QtQuick
import QtQuick.Templates as T
import ConelineWindow

T.TextField {
    id: field

    property string says: ""
    property bool wrong: false

    implicitHeight: Math.max(Look.target, contentHeight + 16)
    implicitWidth: 240
    leftPadding: 12
    rightPadding: 12
    verticalAlignment: TextInput.AlignVCenter
    font.family: Look.sans
    font.pixelSize: Look.plain
    color: Look.ink
    selectionColor: Look.link
    selectedTextColor: Look.paper
    selectByMouse: true
    Accessible.role: Accessible.EditableText
    Accessible.name: says

    background: Rectangle {
        radius: 4
        color: Look.paper
        border.width: field.activeFocus || field.wrong ? 3 : 1
        border.color: field.wrong ? Look.lost : field.activeFocus ? Look.link : Look.quiet
    }

    Say {
        anchors.left: parent.left
        anchors.leftMargin: field.leftPadding
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        visible: field.text === "" && field.preeditText === ""
        text: field.placeholderText
        color: Look.quiet
        Accessible.ignored: true
    }
}
