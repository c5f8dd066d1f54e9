// SPDX-License-Identifier: GPL-3.0-or-later
// At the end of the ready field: the book's own page, and help.
import QtQuick
import ConelineWindow

Row {
    id: end

    property bool open: false
    signal bookWanted
    signal helpWanted

    spacing: 8

    Press {
        objectName: "bookPage"
        visible: end.open
        text: qsTr("Book")
        Accessible.name: qsTr("The book and its file")
        onClicked: end.bookWanted()
    }
    Press {
        objectName: "help"
        text: "?"
        Accessible.name: qsTr("Help, F1")
        onClicked: end.helpWanted()
    }
}
