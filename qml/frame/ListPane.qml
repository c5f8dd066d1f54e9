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
        anchors.fill: parent
        shown: pane.page === "today"
        file: "stations/TodayList.qml"
        given: ({
                "session": pane.session,
                "chosen": pane.chosen
            })
        heard: ({
                "opened": pane.opened,
                "wanted": pane.wanted
            })
    }
    WhenShown {
        anchors.fill: parent
        shown: pane.page === "found"
        file: "stations/FoundList.qml"
        given: ({
                "finder": pane.finder,
                "chosen": pane.chosen
            })
        heard: ({
                "opened": pane.opened
            })
    }
    WhenShown {
        anchors.fill: parent
        shown: /^(pollen|cones|seed|trays|pots|out)$/.test(pane.page)
        file: "stations/StationPage.qml"
        given: ({
                "session": pane.session,
                "station": shown ? pane.page : "",
                "chosen": pane.chosen
            })
        heard: ({
                "opened": pane.opened,
                "wanted": deed => pane.wanted("", deed),
                "labelsWanted": pane.labelsWanted,
                "crossesWanted": pane.crossesWanted
            })
    }
}
