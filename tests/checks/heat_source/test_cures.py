"""What the checks of the heat source's devices propose puts their findings right and raises nothing worse."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import only
from tests.checks.heat_source.test_air_vent_absent import BASE, ring
from tests.checks.heat_source.test_drain_absent import bare, plant
from tests.checks.heat_source.test_filter_absent import pumped
from tests.checks.heat_source.test_gauge_and_filling import BEHIND, linked
from tests.checks.heat_source.test_heat_leak_absent import fire
from tests.checks.heat_source.test_plastic_near_heat_source import PLASTIC
from tests.checks.heat_source.test_plastic_near_heat_source import ring as plastic_ring
from tests.checks.houses import sealed

CASES: dict[str, tuple[str, Drawing]] = {
    "a gauge": ("gauge-absent", sealed()),
    "a gauge behind an exchanger": (
        "gauge-absent",
        sealed(
            *BEHIND,
            ring="hs.flow t1.a:b hx.primary_in:primary_out t2.a:b hs.return",
            hx="heat_exchanger",
            r2="radiator",
        ),
    ),
    "a filling link": ("filling-link-absent", sealed()),
    "a filling link from the main there is": (
        "filling-link-absent",
        sealed("cm.outlet ol.cold", cm="cold_main", ol="outlet"),
    ),
    "taken off": ("filling-link-left-connected", linked(left_connected=True)),
    "a double check": ("filling-link-without-double-check", linked(double_check=False)),
    "a high limit": ("overheat-cut-out-absent", sealed()),
    "a filter": ("filter-absent", pumped()),
    "a drain": ("drain-absent", bare(5)),
    "a drain at the low point": (
        "drain-absent",
        plant(heights={"rad": 0.0, "t1": -0.5, "d1": -0.5}),
    ),
    "an air vent": ("air-vent-absent", ring(BASE)),
    "an air vent on level parts": ("air-vent-absent", ring({**BASE, "vs": 2.5})),
    "metal pipe": ("plastic-near-heat-source", plastic_ring({"f1": PLASTIC, "r1": PLASTIC})),
    "a radiator without valves": ("heat-leak-absent", fire("rad.flow:return", rad="radiator")),
}


def test_a_filter_is_offered_at_one_place_with_valves_and_without() -> None:
    drawing = pumped()
    sentences = [
        str(each.says)
        for each in checks()["filter-absent"].propose(Case(drawing), only("filter-absent", drawing))
    ]
    assert sentences == [
        f"Cut a dirt separator {how} valves into the pipe on heat source hs's return."
        for how in ("with", "without")
    ]


def test_a_new_air_vent_and_its_tee_stand_as_high_as_the_part_beside_them() -> None:
    drawing = ring(BASE)
    analysis = analyse(drawing)
    (finding,) = (each for each in analysis.findings if each.check == "air-vent-absent")
    after = cures(analysis, finding)[0].drawing
    new = [part for id, part in after.components.items() if id not in drawing.components]
    assert {part.kind.name: part.value("height_m") for part in new} == {"air_vent": 2.5, "tee": 2.5}


@pytest.mark.parametrize(("check", "drawing"), CASES.values(), ids=CASES)
def test_a_cure_is_found_and_cures(check: str, drawing: Drawing) -> None:
    analysis = analyse(drawing)
    findings = [finding for finding in analysis.findings if finding.check == check]
    assert findings
    for finding in findings:
        found = cures(analysis, finding)
        assert found
        for cure in found:
            assert str(cure.says)[-1] == "."
            left = [each for each in analyse(cure.drawing).findings if each.check == check]
            # A new tee's height may not be known; nothing else of the same thing may be left.
            assert all(each.grade == "unanswered" or each.components != finding.components for each in left)
