"""A pump on every way between vent and feed that passes no emitter."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import vented
from tests.checks.open_vented.plants import pumped_vented
from tests.checks.open_vented.test_vent_and_feed_apart import FEED_ON_RETURN, gravity

NAME = "pump-between-vent-and-feed"

ALL = "flow gap suck push back"

SOUND: dict[str, Drawing] = {
    "both before the pump": pumped_vented(),
    "both after the pump": pumped_vented(
        "a: hs.flow - pu.in\nb: pu.out - tv.a\ngap: tv.b - tf.a\nc: tf.b - rad.flow\nd: rad.return - hs.return",
        without=ALL,
    ),
    "vent on the flow, feed on the return, pump after the vent": pumped_vented(FEED_ON_RETURN, without=ALL),
    "gravity hot water": gravity(),
    "a second feed beyond the pump": pumped_vented(
        "push: pu.out - tg.a\na: tg.b - rad.flow\nb: f2.feed - tg.branch",
        without="push", tg="tee", f2=("feed_cistern", {"serves": "heating"}),
    ),
}  # fmt: skip

BETWEEN: dict[str, tuple[Drawing, str]] = {
    "on the flow": (
        pumped_vented(
            "flow: hs.flow - tv.a\na: tv.b - pu.in\nb: pu.out - tf.a\nc: tf.b - rad.flow\nd: rad.return - hs.return",
            without=ALL,
        ),
        "pu",
    ),
    "on the return, which pushes through the heat source": (
        pumped_vented(
            "flow: hs.flow - tv.a\na: tv.b - rad.flow\nb: rad.return - tf.a\nc: tf.b - pu.in\nd: pu.out - hs.return",
            without=ALL,
        ),
        "pu",
    ),
    "built in": (
        pumped_vented(
            "flow: hs.flow - tv.a\na: tv.b - rad.flow\nb: rad.return - tf.a\nc: tf.b - hs.return",
            without=ALL, hs=("heat_source", {"built_in": ["pump"]}),
        ),
        "hs",
    ),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "pump"), BETWEEN.values(), ids=BETWEEN.keys())
def test_fires(drawing: Drawing, pump: str) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("fault", (pump, "ov", "fc"))


def test_the_feed_is_moved_beside_the_vent() -> None:
    drawing, _ = BETWEEN["on the flow"]
    proposed = cures(analyse(drawing), only(NAME, drawing))
    assert proposed
    assert all(found(NAME, cure.drawing) == () for cure in proposed)


def test_without_a_pump_it_does_not_apply() -> None:
    assert asked(NAME, vented()).status == "not applicable"
