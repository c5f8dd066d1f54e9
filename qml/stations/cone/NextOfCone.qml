// SPDX-License-Identifier: GPL-3.0-or-later
// What a cone on its plant will want next, and when.
import QtQuick
import ConelineWindow

Column {
    id: part

    required property Session session
    property string code: ""

    visible: next.rows.count > 0
    spacing: 4

    ComesNext {
        id: next

        session: part.session
        code: part.code
    }
    Heading {
        text: qsTr("What comes next")
    }
    Repeater {
        model: next.rows

        Flow {
            id: row

            required property string when
            required property string told

            width: part.width
            spacing: 12
            Accessible.role: Accessible.StaticText
            Accessible.name: row.when + ": " + row.told

            Words {
                width: Math.min(Math.max(implicitWidth, Look.wide(190)), row.width)
                text: row.when
                font.weight: Font.DemiBold
                color: Look.forecast
            }
            Words {
                objectName: "comesNext"
                width: Math.min(implicitWidth, row.width)
                text: row.told
            }
        }
    }
}
