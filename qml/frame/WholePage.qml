// SPDX-License-Identifier: GPL-3.0-or-later
// The pages that take all the room below the line.
import QtQuick
import ConelineWindow

WhenShown {
    id: whole

    required property Session session
    property string page: ""
    readonly property var files: ({
            "crosses": "stations/crosses/CrossesPage.qml",
            "results": "stations/results/ResultsPage.qml",
            "season": "stations/season/SeasonPage.qml",
            "round": "stations/round/RoundPage.qml",
            "look": "stations/look/LookPage.qml",
            "book": "stations/start/BookPage.qml",
            "start": "stations/start/StartPage.qml"
        })
    signal entered(string made)
    signal opened(string code)
    signal letter(string text)
    signal over

    /// A round that is going takes a scan itself.
    function scan(text: string): bool {
        return whole.page === "round" && whole.made && whole.made.scan(text);
    }

    file: files[page] ?? ""
    shown: file !== ""
    stays: false
    given: ({
            "session": whole.session
        })
    heard: ({
            "entered": whole.entered,
            "opened": whole.opened,
            "letter": whole.letter,
            "over": whole.over
        })
}
