// SPDX-License-Identifier: GPL-3.0-or-later
// The pages that take all the room below the line.
import QtQuick
import ConelineWindow

Loader {
    id: whole

    required property Session session
    property string page: ""
    property bool tall: false
    signal entered(string made)
    signal opened(string code)
    signal letter(string text)
    signal over

    /// A round that is going takes a scan itself.
    function scan(text: string): bool {
        return whole.page === "round" && whole.item && whole.item.scan(text);
    }

    visible: page === "crosses" || page === "results" || page === "season" || page === "start" || page === "round" || page === "look"
    active: visible
    sourceComponent: page === "crosses" ? crosses : page === "results" ? results : page === "season" ? season : page === "round" ? round : page === "look" ? look : start

    Component {
        id: crosses

        CrossesPage {
            session: whole.session
        }
    }
    Component {
        id: results

        ResultsPage {
            session: whole.session
            tall: whole.tall
            onOpened: code => whole.opened(code)
        }
    }
    Component {
        id: season

        SeasonPage {
            session: whole.session
            onOpened: code => whole.opened(code)
        }
    }
    Component {
        id: round

        RoundPage {
            session: whole.session
            onLetter: text => whole.letter(text)
            onOver: whole.over()
        }
    }
    Component {
        id: look

        LookPage {
            session: whole.session
        }
    }
    Component {
        id: start

        StartPage {
            session: whole.session
            onEntered: made => whole.entered(made)
        }
    }
}
