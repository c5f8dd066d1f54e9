#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Sums what gcov says of a build into lines and branches of core, by room and by file.

  tests/covered.py BUILD      ends with 1 below 95 % of lines or 85 % of branches

A line counts as reached when any of its instances was, of a template too. A branch is one way out of one line of one
function; ways that only an exception takes are left out, since the compiler makes one of nearly every call, and so are
those of statements without a conditional (if, switch, loop, ?:, && and ||), which it makes to clear away what it built,
much as lcov's filter "branch" does; a comparison alone is no conditional here. The last column counts these too.
"""
import collections
import concurrent.futures
import functools
import json
import os
import re
import subprocess
import sys

TOP = os.path.realpath(os.path.join(os.path.dirname(__file__), ".."))


def said_of(counts):
    done = subprocess.run(["gcov", "--json-format", "--stdout", "--branch-probabilities", counts], capture_output=True,
                          cwd=os.path.dirname(counts))
    if done.returncode != 0:
        sys.exit(f"gcov cannot read {counts}: {done.stderr.decode().strip()}")
    found = []
    for text in done.stdout.decode().splitlines():
        if not text.startswith("{"):
            continue
        said = json.loads(text)
        for file in said["files"]:
            path = os.path.relpath(os.path.join(said["current_working_directory"], file["file"]), TOP)
            if path.startswith("core/"):
                found.append((path, [(line["line_number"], line.get("function_name", ""), line["count"],
                                      [way["count"] for way in line["branches"] if not way["throw"]])
                                     for line in file["lines"]]))
    return found


@functools.cache
def source(path):
    """Its lines without texts and comments."""
    with open(os.path.join(TOP, path), encoding="utf-8") as file:
        return [re.sub(r"//.*", "", re.sub(r'"(?:[^"\\]|\\.)*"', '""', line)) for line in file]


@functools.cache
def is_conditional(path, number):
    """Whether the statement that goes on from this line chooses between ways."""
    for line in source(path)[number - 1:number + 7]:
        if re.search(r"\b(if|switch|case|while|for)\b|\?|&&|\|\|", line):
            return True
        if re.search(r"[;{}]", line):
            return False
    return False


def main():
    build = os.path.abspath(sys.argv[1])
    counts = [os.path.join(folder, name) for folder, _, names in os.walk(build) for name in names
              if name.endswith(".gcda")]
    if not counts:
        sys.exit(f"No counts (*.gcda) in {build}: build the coverage preset and run its tests first.")
    lines = collections.defaultdict(int)
    ways = {}
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        for found in pool.map(said_of, counts):
            for path, of_file in found:
                for number, function, count, taken in of_file:
                    lines[path, number] += count
                    before = ways.setdefault((path, number, function), taken)
                    if before is not taken:
                        ways[path, number, function] = [a + b for a, b in zip(before, taken)] if len(before) == len(
                            taken) else max(before, taken, key=len)
    # Instances of one template are one piece of source: a way counts as taken when one of them took it.
    merged = {}
    for (path, number, _), taken in ways.items():
        there = merged.setdefault((path, number), taken)
        if there is not taken and len(there) == len(taken):
            merged[path, number] = [a + b for a, b in zip(there, taken)]
        elif len(taken) > len(there):
            merged[path, number] = taken
    sums = collections.defaultdict(lambda: [0] * 6)
    for (path, _), count in lines.items():
        for key in (path, "/".join(path.split("/")[:2]), "all of core"):
            sums[key][0] += count > 0
            sums[key][1] += 1
    for (path, number), taken in merged.items():
        columns = (2, 4) if is_conditional(path, number) else (4,)
        for key in (path, "/".join(path.split("/")[:2]), "all of core"):
            for at in columns:
                sums[key][at] += sum(count > 0 for count in taken)
                sums[key][at + 1] += len(taken)
    share = lambda part, whole: 100 * part / whole if whole else 100
    with open(os.path.join(build, "missed.txt"), "w") as out:
        for (path, number), count in sorted(lines.items()):
            if count == 0:
                out.write(f"{path}:{number}\n")
    rooms = sorted(key for key in sums if key.count("/") == 1 and not key.endswith((".h", ".cpp")))
    with open(os.path.join(build, "missed_branches.txt"), "w") as out:
        for (path, number), taken in sorted(merged.items()):
            if not all(taken) and is_conditional(path, number):
                out.write(f"{path}:{number}: {taken.count(0)} of {len(taken)} ways never taken\n")
    print(f"{'':20}{'lines':>16}{'':>9}{'branches':>16}{'':>9}{'with all others':>18}")
    for key in rooms + ["all of core"]:
        line, of_lines, way, of_ways, every, of_all = sums[key]
        print(f"{key:20}{line:>9}/{of_lines:<7}{share(line, of_lines):>6.1f} %{way:>9}/{of_ways:<7}"
              f"{share(way, of_ways):>6.1f} %{share(every, of_all):>16.1f} %")
    least = sorted((share(of[0], of[1]), of[1] - of[0], key) for key, of in sums.items()
                   if key.endswith((".h", ".cpp")))
    print("\nmost lines missed (all of them: missed.txt in the build):")
    for part, missed, key in sorted(least, key=lambda each: -each[1])[:15]:
        print(f"  {missed:>4} of {sums[key][1]:<4} {key}")
    line, of_lines, way, of_ways = sums["all of core"][:4]
    sys.exit(share(line, of_lines) < 95 or share(way, of_ways) < 85)


if __name__ == "__main__":
    main()
