"""The straight drop below a tundish: exactly enough, a step less, and where it is not known."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, only, way
from tests.checks.discharge.plants import EUROPEAN, heating
from tests.made import made

NAME = "no-drop-below-tundish"


def below(
    turned: bool = False, volume: float | None = 200, design: dict[str, str] | None = None, **pipe: Any
) -> Drawing:
    """A store's discharge whose pipe `d2` below the tundish has this data; told from either end."""
    ends = "de.inlet - tu.outlet" if turned else "tu.outlet - de.inlet"
    return made(
        {"us": ("unvented_store", {"volume_l": volume}), "tr": "temperature_relief_valve", "tu": "tundish",
         "de": "discharge_end"},
        way("us.relief tr.inlet", "tr.outlet tu.inlet") + f"\nd2: {ends}",
        pipe_data={"d2": pipe},
        design=design,
    )  # fmt: skip


SOUND = {
    "exactly": below(straight_drop_m=0.3),
    "more": below(straight_drop_m=0.301, length_m=5),
    "plumb all the way": below(length_m=0.3, rise_m=-0.3, bends=0),
    "plumb, told from its end": below(turned=True, length_m=2, rise_m=2, bends=0),
    "whatever the store holds": below(volume=None, straight_drop_m=0.4),
}
TOO_SHORT = {
    "a step less": (below(straight_drop_m=0.299), 0.299),
    "none": (below(straight_drop_m=0), 0),
    "given, though the pipe is plumb": (below(straight_drop_m=0.1, length_m=2, rise_m=-2, bends=0), 0.1),
    "plumb, but short": (below(length_m=0.29, rise_m=-0.29, bends=0), 0.29),
}
UNANSWERED = {
    "not known": (below(), ("d2.straight_drop_m",)),
    "null": (below(straight_drop_m=None), ("d2.straight_drop_m",)),
    "not plumb": (below(length_m=2, rise_m=-1.9, bends=0), ("d2.straight_drop_m",)),
    "bends": (below(length_m=2, rise_m=-2, bends=1), ("d2.straight_drop_m",)),
    "bends not known": (below(length_m=2, rise_m=-2), ("d2.straight_drop_m",)),
    "rises": (below(length_m=2, rise_m=2, bends=0), ("d2.straight_drop_m",)),
    "too short, if the store is no small one": (below(volume=None, straight_drop_m=0.1), ("us.volume_l",)),
    "both": (below(volume=None), ("d2.straight_drop_m", "us.volume_l")),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "drop"), TOO_SHORT.values(), ids=TOO_SHORT.keys())
def test_fires(drawing: Drawing, drop: float) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components, finding.pipes) == ("danger", ("tu", "tr"), ("d2",))
    assert finding.numbers == {"straight_drop_m": drop, "least_m": 0.3}
    assert f"{drop * 1000:g} mm" in finding.message and "300 mm" in finding.message


@pytest.mark.parametrize(("drawing", "missing"), UNANSWERED.values(), ids=UNANSWERED.keys())
def test_unanswered(drawing: Drawing, missing: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert asked(NAME, drawing).status == "not judged"


@pytest.mark.parametrize(
    "drawing",
    [below(volume=15, straight_drop_m=0), heating("tu.inlet:outlet", tu="tundish"), heating()],
    ids=["a store of 15 litres", "the heating's safety valve", "no tundish"],
)
def test_not_asked_for(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


def test_not_judged_without_the_rule() -> None:
    assert asked(NAME, below(straight_drop_m=0, design=EUROPEAN)).status == "not judged"
