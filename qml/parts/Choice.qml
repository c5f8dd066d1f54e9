// SPDX-License-Identifier: GPL-3.0-or-later
// One of several. A few stand side by side; many open in place, below the chosen one. What is chosen is
// its owner's to say, who hears what was picked.
import QtQuick
import ConelineWindow

Column {
    id: choice

    property var choices: []
    /// How they are written; the choices themselves unless said.
    property var shown: choices
    property string chosen: ""
    property string says: ""
    property bool wide: choices.length > 5
    property bool unfolded: false
    readonly property string written: shown[choices.indexOf(chosen)] ?? chosen
    signal picked(string value)

    spacing: 8

    Fold {
        id: head

        visible: choice.wide
        width: parent.width
        across: Text.AlignLeft
        leftPadding: 12
        text: choice.chosen === "" ? qsTr("not chosen yet") : choice.written
        unfolded: choice.unfolded
        Accessible.name: choice.says + ": " + choice.written
        onClicked: choice.unfolded = !choice.unfolded
    }
    Flow {
        visible: !choice.wide || choice.unfolded
        width: parent.width
        spacing: 8

        Repeater {
            model: choice.choices

            Press {
                required property string modelData
                required property int index

                objectName: choice.objectName === "" ? "" : choice.objectName + "-" + modelData
                most: parent.width
                text: choice.shown[index] ?? modelData
                checked: modelData === choice.chosen
                Accessible.role: Accessible.RadioButton
                Accessible.name: choice.says + ": " + text
                Accessible.checked: checked
                onClicked: {
                    // Folded up, it cannot keep the keyboard.
                    if (choice.wide && activeFocus)
                        head.forceActiveFocus(Qt.TabFocusReason);
                    choice.unfolded = false;
                    choice.picked(modelData);
                }
            }
        }
        Say {
            visible: choice.choices.length === 0
            text: qsTr("none in the book yet")
            color: Look.quiet
        }
    }
}
