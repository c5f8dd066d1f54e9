// SPDX-License-Identifier: GPL-3.0-or-later
// The line from pollen to out: across the top, or down the left edge.
import QtQuick
import ConelineWindow

Rectangle {
    id: strip

    required property Session session
    property bool tall: false
    property string page: ""
    signal wanted(string page)

    color: Look.sheet

    Rectangle {
        x: strip.tall ? parent.width - 1 : 0
        y: strip.tall ? 0 : parent.height - 1
        width: strip.tall ? 1 : parent.width
        height: strip.tall ? parent.height : 1
        color: Look.rule
    }
    Scroll {
        anchors.fill: parent
        contentHeight: strip.tall ? Math.max(height, places.least) : height
        interactive: contentHeight > height

        Grid {
            id: places

            /// What all words and figures need where they stand one below the other.
            readonly property real least: today.height + 6 * Look.wide(76) + ends.height

            width: strip.width
            height: strip.tall ? Math.max(strip.height, least) : strip.height
            columns: strip.tall ? 1 : 3

            StripWord {
                id: today

                width: strip.tall ? strip.width : Look.wide(128)
                height: strip.tall ? Look.wide(76) : strip.height
                word: qsTr("Today")
                figure: strip.session.dueCount > 0 ? qsTr("%n due", "", strip.session.dueCount) : qsTr("nothing due")
                urgent: strip.session.dueCount > 0
                chosen: strip.page === "today"
                enabled: strip.session.open
                onClicked: strip.wanted("today")
            }
            Item {
                id: line

                width: strip.tall ? strip.width : strip.width - today.width - ends.width
                height: strip.tall ? places.height - today.height - ends.height : strip.height

                Repeater {
                    model: strip.session.stations

                    StripStation {
                        required property int index

                        tall: strip.tall
                        width: strip.tall ? line.width : line.width / 6
                        height: strip.tall ? line.height / 6 : line.height
                        x: strip.tall ? 0 : index * width
                        y: strip.tall ? index * height : 0
                        last: index === 5
                        chosen: strip.page === key
                        enabled: strip.session.open
                        onClicked: strip.wanted(key)
                    }
                }
            }
            Grid {
                id: ends

                columns: strip.tall ? 1 : 4

                StripWord {
                    objectName: "stripRound"
                    width: strip.tall ? strip.width : Look.wide(84)
                    height: strip.tall ? Look.wide(56) : strip.height
                    word: qsTr("Round")
                    chosen: strip.page === "round"
                    enabled: strip.session.open
                    onClicked: strip.wanted("round")
                }
                StripWord {
                    width: strip.tall ? strip.width : Look.wide(100)
                    height: strip.tall ? Look.wide(56) : strip.height
                    word: qsTr("Results")
                    chosen: strip.page === "results"
                    enabled: strip.session.open
                    onClicked: strip.wanted("results")
                }
                StripWord {
                    width: strip.tall ? strip.width : Look.wide(128)
                    height: strip.tall ? Look.wide(56) : strip.height
                    word: qsTr("Season plan")
                    chosen: strip.page === "season"
                    enabled: strip.session.open
                    onClicked: strip.wanted("season")
                }
                StripWord {
                    objectName: "stripLook"
                    width: strip.tall ? strip.width : Look.wide(100)
                    height: strip.tall ? Look.wide(76) : strip.height
                    word: qsTr("Look")
                    figure: strip.session.look === "sun" ? qsTr("strong sun") : strip.session.look === "night" ? qsTr("night") : qsTr("day")
                    chosen: strip.page === "look"
                    onClicked: strip.wanted("look")
                }
            }
        }
    }
}
