// SPDX-License-Identifier: GPL-3.0-or-later
// A button that unfolds what stands below it; its mark points there, and up again to fold it.
import QtQuick
import ConelineWindow

Press {
    id: fold

    property bool unfolded: false

    rightPadding: 8 + mark.height

    Words {
        id: mark

        // Turned, it is as wide as it was high.
        x: parent.width - 8 - (height + width) / 2
        anchors.verticalCenter: parent.verticalCenter
        text: "›"
        rotation: fold.unfolded ? -90 : 90
        color: fold.tone
        font.pixelSize: Look.large
    }
}
