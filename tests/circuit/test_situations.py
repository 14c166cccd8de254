"""What the controls command in each situation."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.situations import (
    AT_REST,
    BOTH,
    HEATING_ONLY,
    HOT_WATER_ONLY,
    MOST_STANDS,
    POWER_OFF,
    RUN_ON,
    Situation,
    Situations,
)
from circuitcheck.drawing.value import Drawing
from tests.checks.circulation.controlled import (
    PROGRAMMER,
    ROOM,
    STORE,
    behind_exchanger,
    radiators,
    three_port,
    two_pumps,
    two_valves,
)
from tests.checks.houses import pumped
from tests.made import Part

HEATING, HOT_WATER = frozenset({"heating"}), frozenset({"hot_water"})
EITHER = HEATING | HOT_WATER


def situations(drawing: Drawing) -> Situations:
    return Situations(Circuit(drawing))


def only(drawing: Drawing, name: str) -> Situation:
    (found,) = situations(drawing).named(name)
    return found


def words(ids: frozenset[str]) -> str:
    return " ".join(sorted(ids))


def told(drawing: Drawing) -> dict[str, tuple[str, str, str]]:
    """Each situation by name, where there is one of each: what is shut, runs and is called."""
    found = situations(drawing)
    names = [each.name for each in found.all]
    assert len(names) == len(set(names))
    return {each.name: (words(each.shut), words(each.running), words(each.called)) for each in found.all}


def test_two_valves() -> None:
    assert told(two_valves()) == {
        HEATING_ONLY: ("z2", "pu", "hz rail"),
        HOT_WATER_ONLY: ("z1", "pu", "rail us"),
        BOTH: ("", "pu", "hz rail us"),
        RUN_ON: ("z1 z2", "pu", ""),
        AT_REST: ("z1 z2", "", ""),
        POWER_OFF: ("z1 z2", "", ""),
    }
    assert [each.heat_on for each in situations(two_valves()).all] == [True, True, True, False, False, False]


def test_two_pumps() -> None:
    """Pumps that controls stop do not run on, unless that leaves none."""
    assert told(two_pumps()) == {
        HEATING_ONLY: ("", "pu", "hz"),
        HOT_WATER_ONLY: ("", "p2", "us"),
        BOTH: ("", "p2 pu", "hz us"),
        RUN_ON: ("", "p2 pu", ""),
        AT_REST: ("", "", ""),
        POWER_OFF: ("", "", ""),
    }
    assert told(two_pumps({"st": (STORE, ("p2",))}))[RUN_ON] == ("", "pu", "")


def test_heating_alone_has_no_hot_water() -> None:
    assert list(told(radiators())) == [HEATING_ONLY, RUN_ON, AT_REST, POWER_OFF]


def test_no_run_on() -> None:
    drawing = radiators(hs=("heat_source", {"pump_overrun_min": 0}))
    assert list(told(drawing)) == [HEATING_ONLY, AT_REST, POWER_OFF]
    assert ("hs", "pump_overrun_min") in situations(drawing).reads


def test_without_heat_there_are_none() -> None:
    assert situations(pumped("cm.outlet us.cold", cm="cold_main", us="unvented_store")).all == ()


class TestThreePort:
    @pytest.mark.parametrize(("action", "both", "called"), [("divert", "tp:a", "us"), ("share", "", "hz us")])
    def test_calling(self, action: str, both: str, called: str) -> None:
        """A diverting valve gives to hot water first (common practice)."""
        drawing = three_port(tp=("three_port_valve", {"action": action}))
        assert words(only(drawing, HEATING_ONLY).shut) == "tp:b"
        assert words(only(drawing, HOT_WATER_ONLY).shut) == "tp:a"
        assert (words(only(drawing, BOTH).shut), words(only(drawing, BOTH).called)) == (both, called)

    @pytest.mark.parametrize("name", [RUN_ON, AT_REST])
    def test_rests_where_it_stands(self, name: str) -> None:
        assert {words(each.shut) for each in situations(three_port()).named(name)} == {"tp:a", "tp:b"}

    @pytest.mark.parametrize(
        ("rest", "shut"), [("a", {"tp:b"}), ("b", {"tp:a"}), ("stays", {"tp:a", "tp:b"})]
    )
    def test_power_off(self, rest: str, shut: set[str]) -> None:
        drawing = three_port(tp=("three_port_valve", {"rest": rest}))
        assert {words(each.shut) for each in situations(drawing).named(POWER_OFF)} == shut

    def test_two_zones_on_a_diverting_valve_take_turns(self) -> None:
        drawing = pumped(
            "hs.flow pu.in:out tp.ab:a h1.flow:return t1.a:b hs.return", "tp.b h2.flow:return t1.branch",
            tp="three_port_valve", h1="heating_zone", h2="heating_zone",
        )  # fmt: skip
        found = situations(drawing).named(HEATING_ONLY)
        assert {(words(each.shut), words(each.called)) for each in found} == {("tp:a", "h2"), ("tp:b", "h1")}

    def test_a_bypass_leg_gives_way(self) -> None:
        drawing = pumped(
            "hs.flow t1.a:b tp.a:ab pu.in:out hz.flow:return t2.a:b hs.return", "t2.branch tp.b",
            tp="three_port_valve", hz="heating_zone",
        )  # fmt: skip
        assert situations(drawing).serves("tp:b") is None
        assert words(only(drawing, HEATING_ONLY).shut) == "tp:b"

    @pytest.mark.parametrize(("valves", "full"), [(4, True), (5, False)])
    def test_many(self, valves: int, full: bool) -> None:
        ways, parts, here, back = list[str](), dict[str, Part](), "hs.flow pu.in:out", "hs.return"
        for number in range(valves):
            parts |= {f"v{number}": "three_port_valve", f"r{number}": "radiator"}
            ways += [f"v{number}.b r{number}.flow:return t{number}.branch", f"t{number}.a {back}"]
            here, back = f"{here} v{number}.ab:a", f"t{number}.b"
        ways.append(f"{here} rx.flow:return {back}")
        found = situations(pumped(*ways, rx="radiator", **parts))  # type: ignore[arg-type]  # no part is called as a parameter is
        assert found.told_in_full is full
        stands = {each.shut for each in found.named(RUN_ON)}
        assert len(stands) == (MOST_STANDS if full else 2 * valves + 2)
        for number in range(valves):
            assert {f"v{number}:a", f"v{number}:b"} <= frozenset[str]().union(*stands)


class TestServes:
    @pytest.mark.parametrize(
        ("valve", "controls", "field", "expected"),
        [
            ("z1", None, None, HEATING),
            ("z2", None, None, HOT_WATER),
            ("z1", {}, None, HEATING),
            ("z2", {}, None, HOT_WATER),
            ("z1", {"pr": (PROGRAMMER, ("z1",))}, None, HEATING),
            ("z1", {"st": (STORE, ("z1",))}, None, HOT_WATER),
            ("z1", {"st": (STORE, ("z1",)), "rt": (ROOM, ("z1",))}, None, EITHER),
            ("z1", {}, "hot_water", HOT_WATER),
            ("z1", {"rt": (ROOM, ("z1",))}, "hot_water", HOT_WATER),
        ],
    )
    def test_by_field_then_controls_then_circuit(
        self, valve: str, controls: Any, field: str | None, expected: frozenset[str]
    ) -> None:
        drawing = two_valves(controls=controls, z1=("zone_valve", {"serves": field}))
        assert situations(drawing).serves(valve) == expected

    def test_legs_pumps_and_emitters(self) -> None:
        found = situations(three_port())
        assert [found.serves(each) for each in ("tp:a", "tp:b", "tp", "pu", "hz", "us")] == [
            HEATING, HOT_WATER, EITHER, EITHER, HEATING, HOT_WATER,
        ]  # fmt: skip

    @pytest.mark.parametrize(
        ("controls", "serves", "missing"),
        [({}, None, ("z1.serves",)), ({"pr": (PROGRAMMER, ("z1",))}, EITHER, ())],
    )
    def test_a_valve_with_a_way_round_it_does_not_tell(
        self, controls: Any, serves: frozenset[str] | None, missing: tuple[str, ...]
    ) -> None:
        drawing = pumped(
            "hs.flow pu.in:out t3.a:b z1.in:out t1.a:b hz.flow:return hs.return", "t3.branch iv.a:b t1.branch",
            controls=controls, z1="zone_valve", iv="isolating_valve", hz="heating_zone",
        )  # fmt: skip
        found = situations(drawing)
        assert (found.serves("z1"), found.missing, found.behind("z1")) == (serves, missing, frozenset())
        assert only(drawing, HEATING_ONLY).missing == missing
        assert only(drawing, RUN_ON).missing == ()

    def test_through_an_exchanger(self) -> None:
        found = situations(behind_exchanger({}))
        assert found.behind("z1") == {"hx", "hz"}
        assert (found.serves("z1"), found.serves("p2"), found.serves("hx")) == (HEATING, HEATING, HEATING)

    def test_a_plate_that_heats_drinking_water(self) -> None:
        drawing = pumped(
            "hs.flow pu.in:out z1.in:out hx.primary_in:primary_out hs.return",
            "cm.outlet hx.secondary_in", "hx.secondary_out ou.hot",
            hx="heat_exchanger", z1="zone_valve", cm="cold_main", ou="outlet",
        )  # fmt: skip
        assert situations(drawing).serves("z1") == HOT_WATER
        assert list(told(drawing)) == [HOT_WATER_ONLY, RUN_ON, AT_REST, POWER_OFF]


class TestPowerOff:
    @pytest.mark.parametrize(
        ("rest", "shut"), [("shut", {"z1 z2"}), ("open", {"z2"}), ("stays", {"z2", "z1 z2"})]
    )
    def test_by_rest(self, rest: str, shut: set[str]) -> None:
        drawing = two_valves(z1=("zone_valve", {"rest": rest}))
        assert {words(each.shut) for each in situations(drawing).named(POWER_OFF)} == shut

    def test_rest_not_known(self) -> None:
        assert only(two_valves(z1=("zone_valve", {"rest": None})), POWER_OFF).missing == ("z1.rest",)


def test_a_case_has_them() -> None:
    case = Case(two_valves())
    assert case.situations.all == situations(two_valves()).all
    assert case.situations.rounds is Situations(case.circuit).rounds


def test_holders() -> None:
    assert situations(two_valves()).holders == {"hz": ("z1",), "us": ("z2",), "rail": ()}
    assert situations(behind_exchanger()).holders == {"hx": ("z1",), "hz": ("z1",)}
    drawing = two_pumps()
    both = replace(drawing.controls["rt"], acts_on=("pu", "hs"))
    changed = replace(drawing, controls={**drawing.controls, "rt": both})
    assert situations(changed).holders == {"hz": ("pu", "hs"), "us": ("p2", "hs")}
