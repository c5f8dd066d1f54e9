// SPDX-License-Identifier: GPL-3.0-or-later
// One field of a form, by its kind, with what is wrong beside it.
import QtQuick
import ConelineWindow

Column {
    id: entry

    required property string key
    required property string label
    required property string kind
    required property string value
    required property var choices
    required property var shown
    required property string hint
    required property Form form
    property bool wrong: false
    /// The deed that makes the first of what is to be chosen from; empty where there is some.
    readonly property string makes: kind === "choice" && choices.every(one => one === "none") ? ({
            "pot": "new pot",
            "place": "new place",
            "mix": "new mix"
        })[key] ?? "" : ""
    signal finished
    signal firstWanted(string deed)

    /// The keyboard comes to where the answer is given.
    function take() {
        const inner = given.item;
        const at = inner instanceof TextInput ? inner : inner.line ?? inner.nextItemInFocusChain(true);
        at.forceActiveFocus(Qt.TabFocusReason);
    }

    spacing: 4

    Words {
        width: parent.width
        text: entry.label
        font.pixelSize: Look.tiny
        color: Look.quiet
    }
    Loader {
        id: given

        objectName: "field-" + entry.key
        width: parent.width
        sourceComponent: entry.kind === "count" ? count : entry.kind === "choice" ? choice : entry.kind === "day" ? day : words
    }
    Press {
        objectName: "first-" + entry.key
        visible: entry.makes !== ""
        most: parent.width
        text: entry.makes === "new pot" ? qsTr("Enter a kind of tray or pot now") : entry.makes === "new place" ? qsTr("Enter a place now") : qsTr("Enter a mix now")
        onClicked: entry.firstWanted(entry.makes)
    }
    Say {
        width: parent.width
        visible: text !== ""
        text: entry.wrong ? entry.form.fault : entry.hint
        font.pixelSize: Look.tiny
        color: entry.wrong ? Look.lost : Look.quiet
    }

    Component {
        id: count

        CountField {
            text: entry.value
            says: entry.label
            wrong: entry.wrong
            onWritten: text => entry.form.set(entry.key, text)
        }
    }
    Component {
        id: words

        Field {
            text: entry.value
            says: entry.label
            wrong: entry.wrong
            inputMethodHints: entry.kind === "decimal" ? Qt.ImhFormattedNumbersOnly : Qt.ImhNone
            onTextEdited: entry.form.set(entry.key, text)
            onAccepted: entry.finished()
        }
    }
    Component {
        id: day

        DayField {
            id: days

            text: entry.value
            says: entry.label
            wrong: entry.wrong
            onWritten: text => entry.form.set(entry.key, text)
            onFinished: entry.finished()
            onStepped: by => {
                days.text = entry.form.dayMoved(days.text, by);
                entry.form.set(entry.key, days.text);
            }
        }
    }
    Component {
        id: choice

        Choice {
            objectName: "field-" + entry.key
            choices: entry.choices
            shown: entry.shown
            chosen: entry.value
            says: entry.label
            onPicked: value => {
                chosen = value;
                entry.form.set(entry.key, value);
            }
        }
    }
}
