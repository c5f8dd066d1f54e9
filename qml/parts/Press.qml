// SPDX-License-Identifier: GPL-3.0-or-later
// A button. A tap does not take the keyboard away from the ready field; Tab reaches it.
import QtQuick
import ConelineWindow

Tap {
    id: press

    property string text: ""
    property bool checked: false
    /// "act": what is done here; "plain": another thing to do; "quiet": a way out.
    property string weight: "plain"
    /// Not wider than this, however long its words are: then they take several lines.
    property real most: Infinity
    property int across: Text.AlignHCenter
    property color tone: weight === "act" ? (enabled ? Look.paper : Look.quiet) : weight === "quiet" || checked ? Look.link : Look.ink
    property int size: Look.plain
    /// What its words need at its width.
    readonly property real wordsHeight: label.implicitHeight
    readonly property color ground: weight === "act" ? (enabled ? Look.act : Look.flow) : "transparent"

    leftPadding: 8
    rightPadding: 8
    implicitWidth: Math.min(most, Math.max(Look.target, Math.ceil(words.advanceWidth) + leftPadding + rightPadding + 16))
    implicitHeight: Math.max(Look.target, wordsHeight + 16)
    // What cannot be done yet may say why, and is to be read then.
    opacity: enabled || weight === "act" ? 1 : 0.45
    Accessible.role: Accessible.Button
    Accessible.name: text

    // Measured apart from the label, whose own measure changes while it is fitted into the width.
    TextMetrics {
        id: words

        font.family: Look.sans
        font.pixelSize: Look.plain
        font.weight: press.weight === "quiet" ? Look.regular : Look.strong
        text: press.text
    }

    contentItem: Words {
        id: label

        text: press.text
        font.weight: press.weight === "quiet" ? Look.regular : Look.strong
        color: press.tone
        font.pixelSize: press.size
        font.underline: press.checked
        horizontalAlignment: press.across
        verticalAlignment: Text.AlignVCenter
    }
    background: Rectangle {
        radius: 4
        color: press.down ? Qt.darker(press.weight === "act" ? press.ground : Look.sheet, 1.12) : press.ground
        border.width: press.weight === "quiet" ? 0 : press.checked ? 2 : 1
        border.color: press.checked ? Look.link : press.weight === "act" ? press.ground : Look.quiet
    }
}
