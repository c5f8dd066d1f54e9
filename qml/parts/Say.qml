// SPDX-License-Identifier: GPL-3.0-or-later
// Text that is read out by itself.
import QtQuick
import ConelineWindow

Words {
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
