// SPDX-License-Identifier: GPL-3.0-or-later
// The copies of a book, newest first, each with the way back to it.
import QtQuick
import ConelineWindow

Column {
    id: part

    required property Session session
    property string path: ""
    property int shownAtMost: 1000

    spacing: 8

    BookCopies {
        id: copies

        session: part.session
        Component.onCompleted: path = part.path
    }
    onPathChanged: {
        if (path !== "")
            copies.path = path;
    }
    Say {
        width: parent.width
        text: copies.looking && copies.rows.count === 0 ? qsTr("Looking into the copies …") : copies.rows.count === 0 ? qsTr("No copy stands beside this book.") : qsTr("The book copies itself whenever it is opened after a change. Going back keeps what stands there now.")
        color: Look.quiet
        font.pixelSize: Look.tiny
    }
    Repeater {
        model: copies.rows

        Row {
            id: row

            required property int index
            required property string file
            required property string when
            required property string about
            required property bool good

            visible: index < part.shownAtMost
            width: part.width
            spacing: 12

            Press {
                id: back

                objectName: "restore-" + row.index
                text: qsTr("Go back")
                enabled: row.good && part.session.underway === ""
                Accessible.name: qsTr("Go back to the copy of %1, %2").arg(row.when).arg(row.about)
                onClicked: copies.restore(row.file)
            }
            Say {
                width: parent.width - back.width - 12
                anchors.verticalCenter: parent.verticalCenter
                text: row.when + " · " + row.about
                color: row.good ? Look.ink : Look.lost
            }
        }
    }
    Press {
        objectName: "undoRestore"
        visible: copies.undoable
        enabled: part.session.underway === ""
        text: qsTr("Undo the going back")
        onClicked: copies.undo()
    }
    Say {
        objectName: "copiesTold"
        width: parent.width
        visible: text !== ""
        text: copies.fault === "" ? copies.told : copies.fault
        color: copies.fault === "" ? Look.ink : Look.lost
        Accessible.role: Accessible.AlertMessage
    }
}
