// SPDX-License-Identifier: GPL-3.0-or-later
// Help for what is on the screen, and a list of all of it to search. Lies where the list of the page
// is, so that the form being filled in stays in sight.
import QtQuick
import ConelineWindow

Rectangle {
    id: pane

    /// Keys of what is on the screen, the nearest first; the first that has a text is shown.
    property var wanted: []
    property string topic: "around"
    readonly property int shownTopic: Math.max(0, texts.indexOf(topic))
    signal closed

    function nearest(): string {
        return wanted.find(key => texts.indexOf(key) >= 0) ?? "around";
    }
    function focusSearch() {
        search.forceActiveFocus();
    }

    onWantedChanged: topic = nearest()
    color: Look.paper
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Help")

    // What lies below is not for tapping.
    MouseArea {
        anchors.fill: parent
    }
    HelpTexts {
        id: texts
    }
    Rectangle {
        anchors.right: parent.right
        width: 1
        height: parent.height
        color: Look.rule
    }
    Scroll {
        id: flick

        anchors.fill: parent
        anchors.rightMargin: 1
        contentHeight: content.height + 48

        Column {
            id: content

            x: 24
            y: 16
            width: parent.width - 48
            spacing: 12

            Item {
                width: parent.width
                height: Math.max(title.implicitHeight, close.height)

                Say {
                    id: title

                    objectName: "helpTitle"
                    width: parent.width - close.width - 12
                    anchors.verticalCenter: parent.verticalCenter
                    text: texts.topics[pane.shownTopic].title
                    font.pixelSize: Look.title
                    Accessible.role: Accessible.Heading
                }
                Press {
                    id: close

                    objectName: "helpClose"
                    anchors.right: parent.right
                    text: qsTr("close")
                    weight: "quiet"
                    Accessible.name: qsTr("Close the help")
                    onClicked: pane.closed()
                }
            }
            Say {
                objectName: "helpSays"
                width: parent.width
                text: texts.topics[pane.shownTopic].says
                lineHeight: 1.2
            }
            Caution {
                width: parent.width
                visible: text !== ""
                text: texts.topics[pane.shownTopic].caution ?? ""
            }
            Heading {
                text: qsTr("All of the help")
            }
            Field {
                id: search

                objectName: "helpSearch"
                width: parent.width
                says: qsTr("Search the help")
                placeholderText: qsTr("search the help")
            }
            Say {
                width: parent.width
                visible: list.count === 0
                text: qsTr("Nothing has all of these words. Try one alone.")
                color: Look.quiet
                Accessible.role: Accessible.AlertMessage
            }
            Column {
                width: parent.width

                Repeater {
                    id: list

                    model: texts.found(search.text)

                    HelpRow {
                        id: one

                        required property var modelData

                        objectName: "help-" + modelData.key
                        width: parent.width
                        text: modelData.title
                        chosen: modelData.key === pane.topic
                        onActiveFocusChanged: {
                            if (activeFocus)
                                flick.contentY = Math.max(0, Math.min(flick.contentHeight - flick.height, one.mapToItem(content, 0, 0).y - flick.height / 2));
                        }
                        onClicked: {
                            pane.topic = modelData.key;
                            flick.contentY = 0;
                        }
                    }
                }
            }
        }
    }
}
