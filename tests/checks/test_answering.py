"""Silence is never approval: crashes, switches that are not known, and what each check's answer is called."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck import analysis
from circuitcheck.analysis import Analysis, analyse
from circuitcheck.checks import answering
from circuitcheck.checks.answering import answer, unknown_ways
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.checks.check import Verdict
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, Grade, Says, Witness
from tests.checks.asking import Told, asked, danger, found, only, told
from tests.checks.houses import OPEN_RADIATOR, pumped, sealed, store_discharge, vented
from tests.circuit.random_circuits import circuits, plants
from tests.made import Part, made

CUT_OFF = "vessel-can-be-cut-off"
UNKNOWN_PUMP: Part = ("pump", {"isolating_valves": None})
UNKNOWN_RADIATOR: Part = ("radiator", {"thermostatic": None, "valves": None, "hand_wheel": None})

REST_ON_WAYS = (
    "emitter-not-in-a-loop", "fill-pressure-below-reserve", "filling-link-absent", "fitted-backwards", "gauge-absent",
    "no-way-round-when-zones-shut", "overheat-cut-out-absent", "pump-against-shut-valves", "safety-valve-absent",
    "safety-valve-away-from-source", "safety-valve-can-be-cut-off", "safety-valve-set-too-high",
    "safety-valve-too-small", "vessel-absent", "vessel-can-be-cut-off", "vessel-on-pump-delivery",
    "vessel-precharge-wrong", "vessel-too-small",
)  # fmt: skip


def crashing(case: Case) -> Verdict:
    raise ZeroDivisionError("a flaw")


class TestCrash:
    """A check that fails inside the program is seen."""

    def test_is_an_unanswered_finding_and_not_judged(self) -> None:
        check = replace(checks()["open-end"], judge=crashing)
        got = answer(check, Case(sealed()))
        (finding,) = got.findings
        assert (got.status, got.crashed) == ("not judged", True)
        assert (finding.check, finding.grade, finding.would_be) == (
            "open-end",
            Grade.UNANSWERED,
            Grade.DANGER,
        )
        assert "ZeroDivisionError: a flaw" in finding.message

    def test_in_one_variant_of_an_unknown_switch(self) -> None:
        def sometimes(case: Case) -> Verdict:
            if case.drawing.components["pu"].data["isolating_valves"] is False:
                raise ZeroDivisionError
            return Verdict(sound=1)

        drawing = sealed(vessel="t2.branch pu.in:out ev.connection", pu=UNKNOWN_PUMP)
        got = answer(replace(checks()["open-end"], judge=sometimes), Case(drawing))
        assert (got.status, got.crashed) == ("not judged", True)

    def test_does_not_stop_the_others(self, monkeypatch: pytest.MonkeyPatch) -> None:
        some = {**checks(), "open-end": replace(checks()["open-end"], judge=crashing)}
        monkeypatch.setattr(analysis, "checks", lambda: some)
        got = analyse(sealed(vessel=""))
        assert got.crashed == ("open-end",)
        assert "open-end" in got.not_judged
        assert "vessel-absent" in {finding.check for finding in got.findings}
        assert_partition(got, set(some))


def assert_partition(got: Analysis, names: set[str]) -> None:
    """Every check is in just one of the three lists."""
    listed = [*got.judged, *got.not_applicable, *got.not_judged]
    assert sorted(listed) == sorted(names)
    assert set(got.crashed) <= set(got.not_judged)


class TestUnknownSwitch:
    """A null that decides how water can go is answered for every value it could have."""

    def test_the_same_answer_either_way_stands_sound(self) -> None:
        drawing = sealed(ring="hs.flow pu.in:out t1.a:b rad.flow:return t2.a:b hs.return", pu=UNKNOWN_PUMP)
        got = asked(CUT_OFF, drawing)
        assert (got.findings, got.status) == ((), "judged")

    def test_the_same_answer_either_way_stands_faulty(self) -> None:
        drawing = sealed(
            vessel="t2.branch pu.in:out iv.a:b ev.connection", pu=UNKNOWN_PUMP, iv="isolating_valve"
        )
        (finding,) = found(CUT_OFF, drawing)
        assert finding.grade is Grade.DANGER
        # The witness must hold whatever the switch is: the valve does, the pump may have none.
        assert finding.witness is not None and finding.witness.shut == ("iv",)
        assert finding.witness.alone == ("iv",)

    @pytest.mark.parametrize("most", [True, False])
    @pytest.mark.parametrize("named", ["", "pu"])
    def test_of_the_same_answer_the_surest_witness_is_told(self, most: bool, named: str) -> None:
        """That with most to shut; but none with a part that is not known, be it ever so long."""

        def judge(case: Case) -> Verdict:
            several = case.drawing.components["pu"].data["isolating_valves"] is most
            shut = tuple(filter(None, ("v1", "v2", named))) if several else ("v1",)
            return Verdict((Finding("a-check", Grade.FAULT, Says("!"), ("hs",), witness=Witness(shut)),))

        got = answer(replace(checks()["open-end"], judge=judge), Case(sealed(pu=UNKNOWN_PUMP)))
        (finding,) = got.findings
        assert finding.witness == Witness(("v1",) if named else ("v1", "v2"))

    def test_a_different_answer_is_unanswered_and_names_the_field(self) -> None:
        drawing = sealed(vessel="t2.branch pu.in:out ev.connection", pu=UNKNOWN_PUMP)
        finding = only(CUT_OFF, drawing)
        assert (finding.grade, finding.would_be) == (Grade.UNANSWERED, Grade.DANGER)
        assert (finding.components, finding.missing) == (("hs",), ("pu.isolating_valves",))
        assert "pu.isolating_valves" in finding.message
        assert asked(CUT_OFF, drawing).status == "not judged"

    def test_left_out_is_the_default_and_no_null(self) -> None:
        assert told(CUT_OFF, sealed(vessel="t2.branch pu.in:out ev.connection", pu="pump")) == [
            danger("hs", "pu", "pu")
        ]

    def test_only_the_deciding_fields_are_named(self) -> None:
        drawing = sealed(
            vessel="t2.branch pu.in:out ev.connection",
            ring="hs.flow t1.a:b p2.in:out rad.flow:return t2.a:b hs.return",
            pu=UNKNOWN_PUMP,
            p2=UNKNOWN_PUMP,
        )
        assert only(CUT_OFF, drawing).missing == ("pu.isolating_valves",)

    def test_two_fields_that_decide_together_are_both_named(self) -> None:
        drawing = sealed(
            "t3.branch p2.in:out t4.branch",
            vessel="t2.branch t3.a:b pu.in:out t4.a:b ev.connection",
            t3="tee",
            t4="tee",
            pu=UNKNOWN_PUMP,
            p2=UNKNOWN_PUMP,
        )
        assert only(CUT_OFF, drawing).missing == ("pu.isolating_valves", "p2.isolating_valves")

    @pytest.mark.parametrize(
        ("kind", "ports", "data"),
        [
            ("pump", "in:out", {"isolating_valves": None}),
            ("dirt_separator", "a:b", {"isolating_valves": None}),
            ("radiator", "flow:return", {"thermostatic": False, "valves": None}),
        ],
    )
    def test_every_switch_that_decides_a_way_for_pressure(
        self, kind: str, ports: str, data: dict[str, Any]
    ) -> None:
        drawing = sealed(vessel=f"t2.branch xx.{ports} ev.connection", xx=(kind, data))
        (field,) = [name for name, value in data.items() if value is None]
        assert only(CUT_OFF, drawing).missing == (f"xx.{field}",)

    def test_a_secured_that_is_not_known_is_danger_or_advice(self) -> None:
        drawing = sealed(vessel="t2.branch iv.a:b ev.connection", iv=("isolating_valve", {"secured": None}))
        finding = only(CUT_OFF, drawing)
        assert (finding.grade, finding.would_be) == (Grade.UNANSWERED, Grade.DANGER)
        assert finding.missing == ("iv.secured",)
        drawing = sealed(safety="t1.branch iv.a:b sv.inlet", iv=("isolating_valve", {"secured": None}))
        assert told("safety-valve-can-be-cut-off", drawing) == [danger("hs", "iv", "iv")]

    def test_a_heating_zone_decides_circulation_and_not_pressure(self) -> None:
        unknown: Part = ("heating_zone", {"all_thermostatic": None})
        drawing = pumped("hs.flow pu.in:out hz.flow:return hs.return", hz=unknown)
        finding = only("no-way-round-when-zones-shut", drawing)
        assert (finding.grade, finding.would_be) == (Grade.UNANSWERED, Grade.FAULT)
        assert finding.missing == ("hz.all_thermostatic",)
        drawing = sealed(vessel="t2.branch hz.flow:return ev.connection", hz=unknown)
        assert told(CUT_OFF, drawing) == [danger("hs", "hz", "hz")]

    def test_a_hand_wheel_that_is_not_known(self) -> None:
        rail: Part = ("radiator", {"thermostatic": False, "hand_wheel": None})
        drawing = pumped(
            "hs.flow pu.in:out t1.a:b zv.in:out rad.flow:return t2.a:b hs.return",
            "t1.branch tr.flow:return t2.branch",
            zv="zone_valve", rad=OPEN_RADIATOR, tr=rail,
        )  # fmt: skip
        assert only("no-way-round-when-zones-shut", drawing).missing == ("tr.hand_wheel",)

    def test_what_is_built_in_is_not_known(self) -> None:
        drawing = sealed(vessel="", hs=("heat_source", {"built_in": None}))
        finding = only("vessel-absent", drawing)
        assert (finding.grade, finding.would_be) == (Grade.UNANSWERED, Grade.DANGER)
        assert finding.missing == ("hs.built_in",)
        # With a vessel and a safety valve drawn on the flow, what is built in can change nothing.
        drawing = sealed(
            "t1.branch t3.a:b ev.connection", vessel="", safety="t3.branch sv.inlet", t3="tee",
            hs=("heat_source", {"built_in": None}),
        )  # fmt: skip
        assert asked("vessel-absent", drawing).findings == ()

    def test_two_built_in_things_together_can_decide(self) -> None:
        """A bypass is no use without a pump that it takes in: only both together make it sound."""
        drawing = pumped(
            "hs.flow zv.in:out rad.flow:return hs.return",
            hs=("heat_source", {"built_in": None}), zv="zone_valve", rad="radiator",
        )  # fmt: skip
        finding = only("no-way-round-when-zones-shut", drawing)
        assert (finding.grade, finding.missing) == (Grade.UNANSWERED, ("hs.built_in",))

    def test_a_built_in_check_valve_and_a_vessel_on_the_return(self) -> None:
        """With only a check valve built in, the vessel is lost behind the radiator's head."""
        got = told(CUT_OFF, sealed(hs=("heat_source", {"built_in": None})))
        assert got == [Told("hs", "unanswered")]

    def test_of_two_heat_sources_only_one_rests_on_it(self) -> None:
        drawing = sealed(
            "h2.flow r2.flow:return t3.a:b h2.return",
            "t3.branch pu.in:out e2.connection",
            h2="heat_source", r2="radiator", t3="tee", pu=UNKNOWN_PUMP, e2="expansion_vessel",
        )  # fmt: skip
        assert told(CUT_OFF, drawing) == [Told("h2", "unanswered")]
        assert asked(CUT_OFF, drawing).status == "judged"

    def test_too_many_to_try_is_unanswered_and_never_silence(self) -> None:
        parts: dict[str, Part] = {f"r{n}": UNKNOWN_RADIATOR for n in range(3)}
        drawing = sealed(*[f"t{n + 3}.a r{n}.flow:return t{n + 3}.b" for n in range(3)],
            **parts, t3="tee", t4="tee", t5="tee")  # type: ignore[arg-type]  # fmt: skip
        assert len(unknown_ways(drawing)) == 9 and answering.VARIANT_BOUND < 2**9
        finding = only(CUT_OFF, drawing)
        assert (finding.grade, finding.would_be) == (Grade.UNANSWERED, Grade.DANGER)
        assert set(finding.missing) == set(unknown_ways(drawing))

    def test_too_many_to_try_where_the_check_does_not_apply(self) -> None:
        parts: dict[str, Part] = {f"r{n}": UNKNOWN_RADIATOR for n in range(3)}
        drawing = sealed(hs="tee", ring="", vessel="", safety="", **parts)
        assert asked(CUT_OFF, drawing).status == "not applicable"

    def test_unknown_ways_are_those_set_to_null(self) -> None:
        drawing = sealed(
            pu=UNKNOWN_PUMP, p2="pump", p3=("pump", {"isolating_valves": True, "shut_off_head_m": None})
        )
        assert unknown_ways(drawing) == {"pu.isolating_valves": (True, False)}


DRAWINGS: dict[str, Drawing] = {
    "empty": Drawing(),
    "sealed": sealed(),
    "vented": vented(),
    "discharge": store_discharge(),
    "discharge not known": store_discharge(({},), ({},)),
    "unknown pump": sealed(vessel="t2.branch pu.in:out ev.connection", pu=UNKNOWN_PUMP),
}


@pytest.mark.parametrize("drawing", DRAWINGS.values(), ids=DRAWINGS.keys())
def test_each_check_is_in_just_one_list(drawing: Drawing) -> None:
    got = analyse(drawing)
    assert_partition(got, set(checks()))
    assert got.crashed == ()
    assert got.drawing is drawing
    for finding in got.findings:
        assert finding.check not in got.not_applicable
        if finding.grade is not Grade.UNANSWERED:
            assert finding.check in got.judged


@given(st.one_of(circuits(), plants()))
def test_no_check_crashes_and_the_lists_partition(drawing: Drawing) -> None:
    got = analyse(drawing)
    assert got.crashed == ()
    assert_partition(got, set(checks()))
    assert list(got.findings) == sorted(got.findings, key=lambda finding: finding.order)


def test_an_empty_drawing_is_judged_by_nothing() -> None:
    got = analyse(Drawing())
    assert (got.judged, got.not_judged, got.findings, got.taken) == ((), (), (), ())


def test_statuses_of_a_sealed_plant() -> None:
    got = analyse(sealed())
    assert {"vessel-absent", CUT_OFF, "safety-valve-absent"} <= set(got.judged)
    assert {"open-vent-absent", "cold-feed-absent", "tundish-absent"} <= set(got.not_applicable)


def test_a_check_whose_every_answer_is_unanswered_is_not_judged() -> None:
    got = analyse(store_discharge(({},), ({},)))
    assert {"discharge-too-long", "discharge-bore-too-small", "tundish-too-far"} <= set(got.not_judged)
    assert "discharge-absent" in got.judged


class TestTaken:
    """Defaults that verdicts rest on are told."""

    def test_left_out_and_taken(self) -> None:
        taken = analyse(sealed(vessel="t2.branch pu.in:out ev.connection", pu="pump")).taken
        assert {"pu.isolating_valves = true", "hs.built_in = []"} <= set(taken)
        assert list(taken) == sorted(taken)

    def test_given_is_not_taken(self) -> None:
        drawing = sealed(
            vessel="t2.branch pu.in:out ev.connection",
            pu=("pump", {"isolating_valves": True}), hs=("heat_source", {"built_in": []}),
        )  # fmt: skip
        taken = analyse(drawing).taken
        assert not {"pu.isolating_valves", "hs.built_in"} & {each.partition(" = ")[0] for each in taken}

    def test_null_is_not_taken(self) -> None:
        taken = analyse(sealed(vessel="t2.branch pu.in:out ev.connection", pu=UNKNOWN_PUMP)).taken
        assert not {each for each in taken if each.startswith("pu.")}

    def test_taken_beside_a_null(self) -> None:
        """A null elsewhere does not hide what was taken for the rest."""
        drawing = sealed(vessel="t2.branch pu.in:out p2.in:out ev.connection", pu=UNKNOWN_PUMP, p2="pump")
        assert "p2.isolating_valves = true" in analyse(drawing).taken

    @pytest.mark.parametrize("name", REST_ON_WAYS)
    def test_each_check_tells_by_itself_which_ways_it_rests_on(self, name: str) -> None:
        ring = "hs.flow pu.in:out t1.a:b rad.flow:return t3.a:b t2.a:b hs.return"
        case = Case(
            sealed(
                "cm.outlet fl.supply", "fl.system t3.branch", ring=ring,
                cm="cold_main", fl="filling_link", pu="pump", t3="tee",
            )
        )  # fmt: skip
        assert answer(checks()[name], case).status != "not applicable"
        assert "pu.isolating_valves = true" in case.taken

    def test_what_no_verdict_rests_on_is_not_told(self) -> None:
        taken = analyse(sealed(gg="pressure_gauge", zz="tundish")).taken
        assert not {each for each in taken if each.startswith(("gg.", "zz."))}

    def test_a_field_of_the_design(self) -> None:
        drawing = pumped(
            "hs.flow pu.in:out zv.in:out rad.flow:return hs.return",
            hs=("heat_source", {"pump_overrun_min": 0, "minimum_flow_lpm": 0}),
            zv="zone_valve", rad=OPEN_RADIATOR,
        )  # fmt: skip
        assert "design.heat_called_by = valve_end_switches" in analyse(drawing).taken


def test_an_unanswered_finding_says_what_it_would_be() -> None:
    with pytest.raises(ValueError, match="a-check"):
        Finding("a-check", Grade.UNANSWERED, Says("?"))
    with pytest.raises(ValueError, match="a-check"):
        Finding("a-check", Grade.FAULT, Says("!"), would_be=Grade.FAULT)


def test_what_is_built_in_is_tried_in_every_combination() -> None:
    """With a pump alone built in it is a fault, with pump and bypass none: that is not known."""
    drawing = made(
        {"hs": ("heat_source", {"built_in": None}), "pu": "pump", "zv": "zone_valve", "rad": "radiator"},
        "hs.flow - pu.in\npu.out - zv.in\nzv.out - rad.flow\nrad.return - hs.return",
    )
    finding = only("no-way-round-when-zones-shut", drawing)
    assert finding.grade is Grade.UNANSWERED and finding.missing == ("hs.built_in",)
