"""What a drawing leaves open, and what each number is needed for: the table to fill in, without the window.

Every data field of the design, the parts, the pipes and the controls is one question, asked once however
many checks need it. What a check needs comes first, by the grade its answer would have; then what figures
need; then what is not known and nothing needs; then usual values that verdicts rest on; then the rest.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from enum import IntEnum
from typing import Any, Final, NamedTuple

from circuitcheck.analysis import Analysis
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.fields import CONTROL_FIELDS, DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.measuring import bends, length_m
from circuitcheck.drawing.value import Component, Control, Drawing, Joint, Pipe
from circuitcheck.figures.figure import Figure
from circuitcheck.finding import Grade
from circuitcheck.parts.kind import Field, FieldType, Role
from circuitcheck.sizing.tube import bore_mm
from circuitcheck.told import a_word

DESIGN, SHEET = "design", "sheet"
UNKNOWN = "unknown"
"""The one named value that says what an empty field says."""
_PIPE_FIRST = frozenset({"size_mm", "length_m", "rise_m", "bends"})
_PLASTIC = "plastic"


class State(IntEnum):
    """How far a question is answered, in the order in which they are asked.

    `OPEN`: not known; `KEPT`: said to be not known; `USUAL`: left out, its usual value holds;
    `WORKED`: measured from the line or read from a table; `GIVEN`: the drawing states it.
    """

    OPEN = 0
    KEPT = 1
    USUAL = 2
    WORKED = 3
    GIVEN = 4

    @property
    def is_known(self) -> bool:
        """Whether there is a value to judge by."""
        return self >= State.USUAL


class _Absent:
    """The drawing does not state the field."""

    def __repr__(self) -> str:
        return "ABSENT"


ABSENT: Final = _Absent()


class Question(NamedTuple):
    """One field of one thing. `key` is `id.field`, as findings name it.

    `value` is what holds: as given, the usual one, the one worked out, or None. `held` is what the
    drawing states: a value, None or `ABSENT`. `how` says how a value that is `WORKED` came about.
    `urgency` puts the fields that matter to many figures first.
    """

    key: str
    subject: str
    field: Field
    state: State
    value: Any
    held: Any
    urgency: int
    how: str = ""


@dataclass(frozen=True, slots=True)
class Need:
    """A check or a figure that asks for a field: the grade its answer would have, in how many findings it
    asks, and whether it could judge nothing at all without. A figure has no grade but `unanswered`; it
    counts the things it is to be worked for."""

    check: str
    title: str
    grade: Grade
    findings: int
    is_silent: bool
    is_figure: bool = False


Needs = Mapping[str, tuple[Need, ...]]
Order = tuple[int, int, int, int, int]


def needs(analysis: Analysis, figures: Iterable[Figure] = ()) -> Needs:
    """What each field is needed for, by `id.field`; the heaviest need first, figures after checks."""
    counted: dict[str, dict[str, tuple[Grade, int]]] = defaultdict(dict)
    for finding in analysis.findings:
        grade = finding.would_be or finding.grade
        for key in dict.fromkeys(finding.missing):
            worst, count = counted[key].get(finding.check, (grade, 0))
            counted[key][finding.check] = (min(worst, grade, key=lambda each: each.rank), count + 1)
    silent = frozenset(analysis.why_not_judged)
    known = checks()
    found = {}
    for key, by_check in counted.items():
        asking = [
            Need(name, known[name].lesson.title if name in known else name, grade, count, name in silent)
            for name, (grade, count) in by_check.items()
        ]
        found[key] = tuple(sorted(asking, key=lambda need: (need.grade.rank, not need.is_silent, need.check)))
    for key, wanting in _figures_wanting(figures).items():
        found[key] = (*found.get(key, ()), *wanting)
    return found


def _figures_wanting(figures: Iterable[Figure]) -> Mapping[str, tuple[Need, ...]]:
    """The figures that cannot be worked without a field, each once."""
    counted: dict[str, dict[str, tuple[str, int]]] = defaultdict(dict)
    for figure in figures:
        for key in dict.fromkeys(figure.missing):
            _, count = counted[key].get(figure.name, ("", 0))
            counted[key][figure.name] = (figure.title, count + 1)
    return {
        key: tuple(
            Need(name, title, Grade.UNANSWERED, count, is_silent=False, is_figure=True)
            for name, (title, count) in sorted(by_figure.items())
        )
        for key, by_figure in counted.items()
    }


def rests_on(analysis: Analysis) -> frozenset[str]:
    """The fields whose usual value a verdict rests on, as `id.field`."""
    return frozenset(entry.partition(" = ")[0] for entry in analysis.taken)


def order(question: Question, asking: Needs, resting: frozenset[str]) -> Order:
    """Sort key: what is needed and not known, by the grade it would have and how many ask; then what is
    not known; then the usual values that verdicts rest on; then the rest. What was said to be not known
    comes after what nobody has said anything of."""
    if question.state >= State.USUAL:
        tier = 2 if question.key in resting else 3
        return (tier, question.state, 0, 0, question.urgency)
    needed = asking.get(question.key)
    if not needed:
        return (1, 0, question.state, 0, question.urgency)
    silent = sum(need.is_silent for need in needed)
    return (0, question.state, needed[0].grade.rank, -(100 * silent + len(needed)), question.urgency)


def in_order(questions: Iterable[Question], asking: Needs, resting: frozenset[str]) -> list[str]:
    """The keys in the order in which they are asked; those that weigh alike stay as the drawing has them."""
    alike: dict[Order, list[str]] = defaultdict(list)
    for question in questions:
        alike[order(question, asking, resting)].append(question.key)
    return [key for weight in sorted(alike) for key in alike[weight]]


class Asking:
    """The questions of a drawing, kept from one drawing to the next: what a step did not touch is not
    asked about anew. `all` holds every question by its key."""

    def __init__(self) -> None:
        self.all: dict[str, Question] = {}
        self._drawing = Drawing()
        self._keys: dict[str, tuple[str, ...]] = {}
        self._ask((DESIGN, SHEET))

    def take(self, drawing: Drawing) -> set[str]:
        """Go on to another state of the drawing; returns what was touched: ids, `design`, `sheet`."""
        before, self._drawing = self._drawing, drawing
        touched = touched_by(before, drawing)
        self._ask(touched)
        return touched

    def keys_of(self, subject: str) -> tuple[str, ...]:
        """The keys of a subject's questions; none for one that is gone."""
        return self._keys.get(subject, ())

    def _ask(self, subjects: Iterable[str]) -> None:
        for subject in subjects:
            found = {question.key: question for question in _of(self._drawing, subject)}
            for key in self._keys.pop(subject, ()):
                if key not in found:
                    del self.all[key]
            if found:
                self.all |= found
                self._keys[subject] = tuple(found)


def touched_by(before: Drawing, after: Drawing) -> set[str]:
    """What a step touched, and the pipes on it: whether they are measured, and what they are called,
    rests on the parts at their ends."""
    touched: set[str] = set()
    for old, new in (
        (before.components, after.components),
        (before.pipes, after.pipes),
        (before.controls, after.controls),
    ):
        touched |= _differing(old, new)
    if after.sheet is not before.sheet:
        touched |= {SHEET, *after.pipes}
    if after.design is not before.design:
        touched.add(DESIGN)
    for part in touched & after.components.keys():
        touched.update(after.pipes_of(part))
    return touched


def _differing(old: Mapping[str, object], new: Mapping[str, object]) -> set[str]:
    if old is new:
        return set()
    found = {id for id, thing in new.items() if old.get(id) is not thing}
    return found | (old.keys() - new.keys())


def _of(drawing: Drawing, subject: str) -> Iterator[Question]:
    if subject in drawing.components:
        yield from _of_part(drawing.components[subject])
    elif subject in drawing.pipes:
        yield from _of_pipe(drawing, drawing.pipes[subject])
    elif subject in drawing.controls:
        yield from _of_control(drawing.controls[subject])
    elif subject == DESIGN:
        for field in DESIGN_FIELDS:
            yield _question(DESIGN, field, drawing.design.get(field.name, ABSENT), 0)
    elif subject == SHEET:
        for field in SHEET_FIELDS:
            yield _question(SHEET, field, drawing.sheet.get(field.name, ABSENT), 6)


def _of_part(part: Component) -> Iterator[Question]:
    for field in part.kind.fields:
        if field.type is FieldType.TEXT:
            continue
        if field.name == "height_m":
            # A tee has no size, and its pipes carry its height on.
            urgency = 4 if part.kind.size != (0, 0) else 7
        else:
            urgency = 1 if field.name in part.kind.figure else 2
        yield _question(part.id, field, part.data.get(field.name, ABSENT), urgency)


def _of_pipe(drawing: Drawing, pipe: Pipe) -> Iterator[Question]:
    for field in PIPE_FIELDS:
        held = pipe.data.get(field.name, ABSENT)
        urgency = 3 if field.name in _PIPE_FIRST else 5
        if held is ABSENT or held is None:
            worked = _worked(drawing, pipe, field.name)
            if worked is not None:
                value, how = worked
                key = f"{pipe.id}.{field.name}"
                yield Question(key, pipe.id, field, State.WORKED, value, held, urgency, how)
                continue
        if held is ABSENT and not _applies(drawing, pipe, field.name):
            urgency = 8
        yield _question(pipe.id, field, held, urgency)


def _of_control(control: Control) -> Iterator[Question]:
    # A programmer keeps times, not a temperature.
    if "thermostat" in control.kind.name or control.set_c is not None:
        for field in CONTROL_FIELDS:
            held = ABSENT if control.set_c is None else control.set_c
            yield _question(control.id, field, held, 5)


def _question(subject: str, field: Field, held: Any, urgency: int) -> Question:
    key = f"{subject}.{field.name}"
    value = field.default if held is ABSENT else held
    if value is None or value == UNKNOWN:
        state = State.OPEN if held is ABSENT else State.KEPT
        return Question(key, subject, field, state, None, held, urgency)
    state = State.USUAL if held is ABSENT else State.GIVEN
    return Question(key, subject, field, state, value, held, urgency)


def _worked(drawing: Drawing, pipe: Pipe, name: str) -> tuple[float, str] | None:
    """What need not be asked: a length and bends measured from the line, the bore of standard tube."""
    if name == "length_m" and (measure := length_m(drawing, pipe)):
        return measure.value, measure.how
    if name == "bends" and (measure := bends(drawing, pipe)):
        return measure.value, measure.how
    size = pipe.data.get("size_mm")
    if name == "bore_mm" and size is not None:
        bore = bore_mm(pipe.data.get("material", "copper") or "", size)
        return None if bore is None else (bore, a_word("standard tube"))
    return None


def _applies(drawing: Drawing, pipe: Pipe, name: str) -> bool:
    """Whether a field can matter to a pipe like this one: a straight drop is that of a tundish's pipe."""
    if name == "straight_drop_m":
        return any(_is_tundish_outlet(drawing, joint) for joint in pipe.joints)
    if name == "heatproof":
        return pipe.data.get("material") == _PLASTIC
    return name != "bore_mm" or pipe.data.get("material") == _PLASTIC


def _is_tundish_outlet(drawing: Drawing, joint: Joint) -> bool:
    part = drawing.components[joint.part]
    return any(
        device.role is Role.SHOWS_DISCHARGE and device.other == joint.port
        for device in part.kind.devices(part.data)
    )
