// SPDX-License-Identifier: GPL-3.0-or-later
// The right side, or the lower part: the thing chosen, its form, a tray to be counted, labels.
import QtQuick
import ConelineWindow

Item {
    id: side

    required property Session session
    property string page: ""
    property string chosen: ""
    property string deed: ""
    property bool inHand: false
    property bool labelling: false
    readonly property bool offers: nothing.offers
    readonly property real offered: nothing.least + 49 // the rule takes one
    readonly property bool busy: chosen !== "" || deed !== "" || labelling
    signal wanted(string verb)
    signal opened(string code)
    signal closed
    signal entered(string made)
    signal letter(string text)

    /// Counts of a tray that were not entered yet go into the book; false where they are refused.
    function settle(): bool {
        return (!inspect.made || inspect.made.settle()) && (!table.made || table.made.settle());
    }
    /// Back from a form that was begun on the way to another; false where there is none.
    function stepBack(): bool {
        return form.made !== null && form.made.stepBack();
    }

    WhenShown {
        id: table

        anchors.fill: parent
        shown: side.inHand && side.chosen.startsWith("B")
        file: "stations/table/TablePage.qml"
        given: ({
                "session": side.session,
                "batch": shown ? side.chosen : ""
            })
        heard: ({
                "closed": side.closed,
                "letter": side.letter
            })
    }
    WhenShown {
        id: inspect

        anchors.fill: parent
        shown: side.inHand && side.chosen !== "" && !table.shown
        file: "stations/trays/InspectPage.qml"
        given: ({
                "session": side.session,
                "tray": shown ? side.chosen : ""
            })
        heard: ({
                "closed": side.closed,
                "entered": () => side.entered(""),
                "letter": side.letter
            })
    }
    WhenShown {
        id: form

        anchors.fill: parent
        shown: side.deed !== "" && !inspect.shown && !table.shown && !side.labelling
        file: "stations/lot/DeedPage.qml"
        given: ({
                "session": side.session,
                "code": side.chosen,
                "deed": shown ? side.deed : ""
            })
        heard: ({
                "closed": side.closed,
                "entered": side.entered
            })
    }
    WhenShown {
        anchors.fill: parent
        shown: side.chosen !== "" && side.deed === "" && !inspect.shown && !table.shown && !side.labelling
        file: "stations/lot/LotPage.qml"
        given: ({
                "session": side.session,
                "code": shown ? side.chosen : ""
            })
        heard: ({
                "wanted": side.wanted,
                "opened": side.opened
            })
    }
    WhenShown {
        anchors.fill: parent
        shown: side.labelling
        file: "stations/labels/LabelsPage.qml"
        given: ({
                "session": side.session,
                "station": shown ? side.page : "",
                "first": shown ? side.chosen : ""
            })
        heard: ({
                "closed": side.closed
            })
    }
    NothingChosen {
        id: nothing

        anchors.fill: parent
        anchors.margins: 24
        visible: !side.busy
        page: side.page
        onWanted: deed => side.wanted(deed)
    }
}
