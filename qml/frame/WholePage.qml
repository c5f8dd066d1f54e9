// SPDX-License-Identifier: GPL-3.0-or-later
// The pages that take all the room below the line.
import QtQuick
import ConelineWindow

Loader {
    id: whole

    required property Session session
    property string page: ""
    property bool tall: false
    readonly property var made: item
    signal entered(string made)
    signal opened(string code)
    signal letter(string text)
    signal over

    /// A round that is going takes a scan itself.
    function scan(text: string): bool {
        return whole.page === "round" && whole.made && whole.made.scan(text);
    }

    readonly property var files: ({
            "crosses": "crosses/CrossesPage.qml",
            "results": "results/ResultsPage.qml",
            "season": "season/SeasonPage.qml",
            "round": "round/RoundPage.qml",
            "look": "look/LookPage.qml",
            "book": "start/BookPage.qml",
            "start": "start/StartPage.qml"
        })

    // By its file, since a type that is named is read before the window is there.
    function make() {
        const file = whole.files[whole.page];
        const given = {
            "session": whole.session
        };
        if (whole.page === "results")
            given.tall = whole.tall;
        if (file === undefined)
            whole.source = "";
        else
            whole.setSource(Qt.resolvedUrl("../stations/" + file), given);
    }

    visible: files[page] !== undefined
    onPageChanged: make()
    onTallChanged: {
        if (whole.made && whole.page === "results")
            whole.made.tall = whole.tall;
    }

    Connections {
        target: whole.item
        ignoreUnknownSignals: true

        function onEntered(made: string) {
            whole.entered(made);
        }
        function onOpened(code: string) {
            whole.opened(code);
        }
        function onLetter(text: string) {
            whole.letter(text);
        }
        function onOver() {
            whole.over();
        }
    }
}
