// SPDX-License-Identifier: GPL-3.0-or-later
// One change to suppose: its kind, then what it takes.
import QtQuick
import ConelineWindow

Column {
    id: form

    required property PlanOtherwise plan
    property string kind: ""
    property string unit: ""

    function go(typed: var) {
        if (form.plan.suppose(form.kind, typed))
            form.kind = "";
    }

    spacing: 12
    // What was typed for one change means something else in another.
    onKindChanged: {
        for (const field of [name, one, two])
            field.clear();
        what.chosen = "";
        which.chosen = "";
    }

    Heading {
        text: qsTr("Suppose")
    }
    Choice {
        objectName: "suppose"
        width: parent.width
        wide: false
        says: qsTr("Suppose")
        choices: ["survival", "pace", "more", "less", "mix", "cones", "sow", "potting", "sold"]
        shown: [qsTr("another survival"), qsTr("a hot bench"), qsTr("a place more"), qsTr("a place less"), qsTr("another mix"), qsTr("no cones this year"), qsTr("more seed"), qsTr("other months of potting"), qsTr("sold sooner or later")]
        chosen: form.kind
        onPicked: kind => {
            form.kind = kind;
            if (kind === "cones")
                form.go({});
        }
    }
    Choice {
        id: what

        readonly property var words: ({
                "survival": qsTr("of"),
                "pace": qsTr("of"),
                "more": qsTr("light"),
                "less": qsTr("which"),
                "mix": qsTr("pot"),
                "sow": qsTr("cross")
            })

        objectName: "supposeWhat"
        width: parent.width
        visible: words[form.kind] !== undefined
        says: words[form.kind] ?? ""
        choices: form.kind === "survival" ? form.plan.taxa : form.kind === "pace" ? form.plan.taxa.concat(form.plan.places) : form.kind === "more" ? ["sun", "part shade", "shade"] : form.kind === "less" ? form.plan.places : form.kind === "mix" ? form.plan.pots : form.kind === "sow" ? form.plan.crosses : []
        shown: form.kind === "more" ? [qsTr("sun"), qsTr("part shade"), qsTr("shade")] : form.kind === "sow" ? form.plan.crossesShown : choices
        onChoicesChanged: chosen = ""
        onPicked: value => chosen = value
    }
    Choice {
        id: which

        // Steps are known by their number, since what they are called is the language's.
        readonly property var steps: form.kind === "survival" ? form.plan.stepsOf(what.chosen) : []

        objectName: "supposeWhich"
        width: parent.width
        visible: form.kind === "mix" || (form.kind === "survival" && what.chosen !== "")
        says: form.kind === "mix" ? qsTr("mix") : qsTr("step")
        choices: form.kind === "mix" ? form.plan.mixes : steps.map((step, at) => String(at + 1))
        shown: form.kind === "mix" ? choices : steps
        onChoicesChanged: chosen = ""
        onPicked: value => chosen = value
    }
    Flow {
        width: parent.width
        spacing: 12
        visible: form.kind !== "" && form.kind !== "cones"

        LabelledField {
            id: name

            visible: form.kind === "more"
            label: qsTr("name")
            wide: 240
        }
        LabelledField {
            id: one

            objectName: "supposeOne"
            visible: form.kind !== "less" && form.kind !== "mix"
            label: form.kind === "survival" ? qsTr("per cent that live") : form.kind === "pace" ? qsTr("times the days until it comes up") : form.kind === "more" ? qsTr("length, %1").arg(form.unit) : form.kind === "sow" ? qsTr("seeds") : form.kind === "potting" ? qsTr("from month") : qsTr("months after it is ready")
            hint: form.kind === "pace" ? "0.7" : ""
        }
        LabelledField {
            id: two

            visible: form.kind === "more" || form.kind === "sow" || form.kind === "potting"
            label: form.kind === "more" ? qsTr("width, %1").arg(form.unit) : form.kind === "sow" ? qsTr("in the month") : qsTr("to month")
            hint: form.kind === "sow" ? qsTr("as 2027-05") : ""
        }
    }
    Caution {
        width: parent.width
        visible: form.kind === "pace"
        text: qsTr("heat mats near water: a residual-current device, a thermostat in the medium, and the maker's label.")
    }
    Press {
        objectName: "supposeDo"
        visible: form.kind !== "" && form.kind !== "cones"
        weight: "act"
        text: qsTr("Suppose it")
        onClicked: {
            const kind = form.kind;
            form.go(kind === "survival" ? {
                "taxon": what.chosen,
                "step": which.chosen,
                "percent": one.now
            } : kind === "pace" ? {
                "of": what.chosen,
                "factor": one.now
            } : kind === "more" ? {
                "name": name.now,
                "light": what.chosen,
                "length": one.now,
                "width": two.now
            } : kind === "less" ? {
                "name": what.chosen
            } : kind === "mix" ? {
                "pot": what.chosen,
                "mix": which.chosen
            } : kind === "sow" ? {
                "cross": what.chosen,
                "seeds": one.now,
                "month": two.now
            } : kind === "potting" ? {
                "from": one.now,
                "to": two.now
            } : {
                "months": one.now
            });
        }
    }
}
