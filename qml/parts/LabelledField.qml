// SPDX-License-Identifier: GPL-3.0-or-later
// A field with its label above it; says when something else was written in it.
import QtQuick
import ConelineWindow

Column {
    id: labelled

    property string label: ""
    property string says: label
    property string text: ""
    /// What the field needs at the plain size of text; the label may need more.
    property real wide: 128
    property string hint: ""
    readonly property alias now: field.text
    signal written

    function clear() {
        field.text = "";
    }

    width: Math.min(parent.width, Math.max(Look.wide(labelled.wide), above.implicitWidth))
    spacing: 2

    Words {
        id: above

        width: labelled.width
        text: labelled.label
        font.pixelSize: Look.tiny
        color: Look.quiet
    }
    Field {
        id: field

        objectName: labelled.objectName === "" ? "" : labelled.objectName + "Field"
        width: Math.min(Look.wide(labelled.wide), labelled.width)
        says: labelled.says
        text: labelled.text
        placeholderText: labelled.hint
        onEditingFinished: {
            if (text !== labelled.text)
                labelled.written();
        }
    }
}
