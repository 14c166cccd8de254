"""Test pressures and treatment of a heating circuit, where the sources agree and where they do not."""

from __future__ import annotations

from circuitcheck.told import a_word

TEST_FACTOR = 1.5
TEST_SOURCE = a_word(
    "BS 5449 as taught in trade textbooks: 1.5 times the normal working pressure, after 30 minutes to settle"
)
OTHER_TEST_FACTOR = 1.3
OTHER_TEST_SOURCE = a_word("BS EN 14336 (from memory): at least 1.3 times")

INHIBITOR_SHARE = 0.01
INHIBITOR_SOURCE = a_word(
    "common practice, no source: a litre for each 100 litres; the supplier's dose comes first"
)


def pressure_test_bar(working_bar: float) -> float:
    """The pressure that a circuit is tested at, in bar; the higher of the two rules. Source: `TEST_SOURCE`."""
    return TEST_FACTOR * working_bar


def other_pressure_test_bar(working_bar: float) -> float:
    """The lower test pressure of the other source, in bar. Source: `OTHER_TEST_SOURCE`."""
    return OTHER_TEST_FACTOR * working_bar


def inhibitor_l(content_l: float) -> float:
    """Litres of inhibitor for a content in litres. Source: `INHIBITOR_SOURCE`."""
    return INHIBITOR_SHARE * content_l
