// SPDX-License-Identifier: GPL-3.0-or-later
// No book yet, or an empty one: the three things to begin with, one opened at a time.
import QtQuick
import ConelineWindow

Scroll {
    id: page

    required property Session session
    property string way: session.open ? "cone" : ""
    /// While the first cone is asked, the other ways are out of the way.
    readonly property bool asking: way === "cone" && firstCone.at > 0
    signal entered(string made)

    contentHeight: content.height + 64

    Beginning {
        id: beginning

        session: page.session
    }
    Column {
        id: content

        anchors.horizontalCenter: parent.horizontalCenter
        y: 32
        width: Math.min(parent.width - 48, Look.wide(640))
        spacing: 16

        Say {
            width: parent.width
            text: page.session.open ? page.session.name : qsTr("From a pollinated cone to a plant in its pot")
            font.pixelSize: Look.title
            Accessible.role: Accessible.Heading
        }
        Say {
            width: parent.width
            text: page.session.open ? qsTr("This book is still empty. It begins with a cone.") : qsTr("A book keeps everything of one nursery in one file. Begin in one of these ways; a book you have is opened below, or brought back from its copies.")
            color: Look.quiet
        }
        Say {
            objectName: "startUnderway"
            width: parent.width
            visible: text !== ""
            text: page.session.underway
            Accessible.role: Accessible.AlertMessage
        }
        Repeater {
            model: beginning.faults

            Say {
                required property string modelData

                width: content.width
                text: modelData
                color: Look.lost
                Accessible.role: Accessible.AlertMessage
            }
        }
        StartWay {
            objectName: "way-cone"
            width: parent.width
            title: qsTr("Begin with the first cone")
            about: qsTr("A new book, its first plant and the cone on it.")
            unfolded: page.way === "cone"
            onWanted: page.way = page.way === "cone" ? "" : "cone"

            FirstCone {
                id: firstCone

                width: parent.width
                session: page.session
                onEntered: made => page.entered(made)
            }
        }
        StartWay {
            objectName: "way-demo"
            width: parent.width
            visible: !page.session.open && !page.asking
            title: qsTr("Look at the demo")
            about: qsTr("An invented nursery with some seasons behind it, to try everything on.")
            unfolded: page.way === "demo"
            onWanted: beginning.openDemo()
        }
        StartWay {
            objectName: "way-import"
            width: parent.width
            visible: !page.session.open && !page.asking
            title: qsTr("Import a season folder")
            about: qsTr("A folder of CSV files, as this program exports them, becomes a new book.")
            unfolded: page.way === "import"
            onWanted: page.way = page.way === "import" ? "" : "import"

            PathField {
                id: folder

                width: parent.width
                label: qsTr("The season folder")
            }
            PathField {
                id: into

                width: parent.width
                label: qsTr("The new book's file")
                path: page.session.usualPath()
            }
            Press {
                text: qsTr("Import it")
                weight: "act"
                onClicked: beginning.importSeason(folder.path, into.path)
            }
        }
        StartWay {
            objectName: "way-table"
            width: parent.width
            visible: !page.asking
            title: qsTr("Bring in an old spreadsheet")
            about: qsTr("Lots or parent plants from a list kept elsewhere, its columns matched by hand.")
            unfolded: page.way === "table"
            onWanted: page.way = page.way === "table" ? "" : "table"

            OldTablePart {
                width: content.width - 40
                session: page.session
            }
        }
        StartWay {
            objectName: "way-open"
            width: parent.width
            visible: !page.session.open && !page.asking
            title: qsTr("Open a book you have")
            about: qsTr("Its file, typed or dropped on this window.")
            unfolded: page.way === "open"
            onWanted: page.way = page.way === "open" ? "" : "open"

            PathField {
                id: file

                width: parent.width
                label: qsTr("The file of the book")
                onFinished: page.session.openBook(path)
            }
            Press {
                text: qsTr("Open it")
                weight: "act"
                onClicked: page.session.openBook(file.path)
            }
        }
        StartWay {
            objectName: "way-copy"
            width: parent.width
            visible: !page.session.open && !page.asking
            title: qsTr("Go back to a copy")
            about: qsTr("A book that is damaged, lost or spoilt by a mistake, as it was before.")
            unfolded: page.way === "copy"
            onWanted: page.way = page.way === "copy" ? "" : "copy"

            PathField {
                id: spoilt

                objectName: "spoiltPath"
                width: parent.width
                label: qsTr("The file of the book")
                path: page.session.usualPath()
            }
            CopiesPart {
                width: parent.width
                session: page.session
                path: page.way === "copy" ? spoilt.settled : ""
            }
        }
    }
}
