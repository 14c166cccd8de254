"""Nothing cold is drawn between a mains-fed store and its check valve."""

from __future__ import annotations

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.supply.cold_drawn_after_check import propose
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.supply.plumbing import blended, new_open_ends, plumbed
from tests.made import Part

NAME = "cold-drawn-after-check"
MAIN = "cm.outlet pr.in:out t1.a:b c1.in:out t2.a:b us.cold"
CHECK_BUILT_IN: Part = ("unvented_store", {"built_in": ["check_valve"]})


@pytest.mark.parametrize(
    ("ways", "taps"),
    [
        ((MAIN, "t2.branch sink.cold"), ["sink"]),
        ((MAIN, "t2.branch v1.a:b t3.a:b sink.cold", "t3.branch basin.cold"), ["sink", "basin"]),
        ((MAIN, "t2.branch c2.in:out sink.cold"), ["sink"]),  # a check valve of its own comes too late
        ((MAIN, "t2.branch b1.cold", "us.hot b1.hot:mixed bath.hot"), ["b1"]),
        (("cm.outlet ig.in:out t2.a:b us.cold", "t2.branch sink.cold"), ["sink"]),
        (("cm.outlet c1.in:out v1.a:b t2.a:b us.cold", "t2.branch sink.cold"), ["sink"]),
        (("cm.outlet c1.in:out t2.a:b pr.in:out us.cold", "t2.branch k1.connection"), None),
        (
            ("cm.outlet c1.in:out pr.in:out t2.a:b us.cold", "t2.branch sink.cold"),
            ["sink"],
        ),  # reduced after it
        (
            (
                "cm.outlet c1.in:out pr.in:out t2.a:b us.cold",
                "t2.branch b1.cold",
                "us.hot b1.hot:mixed bath.hot",
            ),
            ["b1"],
        ),
    ],
)
def test_fires(ways: tuple[str, ...], taps: list[str] | None) -> None:
    drawing = plumbed(*ways)
    if taps is None:
        assert asked(NAME, drawing).findings == ()
        return
    finding = only(NAME, drawing)
    assert finding.grade.value == "fault"
    assert finding.components == ("us", *taps)


@pytest.mark.parametrize(
    ("ways", "status"),
    [
        ((MAIN, "t2.branch k1.connection", "t1.branch sink.cold"), "judged"),
        ((MAIN, "t2.branch er.inlet", "us.hot sink.hot"), "judged"),
        ((MAIN, "t2.branch c2.out:in sink.cold"), "judged"),  # nothing can be drawn that way
        ((MAIN, "t2.branch sink.hot"), "judged"),  # a hot tap on cold pipe is no cold outlet
        (("cm.outlet ig.in:out us.cold", "ig.balanced_cold sink.cold"), "judged"),
        (("cm.outlet pr.in:out t2.a:b us.cold", "t2.branch sink.cold"), "not applicable"),  # no check valve
        (("cm.outlet t2.a:b us.cold", "t2.branch c1.in:out sink.cold"), "not applicable"),
        # a way round the check valve: it is none
        (
            (
                "cm.outlet t1.a:b c1.in:out t2.a:b t3.a:b us.cold",
                "t1.branch v1.a:b t2.branch",
                "t3.branch sink.cold",
            ),
            "not applicable",
        ),
        (("fc.feed c1.in:out t2.a:b vs.cold", "t2.branch sink.cold"), "not applicable"),
        (("cm.outlet sink.cold",), "not applicable"),
    ],
)
def test_near_misses(ways: tuple[str, ...], status: str) -> None:
    answer = asked(NAME, plumbed(*ways))
    assert (answer.findings, answer.status) == ((), status)


def test_a_check_valve_built_into_the_store_leaves_no_pipe_between() -> None:
    ways = ("cm.outlet pr.in:out t2.a:b us.cold", "t2.branch sink.cold")
    assert found(NAME, plumbed(*ways, us=CHECK_BUILT_IN)) == ()
    assert found(NAME, plumbed(MAIN, "t2.branch sink.cold", us=CHECK_BUILT_IN)) == ()


def test_two_stores_behind_one_check_valve() -> None:
    ways = (MAIN.replace("us.cold", "t3.a:b us.cold"), "t3.branch u2.cold", "t2.branch sink.cold")
    findings = found(NAME, plumbed(*ways, u2="unvented_store"))
    assert [each.components for each in findings] == [("us", "sink"), ("u2", "sink")]


@pytest.mark.parametrize(
    "drawing",
    [
        plumbed(MAIN, "t2.branch sink.cold", "t1.branch k1.connection"),
        plumbed("cm.outlet ig.in:out t2.a:b us.cold", "t2.branch sink.cold"),
        plumbed("cm.outlet c1.in:out t2.a:b us.cold", "t2.branch t3.a:b sink.cold", "t3.branch basin.cold"),
        plumbed(MAIN, "t2.branch b1.cold", "us.hot b1.hot:mixed bath.hot", b1=blended(44)),
    ],
)
def test_the_cure(drawing: Drawing) -> None:
    proposal = next(propose(Case(drawing), only(NAME, drawing)))
    assert found(NAME, proposal.drawing) == ()
    assert new_open_ends(drawing, proposal.drawing) == set()
