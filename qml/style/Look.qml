// SPDX-License-Identifier: GPL-3.0-or-later
// Colours by role, sizes of type and space. Three looks: day, night, strong sun.
pragma Singleton
import QtQuick

QtObject {
    property string mode: "day"
    property real scale: 1

    readonly property color paper: pick("#FBFAF6", "#171B18", "#FFFFFF")
    readonly property color sheet: pick("#F1EFE7", "#20261F", "#FFFFFF")
    readonly property color rule: pick("#D9D6CA", "#3A423A", "#000000")
    readonly property color flow: pick("#D9D6CA", "#3A423A", "#D4D4D4")
    readonly property color ink: pick("#20281F", "#ECE9E0", "#000000")
    readonly property color quiet: pick("#5A6156", "#A9AFA4", "#3A3A3A")
    readonly property color act: pick("#8A4B16", "#E0A060", "#6B3000")
    readonly property color link: pick("#2C5E8A", "#8FBDE6", "#003E73")
    readonly property color lost: pick("#9E2B25", "#F08C82", "#8B0000")
    readonly property color forecast: pick("#5B4B8A", "#B9A8E8", "#3A2A70")

    readonly property int tiny: Math.round(13 * scale)
    readonly property int plain: Math.round(16 * scale)
    readonly property int large: Math.round(20 * scale)
    readonly property int title: Math.round(28 * scale)
    readonly property int huge: Math.round(40 * scale)

    readonly property int target: 48
    // Weights as numbers: an enumeration named in an expression is put together anew for its whole
    // type when it is first used, which takes milliseconds of a start.
    readonly property int regular: Font.Normal
    readonly property int strong: Font.DemiBold
    // So is that of Qt, by far the longest of all: this is Qt.RightToLeft.
    readonly property int rightToLeft: 1
    readonly property string sans: "Noto Sans"
    readonly property string mono: "Noto Sans Mono"

    /// A width that holds so much text of the plain size, at the size chosen.
    function wide(plain: int): int {
        return Math.round(plain * scale);
    }

    function pick(day: string, night: string, sun: string): string {
        return mode === "night" ? night : mode === "sun" ? sun : day;
    }

    function role(name: string): color {
        switch (name) {
        case "act":
            return act;
        case "lost":
            return lost;
        case "quiet":
            return quiet;
        case "forecast":
            return forecast;
        case "link":
            return link;
        }
        return ink;
    }
}
