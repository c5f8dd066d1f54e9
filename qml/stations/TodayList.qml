// SPDX-License-Identifier: GPL-3.0-or-later
// What is due, in walking order or by day. The button on the right begins the entry.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property string chosen: ""
    property bool calendar: false
    property bool copies: false
    signal opened(string code)
    signal wanted(string code, string verb)

    DueList {
        id: due

        session: page.session
    }
    RowList {
        id: list

        objectName: "todayList"
        anchors.fill: parent
        cacheBuffer: 0 // rows out of sight would be made before the first frame
        model: due.rows
        header: Item {
            width: list.width
            height: titles.height + 24

            Column {
                id: titles

                x: 16
                y: 12
                width: parent.width - 32
                spacing: 8

                Say {
                    width: parent.width
                    text: qsTr("Today, %1").arg(page.session.today)
                    font.pixelSize: Look.title
                    Accessible.role: Accessible.Heading
                }
                Say {
                    width: parent.width
                    visible: page.session.invented
                    text: qsTr("%1: everything in this book is invented.").arg(page.session.name)
                    color: Look.quiet
                    font.pixelSize: Look.tiny
                }
                Flow {
                    width: parent.width
                    spacing: 8

                    Press {
                        objectName: "byWalk"
                        text: qsTr("as I walk")
                        checked: !due.byDay
                        onClicked: due.byDay = false
                    }
                    Press {
                        objectName: "byDay"
                        text: qsTr("by day")
                        checked: due.byDay
                        onClicked: due.byDay = true
                    }
                    Fold {
                        objectName: "calendar"
                        text: qsTr("calendar")
                        unfolded: page.calendar
                        weight: "quiet"
                        onClicked: page.calendar = !page.calendar
                    }
                    Fold {
                        objectName: "copies"
                        text: qsTr("copies")
                        unfolded: page.copies
                        weight: "quiet"
                        onClicked: page.copies = !page.copies
                    }
                }
                Loader {
                    width: parent.width
                    visible: page.calendar
                    active: page.calendar || item !== null
                    sourceComponent: Column {
                        spacing: 8
                        onVisibleChanged: {
                            if (visible && path.text === "")
                                path.text = due.usualCalendar();
                        }

                        Field {
                            id: path

                            objectName: "calendarPath"
                            width: parent.width
                            text: due.usualCalendar()
                            says: qsTr("calendar file")
                        }
                        Flow {
                            width: parent.width
                            spacing: 8

                            Press {
                                objectName: "saveCalendar"
                                text: qsTr("Write it")
                                weight: "act"
                                onClicked: due.saveCalendar(path.text)
                            }
                            Press {
                                objectName: "takeInCalendar"
                                text: qsTr("Take it in")
                                onClicked: due.takeInCalendar(path.text)
                            }
                        }
                        Say {
                            objectName: "calendarTold"
                            width: parent.width
                            visible: text !== ""
                            text: due.fault === "" ? due.told : due.fault
                            color: due.fault === "" ? Look.ink : Look.lost
                            Accessible.role: Accessible.AlertMessage
                        }
                    }
                }
                WhenShown {
                    width: parent.width
                    shown: page.copies
                    stays: false
                    file: "stations/start/CopiesPart.qml"
                    given: ({
                            "session": page.session,
                            "path": page.session.path,
                            "shownAtMost": 4
                        })
                }
            }
        }
        section.property: "heading"
        section.delegate: Heading {
            required property string section

            text: section
            width: list.width
            leftPadding: 16
            rightPadding: 16
        }
        delegate: DueRow {
            id: row

            width: list.width
            chosen: row.code === page.chosen
            onClicked: page.opened(row.code)
            onWanted: row.atOnce ? due.doNow(row.key) : page.wanted(row.code, row.verb)
            onLater: page.wanted(row.code, "later")
        }
    }
    Empty {
        x: 16
        y: (list.headerItem ? list.headerItem.height : 0) + 16
        width: parent.width - 32
        visible: list.count === 0 && page.session.underway === ""
        belongs: qsTr("Nothing is due today. What comes due tomorrow will stand here.")
    }
}
