// SPDX-License-Identifier: GPL-3.0-or-later
// Text as everything on the page is written, for the eye alone: what it stands in is read out whole.
import QtQuick
import ConelineWindow

Text {
    font.family: Look.sans
    font.pixelSize: Look.plain
    color: Look.ink
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
}
