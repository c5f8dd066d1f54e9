// SPDX-License-Identifier: GPL-3.0-or-later
// Shows at the edge of what scrolls that there is more, and where one is.
import QtQuick
import ConelineWindow

Rectangle {
    required property Flickable flick

    parent: flick
    anchors.right: parent.right
    z: 1
    y: flick.visibleArea.yPosition * flick.height
    width: 4
    height: Math.max(24, flick.visibleArea.heightRatio * flick.height)
    radius: 2
    visible: flick.visibleArea.heightRatio < 0.999
    color: Look.quiet
}
