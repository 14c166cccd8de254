"""A store without an expansion relief valve."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.store.fed import COLD, GROUP, fed, store

NAME = "expansion-relief-absent"

NO_RELIEF = COLD.replace(" t2.a:b", "")


@pytest.mark.parametrize(
    "drawing",
    [
        fed(expansion="", cold=NO_RELIEF),
        fed(expansion="t2.branch x.inlet", x="temperature_relief_valve"),
        fed(expansion="", cold=NO_RELIEF, us=store(built_in=["temperature_relief"])),
        fed(expansion="", cold=NO_RELIEF, us=store(volume_l=10)),
    ],
    ids=["none", "a second temperature relief valve", "the other one built in", "small store too"],
)
def test_fires(drawing: Drawing) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("danger", ("us",))


def test_names_the_part_that_cannot_serve() -> None:
    before_check = fed(cold="cm.outlet rv.in:out t2.a:b cv.in:out t1.a:b us.cold")
    finding = only(NAME, before_check)
    assert finding.components == ("us", "cv", "er")
    assert before_check.name("cv") in finding.message
    group_the_wrong_way = fed(cold="cm.outlet ig.out:in t1.a:b us.cold", expansion="", ig=GROUP)
    assert only(NAME, group_the_wrong_way).components == ("us", "ig")


@pytest.mark.parametrize(
    "drawing",
    [
        fed(),
        fed(cold="cm.outlet ig.in:out t1.a:b us.cold", expansion="", ig=GROUP),
        fed(expansion="", cold=NO_RELIEF, us=store(built_in=["expansion_relief"])),
        fed(expansion="t2.branch iv.a:b er.inlet", iv="isolating_valve"),
        fed(expansion="us.secondary_return er.inlet", cold=NO_RELIEF),
    ],
    ids=[
        "there",
        "inlet group",
        "built in",
        "behind a valve, which another check speaks of",
        "elsewhere on it",
    ],
)
def test_silent(drawing: Drawing) -> None:
    assert found(NAME, drawing) == ()
    assert asked(NAME, drawing).status == "judged"
