// SPDX-License-Identifier: GPL-3.0-or-later
// What a group in a list or a part of a page is about.
import QtQuick
import ConelineWindow

Say {
    width: parent ? Math.min(implicitWidth, parent.width - x) : implicitWidth
    font.pixelSize: Look.tiny
    font.weight: Font.DemiBold
    color: Look.quiet
    topPadding: 12
    bottomPadding: 4
    Accessible.role: Accessible.Heading
}
