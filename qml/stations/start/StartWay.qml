// SPDX-License-Identifier: GPL-3.0-or-later
// One way to begin: what it is, and below it what it needs once it is chosen.
import QtQuick
import ConelineWindow

Column {
    id: way

    property string title: ""
    property string about: ""
    property bool unfolded: false
    default property alias needs: inside.data
    signal wanted

    // What was unfolded above it folds up: its own title stays in sight.
    function stayInSight() {
        for (let above = way.parent; above; above = above.parent) {
            if (!(above instanceof Flickable))
                continue;
            const top = way.mapToItem(above.contentItem, 0, 0).y;
            if (top < above.contentY)
                above.contentY = Math.max(0, top - 8);
            return;
        }
    }

    onUnfoldedChanged: {
        if (unfolded)
            Qt.callLater(way.stayInSight);
    }

    Tap {
        id: button

        width: parent.width
        implicitHeight: words.height + 32
        Accessible.role: Accessible.Button
        Accessible.name: way.title + ". " + way.about
        onClicked: {
            // What had the keyboard may be about to fold up.
            button.forceActiveFocus(Qt.MouseFocusReason);
            way.wanted();
        }

        background: Rectangle {
            radius: 4
            color: button.down || way.unfolded ? Look.sheet : "transparent"
            border.width: way.unfolded ? 2 : 1
            border.color: way.unfolded ? Look.link : Look.quiet
        }
        contentItem: Item {
            Column {
                id: words

                x: 20
                y: 16
                width: parent.width - 40

                Words {
                    width: parent.width
                    text: way.title
                    font.pixelSize: Look.large
                    color: way.unfolded ? Look.link : Look.ink
                }
                Words {
                    width: parent.width
                    text: way.about
                    color: Look.quiet
                }
            }
        }
    }
    Column {
        id: inside

        visible: way.unfolded
        x: 20
        width: parent.width - 40
        topPadding: 16
        bottomPadding: 16
        spacing: 16
    }
}
