// SPDX-License-Identifier: GPL-3.0-or-later
// A page or part that is read and made when it is first shown, and made anew when it is another file's.
// It is named by its file, since a type that is named is read, with all it uses, before the window is
// there.
import QtQuick

Loader {
    id: later

    property bool shown: false
    /// From the folder of all pages and parts.
    property string file: ""
    /// What its properties are, now and whenever this changes.
    property var given: ({})
    /// What hears its signals, by their names; of those it has.
    property var heard: ({})
    /// Stays as it is left; else it is made anew each time.
    property bool stays: true
    /// What was made, with whatever properties and functions it has.
    readonly property var made: item
    property bool complete: false

    function make() {
        if (later.shown && later.complete && later.item === null && later.file !== "")
            later.setSource(Qt.resolvedUrl("../" + later.file), later.given);
    }

    visible: shown
    onShownChanged: {
        if (!later.shown && !later.stays)
            later.source = "";
        make();
    }
    onFileChanged: {
        later.source = "";
        make();
    }
    onLoaded: {
        for (const name in later.heard)
            if (later.item[name] !== undefined)
                later.item[name].connect(later.heard[name]);
    }
    onGivenChanged: {
        for (const name in later.item ? later.given : {})
            later.item[name] = later.given[name];
    }
    Component.onCompleted: {
        later.complete = true;
        later.make();
    }
}
