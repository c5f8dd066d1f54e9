// SPDX-License-Identifier: GPL-3.0-or-later
// Germination per cross or season: the range first, on one scale; the chosen one with its curve.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    /// The chosen cross stands below the list where there is no room beside.
    readonly property bool tall: width < Look.wide(700) || height > width

    GerminationResults {
        id: results

        session: page.session
    }
    RowList {
        id: list

        width: page.tall ? parent.width : Math.round(parent.width * 0.46)
        height: page.tall ? Math.round(parent.height * 0.46) : parent.height
        visible: !nothing.visible
        model: results.crosses
        header: Column {
            width: list.width
            leftPadding: 24
            bottomPadding: 8
            spacing: 8

            Choice {
                width: parent.width - 48
                says: qsTr("taken together by")
                choices: ["cross", "season", "cross and season"]
                shown: [qsTr("cross"), qsTr("season"), qsTr("cross and season")]
                chosen: results.by
                onPicked: value => results.by = value
            }
            Choice {
                width: parent.width - 48
                says: qsTr("times in")
                choices: ["days", "degree-days"]
                shown: [qsTr("days"), qsTr("degree-days")]
                chosen: results.time
                onPicked: value => results.time = value
            }
            Say {
                width: parent.width - 48
                text: qsTr("By %1: the share of seed sown in which the truth lies 95 times in 100; the mark is what is likely. The highest come first.").arg(page.session.today)
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
            // The scale that all bars share.
            Item {
                width: parent.width - 48
                height: none.height

                Say {
                    id: none

                    text: "0 %"
                    font.pixelSize: Look.tiny
                    color: Look.quiet
                }
                Say {
                    anchors.horizontalCenter: parent.horizontalCenter
                    text: "50 %"
                    font.pixelSize: Look.tiny
                    color: Look.quiet
                }
                Say {
                    anchors.right: parent.right
                    text: "100 %"
                    font.pixelSize: Look.tiny
                    color: Look.quiet
                }
            }
        }
        delegate: CrossRow {
            width: list.width
            chosen: index === results.chosen
            onClicked: results.chosen = index
        }
        footer: Column {
            width: list.width
            padding: 24
            spacing: 8

            Say {
                width: list.width - 48
                visible: results.reckoning
                text: qsTr("working it out …")
                color: Look.quiet
            }
            Say {
                width: list.width - 48
                visible: text !== ""
                text: results.fault
                color: Look.lost
                Accessible.role: Accessible.AlertMessage
            }

            Say {
                width: list.width - 48
                visible: text !== ""
                text: [results.remarks, results.leftOut].filter(part => part !== "").join("\n")
                font.pixelSize: Look.tiny
                color: Look.quiet
            }
            Heading {
                width: list.width - 48
                text: qsTr("Save this report beside the book")
            }
            Flow {
                width: list.width - 48
                spacing: 8

                Repeater {
                    model: ["PDF", "XLSX", "CSV", "HTML", "JSON"]

                    Press {
                        required property string modelData

                        objectName: "save-" + modelData
                        text: modelData
                        Accessible.name: qsTr("save as %1").arg(modelData)
                        onClicked: saved.text = results.save(modelData)
                    }
                }
            }
            Say {
                id: saved

                objectName: "saved"
                width: list.width - 48
                wrapMode: Text.WrapAnywhere
                font.pixelSize: Look.tiny
                Accessible.role: Accessible.AlertMessage
            }
        }
    }
    Rectangle {
        visible: list.visible
        color: Look.rule
        x: page.tall ? 0 : list.width
        y: page.tall ? list.height : 0
        width: page.tall ? parent.width : 1
        height: page.tall ? 1 : parent.height
    }
    CrossPage {
        x: page.tall ? 0 : list.width + 1
        y: page.tall ? list.height + 1 : 0
        width: parent.width - x
        height: parent.height - y
        visible: list.count > 0
        results: results
    }
    Empty {
        id: nothing

        x: 24
        y: 16
        width: parent.width - 48
        visible: list.count === 0 && results.leftOut === "" && results.fault === "" && !results.reckoning
        belongs: qsTr("What came up of each cross belongs here, as soon as trays are sown and looked at.")
    }
}
