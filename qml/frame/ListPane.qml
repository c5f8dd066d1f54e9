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

    TodayList {
        anchors.fill: parent
        visible: pane.page === "today"
        session: pane.session
        chosen: pane.chosen
        onOpened: code => pane.opened(code)
        onWanted: (code, verb) => pane.wanted(code, verb)
    }
    FoundList {
        anchors.fill: parent
        visible: pane.page === "found"
        finder: pane.finder
        chosen: pane.chosen
        onOpened: code => pane.opened(code)
    }
    StationPage {
        readonly property bool mine: pane.page !== "today" && pane.page !== "found"

        anchors.fill: parent
        visible: mine
        session: pane.session
        station: mine ? pane.page : ""
        chosen: pane.chosen
        onOpened: code => pane.opened(code)
        onWanted: deed => pane.wanted("", deed)
        onLabelsWanted: pane.labelsWanted()
        onCrossesWanted: pane.crossesWanted()
    }
}
