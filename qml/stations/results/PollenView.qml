// SPDX-License-Identifier: GPL-3.0-or-later
// What came of pollen by the way it was kept and its age: seed set and germination with ranges.
import QtQuick
import ConelineWindow

Scroll {
    id: page

    required property Session session

    contentHeight: content.height + 48

    PollenAge {
        id: ages

        session: page.session
    }
    Column {
        id: content

        x: 24
        y: 8
        width: Math.min(parent.width - 48, Look.wide(1200))
        spacing: 16

        Say {
            width: parent.width
            text: qsTr("Pollen by store and age, as of %1").arg(page.session.today)
            font.pixelSize: Look.large
            Accessible.role: Accessible.Heading
        }
        Repeater {
            model: ages.rows

            Column {
                id: row

                required property string title
                required property string facts
                required property string setText
                required property real setLow
                required property real setHigh
                required property string upText
                required property real upLow
                required property real upHigh

                width: content.width
                spacing: 4

                Say {
                    width: parent.width
                    text: row.title
                    font.weight: Font.DemiBold
                }
                Flow {
                    width: parent.width
                    spacing: 24

                    SaidRange {
                        most: row.width
                        says: qsTr("seed set: %1").arg(row.setText)
                        low: row.setLow
                        high: row.setHigh
                    }
                    SaidRange {
                        most: row.width
                        says: qsTr("germination: %1").arg(row.upText)
                        low: row.upLow
                        high: row.upHigh
                    }
                }
                Say {
                    width: parent.width
                    text: row.facts
                    font.pixelSize: Look.tiny
                    color: Look.quiet
                }
            }
        }
        Empty {
            width: parent.width
            visible: ages.rows.count === 0
            belongs: qsTr("What came of pollen stands here once cones were harvested whose pollen is in the book.")
        }
        Say {
            width: parent.width
            visible: ages.rows.count > 0
            text: qsTr("Seed set is of two seeds a fertile scale, where scales were counted. Ranges are for these seeds (95 in 100); cones differ more than that. A cone that took pollen of several ages is not told here.")
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
    }
}
