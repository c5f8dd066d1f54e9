// SPDX-License-Identifier: GPL-3.0-or-later
// Where the keyboard is, it is seen: what it comes to is scrolled into view, and where what had it
// is gone from the page, it goes on to what took its place. F6 and the arrows are shorter ways.
import QtQuick

Item {
    id: way

    /// What F6 goes through, in its order; what is not shown is passed over.
    property var parts: []
    /// What takes the keyboard when its holder is gone; where there is none, `rested` is said.
    property Item page: null
    readonly property Item held: Window.activeFocusItem
    /// What is hidden, or was never a stop, such as the list whose row is gone, holds it for nobody.
    readonly property bool seen: held !== null && held.visible && held.activeFocusOnTab
    signal rested

    function within(item: Item, part: Item): bool {
        for (let above = item; above; above = above.parent)
            if (above === part)
                return true;
        return false;
    }
    function firstOf(part: Item): Item {
        const first = part.visible ? part.nextItemInFocusChain(true) : null;
        return first && way.within(first, part) ? first : null;
    }
    /// To the part after the one the keyboard is in, or the one before.
    function toNextPart(forward: bool) {
        const shown = way.parts.filter(part => way.firstOf(part) !== null);
        const now = shown.findIndex(part => way.within(way.held, part));
        const next = now < 0 ? 0 : (now + (forward ? 1 : shown.length - 1)) % shown.length;
        if (shown.length > 0)
            way.firstOf(shown[next]).forceActiveFocus(Qt.TabFocusReason);
    }
    /// To the stop after or before, as Tab goes.
    function step(forward: bool) {
        const next = way.held ? way.held.nextItemInFocusChain(forward) : null;
        if (next)
            next.forceActiveFocus(Qt.TabFocusReason);
    }
    /// Whether these are alike, as the rows of a list are.
    function alike(one: Item, other: Item): bool {
        return String(one).split("(")[0] === String(other).split("(")[0];
    }
    /// The rows of the list that an item stands in: those of a view that scrolls, but for its head and
    /// foot, or more than three alike below each other. None where it is in no list.
    function rowsAround(item: Item): var {
        for (let row = item; row && row.parent; row = row.parent) {
            const view = row.parent.parent;
            if (view instanceof ListView || view instanceof GridView) {
                if (view.contentItem === row.parent)
                    return row === view.headerItem || row === view.footerItem ? [] : Array.from(row.parent.children).filter(each => each !== view.headerItem && each !== view.footerItem);
            }
            const rows = Array.from(row.parent.children).filter(each => each.visible && way.alike(each, row));
            if (rows.length > 3 && rows.every(each => each === row || Math.abs(each.y - row.y) > 1))
                return rows;
        }
        return [];
    }
    /// Past a list, however long, to what stands after or before its rows.
    function leaveList(forward: bool): bool {
        const rows = way.rowsAround(way.held);
        let next = way.held;
        while (rows.length > 0 && next && rows.some(row => way.within(next, row))) {
            next = next.nextItemInFocusChain(forward);
            if (next === way.held)
                return false;
        }
        if (rows.length === 0 || !next || next === way.held)
            return false;
        next.forceActiveFocus(Qt.TabFocusReason);
        return true;
    }
    /// An arrow that nothing else takes goes a step, in a field only up and down; End and Home leave
    /// a list.
    function take(key: int, modifiers: int): bool {
        if (key === Qt.Key_End || key === Qt.Key_Home)
            return way.leaveList(key === Qt.Key_End);
        const sideways = key === Qt.Key_Left || key === Qt.Key_Right;
        const arrow = sideways || key === Qt.Key_Up || key === Qt.Key_Down;
        if (!arrow || (modifiers & ~Qt.KeypadModifier) !== 0 || (sideways && way.held instanceof TextInput))
            return false;
        way.step(key === Qt.Key_Down || key === Qt.Key_Right);
        return true;
    }
    function bringIntoView(item: Item) {
        const margin = 8;
        const along = (at, size, from, room) => at - margin < from || size + 2 * margin > room ? at - margin : Math.max(from, at + size + margin - room);
        const within = (to, origin, content, room) => Math.max(origin, Math.min(to, origin + content - room));
        for (let above = item.parent; above; above = above.parent) {
            if (!(above instanceof Flickable))
                continue;
            const at = item.mapToItem(above.contentItem, 0, 0);
            if (above.contentHeight > above.height)
                above.contentY = within(along(at.y, item.height, above.contentY, above.height), above.originY, above.contentHeight, above.height);
            if (above.contentWidth > above.width)
                above.contentX = within(along(at.x, item.width, above.contentX, above.width), above.originX, above.contentWidth, above.width);
        }
    }
    function look() {
        if (!way.held) // the window is not the one that is worked in
            return;
        if (way.seen) {
            way.bringIntoView(way.held);
            return;
        }
        const first = way.page ? way.firstOf(way.page) : null;
        if (first)
            first.forceActiveFocus(Qt.TabFocusReason);
        else
            way.rested();
    }

    onHeldChanged: later.start()
    onSeenChanged: later.start()

    // Later, when the page has its new shape.
    Timer {
        id: later

        interval: 0
        onTriggered: way.look()
    }
    Shortcut {
        sequence: "F6"
        onActivated: way.toNextPart(true)
    }
    Shortcut {
        sequence: "Shift+F6"
        onActivated: way.toNextPart(false)
    }
}
