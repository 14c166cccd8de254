"""A discharge traced from its valve's outlet to its end, part by part."""

from __future__ import annotations

import pytest

from circuitcheck.circuit.discharge import Discharge, discharges
from circuitcheck.circuit.joining import Circuit
from tests.checks.asking import way
from tests.made import Part, made


def traced(*ways: str, **parts: Part) -> tuple[Discharge, ...]:
    return discharges(Circuit(made(parts, way(*ways))))


def one(*ways: str, **parts: Part) -> Discharge:
    (found,) = traced(*ways, **{"tr": "temperature_relief_valve", **parts})
    return found


def test_before_and_after_the_tundish() -> None:
    found = one(
        "tr.outlet st.in:out tu.inlet:outlet t1.a:branch de.inlet",
        st="strainer",
        tu="tundish",
        t1="tee",
        de="discharge_end",
    )
    (run,) = found.runs
    assert found.for_store and found.stops_at == ()
    assert (run.before_tundish, run.after_tundish, run.end) == (("p1", "p2"), ("p3", "p4"), "de")
    assert run.branches_after_tundish == 1
    assert [(step.part, step.came_by, step.left_by) for step in run.steps] == [
        ("st", "in", "out"), ("tu", "inlet", "outlet"), ("t1", "a", "branch"), ("de", "inlet", ""),
    ]  # fmt: skip


def test_without_a_tundish_all_is_before_it() -> None:
    (run,) = one("tr.outlet t1.branch:a de.inlet", t1="tee", de="discharge_end").runs
    assert (run.tundish, run.before_tundish, run.after_tundish) == (None, ("p1", "p2"), ())
    assert run.branches_after_tundish == 0


def test_a_branch_before_the_tundish_is_none_after_it() -> None:
    (run,) = one(
        "tr.outlet t1.branch:a tu.inlet:outlet de.inlet", t1="tee", tu="tundish", de="discharge_end"
    ).runs
    assert run.branches_after_tundish == 0


def test_the_first_of_two_tundishes() -> None:
    (run,) = one(
        "tr.outlet u1.inlet:outlet u2.inlet:outlet de.inlet", u1="tundish", u2="tundish", de="discharge_end"
    ).runs
    assert run.before_tundish == ("p1",) and run.after_tundish == ("p2", "p3")


def test_two_ends_are_two_runs() -> None:
    found = one(
        "tr.outlet t1.a:b d1.inlet", "t1.branch d2.inlet", t1="tee", d1="discharge_end", d2="discharge_end"
    )
    assert sorted(run.end for run in found.runs) == ["d1", "d2"]


def test_a_ring_of_pipes_ends() -> None:
    found = one(
        "tr.outlet t1.a",
        "t1.b t2.a",
        "t1.branch t2.branch",
        "t2.b de.inlet",
        t1="tee",
        t2="tee",
        de="discharge_end",
    )
    assert [run.end for run in found.runs] == ["de", "de"]  # by either side of the ring
    found = one("tr.outlet t1.a", "t1.b t2.a", "t1.branch t2.branch", t1="tee", t2="tee")
    assert found.runs == ()


@pytest.mark.parametrize(
    ("ways", "parts", "stops_at"),
    [
        (("tr.outlet k.connection",), {"k": "cap"}, ("k",)),
        (("tr.outlet t1.a", "t1.b k1.connection", "t1.branch k2.connection"), {"t1": "tee", "k1": "cap", "k2": "cap"}, ("k1", "k2")),
        (("tr.outlet cv.out",), {"cv": "check_valve"}, ("cv",)),
        (("tr.outlet bv.out",), {"bv": "bypass_valve"}, ("bv",)),
        (("tr.outlet t2.inlet",), {"t2": "temperature_relief_valve"}, ("t2",)),
    ],
)  # fmt: skip
def test_where_it_stops(ways: tuple[str, ...], parts: dict[str, Part], stops_at: tuple[str, ...]) -> None:
    found = next(
        each
        for each in traced(*ways, **{"tr": "temperature_relief_valve", **parts})
        if each.valve.part == "tr"
    )
    assert (found.runs, found.stops_at) == ((), stops_at)


def test_a_free_end_stops_it() -> None:
    drawing = made({"tr": "temperature_relief_valve"}, "p7: tr.outlet - 3,3")
    (found,) = discharges(Circuit(drawing))
    assert found.stops_at == ("p7",)


def test_a_heating_valves_discharge_is_for_no_store() -> None:
    found = traced("sv.outlet de.inlet", sv="safety_valve", de="discharge_end")
    assert [each.for_store for each in found] == [False]


def test_in_the_order_of_the_drawing_built_in_ones_too() -> None:
    found = traced(
        x1="expansion_relief_valve", ig="inlet_group", sv="safety_valve",
        us=("unvented_store", {"built_in": ["temperature_relief"]}),
        hs=("heat_source", {"built_in": ["safety_valve"]}), u2="unvented_store",
    )  # fmt: skip
    assert [(each.valve.part, each.for_store) for each in found] == [
        ("x1", True), ("ig", True), ("sv", False), ("us", True), ("hs", False),
    ]  # fmt: skip


def test_a_way_round_the_tundish_is_a_run_of_its_own() -> None:
    """The discharge can pass the tundish by: that it can must be seen, however long the way is."""
    found = one(
        "tr.outlet t1.a:b tu.inlet:outlet t2.a:b de.inlet",
        "t1.branch s1.in:out s2.in:out t2.branch",
        t1="tee", tu="tundish", t2="tee", s1="strainer", s2="strainer", de="discharge_end",
    )  # fmt: skip
    assert {run.tundish is None for run in found.runs} == {True, False}
