#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Holds completion and manual page against what --help says of every command.

    said_test.py PROGRAM
"""
import re
import shutil
import subprocess
import sys
import tempfile

PROGRAM = sys.argv[1]


def said(*arguments):
    return subprocess.run([PROGRAM, *arguments], capture_output=True, text=True, check=True).stdout


def listed(text, heading):
    """The first words below a heading of a help text, down to the next empty line."""
    found, inside = [], False
    for line in text.splitlines():
        if line.rstrip(":") == heading:
            inside = True
        elif inside and not line.strip():
            break
        elif inside and re.match(r"  \S", line):
            found.append(line.split()[0])
    return found


def options_of(text):
    return {name for words in listed(text, "Options") for name in words.split(",") if name.startswith("-")}


def all_commands():
    """Every command as a list of words, with its options and the commands below it, by --help."""
    below = listed(said("--help"), "Subcommands")
    found = {(): (options_of(said("--help")), set(below))}
    for name in below:
        text = said(name, "--help")
        inner = listed(text, "Subcommands")
        found[(name,)] = (options_of(text), set(inner))
        for word in inner:
            found[(name, word)] = (options_of(said(name, word, "--help")), set())
    return found


def bash_offers(lines):
    """What bash offers at the end of each line of words, asked of the generated script in one shell."""
    with tempfile.NamedTemporaryFile("w", suffix=".bash") as script:
        script.write(said("completion", "bash"))
        script.write("compopt() { :; }\n")  # bash has it only while it completes
        for words in lines:
            quoted = " ".join("'" + word + "'" for word in words)
            script.write(f"COMP_WORDS=({quoted}); COMP_CWORD={len(words) - 1}; COMPREPLY=(); _coneline\n"
                         'echo "${COMPREPLY[*]}"\n')
        script.flush()
        ran = subprocess.run(["bash", script.name], capture_output=True, text=True, check=True)
        if ran.stderr:
            sys.exit("bash says: " + ran.stderr)
        return [set(line.split()) for line in ran.stdout.splitlines()]


def expect(condition, what):
    if not condition:
        sys.exit(what)


def check_bash(commands):
    asked, wanted = [], []
    for name, (options, below) in commands.items():
        if below:
            asked.append(["coneline", *name, ""])
            wanted.append(below)
        asked.append(["coneline", *name, "-"])
        wanted.append(options)
    for line, want, got in zip(asked, wanted, bash_offers(asked), strict=True):
        expect(got == want, f"after {' '.join(line)!r} bash offers {sorted(got ^ want)} too much or too little")
    values = bash_offers([["coneline", "space", "--pattern", ""], ["coneline", "completion", "ba"]])
    expect(values[0] == {"square", "staggered"}, f"the patterns offered are {values[0]}")


def check_other_shells(commands):
    zsh, fish = said("completion", "zsh"), said("completion", "fish")
    for name, (options, below) in commands.items():
        for word in below:
            expect(f"'{word}:" in zsh, f"zsh lacks {name} {word}")
            expect(f"-a '{word}'" in fish, f"fish lacks {name} {word}")
        for option in options:
            if option.startswith("--"):
                expect(f"'{option}[" in zsh, f"zsh lacks {name} {option}")
                expect(f" -l {option[2:]}" in fish, f"fish lacks {name} {option}")
    for shell, script in (("zsh", zsh), ("fish", fish)):
        if shutil.which(shell):
            ran = subprocess.run([shell, "-n"], input=script, capture_output=True, text=True, check=False)
            expect(ran.returncode == 0 and not ran.stderr, f"{shell} cannot read its script: {ran.stderr}")


def check_manual(commands):
    page = said("manual")
    sections = {part.split("\n", 1)[0].replace("\\-", "-"): part.replace("\\-", "-")
                for part in re.split(r"^\.S[SH] ", page, flags=re.M)}
    for name, (options, below) in commands.items():
        if not name or below:
            continue
        section = sections.get(" ".join(name))
        expect(section is not None, f"the manual lacks {' '.join(name)}")
        for option in options - {"--help", "-h", "--json"}:
            expect(f"\\fB{option}\\fR" in section, f"the manual lacks {' '.join(name)} {option}")
    for name in ["EXIT STATUS", "ENVIRONMENT", "FILES", "CAUTIONS"]:
        expect(name in sections, f"the manual lacks {name}")
    if shutil.which("groff"):
        ran = subprocess.run(["groff", "-K", "utf8", "-man", "-ww", "-Tutf8", "-z"], input=page, capture_output=True, text=True, check=True)
        expect(not ran.stderr, "groff says: " + ran.stderr)


def main():
    commands = all_commands()
    expect(len(commands) > 60, f"only {len(commands)} commands were found by --help")
    expect(re.fullmatch(r"coneline \d+\.\d+\.\d+\n", said("--version")), said("--version"))
    check_bash(commands)
    check_other_shells(commands)
    check_manual(commands)
    print(f"{len(commands) - 1} commands with {sum(len(options) for options, _ in commands.values())} options "
          "are in manual and completion as in --help")


main()
