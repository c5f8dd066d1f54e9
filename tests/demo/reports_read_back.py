#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The reports of the invented nursery as other programs read them: every column as its dictionary
says, no text a formula, the chart in the spreadsheet, and the counts as `coneline germination`
takes them; on paper every tray stands below its cross.

reports_read_back.py PROGRAM SEASON_FOLDER
"""
import csv
import datetime
import json
import math
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml
import zipfile

program, season = sys.argv[1], pathlib.Path(sys.argv[2])
as_of = "2026-11-20"
cells = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
drawn = "{http://schemas.openxmlformats.org/drawingml/2006/chart}"


def coneline(*arguments):
    done = subprocess.run([program, *arguments, "--json"], capture_output=True, text=True)
    if done.returncode != 0:
        sys.exit(f"coneline {' '.join(arguments[:3])} …: {done.stderr}")
    return json.loads(done.stdout)


def expect(true, what):
    if not true:
        sys.exit(what)


def rows_of(path):
    with open(path, encoding="utf-8", newline="") as rows:
        return list(csv.DictReader(rows))


readers = {
    "text": str,
    "date": datetime.date.fromisoformat,
    "whole": int,
    "number": float,
    "yes/no": {"yes": True, "no": False}.__getitem__,
}


def csv_is_as_its_dictionary_says(folder, book, by):
    out = folder / f"{by}.csv"
    coneline("report", "germination", "--book", book, "--as-of", as_of, "--by", by, "--out", str(out))
    rows = rows_of(out)
    dictionary = rows_of(folder / f"{by}.dictionary.csv")
    expect(list(rows[0]) == [column["column"] for column in dictionary], "columns and dictionary differ")
    for row in rows:
        for column in dictionary:
            value = row[column["column"]]
            if value == "":
                continue
            read = readers[column["type"]](value)
            if column["unit"] == "share":
                expect(0 <= read <= 1, f"{column['column']} {read} is no share")
            if column["type"] == "number":
                expect(math.isfinite(read), f"{column['column']} {value}")
    trays = [row for row in rows if row["level"] == "tray"]
    groups = [row for row in rows if row["level"] == by]
    expect(len(trays) + len(groups) == len(rows) and groups, "rows of other levels")
    for count in ("sown", "germinated", "removed", "waiting"):
        expect(sum(int(row[count]) for row in trays) == sum(int(row[count]) for row in groups), count)
    expect(sorted(int(row["rank"]) for row in groups) == list(range(1, len(groups) + 1)), "ranks")
    print(f"{out.name}: {len(rows)} rows of {len(dictionary)} columns")
    return groups


def spreadsheet_is_whole(folder, book, groups):
    out = folder / "report.xlsx"
    coneline("report", "germination", "--book", book, "--as-of", as_of, "--out", str(out))
    with zipfile.ZipFile(out) as parts:
        expect(parts.testzip() is None, "a damaged part")
        names = parts.namelist()
        sheets = [name for name in names if re.fullmatch(r"xl/worksheets/sheet\d+\.xml", name)]
        for name in sheets:
            expect(xml.fromstring(parts.read(name)).find(f".//{cells}f") is None, f"a formula in {name}")
        crosses = xml.fromstring(parts.read("xl/worksheets/sheet1.xml"))
        rows = crosses.findall(f".//{cells}row")
        expect(len(rows) == len(groups) + 1, f"{len(rows)} rows of crosses")
        charts = [name for name in names if re.fullmatch(r"xl/charts/chart\d+\.xml", name)]
        expect(charts, "no chart")
        named = " ".join(text for name in charts for text in xml.fromstring(parts.read(name)).itertext())
        for line in ("seen at the looks", "fitted curve", "range of the curve, low", "where it may end"):
            expect(line in named, f"no line '{line}' in the charts")
        expect(all(xml.fromstring(parts.read(name)).find(f".//{drawn}xVal") is not None for name in charts),
               "a chart without times")
    print(f"{out.name}: {len(sheets)} sheets, {len(charts)} charts")
    try:
        import openpyxl
    except ImportError:
        return
    opened = openpyxl.load_workbook(out)
    expect(opened.sheetnames == ["crosses", "trays", "looks", "curves", "charts", "columns", "about"],
           str(opened.sheetnames))
    sheet = opened["crosses"]
    shares = [row[[cell.value for cell in sheet[1]].index("share")].value for row in sheet.iter_rows(min_row=2)]
    expect(shares == sorted(shares, reverse=True), "crosses are not in the order of their rank")


def counts_come_back(folder, book):
    out = folder / "counts.csv"
    coneline("report", "germination", "--book", book, "--as-of", as_of, "--format", "counts", "--out", str(out))
    read = coneline("germination", str(out))
    report = coneline("report", "germination", "--book", book, "--as-of", as_of)
    seen = {group["group"]: group["germinated"] for group in read["groups"]}
    for cross in report["crosses"]:
        if any(tray["looks"] for tray in cross["trays"]):
            expect(seen[cross["cross"]] == cross["germinated"], cross["cross"])
    print(f"{out.name}: {len(seen)} crosses as in the report")


def paper_names_what_it_shows(folder, book):
    """No name is cut, and on every page trays stand below a head and the name of their cross."""
    out = folder / "report.pdf"
    coneline("report", "pdf", "--book", book, "--as-of", as_of, "--out", str(out))
    text = subprocess.run(["pdftotext", "-layout", str(out), "-"], capture_output=True, text=True, check=True).stdout
    expect("…" not in text, "a text is cut")
    crosses = coneline("report", "germination", "--book", book, "--as-of", as_of)["crosses"]
    order = {tray["tray"]: (cross["cross"], at) for cross in crosses for at, tray in enumerate(cross["trays"])}
    pages, trays = text.split("\f"), 0
    for number, page in enumerate(pages, 1):
        codes = re.findall(r"^ *(T\w+) +sown \d", page, re.M)
        trays += len(codes)
        if not codes:
            continue
        name, at = order[codes[0]]
        above = page[:page.index(codes[0])]
        expect("mean days" in above, f"page {number}: no head above {codes[0]}")
        expect(name + ", continued" in above if at > 0 else name in above, f"page {number}: whose is {codes[0]}?")
    expect(trays == len(order), f"{trays} trays of {len(order)} on paper")
    print(f"{out.name}: {trays} trays below their crosses")


with tempfile.TemporaryDirectory() as folder:
    folder = pathlib.Path(folder)
    book = str(folder / "book.coneline")
    coneline("import", "--book", book, str(season))
    groups = csv_is_as_its_dictionary_says(folder, book, "cross")
    csv_is_as_its_dictionary_says(folder, book, "season")
    csv_is_as_its_dictionary_says(folder, book, "cross-season")
    spreadsheet_is_whole(folder, book, groups)
    counts_come_back(folder, book)
    paper_names_what_it_shows(folder, book)
