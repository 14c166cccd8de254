"""A mixer's cold comes from behind the reducing valve its hot is behind."""

from __future__ import annotations

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.supply.balanced_cold_unreduced import propose
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.supply.plumbing import blended, new_open_ends, plumbed
from tests.made import Part

NAME = "balanced-cold-unreduced"
MAIN = "cm.outlet t1.a:b pr.in:out t2.a:b c1.in:out t3.a:b us.cold"
RELIEF = "t3.branch er.inlet"
HOT = "us.hot shower.hot"
STRAIGHT = "t1.branch shower.cold"
BALANCED = "t2.branch shower.cold"


def main(standing: float | None = 3.0) -> Part:
    return ("cold_main", {"standing_pressure_bar": standing})


def grades(drawing: Drawing) -> list[str]:
    return [each.grade.value for each in found(NAME, drawing)]


def test_straight_and_balanced() -> None:
    finding = only(NAME, plumbed(MAIN, RELIEF, HOT, STRAIGHT, cm=main()))
    assert (finding.grade.value, finding.components) == ("advice", ("shower", "us", "cm"))
    answer = asked(NAME, plumbed(MAIN, RELIEF, HOT, BALANCED, cm=main()))
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("standing", "grade"), [(6, "advice"), (6.1, "fault")])
def test_the_main_over_the_relief(standing: float, grade: str) -> None:
    assert grades(plumbed(MAIN, RELIEF, HOT, STRAIGHT, cm=main(standing))) == [grade]


def test_a_check_valve_in_the_hot_pipe_keeps_the_pressure_off() -> None:
    drawing = plumbed(MAIN, RELIEF, "us.hot c2.in:out shower.hot", STRAIGHT, cm=main(9))
    assert grades(drawing) == ["advice"]


@pytest.mark.parametrize("relief", [RELIEF, ""])
@pytest.mark.parametrize("standing", [None, 4])
def test_what_is_missing(relief: str, standing: float | None) -> None:
    parts: dict[str, Part] = {"cm": main(standing)}
    if relief:
        parts["er"] = "expansion_relief_valve"
    drawing = plumbed(MAIN, *filter(None, [relief]), HOT, STRAIGHT, parts=parts)
    if not relief:
        assert grades(drawing) == ["advice"]
        return
    wanted = ("cm.standing_pressure_bar",) if standing is None else ()
    assert only(NAME, drawing).missing == (*wanted, "er.set_pressure_bar")


def test_an_inlet_group() -> None:
    group: Part = ("inlet_group", {"relief_pressure_bar": 6})
    straight = ("cm.outlet t1.a:b ig.in:out us.cold", HOT, STRAIGHT)
    assert grades(plumbed(*straight, ig=group, cm=main(7))) == ["fault"]
    balanced = ("cm.outlet ig.in:out us.cold", HOT, "ig.balanced_cold shower.cold")
    assert grades(plumbed(*balanced, ig=group, cm=main(7))) == []


def test_a_built_in_relief_is_set_no_higher_than_the_store_bears() -> None:
    built_in: Part = ("unvented_store", {"built_in": ["expansion_relief"], "maximum_pressure_bar": 6})
    assert grades(plumbed(MAIN, HOT, STRAIGHT, cm=main(7), us=built_in)) == ["fault"]
    assert grades(plumbed(MAIN, HOT, STRAIGHT, cm=main(5), us=built_in)) == ["advice"]


@pytest.mark.parametrize(("cold", "fires"), [("t1.branch", True), ("t2.branch", False)])
def test_a_blending_valve_mixes_too(cold: str, fires: bool) -> None:
    ways = (MAIN, RELIEF, "us.hot b1.hot:mixed shower.hot", f"{cold} b1.cold")
    assert grades(plumbed(*ways, b1=blended(44), cm=main(9))) == ["advice"] * fires


def test_a_mixer_behind_a_blending_valve() -> None:
    ways = (MAIN, RELIEF, "us.hot b1.hot:mixed shower.hot", "t2.branch b1.cold", STRAIGHT)
    assert only(NAME, plumbed(*ways, b1=blended(60), cm=main())).components == ("shower", "us", "cm")


@pytest.mark.parametrize(
    "ways",
    [
        ("cm.outlet t1.a:b c1.in:out us.cold", HOT, STRAIGHT),  # no reducing valve at all
        ("cm.outlet pr.in:out t1.a:b c1.in:out us.cold", HOT, STRAIGHT),  # the whole house reduced
        ("cm.outlet t1.a:b pr.in:out ch.cold", "ch.hot shower.hot", STRAIGHT),
        ("cm.outlet t1.a:b pr.in:out k1.connection", "fc.feed vs.cold", "vs.hot shower.hot", STRAIGHT),
        (MAIN, "us.hot shower.hot", "t1.branch sink.cold"),  # not one mixer
        (MAIN, "us.hot sink.hot", "cm2.outlet sink.cold", "t1.branch k1.connection"),
    ],
    ids=["unreduced", "all reduced", "as drawn", "cistern", "two taps", "another main"],
)
def test_near_misses(ways: tuple[str, ...]) -> None:
    drawing = plumbed(*ways, cm=main(), cm2="cold_main")
    expected = ["advice"] if "cm2.outlet" in " ".join(ways) else []
    assert grades(drawing) == expected


def test_not_reduced_where_one_of_two_ways_is_not() -> None:
    ways = ("cm.outlet t1.a:b t2.a:b pr.in:out t3.a:b us.cold", "t2.branch v1.a:b t3.branch", HOT, STRAIGHT)
    assert grades(plumbed(*ways, cm=main())) == []


def test_the_cure() -> None:
    for drawing in (
        plumbed(MAIN, RELIEF, HOT, STRAIGHT, cm=main()),
        plumbed("cm.outlet t1.a:b ig.in:out us.cold", HOT, STRAIGHT, cm=main()),
    ):
        proposal = next(propose(Case(drawing), only(NAME, drawing)))
        assert found(NAME, proposal.drawing) == ()
        assert new_open_ends(drawing, proposal.drawing) == set()
        assert found("cold-drawn-after-check", proposal.drawing) == ()
