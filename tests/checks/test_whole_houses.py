"""Whole houses: a sound one is judged and nothing said; broken in one place, that is said and nothing else."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.parts.catalogue import component_kinds
from tests.checks.same_circuit import NEW, cut_in, turned_pipe, with_ends_swapped
from tests.checks.whole_houses import HOUSES, house

Break = Callable[[Drawing], Drawing]


def told(**data: Any) -> Break:
    """Other data for one part: `er__set_pressure_bar=8`."""
    (name,) = data
    part, _, field = name.partition("__")

    def change(drawing: Drawing) -> Drawing:
        old = drawing.components[part]
        new = replace(old, data={**old.data, field: data[name]})
        return replace(drawing, components={**drawing.components, part: new})

    return change


def before(place: str, kind: str, start: str = "a", finish: str = "b", **data: Any) -> Break:
    """A part cut in right before a port."""
    part, _, port = place.partition(".")

    def change(drawing: Drawing) -> Drawing:
        joint = Joint(part, port)
        pipe = drawing.pipes[drawing.joined[joint]]
        if pipe.ends[1] != joint:
            drawing = replace(drawing, pipes={**drawing.pipes, pipe.id: turned_pipe(pipe)})
        return cut_in(drawing, pipe.id, kind, start, finish, **data)

    return change


def instead(part: str, kind: str, **data: Any) -> Break:
    """A part of another kind in its place, port for port."""

    def change(drawing: Drawing) -> Drawing:
        old, new = drawing.components[part], component_kinds()[kind]
        ports = {a.name: b.name for a, b in zip(old.kind.ports, new.ports, strict=False)}
        kept = replace(old, kind=new, data={"height_m": old.data["height_m"], **data})
        pipes = {
            id: replace(
                pipe,
                ends=tuple(  # type: ignore[arg-type]  # two ends
                    Joint(part, ports[end.port]) if isinstance(end, Joint) and end.part == part else end
                    for end in pipe.ends
                ),
            )
            for id, pipe in drawing.pipes.items()
        }
        return replace(drawing, components={**drawing.components, part: kept}, pipes=pipes)

    return change


def turned(part: str, one: str = "in", two: str = "out") -> Break:
    """Two of its pipes changed over."""
    return lambda drawing: with_ends_swapped(drawing, {part}, one, two)


def without_control(*ids: str) -> Break:
    """Controls taken away."""

    def change(drawing: Drawing) -> Drawing:
        left = {id: control for id, control in drawing.controls.items() if id not in ids}
        return replace(drawing, controls=left)

    return change


VALVE, CHECK = "isolating_valve", "check_valve"
BACKWARDS = "fault fitted-backwards"
CHANGED = "fault connections-changed-over"
COLD = "fault emitter-not-in-a-loop"
# House, change, and all that must be said, as grade, check and the thing judged.
BROKEN: dict[str, tuple[str, Break, set[str]]] = {
    "valve at the vessel": ("two_zone_valves", before("vessel.connection", VALVE), {"danger vessel-can-be-cut-off hs"}),
    "secured valve there": ("two_zone_valves", before("vessel.connection", VALVE, secured=True), {"advice vessel-can-be-cut-off hs"}),
    "check valve there": ("two_zone_valves", before("vessel.connection", CHECK, "in", "out"), {"danger vessel-absent hs"}),
    "secured valve at the safety valve": (
        "two_zone_valves", before("sv.inlet", VALVE, secured=True), {"danger safety-valve-can-be-cut-off hs"},
    ),
    "strainer at the safety valve": ("radiators", before("sv.inlet", "strainer", "in", "out"), {"fault safety-valve-away-from-source hs"}),
    "valve in the return of one of two sources": ("two_sources", before("hs2.return", VALVE), {"danger vessel-can-be-cut-off hs2"}),
    "valve at the store's cold": (
        "secondary_return", before("store.cold", VALVE), {"danger relief-can-be-cut-off store", "danger store-vessel-can-be-cut-off store"},
    ),
    "valve at the temperature relief": ("floor_heating", before("tr.inlet", VALVE), {"danger relief-can-be-cut-off store"}),
    "no check valve before the store": ("two_zone_valves", instead("check", "strainer"), {"danger cold-check-absent store"}),
    "it turned round": ("two_zone_valves", turned("check"), {"danger cold-check-absent store", f"{BACKWARDS} check"}),
    "mixer's cold and mixed changed over": ("two_zone_valves", turned("blend", "cold", "mixed"),
                                        {"danger cold-check-absent store", f"{CHANGED} blend"}),
    "no tundish": ("inlet_group", instead("tundish", "strainer"), {"danger tundish-absent ig", "danger tundish-absent tr"}),
    "cut-out on the wrong valve": ("two_zone_valves", told(store__energy_cut_out="zv_rooms"), {"danger cut-out-drives-no-valve store"}),
    "its valve rests open": ("two_zone_valves", told(zv_store__rest="open"), {"danger cut-out-drives-no-valve store"}),
    "no store thermostat": (
        "two_zone_valves", without_control("stat_zv_store"),
        {"danger store-thermostat-absent store", "danger hot-supply-too-hot store", "fault heat-called-without-interlock hs"},
    ),
    "bypass turned round": (
        "two_zone_valves", turned("bypass"),
        {f"{BACKWARDS} bypass", "fault no-way-round-when-zones-shut hs", "fault pump-against-shut-valves pu", "fault source-flow-below-minimum hs"},
    ),
    "isolating valve in the bypass": (
        "two_zone_valves", before("bypass.in", VALVE), {"fault no-way-round-when-zones-shut hs", "advice drain-absent"},
    ),
    "valves on the bypass radiator, set to its own little flow": (
        "bypass_radiator", told(towel__valves=True), {"fault source-flow-below-minimum hs", "advice drain-absent"},
    ),
    "a hand wheel on it": (
        "bypass_radiator", told(towel__hand_wheel=True), {"fault no-way-round-when-zones-shut hs"},
    ),
    "a head on it": (
        "bypass_radiator", told(towel__thermostatic=True),
        {"fault no-way-round-when-zones-shut hs", "fault pump-against-shut-valves pu", "fault heat-called-without-interlock hs",
         "advice zone-without-control towel", "advice drain-absent"},
    ),
    "zone piped the other way round": ("two_zone_valves", turned("rooms", "flow", "return"), set()),
    "coil piped the other way round": ("two_zone_valves", turned("store", "coil_flow", "coil_return"), {"advice connections-changed-over store"}),
    "store's cold and hot changed over": ("two_zone_valves", turned("store", "cold", "hot"), {f"{CHANGED} store"}),
    "its cold and secondary return": ("secondary_return", turned("store", "cold", "secondary_return"), {f"{CHANGED} store"}),
    "its hot and secondary return": ("secondary_return", turned("store", "hot", "secondary_return"), {f"{CHANGED} store"}),
    "heat source's flow and return": ("built_in", turned("hs", "flow", "return"), {f"{CHANGED} hs"}),
    "separator's": ("separator", turned("sep", "source_flow", "source_return"), {f"{CHANGED} sep"}),
    "radiator piped the other way round": ("radiators", turned("rad1", "flow", "return"), set()),
    "zone valve turned round": ("two_zone_valves", turned("zv_rooms"), set()),
    "three-port valve's legs changed over": ("three_port", turned("tp", "a", "b"), set()),
    "three-port valve fed by a leg": ("three_port", turned("tp", "ab", "a"), {f"{COLD} rooms"}),
    "zone pump turned round": (
        "separator", turned("pz_ground"), {f"{BACKWARDS} pz_ground", f"{COLD} ground", "fault pump-against-shut-valves pz_ground"},
    ),
    "zone check valve turned round": (
        "separator", turned("cz_ground"), {f"{BACKWARDS} cz_ground", f"{COLD} ground", "fault pump-against-shut-valves pz_ground"},
    ),
    "weak zone pump": ("separator", told(pz_store__shut_off_head_m=0.2), {"fault pump-too-weak pz_store", "fault emitter-starved store"}),
    "open vent valved": ("open_vented", before("ov.connection", VALVE), {"danger open-vent-can-be-cut-off hs"}),
    "cold feed valved, secured": ("open_vented", before("fe.feed", VALVE, secured=True), {"danger cold-feed-can-be-cut-off hs"}),
    "check valve in the feed": ("open_vented", before("fe.feed", CHECK, "out", "in"), {"danger cold-feed-absent hs"}),
    "store's vent valved": ("open_vented", before("hv.connection", VALVE), {"danger store-vent-can-be-cut-off store"}),
    "link left connected": ("no_store", told(link__left_connected=True), {"fault filling-link-left-connected link"}),
    "link without double check": ("no_store", told(link__double_check=False), {"danger filling-link-without-double-check link"}),
    "secondary return without check": ("secondary_return", instead("cs", "strainer"), {"fault secondary-return-without-check store"}),
    "relief set too high": ("two_zone_valves", told(er__set_pressure_bar=8.01), {"danger relief-settings-out-of-order er"}),
    "exactly at the limit": ("two_zone_valves", told(er__set_pressure_bar=8), set()),
    "mixer at 48": ("two_zone_valves", told(blend__set_temperature_c=48), set()),
    "mixer at 49": ("two_zone_valves", told(blend__set_temperature_c=49), {"advice bath-not-blended bath"}),
    "safety valve just enough": ("no_store", told(sv__capacity_kw=18), set()),
    "safety valve too small": ("no_store", told(sv__capacity_kw=17.9), {"danger safety-valve-too-small hs"}),
    "one of two that the other makes up for": ("two_sources", told(sv2__capacity_kw=None), set()),
    "no programmer": ("two_zone_valves", without_control("programmer"), set()),
}  # fmt: skip


@pytest.mark.parametrize("name", HOUSES)
def test_a_sound_house_is_judged_and_nothing_said(name: str) -> None:
    analysis = analyse(house(name))
    assert [finding.message for finding in analysis.findings] == []
    assert analysis.not_judged == () and len(analysis.judged) > 40


@pytest.mark.parametrize(("name", "change", "said"), BROKEN.values(), ids=BROKEN.keys())
def test_broken_in_one_place(name: str, change: Break, said: set[str]) -> None:
    findings = analyse(change(house(name))).findings
    found = {
        " ".join((finding.grade.value, finding.check, *finding.components[:1])).removesuffix(f" {NEW}")
        for finding in findings
    }
    found = {"advice drain-absent" if each.startswith("advice drain-absent") else each for each in found}
    assert found == said, [finding.message for finding in findings]
