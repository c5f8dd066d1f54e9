// SPDX-License-Identifier: GPL-3.0-or-later
// A new book with its first plant and cone.
import QtQuick
import ConelineWindow

Column {
    id: first

    required property Session session
    signal entered(string made)

    function begin() {
        if ((session.open || session.makeBook(path.path, nursery.text)) && coneForm.submit())
            first.entered(coneForm.made[0]);
    }

    spacing: 16

    Form {
        id: coneForm

        session: first.session
        deed: "first cone"
    }
    Column {
        width: parent.width
        spacing: 4
        visible: !first.session.open

        Say {
            text: qsTr("The nursery's name")
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
        Field {
            id: nursery

            objectName: "nursery"
            width: parent.width
            says: qsTr("The nursery's name")
        }
    }
    PathField {
        id: path

        objectName: "path"
        width: parent.width
        visible: !first.session.open
        label: qsTr("The file of the book")
        path: first.session.usualPath()
    }
    Repeater {
        model: coneForm.fields

        FormField {
            width: first.width
            form: coneForm
            wrong: coneForm.faultField === key
            onFinished: first.begin()
        }
    }
    Say {
        width: parent.width
        visible: text !== ""
        text: coneForm.faultField === "" ? coneForm.fault : ""
        color: Look.lost
        Accessible.role: Accessible.AlertMessage
    }
    Press {
        objectName: "begin"
        weight: "act"
        text: first.session.open ? qsTr("Enter the first cone") : qsTr("Begin the book with this cone")
        onClicked: first.begin()
    }
}
