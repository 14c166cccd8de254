"""An open-vented circuit without its vent, and the ways in which it has one after all."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed, vented

NAME = "open-vent-absent"

SOUND: dict[str, Drawing] = {
    "vent and feed": vented(),
    "a vent drawn to the cistern": vented(vent="t1.branch fc.vent_over"),
    "vent behind a valve, which another check speaks of": vented(
        vent="t1.branch iv.a:b ov.connection", iv="isolating_valve"
    ),
    "combined feed and vent, where allowed": vented(
        vent="", hs=("heat_source", {"combined_feed_and_vent": True})
    ),
    "sealed": sealed(),
    "sealed, filled through a check valve": sealed(
        "fc.feed cv.in:out t3.branch",
        ring="hs.flow t1.a:b rad.flow:return t2.a:b t3.a:b hs.return",
        t3="tee",
        cv="check_valve",
        fc="feed_cistern",
    ),
    "two circuits, each vented": vented(
        "h2.flow t3.a:b r2.flow:return t4.a:b h2.return",
        "t3.branch o2.connection",
        "f2.feed t4.branch",
        h2="heat_source", t3="tee", t4="tee", r2="radiator", o2="open_vent", f2="feed_cistern",
    ),
}  # fmt: skip

ABSENT: dict[str, Drawing] = {
    "feed only": vented(vent=""),
    "feed only, combined not allowed": vented(vent="", hs=("heat_source", {"combined_feed_and_vent": False})),
    "an air vent in its place": vented(vent="t1.branch av.connection", av="air_vent"),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert found(NAME, drawing) == ()


@pytest.mark.parametrize("drawing", ABSENT.values(), ids=ABSENT.keys())
def test_fires(drawing: Drawing) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("danger", ("hs",))


def test_names_the_check_valve_in_the_vent() -> None:
    finding = only(NAME, vented(vent="t1.branch cv.in:out ov.connection", cv="check_valve"))
    assert finding.components == ("hs", "cv", "ov")
    assert "check valve cv" in finding.message


def test_of_two_circuits_only_the_one_without() -> None:
    drawing = vented(
        "h2.flow r2.flow:return t4.a:b h2.return",
        "f2.feed t4.branch",
        h2="heat_source",
        t4="tee",
        r2="radiator",
        f2="feed_cistern",
    )
    assert only(NAME, drawing).components == ("h2",)


def test_statuses() -> None:
    assert asked(NAME, sealed()).status == "not applicable"
    assert asked(NAME, vented()).status == "judged"


def test_the_taken_default_of_a_combined_pipe_is_told() -> None:
    from circuitcheck.analysis import analyse

    assert "hs.combined_feed_and_vent = false" in analyse(vented(vent="")).taken


def test_a_combined_pipe_that_is_not_known_is_unanswered() -> None:
    finding = only(NAME, vented(vent="", hs=("heat_source", {"combined_feed_and_vent": None})))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("hs.combined_feed_and_vent",))
    assert finding.would_be is not None and finding.would_be.value == "danger"


def test_a_combined_pipe_that_is_not_known_does_not_matter_where_there_is_a_vent() -> None:
    drawing = vented(hs=("heat_source", {"combined_feed_and_vent": None}))
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")
