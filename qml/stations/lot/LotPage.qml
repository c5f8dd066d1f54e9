// SPDX-License-Identifier: GPL-3.0-or-later
// One thing: what it is, what can be done now, its line back to the cone, its history.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property string code: ""
    signal wanted(string verb)
    signal opened(string code)

    LotSheet {
        id: sheet

        session: page.session
        code: page.code
    }
    Scroll {
        anchors.fill: parent
        contentHeight: content.height + 32

        Column {
            id: content

            x: 24
            y: 16
            width: parent.width - 48
            spacing: 12

            Flow {
                width: parent.width
                spacing: 16

                Say {
                    text: page.code
                    font.family: Look.mono
                    font.pixelSize: Look.title
                    font.weight: Font.DemiBold
                    Accessible.role: Accessible.Heading
                }
                Say {
                    topPadding: y > 0 ? 0 : Look.title - Look.plain
                    width: Math.min(implicitWidth, content.width)
                    text: sheet.kind
                    color: Look.quiet
                }
            }
            Column {
                width: parent.width

                Say {
                    width: parent.width
                    text: sheet.title
                    font.pixelSize: Look.large
                }
                Say {
                    width: parent.width
                    visible: text !== ""
                    text: sheet.taxon
                    font.italic: true
                    color: Look.quiet
                }
            }
            Column {
                width: parent.width

                Say {
                    objectName: "holds"
                    width: parent.width
                    visible: text !== ""
                    text: sheet.holds
                    font.pixelSize: Look.large
                    font.weight: Font.DemiBold
                }
                Say {
                    width: parent.width
                    visible: text !== ""
                    text: sheet.place
                }
                Say {
                    width: parent.width
                    visible: text !== ""
                    text: sheet.note
                    color: Look.quiet
                }
            }
            Deeds {
                width: parent.width
                deeds: sheet.deeds
                onWanted: verb => page.wanted(verb)
            }
            NextOfCone {
                width: parent.width
                session: page.session
                code: page.code
            }
            StillToCome {
                width: parent.width
                session: page.session
                code: page.code
            }
            DiaryFacts {
                width: parent.width
                session: page.session
                code: page.code
            }
            PapersPart {
                width: parent.width
                session: page.session
                code: page.code
            }
            LineBack {
                width: parent.width
                line: sheet.line
                onOpened: code => page.opened(code)
            }
            Column {
                width: parent.width
                visible: sheet.here.count > 0

                Heading {
                    text: qsTr("Standing here")
                }
                Repeater {
                    model: sheet.here

                    ListRow {
                        id: row

                        required what
                        required place

                        width: content.width
                        onClicked: page.opened(row.code)
                    }
                }
            }
            History {
                width: parent.width
                history: sheet.history
                onReversed: entry => page.session.reverse(entry)
            }
        }
    }
}
