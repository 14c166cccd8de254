"""The Drawing: an immutable value that holds a circuit as it is drawn."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, fields
from functools import cache, cached_property
from types import MappingProxyType
from typing import Any, NamedTuple, TypeVar, cast

from circuitcheck.geometry import Point, turned
from circuitcheck.parts.kind import Kind, reckoned
from circuitcheck.told import Told, worded

EMPTY: Mapping[str, Any] = MappingProxyType({})
FORMAT_VERSION = 1
OPEN, SETTLED = "open", "settled"
"""The states of a note."""

Kept = TypeVar("Kept")


def _empty() -> Mapping[str, Any]:
    return EMPTY


class Joint(NamedTuple):
    """A pipe's end on a port of a part."""

    part: str
    port: str


End = Joint | Point
"""A pipe's end: on a port, or free at a place on the sheet."""


@dataclass(frozen=True, slots=True)
class Component:
    """A part on the water. `at` None: not placed on the sheet. `extra` holds unknown fields."""

    id: str
    kind: Kind
    label: str = ""
    at: Point | None = None
    turn: int = 0
    mirrored: bool = False
    data: Mapping[str, Any] = field(default_factory=_empty)
    extra: Mapping[str, Any] = field(default_factory=_empty)

    def value(self, name: str) -> Any:
        """A data field's value: as given, else its default, else None (not known yet); a number beyond all
        that can be measured as one reckons with it."""
        return reckoned(self.data[name]) if name in self.data else self.kind.field(name).default

    def port_at(self, port: str) -> Point | None:
        """Where a port lies on the sheet; None where the part is not placed."""
        if self.at is None:
            return None
        dx, dy = turned(self.kind.port(port).at, self.turn, self.mirrored)
        return Point(self.at.x + dx, self.at.y + dy)

    def port_faces(self, port: str) -> tuple[int, int] | None:
        """The unit step in which a pipe leaves the port; None where it may leave any way."""
        faces = self.kind.port(port).faces
        if faces is None:
            return None
        dx, dy = turned(faces, self.turn, self.mirrored)
        return int(dx), int(dy)

    def box(self) -> tuple[float, float, float, float] | None:
        """The footprint as (left, top, right, bottom) in squares; None where not placed."""
        if self.at is None:
            return None
        width, height = self.kind.size if self.turn in (0, 180) else self.kind.size[::-1]
        return (
            self.at.x - width / 2,
            self.at.y - height / 2,
            self.at.x + width / 2,
            self.at.y + height / 2,
        )

    @property
    def name(self) -> str:
        """What to call it in a sentence: its label on one line, else its kind and id."""
        return on_one_line(self.label) or _by_kind(self)


def on_one_line(text: str) -> str:
    """A text as it stands in a sentence, whatever breaks of lines its file has in it; empty where it is blank."""
    return " ".join(text.split())


def _by_kind(thing: Component | Control) -> str:
    kind, id = thing.kind, thing.id
    return Told(f"{_called(kind)} {id}", lambda tongue: f"{tongue.lower(tongue.text(kind.title))} {id}")


def english_names(parts: Iterable[Component]) -> list[str]:
    """What to call each of these in English alone: for thousands of parts, that are seldom told in another
    language."""
    return [on_one_line(part.label) or f"{_called(part.kind)} {part.id}" for part in parts]


@cache
def _called(kind: Kind) -> str:
    """A kind's title as it stands in a sentence."""
    return kind.title.lower()


@dataclass(frozen=True, slots=True)
class Pipe:
    """A pipe between two ends. `via` None: the program routes it; else the corners a person set."""

    id: str
    ends: tuple[End, End]
    via: tuple[Point, ...] | None = None
    data: Mapping[str, Any] = field(default_factory=_empty)
    extra: Mapping[str, Any] = field(default_factory=_empty)

    @property
    def joints(self) -> tuple[Joint, ...]:
        """The ends that are on ports, first end first."""
        return tuple(end for end in self.ends if isinstance(end, Joint))


@dataclass(frozen=True, slots=True)
class Control:
    """A control: a thermostat or a programmer. Not on the water; `acts_on` names valves and pumps."""

    id: str
    kind: Kind
    label: str = ""
    at: Point | None = None
    acts_on: tuple[str, ...] = ()
    in_same_room_as: tuple[str, ...] = ()
    set_c: float | None = None
    extra: Mapping[str, Any] = field(default_factory=_empty)


@dataclass(frozen=True, slots=True)
class Reply:
    """An answer to a note."""

    author: str = ""
    date: str = ""
    text: str = ""
    extra: Mapping[str, Any] = field(default_factory=_empty)


@dataclass(frozen=True, slots=True)
class Note:
    """A note pinned to parts; kept though a part of it be gone."""

    id: str
    on: tuple[str, ...] = ()
    author: str = ""
    date: str = ""
    text: str = ""
    state: str = OPEN
    replies: tuple[Reply, ...] = ()
    extra: Mapping[str, Any] = field(default_factory=_empty)

    @property
    def is_open(self) -> bool:
        """Whether nobody has settled it."""
        return self.state == OPEN


@dataclass(frozen=True, slots=True)
class Acceptance:
    """A finding accepted with a reason and a name, up to and on the day `until`."""

    check: str
    on: tuple[str, ...] = ()
    reason: str = ""
    author: str = ""
    date: str = ""
    until: str | None = None
    extra: Mapping[str, Any] = field(default_factory=_empty)


@dataclass(frozen=True, slots=True)
class Review:
    """A review record: who looked, what they decided, and digests of what they saw."""

    author: str = ""
    role: str = ""
    date: str = ""
    decision: str = ""
    remarks: str = ""
    program: str = ""
    rule_book: str = ""
    meaning: str = ""
    layout: str = ""
    findings: str = ""
    previous: str = ""
    extra: Mapping[str, Any] = field(default_factory=_empty)


REVIEW_FIELDS = tuple(each.name for each in fields(Review) if each.name != "extra")
"""What a review record says of itself, in the order in which a file has it."""


@dataclass(frozen=True)
class Drawing:
    """A circuit as drawn. Maps keep the order of the file; an edit makes a new Drawing.

    `sheet` and `design` hold data as given; their fields are in `drawing.fields`. `extra` holds
    fields of the file that this program does not know.
    """

    title: str = ""
    sheet: Mapping[str, Any] = field(default_factory=_empty)
    design: Mapping[str, Any] = field(default_factory=_empty)
    components: Mapping[str, Component] = field(default_factory=_empty)
    pipes: Mapping[str, Pipe] = field(default_factory=_empty)
    controls: Mapping[str, Control] = field(default_factory=_empty)
    notes: tuple[Note, ...] = ()
    acceptances: tuple[Acceptance, ...] = ()
    reviews: tuple[Review, ...] = ()
    extra: Mapping[str, Any] = field(default_factory=_empty)

    @property
    def is_empty(self) -> bool:
        """Whether nothing is drawn."""
        return not (self.components or self.pipes or self.controls)

    @cached_property
    def joined(self) -> Mapping[Joint, str]:
        """The pipe on each joined port, by (part, port)."""
        found: dict[Joint, str] = {}
        for pipe in self.pipes.values():
            for end in pipe.ends:
                if isinstance(end, Joint):
                    found[end] = pipe.id
        return MappingProxyType(found)

    def keep(self, name: str, worked_out: Kept) -> Kept:
        """Keep what was worked out of this very value, where another working out could end otherwise. Whoever
        comes second, from another thread too, gets what the first one kept."""
        return cast(Kept, self.__dict__.setdefault(f"kept {name}", worked_out))

    def kept(self, name: str) -> Any:
        """What is kept by that name; None for nothing."""
        return self.__dict__.get(f"kept {name}")

    def pipes_of(self, part: str) -> tuple[str, ...]:
        """The pipes on a part's ports, in the order of the ports."""
        kind = self.components[part].kind
        ids = (self.joined.get(Joint(part, port.name)) for port in kind.ports)
        return tuple(dict.fromkeys(id for id in ids if id is not None))

    def end_at(self, end: End) -> Point | None:
        """Where an end lies on the sheet; None on a part that is not placed."""
        if isinstance(end, Joint):
            return self.components[end.part].port_at(end.port)
        return end

    def names(self, ids: Sequence[str]) -> list[str]:
        """What to call each of these."""
        return [self.name(id) for id in ids]

    def name(self, id: str) -> str:
        """What to call a part, pipe or control in a sentence. Raises KeyError for no such id."""
        if id in self.components:
            return self.components[id].name
        if id in self.pipes:
            return worded("pipe {id}", id=id)
        control = self.controls[id]
        return on_one_line(control.label) or _by_kind(control)
