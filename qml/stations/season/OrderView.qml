// SPDX-License-Identifier: GPL-3.0-or-later
// What to buy, by when; what more assurance costs; what suppliers offer and what lies in the shed.
import QtQuick
import ConelineWindow

Scroll {
    id: page

    required property Session session
    readonly property real half: width > Look.wide(1000) ? (content.width - 32) / 2 : content.width

    contentHeight: content.height + 48

    PlanOrders {
        id: orders

        session: page.session
    }
    Column {
        id: content

        x: 24
        y: 8
        width: Math.min(parent.width - 48, Look.wide(1200))
        spacing: 12

        Say {
            width: parent.width
            text: orders.summary === "" ? (orders.busy ? qsTr("Reckoning what to order …") : qsTr("To order")) : orders.summary
            font.pixelSize: Look.large
            Accessible.role: Accessible.Heading
        }
        Say {
            objectName: "orderFault"
            width: parent.width
            visible: text !== ""
            text: orders.fault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Flow {
            width: parent.width
            spacing: 8
            visible: orders.lines.count > 0

            Say {
                height: Math.max(Look.target, implicitHeight)
                width: Math.min(implicitWidth, parent.width)
                text: qsTr("How sure that nothing runs short?")
                verticalAlignment: Text.AlignVCenter
            }
            Repeater {
                model: orders.assurances

                Press {
                    required property real share
                    required property string word
                    required property string price
                    required property bool chosen

                    objectName: "assure-" + Math.round(100 * share)
                    text: qsTr("%1 for %2").arg(word).arg(price)
                    checked: chosen
                    Accessible.role: Accessible.RadioButton
                    Accessible.checked: checked
                    onClicked: orders.assure(share)
                }
            }
        }
        Say {
            width: parent.width
            visible: text !== ""
            text: orders.proof
            font.pixelSize: Look.tiny
            color: Look.quiet
        }
        Column {
            width: parent.width

            Repeater {
                model: orders.lines

                OrderLine {
                    width: content.width
                }
            }
        }
        Flow {
            width: parent.width
            spacing: 8
            visible: orders.lines.count > 0

            Press {
                objectName: "orderCopy"
                text: qsTr("Copy as a table")
                onClicked: orders.copy()
            }
            SaveBar {
                objectName: "orderSave"
                path: orders.usualPath("pdf")
                usual: ending => orders.usualPath(ending)
                onWanted: path => orders.save(path)
                said: orders.saved
                fault: orders.saveFault
            }
        }
        Caution {
            width: parent.width
            text: qsTr("lift 25 kg at most, close to the body; dry mix dusts and can carry Legionella: wet it, wear mask and gloves.")
        }
        Say {
            objectName: "orderEntryFault"
            width: parent.width
            visible: text !== ""
            text: orders.entryFault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Flow {
            width: parent.width
            spacing: 32

            Column {
                width: page.half
                spacing: 8

                Heading {
                    text: qsTr("In the shed")
                }
                Say {
                    width: parent.width
                    visible: orders.goods.count === 0
                    text: qsTr("No mix is needed in the next twelve months.")
                    color: Look.quiet
                }
                Repeater {
                    model: orders.goods

                    GoodRow {
                        width: page.half
                        unit: page.session.speech.volumeUnit
                        onWritten: (name, typed) => orders.enterGood(name, typed)
                    }
                }
            }
            Column {
                width: page.half
                spacing: 8

                Heading {
                    text: qsTr("What suppliers offer")
                }
                Repeater {
                    model: orders.offers

                    OfferRow {
                        width: page.half
                        onStruck: orders.strikeOffer(model.id)
                    }
                }
                OfferForm {
                    width: page.half
                    unit: page.session.speech.volumeUnit
                    parts: orders.parts
                    onWritten: typed => {
                        if (orders.enterOffer(typed))
                            clear();
                    }
                }
            }
        }
    }
}
