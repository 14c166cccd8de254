"""What a document says of one drawing, before anything decides how it looks."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

from circuitcheck.finding import Grade
from circuitcheck.report.parts import Row
from circuitcheck.sheet.pictures import Picture
from circuitcheck.told import ENGLISH, Tongue, a_word


@dataclass(frozen=True, slots=True)
class Found:
    """One finding. `shut` are the valves that prove it, each with how it comes to be shut.

    `accepted` says in one sentence by whom, until when and why; empty where nobody has.
    """

    grade: Grade
    grade_words: str
    title: str
    message: str
    where: tuple[str, ...]
    shut: tuple[str, ...] = ()
    alone: str = ""
    missing: tuple[str, ...] = ()
    why: str = ""
    remedy: str = ""
    source: str = ""
    cures: tuple[str, ...] = ()
    accepted: str = ""
    picture: Picture | None = None


@dataclass(frozen=True, slots=True)
class Accepted:
    """One acceptance of the file. `state` says whether it holds today, has run out, or matches nothing."""

    what: str
    where: str
    reason: str
    author: str
    date: str
    until: str
    state: str


@dataclass(frozen=True, slots=True)
class Judgement:
    """What was judged and what was not, so that silence is never taken for approval."""

    verdict: str
    judged: int
    counts: tuple[tuple[Grade, int], ...]
    silent: tuple[str, ...]
    not_judged: tuple[tuple[str, str], ...]
    not_applicable: tuple[str, ...]
    taken: tuple[str, ...]
    beyond: tuple[str, ...]
    crashed: int = 0


@dataclass(frozen=True, slots=True)
class Worked:
    """One figure with its working. `results`: name, value, unit; `inputs`: symbol, value, unit, name, origin."""

    title: str
    about: str
    results: tuple[tuple[str, str, str], ...]
    formula: str
    inputs: tuple[tuple[str, str, str, str, str], ...]
    rests_on: tuple[str, ...]
    source: str
    limits: str
    refused: str = ""
    missing: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Step:
    """One thing to do or to test. `expect` is what should be seen; `unit` what the box is filled in with,
    empty for a tick. `source` is a document, or "common practice, no source"."""

    what: str
    expect: str
    source: str
    unit: str = ""


@dataclass(frozen=True, slots=True)
class Stage:
    """The steps that belong together, in the order in which they are done."""

    title: str
    lead: str
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Running:
    """One situation of the plant: what stands open and shut, what runs, gets warm and stays cold.

    `flows`: part, litres a minute. `fault` says why flows are not told. `picture` shows them.
    """

    name: str
    open: tuple[str, ...]
    shut: tuple[str, ...]
    runs: tuple[str, ...]
    warm: str
    cold: str
    flows: tuple[tuple[str, str], ...] = ()
    gauge: str = ""
    fault: str = ""
    picture: Picture | None = None


@dataclass(frozen=True, slots=True)
class Commissioning:
    """The sheet to fill in while the plant is filled, started and tested."""

    stages: tuple[Stage, ...]
    situations: tuple[Running, ...]
    lacking: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class NoteTold:
    """One note with its replies, each as who, when and what."""

    where: str
    state: str
    says: tuple[tuple[str, str, str], ...]


@dataclass(frozen=True, slots=True)
class ReviewTold:
    """The review record: whether there is one and still holds, what it says, what it can't prove."""

    state: str
    holds: bool | None
    rows: tuple[tuple[str, str], ...] = ()
    changes: tuple[str, ...] = ()
    bounds: tuple[str, ...] = ()


CARE = a_word("An aid to competent people. A drawing without findings is not a certificate.")
"""What stands at the foot of every document."""


class Head(Protocol):
    """What a document says of itself on every page."""

    @property
    def title(self) -> str:
        """What it is of."""
        ...

    @property
    def file(self) -> str:
        """The name it came from."""
        ...

    @property
    def made_on(self) -> str:
        """The day, as its language writes it."""
        ...

    @property
    def day(self) -> str:
        """The same as in 2026-11-25, whatever the language."""
        ...

    @property
    def program(self) -> str:
        """What it was made with."""
        ...

    @property
    def tongue(self) -> Tongue:
        """The language in which its texts are told."""
        ...


@dataclass(frozen=True, slots=True)
class Content:
    """All that a document holds, its texts told in `tongue`. `day` is the day it is made on, as in 2026-11-25."""

    title: str
    plant: str
    file: str
    made_on: str
    program: str
    rule_book: str
    design: tuple[tuple[str, str], ...]
    drawing: Picture | None
    not_placed: tuple[str, ...]
    judgement: Judgement
    findings: tuple[Found, ...]
    acceptances: tuple[Accepted, ...]
    figures: tuple[Worked, ...]
    parts: tuple[Row, ...]
    parts_notes: tuple[str, ...]
    commissioning: Commissioning
    notes: tuple[NoteTold, ...]
    review: ReviewTold
    cautions: tuple[str, ...]
    tongue: Tongue = ENGLISH
    day: str = ""
