// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import ConelineWindow

Item {
    required property Session session
    property bool tall: false
}
