"""A check valve built into a mains-fed store: what stands before it is cut off from the stored water."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.store.fed import COLD, fed, store

BUILT_IN = store(built_in=["check_valve"])
NO_CHECK = COLD.replace(" cv.in:out", "")


def behind(
    *ways: str,
    cold: str = "cm.outlet rv.in:out us.cold",
    hot: str = "us.hot t1.a:b t2.a:b ou.hot",
    **parts: Any,
) -> Drawing:
    """The vessel and the expansion relief valve on the hot side, behind the store's own check valve."""
    return fed(*ways, cold=cold, hot=hot, controls=None, design=None, pipe=None, **parts)


@pytest.mark.parametrize("check", ["store-vessel-absent", "expansion-relief-absent"])
def test_what_stands_on_the_cold_pipe_does_not_reach_the_store(check: str) -> None:
    assert found(check, fed(cold=NO_CHECK)) == ()
    assert only(check, fed(cold=NO_CHECK, us=BUILT_IN)).grade.value == "danger"
    assert found(check, behind(us=BUILT_IN)) == ()


def test_a_check_valve_besides_changes_nothing_for_what_stands_between() -> None:
    assert found("store-vessel-absent", fed()) == ()
    assert only("store-vessel-absent", fed(us=BUILT_IN)).grade.value == "danger"


def test_whether_it_is_built_in_decides_where_it_is_not_known() -> None:
    unknown = store(built_in=None)
    finding = only("store-vessel-absent", fed(us=unknown))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("us.built_in",))
    assert found("store-vessel-absent", behind(us=unknown)) == ()
    finding = only("cold-check-absent", fed(cold=NO_CHECK, us=unknown))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("us.built_in",))


FED_CHECKS = (
    "store-pressure-not-limited", "store-vessel-too-small", "store-vessel-precharge-wrong", "main-too-weak",
    "temperature-relief-absent", "relief-misplaced", "hot-water-slow", "hot-pipe-too-long", "store-too-cool",
    "cross-connection", "cold-check-absent", "relief-settings-out-of-order",
)  # fmt: skip


@pytest.mark.parametrize("name", FED_CHECKS)
def test_a_store_with_it_is_judged_as_one_with_a_check_valve_before_it(name: str) -> None:
    """The parts on the hot side, the check valve before the store or in it."""

    def answer(drawing: Drawing) -> tuple[str, list[tuple[str, tuple[str, ...], tuple[str, ...]]]]:
        judged = asked(name, drawing)
        return judged.status, [
            (each.grade.value, each.components, tuple(each.missing)) for each in judged.findings
        ]

    before = behind(cold="cm.outlet rv.in:out cv.in:out us.cold")
    # A pipe in place of the valve, so that the pipes are called the same.
    inside = behind(cold="cm.outlet rv.in:out cv.a:b us.cold", us=BUILT_IN, cv="isolating_valve")
    assert answer(inside) == answer(before)


def test_hot_water_comes_to_the_same_outlets() -> None:
    ring = "t6.branch p2.in:out us.secondary_return"
    drawing = behind(ring, hot="us.hot t6.a:b t1.a:b t2.a:b ou.hot", us=BUILT_IN, p2="pump")
    plain = replace(
        drawing, components={**drawing.components, "us": replace(drawing.components["us"], data={})}
    )
    for name in ("secondary-return-without-check", "hot-supply-too-hot"):
        assert asked(name, drawing).status == asked(name, plain).status
    assert analyse(drawing).crashed == ()
