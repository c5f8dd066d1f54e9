// SPDX-License-Identifier: GPL-3.0-or-later
// What loggers measured at a place, day by day, and taking in another file.
import QtQuick
import ConelineWindow

Scroll {
    id: page

    required property Session session

    contentHeight: content.height + 48

    TemperatureLog {
        id: log

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
            text: qsTr("Temperature of the places")
            font.pixelSize: Look.large
            Accessible.role: Accessible.Heading
        }
        Choice {
            width: parent.width
            says: qsTr("place")
            choices: log.places
            chosen: log.place
            onPicked: value => log.place = value
        }
        Say {
            width: parent.width
            visible: text !== ""
            text: log.said.join("\n")
        }
        LineChart {
            width: parent.width
            height: 280
            visible: log.series.count > 0
            series: log.series
            across: log.across
            highest: page.session.speech.units === "us" ? 86 : 30
            unit: qsTr("%1, by day; days without temperature are left out").arg(page.session.speech.temperatureUnit)
            marks: log.marks
            saying: qsTr("Lowest, mean and highest temperature of each day.")
        }
        Say {
            width: parent.width
            visible: log.looking
            text: qsTr("Summing up the readings …")
            color: Look.quiet
        }
        Empty {
            width: parent.width
            visible: log.series.count === 0 && !log.looking
            belongs: qsTr("What a logger measured here belongs here: take in its CSV file below. Days can then be counted as degree-days, and germination held against temperature.")
        }
        Heading {
            text: qsTr("Take in a logger's file")
        }
        PathField {
            id: file

            width: parent.width
            label: qsTr("CSV file, typed or dropped here")
        }
        Choice {
            id: unit

            width: parent.width
            says: qsTr("unit")
            choices: [qsTr("as the file says"), "°C", "°F"]
            chosen: choices[0]
            onPicked: value => chosen = value
        }
        Press {
            objectName: "take-in"
            weight: "act"
            text: qsTr("Take in")
            enabled: file.path !== ""
            onClicked: log.takeIn(file.path, unit.chosen)
        }
        Say {
            objectName: "logFault"
            width: parent.width
            visible: text !== ""
            text: log.fault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Heading {
            visible: log.measured.count > 0
            text: qsTr("Places with a logger")
        }
        Repeater {
            model: log.measured

            Say {
                required property string name
                required property string span
                required property string days

                width: content.width
                text: name + ": " + span + "; " + days
            }
        }
    }
}
