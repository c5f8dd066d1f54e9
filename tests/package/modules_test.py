#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The QML modules that the window imports must be packages that the Debian package depends on.

    modules_test.py SOURCE
"""
import pathlib
import re
import sys

SOURCE = pathlib.Path(sys.argv[1])


def main():
    imported = set()
    for page in (SOURCE / "qml").rglob("*.qml"):
        imported |= set(re.findall(r"^import (Qt[\w.]*)", page.read_text(), flags=re.M))
    listed = set(re.findall(r"qml6-module-[\w-]+", (SOURCE / "packaging/CMakeLists.txt").read_text()))
    wanted = {"qml6-module-" + name.lower().replace(".", "-") for name in imported}
    if len(imported) < 2 or not wanted <= listed:
        sys.exit(f"the package does not depend on {sorted(wanted - listed)}")
    print(f"{len(imported)} imported modules are dependencies of the package")


main()
