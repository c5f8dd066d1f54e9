// SPDX-License-Identifier: GPL-3.0-or-later
// One line of the plan month by month, and the lots that one month is made of.
import QtQuick
import ConelineWindow

Item {
    id: table

    required property PlanAhead ahead
    readonly property string title: ahead.opened < 0 ? "" : ahead.rows.value(ahead.opened, "group") + ": " + ahead.rows.value(ahead.opened, "name") + ", " + ahead.rows.value(ahead.opened, "unit")
    signal opened(string code)

    Rectangle {
        width: parent.width
        height: 2
        color: Look.ink
    }
    Item {
        id: head

        y: 2
        width: parent.width
        height: Math.max(Look.target, name.height) + 8

        Say {
            id: name

            x: 24
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - close.width - 64
            text: table.title
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        Press {
            id: close

            objectName: "monthsClose"
            anchors.right: parent.right
            anchors.rightMargin: 24
            anchors.verticalCenter: parent.verticalCenter
            weight: "quiet"
            text: qsTr("close")
            onClicked: table.ahead.opened = -1
        }
    }
    GridView {
        id: grid

        objectName: "monthGrid"
        anchors.top: head.bottom
        anchors.bottom: parent.bottom
        anchors.left: parent.left
        anchors.leftMargin: 16
        width: (lots.visible ? parent.width * 0.6 : parent.width) - 16
        clip: true
        keyNavigationEnabled: false
        boundsBehavior: Flickable.StopAtBounds
        cellWidth: Math.floor(width / Math.max(1, Math.floor(width / Look.wide(190))))
        cellHeight: Look.wide(84)
        model: table.ahead.cells
        delegate: Item {
            id: cell

            required property int index
            required property string month
            required property string range
            required property string over

            width: grid.cellWidth
            height: grid.cellHeight

            Press {
                objectName: "month-" + cell.index
                anchors.fill: parent
                anchors.margins: 4
                checked: table.ahead.month === cell.index
                Accessible.name: cell.month + ": " + cell.range + (cell.over === "" ? "" : ", " + cell.over)
                onClicked: table.ahead.month = cell.index

                Column {
                    anchors.centerIn: parent
                    width: parent.width - 12

                    Words {
                        width: parent.width
                        text: cell.month
                        font.pixelSize: Look.tiny
                        color: Look.quiet
                        horizontalAlignment: Text.AlignHCenter
                    }
                    Words {
                        width: parent.width
                        text: cell.range
                        horizontalAlignment: Text.AlignHCenter
                    }
                    Words {
                        width: parent.width
                        visible: text !== ""
                        text: cell.over
                        font.pixelSize: Look.tiny
                        color: Look.lost
                        horizontalAlignment: Text.AlignHCenter
                    }
                }
            }
        }

        ScrollMark {
            flick: grid
        }
    }
    RowList {
        id: lots

        objectName: "monthLots"
        visible: table.ahead.madeOf !== ""
        anchors.top: head.bottom
        anchors.bottom: parent.bottom
        anchors.right: parent.right
        width: parent.width * 0.4 - 16
        model: table.ahead.lots
        header: Say {
            width: lots.width - 16
            text: table.ahead.madeOf
            bottomPadding: 8
        }
        delegate: ListRow {
            required property string value

            width: lots.width
            what: value
            onClicked: table.opened(code)
        }
    }
}
