"""What must hold of a window whatever was done in it."""

from __future__ import annotations

from circuitcheck.analysis import analyse
from circuitcheck.editor.window import MainWindow
from circuitcheck.storage.reading import parse
from circuitcheck.storage.writing import dump
from tests.drawing.invariants import broken
from tests.editor.held_items import held_items


class BrokenError(Exception):
    """A window shows or holds what it must not."""


def require(holds: bool, what: str) -> None:
    """Raise where it does not hold."""
    if not holds:
        raise BrokenError(what)


def look_at(window: MainWindow) -> None:
    """The drawing is whole, what is chosen is in it, and nothing is held that Qt deletes unseen."""
    drawing = window.document.drawing
    wrong = broken(drawing)
    require(not wrong, f"{wrong}")
    known = {*drawing.components, *drawing.pipes, *drawing.controls}
    require(window.sheet.selected_ids() <= known, "something is chosen that is not in the drawing")
    require(not held_items(), "items of layouts are held")


def look_closely_at(window: MainWindow) -> None:
    """It can be saved and read again as it is, and its findings are those of a fresh start."""
    document = window.document
    written = dump(document.drawing)
    again = parse(written, "what would be saved")
    require(dump(again) == written, "what is saved is not what is read again")
    if document.analysis is not None:
        fresh = analyse(again)
        told = [(each, each.message) for each in document.analysis.findings]
        require(
            told == [(each, each.message) for each in fresh.findings],
            "the findings are not those of a fresh start",
        )


def undo_all_and_redo(window: MainWindow) -> int:
    """Undo to the first drawing and redo to the last: byte for byte the same. Returns the number of steps."""
    document = window.document
    last, steps = dump(document.drawing), [dump(document.drawing)]
    while document.undo_text:
        document.undo()
        steps.append(dump(document.drawing))
    for earlier in reversed(steps[:-1]):
        require(bool(document.redo_text), "a step is lost")
        document.redo()
        require(dump(document.drawing) == earlier, "a step made again gives another drawing")
    require(dump(document.drawing) == last, "undone and made again it is another drawing")
    return len(steps) - 1
