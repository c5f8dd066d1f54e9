#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Every label of the invented nursery, printed as PDF, rasterised at 203 dots an inch and read back.

labels_read_back.py PROGRAM SEASON_FOLDER
"""
import collections
import csv
import json
import pathlib
import subprocess
import sys
import tempfile

program, season = sys.argv[1], pathlib.Path(sys.argv[2])


def coneline(*arguments):
    done = subprocess.run([program, *arguments, "--json"], capture_output=True, text=True)
    if done.returncode != 0:
        sys.exit(f"coneline {' '.join(arguments[:3])} …: {done.stderr}")
    return json.loads(done.stdout)


codes = []
for table in ("lots", "plants", "cones", "pollen_lots", "places", "purchases"):
    with open(season / f"{table}.csv", encoding="utf-8", newline="") as rows:
        codes += [row["code"] for row in csv.DictReader(rows)]

with tempfile.TemporaryDirectory() as folder:
    folder = pathlib.Path(folder)
    book = str(folder / "book.coneline")
    coneline("import", "--book", book, str(season))
    if not coneline("check", "--book", book)["proven"]:
        sys.exit("the book is not proven")
    for stock in (stock["name"] for stock in coneline("labels", "stocks") if stock["labels_a_page"] > 1):
        pdf = folder / "labels.pdf"
        # At least 203 dots an inch, so that modules are whole dots of the printer that is imitated.
        coneline("labels", "print", "--book", book, "--stock", stock, "--dpi", "203", "--out", str(pdf), *codes)
        for old in folder.glob("page*"):
            old.unlink()
        subprocess.run(["pdftoppm", "-r", "203", "-png", str(pdf), str(folder / "page")], check=True)
        pages = sorted(str(page) for page in folder.glob("page*.png"))
        read = [code["text"] for picture in coneline("labels", "read", *pages) for code in picture["codes"]]
        missing = collections.Counter(codes) - collections.Counter(read)
        surplus = collections.Counter(read) - collections.Counter(codes)
        print(f"{stock}: {len(read)} of {len(codes)} labels read back from {len(pages)} pages")
        if missing or surplus:
            sys.exit(f"missing {sorted(missing)}, surplus {sorted(surplus)}")
