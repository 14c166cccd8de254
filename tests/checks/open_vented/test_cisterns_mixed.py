"""Heating and hot water under one cistern."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed
from tests.checks.open_vented.plants import pumped_vented, vented_store, with_data
from tests.made import Part, made

NAME = "cisterns-mixed"

STORE: dict[str, Any] = {"st": "vented_store", "x": "tee", "bath": ("outlet", {"fitting": "bath"})}
DIRECT = (
    "sc.feed - t1.a\nt1.b - st.cold\nt1.branch - hs.return\nhs.flow - t2.a\nt2.b - st.hot\nt2.branch - th.a"
)


def direct(more: str = "", **parts: Part) -> Drawing:
    """Old direct hot water: the heat source heats the store's own water."""
    usual: dict[str, Part] = {"sc": "feed_cistern", "hs": "heat_source"}
    usual |= dict.fromkeys(("t1", "t2", "th"), "tee")
    usual |= {"st": "vented_store", "sv": "open_vent", "bath": "outlet"}
    return made({**usual, **parts}, f"{DIRECT}\nth.b - sv.connection\nth.branch - bath.hot\n{more}")


SOUND: dict[str, Drawing] = {
    "heating": pumped_vented(),
    "hot water": vented_store(),
    "what it serves is not known": pumped_vented(**with_data("fc", serves=None)),
    "direct hot water": direct(),
}

MIXED: dict[str, tuple[Drawing, str]] = {
    "one feed for both": (
        pumped_vented("feed: fc.feed - x.a\nf2: x.b - tf.branch\ncold: x.branch - st.cold\nhot: st.hot - bath.hot",
                      without="feed", **STORE),
        "fc",
    ),
    "said to serve hot water": (pumped_vented(**with_data("fc", serves="hot_water")), "fc"),
    "said to serve heating": (vented_store(sc=("feed_cistern", {"serves": "heating"})), "sc"),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "cistern"), MIXED.values(), ids=MIXED.keys())
def test_fires(drawing: Drawing, cistern: str) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("danger", (cistern,))


def test_direct_hot_water_with_a_radiator_on_it() -> None:
    ways = DIRECT.replace("hs.flow - t2.a", "hs.flow - r1.a\nr1.b - t2.a\nr1.branch - rad.flow")
    ways = ways.replace("t1.branch - hs.return", "t1.branch - r2.a\nr2.b - hs.return\nr2.branch - rad.return")
    parts: dict[str, Part] = dict.fromkeys(("t1", "t2", "r1", "r2"), "tee")
    parts |= {"sc": "feed_cistern", "hs": "heat_source", "st": "vented_store", "rad": "radiator"}
    parts |= {"th": "tee"}
    assert only(NAME, made(parts, ways)).components == ("sc",)


def test_without_a_cistern_it_does_not_apply() -> None:
    assert asked(NAME, sealed()).status == "not applicable"
