// SPDX-License-Identifier: GPL-3.0-or-later
// One step of the line back. The bar is what came in; below it the line narrows to what went on.
import QtQuick
import ConelineWindow

Item {
    id: step

    required property string code
    required property string what
    required property string day
    required property int came
    required property int through
    required property int here
    required property int elsewhere
    required property string lost
    required property string kept
    required property real share
    required property real throughShare
    required property real lostShare
    property real widest: 200
    property bool first: false
    property bool last: false
    readonly property real bar: Math.max(3, widest * share)
    readonly property real onward: Math.max(3, widest * throughShare)
    readonly property real begins: (widest - bar) / 2
    signal opened

    height: Math.max(84, words.height + 20)

    Rectangle {
        x: step.begins
        width: step.bar
        height: 20
        color: Look.quiet
        opacity: 0.5
    }
    Rectangle {
        x: (step.widest - width) / 2
        width: step.last ? step.bar - 2 * step.widest * step.lostShare : step.onward
        height: 20
        color: step.last ? Look.link : Look.ink
    }
    Rectangle {
        x: step.begins + step.bar - width
        width: step.widest * step.lostShare
        height: 20
        color: Look.lost
    }
    Rectangle {
        visible: !step.last
        x: (step.widest - step.onward) / 2
        y: 20
        width: step.onward
        height: step.height - 20
        color: Look.flow
    }
    Column {
        id: words

        x: step.widest + 24
        y: -4
        width: step.width - x

        Flow {
            width: parent.width
            spacing: 12

            Say {
                width: Math.min(implicitWidth, parent.width)
                text: step.came.toLocaleString(Qt.locale(), "f", 0) + " " + step.what
                font.weight: Font.DemiBold
            }
            Say {
                id: link

                objectName: "lineTo-" + step.code
                text: step.code
                font.family: Look.mono
                color: step.last ? Look.ink : Look.link
                font.underline: !step.last
                activeFocusOnTab: !step.last
                Accessible.role: step.last ? Accessible.StaticText : Accessible.Link
                Accessible.focusable: !step.last
                Keys.onReturnPressed: step.opened()
                Keys.onEnterPressed: step.opened()

                Ring {
                    shown: link.activeFocus
                }
                TapHandler {
                    enabled: !step.last
                    onTapped: step.opened()
                }
            }
            Say {
                text: step.day
                color: Look.quiet
            }
        }
        Say {
            width: parent.width
            visible: step.lost !== ""
            text: "− " + step.lost
            color: Look.lost
        }
        Say {
            width: parent.width
            visible: step.kept !== ""
            text: step.kept
            color: Look.quiet
        }
        Say {
            width: parent.width
            visible: step.elsewhere > 0
            text: qsTr("%1 went into other lots").arg(step.elsewhere)
            color: Look.quiet
        }
        Say {
            width: parent.width
            visible: step.here > 0 && !step.last
            text: qsTr("%1 still in %2").arg(step.here).arg(step.code)
            color: Look.quiet
        }
        Say {
            width: parent.width
            visible: step.here > 0 && step.last
            text: qsTr("%1 on hand").arg(step.here)
            color: Look.link
        }
    }
}
