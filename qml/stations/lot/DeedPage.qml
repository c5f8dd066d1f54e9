// SPDX-License-Identifier: GPL-3.0-or-later
// One deed as a form, in place of the lot it is done to. Where it has nothing to choose from yet, the
// first of it is entered on the way, and the form goes on as it was left.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property string code: ""
    property string deed: ""
    /// The field that waits for its first choice, and the deed that makes it.
    property string waiting: ""
    property string onTheWay: ""
    readonly property Form form: onTheWay === "" ? deedForm : wayForm
    signal closed
    signal entered(string made)

    function enter() {
        if (!page.form.submit())
            return;
        if (page.onTheWay === "") {
            page.entered(deedForm.made.length > 0 ? deedForm.made[0] : "");
            return;
        }
        page.goOn(wayForm.valueOf("name"));
    }
    /// Back in the form that waited, with what was written there.
    function goOn(chosen: string) {
        page.onTheWay = "";
        deedForm.renew(page.waiting, chosen);
    }
    /// From a deed on the way back to the form that waits for it; false where there is none.
    function stepBack(): bool {
        if (page.onTheWay === "")
            return false;
        page.goOn(deedForm.valueOf(page.waiting));
        return true;
    }

    onDeedChanged: onTheWay = ""
    onCodeChanged: onTheWay = ""

    Form {
        id: deedForm

        session: page.session
        code: page.code
        deed: page.deed
    }
    Form {
        id: wayForm

        session: page.session
        deed: page.onTheWay
    }
    Scroll {
        width: parent.width
        anchors.top: parent.top
        anchors.bottom: foot.top
        contentHeight: content.height + 32

        Column {
            id: content

            x: 24
            y: 16
            width: Math.min(parent.width - 48, Look.wide(640))
            spacing: 16

            Flow {
                width: parent.width
                spacing: 16

                Say {
                    width: Math.min(implicitWidth, content.width)
                    text: page.form.title
                    font.pixelSize: Look.title
                    Accessible.role: Accessible.Heading
                }
                Say {
                    topPadding: y > 0 ? 0 : Look.title - Look.large
                    visible: page.code !== "" && page.onTheWay === ""
                    text: page.code
                    font.family: Look.mono
                    font.pixelSize: Look.large
                    color: Look.quiet
                }
            }
            SplitBar {
                width: parent.width
                pieces: page.form.pieces
                total: page.form.piecesTotal
            }
            Flow {
                width: parent.width
                spacing: 16

                Repeater {
                    model: page.form.fields

                    FormField {
                        width: kind === "count" || kind === "day" ? Math.min(Look.wide(280), content.width) : content.width
                        form: page.form
                        wrong: page.form.faultField === key
                        onFinished: page.enter()
                        onFirstWanted: deed => {
                            page.waiting = key;
                            page.onTheWay = deed;
                        }
                    }
                }
            }
            Repeater {
                model: page.form.cautions

                Caution {
                    required property string modelData

                    width: content.width
                    text: modelData
                }
            }
        }
    }
    Column {
        id: foot

        x: 24
        width: parent.width - 48
        anchors.bottom: parent.bottom
        anchors.bottomMargin: 16
        spacing: 8

        Rectangle {
            width: parent.width
            height: 1
            color: Look.rule
        }
        Say {
            objectName: "formFault"
            width: parent.width
            visible: text !== ""
            text: page.form.fault
            color: Look.lost
            Accessible.role: Accessible.AlertMessage
        }
        Row {
            spacing: 16

            Press {
                objectName: "enter"
                text: qsTr("Enter it")
                weight: "act"
                onClicked: page.enter()
            }
            Press {
                objectName: "formBack"
                text: qsTr("back")
                weight: "quiet"
                onClicked: page.closed()
            }
        }
    }
}
