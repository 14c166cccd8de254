"""Published rules on weight, filling, plastic, filters and drains, on whole drawings."""

from __future__ import annotations

import pytest

from circuitcheck.sizing.floor import filled_weight_kg, load_kn_m2, round_footprint_m2
from tests.checks.asking import found
from tests.checks.houses import sealed


def test_230_litres_are_230_kilograms() -> None:
    """Source: City & Guilds Textbook: Plumbing, Book 1, 2019: a litre of water weighs a kilogram."""
    assert filled_weight_kg(0, 230) == 230


def test_210_litres_on_a_circle_of_550_mm() -> None:
    """Worked by hand from the same: 255 kg, 2.5 kN on 0.2376 m², far above the 1.5 kN/m² that floors of
    dwellings are reckoned for (national annex to BS EN 1991-1-1, category A1; from memory)."""
    load = load_kn_m2(filled_weight_kg(45, 210), round_footprint_m2(550))
    assert load == pytest.approx(10.5, abs=0.05)
    assert load > 1.5


@pytest.mark.parametrize(
    ("check", "field", "right", "wrong"),
    [
        ("filling-link-left-connected", "left_connected", False, True),
        ("filling-link-without-double-check", "double_check", True, False),
    ],
)
def test_a_filling_link_is_temporary_and_has_a_double_check(
    check: str, field: str, right: bool, wrong: bool
) -> None:
    """Source: Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraph 24; guidance G24.2."""
    for value, expected in ((right, 0), (wrong, 1)):
        drawing = sealed(
            "cm.outlet fl.supply:system t3.branch",
            ring="hs.flow t1.a:b rad.flow:return t3.a:b t2.a:b hs.return",
            t3="tee",
            cm="cold_main",
            fl=("filling_link", {field: value}),
        )
        assert len(found(check, drawing)) == expected


def test_a_sealed_circuit_has_a_gauge() -> None:
    """Source: BS 5449; City & Guilds Textbook: Plumbing, Book 1, 2019, lists a gauge."""
    assert [finding.grade for finding in found("gauge-absent", sealed())] == ["fault"]
