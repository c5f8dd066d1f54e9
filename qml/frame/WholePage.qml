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

    visible: page === "crosses" || page === "results" || page === "season" || page === "start"
    active: visible
    sourceComponent: page === "crosses" ? crosses : page === "results" ? results : page === "season" ? season : start

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
