# SPDX-License-Identifier: GPL-3.0-or-later
"""That the check of the catalogues sees what it is for: each fault is made on purpose, in a copy."""
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parents[2]


def faults_after(change):
    with tempfile.TemporaryDirectory() as place:
        copy = pathlib.Path(place)
        for folder in ("core", "labels", "qml"):
            shutil.copytree(ROOT / folder, copy / folder)
        change(copy)
        ran = subprocess.run([sys.executable, str(copy / "qml/translations/texts.py"), "check"],
                             capture_output=True, text=True, check=False)
        return ran.returncode, ran.stdout + ran.stderr


def replaced(name, old, new):
    def change(copy):
        path = copy / name
        text = path.read_text()
        assert old in text, f"{name} has no {old}"
        path.write_text(text.replace(old, new, 1))
    return change


SPANISH = "qml/translations/coneline_es.ts"
CASES = {
    "as it stands": (lambda copy: None, 0, "all translated"),
    "a text unfinished": (replaced(SPANISH, "<translation>", '<translation type="unfinished">'), 1, "is unfinished"),
    "a place lost": (replaced(SPANISH, "«{}» no es un día", "eso no es un día"), 1, "in one only"),
    "a place of a page lost": (replaced(SPANISH, "Hoy, %1", "Hoy"), 1, "%1 in one only"),
    "a new text": (replaced("core/work/sow.cpp", '"Give at least one."', '"Give at least a few."'), 1,
                   "'Give at least a few.' is unfinished"),
    "a text with a count and without": (replaced("core/work/sow.cpp", '"Give at least one."', '"{} moves"'), 1,
                                        "with a count and without"),
    "a text outside qsTr": (replaced("qml/stations/TodayList.qml", 'qsTr("by day")', '"by day"'), 1, "is not in qsTr"),
    "a plural form lost": (replaced("qml/translations/coneline_en.ts", "<numerusform>%n due</numerusform>", ""), 1,
                           "is unfinished"),
}

failed = [name for name, (change, status, said) in CASES.items()
          for code, out in [faults_after(change)] if code != status or not re.search(re.escape(said), out)]
print("\n".join(f"not seen: {name}" for name in failed) or f"{len(CASES)} cases as they should be")
sys.exit(1 if failed else 0)
