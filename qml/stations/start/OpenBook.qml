// SPDX-License-Identifier: GPL-3.0-or-later
// A book that is there already.
import QtQuick
import ConelineWindow

Column {
    id: open

    required property Session session

    spacing: 12
    visible: !session.open

    Heading {
        text: qsTr("Or a book you have")
    }
    Row {
        spacing: 8
        width: parent.width

        Field {
            id: file

            width: open.width - press.width - 8
            says: qsTr("The file of the book")
            placeholderText: qsTr("its file, or drop it on this window")
            onAccepted: open.session.openBook(text)
        }
        Press {
            id: press

            text: qsTr("Open")
            onClicked: open.session.openBook(file.text)
        }
    }
}
