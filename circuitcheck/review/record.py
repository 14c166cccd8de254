"""Review records: who looked at what, made, kept in the file, and held against the drawing as it stands.

A record holds four digests, each SHA-256 of a canonical text (`canonical`):

- `meaning`: what is there, whatever the order of the file;
- `layout`: where it stands on the sheet;
- `findings`: what the checks found in it, the acceptances and notes it had, and the record's own words;
- `previous`: the record before it in the file, so that none can be altered or taken out between two.

Beside them, in `seen`, it holds the first three texts themselves. They prove nothing that the digests do
not, but they let a broken record say what changed. Anybody can hash them again with any tool.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from datetime import date
from types import MappingProxyType
from typing import TYPE_CHECKING, Any

from circuitcheck.analysis import analyse, rule_book
from circuitcheck.drawing.changing import EditError, changed
from circuitcheck.drawing.value import Acceptance, Drawing, Note, Reply, Review
from circuitcheck.finding import Finding
from circuitcheck.review.canonical import Object, canonical, digest, layout, meaning, sorted_texts
from circuitcheck.shipped import version
from circuitcheck.told import a_word

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis

SEEN = "seen"
COVERS = a_word(
    "The record covers the whole drawing as it was on that day: every part and pipe with all its data, what "
    "is joined to what, the controls and the design figures; where each stands on the sheet; what the checks "
    "found; the notes and acceptances; and the record's own words. The order in which the file lists things "
    "is not covered, since it says nothing."
)
CANNOT_PROVE = a_word(
    "It cannot prove who made it: it carries no signature, and whoever can write the file can write another "
    "record in any name. It cannot prove that the last record was not taken out, that the numbers in the "
    "drawing are true, or that what was built is what was drawn. Against a change by accident or unawares it "
    "is sure; against a forger keep a copy, or the digests, somewhere else."
)


def sign(
    drawing: Drawing,
    author: str,
    day: date,
    decision: str,
    *,
    role: str = "",
    remarks: str = "",
    analysis: Analysis | None = None,
) -> Drawing:
    """The drawing with a review record of it as it stands, the last of its records.

    `analysis` of that drawing saves judging it again. Raises EditError without a name or a decision.
    """
    if not author.strip():
        raise EditError(a_word("A review record says who made it: give a name."))
    if not decision.strip():
        raise EditError(a_word("A review record says what was decided."))
    told_meaning, told_layout = canonical(meaning(drawing)), canonical(layout(drawing))
    record = Review(
        author=author.strip(),
        role=role.strip(),
        date=day.isoformat(),
        decision=decision.strip(),
        remarks=remarks.strip(),
        program=program(),
        rule_book=rule_book(drawing),
        meaning=digest(told_meaning),
        layout=digest(told_layout),
        previous=record_digest(drawing.reviews[-1]) if drawing.reviews else "",
    )
    told_findings = canonical(said_of(drawing, record, finding_objects(drawing, analysis)))
    seen = MappingProxyType({"meaning": told_meaning, "layout": told_layout, "findings": told_findings})
    made = replace(record, findings=digest(told_findings), extra=MappingProxyType({SEEN: seen}))
    return changed(drawing, reviews=(*drawing.reviews, made))


def program() -> str:
    """The program and its version, as records name it."""
    return f"circuitcheck {version()}"


def record_digest(review: Review) -> str:
    """The digest of a record, as the next one holds it: all of it but the texts its digests stand for."""
    return digest(canonical({**words_of(review), "findings": review.findings}))


def words_of(review: Review) -> Object:
    """What a record says, without its findings' digest and the texts."""
    extra = {name: value for name, value in review.extra.items() if name != SEEN}
    names = ("author", "role", "date", "decision", "remarks", "program", "rule_book", "meaning", "layout")
    return {**{name: getattr(review, name) for name in names}, "previous": review.previous, "extra": extra}


def said_of(drawing: Drawing, review: Review, findings: list[Object]) -> Object:
    """What a record's `findings` digest covers."""
    return {
        "findings": findings,
        "acceptances": sorted_texts(map(_acceptance, drawing.acceptances)),
        "notes": {note.id: _note(note) for note in drawing.notes},
        "record": words_of(review),
    }


def finding_objects(drawing: Drawing, analysis: Analysis | None = None) -> list[Object]:
    """What the checks find, the same whatever the order of the file.

    Which of several smallest witnesses a check names may rest on the order, so the drawing is judged in
    the order of its ids. Sentences and numbers are left out: they follow from the drawing.
    """
    ordered = in_order(drawing)
    judged = analysis if analysis is not None and ordered is drawing else analyse(ordered)
    return sorted_texts(map(_finding, judged.findings))


def in_order(drawing: Drawing) -> Drawing:
    """The drawing with its parts, pipes and controls in the order of their ids; itself where they are."""
    maps = {name: getattr(drawing, name) for name in ("components", "pipes", "controls")}
    sorted_maps = {
        name: MappingProxyType({id: items[id] for id in sorted(items)})
        for name, items in maps.items()
        if list(items) != sorted(items)
    }
    return changed(drawing, **sorted_maps) if sorted_maps else drawing


def texts_of(review: Review) -> Mapping[str, str]:
    """The texts a record holds beside its digests, those only that still have that digest."""
    seen = review.extra.get(SEEN)
    if not isinstance(seen, Mapping):
        return {}
    return {
        name: text
        for name, text in seen.items()
        if name in ("meaning", "layout", "findings")
        and isinstance(text, str)
        and digest(text) == getattr(review, name).lower()
    }


def _finding(finding: Finding) -> Object:
    witness = finding.witness
    return {
        "check": finding.check,
        "grade": finding.grade.value,
        "would_be": finding.would_be.value if finding.would_be else None,
        "components": list(finding.components),
        "pipes": list(finding.pipes),
        "shut": list(witness.shut) if witness else [],
        "missing": sorted(finding.missing),
    }


def _acceptance(each: Acceptance) -> Object:
    return {**_given(each, ("check", "reason", "author", "date", "until")), "on": sorted(each.on)}


def _note(note: Note) -> Object:
    told = _given(note, ("author", "date", "text", "state"))
    return {**told, "on": sorted(note.on), "replies": [_reply(reply) for reply in note.replies]}


def _reply(reply: Reply) -> Object:
    return _given(reply, ("author", "date", "text"))


def _given(item: Any, names: Iterable[str]) -> Object:
    return {**{name: getattr(item, name) for name in names}, "extra": dict(item.extra)}
