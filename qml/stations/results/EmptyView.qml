// SPDX-License-Identifier: GPL-3.0-or-later
// Trays in which seed waits: those that can be emptied first, and what waiting would bring and cost.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    signal opened(string code)

    TraysToEmpty {
        id: trays

        session: page.session
    }
    RowList {
        id: list

        readonly property real room: Math.min(width - 24, Look.wide(1200))

        objectName: "traysToEmpty"
        anchors.fill: parent
        anchors.leftMargin: 24 // at the right it reaches the page's edge, where its mark stands
        model: trays.rows
        header: Column {
            width: list.room
            spacing: 8
            bottomPadding: 8

            Say {
                width: parent.width
                text: qsTr("Trays to empty, as of %1").arg(page.session.today)
                font.pixelSize: Look.large
                Accessible.role: Accessible.Heading
            }
            Say {
                width: parent.width
                text: trays.reckoning ? qsTr("working it out …") : trays.summary
                color: trays.reckoning ? Look.quiet : Look.ink
            }
        }
        section.property: "heading"
        section.delegate: Heading {
            required property string section

            text: section
            width: list.room
        }
        delegate: Item {
            id: row

            required property string code
            required property string cross
            required property string said
            required property real chance

            width: list.room
            height: Math.max(Look.target, lines.height) + 16

            Column {
                id: lines

                y: 8
                width: parent.width - open.width - 16
                spacing: 2

                Say {
                    width: parent.width
                    text: row.code + "  " + row.cross
                    font.weight: Font.DemiBold
                }
                Say {
                    width: parent.width
                    text: row.said
                }
            }
            Press {
                id: open

                y: 8
                anchors.right: parent.right
                text: qsTr("open")
                Accessible.name: qsTr("open %1").arg(row.code)
                onClicked: page.opened(row.code)
            }
            Rectangle {
                anchors.bottom: parent.bottom
                width: parent.width
                height: 1
                color: Look.rule
            }
        }
    }
}
