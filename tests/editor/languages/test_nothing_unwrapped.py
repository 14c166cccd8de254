"""What the window says goes through translation: no text is handed to Qt as it is written in the code."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import circuitcheck
from tests.editor.languages.showing import MARKS

EDITOR = Path(circuitcheck.__file__).parent / "editor"
SAYING = re.compile(
    r"set(Text|InformativeText|DetailedText|ToolTip|StatusTip|WhatsThis|WindowTitle|Title|AccessibleName|"
    r"AccessibleDescription|PlaceholderText|ItemText|TabText|Suffix|Prefix|HorizontalHeaderLabels|HeaderLabels)|"
    r"add(Action|Menu|Tab|Item|Items|Row|Button|Section)|insert(Tab|Item)|message|showMessage|show_hint|hint|say|"
    r"label|link|button|set_tip|tip_text|action_text|set_column_tip|emit|commit|do|_do|step_name|_made|_action|"
    r"get(Open|Save)FileName|Q(Label|Action|Menu|PushButton|ToolButton|CheckBox|RadioButton|GroupBox|DockWidget|"
    r"TreeWidgetItem|StandardItem|ListWidgetItem)|Section|Step|Offer|Card|Rows|raise_|PasteError|EditError"
)
"""Calls that show what they are given, or keep it to be shown: names of steps, refusals."""
WORDS = re.compile(r"[A-Za-z]{2,}.* .*[A-Za-z]{2,}|[A-Z][a-z]{2,}")
KEYS = re.compile(r"((Ctrl|Shift|Alt)\+)+\w+|F\d+|Ins|Escape")
KEPT = {
    "circuitcheck",
    "PNG",
    "DrawingError",
}


def _texts(node: ast.AST) -> Iterator[tuple[int, str]]:
    """The literals that a call is given, but for those that are marked or belong to another call."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.lineno, node.value
    elif isinstance(node, ast.JoinedStr | ast.BinOp | ast.BoolOp | ast.List | ast.Tuple):
        for part in ast.iter_child_nodes(node):
            yield from _texts(part)
    elif isinstance(node, ast.IfExp):
        yield from _texts(node.body)
        yield from _texts(node.orelse)


def _name(call: ast.Call) -> str:
    if isinstance(call.func, ast.Name):
        return call.func.id
    return call.func.attr if isinstance(call.func, ast.Attribute) else ""


@cache
def parsed(code: str) -> ast.Module:
    """The tree of a module, which two tests go over."""
    return ast.parse(code)


def unwrapped(code: str) -> list[str]:
    """The texts that the code shows and does not mark, each with its line."""
    found = []
    for node in ast.walk(parsed(code)):
        if not isinstance(node, ast.Call) or _name(node) in MARKS or not SAYING.fullmatch(_name(node)):
            continue
        for argument in (*node.args, *(each.value for each in node.keywords)):
            found += [
                f"{line}: {text}"
                for line, text in _texts(argument)
                if WORDS.search(text) and not KEYS.fullmatch(text) and text not in KEPT
            ]
    return found


def test_every_text_is_marked() -> None:
    found = {
        str(path.relative_to(EDITOR)): texts
        for path in sorted(EDITOR.rglob("*.py"))
        if (texts := unwrapped(path.read_text(encoding="utf-8")))
    }
    assert not found


def too_early(code: str) -> list[int]:
    """The lines on which a text is translated as the module is loaded, before the language is known."""
    return [
        node.lineno
        for node in _at_once(parsed(code))
        if isinstance(node, ast.Call) and _name(node) in ("tr", "tr_n")
    ]


def _at_once(node: ast.AST) -> Iterator[ast.AST]:
    """What is run as the module is loaded: all but what stands in functions."""
    yield node
    later: list[ast.AST] = []
    if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
        later = [*node.body]
    elif isinstance(node, ast.Lambda):
        later = [node.body]
    for part in ast.iter_child_nodes(node):
        if part not in later:
            yield from _at_once(part)


def test_no_text_is_translated_before_the_language_is_known() -> None:
    found = {
        str(path.relative_to(EDITOR)): lines
        for path in sorted(EDITOR.rglob("*.py"))
        if (lines := too_early(path.read_text(encoding="utf-8")))
    }
    assert not found
    assert too_early('NAME = tr("Pipe")') == [1]
    assert too_early('def f(name: str = tr("Pipe")) -> str:\n    return tr(name)') == [1]


def test_the_search_itself() -> None:
    assert unwrapped('label.setText("Not known")') == ["1: Not known"]
    assert unwrapped('QLabel(f"{count} parts here")') == ["1:  parts here"]
    assert unwrapped('x.setText("Pipe" if y else tr("Part"))') == ["1: Pipe"]
    assert unwrapped('x.setShortcut("Ctrl+L"); y.setText(tr("Pipe")); z.setObjectName("Parts list")') == []
