#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The walls between the rooms: every #include goes down, never up or sideways, and core knows no Qt.

arrows.py FOLDER    exits 1 and lists the includes that break a wall
"""
import pathlib
import re
import sys

BELOW = {
    "core/base": [],
    "core/stats": ["core/base"],
    "core/book": ["core/stats", "core/base"],
    "core/store": ["core/book", "core/base"],
    "core/work": ["core/store", "core/book", "core/stats", "core/base"],
    "core/plan": ["core/store", "core/book", "core/stats", "core/base"],
    "core/exchange": ["core/work", "core/store", "core/book", "core/base"],
    "core/report": ["core/work", "core/plan", "core/store", "core/book", "core/stats", "core/base"],
    "core/commands": ["core/"],
    "labels/symbol": ["core/base"],
    "labels/sheet": ["labels/symbol", "core/book", "core/base"],
    "labels/print": ["labels/sheet", "labels/symbol", "core/report", "core/stats", "core/book", "core/base"],
    "labels/read": ["labels/symbol", "core/base"],
    "labels/round": ["labels/read", "labels/symbol", "core/work", "core/store", "core/book", "core/base"],
    "labels/commands": ["labels/", "core/"],
    "qml": ["qml/", "labels/", "core/"],
}
INCLUDE = re.compile(r'^\s*#\s*include\s+(["<])([^">]+)[">]', re.M)


def room_of(path):
    parts = path.split("/")
    return parts[0] if parts[0] == "qml" else "/".join(parts[:2])


def broken(folder):
    for source in sorted(folder.glob("**/*")):
        name = source.relative_to(folder).as_posix()
        if source.suffix not in (".h", ".cpp") or not name.startswith(("core/", "labels/", "qml/")):
            continue
        room = room_of(name)
        allowed = BELOW.get(room)
        if allowed is None:
            yield f"{name}: the room {room} is not among those the walls know"
            continue
        for quote, target in INCLUDE.findall(source.read_text(encoding="utf-8")):
            if room.startswith("core/") and re.match(r"Q[A-Z]|Qt", target):
                yield f"{name}: {target} is Qt, and core knows no Qt"
            if "zxing" in target.lower() and room not in ("labels/symbol", "labels/read"):
                yield f"{name}: {target} stays in labels/symbol and labels/read"
            if quote == '"' and target.startswith(("core/", "labels/", "qml/")):
                down = target.startswith(room + "/") or any(target.startswith(below) for below in allowed)
                if not down:
                    yield f"{name}: {target} is not below {room}"
            if target.startswith("soci/") and room != "core/store":
                yield f"{name}: {target} stays in core/store"
            if target == "sqlite3.h":
                yield f"{name}: the engine is reached through core/store/engine"


faults = list(broken(pathlib.Path(sys.argv[1])))
print("\n".join(faults) if faults else "every arrow points down")
sys.exit(1 if faults else 0)
