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
        return inspect.settle() && table.settle();
    }

    TablePage {
        id: table

        anchors.fill: parent
        visible: side.inHand && side.chosen.startsWith("B")
        session: side.session
        batch: visible ? side.chosen : ""
        onClosed: side.closed()
        onLetter: text => side.letter(text)
    }
    InspectPage {
        id: inspect

        anchors.fill: parent
        visible: side.inHand && side.chosen !== "" && !table.visible
        session: side.session
        tray: visible ? side.chosen : ""
        onClosed: side.closed()
        onEntered: side.entered("")
        onLetter: text => side.letter(text)
    }
    DeedPage {
        anchors.fill: parent
        visible: side.deed !== "" && !inspect.visible && !table.visible && !side.labelling
        session: side.session
        code: side.chosen
        deed: visible ? side.deed : ""
        onClosed: side.closed()
        onEntered: made => side.entered(made)
    }
    LotPage {
        anchors.fill: parent
        visible: side.chosen !== "" && side.deed === "" && !inspect.visible && !table.visible && !side.labelling
        session: side.session
        code: side.chosen
        onWanted: verb => side.wanted(verb)
        onOpened: code => side.opened(code)
    }
    LabelsPage {
        anchors.fill: parent
        visible: side.labelling
        session: side.session
        station: visible ? side.page : ""
        first: visible ? side.chosen : ""
        onClosed: side.closed()
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
