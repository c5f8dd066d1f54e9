// SPDX-License-Identifier: GPL-3.0-or-later
// What is here, on the left or above: the day's work, a station's lots, or what a name found.
import QtQuick
import ConelineWindow

Item {
    id: pane

    required property Session session
    required property Finder finder
    property string page: "today"
    property string chosen: ""
    signal opened(string code)
    signal wanted(string code, string verb)
    signal labelsWanted
    signal crossesWanted

    WhenShown {
        id: today

        anchors.fill: parent
        shown: pane.page === "today"
        file: "stations/TodayList.qml"
        given: ({
                "session": pane.session,
                "chosen": pane.chosen
            })
    }
    Connections {
        target: today.item

        function onOpened(code: string) {
            pane.opened(code);
        }
        function onWanted(code: string, verb: string) {
            pane.wanted(code, verb);
        }
    }
    WhenShown {
        id: found

        anchors.fill: parent
        shown: pane.page === "found"
        file: "stations/FoundList.qml"
        given: ({
                "finder": pane.finder,
                "chosen": pane.chosen
            })
    }
    Connections {
        target: found.item

        function onOpened(code: string) {
            pane.opened(code);
        }
    }
    WhenShown {
        id: station

        anchors.fill: parent
        shown: /^(pollen|cones|seed|trays|pots|out)$/.test(pane.page)
        file: "stations/StationPage.qml"
        given: ({
                "session": pane.session,
                "station": shown ? pane.page : "",
                "chosen": pane.chosen
            })
    }
    Connections {
        target: station.item

        function onOpened(code: string) {
            pane.opened(code);
        }
        function onWanted(deed: string) {
            pane.wanted("", deed);
        }
        function onLabelsWanted() {
            pane.labelsWanted();
        }
        function onCrossesWanted() {
            pane.crossesWanted();
        }
    }
}
