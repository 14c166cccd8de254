"""The same drawing gives the same bytes, and what is written is read as the same drawing."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path
from types import MappingProxyType
from typing import Any

import pytest
from hypothesis import given

from circuitcheck.drawing.value import Component, Drawing, Note, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds
from circuitcheck.parts.kind import Kind
from circuitcheck.storage.reading import DrawingError, parse
from circuitcheck.storage.writing import dump, write
from tests.storage.files import cottage, encoded
from tests.strategies import components, drawings

WRITTEN = """{
  "wetcircuit": 1,
  "title": "Cottage",
  "sheet": {"metres_per_square": 0.25},
  "design": {"flow_temperature_c": 75, "system_content_l": null, "rule_book": "england"},
  "components": [
    {"id": "hs1", "kind": "heat_source", "label": "Heat source", "at": [4, 10], \
"data": {"output_kw": 18, "built_in": ["pump", "gauge"]}},
    {"id": "t1", "kind": "tee", "at": [9, 8]},
    {"id": "us1", "kind": "unvented_store", "data": {"energy_cut_out": "zv1"}},
    {"id": "zv1", "kind": "zone_valve", "data": {"rest": null, "note": "behind the panel"}}
  ],
  "pipes": [
    {"id": "p1", "ends": [["hs1", "flow"], ["t1", "a"]], "via": [[8, 6]], \
"data": {"size_mm": 22, "material": "copper", "rise_m": -0.5}},
    {"id": "p2", "ends": [["t1", "b"], [20, 8]]}
  ],
  "controls": [
    {"id": "rt1", "kind": "room_thermostat", "acts_on": ["zv1"], "set_c": 20}
  ],
  "notes": [
    {"id": "n1", "on": ["t1", "gone"], "author": "The fitter", "date": "2026-03-01", \
"text": "Is this tee right?", "replies": [{"author": "The office", "date": "2026-03-02", "text": "It is."}]}
  ],
  "acceptances": [
    {"check": "no-such-check", "on": ["t1"], "reason": "Seen", "author": "A", "until": "2030-01-31"}
  ],
  "reviews": [
    {"author": "A", "decision": "agreed", "meaning": "00ff"}
  ]
}
"""


def read_cottage() -> Drawing:
    return parse(encoded(cottage()), "cottage.wetcircuit")


def test_a_drawing_is_written_so() -> None:
    assert dump(read_cottage()).decode() == WRITTEN


def test_an_empty_drawing_is_written_so() -> None:
    lists = ("components", "pipes", "controls", "notes", "acceptances", "reviews")
    lines = ['  "wetcircuit": 1', '  "title": ""', '  "sheet": {}', '  "design": {}']
    lines += [f'  "{name}": []' for name in lists]
    assert dump(Drawing()).decode() == "{\n" + ",\n".join(lines) + "\n}\n"


@given(drawings())
def test_what_is_written_is_read_as_the_same_drawing(drawing: Drawing) -> None:
    data = dump(drawing)
    again = parse(data, "again.wetcircuit")
    assert again == drawing
    assert dump(again) == data
    # And it is what any JSON parser takes it for.
    json.loads(data)


@pytest.mark.parametrize("kind", component_kinds().values(), ids=lambda kind: kind.name)
def test_every_kind_is_written_and_read(kind: Kind) -> None:
    @given(components("x", kind, ["x"]))
    def check(component: Component) -> None:
        drawing = Drawing(components={"x": component})
        assert parse(dump(drawing), "x") == drawing

    check()


def test_one_moved_part_is_one_changed_line() -> None:
    before = read_cottage()
    tee = replace(before.components["t1"], at=Point(9.5, 8))
    after = replace(before, components={**before.components, "t1": tee})
    lines = zip(dump(before).splitlines(), dump(after).splitlines(), strict=True)
    assert [new for old, new in lines if old != new] == [b'    {"id": "t1", "kind": "tee", "at": [9.5, 8]},']


def test_the_order_in_which_fields_were_set_does_not_show() -> None:
    kind = component_kinds()["pump"]
    one: dict[str, Any] = {"maximum_flow_lpm": 40, "isolating_valves": True, "height_m": 1, "later": 1}
    two = MappingProxyType(dict(reversed(one.items())))
    written = {
        dump(Drawing(design=design, components={"p": Component("p", kind, data=data)}))
        for data in (one, two)
        for design in ({"dwelling": "new", "occupants": 2}, {"occupants": 2, "dwelling": "new"})
    }
    assert len(written) == 1


@pytest.mark.parametrize(
    ("number", "text"),
    [
        (5, "5"),
        (5.0, "5"),
        (-0.0, "0"),
        (0.1, "0.1"),
        (1 / 3, "0.3333333333333333"),
        (1e22, "1e+22"),
        (5e-324, "5e-324"),
        (2.0**53, "9007199254740992"),
        (2.0**54, "1.8014398509481984e+16"),
        (2**54 + 1, "18014398509481985"),
    ],
)
def test_numbers_are_as_short_as_they_can_be(number: float, text: str) -> None:
    drawing = Drawing(extra={"later": number})
    written = dump(drawing)
    assert f'"later": {text}\n' in written.decode()
    assert dump(parse(written, "x")) == written


def test_given_defaults_and_nulls_of_data_are_kept_and_those_of_an_item_left_out() -> None:
    file = cottage()
    file["components"][0]["data"] = {"pump_overrun_min": 5, "output_kw": None, "built_in": []}
    file["pipes"][0]["data"] = {"material": "copper"}
    written = json.loads(dump(parse(encoded(file), "x")))
    assert written["components"][0]["data"] == {"output_kw": None, "pump_overrun_min": 5, "built_in": []}
    assert "turn" not in written["components"][0]
    assert written["pipes"][0]["data"] == {"material": "copper"}


def test_corners_that_are_none_are_not_corners_that_are_left_out() -> None:
    for via in (None, ()):
        pipe = Pipe("p", (Point(0, 0), Point(5, 0)), via)
        assert parse(dump(Drawing(pipes={"p": pipe})), "x").pipes["p"].via == via


def test_texts_are_written_as_they_are() -> None:
    title = 'Größe "1" \\ \u2028\t½ 😀'
    written = dump(Drawing(title=title)).decode()
    assert "Größe" in written
    assert "😀" in written
    assert parse(written.encode(), "x").title == title


UNREADABLE = [
    Drawing(title="x" * 5_000),
    Drawing(title="half a character: \ud800"),
    Drawing(design={"flow_temperature_c": float("nan")}),
    Drawing(notes=(Note("a"), Note("a"))),
    Drawing(title="a", extra={"title": "b"}),
]


@pytest.mark.parametrize("number", range(len(UNREADABLE)))
def test_a_file_is_never_replaced_by_one_that_will_not_open(number: int, tmp_path: Path) -> None:
    path = tmp_path / "cottage.wetcircuit"
    path.write_bytes(b"the old one")
    with pytest.raises(DrawingError):
        write(UNREADABLE[number], path)
    assert path.read_bytes() == b"the old one"
    assert len(list(tmp_path.iterdir())) == 1
