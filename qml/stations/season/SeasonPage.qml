// SPDX-License-Identifier: GPL-3.0-or-later
// The season plan: what the months to come may bring, what to buy, where it all stands, what to sow
// for what is wanted, and what would be otherwise.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property string view: "ahead"
    signal opened(string code)

    Tabs {
        id: views

        objectName: "season"
        x: 24
        y: 12
        width: parent.width - 48
        view: page.view
        views: [
            {
                "view": "ahead",
                "word": qsTr("Months ahead")
            },
            {
                "view": "order",
                "word": qsTr("To order")
            },
            {
                "view": "benches",
                "word": qsTr("Benches")
            },
            {
                "view": "targets",
                "word": qsTr("Sow for")
            },
            {
                "view": "otherwise",
                "word": qsTr("What if")
            }
        ]
        onPicked: view => page.view = view
    }
    Loader {
        y: views.y + views.height + 8
        width: parent.width
        height: parent.height - y
        sourceComponent: page.view === "order" ? order : page.view === "benches" ? benches : page.view === "targets" ? targets : page.view === "otherwise" ? otherwise : ahead
    }
    Component {
        id: ahead

        AheadView {
            session: page.session
            onOpened: code => page.opened(code)
        }
    }
    Component {
        id: order

        OrderView {
            session: page.session
        }
    }
    Component {
        id: benches

        BenchView {
            session: page.session
            onOpened: code => page.opened(code)
        }
    }
    Component {
        id: targets

        TargetView {
            session: page.session
        }
    }
    Component {
        id: otherwise

        OtherwiseView {
            session: page.session
        }
    }
}
