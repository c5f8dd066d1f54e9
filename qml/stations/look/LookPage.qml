// SPDX-License-Identifier: GPL-3.0-or-later
// How the window looks and speaks: light, size of text, language, units.
import QtQuick
import ConelineWindow

Scroll {
    id: page

    required property Session session

    contentHeight: content.height + 48

    Column {
        id: content

        x: 24
        y: 16
        width: Math.min(parent.width - 48, Look.wide(800))
        spacing: 12

        Say {
            width: parent.width
            text: qsTr("Look and language")
            font.pixelSize: Look.title
            Accessible.role: Accessible.Heading
        }
        Heading {
            text: qsTr("Light")
        }
        Choice {
            objectName: "chooseLook"
            width: parent.width
            says: qsTr("Light")
            choices: ["day", "night", "sun"]
            shown: [qsTr("day"), qsTr("night"), qsTr("strong sun")]
            chosen: page.session.look
            onPicked: value => page.session.look = value
        }
        Heading {
            text: qsTr("Size of text")
        }
        Choice {
            objectName: "chooseTextSize"
            width: parent.width
            says: qsTr("Size of text")
            choices: ["100", "125", "150", "175", "200"]
            shown: choices.map(percent => percent + " %")
            chosen: String(page.session.speech.textSize)
            onPicked: value => page.session.speech.textSize = parseInt(value)
        }
        Heading {
            text: qsTr("Language")
        }
        Choice {
            objectName: "chooseLanguage"
            width: parent.width
            says: qsTr("Language")
            choices: ["", "en", "es"]
            // Each language is called by its own name.
            shown: [qsTr("the system's"), "English", "Español"]
            chosen: page.session.speech.language
            onPicked: value => page.session.speech.language = value
        }
        Say {
            width: parent.width
            text: qsTr("Days and numbers are written as the system has them: today is %1. The command line and files stay English, with days like 2026-03-09.").arg(page.session.today)
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
        Heading {
            text: qsTr("Units")
        }
        Choice {
            objectName: "chooseUnits"
            width: parent.width
            says: qsTr("Units")
            choices: ["metric", "us"]
            shown: [qsTr("litres, m², mm, °C"), qsTr("US gallons, ft², inches, °F")]
            chosen: page.session.speech.units
            onPicked: value => page.session.speech.units = value
        }
        Say {
            width: parent.width
            text: qsTr("The book keeps litres and metres whatever is chosen here, so nothing in it changes. 1 US gal is 3.785411784 L.")
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
    }
}
