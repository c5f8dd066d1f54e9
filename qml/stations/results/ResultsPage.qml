// SPDX-License-Identifier: GPL-3.0-or-later
// What came up: the crosses, what may explain them, trays to empty, pollen by age, the temperature of the places.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property string view: "crosses"
    signal opened(string code)

    Tabs {
        id: views

        objectName: "results"
        x: 24
        y: 12
        width: parent.width - 48
        view: page.view
        views: [
            {
                "view": "crosses",
                "word": qsTr("Germination")
            },
            {
                "view": "why",
                "word": qsTr("Why")
            },
            {
                "view": "empty",
                "word": qsTr("Trays to empty")
            },
            {
                "view": "pollen",
                "word": qsTr("Pollen")
            },
            {
                "view": "temperature",
                "word": qsTr("Temperature")
            }
        ]
        onPicked: view => page.view = view
    }
    Loader {
        y: views.y + views.height + 8
        width: parent.width
        height: parent.height - y
        sourceComponent: page.view === "why" ? why : page.view === "empty" ? empty : page.view === "pollen" ? pollen : page.view === "temperature" ? temperature : crosses
    }
    Component {
        id: crosses

        CrossesView {
            session: page.session
        }
    }
    Component {
        id: why

        WhyView {
            session: page.session
        }
    }
    Component {
        id: empty

        EmptyView {
            session: page.session
            onOpened: code => page.opened(code)
        }
    }
    Component {
        id: pollen

        PollenView {
            session: page.session
        }
    }
    Component {
        id: temperature

        TemperatureView {
            session: page.session
        }
    }
}
