"""Uncontrolled heat on sealed water: what is a danger, and what stands next door to it."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, only
from tests.checks.houses import sealed, vented
from tests.made import Part

NAME = "uncontrolled-source-sealed"
FIRE: Part = ("heat_source", {"heat": "uncontrolled"})

SEALED: dict[str, Drawing] = {
    "with all its devices": sealed(hs=FIRE),
    "a cistern fills it through a check valve only": sealed(
        "fc.feed cv.in:out t3.branch",
        ring="hs.flow t1.a:b rad.flow:return t3.a:b t2.a:b hs.return",
        hs=FIRE,
        fc="feed_cistern",
        cv="check_valve",
        t3="tee",
    ),
    "with a hand-reset high limit": sealed(
        hs=("heat_source", {"heat": "uncontrolled", "high_limit": "hand_reset"})
    ),
}


@pytest.mark.parametrize("drawing", SEALED.values(), ids=SEALED)
def test_danger(drawing: Drawing) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade, finding.components) == ("danger", ("hs",))


SILENT: dict[str, tuple[Drawing, str]] = {
    "open-vented": (vented(hs=FIRE), "judged"),
    "its vent has a valve, which another check speaks of": (
        vented(vent="t1.branch iv.a:b ov.connection", iv="isolating_valve", hs=FIRE),
        "judged",
    ),
    "switched": (sealed(), "not applicable"),
    "a sealed circuit behind an exchanger": (
        vented(
            "hx.secondary_out r2.flow:return hx.secondary_in",
            ring="hs.flow t1.a:b hx.primary_in:primary_out t2.a:b hs.return",
            hs=FIRE,
            hx="heat_exchanger",
            r2="radiator",
        ),
        "judged",
    ),
    "heat not known, open-vented": (vented(hs=("heat_source", {"heat": None})), "judged"),
}


@pytest.mark.parametrize(("drawing", "status"), SILENT.values(), ids=SILENT)
def test_silent(drawing: Drawing, status: str) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), status)


def test_heat_not_known() -> None:
    finding = only(NAME, sealed(hs=("heat_source", {"heat": None})))
    assert (finding.grade, finding.would_be, finding.missing) == ("unanswered", "danger", ("hs.heat",))
