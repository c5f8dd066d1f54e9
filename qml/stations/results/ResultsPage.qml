// SPDX-License-Identifier: GPL-3.0-or-later
// Germination per cross: the range first, on one scale; the chosen cross with its curve.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property bool tall: false

    GerminationResults {
        id: results

        session: page.session
    }
    ListView {
        id: list

        width: page.tall ? parent.width : Math.round(parent.width * 0.46)
        height: page.tall ? Math.round(parent.height * 0.42) : parent.height
        clip: true
        model: results.crosses
        header: Column {
            width: list.width

            Say {
                width: parent.width
                leftPadding: 16
                topPadding: 16
                text: qsTr("Germination")
                font.pixelSize: Look.title
                Accessible.role: Accessible.Heading
            }
            Say {
                width: parent.width
                leftPadding: 16
                rightPadding: 16
                bottomPadding: 8
                text: qsTr("By %1: the share of seed sown in which the truth lies 95 times in 100; the mark is what is likely.").arg(page.session.today)
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
        }
        delegate: CrossRow {
            width: list.width
            chosen: index === results.chosen
            onClicked: results.chosen = index
        }
        footer: Say {
            width: list.width
            padding: 16
            visible: text !== ""
            text: results.leftOut
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
    }
    Rectangle {
        color: Look.rule
        x: page.tall ? 0 : list.width
        y: page.tall ? list.height : 0
        width: page.tall ? parent.width : 1
        height: page.tall ? 1 : parent.height
    }
    CrossPage {
        x: page.tall ? 0 : list.width + 1
        y: page.tall ? list.height + 1 : 0
        width: parent.width - x
        height: parent.height - y
        visible: list.count > 0
        results: results
    }
    Empty {
        x: 24
        y: 88
        width: parent.width - 48
        visible: list.count === 0
        belongs: qsTr("What came up of each cross belongs here, as soon as trays are sown and looked at.")
    }
}
