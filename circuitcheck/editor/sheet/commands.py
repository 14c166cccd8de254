"""What is done to the selection as a whole, from a key or a menu: each a named step."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from circuitcheck.drawing import aligning, clipboard, edits
from circuitcheck.drawing.aligning import Side
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.pipes import inline_ports, set_corners
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.editor.sheet import shaping
from circuitcheck.editor.sheet.stage import Stage
from circuitcheck.editor.sheet.step_names import step_name
from circuitcheck.editor.translating import later, tr
from circuitcheck.geometry import Point
from circuitcheck.parts.tee import KIND as TEE
from circuitcheck.sheet.things import things

ASIDE = 2.0
"""How far from its original a copy lies, in squares across and down."""
NOTHING = later("Nothing is selected.")


def move(stage: Stage, dx: float, dy: float) -> None:
    """Move the selection by squares."""
    goes = {id for id in stage.selection if id not in stage.drawing.pipes} | {
        id for id in stage.selection & stage.drawing.pipes.keys() if _has_free_end(stage.drawing, id)
    }
    if not goes and len(stage.selection) == 1:
        (pipe,) = stage.selection
        if _shape(stage, pipe, dx, dy):
            return
    if not goes:
        stage.hint(tr("A pipe goes where its ends go: drag one of its runs, or move what it joins."))
        return
    _do(stage, later("Move"), goes, lambda drawing, ids: edits.move(drawing, ids, dx, dy))


def turn(stage: Stage) -> None:
    """Turn the selection by 90 degrees clockwise; one part that lies in a pipe, round in it."""
    if not _turn_round(stage):
        _do(stage, later("Turn"), stage.selection, edits.turn)


def mirror(stage: Stage) -> None:
    """Mirror the selection left to right; one part that lies in a pipe, turn it round in it."""
    if not _turn_round(stage):
        _do(stage, later("Mirror"), stage.selection, edits.mirror)


def remove(stage: Stage, verb: str = later("Remove")) -> None:
    """Take the selection out; a pipe it was cut into heals."""
    _do(stage, verb, stage.selection, edits.remove)


def align(stage: Stage, side: Side) -> None:
    """Bring the selected parts into one line."""
    _do(stage, later("Align"), _parts(stage), lambda drawing, ids: aligning.align(drawing, ids, side))


def spread(stage: Stage, *, across: bool) -> None:
    """Make the gaps between the selected parts alike."""
    _do(
        stage,
        later("Spread"),
        _parts(stage),
        lambda drawing, ids: aligning.distribute(drawing, ids, across=across),
    )


def route(stage: Stage) -> None:
    """Let the program route the selected pipes: corners set by hand go."""

    def routed(drawing: Drawing, ids: Iterable[str]) -> Drawing:
        for id in ids:
            drawing = set_corners(drawing, id, None)
        return drawing

    _do(stage, later("Route"), stage.selection & stage.drawing.pipes.keys(), routed)


def duplicate(stage: Stage) -> None:
    """Put what is selected in once more, a little aside."""
    taken = taken_piece(stage)
    if taken is not None:
        _put_in(stage, later("Duplicate"), taken, ASIDE, ASIDE)


def paste(stage: Stage, fragment: Drawing, at: Point) -> None:
    """Put a piece in with its middle at a place."""
    middle = clipboard.middle(fragment) or at
    _put_in(stage, later("Paste"), fragment, at.x - middle.x, at.y - middle.y)


def taken_piece(stage: Stage) -> Drawing | None:
    """What is selected as a drawing of its own; None, and the hint says so, where nothing is."""
    taken = clipboard.piece(stage.drawing, stage.selection)
    if clipboard.is_bare(taken):
        stage.hint(tr(NOTHING))
        return None
    return taken


def select_all(stage: Stage) -> None:
    """Select every part and pipe."""
    stage.select((*things(stage.drawing), *stage.drawing.pipes))


def chosen_hint(stage: Stage) -> str:
    """What the keys do now, for the status line."""
    count = len(stage.selection)
    if count == 0:
        return tr("Type a part’s name to place it.  Press on a port and drag to draw a pipe.")
    if count > 1:
        return tr(
            "{count} chosen.  R turns them, M mirrors them, arrow keys move them; Ctrl C copies them.",
            count=count,
        )
    (id,) = stage.selection
    if id in stage.drawing.pipes:
        return tr("Pipe chosen.  Drag a run to shape it, Delete takes it out.")
    title = things(stage.drawing)[id].kind.title
    return tr("{title} chosen.  R turns it, M mirrors it, arrow keys move it by one square.", title=tr(title))


def _turn_round(stage: Stage) -> bool:
    """Turn a part round whose two ends are in one pipe's line. Returns whether it is such a part."""
    drawing = stage.drawing
    part = drawing.components.get(next(iter(stage.selection))) if len(stage.selection) == 1 else None
    ports = None if part is None or part.kind is TEE else inline_ports(part.kind)
    if part is None or ports is None or len(part.kind.ports) != len(ports):
        return False
    if any(Joint(part.id, port) not in drawing.joined for port in ports):
        return False
    fitting = Fitting(drawing, None)
    fitting.turn_round(part.id)
    stage.commit(step_name(later("Turn round"), drawing, {part.id}), fitting.drawing)
    return True


def _parts(stage: Stage) -> frozenset[str]:
    """Of what is selected all but the pipes, which follow their parts."""
    return stage.selection - stage.drawing.pipes.keys()


def _put_in(stage: Stage, verb: str, fragment: Drawing, dx: float, dy: float) -> None:
    after, ids = clipboard.put_in(stage.drawing, fragment, dx, dy)
    stage.commit(step_name(verb, after, ids), after, ids)


def _shape(stage: Stage, pipe: str, dx: float, dy: float) -> bool:
    """Move the longest run of a pipe that lies across the way. Returns whether there is one."""
    line = stage.content.layout.routed(pipe)
    run = shaping.longest_across(line, dx, dy)
    if run is None:
        return False
    a = line[run]
    corners = shaping.with_run_at(line, run, Point(a.x + dx, a.y + dy))
    if corners is not None:
        stage.commit(later("Shape pipe"), set_corners(stage.drawing, pipe, corners))
    return True


def _do(
    stage: Stage, verb: str, ids: Iterable[str], edit: Callable[[Drawing, Iterable[str]], Drawing]
) -> None:
    chosen = frozenset(ids)
    if not chosen:
        stage.hint(tr(NOTHING))
        return
    after = stage.tried(lambda: edit(stage.drawing, chosen))
    if after is not None:
        stage.commit(step_name(verb, stage.drawing, chosen), after)


def _has_free_end(drawing: Drawing, pipe: str) -> bool:
    return any(isinstance(end, Point) for end in drawing.pipes[pipe].ends)
