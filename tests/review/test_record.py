"""Review records: made, kept in the file, broken by any change of any field, and not by any reordering."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from datetime import date
from typing import Any
from unittest.mock import patch

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.value import Acceptance, Component, Control, Drawing, End, Joint, Note, Pipe, Reply
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds, control_kinds
from circuitcheck.parts.kind import Field, FieldType, Kind
from circuitcheck.review.canonical import canonical, digest, layout, meaning
from circuitcheck.review.comparing import compare
from circuitcheck.review.holding import Held, Seal, held, seen_drawing
from circuitcheck.review.record import sign
from circuitcheck.review.words import held_lines
from circuitcheck.storage.reading import parse
from circuitcheck.storage.writing import dump
from tests.strategies import drawings

DAY = date(2031, 3, 15)
Edit = Callable[[Drawing], Drawing]


def given_value(field: Field, at: int) -> Any:
    """Two different values that a field may hold, by `at`."""
    match field.type:
        case FieldType.NUMBER:
            low = field.above if field.above is not None else (field.least or 0)
            return low + 1 + at
        case FieldType.SWITCH:
            return bool(at)
        case FieldType.CHOICE:
            return field.choices[at % len(field.choices)]
        case FieldType.CHOICES:
            return tuple(field.choices[at : at + 1])
        case FieldType.REFERENCE:
            return ("other", "tee")[at]
        case _:
            return f"text {at}"


def filled(fields: tuple[Field, ...], at: int = 0) -> dict[str, Any]:
    return {field.name: given_value(field, at) for field in fields} | {"later_x": [1, {"a": 2.5}]}


def whole(kind: Kind, *, scaled: bool = False) -> Drawing:
    """A drawing in which every field of the format is given, with one part of a kind."""
    extra = {"later_y": "kept"}
    parts = {
        "part": Component("part", kind, "Name", Point(4, 4), 90, True, filled(kind.fields), extra),
        "tee": Component("tee", component_kinds()["tee"], at=Point(9, 9)),
        "other": Component("other", component_kinds()["zone_valve"], at=Point(14, 9)),
    }
    data = filled(PIPE_FIELDS)
    if scaled:
        del data["length_m"], data["bends"]
    pipes = {
        "p": Pipe("p", (Joint("tee", "a"), Joint("other", "in")), (Point(10, 8), Point(11, 8)), data, extra),
        "q": Pipe("q", (Joint("tee", "b"), Point(1, 2))),
    }
    control = Control(
        "c", next(iter(control_kinds().values())), "Stat", Point(2, 2), ("other",), ("part",), 20, extra
    )
    note = Note(
        "n", ("part",), "A", "2031-01-01", "Look.", "open", (Reply("B", "2031-01-02", "Yes.", extra),), extra
    )
    acceptance = Acceptance("open-end", ("tee",), "So be it.", "A", "2031-01-01", "2032-01-01", extra)
    return Drawing(
        "Title",
        filled(SHEET_FIELDS) if scaled else {"later_x": 1},
        filled(DESIGN_FIELDS),
        parts,
        pipes,
        {"c": control},
        (note,),
        (acceptance,),
        (),
        {"later_z": {"deep": [1, 2]}},
    )


def item(where: str, id: str, **fields: Any) -> Edit:
    def edit(drawing: Drawing) -> Drawing:
        items = dict(getattr(drawing, where))
        items[id] = replace(items[id], **fields)
        changed: dict[str, Any] = {where: items}
        return replace(drawing, **changed)

    return edit


def datum(kind: str, id: str, name: str, value: Any) -> Edit:
    def edit(drawing: Drawing) -> Drawing:
        data = {**getattr(drawing, kind)[id].data, name: value}
        return item(kind, id, data=data)(drawing)

    return edit


def mapped(where: str, name: str, value: Any) -> Edit:
    def edit(drawing: Drawing) -> Drawing:
        changed: dict[str, Any] = {where: {**getattr(drawing, where), name: value}}
        return replace(drawing, **changed)

    return edit


def without(where: str, id: str) -> Edit:
    def edit(drawing: Drawing) -> Drawing:
        kept = {one: each for one, each in getattr(drawing, where).items() if one != id}
        changed: dict[str, Any] = {where: kept}
        return replace(drawing, **changed)

    return edit


def first(where: str, **fields: Any) -> Edit:
    """Change the first of the notes, acceptances or reviews."""

    def edit(drawing: Drawing) -> Drawing:
        one, *others = getattr(drawing, where)
        changed: dict[str, Any] = {where: (replace(one, **fields), *others)}
        return replace(drawing, **changed)

    return edit


def reply(**fields: Any) -> Edit:
    answer = replace(Reply("B", "2031-01-02", "Yes.", {"later_y": "kept"}), **fields)
    return first("notes", replies=(answer,))


def of_data(where: str, id: str, fields: tuple[Field, ...]) -> Iterator[tuple[str, Edit]]:
    for field in fields:
        other = None if field.type is FieldType.CHOICE and len(field.choices) == 1 else given_value(field, 1)
        yield f"{id}.{field.name}", datum(where, id, field.name, other)
        if field.type is not FieldType.CHOICE or len(field.choices) > 1:
            yield f"{id}.{field.name} null", datum(where, id, field.name, None)
    yield f"{id}.later_x", datum(where, id, "later_x", [1, {"a": 2.5000000001}])


def meaning_edits(kind: Kind) -> Iterator[tuple[str, Edit]]:
    yield "title", lambda drawing: replace(drawing, title="Another")
    yield "extra", mapped("extra", "later_z", {"deep": [1, 3]})
    for field in DESIGN_FIELDS:
        if given_value(field, 0) != given_value(field, 1):
            yield f"design.{field.name}", mapped("design", field.name, given_value(field, 1))
        yield f"design.{field.name} null", mapped("design", field.name, None)
    yield "design.later_x", mapped("design", "later_x", "new")
    yield from of_data("components", "part", kind.fields)
    yield from of_data("pipes", "p", PIPE_FIELDS)
    yield "part.label", item("components", "part", label="Other")
    yield "part.extra", item("components", "part", extra={})
    yield "part.kind", item("components", "tee", kind=component_kinds()["cap"])
    yield "p.ends", item("pipes", "p", ends=(Joint("tee", "branch"), Joint("other", "in")))
    yield "p.ends turned", item("pipes", "p", ends=(Joint("other", "in"), Joint("tee", "a")))
    yield "p.extra", item("pipes", "p", extra={"later_y": "lost"})
    yield "q end joined", item("pipes", "q", ends=(Joint("tee", "b"), Joint("other", "out")))
    for name, value in (
        ("label", "S"),
        ("acts_on", ()),
        ("in_same_room_as", ()),
        ("set_c", 21),
        ("extra", {}),
    ):
        yield f"c.{name}", item("controls", "c", **{name: value})
    kinds = tuple(control_kinds().values())
    yield "c.kind", item("controls", "c", kind=kinds[1])
    for where, id in (("components", "part"), ("pipes", "p"), ("controls", "c")):
        yield f"{id} gone", without(where, id)


LAYOUT_EDITS: dict[str, Edit] = {
    "part.at": item("components", "part", at=Point(5, 4)),
    "part.at none": item("components", "part", at=None),
    "part.turn": item("components", "part", turn=180),
    "part.mirrored": item("components", "part", mirrored=False),
    "p.via": item("pipes", "p", via=(Point(10, 8), Point(11, 7))),
    "p.via none": item("pipes", "p", via=None),
    "q free end": item("pipes", "q", ends=(Joint("tee", "b"), Point(1, 3))),
    "c.at": item("controls", "c", at=None),
    "sheet.metres_per_square": mapped("sheet", "metres_per_square", 0.25),
    "sheet.later_x": mapped("sheet", "later_x", 2),
}
REMARK_EDITS: dict[str, Edit] = {
    **{
        f"note.{name}": first("notes", **{name: value})
        for name, value in {
            "id": "n9", "on": ("tee",), "author": "X", "date": "2030-01-01", "text": "?", "state": "settled",
            "replies": (), "extra": {},
        }.items()
    },
    **{
        f"reply.{name}": reply(**{name: value})
        for name, value in {"author": "X", "date": "", "text": "No.", "extra": {}}.items()
    },
    **{
        f"acceptance.{name}": first("acceptances", **{name: value})
        for name, value in {
            "check": "near-miss", "on": ("part",), "reason": "?", "author": "X", "date": "", "until": None,
            "extra": {"later_y": 1},
        }.items()
    },
    "note gone": lambda drawing: replace(drawing, notes=()),
    "acceptance gone": lambda drawing: replace(drawing, acceptances=()),
}  # fmt: skip
WORDS = {
    "author": "X", "role": "X", "date": "X", "decision": "X", "remarks": "X", "rule_book": "european_standards",
    "program": "circuitcheck 0.0.0", "findings": "ab" * 32, "meaning": "ab" * 32, "layout": "ab" * 32, "previous": "ab" * 32,
    "extra": {},
}  # fmt: skip


def signed(drawing: Drawing) -> Drawing:
    return sign(drawing, "A supervisor", DAY, "accepted", role="supervisor", remarks="Well drawn.")


def state(drawing: Drawing) -> Held:
    return held(drawing)[-1]


def texts(drawing: Drawing) -> tuple[str, str]:
    return canonical(meaning(drawing)), canonical(layout(drawing))


def test_a_record_holds_and_holds_after_writing_and_reading() -> None:
    drawing = signed(whole(component_kinds()["unvented_store"]))
    assert state(drawing).state == "holds"
    again = parse(dump(drawing), "again")
    assert state(again).state == "holds" and again.reviews == drawing.reviews


@pytest.mark.parametrize("kind", component_kinds().values(), ids=lambda kind: kind.name)
def test_every_field_of_the_meaning_breaks_the_meaning_and_nothing_of_the_layout(kind: Kind) -> None:
    drawing = whole(kind)
    before = texts(drawing)
    for name, edit in meaning_edits(kind):
        edited = edit(drawing)
        after = texts(edited)
        assert after[0] != before[0], name
        # What is gone has no place either.
        assert (after[1] == before[1]) or "gone" in name or "end joined" in name, name
        assert not compare(drawing, edited).is_nothing, name


@pytest.mark.parametrize("name", LAYOUT_EDITS)
def test_every_field_of_the_layout_breaks_the_layout_alone(name: str) -> None:
    drawing = whole(component_kinds()["pump"])
    after, before = texts(LAYOUT_EDITS[name](drawing)), texts(drawing)
    assert after[1] != before[1] and after[0] == before[0]
    found = compare(drawing, LAYOUT_EDITS[name](drawing))
    assert found.moved or found.changed


@pytest.mark.parametrize("name", ["p.via", "p.via none", "sheet.metres_per_square"])
def test_a_line_that_is_measured_is_meaning_too(name: str) -> None:
    drawing = whole(component_kinds()["pump"], scaled=True)
    after, before = texts(LAYOUT_EDITS[name](drawing)), texts(drawing)
    assert after[0] != before[0] and after[1] != before[1]


@pytest.mark.parametrize("name", REMARK_EDITS)
def test_notes_and_acceptances_break_the_findings_alone(name: str) -> None:
    drawing = signed(whole(component_kinds()["pump"]))
    found = state(REMARK_EDITS[name](drawing))
    assert found.broken == ("findings",) and found.circuit_is_as_reviewed
    assert found.since is not None and found.since.says_otherwise and len(list(held_lines(found))) > 2


@pytest.mark.parametrize("name", WORDS)
def test_a_records_own_words_break_it(name: str) -> None:
    drawing = signed(whole(component_kinds()["pump"]))
    found = state(first("reviews", **{name: WORDS[name]})(drawing))
    # The texts prove nothing that the digests do not: without them it still holds, and only tells less.
    assert found.state == ("holds" if name == "extra" else "broken")
    assert {"meaning", "layout", "previous"}.isdisjoint({name}) or name in found.broken


def test_a_pipe_that_changes_breaks_it_and_it_says_which_and_how() -> None:
    drawing = signed(whole(component_kinds()["pump"]))
    found = state(datum("pipes", "p", "size_mm", 28)(drawing))
    assert "meaning" in found.broken and found.layout is Seal.HOLDS
    assert "Changed: pipe p, size from 1 mm to 28 mm." in list(held_lines(found))


def test_an_earlier_record_cannot_be_altered_or_taken_out_under_a_later_one() -> None:
    drawing = signed(signed(whole(component_kinds()["pump"])))
    assert [each.state for each in held(drawing)] == ["holds", "holds"]
    altered = first("reviews", decision="returned")(drawing)
    assert state(altered).broken == ("previous",)
    assert state(replace(drawing, reviews=drawing.reviews[1:])).broken == ("previous",)


def test_another_version_of_the_program_tells_the_findings_no_more_but_the_rest(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    drawing = signed(whole(component_kinds()["pump"]))
    monkeypatch.setattr("circuitcheck.review.record.version", lambda: "99.0")
    found = state(drawing)
    assert found.findings is Seal.OTHER_PROGRAM and found.holds
    assert state(REMARK_EDITS["note.text"](drawing)).broken == ("findings",)
    assert state(first("reviews", author="X")(drawing)).broken == ("findings",)
    without = first("reviews", extra={})(drawing)
    assert state(without).findings is Seal.UNTOLD and state(without).state == "incomplete"


def test_texts_that_are_not_what_was_signed_are_not_believed() -> None:
    drawing = signed(whole(component_kinds()["pump"]))
    (record,) = drawing.reviews
    seen = {**record.extra["seen"], "meaning": record.extra["seen"]["meaning"].replace("Title", "Tampered")}
    forged = first("reviews", extra={"seen": seen})(replace(drawing, title="Other"))
    assert state(forged).since is None and "does not tell" in " ".join(held_lines(state(forged)))


def test_a_record_with_no_digests_is_incomplete() -> None:
    drawing = signed(whole(component_kinds()["pump"]))
    bare = first("reviews", meaning="", layout="", findings="")(drawing)
    assert state(bare).state == "incomplete"


def test_any_tool_can_hash_the_texts_again() -> None:
    told = json.loads(dump(signed(whole(component_kinds()["pump"]))))
    (record,) = told["reviews"]
    for name in ("meaning", "layout", "findings"):
        assert digest(record["seen"][name]) == record[name]


def test_a_name_and_a_decision_are_asked_for() -> None:
    with pytest.raises(EditError, match="name"):
        sign(Drawing(), " ", DAY, "accepted")
    with pytest.raises(EditError, match="decided"):
        sign(Drawing(), "A", DAY, "")


def shuffled(drawing: Drawing, order: Callable[[list[Any]], list[Any]]) -> Drawing:
    """The same in another order: items, keys of data, and lists whose order says nothing."""

    def mapping(found: Mapping[str, Any]) -> dict[str, Any]:
        return {name: found[name] for name in order(list(found))}

    return replace(
        drawing,
        design=mapping(drawing.design),
        components=mapping({
            id: replace(part, data=mapping(part.data), extra=mapping(part.extra)) for id, part in drawing.components.items()
        }),
        pipes=mapping({id: replace(pipe, data=mapping(pipe.data)) for id, pipe in drawing.pipes.items()}),
        controls=mapping({
            id: replace(each, acts_on=tuple(order(list(each.acts_on)))) for id, each in drawing.controls.items()
        }),
        notes=tuple(order([replace(note, on=tuple(order(list(note.on)))) for note in drawing.notes])),
        acceptances=tuple(order([replace(each, on=tuple(order(list(each.on)))) for each in drawing.acceptances])),
        extra=mapping(drawing.extra),
    )  # fmt: skip


def near(drawing: Drawing) -> Drawing:
    """The same on a sheet of a size that people draw on: judging lines a million squares long takes long."""

    def close(place: Point) -> Point:
        return Point(place.x % 64, place.y % 64)

    def end(each: End) -> End:
        return each if isinstance(each, Joint) else close(each)

    return replace(
        drawing,
        components={
            id: replace(part, at=part.at and close(part.at)) for id, part in drawing.components.items()
        },
        pipes={
            id: replace(
                pipe,
                ends=(end(pipe.ends[0]), end(pipe.ends[1])),
                via=None if pipe.via is None else tuple(map(close, pipe.via)),
            )
            for id, pipe in drawing.pipes.items()
        },
    )


@settings(max_examples=10, deadline=None)
@given(drawings(with_records=True), st.randoms(use_true_random=False))
def test_reordering_breaks_nothing(drawing: Drawing, random: Any) -> None:
    plain = near(replace(drawing, reviews=()))
    record = signed(plain)
    other = shuffled(record, lambda items: random.sample(items, len(items)))
    assert state(other).state == "holds"
    assert state(parse(dump(record), "again")).state == "holds"


@settings(max_examples=60, deadline=None)
@given(drawings(with_records=True))
def test_a_record_tells_how_the_drawing_was(drawing: Drawing) -> None:
    plain = replace(drawing, reviews=())
    with patch("circuitcheck.review.record.finding_objects", return_value=[]):
        seen = seen_drawing(signed(plain).reviews[-1])
    assert seen is not None
    # A whole number that no double holds is told as the nearest that one does.
    assert texts(seen) == texts(plain) or "large_numbers" in "".join(texts(seen) + texts(plain))
