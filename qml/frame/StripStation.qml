// SPDX-License-Identifier: GPL-3.0-or-later
// A station of the line: its knot, the stretch to the next as thick as what is on hand, the count,
// and what is due.
import QtQuick
import ConelineWindow

Tap {
    id: station

    required property string key
    required property string word
    required property string onHand
    required property real thickness
    required property int due
    property bool tall: false
    property bool last: false
    property bool chosen: false
    readonly property int edge: Text.AlignLeft
    readonly property int centre: Text.AlignHCenter
    readonly property int knot: chosen ? 24 : 18
    readonly property int thick: 2 + Math.round(thickness * 12)
    readonly property real middle: tall ? 30 : height * 0.28

    ringMargin: 4
    opacity: enabled ? 1 : 0.5
    Accessible.role: Accessible.Button
    Accessible.name: due > 0 ? qsTr("%1: %2 on hand, %n due", "", due).arg(word).arg(onHand) : qsTr("%1: %2 on hand").arg(word).arg(onHand)

    background: Item {
        Rectangle {
            visible: !station.last
            x: station.tall ? station.middle - width / 2 : station.width / 2
            y: station.tall ? station.height / 2 : station.middle - height / 2
            width: station.tall ? station.thick : station.width
            height: station.tall ? station.height : station.thick
            color: Look.ink
            opacity: 0.55
        }
        Rectangle {
            x: (station.tall ? station.middle : station.width / 2) - width / 2
            y: (station.tall ? station.height / 2 : station.middle) - height / 2
            width: station.knot
            height: station.knot
            radius: width / 2
            color: station.chosen ? Look.link : Look.sheet
            border.width: 3
            border.color: station.chosen ? Look.link : Look.ink
        }
    }
    contentItem: Item {
        Column {
            x: station.tall ? 50 : 0
            y: station.tall ? (parent.height - height) / 2 : station.middle + 14
            width: parent.width - x

            Words {
                width: parent.width
                horizontalAlignment: station.tall ? station.edge : station.centre
                text: station.word
                font.weight: station.chosen ? Look.strong : Look.regular
                color: station.chosen ? Look.link : Look.ink
            }
            Words {
                width: parent.width
                horizontalAlignment: station.tall ? station.edge : station.centre
                text: station.onHand
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
            Words {
                visible: station.due > 0
                width: parent.width
                horizontalAlignment: station.tall ? station.edge : station.centre
                text: qsTr("%n due", "", station.due)
                font.pixelSize: Look.tiny
                font.weight: Look.strong
                color: Look.act
            }
        }
    }
}
