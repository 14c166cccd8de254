"""Whether a thermostatic head stands in a room thermostat's room."""

from __future__ import annotations

from dataclasses import replace
from types import MappingProxyType
from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import advice, asked, only, told
from tests.checks.houses import pumped

NAME = "thermostatic-valve-in-thermostat-room"


def room(*together: str, kind: str = "room_thermostat", **data: Any) -> Drawing:
    """Two radiators and a zone, and a control in the room of some of them."""
    drawing = pumped(
        "hs.flow pu.in:out r1.flow:return r2.flow:return hz.flow:return hs.return",
        controls={"rt": (kind, ("pu",))},
        r1=("radiator", data), r2="radiator", hz="heating_zone",
    )  # fmt: skip
    control = replace(drawing.controls["rt"], in_same_room_as=together)
    return replace(drawing, controls=MappingProxyType({"rt": control}))


@pytest.mark.parametrize(
    ("drawing", "subjects"),
    [
        (room("r1"), ["r1"]),
        (room("r1", "r2"), ["r1", "r2"]),
        (room("hz"), ["hz"]),
        (room("r1", "r2", thermostatic=False), ["r2"]),
    ],
)
def test_fires(drawing: Drawing, subjects: list[str]) -> None:
    assert told(NAME, drawing) == [advice(subject) for subject in subjects]


def test_sound() -> None:
    assert asked(NAME, room("r1", thermostatic=False)).status == "judged"
    assert told(NAME, room("r1", thermostatic=False)) == []


@pytest.mark.parametrize("drawing", [room(), room("r1", kind="store_thermostat"), room("pu")])
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


def test_unanswered() -> None:
    finding = only(NAME, room("r1", thermostatic=None))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("r1.thermostatic",))


def test_the_taken_head_is_told() -> None:
    assert "r1.thermostatic = true" in analyse(room("r1")).taken


@pytest.mark.parametrize(("part", "field"), [("r1", "thermostatic"), ("hz", "all_thermostatic")])
def test_cure(part: str, field: str) -> None:
    analysis = analyse(room(part))
    finding = next(each for each in analysis.findings if each.check == NAME)
    (cure,) = cures(analysis, finding)
    assert cure.drawing.components[part].data[field] is False
