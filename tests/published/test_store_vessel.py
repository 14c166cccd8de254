"""A mains-fed store's vessel and limits against figures printed outside the project."""

from __future__ import annotations

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.drawing.value import Drawing
from circuitcheck.sizing.store_vessel import taken_l, vessel_for


@pytest.mark.parametrize(
    ("store_l", "charge", "final", "printed"), [(200, 3.0, 6.0, 18.7), (210, 3.5, 6.0, 23.5)]
)
def test_the_trade_formula_with_its_four_per_cent(
    store_l: float, charge: float, final: float, printed: float
) -> None:
    """V = e C / (1 - (charge + 1) / (final + 1)), e = 4 % from cold to near boiling.

    Source: common practice, no source; it is where the rule of 10 to 12 % of the store comes from.
    """
    assert vessel_for(0.04 * store_l, charge, charge, final).volume_l == pytest.approx(printed, abs=0.1)


def test_the_classroom_vessel_of_18_litres() -> None:
    """A vessel of 18 l charged at 1.5 bar has taken 9 l when it stands at 4.0 bar.

    Source: City & Guilds Textbook: Plumbing, Book 1, 2019, inputs of an exercise on Boyle's law; the
    answer is worked with absolute pressures.
    """
    assert taken_l(18, 1.5, 1.5, 4.0) == pytest.approx(9)


def test_limits_of_the_rule_books() -> None:
    """Approved Document G (15 l), BS EN 1490 (95 °C), BS 5449 (0.35 bar), BS EN 806-2 (0.8; from memory)."""
    england = Case(Drawing())
    named = {
        "exempt_content_l": 15,
        "highest_relief_temperature_c": 95,
        "coil_margin_bar": 0.35,
        "reducing_share_of_relief": 0.8,
        "vessel_final_share_of_relief": 0.8,
        "secondary_content_l": 10,
    }
    assert {name: england.limit(f"store.{name}").value for name in named} == named
    for name in named:
        assert england.limit(f"store.{name}").source
