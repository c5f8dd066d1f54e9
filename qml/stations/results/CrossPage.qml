// SPDX-License-Identifier: GPL-3.0-or-later
// The chosen cross: what is still to come, the curve, and its trays.
import QtQuick
import ConelineWindow

Scroll {
    id: page

    required property GerminationResults results

    function weeks(days: real): var {
        const marks = [];
        if (!page.results.inDays) {
            for (let part = 0; part <= 4; ++part)
                marks.push({
                    "at": days * part / 4,
                    "word": part === 0 ? qsTr("sown") : qsTr("%1 °C·days").arg(Math.round(days * part / 4))
                });
            return marks;
        }
        const apart = days > 500 ? 182 : days > 200 ? 91 : days > 70 ? 28 : 7;
        for (let day = 0; day <= days; day += apart)
            marks.push({
                "at": day,
                "word": day === 0 ? qsTr("sown") : qsTr("week %1").arg(Math.round(day / 7))
            });
        return marks;
    }

    contentHeight: content.height + 32

    Column {
        id: content

        x: 24
        y: 16
        width: parent.width - 48
        spacing: 12

        Say {
            width: parent.width
            text: page.results.name
            font.pixelSize: Look.large
            Accessible.role: Accessible.Heading
        }
        Column {
            width: parent.width

            Repeater {
                model: page.results.sentences

                Say {
                    required property string modelData
                    required property int index

                    width: content.width
                    text: modelData
                    font.weight: index === 0 ? Font.DemiBold : Font.Normal
                    color: index === 1 ? Look.forecast : Look.ink
                }
            }
            Say {
                width: parent.width
                text: page.results.told
                color: Look.quiet
            }
        }
        LineChart {
            width: parent.width
            height: 280
            series: page.results.series
            across: page.results.horizon
            highest: 100
            unit: qsTr("% of the seed sown")
            band: page.results.band
            marks: page.weeks(page.results.horizon)
            coming: page.results.comingHigh > page.results.comingLow ? {
                "from": page.results.lastDay,
                "low": page.results.comingLow,
                "high": page.results.comingHigh,
                "word": qsTr("where it may end")
            } : null
            saying: page.results.told
        }
        Say {
            width: parent.width
            visible: page.results.band.length > 0
            text: qsTr("The shade around the curve is its range, day by day.")
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
        Heading {
            text: qsTr("Its trays")
        }
        Repeater {
            model: page.results.trays

            Item {
                id: tray

                required property string code
                required property string what
                required property string range
                required property real low
                required property real high
                required property real likely
                required property string told

                width: content.width
                height: words.height + 16

                Say {
                    id: code

                    width: Look.wide(92)
                    text: tray.code
                    font.family: Look.mono
                    font.weight: Font.DemiBold
                }
                Column {
                    id: words

                    x: Look.wide(100)
                    width: parent.width - x

                    Say {
                        width: parent.width
                        text: tray.what + " · " + tray.range
                    }
                    RangeBar {
                        width: parent.width
                        low: tray.low
                        high: tray.high
                        likely: tray.likely
                        tone: Look.link
                    }
                    Say {
                        width: parent.width
                        text: tray.told
                        font.pixelSize: Look.tiny
                        color: Look.quiet
                    }
                }
            }
        }
    }
}
