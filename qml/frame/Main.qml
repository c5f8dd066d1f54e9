// SPDX-License-Identifier: GPL-3.0-or-later
// The window: the line as navigation, the page, and the field that is always ready.
import QtQuick
import ConelineWindow

Window {
    id: window

    required property Session session
    /// Chosen when the window is made, so that no other page is made for nothing.
    property string page: ""
    property string chosen: ""
    property string deed: ""
    property bool inHand: false
    property bool labelling: false
    property bool helping: false
    readonly property bool tall: width < 1000 || height > width
    /// Large text needs the line at the edge, where words have room.
    readonly property bool lineAtEdge: tall || width < Look.wide(1240)

    /// Opens a thing; a tray that was scanned comes up ready to be counted. False where something else
    /// has to be put right first, or a round took the scan.
    function open(code: string, scanned: bool): bool {
        if (scanned && whole.scan(code)) {
            ready.finder.forget();
            return false;
        }
        if (!side.settle())
            return false;
        ready.finder.forget();
        window.deed = "";
        window.chosen = code;
        window.labelling = false;
        window.inHand = scanned && code.startsWith("T");
        if (whole.shown)
            window.page = "today";
        ready.focusField();
        return true;
    }
    function go(page: string) {
        if (!side.settle())
            return;
        if (page !== "found")
            ready.finder.forget();
        window.page = page;
        window.labelling = false;
        window.chosen = "";
        window.deed = "";
        window.inHand = false;
    }
    function label(code: string) {
        if (!side.settle())
            return;
        window.chosen = code;
        window.deed = "";
        window.inHand = false;
        window.labelling = true;
    }
    function begin(verb: string) {
        // A tray, or a batch on the harvest table, is counted in the hand.
        const counted = verb === "inspect" || verb === "table";
        window.inHand = counted;
        window.deed = counted ? "" : verb;
    }
    function leaveStart() {
        if (window.page === "start" && !window.session.empty)
            window.page = "today";
    }
    function help() {
        window.helping = !window.helping;
        if (window.helping)
            helpPane.made.focusSearch();
        else
            ready.focusField();
    }
    /// From what the side shows, a step at a time; what was counted there goes into the book.
    function leave() {
        if (window.labelling)
            window.labelling = false;
        else if (window.deed !== "") {
            if (!side.stepBack())
                window.deed = "";
        } else if (window.inHand && window.chosen !== "")
            window.inHand = !side.settle();
        else if (window.chosen !== "")
            window.chosen = "";
        else if (window.session.open && !window.session.empty)
            window.go("today");
        else if (window.page === "look")
            window.go("start");
    }
    function back() {
        if (window.helping)
            window.help();
        else
            window.leave();
    }

    width: 1280
    height: 800
    minimumWidth: 640
    minimumHeight: 560
    visible: true
    color: Look.paper
    Component.onCompleted: page = session.empty ? "start" : "today"
    title: session.open ? session.name + " – Coneline" : "Coneline"

    Binding {
        target: Look
        property: "mode"
        value: window.session.look
    }
    Binding {
        target: Look
        property: "scale"
        value: window.session.speech.textSize / 100
    }
    Connections {
        target: window.session

        function onChanged() {
            later.start();
        }
    }
    // Later, so that the start page has done with its own work first.
    Timer {
        id: later

        interval: 0
        onTriggered: window.leaveStart()
    }
    KeyWatch {
        onScanned: (text, note) => {
            // A round says itself, seen and heard, what became of a scan.
            if (!whole.scan(text)) {
                if (ready.look(text))
                    sound.taken();
                else
                    sound.refused();
            }
            ready.note = note; // last, since an entry made takes the note before away
        }
        onAgain: text => ready.note = qsTr("%1 was scanned twice within a moment; once counts").arg(text)
    }
    Feedback {
        id: sound
    }
    Shortcut {
        sequence: "Escape"
        onActivated: window.back()
    }
    Shortcut {
        sequence: "F1"
        onActivated: window.help()
    }
    Shortcut {
        sequence: "Ctrl+Z"
        enabled: window.session.undoable
        onActivated: window.session.undo()
    }

    Item {
        anchors.fill: parent
        focus: true
        // A scan or typing that nobody else takes goes into the ready field.
        Keys.onPressed: event => {
            if (way.take(event.key, event.modifiers)) {
                event.accepted = true;
            } else if (event.text.trim() !== "" && !(event.modifiers & (Qt.ControlModifier | Qt.AltModifier))) {
                ready.take(event.text);
                event.accepted = true;
            }
        }

        KeyboardWay {
            id: way

            parts: [ready, helpPane, side, whole, list, strip]
            page: helpPane.visible ? helpPane : whole.visible ? whole : side.busy ? side : null
            onRested: ready.focusField()
        }
        Strip {
            id: strip

            anchors.left: parent.left
            anchors.top: parent.top
            width: window.lineAtEdge ? Look.wide(130) + 10 : parent.width
            height: window.lineAtEdge ? ready.y : Look.wide(112)
            session: window.session
            tall: window.lineAtEdge
            page: window.page
            onWanted: page => window.go(page)
        }
        Item {
            anchors.left: window.lineAtEdge ? strip.right : parent.left
            anchors.right: parent.right
            anchors.top: window.lineAtEdge ? parent.top : strip.bottom
            anchors.bottom: ready.top

            ListPane {
                id: list

                // Help lies over it; what is underneath is neither read out nor reached.
                visible: !whole.visible && !window.helping
                width: window.tall ? parent.width : Math.round(parent.width * 0.4)
                height: !window.tall ? parent.height : side.busy ? Math.round(parent.height * 0.34) : side.offers ? Math.max(parent.height * 0.4, parent.height - side.offered) : parent.height
                session: window.session
                page: window.page
                chosen: window.chosen
                finder: ready.finder
                onOpened: code => window.open(code, false)
                onWanted: (code, verb) => {
                    if (window.open(code, false))
                        window.begin(verb);
                }
                onLabelsWanted: window.label("")
                onCrossesWanted: window.go("crosses")

                Rectangle {
                    color: Look.rule
                    x: window.tall ? 0 : parent.width - 1
                    y: window.tall ? parent.height - 1 : 0
                    width: window.tall ? parent.width : 1
                    height: window.tall ? 1 : parent.height
                }
            }
            SidePane {
                id: side

                visible: !whole.visible && !(window.helping && window.tall) && (!window.tall || busy || offers)
                x: window.tall ? 0 : list.width + 1
                y: window.tall ? list.height : 0 // the rule is the last line of the list
                width: parent.width - x
                height: parent.height - y
                session: window.session
                page: window.page
                chosen: window.chosen
                deed: window.deed
                inHand: window.inHand
                labelling: window.labelling
                onWanted: verb => verb === "labels" ? window.label(window.chosen) : window.begin(verb)
                onOpened: code => window.open(code, false)
                onClosed: window.leave()
                onEntered: made => {
                    window.deed = "";
                    if (made !== "" && window.chosen === "")
                        window.chosen = made;
                    ready.focusField();
                }
                onLetter: text => ready.take(text)
            }
            WholePage {
                id: whole

                anchors.fill: parent
                anchors.leftMargin: window.helping && !window.tall ? helpPane.width : 0
                session: window.session
                page: window.page
                onEntered: made => window.open(made, false)
                onOpened: code => window.open(code, false)
                onLetter: text => ready.take(text)
                onOver: window.go("today")
            }
            WhenShown {
                id: helpPane

                shown: window.helping
                width: window.tall ? parent.width : Math.round(parent.width * 0.4)
                height: parent.height
                file: "help/HelpPane.qml"
                given: ({
                        "wanted": [window.labelling ? "labels" : window.deed.startsWith("amend ") ? "amend" : window.deed, window.inHand ? (window.chosen.startsWith("B") ? "table" : "inspect") : window.chosen !== "" ? "lot" : "", window.page]
                    })
                heard: ({
                        "closed": window.help
                    })
            }
        }
        ReadyBar {
            id: ready

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            session: window.session
            tall: window.tall
            onOpened: code => window.open(code, true)
            onFoundSeveral: window.go("found")
            onBookWanted: window.go("book")
            onHelpWanted: window.help()
        }
    }
}
