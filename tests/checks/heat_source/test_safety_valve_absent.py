"""No safety valve: every way to lack one, and what looks like lacking one and does not."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import TIGHT_PUMP, sealed, vented

NAME = "safety-valve-absent"

SOUND: dict[str, Drawing] = {
    "on the flow": sealed(),
    "on the return": sealed(
        "t2.branch t3.a:b sv.inlet", safety="", vessel="t3.branch ev.connection", t3="tee"
    ),
    "built in": sealed(safety="", hs=("heat_source", {"built_in": ["safety_valve"]})),
    "built into a combination heat source": sealed(
        safety="", hs=("combination_heat_source", {"built_in": ["safety_valve"]})
    ),
    "beyond a valve, which another check speaks of": sealed(
        safety="t1.branch iv.a:b sv.inlet", iv="isolating_valve"
    ),
    "beyond a strainer": sealed(safety="t1.branch st.in:out sv.inlet", st="strainer"),
    "beyond a pump": sealed(safety="t1.branch pu.in:out sv.inlet", pu=TIGHT_PUMP),
    "open-vented": vented(),
}

ABSENT: dict[str, Drawing] = {
    "none drawn": sealed(safety=""),
    "a store's relief valve in its place": sealed(safety="t1.branch xr.inlet", xr="expansion_relief_valve"),
    "joined by its outlet": sealed(safety="t1.branch sv.outlet"),
    "a vessel built in and no safety valve": sealed(safety="", hs=("heat_source", {"built_in": ["vessel"]})),
    "on the far side of an exchanger": sealed(
        "hx.secondary_in k1.connection",
        "hx.secondary_out sv.inlet",
        safety="",
        ring="hs.flow t1.a:b hx.primary_in:primary_out t2.a:b hs.return",
        hx="heat_exchanger",
        k1="cap",
    ),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert found(NAME, drawing) == ()


@pytest.mark.parametrize("drawing", ABSENT.values(), ids=ABSENT.keys())
def test_fires(drawing: Drawing) -> None:
    findings = [finding for finding in found(NAME, drawing) if finding.components[0] == "hs"]
    assert [(finding.grade.value, finding.components) for finding in findings] == [("danger", ("hs",))]


@pytest.mark.parametrize(
    ("kind", "ports"),
    [
        ("check_valve", "in:out"),
        ("check_valve", "out:in"),
        ("bypass_valve", "in:out"),
        ("pressure_reducing_valve", "in:out"),
    ],
)
def test_names_the_part_that_cannot_serve(kind: str, ports: str) -> None:
    drawing = sealed(safety=f"t1.branch xx.{ports} sv.inlet", xx=kind)
    finding = only(NAME, drawing)
    assert finding.components == ("hs", "xx", "sv")
    assert drawing.name("xx") in finding.message


def test_water_behind_an_exchanger_needs_its_own() -> None:
    drawing = sealed(
        "hx.secondary_out r2.flow:return hx.secondary_in",
        ring="hs.flow t1.a:b hx.primary_in:primary_out t2.a:b hs.return",
        hx="heat_exchanger",
        r2="radiator",
    )
    assert only(NAME, drawing).components == ("hx",)


def test_statuses() -> None:
    assert asked(NAME, sealed()).status == "judged"
    assert asked(NAME, vented()).status == "not applicable"
