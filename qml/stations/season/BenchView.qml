// SPDX-License-Identifier: GPL-3.0-or-later
// What stands where in the year to come: what to move when, how full each place runs, what finds no
// room, and what is pinned.
import QtQuick
import ConelineWindow

Scroll {
    id: page

    required property Session session
    readonly property real half: width > Look.wide(1000) ? (content.width - 32) / 2 : content.width
    signal opened(string code)

    contentHeight: content.height + 48

    PlanBenches {
        id: plan

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
            text: plan.proof === "" ? (plan.busy ? qsTr("Looking for the fewest moves …") : qsTr("Benches")) : plan.proof
            font.pixelSize: Look.large
            Accessible.role: Accessible.Heading
        }
        Press {
            objectName: "benchesStop"
            visible: plan.busy
            text: qsTr("take what is found by now")
            onClicked: plan.stop()
        }
        Press {
            objectName: "benchesAgain"
            visible: plan.stopped
            text: qsTr("Stopped: look again")
            onClicked: plan.again()
        }
        Say {
            objectName: "benchesFault"
            width: parent.width
            visible: text !== ""
            text: plan.fault !== "" ? plan.fault : plan.entryFault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Repeater {
            model: plan.noRoom

            Say {
                required property string modelData

                width: content.width
                text: modelData
                color: Look.lost
                Accessible.role: Accessible.AlertMessage
            }
        }
        Flow {
            width: parent.width
            spacing: 8
            visible: plan.months.length > 0

            Press {
                objectName: "benchesCopy"
                text: qsTr("Copy as a table")
                onClicked: plan.copy()
            }
            SaveBar {
                objectName: "benchesSave"
                path: plan.usualPath("pdf")
                usual: ending => plan.usualPath(ending)
                onWanted: path => plan.save(path)
                said: plan.saved
                fault: plan.saveFault
            }
        }
        Flow {
            width: parent.width
            spacing: 32

            Column {
                width: page.half

                Heading {
                    text: qsTr("To do")
                }
                Say {
                    width: parent.width
                    visible: plan.todo.count === 0 && !plan.busy
                    text: qsTr("Nothing has to be moved or put anywhere.")
                    color: Look.quiet
                }
                Repeater {
                    model: plan.todo

                    Column {
                        id: deed

                        required property var model

                        width: page.half

                        Heading {
                            visible: deed.model.begins
                            text: deed.model.month
                        }
                        Item {
                            width: parent.width
                            height: Math.max(row.height, keep.height)

                            ListRow {
                                id: row

                                width: parent.width - (keep.visible ? keep.width + 8 : 0)
                                code: deed.model.code
                                what: deed.model.what
                                place: deed.model.from === "" ? qsTr("to %1").arg(deed.model.to) : qsTr("%1 → %2").arg(deed.model.from).arg(deed.model.to)
                                onClicked: page.opened(code)
                            }
                            Press {
                                id: keep

                                anchors.right: parent.right
                                anchors.verticalCenter: parent.verticalCenter
                                visible: deed.model.from !== ""
                                weight: "quiet"
                                text: qsTr("stay")
                                Accessible.name: qsTr("%1 is to stay in %2").arg(deed.model.code).arg(deed.model.from)
                                onClicked: plan.pin(deed.model.code, deed.model.from)
                            }
                        }
                    }
                }
                Heading {
                    text: qsTr("Pinned")
                }
                Repeater {
                    model: plan.pins

                    Item {
                        id: pin

                        required property string code
                        required property string place

                        width: page.half
                        height: Math.max(free.height, pinned.height)

                        Say {
                            id: pinned

                            width: parent.width - free.width - 8
                            anchors.verticalCenter: parent.verticalCenter
                            text: qsTr("%1 in %2").arg(pin.code).arg(pin.place)
                        }
                        Press {
                            id: free

                            anchors.right: parent.right
                            anchors.verticalCenter: parent.verticalCenter
                            weight: "quiet"
                            text: qsTr("let go")
                            Accessible.name: qsTr("%1 may be moved again").arg(pin.code)
                            onClicked: plan.unpin(pin.code)
                        }
                    }
                }
                Flow {
                    width: parent.width
                    spacing: 8

                    LabelledField {
                        id: lot

                        objectName: "pinLot"
                        label: qsTr("a lot's code")
                    }
                    Column {
                        width: Math.min(Look.wide(320), parent.width)
                        spacing: 2

                        Say {
                            width: parent.width
                            text: qsTr("is to stand in")
                            font.pixelSize: Look.tiny
                            color: Look.quiet
                        }
                        Choice {
                            id: where

                            objectName: "pinPlace"
                            width: parent.width
                            wide: true
                            says: qsTr("is to stand in")
                            choices: plan.placeNames
                            onPicked: value => chosen = value
                        }
                    }
                }
                Item {
                    width: 1
                    height: 12
                }
                Press {
                    objectName: "pinDo"
                    text: qsTr("Pin it")
                    onClicked: {
                        if (plan.pin(lot.now, where.chosen))
                            lot.clear();
                    }
                }
            }
            Column {
                width: page.half

                Heading {
                    text: qsTr("How full each place runs")
                }
                Repeater {
                    model: plan.places

                    PlaceRow {
                        width: page.half
                        months: plan.months
                        chosen: plan.opened === index
                        onClicked: plan.opened = index
                    }
                }
                Heading {
                    visible: plan.opened >= 0
                    text: plan.openedName
                }
                Repeater {
                    model: plan.stands

                    ListRow {
                        required property string when

                        required what

                        width: page.half
                        place: when
                        onClicked: page.opened(code)
                    }
                }
            }
        }
        Caution {
            width: parent.width
            text: qsTr("watered pots are heavy: lift 25 kg at most, close to the body; a bench bears what its maker says.")
        }
    }
}
