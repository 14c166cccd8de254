"""A temperature relief valve anywhere but on the store's relief port."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.store.fed import COLD, HOT, fed, store

NAME = "relief-misplaced"

ON_COLD: dict[str, Any] = {
    "temperature": "t5.branch tr.inlet",
    "cold": COLD.replace(" us.cold", " t5.a:b us.cold"),
}

PLACES: dict[str, Drawing] = {
    "cold pipe": fed(**ON_COLD),
    "hot pipe": fed(temperature="t5.branch tr.inlet", hot="us.hot t5.a:b ou.hot"),
    "right at the hot port": fed(temperature="t5.a tr.inlet", hot="us.hot t5.branch:b ou.hot"),
    "secondary return": fed(temperature="us.secondary_return tr.inlet"),
    "before the check valve": fed(
        temperature="t5.branch tr.inlet", cold=COLD.replace("cv.in:out", "t5.a:b cv.in:out")
    ),
    "hot pipe, behind a valve": fed(
        temperature="t5.branch iv.a:b tr.inlet", hot="us.hot t5.a:b ou.hot", iv="isolating_valve"
    ),
    "on the cold pipe, the relief port closed by a cap": fed("us.relief k.connection", k="cap", **ON_COLD),
}


@pytest.mark.parametrize("drawing", PLACES.values(), ids=PLACES.keys())
def test_fires(drawing: Drawing) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("danger", ("tr", "us"))


@pytest.mark.parametrize(
    "drawing",
    [
        fed(),
        fed(temperature="us.relief t5.a:b tr.inlet"),
        fed(temperature="us.relief t5.branch:b tr.inlet", hot=HOT),
        fed(temperature="us.relief iv.a:b tr.inlet", iv="isolating_valve"),
        fed(temperature="us.relief cv2.in:out tr.inlet", cv2="check_valve"),
        fed(temperature="us.relief e2.inlet", e2="expansion_relief_valve", us=store(built_in=["temperature_relief"])),
    ],
    ids=["there", "tee", "by the branch", "valve", "check valve", "built in"],
)  # fmt: skip
def test_silent(drawing: Drawing) -> None:
    assert found(NAME, drawing) == ()
    assert asked(NAME, drawing).status == "judged"


@pytest.mark.parametrize("temperature", ["", "t4.branch tr.inlet"])
def test_not_applicable_where_it_is_on_no_stores_water(temperature: str) -> None:
    assert asked(NAME, fed(temperature=temperature, heating_vessel="")).status == "not applicable"


@pytest.mark.parametrize(("volume", "grades"), [(15, []), (16, ["danger"]), (None, ["unanswered"])])
def test_small_stores(volume: float | None, grades: list[str]) -> None:
    findings = found(NAME, fed(**ON_COLD, us=store(volume_l=volume)))
    assert [each.grade.value for each in findings] == grades


def test_each_valve_by_itself() -> None:
    second = fed("t5.branch r2.inlet", hot="us.hot t5.a:b ou.hot", r2="temperature_relief_valve")
    assert only(NAME, second).components == ("r2", "us")
