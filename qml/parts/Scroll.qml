// SPDX-License-Identifier: GPL-3.0-or-later
// What may be higher than its room: stops at its ends, cuts off what is outside, shows that there is
// more.
import QtQuick

Flickable {
    id: scroll

    clip: true
    boundsBehavior: Flickable.StopAtBounds

    ScrollMark {
        flick: scroll
    }
}
