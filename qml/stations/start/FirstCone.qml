// SPDX-License-Identifier: GPL-3.0-or-later
// The first cone, one question after the other: the nursery, the plant, its cone, the pollen it had,
// and a last look before all of it goes into the book at once.
import QtQuick
import ConelineWindow

Column {
    id: first

    required property Session session
    property int at: 0
    /// The steps that the answers so far lead through.
    property var way: []
    readonly property var step: way[Math.min(at, way.length - 1)] ?? {
        "name": "",
        "title": "",
        "keys": []
    }
    readonly property bool last: step.name === "all"
    property string missing: ""
    signal entered(string made)

    function stepsOf(): var {
        const step = (name, title, keys) => ({
                "name": name,
                "title": title,
                "keys": keys
            });
        const pollen = coneForm.valueOf("pollen");
        const origin = pollen === "of a male plant I know" ? ["male", "pollinated", "collected"] : ["pollinated"];
        const all = {
            "nursery": step("nursery", qsTr("Your nursery"), []),
            "plant": step("plant", qsTr("The plant that bears the cone"), ["name", "taxon", "origin"]),
            "cone": step("cone", qsTr("The cone"), ["seen", "scales"]),
            "pollen": step("pollen", qsTr("Pollen"), ["pollen"]),
            "pass": step("pass", qsTr("Where the pollen came from, and when"), [...origin, "method"]),
            "all": step("all", qsTr("Is it so?"), [])
        };
        // A cone that is tight has had no pollen.
        const tight = coneForm.valueOf("scales") === "tight";
        const passed = !tight && pollen !== "not yet";
        return [...first.session.open ? [] : [all.nursery], all.plant, all.cone, ...tight ? [] : [all.pollen], ...passed ? [all.pass] : [], all.all];
    }
    /// What is about to be entered, one line a step.
    function told(): var {
        const word = key => coneForm.shownOf(key);
        const given = keys => keys.map(word).filter(each => each !== "").join(", ");
        const lines = [];
        for (const step of first.way) {
            if (step.name === "nursery")
                lines.push(nursery.text + ", " + path.path);
            else if (step.name === "plant")
                lines.push(given(step.keys));
            else if (step.name === "cone")
                lines.push(qsTr("its cone, first seen on %1; the scales are %2").arg(word("seen")).arg(word("scales")));
            else if (step.name === "pass")
                lines.push(word("male") === "" || !step.keys.includes("male") ? qsTr("pollen of a father nobody knows on %1, put in %2").arg(word("pollinated")).arg(word("method")) : qsTr("pollen of %1 on %2, put in %3").arg(word("male")).arg(word("pollinated")).arg(word("method")));
        }
        return lines;
    }
    function show(at: int) {
        first.at = at;
        first.missing = "";
        Qt.callLater(first.takeKeyboard);
    }
    /// The keyboard comes to the first question of the step, whose title is seen.
    function takeKeyboard() {
        if (!first.visible)
            return;
        for (let above = first.parent; above; above = above.parent)
            if (above instanceof Flickable)
                above.contentY = Math.max(0, Math.min(first.mapToItem(above.contentItem, 0, 0).y - 96, above.contentHeight - above.height));
        for (let i = 0; i < questions.count; ++i)
            if (questions.itemAt(i).visible)
                return questions.itemAt(i).take();
        (first.step.name === "nursery" ? nursery : onward).forceActiveFocus(Qt.TabFocusReason);
    }
    function back() {
        if (first.at > 0)
            first.show(first.at - 1);
    }
    function next() {
        if (first.last)
            first.enter();
        else if (first.step.name === "nursery" && nursery.text.trim() === "")
            first.missing = qsTr("The nursery has no name yet. Write one; it can be changed later.");
        else if (first.step.keys.length === 0 || coneForm.reads(first.step.keys))
            first.show(first.at + 1);
    }
    function enter() {
        if (!first.session.open && !first.session.makeBook(path.path, nursery.text))
            return;
        first.at = first.way.length - 1;
        if (coneForm.submit()) {
            first.entered(coneForm.made[0]);
            return;
        }
        const asked = first.way.findIndex(step => step.keys.includes(coneForm.faultField));
        if (asked >= 0)
            first.show(asked);
    }

    spacing: 16
    Component.onCompleted: way = stepsOf()

    Form {
        id: coneForm

        session: first.session
        deed: "first cone"
    }
    Connections {
        target: coneForm

        // With each answer.
        function onSplit() {
            first.way = first.stepsOf();
        }
    }
    Connections {
        target: first.session

        function onChanged() {
            first.way = first.stepsOf();
        }
    }
    Say {
        objectName: "coneStep"
        width: parent.width
        text: qsTr("Step %1 of %2: %3").arg(first.at + 1).arg(first.way.length).arg(first.step.title)
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    Column {
        width: parent.width
        spacing: 16
        visible: first.step.name === "nursery"

        Column {
            width: parent.width
            spacing: 4

            Words {
                width: parent.width
                text: qsTr("The nursery's name")
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
            Field {
                id: nursery

                objectName: "nursery"
                width: parent.width
                says: qsTr("The nursery's name")
                wrong: first.missing !== ""
                onAccepted: first.next()
            }
        }
        PathField {
            id: path

            objectName: "path"
            width: parent.width
            label: qsTr("The file of the book")
            path: first.session.usualPath()
            onFinished: first.next()
        }
    }
    Repeater {
        id: questions

        model: coneForm.fields

        FormField {
            width: first.width
            visible: first.step.keys.includes(key)
            form: coneForm
            wrong: coneForm.faultField === key
            onFinished: first.next()
        }
    }
    Repeater {
        model: first.last ? first.told() : []

        Say {
            required property string modelData

            objectName: "coneTold"
            width: first.width
            text: modelData
        }
    }
    Caution {
        width: parent.width
        visible: first.step.name === "cone" || first.step.name === "pass"
        text: coneForm.cautions[0] ?? ""
    }
    Say {
        objectName: "coneFault"
        width: parent.width
        visible: text !== ""
        text: first.missing !== "" ? first.missing : coneForm.faultField === "" ? coneForm.fault : ""
        color: Look.lost
        Accessible.role: Accessible.AlertMessage
    }
    Flow {
        width: parent.width
        spacing: 12

        Press {
            id: onward

            objectName: first.last ? "begin" : "coneNext"
            most: parent.width
            weight: "act"
            text: !first.last ? qsTr("Next") : first.session.open ? qsTr("Enter the first cone") : qsTr("Begin the book with this cone")
            onClicked: first.next()
        }
        Press {
            objectName: "coneBack"
            visible: first.at > 0
            weight: "quiet"
            text: qsTr("back")
            onClicked: first.back()
        }
    }
}
