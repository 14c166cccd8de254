"""Every text that the window can show, by section: read from the code where it is written, or from its catalogues."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import circuitcheck
from circuitcheck.editor.translating import IS_TRANSLATED

ROOT = Path(circuitcheck.__file__).parent
MARKS = {"tr": 1, "tr_n": 2, "later": 1, "worded": 1, "worded_n": 2, "a_word": 1, "worded_of": 1}
"""Functions of the editor whose first so many arguments are texts."""


def all_texts() -> dict[str, str]:
    """Each text with its section, in the order of sections and of the code. A text stands in its first section."""
    found: dict[str, str] = {}
    for section, text in _each():
        if text:
            found.setdefault(text, section)
    return found


def _each() -> Iterator[tuple[str, str]]:
    yield from _window()


def _window() -> Iterator[tuple[str, str]]:
    for path in sorted((ROOT / "editor").rglob("*.py")):
        folder = path.relative_to(ROOT / "editor").parts[0].removesuffix(".py")
        tree = ast.parse(path.read_text(encoding="utf-8"))
        if path.name == "translating.py":
            yield "window", IS_TRANSLATED
        for text in marked(tree):
            yield f"window/{folder}" if path.parent != ROOT / "editor" else "window", text


def marked(tree: ast.AST) -> Iterator[str]:
    """The texts that a module of the editor marks for translation, in the order of its lines."""
    calls = [
        node for node in ast.walk(tree) if isinstance(node, ast.Call) and isinstance(node.func, ast.Name)
    ]
    for call in sorted(calls, key=lambda each: (each.lineno, each.col_offset)):
        name = call.func.id if isinstance(call.func, ast.Name) else ""
        for argument in call.args[: MARKS.get(name, 0)]:
            if isinstance(argument, ast.Constant) and isinstance(argument.value, str):
                yield argument.value
