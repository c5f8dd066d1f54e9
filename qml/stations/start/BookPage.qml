// SPDX-License-Identifier: GPL-3.0-or-later
// The book itself: its name, its file, another book, and an old spreadsheet to bring in, which takes
// the page for itself.
import QtQuick
import ConelineWindow

Scroll {
    id: page

    required property Session session
    property string way: ""

    contentHeight: content.height + 64

    BookFile {
        id: file

        session: page.session
    }
    Form {
        id: title

        session: page.session
        deed: "nursery"
    }
    Column {
        id: content

        anchors.horizontalCenter: parent.horizontalCenter
        y: 24
        width: Math.min(parent.width - 48, Look.wide(720))
        spacing: 16

        Say {
            objectName: "bookName"
            width: parent.width
            text: page.session.name
            font.pixelSize: Look.title
            Accessible.role: Accessible.Heading
        }
        Say {
            width: parent.width
            text: file.path
            font.family: Look.mono
            font.pixelSize: Look.tiny
            wrapMode: Text.WrapAnywhere
            color: Look.quiet
        }
        Say {
            objectName: "bookTold"
            width: parent.width
            visible: text !== ""
            text: file.fault === "" ? file.told : file.fault
            color: file.fault === "" ? Look.ink : Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        StartWay {
            objectName: "book-name"
            width: parent.width
            visible: page.way !== "table"
            title: qsTr("Name the nursery")
            about: qsTr("What stands on the cover, on papers and on labels.")
            unfolded: page.way === "name"
            onWanted: page.way = page.way === "name" ? "" : "name"

            Repeater {
                model: title.fields

                FormField {
                    width: content.width - 40
                    form: title
                    wrong: title.faultField === key
                    onFinished: title.submit()
                }
            }
            Say {
                width: content.width - 40
                visible: text !== ""
                text: title.fault
                color: Look.lost
                Accessible.role: Accessible.AlertMessage
            }
            Press {
                objectName: "bookNameEnter"
                text: qsTr("Enter it")
                weight: "act"
                onClicked: title.submit()
            }
        }
        StartWay {
            objectName: "book-copy"
            width: parent.width
            visible: page.way !== "table"
            title: qsTr("Copy the book")
            about: qsTr("A whole copy, best on another disk. This book stays open.")
            unfolded: page.way === "copy"
            onWanted: page.way = page.way === "copy" ? "" : "copy"

            PathField {
                id: copy

                objectName: "copyPath"
                width: content.width - 40
                label: qsTr("The file of the copy")
                path: page.way === "copy" ? file.usualCopy() : ""
                onFinished: file.copyTo(path)
            }
            Press {
                objectName: "copyNow"
                text: qsTr("Copy it")
                weight: "act"
                onClicked: file.copyTo(copy.path)
            }
        }
        StartWay {
            objectName: "book-move"
            width: parent.width
            visible: page.way !== "table"
            title: qsTr("Put the book elsewhere")
            about: qsTr("Its file gets another name or folder; the copy is checked before the old file goes.")
            unfolded: page.way === "move"
            onWanted: page.way = page.way === "move" ? "" : "move"

            PathField {
                id: move

                objectName: "movePath"
                width: content.width - 40
                label: qsTr("The file it becomes")
                path: page.way === "move" ? file.path : ""
                onFinished: file.moveTo(path)
            }
            Press {
                objectName: "moveNow"
                text: qsTr("Move it")
                weight: "act"
                onClicked: file.moveTo(move.path)
            }
        }
        StartWay {
            objectName: "book-open"
            width: parent.width
            visible: page.way !== "table"
            title: qsTr("Open another book")
            about: qsTr("This one is kept as it is. The book opened last opens by itself the next time.")
            unfolded: page.way === "open"
            onWanted: page.way = page.way === "open" ? "" : "open"

            PathField {
                id: other

                objectName: "openPath"
                width: content.width - 40
                label: qsTr("The file of the book, typed or dropped here")
                onFinished: file.open(path)
            }
            Press {
                objectName: "openNow"
                text: qsTr("Open it")
                weight: "act"
                onClicked: file.open(other.path)
            }
        }
        StartWay {
            objectName: "book-table"
            width: parent.width
            title: qsTr("Bring in an old spreadsheet")
            about: qsTr("Lots or parent plants from a list kept elsewhere, its columns matched by hand.")
            unfolded: page.way === "table"
            onWanted: {
                page.way = page.way === "table" ? "" : "table";
                page.contentY = 0;
            }

            OldTablePart {
                width: content.width - 40
                session: page.session
            }
        }
    }
}
