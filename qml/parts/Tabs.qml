// SPDX-License-Identifier: GPL-3.0-or-later
// The views of a page, one of them shown.
import QtQuick
import ConelineWindow

Flow {
    id: tabs

    /// Of each view its name and its word: { view, word }.
    property var views: []
    property string view: ""
    signal picked(string view)

    spacing: 8

    Repeater {
        model: tabs.views

        Press {
            required property var modelData

            objectName: tabs.objectName + "-" + modelData.view
            text: modelData.word
            checked: tabs.view === modelData.view
            Accessible.role: Accessible.PageTab
            onClicked: tabs.picked(modelData.view)
        }
    }
}
