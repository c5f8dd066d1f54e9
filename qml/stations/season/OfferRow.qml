// SPDX-License-Identifier: GPL-3.0-or-later
// What a supplier offers, and the way to strike it.
import QtQuick
import ConelineWindow

Item {
    id: offer

    required property var model
    /// Price and button stand below where there is no room beside.
    readonly property bool narrow: width < Look.wide(420)
    signal struck

    implicitHeight: narrow ? strike.y + strike.height + 4 : Math.max(Look.target, said.height) + 8

    Rectangle {
        width: parent.width
        height: 1
        color: Look.rule
    }
    Column {
        id: said

        y: 4
        width: offer.narrow ? parent.width : price.x - 8

        Say {
            width: parent.width
            text: offer.model.good
        }
        Say {
            width: parent.width
            text: offer.model.what
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
    }
    Say {
        id: price

        x: offer.narrow ? 0 : strike.x - width
        y: offer.narrow ? strike.y + (strike.height - height) / 2 : 4
        width: Look.wide(88)
        text: offer.model.price
        horizontalAlignment: offer.narrow ? Text.AlignLeft : Text.AlignRight
    }
    Press {
        id: strike

        anchors.right: parent.right
        y: offer.narrow ? said.y + said.height : 0
        weight: "quiet"
        text: qsTr("strike")
        Accessible.name: qsTr("strike the offer: %1, %2").arg(offer.model.good).arg(offer.model.what)
        onClicked: offer.struck()
    }
}
