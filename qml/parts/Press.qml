// SPDX-License-Identifier: GPL-3.0-or-later
// A button. A tap does not take the keyboard away from the ready field; Tab reaches it.
import QtQuick
import QtQuick.Templates as T
import ConelineWindow

T.Button {
    id: press

    /// "act": what is done here; "plain": another thing to do; "quiet": a way out.
    property string weight: "plain"
    /// Not wider than this, however long its words are: then they take several lines.
    property real most: Infinity
    property int across: Text.AlignHCenter
    readonly property color ground: weight === "act" ? Look.act : "transparent"

    focusPolicy: Look.focusByTab
    leftPadding: 8
    rightPadding: 8
    implicitWidth: Math.min(most, Math.max(Look.target, Math.ceil(words.advanceWidth) + 32))
    implicitHeight: Math.max(Look.target, label.implicitHeight + 16)
    opacity: enabled ? 1 : 0.45
    Accessible.role: Accessible.Button
    Accessible.name: text
    Keys.onReturnPressed: press.clicked()
    Keys.onEnterPressed: press.clicked()

    // Measured apart from the label, whose own measure changes while it is fitted into the width.
    TextMetrics {
        id: words

        font.family: Look.sans
        font.pixelSize: Look.plain
        font.weight: press.weight === "quiet" ? Font.Normal : Font.DemiBold
        text: press.text
    }

    contentItem: Say {
        id: label

        text: press.text
        font.weight: press.weight === "quiet" ? Look.regular : Look.strong
        color: press.weight === "act" ? Look.paper : press.weight === "quiet" || press.checked ? Look.link : Look.ink
        font.underline: press.checked
        horizontalAlignment: press.across
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
    background: Rectangle {
        radius: 4
        color: press.down ? Qt.darker(press.weight === "act" ? press.ground : Look.sheet, 1.12) : press.ground
        border.width: press.weight === "quiet" ? 0 : press.checked ? 2 : 1
        border.color: press.checked ? Look.link : press.weight === "act" ? Look.act : Look.quiet

        Ring {
            shown: press.visualFocus
        }
    }
}
