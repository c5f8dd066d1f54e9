#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The texts of the window: gathered from the sources, kept in the catalogues, and checked.

    texts.py update    adds new texts to the catalogues as unfinished, takes out those that are gone
    texts.py check     fails where a text lacks its translation, a place ({}, {0}, %1, %n) is missing,
                       a catalogue lags behind the sources, or a page has a text outside qsTr

Spanish holds every text; English only those with plural forms, since its other texts are the sources.
"""
import csv
import pathlib
import re
import sys
from xml.etree import ElementTree
from xml.sax.saxutils import escape

ROOT = pathlib.Path(__file__).resolve().parents[2]
HERE = pathlib.Path(__file__).resolve().parent
CORE = "core"  # the context of everything that is said through core/base/phrase.h
HEADING = "heading: "  # before words that stand alone; see core/base/heading.h
# Command lines stay English, and so does what programs read.
LEFT_OUT = re.compile(r"core/commands/|labels/commands/|_json\.cpp$")

LITERALS = re.compile(r'"(?:[^"\\\n]|\\.)*"(?:\s*"(?:[^"\\\n]|\\.)*")*')
LITERAL = re.compile(r'"((?:[^"\\\n]|\\.)*)"')
SAID = re.compile(r"\b(phrase|phrased|to_phrase|by_when|as_heading|phrase_n|phrased_n|counted|tr|"
                  r"fault|book_fault|usage_fault|program_fault)\(")
FIELDS = re.compile(r"\b(\w+_field|field|word_choice|add_state_choice|share_fields)\(")


def text_of(literals):
    joined = "".join(LITERAL.findall(literals))
    return re.sub(r"\\(.)", lambda m: {"n": "\n", "t": "\t"}.get(m.group(1), m.group(1)), joined)


def without_comments(source):
    pattern = re.compile(r'"(?:[^"\\\n]|\\.)*"|//[^\n]*|/\*.*?\*/', re.S)
    return pattern.sub(lambda m: m.group(0) if m.group(0)[0] == '"' else "", source)


def arguments(source, opening):
    """The arguments of the call whose parenthesis opens here, as texts, and where it ends."""
    found, depth, begin, at = [], 0, opening + 1, opening
    while at < len(source):
        sign = source[at]
        if sign == '"':
            at = LITERAL.match(source, at).end()
            continue
        if sign in "([{":
            depth += 1
        elif sign in ")]}":
            depth -= 1
            if depth == 0:
                return found + [source[begin:at]], at
        elif sign == "," and depth == 1:
            found.append(source[begin:at])
            begin = at + 1
        at += 1
    return found, at


def plain_literals(argument):
    """Literals that are an argument of themselves, perhaps one of several by a condition."""
    bare, at = "", 0
    for call in re.finditer(r"\b[\w:]+(?:<[^<>]*>)?\(", argument):
        if call.start() < at:
            continue
        bare += argument[at:call.start()]
        at = arguments(argument, call.end() - 1)[1] + 1
    bare += argument[at:]
    if re.search(r'"\s*\+|\+\s*"', bare):
        return []
    return [text_of(m.group(0)) for m in LITERALS.finditer(bare)]


class Texts:
    def __init__(self):
        self.all = {}  # (context, source) -> whether it has plural forms

    def add(self, context, source, plural=False):
        if re.search(r"[A-Za-z]{2,}", re.sub(r"\{[^}]*\}|%[\dn]", "", source)):
            if self.all.setdefault((context, source), plural) != plural:
                sys.exit(f"'{source}' [{context}] is said with a count and without: one text cannot be both.")


def gather_cpp(path, texts):
    source = without_comments(path.read_text())
    name = path.relative_to(ROOT).as_posix()
    header = path.with_suffix(".h")
    owner = re.search(r"class (\w+)[^;{]*\{\s*Q_OBJECT", header.read_text() if header.exists() else "")
    for call in SAID.finditer(source):
        kind = call.group(1)
        parts, _ = arguments(source, call.end() - 1)
        first = LITERALS.fullmatch(parts[0].strip())
        if kind == "tr":
            before = re.search(r"(\w+)::$", source[:call.start()])
            scope = before.group(1) if before else owner.group(1) if owner else None
            if first and not scope:
                sys.exit(f"{name}: whose text is {first.group(0)}? No class with Q_OBJECT in its header.")
            if first:
                context = scope if scope == "QObject" else "coneline::window::" + scope
                said = text_of(first.group(0))
                texts.add(context, said, "%n" in said)
        elif kind in ("phrase_n", "phrased_n"):
            if len(parts) > 2 and LITERALS.fullmatch(parts[2].strip()):
                texts.add(CORE, text_of(parts[2]), True)
        elif kind == "counted":
            if len(parts) == 3 and LITERALS.fullmatch(parts[2].strip()):
                texts.add(CORE, "{} " + text_of(parts[2]), True)
        elif kind.endswith("fault"):
            for part in parts:
                for said in plain_literals(part):
                    texts.add(CORE, said)
        elif first:
            texts.add(CORE, (HEADING if kind == "as_heading" else "") + text_of(first.group(0)))
    for word in re.findall(r'\bWord\{"([^"]+)"\}', source):
        texts.add(CORE, HEADING + word)
    for kind, unit in re.findall(r'\bColumn\{"[^"]*", "([^"]*)", "([^"]*)"', source):
        texts.add(CORE, HEADING + kind)
        if unit:
            texts.add(CORE, HEADING + unit)
    if "struct Words<" in source:
        for word in re.findall(r'\{(?:\w+::)+\w+,\s*"([^"]+)"\}', source):
            texts.add(CORE, word)
        for word in re.findall(r'string_view what = "([^"]+)"', source):
            texts.add(CORE, word)
    if name in ("core/base/code.cpp", "core/stats/temperature_days.cpp", "core/stats/degree_days.cpp",
                "core/stats/curve.cpp"):
        for word in re.findall(r'case [\w:]+:\s*return "([^"]+)"', source):
            texts.add(CORE, word)
    if name.startswith("qml/models/deeds/"):
        gather_deeds(source, texts)
    if name == "qml/models/diary.cpp":
        for label in re.findall(r'\bsay\(facts, ("[^"]+")', source):
            texts.add(CORE, text_of(label))


def gather_deeds(source, texts):
    for call in FIELDS.finditer(source):
        parts, _ = arguments(source, call.end() - 1)
        keys = 2 if call.group(1) in ("measure_field", "add_state_choice", "field") else 1
        if call.group(1) == "share_fields":
            parts = parts[3:5]  # the other texts are keys
            keys = 0
        for part in parts[keys:]:
            for said in plain_literals(part.replace("QStringLiteral", "")):
                texts.add(CORE, said)
            for choice in re.findall(r'\{((?:"[^"]+"(?:, )?)+)\}', part):
                for said in LITERAL.findall(choice):
                    texts.add(CORE, said)
    for said in re.findall(r'\{"([^"]+)",[^{}]*?, "(?:ink|act|lost|quiet)"\}', source):
        texts.add(CORE, said)
    for said in re.findall(r'Deed\{"[^"]+",\s*"([^"]+)"', source):
        texts.add(CORE, said)
    for asked in re.findall(r"FigureAsked\{([^{}]*)\}", source):
        for said in LITERAL.findall(asked)[1:]:
            texts.add(CORE, said)
    for said in re.findall(r'QStringLiteral\("([^"]* [^"]*)"\)', source):
        texts.add(CORE, said)
    for said in re.findall(r'QString \w+ = QStringLiteral\("([^"]+)"\)', source):
        texts.add(CORE, said)
    for said in re.findall(r"constexpr const char\* \w+ =\s*((?:\"[^\"]*\"\s*)+);", source):
        texts.add(CORE, text_of(said))
    for said in re.findall(r'FieldSpec \w+\{QStringLiteral\("\w+"\),\s*QStringLiteral\("([^"]+)"\)', source):
        texts.add(CORE, said)
    for said in re.findall(r'\.label = QStringLiteral\("([^"]+)"\)', source):
        texts.add(CORE, said)
    for said in re.findall(r'(?:prepend|names)[({]QStringLiteral\("([^"]+)"\)', source):
        texts.add(CORE, said)


def gather_qml(path, texts):
    source = without_comments(path.read_text())
    for call in re.finditer(r"\bqsTr\(", source):
        parts, _ = arguments(source, call.end() - 1)
        said = text_of(parts[0])
        texts.add(path.stem, said, "%n" in said)


def gather_rules(texts):
    """The words of the table of trade rules, but for the names of taxa."""
    with (ROOT / "core/report/data/trade_rules.csv").open(newline="") as table:
        for rule in csv.DictReader(table):
            texts.add(CORE, rule["source"])
            if rule["kind"] == "rule":
                texts.add(CORE, rule["name"])
                texts.add(CORE, rule["says"])


def gather():
    texts = Texts()
    gather_rules(texts)
    for folder in ("core", "labels", "qml"):
        for path in sorted((ROOT / folder).rglob("*")):
            if LEFT_OUT.search(path.relative_to(ROOT).as_posix()):
                continue
            if path.suffix in (".cpp", ".h"):
                gather_cpp(path, texts)
            elif path.suffix == ".qml":
                gather_qml(path, texts)
    return texts.all


SHOWN = re.compile(r"^\s*(?:\w+: )?(text|says|title|about|label|placeholderText|belongs|next|unit|saying|word|"
                   r"figure|Accessible\.name|Accessible\.description|shown): (.*)$")
OWN_NAMES = {"Coneline", "English", "Español"}  # said alike in every language


def outside_qstr():
    """Letters on a page that no translator sees."""
    found = []
    for path in sorted((ROOT / "qml").rglob("*.qml")):
        for number, line in enumerate(path.read_text().splitlines(), 1):
            shown = SHOWN.match(line)
            if not shown:
                continue
            rest = re.sub(r'qsTr\("(?:[^"\\]|\\.)*"', "", shown.group(2))
            rest = re.sub(r'(===|!==) "[^"]*"|\["[^"]*"(?:, "[^"]*")*\]', "", rest)
            for literal in LITERAL.findall(rest):
                if re.search(r"[A-Za-z]{2,}", literal) and literal.strip(" –") not in OWN_NAMES:
                    found.append(f"{path.relative_to(ROOT)}:{number}: '{literal}' is not in qsTr")
    return found


def catalogue(language):
    return HERE / f"coneline_{language}.ts"


def read(language):
    """(context, source) -> list of forms, empty where unfinished."""
    known = {}
    if not catalogue(language).exists():
        return known
    for context in ElementTree.parse(catalogue(language)).getroot().findall("context"):
        for message in context.findall("message"):
            translation = message.find("translation")
            forms = [form.text or "" for form in translation.findall("numerusform")]
            forms = forms or [translation.text or ""]
            done = translation.get("type") != "unfinished" and all(forms)
            known[(context.findtext("name"), message.findtext("source"))] = forms if done else []
    return known


def write(language, messages):
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>",
             f'<TS version="2.1" language="{language}" sourcelanguage="en">']
    before = None
    for (context, source), (plural, forms) in sorted(messages.items()):
        if context != before:
            lines += ["</context>"] if before else []
            lines += ["<context>", f"    <name>{escape(context)}</name>"]
            before = context
        lines.append('    <message numerus="yes">' if plural else "    <message>")
        lines.append(f"        <source>{escape(source)}</source>")
        mark = "" if forms else ' type="unfinished"'
        if plural:
            lines.append(f"        <translation{mark}>")
            for form in forms or ["", ""]:
                lines.append(f"            <numerusform>{escape(form)}</numerusform>")
            lines.append("        </translation>")
        else:
            lines.append(f"        <translation{mark}>{escape(forms[0] if forms else '')}</translation>")
        lines.append("    </message>")
    lines += ["</context>", "</TS>", ""]
    catalogue(language).write_text("\n".join(lines))


def wanted(language, texts):
    """English needs plural forms only, and only where the source has %n."""
    if language == "en":
        return {key: plural for key, plural in texts.items() if plural and key[0] != CORE}
    return texts


def update():
    texts = gather()
    for language in ("es", "en"):
        known = read(language)
        write(language, {key: (plural, known.get(key, []) if len(known.get(key, [])) == 1 + plural else [])
                         for key, plural in wanted(language, texts).items()})


PLACE = re.compile(r"\{(\d*)(:[^{}]*)?\}|%(\d|n)")


def places(text):
    """What has to be put in, with its way of writing; places without a number count from 0."""
    found, turn = set(), 0
    for number, how, mark in PLACE.findall(text):
        if mark:
            found.add("%" + mark)
            continue
        if number == "":
            number, turn = str(turn), turn + 1
        found.add("{" + number + how + "}")
    return found


def check():
    faults = outside_qstr()
    texts = gather()
    for language in ("es", "en"):
        known = read(language)
        expected = wanted(language, texts)
        for context, source in sorted(known.keys() - expected.keys()):
            faults.append(f"{language}: [{context}] '{source}' is no text any more: texts.py update")
        for (context, source), plural in sorted(expected.items()):
            forms = known.get((context, source), [])
            if not forms or (plural and len(forms) != 2):
                faults.append(f"{language}: [{context}] '{source}' is unfinished")
                continue
            for nth, form in enumerate(forms):
                lacks = places(source) ^ places(form)
                # The form for one may leave the count out, as in 'one tray'.
                if plural and nth == 0:
                    lacks -= {"{0}", "%n"}
                if lacks:
                    faults.append(f"{language}: [{context}] '{source}': {', '.join(sorted(lacks))} in one only")
                if form.startswith(" ") != source.startswith(" ") or form.endswith(" ") != source.endswith(" "):
                    faults.append(f"{language}: [{context}] '{source}': the blank at an end is lost")
    print("\n".join(faults) if faults else f"{len(texts)} texts, all translated")
    return 1 if faults else 0


if __name__ == "__main__":
    doing = sys.argv[1] if len(sys.argv) > 1 else "check"
    sys.exit(update() if doing == "update" else check())
