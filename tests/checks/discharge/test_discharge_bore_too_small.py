"""The sizes along a discharge: before the tundish, after it, and the heating's safety valve."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only, way
from tests.checks.houses import store_discharge
from tests.made import made

NAME = "discharge-bore-too-small"


def sizes(
    before: tuple[float | None, ...], after: tuple[float | None, ...], outlet: float | None = 15
) -> Drawing:
    """A store's discharge by its sizes before and after the tundish."""

    def pieces(all: tuple[float | None, ...]) -> tuple[Mapping[str, Any], ...]:
        return tuple({"size_mm": size, "length_m": 0.1, "bends": 0} for size in all)

    return store_discharge(pieces(before), pieces(after), valve={"outlet_size_mm": outlet})


def heating(*all: float | None, tundish: bool = False) -> Drawing:
    """A heating safety valve's discharge by its sizes, through a tundish or not."""
    parts = {f"c{number}": "strainer" for number in range(1, len(all))}
    stops = " ".join(f"c{number}.in:out" for number in range(1, len(all)))
    if tundish:
        parts = {"c1": "tundish"}
        stops = "c1.inlet:outlet"
    return made(
        {"hs": "heat_source", "sv": "safety_valve", "de": "discharge_end", **parts},
        way("hs.flow sv.inlet", f"sv.outlet {stops} de.inlet"),
        pipe_data={f"p{number}": {"size_mm": size} for number, size in enumerate(all, start=2)},
    )


SOUND: dict[str, Drawing] = {
    "as small as it may be": sizes((15,), (22,)),
    "larger after the tundish": sizes((15,), (28,)),
    "larger before it": sizes((22,), (22,)),
    "growing": sizes((15, 22), (22, 28, 35)),
    "smaller after the tundish than before it": sizes((28,), (22,)),
    "a 22 mm outlet": sizes((22,), (28,), 22),
    "a 28 mm outlet": sizes((28,), (35,), 28),
    "a store of 15 litres, no size up": store_discharge(
        ({"size_mm": 15},), ({"size_mm": 15},), store={"volume_l": 15}
    ),
    "heating, as large as the outlet": heating(15),
    "heating, growing": heating(15, 22),
    "heating, through a tundish, no size up": heating(15, 15, tundish=True),
}

TOO_SMALL: dict[str, tuple[Drawing, str, str, float, float]] = {
    # drawing, valve, pipe, its size, the least it should have
    "before the tundish": (sizes((12,), (22,)), "tr", "b1", 12, 15),
    "after the tundish": (sizes((15,), (15,)), "tr", "a1", 15, 22),
    "after the tundish, further on": (sizes((15,), (22, 15)), "tr", "a2", 15, 22),
    "a reduction before the tundish": (sizes((22, 15), (22,)), "tr", "b2", 15, 22),
    "a reduction after the tundish": (sizes((15,), (28, 22)), "tr", "a2", 22, 28),
    "a reduction after a pipe not known": (sizes((15,), (28, None, 22)), "tr", "a3", 22, 28),
    "a 22 mm outlet": (sizes((22,), (22,), 22), "tr", "a1", 22, 28),
    "a 28 mm outlet": (sizes((22,), (35,), 28), "tr", "b1", 22, 28),
    "heating": (heating(12), "sv", "p2", 12, 15),
    "heating, further on": (heating(15, 12), "sv", "p3", 12, 15),
    "heating, a reduction": (heating(22, 15), "sv", "p3", 15, 22),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(
    ("drawing", "valve", "pipe", "size", "least"), TOO_SMALL.values(), ids=TOO_SMALL.keys()
)
def test_fires(drawing: Drawing, valve: str, pipe: str, size: float, least: float) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components, finding.pipes) == ("danger", (valve,), (pipe,))
    assert finding.numbers == {"size_mm": size, "least_mm": least}
    assert f"{size:g} mm" in finding.message and f"{least:g} mm" in finding.message


UNANSWERED: dict[str, tuple[Drawing, tuple[str, ...]]] = {
    "a size before the tundish": (sizes((None,), (22,)), ("b1.size_mm",)),
    "a size after the tundish": (sizes((15,), (22, None)), ("a2.size_mm",)),
    "the outlet": (sizes((15,), (22,), None), ("tr.outlet_size_mm",)),
    "an outlet the table does not know": (sizes((22,), (28,), 20), ("tr.outlet_size_mm",)),
    "heating": (heating(None), ("p2.size_mm",)),
    "too small, if the store is not one of 15 litres": (
        store_discharge(({"size_mm": 15},), ({"size_mm": 15},), store={"volume_l": None}),
        ("us.volume_l",),
    ),
}


@pytest.mark.parametrize(("drawing", "missing"), UNANSWERED.values(), ids=UNANSWERED.keys())
def test_unanswered_naming_what_is_missing(drawing: Drawing, missing: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert finding.would_be is not None and finding.would_be.value == "danger"


def test_what_is_known_to_be_too_small_is_not_waited_for() -> None:
    assert only(NAME, sizes((15,), (15, None))).grade.value == "danger"
    assert only(NAME, sizes((12,), (None,))).grade.value == "danger"


def test_too_small_before_the_tundish_whatever_the_store_holds() -> None:
    """A pipe smaller than its valve's outlet is too small with or without the table."""
    drawing = store_discharge(({"size_mm": 10},), ({"size_mm": 22},), store={"volume_l": None})
    assert only(NAME, drawing).grade.value == "danger"


def test_an_unknown_volume_does_not_matter_where_the_sizes_are_right() -> None:
    drawing = store_discharge(({"size_mm": 15},), ({"size_mm": 22},), store={"volume_l": None})
    assert found(NAME, drawing) == ()


def test_the_heating_valves_outlet_is_taken_where_it_is_left_out() -> None:
    from circuitcheck.analysis import analyse

    assert "sv.outlet_size_mm = 15" in analyse(heating(15)).taken


def test_every_way_is_judged_and_all_that_is_missing_is_named() -> None:
    def drawing(one: float | None, other: float | None) -> Drawing:
        return made(
            {"us": ("unvented_store", {"volume_l": 150}), "tr": "temperature_relief_valve", "t1": "tee",
             "tu": "tundish", "d1": "discharge_end", "d2": "discharge_end"},
            way("us.relief tr.inlet", "tr.outlet tu.inlet:outlet t1.a:b d1.inlet", "t1.branch d2.inlet"),
            pipe_data={"p2": {"size_mm": 15}, "p3": {"size_mm": 22}, "p4": {"size_mm": one}, "p5": {"size_mm": other}},
        )  # fmt: skip

    assert found(NAME, drawing(22, 22)) == ()
    assert only(NAME, drawing(22, 15)).pipes == ("p5",)
    assert only(NAME, drawing(None, 15)).grade.value == "danger"
    assert only(NAME, drawing(None, None)).missing == ("p4.size_mm", "p5.size_mm")
