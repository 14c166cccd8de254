"""A hand that makes random steps: any edit of the program on anything in the drawing, by a seed."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date
from random import Random
from typing import Any

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing import aligning, arranging, clipboard, edits, filling_in, pipes, removing
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.value import Drawing, End, Joint
from circuitcheck.finding import Finding
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds
from circuitcheck.parts.kind import Field, FieldType
from circuitcheck.review import acceptances, notes
from circuitcheck.review.record import sign

DAY = date(2031, 5, 1)
TEXTS = (
    "",
    "Pump",
    "pump ",
    "<b>loft</b>",
    "=1+1",
    "Ünder ☃",
    "a" * 300,
    "two\nlines",
    "\u202egnol",
    "%s {x}",
)
NUMBERS = (None, 0, 0.1, 1, 3, 15, 22, 60, 90, 1e-9, 1e12, -5, 0.30000000000000004)
ROOM = 40


@dataclass
class RandomHand:
    """Makes steps of one drawing after the other; keeps a piece in hand between copying and pasting."""

    chance: Random
    piece: Drawing | None = None
    made: dict[str, int] = field(default_factory=dict)
    refused: dict[str, int] = field(default_factory=dict)

    def step(self, drawing: Drawing) -> Drawing:
        """The drawing after one more step, or as it is where the step is refused by an EditError."""
        name, edit = self.chance.choice(self.edits)
        try:
            after = edit(drawing)
        except EditError:
            self.refused[name] = self.refused.get(name, 0) + 1
            return drawing
        self.made[name] = self.made.get(name, 0) + 1
        return after

    @property
    def edits(self) -> list[tuple[str, Callable[[Drawing], Drawing]]]:
        """Every edit by its name; what makes a drawing grow comes more often."""
        often = [
            self.place,
            self.place,
            self.pipe,
            self.pipe,
            self.pipe_onto,
            self.cut_in,
            self.field,
            self.field,
        ]
        seldom = [
            self.move, self.turn, self.mirror, self.remove, self.align, self.distribute, self.rejoin, self.rejoin_onto,
            self.move_into, self.corners, self.relabel, self.control, self.change_control, self.pipe_field, self.clear,
            self.design, self.sheet, self.title, self.copy, self.paste, self.note, self.answer, self.settle, self.accept,
            self.sign, self.cure, self.remove_note,
        ]  # fmt: skip
        return [(edit.__name__, edit) for edit in (*often, *seldom)]

    # What is chosen from.

    def some(self, ids: Any) -> str:
        """One of these ids, now and then one that is not there."""
        known = list(ids)
        return (
            self.chance.choice(known) if known and self.chance.random() > 0.02 else "nothing-is-called-this"
        )

    def several(self, drawing: Drawing) -> list[str]:
        """A few parts, pipes and controls."""
        known = [*drawing.components, *drawing.pipes, *drawing.controls]
        return self.chance.sample(known, min(len(known), self.chance.randint(1, 5)))

    def spot(self) -> Point:
        """A place on the sheet; now and then far off."""
        if self.chance.random() < 0.02:
            return Point(self.chance.choice((-900, 1e6, 0.5)), self.chance.choice((1e5, -3.25)))
        return Point(self.chance.randint(0, ROOM), self.chance.randint(0, ROOM))

    def end(self, drawing: Drawing) -> End:
        """A port, mostly one that is free, or a place."""
        if not drawing.components or self.chance.random() < 0.15:
            return self.spot()
        ports = [Joint(id, port.name) for id, part in drawing.components.items() for port in part.kind.ports]
        free = [joint for joint in ports if joint not in drawing.joined]
        return self.chance.choice(free if free and self.chance.random() < 0.9 else ports)

    def value(self, of: Field) -> object:
        """A value for a field; now and then one that it does not take."""
        if self.chance.random() < 0.05:
            return self.chance.choice(("text", True, [1], -1))
        if of.type is FieldType.CHOICE:
            return self.chance.choice((*of.choices, None))
        if of.type is FieldType.SWITCH:
            return self.chance.choice((True, False, None))
        return self.chance.choice(NUMBERS if of.type is FieldType.NUMBER else TEXTS)

    # The edits.

    def place(self, drawing: Drawing) -> Drawing:
        kind = self.chance.choice([each for each in kinds().values() if not each.is_control])
        turn, mirrored = self.chance.choice((0, 90, 180, 270)), self.chance.random() < 0.3
        return edits.place(drawing, kind, self.spot(), turn=turn, mirrored=mirrored)[0]

    def pipe(self, drawing: Drawing) -> Drawing:
        return pipes.draw_pipe(drawing, self.end(drawing), self.end(drawing))[0]

    def pipe_onto(self, drawing: Drawing) -> Drawing:
        return pipes.draw_pipe_onto(drawing, self.end(drawing), self.some(drawing.pipes), self.spot())[0]

    def cut_in(self, drawing: Drawing) -> Drawing:
        kind = self.chance.choice([each for each in kinds().values() if not each.is_control])
        pipe, round_ = self.some(drawing.pipes), self.chance.random() < 0.5
        return pipes.cut_in(drawing, pipe, kind, self.spot(), turned_round=round_)[0]

    def move_into(self, drawing: Drawing) -> Drawing:
        return pipes.move_into(drawing, self.some(drawing.pipes), self.some(drawing.components), self.spot())

    def rejoin(self, drawing: Drawing) -> Drawing:
        return pipes.join(drawing, self.some(drawing.pipes), self.chance.randint(0, 1), self.end(drawing))

    def rejoin_onto(self, drawing: Drawing) -> Drawing:
        pipe, onto = self.some(drawing.pipes), self.some(drawing.pipes)
        return pipes.join_onto(drawing, pipe, self.chance.randint(0, 1), onto, self.spot())

    def corners(self, drawing: Drawing) -> Drawing:
        via = None if self.chance.random() < 0.3 else [self.spot() for _ in range(self.chance.randint(0, 3))]
        return pipes.set_corners(drawing, self.some(drawing.pipes), via)

    def move(self, drawing: Drawing) -> Drawing:
        return arranging.move(
            drawing, self.several(drawing), self.chance.randint(-9, 9), self.chance.randint(-9, 9)
        )

    def turn(self, drawing: Drawing) -> Drawing:
        return arranging.turn(drawing, self.several(drawing))

    def mirror(self, drawing: Drawing) -> Drawing:
        return arranging.mirror(drawing, self.several(drawing))

    def align(self, drawing: Drawing) -> Drawing:
        return aligning.align(drawing, self.several(drawing), self.chance.choice(list(aligning.Side)))

    def distribute(self, drawing: Drawing) -> Drawing:
        return aligning.distribute(drawing, self.several(drawing), across=self.chance.random() < 0.5)

    def remove(self, drawing: Drawing) -> Drawing:
        return removing.remove(drawing, self.several(drawing)[:2])

    def relabel(self, drawing: Drawing) -> Drawing:
        return edits.relabel(
            drawing, self.some((*drawing.components, *drawing.controls)), self.chance.choice(TEXTS)
        )

    def field(self, drawing: Drawing) -> Drawing:
        part = self.some(drawing.components)
        known = drawing.components[part].kind.fields if part in drawing.components else PIPE_FIELDS
        of = self.chance.choice(known)
        return filling_in.set_field(drawing, part, of.name, self.value(of))

    def clear(self, drawing: Drawing) -> Drawing:
        part = self.some(drawing.components)
        data = drawing.components[part].data if part in drawing.components else {}
        return filling_in.clear_field(drawing, part, self.chance.choice([*data, "note"]))

    def pipe_field(self, drawing: Drawing) -> Drawing:
        of = self.chance.choice(PIPE_FIELDS)
        return filling_in.set_field(drawing, self.some(drawing.pipes), of.name, self.value(of))

    def design(self, drawing: Drawing) -> Drawing:
        of = self.chance.choice(DESIGN_FIELDS)
        return filling_in.set_design(drawing, of.name, self.value(of))

    def sheet(self, drawing: Drawing) -> Drawing:
        of = self.chance.choice(SHEET_FIELDS)
        return filling_in.set_sheet(drawing, of.name, self.value(of))

    def title(self, drawing: Drawing) -> Drawing:
        return filling_in.set_title(drawing, self.chance.choice(TEXTS))

    def control(self, drawing: Drawing) -> Drawing:
        kind = self.chance.choice([each for each in kinds().values() if each.is_control])
        acts_on = [self.some(drawing.components)]
        return edits.add_control(
            drawing, kind, acts_on=acts_on, at=self.spot(), label=self.chance.choice(TEXTS)
        )[0]

    def change_control(self, drawing: Drawing) -> Drawing:
        control, part = self.some(drawing.controls), [self.some(drawing.components)]
        changes = (
            {"acts_on": part},
            {"in_same_room_as": part},
            {"set_c": self.chance.choice(NUMBERS)},
            {"at": None},
        )
        return edits.change_control(drawing, control, **self.chance.choice(changes))

    def copy(self, drawing: Drawing) -> Drawing:
        self.piece = clipboard.piece(drawing, self.several(drawing))
        return drawing

    def paste(self, drawing: Drawing) -> Drawing:
        if self.piece is None:
            return drawing
        return clipboard.put_in(drawing, self.piece, self.chance.randint(-9, 9), self.chance.randint(-9, 9))[
            0
        ]

    def note(self, drawing: Drawing) -> Drawing:
        author, text = self.chance.choice(("A. Looker", "")), self.chance.choice(TEXTS)
        return notes.add_note(drawing, self.several(drawing)[:2], author, DAY, text)[0]

    def answer(self, drawing: Drawing) -> Drawing:
        note = self.some(each.id for each in drawing.notes)
        return notes.answer_note(drawing, note, "A. Looker", DAY, self.chance.choice(TEXTS))

    def settle(self, drawing: Drawing) -> Drawing:
        turn = self.chance.choice((notes.settle_note, notes.reopen_note))
        return turn(drawing, self.some(each.id for each in drawing.notes))

    def remove_note(self, drawing: Drawing) -> Drawing:
        return notes.remove_note(drawing, self.some(each.id for each in drawing.notes))

    def accept(self, drawing: Drawing) -> Drawing:
        finding = self._finding(drawing) if self.chance.random() < 0.3 else None
        if finding is None:
            return drawing
        return acceptances.accept(drawing, finding, self.chance.choice(TEXTS), "A. Looker", DAY)

    def sign(self, drawing: Drawing) -> Drawing:
        return sign(
            drawing, "A. Looker", DAY, "accepted", role="supervisor", remarks=self.chance.choice(TEXTS)
        )

    def cure(self, drawing: Drawing) -> Drawing:
        if self.chance.random() > 0.3:
            return drawing
        finding = self._finding(drawing)
        offered = cures(analyse(drawing), finding) if finding is not None else ()
        return offered[0].drawing if offered else drawing

    def _finding(self, drawing: Drawing) -> Finding | None:
        found = analyse(drawing).findings
        return self.chance.choice(found) if found else None
