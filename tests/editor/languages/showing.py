"""Every text that the window can show, by section: read from the code where it is written, or from its catalogues."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterable, Iterator
from functools import lru_cache
from importlib import import_module
from pathlib import Path

import circuitcheck
from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.fields import CONTROL_FIELDS, DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.editor.appearance import Appearance
from circuitcheck.editor.document import ENDING
from circuitcheck.editor.files import called
from circuitcheck.editor.fill_in.asked import Shown
from circuitcheck.editor.language import NAMES, Language
from circuitcheck.editor.translating import IS_TRANSLATED
from circuitcheck.figures.catalogue import figures
from circuitcheck.finding import Grade
from circuitcheck.lessons.catalogue import faults
from circuitcheck.parts.catalogue import kinds
from circuitcheck.parts.kind import Field, FieldType, Group
from circuitcheck.report.flows import By
from circuitcheck.rules.book import book, book_names
from circuitcheck.shipped import data_path
from circuitcheck.sizing.pipe import Law
from circuitcheck.told import spoken

ROOT = Path(circuitcheck.__file__).parent
MARKS = {
    "tr": 1,
    "tr_n": 2,
    "later": 1,
    "worded": 1,
    "worded_n": 2,
    "a_word": 1,
    "worded_of": 1,
    "Says": 1,
    "says": 1,
}
"""Functions whose first so many arguments are texts."""
ALL_PROSE = {"checks": "checks", "figures": "figures"}
"""Rows of which every literal that reads like a text can be shown, and the sections they stand in."""
NO_PROSE = re.compile(r"(given|usual value|table|rule|figure|measured|counted) |[^a-z]*$")
NAMING = {"Result", "add", "part", "pipe", "design", "limit"}
"""Functions that name a figure's results and inputs, with a capital."""
_ONE_WORD = re.compile(r"[A-Z][a-z]{2,}")
INTERNAL = {"keep", "kept", "removeprefix", "startswith", "partition", "import_module"}
"""Functions whose arguments nobody sees."""


def all_texts() -> dict[str, str]:
    """Each text with its section, in the order of sections and of the code. A text stands in its first section."""
    found: dict[str, str] = {}
    for section, told in _each():
        # The window looks texts up without the space at their edges.
        text = told.strip()
        if re.search(r"[^\W\d_]{2}|^[^\W\d_]+$", text):
            found.setdefault(text, section)
    return found


def _each() -> Iterator[tuple[str, str]]:
    yield "window", IS_TRANSLATED
    yield from _window()
    yield from _parts()
    for grade in Grade:
        yield "checks/words", grade.value
    for row in sorted(
        path.name for path in ROOT.iterdir() if path.name not in ("editor", "checks", "figures")
    ):
        yield from _row(ROOT / row, row.removesuffix(".py"))
    yield from _row(ROOT / "checks", "checks")
    yield from _row(ROOT / "figures", "figures")
    yield from (("figures/worked", law.value) for law in Law)
    for worked in figures().values():
        # What is put together of texts of other modules is known as a whole.
        yield from (("figures/worked", text) for text in _constants(worked.work.__module__))
        yield "figures/about", worked.title
        yield "figures/about", worked.about
    for arrangement in arrangements().values():
        yield "arrangements", arrangement.title.template
        yield "arrangements", arrangement.says.template
        yield "arrangements", str(arrangement.group)
    for check in checks().values():
        yield "checks/titles", check.lesson.title
    for check in checks().values():
        lesson = check.lesson
        yield from (
            (f"checks/lessons/{check.topic}", text) for text in (lesson.flags, lesson.why, lesson.remedy)
        )
    for check in checks().values():
        yield "checks/sources", check.lesson.source
    for name in book_names():
        yield "rules", book(name).title
        # The commissioning sheet tells the source of what is tested by a limit.
        for limit in book(name).limits.values():
            yield from (("rules", limit.unit), ("rules", limit.source))
    for fault in faults().values():
        yield "lessons/slips", fault.happens
    for sample in sorted(data_path("samples").glob(f"*{ENDING}")):
        yield "samples", called(sample)


def _window() -> Iterator[tuple[str, str]]:
    for path in sorted((ROOT / "editor").rglob("*.py")):
        folder = path.relative_to(ROOT / "editor").parts[0].removesuffix(".py")
        for text in marked(_tree(path)):
            yield f"window/{folder}" if path.parent != ROOT / "editor" else "window", text
    for each in (*Appearance, *Shown, *By):
        yield "window", each.value
    yield "window", NAMES[Language.SYSTEM]


def _parts() -> Iterator[tuple[str, str]]:
    for group in Group:
        yield "parts", str(group)
    for kind in kinds().values():
        yield "parts", str(kind.title)
        yield "parts", str(kind.summary)
        for port in kind.ports:
            yield "parts", str(spoken(port.name))
        for field in kind.fields:
            yield from _field(field)
    for field in (*SHEET_FIELDS, *DESIGN_FIELDS, *PIPE_FIELDS, *CONTROL_FIELDS):
        yield from _field(field)


def _field(field: Field) -> Iterator[tuple[str, str]]:
    yield "parts", str(field.label)
    yield "parts", str(field.help)
    yield "parts", field.unit
    if field.type in (FieldType.CHOICE, FieldType.CHOICES):
        for choice in field.choices:
            yield "parts", str(spoken(choice))


def _row(path: Path, section: str) -> Iterator[tuple[str, str]]:
    files = sorted(path.rglob("*.py")) if path.is_dir() else [path] if path.suffix == ".py" else []
    for file in files:
        tree = _tree(file)
        below = file.relative_to(path).parts[:-1] if path.is_dir() else ()
        name = "/".join((section, *below))
        texts = prose(tree) if section in ALL_PROSE else marked(tree)
        yield from ((name, text) for text in texts)


def _constants(module: str) -> Iterator[str]:
    """The texts that a module has under names of its own, as they are put together when it is loaded."""
    for name, value in vars(import_module(module)).items():
        if name.isupper() and isinstance(value, str) and " " in value and not NO_PROSE.match(value):
            yield value


def _tree(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"))


def marked(tree: ast.AST) -> Iterator[str]:
    """The texts that a module marks for translation, in the order of its lines."""
    for call in _calls(tree):
        for argument in call.args[: MARKS.get(_name(call), 0)]:
            yield from (text for _, text in _literals(argument))


def prose(tree: ast.AST) -> Iterator[str]:
    """The texts that a module marks, and all literals that read like a text: some words with a space between.

    Templates are put together from pieces here and there; a piece is known without the space at its edges.
    """
    skipped: set[ast.AST] = set()
    for node in _nodes(tree):
        if isinstance(node, ast.Raise) or (isinstance(node, ast.Call) and _name(node) in INTERNAL):
            skipped.update(ast.walk(node))
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            skipped.add(node.value)
    named = {part for node in _calls(tree) if _name(node) in NAMING for part in node.args}
    is_marked = set(marked(tree))
    for node, text in _literals(tree):
        if node in named and _ONE_WORD.fullmatch(text):
            yield text
        if node not in skipped and (
            text in is_marked or (" " in text.strip() and not NO_PROSE.match(text.strip()))
        ):
            yield text


def _literals(tree: ast.AST) -> list[tuple[ast.Constant, str]]:
    inside = {
        part
        for node in _nodes(tree)
        if isinstance(node, ast.FormattedValue | ast.Compare)
        for part in ast.walk(node)
    }
    found = [
        (node, node.value)
        for node in _nodes(tree)
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and node not in inside
    ]
    return sorted(found, key=lambda each: (each[0].lineno, each[0].col_offset))


def _nodes(tree: ast.AST) -> Iterable[ast.AST]:
    """All that a tree is made of; a module is gone over several times."""
    return _of_module(tree) if isinstance(tree, ast.Module) else ast.walk(tree)


@lru_cache(maxsize=1)
def _of_module(tree: ast.Module) -> tuple[ast.AST, ...]:
    return tuple(ast.walk(tree))


def _calls(tree: ast.AST) -> list[ast.Call]:
    found = [node for node in _nodes(tree) if isinstance(node, ast.Call)]
    return sorted(found, key=lambda each: (each.lineno, each.col_offset))


def _name(call: ast.Call) -> str:
    if isinstance(call.func, ast.Name):
        return call.func.id
    return call.func.attr if isinstance(call.func, ast.Attribute) else ""
