// SPDX-License-Identifier: GPL-3.0-or-later
// What the diary says of a cone, a pollen lot or a parent plant: one fact a line.
import QtQuick
import ConelineWindow

Column {
    id: facts

    required property Session session
    property string code: ""

    visible: diary.facts.count > 0
    spacing: 4

    Diary {
        id: diary

        session: facts.session
        code: facts.code
    }
    Heading {
        text: qsTr("What is known")
    }
    Repeater {
        model: diary.facts

        Row {
            id: fact

            required property string label
            required property string value

            width: facts.width
            spacing: 12
            Accessible.role: Accessible.StaticText
            Accessible.name: fact.label + ": " + fact.value

            Words {
                id: label

                width: Math.min(Look.wide(150), fact.width * 0.4)
                text: fact.label
                color: Look.quiet
            }
            Words {
                width: fact.width - label.width - 12
                text: fact.value
                wrapMode: Text.Wrap
            }
        }
    }
}
