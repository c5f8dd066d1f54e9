// SPDX-License-Identifier: GPL-3.0-or-later
// One line to write in.
import QtQuick
import ConelineWindow

TextInput {
    id: field

    property string says: ""
    property bool wrong: false
    property string placeholderText: ""
    readonly property alias ground: ground

    width: 240
    height: Math.max(Look.target, contentHeight + 16)
    leftPadding: 12
    rightPadding: 12
    verticalAlignment: TextInput.AlignVCenter
    font.family: Look.sans
    font.pixelSize: Look.plain
    color: Look.ink
    selectionColor: Look.link
    selectedTextColor: Look.paper
    selectByMouse: true
    activeFocusOnTab: true
    Accessible.role: Accessible.EditableText
    Accessible.name: says

    Rectangle {
        id: ground

        anchors.fill: parent
        z: -1
        radius: 4
        color: Look.paper
        border.width: field.activeFocus || field.wrong ? 3 : 1
        border.color: field.wrong ? Look.lost : field.activeFocus ? Look.link : Look.quiet
    }

    Words {
        anchors.left: parent.left
        anchors.leftMargin: field.leftPadding
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        visible: field.text === "" && field.preeditText === ""
        text: field.placeholderText
        color: Look.quiet
    }
}
