"""Heating water and drinking water never meet."""

from __future__ import annotations

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.supply.cross_connection import propose
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.supply.plumbing import FED, plumbed
from tests.made import Part

NAME = "cross-connection"
RING = "hs.flow t8.a:b rad.flow:return t9.a:b hs.return"
DRINK = "cm.outlet t1.a:b sink.cold"


def link(connected: bool | None, double: bool | None) -> Part:
    return ("filling_link", {"left_connected": connected, "double_check": double})


def linked(connected: bool | None, double: bool | None, *between: str) -> Drawing:
    return plumbed(RING, "t8.branch k1.connection", DRINK, f"t1.branch {' '.join(between)} fl.supply:system t9.branch",
        fl=link(connected, double))  # fmt: skip


def grades(drawing: Drawing) -> list[str]:
    return [each.grade.value for each in found(NAME, drawing)]


@pytest.mark.parametrize(
    ("between", "grade"),
    [
        ("", "danger"),
        ("v1.a:b ", "danger"),
        ("c1.in:out ", "danger"),  # a single check valve does not protect
        ("pr.in:out c1.in:out ", "danger"),  # a reducing valve is no check valve
        ("c1.out:in ", "danger"),  # the wrong way round: straight into the drinking water
        ("c1.in:out c2.out:in ", "danger"),
        ("c1.in:out c2.in:out ", "fault"),
        ("c1.in:out v1.a:b c2.in:out ", "fault"),
    ],
)
def test_a_pipe_between_main_and_heating(between: str, grade: str) -> None:
    finding = only(NAME, plumbed(RING, DRINK, f"t1.branch {between}t9.branch", "t8.branch k1.connection"))
    assert finding.grade.value == grade
    assert finding.components[0] == "hs"


@pytest.mark.parametrize(
    ("connected", "double", "grade"),
    [
        (False, True, []),
        (False, False, []),  # only filling-link-without-double-check
        (True, True, []),  # only filling-link-left-connected
        (True, False, ["danger"]),
        (None, True, []),
        (False, None, []),
        (None, False, ["unanswered"]),
        (True, None, ["unanswered"]),
        (None, None, ["unanswered"]),
    ],
)
def test_a_filling_link(connected: bool | None, double: bool | None, grade: list[str]) -> None:
    drawing = linked(connected, double)
    assert grades(drawing) == grade
    assert asked(NAME, drawing).status == ("not judged" if grade == ["unanswered"] else "judged")
    if grade == ["unanswered"]:
        names = {"fl.left_connected": connected, "fl.double_check": double}
        assert only(NAME, drawing).missing == tuple(name for name, value in names.items() if value is None)


def test_check_valves_drawn_beside_a_link() -> None:
    assert grades(linked(True, False, "c1.in:out")) == ["danger"]
    assert grades(linked(True, False, "c1.in:out", "c2.in:out")) == ["fault"]


def test_a_link_built_in_or_between_two_heating_waters() -> None:
    built_in: Part = ("heat_source", {"built_in": ["filling_link"]})
    assert (
        grades(plumbed(RING, "t8.branch k1.connection", "t9.branch k2.connection", DRINK, hs=built_in)) == []
    )
    ways = (RING, "h2.flow t5.a:b h2.return", "t5.branch fl.supply:system t9.branch", "cm.outlet sink.cold")
    assert grades(plumbed(*ways, h2="heat_source", fl=link(True, False))) == []


@pytest.mark.parametrize(
    ("ways", "expected"),
    [
        # the store's water and the heating by the coil's pipe
        ((FED, "us.hot t5.a:b sink.hot", "hs.flow us.coil_flow:coil_return t6.a:b hs.return", "t6.branch t5.branch"),
         [("danger", "hs")]),
        # a coil without a heat source
        ((FED, "us.hot sink.hot", "t1.branch us.coil_flow", "us.coil_return k1.connection"), [("danger", "us")]),
        # behind a plate
        (("hs.flow hx.primary_in:primary_out hs.return", "hx.secondary_out rad.flow:return t6.a:b hx.secondary_in",
          "t6.branch c1.out:in cm.outlet"), [("danger", "hx")]),
        # heated directly, with nothing but taps on it, and then with a radiator too
        ((FED, "us.hot t5.a:b sink.hot", "t5.branch hs.return:flow us.secondary_return"), []),
        ((FED, "us.hot t5.a:b rad.flow:return t6.a:b sink.hot", "t5.branch hs.return:flow us.secondary_return",
          "t6.branch k1.connection"), [("danger", "hs")]),
        (("cm.outlet t1.a:b hs.return", "t1.branch sink.cold"), [("danger", "hs")]),
        # drinking water heated in a plate or a combination heat source stays apart
        (("hs.flow hx.primary_in:primary_out hs.return", "cm.outlet hx.secondary_in:secondary_out sink.hot"), []),
        (("cm.outlet ch.cold", "ch.hot sink.hot", "ch.flow rad.flow:return ch.return"), []),
        ((FED, "us.hot sink.hot", "hs.flow us.coil_flow:coil_return hs.return"), []),
        # cisterns
        (("cm.outlet fc.supply", "fc.feed vs.cold", "vs.hot sink.hot"), []),
        (("cm.outlet t1.a:b fc.supply", "t1.branch t2.a:b vs.cold", "fc.feed t2.branch", "vs.hot sink.hot"),
         [("danger", "fc")]),
        (("cm.outlet t1.a:b fc.supply", "t1.branch c1.in:out t2.a:b vs.cold", "fc.feed t2.branch",
          "vs.hot sink.hot"), []),
        (("cm.outlet b1.cold", "fc.feed vs.cold", "vs.hot b1.hot:mixed bath.hot"), []),
        # wastes
        (("cm.outlet t1.a:b sink.cold", "t1.branch v1.a:b de.inlet"), [("danger", "de")]),
        (("cm.outlet t1.a:b sink.cold", "t1.branch c1.in:out c2.in:out de.inlet"), [("danger", "de")]),
        (("cm.outlet t1.a:b sink.cold", "t1.branch tu.inlet:outlet de.inlet"), []),
        (("cm.outlet t1.a:b sink.cold", "t1.branch er.inlet:outlet de.inlet"), []),
    ],
)  # fmt: skip
def test_other_waters(ways: tuple[str, ...], expected: list[tuple[str, str]]) -> None:
    extra: dict[str, Part] = {"tu": "tundish"} if "tu." in " ".join(ways) else {}
    findings = found(NAME, plumbed(*ways, parts=extra))
    assert [(each.grade.value, each.components[0]) for each in findings] == expected


def test_two_heat_sources_two_findings() -> None:
    ways = ("hs.flow t8.a:b rad.flow:return t9.a:b hs.return", "h2.flow t8.branch", "h2.return t7.a:b t9.branch",
            "t7.branch cm.outlet")  # fmt: skip
    assert [each.components[0] for each in found(NAME, plumbed(*ways, h2="heat_source"))] == ["hs", "h2"]


def test_the_way_is_told() -> None:
    finding = only(NAME, plumbed(RING, DRINK, "t1.branch c1.in:out t9.branch", "t8.branch k1.connection"))
    assert finding.components == ("hs", "c1", "cm") or finding.components == ("hs", "c1", "sink")
    assert finding.numbers == {"check_valves_in_a_row": 1}
    assert set(finding.pipes) >= {"p7", "p8"}


def test_no_drinking_water() -> None:
    drawing = plumbed("hs.flow rad.flow:return hs.return")
    assert asked(NAME, drawing).status == "not applicable"


def test_the_cures() -> None:
    drawing = linked(True, False)
    after = next(propose(Case(drawing), only(NAME, drawing))).drawing
    assert grades(after) == []
    assert [
        part.value("double_check") for part in after.components.values() if part.kind.name == "filling_link"
    ] == [True]
    piped = plumbed(RING, DRINK, "t1.branch c1.in:out t9.branch", "t8.branch k1.connection")
    assert any(grades(each.drawing) == [] for each in propose(Case(piped), only(NAME, piped)))
