"""The names of steps, as undo and redo show them: what was done, and to what."""

from __future__ import annotations

from collections.abc import Collection

from circuitcheck.drawing.value import Drawing


def step_name(verb: str, drawing: Drawing, ids: Collection[str]) -> str:
    """`Move pump`, `Turn 3 parts`, `Remove pipe`, `Remove 2 parts and 3 pipes`."""
    parts = [id for id in ids if id in drawing.components or id in drawing.controls]
    pipes = [id for id in ids if id in drawing.pipes]
    if len(parts) == 1 and not pipes:
        return f"{verb} {kind_title(drawing, parts[0])}"
    if not parts and len(pipes) == 1:
        return f"{verb} pipe"
    counts = [
        f"{count} {word}{'' if count == 1 else 's'}"
        for count, word in ((len(parts), "part"), (len(pipes), "pipe"))
        if count
    ]
    return f"{verb} {' and '.join(counts)}"


def kind_title(drawing: Drawing, id: str) -> str:
    """What a part or a control is, in a sentence: `zone valve`."""
    thing = drawing.components.get(id) or drawing.controls[id]
    return thing.kind.title.lower()
