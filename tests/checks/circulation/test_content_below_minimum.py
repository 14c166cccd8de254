"""How much water always goes round through a heat source that asks for some."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from circuitcheck.sizing.tube import bore_mm, content_l_m
from tests.checks.asking import asked, found, only, way
from tests.checks.houses import sealed
from tests.figures.worked.asking import one, values
from tests.made import Part, made

NAME = "content-below-minimum"
METRE = content_l_m(bore_mm("copper", 22) or 0.0)

RING = ("hs.flow pu.in:out t1.a:b rad.flow:return t2.a:b hs.return", "t1.branch bv.in:out t2.branch")


def plant(needed: float | None, *ways: str, pipe: dict[str, Any] | None = None, **parts: Part) -> Drawing:
    """A heat source of 3 litres, a radiator with a head, and a bypass: five pipes of a metre never shut."""
    text = way(*(ways or RING))
    usual: dict[str, Part] = {
        "hs": ("heat_source", {"minimum_content_l": needed, "water_content_l": 3}),
        "pu": "pump",
        "bv": "bypass_valve",
        "rad": ("radiator", {"water_content_l": 8}),
        "r2": ("radiator", {"water_content_l": 8, "thermostatic": False, "valves": False}),
        "us": "unvented_store",
        "zr": ("zone_valve", {"serves": "heating"}),
        "zs": ("zone_valve", {"serves": "hot_water"}),
        "hx": "heat_exchanger",
    }
    used = {id: part for id, part in {**usual, **parts}.items() if f"{id}." in text}
    used |= {f"t{n}": "tee" for n in range(1, 9) if f"t{n}." in text}
    data = {f"p{n}": {"size_mm": 22, "length_m": 1, **(pipe or {})} for n in range(1, 30)}
    return made(used, text, pipe_data=data)


ROUND = 3 + 5 * METRE
OPEN = (
    "hs.flow pu.in:out t1.a:b t3.a:b rad.flow:return t4.a:b t2.a:b hs.return",
    "t1.branch bv.in:out t2.branch",
    "t3.branch r2.flow:return t4.branch",
)
WITH_STORE = (
    "hs.flow pu.in:out t3.a:b zr.in:out r2.flow:return t4.a:b hs.return",
    "t3.branch zs.in:out us.coil_flow:coil_return t4.branch",
)


@pytest.mark.parametrize(
    ("drawing", "fires"),
    [
        (plant(ROUND), False),
        (plant(ROUND * 1.001), True),
        (plant(ROUND * 1.001, rad=("radiator", {"water_content_l": 8, "thermostatic": False})), False),
        (plant(ROUND * 1.001, rad=("radiator", {"thermostatic": False, "hand_wheel": True})), True),
        (plant(11 + 9 * METRE, *OPEN), False),
        (plant(11.1 + 9 * METRE, *OPEN), True),
        # A coil and its pipes hold less, but behind them is the store.
        (plant(11 + 6 * METRE, *WITH_STORE), False),
        (plant(11.1 + 6 * METRE, *WITH_STORE), True),
        (plant(0.1, RING[0]), True),  # nothing goes round once the head has shut
        (plant(0), False),
    ],
)
def test_what_goes_round(drawing: Drawing, fires: bool) -> None:
    findings = found(NAME, drawing)
    assert [(each.grade.value, each.components) for each in findings] == [("fault", ("hs",))] * fires
    assert asked(NAME, drawing).status == "judged"


def test_the_numbers() -> None:
    finding = only(NAME, plant(20))
    assert finding.numbers == {"circulating_l": pytest.approx(ROUND), "minimum_content_l": 20}
    assert "20 l" in finding.message and "heating alone" in finding.message


def test_all_the_water_being_too_little_settles_it() -> None:
    drawing = replace(plant(50, pipe={"length_m": None}), design={"system_content_l": 40})
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.numbers["content_l"]) == ("fault", 40)


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (plant(None), {"hs.minimum_content_l"}),
        (plant(5, pipe={"length_m": None}), {f"p{n}.length_m" for n in (1, 2, 5, 6, 7)}),
        (plant(2, pipe={"length_m": None}), None),  # the heat source alone holds that much
    ],
)
def test_unanswered(drawing: Drawing, missing: set[str] | None) -> None:
    findings = found(NAME, drawing)
    if missing is None:
        assert findings == ()
        return
    (finding,) = findings
    assert (finding.grade.value, set(finding.missing)) == ("unanswered", missing)
    assert finding.would_be is not None and finding.would_be.value == "fault"


BEHIND_A_PLATE = ("hs.flow pu.in:out hx.primary_in:primary_out hs.return",)


@pytest.mark.parametrize(
    "drawing",
    [
        sealed(hs=("heat_source", {"minimum_content_l": 50})),
        plant(50, "hs.flow pu.in:out zs.in:out us.coil_flow:coil_return hs.return"),
        plant(50, *BEHIND_A_PLATE),
    ],
    ids=["no pump", "a store only", "a plate only"],
)
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


@pytest.mark.parametrize("ways", [RING, OPEN, WITH_STORE])
@pytest.mark.parametrize("needed", [1, ROUND - 0.1, ROUND + 0.1, 15, 40])
def test_the_figure_says_what_the_check_says(ways: tuple[str, ...], needed: float) -> None:
    """Run-on and what a coil takes count for neither."""
    drawing = plant(needed, *ways)
    figure = one("least-content", drawing)
    findings = found(NAME, drawing)
    short = values(figure).get("Short by")
    assert (short is None) == (not findings)
    if findings:
        assert values(figure)["Least that goes round"] == pytest.approx(findings[0].numbers["circulating_l"])


def test_hot_water_alone_asks_for_none() -> None:
    drawing = plant(50, "hs.flow pu.in:out us.coil_flow:coil_return hs.return")
    assert "behind a coil" in one("least-content", drawing).refused
    assert not found(NAME, drawing)
