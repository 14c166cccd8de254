"""The names of steps, as undo and redo show them: what was done, and to what."""

from __future__ import annotations

from collections.abc import Collection

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.translating import later, tr
from circuitcheck.told import a_word, listed, lower, worded, worded_n


def step_name(verb: str, drawing: Drawing, ids: Collection[str]) -> str:
    """`Move pump`, `Turn 3 parts`, `Remove pipe`, `Remove 2 parts and 3 pipes`."""
    parts = [id for id in ids if id in drawing.components or id in drawing.controls]
    pipes = [id for id in ids if id in drawing.pipes]
    if len(parts) == 1 and not pipes:
        return worded("{verb} {what}", verb=a_word(verb), what=kind_title(drawing, parts[0]))
    if not parts and len(pipes) == 1:
        return worded("{verb} {what}", verb=a_word(verb), what=a_word(later("pipe")))
    counts = [
        worded_n(tr("1 part"), tr("{count} parts"), len(parts)),
        worded_n(tr("1 pipe"), tr("{count} pipes"), len(pipes)),
    ]
    some = [each for each, ids in zip(counts, (parts, pipes), strict=True) if ids]
    return worded("{verb} {what}", verb=a_word(verb), what=listed(some))


def kind_title(drawing: Drawing, id: str) -> str:
    """What a part or a control is, in a sentence: `zone valve`."""
    thing = drawing.components.get(id) or drawing.controls[id]
    return lower(thing.kind.title)
