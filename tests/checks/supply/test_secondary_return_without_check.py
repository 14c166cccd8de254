"""Water does not go backwards through a secondary return."""

from __future__ import annotations

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.supply.secondary_return_without_check import propose
from tests.checks.asking import asked, found, only
from tests.checks.supply.plumbing import FED, new_open_ends, plumbed

NAME = "secondary-return-without-check"
HOT = "us.hot t5.a:b t6.a:b"
TAPS = ("t5.branch sink.hot", "t6.branch bath.hot")
INTO_COLD = "cm.outlet pr.in:out c1.in:out t2.a:b us.cold"


@pytest.mark.parametrize(
    ("back", "fires"),
    [
        ("p1.in:out us.secondary_return", True),
        ("v1.a:b us.secondary_return", True),  # by gravity
        ("p1.in:out c2.in:out us.secondary_return", False),
        ("c2.in:out p1.in:out us.secondary_return", False),
        ("p1.in:out t7.a:b c2.in:out t8.a:b us.secondary_return", True),  # with a way round it
    ],
)
def test_with_and_without(back: str, fires: bool) -> None:
    round_it = ("t7.branch v9.a:b t8.branch",) if "t7" in back else ()
    answer = asked(NAME, plumbed(FED, f"{HOT} {back}", *TAPS, *round_it))
    assert [each.components[0] for each in answer.findings] == ["us"] * fires
    assert answer.status == "judged"


def test_a_check_valve_the_wrong_way_is_no_return_at_all() -> None:
    drawing = plumbed(FED, f"{HOT} p1.in:out c2.out:in us.secondary_return", *TAPS)
    assert asked(NAME, drawing).status == "not applicable"


@pytest.mark.parametrize(("check", "fires"), [("", True), ("c2.in:out ", False)])
def test_a_pumped_return_into_the_cold_pipe(check: str, fires: bool) -> None:
    findings = found(NAME, plumbed(INTO_COLD, f"{HOT} p1.in:out {check}t2.branch", *TAPS))
    assert [each.components[:2] for each in findings] == [("us", "p1")] * fires


def test_a_pumped_return_into_a_vented_stores_feed() -> None:
    ways = ("fc.feed t2.a:b vs.cold", "vs.hot t5.a:b p1.in:out t2.branch", "t5.branch sink.hot")
    assert only(NAME, plumbed(*ways)).components[:2] == ("vs", "p1")


@pytest.mark.parametrize(
    "ways",
    [
        (FED, "us.hot sink.hot", "us.secondary_return k1.connection"),
        (FED, "us.hot sink.hot", "us.secondary_return bath.hot"),  # a second draw-off, no return
        ("cm.outlet p1.in:out t2.a:b us.cold", "t2.branch sink.cold", "us.hot bath.hot"),  # a booster
        (FED, "us.hot p1.in:out shower.hot"),  # a shower pump
        ("hs.flow p1.in:out us.coil_flow:coil_return hs.return", FED, "us.hot sink.hot"),
        ("cm.outlet sink.cold",),
    ],
    ids=["capped", "draw-off", "booster", "shower pump", "heating pump", "none"],
)
def test_no_return(ways: tuple[str, ...]) -> None:
    assert asked(NAME, plumbed(*ways)).status == "not applicable"


@pytest.mark.parametrize("back", ["p1.in:out us.secondary_return", "v1.a:b us.secondary_return"])
def test_the_cure(back: str) -> None:
    drawing = plumbed(FED, f"{HOT} {back}", *TAPS)
    proposal = next(propose(Case(drawing), only(NAME, drawing)))
    assert found(NAME, proposal.drawing) == ()
    assert asked(NAME, proposal.drawing).status == "judged"
    assert new_open_ends(drawing, proposal.drawing) == set()


def test_the_cure_of_a_return_into_the_cold_pipe() -> None:
    drawing = plumbed(INTO_COLD, f"{HOT} p1.in:out t2.branch", *TAPS)
    proposal = next(propose(Case(drawing), only(NAME, drawing)))
    assert found(NAME, proposal.drawing) == ()


def test_the_return_that_has_its_check_valve_gets_no_second_one() -> None:
    drawing = plumbed(
        INTO_COLD, f"{HOT} v1.a:b c2.in:out us.secondary_return", "t6.branch p1.in:out t2.branch", TAPS[0]
    )
    (proposal,) = propose(Case(drawing), only(NAME, drawing))
    assert found(NAME, proposal.drawing) == ()
