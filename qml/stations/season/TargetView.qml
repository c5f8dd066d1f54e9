// SPDX-License-Identifier: GPL-3.0-or-later
// So many plants of a cross by a month: what to sow, harvest and pollinate for it, and where targets
// want the same.
import QtQuick
import ConelineWindow

Scroll {
    id: page

    required property Session session

    contentHeight: content.height + 48

    PlanTargets {
        id: plan

        session: page.session
    }
    Column {
        id: content

        x: 24
        y: 8
        width: Math.min(parent.width - 48, Look.wide(900))
        spacing: 12

        Say {
            width: parent.width
            text: qsTr("Sowing for what is wanted")
            font.pixelSize: Look.large
            Accessible.role: Accessible.Heading
        }
        Say {
            width: parent.width
            visible: plan.busy
            text: qsTr("Reckoning …")
            color: Look.quiet
            Accessible.role: Accessible.AlertMessage
        }
        Say {
            width: parent.width
            visible: text !== ""
            text: plan.fault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Repeater {
            model: plan.conflicts

            Say {
                required property string modelData

                width: content.width
                text: modelData
                color: Look.lost
                font.weight: Font.DemiBold
                Accessible.role: Accessible.AlertMessage
            }
        }
        Repeater {
            model: plan.targets

            Item {
                id: target

                required property var model

                width: content.width
                height: said.height + 24

                Rectangle {
                    width: parent.width
                    height: 1
                    color: Look.rule
                }
                Column {
                    id: said

                    y: 12
                    width: parent.width - strike.width - 16
                    spacing: 4

                    Say {
                        width: parent.width
                        text: target.model.title
                        font.weight: Font.DemiBold
                    }
                    Say {
                        width: parent.width
                        text: target.model.seed
                        color: target.model.reached ? Look.ink : Look.lost
                    }
                    Say {
                        width: parent.width
                        visible: text !== ""
                        text: target.model.dates
                    }
                    Say {
                        width: parent.width
                        text: target.model.line
                        font.pixelSize: Look.tiny
                        color: Look.quiet
                    }
                }
                Press {
                    id: strike

                    anchors.right: parent.right
                    y: 8
                    weight: "quiet"
                    text: qsTr("strike")
                    Accessible.name: qsTr("strike the target: %1").arg(target.model.title)
                    onClicked: plan.strike(target.model.id)
                }
            }
        }
        Heading {
            text: qsTr("A further target")
        }
        Choice {
            id: cross

            objectName: "targetCross"
            width: parent.width
            says: qsTr("cross")
            choices: plan.crosses
            onPicked: value => {
                chosen = value;
                pot.chosen = ""; // the pots are those of its own route
            }
        }
        Choice {
            id: pot

            objectName: "targetPot"
            width: parent.width
            visible: cross.chosen !== ""
            says: qsTr("pot")
            choices: plan.potsOf(cross.chosen)
            onPicked: value => chosen = value
        }
        Flow {
            width: parent.width
            spacing: 12

            LabelledField {
                id: plants

                objectName: "targetPlants"
                label: qsTr("plants")
            }
            LabelledField {
                id: by

                objectName: "targetBy"
                label: qsTr("by the end of")
                hint: qsTr("as 2029-10")
            }
            LabelledField {
                id: sure

                objectName: "targetSure"
                label: qsTr("how sure, per cent")
                text: "90"
            }
        }
        Say {
            objectName: "targetFault"
            width: parent.width
            visible: text !== ""
            text: plan.entryFault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Press {
            objectName: "targetEnter"
            weight: "act"
            text: qsTr("Keep the target")
            onClicked: {
                if (plan.enter(cross.chosen, pot.chosen, plants.now, by.now, sure.now))
                    plants.clear();
            }
        }
        Caution {
            width: parent.width
            text: qsTr("seed is poisonous: gloves; keep pets, livestock and children away.")
        }
    }
}
