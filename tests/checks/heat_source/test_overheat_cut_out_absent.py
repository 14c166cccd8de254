"""A hand-reset high limit on a sealed, switched heat source: what lacks it and what does not."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed, vented
from tests.made import Part

NAME = "overheat-cut-out-absent"
EXCHANGER = (
    "hx.secondary_out:secondary_in t4.branch",
    "t4.a ev.connection",
    "t4.b sv.inlet",
)


def source(kind: str = "heat_source", **data: Any) -> Part:
    return (kind, data)


@pytest.mark.parametrize(
    "data",
    [{}, {"high_limit": None}, {"high_limit": "self_reset"}, {"high_limit": None, "heat": "switched"}],
)
@pytest.mark.parametrize("kind", ["heat_source", "combination_heat_source"])
def test_danger(kind: str, data: dict[str, Any]) -> None:
    finding = only(NAME, sealed(hs=source(kind, **data)))
    assert (finding.grade, finding.components) == ("danger", ("hs",))
    assert ("resets itself" in finding.message) == (data.get("high_limit") == "self_reset")


@pytest.mark.parametrize(
    ("drawing", "status"),
    [
        (sealed(hs=source(high_limit="hand_reset")), "judged"),
        (vented(), "not applicable"),
        (vented(vent=""), "not applicable"),
        (sealed(hs=source(heat="uncontrolled")), "not applicable"),
        (sealed(hs=source(heat=None, high_limit="hand_reset")), "judged"),
    ],
)
def test_silent(drawing: Drawing, status: str) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), status)


def test_heat_not_known() -> None:
    finding = only(NAME, sealed(hs=source(heat=None)))
    assert (finding.grade, finding.would_be, finding.missing) == ("unanswered", "danger", ("hs.heat",))


def test_each_heat_source_is_judged_by_itself() -> None:
    drawing = sealed(
        "t1.branch h2.flow:return t2.branch",
        vessel="",
        safety="",
        hs=source(high_limit="hand_reset"),
        h2=source(high_limit="self_reset"),
    )
    assert [finding.components for finding in found(NAME, drawing)] == [("h2",)]
