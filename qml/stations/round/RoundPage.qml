// SPDX-License-Identifier: GPL-3.0-or-later
// A round: choose it, walk it, see what came of it.
import QtQuick
import ConelineWindow

Item {
    id: page

    required property Session session
    property bool byPictures: false
    signal letter(string text)
    signal opened(string code)
    signal over

    /// A scan or a typed code; only a round that is going takes it.
    function scan(text: string): bool {
        if (!walking.open)
            return false;
        walking.scan(text);
        return true;
    }

    RoundWalk {
        id: walking

        session: page.session
        onHeard: taken => {
            if (taken)
                sound.taken();
            else
                sound.refused();
        }
    }
    Feedback {
        id: sound
    }
    CameraScan {
        id: lens

        onScanned: text => page.scan(text)
    }
    RoundStart {
        anchors.fill: parent
        visible: !walking.open && !walking.ended && !page.byPictures
        walk: walking
        onPicturesWanted: page.byPictures = true
    }
    PicturesOfRound {
        anchors.fill: parent
        visible: page.byPictures && !walking.open
        session: page.session
        onOver: page.byPictures = false
    }
    RoundGoing {
        anchors.fill: parent
        visible: walking.open
        walk: walking
        camera: lens
        onLetter: text => page.letter(text)
    }
    RoundEnd {
        anchors.fill: parent
        visible: walking.ended
        walk: walking
        onOpened: code => page.opened(code)
        onOver: page.over()
    }
}
