// SPDX-License-Identifier: GPL-3.0-or-later
// No book yet, or an empty one: the things to begin with.
import QtQuick
import ConelineWindow

Flickable {
    id: page

    required property Session session
    signal entered(string made)

    function withBook(): bool {
        return session.open || session.makeBook(path.text, nursery.text);
    }

    clip: true
    contentHeight: content.height + 64
    boundsBehavior: Flickable.StopAtBounds

    Form {
        id: coneForm

        session: page.session
        deed: "first cone"
    }
    Column {
        id: content

        anchors.horizontalCenter: parent.horizontalCenter
        y: 32
        width: Math.min(parent.width - 48, 640)
        spacing: 24

        Column {
            width: parent.width
            spacing: 8

            Say {
                width: parent.width
                text: page.session.open ? page.session.name : qsTr("From a pollinated cone to a plant in its pot")
                font.pixelSize: Look.title
                Accessible.role: Accessible.Heading
            }
            Say {
                width: parent.width
                text: page.session.open ? qsTr("This book is still empty. It begins with a cone.") : qsTr("A book keeps everything of one nursery in one file. Begin a new one with its first cone, or open one you have.")
                color: Look.quiet
            }
        }
        Column {
            width: parent.width
            spacing: 12
            visible: !page.session.open

            Heading {
                text: qsTr("A new book")
            }
            Field {
                id: nursery

                objectName: "nursery"
                width: parent.width
                says: qsTr("The nursery's name")
                placeholderText: qsTr("the nursery's name")
            }
            Field {
                id: path

                objectName: "path"
                width: parent.width
                says: qsTr("The file of the book")
                text: page.session.usualPath()
            }
        }
        Column {
            width: parent.width
            spacing: 12

            Heading {
                text: qsTr("Its first cone")
            }
            Repeater {
                model: coneForm.fields

                FormField {
                    width: content.width
                    form: coneForm
                    wrong: coneForm.faultField === key
                    onFinished: begin.clicked()
                }
            }
            Say {
                width: parent.width
                visible: text !== ""
                text: page.session.fault !== "" ? page.session.fault : coneForm.faultField === "" ? coneForm.fault : ""
                color: Look.lost
                Accessible.role: Accessible.AlertMessage
            }
            Press {
                id: begin

                objectName: "begin"
                weight: "act"
                text: page.session.open ? qsTr("Enter the first cone") : qsTr("Begin the book with this cone")
                onClicked: if (page.withBook() && coneForm.submit())
                    page.entered(coneForm.made[0])
            }
        }
        OpenBook {
            width: parent.width
            session: page.session
        }
    }
}
