"""Where a part would stand that is to go with what is selected."""

from __future__ import annotations

from itertools import pairwise

from circuitcheck.editor.sheet.stage import Stage
from circuitcheck.geometry import Point, distance
from circuitcheck.picture.marks import SQUARE_PX
from circuitcheck.sheet.layout import symbol_box
from circuitcheck.sheet.things import things

ROOM = 3.0
"""How far from the edge of what is selected, in squares."""


def beside_selection(stage: Stage) -> Point | None:
    """On a pipe that is selected alone the middle of its longest run; to the right of all else."""
    if len(stage.selection) == 1:
        (id,) = stage.selection
        line = stage.content.layout.routes.get(id)
        if line is not None and len(line) > 1:
            a, b = max(pairwise(line), key=lambda run: distance(*run))
            return Point(float(round((a.x + b.x) / 2)), float(round((a.y + b.y) / 2)))
    known = things(stage.drawing)
    chosen = [(known[id], box) for id in stage.selection if id in known and (box := symbol_box(known[id]))]
    if not chosen:
        return None
    thing, box = max(chosen, key=lambda each: each[1][2])
    return None if thing.at is None else Point(float(round(box[2] / SQUARE_PX)) + ROOM, thing.at.y)
