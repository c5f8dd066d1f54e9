// SPDX-License-Identifier: GPL-3.0-or-later
// Always ready: a scan, a code or a name. Beside it the last entry, to be taken back.
import QtQuick
import ConelineWindow

Rectangle {
    id: bar

    required property Session session
    property bool tall: false
    /// What is to be said of the scan itself, such as a scanner set to another keyboard.
    property string note: ""
    property alias finder: finder
    readonly property int edge: Text.AlignLeft
    readonly property int farEdge: Text.AlignRight
    signal opened(string code)
    signal foundSeveral
    signal bookWanted
    signal helpWanted

    function focusField() {
        field.forceActiveFocus();
    }
    /// A key that was pressed elsewhere.
    function take(text: string) {
        bar.note = "";
        field.text = text;
        field.forceActiveFocus();
        field.cursorPosition = field.text.length;
    }
    /// Opens what was typed or scanned; false where there is no one thing of that code or name.
    function look(typed: string): bool {
        const code = finder.find(typed);
        if (code !== "") {
            field.text = "";
            bar.opened(code);
        } else if (finder.found.count > 0) {
            field.text = "";
            bar.foundSeveral();
        } else {
            field.text = typed;
            field.forceActiveFocus();
            field.selectAll();
        }
        return code !== "";
    }

    height: lines.height + 24
    color: Look.sheet

    // What was to be said of a scan is over with the next entry.
    Connections {
        target: bar.session

        function onToldChanged() {
            bar.note = "";
        }
    }
    Finder {
        id: finder

        session: bar.session
    }
    Rectangle {
        width: parent.width
        height: 1
        color: Look.rule
    }
    Column {
        id: lines

        x: 16
        y: 12
        width: parent.width - 32
        spacing: 8

        Row {
            visible: finder.answer !== ""
            spacing: 16
            width: parent.width

            Say {
                id: answer

                objectName: "answer"
                width: Math.min(implicitWidth, lines.width - (meant.visible ? meant.width + 16 : 0))
                anchors.verticalCenter: parent.verticalCenter
                text: finder.answer
                color: finder.found.count > 0 ? Look.quiet : Look.lost
                Accessible.role: Accessible.AlertMessage
            }
            Press {
                id: meant

                objectName: "meant"
                visible: finder.meant !== ""
                text: qsTr("Open %1").arg(finder.meant)
                onClicked: bar.look(finder.meant)
            }
        }
        Say {
            objectName: "scanNote"
            width: parent.width
            visible: text !== ""
            text: bar.note
            color: Look.act
            Accessible.role: Accessible.AlertMessage
        }
        // In a row of its own, so that a tap that comes late does not take back an entry.
        Press {
            objectName: "stopLong"
            visible: bar.session.stoppable
            x: bar.tall ? 0 : lines.width - width
            text: bar.session.done > 0 ? qsTr("Stop, %1 % done").arg(Math.round(100 * bar.session.done)) : qsTr("Stop")
            Accessible.name: qsTr("Stop: %1").arg(bar.session.underway)
            onClicked: bar.session.stop()
        }
        Grid {
            columns: bar.tall ? 1 : 2
            columnSpacing: 16
            rowSpacing: 8
            width: parent.width

            Field {
                id: field

                objectName: "readyField"
                width: bar.tall ? lines.width : Math.round(lines.width * 0.4) - 16
                height: Look.wide(52)
                focus: true
                says: qsTr("Scan, type a code or a name")
                placeholderText: qsTr("scan, type a code or a name")
                font.pixelSize: Look.large
                onAccepted: {
                    bar.note = "";
                    bar.look(text);
                }
                onTextEdited: {
                    bar.note = "";
                    finder.lookAhead(text);
                }

                Say {
                    objectName: "ahead"
                    anchors.right: parent.right
                    anchors.rightMargin: 12
                    anchors.verticalCenter: parent.verticalCenter
                    width: Math.min(implicitWidth, Math.max(0, field.width - field.contentWidth - 40))
                    visible: width > Look.wide(60)
                    text: field.text === "" ? "" : finder.ahead
                    color: Look.quiet
                    font.pixelSize: Look.tiny
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                    Accessible.role: Accessible.AlertMessage
                }
            }
            Row {
                spacing: 8
                width: bar.tall ? lines.width : lines.width - field.width - 16
                height: Math.max(Look.wide(52), told.implicitHeight)
                layoutDirection: Look.rightToLeft

                BarEnd {
                    id: end

                    anchors.verticalCenter: parent.verticalCenter
                    open: bar.session.open
                    onBookWanted: bar.bookWanted()
                    onHelpWanted: bar.helpWanted()
                }
                Press {
                    id: undo

                    objectName: "undo"
                    visible: bar.session.undoable
                    anchors.verticalCenter: parent.verticalCenter
                    text: qsTr("‹ undo")
                    Accessible.name: qsTr("Undo: %1").arg(bar.session.told)
                    onClicked: bar.session.undo()
                }
                Column {
                    id: told

                    width: parent.width - end.width - 8 - (undo.visible ? undo.width + 8 : 0)
                    anchors.verticalCenter: parent.verticalCenter

                    Say {
                        objectName: "lastTold"
                        width: parent.width
                        visible: text !== ""
                        horizontalAlignment: bar.tall ? bar.edge : bar.farEdge
                        text: bar.session.underway !== "" ? bar.session.underway : bar.session.fault === "" && bar.session.told !== "" ? qsTr("last: %1").arg(bar.session.told) : ""
                        color: Look.quiet
                        Accessible.role: Accessible.AlertMessage
                    }
                    Say {
                        objectName: "barFault"
                        width: parent.width
                        visible: text !== ""
                        horizontalAlignment: bar.tall ? bar.edge : bar.farEdge
                        text: bar.session.fault
                        color: Look.lost
                        Accessible.role: Accessible.AlertMessage
                    }
                }
            }
        }
    }
}
