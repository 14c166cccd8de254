"""Whether a review record still holds, and if not, what broke it and what changed since."""

from __future__ import annotations

import json
from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING, Any

from circuitcheck.analysis import rule_book
from circuitcheck.drawing.value import Drawing, Review
from circuitcheck.review.canonical import Object, canonical, digest, layout, meaning
from circuitcheck.review.comparing import Comparison, compare
from circuitcheck.review.record import (
    finding_objects,
    program,
    record_digest,
    said_of,
    texts_of,
)

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis


class Seal(StrEnum):
    """What holding one digest against the drawing gives."""

    HOLDS = "holds"
    BROKEN = "broken"
    ABSENT = "absent"
    OTHER_PROGRAM = "judged by another program"
    UNTOLD = "cannot be told"


@dataclass(frozen=True)
class Held:
    """A record held against a drawing, digest by digest.

    `findings` is OTHER_PROGRAM where the record's own words, the notes and the acceptances are as they
    were, but its findings were worked out by another version or rule book and are not told again; UNTOLD
    where such a record has lost the texts that would tell. `since` is what changed since, where the record
    tells how the drawing was.
    """

    review: Review
    meaning: Seal
    layout: Seal
    findings: Seal
    previous: Seal
    since: Comparison | None = None

    @property
    def holds(self) -> bool:
        """Whether nothing is broken and all of the drawing is covered."""
        seals = {self.meaning, self.layout, self.findings, self.previous}
        return seals <= {Seal.HOLDS, Seal.OTHER_PROGRAM}

    @property
    def broken(self) -> tuple[str, ...]:
        """The names of the digests that are broken."""
        names = ("meaning", "layout", "findings", "previous")
        return tuple(name for name in names if getattr(self, name) is Seal.BROKEN)

    @property
    def state(self) -> str:
        """`holds`, `broken`, or `incomplete` where digests are missing from the record."""
        if self.broken:
            return "broken"
        return "holds" if self.holds else "incomplete"

    @property
    def circuit_is_as_reviewed(self) -> bool:
        """Whether what is there is what was reviewed, wherever it stands and whatever was said since."""
        return self.meaning is Seal.HOLDS


def held(drawing: Drawing, analysis: Analysis | None = None) -> tuple[Held, ...]:
    """Every record of the drawing, oldest first, held against the drawing as it stands.

    `analysis` of that drawing saves judging it again.
    """
    if not drawing.reviews:
        return ()
    now = _Now(drawing, analysis)
    return tuple(_held(now, place) for place in range(len(drawing.reviews)))


def seen_drawing(review: Review) -> Drawing | None:
    """The drawing as the record saw it; None where the record does not tell, or tells what it did not see."""
    from circuitcheck.storage.reading import DrawingError, parse

    texts = texts_of(review)
    if "meaning" not in texts or "layout" not in texts:
        return None
    try:
        content = _as_file(*(_content(texts.get(name, "{}")) for name in ("meaning", "layout", "findings")))
        return parse(json.dumps(content).encode(), "review record")
    except (DrawingError, KeyError, TypeError, AttributeError):
        # A record of another program may put the texts together otherwise.
        return None


class _Now:
    """The drawing's own texts, each worked out once for all records and only if asked for."""

    def __init__(self, drawing: Drawing, analysis: Analysis | None) -> None:
        self.drawing = drawing
        self._analysis = analysis
        self.meaning = digest(canonical(meaning(drawing)))
        self.layout = digest(canonical(layout(drawing)))
        self._findings: list[Object] | None = None

    @property
    def findings(self) -> list[Object]:
        if self._findings is None:
            self._findings = finding_objects(self.drawing, self._analysis)
        return self._findings


def _held(now: _Now, place: int) -> Held:
    review = now.drawing.reviews[place]
    seals = {
        "meaning": _seal(review.meaning, now.meaning),
        "layout": _seal(review.layout, now.layout),
        "findings": _findings_seal(now, review),
        "previous": _previous_seal(now.drawing, place),
    }
    before = seen_drawing(review) if Seal.BROKEN in seals.values() else None
    return Held(
        review, **seals, since=None if before is None else compare(before, _without_records(now.drawing))
    )


def _seal(digest: str, now: str) -> Seal:
    if not digest:
        return Seal.ABSENT
    return Seal.HOLDS if digest.lower() == now else Seal.BROKEN


def _previous_seal(drawing: Drawing, place: int) -> Seal:
    kept = drawing.reviews[place].previous
    due = record_digest(drawing.reviews[place - 1]) if place else ""
    return Seal.HOLDS if kept.lower() == due else Seal.BROKEN


def _findings_seal(now: _Now, review: Review) -> Seal:
    if not review.findings:
        return Seal.ABSENT
    if review.program == program() and review.rule_book == rule_book(now.drawing):
        return _seal(review.findings, digest(canonical(said_of(now.drawing, review, now.findings))))
    text = texts_of(review).get("findings")
    if text is None:
        return Seal.UNTOLD
    said = said_of(now.drawing, review, _content(text).get("findings", []))
    return Seal.OTHER_PROGRAM if digest(canonical(said)) == review.findings.lower() else Seal.BROKEN


def _content(text: str) -> Object:
    told: Object = json.loads(text)
    return told["content"] if "large_numbers" in told else told


def _as_file(meaning: Object, layout: Object, findings: Object) -> Object:
    """The texts put together as a drawing file has it."""
    return {
        "wetcircuit": meaning["wetcircuit"],
        "title": meaning["title"],
        "sheet": layout["sheet"],
        "design": meaning["design"],
        **{
            name: [_item(id, each, layout[name].get(id, {})) for id, each in meaning[name].items()]
            for name in ("components", "controls")
        },
        "pipes": [_pipe(id, each, layout["pipes"].get(id, {})) for id, each in meaning["pipes"].items()],
        "notes": [{"id": id, **_note(each)} for id, each in findings.get("notes", {}).items()],
        "acceptances": [_open(each) for each in findings.get("acceptances", [])],
        **meaning["extra"],
    }


def _item(id: str, said: Object, lies: Object) -> Object:
    return {"id": id, **lies, **_open(said)}


def _pipe(id: str, said: Object, lies: Object) -> Object:
    free_ends = lies.get("free_ends", [None, None])
    ends: list[Any] = [end or free for end, free in zip(said["ends"], free_ends, strict=True)]
    return {**_open(said), "id": id, "ends": ends, "via": lies.get("via")}


def _note(said: Object) -> Object:
    return {**_open(said), "replies": [_open(reply) for reply in said["replies"]]}


def _open(said: Object) -> Object:
    """An object with what is unknown of it among its own fields, and without what was worked out."""
    own = {name: each for name, each in said.items() if name not in ("extra", "measured")}
    return {**own, **said.get("extra", {})}


def _without_records(drawing: Drawing) -> Drawing:
    from circuitcheck.drawing.changing import changed

    return changed(drawing, reviews=())
