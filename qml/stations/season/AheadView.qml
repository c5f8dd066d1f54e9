// SPDX-License-Identifier: GPL-3.0-or-later
// The months along the top, what goes on in the nursery down the page; ranges as bands, room as a
// line. Each line opens into its months, each month into its lots.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    readonly property bool tall: width < Look.wide(900)
    readonly property real names: tall ? 24 : Look.wide(300)
    signal opened(string code)

    function keepInSight() {
        const row = lines.itemAt(ahead.opened);
        if (row === null)
            return;
        const top = row.mapToItem(content, 0, 0).y;
        if (top < list.contentY || top + row.height > list.contentY + list.height)
            list.contentY = Math.max(0, Math.min(top, list.contentHeight - list.height));
    }

    PlanAhead {
        id: ahead

        session: page.session
        // Its months take the lower half; the line that was opened stays in sight above them.
        onOpenedChanged: Qt.callLater(page.keepInSight)
    }
    Scroll {
        id: list

        objectName: "aheadList"
        width: parent.width
        height: months.visible ? Math.round(parent.height * 0.5) : parent.height
        contentHeight: content.height

        Column {
            id: content

            width: list.width

            Column {
                width: list.width
                spacing: 10
                topPadding: 8
                bottomPadding: 8

                Say {
                    x: 24
                    width: parent.width - 48
                    text: qsTr("What the months ahead may bring")
                    font.pixelSize: Look.large
                    Accessible.role: Accessible.Heading
                }
                Flow {
                    x: 24
                    width: parent.width - 48
                    spacing: 8

                    Choice {
                        objectName: "horizon"
                        width: Math.min(Look.wide(368), parent.width)
                        says: qsTr("months ahead")
                        choices: ["12", "24", "36"]
                        shown: choices.map(months => qsTr("%n month(s)", "", parseInt(months)))
                        chosen: String(ahead.horizon)
                        onPicked: months => ahead.horizon = parseInt(months)
                    }
                    Press {
                        objectName: "aheadSowings"
                        text: qsTr("count in what will be sown")
                        checked: ahead.sowings
                        Accessible.role: Accessible.CheckBox
                        Accessible.checked: checked
                        onClicked: ahead.sowings = !ahead.sowings
                    }
                    Press {
                        objectName: "aheadCopy"
                        text: qsTr("Copy as a table")
                        onClicked: ahead.copy()
                    }
                    SaveBar {
                        objectName: "aheadSave"
                        path: ahead.usualPath("pdf")
                        usual: ending => ahead.usualPath(ending)
                        onWanted: path => ahead.save(path)
                        said: ahead.saved
                        fault: ahead.saveFault
                    }
                }
                Flow {
                    x: 24
                    width: parent.width - 48
                    spacing: 12
                    visible: ahead.busy

                    Item {
                        width: Math.min(200, list.width * 0.25)
                        height: Look.target

                        Rectangle {
                            anchors.verticalCenter: parent.verticalCenter
                            width: parent.width
                            height: 8
                            color: Look.rule

                            Rectangle {
                                width: parent.width * ahead.done
                                height: parent.height
                                color: Look.forecast
                            }
                        }
                    }
                    Say {
                        width: Math.min(implicitWidth, parent.width)
                        height: Math.max(Look.target, implicitHeight)
                        verticalAlignment: Text.AlignVCenter
                        text: qsTr("drawing 4000 futures")
                        Accessible.role: Accessible.AlertMessage
                    }
                    Press {
                        objectName: "aheadStop"
                        text: qsTr("stop")
                        onClicked: ahead.stop()
                    }
                }
                Press {
                    x: 24
                    visible: ahead.stopped
                    text: qsTr("Stopped: draw again")
                    onClicked: ahead.again()
                }
                Say {
                    x: 24
                    width: parent.width - 48
                    visible: text !== ""
                    text: ahead.fault
                    color: Look.lost
                    Accessible.role: Accessible.AlertMessage
                }
                Repeater {
                    model: ahead.crowding

                    Say {
                        required property string modelData

                        x: 24
                        width: list.width - 48
                        text: modelData
                    }
                }
                Say {
                    x: 24
                    width: parent.width - 48
                    text: qsTr("Bands leave one future in ten below and one in ten above; the line within is the middle, the dashed one is the room there is.")
                    font.pixelSize: Look.tiny
                    color: Look.quiet
                }
                Item {
                    width: list.width
                    height: Look.wide(20)

                    Repeater {
                        model: ahead.months.length

                        Say {
                            required property int index
                            readonly property real room: list.width - page.names - 24
                            readonly property int step: [1, 2, 3, 4, 6, 12, 24].find(each => each * room / ahead.months.length >= Look.wide(80)) ?? 36

                            visible: index % step === 0
                            x: page.names + (list.width - page.names - 24) * index / ahead.months.length
                            text: ahead.months[index]
                            font.pixelSize: Look.tiny
                            color: Look.quiet
                        }
                    }
                }
            }
            Repeater {
                id: lines

                model: ahead.rows

                AheadRow {
                    width: list.width
                    tall: page.tall
                    names: page.names
                    begins: index === 0 || ahead.rows.value(index - 1, "group") !== group
                    chosen: ahead.opened === index
                    onClicked: ahead.opened = index
                }
            }
            Column {
                width: list.width
                topPadding: 12
                bottomPadding: 24

                Heading {
                    x: 24
                    text: qsTr("To know of this plan")
                }
                Repeater {
                    model: ahead.remarks

                    Say {
                        required property string modelData

                        x: 24
                        width: list.width - 48
                        text: modelData
                        font.pixelSize: Look.tiny
                        color: Look.quiet
                        bottomPadding: 4
                    }
                }
            }
        }
    }
    MonthTable {
        id: months

        visible: ahead.opened >= 0
        anchors.bottom: parent.bottom
        width: parent.width
        height: parent.height - list.height
        ahead: ahead
        onOpened: code => page.opened(code)
    }
}
