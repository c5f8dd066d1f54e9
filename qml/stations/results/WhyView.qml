// SPDX-License-Identifier: GPL-3.0-or-later
// Groups of trays that differ in one condition, beside each other: ranges, differences, curves.
import QtQuick
import ConelineWindow

Scroll {
    id: page

    required property Session session

    function weeks(days: real): var {
        const marks = [];
        const apart = days > 500 ? 182 : days > 200 ? 91 : days > 70 ? 28 : 7;
        for (let day = 0; day <= days; day += apart)
            marks.push({
                "at": day,
                "word": day === 0 ? qsTr("sown") : qsTr("week %1").arg(Math.round(day / 7))
            });
        return marks;
    }

    contentHeight: content.height + 48

    WhyResults {
        id: results

        session: page.session
    }
    Column {
        id: content

        x: 24
        y: 8
        width: Math.min(parent.width - 48, Look.wide(1200))
        spacing: 12

        Say {
            width: parent.width
            text: qsTr("Germination by %1, as of %2").arg(results.condition).arg(page.session.today)
            font.pixelSize: Look.large
            Accessible.role: Accessible.Heading
        }
        Flow {
            id: asked

            readonly property real half: width > Look.wide(700) ? (width - 12) / 2 : width

            width: parent.width
            spacing: 12

            Choice {
                objectName: "why-condition"
                width: asked.half
                says: qsTr("held against")
                choices: results.conditions
                chosen: results.condition
                onPicked: value => results.condition = value
            }
            Choice {
                width: asked.half
                says: qsTr("of")
                choices: results.taxa
                chosen: results.taxon
                onPicked: value => results.taxon = value
            }
        }
        Flow {
            width: parent.width
            spacing: 12

            Say {
                width: Math.min(implicitWidth, parent.width)
                height: Math.max(Look.target, implicitHeight)
                verticalAlignment: Text.AlignVCenter
                text: qsTr("Compare what was up by day")
            }
            Field {
                objectName: "why-day"
                width: Look.wide(112)
                says: qsTr("days after sowing; empty for all that came up so far")
                placeholderText: qsTr("so far")
                inputMethodHints: Qt.ImhDigitsOnly
                wrong: results.fault !== ""
                onEditingFinished: results.byDay = text
            }
        }
        Say {
            width: parent.width
            visible: text !== ""
            text: results.fault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        LineChart {
            width: parent.width
            height: 300
            visible: results.series.count > 0
            series: results.series
            across: results.across
            highest: 40
            unit: qsTr("% of the seed sown")
            marks: page.weeks(results.across)
            saying: qsTr("How the groups came up; their ranges stand above.")
        }
        Repeater {
            model: results.levels

            WhyRow {
                width: content.width
            }
        }
        Repeater {
            model: results.sentences

            Say {
                required property string modelData

                width: content.width
                text: modelData
            }
        }
        Say {
            width: parent.width
            text: results.cautions
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
    }
}
