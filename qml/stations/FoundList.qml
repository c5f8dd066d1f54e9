// SPDX-License-Identifier: GPL-3.0-or-later
// What goes by the name that was typed.
import QtQuick
import ConelineWindow

RowList {
    id: list

    required property Finder finder
    property string chosen: ""
    signal opened(string code)

    model: finder.found
    header: Say {
        width: list.width
        padding: 16
        text: qsTr("Found")
        font.pixelSize: Look.title
        Accessible.role: Accessible.Heading
    }
    delegate: ListRow {
        id: row

        required property string name

        width: list.width
        what: name
        chosen: row.code === list.chosen
        onClicked: list.opened(row.code)
    }
}
