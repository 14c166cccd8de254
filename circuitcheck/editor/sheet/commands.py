"""What is done to the selection as a whole, from a key or a menu: each a named step."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from circuitcheck.drawing import edits
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet.stage import Stage
from circuitcheck.editor.sheet.step_names import step_name
from circuitcheck.geometry import Point
from circuitcheck.sheet.layout import things

NOTHING = "Nothing is selected."


def move(stage: Stage, dx: float, dy: float) -> None:
    """Move the selection by squares."""
    goes = {id for id in stage.selection if id not in stage.drawing.pipes} | {
        id for id in stage.selection & stage.drawing.pipes.keys() if _has_free_end(stage.drawing, id)
    }
    if not goes:
        stage.hint("A pipe goes where its ends go: drag one of its runs, or move what it joins.")
        return
    _do(stage, "Move", goes, lambda drawing, ids: edits.move(drawing, ids, dx, dy))


def turn(stage: Stage) -> None:
    """Turn the selection by 90 degrees clockwise."""
    _do(stage, "Turn", stage.selection, edits.turn)


def mirror(stage: Stage) -> None:
    """Mirror the selection left to right."""
    _do(stage, "Mirror", stage.selection, edits.mirror)


def remove(stage: Stage) -> None:
    """Take the selection out; a pipe it was cut into heals."""
    _do(stage, "Remove", stage.selection, edits.remove)


def select_all(stage: Stage) -> None:
    """Select every part and pipe."""
    stage.select((*things(stage.drawing), *stage.drawing.pipes))


def chosen_hint(stage: Stage) -> str:
    """What the keys do now, for the status line."""
    count = len(stage.selection)
    if count == 0:
        return "Press on a port and drag to draw a pipe; drop a valve on a pipe to cut it in."
    if count > 1:
        return f"{count} chosen.  R turns them, M mirrors them, arrow keys move them by one square."
    (id,) = stage.selection
    if id in stage.drawing.pipes:
        return "Pipe chosen.  Drag a run to shape it, Delete takes it out."
    title = things(stage.drawing)[id].kind.title
    return f"{title} chosen.  R turns it, M mirrors it, arrow keys move it by one square."


def _do(
    stage: Stage, verb: str, ids: Iterable[str], edit: Callable[[Drawing, Iterable[str]], Drawing]
) -> None:
    chosen = frozenset(ids)
    if not chosen:
        stage.hint(NOTHING)
        return
    after = stage.tried(lambda: edit(stage.drawing, chosen))
    if after is not None:
        stage.commit(step_name(verb, stage.drawing, chosen), after)


def _has_free_end(drawing: Drawing, pipe: str) -> bool:
    return any(isinstance(end, Point) for end in drawing.pipes[pipe].ends)
