// SPDX-License-Identifier: GPL-3.0-or-later
// A list of rows: stops at its ends, cuts off what is outside, leaves the arrows to the window's own
// way, and keeps its head in sight while that grows.
import QtQuick

ListView {
    id: list

    readonly property real headHeight: headerItem ? headerItem.height : 0
    property bool atHead: true

    clip: true
    keyNavigationEnabled: false
    boundsBehavior: Flickable.StopAtBounds
    onContentYChanged: atHead = contentY <= originY + 1
    onHeadHeightChanged: {
        if (atHead)
            Qt.callLater(list.positionViewAtBeginning);
    }

    ScrollMark {
        flick: list
    }
}
