// SPDX-License-Identifier: GPL-3.0-or-later
// What if: changes that are only supposed, both plans beside each other, and the one step that
// writes them.
import QtQuick
import ConelineWindow

Scroll {
    id: page

    required property Session session

    contentHeight: content.height + 48

    PlanOtherwise {
        id: plan

        session: page.session
    }
    Column {
        id: content

        x: 24
        y: 8
        width: Math.min(parent.width - 48, Look.wide(1000))
        spacing: 12

        Say {
            width: parent.width
            text: qsTr("What if")
            font.pixelSize: Look.large
            Accessible.role: Accessible.Heading
        }
        Say {
            width: parent.width
            visible: plan.changes.count === 0
            text: qsTr("Suppose a change below. Seed at hand and the cones that ripen are counted in. Nothing is written until you take it into the book.")
            color: Look.quiet
        }
        Repeater {
            model: plan.changes

            Item {
                id: change

                required property int index
                required property string told

                width: content.width
                height: Math.max(Look.target, words.height) + 8

                Say {
                    id: words

                    anchors.verticalCenter: parent.verticalCenter
                    width: parent.width - forget.width - 8
                    text: change.told
                    font.weight: Font.DemiBold
                }
                Press {
                    id: forget

                    objectName: "forget-" + change.index
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    weight: "quiet"
                    text: qsTr("forget")
                    Accessible.name: qsTr("forget: %1").arg(change.told)
                    onClicked: plan.forget(change.index)
                }
            }
        }
        Flow {
            width: parent.width
            spacing: 12
            visible: plan.busy && plan.changes.count > 0

            Say {
                width: Math.min(implicitWidth, parent.width)
                height: Math.max(Look.target, implicitHeight)
                text: qsTr("drawing both plans, %1 %").arg(Math.round(100 * plan.done))
                verticalAlignment: Text.AlignVCenter
                Accessible.role: Accessible.AlertMessage
            }
            Press {
                text: qsTr("stop")
                onClicked: plan.stop()
            }
        }
        Press {
            objectName: "otherwiseAgain"
            visible: plan.stopped
            text: qsTr("Stopped: draw again")
            onClicked: plan.again()
        }
        Say {
            objectName: "otherwiseFault"
            width: parent.width
            visible: text !== ""
            text: plan.entryFault !== "" ? plan.entryFault : plan.fault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Say {
            objectName: "otherwiseAccepted"
            width: parent.width
            visible: text !== ""
            text: plan.accepted
            Accessible.role: Accessible.AlertMessage
        }
        Repeater {
            model: plan.most

            Say {
                required property string modelData

                width: content.width
                text: modelData
            }
        }
        Beside {
            width: parent.width
            visible: plan.full.count > 0
            title: qsTr("Room")
            head: [qsTr("light"), qsTr("as planned"), qsTr("supposed")]
            rows: plan.full
            columns: ["name", "present", "supposed"]
        }
        Beside {
            width: parent.width
            visible: plan.years.count > 0
            title: qsTr("By the year, 10 – 50 – 90 %")
            head: [qsTr("what"), qsTr("months"), qsTr("as planned"), qsTr("supposed"), qsTr("mean change")]
            rows: plan.years
            columns: ["name", "when", "present", "supposed", "difference"]
        }
        Repeater {
            model: plan.notWritten

            Say {
                required property string modelData

                width: content.width
                text: modelData
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
        }
        Press {
            objectName: "otherwiseAccept"
            visible: plan.writable
            weight: "act"
            text: qsTr("Take it into the book")
            onClicked: plan.accept()
        }
        SupposeForm {
            width: parent.width
            plan: plan
            unit: page.session.speech.lengthUnit
        }
    }
}
