// SPDX-License-Identifier: GPL-3.0-or-later
// The coming months: whether everything will fit, what mix and pots to have in time.
import QtQuick
import ConelineWindow

Flickable {
    id: page

    required property Session session
    readonly property var marks: {
        const every = [];
        for (let i = 0; i < plan.months.length; i += 4)
            every.push({
                "at": i,
                "word": plan.months[i]
            });
        return every;
    }

    clip: true
    contentHeight: content.height + 48
    boundsBehavior: Flickable.StopAtBounds

    SeasonPlan {
        id: plan

        session: page.session
    }
    Column {
        id: content

        x: 24
        y: 16
        width: Math.min(parent.width - 48, 1200)
        spacing: 12

        Say {
            width: parent.width
            text: qsTr("Season plan")
            font.pixelSize: Look.title
            Accessible.role: Accessible.Heading
        }
        Say {
            width: parent.width
            visible: text !== ""
            text: plan.fault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Column {
            width: parent.width

            Repeater {
                model: plan.fits

                Say {
                    required property string modelData

                    width: content.width
                    text: modelData
                    font.pixelSize: Look.large
                }
            }
        }
        Flow {
            width: parent.width
            spacing: 32

            Column {
                width: page.width > 1000 ? (content.width - 32) / 2 : content.width
                spacing: 8

                Heading {
                    width: parent.width
                    text: qsTr("Bench taken, by light class")
                }
                LineChart {
                    width: parent.width
                    height: 260
                    series: plan.space
                    across: Math.max(1, plan.months.length - 1)
                    unit: page.session.speech.areaUnit
                    marks: page.marks
                    saying: qsTr("Room needed by month, and what there is; the sentences above say where it does not fit.")
                }
            }
            Column {
                width: page.width > 1000 ? (content.width - 32) / 2 : content.width
                spacing: 8

                Heading {
                    width: parent.width
                    text: qsTr("Parts of the mixes, by month")
                }
                LineChart {
                    width: parent.width
                    height: 260
                    series: plan.mix
                    across: Math.max(1, plan.months.length - 1)
                    unit: page.session.speech.volumeUnit
                    marks: page.marks
                    saying: qsTr("How much of each part by month; the sums stand below.")
                }
            }
        }
        Flow {
            width: parent.width
            spacing: 32

            Sums {
                width: page.width > 1000 ? (content.width - 32) / 2 : content.width
                title: qsTr("%1 of each part").arg(page.session.speech.volumeUnit)
                rows: plan.parts
            }
            Sums {
                width: page.width > 1000 ? (content.width - 32) / 2 : content.width
                title: qsTr("Plants to be potted into")
                rows: plan.pots
            }
        }
        Column {
            width: parent.width
            visible: plan.remarks.length > 0

            Heading {
                text: qsTr("To know of this plan")
            }
            Repeater {
                model: plan.remarks

                Say {
                    required property string modelData

                    width: content.width
                    text: modelData
                    font.pixelSize: Look.tiny
                    color: Look.quiet
                    bottomPadding: 4
                }
            }
        }
    }
}
