// SPDX-License-Identifier: GPL-3.0-or-later
// A further offer: what stands on the pack and in the price list.
import QtQuick
import ConelineWindow

Column {
    id: form

    property var parts: []
    property string unit: ""
    property bool unfolded: false
    property string kind: "bag"
    signal written(var typed)

    function clear() {
        for (const field of [litres, price, loose, delivery, days, least, weight])
            field.clear();
        form.unfolded = false;
    }

    spacing: 8

    Fold {
        objectName: "offerOpen"
        text: qsTr("A further offer")
        unfolded: form.unfolded
        onClicked: form.unfolded = !form.unfolded
    }
    Column {
        width: parent.width
        visible: form.unfolded
        spacing: 8

        Choice {
            id: good

            objectName: "offerGood"
            width: parent.width
            says: qsTr("what it is")
            choices: form.parts
            onPicked: value => chosen = value
        }
        LabelledField {
            id: supplier

            objectName: "offerSupplier"
            label: qsTr("supplier")
            wide: 240
        }
        Choice {
            objectName: "offer"
            width: parent.width
            says: qsTr("how it comes")
            choices: ["bag", "bulk", "bale"]
            shown: [qsTr("by the bag"), qsTr("by the load"), qsTr("pressed bale")]
            chosen: form.kind
            onPicked: value => form.kind = value
        }
        Flow {
            width: parent.width
            spacing: 12

            LabelledField {
                id: litres

                objectName: "offerLitres"
                label: qsTr("size of one, %1").arg(form.unit)
            }
            LabelledField {
                id: price

                objectName: "offerPrice"
                label: qsTr("price of one")
            }
            LabelledField {
                id: loose

                visible: form.kind === "bale"
                label: qsTr("times as much loose")
                hint: "1"
            }
            LabelledField {
                id: delivery

                label: qsTr("delivery, an order")
                hint: "0"
            }
            LabelledField {
                id: days

                label: qsTr("days to wait")
                hint: "0"
            }
            LabelledField {
                id: least

                label: qsTr("at least so many")
                hint: "1"
            }
            LabelledField {
                id: weight

                label: qsTr("weight of one")
            }
        }
        Press {
            objectName: "offerEnter"
            weight: "act"
            text: qsTr("Enter the offer")
            onClicked: form.written({
                "good": good.chosen,
                "supplier": supplier.now,
                "form": form.kind,
                "litres": litres.now,
                "price": price.now,
                "expansion": form.kind === "bale" ? loose.now : "",
                "delivery": delivery.now,
                "leadDays": days.now,
                "least": least.now,
                "kilograms": weight.now
            })
        }
    }
}
